"""Reasons that rules give to look twice at what they found, each of a kind that resources/doubts.toml weighs."""

from dataclasses import dataclass

from notereader.vocabulary.doubts import doubt_table, filled


@dataclass(frozen=True, slots=True)
class Reason:
    """One of the kinds of reasons under [reasons], and what stands in its sentence for each WORD."""

    kind: str
    words: tuple[str, ...] = ()

    @property
    def told(self) -> str:
        """Return the sentence: 'the note also says 4-0'."""
        return filled(doubt_table().reasons[self.kind].told, *self.words)
