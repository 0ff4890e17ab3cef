"""Whole small notes and everything that may be proposed of their tendons: what is not said is not there."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("FDP repair, right ring finger.", {"ring FDP": {"treatment": "repaired"}}),
        ("Right hand explored. Wound washed and closed with 4-0 nylon.", {}),
        (
            "Left index. FDP completely divided, repaired, mod Kessler 4-0 Ethibond.",
            {
                "index FDP": {
                    "extent": "complete",
                    "treatment": "repaired",
                    "stitch": "modified kessler",
                    "size": "4-0",
                    "material": "braided polyester",
                    "strands": 2,
                }
            },
        ),
        (
            "Right small finger. FDP and FDS completely cut. FDP repaired with 3-0 Prolene. FDS excised. Wound "
            "closed with 5-0 nylon.",
            {
                "small FDP": {
                    "extent": "complete",
                    "treatment": "repaired",
                    "size": "3-0",
                    "material": "polypropylene",
                },
                "small FDS": {"extent": "complete", "treatment": "excised"},
            },
        ),
        (
            "Left middle finger. The FDP was completely divided. The tendon was repaired with a four-strand 4-0 "
            "nylon. The FDS slips were each tacked.",
            {
                "middle FDP": {
                    "extent": "complete",
                    "treatment": "repaired",
                    "strands": 4,
                    "size": "4-0",
                    "material": "nylon",
                }
            },
        ),
        (
            "Right thumb. FPL completely divided in zone II. Repaired with 3-0 FiberWire. Every fibre of the "
            "suture was checked. The oblique pulley was preserved.",
            {
                "thumb FPL": {
                    "extent": "complete",
                    "treatment": "repaired",
                    "zone": "II",
                    "size": "3-0",
                    "material": "polyblend",
                }
            },
        ),
        (
            "TEMPLATE\nDigit: ring\nTendon: FDP\nExtent: complete\nStrands: [  ]\nStitch: ______\nCore suture: "
            "4-0 nylon\nEpitendinous: [ ] yes [ ] no\nGap: [ ] none [ ] seen",
            {"ring FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0", "material": "nylon"}},
        ),
        (
            "Patient one: see separate note. Right ring FDP completely divided, repaired with a two-strand core "
            "of 4-0 nylon. The repair will be protected; hopefully no gap forms and it glides freely.",
            {
                "ring FDP": {
                    "extent": "complete",
                    "treatment": "repaired",
                    "strands": 2,
                    "size": "4-0",
                    "material": "nylon",
                }
            },
        ),
    ],
)
def test_all_that_is_proposed(note: str, expected: dict[str, dict[str, object]]) -> None:
    assert told(note) == expected


@pytest.mark.parametrize("tendon", ["FDP", "FDS"])
def test_what_is_said_of_one_tendon_is_not_copied_to_the_other(tendon: str) -> None:
    other = "FDS" if tendon == "FDP" else "FDP"
    for body in (
        f"{tendon} and {other} completely divided. The {tendon} was repaired with a six-strand core of 3-0 Ethibond "
        f"and a running 6-0 epitendinous suture. The {other} was left.",
        f"{tendon} cut through, {other} cut through. "
        f"{tendon}: six-strand 3-0 Ethibond, 6-0 running epitendinous. {other} excised.",
    ):
        shown = told("Right ring finger. " + body)
        assert shown[f"ring {tendon}"]["strands"] == 6
        assert set(shown[f"ring {other}"]) <= {"extent", "treatment", "zone"}
        assert shown[f"ring {other}"]["treatment"] in ("left", "excised")


@pytest.mark.parametrize(
    "sentence",
    [
        "The FDP was approximated.",
        "A strong repair was achieved.",
        "The repair was satisfactory.",
        "Good repair, good strength.",
        "A robust multi-strand repair was made.",
        "The tendon was repaired in the usual way.",
        "Standard core and finishing technique.",
    ],
)
def test_praise_is_no_fact(sentence: str) -> None:
    shown = told("Right ring finger. FDP completely divided and repaired. " + sentence)
    assert set(shown["ring FDP"]) == {"extent", "treatment"}


@pytest.mark.parametrize(
    "sentence",
    [
        "Mr Evans assisted.",
        "Dictated by Dr Lee.",
        "Ward sister: N. Savage.",
        "Seen by Ms Becker from therapy.",
        "Referred by Dr N. Savage.",
        "cc: Dr Lee, Adelaide Street surgery.",
    ],
)
def test_names_of_people_and_places_are_no_stitches(sentence: str) -> None:
    for body in (
        "FDP completely divided and repaired with 4-0 nylon. ",
        "FDP cut through and repaired, core 3-0 Prolene. ",
    ):
        shown = told("Right ring finger. " + body + sentence, "stitch", "strands")
        assert shown == {}


@pytest.mark.parametrize(
    "words",
    [
        "A trainee asked whether eight strands would be safer. Not in 2B.",
        "The student wondered if eight strands might be safer.",
        "The registrar asked me if an eight-strand core was what I wanted.",
    ],
)
def test_what_somebody_asked_is_no_count(words: str) -> None:
    note = "Middle FDP cut through. Core: Evans, 3-0 Ethibond. " + words
    assert told(note, "strands") == {"middle FDP": {"strands": 4}}


@pytest.mark.parametrize("words", ["No epitendinous suture, for the surface lay flat.", "It lay flat."])
def test_lying_flat_says_nothing_of_bulk(words: str) -> None:
    assert told("Middle FDP cut and repaired with 4-0 nylon. " + words, "bulk") == {}
