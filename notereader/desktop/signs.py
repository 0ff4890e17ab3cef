"""The signs for where a fact stands, drawn so that each is told from the others without colour."""

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from notereader.desktop.rows import Standing


def draw_sign(
    painter: QPainter, place: QRectF, standing: Standing, *, look_twice: bool, ink: QColor, paper: QColor
) -> None:
    """Draw the sign of a standing within a square."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    line = max(1.5, place.width() / 9)
    painter.setPen(QPen(ink, line))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    inner = place.adjusted(line, line, -line, -line)
    _SIGNS[standing](painter, inner, ink, paper)
    if look_twice and standing is Standing.PROPOSED:
        painter.setBrush(ink)
        painter.drawEllipse(inner.center(), inner.width() / 6, inner.width() / 6)
    painter.restore()


def _open_circle(painter: QPainter, place: QRectF, ink: QColor, paper: QColor) -> None:
    painter.drawEllipse(place)


def _tick_in_circle(painter: QPainter, place: QRectF, ink: QColor, paper: QColor) -> None:
    painter.setBrush(ink)
    painter.drawEllipse(place)
    _strokes(painter, place, paper, [(0.25, 0.52), (0.44, 0.72), (0.76, 0.32)])


def _diamond(painter: QPainter, place: QRectF, ink: QColor, paper: QColor) -> None:
    painter.setBrush(ink)
    middle = place.center()
    corners = [
        QPointF(middle.x(), place.top()),
        QPointF(place.right(), middle.y()),
        QPointF(middle.x(), place.bottom()),
        QPointF(place.left(), middle.y()),
    ]
    painter.drawPolygon(QPolygonF(corners))


def _plus_in_circle(painter: QPainter, place: QRectF, ink: QColor, paper: QColor) -> None:
    painter.setBrush(ink)
    painter.drawEllipse(place)
    _strokes(painter, place, paper, [(0.5, 0.24), (0.5, 0.76)])
    _strokes(painter, place, paper, [(0.24, 0.5), (0.76, 0.5)])


def _struck_circle(painter: QPainter, place: QRectF, ink: QColor, paper: QColor) -> None:
    painter.drawEllipse(place)
    painter.drawLine(place.bottomLeft(), place.topRight())


def _barred_square(painter: QPainter, place: QRectF, ink: QColor, paper: QColor) -> None:
    painter.drawRect(place)
    _strokes(painter, place, ink, [(0.22, 0.5), (0.78, 0.5)])


def _dotted_circle(painter: QPainter, place: QRectF, ink: QColor, paper: QColor) -> None:
    pen = painter.pen()
    pen.setStyle(Qt.PenStyle.DotLine)
    painter.setPen(pen)
    painter.drawEllipse(place)


def _strokes(painter: QPainter, place: QRectF, colour: QColor, points: list[tuple[float, float]]) -> None:
    painter.setPen(QPen(colour, max(1.5, place.width() / 7)))
    corners = [QPointF(place.left() + x * place.width(), place.top() + y * place.height()) for x, y in points]
    painter.drawPolyline(QPolygonF(corners))


_SIGNS = {
    Standing.PROPOSED: _open_circle,
    Standing.CONFIRMED: _tick_in_circle,
    Standing.CORRECTED: _diamond,
    Standing.ADDED: _plus_in_circle,
    Standing.WITHDRAWN: _struck_circle,
    Standing.SILENT: _barred_square,
    Standing.NOT_FOUND: _dotted_circle,
}
