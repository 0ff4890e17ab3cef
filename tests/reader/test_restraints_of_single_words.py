"""Words that carry a fact in one place and must be left alone in another, and short forms that stand for a fact."""

import pytest
from reader_sentences import Shown, told

PAIR = "Left hand. FDP of the middle and small fingers completely divided, each sewn with a cruciate of 4-0 Ethibond. "


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left index finger. FDP completely divided, sewn with a cruciate of 4-0 Ethibond. The finger was "
            "pulled through by hand and no gap was seen.",
            {"index FDP": {"test": "passive"}},
        ),
        (
            "Right ring and small fingers. FDP of both cut through and sewn with four strands of 3-0 "
            "Ethibond. Each finger pulled through a full range by hand, no gap.",
            {"ring FDP": {"test": "passive"}, "small FDP": {"test": "passive"}},
        ),
        (
            "Right ring finger. FDP cut through and sewn with four strands of 3-0 Ethibond. The digit was "
            "pulled through its range; no gap.",
            {"ring FDP": {"test": "passive"}},
        ),
    ],
)
def test_a_finger_pulled_through_by_hand_is_moved_passively(note: str, expected: Shown) -> None:
    assert told(note, "test") == expected


@pytest.mark.parametrize(
    "note",
    [
        (
            "Left index finger. FDP completely divided. The proximal stump was pulled through the wound in "
            "the palm, sewn with a cruciate of 4-0 Ethibond."
        ),
        (
            "Right small finger. FDP cut through. The tendon was pulled back under A2 with a catheter. Four "
            "strands of 3-0 Ethibond."
        ),
    ],
)
def test_pulling_that_tests_no_repair(note: str) -> None:
    assert not told(note, "test")


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP and FDS completely divided, both sewn with a cruciate of 4-0 Ethibond. A "
            "running 6-0 Prolene was added to the profundus, whereas the superficialis had none.",
            {"ring FDP": {"peripheral": "present"}, "ring FDS": {"peripheral": "absent"}},
        ),
        (
            "Right index finger. FDP and FDS cut through, both sewn with a Kessler of 4-0 nylon. The FDP "
            "received a circumferential 6-0 Prolene; the FDS got none.",
            {"index FDP": {"peripheral": "present"}, "index FDS": {"peripheral": "absent"}},
        ),
        (
            "Right index finger. FDP and FDS cut through, both sewn with a Kessler of 4-0 nylon. Epitendinous "
            "6-0 Prolene on the profundus, while the superficialis was given none.",
            {"index FDP": {"peripheral": "present"}, "index FDS": {"peripheral": "absent"}},
        ),
    ],
)
def test_the_other_tendon_had_none(note: str, expected: Shown) -> None:
    assert told(note, "peripheral") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring and small fingers. FDP and FDS of both completely divided, all sewn with a cruciate of "
            "4-0 Ethibond. A running 6-0 Prolene around the two FDPs, around the two FDSs nothing.",
            {
                "ring FDP": {"peripheral": "present"},
                "small FDP": {"peripheral": "present"},
                "ring FDS": {"peripheral": "absent"},
                "small FDS": {"peripheral": "absent"},
            },
        ),
        (
            "Right index finger. FDP and FDS cut through, both sewn with a Kessler of 4-0 nylon. Around the "
            "FDP a running 6-0 Prolene, around the FDS nothing.",
            {"index FDP": {"peripheral": "present"}, "index FDS": {"peripheral": "absent"}},
        ),
        (
            "Right middle finger. FDP and FDS cut through, both sewn with a Kessler of 4-0 nylon. A running "
            "5-0 Prolene round the profundus, and round the superficialis none.",
            {"middle FDP": {"peripheral": "present"}, "middle FDS": {"peripheral": "absent"}},
        ),
    ],
)
def test_around_the_others_nothing(note: str, expected: Shown) -> None:
    assert told(note, "peripheral") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP and FDS completely divided, both sewn with a cruciate of 4-0 Ethibond and "
            "a running 6-0 Prolene. Tension: the FDP had some, the FDS had none.",
            {"ring FDP": {"peripheral": "present"}, "ring FDS": {"peripheral": "present"}},
        ),
        (
            "Right index finger. FDP and FDS cut through, both sewn with a Kessler of 4-0 nylon and a "
            "circumferential 6-0 Prolene. The FDP had a gap of 1 mm, the FDS had none.",
            {"index FDP": {"peripheral": "present"}, "index FDS": {"peripheral": "present"}},
        ),
    ],
)
def test_none_of_other_things_is_no_missing_peripheral(note: str, expected: Shown) -> None:
    assert told(note, "peripheral") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left index and ring fingers. FDP of both completely divided. Index: six-strand Savage of 4-0 "
            "Ethibond and a running 6-0 Prolene. Ring: with the same core suture and the same epitendinous "
            "suture as the index.",
            {
                "index FDP": {"strands": 6, "size": "4-0", "peripheral": "present", "peripheral_size": "6-0"},
                "ring FDP": {"strands": 6, "size": "4-0", "peripheral": "present", "peripheral_size": "6-0"},
            },
        ),
        (
            "Right middle and small fingers. FDP of both cut through. Middle FDP: four-strand cruciate of 3-0 "
            "Ethibond with an epitendinous 5-0 Prolene. The small FDP was repaired with the same core stitch "
            "and the same peripheral stitch.",
            {
                "middle FDP": {"strands": 4, "size": "3-0", "peripheral": "present", "peripheral_size": "5-0"},
                "small FDP": {"strands": 4, "size": "3-0", "peripheral": "present", "peripheral_size": "5-0"},
            },
        ),
    ],
)
def test_the_same_core_and_the_same_peripheral(note: str, expected: Shown) -> None:
    assert told(note, "strands", "size", "peripheral", "peripheral_size") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left index and ring fingers. FDP of both completely divided. Index: six-strand Savage of 4-0 "
            "Ethibond and a running 6-0 Prolene. Ring: same core as the index; no epitendinous suture.",
            {
                "index FDP": {"strands": 6, "size": "4-0", "peripheral": "present"},
                "ring FDP": {"strands": 6, "size": "4-0", "peripheral": "absent"},
            },
        ),
        (
            "Right middle and small fingers. FDP of both cut through. Middle FDP: four-strand cruciate of 3-0 "
            "Ethibond with an epitendinous 5-0 Prolene. Small FDP: core as for the middle finger; no "
            "epitendinous.",
            {
                "middle FDP": {"strands": 4, "size": "3-0", "peripheral": "present"},
                "small FDP": {"strands": 4, "size": "3-0", "peripheral": "absent"},
            },
        ),
    ],
)
def test_only_the_same_core(note: str, expected: Shown) -> None:
    assert told(note, "strands", "size", "peripheral") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP and FDS completely divided.\n"
            "FDP\n"
            "Core: four-strand cruciate, 3-0 Ethibond\n"
            "Purchase: 10 mm\n"
            "FDS\n"
            "Core: two-strand Kessler, 4-0 Ethibond\n"
            "Purchase: the same\n",
            {"ring FDP": {"purchase_mm": (10, 10)}, "ring FDS": {"purchase_mm": (10, 10)}},
        ),
        (
            "Right hand.\n"
            "INDEX FDP: completely divided\n"
            "Core: four-strand cruciate, 3-0 Ethibond\n"
            "Purchase: 8 mm\n"
            "MIDDLE FDP: completely divided\n"
            "Core: six-strand Savage, 4-0 Ethibond\n"
            "Purchase: same\n",
            {"index FDP": {"purchase_mm": (8, 8)}, "middle FDP": {"purchase_mm": (8, 8)}},
        ),
    ],
)
def test_a_label_answered_with_the_same(note: str, expected: Shown) -> None:
    assert told(note, "purchase_mm") == expected


def test_a_label_answered_with_the_same_brings_nothing_else() -> None:
    note = (
        "Left ring finger. FDP and FDS completely divided.\n"
        "FDP\n"
        "Core: four-strand cruciate, 3-0 Ethibond\n"
        "Purchase: 10 mm\n"
        "FDS\n"
        "Core: two-strand Kessler, 4-0 Ethibond\n"
        "Purchase: the same\n"
    )
    assert told(note, "strands", "size") == {
        "ring FDP": {"strands": 4, "size": "3-0"},
        "ring FDS": {"strands": 2, "size": "4-0"},
    }


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, sewn with a cruciate of 4-0 Ethibond. A gap of 1 mm; "
            "one more simple stitch put in.",
            {"ring FDP": {"stitch": "cruciate"}},
        ),
        (
            "Right index finger. FDP completely divided. Sewn with four strands of 3-0 Ethibond. It gapped a "
            "little, so another figure-of-eight stitch was added.",
            {},
        ),
        (
            "Right index finger. FDP completely divided. Sewn with four strands of 3-0 Ethibond. Because of a "
            "gap an extra simple suture was added.",
            {},
        ),
    ],
)
def test_one_more_simple_stitch_is_no_core(note: str, expected: Shown) -> None:
    assert told(note, "stitch") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP and FDS completely divided. FDS sewn with a Kessler of 4-0 nylon, two "
            "strands. FDP sewn with a cruciate of 3-0 Ethibond, four strands crossing the junction.",
            {"ring FDS": {"strands": 2}, "ring FDP": {"strands": 4}},
        ),
        (
            "Right middle finger. FDS and FDP cut through. The FDS got two strands of 4-0 nylon. The FDP got "
            "a Savage, six strands spanning the repair.",
            {"middle FDS": {"strands": 2}, "middle FDP": {"strands": 6}},
        ),
    ],
)
def test_strands_crossing_the_junction_stay_with_their_tendon(note: str, expected: Shown) -> None:
    assert told(note, "strands") == expected


def test_caught_somewhere_is_catching() -> None:
    note = "Right index finger. FDP cut through, sewn with four strands of 3-0 Ethibond. The tendon catches at A2."
    assert told(note, "glide") == {"index FDP": {"glide": "catching"}}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, sewn with a cruciate of 4-0 Ethibond. Catches at A4 -> "
            "A4 vented 3 mm -> now free.",
            {"ring FDP": {"glide": "free"}},
        ),
        (
            "Right small finger. FDP cut through, sewn with four strands of 3-0 Ethibond. No gap. Caught "
            "under A2 -> A2 opened 4 mm -> free.",
            {"small FDP": {"glide": "free"}},
        ),
    ],
)
def test_an_arrow_to_now_free(note: str, expected: Shown) -> None:
    assert told(note, "glide") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP intact. The radial slip of FDS about 70 percent cut, the ulnar one only about 30.",
            {"ring FDS radial": {"extent_percent": 70}, "ring FDS ulnar": {"extent_percent": 30}},
        ),
        (
            "Right middle finger. FDS: the ulnar slip was cut by 60 %, the radial slip by some 20.",
            {"middle FDS ulnar": {"extent_percent": 60}, "middle FDS radial": {"extent_percent": 20}},
        ),
        (
            "Right index finger. FDS radial slip 80 % cut, ulnar slip 40.",
            {"index FDS radial": {"extent_percent": 80}, "index FDS ulnar": {"extent_percent": 40}},
        ),
    ],
)
def test_a_second_share_without_its_sign(note: str, expected: Shown) -> None:
    assert told(note, "extent_percent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, ends ragged. I cut the profundus back by 4 mm.",
            {"ring FDP": {"trimmed_mm": 4}},
        ),
        (
            "Right small finger. FDP cut through. We cut the FDP back 3 mm.",
            {"small FDP": {"trimmed_mm": 3}},
        ),
        (
            "Right thumb. FPL cut through. We cut the FPL back 2 mm.",
            {"thumb FPL": {"trimmed_mm": 2}},
        ),
    ],
)
def test_the_profundus_cut_back(note: str, expected: Shown) -> None:
    assert told(note, "trimmed_mm") == expected


@pytest.mark.parametrize(
    "note",
    [
        (
            "Left ring finger. FDP completely divided, sewn with a cruciate of 4-0 Ethibond. The repair "
            "caught on the shredded edge of A2."
        ),
        (
            "Right index finger. FDP cut through, sewn with four strands of 3-0 Ethibond. It snagged on the "
            "ragged margin of the A4 pulley."
        ),
    ],
)
def test_a_shredded_edge_of_a_pulley_is_no_tendon_end(note: str) -> None:
    assert not told(note, "ends")


def test_a_shredded_end_of_a_tendon_is_one() -> None:
    note = "Right index finger. FDP cut through, its ends shredded. It had been cut at the edge of A2."
    assert told(note, "ends") == {"index FDP": {"ends": "ragged"}}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, sewn with a cruciate of 4-0 Ethibond. The repair "
            "caught under A2.",
            {"ring FDP": {"glide": "catching"}},
        ),
        (
            "Right index finger. FDP cut through, sewn with four strands of 3-0 Ethibond. The bulky join "
            "catches under the A4 pulley.",
            {"index FDP": {"glide": "catching"}},
        ),
    ],
)
def test_caught_under_a_pulley(note: str, expected: Shown) -> None:
    assert told(note, "glide") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided. Core: four strands, 3-0 Ethibond.\n"
            "Epitendinous:   ( ) none   (x) done: 6-0 Prolene\n"
            "Gap:   (x) none   ( ) some\n",
            {"ring FDP": {"peripheral": "present", "gap": "none"}},
        ),
        (
            "Right thumb. FPL completely divided. Core: two strands, 4-0 Prolene.\n"
            "Epitendinous:   (x) none   ( ) done: ______\n"
            "Glide:   ( ) free   (x) catches\n",
            {"thumb FPL": {"peripheral": "absent", "glide": "catching"}},
        ),
    ],
)
def test_options_in_round_boxes(note: str, expected: Shown) -> None:
    assert told(note, "peripheral", "gap", "glide") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger\nZone of injury: II\nFDP completely divided\n",
            {"ring FDP": {"zone": "II"}},
        ),
        (
            "Digit: right thumb\nZone of injury: I\nTendon: FPL, completely divided\n",
            {"thumb FPL": {"zone": "I"}},
        ),
    ],
)
def test_zone_of_injury(note: str, expected: Shown) -> None:
    assert told(note, "zone") == expected


@pytest.mark.parametrize(
    "note",
    [
        (
            "Left ring finger. FDP completely divided. A4 was kept. I vented its distal 5 mm before the core "
            "of 3-0 Ethibond was placed."
        ),
        (
            "Right index finger. FDP cut through. A2 was in the way. We released its proximal 6 mm and placed "
            "a core of four strands of 4-0 nylon."
        ),
    ],
)
def test_what_was_opened_of_a_pulley_is_no_purchase(note: str) -> None:
    assert not told(note, "purchase_mm")


def test_purchase_still_read_beside_a_pulley() -> None:
    note = (
        "Right index finger. FDP cut through. A2 was released by 6 mm. Core of four strands of 4-0 nylon "
        "with a purchase of 9 mm."
    )
    assert told(note, "purchase_mm") == {"index FDP": {"purchase_mm": (9, 9)}}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left index and ring fingers. FDP of both completely divided and repaired with four strands. 3-0 "
            "was used in the index, 4-0 in the ring.",
            {"index FDP": {"size": "3-0"}, "ring FDP": {"size": "4-0"}},
        ),
        (
            "Right thumb and small finger. FPL and small FDP cut through and repaired. 4-0 Prolene was used "
            "in the small finger and 3-0 in the thumb.",
            {"small FDP": {"size": "4-0"}, "thumb FPL": {"size": "3-0"}},
        ),
        (
            "Right middle and small fingers. FDP of both cut through and repaired with four strands of "
            "Ethibond. 3-0 was chosen for the middle finger only.",
            {"middle FDP": {"size": "3-0"}},
        ),
    ],
)
def test_a_size_used_in_one_finger(note: str, expected: Shown) -> None:
    assert told(note, "size") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "left ring finger, cut on a tin. zone II. FDP divided right through. FDS intact. found the ends "
            "by milking. four strands of 3-0 Ethibond. running 6-0 Prolene round it. no gap. glided well.",
            {"ring FDP": {"strands": 4, "size": "3-0", "peripheral": "present", "gap": "none", "glide": "free"}},
        ),
        (
            "right index, bread knife. FDP cut through. FDS partly cut, 20%. left it. core cruciate 4-0 "
            "Ethibond. no peripheral. knots buried. bent it passively. opened by 1 mm. ran freely.",
            {"index FDP": {"strands": 4, "size": "4-0", "peripheral": "absent", "gap": "seen", "glide": "free"}},
        ),
    ],
)
def test_sentences_in_a_note_of_small_letters(note: str, expected: Shown) -> None:
    assert told(note, "strands", "size", "peripheral", "gap", "glide") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left hand. Exploration of three fingers, tendon repair in two. Ring FDP 60% divided.",
            {"ring FDP": {"extent": "partial"}},
        ),
        (
            "Right hand. Wounds of four fingers explored, tendon suture in two. FDP of the index finger and "
            "of the small finger repaired with 4-0 Ethibond.",
            {},
        ),
    ],
)
def test_tendon_repair_in_two_is_no_cut_in_two(note: str, expected: Shown) -> None:
    assert told(note, "extent") == expected


def test_a_tendon_cut_in_two_is() -> None:
    note = "Left ring finger. FDP cut in two."
    assert told(note, "extent") == {"ring FDP": {"extent": "complete"}}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided in the ring finger, A2 was intact.",
            {"ring A2": {"finding": "intact"}},
        ),
        (
            "Right index and small fingers. Index FDP cut through, small FDP intact. In the index A4 was "
            "vented, and A2 was left alone.",
            {"index A4": {"finding": "vented"}, "index A2": {"finding": "intact"}},
        ),
    ],
)
def test_a_pulleys_finger_by_its_own_clause(note: str, expected: Shown) -> None:
    assert told(note, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided. Its superficialis was intact, and so were its A2 and A4.",
            {"ring A2": {"finding": "intact"}, "ring A4": {"finding": "intact"}},
        ),
        (
            "Right small finger. FDP cut through. The FDS was intact and so was its A2 pulley.",
            {"small A2": {"finding": "intact"}},
        ),
    ],
)
def test_so_were_its_pulleys(note: str, expected: Shown) -> None:
    assert told(note, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    "note",
    [
        (
            "Left ring finger. FDP completely divided, sewn with a locking cruciate of 4-0 Ethibond. Nerve "
            "conduit of 2 mm diameter, locked in place with 9-0 nylon."
        ),
        (
            "Right index finger. FDP cut through, sewn with a locked cruciate of 3-0 Ethibond. Locking loops "
            "closed; drain 3 mm wide."
        ),
    ],
)
def test_the_diameter_of_a_conduit_is_no_lock(note: str) -> None:
    assert not told(note, "lock_mm")


def test_the_size_of_each_lock_is_read() -> None:
    note = (
        "Right index finger. FDP cut through, sewn with a locked cruciate of 3-0 Ethibond, each lock 2 mm in diameter."
    )
    assert told(note, "lock_mm") == {"index FDP": {"lock_mm": (2, 2)}}


@pytest.mark.parametrize(
    "note",
    [
        "Left ring finger. FDP completely divided, 3 mm taken from each side. Core of four strands of 3-0 Ethibond.",
        (
            "Right index finger. FDP cut through. About 2 mm of frayed tendon was taken away from both ends, "
            "then a core of 3-0 Ethibond."
        ),
    ],
)
def test_what_was_taken_from_each_side_is_no_purchase(note: str) -> None:
    assert not told(note, "purchase_mm")


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, sewn with a cruciate of 4-0 Ethibond. It moved with "
            "some drag, less than a full excursion.",
            {"ring FDP": {"glide": "restricted"}},
        ),
        (
            "Right index finger. FDP cut through, sewn with four strands of 3-0 Ethibond. The tendon showed "
            "less than full glide.",
            {"index FDP": {"glide": "restricted"}},
        ),
        (
            "Right thumb. FPL cut through, sewn with four strands of 3-0 Ethibond. Less than full excursion "
            "on the table.",
            {"thumb FPL": {"glide": "restricted"}},
        ),
    ],
)
def test_less_than_a_full_excursion(note: str, expected: Shown) -> None:
    assert told(note, "glide") == expected


def test_a_full_excursion_is_free() -> None:
    note = "Right thumb. FPL cut through, sewn with four strands of 3-0 Ethibond. Full excursion on the table."
    assert told(note, "glide") == {"thumb FPL": {"glide": "free"}}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, sewn with a cruciate of 4-0 Ethibond. The repair ran "
            "until it met the edge of A2, where it snagged.",
            {"ring FDP": {"glide": "catching"}},
        ),
        (
            "Right small finger. FDP cut through, sewn with four strands of 3-0 Ethibond. It slid as far as "
            "the A4 pulley, where it caught.",
            {"small FDP": {"glide": "catching"}},
        ),
    ],
)
def test_met_a_pulley_where_it_snagged(note: str, expected: Shown) -> None:
    assert told(note, "glide") == expected


@pytest.mark.parametrize(
    "note",
    [
        "Left ring finger. FDP completely divided, sewn with a cruciate of 4-0 Ethibond.\n\n[ Signed ]  [ Locked ]\n",
        "Right thumb. FPL cut through, sewn with four strands of 3-0 Ethibond.\n[ Locked ]\n",
    ],
)
def test_locked_closes_a_record(note: str) -> None:
    assert not told(note, "hold")


def test_a_locked_stitch_is_locking() -> None:
    note = "Right thumb. FPL cut through, sewn with a locked four-strand stitch of 3-0 Ethibond."
    assert told(note, "hold") == {"thumb FPL": {"hold": "locking"}}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, sewn with a cruciate of 3-0 Ethibond.\n\n"
            "ADDENDUM: The core of the ring FDP is 4-0, please disregard 3-0 in the text above.\n",
            {"ring FDP": {"size": "4-0"}},
        ),
        (
            "Right index finger. FDP cut through. Core suture 4-0 nylon (ignore 3-0 on the booking form).",
            {"index FDP": {"size": "4-0"}},
        ),
        (
            "Right index finger. FDP cut through. Core suture 4-0 nylon, please ignore 2-0 on the count sheet.",
            {"index FDP": {"size": "4-0"}},
        ),
    ],
)
def test_a_size_to_be_disregarded(note: str, expected: Shown) -> None:
    assert told(note, "size") == expected


@pytest.mark.parametrize(
    "note",
    [
        "Left ring finger. FDP repair of three weeks ago ruptured. FDP found retracted to the palm.",
        "Right index finger. On exploration the FDP repair had parted. The FDS repair was holding.",
    ],
)
def test_a_repair_that_parted_is_not_one_done(note: str) -> None:
    assert not told(note, "treatment")


def test_a_repair_that_parted_and_was_done_again() -> None:
    note = (
        "Right index finger. On exploration the FDP repair had parted. The FDP was sewn anew with six "
        "strands of 3-0 Ethibond."
    )
    assert told(note, "treatment", "strands") == {"index FDP": {"treatment": "repaired", "strands": 6}}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left hand.\n\n"
            "RING FINGER\n"
            "FDP and FDS completely divided. The ends of both tendons were ragged.\n\n"
            "SMALL FINGER\n"
            "FDP completely divided. Ends clean.\n",
            {"ring FDP": {"ends": "ragged"}, "ring FDS": {"ends": "ragged"}, "small FDP": {"ends": "clean"}},
        ),
        (
            "Right hand.\n\n"
            "Index finger:\n"
            "FDP and FDS cut through. Both tendons had crushed ends.\n\n"
            "Middle finger:\n"
            "FDP cut through.\n",
            {"index FDP": {"ends": "crushed"}, "index FDS": {"ends": "crushed"}},
        ),
    ],
)
def test_both_tendons_under_the_heading_of_a_finger(note: str, expected: Shown) -> None:
    assert told(note, "ends") == expected


@pytest.mark.parametrize(
    "note",
    [
        "Left ring finger, six weeks after a cut. FDP completely divided; the stumps had joined up with scar.",
        "Right index finger. The cut FDP had grown onto the sheath.",
    ],
)
def test_tendons_grown_together_are_no_repair(note: str) -> None:
    assert not told(note, "treatment", "glide")


@pytest.mark.parametrize(
    "note",
    [
        "Left ring finger. FDP intact. FDS partial cut, 20%, left alone, edges clean.",
        "Right middle finger. FDS: partial cut left, fibres tidy.",
    ],
)
def test_fibres_of_a_partial_cut_have_no_ends(note: str) -> None:
    assert not told(note, "ends")


def test_ends_of_a_divided_tendon_are_clean() -> None:
    note = "Right middle finger. FDP completely divided, ends clean. FDS: partial cut left alone."
    assert told(note, "ends") == {"middle FDP": {"ends": "clean"}}


@pytest.mark.parametrize(
    "note",
    [
        "Left ring finger. Fell onto the sharp end of a steel rod. FDP completely divided.",
        "Right index finger. Caught on the ragged end of a cable. FDP cut through.",
        "Right index finger. FDP cut through by the sharp end of a broken mirror.",
    ],
)
def test_the_sharp_end_of_a_thing(note: str) -> None:
    assert not told(note, "ends")


def test_the_ragged_end_of_the_tendon() -> None:
    note = "Right index finger. FDP cut through. The ragged end of the FDP lay in the palm."
    assert told(note, "ends") == {"index FDP": {"ends": "ragged"}}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, sewn with a cruciate of 4-0 Ethibond. An epitendinous "
            "suture was neither possible nor needed.",
            {"ring FDP": {"peripheral": "absent"}},
        ),
        (
            "Right thumb. FPL cut through, sewn with four strands of 3-0 Ethibond. A peripheral stitch was "
            "neither needed nor wanted.",
            {"thumb FPL": {"peripheral": "absent"}},
        ),
    ],
)
def test_neither_possible_nor_needed(note: str, expected: Shown) -> None:
    assert told(note, "peripheral") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided. We had opened a 3-0 Ethibond but it was too thick and "
            "was put aside. The core is 4-0 Ethibond, four strands.",
            {"ring FDP": {"size": "4-0"}},
        ),
        (
            "Right index finger. FDP cut through. A 2-0 was opened and set aside. Four strands of 3-0 "
            "Ethibond were placed.",
            {"index FDP": {"size": "3-0"}},
        ),
        (
            "Right thumb. FPL cut through. The first 4-0 Prolene broke and was discarded. Sewn with four "
            "strands of 3-0 Ethibond.",
            {"thumb FPL": {"size": "3-0"}},
        ),
    ],
)
def test_a_thread_put_aside(note: str, expected: Shown) -> None:
    assert told(note, "size") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, sewn with a cruciate of 4-0 Ethibond. FDS cut and "
            "excised. The FDP and FDS repairs ran freely.",
            {"ring FDP": {"glide": "free"}},
        ),
        (
            "Right index finger. FDP completely divided, sewn with a cruciate of 4-0 Ethibond. FDS half cut, "
            "trimmed. No gap in the flexor tendon repairs.",
            {"index FDP": {"gap": "none"}},
        ),
    ],
)
def test_unsewn_superficialis_among_repairs(note: str, expected: Shown) -> None:
    assert told(note, "gap", "glide") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP and FDS completely divided. 2 mm off each end of the profundus.",
            {"ring FDP": {"trimmed_mm": 2}},
        ),
        (
            "Right small finger. FDP and FDS cut through. I took 1 mm off each end of the FDS.",
            {"small FDS": {"trimmed_mm": 1}},
        ),
        (
            "Right small finger. FDP and FDS cut through. The scalpel took 3 mm off both ends of the FDP.",
            {"small FDP": {"trimmed_mm": 3}},
        ),
    ],
)
def test_so_much_off_each_end_of_a_tendon(note: str, expected: Shown) -> None:
    assert told(note, "trimmed_mm", "purchase_mm") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left index finger. FDP completely divided, sewn with a cruciate of 4-0 Ethibond. Traction on the "
            "tendon through the palm wound: no gap.",
            {"index FDP": {"test": "traction"}},
        ),
        (
            "Right small finger. FDP cut through, sewn with four strands of 3-0 Ethibond. The tendon was "
            "pulled on through the forearm wound and did not gap.",
            {"small FDP": {"test": "traction"}},
        ),
        (
            "Left middle finger. FDP cut through, sewn with four strands of 3-0 Ethibond. Pulling on the "
            "tendon through a wound in the palm, it glided freely.",
            {"middle FDP": {"test": "traction"}},
        ),
    ],
)
def test_traction_through_a_wound_tests_the_repair(note: str, expected: Shown) -> None:
    assert told(note, "test") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left index and ring fingers. FDP of both completely divided. Index FDP: four-strand cruciate of "
            "3-0 Ethibond, running 6-0 Prolene. Ring FDP: two-strand Kessler of 4-0 Ethibond. Peripheral "
            "suture as above.",
            {
                "index FDP": {"strands": 4, "peripheral": "present", "peripheral_size": "6-0"},
                "ring FDP": {"strands": 2, "peripheral": "present", "peripheral_size": "6-0"},
            },
        ),
        (
            "Right index and small fingers. FDP of both cut through. The index FDP got a four-strand cruciate "
            "of 3-0 Ethibond and a running 6-0 nylon. The small FDP got a two-strand Kessler of 4-0 Ethibond. "
            "Circumferential suture as before.",
            {
                "index FDP": {"strands": 4, "peripheral": "present", "peripheral_size": "6-0"},
                "small FDP": {"strands": 2, "peripheral": "present", "peripheral_size": "6-0"},
            },
        ),
    ],
)
def test_peripheral_as_above(note: str, expected: Shown) -> None:
    assert told(note, "peripheral", "peripheral_size", "strands") == expected


@pytest.mark.parametrize(
    "words",
    [
        "Epitendinous: the same\n",
        "Epitendinous suture as above.\n",
    ],
)
def test_a_peripheral_label_answered_with_the_same(words: str) -> None:
    note = (
        "Right hand.\nMIDDLE FDP: completely divided\nCore: four-strand cruciate, 3-0 Ethibond\nEpitendinous: 5-0"
        " Prolene, running\nSMALL FDP: completely divided\nCore: six-strand Savage, 4-0 Ethibond\n"
    ) + words
    assert told(note, "peripheral", "peripheral_size") == {
        "middle FDP": {"peripheral": "present", "peripheral_size": "5-0"},
        "small FDP": {"peripheral": "present", "peripheral_size": "5-0"},
    }


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, sewn with a cruciate of 4-0 Ethibond. On bending and "
            "straightening the repair caught nowhere.",
            {"ring FDP": {"glide": "free"}},
        ),
        (
            "Right thumb. FPL cut through, sewn with four strands of 3-0 Ethibond. It snagged nowhere under "
            "the pulleys.",
            {"thumb FPL": {"glide": "free"}},
        ),
        (
            "Right small finger. FDP cut through, sewn with four strands of 3-0 Ethibond. The repair caught nowhere.",
            {"small FDP": {"glide": "free"}},
        ),
        (
            "Right small finger. FDP cut through, sewn with four strands of 3-0 Ethibond. Moved through its "
            "full range, it catches nowhere.",
            {"small FDP": {"glide": "free"}},
        ),
    ],
)
def test_caught_nowhere_is_free(note: str, expected: Shown) -> None:
    assert told(note, "glide") == expected


@pytest.mark.parametrize(
    "words",
    [
        (
            "The peripheral suture of 6-0 Prolene was added to both profundus repairs, and the peripheral suture "
            "was omitted in both superficialis repairs."
        ),
        (
            "Epitendinous 6-0 Prolene was added to both profundus repairs, and no epitendinous suture was placed "
            "in both superficialis repairs."
        ),
        "The profundus repairs had an epitendinous 6-0 Prolene; the superficialis repairs were given none.",
    ],
)
def test_a_peripheral_left_out_in_its_own_clause(words: str) -> None:
    note = (
        "Left ring and small fingers. FDP and FDS of both completely divided, all sewn with a cruciate of 4-0 "
        "Ethibond. "
    ) + words
    assert told(note, "peripheral") == {
        "ring FDP": {"peripheral": "present"},
        "small FDP": {"peripheral": "present"},
        "ring FDS": {"peripheral": "absent"},
        "small FDS": {"peripheral": "absent"},
    }


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right thumb, index and middle fingers. FPL and FDP of both fingers completely divided, each sewn "
            "with a cruciate of 4-0 Ethibond. The peripheral suture was added to the two profundus repairs "
            "and was omitted in the thumb.",
            {
                "index FDP": {"peripheral": "present"},
                "middle FDP": {"peripheral": "present"},
                "thumb FPL": {"peripheral": "absent"},
            },
        ),
        (
            "Right thumb, index and middle fingers. FPL, index FDP and middle FDP completely divided, each "
            "sewn with a cruciate of 4-0 Ethibond. A circumferential suture of 6-0 Prolene was added to the "
            "two profundus repairs and was omitted in the thumb.",
            {
                "index FDP": {"peripheral": "present"},
                "middle FDP": {"peripheral": "present"},
                "thumb FPL": {"peripheral": "absent"},
            },
        ),
        (
            "Left ring and small fingers. FDP of both completely divided, each sewn with a cruciate of 4-0 "
            "Ethibond. The epitendinous suture was placed in the ring finger, it was omitted in the small "
            "finger.",
            {"ring FDP": {"peripheral": "present"}, "small FDP": {"peripheral": "absent"}},
        ),
        (
            "Left thumb and small finger. FPL and small FDP completely divided, each sewn with a cruciate of "
            "4-0 Ethibond. A peripheral stitch of 5-0 Prolene was added to the FDP repair and was omitted in "
            "the thumb.",
            {"small FDP": {"peripheral": "present"}, "thumb FPL": {"peripheral": "absent"}},
        ),
    ],
)
def test_a_peripheral_omitted_in_a_finger(note: str, expected: Shown) -> None:
    assert told(note, "peripheral") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left index and ring fingers. FDP of both completely divided. Index FDP: six-strand Savage of 4-0 "
            "Ethibond and a running 6-0 Prolene. Ring FDP: core and epitendinous the same as for the FDP of "
            "the index finger. No gap here.",
            {
                "index FDP": {"strands": 6, "peripheral": "present"},
                "ring FDP": {"strands": 6, "peripheral": "present", "gap": "none"},
            },
        ),
        (
            "Right middle and small fingers. FDP of both cut through. Middle FDP: four-strand cruciate of 3-0 "
            "Ethibond with an epitendinous 5-0 Prolene. Small FDP: the same as for the middle FDP, with a gap "
            "of 1 mm.",
            {
                "middle FDP": {"strands": 4, "peripheral": "present"},
                "small FDP": {"strands": 4, "peripheral": "present", "gap": "seen"},
            },
        ),
    ],
)
def test_what_is_only_compared_with(note: str, expected: Shown) -> None:
    assert told(note, "strands", "peripheral", "gap") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided. The FDP was joined to the graft by a Pulvertaft weave.",
            {"ring FDP": {"treatment": "grafted"}},
        ),
        (
            "Right thumb. FPL ruptured. FPL: palmaris longus graft, Pulvertaft weave proximally.",
            {"thumb FPL": {"treatment": "grafted"}},
        ),
        (
            "Right small finger. FDP completely divided, Pulvertaft weave with palmaris longus.",
            {"small FDP": {"treatment": "grafted"}},
        ),
    ],
)
def test_a_woven_graft(note: str, expected: Shown) -> None:
    assert told(note, "treatment") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left hand.\n"
            "Middle finger: FDP completely divided, cruciate of 4-0 Ethibond. Active bending -> no gap.\n"
            "Small finger: FDP completely divided, cruciate of 4-0 Ethibond. The same -> no gap.\n",
            {"middle FDP": {"test": "active", "gap": "none"}, "small FDP": {"test": "active", "gap": "none"}},
        ),
        (
            "Right hand.\n"
            "Index finger: FDP cut through, four strands of 3-0 Ethibond. Passive extension: no gap.\n"
            "Ring finger: FDP cut through, four strands of 3-0 Ethibond. Same - no gap.\n",
            {"index FDP": {"test": "passive", "gap": "none"}, "ring FDP": {"test": "passive", "gap": "none"}},
        ),
        (
            "Right hand.\n"
            "Index finger: FDP cut through, four strands of 3-0 Ethibond. Passive extension: no gap.\n"
            "Ring finger: FDP cut through, four strands of 3-0 Ethibond. Same: no gap.\n",
            {"index FDP": {"test": "passive", "gap": "none"}, "ring FDP": {"test": "passive", "gap": "none"}},
        ),
    ],
)
def test_the_same_test_of_the_next_tendon(note: str, expected: Shown) -> None:
    assert told(note, "test", "gap") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, sewn with a cruciate of 4-0 Ethibond. No gap on the "
            "table. Passes A2 freely.",
            {"ring FDP": {"glide": "free"}},
        ),
        (
            "Left ring finger. FDP completely divided, sewn with a cruciate of 4-0 Ethibond. No gap. Moves freely.",
            {"ring FDP": {"glide": "free"}},
        ),
        (
            "Right thumb. FPL completely divided, sewn with four strands of 3-0 Ethibond. There was no gap. "
            "It moved freely.",
            {"thumb FPL": {"glide": "free"}},
        ),
    ],
)
def test_free_behind_a_sentence_on_a_gap(note: str, expected: Shown) -> None:
    assert told(note, "glide") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            PAIR + "Peripheral suture on neither.",
            {"middle FDP": {"peripheral": "absent"}, "small FDP": {"peripheral": "absent"}},
        ),
        (
            PAIR
            + ("In neither finger had the sheath been opened before, and a running 6-0 Prolene was added to both."),
            {"middle FDP": {"peripheral": "present"}, "small FDP": {"peripheral": "present"}},
        ),
    ],
)
def test_neither_at_the_end_only(note: str, expected: Shown) -> None:
    assert told(note, "peripheral") == expected
