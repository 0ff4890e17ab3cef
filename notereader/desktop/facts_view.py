"""The list of facts on screen."""

from PySide6.QtCore import QItemSelectionModel, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QAbstractItemView, QListView, QWidget

from notereader.desktop.facts_model import FactsModel, Index
from notereader.desktop.look import Look
from notereader.desktop.row_painter import RowPainter
from notereader.desktop.rows import Heading, Row
from notereader.record import Address

_SEEN_COMING = 3


class FactsView(QListView):
    """Shows the facts; `chosen` goes out when the person moves to another one."""

    chosen = Signal(object)

    def __init__(self, model: FactsModel, look: Look, parent: QWidget | None = None):
        super().__init__(parent)
        self._facts = model
        self._quiet = False
        self.setModel(model)
        self.setItemDelegate(RowPainter(look))
        self.setAccessibleName("Facts")
        self.setAccessibleDescription("Return confirms the fact in hand and brings the next. F1 lists all keys.")
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setMinimumWidth(260)
        look.changed.connect(self.scheduleDelayedItemsLayout)

    def row_in_hand(self) -> Row | None:
        """Return the row that is current, or None."""
        index = self.currentIndex()
        item = self._facts.item(index.row()) if index.isValid() else None
        return item if isinstance(item, Row) else None

    def bring(self, address: Address | None) -> bool:
        """Make the row of a fact current without saying that the person chose it; False where it is not listed."""
        line = None if address is None else self._facts.line_of(address)
        if line is None:
            return False
        self._quiet = True
        self._make_current(line)
        self._quiet = False
        return True

    def bring_first(self) -> None:
        """Choose the first unsettled row, or the first of all."""
        if not self.next_unsettled(from_top=True):
            line = next((n for n in range(self._facts.rowCount()) if isinstance(self._facts.item(n), Row)), None)
            if line is not None:
                self._make_current(line)

    def next_unsettled(self, *, from_top: bool = False) -> bool:
        """Choose the next row that is only proposed, below first and then from the top; False where none is left."""
        count = self._facts.rowCount()
        here = -1 if from_top else self.currentIndex().row()
        for line in [*range(here + 1, count), *range(max(0, here))]:
            item = self._facts.item(line)
            if isinstance(item, Row) and item.unsettled:
                self._make_current(line)
                return True
        return False

    def rows_under(self, heading: Heading) -> list[Row]:
        """Return the rows of a heading."""
        return [row for row in self._facts.rows() if row.heading == heading]

    def show_under(self, heading: Heading, unseen: set[Address]) -> list[Row]:
        """Scroll so that as many of the unseen rows of a heading as fit are whole on screen, and return those."""
        lines = [n for n in range(self._facts.rowCount()) if self._is_unseen(n, heading, unseen)]
        if not lines:
            return []
        self.scrollTo(self._facts.index(max(0, lines[0] - 1)), QAbstractItemView.ScrollHint.PositionAtTop)
        return [row for row in self.whole_rows() if row.heading == heading and row.address in unseen]

    def whole_rows(self) -> list[Row]:
        """Return the rows that are completely on screen."""
        port = self.viewport().rect()
        found = []
        for line in range(self._facts.rowCount()):
            item = self._facts.item(line)
            place = self.visualRect(self._facts.index(line))
            if isinstance(item, Row) and place.top() >= port.top() and place.bottom() <= port.bottom():
                found.append(item)
        return found

    def currentChanged(self, current: Index, previous: Index) -> None:  # noqa: N802
        """Tell that the person moved to another row."""
        super().currentChanged(current, previous)
        item = self._facts.item(current.row()) if current.isValid() else None
        if isinstance(item, Row) and not self._quiet:
            self.chosen.emit(item.address)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Leave letters to the keys of the table: searching rows by typing would hide what a letter does."""
        if event.text().isprintable() and event.text() and not event.modifiers():
            event.ignore()
            return
        super().keyPressEvent(event)

    def _is_unseen(self, line: int, heading: Heading, unseen: set[Address]) -> bool:
        item = self._facts.item(line)
        return isinstance(item, Row) and item.heading == heading and item.address in unseen

    def _make_current(self, line: int) -> None:
        index = self._facts.index(line)
        self.selectionModel().setCurrentIndex(index, QItemSelectionModel.SelectionFlag.ClearAndSelect)
        # The next rows are seen coming, and with the row comes its heading, which tells whose facts these are.
        self.scrollTo(self._facts.index(min(line + _SEEN_COMING, self._facts.rowCount() - 1)))
        if line and isinstance(self._facts.item(line - 1), Heading):
            self.scrollTo(self._facts.index(line - 1))
        self.scrollTo(index)
