"""A tendon led through holes in bone or tied over the nail is put back to bone; a ligament or a nail bed so is not."""

import pytest
from reader_sentences import told

HEAD = "Left index finger. The FDP was avulsed from its insertion. "
SEWN = "Left index finger. The FDP was completely cut. It was repaired with four strands of 3-0 Ethibond. "


@pytest.mark.parametrize(
    ("words", "size"),
    [
        ("The tendon was fixed through two drill holes in the distal phalanx with 2-0 Ethibond.", "2-0"),
        ("A 3-0 Prolene suture was passed through drill holes in the distal phalanx and tied over the bone.", "3-0"),
        ("A Bunnell suture of 3-0 Prolene was led through the bone and tied over the nail.", "3-0"),
        ("The end had retracted to A2. A 2-0 Prolene Krackow suture was passed through drill holes in P3.", "2-0"),
        ("A Krackow suture of 2-0 Prolene was placed in the tendon end. It was led through the bone on either side of "
         "the nail plate and tied over a button.", "2-0"),
    ],
)  # fmt: skip
def test_put_back_to_bone(words: str, size: str) -> None:
    facts = told(HEAD + words, "treatment", "size")
    assert facts == {"index FDP": {"treatment": "reinserted", "size": size}}


@pytest.mark.parametrize(
    "words",
    [
        "The volar plate was reattached through drill holes in the distal phalanx with 4-0 PDS.",
        "The ligament was fixed with 4-0 PDS through drill holes in the distal phalanx.",
        "The nail bed was sutured with 6-0 Vicryl and the splint tied over the nail.",
        "A piece of foil was tied over the nail.",
        "The fracture was fixed with a wire passed through drill holes in the distal phalanx and tied over the bone.",
    ],
)
def test_other_things_put_to_bone(words: str) -> None:
    facts = told(SEWN + words, "treatment", "size")
    assert facts["index FDP"] == {"treatment": "repaired", "size": "3-0"}
