"""Answers on forms in words: what they deny, whose they are, and the many that tell nothing."""

import pytest
from reader_sentences import each, told

TITLE = "Operation: repair of FDP, ring finger.\n"
BOTH = "Operation: repair of FDP, ring and small fingers.\n"


@pytest.mark.parametrize("answer", ["not recorded", "n/a", "nr", "unknown", "?", "-", "not assessed"])
@pytest.mark.parametrize(
    "form",
    [
        "RING FDP\n- peripheral suture: {a}\n- tension on repair? {a}\n- gap: {a}",
        "RING FDP\n  Epitendinous ..... {a}\n  Tension ..... {a}\n  Gap ..... {a}\n  Knots ..... buried",
        "| Finger | Epitendinous | Gap | Tension |\n| Ring | {a} | {a} | {a} |\n| Small | yes | none | none |",
        "Peripheral suture: ring {a}\nGap: ring {a}\nTension: ring {a}",
    ],
)
def test_an_answer_that_tells_nothing(form: str, answer: str) -> None:
    assert "ring FDP" not in told(TITLE + form.format(a=answer), "peripheral", "gap", "tension")


@pytest.mark.parametrize(
    "form",
    [
        "Peripheral suture: ring no, small yes\nGap: ring yes, small none\nEnds: ring ragged, small clean",
        "Epitendinous: ring none   small done\nGap on testing: ring seen   small no\nStumps: ring ragged   small clean",
        "RING FDP: Circumferential suture no; Gap seen; Ends ragged\nSMALL FDP: Circumferential suture yes; Gap none; "
        "Ends clean",
        "RING FDP: Epitendinous: none   Gap seen   Ends ragged\nSMALL FDP: Epitendinous: done   Gap none   Ends clean",
    ],
)
def test_each_finger_has_its_own_answer(form: str) -> None:
    assert each(BOTH + form, "peripheral") == {"ring FDP": "absent", "small FDP": "present"}
    assert each(BOTH + form, "gap") == {"ring FDP": "seen", "small FDP": "none"}
    assert each(BOTH + form, "ends") == {"ring FDP": "ragged", "small FDP": "clean"}


@pytest.mark.parametrize(
    "form",
    [
        "Ring FDP\n- strands: four\nSmall FDP\n- strands: two\n- gap: no\n- stumps: clean",
        "RING FINGER, FDP\n  Core strands: four\nSMALL FINGER, FDP\n  Core strands: two\n  Gap: none\n  Ends: clean",
    ],
)
def test_a_list_below_one_finger_is_of_that_finger(form: str) -> None:
    assert each(BOTH + form, "gap") == {"small FDP": "none"}
    assert each(BOTH + form, "ends") == {"small FDP": "clean"}
    assert each(BOTH + form, "strands") == {"ring FDP": 4, "small FDP": 2}


@pytest.mark.parametrize("head", ["Small FDP repaired", "SMALL FDP repaired."])
def test_four_strands_above_a_finger_are_not_four_fingers(head: str) -> None:
    note = f"Middle FDP repaired\n- core strands: four\n{head}\n- tension: no"
    assert set(told(note, "treatment")) == {"middle FDP", "small FDP"}
    assert each(note, "tension") == {"small FDP": "none"}


@pytest.mark.parametrize(
    "titles",
    ["| Finger | Tension | Peripheral suture | Gap |", "| Digit | Gap | Tension on repair | Epitendinous |"],
)
def test_the_titles_of_a_grid_tell_nothing(titles: str) -> None:
    note = f"{BOTH}{titles} Core |\n| Ring |  |  |  | 4-0 |\n| Small |  |  |  | 3-0 |"
    assert told(note, "peripheral", "gap", "tension") == {}
    assert each(note, "size") == {"ring FDP": "4-0", "small FDP": "3-0"}


@pytest.mark.parametrize("label", ["Suture size: 3-0", "suture material PDS", "Suture type: 4-0 Prolene"])
def test_what_is_asked_of_the_suture_repairs_no_pulley(label: str) -> None:
    assert each(f"{TITLE}RING FDP: A4 vented, {label}", "finding", "pulleys") == {"ring A4": "vented"}


@pytest.mark.parametrize(
    "line",
    ["Tension on repair no   A4 vented   Gap no", "Circumferential suture not done   A4 pulley vented"],
)
def test_the_answer_of_one_column_denies_nothing_in_the_next(line: str) -> None:
    assert each(f"{TITLE}RING FDP: {line}", "finding", "pulleys") == {"ring A4": "vented"}


@pytest.mark.parametrize("note", ["Gap not noted on testing.", "No gap was noted at the end."])
def test_what_was_looked_for_and_not_noted_is_denied(note: str) -> None:
    assert each(f"Ring FDP repaired with a four-strand cruciate. {note}", "gap") == {"ring FDP": "none"}
