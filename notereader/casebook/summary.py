"""What the list of cases shows of a record, and text made fit for any database."""

import unicodedata
from typing import Any

from notereader.record import Address, Record


def summary_of(record: Record) -> dict[str, Any]:
    """Return the columns of the case list that follow from the record."""
    day = record.fact(Address("operation", field="date"))
    digits = dict.fromkeys(place.digit for place, _ in record.entries())
    return {
        "operation_date": day.value if day and day.live else None,
        "digits": ",".join(digit for digit in digits if digit),
        "tendons": ",".join(dict.fromkeys(repair.tendon for repair in record.repairs)),
        "facts_open": sum(fact.status == "proposed" for _, fact in record.walk()),
    }


def storable(text: str) -> str:
    """Return a text without the characters (NUL, lone surrogates) that some databases refuse."""
    return text.replace("\0", " ").encode("utf-8", "replace").decode("utf-8")


def without_text(record: Record) -> dict[str, Any]:
    """Return a record as JSON data without the note's text, which is kept apart."""
    data = record.model_dump(mode="json")
    data["note"].pop("text", None)
    return data


def fold(text: str) -> str:
    """Return a text without capitals and width forms, for searching."""
    return unicodedata.normalize("NFKC", storable(text)).casefold()
