"""Slips told by their side alone, behind words on both of them."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    "sentence",
    [
        "Both FDS slips severed, only the ulnar of them being repaired; the radial was let lie.",
        "Both slips of FDS severed, the ulnar alone being repaired; the radial was let lie.",
        "Both FDS slips severed; the radial was let lie, the ulnar repaired.",
    ],
)
def test_a_side_of_them_is_a_slip(sentence: str) -> None:
    assert told(f"Middle finger. {sentence}", "extent", "treatment") == {
        "middle FDS radial": {"extent": "complete", "treatment": "left"},
        "middle FDS ulnar": {"extent": "complete", "treatment": "repaired"},
    }


@pytest.mark.parametrize(
    "sentence",
    [
        "The radial one was flat and took a horizontal mattress suture, the ulnar a small Kessler.",
        "The radial got a horizontal mattress, the ulnar a Kessler.",
    ],
)
def test_a_side_with_a_stitch_of_its_own_is_a_slip(sentence: str) -> None:
    """'The ulnar a small Kessler': a slip and its stitch, no ulnar artery."""
    found = told(f"Middle finger. FDS, both slips transected. {sentence}", "treatment", "stitch")
    assert found == {
        "middle FDS radial": {"stitch": "horizontal mattress", "treatment": "repaired"},
        "middle FDS ulnar": {"stitch": "kessler", "treatment": "repaired"},
    }


def test_the_ulnar_a_of_a_list_stays_an_artery() -> None:
    found = told("Wrist. FCU divided. Ulnar a. divided and repaired with 8-0.", "treatment", group="injuries")
    assert list(found.values()) == [{"treatment": "repaired"}]
