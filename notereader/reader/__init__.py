"""Reads a note text into a draft record."""
