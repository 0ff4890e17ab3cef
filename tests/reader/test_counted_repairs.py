"""Remarks on several repairs, pointed to or counted: 'any of the six', 'all three', 'the former', 'repair 2'."""

import pytest
from reader_sentences import Shown, told

TWO = (
    "Right ring and small fingers. FDP of both completely divided and repaired with a four-strand "
    "cruciate of 3-0 Ethibond. "
)
FCU = "FDP of the ring and small fingers and FCU completely divided, all repaired with 3-0 Ethibond. "


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            FCU + "The repairs of the ring and small finger tendons showed no gap, and each of them glided freely.",
            {"ring FDP": {"gap": "none", "glide": "free"}, "small FDP": {"gap": "none", "glide": "free"}},
        ),
        (
            FCU + "On passive movement the ring and small finger tendons had no gap, and all of them ran freely.",
            {"ring FDP": {"gap": "none", "glide": "free"}, "small FDP": {"gap": "none", "glide": "free"}},
        ),
    ],
)
def test_them_are_those_told_of_in_the_sentence(note: str, expected: Shown) -> None:
    assert told(note, "gap", "glide") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "FDP of middle and ring and FDS of the middle completely divided and repaired with 4-0 "
            "Prolene. FDS of the "
            "ring trimmed. Extension of the fingers opened no gap at any of the three sutured tendons.",
            {"middle FDP": {"gap": "none"}, "middle FDS": {"gap": "none"}, "ring FDP": {"gap": "none"}},
        ),
        (
            "FDP of index and middle and FDS of the index were sewn with 3-0 Ticron, FDS "
            "of the middle left "
            "alone. When pulled on, none of the three gapped.",
            {"index FDP": {"gap": "none"}, "index FDS": {"gap": "none"}, "middle FDP": {"gap": "none"}},
        ),
    ],
)
def test_counted_repairs_are_the_set_that_has_so_many(note: str, expected: Shown) -> None:
    assert told(note, "gap") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (TWO + "None of the repairs showed a gap.", {"ring FDP": {"gap": "none"}, "small FDP": {"gap": "none"}}),
        (
            TWO + "Neither of the two repairs developed a gap.",
            {"ring FDP": {"gap": "none"}, "small FDP": {"gap": "none"}},
        ),
        (TWO + "The repair of the ring finger showed a gap of 1 mm.", {"ring FDP": {"gap": "seen"}}),
    ],
)
def test_none_of_them_showed_a_gap(note: str, expected: Shown) -> None:
    assert told(note, "gap") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            TWO + "FDS of the ring sewn with 4-0 PDS. I took both FDP repairs through passive motion, no "
            "gapping in either.",
            {"ring FDP": {"gap": "none"}, "small FDP": {"gap": "none"}},
        ),
        (
            "FPL and FDP of the index completely divided and sewn with 3-0 Prolene. Traction was applied "
            "to the FPL and to "
            "the index profundus. The former showed no gap. The latter opened by 1 mm.",
            {"thumb FPL": {"gap": "none"}, "index FDP": {"gap": "seen"}},
        ),
        (
            "FPL and FDP of the ring finger cut and repaired with 4-0 nylon. I pulled on the FPL and the "
            "ring profundus. "
            "The former had no gap, the latter opened by 2 mm.",
            {"thumb FPL": {"gap": "none"}, "ring FDP": {"gap": "seen"}},
        ),
    ],
)
def test_pointed_to_by_both_former_and_latter(note: str, expected: Shown) -> None:
    assert told(note, "gap") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "The ring finger was cut in zone I and the small finger in zone II. In the former the "
            "profundus was completely "
            "divided.",
            {"ring FDP": {"extent": "complete"}},
        ),
        (
            "Wounds of the index and of the middle finger. In the latter the profundus was completely divided.",
            {"middle FDP": {"extent": "complete"}},
        ),
    ],
)
def test_in_the_former_is_the_finger_named_first(note: str, expected: Shown) -> None:
    assert told(note, "extent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "FDP of index and middle cut. A2 was preserved in the index and the middle finger, while A4 "
            "had to be vented in "
            "the former and was left intact in the latter.",
            {
                "index A2": {"finding": "intact"},
                "middle A2": {"finding": "intact"},
                "index A4": {"finding": "vented"},
                "middle A4": {"finding": "intact"},
            },
        ),
        (
            "Small finger. FDP cut. Of the two pulleys, A2 and A4, the former was vented and the latter "
            "was left intact.",
            {"small A2": {"finding": "vented"}, "small A4": {"finding": "intact"}},
        ),
        (
            "FDP of middle and ring cut. The A1 pulley of the ring finger was divided throughout its "
            "length, and that of "
            "the middle finger was preserved.",
            {"ring A1": {"finding": "released"}, "middle A1": {"finding": "intact"}},
        ),
    ],
)
def test_pulleys_pointed_to(note: str, expected: Shown) -> None:
    assert told(note, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "TENDON REPAIR 1\nTendon: FDP index\nCore: cruciate, 4-0 Prolene\n\nTENDON REPAIR 2\nTendon: FDP middle\n"
            "Core: cruciate, 4-0 Prolene\n\nTEST\nGap, repair 1: none\nGap, repair 2: 1 mm\n",
            {"index FDP": {"gap": "none"}, "middle FDP": {"gap": "seen"}},
        ),
        (
            "TENDON REPAIR 1\nTendon: FDP index\nCore: cruciate, 4-0 Prolene\n\nTENDON REPAIR 2\nTendon: FDP middle\n"
            "Core: cruciate, 4-0 Prolene\n\nTEST\nGap, repairs 1 and 2: none\n",
            {"index FDP": {"gap": "none"}, "middle FDP": {"gap": "none"}},
        ),
        (
            "FINGER A: Ring\nFDP: complete, repaired with 3-0 Ethibond\n\nFINGER B: Small\nFDP: "
            "complete, repaired with 3-0 "
            "Ethibond\n\nTESTS\nFinger A, FDP: passive, no gap.\n",
            {"ring FDP": {"gap": "none"}},
        ),
    ],
)
def test_told_by_the_number_or_letter_of_the_form(note: str, expected: Shown) -> None:
    assert told(note, "gap") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "FDP ring and small repaired with 3-0. Passive test. The ring glided free. The small was catching on A4.",
            {"ring FDP": {"glide": "free"}, "small FDP": {"glide": "catching"}},
        ),
        (
            "FDP of the index and middle repaired with 3-0. The index FDP caught at A2, its neighbour ran freely.",
            {"index FDP": {"glide": "catching"}, "middle FDP": {"glide": "free"}},
        ),
        (
            "FDP of the index, middle and ring repaired with 3-0. The middle caught at A2, its neighbours ran freely.",
            {"middle FDP": {"glide": "catching"}},
        ),
        (
            "Middle and ring FDP repaired with 4-0. The middle finger profundus ran freely. Its "
            "neighbour still catches at "
            "the edge of A2.",
            {"middle FDP": {"glide": "free"}, "ring FDP": {"glide": "catching"}},
        ),
    ],
)
def test_the_finger_turned_to(note: str, expected: Shown) -> None:
    assert told(note, "glide") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "FDP of index and middle and FDS of both fingers repaired with 4-0. A running 5-0 Prolene epitendinous "
            "suture was added to both profundus repairs. No epitendinous suture was placed in the superficialis "
            "repairs.",
            {
                "index FDP": {"peripheral": "present"},
                "middle FDP": {"peripheral": "present"},
                "index FDS": {"peripheral": "absent"},
                "middle FDS": {"peripheral": "absent"},
            },
        ),
        (
            "FDP of index and middle and FDS of both fingers repaired with 4-0. A running 5-0 Prolene epitendinous "
            "suture was added to both profundus repairs and omitted in both superficialis repairs.",
            {
                "index FDP": {"peripheral": "present"},
                "middle FDP": {"peripheral": "present"},
                "index FDS": {"peripheral": "absent"},
                "middle FDS": {"peripheral": "absent"},
            },
        ),
        (
            "FDP and FDS of the small finger repaired with 3-0. A running 6-0 epitendinous suture was added to the "
            "profundus repair and left out in the superficialis repair.",
            {"small FDP": {"peripheral": "present"}, "small FDS": {"peripheral": "absent"}},
        ),
        (
            "FDP and FDS of the ring finger repaired with 3-0. A running epitendinous suture of 6-0 "
            "nylon was added to the "
            "profundus repair, but the superficialis was given none.",
            {"ring FDP": {"peripheral": "present"}, "ring FDS": {"peripheral": "absent"}},
        ),
    ],
)
def test_peripheral_sutures_of_some_of_several(note: str, expected: Shown) -> None:
    assert told(note, "peripheral") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Middle finger\n- FDP repaired: 4-strand cruciate, 3-0 Ethibond\nRing finger\n- FDP "
            "repaired: core the same as "
            "for the FDP of the middle finger\n- FDS completely divided, excised\n",
            {
                "middle FDP": {"strands": 4, "treatment": "repaired"},
                "ring FDP": {"strands": 4, "treatment": "repaired"},
                "ring FDS": {"treatment": "excised"},
            },
        ),
        (
            "Index finger\nFDP repaired with a 4-strand cruciate of 4-0 Prolene\nSmall finger\nFDP: core "
            "exactly as in the "
            "index finger FDP\nFDS: excised\n",
            {
                "index FDP": {"strands": 4, "treatment": "repaired"},
                "small FDP": {"strands": 4, "treatment": "repaired"},
                "small FDS": {"treatment": "excised"},
            },
        ),
    ],
)
def test_a_finger_only_compared_with_is_not_turned_to(note: str, expected: Shown) -> None:
    assert told(note, "strands", "treatment") == expected
