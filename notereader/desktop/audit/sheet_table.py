"""A table of words that is walked cell by cell; Return or a double click chooses a cell."""

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QAbstractItemView, QTableView, QWidget

from notereader.desktop.audit.asking import Sheet
from notereader.desktop.labels import plain_tip

if TYPE_CHECKING:
    from notereader.audit.report.rows import Line

# So many rows are measured for the width of a column; measuring thousands would hold up the window.
_MEASURED = 40
_WIDEST = 420
# So many lines of letters a table is high at least.
_LEAST_LINES = 12

_Index = QModelIndex | QPersistentModelIndex
_EMPTY = Sheet((), ())


class SheetModel(QAbstractTableModel):
    """A sheet as Qt wants it."""

    def __init__(self, parent: QObject | None = None):
        super().__init__(parent)
        self.sheet = _EMPTY

    def show(self, sheet: Sheet) -> None:
        """Show another sheet."""
        self.beginResetModel()
        self.sheet = sheet
        self.endResetModel()

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: N802, B008
        """Return how many rows there are."""
        return 0 if parent.isValid() else len(self.sheet.lines)

    def columnCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: N802, B008
        """Return how many columns there are."""
        return 0 if parent.isValid() else len(self.sheet.head)

    def headerData(  # noqa: N802
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Return the heading of a column."""
        across = orientation == Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole
        return self.sheet.head[section] if across and section < len(self.sheet.head) else None

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return the words of a cell; a screen reader hears them with the name of the row and the heading."""
        if not index.isValid():
            return None
        cells = self.sheet.lines[index.row()].cells
        words = cells[index.column()]
        if role == Qt.ItemDataRole.DisplayRole:
            return words
        if role == Qt.ItemDataRole.ToolTipRole:
            return plain_tip(words) if words else None
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return words if index.column() == 0 else f"{cells[0]}, {self.sheet.head[index.column()]}: {words or 'none'}"
        return None


class SheetTable(QTableView):
    """Shows a sheet. `chosen` goes out with the line and the column of a cell."""

    chosen = Signal(object, int)

    def __init__(self, name: str, parent: QWidget | None = None):
        super().__init__(parent)
        self._model = SheetModel(self)
        self.setModel(self._model)
        self.setAccessibleName(name)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.setTabKeyNavigation(False)
        self.setMinimumHeight(_LEAST_LINES * self.fontMetrics().height())
        across = self.horizontalHeader()
        self.verticalHeader().hide()
        self.verticalHeader().setAccessibleName("Numbers of the rows")
        across.setAccessibleName("Headings of the columns")
        across.setResizeContentsPrecision(_MEASURED)
        across.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.doubleClicked.connect(self._choose)
        for keys in ("Return", "Enter"):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetShortcut)
            shortcut.activated.connect(self._choose)

    @property
    def sheet(self) -> Sheet:
        """What is shown."""
        return self._model.sheet

    def show_sheet(self, sheet: Sheet) -> None:
        """Show a sheet; the cell that was in hand stays in hand where there still is one."""
        row, column = self.currentIndex().row(), self.currentIndex().column()
        self._model.show(sheet)
        self.fit()
        if sheet.lines:
            here = self._model.index(min(max(row, 0), len(sheet.lines) - 1), min(max(column, 0), len(sheet.head) - 1))
            self.setCurrentIndex(here)

    def fit(self) -> None:
        """Make the columns as wide as their words, within reason, in the letters of now."""
        self.setMinimumHeight(_LEAST_LINES * self.fontMetrics().height())
        self.horizontalHeader().setStretchLastSection(False)
        self.resizeColumnsToContents()
        widest = _WIDEST * self.fontMetrics().height() // 16
        for column in range(len(self.sheet.head)):
            if self.columnWidth(column) > widest:
                self.setColumnWidth(column, widest)
        self.horizontalHeader().setStretchLastSection(True)

    def line_in_hand(self) -> "Line | None":
        """Return the line of the cell in hand."""
        index = self.currentIndex()
        return self.sheet.lines[index.row()] if index.isValid() else None

    def _choose(self) -> None:
        line = self.line_in_hand()
        if line is not None:
            self.chosen.emit(line, self.currentIndex().column())
