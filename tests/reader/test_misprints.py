"""Corrections that name the words they put right: what they prove, what stays as a rival, and what is left alone."""

import pytest
from reader_sentences import each

from notereader.reader import read
from notereader.reader.text.misprints import misprints
from notereader.record import Fact

BODY = "Ring finger, zone II. FDP completely divided. Two-strand core of 4-0 Prolene. Purchase was 8 mm. Ends ragged."


def _fact(text: str, field: str) -> Fact:
    return next(f for place, f in read(text).walk() if place.part == "FDP" and place.field == field)


@pytest.mark.parametrize(
    ("correction", "field", "value"),
    [
        ("'8 mm' should read '12 mm'.", "purchase_mm", (12.0, 12.0)),
        ("For a purchase of 8 mm read 12 mm.", "purchase_mm", (12.0, 12.0)),
        ('For "4-0" please read "3-0".', "size", "3-0"),
        ("Where it says 4-0 Prolene it should say 3-0 Ethibond.", "material", "braided polyester"),
        ("\u201cEnds ragged\u201d should be \u201cends clean\u201d.", "ends", "clean"),
    ],
)
def test_the_right_words_take_the_place_of_the_wrong_ones(correction: str, field: str, value: object) -> None:
    assert each(f"{BODY}\n\nAddendum\n{correction}\n", field) == {"ring FDP": value}


def test_the_correction_proves_it_and_the_body_is_the_rival() -> None:
    note = f"{BODY}\n\nAddendum\n'4-0' should read '3-0'.\n"
    fact = _fact(note, "size")
    assert [note[slice(*e.span)] for e in fact.evidence if e.span] == ["3-0"]
    assert [(r.value, [e.exact for e in r.evidence]) for r in fact.rivals] == [("4-0", ["4-0"])]
    assert fact.look_twice[0] == "the note also says 4-0"
    assert note.index("4-0") == (fact.rivals[0].evidence[0].span or (0, 0))[0]


def test_what_stands_behind_a_longer_word_keeps_its_place() -> None:
    note = f"{BODY}\n\nAddendum\n'8 mm' should read 'ten millimetres, 10 mm'. The knot was buried.\n"
    fact = _fact(note, "ends")
    assert [note[slice(*e.span)] for e in fact.evidence if e.span] == [e.exact for e in fact.evidence]


@pytest.mark.parametrize(
    "correction", ["For 4-0 read 3-0.", "'4-0' should read '3-0'.", "For '4-0' read '3-0' in the second line."]
)
def test_words_that_stand_twice_are_not_put_right_by_guess(correction: str) -> None:
    assert misprints(f"{BODY} Skin 4-0 nylon.\n\nAddendum\n{correction}\n") == []


@pytest.mark.parametrize(
    "sentence",
    [
        "For the next stage we should read the scan again.",
        "The date of operation should read 3 May 2031.",
        "The registrar should say so to the family.",
    ],
)
def test_ordinary_sentences_put_nothing_right(sentence: str) -> None:
    assert misprints(f"{BODY}\n\n{sentence}\n") == []


@pytest.mark.parametrize("noun", ["statement", "entry above"])
def test_a_statement_called_wrong_tells_nothing(noun: str) -> None:
    note = f"{BODY} On passive movement there was no gap.\n\nAddendum\nThe {noun} that there was no gap is wrong: "
    assert each(note + "there was a gap of 1 mm.\n", "gap") == {"ring FDP": "seen"}


@pytest.mark.parametrize("told", ["is wrong: there were six", "was incorrect, it should be 6"])
def test_a_count_called_wrong_is_the_one_the_note_gives(told: str) -> None:
    assert each(f"{BODY}\n\nAddendum\nThe number of strands {told}.\n", "strands") == {"ring FDP": 6}


@pytest.mark.parametrize("label", ["FDS: repaired.", "FDS repaired.", "FDS was repaired, not excised."])
def test_an_addendum_repairs_what_the_body_excised(label: str) -> None:
    body = "Ring finger. FDP completely divided. The FDS was completely divided and was excised."
    assert each(f"{body}\n\nAddendum\n{label}\n", "treatment")["ring FDS"] == "repaired"


@pytest.mark.parametrize("label", ["Epitendinous: 6-0 Prolene running.", "Peripheral suture: 6-0 Prolene."])
def test_a_label_within_an_addendum_belongs_to_it(label: str) -> None:
    note = f"{BODY} No epitendinous suture was placed.\n\nAddendum\n{label}\n"
    assert each(note, "peripheral") == {"ring FDP": "present"}


@pytest.mark.parametrize("head", ["P.S.", "Note added the following day", "Late entry"])
def test_what_was_added_later_puts_right(head: str) -> None:
    note = f"{BODY} A2 was intact.\n\n{head}\nPurchase was in fact 10 mm on each side.\n"
    assert each(note, "purchase_mm") == {"ring FDP": (10.0, 10.0)}


@pytest.mark.parametrize("said", ["The FDS was excised, not repaired.", "The FDS was excised and not repaired."])
def test_excised_and_not_repaired_is_excised(said: str) -> None:
    body = "Ring finger. FDP completely divided. The FDS was completely divided and was repaired."
    assert each(f"{body}\n\nAddendum\n{said}\n", "treatment")["ring FDS"] == "excised"


@pytest.mark.parametrize(
    "sentence",
    [
        "'Two-strand core' should read 'four-strand core'? Please ask the attending.",
        "I do not think that '8 mm' should read '12 mm'.",
        "Nobody knows whether for 4-0 one should read 3-0.",
        "In the index finger '8 mm' should read '12 mm'.",
        "'8 mm' should read '12 mm' in the FDS.",
    ],
)
def test_what_is_asked_denied_or_of_another_part_puts_nothing_right(sentence: str) -> None:
    assert misprints(f"{BODY}\n\nAddendum\n{sentence}\n") == []


@pytest.mark.parametrize(
    "lines", ["'4-0' should read '3-0'. '3-0' should read '2-0'.", "For 8 mm read 10 mm. For 10 mm read 12 mm."]
)
def test_corrections_of_the_same_words_are_not_chosen_between(lines: str) -> None:
    assert misprints(f"{BODY}\n\nAddendum\n{lines}\n") == []


def test_strands_talked_of_for_another_tendon_change_none() -> None:
    note = "Ring finger. FDP and FDS completely divided. The FDS was repaired with two strands.\n\nAddendum\n"
    note += "For the FDP we talked about two strands, but four were placed.\n"
    assert each(note, "strands").get("ring FDS") == 2
