"""A stitch named in full, a length with a plus behind it, shares joined by a hyphen, and the same thing done again."""

import pytest
from reader_sentences import each, told

CUT = "Ring FDP and FDS cut through. "


@pytest.mark.parametrize(
    "core",
    [
        "a four-strand cruciate configuration whose corners were locked (locked cruciate, 3-0 braided polyester)",
        "a cruciate core with a lock at each corner (locked cruciate), 3-0 Ethibond",
    ],
)
def test_the_full_name_in_brackets(core: str) -> None:
    assert each(f"The ring FDP was repaired with {core}.", "stitch") == {"ring FDP": "locked cruciate"}


def test_another_stitch_of_another_finger_in_brackets() -> None:
    note = "The ring FDP was repaired with a cruciate core (small FDP: locked cruciate), 3-0 Ethibond."
    assert each(note, "stitch").get("ring FDP") == "cruciate"


@pytest.mark.parametrize(("bite", "taken"), [("8 mm + knots outside", (8, 8)), ("8 mm +", (8, None))])
def test_a_plus_behind_a_length(bite: str, taken: tuple[float, float | None]) -> None:
    assert each(f"Ring FDP: 4-0 Ethibond, 4 strands, purchase {bite}", "purchase_mm") == {"ring FDP": taken}


@pytest.mark.parametrize(
    "cut", ["The half-section of the superficialis of the ring was trimmed.", "Ring FDS: half-division, edge trimmed."]
)
def test_a_share_joined_by_a_hyphen(cut: str) -> None:
    assert told(cut, "extent", "extent_percent") == {"ring FDS": {"extent": "partial", "extent_percent": 50}}


@pytest.mark.parametrize(
    "again", ["; the same thing for the superficialis of the ring.", ". The same thing was done in the FDS."]
)
def test_the_same_thing(again: str) -> None:
    note = f"{CUT}Suture of the profundus of the ring with a double Tsuge, looped nylon 4-0{again}"
    assert each(note, "stitch") == {"ring FDP": "double tsuge", "ring FDS": "double tsuge"}
    assert each(note, "size") == {"ring FDP": "4-0", "ring FDS": "4-0"}


@pytest.mark.parametrize(
    "list_of_cuts",
    [
        "Left ring finger, zone II: complete division of the profundus and partial cut of the radial slip of the FDS.",
        "Ring finger, zone II: FDP cut through, radial slip of the superficialis 40% cut.",
    ],
)
def test_a_zone_over_a_list(list_of_cuts: str) -> None:
    assert each(list_of_cuts, "zone") == {"ring FDP": "II", "ring FDS radial": "II"}


@pytest.mark.parametrize(
    "gave_up",
    [
        "but the thread cuts through and we take it out again. New core suture, six strands, Lim-Tsai, looped 4-0",
        "which pulled through, so I had to take it out again; new core after Lim-Tsai, six strands, 4-0 looped nylon",
    ],
)
def test_a_core_taken_out_again(gave_up: str) -> None:
    note = f"Ring FDP cut through. Core suture after Kessler, two strands, 3-0 PDS, {gave_up}."
    assert told(note, "strands", "stitch") == {"ring FDP": {"strands": 6, "stitch": "lim-tsai"}}


def test_a_button_of_the_skin_is_none() -> None:
    note = "Ring FDP cut through, sewn with 3-0 PDS. Skin single-button sutures."
    assert told(note, "treatment", "stitch") == {"ring FDP": {"treatment": "repaired"}}
