"""Results of the test on the table, shared by several fingers or told of one by reference to another."""

import pytest
from reader_sentences import Shown, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring and small fingers. FDP of both completely divided. Ring FDP repaired with a "
            "four-strand cruciate of 3-0 Ethibond, small FDP repaired with a two-strand Kessler of 4-0 "
            "Prolene. Ring pulled on: no gap. Small same.",
            {"ring FDP": {"gap": "none", "strands": 4}, "small FDP": {"gap": "none", "strands": 2}},
        ),
        (
            "Left ring and small fingers. FDP of both completely divided. Ring FDP repaired with a "
            "four-strand cruciate of 3-0 Ethibond, small FDP repaired with a two-strand Kessler of 4-0 "
            "Prolene. The ring repair showed a 1 mm gap under traction. Small ditto.",
            {"ring FDP": {"gap": "seen", "strands": 4}, "small FDP": {"gap": "seen", "strands": 2}},
        ),
        (
            "Left ring and small fingers. FDP of both completely divided. Ring FDP repaired with a "
            "four-strand cruciate of 3-0 Ethibond, small FDP repaired with a two-strand Kessler of 4-0 "
            "Prolene. Ring under traction: gap of 1 mm. Small same.",
            {"ring FDP": {"gap": "seen", "strands": 4}, "small FDP": {"gap": "seen", "strands": 2}},
        ),
    ],
)
def test_the_same_after_a_test_is_the_result(note: str, expected: Shown) -> None:
    assert told(note, "gap", "strands") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring and small fingers. FDP of both completely divided. Ring FDP repaired with a "
            "four-strand cruciate of 3-0 Ethibond, small FDP repaired with a two-strand Kessler of 4-0 "
            "Prolene. Traction: ring no gap. Small no gap.",
            {"ring FDP": {"test": "traction", "gap": "none"}, "small FDP": {"test": "traction", "gap": "none"}},
        ),
        (
            "Left ring and small fingers. FDP of both completely divided. Ring FDP repaired with a "
            "four-strand cruciate of 3-0 Ethibond, small FDP repaired with a two-strand Kessler of 4-0 "
            "Prolene. Traction on both repairs. Ring: no gap. Small: gap of 1 mm.",
            {
                "ring FDP": {"test": "traction", "gap": "none"},
                "small FDP": {"test": "traction", "gap": "seen", "gap_mm": 1},
            },
        ),
        (
            "Left ring and small fingers. FDP of both completely divided. Ring FDP repaired with a "
            "four-strand cruciate of 3-0 Ethibond, small FDP repaired with a two-strand Kessler of 4-0 "
            "Prolene. Moved passively by us: ring gaps 2 mm. Others no gap.",
            {
                "ring FDP": {"test": "passive", "gap": "seen", "gap_mm": 2},
                "small FDP": {"test": "passive", "gap": "none"},
            },
        ),
        (
            "Index, middle and ring fingers. FDP of all three completely divided, each repaired with a "
            "four-strand cruciate of 3-0 Ethibond. Moved passively: index gap 1 mm. Others no gap.",
            {
                "index FDP": {"test": "passive", "gap": "seen", "gap_mm": 1},
                "middle FDP": {"test": "passive", "gap": "none"},
                "ring FDP": {"test": "passive", "gap": "none"},
            },
        ),
    ],
)
def test_a_test_named_before_its_results(note: str, expected: Shown) -> None:
    assert told(note, "test", "gap", "gap_mm") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring and small fingers. FDP of both completely divided. Ring FDP repaired with a "
            "four-strand cruciate of 3-0 Ethibond, small FDP repaired with a two-strand Kessler of 4-0 "
            "Prolene. Ring 1 mm gap. Small no gap.",
            {"ring FDP": {"gap": "seen"}, "small FDP": {"gap": "none"}},
        ),
        (
            "Left ring and little fingers. FDP of both completely divided and repaired with four strands of "
            "3-0 Ethibond. Moved passively. Ring caught on A2. Little ran freely.",
            {"ring FDP": {"glide": "catching"}, "small FDP": {"glide": "free"}},
        ),
        (
            "Left ring and little fingers. FDP of both completely divided and repaired with four strands of "
            "3-0 Ethibond. Ring finger no gap. Little gapped 2 mm.",
            {"ring FDP": {"gap": "none"}, "small FDP": {"gap": "seen"}},
        ),
    ],
)
def test_a_finger_at_the_start_of_a_result(note: str, expected: Shown) -> None:
    assert told(note, "gap", "glide") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 "
            "Ethibond. I looked for a gap and found none.",
            {"index FDP": "none"},
        ),
        (
            "Right index finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 "
            "Ethibond. We watched the join for a gap and saw none.",
            {"index FDP": "none"},
        ),
        (
            "Right index finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 "
            "Ethibond. On traction the join was not without some gap.",
            {"index FDP": "seen"},
        ),
    ],
)
def test_a_gap_looked_for_or_admitted(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["gap"] for entry, facts in told(note, "gap").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 "
            "Ethibond. She bent and straightened the finger for me on the table: no gap.",
            {"index FDP": "active"},
        ),
        (
            "Right index finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 "
            "Ethibond. The finger was then flexed and extended by me: no gap.",
            {"index FDP": "passive"},
        ),
        (
            "Right index finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 "
            "Ethibond. A tug from the palm opened no gap.",
            {"index FDP": "traction"},
        ),
        (
            "Right index finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 "
            "Ethibond. Forearm muscles squeezed: tendon moves, no gap.",
            {"index FDP": "traction"},
        ),
        (
            "Right index finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 "
            "Ethibond. Pulled from the wrist with a tendon hook, no gap.",
            {"index FDP": "traction"},
        ),
    ],
)
def test_more_words_for_a_test(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["test"] for entry, facts in told(note, "test").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 "
            "Ethibond. I did not pull on it.",
            {},
        ),
        (
            "Right index finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 "
            "Ethibond. The repair was never pulled on.",
            {},
        ),
        (
            "Right index finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 "
            "Ethibond. I didn't pull on the repair.",
            {},
        ),
    ],
)
def test_a_test_not_made(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["test"] for entry, facts in told(note, "test").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 "
            "Ethibond. Moved passively, the repair catches as it passes under A2.",
            {"index FDP": "catching"},
        ),
        (
            "Right index finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 "
            "Ethibond. Passively moved: passing through A4, the join catches.",
            {"index FDP": "catching"},
        ),
        (
            "Right index finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 "
            "Ethibond. Passive motion: runs under A2 without a hitch.",
            {"index FDP": "free"},
        ),
        (
            "Right index finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 "
            "Ethibond. On passive movement it slides through A4 with no drag.",
            {"index FDP": "free"},
        ),
    ],
)
def test_where_it_catches(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["glide"] for entry, facts in told(note, "glide").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 "
            "Ethibond. It did not gap when the finger was stretched out.",
            {},
        ),
        (
            "Right index finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 "
            "Ethibond. No gap while the fingers were stretched.",
            {},
        ),
    ],
)
def test_stretching_a_finger_says_nothing_of_its_ends(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["ends"] for entry, facts in told(note, "ends").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index and ring fingers. FDP of both completely divided, each repaired with a four-strand "
            "cruciate of 3-0 Ethibond. Small FDP intact. All FDP repairs were tested by traction.",
            {"index FDP": "traction", "ring FDP": "traction"},
        ),
        (
            "Middle and small fingers. FDP of both completely divided, each repaired with a four-strand "
            "cruciate of 3-0 Ethibond. Ring FDP intact. All FDP repairs were moved passively.",
            {"middle FDP": "passive", "small FDP": "passive"},
        ),
    ],
)
def test_all_repairs_of_one_tendon(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["test"] for entry, facts in told(note, "test").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left hand. FDP of all four fingers completely divided, each repaired with a four-strand core of "
            "3-0 Ethibond. All four: knots buried.",
            {"index FDP": "buried", "middle FDP": "buried", "ring FDP": "buried", "small FDP": "buried"},
        ),
        (
            "Index and ring fingers. FDP of both completely divided, each repaired with a four-strand core "
            "of 3-0 Ethibond. Both: knots outside.",
            {"index FDP": "external", "ring FDP": "external"},
        ),
        (
            "Index, middle and small fingers. FDP of all completely divided, each repaired with a "
            "four-strand core of 3-0 Ethibond. All three: knots inside.",
            {"index FDP": "buried", "middle FDP": "buried", "small FDP": "buried"},
        ),
    ],
)
def test_all_four(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["knot"] for entry, facts in told(note, "knot").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "Moved passively, the repair catches on the FDS stump.",
            {"ring FDP": "catching"},
        ),
    ],
)
def test_a_stump_it_catches_on(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["glide"] for entry, facts in told(note, "glide").items()}
    assert found == expected
