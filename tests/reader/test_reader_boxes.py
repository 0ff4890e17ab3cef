"""Rows of ticked boxes: each ticked option is told with the label of its row, an empty box says nothing."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger, left. FDP completely divided, sewn with a four-strand cruciate of 3-0 Ethibond.\n"
            "\n"
            "Glide after repair:   [x] free   [ ] catching   [ ] restricted\n",
            {"ring FDP": "free"},
        ),
        (
            "Right thumb. FPL completely divided and repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "Gliding beneath the pulleys:   [ ] free   [x] catches   [ ] blocked\n",
            {"thumb FPL": "catching"},
        ),
        (
            "Ring finger, left. FDP completely divided, sewn with a four-strand cruciate of 3-0 Ethibond.\n"
            "\n"
            "Glide after repair:   [ ] free   [ ] catching   [ ] restricted\n",
            {},
        ),
        (
            "Right thumb. FPL completely divided and repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "Tendon glide:   {x} catching   { } free\n",
            {"thumb FPL": "catching"},
        ),
    ],
)
def test_how_the_repair_ran(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["glide"] for entry, facts in told(note, "glide").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index finger.\n"
            "\n"
            "FINDINGS\n"
            "FDP of index:   [ ] intact   [ ] partial   [x] complete\n"
            "FDS of index:   [x] intact   [ ] partial   [ ] complete\n",
            {"index FDP": "complete", "index FDS": "intact"},
        ),
        (
            "Left small finger.\n\nFINDINGS\nFDP of small:   [ ] intact   [ ] partial   [ ] complete\n",
            {},
        ),
    ],
)
def test_what_was_cut(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger, left. FDP completely divided, sewn with a four-strand cruciate of 3-0 Ethibond.\n"
            "\n"
            "Ring A2 pulley:   [ ] intact   [x] vented   [ ] excised\n",
            {"ring A2": "vented"},
        ),
        (
            "Ring finger, left. FDP completely divided, sewn with a four-strand cruciate of 3-0 Ethibond.\n"
            "\n"
            "Ring A4 pulley:   [x] intact   [ ] vented   [ ] excised\n",
            {"ring A4": "intact"},
        ),
        (
            "Ring finger, left. FDP completely divided, sewn with a four-strand cruciate of 3-0 Ethibond.\n"
            "\n"
            "Ring A4 pulley:   { } intact   { } vented   {x} released\n",
            {"ring A4": "released"},
        ),
        (
            "Ring finger, left. FDP completely divided, sewn with a four-strand cruciate of 3-0 Ethibond.\n"
            "\n"
            "Ring A2 pulley:   [ ] intact   [ ] vented   [ ] excised\n",
            {},
        ),
    ],
)
def test_what_became_of_a_pulley(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["finding"] for entry, facts in told(note, "finding", group="pulleys").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger, left. FDP completely divided, sewn with a four-strand cruciate of 3-0 Ethibond.\n"
            "\n"
            "Nerve injury:   [ ] radial digital   [ ] ulnar digital   [x] none\n",
            {"ring digital nerve radial": "intact", "ring digital nerve ulnar": "intact"},
        ),
        (
            "Ring finger, left. FDP completely divided, sewn with a four-strand cruciate of 3-0 Ethibond.\n"
            "\n"
            "Nerve damage:   [ ] radial digital   [ ] ulnar digital   [x] none\n",
            {"ring digital nerve radial": "intact", "ring digital nerve ulnar": "intact"},
        ),
    ],
)
def test_none_ticked_in_a_row_of_nerves_cuts_none(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent", group="injuries").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger, left. FDP completely divided, sewn with a four-strand cruciate of 3-0 Ethibond.\n"
            "\n"
            "Core knots:   buried [x]   external [ ]\n",
            {"ring FDP": "buried"},
        ),
        (
            "Ring finger, left. FDP completely divided, sewn with a four-strand cruciate of 3-0 Ethibond.\n"
            "\n"
            "Core knots:   buried [ ]   external [x]\n",
            {"ring FDP": "external"},
        ),
    ],
)
def test_boxes_behind_their_options(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["knot"] for entry, facts in told(note, "knot").items()}
    assert found == expected


CUT = "\nFDP cut [x] 100 %   repaired [x]\n"


@pytest.mark.parametrize(
    ("line", "digit"),
    [
        ("Hand:  R [ ]  L [x]        Digit: Th [ ]  I [ ]  M [x]  R [ ]  L [ ]", "middle"),
        ("Hand:  [ ] R  [x] L        Digit: [ ] Th  [ ] I  [ ] M  [x] R  [ ] L", "ring"),
        ("Digit: Th [ ]  I [x]  M [ ]  R [ ]  L [ ]        Hand: R [ ]  L [x]", "index"),
        ("Finger:  I [ ]  M [ ]  R [ ]  S [x]", "small"),
    ],
)
def test_which_finger_was_ticked(line: str, digit: str) -> None:
    assert told(line + CUT, "treatment") == {f"{digit} FDP": {"treatment": "repaired"}}


def test_a_side_that_was_ticked_is_no_finger() -> None:
    assert told("Hand:  R [x]  L [ ]" + CUT, "treatment") == {"FDP": {"treatment": "repaired"}}


@pytest.mark.parametrize(
    "row",
    ["FDS    repaired [ ]   left [x]   excised [ ]", "FDS    [ ] repaired   [x] left   [ ] excised"],
)
def test_a_ticked_left_is_a_deed(row: str) -> None:
    assert told("Right index finger.\n" + row, "treatment") == {"index FDS": {"treatment": "left"}}


def test_a_left_hand_that_was_ticked_is_no_deed() -> None:
    assert told("Side: right [ ]  left [x]\nFDP of the ring cut through.", "treatment") == {}


@pytest.mark.parametrize(
    ("words", "name", "value"),
    [
        ("Core: 3-0 PDS   strands: _4_", "strands", 4),
        ("Core: 3-0 PDS   bites: __10__ mm", "purchase_mm", (10, 10)),
    ],
)
def test_what_was_written_on_a_line(words: str, name: str, value: object) -> None:
    note = "Left middle finger. FDP divided and repaired.\n" + words
    assert told(note, name) == {"middle FDP": {name: value}}


@pytest.mark.parametrize("label", ["Triggering", "Catching"])
def test_an_empty_label_before_another_says_nothing(label: str) -> None:
    note = f"Left middle finger. FDP divided and repaired with 3-0 PDS.\nBulk: ________          {label}: Y [ ] N [x]"
    assert told(note, "bulk") == {}
