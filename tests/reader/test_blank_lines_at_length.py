"""Notes with long stretches of blank lines: what is read stays the same, and the cost grows no faster than they."""

from notereader.reader import read

_REPAIR = "Index FDP completely divided, zone II. Repaired with a four-strand cruciate of 4-0 Ethibond.\n"


def test_blank_lines_before_and_within_change_nothing() -> None:
    def told(text: str) -> dict[str, object]:
        return {place.text(): fact.value for place, fact in read(text).walk()}

    assert told("\n" * 50_000 + _REPAIR) == told(_REPAIR)
    assert told("Nerve: Ulnar\n" + "\n" * 5_000 + "Zone V") == told("Nerve: Ulnar\n\nZone V")
