"""Cores told twice or in parts: redone, taken back in speech, summed up; purchases and locks in other words."""

import pytest
from reader_sentences import Shown, fact_of, told

CUT = "Left ring finger, zone II. FDP completely divided. "


@pytest.mark.parametrize(
    "sentences",
    [
        "First attempt: Strickland, 3-0 Prolene. Taken out completely. Second attempt: locked cruciate, 4-0 FiberWire.",
        "Repair number one: 3-0 Prolene, Strickland. It was taken apart. Repair number two: 4-0 FiberWire, locked "
        "cruciate.",
        "FDP repaired with a Strickland of 3-0 Prolene. This pulled out and was replaced by a locked cruciate of "
        "4-0 FiberWire.",
    ],
)
def test_a_core_that_was_redone_is_the_last_one(sentences: str) -> None:
    assert told(CUT + sentences, "stitch", "size", "material") == {
        "ring FDP": {"stitch": "locked cruciate", "size": "4-0", "material": "polyblend"}
    }
    assert [r.value for r in fact_of(CUT + sentences, "ring FDP", "size").rivals] == ["3-0"]


@pytest.mark.parametrize(
    "sentence",
    [
        "FDP repaired with 3-0 Prolene. Sutures out at 14 days.",
        "The old 4-0 nylon was taken out. FDP repaired with 3-0 Prolene.",
        "FDP repaired with 3-0 Prolene. A stay suture of 2-0 silk was removed and the nerve was replaced by a graft.",
    ],
)
def test_nothing_was_redone(sentence: str) -> None:
    fact = fact_of(CUT + sentence, "ring FDP", "size")
    assert (fact.value, fact.rivals) == ("3-0", [])


@pytest.mark.parametrize(
    ("sentence", "expected"),
    [
        (
            "FDP repaired with three oh prolene hang on no that was three oh ticron six strand savage.",
            {"size": "3-0", "material": "braided polyester", "strands": 6},
        ),
        (
            "FDP repaired with four strands, correction, six strands of 4-0 nylon.",
            {"size": "4-0", "material": "nylon", "strands": 6},
        ),
    ],
)
def test_what_a_speaker_takes_back(sentence: str, expected: dict[str, object]) -> None:
    assert told(CUT + sentence, "strands", "size", "material") == {"ring FDP": expected}


@pytest.mark.parametrize(
    "sentences",
    [
        "FDP repaired with a two-strand Kessler of 3-0 Ethibond. A second one was placed at right angles, so in all we "
        "count four strands.",
        "FDP repaired with a two strand Tajima, then another crosswise, that makes four strands in total.",
    ],
)
def test_strands_summed_up(sentences: str) -> None:
    assert told(CUT + sentences, "strands") == {"ring FDP": {"strands": 4}}


@pytest.mark.parametrize(
    "sentence",
    [
        "FDP repaired with two strands of 3-0 nylon. Four strands was an option, the tendon too soft.",
        "FDP: 2 strands of 3-0.",
    ],
)
def test_no_sum_of_strands(sentence: str) -> None:
    assert told(CUT + sentence, "strands") == {"ring FDP": {"strands": 2}}


@pytest.mark.parametrize(
    ("words", "ends"),
    [
        ("each throw standing 10 mm from the cut on either side", (10, 10)),
        ("7 mm proximal and 9 mm distal", (7, 9)),
        ("anchored 10 to 12 mm from the cut", (10, 12)),
        ("with grip of 12 mm in every stump", (12, 12)),
        ("10 mm taken on both sides after trimming 2 mm", (10, 10)),
    ],
)
def test_purchase_in_other_words(words: str, ends: tuple[float, float]) -> None:
    assert told(f"{CUT}Repaired with a cruciate of 3-0 Ethibond, four strands, {words}.", "purchase_mm") == {
        "ring FDP": {"purchase_mm": ends}
    }


@pytest.mark.parametrize(
    ("sentence", "expected"),
    [
        ("The proximal core purchase was approximately 1 cm and the distal 8 mm.", {"purchase_mm": (8, 10)}),
        ("Purchase       7-10 mm", {"purchase_mm": (7, 10)}),
        ("The loops lock, about 2 mm apiece.", {"lock_mm": (2, 2), "hold": "locking"}),
        ("Lock diameter    2 mm", {"lock_mm": (2, 2), "hold": "locking"}),
    ],
)
def test_lengths_of_the_core(sentence: str, expected: dict[str, object]) -> None:
    note = f"{CUT}Repaired with a four-strand core of 3-0 Ethibond.\n{sentence}\n"
    assert told(note, "purchase_mm", "lock_mm", "hold") == {"ring FDP": expected}


@pytest.mark.parametrize(
    "sentence",
    [
        "The ends were freshened, resecting 2 mm per each side, 4 mm in total.",
        "3 to 4 mm of tendon were removed and the remains taken away.",
        "A distal stump of only 7 mm was left on the bone.",
        "The wound was extended 15 mm proximally and 10 mm distally.",
    ],
)
def test_lengths_that_are_no_purchase(sentence: str) -> None:
    assert not told(f"{CUT}{sentence} Repaired with a four-strand core of 3-0 Ethibond.", "purchase_mm")


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right ring finger: FDP completely divided, FDS radial slip completely divided. FDP repaired with 3-0 "
            "Ticron, the radial FDS slip was sutured with 4-0; a running 6-0 Prolene was then laid around the FDP.",
            {"ring FDP": {"peripheral": "present", "peripheral_size": "6-0"}},
        ),
        (
            "Left thumb FPL and index FDP completely divided, both repaired with 4-0 nylon. A running 6-0 nylon suture "
            "was placed around the thumb repair and none around the index.",
            {
                "thumb FPL": {"peripheral": "present", "peripheral_size": "6-0"},
                "index FDP": {"peripheral": "absent"},
            },
        ),
    ],
)
def test_what_a_suture_is_put_around(note: str, expected: Shown) -> None:
    assert told(note, "peripheral", "peripheral_size") == expected


@pytest.mark.parametrize("words", ["3-0 Supramid loop", "a loop suture of 3-0 Supramid", "3-0 looped Supramid"])
def test_looped_threads(words: str) -> None:
    assert told(f"{CUT}Core: {words}, Lim-Tsai, six strands.", "looped") == {"ring FDP": {"looped": True}}


def test_no_looped_thread() -> None:
    assert not told(f"{CUT}Core: 3-0 Supramid, four strands, loops of 2 mm.", "looped")
