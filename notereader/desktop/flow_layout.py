"""A layout that puts controls beside one another and goes on in a new line where the width ends."""

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget

_GAP = 6


class FlowLayout(QLayout):
    """Lines of controls, broken like words; so that large letters never push a button out of the window."""

    def __init__(self, parent: QWidget | None = None):
        super().__init__(parent)
        self._items: list[QLayoutItem] = []

    def addItem(self, item: QLayoutItem) -> None:  # noqa: N802
        """Take in a control."""
        self._items.append(item)

    def count(self) -> int:
        """Return how many controls there are."""
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:  # noqa: N802
        """Return a control, or None."""
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:  # noqa: N802
        """Take a control out."""
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:  # noqa: N802
        """Return that it takes no more room than it needs."""
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:  # noqa: N802
        """Return that the height follows from the width."""
        return True

    def heightForWidth(self, width: int) -> int:  # noqa: N802
        """Return the height that this width needs."""
        return self._arrange(QRect(0, 0, width, 0), move=False)

    def setGeometry(self, rect: QRect) -> None:  # noqa: N802
        """Place the controls."""
        super().setGeometry(rect)
        self._arrange(rect, move=True)

    def sizeHint(self) -> QSize:  # noqa: N802
        """Return the least size: as wide as the widest control."""
        return self.minimumSize()

    def minimumSize(self) -> QSize:  # noqa: N802
        """Return the least size: as wide as the widest control."""
        size = QSize()
        for item in self._items:
            size = size.expandedTo(item.minimumSize())
        return size

    def _arrange(self, rect: QRect, *, move: bool) -> int:
        x, y, line_height = rect.x(), rect.y(), 0
        for item in self._items:
            size = item.sizeHint()
            if x > rect.x() and x + size.width() > rect.right() + 1:
                x, y, line_height = rect.x(), y + line_height + _GAP, 0
            if move:
                item.setGeometry(QRect(QPoint(x, y), size))
            x += size.width() + _GAP
            line_height = max(line_height, size.height())
        return y + line_height - rect.y()
