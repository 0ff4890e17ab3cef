"""Charts in the window, drawn in the background in its colours and letters."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QColor, QImage, QPainter, QPalette, QPixmap, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QLabel, QScrollArea, QWidget

from notereader.desktop.audit.asking import Ask, Drawing
from notereader.desktop.look import Look

if TYPE_CHECKING:
    from notereader.desktop.charts import Picture

# A chart is drawn anew once the window's edge rests.
_REST_MS = 250
_LEAST_HEIGHT = 200
_EDGES = 28


class ChartView(QScrollArea):
    """Shows charts, one below the other; what they show stands in a table beside it too."""

    def __init__(self, name: str, look: Look, ask: Ask, parent: QWidget | None = None):
        super().__init__(parent)
        self._look, self._ask = look, ask
        self._what = ("", "")
        self._drawn = ("", "", 0)
        self.picture = QLabel()
        self.picture.setTextFormat(Qt.TextFormat.PlainText)
        self.picture.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
        self.picture.setMargin(6)
        for part in (self, self.picture):
            part.setAccessibleName(f"{name}; the same stands in the table")
        self.setWidget(self.picture)
        self.setWidgetResizable(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumHeight(_LEAST_HEIGHT)
        self.setProperty("part", "chart")
        for ground in (self.viewport(), self.picture):
            ground.setBackgroundRole(QPalette.ColorRole.Base)
        self._rest = QTimer(self, interval=_REST_MS, singleShot=True)
        self._rest.timeout.connect(self._draw)
        look.changed.connect(self._again)

    def show_chart(self, what: str, detail: str) -> None:
        """Show a chart of the desk."""
        self._what = (what, detail)
        self._again()

    def showEvent(self, event: QShowEvent) -> None:  # noqa: N802
        """Draw what was asked for while nobody looked."""
        super().showEvent(event)
        self._rest.start(0)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        """Draw anew in the new width."""
        super().resizeEvent(event)
        self._rest.start()

    def _again(self) -> None:
        self._drawn = ("", "", 0)
        self._rest.start(0)

    def _draw(self) -> None:
        what, detail = self._what
        width = self.viewport().width() - _EDGES
        if not what or not self.isVisible() or self._drawn == (what, detail, width):
            return
        self._drawn = (what, detail, width)
        if self.picture.pixmap().isNull():
            self.picture.setText("Drawing …")
        theme = self._look.theme
        how = Drawing(
            width=width,
            letters=self.font().pointSizeF(),
            sharpness=self.devicePixelRatioF(),
            paper=theme.base,
            words=theme.text,
            quiet=theme.muted,
            grid=theme.window,
            signal=theme.trouble,
            states=theme.states,
        )
        self._ask(lambda desk: desk.charts(what, detail, how), lambda drawn: self._show(drawn, how.sharpness))

    def _show(self, pictures: "list[Picture]", sharpness: float) -> None:
        if not pictures:
            self.picture.setText("There is nothing to draw here.")
            return
        whole = QPixmap(max(p.width for p in pictures), sum(p.height for p in pictures))
        whole.fill(QColor(self._look.theme.base))
        painter, top = QPainter(whole), 0
        for p in pictures:
            painter.drawImage(0, top, QImage(p.pixels, p.width, p.height, p.width * 4, QImage.Format.Format_RGBA8888))
            top += p.height
        painter.end()
        whole.setDevicePixelRatio(sharpness)
        self.picture.setPixmap(whole)
