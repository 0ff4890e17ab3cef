"""Whom 'both', 'each', 'either' and 'all three' mean: the tendons spoken of, not every tendon sewn."""

import pytest
from reader_sentences import Shown, each, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index FDP, index FDS and ring FDP completely divided. The index FDS was sewn with two strands of 4-0 "
            "Prolene. Each profundus was sewn with six strands of 3-0 Ethibond. Both were then finished with a "
            "running 6-0 nylon.",
            {
                "index FDP": {"peripheral": "present", "peripheral_size": "6-0"},
                "ring FDP": {"peripheral": "present", "peripheral_size": "6-0"},
            },
        ),
        (
            "Index and ring fingers. FDS of the index completely divided. FDP of both completely divided. The "
            "index superficialis was sewn with two strands of 4-0 Prolene. Both profundus tendons were sewn with "
            "six strands of 3-0 Ethibond. Both were finished with a running 5-0 Prolene.",
            {
                "index FDP": {"peripheral": "present", "peripheral_size": "5-0"},
                "ring FDP": {"peripheral": "present", "peripheral_size": "5-0"},
            },
        ),
    ],
)
def test_both_are_the_two_deep_flexors(note: str, expected: Shown) -> None:
    assert told(note, "peripheral", "peripheral_size") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index FDP, index FDS and ring FDP completely divided, each sewn with four strands of 3-0 Ethibond. A "
            "running 6-0 nylon went round all three.",
            {
                "index FDP": {"peripheral": "present", "peripheral_size": "6-0"},
                "index FDS": {"peripheral": "present", "peripheral_size": "6-0"},
                "ring FDP": {"peripheral": "present", "peripheral_size": "6-0"},
            },
        ),
        (
            "Middle and small fingers. FDP of both completely divided. Both were sewn with four strands of 3-0 "
            "Ethibond. All repairs were finished with a running 5-0 Prolene.",
            {
                "middle FDP": {"peripheral": "present", "peripheral_size": "5-0"},
                "small FDP": {"peripheral": "present", "peripheral_size": "5-0"},
            },
        ),
    ],
)
def test_all_are_every_tendon_sewn(note: str, expected: Shown) -> None:
    assert told(note, "peripheral", "peripheral_size") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index and ring fingers. FDS of the index completely divided. FDP of both completely divided. The "
            "index FDS was sewn with two strands of 4-0 Prolene. Both FDPs were sewn with four strands of 3-0 "
            "Ethibond. No gap was seen in either.",
            {"index FDP": {"gap": "none"}, "ring FDP": {"gap": "none"}},
        ),
        (
            "Middle and small fingers. FDP of both completely divided. Both were sewn with four strands of 3-0 "
            "Ethibond. Each of them closed without a gap.",
            {"middle FDP": {"gap": "none"}, "small FDP": {"gap": "none"}},
        ),
        (
            "Middle and small fingers. FDP of both completely divided. Both were sewn with four strands of 3-0 "
            "Ethibond. Neither gapped on passive extension.",
            {"middle FDP": {"gap": "none"}, "small FDP": {"gap": "none"}},
        ),
    ],
)
def test_each_of_them_and_either(note: str, expected: Shown) -> None:
    assert told(note, "gap") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index, middle and ring fingers. FDP completely divided in all three. FDS intact in all three.",
            {
                "index FDP": {"extent": "complete"},
                "index FDS": {"extent": "intact"},
                "middle FDP": {"extent": "complete"},
                "middle FDS": {"extent": "intact"},
                "ring FDP": {"extent": "complete"},
                "ring FDS": {"extent": "intact"},
            },
        ),
        (
            "Wounds of the ring and small fingers. FDP of each cut through. FDS of each intact.",
            {
                "ring FDP": {"extent": "complete"},
                "ring FDS": {"extent": "intact"},
                "small FDP": {"extent": "complete"},
                "small FDS": {"extent": "intact"},
            },
        ),
        (
            "Wounds of the index and small fingers. The profundus was divided completely in both fingers; the "
            "superficialis was intact in both.",
            {
                "index FDP": {"extent": "complete"},
                "index FDS": {"extent": "intact"},
                "small FDP": {"extent": "complete"},
                "small FDS": {"extent": "intact"},
            },
        ),
    ],
)
def test_in_all_three_and_of_each(note: str, expected: Shown) -> None:
    assert told(note, "extent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "All three FDP were cut through: index, middle and ring.",
            {
                "index FDP": {"extent": "complete"},
                "middle FDP": {"extent": "complete"},
                "ring FDP": {"extent": "complete"},
            },
        ),
        (
            "Both profundus tendons were completely divided. These were the ring and the small finger.",
            {"ring FDP": {"extent": "complete"}, "small FDP": {"extent": "complete"}},
        ),
    ],
)
def test_counted_tendons_before_any_finger(note: str, expected: Shown) -> None:
    assert told(note, "extent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. Both FDP and FDS were completely divided.",
            {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "complete"}},
        ),
        (
            "Small and ring fingers. Both FDP and FDS of the small finger were cut through. The ring finger had a "
            "skin wound only.",
            {"small FDP": {"extent": "complete"}, "small FDS": {"extent": "complete"}},
        ),
    ],
)
def test_both_tendons_of_one_finger(note: str, expected: Shown) -> None:
    assert told(note, "extent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left hand, saw. The FDP and FDS of all the fingers were completely divided. The thumb was spared.",
            {
                "index FDP": {"extent": "complete"},
                "index FDS": {"extent": "complete"},
                "middle FDP": {"extent": "complete"},
                "middle FDS": {"extent": "complete"},
                "ring FDP": {"extent": "complete"},
                "ring FDS": {"extent": "complete"},
                "small FDP": {"extent": "complete"},
                "small FDS": {"extent": "complete"},
            },
        ),
        (
            "Right hand, glass door. The FDS of all four fingers was cut through.",
            {
                "index FDS": {"extent": "complete"},
                "middle FDS": {"extent": "complete"},
                "ring FDS": {"extent": "complete"},
                "small FDS": {"extent": "complete"},
            },
        ),
    ],
)
def test_tendons_of_all_fingers(note: str, expected: Shown) -> None:
    assert told(note, "extent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Middle and small fingers. FDP of both completely divided. Both A4 pulleys were vented.",
            {"middle A4": {"finding": "vented"}, "small A4": {"finding": "vented"}},
        ),
        (
            "Middle and small fingers. FDP of both completely divided. A2 preserved in both. A4 excised in the "
            "small finger.",
            {"middle A2": {"finding": "intact"}, "small A2": {"finding": "intact"}, "small A4": {"finding": "excised"}},
        ),
        (
            "Index, middle and ring fingers. FDP of all three completely divided. A2 was intact in all three.",
            {"index A2": {"finding": "intact"}, "middle A2": {"finding": "intact"}, "ring A2": {"finding": "intact"}},
        ),
        (
            "Index, middle and ring fingers. FDP of all three completely divided. A1 was released in each.",
            {
                "index A1": {"finding": "released"},
                "middle A1": {"finding": "released"},
                "ring A1": {"finding": "released"},
            },
        ),
    ],
)
def test_pulleys_of_both_and_all_three(note: str, expected: Shown) -> None:
    assert told(note, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        (
            "A1 released in the middle finger and A2 intact in both.",
            {
                "middle A1": {"finding": "released"},
                "middle A2": {"finding": "intact"},
                "small A2": {"finding": "intact"},
            },
        ),
        (
            "A4 vented in the small finger, A2 intact in both.",
            {"small A4": {"finding": "vented"}, "middle A2": {"finding": "intact"}, "small A2": {"finding": "intact"}},
        ),
    ],
)
def test_in_both_is_of_the_pulley_beside_it(words: str, expected: Shown) -> None:
    note = "Middle and small fingers. FDP of both completely divided. " + words
    assert told(note, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        (
            "On traction the ring FDP gaps 1 mm. The others show no gap.",
            {"ring FDP": {"gap": "seen", "gap_mm": 1.0}, "index FDP": {"gap": "none"}, "middle FDP": {"gap": "none"}},
        ),
        (
            "Tested: index gaps 2 mm. Others no gap.",
            {"index FDP": {"gap": "seen", "gap_mm": 2.0}, "ring FDP": {"gap": "none"}, "middle FDP": {"gap": "none"}},
        ),
    ],
)
def test_the_rest_of_the_repairs(words: str, expected: Shown) -> None:
    note = (
        "Index, middle and ring fingers. FDP of all three completely divided, each sewn with four strands of "
        "3-0 Ethibond. "
    ) + words
    assert told(note, "gap", "gap_mm") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("The small finger gapped on traction. The rest of the wound was closed.", {"small FDP": {"gap": "seen"}}),
        (
            "The middle finger gapped on traction. The remainder of the skin was closed with no gap.",
            {"middle FDP": {"gap": "seen"}},
        ),
    ],
)
def test_the_rest_of_something_else(words: str, expected: Shown) -> None:
    note = (
        "Middle and small fingers. FDP of both completely divided. Each was sewn with four strands of 3-0 Ethibond. "
    ) + words
    assert told(note, "gap") == expected


@pytest.mark.parametrize(
    "words",
    [
        "Both were sewn with four strands of 3-0 Ethibond. Tension on neither.",
        "Both were sewn with six strands of 4-0 Prolene. There was tension in neither repair.",
    ],
)
def test_neither_is_under_tension(words: str) -> None:
    note = "Middle and small fingers. FDP of both completely divided. " + words
    assert told(note, "tension") == {"middle FDP": {"tension": "none"}, "small FDP": {"tension": "none"}}


@pytest.mark.parametrize(
    "text",
    [
        "No gap at index or middle, both pass smoothly beneath what is left of the sheath.",
        "No gap in the index and middle; both ran freely.",
        "No gap at index or middle, both glided freely.",
        "Passive extension of every finger: no gap at index or middle, both pass smoothly.",
    ],
)
def test_both_of_the_two_fingers_just_named(text: str) -> None:
    note = f"Index, middle and ring. FDP of all cut through and repaired. {text}"
    assert each(note, "glide") == {"index FDP": "free", "middle FDP": "free"}
