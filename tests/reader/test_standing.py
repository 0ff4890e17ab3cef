"""What is no finding of this operation: history, plans, alternatives, conditions, teaching, empty templates."""

import pytest
from reader_sentences import each, fact_of, told

BODY = "Left ring finger. FDP completely divided. Repaired with a two-strand core suture of 4-0 nylon. "
TOLD = {"ring FDP": {"extent": "complete", "treatment": "repaired", "strands": 2, "size": "4-0", "material": "nylon"}}
FIELDS = ("extent", "treatment", "strands", "size", "material", "stitch", "gap", "glide", "peripheral", "test", "hold")


@pytest.mark.parametrize(
    "sentence",
    [
        # history
        "In 2019 the ring FDS of this hand was repaired elsewhere with a six-strand core of 3-0 Ethibond.",
        "He had a previous repair of the small FDP with 3-0 Prolene.",
        "Past surgical history: repair of the index FDP with a Savage suture.",
        "Six months ago the middle FDP was repaired with a Kessler suture.",
        # plans
        "We plan to repair the small FDS with 3-0 Prolene at a second operation.",
        "A tendon graft to the ring FDS is planned for the spring.",
        "Next stage: FDS of the index finger to be repaired with 3-0 Ethibond.",
        # alternatives
        "A six-strand repair with 3-0 Ethibond was considered but not used.",
        "We discussed an epitendinous suture of 6-0 Prolene.",
        "An eight-strand Winters-Gelberman of 3-0 Ethibond would have been an alternative.",
        "Instead of a four-strand Adelaide of 3-0 Prolene this was chosen.",
        # conditions
        "If the repair ruptures, a six-strand repair with 3-0 Ethibond will be done.",
        "Should a gap appear the repair would be revised with a four-strand cruciate of 3-0 Prolene.",
        "Unless the finger stiffens, no further operation; otherwise tenolysis of the FDP.",
        # teaching
        "As a rule a four-strand repair of 3-0 with a running epitendinous suture stands early active motion.",
        "In general an epitendinous suture of 6-0 Prolene lessens gapping.",
        "It is our usual practice to use a six-strand Lim-Tsai of 4-0 Ethibond.",
        "Published series report rupture in 4 % of six-strand repairs with 3-0 Ethibond.",
        # templates
        "Epitendinous suture: [yes / no]. Strands: [2 / 4 / 6 / 8].",
        "[ ] four-strand [ ] six-strand [ ] epitendinous suture [ ] locking",
        "Peripheral suture: ***. Gap: ***. Glide: ***.",
        "( ) four-strand core ( ) running 6-0 epitendinous",
        # risks told
        "Risks explained: rupture, gap, infection, stiffness, adhesions, catching at the pulley.",
        "Consent covered gapping, rupture and further repair with a graft.",
        # questions
        "Was an epitendinous suture placed?",
        "Four strands or six strands?",
        # another hand or another patient
        "The other hand was repaired in 2021 with six strands of 3-0 Ethibond.",
        "In the patient operated on before him a six-strand repair with 3-0 Ethibond had been used.",
        "His brother had a six-strand repair of the ring FDP with a running epitendinous suture.",
        "On the contralateral side the ring FDP had once been repaired with 3-0 Prolene.",
        # what was offered, wanted or meant
        "I had hoped to place an epitendinous suture of 6-0 Prolene but the tendon was too frail.",
        "The trainee suggested six strands of 3-0 Ethibond.",
        "3-0 Ethibond was not available.",
        "We meant to add two more strands but did not.",
        # imaging
        "Ultrasound before the operation had shown an intact index FDP and a gap of 20 mm.",
    ],
)
def test_what_is_no_finding_of_this_operation(sentence: str) -> None:
    assert told(BODY + sentence, *FIELDS) == TOLD
    assert told(BODY.rstrip() + "\n\n" + sentence, *FIELDS) == TOLD


@pytest.mark.parametrize(
    "note",
    [
        "INDICATION: The ring FDP had been repaired with a four-strand core of 3-0 Ethibond two years "
        "ago.\n\nPROCEDURE IN DETAIL: The small FDP was divided and repaired with 4-0 nylon.",
        "HISTORY: earlier repair of ring FDP, Kessler, 3-0 Prolene.\n\nOPERATION: Small FDP cut through and "
        "repaired, core 4-0 nylon.",
    ],
)
def test_sections_that_tell_what_was_before(note: str) -> None:
    shown = told(note, "treatment", "size")
    assert shown == {"small FDP": {"treatment": "repaired", "size": "4-0"}}


@pytest.mark.parametrize(
    "note",
    [
        "Right index FDP divided and repaired with 4-0 nylon.\n\nPOSTOPERATIVE PLAN: If it fails, repair of the "
        "FDS with a six-strand 3-0 Ethibond.",
        "Right index FDP cut and repaired, 4-0 nylon.\n\nINSTRUCTIONS: Splint. A running 6-0 epitendinous "
        "suture protects the repair. FDS intact.",
    ],
)
def test_instructions_tell_nothing_of_the_repair(note: str) -> None:
    assert told(note, "treatment", "size", "strands", "peripheral") == {
        "index FDP": {"treatment": "repaired", "size": "4-0"}
    }


@pytest.mark.parametrize(
    ("sentence", "field"),
    [
        ("No epitendinous suture was used.", "peripheral"),
        ("The core was not locked.", "hold"),
        ("Strands were not counted.", "strands"),
        ("The FDP was not divided.", "extent"),
        ("No core suture was placed.", "treatment"),
    ],
)
def test_negations_never_become_the_opposite(sentence: str, field: str) -> None:
    note = f"Left ring finger explored. FDP inspected. {sentence}"
    strong = {"peripheral": "present", "hold": "locking", "extent": "complete", "treatment": "repaired"}
    value = told(note, field).get("ring FDP", {}).get(field)
    assert value is None or value != strong.get(field, value)


@pytest.mark.parametrize(
    ("note", "digit"),
    [
        ("Form: [x] FDP divided [ ] FDS divided. Index finger. FDP repaired with 4-0 nylon.", "index"),
        ("Middle finger.\n[x] FDP repaired  [ ] FDS repaired\nCore 3-0 Prolene.", "middle"),
    ],
)
def test_ticked_boxes_count_and_empty_ones_do_not(note: str, digit: str) -> None:
    shown = told(note, "extent", "treatment")
    assert shown[f"{digit} FDP"]["treatment"] == "repaired"
    assert "treatment" not in shown.get(f"{digit} FDS", {})
    assert shown.get(f"{digit} FDS", {}).get("extent") != "complete"


@pytest.mark.parametrize(
    ("note", "value", "rival"),
    [
        (
            "Ring FDP divided and repaired with a six-strand core of 4-0 nylon.\n\nADDENDUM: correction, the "
            "core was four-strand.",
            4,
            6,
        ),
        (
            "Small FDP divided and repaired with a two-strand core of 3-0 nylon.\n\nADDENDUM: two-strand should "
            "read four-strand.",
            4,
            2,
        ),
    ],
)
def test_an_addendum_replaces_what_it_corrects(note: str, value: int, rival: int) -> None:
    entry = "ring FDP" if note.startswith("Ring") else "small FDP"
    fact = fact_of(note, entry, "strands")
    assert fact.value == value
    assert rival in [r.value for r in fact.rivals]


@pytest.mark.parametrize(
    "title",
    [
        "Procedure: tenolysis, repair FDS?, re-repair of FDP, middle finger",
        "PROCEDURE: repair FDP + repair FDS? - middle",
    ],
)
def test_a_question_in_a_title_is_no_deed(title: str) -> None:
    found = told(title + "\n\nThe FDP of the middle finger was repaired with 4-0 nylon.", "treatment")
    assert found == {"middle FDP": {"treatment": "repaired"}}


@pytest.mark.parametrize(
    "words",
    [
        "I have given up the two-strand stitch of my training, which I used on your Mr. X in 2029, and put in a "
        "four-strand cruciate of 3-0 Ethibond.",
        "Unlike the two-strand stitch, which the unit gave up in 2028, we used a four-strand cruciate, 3-0 Ethibond.",
    ],
)
def test_an_aside_with_an_earlier_year_leaves_the_rest_of_its_sentence(words: str) -> None:
    note = f"Operated 15 June 2036. Middle finger. The profundus was completely divided and mended first. {words}"
    assert told(note, "strands", "size") == {"middle FDP": {"strands": 4, "size": "3-0"}}


@pytest.mark.parametrize(
    "words",
    [
        "[If proximal stump has retracted: a counterincision was made.] Tendon was repaired with 3-0 Ethibond.",
        "[if needed: a second cut was made at the wrist] The tendon was repaired with 3-0 Ethibond.",
    ],
)
def test_a_condition_in_square_brackets_ends_with_them(words: str) -> None:
    assert told(f"Right thumb. FPL completely divided. {words}", "size") == {"thumb FPL": {"size": "3-0"}}


@pytest.mark.parametrize(
    "lead", ["We talked about a button and a 2 strand pull-out", "I thought of a graft and an anchor"]
)
def test_all_that_was_only_talked_about_is_no_finding(lead: str) -> None:
    note = f"Right thumb. FPL fully divided. {lead} in the huddle. So: a 3-0 FiberWire core, four strands, Adelaide."
    assert told(note, "strands", "stitch") == {"thumb FPL": {"strands": 4, "stitch": "adelaide"}}


def test_a_deed_behind_what_was_talked_about_still_counts() -> None:
    note = "Right thumb. FPL fully divided. We talked about a graft and a four-strand cruciate was placed, 3-0 Prolene."
    assert told(note, "strands") == {"thumb FPL": {"strands": 4}}


@pytest.mark.parametrize("head", ["ADDENDUM #1 (K. F., 10/18/2031):", "Addendum #2 (10/19/2031):"])
def test_an_addendum_may_be_numbered(head: str) -> None:
    note = (
        "Date: 10/17/2031\nFPL repair, right thumb.\nFPL completely divided, repaired with 3-0 Ethibond.\n"
        f"PLAN: therapy at 5 days.\n\n{head} For the record: four strands, Strickland pattern."
    )
    assert told(note, "strands") == {"thumb FPL": {"strands": 4}}


@pytest.mark.parametrize(
    "words",
    ["Earlier thumb FPL rep. 2030, 4 strand, healed.", "Old FPL repair 2029, four strands, thumb, full function."],
)
def test_an_earlier_repair_with_its_year_alone(words: str) -> None:
    note = "Date: 25 Feb 2037\nRing FDP cut and repaired with 3-0 Prolene.\n" + words
    assert set(told(note, "treatment")) == {"ring FDP"}


@pytest.mark.parametrize("words", ["Locking: Y / N", "Suture: 4-0 nylon     Locking: yes / no", "Gapping Y / N"])
def test_a_question_with_both_answers_is_not_answered(words: str) -> None:
    assert told("Ring FDP cut through and repaired, four strands.\n" + words, "hold", "gap") == {}


@pytest.mark.parametrize(
    ("core", "field", "value"),
    [
        ("a cruciate (grasping, not locked) of 3-0 Ethibond", "size", "3-0"),
        ("a Kessler (not modified) using four strands of 3-0 Ethibond", "strands", 4),
        ("a Tsuge (no loop cut) of 4-0 Supramid", "size", "4-0"),
    ],
)
def test_what_a_bracket_denies_ends_with_it(core: str, field: str, value: object) -> None:
    assert each(f"Ring FDP cut through and repaired with {core}.", field) == {"ring FDP": value}


@pytest.mark.parametrize("text", ["No (visible) gap.", "No catching (and no) gap.", "No gap (nor any catching)."])
def test_a_bracket_within_what_is_denied(text: str) -> None:
    assert each(f"Ring FDP cut through and repaired with four strands. {text}", "gap") == {"ring FDP": "none"}
