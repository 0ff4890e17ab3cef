"""Shorthand of arrows: counted tendons, lines that are not wrapped, and skin that was trimmed."""

import pytest
from reader_sentences import each, told

FOUR = "Findings, zone V: all four FDS -> cut right through. FDP index + middle -> cut right through.\n"
SEWN_DEEP = "FDP index + middle -> mod Kessler, 2 strand, 3/0 Prolene\n"
SUPERFICIALES = ["index FDS", "middle FDS", "ring FDS", "small FDS"]


@pytest.mark.parametrize("counted", ["FDS x4 -> fig-of-8, 3/0 Ticron.", "FDS x 4 -> figure of eight, 3/0 Ticron."])
def test_what_is_counted_as_four_is_all_four(counted: str) -> None:
    note = FOUR + SEWN_DEEP + counted + " No epi"
    sizes = each(note, "size")
    assert {name: sizes.get(name) for name in SUPERFICIALES} == dict.fromkeys(SUPERFICIALES, "3-0")
    absent = each(note, "peripheral")
    assert [absent.get(name) for name in SUPERFICIALES] == ["absent"] * 4


def test_four_strands_are_no_four_tendons() -> None:
    note = FOUR + SEWN_DEEP + "FDS index x 4-strand -> 3/0 Ticron"
    assert "ring FDS" not in each(note, "size")


def test_a_line_with_an_arrow_ends_where_it_ends() -> None:
    note = (
        "FDP and FDS of the index repaired, four-strand Kessler.\n"
        "Pulled on every tendon repair with forceps -> no gap anywhere\n"
        "Wash 2 L + haemostasis + 4/0 Ethilon skin + mini drain\n"
        "Mepitel + gauze + wool + DBS: wrist neutral, MCP 45"
    )
    assert each(note, "gap") == {"index FDP": "none", "index FDS": "none"}


@pytest.mark.parametrize(
    "skin",
    [
        "Divided ends clean, skin edges ragged -> excised 2 mm.",
        "Tendon ends clean. Ragged wound edges, these trimmed back 3 mm.",
    ],
)
def test_skin_that_was_trimmed_is_no_tendon(skin: str) -> None:
    assert told("FDP and FDS of the index completely divided. " + skin, "trimmed_mm") == {}


def test_a_tendon_trimmed_after_its_wound_was_washed() -> None:
    note = "FDP of the index divided. Having washed the wound thoroughly, I trimmed the profundus back by 5 mm."
    assert each(note, "trimmed_mm") == {"index FDP": 5}
