"""Nerves and arteries meant by what was told before: 'the latter', 'the radial one', 'both arteries'."""

import pytest
from reader_sentences import each


def test_the_nerve_of_the_latter_finger() -> None:
    note = (
        "Ring and small FDP repaired. The ulnar digital nerve of the ring finger and the ulnar digital nerve of the "
        "small finger were divided. The radial digital nerve of the former was contused; the radial digital nerve of "
        "the latter was intact."
    )
    assert each(note, "extent", "injuries") == {
        "ring digital nerve radial": "contused",
        "ring digital nerve ulnar": "complete",
        "small digital nerve radial": "intact",
        "small digital nerve ulnar": "complete",
    }


@pytest.mark.parametrize(
    "told",
    [
        "The radial one, and both digital nerves of the ring finger, were intact.",
        "The radial one and the two digital nerves of the ring finger were intact.",
    ],
)
def test_the_other_one_before_another_finger(told: str) -> None:
    found = each(
        f"Ring and small FDP cut. The ulnar digital nerve of the small finger was bruised. {told}", "extent", "injuries"
    )
    assert found["small digital nerve radial"] == "intact"
    assert found["ring digital nerve radial"] == found["ring digital nerve ulnar"] == "intact"


@pytest.mark.parametrize(
    "told",
    [
        "Ulnar digital nerve divided, radial nerve and both arteries intact.",
        "The ulnar digital nerve was cut; radial nerve and both arteries were intact.",
    ],
)
def test_both_arteries_behind_one_nerve(told: str) -> None:
    found = each(f"Small FDP cut. {told}", "extent", "injuries")
    assert found["small digital artery radial"] == found["small digital artery ulnar"] == "intact"


def test_both_radial_bundles_are_of_two_fingers() -> None:
    note = (
        "Middle and ring FDP cut. The ulnar digital nerve of the ring finger was cut. Both radial bundles were intact."
    )
    found = each(note, "extent", "injuries")
    assert {name for name, extent in found.items() if extent == "intact"} == {
        f"{digit} digital {what} radial" for digit in ("middle", "ring") for what in ("nerve", "artery")
    }


@pytest.mark.parametrize("joint", ["and", ","])
def test_the_ulnar_bundle_of_a_wrist(joint: str) -> None:
    note = f"Wrist. FCR cut and repaired. The flexor carpi ulnaris {joint} the ulnar bundle were in continuity."
    assert each(note, "extent", "injuries") == {"ulnar artery": "intact", "ulnar nerve": "intact"}
    finger = "Wrist scar. Small FDP cut and repaired; the ulnar bundle of the small finger was intact."
    assert "ulnar nerve" not in each(finger, "extent", "injuries")
