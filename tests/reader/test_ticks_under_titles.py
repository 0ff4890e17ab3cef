"""Boxes of a form ticked under the titles of their columns: the title is what is so of the row."""

import pytest
from reader_sentences import Shown, told


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        (
            "PULLEY     preserved   vented   excised\nA2         [ ]         [x]      [ ]\nA4         [x]"
            "         [ ]      [ ]\n",
            {"middle A2": {"finding": "vented"}, "middle A4": {"finding": "intact"}},
        ),
        (
            "Pulleys    intact   injured   repaired\nA1         [x]      [ ]       [ ]\nA3         [ ]      [x]"
            "       [ ]\nA4         [ ]      [ ]       [x]\n",
            {
                "middle A1": {"finding": "intact"},
                "middle A3": {"finding": "injured"},
                "middle A4": {"finding": "repaired"},
            },
        ),
        (
            "PULLEY     intact   vented   reconstructed\nA2         ( )      ( )      (x)\n",
            {"middle A2": {"finding": "reconstructed"}},
        ),
    ],
)
def test_pulleys_ticked_under_titles(words: str, expected: Shown) -> None:
    note = "Left middle finger. FDP completely divided, joined with a four-strand cruciate of 3-0 Ethibond.\n\n" + words
    assert told(note, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        (
            "PULLEY     whole    vented   divided\nA3         [ ]      [ ]      [x]\n",
            {"middle A3": {"finding": "released"}},
        ),
        (
            "Pulleys    divided   vented   intact\nA1         [x]       [ ]      [ ]\nA2         [ ]       [x]"
            "      [ ]\n",
            {"middle A1": {"finding": "released"}, "middle A2": {"finding": "vented"}},
        ),
    ],
)
def test_divided_beside_a_column_for_vented_is_divided_through(words: str, expected: Shown) -> None:
    note = "Left middle finger. FDP completely divided, joined with a four-strand cruciate of 3-0 Ethibond.\n\n" + words
    assert told(note, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger.\n"
            "\n"
            "TENDON     intact   partial   complete\n"
            "FDP        [ ]      [ ]       [x]\n"
            "FDS        [x]      [ ]       [ ]\n",
            {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "intact"}},
        ),
        (
            "Left ring finger.\n\nTendon     divided   uninjured\nFDS        ( )       (x)\nFDP        (x)       ( )\n",
            {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "intact"}},
        ),
        (
            "Left ring finger. FDP and FDS completely divided.\n"
            "\n"
            "TENDON     repaired   excised   left\n"
            "FDP        [x]        [ ]       [ ]\n"
            "FDS        [ ]        [x]       [ ]\n",
            {
                "ring FDP": {"extent": "complete", "treatment": "repaired"},
                "ring FDS": {"extent": "complete", "treatment": "excised"},
            },
        ),
    ],
)
def test_tendons_ticked_under_titles(note: str, expected: Shown) -> None:
    assert told(note, "extent", "treatment") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        (
            "           A2     A4\nintact     [ ]    [x]\nvented     [x]    [ ]\n",
            {"middle A2": {"finding": "vented"}, "middle A4": {"finding": "intact"}},
        ),
        (
            "           A1     A3\nrepaired   [ ]    [x]\nintact     [x]    [ ]\n",
            {"middle A1": {"finding": "intact"}, "middle A3": {"finding": "repaired"}},
        ),
    ],
)
def test_pulleys_as_titles_over_what_became_of_a_pulley(words: str, expected: Shown) -> None:
    note = "Left middle finger. FDP completely divided, joined with a four-strand cruciate of 3-0 Ethibond.\n\n" + words
    assert told(note, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger.\n\nTENDON     repaired   not repaired\nFDS        [ ]        [x]\n",
            {"ring FDS": {"treatment": "left"}},
        ),
        (
            "Left ring finger.\n\nTENDON     intact   not seen\nFDS        [ ]      [x]\n",
            {},
        ),
    ],
)
def test_not_repaired_or_not_seen_as_a_title(note: str, expected: Shown) -> None:
    assert told(note, "extent", "treatment") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        (
            "PULLEY     preserved   vented   excised\nA2         [ ]         [ ]      [ ]\nA4         [ ]"
            "         [ ]      [ ]\n",
            {},
        ),
        (
            "Pulleys    intact   vented   divided\nA2         [ ]      [ ]      [ ]\nA4         [ ]      [x]"
            "      [ ]\n",
            {"middle A4": {"finding": "vented"}},
        ),
    ],
)
def test_rows_without_a_tick_stay_unread(words: str, expected: Shown) -> None:
    note = "Left middle finger. FDP completely divided, joined with a four-strand cruciate of 3-0 Ethibond.\n\n" + words
    assert told(note, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("Bulky:   [ ] yes   [ ] no        Tension:   none\n", {"middle FDP": {"tension": "none"}}),
        ("Gap:   [ ] yes   [ ] no        Bulk:   none\n", {"middle FDP": {"bulk": "none"}}),
    ],
)
def test_empty_boxes_before_the_next_label_take_no_answer_from_it(words: str, expected: Shown) -> None:
    note = "Left middle finger. FDP completely divided, joined with a four-strand cruciate of 3-0 Ethibond.\n\n" + words
    assert told(note, "bulk", "tension", "gap") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right hand.\n"
            "\n"
            ".............. INDEX ............ RING\n"
            "FDP            through            intact\n"
            "FDS            intact             through\n",
            {
                "index FDP": {"extent": "complete"},
                "index FDS": {"extent": "intact"},
                "ring FDP": {"extent": "intact"},
                "ring FDS": {"extent": "complete"},
            },
        ),
        (
            "Right hand.\n"
            "\n"
            "........ MIDDLE ........ SMALL\n"
            "FDP      divided         divided\n"
            "FDS      divided         intact\n",
            {
                "middle FDP": {"extent": "complete"},
                "middle FDS": {"extent": "complete"},
                "small FDP": {"extent": "complete"},
                "small FDS": {"extent": "intact"},
            },
        ),
    ],
)
def test_dots_that_lead_to_titles_are_space(note: str, expected: Shown) -> None:
    assert told(note, "extent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "CHECK (tick one)\n"
            "                intact   part   whole   not seen\n"
            "  FDS index       x\n"
            "  FDP ring                x\n"
            "  FDP small                       x\n"
            "  FDS small                                x\n",
            {"index FDS": {"extent": "intact"}, "ring FDP": {"extent": "partial"}, "small FDP": {"extent": "complete"}},
        ),
        (
            "Structure       uncut    partial    divided\n"
            "FDP index         x\n"
            "FDP middle                              x\n",
            {"index FDP": {"extent": "intact"}, "middle FDP": {"extent": "complete"}},
        ),
        ("Tendon          whole    part     cut\nFDP index         x\n", {}),  # 'whole' may be either end
        ("Structure       uncut    partial    divided\nFDP index         x                     x\n", {}),
    ],
)
def test_crosses_under_titles_where_no_box_is_drawn(note: str, expected: Shown) -> None:
    assert told("Left hand.\n\n" + note, "extent") == expected


def test_a_cross_under_a_title_tells_of_a_nerve() -> None:
    rows = "  median nerve    x\n  ulnar nerve                     x\n"
    note = "Left hand.\n\n                intact   part   whole\n" + rows
    expected = {"median nerve": {"extent": "intact"}, "ulnar nerve": {"extent": "complete"}}
    assert told(note, "extent", group="injuries") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Structure     intact   partial   complete\n"
            "FDP index     [x]      [ ]       [ ]\n"
            "FDP middle    [ ]      [ ]       [x]\n",
            {"index FDP": {"extent": "intact"}, "middle FDP": {"extent": "complete"}},
        ),
        (
            "Structure     divided   uninjured\nFDS ring      (x)       ( )\nFDP small     ( )       (x)\n",
            {"ring FDS": {"extent": "complete"}, "small FDP": {"extent": "intact"}},
        ),
    ],
)
def test_a_box_is_of_the_finger_that_its_own_row_names(note: str, expected: Shown) -> None:
    assert told("Left hand.\n\n" + note, "extent") == expected
