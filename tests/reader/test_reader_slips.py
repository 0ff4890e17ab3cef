"""Halves, tails and bare sides told as slips of the superficialis."""

import pytest
from reader_sentences import Shown, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index finger. FDS: the radial half completely divided, the ulnar half intact.",
            {"index FDS radial": "complete", "index FDS ulnar": "intact"},
        ),
        (
            "Right index finger. The ulnar limb of the sublimis was severed and the radial limb untouched.",
            {"index FDS radial": "intact", "index FDS ulnar": "complete"},
        ),
        (
            "Middle finger, left. FDS radial tail severed, ulnar tail intact.",
            {"middle FDS radial": "complete", "middle FDS ulnar": "intact"},
        ),
    ],
)
def test_a_half_is_a_slip(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left middle finger. Of the two slips of the superficialis the radial was intact and the ulnar "
            "was cut through.",
            {"middle FDS radial": "intact", "middle FDS ulnar": "complete"},
        ),
        (
            "Small finger. The FDS has two tails here: the ulnar was completely divided, the radial was whole.",
            {"small FDS radial": "intact", "small FDS ulnar": "complete"},
        ),
        (
            "Small finger. The superficialis halves differed: the radial one was completely divided, the "
            "ulnar one was intact.",
            {"small FDS radial": "complete", "small FDS ulnar": "intact"},
        ),
    ],
)
def test_a_bare_side_is_a_slip_where_slips_are_spoken_of(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDS intact. The ulnar half of the nail bed was cut.",
            {"ring FDS": "intact"},
        ),
        (
            "Left ring finger. FDS intact. The radial half of the wound was closed.",
            {"ring FDS": "intact"},
        ),
    ],
)
def test_a_half_of_another_thing_is_no_slip(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDS intact. The ulnar half of A2 was trimmed.",
            {"ring FDS": {"extent": "intact"}},
        ),
        (
            "Left small finger. FDS intact. The radial half of the A4 pulley was excised.",
            {"small FDS": {"extent": "intact"}},
        ),
    ],
)
def test_a_half_of_a_pulley_is_no_slip(note: str, expected: Shown) -> None:
    assert told(note) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "R middle finger. FDS r. slip completely divided, u. slip intact.",
            {"middle FDS radial": "complete", "middle FDS ulnar": "intact"},
        ),
        (
            "L index. FDS rad. half intact, uln. half completely divided.",
            {"index FDS radial": "intact", "index FDS ulnar": "complete"},
        ),
    ],
)
def test_short_names_of_slips(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. FDS radial slip completely divided, ulnar slip completely divided.",
            {"ring FDS": "complete"},
        ),
        (
            "Index finger. FDS: ulnar slip intact, radial slip intact.",
            {"index FDS": "intact"},
        ),
        (
            "Index finger. FDS: ulnar slip intact, radial slip completely divided.",
            {"index FDS ulnar": "intact", "index FDS radial": "complete"},
        ),
    ],
)
def test_slips_of_which_the_same_is_told_are_one_tendon(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger, left. FDP and FDS completely divided. One slip of the FDS was excised to make "
            "room. The excised slip was the ulnar one.",
            {"ring FDS ulnar": "excised"},
        ),
        (
            "Small finger. FDS completely divided. Of its slips one was repaired and one resected. The "
            "resected slip was the radial one.",
            {"small FDS radial": "excised"},
        ),
        (
            "Small finger. FDS completely divided. Of its slips one was repaired with 4-0 nylon and one "
            "excised. The repaired slip was the ulnar one.",
            {"small FDS ulnar": "repaired"},
        ),
        (
            "Small finger. FDS cut through. One slip - ulnar - was excised.",
            {"small FDS ulnar": "excised"},
        ),
        (
            "Index finger. FDS cut in both slips. One slip, radial, was resected.",
            {"index FDS radial": "excised"},
        ),
    ],
)
def test_one_slip_named_behind(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["treatment"] for entry, facts in told(note, "treatment").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. FDS: radial slip completely divided, ulnar slip 60% cut. The radial slip was sewn "
            "with a figure-of-eight of 4-0 nylon, and so was the ulnar one.",
            {"ring FDS radial": "figure-of-eight", "ring FDS ulnar": "figure-of-eight"},
        ),
        (
            "Index finger. FDS ulnar slip completely divided, radial slip half cut. The ulnar slip was "
            "closed with a horizontal mattress and so was the radial slip.",
            {"index FDS radial": "horizontal mattress", "index FDS ulnar": "horizontal mattress"},
        ),
    ],
)
def test_one_slip_sewn_like_the_other(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["stitch"] for entry, facts in told(note, "stitch").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Middle finger. FDS completely divided. FDS RS 4-0 Prolene mattress, US left.",
            {"middle FDS radial": "repaired", "middle FDS ulnar": "left"},
        ),
        (
            "Ring finger. FDS completely divided. FDS ulnar slip 4-0 nylon figure-of-eight, radial slip left.",
            {"ring FDS radial": "left", "ring FDS ulnar": "repaired"},
        ),
    ],
)
def test_a_slip_sewn_and_the_other_left(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["treatment"] for entry, facts in told(note, "treatment").items()}
    assert found == expected
