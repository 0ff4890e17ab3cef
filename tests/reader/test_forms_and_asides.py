"""Boxes ticked under a question, asides about an earlier operation, earlier wordings quoted to correct them."""

import pytest
from reader_sentences import told

FORM = """Small and ring fingers, left.

TENDONS (tick if divided; write repair)
[ ] FCR   ________
[X] FCU   modified Kessler 2-0 Ethibond
FDS  [ ] index [ ] middle [X] ring [ ] small
FDP  [ ] index [ ] middle [ ] ring [X] small

Skin 5-0 nylon.
"""


def test_boxes_ticked_as_divided() -> None:
    shown = told(FORM, "extent")
    assert shown == {
        "FCU": {"extent": "complete"},
        "ring FDS": {"extent": "complete"},
        "small FDP": {"extent": "complete"},
    }


def test_boxes_ticked_as_intact_stand_behind_their_option() -> None:
    note = "Thumb, left. FPL completely divided.\n\nPulleys (tick if intact):   A1 [ ]   oblique [x]   A2 [x]\n"
    assert told(note, group="pulleys") == {"thumb oblique": {"finding": "intact"}, "thumb A2": {"finding": "intact"}}


@pytest.mark.parametrize(
    "line",
    ["TENDONS (tick if divided)\n[ ] FDP ring\n", "Please tick all boxes that apply.\n", "Tick if divided: ____\n"],
)
def test_nothing_ticked_says_nothing(line: str) -> None:
    assert told("Ring finger explored.\n\n" + line) == {}


@pytest.mark.parametrize(
    ("sentence", "expected"),
    [
        (
            "A2, which had already been opened at the first operation, was vented over its distal third; A4 is intact.",
            {"index A2": "vented", "index A4": "intact"},
        ),
        ("The A2 reconstructed in the first stage was solid and was preserved.", {"index A2": "intact"}),
        ("A4, previously vented elsewhere, was excised.", {"index A4": "excised"}),
        ("A4 was vented at the first operation.", {}),
        ("At the first operation A2 was left intact, and A4 was vented.", {}),
    ],
)
def test_an_aside_about_an_earlier_operation(sentence: str, expected: dict[str, str]) -> None:
    shown = told("Index finger, left. " + sentence, "finding", group="pulleys")
    assert {name: facts["finding"] for name, facts in shown.items()} == expected


@pytest.mark.parametrize(
    ("addendum", "expected"),
    [
        (
            'The FDP has a split of about 10 % of its width. My entry "FDP intact" is to be read accordingly.',
            {"extent": "partial", "extent_percent": 10},
        ),
        ('FDP cut for 20 % of its width. "FDP intact" was a slip.', {"extent": "partial", "extent_percent": 20}),
    ],
)
def test_an_earlier_wording_quoted_to_correct_it(addendum: str, expected: dict[str, object]) -> None:
    note = f"Middle finger, left. FDP intact.\n\nADDENDUM\n{addendum}\n"
    assert told(note, "extent", "extent_percent") == {"middle FDP": expected}


def test_a_quoted_correction_counts() -> None:
    note = 'Middle finger, left. FDP completely divided.\n\nADDENDUM\nFDP: should read "partially divided".\n'
    assert told(note, "extent") == {"middle FDP": {"extent": "partial"}}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("THUMB\nTendon: FPL\n  Zone: II\n  Cut: complete\n", {"thumb FPL": {"extent": "complete"}}),
        ("INDEX\nTendon: FDS\n  Cut: explored, intact\n", {"index FDS": {"extent": "intact"}}),
        ("RING\nTendon: FDP\n  Extent: partial\n", {"ring FDP": {"extent": "partial"}}),
    ],
)
def test_how_far_a_tendon_is_cut_answers_a_label(note: str, expected: dict[str, dict[str, object]]) -> None:
    assert told(note, "extent") == expected


@pytest.mark.parametrize(
    "words",
    [
        "Cut: partial, 50%\n  Core: none\n  Epitendinous: 5-0 Prolene, running\n",
        "Cut: partial\n  Core: -\n  Epitendinous: running 5-0 Prolene\n",
    ],
)
def test_a_partial_cut_with_a_peripheral_suture_alone_is_repaired(words: str) -> None:
    found = told("INDEX\nTendon: FDP\n  " + words, "treatment", "peripheral_size", "strands", "size")
    assert found == {"index FDP": {"treatment": "repaired", "peripheral_size": "5-0"}}


@pytest.mark.parametrize("label", ["Condition", "State", "Extent"])
def test_a_second_label_of_a_line_is_answered(label: str) -> None:
    note = (
        f"SMALL FINGER\n  FDP    Zone: II     {label}: complete, ends ragged     Treatment: repaired\n"
        f"RING FINGER\n  FDP    Zone:        {label}: intact        Treatment:\n"
    )
    assert told(note, "extent") == {"small FDP": {"extent": "complete"}, "ring FDP": {"extent": "intact"}}


@pytest.mark.parametrize(
    "words",
    ["Superficialis not worth saving so excised.", "The superficialis could not be saved so it was excised."],
)
def test_not_worth_saving_so_excised(words: str) -> None:
    note = "Index finger. FDP completely divided. " + words
    assert told(note, "treatment") == {"index FDS": {"treatment": "excised"}}


@pytest.mark.parametrize("answers", ["Gap: none        Glide: free", "Gap: none    Glide: runs freely"])
def test_none_that_answers_a_label_is_not_none_of_them(answers: str) -> None:
    note = (
        "Small and ring fingers. FDP of the small finger divided, repaired with a 3-0 cruciate. FDS of the ring finger "
        "partly cut, its edge trimmed.\nTABLE TEST (small FDP)\n  Method: passive\n  "
    ) + answers
    assert told(note, "gap", "glide") == {"small FDP": {"gap": "none", "glide": "free"}}


def test_an_empty_cell_under_a_deed_tells_nothing() -> None:
    note = (
        "THUMB\nFPL                 : cut through\nRepair              : four-strand cruciate, 3-0 PDS\n"
        "Graft (if any)      :\nEpitendinous        : running 6-0 Prolene\n"
    )
    assert told(note, "treatment") == {"thumb FPL": {"treatment": "repaired"}}


@pytest.mark.parametrize(
    "words", ["Defect of 10 mm after trimming.", "A defect of 8 mm was left after it was trimmed."]
)
def test_the_defect_of_a_nerve_is_no_tendon_trimmed(words: str) -> None:
    note = "Thumb. FPL cut through and repaired with 3-0 PDS. Radial digital nerve of the thumb cut. " + words
    assert told(note, "trimmed_mm") == {}
