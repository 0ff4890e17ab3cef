"""Counts that must be worked out, and figures beside a core that are no count."""

import pytest
from reader_sentences import each, fact_of, told

RING = "Right ring finger, zone II. FDP completely divided. "
SMALL = "Left small finger. The FDP had been cut through. "


@pytest.mark.parametrize(
    ("words", "count"),
    [
        ("two two-strand repairs of 4-0 nylon", 4),
        ("three two-strand repairs of 4-0 nylon", 6),
        ("4-0 four strand", 4),
        ("six strands across, 3-0 Prolene", 6),
        ("a 4-strand core (3-0 Prolene)", 4),
        ("3-0 Prolene, number of strands: 8", 8),
        ("an eight-strand core of 4-0 nylon", 8),
        ("a core of 4-0 nylon in four strands", 4),
        ("a core, 4-0 Prolene, strands x 6", 6),
        ("a six strand 4-0 looped nylon core", 6),
    ],
)
def test_counts(words: str, count: int) -> None:
    for setting, entry in ((RING, "ring FDP"), (SMALL, "small FDP")):
        note = f"{setting}Repaired with {words}."
        assert told(note, "strands") == {entry: {"strands": count}}
        assert fact_of(note, entry, "strands").basis == "stated"


@pytest.mark.parametrize(
    "words",
    [
        "a 4-0 core; 6 bites were taken",
        "four sutures of 4-0 nylon in the skin and a 3-0 core",
        "a 3-0 core, four throws on each knot",
        "a 4-0 core passed with two needles",
        "a 3-0 core after two attempts",
        "a 4-0 core at 8 mm from the cut, 4 strands of scar divided first",
        "a 3-0 core of braided strands",
        "a 4-0 core. A repair of more strands was not possible",
        "a 3-0 core, double-stranded thread",
        "Prolene of size 4-0 (6 packets opened)",
    ],
)
def test_figures_that_are_no_count(words: str) -> None:
    for setting in (RING, SMALL):
        assert told(f"{setting}Repaired with {words}.", "strands") == {}


@pytest.mark.parametrize(
    ("words", "most"),
    [
        ("at least four strands of 4-0 nylon", 4),
        ("four to six strands of 3-0 Prolene", 4),
        ("4-6 strands of 4-0 nylon", 4),
        ("up to six strands of 3-0 nylon", 6),
    ],
)
def test_of_a_range_never_more_than_the_lower_figure(words: str, most: int) -> None:
    for setting, entry in ((RING, "ring FDP"), (SMALL, "small FDP")):
        count = told(f"{setting}Repaired with {words}.", "strands").get(entry, {}).get("strands")
        assert count is None or (isinstance(count, int) and count <= most)


@pytest.mark.parametrize(
    ("body", "counts"),
    [
        (
            "FDP and FDS of the ring finger divided. FDP repaired with a four-strand core of 3-0 nylon, FDS "
            "with a two-strand core of 4-0 nylon.",
            {"ring FDP": 4, "ring FDS": 2},
        ),
        (
            "Index and small FDP divided. The index FDP has six strands of 4-0 nylon. The small FDP has four "
            "strands of 4-0 nylon.",
            {"index FDP": 6, "small FDP": 4},
        ),
        (
            "Index, middle and ring FDP cut, repaired with four-, six- and two-strand cores of 4-0 nylon respectively.",
            {"index FDP": 4, "middle FDP": 6, "ring FDP": 2},
        ),
        (
            "Thumb FPL and index FDP divided. FPL: 6-strand, 3-0 nylon. Index FDP: 2-strand, 3-0 nylon.",
            {"thumb FPL": 6, "index FDP": 2},
        ),
        (
            "Middle FDP and FDS divided. FDP repaired with a six-strand core of 3-0 nylon. FDS repaired with "
            "simple sutures of 5-0 nylon.",
            {"middle FDP": 6},
        ),
    ],
)
def test_each_tendon_its_count(body: str, counts: dict[str, int]) -> None:
    shown = told("Right hand. " + body, "strands")
    assert {entry: facts["strands"] for entry, facts in shown.items()} == counts


@pytest.mark.parametrize(
    "words", ["Correction: for six strands read four.", "ADDENDUM: for 'six strands' read 'four'."]
)
def test_for_six_read_four(words: str) -> None:
    note = "Index finger. FDP divided and repaired with 3-0 PDS, six strands.\n\n" + words
    assert told(note, "strands") == {"index FDP": {"strands": 4}}


@pytest.mark.parametrize(
    ("words", "count"),
    [
        ("Number of strands crossing is 6.", 6),
        ("The number of strands crossing the repair site was four.", 4),
    ],
)
def test_the_number_of_strands_that_cross(words: str, count: int) -> None:
    assert each("Thumb FPL repaired with 4-0 nylon. " + words, "strands") == {"thumb FPL": count}
