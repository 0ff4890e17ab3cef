"""Sutures told by reference to another repair."""

import pytest
from reader_sentences import fact_of, given_to, told

SUTURE = ("strands", "stitch", "size", "material", "peripheral", "peripheral_size", "peripheral_material")
INDEX = (
    "Left hand. Index and small fingers, FDP of both completely divided. Index FDP repaired with a "
    "four-strand Adelaide of 4-0 Prolene and a running 6-0 nylon epitendinous suture. "
)
RING = (
    "Right hand. Ring and small FDP cut through. The ring FDP was repaired with a 6-strand core of 3-0 "
    "Ethibond and a 5-0 Prolene epitendinous suture. "
)


@pytest.mark.parametrize(
    "sentence",
    [
        "The small FDP was repaired in the same manner.",
        "The small finger FDP was repaired likewise.",
        "Small FDP: same repair.",
        "The small FDP was repaired in identical fashion.",
        "An identical repair was done on the small FDP.",
    ],
)
def test_the_same_was_done(sentence: str) -> None:
    shown = told(INDEX + sentence, *SUTURE)
    assert (
        shown["small FDP"]
        == shown["index FDP"]
        == {
            "strands": 4,
            "stitch": "adelaide",
            "size": "4-0",
            "material": "polypropylene",
            "peripheral": "present",
            "peripheral_size": "6-0",
            "peripheral_material": "nylon",
        }
    )
    shown = told(RING + sentence, *SUTURE)
    assert shown["small FDP"] == shown["ring FDP"]
    assert shown["small FDP"]["strands"] == 6


@pytest.mark.parametrize(
    "sentence", ["The small FDP was repaired in the same manner.", "Small FDP repaired like the index."]
)
def test_of_what_is_told_by_reference_the_strands_bear_a_reason(sentence: str) -> None:
    fact = fact_of(INDEX + sentence, "small FDP", "strands")
    assert given_to(INDEX + sentence, "small FDP", "strands") == {"by_reference"}
    assert not given_to(INDEX + sentence, "small FDP", "size")
    assert fact.evidence[0].exact in sentence


@pytest.mark.parametrize(
    ("sentence", "strands"),
    [
        ("The small FDP was repaired in the same manner but with two strands.", 2),
        ("Small FDP repaired likewise, with 2 strands.", 2),
    ],
)
def test_what_is_said_of_the_tendon_itself_beats_the_reference(sentence: str, strands: int) -> None:
    assert told(INDEX + sentence, "strands")["small FDP"] == {"strands": strands}
    assert told(INDEX + sentence, "strands")["index FDP"] == {"strands": 4}


@pytest.mark.parametrize(
    "sentence",
    [
        "The small FDP was repaired with a single 5-0 nylon suture.",
        "The small FDP was left. The same wound was used.",
        "The small finger nerve was repaired in the same manner as the index nerve.",
        "The skin of the small finger was closed in the same way.",
        "At the same time the small finger was explored.",
        "Usually the small FDP is repaired in the same manner.",
        "The small FDP will be repaired in the same manner next week.",
        "The small FDP was not repaired in the same manner.",
    ],
)
def test_no_reference(sentence: str) -> None:
    assert "stitch" not in told(INDEX + sentence, "stitch").get("small FDP", {})
    assert told(RING + sentence, "strands").get("small FDP", {}).get("strands") != 6


@pytest.mark.parametrize(
    "sentence",
    [
        "The small FDP had a core of 3-0 FiberWire with the same epitendinous suture.",
        "Small FDP: 3-0 FiberWire core, same epitendinous suture.",
    ],
)
def test_only_the_peripheral_suture_was_the_same(sentence: str) -> None:
    shown = told(INDEX + sentence, *SUTURE)["small FDP"]
    assert (shown["peripheral"], shown["peripheral_size"], shown["size"], shown["material"]) == (
        "present",
        "6-0",
        "3-0",
        "polyblend",
    )
    assert "strands" not in shown


def test_a_cell_of_a_grid_that_says_as_another_finger() -> None:
    note = (
        "Middle and ring finger, left.\n\n"
        "| Finger  | Tendon | Divided   | Core                     | Epitendinous   |\n"
        "| Long    | FDP    | 100%      | M-Tang, 4/0 looped nylon | 6/0 nylon      |\n"
        "| Ring    | FDP    | 100%      | as long                  | as long        |\n"
    )
    found = told(note, "stitch", "size", "peripheral_size")
    assert found["ring FDP"] == found["middle FDP"] == {"stitch": "m-tang", "size": "4-0", "peripheral_size": "6-0"}


@pytest.mark.parametrize(
    "sentence",
    [
        "Small FDP caught on A4; free once that pulley had been vented as above.",
        "The small FDP was not sutured with the same core as the index.",
    ],
)
def test_what_is_as_above_or_unlike_is_no_suture(sentence: str) -> None:
    assert "stitch" not in told(INDEX + sentence, "stitch").get("small FDP", {})


@pytest.mark.parametrize(
    "sentence",
    [
        "The small profundus, cut through, was given the same core.",
        "The small FDP got the same core; no epitendinous suture was set.",
        "The small FDP received the same core suture but no epitendinous.",
    ],
)
def test_the_same_core_says_nothing_of_the_rim(sentence: str) -> None:
    shown = told(INDEX + sentence, *SUTURE)
    assert shown["small FDP"].get("peripheral") != "present"
    assert {name: shown["small FDP"][name] for name in ("strands", "size")} == {"strands": 4, "size": "4-0"}


def test_the_same_core_and_the_same_rim() -> None:
    shown = told(INDEX + "Small FDP: cut through, same core, same epi.", *SUTURE)
    assert (shown["small FDP"]["strands"], shown["small FDP"]["peripheral_size"]) == (4, "6-0")


@pytest.mark.parametrize(
    "words",
    [
        "The index and small profundi were joined with a four-strand cruciate of 3-0 Fiberwire; the middle FDP, also "
        "cut through, got the same core but no epitendinous stitch.",
        "The profundi of the index and small were each sewn with four strands of 3-0 Fiberwire; the middle FDP, "
        "divided as well, had the same core and no epitendinous suture.",
    ],
)
def test_the_same_behind_a_semicolon_is_of_the_tendon_named_there(words: str) -> None:
    note = "Index and small fingers, FDP of both divided. " + words
    shown = told(note, *SUTURE)["middle FDP"]
    assert (shown["strands"], shown["size"], shown["peripheral"]) == (4, "3-0", "absent")


@pytest.mark.parametrize(
    "words", ["FDS was repaired with the same suture as a two-strand Kessler.", "FDS: same suture in a simple Kessler."]
)
def test_the_same_thread_in_another_stitch(words: str) -> None:
    note = (
        "Ring FDP and FDS divided. FDP was repaired with a 4-strand Adelaide, 3-0 Ethibond, plus running 6-0 Prolene. "
    )
    shown = told(note + words, "size", "material", "stitch", "peripheral")
    assert shown["ring FDS"] == {"size": "3-0", "material": "braided polyester", "stitch": "kessler"}


@pytest.mark.parametrize("row", ["Ring FDP -> same", "Ring FDP -> the same"])
def test_the_same_behind_an_arrow(row: str) -> None:
    note = f"Index and ring FDP cut through.\nIndex FDP -> 4-strand cruciate 3-0 Prolene\n{row}\n"
    assert told(note, "strands", "size")["ring FDP"] == {"strands": 4, "size": "3-0"}


@pytest.mark.parametrize(
    "words",
    [
        "The former was repaired, the latter excised.",
        "The former was repaired; the latter was removed.",
    ],
)
def test_the_latter_of_two_tendons_is_no_pulley(words: str) -> None:
    """'FDP and FDS both transected. The former was repaired, the latter excised': both deeds are of tendons."""
    assert told(f"Ring finger, zone II, FDP and FDS both transected. {words}", "treatment") == {
        "ring FDP": {"treatment": "repaired"},
        "ring FDS": {"treatment": "excised"},
    }


def test_the_latter_of_two_pulleys_is_a_pulley() -> None:
    note = "Ring. FDP and FDS cut. Of A2 and A4 the former was vented and the latter was released."
    assert told(note, "finding", group="pulleys") == {
        "ring A2": {"finding": "vented"},
        "ring A4": {"finding": "released"},
    }


@pytest.mark.parametrize(
    "words",
    ["the latter runs free, the former still catches at the chiasm", "the former catches, the latter glides freely"],
)
def test_the_former_that_still_catches(words: str) -> None:
    """'The former still catches': the words between change nothing of which tendon is meant."""
    note = f"Middle finger, both flexors transected and both repaired. FDP and FDS: {words}."
    assert told(note, "glide") == {"middle FDP": {"glide": "catching"}, "middle FDS": {"glide": "free"}}
