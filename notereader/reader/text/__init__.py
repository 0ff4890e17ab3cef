"""Step 1, the text: what is put right before a note is read, and its words."""
