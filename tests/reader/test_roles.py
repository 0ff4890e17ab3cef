"""Whose thread it is: of the core or round the tendon, never of skin, nerve, vessel, pulley, sheath or bone."""

import pytest
from reader_sentences import fact_of, told

SUTURE = ("size", "material", "peripheral", "peripheral_size", "peripheral_material", "strands", "stitch")
CORE = "Right small finger. FDP divided and repaired with a four-strand core suture of 4-0 Ethibond. "
CORE_TOLD = {"size": "4-0", "material": "braided polyester", "strands": 4}
NOTHING_OF_THE_CORE = "Left ring finger. FDP completely divided and repaired. "


@pytest.mark.parametrize(
    "sentence",
    [
        "Skin closed with 5-0 nylon.",
        "Skin: 4/0 Vicryl Rapide.",
        "The wound was closed with interrupted 5-0 Prolene.",
        "The ulnar digital nerve was repaired with 9-0 nylon.",
        "Both digital nerves were sutured with 8-0 Ethilon.",
        "The radial digital artery was repaired using 10-0 nylon.",
        "A2 was repaired with 5-0 PDS.",
        "The A4 pulley was sutured with 6-0 Prolene.",
        "The tendon sheath was closed with 6-0 nylon.",
        "The sheath was left open; its edge had been held with 4-0 silk.",
        "The volar plate was reattached with 3-0 PDS.",
        "The extensor tendon was repaired with 3-0 Ethibond.",
        "A stay suture of 3-0 silk had been placed and was removed.",
        "A drain was fixed with 2-0 silk.",
        "The nail bed was repaired with 6-0 Vicryl.",
        "The old 4-0 nylon skin sutures were removed at the start.",
        "Subcutaneous 4-0 Monocryl, skin 5-0 nylon.",
        "The dorsal skin wound was sutured in the emergency department with 4-0 silk.",
    ],
)
def test_threads_of_others_are_no_core(sentence: str) -> None:
    assert told(CORE + sentence, *SUTURE) == {"small FDP": CORE_TOLD}
    assert told(NOTHING_OF_THE_CORE + sentence, *SUTURE) == {}


@pytest.mark.parametrize(
    ("sentence", "expected"),
    [
        (
            "Core 3-0 Ethibond, peripheral 6-0 Prolene, skin 4-0 nylon.",
            ("3-0", "braided polyester", "6-0", "polypropylene"),
        ),
        (
            "The tendon was repaired with 4-0 FiberWire as core and 5-0 Prolene as epitendinous suture. Skin "
            "5-0 Vicryl.",
            ("4-0", "polyblend", "5-0", "polypropylene"),
        ),
        (
            "6-0 nylon was used for the epitendinous and 3-0 Prolene for the core suture; 9-0 nylon for the nerve.",
            ("3-0", "polypropylene", "6-0", "nylon"),
        ),
        (
            "Core: 2-0 Ethibond. Epitendinous: 5-0 PDS. Nerve: 8-0 nylon. Skin: 4-0 Prolene.",
            ("2-0", "braided polyester", "5-0", "polydioxanone"),
        ),
    ],
)
def test_core_and_peripheral_beside_others(sentence: str, expected: tuple[str, str, str, str]) -> None:
    note = "Right small finger. FDP divided. " + sentence
    shown = told(note, *SUTURE)["small FDP"]
    assert (shown["size"], shown["material"], shown["peripheral_size"], shown["peripheral_material"]) == expected


@pytest.mark.parametrize(
    ("sentence", "material"),
    [
        (
            "Attention was then turned to the ulnar digital nerve. Four stitches of 9-0 nylon were placed.",
            "braided polyester",
        ),
        ("We then went on to the A2 pulley. 5-0 Prolene was used.", "braided polyester"),
    ],
)
def test_a_thread_follows_what_was_worked_on_last(sentence: str, material: str) -> None:
    shown = told(CORE + sentence, *SUTURE)["small FDP"]
    assert (shown["size"], shown["material"]) == ("4-0", material)


@pytest.mark.parametrize(
    "line",
    [
        "Sutures used: 5-0 PDS (A4), 3-0 Ethibond (core), 6-0 Prolene (epitendinous), 5-0 nylon (skin).",
        "Suture materials: skin 4-0 nylon, core 3-0 Ethibond, epitendinous 6-0 Prolene, nerve 9-0 nylon.",
    ],
)
def test_a_list_of_sutures(line: str) -> None:
    shown = told("Left index finger. FDP divided and repaired. " + line, *SUTURE)["index FDP"]
    assert (shown["size"], shown["material"]) == ("3-0", "braided polyester")
    assert (shown["peripheral_size"], shown["peripheral_material"]) == ("6-0", "polypropylene")


@pytest.mark.parametrize(
    "sentence",
    [
        "FDP reinserted with a bone anchor loaded with 2-0 FiberWire.",
        "FDP reattached to the distal phalanx by a pull-out suture of 3-0 Prolene over a button.",
    ],
)
def test_a_thread_that_holds_the_tendon_to_bone_is_its_core(sentence: str) -> None:
    shown = told("Right ring finger. FDP avulsed. " + sentence, *SUTURE, "treatment")["ring FDP"]
    assert shown["treatment"] == "reinserted"
    assert shown["size"] in ("2-0", "3-0")


@pytest.mark.parametrize(
    "sentence",
    [
        "A first core of 5-0 nylon pulled out and was replaced by a 3-0 Ethibond four-strand core.",
        "The initial 4-0 Prolene core broke; it was replaced with a 3-0 Ethibond four-strand core suture.",
    ],
)
def test_a_core_changed_during_the_operation(sentence: str) -> None:
    """Which of the two counts is for a person to see: the thinner may be proposed, the thicker never without a word."""
    note = "Right ring finger. FDP divided and repaired. " + sentence
    fact = fact_of(note, "ring FDP", "size")
    assert fact.value == "3-0" or fact.look_twice


TOLD_BEFORE = ("Core: Strickland, 4-0 Ethibond, four strands. ", "Repaired with a Strickland of 4-0 Ethibond. ")


@pytest.mark.parametrize("core", TOLD_BEFORE)
@pytest.mark.parametrize(
    "words",
    [
        "Then a round-and-round of 6-0 nylon, plain running.",
        "Over it 6/0 Prolene, criss-cross.",
        "Around that 6/0 nylon, cross-stitch.",
        "This was oversewn with 6-0 Prolene.",
        "The edges were tidied with 6-0 Prolene.",
    ],
)
def test_a_thin_suture_led_over_the_core_is_peripheral(core: str, words: str) -> None:
    found = told("Left middle finger. FDP cut through. " + core + words, "size", "peripheral", "peripheral_size")
    assert found == {"middle FDP": {"size": "4-0", "peripheral": "present", "peripheral_size": "6-0"}}


@pytest.mark.parametrize(
    "words", ["Over it the sheath was closed with 6-0 Vicryl.", "A2 was sutured over it with 6-0 nylon."]
)
def test_what_is_closed_over_a_repair_is_not_its_periphery(words: str) -> None:
    found = told("Left middle finger. FDP cut through. " + TOLD_BEFORE[1] + words, "size", "peripheral")
    assert found == {"middle FDP": {"size": "4-0"}}
