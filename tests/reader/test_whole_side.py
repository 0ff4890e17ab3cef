"""Nerves and arteries told by their side, as the rest, or as kept safe; both arteries of the wrist."""

import pytest
from reader_sentences import each

ALL = {f"ring {kind} {side}": "intact" for kind in ("digital artery", "digital nerve") for side in ("radial", "ulnar")}


def _extents(words: str) -> dict[str, object]:
    return each(words, "extent", group="injuries")


@pytest.mark.parametrize(
    "words",
    [
        "Ring finger. The ulnar digital nerve was transected. Radial side was normal.",
        "Ring finger. UDN cut. Radial side intact.",
        "Ring: ulnar digital nerve divided; radial side all fine.",
    ],
)
def test_the_other_side_is_whole(words: str) -> None:
    assert _extents(words) == {
        "ring digital nerve ulnar": "complete",
        "ring digital nerve radial": "intact",
        "ring digital artery radial": "intact",
    }


@pytest.mark.parametrize(
    "words",
    [
        "Ring finger. The ulnar digital nerve was cut. The radial side of A2 was intact.",
        "Ring finger. The ulnar digital nerve was cut. The skin of the radial side was normal.",
        "Ring finger. The ulnar digital nerve was cut. The radial side was not seen.",
    ],
)
def test_a_side_of_something_else(words: str) -> None:
    assert _extents(words) == {"ring digital nerve ulnar": "complete"}


def test_no_side_is_whole_where_no_nerve_was_told_of() -> None:
    assert _extents("Ring FDP cut. Radial side fine.") == {}


@pytest.mark.parametrize(
    "words",
    [
        "Ring: bundles retracted both sides and kept safe. A1 divided completely.",
        "Ring: neurovascular bundles were retracted on either side and protected.",
        "Ring: both bundles were retracted and kept safe.",
    ],
)
def test_bundles_kept_safe(words: str) -> None:
    assert _extents(words) == ALL


def test_a_nerve_that_crossed_the_field() -> None:
    seen = "Thumb: radial digital nerve crossing field seen & protected."
    assert _extents(seen) == {"thumb digital nerve radial": "intact"}


@pytest.mark.parametrize(
    "words",
    [
        "Ring: the ulnar digital nerve is only contused, the remaining nerve-vessel structures are unharmed.",
        "Ring: the ulnar digital nerve is only contused, the other neurovascular structures were intact.",
    ],
)
def test_the_rest_of_the_structures(words: str) -> None:
    assert _extents(words) == ALL | {"ring digital nerve ulnar": "contused"}


@pytest.mark.parametrize(
    "words",
    [
        "Zone V. FDS ring and FCR divided. FCU, median nerve and both arteries uninjured.",
        "Wrist laceration. FCR, FDS middle cut. Median nerve and both arteries intact.",
    ],
)
def test_both_arteries_of_the_wrist(words: str) -> None:
    assert _extents(words) == dict.fromkeys(("median nerve", "radial artery", "ulnar artery"), "intact")


def test_both_arteries_of_a_finger_named_behind() -> None:
    words = "Wrist laceration, zone V. FCR cut: ulnar nerve whole, both arteries of the middle finger cut."
    assert _extents(words)["middle digital artery ulnar"] == "complete"
