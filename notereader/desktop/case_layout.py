"""How note, facts, fact in hand and side pane share the room of a page."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QSplitter, QVBoxLayout, QWidget

# Below this width the side pane goes below the facts; below this height as well it is shown only on request.
NARROW, LOW = 1100, 680


class CaseLayout(QWidget):
    """Places the parts beside one another, by the room there is and the person's own borders."""

    def __init__(
        self, strip: QWidget, left: list[QWidget], facts: QWidget, pane: QWidget, side: QWidget, beside: str = "Picture"
    ):
        super().__init__()
        self._facts, self._pane, self._side = facts, pane, side
        self._note = left[0]
        self._left = _column(*left)
        self._left.setMinimumWidth(240)
        self._centre = _split(Qt.Orientation.Vertical, (facts, 3), (pane, 2))
        self._right = _split(Qt.Orientation.Horizontal, (self._centre, 3), (side, 2))
        self._whole = _split(Qt.Orientation.Horizontal, (self._left, 2), (self._right, 3))
        self._button = QPushButton(f"{beside}  F7")
        self._button.setCheckable(True)
        self._button.setAccessibleName(f"{beside}: show the side pane")
        self._button.clicked.connect(self.toggle_side)
        self._side_wanted: bool | None = None
        self._shared_out = False
        top = QHBoxLayout()
        top.addWidget(strip, 1)
        top.addWidget(self._button)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 6, 8, 8)
        layout.addLayout(top)
        layout.addWidget(self._whole, 1)

    def toggle_side(self) -> None:
        """Show or hide the side pane."""
        self._side_wanted = not self._side.isVisible()
        self._arrange()

    def part_after(self, here: QWidget | None, way: int) -> QWidget:
        """Return the part after (1) or before (-1) the one that holds a widget."""
        parts = [part for part in (self._note, self._facts, self._pane, self._side) if part.isVisible()]
        holding = [n for n, part in enumerate(parts) if here and (here is part or part.isAncestorOf(here))]
        return parts[((holding[0] if holding else 0) + way) % len(parts)]

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        """Move the side pane to where there is room."""
        super().resizeEvent(event)
        self._arrange()

    def showEvent(self, event: QShowEvent) -> None:  # noqa: N802
        """Share out the room, now that it is known."""
        super().showEvent(event)
        self._arrange()
        if not self._shared_out:
            self._share_out()

    def _share_out(self) -> None:
        """Give every part its usual share, once; from then on the person's own borders are kept."""
        width, height = self.width(), self.height()
        self._whole.setSizes([width * 38 // 100, width * 62 // 100])
        self._right.setSizes([width * 34 // 100, width * 28 // 100])
        self._centre.setSizes([height * 13 // 20, height * 7 // 20])
        self._shared_out = True

    def _arrange(self) -> None:
        narrow, low = self.width() < NARROW, self.height() < LOW
        self._right.setOrientation(Qt.Orientation.Vertical if narrow and not low else Qt.Orientation.Horizontal)
        tight = narrow and low
        shown = self._side_wanted if self._side_wanted is not None else not tight
        self._side.setVisible(shown)
        self._button.setChecked(shown)
        # Where there is no room for three, the side pane takes the place of the note while it is wanted.
        self._left.setVisible(not (tight and shown))


def _split(way: Qt.Orientation, *parts: tuple[QWidget, int]) -> QSplitter:
    split = QSplitter(way)
    for number, (part, stretch) in enumerate(parts):
        split.addWidget(part)
        split.setStretchFactor(number, stretch)
    split.setChildrenCollapsible(False)
    return split


def _column(*parts: QWidget) -> QWidget:
    column = QWidget()
    layout = QVBoxLayout(column)
    layout.setContentsMargins(0, 0, 0, 0)
    for number, part in enumerate(parts):
        layout.addWidget(part, 0 if number else 1)
    return column
