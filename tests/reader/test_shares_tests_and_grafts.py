"""Turns of forms and letters: shares before a noun, tests under boxes, grafts by title, the long flexor of a thumb."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize("flexor", ["the long flexor", "its long flexor"])
def test_the_long_flexor_of_a_thumb(flexor: str) -> None:
    note = f"Left thumb, zone II. I found {flexor} cut right through. The tendon ends were clean."
    assert told(note, "extent", "ends") == {"thumb FPL": {"extent": "complete", "ends": "clean"}}


def test_a_long_flexor_beside_fingers_is_not_guessed() -> None:
    assert each("Left thumb and index finger explored. I found the long flexor cut right through.", "extent") == {}


@pytest.mark.parametrize("cut", ["30% division", "30% divided", "30 % laceration"])
def test_a_share_before_the_noun_is_no_full_cut(cut: str) -> None:
    note = f"FDP small complete division, FDS small {cut}, A1 pulley cut by the glass."
    facts = told(note, "extent", "extent_percent")
    assert facts["small FDS"] == {"extent": "partial", "extent_percent": 30}
    assert facts["small FDP"] == {"extent": "complete"}


def test_shares_dealt_out_are_of_their_own_part() -> None:
    note = "FDP of middle and ring fingers cut completely, FDS of middle and ring cut 100 % and 60 % respectively."
    assert each(note, "extent") == {
        "middle FDP": "complete",
        "ring FDP": "complete",
        "middle FDS": "complete",
        "ring FDS": "partial",
    }


@pytest.mark.parametrize("took", ["took off the loose flap", "snipped the flap off", "took off the frayed edge"])
def test_a_flap_taken_off_is_trimmed(took: str) -> None:
    note = f"The FDP of the index was cut over a third. I {took} so it would not snag, and did not suture it."
    assert each(note, "treatment") == {"index FDP": "trimmed"}


@pytest.mark.parametrize(
    "pulley", ["A2 pulley found torn, the same repaired with 5-0 Prolene.", "A2 was torn, the same was repaired."]
)
def test_the_same_takes_up_the_pulley(pulley: str) -> None:
    assert each(f"Ring finger. {pulley}", "finding", group="pulleys") == {"ring A2": "repaired"}


@pytest.mark.parametrize("ticks", ["[x] passive  [ ] active", "[ ] active   [x] passive   [ ] traction"])
def test_a_ticked_test(ticks: str) -> None:
    assert each(f"FDP index finger cut, repaired.\nTested by:   {ticks}", "test") == {"index FDP": "passive"}


def test_a_test_that_was_not_ticked() -> None:
    assert each("FDP index finger cut, repaired.\nTested by:   [ ] passive  [ ] active", "test") == {}


@pytest.mark.parametrize(
    "title", ["PROCEDURE:   (x) Tendon graft   ( ) Tenorrhaphy", "Operation: tendon graft, right ring finger"]
)
def test_a_graft_by_its_title(title: str) -> None:
    note = f"DIAGNOSIS: Old lesion of FDP, right ring finger\n{title}\n\nProximal join: Pulvertaft, 3-0 Ticron."
    assert told(note, "treatment", "stitch") == {"ring FDP": {"treatment": "grafted", "stitch": "pulvertaft"}}


def test_a_nerve_graft_is_no_tendon_graft() -> None:
    note = "DIAGNOSIS: FDP lesion, right ring finger\nPROCEDURE: nerve graft, radial digital nerve, ring finger"
    assert each(note, "treatment") == {}


def test_moved_for_tension_tells_of_none() -> None:
    assert each("FDP ring repaired. The wrist was moved for tension: cascade restored.", "tension") == {}


@pytest.mark.parametrize(
    "ends",
    [
        "The tendon ends were clean in the ring finger, but were ragged in the small finger, where I cut them back.",
        "Ends clean in the ring, ragged in the small.",
    ],
)
def test_each_state_of_the_ends_is_of_its_finger(ends: str) -> None:
    note = f"The FDP of the ring finger and the FDP of the small finger were completely severed. {ends}"
    assert each(note, "ends") == {"ring FDP": "clean", "small FDP": "ragged"}


@pytest.mark.parametrize(
    "asked", ["Ends ragged? No, clean.", "Ends attenuated? no → clean, good quality", "Ends: frayed? No. Ends clean."]
)
def test_ends_asked_for_and_denied(asked: str) -> None:
    assert each(f"Small finger FDP divided completely. {asked}", "ends") == {"small FDP": "clean"}


@pytest.mark.parametrize("said", ["untouched/intact", "preserved / intact"])
def test_words_alike_are_no_choice(said: str) -> None:
    note = f"Index finger FDP cut. A2: distal third vented. A4: {said}"
    assert each(note, "finding", group="pulleys") == {"index A2": "vented", "index A4": "intact"}


@pytest.mark.parametrize("asked", ["intact / vented / released", "intact / vented"])
def test_an_open_choice_says_nothing(asked: str) -> None:
    assert each(f"Index finger FDP cut.\nA2: {asked}\n", "finding", group="pulleys") == {}


def _grid(deep: str, superficial: str) -> str:
    cells = f"Gap after repair  {deep}        {superficial}"
    return f"FDP index cut. FDS index cut.\n\nREPAIR            FDP                         FDS\n{cells}\n"


def test_a_ticked_none_in_a_grid_is_no_gap() -> None:
    assert each(_grid("[x] nil  [ ] ____ mm", "[ ] nil  [ ] ____ mm"), "gap") == {"index FDP": "none"}
    assert each(_grid("[ ] nil  [ ] ____ mm", "[ ] nil  [ ] ____ mm"), "gap") == {}
