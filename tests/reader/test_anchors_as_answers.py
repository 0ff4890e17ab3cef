"""An anchor that answers the label of a tendon holds it; one in a list of implants belongs to no tendon in sight."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    "note",
    [
        "FDP small fix: Mitek anchor, 3-0 Orthocord.",
        "FDP core, small finger: suture anchor (Mitek), 3-0 Orthocord.",
        "Small FDP repair: one mini anchor, 3-0 Orthocord.",
        "        | SMALL FINGER            | RING FINGER\n"
        "--------+-------------------------+---------------------\n"
        "FDP     | through                 | through\n"
        "FDP fix | Mitek anchor, 3-0       | Savage, 4-0 Ethibond\n"
        "        | Orthocord               |\n",
    ],
)
def test_an_anchor_answers_what_the_label_of_a_tendon_asks(note: str) -> None:
    held = {"treatment": "reinserted", "stitch": "anchor", "size": "3-0", "material": "polyblend"}
    assert told(note, *held)["small FDP"] == held


@pytest.mark.parametrize(
    "listed",
    [
        "Implant log: 1 anchor, sticker overleaf.",
        "Implant record: one Mitek anchor, sticker attached.",
        "Implant sheet: anchor x 1.",
    ],
)
def test_an_anchor_in_a_list_of_implants_is_of_no_tendon_in_sight(listed: str) -> None:
    note = f"Small FDP: anchor, 3-0 Orthocord. Ring FDP repaired with a six-strand Savage.\n{listed}\n"
    assert told(note, "treatment", "stitch") == {
        "small FDP": {"treatment": "reinserted", "stitch": "anchor"},
        "ring FDP": {"treatment": "repaired", "stitch": "savage"},
    }


@pytest.mark.parametrize("answer", ["anchor not needed", "no anchor"])
def test_an_anchor_denied_is_none(answer: str) -> None:
    assert told(f"FDP core, ring finger: {answer}, Kessler 4-0 Ethibond.", "stitch") == {
        "ring FDP": {"stitch": "kessler"}
    }
