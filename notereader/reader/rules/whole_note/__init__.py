"""The operation as a whole, and which parts of a note are in it."""
