"""A stub that stays where a tendon was cut out is no length trimmed; a stub that was trimmed is."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    "note",
    [
        "Ring finger zone II: FDS ulnar slip only, complete -> excised (stub 6 mm).",
        "Small FDS excised, stub of 5 mm.",
        "Middle FDS was resected (tag of 4 mm).",
    ],
)
def test_a_stub_is_not_trimmed(note: str) -> None:
    assert all("trimmed_mm" not in fields for fields in told(note, "trimmed_mm").values())


def test_ends_trimmed_are_read() -> None:
    note = "Small FDP cut, ends trimmed 3 mm, sewn with 4-0 Prolene."
    assert told(note, "trimmed_mm") == {"small FDP": {"trimmed_mm": 3}}
