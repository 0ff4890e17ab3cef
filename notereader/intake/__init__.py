"""Turns a file, the clipboard or standard input into the plain text of a note."""
