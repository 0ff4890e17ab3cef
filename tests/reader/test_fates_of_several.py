"""Sutures, cuts and pulleys told of several fingers at once, in lists, rows and forms: what each of them is given."""

import pytest
from reader_sentences import Shown, each, told

CUT = "Left ring and small fingers, knife. FDP of both completely divided. "


def _found(note: str) -> dict[str, object]:
    return {entry: facts["finding"] for entry, facts in told(note, "finding", group="pulleys").items()}


def _core_and_outer(note: str) -> Shown:
    return told(note, "size", "peripheral", "peripheral_size")


# --- sutures


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            CUT + "\nCore, both FDPs: 3-0 Ticron, four strands\nEpitendinous, both FDPs: 6-0 nylon",
            {
                "ring FDP": {"size": "3-0", "peripheral": "present", "peripheral_size": "6-0"},
                "small FDP": {"size": "3-0", "peripheral": "present", "peripheral_size": "6-0"},
            },
        ),
        (
            "Right thumb, glass. FPL completely divided.\nCore suture of FPL: 4-0 Prolene, four strands\n"
            "Peripheral suture of FPL: 5-0 Prolene",
            {"thumb FPL": {"size": "4-0", "peripheral": "present", "peripheral_size": "5-0"}},
        ),
    ],
)
def test_labels_on_lines_below_each_other(note: str, expected: Shown) -> None:
    assert _core_and_outer(note) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            CUT + "Ring FDP: four-strand 3-0 Ethibond and a running 6-0 Prolene. Small FDP in the same way but without "
            "the running suture.",
            {"ring FDP": "present", "small FDP": "absent"},
        ),
        (
            CUT
            + "The small FDP was repaired with a 4-0 cruciate and a running epitendinous 6-0 nylon. The ring FDP was "
            "done in the same way, leaving out the peripheral suture.",
            {"small FDP": "present", "ring FDP": "absent"},
        ),
        (
            CUT + "Ring FDP: 4-0 cruciate and epitendinous 6-0 nylon. The small FDP was "
            "repaired likewise, omitting the epitendinous suture.",
            {"ring FDP": "present", "small FDP": "absent"},
        ),
        (
            CUT + "Ring FDP: four-strand 3-0 Ethibond and a running 6-0 Prolene. Small FDP in the same way.",
            {"ring FDP": "present", "small FDP": "present"},
        ),
    ],
)
def test_same_repair_without_the_outer_suture(note: str, expected: dict[str, object]) -> None:
    shown = told(note, "peripheral")
    assert {entry: facts["peripheral"] for entry, facts in shown.items()} == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDS partially cut, 60%. The FDS was repaired with a running suture of 5-0 Prolene.",
            {"ring FDS": {"size": "5-0"}},
        ),
        (
            "Right index finger. FDS completely divided. The superficialis was repaired with a running suture of "
            "4-0 nylon.",
            {"index FDS": {"size": "4-0"}},
        ),
        (
            "Right index finger. FDP completely divided. The FDP was repaired with a 3-0 Ethibond cruciate, then a "
            "running suture of 6-0 Prolene.",
            {"index FDP": {"size": "3-0", "peripheral": "present", "peripheral_size": "6-0"}},
        ),
    ],
)
def test_what_alone_joins_a_tendon_is_its_core(note: str, expected: Shown) -> None:
    assert _core_and_outer(note) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided. FDP, four strand, 3-0 Ethibond, 6-0 Prolene.",
            {"ring FDP": {"size": "3-0", "peripheral": "present", "peripheral_size": "6-0"}},
        ),
        (
            "Right thumb. FPL cut through. FPL repaired with cruciate 4-0 Prolene + 6-0 nylon.",
            {"thumb FPL": {"size": "4-0", "peripheral": "present", "peripheral_size": "6-0"}},
        ),
        ("Right thumb. FPL cut through. FPL repaired with cruciate 4-0 Prolene.", {"thumb FPL": {"size": "4-0"}}),
    ],
)
def test_the_thin_one_of_two_threads(note: str, expected: Shown) -> None:
    assert _core_and_outer(note) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP cut through. FDP: Lim-Tsai, looped 4-0 Supramid + running 6-0 Prolene.",
            {"ring FDP": {"size": "4-0", "peripheral": "present", "peripheral_size": "6-0"}},
        ),
        (
            "Right small finger. FDP completely divided. Core Tsuge, looped 4-0 nylon and running 5-0 Prolene.",
            {"small FDP": {"size": "4-0", "peripheral": "present", "peripheral_size": "5-0"}},
        ),
    ],
)
def test_looped_core_before_a_running_thread(note: str, expected: Shown) -> None:
    assert _core_and_outer(note) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            CUT + "The ring got a 3-0 cruciate and epitendinous 6-0 nylon. The small got a 4-0 cruciate, same epi.",
            {
                "ring FDP": {"size": "3-0", "peripheral": "present", "peripheral_size": "6-0"},
                "small FDP": {"size": "4-0", "peripheral": "present", "peripheral_size": "6-0"},
            },
        ),
        (
            "Right index and middle fingers, both FDP cut through. Index FDP 4-0 cruciate, epitendinous 5-0 nylon. "
            "Middle FDP 3-0 Kessler, same epi.",
            {
                "index FDP": {"size": "4-0", "peripheral": "present", "peripheral_size": "5-0"},
                "middle FDP": {"size": "3-0", "peripheral": "present", "peripheral_size": "5-0"},
            },
        ),
    ],
)
def test_core_of_its_own_and_the_same_epitendinous(note: str, expected: Shown) -> None:
    assert _core_and_outer(note) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            CUT
            + "The ring FDP was sewn with a four-strand cruciate of 3-0 Ethibond, purchase 10 mm. The small FDP had "
            "the "
            "same stitch.",
            {"ring FDP": {"purchase_mm": (10, 10), "strands": 4}, "small FDP": {"strands": 4}},
        ),
        (
            "Right index and ring fingers, both FDP completely divided. Index FDP: 4-0 Savage, six strands, bites "
            "of 8 mm. "
            "Ring FDP: same stitch.",
            {"index FDP": {"purchase_mm": (8, 8), "strands": 6}, "ring FDP": {"strands": 6}},
        ),
        (
            "Right index and ring fingers, both FDP completely divided. Index FDP: 4-0 Savage, six strands, bites "
            "of 8 mm. "
            "Ring FDP: same repair.",
            {"index FDP": {"purchase_mm": (8, 8), "strands": 6}, "ring FDP": {"purchase_mm": (8, 8), "strands": 6}},
        ),
    ],
)
def test_same_stitch_tells_no_purchase(note: str, expected: Shown) -> None:
    assert told(note, "strands", "purchase_mm") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP cut through, cruciate of 3-0 Ethibond. I took bites of 9 mm and buried the knot.",
            (9, 9),
        ),
        (
            "Right thumb. FPL completely divided, Kessler of 3-0 Prolene. I took 10 mm of tendon on each side and "
            "left the "
            "knot inside.",
            (10, 10),
        ),
    ],
)
def test_purchase_before_a_second_verb(note: str, expected: tuple[int, int]) -> None:
    assert [facts["purchase_mm"] for facts in told(note, "purchase_mm").values()] == [expected]


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index, middle and ring fingers. FDP of each was cut through. All were repaired with 3-0 Ethibond.",
            {"extent": "complete"},
        ),
        (
            "Right index, middle and ring fingers, saw. The profundus of each was completely divided.",
            {"extent": "complete"},
        ),
    ],
)
def test_tendon_of_each(note: str, expected: dict[str, object]) -> None:
    assert told(note, "extent") == {f"{digit} FDP": expected for digit in ("index", "middle", "ring")}


@pytest.mark.parametrize(
    "note",
    [
        "Right index, middle and ring fingers, knife. FDP completely divided and FDS intact in all three.",
        "Right index, middle and ring fingers, knife. FDP of all completely divided. FDS intact in all three.",
    ],
)
def test_in_all_three_is_said_of_fingers(note: str) -> None:
    digits = ("index", "middle", "ring")
    expected: Shown = {f"{digit} FDP": {"extent": "complete"} for digit in digits}
    assert told(note, "extent") == expected | {f"{digit} FDS": {"extent": "intact"} for digit in digits}


@pytest.mark.parametrize(
    "note",
    [
        "Right index, middle and ring fingers, knife. FDP of all completely divided. Index FDP tested. Core 4-strand "
        "3-0 PDS, all three.",
        "Right index, middle and ring fingers, glass. FDP of all cut through. FDS intact. Core 3-0 PDS, all three; "
        "epitendinous 6-0 Prolene, all three.",
    ],
)
def test_thread_for_all_three(note: str) -> None:
    assert told(note, "size") == {f"{digit} FDP": {"size": "3-0"} for digit in ("index", "middle", "ring")}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left hand. Thumb FPL completely divided; ring FDP and FDS completely divided. The FPL was repaired "
            "with 3-0 "
            "Ethibond. The superficialis was repaired with 4-0 nylon.",
            {"thumb FPL": {"size": "3-0"}, "ring FDS": {"size": "4-0"}},
        ),
        (
            "Right thumb and index finger, saw. The thumb FPL was cut through and repaired with 4-0 Prolene. The "
            "profundus "
            "was cut through and repaired with 3-0 Ethibond.",
            {"thumb FPL": {"size": "4-0"}, "index FDP": {"size": "3-0"}},
        ),
    ],
)
def test_finger_tendon_behind_words_on_the_thumb(note: str, expected: Shown) -> None:
    assert told(note, "size") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP and FDS completely divided. Both were trimmed, the former by 2 mm and the latter "
            "by 3 mm, "
            "and were joined with a four-strand 3-0 Ethibond.",
            {"ring FDP": {"strands": 4}, "ring FDS": {"strands": 4}},
        ),
        (
            "Right index finger. FDS and FDP cut through. Both were freshened, the former by 1 mm and the latter by "
            "2 mm, "
            "and were repaired with two strands of 4-0 nylon.",
            {"index FDS": {"strands": 2}, "index FDP": {"strands": 2}},
        ),
    ],
)
def test_former_and_latter_sewn_alike(note: str, expected: Shown) -> None:
    assert told(note, "strands") == expected


# --- ends and cuts


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Left ring finger. FDP completely divided, ends ragged -> 2 mm off each end.", 2),
        ("Right small finger. FDP cut through. Ends frayed, 3 mm off both.", 3),
        ("Right thumb. FPL completely divided. The stumps were frayed. I cut 2 mm off each.", 2),
        ("Left index finger. FDP cut through. The FDP stumps were crushed. I cut 4 mm off each.", 4),
    ],
)
def test_what_was_taken_off_each_end(note: str, expected: int) -> None:
    assert [facts["trimmed_mm"] for facts in told(note, "trimmed_mm").values()] == [expected]


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index and middle fingers. Index FDP and middle FDP cut through. Middle FDP first. The ends were "
            "clean, "
            "and four strands of 3-0 were passed.",
            {"middle FDP"},
        ),
        (
            "Left ring and small fingers. Ring FDP and small FDP cut through. Ring FDP first. The ends were clean "
            "and a "
            "four-strand cruciate was placed.",
            {"ring FDP"},
        ),
        (
            "Left ring and small fingers. Ring FDP and small FDP completely divided. All four ends were clean.",
            {"ring FDP", "small FDP"},
        ),
    ],
)
def test_four_strands_are_not_four_ends(note: str, expected: set[str]) -> None:
    assert told(note, "ends") == {entry: {"ends": "clean"} for entry in expected}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided. Both FDS slips cut. I took the radial slip out and the ulnar "
            "slip was sutured.",
            {"ring FDS radial": {"treatment": "excised"}, "ring FDS ulnar": {"treatment": "repaired"}},
        ),
        (
            "Right small finger. FDP cut through. Both FDS slips cut. We cut the ulnar slip of the FDS away.",
            {"small FDS ulnar": {"treatment": "excised"}},
        ),
        (
            "Right small finger. FDP cut through. Both FDS slips cut. We took the ulnar slip out of the sheath. The "
            "ulnar slip was repaired.",
            {"small FDS ulnar": {"treatment": "repaired"}},
        ),
    ],
)
def test_slip_taken_out(note: str, expected: Shown) -> None:
    assert told(note, "treatment") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP cut through and through, the FDS having escaped.",
            {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "intact"}},
        ),
        (
            "Right index finger. FDP divided through & through, FDS having been spared.",
            {"index FDP": {"extent": "complete"}, "index FDS": {"extent": "intact"}},
        ),
        (
            "Right middle finger. FDP completely divided. FDS escaped injury.",
            {"middle FDP": {"extent": "complete"}, "middle FDS": {"extent": "intact"}},
        ),
    ],
)
def test_tendons_that_escaped(note: str, expected: Shown) -> None:
    assert told(note, "extent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP intact. FDS partially cut, 30%: its frayed edge was smoothed and the slip was not "
            "sutured.",
            "trimmed",
        ),
        (
            "Right small finger. FDS intact. FDP partially cut, 20%. Its frayed edge was trimmed and the tendon was "
            "not sutured.",
            "trimmed",
        ),
        ("Right small finger. FDS intact. FDP partially cut, 20%. The FDP was not sewn.", "left"),
    ],
)
def test_trimmed_and_not_sewn_in_one_breath(note: str, expected: str) -> None:
    assert [facts["treatment"] for facts in told(note, "treatment").values()] == [expected]


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring and small fingers, knife. Ring FDP completely divided, small FDP partially cut; all of these "
            "cuts "
            "lay in zone IIC.",
            {"ring FDP": {"zone": "IIC"}, "small FDP": {"zone": "IIC"}},
        ),
        (
            "Thumb FPL cut in zone I. Index FDP and middle FDP completely divided; all of these divisions lay in "
            "zone IIB.",
            {"index FDP": {"zone": "IIB"}, "middle FDP": {"zone": "IIB"}},
        ),
    ],
)
def test_zone_of_all_of_these_divisions(note: str, expected: Shown) -> None:
    assert told(note, "zone") == expected


# --- forms and rows


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "DIGIT 1: RING. FDP completely divided. DIGIT 2: SMALL. FDP partially cut, 40%.",
            {"ring FDP": {"extent": "complete"}, "small FDP": {"extent": "partial"}},
        ),
        ("DIGIT 2 - SMALL\nTendon FDP, complete\n", {"small FDP": {"extent": "complete"}}),
        (
            "Finger 1 - index\nFDP completely divided.\nFinger 2 - middle\nFDP intact.\n",
            {"index FDP": {"extent": "complete"}, "middle FDP": {"extent": "intact"}},
        ),
        ("Left hand. Digit 2: FDP completely divided.", {"index FDP": {"extent": "complete"}}),
    ],
)
def test_number_of_the_part_of_a_form(note: str, expected: Shown) -> None:
    assert told(note, "extent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Left ring finger. FDP cut through.\nCore size: 3-0     material: ____\n", {"size": "3-0"}),
        ("Right thumb. FPL cut through.\nCore stitch:  Tsuge      looped:  ____\n", {"stitch": "tsuge"}),
        (
            "Right thumb. FPL cut through, 3-0 nylon.\nGap: none      Glide:\n",
            {"size": "3-0", "material": "nylon", "gap": "none"},
        ),
        ("Right thumb. FPL cut through, 3-0 nylon.\nGap:      Glide:\n", {"size": "3-0", "material": "nylon"}),
    ],
)
def test_last_label_of_a_line_left_open(note: str, expected: dict[str, object]) -> None:
    (facts,) = told(note, "stitch", "size", "material", "looped", "gap", "glide").values()
    assert facts == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided.\nRing    A2    distal half vented\nRing    A4    intact\n",
            {"ring A2": "vented", "ring A4": "intact"},
        ),
        (
            "Right index and small fingers. FDP of both cut through.\nIndex    A2    intact\nIndex    A3    excised\n"
            "Small    A4    vented 4 mm\n",
            {"index A2": "intact", "index A3": "excised", "small A4": "vented"},
        ),
    ],
)
def test_rows_of_a_grid_without_titles(note: str, expected: dict[str, object]) -> None:
    assert _found(note) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring   FDP cut through   A2 sewn back 4-0   A4 ok\nSmall  FDP cut through   A2 ok   A4 sewn back 5-0\n",
            {"ring A2": "repaired", "ring A4": "intact", "small A2": "intact", "small A4": "repaired"},
        ),
        (
            "Finger   Pulleys\nIndex    A3 sewn back 5-0   A4 ok\nMiddle   A3 ok   A4 vented\n",
            {"index A3": "repaired", "index A4": "intact", "middle A3": "intact", "middle A4": "vented"},
        ),
        (
            "Right small finger. FDP cut through.\nA2 torn, sewn back 4-0      A4 ok\n",
            {"small A2": "repaired", "small A4": "intact"},
        ),
    ],
)
def test_pulleys_in_cells_beside_each_other(note: str, expected: dict[str, object]) -> None:
    assert _found(note) == expected


# --- pulleys


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            CUT + "I kept the A2 and A4 pulleys of the small finger.",
            {"small A2": "intact", "small A4": "intact"},
        ),
        (
            "Right index and middle fingers, FDP of both completely divided. A2 and A3 of the middle finger were torn.",
            {"middle A2": "injured", "middle A3": "injured"},
        ),
        (
            CUT + "Preserved the A2 and A4 of the ring finger; vented the A3 of the small finger.",
            {"ring A2": "intact", "ring A4": "intact", "small A3": "vented"},
        ),
    ],
)
def test_of_the_finger_behind_two_pulleys(note: str, expected: dict[str, object]) -> None:
    assert _found(note) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            CUT + "A2 was kept in both fingers, I opened A4 in the ring finger.",
            {"ring A2": "intact", "small A2": "intact", "ring A4": "vented"},
        ),
        (
            "Right index and middle fingers, both FDP cut through. A4 was preserved in both fingers, I vented A2 in "
            "the "
            "middle finger.",
            {"index A4": "intact", "middle A4": "intact", "middle A2": "vented"},
        ),
    ],
)
def test_kept_in_both_and_another_opened_in_one(note: str, expected: dict[str, object]) -> None:
    assert _found(note) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided under A2 and A4, both of which I preserved.",
            {"ring A2": "intact", "ring A4": "intact"},
        ),
        (
            "Right small finger. FDP cut through and passed under A3 and A4, both of which were intact.",
            {"small A3": "intact", "small A4": "intact"},
        ),
    ],
)
def test_both_of_which_behind_pulleys(note: str, expected: dict[str, object]) -> None:
    assert _found(note) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Left ring finger. FDP completely divided. A2: middle 3 mm windowed.", {"ring A2": "vented"}),
        ("Right small finger. FDP cut through. A4 middle third vented.", {"small A4": "vented"}),
        ("Right ring finger. FDP cut through. A2 - middle half opened.", {"ring A2": "vented"}),
    ],
)
def test_middle_part_of_a_pulley(note: str, expected: dict[str, object]) -> None:
    assert _found(note) == expected
    assert not any(entry.startswith("middle") for entry in told(note))


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, repaired with a 4-0 cruciate.\nADDENDUM: The A4 pulley was not "
            "mentioned. I vented its distal third because the FDP repair would not pass.",
            {"ring A4": "vented"},
        ),
        (
            "Right small finger. FDP cut through, repaired with 3-0 Ethibond.\nADDENDUM: The A2 pulley was left out "
            "above. "
            "I opened its proximal half since the FDP repair stopped halfway.",
            {"small A2": "vented"},
        ),
    ],
)
def test_pulley_of_an_addendum_carried_on(note: str, expected: dict[str, object]) -> None:
    assert _found(note) == expected


@pytest.mark.parametrize(
    "note",
    [
        "Left ring finger. FDP completely divided, 4-0 cruciate. On passive movement the repair stopped halfway.",
        "Right thumb. FPL cut through, 3-0 Ethibond. Passively moved, the repair halted halfway under the pulley.",
    ],
)
def test_stopped_halfway(note: str) -> None:
    assert [facts["glide"] for facts in told(note, "glide").values()] == ["restricted"]


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Left ring finger. FDP, FDS, A1 and A2 pulleys were divided.", {"ring FDP", "ring FDS", "ring A1", "ring A2"}),
        (
            "Right small finger. FDP, ulnar digital artery, A3 and A4 pulleys completely divided.",
            {"small FDP", "small A3", "small A4"},
        ),
    ],
)
def test_list_that_ends_in_several_pulleys(note: str, expected: set[str]) -> None:
    found = _found(note)
    assert set(found.values()) == {"injured"}
    cut = told(note, "extent")
    assert all(facts == {"extent": "complete"} for facts in cut.values())
    assert {*found, *cut} == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring and small fingers, knife. Ring A2 torn. In the small finger FDP was divided. A2 was preserved.",
            {"ring A2": "injured", "small A2": "intact"},
        ),
        (
            "Right index and middle fingers. The index A4 was torn. The middle finger: FDP and FDS cut through. A2 "
            "and A4 "
            "both unhurt.",
            {"index A4": "injured", "middle A2": "intact", "middle A4": "intact"},
        ),
        (
            "Left ring and small fingers, knife. Ring A2 torn. Small finger: FDP cut through. A2 was torn as well.",
            {"ring A2": "injured", "small A2": "injured"},
        ),
    ],
)
def test_state_of_the_finger_spoken_of(note: str, expected: dict[str, object]) -> None:
    assert _found(note) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index and middle fingers, both FDP cut through. The index A4 was torn. The middle FDP was "
            "repaired with "
            "3-0 Ethibond. A4 was sewn back with 5-0 nylon.",
            {"index A4": "repaired"},
        ),
        (
            CUT
            + "A2 of the ring torn. The small FDP was repaired with 3-0 Ethibond. A2 was reconstructed with a slip of "
            "FDS.",
            {"ring A2": "reconstructed"},
        ),
    ],
)
def test_deed_to_the_finger_whose_pulley_was_hurt(note: str, expected: dict[str, object]) -> None:
    assert _found(note) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, 4-0 cruciate. It jammed at A2 until the distal 6 mm of this "
            "pulley "
            "had been divided.",
            {"ring A2": "vented"},
        ),
        (
            "Right small finger. FDP cut through, 3-0 Ethibond. The repair caught at A4 until the proximal half of "
            "this "
            "pulley had been divided.",
            {"small A4": "vented"},
        ),
        (
            "Right small finger. FDP cut through by the saw. The A4 pulley had been split over its distal half.",
            {"small A4": "injured"},
        ),
    ],
)
def test_opened_until_the_repair_passed(note: str, expected: dict[str, object]) -> None:
    assert _found(note) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (CUT + "Small finger: A2 and A4 intact. Ring: FDP and FDS both completely divided.", {"small"}),
        (
            "Right index and middle fingers. Index finger: FDP cut through, A3 and A4 kept. Middle: FDP and FDS "
            "both cut.",
            {"index"},
        ),
    ],
)
def test_tendons_cut_are_not_the_pulleys_named_before(note: str, expected: set[str]) -> None:
    found = _found(note)
    assert {entry.split()[0] for entry in found} == expected
    assert set(found.values()) == {"intact"}


@pytest.mark.parametrize(
    ("note", "tendon", "expected"),
    [
        (
            "Left ring finger. FDP completely divided. Its superficialis was intact, and so were A2 and A4.",
            "intact",
            {"ring A2": "intact", "ring A4": "intact"},
        ),
        (
            "Left ring finger. FDP cut through. The FDS was whole, as was the A2 pulley.",
            "intact",
            {"ring A2": "intact"},
        ),
        (
            "Left ring finger. FDP cut through. The FDS was divided completely. A2 was kept.",
            "complete",
            {"ring A2": "intact"},
        ),
    ],
)
def test_so_were_the_pulleys(note: str, tendon: str, expected: dict[str, object]) -> None:
    assert _found(note) == expected
    assert told(note, "extent")["ring FDS"] == {"extent": tendon}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            CUT
            + "In the ring finger A2 was torn. The small finger had its FDP repaired and I vented A2 in that finger.",
            {"ring A2": "injured", "small A2": "vented"},
        ),
        (
            "Right index and middle fingers. The index FDP was cut through. The middle FDP was cut through and A4 "
            "in this "
            "finger was torn.",
            {"middle A4": "injured"},
        ),
    ],
)
def test_pulley_in_that_finger(note: str, expected: dict[str, object]) -> None:
    assert _found(note) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided. I kept A2, and A3 I divided.",
            {"ring A2": {"intact"}, "ring A3": {"vented", "released"}},
        ),
        (
            "Right small finger. FDP cut through. I had to open the distal third of A2, and A3 I excised.",
            {"small A2": {"vented"}, "small A3": {"excised"}},
        ),
    ],
)
def test_pulley_before_the_verb(note: str, expected: dict[str, set[object]]) -> None:
    found = _found(note)
    assert found.keys() == expected.keys()
    assert all(value in expected[entry] for entry, value in found.items())


@pytest.mark.parametrize(
    "note",
    [
        "Left ring finger. FDP completely divided. I had to take down all of A4 to pass the repair.",
        "Left ring finger. FDP completely divided. We took down the whole A4 pulley.",
    ],
)
def test_all_of_a_pulley_taken_down(note: str) -> None:
    assert _found(note) == {"ring A4": "released"}


@pytest.mark.parametrize(
    "words",
    [
        "I found the same in the ring finger.",
        "The same was found in the ring finger.",
        "I saw the same in the ring finger.",
    ],
)
def test_the_same_was_found_in_another_finger(words: str) -> None:
    note = "Middle and ring fingers. In the middle finger the FDP was completely divided and so was its FDS. " + words
    found = each(note, "extent")
    assert found == dict.fromkeys(("middle FDP", "middle FDS", "ring FDP", "ring FDS"), "complete")


@pytest.mark.parametrize(
    "words",
    [
        "I repaired both FDPs with a four-strand cruciate of 3-0 PDS.",
        "The two profundi were repaired with a 3-0 cruciate.",
    ],
)
def test_both_that_were_sewn_leave_out_the_one_that_was_left(words: str) -> None:
    note = (
        "Middle, ring and little fingers. FDP of the middle and ring fingers completely divided. In the little finger "
        "there was a nick of about 15 per cent in the FDP, which was left alone. " + words
    )
    found = told(note, "treatment", "extent_percent", "stitch")
    assert found == {
        "middle FDP": {"treatment": "repaired", "stitch": "cruciate"},
        "ring FDP": {"treatment": "repaired", "stitch": "cruciate"},
        "small FDP": {"treatment": "left", "extent_percent": 15},
    }


@pytest.mark.parametrize(
    "words",
    [
        "The nick in the index superficialis was smoothed and did not require suture.",
        "The index superficialis, nicked, was smoothed and did not need repair.",
    ],
)
def test_what_did_not_require_suture_was_not_sewn(words: str) -> None:
    note = "Index finger. FDP completely divided and repaired with a four-strand cruciate of 3-0 PDS. " + words
    assert told(note, "treatment") == {"index FDP": {"treatment": "repaired"}, "index FDS": {"treatment": "trimmed"}}


@pytest.mark.parametrize(
    "words",
    [
        "No gap was seen at the reinsertion or at the tendon repair in the middle finger.",
        "Neither the reinsertion nor the repair in the middle finger gapped.",
    ],
)
def test_a_reinsertion_that_was_tested_is_not_done_again(words: str) -> None:
    note = (
        "Index and middle fingers. FDP of both cut through. FDP of the index reinserted with an anchor, FDP of the "
        "middle repaired with a 3-0 cruciate. "
    ) + words
    found = each(note, "treatment")
    assert found == {"index FDP": "reinserted", "middle FDP": "repaired"}


@pytest.mark.parametrize(
    "words",
    [
        "The divided profundus and the two divided superficialis tendons were each repaired with a four-strand core of "
        "3-0 Ticron, the former by the Adelaide method and the latter by the cruciate method, and each of the three "
        "received a running 6-0 Prolene epitendinous suture.",
        "The divided profundus and the two divided superficialis tendons were sewn with 3-0 Ticron, the former with "
        "a four-strand Adelaide and the latter with a four-strand cruciate, and each of the three got a running 6-0 "
        "Prolene epitendinous suture.",
    ],
)
def test_the_divided_profundus_and_the_two_divided_superficiales(words: str) -> None:
    note = "Wrist. The index profundus and the middle and ring superficialis tendons were completely divided. " + words
    found = told(note, "stitch", "strands", "size", "peripheral_size")
    rest = {"strands": 4, "size": "3-0", "peripheral_size": "6-0"}
    assert found == {
        "index FDP": {"stitch": "adelaide", **rest},
        "middle FDS": {"stitch": "cruciate", **rest},
        "ring FDS": {"stitch": "cruciate", **rest},
    }


@pytest.mark.parametrize(
    "words",
    [
        "FDP of both and FDS of the middle finger divided and repaired with 3-0 PDS.",
        "The profundus of both and the superficialis of the middle finger were cut through and sewn with 3-0 PDS.",
    ],
)
def test_a_suture_of_both_and_of_another(words: str) -> None:
    found = told("Middle and ring fingers. " + words, "size")
    assert found == {name: {"size": "3-0"} for name in ("middle FDP", "ring FDP", "middle FDS")}


@pytest.mark.parametrize(
    "words",
    ["We had run out of 3-0 by then.", "The scrub nurse said we had run out of the 3-0."],
)
def test_a_thread_that_had_run_out_was_not_used(words: str) -> None:
    note = (
        "Index finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Prolene.\n\nADDENDUM\n"
        "1. The core in the index FDP was 4-0 Prolene, not 3-0. "
    ) + words
    assert told(note, "size") == {"index FDP": {"size": "4-0"}}


@pytest.mark.parametrize("words", ["No gap was seen in the FDS repairs.", "The FDS repairs showed no gap."])
def test_repairs_in_the_plural_are_those_of_every_finger(words: str) -> None:
    note = (
        "Right wrist. FDS of the ring and little fingers completely divided and sewn with 3-0 PDS. FDS of the middle "
        "finger half cut, repaired with a figure of eight of 4-0 Prolene. The middle finger was well perfused. "
    ) + words
    assert set(told(note, "gap")) == {"ring FDS", "small FDS", "middle FDS"}


ALL_THREE = "Index, middle and ring fingers. FDP of all three and FDS of the index divided and repaired with 3-0 PDS. "


def test_all_three_and_another() -> None:
    found = each(ALL_THREE, "treatment")
    assert found == dict.fromkeys(("index FDP", "middle FDP", "ring FDP", "index FDS"), "repaired")


@pytest.mark.parametrize(
    "words",
    [
        "Traction on each FDP with a forceps: index and middle no gap, ring gap 1 mm.",
        "Pull on each FDP: index no gap, middle no gap, ring 1 mm gap.",
    ],
)
def test_fingers_told_behind_the_kind_that_was_tested(words: str) -> None:
    found = each(ALL_THREE + words, "gap")
    assert found == {"index FDP": "none", "middle FDP": "none", "ring FDP": "seen"}


@pytest.mark.parametrize(
    "words",
    [
        "The three profundus repairs were each tested by passive flexion and extension.",
        "The three profundi were pulled upon in the palm.",
    ],
)
def test_the_counted_kind_that_was_tested(words: str) -> None:
    assert set(told(ALL_THREE + words, "test")) == {"index FDP", "middle FDP", "ring FDP"}


@pytest.mark.parametrize("words", ["Gliding    FDP index and middle free.", "Gliding  FDP index + middle free."])
def test_the_fingers_named_within_a_result(words: str) -> None:
    assert set(told(ALL_THREE + "\n" + words, "glide")) == {"index FDP", "middle FDP"}


@pytest.mark.parametrize(
    "words",
    [
        "CHECK (passive, both): thumb -> no gap, runs free; index -> no gap, holds",
        "Test, both: thumb no gap, glides freely; index no gap",
    ],
)
def test_a_result_of_one_of_both(words: str) -> None:
    note = "Thumb and index. FPL and FDP divided, repaired with a 3-0 cruciate.\n" + words
    assert told(note, "gap", "glide") == {"thumb FPL": {"gap": "none", "glide": "free"}, "index FDP": {"gap": "none"}}


@pytest.mark.parametrize(
    "words",
    [
        "The ulnar slip was thin and sat right in the way of the profundus, so I excised it.",
        "The ulnar slip lay in the way of the profundus and I excised it.",
    ],
)
def test_what_was_in_the_way_was_excised(words: str) -> None:
    note = (
        "Ring finger. FDP completely divided and sewn with a six-strand suture of 4-0 FiberWire. Of the superficialis "
        "the ulnar slip was cut through and the radial slip was intact. "
    ) + words
    found = each(note, "treatment")
    assert found == {"ring FDP": "repaired", "ring FDS ulnar": "excised"}


@pytest.mark.parametrize(
    "words",
    [
        "Ring FDP, no gap but it catches on the way in under A2, didn't want to take any more pulley so I left it.",
        "The ring FDP catches at the edge of A2, I did not care to open any more of that pulley and left it.",
    ],
)
def test_a_catch_that_was_left_leaves_the_repair(words: str) -> None:
    found = told("Ring finger. FDP cut. For the ring FDP six strand, 4-0 Prolene. " + words, "treatment", "glide")
    assert found == {"ring FDP": {"treatment": "repaired", "glide": "catching"}}
