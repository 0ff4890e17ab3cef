"""How a note turns to a finger: 'in the little', 'now the middle', by numeral, as the other one, by number."""

import pytest
from reader_sentences import Shown, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring and little fingers. FDP of both completely divided. In the ring finger the FDP took "
            "four strands of 3-0 Ethibond. In the little the FDP took two strands of 4-0 Prolene.",
            {"ring FDP": 4, "small FDP": 2},
        ),
        (
            "Middle and little fingers, FDP of both completely divided. For the middle finger we used a "
            "six-strand core of 4-0 Prolene. For the little a two-strand core of 4-0 Prolene was used.",
            {"middle FDP": 6, "small FDP": 2},
        ),
        (
            "Index and middle fingers, FDP of both completely divided. The index FDP got a six-strand core "
            "of 4-0 Prolene. Now the middle. Its FDP got a four-strand core of 4-0 Prolene.",
            {"index FDP": 6, "middle FDP": 4},
        ),
    ],
)
def test_in_the_little(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["strands"] for entry, facts in told(note, "strands").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index and ring fingers, FDP of both completely divided. Index FDP: four-strand core of 3-0 "
            "Ethibond. A knot lay in the middle of the join. Ring FDP: two-strand core of 3-0 Ethibond.",
            {"index FDP": 4, "ring FDP": 2},
        ),
        (
            "Ring finger, FDP completely divided. FDP sewn with four strands of 3-0 Ethibond, little tension.",
            {"ring FDP": 4},
        ),
    ],
)
def test_the_middle_of_something_is_no_finger(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["strands"] for entry, facts in told(note, "strands").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left hand. FDP of III completely divided. FDS of III intact.",
            {"middle FDP": "complete", "middle FDS": "intact"},
        ),
        (
            "Left hand. FDP of IV and V completely divided. FDS of V intact.",
            {"ring FDP": "complete", "small FDP": "complete", "small FDS": "intact"},
        ),
        (
            "Left hand. FDS of II completely divided, FDP of II not cut.",
            {"index FDS": "complete", "index FDP": "intact"},
        ),
    ],
)
def test_by_roman_numeral(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring and small fingers. The ring FDP was completely divided. In the other finger the FDP was intact.",
            {"ring FDP": "complete", "small FDP": "intact"},
        ),
        (
            "Index and middle fingers. The index FDP was completely divided. On the other finger the FDP was 40% cut.",
            {"index FDP": "complete", "middle FDP": "partial"},
        ),
        (
            "Middle and small fingers. The small FDP was cut through. In the other digit the FDP was intact.",
            {"small FDP": "complete", "middle FDP": "intact"},
        ),
    ],
)
def test_the_other_finger(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index and ring fingers, FDP of both completely divided.\n"
            "First repair, index FDP: four-strand cruciate of 3-0 Ethibond.\n"
            "Second repair, ring FDP: two-strand Kessler of 4-0 Prolene.\n",
            {"index FDP": 4, "ring FDP": 2},
        ),
        (
            "Thumb and small finger, FPL and small FDP completely divided. First repair: FPL, six-strand "
            "Lim-Tsai of 4-0 nylon. Second repair: small FDP, four-strand cruciate.",
            {"thumb FPL": 6, "small FDP": 4},
        ),
    ],
)
def test_repairs_counted(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["strands"] for entry, facts in told(note, "strands").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index finger. The first repair was a six-strand Savage elsewhere. FDP completely divided, sewn "
            "with a four-strand cruciate of 3-0 Ethibond.",
            {"index FDP": 4},
        ),
        (
            "Index finger. At the first repair the FDP had got six strands. FDP completely divided, sewn "
            "with a two-strand Kessler of 3-0 Ethibond.",
            {"index FDP": 2},
        ),
    ],
)
def test_the_first_repair_of_before_is_history(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["strands"] for entry, facts in told(note, "strands").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index and middle fingers. The index FDP was completely divided with an intact FDS, the middle "
            "FDP and FDS were completely divided.",
            {"index FDP": "complete", "index FDS": "intact", "middle FDP": "complete", "middle FDS": "complete"},
        ),
        (
            "Ring and small fingers. The ring FDP was severed with an intact FDS, the small FDP and FDS were severed.",
            {"ring FDP": "complete", "ring FDS": "intact", "small FDP": "complete", "small FDS": "complete"},
        ),
    ],
)
def test_a_list_behind_a_comma(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Tendon 1: FDP\nFinger: ring\nCompletely divided.\n\nTendon 2: FDS\nFinger: ring\nIntact.\n",
            {"ring FDP": "complete", "ring FDS": "intact"},
        ),
        (
            "Tendon: FDS\nDigit: small\nCompletely divided.\n\nTendon: FDP\nDigit: small\nIntact.\n",
            {"small FDS": "complete", "small FDP": "intact"},
        ),
    ],
)
def test_a_label_that_names_the_finger(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring and small fingers.\n"
            "* FDP ring: completely divided. Four-strand cruciate of 3-0 Ethibond.\n"
            "* FDP small: completely divided. Two-strand Kessler of 4-0 Prolene.\n",
            {"ring FDP": {"extent": "complete", "strands": 4}, "small FDP": {"extent": "complete", "strands": 2}},
        ),
        (
            "Index and middle fingers.\n"
            "* FDP index: completely divided. Six-strand Savage.\n"
            "* FDP middle: completely divided. Four-strand Adelaide.\n",
            {"index FDP": {"extent": "complete", "strands": 6}, "middle FDP": {"extent": "complete", "strands": 4}},
        ),
    ],
)
def test_a_tendon_heads_its_line(note: str, expected: Shown) -> None:
    assert told(note, "extent", "strands") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. FDP completely divided; FDS intact; six-strand Savage of 4-0 Prolene.",
            {"ring FDP": 6},
        ),
        (
            "Left index. FDS intact, FDP cut through, two-strand Kessler of 3-0 Ethibond.",
            {"index FDP": 2},
        ),
        (
            "Small finger. FDP severed, FDS intact, four-strand cruciate of 3-0 Ethibond.",
            {"small FDP": 4},
        ),
    ],
)
def test_a_core_is_not_of_a_whole_tendon(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["strands"] for entry, facts in told(note, "strands").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index and ring FDP completely divided. Zone II throughout.",
            {"index FDP": "II", "ring FDP": "II"},
        ),
        (
            "FCU, FCR and PL completely divided, zone V throughout.",
            {"FCU": "V", "FCR": "V", "PL": "V"},
        ),
    ],
)
def test_a_zone_throughout(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["zone"] for entry, facts in told(note, "zone").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index finger. FDP completely divided. The wedding band was taken off with a ring cutter, all intact.",
            {"index FDP": "complete"},
        ),
        (
            "Small finger under a ring block. FDP completely divided.",
            {"small FDP": "complete"},
        ),
        (
            "Index finger. FDP completely divided, held open by a ring retractor.",
            {"index FDP": "complete"},
        ),
    ],
)
def test_a_ring_that_is_no_finger(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index finger and thumb. In the index the profundus was completely divided. The profundus was "
            "repaired with a four-strand cruciate of 3-0 Ethibond; next was the thumb. FPL completely "
            "divided, repaired with a two-strand Kessler of 4-0 Prolene.",
            {"index FDP": 4, "thumb FPL": 2},
        ),
        (
            "Ring finger and thumb. The ring FDP was completely divided. The profundus took a six-strand "
            "Savage of 4-0 Prolene; then came the thumb. FPL completely divided, repaired with a four-strand "
            "cruciate of 3-0 Ethibond.",
            {"ring FDP": 6, "thumb FPL": 4},
        ),
    ],
)
def test_the_next_finger_named_is_the_thumb(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["strands"] for entry, facts in told(note, "strands").items()}
    assert found == expected


TURN = "Starting with the index finger. The profundus was completely divided. "


@pytest.mark.parametrize("words", ["Next to the middle finger.", "Next to the middle finger: "])
def test_next_to_a_finger_as_a_turn(words: str) -> None:
    found = told(f"{TURN}{words} The profundus was lacerated 60% and the superficialis intact.", "extent")
    assert found == {
        "index FDP": {"extent": "complete"},
        "middle FDP": {"extent": "partial"},
        "middle FDS": {"extent": "intact"},
    }


def test_next_to_a_finger_as_a_place() -> None:
    found = told(f"{TURN}Next to the middle finger lay a splinter. The superficialis was intact.", "extent")
    assert found == {"index FDP": {"extent": "complete"}, "index FDS": {"extent": "intact"}}
