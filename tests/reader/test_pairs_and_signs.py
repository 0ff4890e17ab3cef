"""Layouts in signs: pairs parted by a bar, drawn boxes, units in labels, cells that repeat the one beside them."""

import pytest
from reader_sentences import Shown, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left wrist, glass.\n\nFCU | cut through\nFCR | intact\nPL | cut through\n",
            {"FCU": {"extent": "complete"}, "FCR": {"extent": "intact"}, "PL": {"extent": "complete"}},
        ),
        (
            "Left wrist, glass.\n\nFCR | half, ulnar side\nFCU | through\nPL | intact\n",
            {
                "FCR": {"extent": "partial", "extent_percent": 50},
                "FCU": {"extent": "complete"},
                "PL": {"extent": "intact"},
            },
        ),
        (
            "Right ring finger.\n\nFDP | through\nFDS | intact\nA2 pulley | vented\n",
            {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "intact"}},
        ),
    ],
)
def test_pairs_parted_by_a_bar(note: str, expected: Shown) -> None:
    assert told(note, "extent", "extent_percent") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("A2 pulley:   ☐ intact   ☒ vented   ☐ excised\n", {"ring A2": {"finding": "vented"}}),
        ("A4 pulley:   ☑ intact   ☐ vented   ☐ excised\n", {"ring A4": {"finding": "intact"}}),
        ("A2 pulley:   ☐ intact   ☐ vented   ☐ excised\n", {}),
    ],
)
def test_drawn_boxes(words: str, expected: Shown) -> None:
    note = "Ring finger, left. FDP completely divided, sewn with a four-strand cruciate of 3-0 Ethibond.\n\n" + words
    assert told(note, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("Glide:   ☑ free   ☐ catches\n", {"ring FDP": {"glide": "free"}}),
        ("Bulky:   □ yes   ☒ no\n", {"ring FDP": {"bulk": "none"}}),
        ("Gap:   □ none   ☒ seen\n", {"ring FDP": {"gap": "seen"}}),
        ("Gap:   ☐ none   ☐ seen\n", {}),
        ("Catching:   ☒ no   ☐ yes\n", {"ring FDP": {"glide": "free"}}),
        ("Gap on test:   ☐ none   ☑ 1 mm\n", {"ring FDP": {"gap": "seen"}}),
    ],
)
def test_drawn_boxes_behind_a_question(words: str, expected: Shown) -> None:
    note = "Ring finger, left. FDP completely divided, sewn with a four-strand cruciate of 3-0 Ethibond.\n\n" + words
    assert told(note, "gap", "bulk", "glide") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided.\n\nzone: II\ncore_suture: 3-0 Ethibond\nstrand_count: 4\n",
            {"ring FDP": {"zone": "II", "size": "3-0", "strands": 4}},
        ),
        (
            "Left thumb. FPL completely divided.\n\ncore_suture: 4-0 Prolene, two strands\n",
            {"thumb FPL": {"size": "4-0", "strands": 2}},
        ),
    ],
)
def test_names_of_fields_joined_by_low_lines(note: str, expected: Shown) -> None:
    assert told(note, "zone", "strands", "size") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger, left. FDP completely divided, sewn with a four-strand cruciate of 3-0 Ethibond.\n"
            "\n"
            "Trimmed, mm: 4\n",
            {"ring FDP": {"trimmed_mm": 4}},
        ),
        (
            "Left hand. FDP of middle and ring fingers completely divided.\n"
            "\n"
            "               MIDDLE    RING\n"
            "Trimmed, mm    4         2\n"
            "Zone           II        II\n",
            {"middle FDP": {"trimmed_mm": 4}, "ring FDP": {"trimmed_mm": 2}},
        ),
        (
            "Ring finger, left. FDP completely divided, sewn with a four-strand cruciate of 3-0 Ethibond.\n"
            "\n"
            "Trimmed (mm): 3\n",
            {"ring FDP": {"trimmed_mm": 3}},
        ),
    ],
)
def test_units_in_labels(note: str, expected: Shown) -> None:
    assert told(note, "purchase_mm", "trimmed_mm") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left hand, saw.\n"
            "\n"
            "## MIDDLE\n"
            "FDP completely divided. FDS intact.\n"
            "\n"
            "## SMALL\n"
            "FDS completely divided. FDP intact.\n",
            {
                "middle FDP": {"extent": "complete"},
                "middle FDS": {"extent": "intact"},
                "small FDP": {"extent": "intact"},
                "small FDS": {"extent": "complete"},
            },
        ),
        (
            "Left hand, saw.\n\nMIDDLE z2: FDP cut through.\nSMALL z2: FDS cut through.\n",
            {"middle FDP": {"extent": "complete"}, "small FDS": {"extent": "complete"}},
        ),
        (
            "Left hand, saw.\n\nFinger 1: SMALL\nFDP completely divided.\n\nFinger 2: LONG\nFDS completely divided.\n",
            {"small FDP": {"extent": "complete"}, "middle FDS": {"extent": "complete"}},
        ),
    ],
)
def test_fingers_that_head_their_lines(note: str, expected: Shown) -> None:
    assert told(note, "extent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left hand. FDP of index and ring completely divided.\n"
            "\n"
            "            INDEX                     RING\n"
            "Core        four strands, 3-0         same\n",
            {"index FDP": {"strands": 4, "size": "3-0"}, "ring FDP": {"strands": 4, "size": "3-0"}},
        ),
        (
            "Left hand. FDP of middle and ring fingers completely divided.\n"
            "\n"
            "            MIDDLE                    RING\n"
            "Core        6 strands, 4-0 Prolene    idem\n"
            "Zone        II                        I\n",
            {"middle FDP": {"strands": 6, "size": "4-0"}, "ring FDP": {"strands": 6, "size": "4-0"}},
        ),
    ],
)
def test_cells_that_repeat_the_one_beside_them(note: str, expected: Shown) -> None:
    assert told(note, "strands", "size") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger.\n\n           FDP      FDS\nHow much   all      none\nZone       II       II\n",
            {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "intact"}},
        ),
        (
            "Left small finger.\n"
            "\n"
            "Tendon     Extent     Treatment\n"
            "FDP        all        repaired\n"
            "FDS        none       -\n",
            {"small FDP": {"extent": "complete"}, "small FDS": {"extent": "intact"}},
        ),
    ],
)
def test_all_under_how_much(note: str, expected: Shown) -> None:
    assert told(note, "extent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Zone: lll\nLeft ring finger, FDP completely divided.\n",
            {"ring FDP": {"zone": "III"}},
        ),
        (
            "ZONE: ll\nLeft thumb, FPL completely divided.\n",
            {"thumb FPL": {"zone": "II"}},
        ),
    ],
)
def test_a_zone_slipped_by_a_scanner(note: str, expected: Shown) -> None:
    assert told(note, "zone") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDS l/3 cut. FDP intact.",
            {"ring FDS": {"extent": "partial", "extent_percent": 33}, "ring FDP": {"extent": "intact"}},
        ),
        (
            "Left index finger. FDP cut through. l/4 of the FDS was cut.",
            {"index FDP": {"extent": "complete"}, "index FDS": {"extent": "partial", "extent_percent": 25}},
        ),
    ],
)
def test_a_fraction_slipped_by_a_scanner(note: str, expected: Shown) -> None:
    assert told(note, "extent", "extent_percent") == expected
