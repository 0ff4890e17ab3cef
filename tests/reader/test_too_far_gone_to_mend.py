"""'Too thin to repair', 'too distal for repair': what was not mended for the state it was in."""

import pytest
from reader_sentences import each, told

_HEAD = "Ring finger. FDP divided completely and repaired with four strands of 3-0 Ethibond. "


@pytest.mark.parametrize(
    "words",
    ["FDS slip too thin to repair.", "FDS divided completely, too ragged to suture.", "FDS was too short for repair."],
)
def test_tendon(words: str) -> None:
    found = each(_HEAD + words, "treatment")
    assert found["ring FDP"] == "repaired"
    assert found["ring FDS"] == "left"


@pytest.mark.parametrize(
    ("words", "treatment"),
    [
        ("Ulnar digital nerve divided, too small to repair.", "left"),
        (
            "Ulnar digital nerve divided past the trifurcation, too distal to repair. Radial digital nerve intact.",
            "left",
        ),
        ("Ulnar digital nerve cut, too short to repair primarily, conduit used.", "conduit"),
    ],
)
def test_nerve(words: str, treatment: str) -> None:
    assert each(_HEAD + words, "treatment", group="injuries") == {"ring digital nerve ulnar": treatment}


def test_what_is_not_denied() -> None:
    assert each(_HEAD + "The A4 was too tight to let the repaired tendon run.", "treatment") == {"ring FDP": "repaired"}
    assert each(_HEAD + "A4 too tight to pass the repair, vented.", "finding", group="pulleys") == {"ring A4": "vented"}
    assert "treatment" not in told(_HEAD + "Ulnar digital nerve cut.", group="injuries")["ring digital nerve ulnar"]


def test_bundles_in_scar() -> None:
    words = "Neurovascular bundles embedded in scar, seen to be continuous both sides."
    assert set(each(_HEAD + words, "extent", group="injuries").values()) == {"intact"}
    assert each(_HEAD + "Neurovascular bundles embedded in scar.", "extent", group="injuries") == {}


@pytest.mark.parametrize(
    "words",
    [
        "FDP cut right through, distal stump too short to be sewn. It was pulled into the bone with 3-0 over a button.",
        "FDP cut right through, too short to repair. It was put back to the distal phalanx with an anchor of 3-0.",
    ],
)
def test_done_instead(words: str) -> None:
    assert each("Ring finger. " + words, "treatment") == {"ring FDP": "reinserted"}
