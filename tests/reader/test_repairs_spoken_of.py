"""A repair that is spoken of was made; what is said of a pulley over it, or of its excursion in a test, is no more."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    "note",
    [
        "The repair of the ring FDP is under moderate tension.",
        "After FDP repair the ring finger snagged at the distal lip of A2.",
        "A3 was vented so that the ring FDP repair could pass.",
        "A2 remained intact over the repaired FDP of the ring.",
    ],
)
def test_a_repair_spoken_of_was_made(note: str) -> None:
    assert told(note, "treatment") == {"ring FDP": {"treatment": "repaired"}}


@pytest.mark.parametrize(
    "note",
    [
        "No FDP repair was done in the ring finger.",
        "The earlier FDP repair of the ring finger was scarred.",
        "FDP repair of the ring finger was postponed.",
    ],
)
def test_a_repair_that_was_not_made_today_is_none(note: str) -> None:
    assert told(note, "treatment") == {}


def test_another_word_on_what_was_done_is_surer() -> None:
    note = "Index FDP grafted with palmaris longus. The index FDP repair ran well."
    assert told(note, "treatment") == {"index FDP": {"treatment": "grafted"}}


@pytest.mark.parametrize(
    ("note", "pulleys"),
    [
        ("A2 remained intact over the repaired FDP of the ring.", {"ring A2": {"finding": "intact"}}),
        ("A2 of the ring was torn; it was repaired with 5-0 PDS.", {"ring A2": {"finding": "repaired"}}),
        ("Full-length venting of A4 proved necessary in the index.", {"index A4": {"finding": "released"}}),
    ],
)
def test_a_repaired_tendon_repairs_no_pulley(note: str, pulleys: dict[str, dict[str, str]]) -> None:
    assert told(note, "finding", group="pulleys") == pulleys


@pytest.mark.parametrize(
    "note",
    [
        "A2 in the middle finger was not vented; it remained intact over the repaired FDP.",
        "A middle part of the A2 was incised to retrieve the index profundus, its two ends being spared.",
        "Two thirds of the ring FDP was intact.",
    ],
)
def test_no_whole_tendon(note: str) -> None:
    assert told(note, "extent") == {}


@pytest.mark.parametrize(
    ("note", "extents"),
    [
        ("A third of the ring FDP had been cut.", {"ring FDP": {"extent": "partial", "extent_percent": 33}}),
        ("The FDP of the ring had been spared completely.", {"ring FDP": {"extent": "intact"}}),
        ("Ring finger FDP cut right thru.", {"ring FDP": {"extent": "complete"}}),
        ("The sutures enter 1.2 cm from the division of the ring FDP; core repair, six strands.", {}),
    ],
)
def test_how_much_was_cut(note: str, extents: dict[str, dict[str, object]]) -> None:
    assert told(note, "extent", "extent_percent") == extents


SEWN = "Ring FDP completely divided, repaired with four strands of 3-0 Ticron."


@pytest.mark.parametrize(
    "remark",
    [
        "Full passive excursion produced not the slightest gap.",
        "With the wrist bent the ends came together easily.",
    ],
)
def test_a_test_or_a_meeting_is_no_glide(remark: str) -> None:
    assert told(f"{SEWN} {remark}", "glide") == {}


@pytest.mark.parametrize("remark", ["It ran fine.", "It excursed smoothly.", "It glides nice."])
def test_more_words_for_a_free_run(remark: str) -> None:
    assert told(f"{SEWN} {remark}", "glide") == {"ring FDP": {"glide": "free"}}


def test_a_length_cut_away_is_no_length_taken() -> None:
    note = "Prior to the core suture I squared off the ring FDP stumps, sacrificing 2 mm, and then repaired it."
    assert told(note, "purchase_mm", "trimmed_mm") == {"ring FDP": {"trimmed_mm": 2}}


@pytest.mark.parametrize(
    "remark", ["About 2 mm of tendon was caught in each lock.", "The locking circles measure 2 mm across."]
)
def test_what_a_lock_holds_is_its_size(remark: str) -> None:
    assert list(told(f"{SEWN} {remark}", "lock_mm", "purchase_mm")["ring FDP"]) == ["lock_mm"]


def test_ends_lying_far_apart_are_no_gap() -> None:
    note = "A 15 mm gap lay between the retracted stumps of the ring FDP. They then met and were repaired."
    assert told(note, "gap", "gap_mm") == {}


@pytest.mark.parametrize("thread", ["loop nylon 4-0", "loop 4-0 Supramid"])
def test_a_loop_beside_its_thread(thread: str) -> None:
    note = f"The ring FDP was repaired by M-Tang, {thread}."
    assert told(note, "looped", "size") == {"ring FDP": {"looped": True, "size": "4-0"}}


def test_the_one_finger_of_a_note_may_stand_in_a_fear() -> None:
    note = "Should the small finger FDP catch, we were ready to vent A4. It did not; A4 stayed intact."
    assert told(note, "finding", group="pulleys") == {"small A4": {"finding": "intact"}}


@pytest.mark.parametrize(
    "rod",
    [
        "A silicone rod was passed to the forearm and sewn to the profundus stump with two 4/0 Ethibond.",
        "Hunter rod placed, sutured distally to the FDP stump, 3-0 Prolene.",
        "The silicone implant was stitched to the stump of the FDP with 4-0 Ticron.",
    ],
)
def test_a_rod_sewn_to_a_stump_is_no_repair(rod: str) -> None:
    assert told(f"Right ring finger. {rod}", "treatment", "size") == {}


def test_a_repair_without_a_rod_is_one() -> None:
    assert told("Ring: FDP repaired without a rod with 3-0 Prolene.", "size") == {"ring FDP": {"size": "3-0"}}


@pytest.mark.parametrize("label", ["Quick summary (auto-filled by booking)", "Summary, pre-populated"])
def test_what_a_form_filled_in_beforehand_is_no_finding(label: str) -> None:
    note = f"{label}: six-strand repair FDP ring finger, no gap.\n\nRing finger. FDP sewn with 3-0 nylon, two strands."
    assert told(note, "strands", "gap") == {"ring FDP": {"strands": 2}}


@pytest.mark.parametrize(
    "held",
    ["6/0 Prolene tidy, no core", "oversewn with 6-0 Prolene, no core needed", "6-0 Prolene without a core suture"],
)
def test_a_thin_thread_without_a_core_goes_round(held: str) -> None:
    note = f"Ring FDP 40% cut, {held}."
    assert told(note, "size", "peripheral", "peripheral_size") == {
        "ring FDP": {"peripheral": "present", "peripheral_size": "6-0"}
    }


@pytest.mark.parametrize(
    "remark",
    ["After 30 minutes for the epi to work the wound was extended.", "Lidocaine with epi was infiltrated."],
)
def test_epinephrine_is_no_suture(remark: str) -> None:
    note = f"Thumb. {remark} FPL repaired with 3-0 nylon, four strands."
    assert told(note, "peripheral") == {}


@pytest.mark.parametrize(
    "note",
    [
        "Index finger. The FDS repair from last month was found to be solidly healed.",
        "Index finger. The FDS repair of three weeks ago was sound.",
    ],
)
def test_a_repair_of_last_month_is_not_todays(note: str) -> None:
    assert told(note, "treatment") == {}


def test_a_suture_round_and_round_is_no_core() -> None:
    note = "Small finger. FDP completely divided. FDP Kessler, 4-0 nylon, and round and round 6/0 Prolene."
    assert told(note, "size", "peripheral_size") == {"small FDP": {"size": "4-0", "peripheral_size": "6-0"}}
