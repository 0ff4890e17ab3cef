"""A sheet copied with its margin, or with every line end doubled, says what it said without them."""

import re

import pytest

from notereader.reader import read
from notereader.record import dump_record, load_record

_NOTE = """Operation: repair of FDP, right ring finger

        FDP          FDS        A2
Middle  intact       intact     intact
Ring    complete     partial    vented

RING FINGER
Four-strand cruciate of 3-0 Ethibond. No gap.

Plan: splint for six weeks.
Signed: the surgeon
"""


def _facts(text: str) -> dict[tuple[object, ...], tuple[object, list[str | None]]]:
    return {
        (p.group, p.digit, p.part, p.side, p.field): (f.value, [" ".join((e.exact or "").split()) for e in f.evidence])
        for p, f in read(text).walk()
    }


@pytest.mark.parametrize("margin", [" ", "    ", "\t", "  \t"])
@pytest.mark.parametrize("lead", ["", "\n\n"])
def test_a_margin_changes_nothing(margin: str, lead: str) -> None:
    assert _facts(lead + re.sub("(?m)^", margin, _NOTE)) == _facts(_NOTE)


def test_doubled_line_ends_change_nothing() -> None:
    assert _facts(_NOTE.replace("\n", "\n\n")) == _facts(_NOTE)


def test_quotes_are_of_the_sheet_as_it_stands() -> None:
    text = re.sub("(?m)^", "    ", _NOTE.replace("\n", "\n\n"))
    for _, fact in read(text).walk():
        for e in fact.evidence:
            assert e.span is None or text[e.span[0] : e.span[1]] == e.exact


@pytest.mark.parametrize(
    "text",
    [
        "  Operation: carpal tunnel release, left.\n  The retinaculum was divided. No tendon was cut.\n",
        "Operation: carpal tunnel release, left. The retinaculum was divided.\nCorrection: for left read right.\n",
        "Op: carpal tunnel release\n\nSide: left\n\n\n\nRetinaculum: divided\n\nA\n\nB\n\nC\n\nD\n\nE\n\nF\n",
    ],
)
def test_remarks_quote_the_sheet_as_it_stands(text: str) -> None:
    record = read(text)
    assert any(e.exact for remark in record.remarks for e in remark.evidence)
    assert load_record(dump_record(record)) == record
    for e in (e for remark in record.remarks for e in remark.evidence):
        assert e.span is None or text[e.span[0] : e.span[1]] == e.exact
