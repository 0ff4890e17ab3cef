"""One word answered for several repairs, other tendons left without, and words that only look like answers."""

import pytest
from reader_sentences import Shown, told

TWO = (
    "Left hand. Index finger: FDP completely divided, repaired with a four-strand cruciate of 4-0 nylon. "
    "Middle finger: FDP completely divided, repaired with a four-strand cruciate of 4-0 nylon. "
)
BOTH = "Right ring finger, zone II. FDP completely divided. FDS completely divided. "
ONE = "Right ring finger, zone II. FDP completely divided, repaired with a four-strand core of 3-0 Ethibond. "


@pytest.mark.parametrize(
    ("sentence", "expected"),
    [
        ("Tension: index yes, middle no.", {"index FDP": {"tension": "present"}, "middle FDP": {"tension": "none"}}),
        (
            "Tension: none in the index, some in the middle finger.",
            {"index FDP": {"tension": "none"}, "middle FDP": {"tension": "present"}},
        ),
        (
            "Index FDP was joined under some tension, middle FDP not.",
            {"index FDP": {"tension": "present"}, "middle FDP": {"tension": "none"}},
        ),
        (
            "The index repair is bulky, the middle finger is not.",
            {"index FDP": {"bulk": "present"}, "middle FDP": {"bulk": "none"}},
        ),
        (
            "Gap: none in the index finger, 1 mm in the middle finger.",
            {"index FDP": {"gap": "none"}, "middle FDP": {"gap": "seen", "gap_mm": 1.0}},
        ),
    ],
)
def test_answers_for_single_repairs(sentence: str, expected: Shown) -> None:
    assert told(TWO + sentence, "tension", "bulk", "gap", "gap_mm") == expected


@pytest.mark.parametrize(
    "sentence",
    [
        "A bulky cotton dressing was applied.",
        "Six strands were judged too bulky for this sheath.",
        "Tension was set by the cascade.",
        "The tension is regulated according to the index.",
        "The knot was sunk into the tendon gap.",
        "Bulk: ________",
    ],
)
def test_words_of_no_repair(sentence: str) -> None:
    assert not told(ONE + sentence, "tension", "bulk", "gap")


@pytest.mark.parametrize(
    ("sentence", "expected"),
    [
        ("No gap on passive extension, although the tendon is under tension.", {"gap": "none", "tension": "present"}),
        ("It was pulled on and did not gap, but it felt thick.", {"gap": "none", "bulk": "present"}),
    ],
)
def test_two_things_told_together(sentence: str, expected: dict[str, object]) -> None:
    assert told(ONE + sentence, "gap", "tension", "bulk") == {"ring FDP": expected}


@pytest.mark.parametrize(
    "sentences",
    [
        "FDP repaired with 3-0 Ethibond. FDS repaired with 4-0 Ethibond. Epitendinous: 6-0 PDS, running, FDP only.",
        "FDP repaired with 3-0 Ethibond. FDS repaired with 4-0 Ethibond. The profundus alone got an epitendinous 6-0.",
        "FDP repaired with 3-0 Ethibond. FDS repaired with 4-0 Ethibond. Epitendinous 6-0 on the FDP, none on the FDS.",
    ],
)
def test_one_tendon_only_got_a_peripheral_suture(sentences: str) -> None:
    assert told(BOTH + sentences, "peripheral") == {
        "ring FDP": {"peripheral": "present"},
        "ring FDS": {"peripheral": "absent"},
    }


def test_a_peripheral_suture_forgone() -> None:
    note = f"{BOTH}FDP repaired with 3-0 Ethibond. I elected to forgo an epitendinous stitch."
    assert told(note, "peripheral") == {"ring FDP": {"peripheral": "absent"}}


@pytest.mark.parametrize(
    ("words", "stitch"),
    [
        ("in a modified Kessler fashion doubled", "double modified kessler"),
        ("as a Tsuge and doubled up", "double tsuge"),
        ("as a modified Kessler", "modified kessler"),
        ("as a modified Kessler with a doubled needle", "modified kessler"),
    ],
)
def test_stitches_doubled(words: str, stitch: str) -> None:
    assert told(f"{BOTH}FDP repaired with 4-0 nylon {words}.", "stitch") == {"ring FDP": {"stitch": stitch}}


@pytest.mark.parametrize(
    ("sentence", "expected"),
    [
        (
            "The FDP stump was tenodesed to the middle phalanx through two drill holes with 2-0 Vicryl.",
            {"size": "2-0", "material": "polyglactin"},
        ),
        (
            "FDP repaired with a two-strand Kessler stitch of 4-0 Ethibond and finished with a running 6-0 Prolene.",
            {"size": "4-0", "material": "braided polyester", "peripheral_size": "6-0"},
        ),
        (
            "FDP brought back to bone, pull-out of 2-0 Prolene. The stump was stitched over with 4-0 Vicryl.",
            {"size": "2-0"},
        ),
    ],
)
def test_which_suture_is_the_core(sentence: str, expected: dict[str, object]) -> None:
    read = told(BOTH + sentence, "size", "material", "peripheral_size")["ring FDP"]
    assert {name: read.get(name) for name in expected} == expected


@pytest.mark.parametrize(
    "sentence",
    [
        "Core technique: Kessler / cruciate / figure-of-eight / other ->",
        "Locking: Y / N",
        "Core 3-0, locked: yes / no.",
    ],
)
def test_choices_left_open(sentence: str) -> None:
    assert not told(f"{BOTH}FDP repaired, four strands.\n{sentence}\n", "stitch", "hold")
