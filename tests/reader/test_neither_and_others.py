"""Denials of several, what is excepted or said of one unnamed, labels lent to fingers, and pulleys spelt out."""

import pytest
from reader_sentences import Shown, each, told

BOTH_SEWN = (
    "Left ring and small fingers. FDP of both completely divided, both repaired with four strands of 3-0 Ethibond. "
)
THREE_SEWN = "Right index, middle and ring fingers. All three FDP completely divided and repaired with a 4-0 cruciate. "


def _found(note: str) -> dict[str, object]:
    return {entry: facts["finding"] for entry, facts in told(note, "finding", group="pulleys").items()}


# --- a tendon's label lent to the fingers under it


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left index and ring fingers, glass.\nFDS: index excised. Ring repaired with 4-0 nylon.",
            {"index FDS": {"treatment": "excised"}, "ring FDS": {"treatment": "repaired"}},
        ),
        (
            "Right ring and small fingers, saw.\nFDP: ring completely divided. Small intact.",
            {"ring FDP": {"extent": "complete"}, "small FDP": {"extent": "intact"}},
        ),
        (
            "Left index and ring fingers, knife. FDP: index intact, ring completely divided.",
            {"index FDP": {"extent": "intact"}, "ring FDP": {"extent": "complete"}},
        ),
        (
            "Left index and ring fingers, knife. FDS: ring excised, index repaired with 4-0 nylon.",
            {"ring FDS": {"treatment": "excised"}, "index FDS": {"treatment": "repaired"}},
        ),
    ],
)
def test_label_lent_to_the_fingers_behind_it(note: str, expected: Shown) -> None:
    assert told(note, "extent", "treatment") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left index and ring fingers, knife.\nFDS\nIndex: intact.\nRing: completely divided.",
            {"index FDS": {"extent": "intact"}, "ring FDS": {"extent": "complete"}},
        ),
        (
            "Right middle and small fingers, saw.\n1. FDP\n- middle: completely divided\n- small: intact\n",
            {"middle FDP": {"extent": "complete"}, "small FDP": {"extent": "intact"}},
        ),
        (
            "Right middle and ring fingers, saw.\n3) FDS\nMiddle: partially cut, 30%.\nRing: intact.\n",
            {"middle FDS": {"extent": "partial"}, "ring FDS": {"extent": "intact"}},
        ),
    ],
)
def test_fingers_listed_under_the_heading_of_a_tendon(note: str, expected: Shown) -> None:
    assert told(note, "extent") == expected


# --- said of one, of neither, of all but one


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (BOTH_SEWN + "One of the two repairs gapped by 1 mm on extension.", set()),
        (BOTH_SEWN + "One of them caught at the edge of A2.", set()),
        (THREE_SEWN + "On passive extension a 2 mm gap was seen in one finger.", set()),
        (THREE_SEWN + "No gap in one of them, a 1 mm gap in the other.", set()),
        (
            BOTH_SEWN + "In the small finger one of the core strands was cut short. The ring gapped by 1 mm.",
            {"ring FDP"},
        ),
    ],
)
def test_behaviour_of_one_of_several(note: str, expected: set[str]) -> None:
    assert set(told(note, "gap", "glide")) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Left ring and small fingers. FDP of both completely divided. FDS was intact in one of them.", set()),
        ("Right index and middle fingers. FDP of both cut through. FDS whole in one finger only.", set()),
        ("Left ring and small fingers. FDP of both completely divided. FDS was intact in neither.", set()),
        ("Right index finger. FDP cut through. FDS was intact, in one piece.", {"index FDS"}),
    ],
)
def test_intact_in_one_or_in_neither(note: str, expected: set[str]) -> None:
    shown = told(note, "extent")
    assert {entry for entry, facts in shown.items() if facts["extent"] == "intact"} == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (BOTH_SEWN + "The repairs glided freely in neither.", set()),
        (BOTH_SEWN + "The tendons ran freely in one only.", set()),
        (BOTH_SEWN + "The repairs glided freely in both.", {"ring FDP", "small FDP"}),
    ],
)
def test_free_in_one_or_in_neither(note: str, expected: set[str]) -> None:
    shown = told(note, "glide")
    assert {entry for entry, facts in shown.items() if facts["glide"] == "free"} == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (BOTH_SEWN + "A running 6-0 Prolene went round one of them only.", set()),
        (BOTH_SEWN + "Epitendinous 6-0 nylon in one finger.", set()),
        (BOTH_SEWN + "The ring alone was given an epitendinous 6-0 nylon.", {"ring FDP"}),
    ],
)
def test_peripheral_suture_of_one_of_several(note: str, expected: set[str]) -> None:
    shown = told(note, "peripheral", "peripheral_size")
    assert {entry for entry, facts in shown.items() if facts.get("peripheral") != "absent"} == expected


@pytest.mark.parametrize(
    "note",
    [
        BOTH_SEWN + "Epitendinous suture on neither.",
        BOTH_SEWN + "A circumferential suture was placed in neither finger.",
        BOTH_SEWN + "Epitendinous: none on either repair.",
    ],
)
def test_peripheral_suture_on_neither(note: str) -> None:
    assert told(note, "peripheral") == {"ring FDP": {"peripheral": "absent"}, "small FDP": {"peripheral": "absent"}}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Left ring and small fingers. Both FDP completely divided. A2 was opened in neither.", "intact"),
        ("Right index and middle fingers, FDP of both completely divided. A4 was vented in neither finger.", "intact"),
        ("Left ring and small fingers. Both FDP completely divided. A2 was intact in neither.", None),
        ("Right index and middle fingers, FDP of both completely divided. The A4 pulley was whole in none.", None),
    ],
)
def test_pulley_opened_or_whole_in_neither(note: str, expected: str | None) -> None:
    found = _found(note)
    assert "intact" not in found.values() if expected is None else set(found.values()) == {expected}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (THREE_SEWN + "Glided freely in each but the middle.", {"index FDP", "ring FDP"}),
        (THREE_SEWN + "All repairs ran freely except the index.", {"middle FDP", "ring FDP"}),
        (
            "Left middle, ring and small fingers. FDP of all three completely divided and repaired with a 4-0 Kessler. "
            "The tendons ran freely in all but the small.",
            {"middle FDP", "ring FDP"},
        ),
    ],
)
def test_free_in_all_but_one(note: str, expected: set[str]) -> None:
    shown = told(note, "glide")
    assert {entry for entry, facts in shown.items() if facts["glide"] == "free"} == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index, middle and ring fingers. FDP completely divided in all but the middle.",
            {"index FDP": {"extent": "complete"}, "ring FDP": {"extent": "complete"}},
        ),
        (
            "Left index, ring and small fingers, saw. FDP cut through in all fingers but the index.",
            {"ring FDP": {"extent": "complete"}, "small FDP": {"extent": "complete"}},
        ),
    ],
)
def test_cut_in_all_but_one(note: str, expected: Shown) -> None:
    assert told(note, "extent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (THREE_SEWN + "Epitendinous 6-0 Prolene: all but the ring.", {"index FDP", "middle FDP"}),
        (BOTH_SEWN + "Epitendinous 6-0 nylon: both but the ring FDP.", {"small FDP"}),
        (THREE_SEWN + "Epitendinous 6-0 nylon on every one.", {"index FDP", "middle FDP", "ring FDP"}),
    ],
)
def test_peripheral_suture_on_all_but_one(note: str, expected: set[str]) -> None:
    shown = told(note, "peripheral")
    assert {entry for entry, facts in shown.items() if facts["peripheral"] == "present"} == expected


# --- neither ... nor, none of, any of them


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (BOTH_SEWN + "Neither the ring nor the small profundus gapped.", {"ring FDP", "small FDP"}),
        (BOTH_SEWN + "Neither the FDP of the ring nor that of the small finger gapped.", {"ring FDP", "small FDP"}),
        (
            "Left index finger. FDP and FDS completely divided, both repaired with 4-0 Ethibond. "
            "Neither the profundus nor the superficialis gapped.",
            {"index FDP", "index FDS"},
        ),
    ],
)
def test_neither_nor_gapped(note: str, expected: set[str]) -> None:
    assert told(note, "gap") == {entry: {"gap": "none"} for entry in expected}


@pytest.mark.parametrize(
    "note",
    [
        THREE_SEWN + "None of the three repairs opened up.",
        THREE_SEWN + "None of these repairs parted when the fingers were extended.",
        THREE_SEWN + "Passive extension, and none of the joins opened up.",
    ],
)
def test_none_of_the_repairs_opened_up(note: str) -> None:
    assert told(note, "gap") == {f"{digit} FDP": {"gap": "none"} for digit in ("index", "middle", "ring")}


@pytest.mark.parametrize(
    "note",
    [
        "Left ring finger. FDP and FDS completely divided, both repaired with a four-strand 4-0 Ethibond. "
        "Neither the FDP nor the FDS gapped, and the excursion was unrestricted.",
        "Right small finger. FDS and FDP cut through, each sewn with 4-0 nylon, four strands. "
        "Neither the FDS nor the FDP gapped, and gliding was free.",
    ],
)
def test_excursion_is_said_of_the_finger(note: str) -> None:
    shown = told(note, "gap", "glide")
    deep = next(facts for entry, facts in shown.items() if entry.endswith("FDP"))
    assert deep == {"gap": "none", "glide": "free"}
    assert all(facts["gap"] == "none" for facts in shown.values())
    assert len(shown) == 2


@pytest.mark.parametrize(
    "note",
    [
        THREE_SEWN + "Each of the three profundus repairs was free of gap.",
        THREE_SEWN
        + "The index FDS was sewn with 4-0 nylon. Each of the three FDP repairs was pulled on. No gap in any of "
        "them.",
        THREE_SEWN
        + "The ring FDS was sewn with 4-0 nylon. Traction on each of the three FDP repairs. No gap opened in "
        "any of them.",
    ],
)
def test_no_gap_in_any_of_them(note: str) -> None:
    assert told(note, "gap") == {f"{digit} FDP": {"gap": "none"} for digit in ("index", "middle", "ring")}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP and FDS completely divided, each repaired with 4-0 nylon. Small FDP cut through, "
            "repaired with 4-0 nylon. The ring FDP and the small FDP were pulled on. No gap in any of them.",
            {"ring FDP", "small FDP"},
        ),
        (
            "Right index finger. FDP and FDS cut through, both repaired with 3-0 Ethibond. Middle FDP cut through, "
            "repaired with 3-0 Ethibond. I pulled on the index FDP and the middle FDP. None of them gapped.",
            {"index FDP", "middle FDP"},
        ),
    ],
)
def test_any_of_them_are_those_just_named(note: str, expected: set[str]) -> None:
    shown = told(note, "gap")
    assert {entry for entry, facts in shown.items() if facts["gap"] == "none"} == expected


# --- how far a denial reaches


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Left ring finger. FDP completely divided. No pulley besides A4 was opened.", {"ring A4": "vented"}),
        ("Right index finger. FDP cut through. No pulley besides A3 was vented.", {"index A3": "vented"}),
        (
            "Left ring finger. FDP completely divided. No pulley injury other than A2 torn over its middle third.",
            {"ring A2": "injured"},
        ),
        ("Right index finger. FDP completely divided. I vented no pulley, A4 was not opened.", {"index A4": "intact"}),
    ],
)
def test_denial_ends_at_other_than(note: str, expected: dict[str, object]) -> None:
    assert _found(note) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Left ring finger. FDP cut through, 4-0 cruciate. Passive test: no gap / smooth.", "free"),
        ("Left ring finger. FDP completely divided, 3-0 Ethibond. Tested: no gap / free.", "free"),
        ("Left ring finger. FDP completely divided, 3-0 Ethibond. Tested: no gap / no catch.", "free"),
        (
            "Left ring finger. FDP completely divided, 3-0 Ethibond. Tested: no gap / did not glide freely.",
            "restricted",
        ),
    ],
)
def test_denial_ends_at_a_stroke(note: str, expected: str) -> None:
    assert told(note, "gap", "glide") == {"ring FDP": {"gap": "none", "glide": expected}}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left index FDP and thumb FPL completely divided, both sewn with 4-0 Ethibond, four strands. "
            "Tested: index no gap thumb catches a bit.",
            {"thumb FPL": {"glide": "catching"}, "index FDP": {"gap": "none"}},
        ),
        (
            "Right ring FDP and small FDP completely divided, both sewn with 4-0 Ethibond, four strands. "
            "Tested: small no gap ring catches at A2.",
            {"ring FDP": {"glide": "catching"}, "small FDP": {"gap": "none"}},
        ),
    ],
)
def test_denial_ends_at_a_finger_named_anew(note: str, expected: Shown) -> None:
    assert told(note, "gap", "glide") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, 4-0 cruciate. Passive: catches at A4 -> A4 vented 4 mm -> free, "
            "no gap.",
            "free",
        ),
        (
            "Right middle finger. FDP cut through, 3-0 Ethibond, four strands. Tested: catches at A2 -> A2 vented -> "
            "smooth, no gap.",
            "free",
        ),
        (
            "Right middle finger. FDP cut through, 3-0 Ethibond, four strands. Tested: free -> later catches at A2.",
            "catching",
        ),
    ],
)
def test_free_behind_an_arrow(note: str, expected: str) -> None:
    assert [facts["glide"] for facts in told(note, "glide").values()] == [expected]


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Left ring finger. FDP completely divided. A4 vented Y / N: N", False),
        ("Left ring finger. FDP completely divided. A4 vented Y / N: Y", True),
        ("Right small finger. FDP completely divided.\nA2 opened Y / N: N\nA4 opened Y / N: N", False),
    ],
)
def test_answer_behind_yes_or_no(note: str, expected: bool) -> None:
    assert ("vented" in _found(note).values()) is expected


# --- what a remark says after all


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Left ring finger. FDP completely divided, 4-0 cruciate. The repair was not free of any gap.", "seen"),
        (
            "Left ring finger. FDP completely divided, 4-0 cruciate. On extension the repair was not without a gap.",
            "seen",
        ),
        ("Left ring finger. FDP completely divided, 4-0 cruciate. The repair was free of any gap.", "none"),
    ],
)
def test_not_free_of_a_gap(note: str, expected: str) -> None:
    assert told(note, "gap") == {"ring FDP": {"gap": expected}}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, 4-0 cruciate. A gap of 1 mm opened. The wound was washed again, "
            "nothing else.",
            "seen",
        ),
        (
            "Right thumb. FPL completely divided, 3-0 Ethibond. It gapped by 2 mm. Irrigated again, nothing more.",
            "seen",
        ),
        (
            "Right thumb. FPL completely divided, 3-0 Ethibond. It gapped by 2 mm. One more throw was added, and on "
            "pulling again there was none.",
            "none",
        ),
    ],
)
def test_nothing_else_does_not_close_a_gap(note: str, expected: str) -> None:
    assert [facts["gap"] for facts in told(note, "gap").values()] == [expected]


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Left ring finger. FDP completely divided, 4-0 cruciate. The repair slides with some drag.", "restricted"),
        ("Left ring finger. FDP completely divided, 4-0 cruciate. The tendon did not move freely.", "restricted"),
        (
            "Left ring finger. FDP completely divided, 4-0 cruciate. The repair runs freely under A2 but not under A4.",
            "restricted",
        ),
        ("Left ring finger. FDP completely divided, 4-0 cruciate. The repair slides without drag.", "free"),
    ],
)
def test_a_run_that_is_hindered(note: str, expected: str) -> None:
    assert told(note, "glide") == {"ring FDP": {"glide": expected}}


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("On traction it glides, no gap.", {"glide": "free"}),
        ("No gap, slides under A4.", {"glide": "free"}),
        ("The bulky repair may catch at A4.", {}),
        ("It might stick at A2 later.", {}),
    ],
)
def test_glides_alone_and_what_may_catch(words: str, expected: Shown) -> None:
    note = "Left ring finger. FDP completely divided, 4-0 cruciate. " + words
    assert told(note, "glide").get("ring FDP", {}) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left index FDP and thumb FPL completely divided, both sewn with 4-0 Ethibond, four strands. I moved the "
            "thumb passively and saw no gap.",
            {"thumb FPL": {"gap": "none"}},
        ),
        (
            "Right ring FDP and small FDP completely divided, both sewn with 4-0 Ethibond, four strands. We moved the "
            "ring finger passively: no gap.",
            {"ring FDP": {"gap": "none"}},
        ),
    ],
)
def test_the_finger_named_in_a_test(note: str, expected: Shown) -> None:
    assert told(note, "gap") == expected


# --- pulleys spelt out


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided. I opened a four to let the repair pass. A two was preserved.",
            {"ring A4": "vented", "ring A2": "intact"},
        ),
        (
            "Right index finger. FDP cut through. A two and a four were kept.",
            {"index A2": "intact", "index A4": "intact"},
        ),
        ("Left small finger. FDP cut through. The a three pulley was excised.", {"small A3": "excised"}),
    ],
)
def test_pulleys_that_are_spelt_out(note: str, expected: dict[str, object]) -> None:
    assert _found(note) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Left ring finger. FDP cut through and repaired with a four strand core of 3-0 Ethibond.", 4),
        ("Right index finger. FDP completely divided. I used a two strand Kessler of four oh Prolene.", 2),
        ("Right thumb. FPL cut through. A four-stranded repair was done with 3-0 Ethibond.", 4),
    ],
)
def test_counts_that_are_no_pulleys(note: str, expected: int) -> None:
    assert told(note, group="pulleys") == {}
    assert [facts["strands"] for facts in told(note, "strands").values()] == [expected]


@pytest.mark.parametrize(
    "words",
    ["Neither of the two profundus sutures was bulky.", "None of the profundus repairs of the two fingers was bulky."],
)
def test_neither_of_the_two_was_bulky(words: str) -> None:
    assert told(BOTH_SEWN + words, "bulk") == {"ring FDP": {"bulk": "none"}, "small FDP": {"bulk": "none"}}


@pytest.mark.parametrize(
    "words",
    [
        "The repairs were then observed during passive extension of the fingers.",
        "Both profundus repairs were observed while the fingers were moved passively.",
    ],
)
def test_a_repair_that_was_watched_was_not_left(words: str) -> None:
    assert {facts["treatment"] for facts in told(BOTH_SEWN + words, "treatment").values()} == {"repaired"}


@pytest.mark.parametrize(
    "words", ["FDP 100% + FDS 100%, ends clean.", "FDP cut through & FDS cut through, ends clean."]
)
def test_ends_told_behind_an_added_pair_are_of_both(words: str) -> None:
    note = "Index finger. " + words + " FDP and FDS repaired."
    assert told(note, "ends") == {"index FDP": {"ends": "clean"}, "index FDS": {"ends": "clean"}}


def test_no_gap_in_any_is_said_of_the_counted_repairs_before() -> None:
    note = (
        THREE_SEWN + "FDS of the middle finger repaired with 4-0 Prolene.\n"
        "The three profundus repairs were then moved passively. No gap was seen in any of them and none was bulky."
    )
    assert set(told(note, "gap")) == {"index FDP", "middle FDP", "ring FDP"}
    assert set(told(note, "bulk")) == {"index FDP", "middle FDP", "ring FDP"}


FIVE_SEWN = (
    "Right ring and small fingers. FDP of both and FDS of both completely divided and repaired with 4-0 Prolene. FCU "
    "completely divided and repaired with 3-0 Ethibond. The FCU was whipped over with a running 4-0 Prolene. "
)


@pytest.mark.parametrize(
    ("words", "field", "value"),
    [
        ("None of the five tendon repairs was under tension.", "tension", "none"),
        ("At no repair was there any tension with the wrist level.", "tension", "none"),
        ("Knots of all groups buried between the ends.", "knot", "buried"),
        ("All knots lay buried.", "knot", "buried"),
        ("All repairs under traction with an artery clip: none gapped.", "gap", "none"),
        ("All repairs were pulled upon with artery forceps: no gap in any.", "gap", "none"),
    ],
)
def test_what_is_said_of_every_repair(words: str, field: str, value: str) -> None:
    found = {name: facts[field] for name, facts in told(FIVE_SEWN + words, field).items()}
    assert found == dict.fromkeys(("ring FDP", "ring FDS", "small FDP", "small FDS", "FCU"), value)


@pytest.mark.parametrize(
    ("words", "value"),
    [
        ("The ulnar artery was transected. The tendon ends were clean, as expected from glass.", "clean"),
        ("The ulnar artery was cut. Ends ragged in all, worst in the ring finger.", "ragged"),
    ],
)
def test_ends_of_every_tendon(words: str, value: str) -> None:
    note = "Ring and small fingers. FDP of both and FDS of both completely divided. " + words
    found = each(note, "ends")
    assert found == dict.fromkeys(("ring FDP", "ring FDS", "small FDP", "small FDS"), value)


@pytest.mark.parametrize(
    "words",
    [
        "Bulk: the index profundus repair is bulky, the other two are not.",
        "The index repair was noted to be bulky; the other two were not.",
    ],
)
def test_the_other_two_were_not_bulky(words: str) -> None:
    found = each(THREE_SEWN + words, "bulk")
    assert found == {"index FDP": "present", "middle FDP": "none", "ring FDP": "none"}


@pytest.mark.parametrize(
    "words",
    [
        "Profundus of the same finger got a cruciate, four strands, 3-0 Ticron, eight millimetres of tendon each side.",
        "The profundus of the same finger was sewn with a four-strand cruciate of 3-0 Ticron, 8 mm taken on each side.",
    ],
)
def test_the_same_finger_is_one_finger(words: str) -> None:
    note = (
        "Ring and little fingers. FDP of the little finger half cut. Ring finger: FDP and FDS cut through. FDS of the "
        "ring finger repaired with 4-0 Prolene. "
    ) + words
    assert told(note, "strands", "purchase_mm") == {"ring FDP": {"strands": 4, "purchase_mm": (8, 8)}}


@pytest.mark.parametrize(
    ("words", "field"),
    [
        ("Neither repair gapped and both were bulky.", "bulk"),
        ("None gapped and the ring was under tension.", "tension"),
        ("Neither caught and both are bulky.", "bulk"),
    ],
)
def test_nobody_ends_at_another_verb(words: str, field: str) -> None:
    assert "none" not in each(BOTH_SEWN + words, field).values()
