"""Lengths, counts, gaps, shares and zones told of several fingers in one sentence: each finger gets its own."""

import pytest
from reader_sentences import Shown, each, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Middle and small fingers. FDP of both completely divided.  Each was sewn with a four-strand cruciate "
            "of 3-0 Ethibond. The core takes 9 mm in the middle and 6 mm in the small finger.",
            {"middle FDP": {"purchase_mm": (9, 9)}, "small FDP": {"purchase_mm": (6, 6)}},
        ),
        (
            "Middle and small fingers. FDP of both completely divided.  Each was sewn with a four-strand cruciate "
            "of 3-0 Ethibond. Purchase: middle FDP 10 mm, small FDP 7 mm.",
            {"middle FDP": {"purchase_mm": (10, 10)}, "small FDP": {"purchase_mm": (7, 7)}},
        ),
        (
            "Left thumb and index finger. FPL and index FDP completely divided, each sewn with a four-strand "
            "cruciate of 3-0 Ethibond. Bites: FPL 11 mm, index FDP 8 mm.",
            {"thumb FPL": {"purchase_mm": (11, 11)}, "index FDP": {"purchase_mm": (8, 8)}},
        ),
    ],
)
def test_purchases_beside_their_fingers(note: str, expected: Shown) -> None:
    assert told(note, "purchase_mm") == expected


@pytest.mark.parametrize(
    "words",
    [
        "The wounds measured 20 mm in the middle and 12 mm in the small finger.",
        "Incisions: middle 15 mm, small 10 mm.",
    ],
)
def test_lengths_of_wounds_beside_fingers_are_none_of_the_tendon(words: str) -> None:
    note = (
        "Middle and small fingers. FDP of both completely divided.  Each was sewn with a four-strand cruciate "
        "of 3-0 Ethibond. "
    ) + words
    assert told(note, "purchase_mm", "trimmed_mm", "gap_mm") == {}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Middle and small fingers. FDP of both completely divided. Trimmed away: small FDP 4 mm, middle FDP 2 mm.",
            {"middle FDP": {"trimmed_mm": 2}, "small FDP": {"trimmed_mm": 4}},
        ),
        (
            "Index, middle and ring fingers. FDP of all three completely divided. The ends were cut back: index 1 "
            "mm, middle 3 mm, ring 2 mm.",
            {"index FDP": {"trimmed_mm": 1}, "middle FDP": {"trimmed_mm": 3}, "ring FDP": {"trimmed_mm": 2}},
        ),
        (
            "Middle and small fingers. FDP of both completely divided. The ragged ends were trimmed by 3 mm in "
            "the middle finger and 5 mm in the small finger.",
            {"middle FDP": {"trimmed_mm": 3}, "small FDP": {"trimmed_mm": 5}},
        ),
    ],
)
def test_trimmed_lengths_beside_their_fingers(note: str, expected: Shown) -> None:
    assert told(note, "trimmed_mm") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP and FDS completely divided. Cut back: 4 mm FDP, 2 mm FDS.",
            {"ring FDP": {"trimmed_mm": 4}, "ring FDS": {"trimmed_mm": 2}},
        ),
        (
            "Left index finger. FDP and FDS completely divided. Trimmed: 3 mm FDP, 1 mm FDS.",
            {"index FDP": {"trimmed_mm": 3}, "index FDS": {"trimmed_mm": 1}},
        ),
    ],
)
def test_the_tendon_right_behind_a_length(note: str, expected: Shown) -> None:
    assert told(note, "trimmed_mm") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        (
            "On passive extension the small finger gapped by 2 mm and the middle by 1 mm.",
            {"small FDP": {"gap": "seen", "gap_mm": 2}, "middle FDP": {"gap": "seen", "gap_mm": 1}},
        ),
        (
            "On traction the middle finger gapped 1 mm, the small finger not at all.",
            {"middle FDP": {"gap": "seen", "gap_mm": 1}, "small FDP": {"gap": "none"}},
        ),
        (
            "Pulled on, the middle FDP gapped by 1 mm but the small FDP did not.",
            {"middle FDP": {"gap": "seen", "gap_mm": 1}, "small FDP": {"gap": "none"}},
        ),
    ],
)
def test_gaps_of_several_fingers(words: str, expected: Shown) -> None:
    note = (
        "Middle and small fingers. FDP of both completely divided.  Each was sewn with a four-strand cruciate "
        "of 3-0 Ethibond. "
    ) + words
    assert told(note, "gap", "gap_mm") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        (
            "On traction the small finger gapped by 2 mm and the middle was tested next.",
            {"small FDP": {"gap": "seen", "gap_mm": 2}},
        ),
        (
            "The middle finger gapped by 1 mm, and the small finger was then closed.",
            {"middle FDP": {"gap": "seen", "gap_mm": 1}},
        ),
    ],
)
def test_a_finger_named_after_a_gap_has_none_of_it(words: str, expected: Shown) -> None:
    note = (
        "Middle and small fingers. FDP of both completely divided.  Each was sewn with a four-strand cruciate "
        "of 3-0 Ethibond. "
    ) + words
    assert told(note, "gap", "gap_mm") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index, middle and ring fingers. FDP of all three completely divided. They were repaired with six, "
            "four and two strands respectively.",
            {"index FDP": {"strands": 6}, "middle FDP": {"strands": 4}, "ring FDP": {"strands": 2}},
        ),
        (
            "Index, middle and ring fingers. FDP of all three completely divided. Index, middle and ring FDP were "
            "sewn with two, four, and six strands respectively.",
            {"index FDP": {"strands": 2}, "middle FDP": {"strands": 4}, "ring FDP": {"strands": 6}},
        ),
        (
            "Middle and small fingers. FDP of both completely divided. Middle and small FDP were sewn with four "
            "and two strands respectively.",
            {"middle FDP": {"strands": 4}, "small FDP": {"strands": 2}},
        ),
    ],
)
def test_counts_dealt_out_respectively(note: str, expected: Shown) -> None:
    assert told(note, "strands") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left hand. Wounds of the middle, ring and small fingers. The superficialis was intact in the middle "
            "finger, half cut in the ring and completely cut in the small finger.",
            {
                "middle FDS": {"extent": "intact"},
                "ring FDS": {"extent": "partial", "extent_percent": 50},
                "small FDS": {"extent": "complete"},
            },
        ),
        (
            "Left hand. The FDP was completely divided in the index finger and 60% divided in the ring finger.",
            {"index FDP": {"extent": "complete"}, "ring FDP": {"extent": "partial", "extent_percent": 60}},
        ),
        (
            "Right hand. FDS: 40% cut in the index finger, 70% cut in the middle finger.",
            {
                "index FDS": {"extent": "partial", "extent_percent": 40},
                "middle FDS": {"extent": "partial", "extent_percent": 70},
            },
        ),
    ],
)
def test_shares_of_one_tendon_finger_by_finger(note: str, expected: Shown) -> None:
    assert told(note, "extent", "extent_percent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right hand.\nFDS cut: index 0, middle 40, ring 100.\n",
            {
                "index FDS": {"extent": "intact"},
                "middle FDS": {"extent": "partial", "extent_percent": 40},
                "ring FDS": {"extent": "complete"},
            },
        ),
        (
            "Left hand.\nFDP divided: middle 100, ring 70, small 0.\n",
            {
                "small FDP": {"extent": "intact"},
                "ring FDP": {"extent": "partial", "extent_percent": 70},
                "middle FDP": {"extent": "complete"},
            },
        ),
    ],
)
def test_bare_figures_behind_cut(note: str, expected: Shown) -> None:
    assert told(note, "extent", "extent_percent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "RF - FDP complete, FDS 1/3.",
            {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "partial", "extent_percent": 33}},
        ),
        (
            "MF - FDS 1/4, FDP complete.",
            {"middle FDP": {"extent": "complete"}, "middle FDS": {"extent": "partial", "extent_percent": 25}},
        ),
    ],
)
def test_a_fraction_right_behind_its_tendon(note: str, expected: Shown) -> None:
    assert told(note, "extent", "extent_percent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Zone: index II, ring III.\nIndex and ring FDP completely divided.\n",
            {"index FDP": {"zone": "II"}, "ring FDP": {"zone": "III"}},
        ),
        (
            "ZONE: II (middle), I (small)\nMiddle and small FDP completely divided.\n",
            {"middle FDP": {"zone": "II"}, "small FDP": {"zone": "I"}},
        ),
        (
            "ZONE: Ring IIB. Middle IIC.\nRing and middle FDP completely divided.\n",
            {"ring FDP": {"zone": "IIB"}, "middle FDP": {"zone": "IIC"}},
        ),
    ],
)
def test_zones_finger_by_finger(note: str, expected: Shown) -> None:
    assert told(note, "zone") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Zone: II\nIndex and ring FDP completely divided.\n",
            {"index FDP": {"zone": "II"}, "ring FDP": {"zone": "II"}},
        ),
        (
            "Level: zone III.\nMiddle and small FDP completely divided.\n",
            {"middle FDP": {"zone": "III"}, "small FDP": {"zone": "III"}},
        ),
    ],
)
def test_one_zone_of_two_fingers(note: str, expected: Shown) -> None:
    assert told(note, "zone") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Middle and small fingers. FDP of both completely divided.  Each was sewn with a four-strand cruciate "
            "of 3-0 Ethibond.\n"
            "Epitendinous: middle 6-0 Prolene, small none.\n",
            {"middle FDP": {"peripheral": "present", "peripheral_size": "6-0"}, "small FDP": {"peripheral": "absent"}},
        ),
        (
            "Ring finger. FDP and FDS completely divided, each sewn with a two-strand Kessler of 4-0 Prolene.\n"
            "Epitendinous: FDP 5-0 nylon, FDS none.\n",
            {"ring FDP": {"peripheral": "present", "peripheral_size": "5-0"}, "ring FDS": {"peripheral": "absent"}},
        ),
        (
            "Middle and small fingers. FDP of both completely divided.  Each was sewn with a four-strand cruciate "
            "of 3-0 Ethibond.\n"
            "Epi: small, 6-0 nylon. Middle: left out.\n",
            {"small FDP": {"peripheral": "present", "peripheral_size": "6-0"}, "middle FDP": {"peripheral": "absent"}},
        ),
    ],
)
def test_peripheral_sutures_finger_by_finger(note: str, expected: Shown) -> None:
    assert told(note, "peripheral", "peripheral_size") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Middle and small fingers. FDP of both completely divided. In the middle finger A2 was vented; in the "
            "small finger it is intact.",
            {"middle A2": {"finding": "vented"}, "small A2": {"finding": "intact"}},
        ),
        (
            "Index and ring fingers. FDP of both completely divided. In the index finger A4 was excised, in the "
            "ring finger it was preserved.",
            {"index A4": {"finding": "excised"}, "ring A4": {"finding": "intact"}},
        ),
    ],
)
def test_a_pulley_of_two_fingers_in_one_sentence(note: str, expected: Shown) -> None:
    assert told(note, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Middle and small fingers. FDP of both completely divided. A4 intact in the middle finger, in the "
            "small finger not seen.",
            {"middle A4": {"finding": "intact"}},
        ),
        (
            "Middle and small fingers. FDP of both completely divided.\nA2 - small vented, middle not seen\n",
            {"small A2": {"finding": "vented"}},
        ),
    ],
)
def test_a_pulley_not_seen_in_the_other_finger(note: str, expected: Shown) -> None:
    assert told(note, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        (
            "A2 was preserved in the middle finger. In the small finger it was excised.",
            {"middle A2": {"finding": "intact"}, "small A2": {"finding": "excised"}},
        ),
        (
            "In the middle A4 was vented; in the small it was left intact.",
            {"middle A4": {"finding": "vented"}, "small A4": {"finding": "intact"}},
        ),
    ],
)
def test_a_pulley_taken_up_by_it_in_another_finger(words: str, expected: Shown) -> None:
    note = "Middle and small fingers. FDP of both completely divided. " + words
    assert told(note, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided. Core 3-0 Ethibond, four strands. FDS completely divided. "
            "Core 4-0 Prolene, two strands.",
            {"ring FDP": {"strands": 4, "size": "3-0"}, "ring FDS": {"strands": 2, "size": "4-0"}},
        ),
        (
            "Right small finger. FDP cut through. Joined with six strands of 4-0 Ethibond. FDS cut through. "
            "Joined with two strands of 5-0 Prolene.",
            {"small FDP": {"strands": 6, "size": "4-0"}, "small FDS": {"strands": 2, "size": "5-0"}},
        ),
    ],
)
def test_a_second_core_told_after_its_own_cut(note: str, expected: Shown) -> None:
    assert told(note, "strands", "size") == expected


@pytest.mark.parametrize(
    "words",
    [
        "Bites were taken with care and A1 released over 8 mm in the small finger.",
        "Purchase was good. A3 divided for 9 mm in the middle finger.",
    ],
)
def test_a_length_of_a_pulley_is_no_purchase(words: str) -> None:
    note = (
        "Middle and small fingers. FDP of both completely divided.  Each was sewn with a four-strand cruciate "
        "of 3-0 Ethibond. "
    ) + words
    assert told(note, "purchase_mm") == {}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Middle finger, left. FDP completely divided. A3 was divided in the middle finger over its whole length.",
            {"middle A3": {"finding": "released"}},
        ),
        (
            "Middle finger and ring finger. FDP of both completely divided. A1 was released in the middle finger "
            "and preserved in the ring finger.",
            {"middle A1": {"finding": "released"}, "ring A1": {"finding": "intact"}},
        ),
    ],
)
def test_divided_in_the_middle_finger_is_no_part(note: str, expected: Shown) -> None:
    assert told(note, "finding", "part", group="pulleys") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index and middle fingers. A3 was divided completely in the index and middle fingers and the distal third "
            "of A2 was vented in the index finger.",
            {"index A2": "vented", "index A3": "released", "middle A3": "released"},
        ),
        (
            "Index, middle and ring fingers. A2 was preserved in the middle and ring fingers and A4 was released in "
            "the index and ring fingers.",
            {"index A4": "released", "middle A2": "intact", "ring A2": "intact", "ring A4": "released"},
        ),
    ],
)
def test_each_pulley_has_the_fingers_told_behind_it(note: str, expected: dict[str, object]) -> None:
    assert each(note, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left index and ring fingers. FDP of both fingers and FDS of the index finger completely divided.",
            {"index FDP": "complete", "index FDS": "complete", "ring FDP": "complete"},
        ),
        (
            "Right middle and small fingers. The profundus of both and the superficialis of the small finger were cut "
            "through.",
            {"middle FDP": "complete", "small FDP": "complete", "small FDS": "complete"},
        ),
        (
            "Wrist. The profundus tendons of the ring and small fingers and thereafter the superficialis of the ring "
            "finger were cut through.",
            {"ring FDP": "complete", "ring FDS": "complete", "small FDP": "complete"},
        ),
        (
            "Right wrist. FDP x 4 intact, FDS (x4) completely divided.",
            {f"{finger} FDP": "intact" for finger in ("index", "middle", "ring", "small")}
            | {f"{finger} FDS": "complete" for finger in ("index", "middle", "ring", "small")},
        ),
        (
            "Middle and ring fingers. The profundus of both was completely divided, as was the whole of the middle "
            "finger superficialis.",
            {"middle FDP": "complete", "middle FDS": "complete", "ring FDP": "complete"},
        ),
    ],
)
def test_every_tendon_of_a_list_is_told(note: str, expected: dict[str, object]) -> None:
    assert each(note, "extent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Middle, ring and little fingers. A2 was intact in the ring and little fingers, but in the middle finger "
            "the distal third of it had to be divided before the stumps would pass.",
            {"middle A2": "vented", "ring A2": "intact", "small A2": "intact"},
        ),
        (
            "Index and ring fingers. A4 was preserved in the index finger, but in the ring finger its proximal half "
            "was vented.",
            {"index A4": "intact", "ring A4": "vented"},
        ),
    ],
)
def test_a_finger_that_opens_a_clause_owns_its_pulley(note: str, expected: dict[str, object]) -> None:
    assert each(note, "finding", group="pulleys") == expected


THREE_DEEP = "Middle, ring and little fingers. Profundus of all three cut through. "


@pytest.mark.parametrize(
    "words",
    [
        "The three profundus tendons were each repaired with a four-strand Adelaide suture, using 3-0 Ethibond in the "
        "middle and ring fingers and 4-0 Ethibond in the little finger, and each of them was completed with a "
        "continuous 6-0 Prolene epitendinous suture.",
        "The three profundus tendons were sewn with a cruciate, 3-0 Ticron in the middle and ring fingers and 4-0 "
        "Ticron in the little finger, followed by a running 6-0 Prolene epitendinous suture.",
    ],
)
def test_threads_dealt_out_do_not_narrow_the_clause_behind(words: str) -> None:
    found = told(THREE_DEEP + words, "size", "peripheral_size")
    assert found == {
        "middle FDP": {"size": "3-0", "peripheral_size": "6-0"},
        "ring FDP": {"size": "3-0", "peripheral_size": "6-0"},
        "small FDP": {"size": "4-0", "peripheral_size": "6-0"},
    }


@pytest.mark.parametrize(
    "words",
    [
        "No gap middle, no gap ring, little opened 1 mm, accepted.",
        "No gapping middle, no gapping ring, little gapped 1 mm.",
    ],
)
def test_results_beside_the_names_of_fingers(words: str) -> None:
    assert each(THREE_DEEP + "All repaired with a 4-0 cruciate. " + words, "gap") == {
        "middle FDP": "none",
        "ring FDP": "none",
        "small FDP": "seen",
    }


@pytest.mark.parametrize(
    "words",
    [
        "Around the ring one a running 6-0 Prolene epitendinous, around the small one a running locking 5-0 Prolene.",
        "The ring one got a running 6-0 Prolene epitendinous, the small one a locking 5-0 Prolene.",
    ],
)
def test_the_ring_one_and_the_small_one(words: str) -> None:
    note = (
        "Ring and small fingers. FDP of both cut through. FDP of both: four-strand cruciate of 3-0 FiberWire. " + words
    )
    found = told(note, "size", "peripheral_size")
    assert found == {
        "ring FDP": {"size": "3-0", "peripheral_size": "6-0"},
        "small FDP": {"size": "3-0", "peripheral_size": "5-0"},
    }


@pytest.mark.parametrize(
    "words",
    ["The pulleys of this finger were intact from A1 to A4.", "Its pulleys were preserved from A1 through A4."],
)
def test_pulleys_intact_from_one_to_another(words: str) -> None:
    found = told("Middle finger. FDP completely divided. " + words, "finding", group="pulleys")
    assert found == {f"middle A{n}": {"finding": "intact"} for n in range(1, 5)}


@pytest.mark.parametrize(
    "words",
    [
        "- knots buried\n- purchase: ring 10 mm, middle 8 to 9 mm",
        "* purchase: ring 10 mm, middle 8 - 9 mm\n* knots buried",
    ],
)
def test_the_mark_of_an_item_says_nothing(words: str) -> None:
    note = "Ring and middle finger. FDP of both cut through. FDP of both repaired with a 3-0 cruciate.\n" + words
    found = each(note, "purchase_mm")
    assert found == {"ring FDP": (10, 10), "middle FDP": (8, 9)}


@pytest.mark.parametrize(
    "words",
    [
        "Middle and ring run freely; the little catches slightly at the edge of A2.",
        "The middle and the ring glide freely, but the little caught at A2.",
    ],
)
def test_the_little_one_that_catches(words: str) -> None:
    assert each(
        THREE_DEEP + "All repaired with a 4-0 cruciate.\nPassive flexion and extension.\n" + words, "glide"
    ) == {
        "middle FDP": "free",
        "ring FDP": "free",
        "small FDP": "catching",
    }


@pytest.mark.parametrize(
    "words",
    [
        "The middle profundus was repaired with a four-strand Strickland and the ring with a cruciate, 4-0 Ethibond in "
        "both.",
        "The middle profundus was sewn with a four-strand Strickland and the ring with a cruciate, 4-0 Ethibond being "
        "used for both.",
    ],
)
def test_a_thread_used_for_both(words: str) -> None:
    note = "Middle and ring finger. FDP of both completely divided. " + words
    assert told(note, "size", "stitch") == {
        "middle FDP": {"size": "4-0", "stitch": "strickland"},
        "ring FDP": {"size": "4-0", "stitch": "cruciate"},
    }


@pytest.mark.parametrize(
    "words",
    [
        "a purchase of 10 mm being taken on either side in the former and of 8 mm in the latter.",
        "with a purchase of 10 mm in the former and 8 mm in the latter.",
    ],
)
def test_bites_in_the_former_and_in_the_latter(words: str) -> None:
    note = (
        "Index and middle fingers. FDP of both cut. The profundus of the index and that of the middle finger were "
        "repaired with a four-strand cruciate, "
    ) + words
    found = each(note, "purchase_mm")
    assert found == {"index FDP": (10, 10), "middle FDP": (8, 8)}


@pytest.mark.parametrize(
    "words",
    [
        "the superficialis of the small finger, the profundus tendons of all four fingers and FCU were intact.",
        "FDS of the small finger, the profundi of all four fingers and FCU were uninjured.",
    ],
)
def test_all_four_fingers_in_a_list(words: str) -> None:
    found = {
        name: facts["extent"]
        for name, facts in told("Wrist. FCR completely divided, whereas " + words, "extent").items()
    }
    intact = ("index FDP", "middle FDP", "ring FDP", "small FDP", "small FDS", "FCU")
    assert found == dict.fromkeys(intact, "intact") | {"FCR": "complete"}


WRIST = (
    "R wrist. Divided: FDS middle + ring + small, FDP small. FDP small: 4-strand core. FDS M, R, S: 2 strands each. "
)
SEWN = ["middle FDS", "ring FDS", "small FDP", "small FDS"]


@pytest.mark.parametrize(
    "text",
    [
        "Smooth glide of FDP small + FDS x3, nil gap.",
        "Smooth glide of FDP small and all FDS, nil gap.",
        "FDS x3 + FDP small: smooth glide, nil gap.",
        "FDP small, FDS x3: no gap and smooth glide.",
    ],
)
def test_one_tendon_and_so_many_of_the_other_kind(text: str) -> None:
    assert sorted(each(WRIST + text, "glide")) == SEWN
    assert sorted(each(WRIST + text, "gap")) == SEWN


def test_a_result_of_one_beside_so_many() -> None:
    assert each(WRIST + "FDP small glided smoothly, FDS x3 were not tested.", "glide") == {"small FDP": "free"}


@pytest.mark.parametrize(
    ("text", "cut"),
    [
        ("FDS x3 (middle, ring, small) and FDP small divided.", SEWN),
        ("FDS x2 (middle, ring), FDP small + index divided.", ["index FDP", "middle FDS", "ring FDS", "small FDP"]),
        (
            "FDP index, FDP middle, FDS x2 (ring, small) divided.",
            ["index FDP", "middle FDP", "ring FDS", "small FDS"],
        ),
        ("Divided: FDS x3: middle, ring, small.", ["middle FDS", "ring FDS", "small FDS"]),
    ],
)
def test_a_count_before_the_fingers_it_counts(text: str, cut: list[str]) -> None:
    assert sorted(each(f"Right wrist. {text}", "extent")) == cut
