"""Reads operative notes of flexor tendon repairs and proposes every fact with the words that prove it."""

__version__ = "0.1.0"
