"""Nerves of which a share is gone, their bruised ends, the other artery as a reason, and pairs of nerve and artery."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize("words", ["RDN half of it gone, repaired.", "RDN: a third of it gone.", "RDN - half gone."])
def test_a_share_gone(words: str) -> None:
    assert each(f"Ring finger. {words}", "extent", group="injuries") == {"ring digital nerve radial": "partial"}


@pytest.mark.parametrize(
    "words", ["RDN gone over half a centimetre.", "RDN all of it gone.", "RDN pulled out over 2.5 cm."]
)
def test_all_of_it_gone(words: str) -> None:
    assert each(f"Ring finger. {words}", "extent", group="injuries") == {"ring digital nerve radial": "complete"}


@pytest.mark.parametrize("words", ["its bruised fascicles were cut away", "the contused ends were trimmed"])
def test_bruised_ends_of_a_nerve(words: str) -> None:
    note = f"Thumb. The radial digital nerve had been transected. The radial digital nerve had a defect once {words}."
    assert each(note, "extent", group="injuries") == {"thumb digital nerve radial": "complete"}


def test_a_bruised_nerve() -> None:
    found = each("Thumb. The radial digital nerve was bruised.", "extent", group="injuries")
    assert found == {"thumb digital nerve radial": "contused"}


@pytest.mark.parametrize(
    "words", ["clipped as the other one filled the finger promptly", "tied because the other one bled well enough"]
)
def test_the_other_is_only_why(words: str) -> None:
    found = each(f"Ring finger. The ulnar digital artery was {words}.", "treatment", group="injuries")
    assert found == {"ring digital artery ulnar": "ligated"}


def test_the_other_told_by_itself() -> None:
    note = "Ring finger. The ulnar digital artery was cut. The other one was intact."
    assert each(note, "extent", group="injuries")["ring digital artery radial"] == "intact"


@pytest.mark.parametrize("words", ["radial pair untouched", "radial pair intact"])
def test_a_pair_is_nerve_and_artery(words: str) -> None:
    found = each(f"Ring finger. UDN and UDA cut, {words}.", "extent", group="injuries")
    assert found["ring digital nerve radial"] == found["ring digital artery radial"] == "intact"


def test_as_well() -> None:
    found = each("Median nerve looked well and intact, radial artery as well.", "extent", group="injuries")
    assert found == {"median nerve": "intact", "radial artery": "intact"}


def test_an_anchor_for_a_ligament() -> None:
    note = "Thumb. Rupture of the ulnar collateral ligament, MCP joint.\nOpen repair with bone anchor."
    assert each(note, "treatment") == {}


def test_an_anchor_for_a_tendon() -> None:
    note = "Thumb. Rupture of FPL.\nFPL back to P2 with a bone anchor. Collateral ligament intact."
    assert each(note, "treatment") == {"thumb FPL": "reinserted"}
