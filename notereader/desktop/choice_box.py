"""A box to choose one of several from, with an arrow that stays visible in every theme."""

from PySide6.QtCore import QPointF
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPalette, QPen, QPolygonF
from PySide6.QtWidgets import QComboBox

_FROM_RIGHT, _SIZE = 14.0, 4.5


class ChoiceBox(QComboBox):
    """A combo box. Framed by the style sheet it would lose its arrow, so it draws one."""

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802
        """Draw the box and the arrow."""
        super().paintEvent(event)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(self.palette().color(QPalette.ColorRole.Text)), 2))
        x, y = self.width() - _FROM_RIGHT, self.height() / 2
        corners = [QPointF(x - _SIZE, y - _SIZE / 2), QPointF(x, y + _SIZE / 2), QPointF(x + _SIZE, y - _SIZE / 2)]
        painter.drawPolyline(QPolygonF(corners))
        painter.end()
