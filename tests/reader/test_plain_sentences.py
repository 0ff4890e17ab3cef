"""Plain sentences of everyday notes, each of a class that was once read wrongly."""

import pytest
from reader_sentences import each

RING = "Left ring finger. FDP and FDS completely divided in zone II. "
THUMB = "Right thumb and index. FPL and index FDP repaired with four strands of 3-0 Ethibond. "


@pytest.mark.parametrize(
    "text",
    [
        "One slip of FDS was excised, the other sutured with a 4-0 figure of eight.",
        "One FDS slip was resected and the other repaired with 4-0 Prolene.",
    ],
)
def test_the_other_slip_is_no_other_tendon(text: str) -> None:
    assert "ring FDP" not in each(RING + text, "size")
    assert "ring FDP" not in each(RING + text, "treatment")


@pytest.mark.parametrize(
    "text",
    [
        "FPL gap none, index FDP 1 mm gap.",
        "Gap: FPL none, index 1 mm.",
        "No gap thumb, index 1 mm gap.",
    ],
)
def test_none_answers_for_the_one_before(text: str) -> None:
    assert each(THUMB + text, "gap") == {"thumb FPL": "none", "index FDP": "seen"}


def test_but_leads_to_a_clause() -> None:
    text = THUMB + "Neither gapped but the index caught at A2."
    assert each(text, "gap") == {"thumb FPL": "none", "index FDP": "none"}
    assert each(text, "glide") == {"index FDP": "catching"}


@pytest.mark.parametrize(
    "text",
    [
        "FDP repaired with 2-strand Kessler and running 6-0 Prolene.",
        "FDP repaired with two-strand Kessler, running 6-0 Prolene.",
        "FDP repaired with a Kessler and a 6-0 Prolene running suture.",
    ],
)
def test_a_thin_running_suture_beside_the_core(text: str) -> None:
    assert each(RING + text, "peripheral_size") == {"ring FDP": "6-0"}
    assert each(RING + text, "size") == {}


def test_all_profundi_are_those_of_the_fingers_named() -> None:
    text = (
        "Left index, middle and ring fingers. All profundi completely divided. Each profundus repaired with 4 strands."
    )
    assert each(text, "strands") == {"index FDP": 4, "middle FDP": 4, "ring FDP": 4}
    assert "small FDP" not in each(text, "extent")


@pytest.mark.parametrize(
    ("text", "fingers"),
    [
        ("Left index, middle and ring fingers. All six tendons were completely divided.", ("index", "middle", "ring")),
        ("In the ring and small fingers all four tendons had been cut through.", ("ring", "small")),
        ("In the index and middle fingers both flexors were completely divided.", ("index", "middle")),
        ("All flexors to the index and middle fingers were divided.", ("index", "middle")),
    ],
)
def test_both_flexors_of_each_finger(text: str, fingers: tuple[str, ...]) -> None:
    expected = {f"{finger} {tendon}": "complete" for finger in fingers for tendon in ("FDP", "FDS")}
    assert each(text, "extent") == expected


def test_all_flexors_but_one() -> None:
    found = each("Left index and middle fingers. All flexors were divided except the index FDS.", "extent")
    assert found == dict.fromkeys(("index FDP", "middle FDP", "middle FDS"), "complete")


@pytest.mark.parametrize(
    "text",
    [
        "Left index and middle fingers, FDP of both completely divided.",
        "In the index and middle fingers the FDP of each was completely divided.",
    ],
)
def test_one_flexor_of_both_fingers(text: str) -> None:
    assert each(text, "extent") == {"index FDP": "complete", "middle FDP": "complete"}


@pytest.mark.parametrize(
    "text",
    [
        "Wrist. FCR, PL, FDS all four and median nerve completely divided.",
        "Wrist. FDS x4, FCR, PL and median nerve completely divided.",
    ],
)
def test_all_four_in_a_list(text: str) -> None:
    found = each(text, "extent")
    assert {f"{finger} FDS" for finger in ("index", "middle", "ring", "small")} <= found.keys()


@pytest.mark.parametrize(
    "text",
    [
        "The FDP was repaired elsewhere in March. It ruptured again in April and was repaired again with six strands.",
        "FDP repair two months ago. It was revised with six strands of 4-0. Now stiff, tenolysis done.",
    ],
)
def test_what_was_done_again_before_today_is_no_repair_of_today(text: str) -> None:
    assert each("Left ring finger. " + text, "strands") == {}


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("Kessler-Tajima 4-0, 2 strand, then a cruciate on top, 4 strand, total six strands.", 6),
        ("A two-strand modified Kessler and a two-strand mattress gave a total of four strands.", 4),
    ],
)
def test_a_stated_total(text: str, count: int) -> None:
    assert each("Left ring finger. FDP completely divided. " + text, "strands") == {"ring FDP": count}


@pytest.mark.parametrize("text", ["Repaired with a core suture.", "It was repaired with a core suture only."])
def test_repaired_with_a_core_of_which_nothing_is_told(text: str) -> None:
    assert each("Left ring finger. FDP completely divided. " + text, "treatment") == {"ring FDP": "repaired"}


def test_what_is_debrided_on_each_side_is_not_held() -> None:
    text = "Left ring finger. FDP completely divided, debrided back to healthy tendon, about 2 mm each side."
    assert each(text, "trimmed_mm") == {"ring FDP": 2}
    assert each(text, "purchase_mm") == {}


@pytest.mark.parametrize("text", ["was cut cleanly across.", "was divided sharply.", "was divided; the cut was clean."])
def test_a_clean_cut(text: str) -> None:
    assert each("Left ring finger. FDP " + text, "ends") == {"ring FDP": "clean"}


REPAIRED = "Left ring finger. FDP repaired with four strands. "


@pytest.mark.parametrize(
    "text",
    [
        "I did not test for gapping.",
        "No gap of more than 1 mm.",
        "No gap was the aim.",
        "Gapping cannot be excluded.",
        "To avoid gapping the wrist was kept flexed.",
        "The wrist was flexed to prevent a gap.",
    ],
)
def test_a_gap_that_is_only_spoken_of(text: str) -> None:
    assert each(REPAIRED + text, "gap") == {}


@pytest.mark.parametrize(
    "text", ["No gap at rest, but 1 mm on full extension.", "No gap in flexion but 1 mm when straight."]
)
def test_a_gap_after_all(text: str) -> None:
    assert each(REPAIRED + text, "gap") == {"ring FDP": "seen"}
    assert each(REPAIRED + text, "gap_mm") == {"ring FDP": 1}


@pytest.mark.parametrize("text", ["I tried to keep A2.", "We attempted to preserve A2."])
def test_what_was_tried_is_not_what_came_about(text: str) -> None:
    assert each(REPAIRED + text, "finding", "pulleys") == {}


def test_what_was_tried_and_managed_came_about() -> None:
    assert each(REPAIRED + "I tried to keep A2 and managed it.", "finding", "pulleys") == {"ring A2": "intact"}


@pytest.mark.parametrize(
    "text",
    ["A peripheral suture was attempted but the tendon was too soft.", "Epitendinous suture tried but not possible."],
)
def test_an_attempt_is_no_suture(text: str) -> None:
    assert each(REPAIRED + text, "peripheral").get("ring FDP") != "present"


@pytest.mark.parametrize(
    ("text", "count"), [("Between four and six strands.", 4), ("Four to six strands.", 4), ("Up to six strands.", None)]
)
def test_of_a_range_no_more_than_its_least(text: str, count: int | None) -> None:
    text = "Left ring finger. FDP completely divided and repaired. " + text
    assert each(text, "strands").get("ring FDP") == count


@pytest.mark.parametrize(
    "text",
    [
        "Left thumb. EPL completely divided. It was repaired with a 4-strand cruciate of 4-0 Ethibond.",
        "Left thumb. The EPL was cut all the way across. Tendon repaired with a 4-0 PDS modified Kessler.",
        "Left ring finger. Extensor tendon divided over the PIP joint. The tendon was repaired with 4-0 PDS.",
    ],
)
def test_the_tendon_spoken_of_last_is_an_extensor(text: str) -> None:
    assert each(text, "treatment") == {}
    assert each(text, "size") == {}


def test_behind_an_extensor_the_flexor_is_told_by_name() -> None:
    text = "Left ring finger. FDP and the extensor tendon were divided. FDP repaired with four strands."
    assert each(text, "strands") == {"ring FDP": 4}


def test_a_superficialis_only_seen_is_not_the_one_sewn() -> None:
    text = (
        "PREOP DX: Closed avulsion of the FDP, left ring finger\n\n"
        "DETAILS: The FDP stump lay in the palm. FDS was in good shape and stayed put.\n\n"
        "A 3-0 Prolene was woven into the tendon and taken out over a button."
    )
    assert "ring FDS" not in each(text, "size")


@pytest.mark.parametrize(
    "text",
    [
        "Middle and ring fingers. FDP completely divided in both and repaired with four strands; small FDP intact.",
        "Middle and ring fingers. FDP completely divided in both, then repaired with four strands, small FDP intact.",
    ],
)
def test_in_both_is_of_the_fingers_of_the_heading(text: str) -> None:
    assert each(text, "extent") == {"middle FDP": "complete", "ring FDP": "complete", "small FDP": "intact"}
    assert each(text, "strands") == {"middle FDP": 4, "ring FDP": 4}


@pytest.mark.parametrize(
    ("text", "deep", "superficial"),
    [
        ("an intact profundus and a superficialis cut through some thirty per cent", "intact", "partial"),
        ("a completely divided profundus and a superficialis that was intact", "complete", "intact"),
        ("intact FDP and FDS completely divided", "intact", "complete"),
    ],
)
def test_one_told_before_its_name_and_one_behind(text: str, deep: str, superficial: str) -> None:
    found = each(f"The small finger showed {text}.", "extent")
    assert found == {"small FDP": deep, "small FDS": superficial}


@pytest.mark.parametrize("noun", ["same two tendons", "same two flexors", "same pair of tendons"])
def test_the_same_two_tendons_of_another_finger(noun: str) -> None:
    text = f"Middle: FDP and FDS completely divided. In the ring finger the {noun} were cut through completely."
    assert set(each(text, "extent")) == {"middle FDP", "middle FDS", "ring FDP", "ring FDS"}


@pytest.mark.parametrize("word", ["perfect", "in good shape", "undisturbed"])
def test_a_superficialis_in_good_shape_is_not_the_one_sewn(word: str) -> None:
    text = f"Ring FDP completely divided. Sublimis {word}. Repaired with four strands of 3-0."
    assert each(text, "extent") == {"ring FDP": "complete", "ring FDS": "intact"}
    assert each(text, "strands") == {"ring FDP": 4}


@pytest.mark.parametrize(
    "text",
    [
        "Its FDS was found to be absent congenitally, not cut.",
        "FDS missing, which is a normal variant.",
        "FDS absent (normal variant).",
    ],
)
def test_an_absent_tendon_is_not_whole(text: str) -> None:
    assert "small FDS" not in each("Small finger FDP completely divided. " + text, "extent")


@pytest.mark.parametrize(
    "text", ["FPL gone clean off at the wrist.", "FPL cut clean off the bone.", "FPL off its bone cleanly."]
)
def test_clean_off_says_nothing_of_the_ends(text: str) -> None:
    assert each("Thumb. " + text, "ends") == {}


@pytest.mark.parametrize(
    ("text", "taken"),
    [
        ("I took out the profundus and took the superficialis out as well.", {"ring FDP", "ring FDS"}),
        ("I took the superficialis out to make room.", {"ring FDS"}),
        ("I took the profundus out of the wound.", set[str]()),
        ("I took out the sutures of the profundus.", set[str]()),
    ],
)
def test_took_out(text: str, taken: set[str]) -> None:
    found = each("Ring finger, FDP and FDS completely divided. " + text, "treatment")
    assert {name for name, value in found.items() if value == "excised"} == taken


@pytest.mark.parametrize(
    "text",
    [
        "Both repaired with 4-0 Prolene, epi to thumb only, didn't bother with index.",
        "Both repaired with 4-0 Prolene, with an epitendinous 6-0 in the thumb only.",
    ],
)
def test_a_peripheral_suture_in_one_finger_only(text: str) -> None:
    found = each("Thumb and index. FPL and index FDP completely divided. " + text, "peripheral")
    assert found.get("thumb FPL") == "present"
    assert found.get("index FDP") != "present"


def test_a_thread_behind_a_tendon_only_named() -> None:
    text = "Ring finger trigger. A1 divided. A nodule on the superficialis, not shaved. 4-0 nylon to both wounds."
    assert each(text, "treatment") == {}
    assert each(text, "size") == {}


_WRIST = "Left wrist, zone V. FDS and FDP of all fingers completely divided. "
_FOUR = ("index", "middle", "ring", "small")


@pytest.mark.parametrize(
    ("deep", "superficial"),
    [
        ("All profundi received", "All superficialis tendons received"),
        ("All FDPs got", "All FDSs got"),
        ("All of the profundi were sewn with", "All of the superficiales were sewn with"),
    ],
)
def test_all_of_one_kind_and_then_all_of_the_other(deep: str, superficial: str) -> None:
    first, second = f"{deep} a four-strand cruciate", f"{superficial} a two-strand Kessler"
    for text in (f"{first}. {second}.", f"{second}. {first}."):
        found = each(_WRIST + text, "strands")
        assert found == {f"{d} {t}": n for d in _FOUR for t, n in (("FDP", 4), ("FDS", 2))}


def test_all_fingers_are_those_of_the_heading() -> None:
    text = "Middle, ring and small fingers. The FDP of all fingers was completely divided. "
    assert set(each(text, "extent")) == {"middle FDP", "ring FDP", "small FDP"}


def test_both_flexors_of_all_four_fingers() -> None:
    text = "Left wrist. Both flexors of all four fingers were completely divided. Each profundus received four strands."
    assert set(each(text, "extent")) == {f"{d} {t}" for d in _FOUR for t in ("FDP", "FDS")}
    assert each(text, "strands") == {f"{d} FDP": 4 for d in _FOUR}


def test_a_thick_thread_before_a_peripheral_suture_of_one_finger() -> None:
    text = "Thumb and index. FPL and index FDP divided. Both repaired with 4-0 Prolene, epi to thumb only."
    assert each(text, "size") == {"thumb FPL": "4-0", "index FDP": "4-0"}
    assert each(text, "peripheral_size") == {}


@pytest.mark.parametrize(
    "text",
    [
        "Distally the graft was tied over a button with 4-0 Prolene. Proximally it was woven into the profundus by a "
        "Pulvertaft weave secured with 3-0 Ethibond.",
        "Distal juncture: graft passed through a drill hole and fixed over a button, 4-0 Prolene pull-out. "
        "Proximal juncture: Pulvertaft weave to the FDP motor, 3-0 Ethibond.",
    ],
)
def test_the_weave_joins_a_graft_and_not_its_button(text: str) -> None:
    head = "Second stage tendon grafting, right index finger, palmaris longus graft. "
    assert each(head + text, "treatment") == {"index FDP": "grafted"}
    assert each(head + text, "stitch") == {"index FDP": "pulvertaft"}
    assert each(head + text, "size") == {"index FDP": "3-0"}


@pytest.mark.parametrize("verb", ["then showed", "demonstrated", "again confirmed"])
def test_what_tenodesis_showed_is_no_tenodesis(verb: str) -> None:
    text = f"Index FDP divided, repaired with four strands. Tenodesis {verb} free gliding of the profundus."
    assert each(text, "treatment") == {"index FDP": "repaired"}


def test_nothing_of_a_pulley() -> None:
    text = "Ring FDP divided, repaired with four strands. I sacrificed nothing of the A4 pulley."
    assert each(text, "finding", group="pulleys") == {}


@pytest.mark.parametrize("text", ["The repairs do not open.", "Both repaired tendons stay closed.", "No gap."])
def test_repairs_that_stay_closed(text: str) -> None:
    head = "Index and middle FDP divided, repaired with four strands. On passive motion: "
    assert each(head + text, "gap") == {"index FDP": "none", "middle FDP": "none"}


def test_therapy_of_a_translated_report() -> None:
    text = (
        "Finding: FCU and small finger FDS completely through.\n\n"
        "Therapy: jet lavage. Nerve: sural graft, 9-0. FCU: Kirchmayr suture, 2-0 Ethibond. "
        "FDS 5: two-strand Kirchmayr, 3-0 Ethibond.\n\nFurther procedure: plaster 4 weeks."
    )
    assert each(text, "size") == {"FCU": "2-0", "small FDS": "3-0"}
    orders = "Small FDP divided and sewn.\n\nTherapy: starts on day 4. Wound: 4-0 nylon sutures out at 2 weeks."
    assert each(orders, "size") == {}


@pytest.mark.parametrize(
    "text",
    [
        "I had intended an epitendinous running 6-0 but the needle kept shredding the surface and I omitted it.",
        "An epitendinous suture was planned but omitted.",
        "Kirchmayr of 3-0, without any surrounding suture.",
    ],
)
def test_a_peripheral_suture_intended_and_omitted(text: str) -> None:
    head = "Procedure: FDP repair right ring finger, 4-strand core + epitendinous.\n\nFDP completely divided and sewn. "
    assert each(head + text, "peripheral") == {"ring FDP": "absent"}


@pytest.mark.parametrize("text", ["I moved both fingers: both slid freely and neither gapped."])
def test_both_fingers_moved(text: str) -> None:
    head = "Middle and ring FDP completely divided, both repaired. Ring FDS ulnar slip sutured with 5-0. "
    assert each(head + text, "gap") == {"middle FDP": "none", "ring FDP": "none"}
    assert each(head + text, "glide") == {"middle FDP": "free", "ring FDP": "free"}


@pytest.mark.parametrize("text", ["We do not place any suture in it.", "No suture was placed in it."])
def test_no_suture_placed(text: str) -> None:
    assert each("Index FDP cut by 40%. " + text, "treatment") == {"index FDP": "left"}


def test_a_pulley_cut_for_a_suture_to_pass() -> None:
    text = "Middle FDP sutured. A4 is sectioned in totality to pass the suture."
    assert each(text, "finding", group="pulleys") == {"middle A4": "released"}


def test_tendons_that_are_sectioned() -> None:
    text = "Wrist. FCR is sectioned. FDP of the ring finger was partially sectioned, 40 %."
    assert each(text, "extent") == {"FCR": "complete", "ring FDP": "partial"}


@pytest.mark.parametrize("label", ["FDP index, FPL", "FPL, FDP index", "FPL and FDP index"])
def test_a_label_of_two_tendons(label: str) -> None:
    text = f"Wrist. FPL and FDP index divided completely. {label}: four-strand cruciate, 3-0 Ticron."
    assert each(text, "strands") == {"thumb FPL": 4, "index FDP": 4}


@pytest.mark.parametrize(
    "text",
    ["Correction: for 'ring finger' read 'middle finger'.", "Addendum: ring should read middle finger."],
)
def test_for_one_finger_read_the_other(text: str) -> None:
    head = "Ring FDP divided, repaired with four strands of 4-0 Prolene.\n\n"
    assert each(head + text, "strands") == {"middle FDP": 4}


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("Erratum: delete the running suture, none was placed.", {"ring FDP": "absent"}),
        ("Addendum: please delete the epitendinous suture.", dict[str, object]()),
    ],
)
def test_a_peripheral_suture_struck_out(text: str, found: dict[str, object]) -> None:
    head = "Ring FDP divided, four strands of 3-0 Ethibond, running 6-0 epitendinous suture.\n\n"
    assert each(head + text, "peripheral") == found
    assert each(head + text, "peripheral_size") == {}


@pytest.mark.parametrize(
    ("text", "glide"),
    [
        ("It caught on A4. The repair was tension-free.", "catching"),
        ("Glide was stiff. The repair was tension-free.", "restricted"),
        ("No gap. The repair was tension-free.", None),
        ("No gap. Repair gap-free and tension-free.", None),
    ],
)
def test_free_of_tension_is_not_free_to_glide(text: str, glide: str | None) -> None:
    found = each("Ring FDP divided, repaired with four strands. " + text, "glide")
    assert found == ({"ring FDP": glide} if glide else {})


@pytest.mark.parametrize("text", ["It came together under tension.", "It came together well."])
def test_what_came_together_is_no_pulley(text: str) -> None:
    head = "Ring FDP divided, repaired with four strands. A2 was vented by 4 mm. "
    assert each(head + text, "finding", group="pulleys") == {"ring A2": "vented"}


@pytest.mark.parametrize(
    "text",
    ["No gap. The patient was pain-free afterwards.", "No gap. The PIP joint locked briefly, then moved freely."],
)
def test_what_else_is_free(text: str) -> None:
    assert each("Ring FDP divided, repaired with four strands. " + text, "glide") == {}


@pytest.mark.parametrize(
    "text",
    [
        "A2 was tight, so it was opened by 4 mm.",
        "A2 was to be kept, but had to be opened by 4 mm.",
        "I hoped to keep A2 intact but it had to be opened by 4 mm.",
    ],
)
def test_an_opened_pulley_is_no_gap(text: str) -> None:
    head = "Ring FDP divided, repaired with four strands. "
    assert each(head + text, "gap") == {}
    assert each(head + "The repair opened by 1 mm.", "gap") == {"ring FDP": "seen"}


def test_the_latter_that_opened_is_a_tendon() -> None:
    text = (
        "Thumb and index. FPL and index FDP completely cut, both repaired with four strands. Traction was applied to "
        "the FPL and to the index profundus. The former showed no gap. The latter opened by 1 to 2 mm."
    )
    assert each(text, "gap") == {"thumb FPL": "none", "index FDP": "seen"}


@pytest.mark.parametrize(
    ("text", "field", "found"),
    [
        ("Sewn with 3-0 Ethibond. In our unit six strands are standard.", "strands", {}),
        ("Four strands. The epitendinous suture broke and was removed.", "peripheral", {"ring FDP": "absent"}),
        ("Four strands. An epitendinous suture would have been too bulky.", "peripheral", {}),
        ("Four strands, with bites of less than 5 mm.", "lock_mm", {}),
        ("Four strands. Purchase of 10 mm could not be obtained.", "purchase_mm", {}),
    ],
)
def test_what_was_not_got(text: str, field: str, found: dict[str, object]) -> None:
    assert each("Ring FDP completely divided. " + text, field) == found


@pytest.mark.parametrize(
    "text",
    [
        "FDP completely divided and retrieved, FDS not.",
        "FDP completely divided and explored, FDS not.",
        "FDP completely divided, seen through the wound, FDS not.",
    ],
)
def test_what_was_not_done_to_the_other_does_not_make_it_whole(text: str) -> None:
    assert each("Ring finger. " + text, "extent") == {"ring FDP": "complete"}


@pytest.mark.parametrize("text", ["Skin closed with a fine suture.", "Nerve joined with a fine suture, 8-0."])
def test_a_fine_suture_elsewhere(text: str) -> None:
    assert each("Ring FDP divided, repaired with four strands. " + text, "peripheral") == {}


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("The epitendinous suture snapped and was removed.", "absent"),
        ("The epitendinous suture snapped and was removed and a new running 6-0 was placed.", "present"),
        ("The needle broke and was removed; running 6-0 epitendinous completed.", "present"),
    ],
)
def test_a_peripheral_suture_that_broke(text: str, found: str) -> None:
    assert each("Ring FDP divided, four strands. " + text, "peripheral") == {"ring FDP": found}
