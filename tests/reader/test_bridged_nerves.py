"""A nerve bridged or sutured in the clause or sentence behind the one that tells how it was cut."""

import pytest
from reader_sentences import told

H = "Left small finger. FDP cut, repaired with 4-0 nylon. "


@pytest.mark.parametrize(
    ("words", "treatment"),
    [
        (
            "Radial digital nerve divided, with a 6 mm defect; it would not meet, and a conduit was sewn in.",
            "conduit",
        ),
        (
            "Radial digital nerve severed; the stumps lay apart, and a collagen conduit 10 mm long was put between.",
            "conduit",
        ),
        ("Radial digital nerve cut and short. I grafted it with 18 mm of a forearm cutaneous nerve.", "grafted"),
        ("Radial digital nerve cut, a piece was missing. It was grafted with a strip of the sural nerve.", "grafted"),
        ("Radial digital nerve: cut through. Repaired with 9-0.", "repaired"),
        ("Radial digital nerve: divided. Sutured 10-0 nylon under the microscope.", "repaired"),
    ],
)
def test_what_was_done_is_of_the_nerve_told_cut(words: str, treatment: str) -> None:
    shown = told(H + words, group="injuries")
    assert shown == {"small digital nerve radial": {"extent": "complete", "treatment": treatment}}


@pytest.mark.parametrize("words", ["Repaired with 3-0 Prolene.", "Then the FDP was repaired with 4-0."])
def test_a_thick_suture_is_none_of_a_nerve(words: str) -> None:
    note = "Left small finger. FDP cut. Ulnar digital nerve: cut through. " + words
    assert told(note, "treatment", group="injuries") == {}


@pytest.mark.parametrize(
    "words", ["The index nerve was bridged with a conduit.", "In the index the nerve was grafted."]
)
def test_the_nerve_of_a_finger_named_before_it(words: str) -> None:
    note = (
        "Radial digital nerve of the index divided. Ulnar digital nerve of the small finger divided. "
        f"{words} In the small finger the nerve was sutured with 9-0."
    )
    shown = told(note, "treatment", group="injuries")
    assert shown["index digital nerve radial"]["treatment"] in ("conduit", "grafted")
    assert shown["small digital nerve ulnar"] == {"treatment": "repaired"}
