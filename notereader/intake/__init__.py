"""Turns a file, the clipboard or standard input into the plain text of a note."""

from notereader.intake.cleaning import clean_text
from notereader.intake.door import read_bytes, read_file, read_stream, read_text
from notereader.intake.note import IntakeRefused, Kind, NoteText, WordConfidence
from notereader.intake.worker import serve_if_asked

__all__ = [
    "IntakeRefused",
    "Kind",
    "NoteText",
    "WordConfidence",
    "clean_text",
    "read_bytes",
    "read_file",
    "read_stream",
    "read_text",
    "serve_if_asked",
]
