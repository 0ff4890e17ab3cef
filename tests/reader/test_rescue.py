"""Misspelt names are read as what they mean, with a reason to look twice; ordinary words are left alone."""

import pytest
from reader_sentences import fact_of, told

from notereader.reader.mentions.rescue import Rescue
from notereader.vocabulary.terms import terms

RING = "Left ring finger. FDP completely divided and repaired with 4-0 nylon. "


@pytest.mark.parametrize(
    ("sentence", "field", "value"),
    [
        ("Core: modified Kesler.", "stitch", "modified kessler"),
        ("Core: modified Kessller.", "stitch", "modified kessler"),
        ("A Stricklnd core was used.", "stitch", "strickland"),
        ("Core: Adelade.", "stitch", "adelaide"),
        ("Core: Bunell.", "stitch", "bunnell"),
        ("Core: Tajimma.", "stitch", "tajima"),
    ],
)
def test_stitches(sentence: str, field: str, value: str) -> None:
    assert told(RING + sentence, field) == {"ring FDP": {field: value}}
    assert any("misspelt" in reason for reason in fact_of(RING + sentence, "ring FDP", field).look_twice)


@pytest.mark.parametrize(
    ("words", "material"),
    [
        ("Ethbond", "braided polyester"),
        ("Ethibnd", "braided polyester"),
        ("Prolenne", "polypropylene"),
        ("Fiberwyre", "polyblend"),
        ("Polyproplene", "polypropylene"),
    ],
)
def test_materials(words: str, material: str) -> None:
    note = f"Left ring finger. FDP divided and repaired with a 3-0 {words} core suture."
    assert told(note, "material") == {"ring FDP": {"material": material}}
    assert any("misspelt" in reason for reason in fact_of(note, "ring FDP", "material").look_twice)


@pytest.mark.parametrize(
    "words",
    ["profundis", "profondus", "proffundus"],
)
def test_tendons(words: str) -> None:
    note = f"Left ring finger. The {words} was completely divided and repaired with 4-0 nylon."
    assert told(note, "extent", "treatment") == {"ring FDP": {"extent": "complete", "treatment": "repaired"}}


@pytest.mark.parametrize("words", ["superficalis", "superficiallis"])
def test_the_superficial_tendon(words: str) -> None:
    note = f"Left ring finger. The {words} was completely divided and repaired with 4-0 nylon."
    assert told(note, "extent", "treatment") == {"ring FDS": {"extent": "complete", "treatment": "repaired"}}


@pytest.mark.parametrize("words", ["epitendonous", "epitendinos", "epitendenous", "epitendineous"])
def test_the_peripheral_suture(words: str) -> None:
    assert told(f"{RING}Running 6-0 Prolene {words} suture.", "peripheral") == {"ring FDP": {"peripheral": "present"}}


@pytest.mark.parametrize(
    "sentence",
    [
        "A wrestler by trade.",
        "He keeps cattle and a vessel.",
        "The tailor brought a savings book.",
        "Nurse Prudence helped; the problem was profound.",
        "The patient is a saddler and a hustler.",
        "Superficial wounds of the palm were profuse.",
        "Silly questions from the students, running late.",
        "Prolonged surgery; the profile was noted.",
        "Consent was crucial. The crucible of the case.",
        "The tailback on the road and the Beckett ward.",
        "It was done as a salvage procedure.",
        "The wound was chronic, the winter long.",
        "The lambert and the becket are words too.",
        "The tendon sheaths were inspected, the switching of gloves noted.",
    ],
)
def test_ordinary_words_are_left_alone(sentence: str) -> None:
    assert told(RING + sentence) == {
        "ring FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0", "material": "nylon"}
    }


@pytest.mark.parametrize("words", ["Kes", "Savge", "Evns", "Le", "PDX"])
def test_short_names_are_never_guessed(words: str) -> None:
    assert told(f"{RING}Core: {words}.", "stitch") == {}


@pytest.mark.parametrize(
    "note",
    [
        "L small fngr, zone II: FDP dvdd, rprd with 4 strnds of 4-0.",
        "Left small fngr. FDP tndn completely dvdd and rprd, 4 strnds 4-0.",
        "Lft smll finger FDP dvdd, four strnds 4-0 used, rprd.",
    ],
)
def test_words_without_their_vowels(note: str) -> None:
    found = told(note, "extent", "treatment", "strands", "size")
    assert found == {"small FDP": {"extent": "complete", "treatment": "repaired", "strands": 4, "size": "4-0"}}


@pytest.mark.parametrize("words", ["MCPJ", "DIPJ", "rltv", "nrvs", "HTML", "hmm", "LMWH"])
def test_letters_that_may_be_several_words_or_none_are_left(words: str) -> None:
    assert Rescue(terms()).spelling(words.lower()) is None
