"""Labels whose answer is told finger by finger, and a tendon that labels the sentences of its line."""

import pytest
from reader_sentences import Shown, told


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        (
            "Gap: middle none, small 1 mm.\n",
            {"middle FDP": {"gap": "none"}, "small FDP": {"gap": "seen", "gap_mm": 1.0}},
        ),
        (
            "[x] gap: small none, middle 2 mm\n",
            {"small FDP": {"gap": "none"}, "middle FDP": {"gap": "seen", "gap_mm": 2.0}},
        ),
        ("Glide - middle free, small catches\n", {"middle FDP": {"glide": "free"}, "small FDP": {"glide": "catching"}}),
    ],
)
def test_a_label_answered_finger_by_finger(words: str, expected: Shown) -> None:
    note = (
        "Middle and small fingers. FDP of both completely divided. Each sewn with a four-strand cruciate of "
        "3-0 Ethibond.\n"
    ) + words
    assert told(note, "gap", "gap_mm", "glide", "bulk") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("A2 - middle vented, small intact\n", {"middle A2": {"finding": "vented"}, "small A2": {"finding": "intact"}}),
        (
            "A4: small excised, middle intact\n",
            {"small A4": {"finding": "excised"}, "middle A4": {"finding": "intact"}},
        ),
        (
            "A1 - little released, long left intact\n",
            {"small A1": {"finding": "released"}, "middle A1": {"finding": "intact"}},
        ),
    ],
)
def test_a_pulley_answered_finger_by_finger(words: str, expected: Shown) -> None:
    note = "Middle and small fingers. FDP of both completely divided.\n" + words
    assert told(note, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Small and ring fingers. FDP of both completely divided.\nA3 - small vented distal third, ring excised\n",
            {"small A3": {"finding": "vented", "part": "distal"}, "ring A3": {"finding": "excised"}},
        ),
        (
            "Index and ring fingers. FDP of both completely divided.\nA4: index vented proximal third, ring excised\n",
            {"index A4": {"finding": "vented", "part": "proximal"}, "ring A4": {"finding": "excised"}},
        ),
    ],
)
def test_a_share_of_the_pulley_is_no_ring_finger(note: str, expected: Shown) -> None:
    assert told(note, "finding", "part", group="pulleys") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index and middle fingers. FDS of both completely divided.\n"
            "FDS: index repaired with 4-0 Prolene. Middle repaired with 5-0 Prolene.\n",
            {
                "index FDS": {"treatment": "repaired", "size": "4-0"},
                "middle FDS": {"treatment": "repaired", "size": "5-0"},
            },
        ),
        (
            "Small and ring fingers. FDP of both completely divided.\n"
            "FDP: ring sewn with 3-0 Ethibond. Small sewn with 4-0 Ethibond.\n",
            {
                "ring FDP": {"treatment": "repaired", "size": "3-0"},
                "small FDP": {"treatment": "repaired", "size": "4-0"},
            },
        ),
    ],
)
def test_a_tendon_labels_the_sentences_of_its_line(note: str, expected: Shown) -> None:
    assert told(note, "treatment", "size") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Middle and small fingers. FDP of both completely divided.\n"
            "Core, both: 3-0 Ethibond, four strands\n"
            "Epitendinous, both: 6-0 nylon\n",
            {
                "middle FDP": {"size": "3-0", "peripheral": "present", "peripheral_size": "6-0"},
                "small FDP": {"size": "3-0", "peripheral": "present", "peripheral_size": "6-0"},
            },
        ),
        (
            "Left thumb, FPL completely divided.\n"
            "6. Core: 4-0 Prolene, four strands\n"
            "7. Circumferential: 5-0 Prolene\n",
            {"thumb FPL": {"size": "4-0", "peripheral": "present", "peripheral_size": "5-0"}},
        ),
    ],
)
def test_what_a_label_says_its_thread_is_for(note: str, expected: Shown) -> None:
    assert told(note, "size", "peripheral", "peripheral_size") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        (
            "Middle moves freely. Small catches at A2.",
            {"middle FDP": {"glide": "free"}, "small FDP": {"glide": "catching"}},
        ),
        (
            "Small gapped on traction. Middle runs freely.",
            {"small FDP": {"gap": "seen"}, "middle FDP": {"glide": "free"}},
        ),
    ],
)
def test_short_names_that_open_a_sentence_are_fingers(words: str, expected: Shown) -> None:
    note = (
        "Middle and small fingers. FDP of both completely divided. Each sewn with a four-strand cruciate of "
        "3-0 Ethibond. "
    ) + words
    assert told(note, "gap", "glide") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        (
            "A2 pulley middle excised, A2 pulley small intact.\n",
            {"middle A2": {"finding": "excised"}, "small A2": {"finding": "intact"}},
        ),
        (
            "Pulleys: small A4 intact, middle A4 vented.\n",
            {"small A4": {"finding": "intact"}, "middle A4": {"finding": "vented"}},
        ),
        (
            "A4 pulley, small: vented.\nA4 pulley, middle: intact.\n",
            {"small A4": {"finding": "vented"}, "middle A4": {"finding": "intact"}},
        ),
    ],
)
def test_a_short_name_behind_the_word_pulley(words: str, expected: Shown) -> None:
    note = "Middle and small fingers. FDP of both completely divided.\n" + words
    assert told(note, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("Gap: small, 1 mm\n", {"ring FDP": {"gap": "seen", "gap_mm": 1.0}}),
        ("Gap: little, 2 mm\n", {"ring FDP": {"gap": "seen", "gap_mm": 2.0}}),
    ],
)
def test_words_that_only_look_like_fingers_of_a_label(words: str, expected: Shown) -> None:
    note = "Left ring finger. FDP completely divided, sewn with a four-strand cruciate of 3-0 Ethibond.\n" + words
    assert told(note, "gap", "gap_mm") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left hand. FDP completely divided in the index, the middle and the ring.",
            {
                "index FDP": {"extent": "complete"},
                "middle FDP": {"extent": "complete"},
                "ring FDP": {"extent": "complete"},
            },
        ),
        (
            "Left hand. FDP was cut through in the ring and the small.",
            {"ring FDP": {"extent": "complete"}, "small FDP": {"extent": "complete"}},
        ),
        (
            "Left hand. The index, the long and the little: FDS completely divided.",
            {
                "index FDS": {"extent": "complete"},
                "middle FDS": {"extent": "complete"},
                "small FDS": {"extent": "complete"},
            },
        ),
    ],
)
def test_short_names_in_a_row_are_fingers(note: str, expected: Shown) -> None:
    assert told(note, "extent") == expected


@pytest.mark.parametrize(
    "note",
    [
        "Ring finger, FDP completely divided.\n\nA2 opened?    No\nA4 excised?   No\n",
        "Small finger, FDP completely divided.\n\nA1 released?   N\n",
    ],
)
def test_a_question_answered_no(note: str) -> None:
    assert told(note, "finding", group="pulleys") == {}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index, ring and small fingers. FDP of all three completely divided, each sewn with four strands of "
            "3-0 Ethibond.\n"
            "\n"
            "Epitendinous\n"
            "I, R     5-0 nylon running\n"
            "S        6-0 nylon running\n",
            {
                "index FDP": {"peripheral": "present", "peripheral_size": "5-0"},
                "ring FDP": {"peripheral": "present", "peripheral_size": "5-0"},
                "small FDP": {"peripheral": "present", "peripheral_size": "6-0"},
            },
        ),
        (
            "Middle, ring and small fingers. FDP of all three completely divided, each sewn with four strands of "
            "3-0 Ethibond.\n"
            "\n"
            "Epitendinous\n"
            "M        6-0 Prolene running\n"
            "R + S    5-0 Prolene running\n",
            {
                "middle FDP": {"peripheral": "present", "peripheral_size": "6-0"},
                "ring FDP": {"peripheral": "present", "peripheral_size": "5-0"},
                "small FDP": {"peripheral": "present", "peripheral_size": "5-0"},
            },
        ),
    ],
)
def test_lines_headed_by_initials_of_fingers(note: str, expected: Shown) -> None:
    assert told(note, "peripheral", "peripheral_size") == expected
