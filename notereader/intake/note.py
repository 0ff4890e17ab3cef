"""What comes out of the intake: the text of a note, or a refusal in plain words."""

from dataclasses import dataclass, field
from typing import Literal, NamedTuple

Kind = Literal["txt", "docx", "rtf", "pdf", "image"]


class WordConfidence(NamedTuple):
    """How sure the recognition of one word in a picture is: text[start:end], and 0 (a guess) to 100 (certain)."""

    start: int
    end: int
    confidence: int


@dataclass(frozen=True)
class NoteText:
    """The plain text of one note.

    `text` has been through clean_text and is never altered again, so positions in it, counted in code points, hold.
    `name` is the file's name without its folder. `kind` is what the content was found to be, whatever the file's
    ending says. `warnings` are plain sentences for the person who reads the note. `confidences` has one entry per
    recognised word, in order, where the text or part of it was recognised from a picture; else it is empty.
    """

    text: str
    name: str
    kind: Kind
    warnings: list[str] = field(default_factory=list)
    confidences: list[WordConfidence] = field(default_factory=list)

    @property
    def recognised(self) -> bool:
        """True where words were recognised from a picture rather than read from characters."""
        return bool(self.confidences)


class IntakeRefused(Exception):
    """A file or text that cannot be read as a note: what is wrong, where, and what to do about it.

    `what` and `advice` are whole sentences; `where` is the file's name, or its path where it was not found.
    """

    def __init__(self, what: str, advice: str, where: str = "") -> None:
        super().__init__(what, advice, where)
        self.what = what
        self.advice = advice
        self.where = where

    def __str__(self) -> str:
        return " ".join(part for part in (self.where and f"{self.where}:", self.what, self.advice) if part)
