"""A kind of tendons told beside one of a single finger, and a slip or a tendon that is its neighbour's."""

import pytest
from reader_sentences import each, told

SEWN = (
    "The index and ring profundi and the ring and middle superficialis were cut. All four had a double Tsuge "
    "of 4-0 looped nylon. "
)
THREE = dict.fromkeys(("index FDP", "middle FDS", "ring FDP"), "6-0")


@pytest.mark.parametrize(
    "words",
    [
        "A cross-stitch of 6-0 polypropylene completed each of the profundus repairs and the middle superficialis.",
        "A running 6-0 polypropylene was added to both profundus repairs and the middle superficialis.",
        "The two profundus repairs and the middle superficialis got a running 6-0 polypropylene.",
        "Each profundus and the middle superficialis got a running 6-0 polypropylene.",
        "Running 6-0 polypropylene around all profundus repairs and around the middle FDS.",
    ],
)
def test_the_finger_is_that_of_the_one_tendon(words: str) -> None:
    assert each(SEWN + words, "peripheral_size") == THREE


def test_what_is_told_apart_is_not_joined() -> None:
    left = "A running 6-0 polypropylene was added to both profundi and the middle superficialis was left bare."
    assert "middle FDS" not in each(SEWN + left, "peripheral_size")
    own = "The middle FDP and FDS were cut. Both had a Tsuge of 4-0 nylon. "
    own += "The profundus and the middle superficialis got a running 6-0 PDS."
    assert each(own, "peripheral_size") == {"middle FDP": "6-0", "middle FDS": "6-0"}


CUT = "Left index and middle fingers, zone II. The index FDS was severed; the middle one was cut by 60 % in its "


@pytest.mark.parametrize(
    "words",
    [
        "The index superficialis received a Kessler of 4-0, while the radial slip of its neighbour was smoothed.",
        "The index superficialis received a Kessler of 4-0; in its neighbour the radial slip was trimmed.",
        "The index FDS received a Kessler of 4-0, and the radial slip of its neighbor was trimmed.",
    ],
)
def test_a_slip_of_the_neighbour(words: str) -> None:
    found = told(CUT + "radial slip. " + words, "stitch", "treatment")
    assert found["index FDS"] == {"stitch": "kessler", "treatment": "repaired"}
    assert found["middle FDS radial"] == {"treatment": "trimmed"}
    assert "index FDS radial" not in found


@pytest.mark.parametrize("name", ["profundus", "FDP", "deep flexor"])
def test_a_tendon_of_the_neighbour(name: str) -> None:
    note = (
        "Ring and small fingers. The ring FDS was sewn with a Kessler of 3-0 nylon, the {} of its neighbour was intact."
    )
    assert each(note.format(name), "extent") == {"small FDP": "intact"}
