"""Tables that are only read, and charts, as the pages of practice show them."""

from collections.abc import Callable, Iterable, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QImage, QPixmap, QResizeEvent, QShowEvent, QStandardItem, QStandardItemModel
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QLabel, QScrollArea, QTableView
from shiboken6 import isValid

from notereader.desktop.labels import plain_tip
from notereader.desktop.look import Look
from notereader.desktop.worker import Worker

if TYPE_CHECKING:
    from matplotlib.figure import Figure

    from notereader.desktop.charts import Picture
    from notereader.practice.charts import Inks

_DPI = 96
# A chart in less room than this, in pixels, cannot be read and is scrolled sideways.
_NARROWEST = 420


class PlainTable(QTableView):
    """Rows of words under headings. A screen reader hears a whole row at its first cell."""

    def __init__(self, name: str, headings: Sequence[str]):
        super().__init__()
        self._headings = headings
        self._model = QStandardItemModel(0, len(headings), self)
        self._model.setHorizontalHeaderLabels(list(headings))
        self.setModel(self._model)
        self.setAccessibleName(name)
        self.setEditTriggers(QTableView.EditTrigger.NoEditTriggers)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.setMinimumHeight(120)
        self.verticalHeader().hide()
        self.verticalHeader().setAccessibleName("Numbers of the rows")
        self.horizontalHeader().setAccessibleName("Headings of the columns")
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        self.horizontalHeader().setStretchLastSection(True)

    def show_rows(self, rows: Iterable[Sequence[str]]) -> None:
        """Show these rows; the first is in hand."""
        self._model.setRowCount(0)
        for cells in rows:
            items = [_item(cell) for cell in cells]
            named = [f"{name}: {cell}" for name, cell in zip(self._headings, cells, strict=True) if cell]
            items[0].setData("; ".join(named), Qt.ItemDataRole.AccessibleTextRole)
            self._model.appendRow(items)
        if self._model.rowCount():
            self.selectRow(0)

    def row_in_hand(self) -> int | None:
        """Return the number of the row in hand, or None."""
        index = self.currentIndex()
        return index.row() if index.isValid() else None


class ChartView(QScrollArea):
    """A chart in the colours and letters of the look; what it shows stands in a table beside it."""

    def __init__(self, name: str, look: Look, worker: Worker):
        super().__init__()
        self._look, self._worker = look, worker
        self._make: Callable[[Inks, float, float], Figure] | None = None
        self._rest = QTimer(self, interval=200, singleShot=True)
        self._rest.timeout.connect(self._draw)
        self._label = QLabel()
        self._label.setTextFormat(Qt.TextFormat.PlainText)
        self._label.setAccessibleName(name)
        self.setWidget(self._label)
        self.setWidgetResizable(True)
        self.setAccessibleName(name)
        self.setMinimumHeight(160)
        look.changed.connect(self._draw)

    def show_figure(self, make: "Callable[[Inks, float, float], Figure]") -> None:
        """Draw a figure: `make` is given inks, the width in inches and the letters in points, in the background."""
        self._make = make
        self._draw()

    def showEvent(self, event: QShowEvent) -> None:  # noqa: N802
        """Draw what was given before anybody looked."""
        super().showEvent(event)
        self._rest.start()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        """Draw anew where the width changed, once it rests."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self._rest.start()

    @property
    def drawn(self) -> bool:
        """True once a chart stands there."""
        return not self._label.pixmap().isNull()

    def _draw(self) -> None:
        if self._make is None or not self.isVisible():
            return  # It is drawn when it is seen: being shown changes its size.
        make, theme, sharpness = self._make, self._look.theme, self.devicePixelRatioF()
        room = self.width() - self.verticalScrollBar().sizeHint().width() - 8
        width, letters = max(_NARROWEST, room) / _DPI, self.font().pointSizeF()

        def draw() -> "Picture":
            from notereader.desktop.charts import picture_of
            from notereader.practice.charts import Inks

            inks = Inks(theme.base, theme.text, theme.window, theme.accent, theme.edge, theme.trouble)
            figure = make(inks, width, letters)
            figure.set_dpi(_DPI * sharpness)
            return picture_of(figure)

        self._worker.run(draw, self._show, self._fail)

    def _show(self, drawn: "Picture") -> None:
        if isValid(self):
            image = QImage(drawn.pixels, drawn.width, drawn.height, drawn.width * 4, QImage.Format.Format_RGBA8888)
            pixels = QPixmap.fromImage(image)
            pixels.setDevicePixelRatio(self.devicePixelRatioF())
            self._label.setPixmap(pixels)

    def _fail(self, fault: Exception) -> None:
        if isValid(self):
            self._label.setText(f"The chart could not be drawn ({fault}). The table says the same.")


def _item(words: str) -> QStandardItem:
    item = QStandardItem(words)
    item.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable)
    item.setToolTip(plain_tip(words))
    return item
