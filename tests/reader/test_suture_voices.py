"""Cores and peripheral sutures told by verb, by count and by place: wordings of many countries and habits."""

import pytest
from reader_sentences import told

CORE = "Right ring finger, zone II. The FDP was completely divided and repaired with {}. A dorsal splint was applied."
AROUND = (
    "Right ring finger, zone II. The FDP was completely divided. It was repaired with a four-strand cruciate of 4-0 "
    "Ethibond. {} The A2 pulley was intact."
)
ENDS = "Right ring finger, zone II. The FDP was completely divided. {} It was repaired with 4-0 Ethibond, four strands."


@pytest.mark.parametrize(
    ("words", "field", "value"),
    [
        ("4-0 looped Supramid, Tsuge fashion, two such loops", "stitch", "double tsuge"),
        ("4-0 looped Supramid, Tsuge fashion, done twice", "stitch", "double tsuge"),
        ("4-0 looped nylon, Tsuge times three", "stitch", "triple tsuge"),
        ("thread 4-0 loop (nylon), Tsuge", "looped", True),
        ("4-0 Supramid, single thread, modified Kessler", "looped", False),
        ("a four-strand 4-0 Ethibond cruciate, with a 1 cm hold on both ends", "purchase_mm", (10, 10)),
        ("a four-strand 4-0 Ethibond cruciate, 10 mm of each end inside the stitch", "purchase_mm", (10, 10)),
        ("a four-strand 4-0 Ethibond cruciate, 8-10 mm into either end", "purchase_mm", (8, 10)),
        ("a four-strand 4-0 Ethibond cruciate, bite 8-10", "purchase_mm", (8, 10)),
        ("a four-strand 4-0 Ethibond cruciate, 8 mm distally and 10 proximally", "purchase_mm", (8, 10)),
        ("a four-strand 4-0 Ethibond Strickland, tied within the cut", "knot", "buried"),
        ("a four-strand 4-0 Ethibond Strickland, knots in the junction", "knot", "buried"),
        ("a four-strand 4-0 Ethibond Strickland, knots away from the gap", "knot", "external"),
        ("a four-strand 4-0 Ethibond Strickland, without locks", "hold", "grasping"),
    ],
)
def test_core_by_count_and_place(words: str, field: str, value: object) -> None:
    assert told(CORE.format(words), field)["ring FDP"] == {field: value}


@pytest.mark.parametrize(
    ("words", "stitch"),
    [
        ("4-0 Ethibond, modified Kessler x 2 strands", "modified kessler"),
        ("4-0 Ethibond, modified Kessler (two-strand)", "modified kessler"),
        ("4-0 looped nylon, Tsuge, two strands", "tsuge"),
        ("4-0 nylon, modified Kessler (double-armed)", "modified kessler"),
    ],
)
def test_a_count_of_strands_doubles_no_stitch(words: str, stitch: str) -> None:
    assert told(CORE.format(words), "stitch")["ring FDP"] == {"stitch": stitch}


@pytest.mark.parametrize(
    ("sentence", "value"),
    [
        ("An epitendinous suture of 6-0 Prolene passed continuously.", "running"),
        ("Then 6/0 Prolene, run round.", "running"),
        ("An epitendinous 6-0 nylon running suture, of the locking sort.", "running locking"),
        ("An epitendinous 6-0 nylon running suture, each throw locked.", "running locking"),
        ("Epi = 6-0 Nylon, run-lock.", "running locking"),
        ("A running 6-0 Prolene epitendinous suture; the cruciate is locking.", "running"),
        ("Epitendinous 6-0 Prolene in crosses.", "cross-stitch"),
        ("Simple sutures of 6/0 nylon were set around the edge.", "interrupted"),
    ],
)
def test_pattern_by_verb(sentence: str, value: str) -> None:
    assert told(AROUND.format(sentence), "peripheral_pattern") == {"ring FDP": {"peripheral_pattern": value}}


@pytest.mark.parametrize("sentence", ["The skin was closed continuously.", "The nerve was sewn with simple sutures."])
def test_no_pattern_of_other_things(sentence: str) -> None:
    assert not told(AROUND.format(sentence), "peripheral_pattern")


@pytest.mark.parametrize(
    "sentence",
    [
        "The ends were cut back a couple of mm.",
        "Both ends were ragged so 2 mm came off each.",
        "2 mm was taken from both ends.",
        "The ends were refreshed by 2 mm.",
    ],
)
def test_trimmed_in_other_words(sentence: str) -> None:
    assert told(ENDS.format(sentence), "trimmed_mm") == {"ring FDP": {"trimmed_mm": 2}}


@pytest.mark.parametrize("sentence", ["2 mm of A2 was trimmed.", "The nail was cut back 2 mm."])
def test_trimming_of_no_tendon(sentence: str) -> None:
    assert not told(ENDS.format(sentence), "trimmed_mm")


@pytest.mark.parametrize(
    "words",
    [
        "FPL: Strickland 4-strand, 3-0 FiberWire + running 5-0 Prolene epitendinous",
        "FPL -> cruciate, 4 strands, 3-0 FiberWire plus 5-0 Prolene continuous epitendinous",
    ],
)
def test_the_suture_before_a_plus_is_the_core(words: str) -> None:
    note = "Left thumb. FPL completely divided.\n" + words
    expected = {
        "size": "3-0",
        "material": "polyblend",
        "peripheral_size": "5-0",
        "peripheral_material": "polypropylene",
    }
    assert told(note, *expected) == {"thumb FPL": expected}


@pytest.mark.parametrize(
    "words",
    [
        "The little finger FDP was not repaired with the same core as the ring; it has a two-strand Kessler, 4-0.",
        "The FDP of the little finger was not sutured in the same way: it got a two-strand Kessler of 4-0 PDS.",
    ],
)
def test_not_repaired_with_the_same_core_is_repaired(words: str) -> None:
    note = (
        "FDP of the ring and little fingers completely divided. FDP of the ring repaired with a four-strand cruciate. "
        + words
    )
    assert told(note, "treatment", "strands") == {
        "ring FDP": {"treatment": "repaired", "strands": 4},
        "small FDP": {"treatment": "repaired", "strands": 2},
    }


@pytest.mark.parametrize(
    "words",
    [
        "The FDP ring the half cut one got a single figure of eight of 4-0 Prolene.",
        "FDP ring the half cut one I closed with a figure of eight of 4-0 Prolene.",
    ],
)
def test_the_finger_behind_a_short_name(words: str) -> None:
    note = "FDP little completely cut, FDP ring half cut. FDP little four strand cruciate, 3-0 Ethibond. " + words
    assert told(note, "stitch") == {"ring FDP": {"stitch": "figure-of-eight"}, "small FDP": {"stitch": "cruciate"}}
