"""Step 6, bearing: which digits, tendons and slips a sentence is about."""
