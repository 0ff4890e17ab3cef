"""Which thread, count or gap a sentence tells of where it tells of several."""

import pytest
from reader_sentences import Shown, told

CUT = "Left index FDP completely divided. "


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            CUT + "Six-strand Lim-Tsai, 4-0 looped Supramid + 5-0 Prolene running.",
            {"size": "4-0", "peripheral_size": "5-0"},
        ),
        (
            CUT + "Six-strand M-Tang with 4-0 looped nylon and 5-0 Prolene running locking.",
            {"size": "4-0", "peripheral_size": "5-0"},
        ),
        (CUT + "4 strand Adelaide 3-0 Ethibond + 6-0 Prolene.", {"size": "3-0", "peripheral_size": "6-0"}),
        (CUT + "Four strands of 3-0 Ethibond. Peripheral 6-0 on the FDP.", {"size": "3-0", "peripheral_size": "6-0"}),
        (
            CUT + "Six strand M-Tang using the looped nylon that is 4 0, then 6 0 Prolene running epitendinous.",
            {"size": "4-0", "peripheral_size": "6-0"},
        ),
        (CUT + "Four-strand cruciate with 3-0 Ethibond. Then the nerve graft (9-0 nylon, 3 cables).", {"size": "3-0"}),
        (
            "Sutures used: 5/0 Prolene (pulley), 4/0 Ethibond (FDP), 8/0 nylon (nerve). R index FDP cut, repaired.",
            {"size": "4-0"},
        ),
    ],
)
def test_core_and_outer_thread_are_kept_apart(note: str, expected: dict[str, str]) -> None:
    assert told(note, "size", "peripheral_size") == {"index FDP": expected}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index and middle FDP were repaired with six-strand modified Savage and four-strand locked cruciate cores "
            "respectively.",
            {
                "index FDP": {"strands": 6, "stitch": "modified savage"},
                "middle FDP": {"strands": 4, "stitch": "locked cruciate"},
            },
        ),
        (
            "The FDP of the index and middle fingers were repaired with six and four strands respectively.",
            {"index FDP": {"strands": 6}, "middle FDP": {"strands": 4}},
        ),
        (
            "Index and middle fingers. I repaired the FDP of the index finger with four strands of 4-0 nylon, the FDP "
            "of the middle finger with six, under the microscope.",
            {"index FDP": {"strands": 4}, "middle FDP": {"strands": 6}},
        ),
        (
            "The superficialis of the middle finger was repaired with two modified Kesslers one in each slip of "
            "4-0 Prolene.",
            {"middle FDS": {"strands": 2, "stitch": "modified kessler"}},
        ),
        (
            CUT + "Repaired with a four-strand cruciate.\n\nADDENDUM: Number of strands was six.",
            {"index FDP": {"strands": 6, "stitch": "cruciate"}},
        ),
    ],
)
def test_counts_and_stitches_go_where_they_are_told(note: str, expected: Shown) -> None:
    assert told(note, "strands", "stitch") == expected


@pytest.mark.parametrize(
    "note",
    [
        CUT + "Four-strand cruciate. Her FDP was said to need six; I would now use six strands.",
        CUT + "Four-strand cruciate. Repairs with six strands have been promoted at courses, and I am not persuaded.",
        CUT + "Four-strand cruciate. For orientation of the trainees, a repair would nowadays be given six strands.",
    ],
)
def test_what_might_be_done_elsewhere_is_no_count_of_this_repair(note: str) -> None:
    assert told(note, "strands") == {"index FDP": {"strands": 4}}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            CUT + "Sewn with 3-0. A gap of 1 mm opened. One more throw, and on repeating the test there was none.",
            "none",
        ),
        (CUT + "Sewn with 3-0. It gapped 2 mm at first; the core was retied, and then there was none.", "none"),
        (CUT + "Sewn with 3-0. Index opens 1 mm on traction, accepted.", "seen"),
        (CUT + "Sewn with 3-0. The FDP parts by a good 1 mm when stretched.", "seen"),
    ],
)
def test_the_last_test_decides_the_gap(note: str, expected: str) -> None:
    assert told(note, "gap") == {"index FDP": {"gap": expected}}


@pytest.mark.parametrize(
    "story",
    [
        "Had FDP repair here on 2 Oct 2030 (4 strand, 3/0 Prolene).",
        "He had his FDP mended on 2 Oct 2030 with a two-strand Kessler.",
    ],
)
def test_a_repair_dated_before_the_operation_is_history(story: str) -> None:
    note = f"Date of operation: 30 Oct 2030\nR index finger. {story}\n\nFDP ruptured completely. Re-repair: 6 strand.\n"
    assert told(note, "strands") == {"index FDP": {"strands": 6}}


@pytest.mark.parametrize(
    ("form", "expected"),
    [
        (
            "1  Hand      [ LEFT ]\n2  Finger    [ index ]\nindex FDP   zone [ IIB ]  cut [ 100 % ]  did [ repaired ]\n"
            "            strands [ four ]  knot [ outside ]  thread [ 4-0 Prolene ]\n",
            {"zone": "IIB", "extent": "complete", "strands": 4, "knot": "external", "size": "4-0"},
        ),
        (
            "Finger: [ ] thumb [x] index\nFDP injury: [x] complete\n"
            "FDP core: [ ] 2 [x] 4 [ ] 6 strands; material: 3-0 Ethibond\nEpitendinous: [ ] yes [ ] no\n",
            {"extent": "complete", "strands": 4, "size": "3-0"},
        ),
    ],
)
def test_answers_in_the_boxes_of_a_form(form: str, expected: dict[str, object]) -> None:
    found = told(form)["index FDP"]
    assert expected.items() <= found.items()
    assert "peripheral" not in found
