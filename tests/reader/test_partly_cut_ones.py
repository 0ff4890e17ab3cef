"""What is said of the tendons cut through is not said of those cut in part, nor an answer of another label."""

import pytest
from reader_sentences import Shown, told

THREE = "FDP of index and middle completely divided, FDP of the ring cut by 30 %. "
CRUCIATE = {"stitch": "cruciate", "strands": 4}


@pytest.mark.parametrize(
    "words",
    [
        "The two divided profundi were sewn with a cruciate of 4-0 Ethibond.",
        "The completely divided tendons were repaired with a cruciate of 4-0 Ethibond.",
        "A cruciate of 4-0 Ethibond was put into the two severed profundus tendons.",
    ],
)
def test_the_divided_ones_are_not_those_cut_in_part(words: str) -> None:
    assert told(THREE + words, "stitch", "strands") == {"index FDP": CRUCIATE, "middle FDP": CRUCIATE}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "The superficialis of the ring had been cut through half of its thickness, whereas that of the small "
            "finger was intact, as was the flexor carpi ulnaris.",
            {"ring FDS": {"extent": "partial"}, "small FDS": {"extent": "intact"}, "FCU": {"extent": "intact"}},
        ),
        (
            "The superficialis of the index was partly cut, and that of the middle finger was intact, as were the FCU "
            "and the palmaris longus.",
            {
                "index FDS": {"extent": "partial"},
                "middle FDS": {"extent": "intact"},
                "FCU": {"extent": "intact"},
                "PL": {"extent": "intact"},
            },
        ),
        (
            "Ring FDP completely divided, as was the FDS.",
            {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "complete"}},
        ),
    ],
)
def test_as_was_repeats_the_last_word(note: str, expected: Shown) -> None:
    assert told(note, "extent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("FPL thumb\nExtent of cut: complete\nCore: 3-0 Ethibond", {"thumb FPL": {"extent": "complete"}}),
        ("FDP index\nExtent of laceration: partial, 35 %", {"index FDP": {"extent": "partial"}}),
        ("FDP ring\nDegree of injury: complete", {"ring FDP": {"extent": "complete"}}),
    ],
)
def test_extent_answers_its_label(note: str, expected: Shown) -> None:
    assert told(note, "extent") == expected


@pytest.mark.parametrize(
    "words",
    [
        "Core stitch: none; tendon reattached to the distal phalanx with an anchor",
        "Core suture: none, tendon reattached to bone with an anchor",
    ],
)
def test_none_that_answers_a_label_counts_nobody(words: str) -> None:
    note = f"TENDON 1\nTendon: FDP ring\nCore: cruciate, 3-0 Ethibond\n\nTENDON 2\nTendon: FDP index\n{words}\n"
    assert told(note, "treatment") == {"ring FDP": {"treatment": "repaired"}, "index FDP": {"treatment": "reinserted"}}


@pytest.mark.parametrize(
    ("test", "expected"),
    [
        ("Gap: tendon 1 none; tendon 2: 1 mm", {"thumb FPL": {"gap": "none"}, "index FDP": {"gap": "seen"}}),
        ("Glide: tendon 1 free; tendon 2:", {"thumb FPL": {"glide": "free"}}),
    ],
)
def test_told_by_the_number_of_the_tendon(test: str, expected: Shown) -> None:
    tendons = "TENDON 1\nTendon: FPL\nCore: 3-0 Ethibond\n\nTENDON 2\nTendon: FDP index\nCore: 4-0 Prolene\n\nTEST\n"
    assert told(tendons + test, "gap", "glide") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "FDP and FDS of the middle and FDP of the ring completely divided. Both FDPs were repaired with 3-0 PDS. "
            "These are two-strand repairs. The FDS of the middle finger I sewed with two simple sutures of 4-0 PDS.",
            {"middle FDP": {"strands": 2}, "ring FDP": {"strands": 2}},
        ),
        (
            "FDP of index and middle and FDS of both completely divided. Both profundi were repaired with 3-0 Prolene. "
            "They are six-strand repairs. Both FDS were sewn with 4-0 mattress sutures.",
            {"index FDP": {"strands": 6}, "middle FDP": {"strands": 6}},
        ),
    ],
)
def test_these_repairs_are_those_told_before(note: str, expected: Shown) -> None:
    assert told(note, "strands") == expected


@pytest.mark.parametrize(
    "words",
    [
        "FDP of the ring: started with 3-0 Prolene, it pulled out, so 4-0 Ethibond was used.",
        "FDP of the ring repaired: first 3-0 Prolene, it cut out, replaced by 4-0 Ethibond.",
        "FDP of the ring repaired with 3-0 Prolene, but it tore out, so 4-0 Ethibond.",
    ],
)
def test_a_core_that_did_not_hold_is_not_the_core(words: str) -> None:
    assert told(words, "size", "material") == {"ring FDP": {"size": "4-0", "material": "braided polyester"}}
