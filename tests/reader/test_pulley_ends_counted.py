"""'The first half of A4', 'its last third', 'cut back', 'took away': parts of a pulley, whatever the way of telling."""

import pytest
from reader_sentences import each, told

HEAD = "Ring finger. FDP cut and repaired. "
PARTS: dict[str, dict[str, object]] = {
    "distal half": {"part": "distal", "extent_percent": 50},
    "proximal third": {"part": "proximal", "extent_percent": 33},
    "first half": {"part": "proximal", "extent_percent": 50},
    "last third": {"part": "distal", "extent_percent": 33},
    "first 4 mm": {"part": "proximal", "extent_mm": 4},
}
DEEDS = {
    "opened": ("opened", "open", "vented"),
    "split": ("split", "split", "vented"),
    "cut back": ("cut back", "cut back", "trimmed"),
    "taken out": ("took out", "take out", "trimmed"),
    "taken away": ("took away", "take away", "trimmed"),
    "pared away": ("pared away", "pare away", "trimmed"),
}
LAYOUTS = [
    "The repair caught, so the {part} of A4 was {done}.",
    "I {did} the A4 pulley's {part} because the join would not go under.",
    "I had to {do} the {part} of A4.",
    "A4 had its {part} {done}.",
    "A5 was excised and the {part} of A4 {done}.",
]


@pytest.mark.parametrize("layout", LAYOUTS)
@pytest.mark.parametrize("done", DEEDS)
@pytest.mark.parametrize("part", PARTS)
def test_a_part_of_a_pulley(part: str, done: str, layout: str) -> None:
    did, do, finding = DEEDS[done]
    words = layout.format(part=part, done=done, did=did, do=do)
    assert told(HEAD + words, group="pulleys")["ring A4"] == {"finding": finding} | PARTS[part]


@pytest.mark.parametrize(
    "words", ["First, half of A4 was opened.", "At first 4 mm of A4 was opened.", "First A4 was opened by 4 mm."]
)
def test_what_came_first_is_no_part(words: str) -> None:
    assert "part" not in told(HEAD + words, group="pulleys")["ring A4"]


@pytest.mark.parametrize("words", ["I took out the torn edge of A4.", "We excised the ragged rims of A4."])
def test_an_edge_taken_out_is_a_part(words: str) -> None:
    assert told(HEAD + words, group="pulleys") == {"ring A4": {"finding": "trimmed"}}


@pytest.mark.parametrize(
    ("words", "finding"),
    [
        ("A1 was split in full to deliver it, and its tip, which was frayed, was cut back 1 to 2 mm.", "released"),
        ("The tendon lay at A1, the A1 was opened, and its end was trimmed 2 mm.", "vented"),
        ("A1 was opened and the stumps were shaved by 1 mm.", "vented"),
    ],
)
def test_the_stump_is_trimmed_and_no_pulley(words: str, finding: str) -> None:
    assert told(HEAD + words, group="pulleys") == {"ring A1": {"finding": finding}}


def test_the_edges_of_a_pulley_are_its_own() -> None:
    words = "A4 was torn, and its edge was trimmed by 2 mm."
    assert told(HEAD + words, "finding", group="pulleys") == {"ring A4": {"finding": "trimmed"}}


@pytest.mark.parametrize(
    ("words", "mm"),
    [
        ("A 5 mm window was made in A4.", 5),
        ("I cut a window of 5 mm in A4.", 5),
        ("A window of 3 mm was cut into the A4 pulley.", 3),
        ("It rubbed on A4 and I made a 4 mm window in it.", 4),
        ("A window was opened through A4.", None),
        ("A4 window opened, A2 intact.", None),
        ("We made a window through A4 to look.", None),
    ],
)
def test_a_window_in_a_pulley(words: str, mm: int | None) -> None:
    share = {"extent_mm": mm} if mm else {}
    assert told(HEAD + words, group="pulleys")["ring A4"] == {"finding": "vented"} | share


@pytest.mark.parametrize(
    "words",
    [
        "A window was made between A2 and A4.",
        "I looked at the stump through the A4 window.",
        "The sheath was opened through a window between A4 and A5.",
        "No window was made in A4.",
    ],
)
def test_a_window_beside_a_pulley(words: str) -> None:
    assert "vented" not in [f.get("finding") for f in told(HEAD + words, group="pulleys").values()]


@pytest.mark.parametrize(
    ("words", "finding"),
    [
        ("A4 cut 3 mm to stop the knot riding on it.", "vented"),
        ("A4 cut by 3 mm so that the knot passes.", "vented"),
        ("To get at the stump we cut the A3 and A4 pulleys across completely.", "released"),
        ("A4 was therefore cut through completely.", "released"),
        ("A4 was cut through completely by the blade.", "injured"),
        ("A4 was cut by the glass.", "injured"),
    ],
)
def test_who_cuts_for_a_reason_is_the_surgeon(words: str, finding: str) -> None:
    assert told(HEAD + words, "finding", group="pulleys")["ring A4"] == {"finding": finding}


@pytest.mark.parametrize(
    ("words", "found"),
    [
        ("The fourth pulley was torn in its front half and I let it be.", {"ring A4": "injured"}),
        ("I vented the fourth pulley; the second pulley was left alone.", {"ring A4": "vented", "ring A2": "intact"}),
        ("A second pulley was intact.", {}),
    ],
)
def test_pulleys_counted(words: str, found: dict[str, str]) -> None:
    assert each(HEAD + words, "finding", group="pulleys") == found


@pytest.mark.parametrize("words", ["A4: prox. 6 mm open.", "A4 - proximal 6 mm open, A2 intact."])
def test_so_much_of_it_is_open(words: str) -> None:
    found = told(HEAD + words, group="pulleys")["ring A4"]
    assert found == {"finding": "vented", "extent_mm": 6, "part": "proximal"}


@pytest.mark.parametrize(
    "words", ["There was a 6 mm open wound over A4.", "A4 may be open.", "A4: 6 mm open fracture beside it."]
)
def test_another_thing_is_open(words: str) -> None:
    assert told(HEAD + words, group="pulleys") == {}


@pytest.mark.parametrize(
    ("words", "treatment"),
    [
        ("The edge was tacked with one 5-0 Prolene stitch.", "repaired"),
        ("It was tacked together with a single 5-0 nylon stitch.", "repaired"),
        ("The flaps were tacked down.", None),
    ],
)
def test_an_edge_tacked(words: str, treatment: str | None) -> None:
    found = told("Ring FDP cut to a third. " + words)["ring FDP"]
    assert found.get("treatment") == treatment
