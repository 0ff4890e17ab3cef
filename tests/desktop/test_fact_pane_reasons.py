"""How the pane below the list tells the reasons to look twice at the fact in hand."""

from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from notereader.desktop.fact_pane import ReadingSide
from notereader.desktop.look import Look
from notereader.desktop.rows import Row, items_of
from notereader.record import Address, Fact, Note, Record, Review


def told(qtbot: QtBot, look: Look, *reasons: str) -> list[str]:
    record = Record(note=Note.of("Four strands."), review=Review(reader_version="0"))
    record.ensure(Address("repairs", "ring", "FDP"))["strands"] = Fact(value=4, look_twice=list(reasons))
    side = ReadingSide(look, {"confirm": "Confirm"}, {"confirm": "Enter"})
    qtbot.addWidget(side)
    side.show_row(next(item for item in items_of(record) if isinstance(item, Row) and item.fact is not None))
    return next(label.text() for label in side.findChildren(QLabel) if "Look twice" in label.text()).split("\n")


def test_one_reason_stands_behind_its_title(qtbot: QtBot, look: Look) -> None:
    assert told(qtbot, look, "it is a long sentence") == ["Look twice: it is a long sentence"]


def test_several_reasons_stand_in_a_list_below_it(qtbot: QtBot, look: Look) -> None:
    title, *lines = told(qtbot, look, "it is a long sentence", "it belongs to no finger")
    assert title == "Look twice:"
    assert [line.strip(" \N{BULLET}") for line in lines] == ["it is a long sentence", "it belongs to no finger"]
