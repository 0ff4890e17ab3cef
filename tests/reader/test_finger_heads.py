"""Short names of fingers that head what follows, whatever stands before and behind them."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("1) Middle.", "2) Small."),
        ("(1) Middle;", "(2) Little;"),
        ("[1] MIDDLE (left):", "[2] SMALL (left):"),
        ("1.1 Middle zone II -", "1.2 Small zone II -"),
        ("i) Long...", "ii) Little..."),
        ("Re middle:", "Re small:"),
        ("Findings (middle):", "Findings (small):"),
        ("{Middle}", "{Small}"),
        ("DIII:", "DV:"),
    ],
)
def test_a_short_name_heads_its_line(first: str, second: str) -> None:
    found = told(f"{first} FDP divided, FDS intact.\n{second} FDP intact, FDS divided.\n", "extent")
    assert found == {
        "middle FDP": {"extent": "complete"},
        "middle FDS": {"extent": "intact"},
        "small FDP": {"extent": "intact"},
        "small FDS": {"extent": "complete"},
    }


def test_fingers_may_be_listed_under_a_tendon() -> None:
    found = told("FDP: middle - cut through, small - intact. FDS: middle - intact", "extent")
    assert found == {
        "middle FDP": {"extent": "complete"},
        "small FDP": {"extent": "intact"},
        "middle FDS": {"extent": "intact"},
    }


@pytest.mark.parametrize("note", ["FDP DIV. FDS DIV.", "RING FINGER. FDP DIV, FDS DIV 50 %."])
def test_divided_cut_short_is_no_finger(note: str) -> None:
    assert "ring FDP" not in told(note.removeprefix("RING FINGER. "))


@pytest.mark.parametrize("head", ["Small, superficial wound.", "Small; clean cut of the skin.", "A wound (small):"])
def test_a_small_wound_is_no_small_finger(head: str) -> None:
    assert set(told(f"{head}\nFDP of the ring finger divided.", "extent")) == {"ring FDP"}


@pytest.mark.parametrize(
    "note",
    [
        "Middle finger zone 2: FDP cut through, four-strand repair with 4-0.",
        "1. Middle finger: FDP cut through, four-strand repair with 4-0.",
        "1) Middle: FDP cut through, repaired with four strands of 4-0.",
    ],
)
def test_a_number_before_a_cut_tendon_counts_no_broken_strands(note: str) -> None:
    assert told(note, "strands") == {"middle FDP": {"strands": 4}}


@pytest.mark.parametrize(
    "head",
    ["Small L.", "A first case. Little R:", "Washed out. Small left,", "Skin bites of 5 mm. Small r -", "Small L;"],
)
def test_a_side_behind_a_short_name_leaves_it_a_finger(head: str) -> None:
    """'Small L. FDP severed, repaired': behind the letter of the hand as with it in brackets."""
    assert told(f"{head} FDP severed, repaired.", "extent") == {"small FDP": {"extent": "complete"}}


@pytest.mark.parametrize(
    "note", ["The cut was small, right. FDP severed.", "The wound, small, left the skin edge loose. FDP severed."]
)
def test_a_small_thing_beside_a_side_is_no_finger(note: str) -> None:
    assert "small FDP" not in told(note, "extent")
