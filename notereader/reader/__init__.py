"""Reads a note text into a draft record: the spaCy pipeline of eight steps."""

from notereader.reader.bare_spacy import load_spacy

load_spacy()

from notereader.reader.pipeline import read  # noqa: E402

__all__ = ["read"]
