"""Evidence: the words of the note that prove a fact, after the W3C Web Annotation Data Model (23 February 2017).

Positions count Unicode code points of the note text as stored; `end` is exclusive (sections 4.2.4 and 4.2.5).
"""

import hashlib
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, model_validator

# How many characters before and after a quote are kept to find it again.
CONTEXT = 24


def note_hash(text: str) -> str:
    """Return the SHA-256 of the note's text in UTF-8, as hexadecimal digits."""
    return hashlib.sha256(text.encode("utf-8", "surrogatepass")).hexdigest()


def source_of(text: str) -> str:
    """Return the name by which evidence points at a note: urn:sha256:..."""
    return f"urn:sha256:{note_hash(text)}"


class TextPosition(BaseModel):
    """Start and end of a quote in code points; the end is not part of it."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    type: Literal["TextPositionSelector"] = "TextPositionSelector"
    start: int = Field(ge=0)
    end: int = Field(ge=0)

    @model_validator(mode="after")
    def _in_order(self) -> "TextPosition":
        if self.end < self.start:
            raise ValueError(f"the end of a quote ({self.end}) lies before its start ({self.start})")
        return self


class TextQuote(BaseModel):
    """The words themselves with a little of what stands before and after."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    type: Literal["TextQuoteSelector"] = "TextQuoteSelector"
    exact: str
    prefix: str = ""
    suffix: str = ""


class Evidence(BaseModel):
    """One place in the note, given by position and by quote; facts told by the same words may share one."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    source: str = ""
    selector: list[Annotated[TextPosition | TextQuote, Field(union_mode="left_to_right")]]

    @classmethod
    def at(cls, text: str, start: int, end: int, source: str) -> "Evidence":
        """Build the evidence for text[start:end]; `source` is source_of(text), computed once per note."""
        quote = {
            "type": "TextQuoteSelector",
            "exact": text[start:end],
            "prefix": text[max(0, start - CONTEXT) : start],
            "suffix": text[end : end + CONTEXT],
        }
        position = {"type": "TextPositionSelector", "start": start, "end": end}
        return cls.model_validate({"source": source, "selector": [position, quote]})

    @property
    def span(self) -> tuple[int, int] | None:
        """Start and end in code points, or None where only a quote is known."""
        for selector in self.selector:
            if isinstance(selector, TextPosition):
                return selector.start, selector.end
        return None

    @property
    def exact(self) -> str:
        """The quoted words, or an empty text where only a position is known."""
        for selector in self.selector:
            if isinstance(selector, TextQuote):
                return selector.exact
        return ""
