"""Forms: choices answered behind an arrow, struck lines, blanks behind a name, deeds that a 'nothing' answers."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    ("line", "field", "value"),
    [
        ("Gap: [N / Y, __ mm] -> N", "gap", "none"),
        ("Gap: [none / seen] => seen", "gap", "seen"),
        ("Triggering: [Y / N] \u2192 N", "glide", "free"),
        ("Purchase: [8 / 10 / 12] mm -> 10", "purchase_mm", (10, 10)),
        ("Locks: [yes / no] -> yes", "hold", "locking"),
    ],
)
def test_an_arrow_behind_choices_leads_to_the_answer(line: str, field: str, value: object) -> None:
    note = f"Ring finger FDP repaired with a six-strand Savage of 4-0 nylon.\n{line}"
    assert each(note, field) == {"ring FDP": value}


@pytest.mark.parametrize("line", ["Gap: [N / Y, __ mm]", "Gap: [none / seen] ->", "Bulky: [Y / N]"])
def test_choices_without_an_answer_say_nothing(line: str) -> None:
    note = f"Ring finger FDP repaired with a six-strand Savage of 4-0 nylon.\n{line}"
    assert told(note, "gap", "bulk") == {}


@pytest.mark.parametrize(
    "core",
    [
        "~~4-strand Strickland, 3-0 Ethibond~~ 6-strand Savage, 4-0 nylon",
        "<del>4-strand Strickland, 3-0 Ethibond</del> 6-strand Savage, 4-0 nylon",
        "6-strand Savage, 4-0 nylon ~~4-strand Strickland, 3-0 Ethibond~~",
    ],
)
def test_what_is_struck_through_is_not_read(core: str) -> None:
    shown = told(f"Ring finger FDP\nCore: {core}", "strands", "stitch", "size", "material")
    assert shown == {"ring FDP": {"strands": 6, "stitch": "savage", "size": "4-0", "material": "nylon"}}


def test_a_tilde_for_about_strikes_nothing() -> None:
    note = "Ring finger FDP repaired with 3-0 Ethibond, bite ~10 mm, locks ~2 mm."
    assert each(note, "purchase_mm") == {"ring FDP": (10, 10)}


@pytest.mark.parametrize("blank", ["______", "(blank)", "(left blank)"])
def test_a_name_left_blank_takes_nothing_of_the_next(blank: str) -> None:
    pulleys = f"Middle finger. A2 proximal 5 mm opened, A3 {blank}, A4 retained"
    assert each(pulleys, "finding", group="pulleys") == {"middle A2": "vented", "middle A4": "intact"}
    assert each(f"Ring finger. FDP {blank}, FDS intact", "extent") == {"ring FDS": "intact"}


def test_a_figure_left_blank_leaves_its_pulley_told() -> None:
    assert each("Ring finger. A2 vented ___ mm, A4 intact", "finding", group="pulleys") == {
        "ring A2": "vented",
        "ring A4": "intact",
    }


@pytest.mark.parametrize("title", ["how sewn", "repaired", "repair"])
@pytest.mark.parametrize("answer", ["nothing", "none", "none needed", "nothing done"])
def test_a_cell_of_nothing_leaves_its_tendon(title: str, answer: str) -> None:
    grid = f"tendon | cut | {title}\nFDP ring | 20 % | {answer}\nFDS ring | intact | {answer}\nFDP small | complete | "
    assert each(grid + "3-0 PDS 4-strand cruciate", "treatment") == {"ring FDP": "left", "small FDP": "repaired"}


def test_a_line_that_asks_of_more_than_the_deed_denies_no_deed() -> None:
    note = "Index finger FDP repaired with 3-0 Ethibond.\nGap in the FDP repair?            None"
    assert told(note, "treatment", "gap") == {"index FDP": {"treatment": "repaired", "gap": "none"}}


@pytest.mark.parametrize(
    "answer",
    ["Core technique: not sutured, loose flap trimmed", "Technique: none, flap trimmed", "Core: n/a, edge smoothed"],
)
def test_a_title_of_what_was_not_done_is_no_repair(answer: str) -> None:
    assert each(f"Middle finger FDS 40% cut.\nFDS REPAIR\n{answer}", "treatment") == {"middle FDS": "trimmed"}


def test_a_title_of_what_was_done_is_a_repair() -> None:
    note = "Middle finger FDP completely divided.\nFDP REPAIR\nCore technique: cruciate, 3-0 Ethibond"
    assert each(note, "treatment") == {"middle FDP": "repaired"}


@pytest.mark.parametrize("label", ["Digits", "Fingers", "Digits injured", "Finger injured"])
def test_a_label_for_several_fingers_may_hold_one(label: str) -> None:
    assert each(f"B. INJURY\n   {label}: little\n   Tendon zone: 2C\n   FDP: complete", "zone") == {"small FDP": "IIC"}


@pytest.mark.parametrize("label", ["Tendon zone", "Level", "Level of injury", "Zone"])
def test_a_zone_behind_a_longer_label(label: str) -> None:
    assert each(f"Digit: ring\n{label}: 3\nFDP: complete", "zone") == {"ring FDP": "III"}
