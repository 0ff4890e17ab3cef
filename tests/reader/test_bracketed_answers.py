"""A standard text with its blanks filled in between brackets: 'using a [6]-strand [modified Savage] technique'."""

import pytest
from reader_sentences import told

from notereader.reader.text.bracketed_answers import without_answer_brackets

FILLED = [
    (
        "Laceration of the [index] finger in zone [2]\nThe FDP was [completely] divided. It was repaired using a "
        "[6]-strand [modified Savage] technique with [4-0 FiberWire], with [locking] loops.",
        {
            "zone": "II",
            "extent": "complete",
            "strands": 6,
            "stitch": "modified savage",
            "size": "4-0",
            "hold": "locking",
        },
    ),
    (
        "The FDP of the [index] finger was [completely] divided and repaired with a [4]-strand [cruciate] of "
        "[3-0 Ethibond]. The finger was moved through a full passive arc with [no] triggering and [no] gapping.",
        {"extent": "complete", "strands": 4, "stitch": "cruciate", "size": "3-0", "gap": "none"},
    ),
]


@pytest.mark.parametrize(("text", "facts"), FILLED)
def test_what_was_filled_in_is_read(text: str, facts: dict[str, object]) -> None:
    found = told(text)["index FDP"]
    assert facts.items() <= found.items()


@pytest.mark.parametrize(
    "text",
    [
        "Index FDP repaired [see sketch]. Zone was told [sic] as II.",
        "Repair of [x] FDP, of [ ] FDS, of [x] nerve, of [ ] artery, of [X] skin.",
        "[x] FDP [ ] FDS\n[x] index [ ] middle\n[ ] ring [x] small",
        "Suture of [***] with a [***] core of [***] and [***] epitendinous.",
    ],
)
def test_marks_and_remarks_keep_their_brackets(text: str) -> None:
    assert without_answer_brackets(text) == text
