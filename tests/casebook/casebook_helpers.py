"""An invented draft and small shorthands for the tests of the casebook."""

from collections.abc import Iterator
from pathlib import Path

from notereader.casebook import Casebook, Edit, OpenCase
from notereader.record import Address, Evidence, Fact, Note, Record, Value, source_of

TEXT = """OPERATION
Left ring finger, zone II.
The FDP was cut through and was repaired with a four-strand core of 4-0 braided polyester and a running 6-0
peripheral suture. The A2 pulley was vented over 5 mm. The A4 pulley was left intact.
Größe der Nahtstelle unauffällig 🙂. Glide was free.
"""
SOURCE = source_of(TEXT)

STRANDS = Address("repairs", "ring", "FDP", None, "strands")
SIZE = Address("repairs", "ring", "FDP", None, "size")
GLIDE = Address("repairs", "ring", "FDP", None, "glide")
A2 = Address("pulleys", "ring", "A2")
A4 = Address("pulleys", "ring", "A4")

_DRAFT: list[tuple[Address, Value, str]] = [
    (Address("operation", field="side"), "left", "Left"),
    (Address("repairs", "ring", "FDP", None, "zone"), "II", "zone II"),
    (Address("repairs", "ring", "FDP", None, "treatment"), "repaired", "repaired"),
    (STRANDS, 4, "four-strand"),
    (SIZE, "4-0", "4-0"),
    (GLIDE, "free", "Glide was free"),
    (A2.field_of("finding"), "vented", "vented"),
    (A2.field_of("extent_mm"), 5, "5 mm"),
    (A4.field_of("finding"), "intact", "left intact"),
]


def draft() -> Record:
    """Return a draft of nine proposed facts on the note above."""
    record = Record(note=Note.of(TEXT, "ring.txt"))
    for place, value, words in _DRAFT:
        start = TEXT.index(words)
        evidence = Evidence.at(TEXT, start, start + len(words), SOURCE)
        record.put(place, Fact(value=value, evidence=[evidence]))
    return record


def confirming(case: OpenCase, place: Address) -> Edit:
    """Return the edit by which a person confirms one fact."""
    fact = case.record.fact(place)
    assert fact is not None
    return Edit(place, fact, fact.model_copy(update={"status": "confirmed"}))


def correcting(case: OpenCase, place: Address, value: Value) -> Edit:
    """Return the edit by which a person corrects one fact."""
    fact = case.record.fact(place)
    assert fact is not None
    return Edit(place, fact, fact.model_copy(update={"status": "corrected", "value": value}))


def opened(path: Path) -> Iterator[Casebook]:
    """Open a casebook and close it afterwards."""
    book = Casebook(path)
    yield book
    book.close()
