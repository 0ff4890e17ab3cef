"""The history of a case: who did what, when, from what to what."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QStandardItem, QStandardItemModel
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QHeaderView, QTableView, QVBoxLayout, QWidget

from notereader.desktop.differences import said
from notereader.desktop.labels import plain_tip
from notereader.record import Fact

if TYPE_CHECKING:
    from notereader.casebook import HistoryLine

_HEADINGS = ["When", "Who", "What", "From", "To", "Remark"]


class HistoryDialog(QDialog):
    """A table of everything that was done, last first. Nothing can be changed here."""

    def __init__(self, lines: "list[HistoryLine]", parent: QWidget | None = None):
        super().__init__(parent)
        self.setWindowTitle("History of this case")
        self.resize(980, 520)
        self.model = QStandardItemModel(0, len(_HEADINGS), self)
        self.model.setHorizontalHeaderLabels(_HEADINGS)
        for line in reversed(lines):
            self.model.appendRow([_item(words) for words in cells_of(line)])
        table = QTableView()
        table.setModel(self.model)
        table.setAccessibleName("History")
        table.setEditTriggers(QTableView.EditTrigger.NoEditTriggers)
        table.setSelectionBehavior(QTableView.SelectionBehavior.SelectRows)
        table.setTabKeyNavigation(False)
        table.setShowGrid(False)
        table.verticalHeader().hide()
        table.verticalHeader().setAccessibleName("Numbers of the rows")
        table.horizontalHeader().setAccessibleName("Headings of the columns")
        table.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        table.horizontalHeader().setStretchLastSection(True)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.addWidget(table)
        layout.addWidget(buttons)
        table.setFocus()


def cells_of(line: "HistoryLine") -> list[str]:
    """Return the words of one line: when, who, what, from, to, remark."""
    when = f"{line.when.astimezone():%Y-%m-%d %H:%M:%S}"
    who = line.who or "notereader"
    if line.address is None:
        return [when, who, f"case {line.kind}", "", "", line.note]
    before, after = (_content(line, side) for side in (line.before, line.after))
    return [when, who, line.address.words(), before, after, line.note]


def _content(line: "HistoryLine", content: object) -> str:
    assert line.address is not None
    if content is None or isinstance(content, Fact):
        return said(line.address, content)
    assert isinstance(content, dict)
    facts = [said(line.address.field_of(name), fact) for name, fact in content.items()]
    return "; ".join(facts) or "nothing"


def _item(words: str) -> QStandardItem:
    item = QStandardItem(words)
    item.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable)
    item.setToolTip(plain_tip(words))
    return item
