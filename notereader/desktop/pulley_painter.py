"""Draws one pulley by its state: each state unlike every other, and unknown unlike absent and unlike intact."""

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPainterPath, QPen

from notereader.desktop.finger import PulleyDrawing
from notereader.desktop.themes import Inks


@dataclass(frozen=True)
class Brush:
    """What a pulley is drawn with. The painter's pen is set: full for what is settled, dashes for what is proposed."""

    painter: QPainter
    inks: Inks
    pulley: PulleyDrawing

    def fill(self) -> QBrush:
        """Return the filling of what is left of the pulley: see-through, and a mere tint if only proposed."""
        colour = QColor(self.inks.pulley)
        colour.setAlphaF(0.75 if self.pulley.settled else 0.2)
        return QBrush(colour)


def draw_pulley(painter: QPainter, inks: Inks, pulley: PulleyDrawing, place: QRectF) -> None:
    """Draw a pulley that spans `place`, with the pen that is set."""
    _PULLEYS.get(pulley.state, _unknown)(Brush(painter, inks, pulley), place)


def _whole(brush: Brush, place: QRectF) -> None:
    brush.painter.setBrush(brush.fill())
    brush.painter.drawRoundedRect(place, 3, 3)


def _unknown(brush: Brush, place: QRectF) -> None:
    brush.painter.setPen(QPen(QColor(brush.inks.hatch), 1.2, Qt.PenStyle.DotLine))
    brush.painter.setBrush(Qt.BrushStyle.NoBrush)
    brush.painter.drawRoundedRect(place, 3, 3)


def _torn(brush: Brush, place: QRectF) -> None:
    _whole(brush, place)
    x = place.center().x()
    tear = QPainterPath(QPointF(x - 3, place.top() - 2))
    for step in range(1, 6):
        tear.lineTo(x + (4 if step % 2 else -4), place.top() - 2 + (place.height() + 4) * step / 5)
    brush.painter.drawPath(tear)


def _opened(brush: Brush, place: QRectF) -> None:
    """Part of its length divided: the two flaps of that part stand apart."""
    part = _part_of(brush.pulley, place)
    _rest(brush, place, part)
    _flaps(brush, part)
    _hatch_guess(brush, part)


def _trimmed(brush: Brush, place: QRectF) -> None:
    """Part of it removed: that part is crossed out."""
    part = _part_of(brush.pulley, place)
    _rest(brush, place, part)
    _crossed(brush, part)
    _hatch_guess(brush, part)


def _part_of(pulley: PulleyDrawing, place: QRectF) -> QRectF:
    """Return the stretch that was opened or removed; the proximal end lies towards the forearm, below.

    Where nobody said how much, it is half of the pulley at the end that was named, else all of it.
    """
    part = str(pulley.part.value) if pulley.part else ""
    told = pulley.percent.value if pulley.percent else None
    unknown = 0.5 if part else 1.0
    height = place.height() * min(1.0, max(0.1, told / 100 if isinstance(told, int | float) else unknown))
    top = {"distal": place.top(), "proximal": place.bottom() - height}.get(part, place.center().y() - height / 2)
    return QRectF(place.left(), top, place.width(), height)


def _rest(brush: Brush, place: QRectF, part: QRectF) -> None:
    """Draw what is left of the band above and below a part."""
    above = QRectF(place.left(), place.top(), place.width(), part.top() - place.top())
    below = QRectF(place.left(), part.bottom(), place.width(), place.bottom() - part.bottom())
    for rest in (above, below):
        if rest.height() > 0.5:
            _whole(brush, rest)


def _hatch_guess(brush: Brush, part: QRectF) -> None:
    """Hatch a part that is only somewhere here, because how much or where was not said."""
    if brush.pulley.percent is None or brush.pulley.part is None:
        brush.painter.setBrush(QBrush(QColor(brush.inks.hatch), Qt.BrushStyle.BDiagPattern))
        brush.painter.drawRect(part)


def _flaps(brush: Brush, place: QRectF) -> None:
    """The two halves of a divided band, folded back to the sides."""
    brush.painter.setBrush(brush.fill())
    width = place.width() * 0.2
    for left in (place.left() - 3, place.right() - width + 3):
        brush.painter.drawRoundedRect(QRectF(left, place.top(), width, place.height()), 2, 2)


def _released(brush: Brush, place: QRectF) -> None:
    _flaps(brush, place)


def _crossed(brush: Brush, place: QRectF) -> None:
    """Removed: its outline crossed out."""
    brush.painter.setBrush(Qt.BrushStyle.NoBrush)
    brush.painter.drawRect(place)
    brush.painter.drawLine(place.topLeft(), place.bottomRight())
    brush.painter.drawLine(place.bottomLeft(), place.topRight())


def _widened(brush: Brush, place: QRectF) -> None:
    wide = place.adjusted(-7, 0, 7, 0)
    _whole(brush, wide)
    y = wide.center().y()
    for x, way in ((wide.left() + 5, -3), (wide.right() - 5, 3)):
        brush.painter.drawPolyline([QPointF(x, y - 3), QPointF(x + way, y), QPointF(x, y + 3)])


def _sewn(brush: Brush, place: QRectF) -> None:
    _whole(brush, place)
    x = place.center().x()
    brush.painter.setPen(QPen(QColor(brush.inks.suture), 1.4))
    brush.painter.drawLine(QPointF(x, place.top()), QPointF(x, place.bottom()))
    count = max(1, int(place.height() // 7))
    for step in range(count):
        y = place.top() + place.height() * (step + 0.5) / count
        brush.painter.drawLine(QPointF(x - 4, y - 2), QPointF(x + 4, y + 2))


def _rebuilt(brush: Brush, place: QRectF) -> None:
    _whole(brush, place)
    brush.painter.setBrush(Qt.BrushStyle.NoBrush)
    inner = place.adjusted(3, min(3, place.height() / 4), -3, -min(3, place.height() / 4))
    brush.painter.drawRoundedRect(inner, 2, 2)


_PULLEYS: dict[str, Callable[[Brush, QRectF], None]] = {
    "intact": _whole,
    "injured": _torn,
    "vented": _opened,
    "released": _released,
    "trimmed": _trimmed,
    "excised": _crossed,
    "widened": _widened,
    "repaired": _sewn,
    "reconstructed": _rebuilt,
}
