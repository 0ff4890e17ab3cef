"""A correction that says which slip it really was takes back the side of the slip told before it."""

import pytest

from notereader.reader import read
from notereader.record import Record

NOTE = (
    "Left ring finger. FDP intact. The radial slip of FDS was divided, the ulnar slip was whole. "
    "The radial slip was sutured with 4-0 Prolene.\n\n"
)


def _slip(record: Record, side: str | None) -> dict[str, object]:
    found = [r for r in record.repairs if r.tendon == "FDS" and r.slip == side]
    return {name: fact.value for entry in found for name, fact in entry.facts.items()}


@pytest.mark.parametrize(
    "correction",
    [
        "Addendum: The slip that was divided and sutured was the ulnar one.",
        "ADDENDUM\nIt was the ulnar slip that was sutured, not the radial slip.",
        "Correction: for radial slip read ulnar slip.",
        "Addendum. The slip of FDS which was sutured was in fact the ULNAR.",
    ],
)
def test_the_slips_change_places(correction: str) -> None:
    record = read(NOTE + correction + "\n")
    ulnar = _slip(record, "ulnar")
    assert (ulnar.get("extent"), ulnar.get("treatment"), ulnar.get("size")) == ("complete", "repaired", "4-0")
    radial = _slip(record, "radial")
    assert radial.get("extent") == "intact"
    assert "treatment" not in radial and "size" not in radial


@pytest.mark.parametrize(
    "told",
    [
        "Addendum: the ulnar slip was whole and was left.",
        "Addendum: the slip that was divided was the radial one.",
        "Addendum: the wound lay over the ulnar half of the finger, not the radial.",
        "The slip that was whole was the ulnar one.",
        "Correction: the digital nerve that was bruised was the ulnar one, not the radial; the slip was small.",
    ],
)
def test_what_confirms_or_tells_of_something_else_changes_nothing(told: str) -> None:
    record = read(NOTE + told + "\n")
    assert _slip(record, "radial").get("extent") == "complete"
    assert _slip(record, "ulnar").get("extent") == "intact"
    assert _slip(record, "ulnar").get("treatment") in (None, "left")


def test_what_was_told_under_the_other_side_carries_a_reason() -> None:
    record = read(NOTE + "Addendum: The slip that was divided and sutured was the ulnar one.\n")
    entry = next(r for r in record.repairs if r.slip == "ulnar")
    assert any("other slip" in reason for reason in entry.facts["size"].look_twice or [])


@pytest.mark.parametrize(
    "correction",
    [
        "Addendum. The ulnar slip was whole. The core suture was 4/0 Prolene, not 3/0.",
        "Addendum. A2 and FDS radial slip as written. Core thread was 4-0 Prolene and not 3-0.",
    ],
)
def test_a_core_put_right_after_a_word_on_a_slip_is_of_the_tendon_told_with_it(correction: str) -> None:
    record = read(
        "Left ring finger. FDP cut through and repaired, four strands 3-0 Prolene. "
        "FDS radial slip sutured with 5-0 Prolene.\n\n" + correction + "\n"
    )
    fdp = next(r for r in record.repairs if r.tendon == "FDP")
    assert fdp.facts["size"].value == "4-0"
    assert _slip(record, "radial").get("size") in (None, "5-0")


def test_a_core_put_right_after_the_tendon_itself_is_not_another_s() -> None:
    record = read(
        "Left ring finger. FDP and FDS cut through. FDP: six strands of 3-0 Prolene. FDS: two strands of 3-0 Prolene."
        "\n\nAddendum. The core of the FDP is four strands and not six. The thread was 4-0 and not 3-0.\n"
    )
    fds = next(r for r in record.repairs if r.tendon == "FDS")
    assert fds.facts["size"].value == "3-0"
