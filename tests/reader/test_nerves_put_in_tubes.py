"""Nerves cut with crushed ends and bridged by a tube; sutures behind 'and for'; days on which therapy starts."""

import pytest
from reader_sentences import each, told

CUT = "Index. The radial digital nerve was divided. "


@pytest.mark.parametrize(
    "words", ["We went with a collagen conduit.", "A nerve conduit was sutured in with 9-0 nylon."]
)
def test_a_conduit_told_of_behind_a_cut_nerve(words: str) -> None:
    assert each(CUT + words, "treatment", group="injuries") == {"index digital nerve radial": "conduit"}


@pytest.mark.parametrize(
    "note", [CUT + "A conduit was not needed.", "Index. Radial digital nerve intact. A nerve conduit was ready."]
)
def test_a_conduit_that_was_not_used(note: str) -> None:
    assert each(note, "treatment", group="injuries") == {}


@pytest.mark.parametrize(
    "words", ["completely divided and crushed at both ends", "divided and both stumps were crushed"]
)
def test_crushed_ends_are_of_a_cut_nerve(words: str) -> None:
    note = f"Index. The radial digital nerve was {words}."
    assert each(note, "extent", group="injuries") == {"index digital nerve radial": "complete"}


def test_a_crushed_nerve() -> None:
    note = "Index. The radial digital nerve was crushed at the A2 pulley."
    assert each(note, "extent", group="injuries") == {"index digital nerve radial": "contused"}


@pytest.mark.parametrize(
    "words",
    [
        "The profundus got a cruciate with 4-0 FiberWire and for the sublimis a simple stitch of 5-0 Ethibond.",
        "FDP sewn with a cruciate of 4-0 FiberWire and in the FDS I put a simple stitch of 5-0 Ethibond.",
    ],
)
def test_what_begins_behind_and_for_has_a_suture_of_its_own(words: str) -> None:
    note = f"Middle finger. FDP and FDS cut through. {words}"
    assert each(note, "size") == {"middle FDP": "4-0", "middle FDS": "5-0"}
    assert each(note, "material") == {"middle FDP": "polyblend", "middle FDS": "braided polyester"}


def test_one_suture_for_the_one_and_for_the_other() -> None:
    note = "Middle finger. FDP and FDS cut through. 4-0 PDS was used for the FDP and for the FDS."
    assert each(note, "size") == {"middle FDP": "4-0", "middle FDS": "4-0"}


@pytest.mark.parametrize(
    ("words", "day"),
    [
        ("button comes off at 6 weeks passive flexing with therapy starting at one week", 7),
        ("stitches out at two weeks therapy beginning at day 4", 4),
        ("therapy starting day 3, active motion at week 5", 3),
    ],
)
def test_the_day_that_a_start_leads_to(words: str, day: int) -> None:
    note = f"FDP cut through.\n\nPlan: {words}."
    assert told(note, "start_day", group="aftercare")[""]["start_day"] == (day, day)


def test_joints_spelled_letter_by_letter() -> None:
    note = "FDP cut through.\n\nSplint: dorsal, wrist at neutral M P at 20 and I P at 10."
    facts = told(note, group="aftercare")[""]
    assert (facts["mcp_flexion_deg"], facts["ip_flexion_deg"]) == ((20, 20), (10, 10))


@pytest.mark.parametrize("words", ["cut clear across", "cut clean across"])
def test_cut_right_across(words: str) -> None:
    assert each(f"Thumb. The FPL was found {words} at the joint.", "extent") == {"thumb FPL": "complete"}
