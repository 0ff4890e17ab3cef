"""The list of facts as a Qt model: headings and rows of one record, nothing else."""

from dataclasses import replace
from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from notereader.desktop.rows import Heading, Item, Row, items_of
from notereader.record import Address, Record

ITEM = Qt.ItemDataRole.UserRole
# How far the facts under a heading are, in words.
COUNT = Qt.ItemDataRole.UserRole + 1

Index = QModelIndex | QPersistentModelIndex


class FactsModel(QAbstractListModel):
    """Shows a record as headings and rows. It is given a new record after each change and keeps what did not change."""

    def __init__(self, parent: QObject | None = None):
        super().__init__(parent)
        self._record = Record()
        self._read: set[str] = set()
        self._items: list[Item] = []
        self.thought_first = False
        self.every_field = False

    def show(self, record: Record, read: set[str]) -> None:
        """Show this record; `read` are the addresses a person has had in hand, as text."""
        self._record, self._read = record, set(read)
        self._renew()

    def show_read(self, read: set[str]) -> None:
        """Show that more facts were read; everything else stays."""
        new = read - self._read
        self._read = set(read)
        for line, item in enumerate(self._items):
            if isinstance(item, Row) and item.unread and item.address.text() in new:
                self._items[line] = replace(item, unread=False)
                self.dataChanged.emit(self.index(line), self.index(line))

    def arrange(self, *, thought_first: bool, every_field: bool) -> None:
        """Choose the order and whether fields that were not found are all listed."""
        self.thought_first, self.every_field = thought_first, every_field
        self._renew()

    def _listed(self) -> list[Item]:
        """Return headings and rows of the record in the order in which they are shown."""
        return items_of(self._record, self._read, thought_first=self.thought_first, every_field=self.every_field)

    def item(self, row: int) -> Item:
        """Return the heading or row at a line."""
        return self._items[row]

    def rows(self) -> list[Row]:
        """Return all rows without headings, in order."""
        return [item for item in self._items if isinstance(item, Row)]

    def line_of(self, address: Address) -> int | None:
        """Return the line a fact stands on, or None."""
        return next(
            (line for line, item in enumerate(self._items) if isinstance(item, Row) and item.address == address), None
        )

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: N802, B008
        """Return how many lines there are."""
        return 0 if parent.isValid() else len(self._items)

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Return that rows can be chosen and headings cannot."""
        if not index.isValid():
            return Qt.ItemFlag(0)
        if isinstance(self._items[index.row()], Heading):
            return Qt.ItemFlag.ItemNeverHasChildren
        return Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable | Qt.ItemFlag.ItemNeverHasChildren

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return the words of a line, the line itself (ITEM) or how far a heading is (COUNT)."""
        if not index.isValid():
            return None
        item = self._items[index.row()]
        if role == ITEM:
            return item
        if role == COUNT and isinstance(item, Heading):
            return self._counted(item)
        if role == Qt.ItemDataRole.DisplayRole:
            return item.title if isinstance(item, Heading) else f"{item.label}: {item.value}"
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return item.title if isinstance(item, Heading) else item.sentence()
        return None

    def _counted(self, heading: Heading) -> str:
        facts = [row for row in self.rows() if row.heading == heading and row.fact is not None]
        return f"{sum(not row.unsettled for row in facts)} of {len(facts)} settled" if facts else ""

    def _renew(self) -> None:
        items = self._listed()
        if [_key(item) for item in items] != [_key(item) for item in self._items]:
            self.beginResetModel()
            self._items = items
            self.endResetModel()
            return
        changed = [line for line, (old, new) in enumerate(zip(self._items, items, strict=True)) if old != new]
        self._items = items
        if changed:
            # Headings count their rows, so the line above may change with a row: tell of the whole stretch.
            self.dataChanged.emit(self.index(0), self.index(changed[-1]))


def _key(item: Item) -> str:
    return item.key if isinstance(item, Heading) else item.address.text()
