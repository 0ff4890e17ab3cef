"""The list of cases: state, date, digits, tendons; search in title and text."""

from datetime import datetime
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt, QTimer, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QHeaderView,
    QLineEdit,
    QTableView,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from notereader.desktop.choice_box import ChoiceBox
from notereader.desktop.labels import plain_label, plain_tip

if TYPE_CHECKING:
    from notereader.casebook import CaseLine

_HEADINGS = ("Case", "State", "Operation", "Digits", "Tendons", "Open facts", "Last change")
_STATES = ("all cases", "imported", "in work", "confirmed")
# Typing in the search box asks the casebook only once the fingers rest.
# A title longer than this, in pixels, is cut in the list and whole in its tip.
_WIDEST = 560
_REST_MS = 200


class CasesModel(QAbstractTableModel):
    """Lines of the casebook as a table."""

    def __init__(self, parent: QObject | None = None):
        super().__init__(parent)
        self._lines: list[CaseLine] = []

    def show(self, lines: "list[CaseLine]") -> None:
        """Show these lines."""
        self.beginResetModel()
        self._lines = lines
        self.endResetModel()

    def line(self, row: int) -> "CaseLine":
        """Return the case of a row."""
        return self._lines[row]

    def rowCount(self, parent: QModelIndex | QPersistentModelIndex = QModelIndex()) -> int:  # noqa: N802, B008
        """Return how many cases there are."""
        return 0 if parent.isValid() else len(self._lines)

    def columnCount(self, parent: QModelIndex | QPersistentModelIndex = QModelIndex()) -> int:  # noqa: N802, B008
        """Return how many columns there are."""
        return 0 if parent.isValid() else len(_HEADINGS)

    def headerData(  # noqa: N802
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Return the name of a column."""
        across = orientation == Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole
        return _HEADINGS[section] if across else None

    def data(self, index: QModelIndex | QPersistentModelIndex, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return the words of a cell; for a screen reader the first cell says the whole line."""
        if not index.isValid():
            return None
        cells = _cells(self._lines[index.row()])
        if role == Qt.ItemDataRole.DisplayRole:
            return cells[index.column()]
        if role == Qt.ItemDataRole.ToolTipRole:
            return plain_tip(cells[index.column()])
        if role == Qt.ItemDataRole.AccessibleTextRole:
            named = [f"{name}: {cell}" for name, cell in zip(_HEADINGS, cells, strict=True) if cell]
            return "; ".join(named) if index.column() == 0 else cells[index.column()]
        return None


class CaseList(QWidget):
    """Search box, state and table. It asks for cases by `searched` and hands out the chosen one by `chosen`."""

    searched = Signal(str, object)
    chosen = Signal(int, str)

    def __init__(self, parent: QWidget | None = None):
        super().__init__(parent)
        self._model = CasesModel(self)
        self._search = QLineEdit()
        self._search.setPlaceholderText("Search in titles and notes")
        self._search.setAccessibleName("Search in titles and notes")
        self._search.setClearButtonEnabled(True)
        for button in self._search.findChildren(QToolButton):
            button.setAccessibleName("Clear the search")
        self._state = ChoiceBox()
        self._state.addItems(_STATES)
        self._state.setAccessibleName("State of the cases listed")
        self.table = QTableView()
        self.table.setModel(self._model)
        self.table.setAccessibleName("Cases")
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.table.setShowGrid(False)
        self.table.setTabKeyNavigation(False)
        self.table.verticalHeader().hide()
        self.table.verticalHeader().setAccessibleName("Numbers of the rows")
        self.table.horizontalHeader().setAccessibleName("Headings of the columns")
        self.table.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        self.table.horizontalHeader().setMaximumSectionSize(_WIDEST)
        self.table.horizontalHeader().setStretchLastSection(True)
        self.table.doubleClicked.connect(self._choose)
        for keys in ("Return", "Enter"):
            shortcut = QShortcut(QKeySequence(keys), self.table)
            shortcut.setContext(Qt.ShortcutContext.WidgetShortcut)
            shortcut.activated.connect(self._choose)
        self._empty = plain_label(part="muted")
        top = QHBoxLayout()
        top.addWidget(self._search, 1)
        top.addWidget(self._state)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(top)
        layout.addWidget(self.table, 1)
        layout.addWidget(self._empty)
        self._rest = QTimer(self, interval=_REST_MS, singleShot=True)
        self._rest.timeout.connect(self.ask)
        self._search.textChanged.connect(self._rest.start)
        self._state.currentIndexChanged.connect(self.ask)

    def ask(self) -> None:
        """Ask for the cases that the search box and the state want."""
        state = self._state.currentText()
        self.searched.emit(self._search.text(), None if state == _STATES[0] else state)

    def show_lines(self, lines: "list[CaseLine]") -> None:
        """Show these cases."""
        self._model.show(lines)
        searching = bool(self._search.text()) or self._state.currentIndex() > 0
        self.setVisible(bool(lines) or searching)
        self.table.setVisible(bool(lines))
        self._empty.setText("" if lines else "No case holds these words.")
        self._empty.setVisible(not lines)
        if lines:
            self.table.selectRow(0)

    def _choose(self) -> None:
        index = self.table.currentIndex()
        if index.isValid():
            line = self._model.line(index.row())
            self.chosen.emit(line.id, line.title)


def _cells(line: "CaseLine") -> tuple[str, ...]:
    return (
        line.title,
        line.state,
        line.operation_date.isoformat() if line.operation_date else "",
        ", ".join(line.digits),
        ", ".join(line.tendons),
        str(line.facts_open) if line.facts_open else "none",
        _when(line.changed_at),
    )


def _when(moment: datetime) -> str:
    return f"{moment.astimezone():%Y-%m-%d %H:%M}"
