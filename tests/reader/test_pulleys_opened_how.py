"""Who opened a pulley and how far: over its whole length, by the wound, at one end, or not at all."""

import pytest
from reader_sentences import each, told

_HEAD = "Left ring finger, zone II. FDP completely divided, repaired with a four-strand 3-0 Ticron core. "


def _found(words: str) -> dict[str, object]:
    return each(_HEAD + words, "finding", group="pulleys")


@pytest.mark.parametrize(
    "words",
    [
        "The A3 pulley was cut all the way.",
        "A3 let go all across.",
        "A3 was cut across its whole length for room.",
        "A3 let out as well, all.",
        "A3 opened all, A2 not seen.",
        "The repair caught at A3, so I let that go fully.",
        "A3 had been cut by the knife, completed the release.",
        "A3 and C1 were opened by me (A3 along its whole length).",
        "A3 fully divided, A2 torn by the saw.",
    ],
)
def test_over_the_whole_length(words: str) -> None:
    assert _found(words)["ring A3"] == "released"


@pytest.mark.parametrize(
    "words",
    [
        "A2: proximal half slit by knife.",
        "A2 divided by injury.",
        "A2 was divided by a tooth and not repaired.",
        "A2 had a small slit from the glass and this was left as it was.",
        "A2 cut across by the saw.",
        "A2 nicked by the blade over 2 mm.",
    ],
)
def test_by_what_wounds(words: str) -> None:
    assert _found(words) == {"ring A2": "injured"}


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("A2 was cut for its distal 6 mm; A4 kept.", {"finding": "vented", "extent_mm": 6.0, "part": "distal"}),
        ("A2 prox 5 mm cut. A4 kept.", {"finding": "vented", "extent_mm": 5.0, "part": "proximal"}),
        ("A2: distal 3 mm nicked, the rest stays.", {"finding": "vented", "extent_mm": 3.0, "part": "distal"}),
        (
            "A2 was preserved with a nick of 2 mm at its distal rim.",
            {"finding": "vented", "extent_mm": 2.0, "part": "distal"},
        ),
        (
            "A2 was left alone apart from a release of its distal third.",
            {"finding": "vented", "extent_percent": 33.0, "part": "distal"},
        ),
        (
            "A3 was divided, and we opened 5 mm at the far end of A2.",
            {"finding": "vented", "extent_mm": 5.0, "part": "distal"},
        ),
        (
            "I had to vent A3 completely and 6 mm at the near end of A2.",
            {"finding": "vented", "extent_mm": 6.0, "part": "proximal"},
        ),
        ("It snagged at A2, so I opened about 4 mm of that.", {"finding": "vented", "extent_mm": 4.0}),
        ("A2 was in the way; I divided about a third of it.", {"finding": "vented", "extent_percent": 33.0}),
    ],
)
def test_over_a_measured_part(words: str, expected: dict[str, object]) -> None:
    assert told(_HEAD + words, group="pulleys")["ring A2"] == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("It caught at the edge of A2; after the A2 pulley had been incised it glided freely.", {"ring A2": "vented"}),
        ("Once the distal 4 mm of A2 had been divided it ran freely.", {"ring A2": "vented"}),
        ("The A2 pulley had been divided.", {"ring A2": "injured"}),
    ],
)
def test_had_been_opened_so_that_it_ran(words: str, expected: dict[str, object]) -> None:
    assert _found(words) == expected


@pytest.mark.parametrize(
    "words",
    [
        "A4 dilated only, kept.",
        "A4 was tight, stretched with a probe only, and kept whole.",
        "A4 narrow. dilated with a feeding tube, preserved.",
        "A4 dilated with a tube -> tendon went through. Not cut.",
        "The tendon was led through A4, which was left uncut, and was fixed to the distal phalanx.",
        "A4 in its entirety was respected.",
    ],
)
def test_kept_and_dilated(words: str) -> None:
    assert _found(words) == {"ring A4": "intact"}


def test_kept_beside_one_opened() -> None:
    assert _found("A2 left, small window made in A4 only.") == {"ring A2": "intact", "ring A4": "vented"}
    assert _found("A4 incised 4 mm from distal edge   A5 removed") == {"ring A4": "vented", "ring A5": "excised"}


def test_the_cell_before_tells_of_its_own_pulley() -> None:
    shown = told(_HEAD + "A4 _vented, prox part 5 mm_   A5 _divided by injury_", group="pulleys")
    assert shown["ring A5"] == {"finding": "injured"}


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        (
            "The distal 6 mm of the ring A2 was vented to get in.",
            {"finding": "vented", "extent_mm": 6.0, "part": "distal"},
        ),
        (
            "A2 left, save that the proximal third of the ring A2 had to be opened.",
            {"finding": "vented", "extent_percent": 33.0, "part": "proximal"},
        ),
        ("A2: distal half divided.", {"finding": "vented", "extent_percent": 50.0, "part": "distal"}),
        ("A2 window: distal ~3 mm divided.", {"finding": "vented", "extent_mm": 3.0, "part": "distal"}),
        ("A2 vented 4 mm proximal (snagged before).", {"finding": "vented", "extent_mm": 4.0, "part": "proximal"}),
        (
            "It caught at the rim of A2, shaved 2 mm off its distal edge.",
            {"finding": "trimmed", "extent_mm": 2.0, "part": "distal"},
        ),
    ],
)
def test_how_much_and_which_part(words: str, expected: dict[str, object]) -> None:
    assert told(_HEAD + words, group="pulleys")["ring A2"] == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("A3 pulley cut through. Nerves intact.", "injured"),
        ("Window in the sheath between A2 and A4, the A3 is cut through.", "injured"),
        ("I cut through A3 to reach the stump.", "released"),
        ("A3 was cut through to find the stump.", "released"),
        ("A3 was torn by the saw; the tatters were cut away.", "excised"),
    ],
)
def test_cut_through(words: str, expected: str) -> None:
    assert _found(words)["ring A3"] == expected


def test_a_length_behind_a_comma_is_of_the_next_pulley() -> None:
    note = "Left middle and ring fingers. FDP of both cut, each repaired with a four-strand core. "
    shown = told(note + "A4 vented in the middle, the distal 4 mm of the ring A2 was divided.", group="pulleys")
    assert shown == {
        "middle A4": {"finding": "vented"},
        "ring A2": {"finding": "vented", "extent_mm": 4.0, "part": "distal"},
    }


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("A 2 kept whole; A 4 was vented 5 mm.", {"ring A2": "intact", "ring A4": "vented"}),
        ("A 3 and C 1 slit along their length.", {"ring A3": "released", "ring C1": "released"}),
        ("A 2 cm wound was opened.", {}),
        ("A 4 strand core was used.", {}),
        ("He kept a 2 for later.", {}),
    ],
)
def test_a_capital_and_a_figure_apart(words: str, expected: dict[str, object]) -> None:
    assert _found(words) == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("A4 torn / mended 5-0 PDS.", {"ring A4": "repaired"}),
        ("A4: intact / torn / repaired", {}),
        ("A3 [vented w/ C1]", {"ring A3": "vented", "ring C1": "vented"}),
        ("A3 was excised with C1.", {"ring A3": "excised", "ring C1": "excised"}),
        ("A3 already gone through by knife, not fixed.", {"ring A3": "injured"}),
        ("A2 was remained.", {"ring A2": "intact"}),
    ],
)
def test_found_and_done_in_shorthand(words: str, expected: dict[str, object]) -> None:
    assert _found(words) == expected


@pytest.mark.parametrize(
    "text",
    [
        "A4 was not released over the whole of its length; the proximal 4 mm were opened and the rest was kept.",
        "A4 was not opened along its whole length; only its proximal 4 mm were cut.",
        "The A4 pulley was not released in its entirety; its proximal 4 mm were divided.",
        "A4 was not released all the way, just the first 4 mm were opened.",
    ],
)
def test_an_opening_that_was_no_whole_one(text: str) -> None:
    note = f"Ring FDP cut through and repaired. {text}"
    assert each(note, "finding", group="pulleys") == {"ring A4": "vented"}
    assert each(note, "extent_mm", group="pulleys") == {"ring A4": 4}


@pytest.mark.parametrize(
    ("text", "finding"),
    [
        ("A4 was not opened in full.", {}),
        ("A4 was not opened at all.", {"ring A4": "intact"}),
        ("A2 was not touched; A4 was opened over its whole length.", {"ring A2": "intact", "ring A4": "released"}),
        ("A4 was not spared but opened over its whole length.", {"ring A4": "released"}),
    ],
)
def test_a_whole_opening_and_none(text: str, finding: dict[str, str]) -> None:
    assert each(f"Ring FDP cut through and repaired. {text}", "finding", group="pulleys") == finding
