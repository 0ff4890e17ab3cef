"""Reads a note text into a draft record: the spaCy pipeline of eight steps."""

from notereader.reader.pipeline import read

__all__ = ["read"]
