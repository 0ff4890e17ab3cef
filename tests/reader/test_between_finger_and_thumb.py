"""The surgeon's own finger and thumb are none of the hand operated on; a finger may be named without its article."""

import pytest
from reader_sentences import each, record_of

SEWN = "Left small finger. FDP repaired with 3-0 PDS. It caught at A2. "


@pytest.mark.parametrize(
    "words",
    [
        "I moulded it between finger and thumb and after that it glided through without catching.",
        "I rolled the repair between thumb and forefinger and then it ran freely.",
        "The repair was squeezed between my finger and thumb, after which it slid freely.",
    ],
)
def test_moulded_between_finger_and_thumb(words: str) -> None:
    assert each(SEWN + words, "glide") == {"small FDP": "free"}


def test_a_thumb_and_an_index_that_were_hurt() -> None:
    note = "Thumb and index finger squeezed between rollers. FPL completely cut. FDP index completely cut."
    assert each(note, "extent") == {"thumb FPL": "complete", "index FDP": "complete"}


HEAD = "Index - FDP cut. Middle - FDP cut. Digital nerves fine in index"


@pytest.mark.parametrize(
    "words",
    [
        "; in middle the ulnar digital nerve divided, the radial one fine.",
        ". In middle the ulnar digital nerve was cut.",
    ],
)
def test_a_finger_without_its_article(words: str) -> None:
    found = each(HEAD + words, "extent", group="injuries")
    assert found["index digital nerve ulnar"] == "intact"
    assert found["middle digital nerve ulnar"] == "complete"


def test_the_middle_of_a_wound() -> None:
    note = "Index finger. The wound was opened. In the middle the ulnar digital nerve was seen, divided."
    assert {place.digit for place, _ in record_of(note).walk() if place.group == "injuries"} == {"index"}


@pytest.mark.parametrize("words", ["Patient: see label.", "Patient - sticker."])
def test_a_patient_who_is_told_elsewhere(words: str) -> None:
    note = f"{words} Left hand. Op 29/08/2031. Glass, yesterday.\n\nLeft small finger. FDP cut."
    found = each(note, "date", group="operation")
    assert {str(day) for day in found.values()} == {"2031-08-29"}


def test_a_patient_whose_story_is_told() -> None:
    note = "Patient: 34 year old chef, cut on a knife on 3 May 2031.\n\nLeft small finger. FDP cut."
    assert each(note, "date", group="operation") == {}


def test_orders_under_therapy() -> None:
    orders = "Therapy: early active motion begins between day 3 and 5. Splint 6 weeks."
    note = f"Diagnosis: FDP cut left small finger.\n\nFDP repaired with 3-0 PDS.\n\n{orders}"
    assert each(note, "programme", group="aftercare") == {"": "early active"}
    done = "Diagnosis: FDP cut left small finger.\n\nTherapy: repair of the FDP with 3-0 PDS."
    assert each(done, "treatment") == {"small FDP": "repaired"}
