"""A stump laid over, threads led on, initials that sign, and when a rested hand begins to move."""

import pytest
from reader_sentences import each, told

GRAFT = "Ring FDP reinserted with 3-0 Prolene over a button. "
HEAD = "Surgeon: Mr O. Fennimore-Beck\nAssistant: Dr Fell\n\nRing FDP cut, repaired with 3-0 Prolene.\n\n"


@pytest.mark.parametrize(
    "words",
    [
        "The distal stump of FDP was sutured on top with 4-0 Ethibond.",
        "Stump oversewn with 4-0 Ethibond.",
        "The distal stump was sutured onto the graft with 5-0 nylon.",
    ],
)
def test_a_stump_laid_over_is_no_core(words: str) -> None:
    assert each(GRAFT + words, "size") == {"ring FDP": "3-0"}


def test_an_oversewn_stump_is_no_repair() -> None:
    words = "Ring FDP repaired with 4-0 Fiberwire; FDS stump oversewn with 5-0 nylon."
    assert each(words, "treatment") == {"ring FDP": "repaired"}


def test_a_stump_sewn_to_bone_is_a_core() -> None:
    assert each("Ring: the FDP stump was sutured to bone with 3-0 Prolene.", "size") == {"ring FDP": "3-0"}


@pytest.mark.parametrize(
    "words",
    [
        "Each was repaired with a four-strand core of 4-0 Ethibond completed by a running 6-0 nylon.",
        "Each was joined with a four strand cruciate suture of 4-0 Ethibond finished with a fine running 6-0 nylon.",
    ],
)
def test_a_core_finished_with_another_thread(words: str) -> None:
    told_of = told("Index FDP and ring FDP were divided. " + words, "size", "peripheral_size", "peripheral_material")
    own = {"size": "4-0", "peripheral_size": "6-0", "peripheral_material": "nylon"}
    assert told_of == {"index FDP": own, "ring FDP": own}


@pytest.mark.parametrize("line", ["O F-B", "OFB", "O. F.-B."])
def test_initials_of_the_surgeon_sign(line: str) -> None:
    assert "signature" in str(told(HEAD + line, group="elements"))


@pytest.mark.parametrize("line", ["MCP", "R T-L"])
def test_other_letters_do_not_sign(line: str) -> None:
    assert "signature" not in str(told(HEAD + line, group="elements"))


@pytest.mark.parametrize(
    ("words", "days"),
    [
        ("Plan: immobilised 3 weeks, thereafter active movement.", (21, 21)),
        ("Plan: OT in one week, Duran passive protocol.", (7, 7)),
    ],
)
def test_the_day_motion_begins(words: str, days: tuple[int, int]) -> None:
    assert list(each(words, "start_day", group="aftercare").values()) == [days]


@pytest.mark.parametrize("words", ["Plan: splint four weeks then use at night.", "Plan: clinic in one week."])
def test_no_day_on_which_motion_begins(words: str) -> None:
    assert each(words, "start_day", group="aftercare") == {}


def test_the_weeks_in_total() -> None:
    words = "Plan: immobilised 3 weeks, then active motion. Splint total 7 weeks."
    assert list(each(words, "splint_weeks", group="aftercare").values()) == [(7, 7)]


@pytest.mark.parametrize(
    "words",
    ["None of the repairs was under tension and there was no gap.", "None was under tension and no gap was seen."],
)
def test_tension_denied_before_a_gap(words: str) -> None:
    sewn = "Index FDP and ring FDP repaired with 3-0 Ticron. "
    assert each(sewn + words, "tension") == {"index FDP": "none", "ring FDP": "none"}


def test_a_test_under_tension() -> None:
    assert each("Ring FDP repaired with 3-0. Tested under tension and no gap seen.", "tension") == {}


@pytest.mark.parametrize(
    "words",
    ["The end was advanced 6 mm into the distal phalanx. Bunnell weave, 3-0.", "Advancement of 8 mm, then the core."],
)
def test_an_advancement_is_no_purchase(words: str) -> None:
    assert each("Thumb FPL divided, repaired with 3-0 Prolene. " + words, "purchase_mm") == {}
