"""Draws a digit seen from the palm: outline, zones, tendons with their cuts, pulleys by state, and what each is called.

Ink is what a person settled, pencil (dashes) what is only proposed. A dotted shape without filling and with a question
mark is what nobody said; a crossed-out shape is what was removed.
"""

from dataclasses import dataclass
from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QFontMetricsF, QPainter, QPainterPath, QPen

from notereader.desktop.finger import Drawing, PulleyDrawing, TendonDrawing
from notereader.desktop.finger_shape import SHAPES, USUAL_TENDONS, Shape
from notereader.desktop.pulley_painter import draw_pulley
from notereader.desktop.repair_painter import LENS_HEIGHT, draw_repairs, rows_of_repairs
from notereader.desktop.themes import Inks

WIDTH = 372.0
_TITLE_HEIGHT = 24.0
_BODY_TOP, _BODY_LENGTH = 34.0, 432.0
_MIDDLE = 190.0
_SCALE_X = 106.0
_LABELS_LEFT = QRectF(2, _BODY_TOP, 96, _BODY_LENGTH)
_LABELS_RIGHT = QRectF(260, _BODY_TOP, 110, _BODY_LENGTH)
_LEGEND_HEIGHT = 44.0
TEXT = 12.0


def height_of(drawing: Drawing) -> float:
    """Return how high the picture of a drawing is, in the units in which it is WIDTH wide."""
    return _BODY_TOP + _BODY_LENGTH + 10 + rows_of_repairs(drawing) * LENS_HEIGHT + _LEGEND_HEIGHT


def draw_picture(painter: QPainter, drawing: Drawing, inks: Inks) -> None:
    """Draw the whole picture, WIDTH wide and height_of() high, from the top left corner."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.fillRect(QRectF(0, 0, WIDTH, height_of(drawing)), QColor(inks.paper))
    DigitPainter(painter, drawing, inks).draw()
    top = _BODY_TOP + _BODY_LENGTH + 10
    draw_repairs(painter, drawing, inks, QRectF(4, top, WIDTH - 8, LENS_HEIGHT), text_font(painter))
    _legend(painter, inks, QRectF(6, height_of(drawing) - _LEGEND_HEIGHT, WIDTH - 12, _LEGEND_HEIGHT))
    painter.restore()


def text_font(painter: QPainter, *, bold: bool = False, size: float = TEXT) -> QFont:
    """Return the font of the picture's words in its own units, whatever it is drawn on."""
    font = QFont(painter.font())
    font.setPixelSize(round(size))
    font.setBold(bold)
    return font


@dataclass(frozen=True)
class Label:
    """Words beside the drawing and the point they speak of."""

    title: str
    words: str
    point: QPointF
    faint: bool


class DigitPainter:
    """Draws one digit; made for one call."""

    def __init__(self, painter: QPainter, drawing: Drawing, inks: Inks):
        self.painter = painter
        self.drawing = drawing
        self.inks = inks
        self.shape: Shape = SHAPES[drawing.kind]
        # Where the tendons run, for the labels: name and slip -> distance from the middle.
        self._left_labels: list[Label] = []

    def draw(self) -> None:
        """Draw title, digit, zones, tendons, pulleys and labels."""
        self.painter.setFont(text_font(self.painter, bold=True, size=TEXT + 2))
        self.painter.setPen(QColor(self.inks.words))
        self.painter.drawText(QRectF(4, 4, WIDTH - 8, _TITLE_HEIGHT), f"{self.drawing.title}, palm side")
        self._outline()
        self._zones()
        courses = self._courses()
        for name, slip, x, width in courses:
            self._tendon(name, slip, x, width)
        if self.drawing.kind == "wrist":
            self._names(courses)
        right = [self._pulley(pulley) for pulley in self.drawing.pulleys if pulley.name in self.shape.pulleys]
        # Over the pulleys, or an intact one would hide the cut beneath it.
        for name, slip, x, width in courses:
            self._cut_of(name, slip, x, width)
        self._labels(self._left_labels, _LABELS_LEFT, _SCALE_X - 10)
        self._labels(right, _LABELS_RIGHT, _LABELS_RIGHT.left() - 4)

    def _y(self, share: float) -> float:
        return _BODY_TOP + share / 100 * _BODY_LENGTH

    def _half_width(self, share: float) -> float:
        points = self.shape.contour
        for (upper, left), (lower, right) in pairwise(points):
            if share <= lower:
                return left + (right - left) * (share - upper) / (lower - upper)
        return points[-1][1]

    def _outline(self) -> None:
        right = [QPointF(_MIDDLE + half, self._y(share)) for share, half in self.shape.contour]
        left = [QPointF(_MIDDLE - half, self._y(share)) for share, half in reversed(self.shape.contour)]
        path = _smooth([*left, *right])
        path.closeSubpath()
        self.painter.setBrush(QColor(self.inks.skin))
        self.painter.setPen(QPen(QColor(self.inks.outline), 1.6))
        self.painter.drawPath(path)
        self.painter.setPen(QPen(QColor(self.inks.outline), 1.0))
        for share in self.shape.creases:
            half = self._half_width(share) * 0.9
            self._across(share, half)

    def _across(self, share: float, half: float) -> None:
        y = self._y(share)
        bend = QPainterPath(QPointF(_MIDDLE - half, y))
        bend.quadTo(QPointF(_MIDDLE, y + 5), QPointF(_MIDDLE + half, y))
        self.painter.setBrush(Qt.BrushStyle.NoBrush)
        self.painter.drawPath(bend)

    def _zones(self) -> None:
        self.painter.setFont(text_font(self.painter, size=TEXT - 1))
        self.painter.setPen(QPen(QColor(self.inks.faint_words), 1.0))
        for name, (top, bottom) in self.shape.zones.items():
            upper, lower = self._y(top) + 1, self._y(bottom) - 1
            self.painter.drawLine(QPointF(_SCALE_X, upper), QPointF(_SCALE_X, lower))
            for end in (upper, lower):
                self.painter.drawLine(QPointF(_SCALE_X, end), QPointF(_SCALE_X + 5, end))
            place = QRectF(_SCALE_X + 4, upper + 1, 16, 14)
            self.painter.drawText(place, Qt.AlignmentFlag.AlignLeft, name)

    def _courses(self) -> list[tuple[str, str | None, float, float]]:
        """Return tendon, slip, distance from the middle and width of every band to draw."""
        if self.drawing.kind == "wrist":
            names = list(dict.fromkeys((tendon.tendon, tendon.slip) for tendon in self.drawing.tendons))
            order = ["FCR", "FPL", "PL", "FDS", "FDP", "FCU"]
            names.sort(key=lambda name: order.index(name[0]))
            radial = self._radial_sign()
            step = 84 / max(1, len(names))
            return [(n, s, -radial * (-42 + step * (i + 0.5)), 8.0) for i, (n, s) in enumerate(names)]
        named = [tendon.tendon for tendon in self.drawing.tendons]
        extra = [name for name in named if name not in USUAL_TENDONS[self.drawing.kind]]
        bands: list[tuple[str, str | None, float, float]] = []
        for name in USUAL_TENDONS[self.drawing.kind]:
            if name == "FDS":
                bands += self._superficialis()
            else:
                bands.append((name, None, 0.0, 13.0))
        return bands + [(name, None, 21.0 + 9 * i, 6.0) for i, name in enumerate(dict.fromkeys(extra))]

    def _superficialis(self) -> list[tuple[str, str | None, float, float]]:
        radial = self._radial_sign()
        slips = {tendon.slip for tendon in self.drawing.tendons if tendon.tendon == "FDS"}
        if slips & {"radial", "ulnar"}:
            return [("FDS", "radial", 12.5 * radial, 7.0), ("FDS", "ulnar", -12.5 * radial, 7.0)]
        return [("FDS", None, -12.5, 7.0), ("FDS", None, 12.5, 7.0)]

    def _radial_sign(self) -> int:
        """Return on which side the thumb lies, seen from the palm: right (1) for a right hand.

        Where the side of the body is not stated it is drawn as a right hand; the labels say which slip is which.
        """
        return -1 if self.drawing.side and self.drawing.side.value == "left" else 1

    def _told_of(self, name: str, slip: str | None) -> TendonDrawing | None:
        wanted = [tendon for tendon in self.drawing.tendons if tendon.tendon == name]
        exact = [tendon for tendon in wanted if tendon.slip == slip]
        whole = [tendon for tendon in wanted if tendon.slip is None]
        return next(iter(exact or whole), None)

    def _tendon(self, name: str, slip: str | None, x: float, width: float) -> None:
        tendon = self._told_of(name, slip)
        band = QRectF(_MIDDLE + x - width / 2, self._y(self.shape.insertions.get(name, 4)), width, 0)
        band.setBottom(self._y(100))
        edge = QColor(self.inks.tendon_edge)
        if tendon is None:
            self.painter.setPen(QPen(edge, 1.0, Qt.PenStyle.DotLine))
            self.painter.setBrush(Qt.BrushStyle.NoBrush)
            self.painter.drawRect(band)
            self._label_tendon(name, slip, NOT_MENTIONED_WORDS, QPointF(band.left(), self._y(74)), faint=True)
            return
        gone = tendon.value("treatment") == "excised"
        # The band itself only says that the tendon is spoken of; how sure its cut is, the cut shows.
        self.painter.setPen(QPen(edge, 1.4, Qt.PenStyle.DashDotLine if gone else Qt.PenStyle.SolidLine))
        self.painter.setBrush(Qt.BrushStyle.NoBrush if gone else QColor(self.inks.tendon))
        self.painter.drawRect(band)
        level = self._level(tendon)
        if not tendon.is_cut:
            self._label_tendon(name, slip, tendon_words(tendon), QPointF(band.left(), self._y(72)))
        elif level is not None:
            self._label_tendon(name, slip, tendon_words(tendon), QPointF(band.left(), self._y(level)))
        else:
            self._somewhere(band)
            self._label_tendon(name, slip, tendon_words(tendon), QPointF(band.left(), self._y(52)))

    def _cut_of(self, name: str, slip: str | None, x: float, width: float) -> None:
        tendon = self._told_of(name, slip)
        level = None if tendon is None or not tendon.is_cut else self._level(tendon)
        if tendon is not None and level is not None:
            self._cut(tendon, QRectF(_MIDDLE + x - width / 2, self._y(level), width, 0))

    def _level(self, tendon: TendonDrawing) -> float | None:
        """Return where the cut is drawn, or None where nobody said; put back to bone, it is the insertion."""
        if tendon.value("treatment") == "reinserted" and tendon.tendon in self.shape.insertions:
            return self.shape.insertions[tendon.tendon] + 2
        zone = tendon.value("zone")
        known = isinstance(zone, str) and zone.rstrip("ABCD") in self.shape.zones
        return self.shape.level(str(zone)) if known else None

    def _names(self, courses: list[tuple[str, str | None, float, float]]) -> None:
        """Write the tendons' names on their bands: beside the wrist there are too many for lines to each."""
        self.painter.setFont(text_font(self.painter, bold=True, size=TEXT - 2))
        for number, (name, slip, x, _) in enumerate(courses):
            words = f"{name} {slip[0]}" if slip else name
            place = QRectF(_MIDDLE + x - 17, self._y(94 - 6 * (number % 2)), 34, 14)
            self.painter.setPen(Qt.PenStyle.NoPen)
            self.painter.setBrush(QColor(self.inks.skin))
            self.painter.drawRect(place.adjusted(4, 0, -4, 0))
            self.painter.setPen(QColor(self.inks.words))
            self.painter.drawText(place, Qt.AlignmentFlag.AlignCenter, words)

    def _label_tendon(self, name: str, slip: str | None, words: str, point: QPointF, *, faint: bool = False) -> None:
        title = f"{name} {slip}" if slip else name
        if not any(label.title == title for label in self._left_labels):
            self._left_labels.append(Label(title, words, point, faint))

    def _somewhere(self, band: QRectF) -> None:
        """Cut, but nobody said where: hatch the whole course."""
        self.painter.setPen(Qt.PenStyle.NoPen)
        self.painter.setBrush(QBrush(QColor(self.inks.hatch), Qt.BrushStyle.BDiagPattern))
        self.painter.drawRect(band)

    def _cut(self, tendon: TendonDrawing, at: QRectF) -> None:
        settled = tendon.settled("extent") or tendon.settled("treatment")
        pen = QPen(QColor(self.inks.suture), 2.0, Qt.PenStyle.SolidLine if settled else Qt.PenStyle.DashLine)
        paper = QColor(self.inks.skin)
        y, left, right = at.top(), at.left(), at.right()
        if tendon.value("extent") == "partial":
            share = tendon.value("extent_percent")
            depth = at.width() * (share / 100 if isinstance(share, int | float) else 0.5)
            notch = QPainterPath(QPointF(right + 1, y - 6))
            notch.lineTo(right - depth, y)
            notch.lineTo(right + 1, y + 6)
            self.painter.setBrush(paper)
            self.painter.setPen(QPen(QColor(self.inks.tendon_edge), 1.2, pen.style()))
            self.painter.drawPath(notch)
        else:
            half = 2.0 if tendon.is_sutured else 7.0
            self.painter.fillRect(QRectF(left - 1.5, y - half, at.width() + 3, 2 * half), paper)
            self.painter.setPen(QPen(QColor(self.inks.tendon_edge), 1.2, pen.style()))
            for edge in (y - half, y + half):
                self.painter.drawPath(_jagged(left - 1, right + 1, edge))
        if tendon.is_sutured:
            self.painter.setPen(pen)
            for x in (left + at.width() * 0.25, left + at.width() * 0.75):
                self.painter.drawLine(QPointF(x, y - 9), QPointF(x, y + 9))

    def _pulley(self, pulley: PulleyDrawing) -> Label:
        top, bottom = self.shape.pulleys[pulley.name]
        half = 44.0 if self.drawing.kind == "wrist" else 22.0
        place = QRectF(_MIDDLE - half, self._y(top), 2 * half, self._y(bottom) - self._y(top))
        style = Qt.PenStyle.SolidLine if pulley.settled else Qt.PenStyle.DashLine
        self.painter.setPen(QPen(QColor(self.inks.pulley_edge), 1.6, style))
        draw_pulley(self.painter, self.inks, pulley, place)
        known = pulley.finding is not None
        words = pulley.label() if pulley.settled or not known else f"{pulley.label()} (proposed)"
        title = pulley.name if len(pulley.name) < 12 else "retinaculum"
        return Label(title, words if known else "?", QPointF(place.right(), place.center().y()), faint=not known)

    def _labels(self, labels: list[Label], room: QRectF, hook: float) -> None:
        self.painter.setBrush(Qt.BrushStyle.NoBrush)
        heights = [self._label_height(label, room.width()) for label in labels]
        order = sorted(range(len(labels)), key=lambda number: labels[number].point.y())
        below = room.top()
        tops: dict[int, float] = {}
        for number in order:
            tops[number] = max(below, labels[number].point.y() - heights[number] / 2)
            below = tops[number] + heights[number] + 3
        above = room.bottom() + 8
        for number in reversed(order):
            tops[number] = min(tops[number], above - heights[number])
            above = tops[number] - 3
        for number, label in enumerate(labels):
            self._write(label, QRectF(room.left(), tops[number], room.width(), heights[number]), hook)

    def _label_height(self, label: Label, width: float) -> float:
        metrics = QFontMetricsF(text_font(self.painter))
        how = int(Qt.TextFlag.TextWordWrap)
        return metrics.boundingRect(QRectF(0, 0, width, 200), how, self._label_text(label)).height()

    @staticmethod
    def _label_text(label: Label) -> str:
        return f"{label.title} {label.words}"

    def _write(self, label: Label, place: QRectF, hook: float) -> None:
        colour = QColor(self.inks.faint_words if label.faint else self.inks.words)
        self.painter.setPen(QPen(colour, 0.8, Qt.PenStyle.DotLine if label.faint else Qt.PenStyle.SolidLine))
        on_left = place.left() < _MIDDLE
        if not (on_left and self.drawing.kind == "wrist"):
            start = QPointF(place.right() + 2 if on_left else hook, place.center().y())
            self.painter.drawLine(start, label.point)
            self.painter.setBrush(colour)
            self.painter.drawEllipse(label.point, 1.8, 1.8)
        self.painter.setPen(colour)
        self.painter.setFont(text_font(self.painter))
        how = Qt.AlignmentFlag.AlignRight if on_left else Qt.AlignmentFlag.AlignLeft
        self.painter.drawText(
            place, int(how | Qt.AlignmentFlag.AlignVCenter) | int(Qt.TextFlag.TextWordWrap), self._label_text(label)
        )


NOT_MENTIONED_WORDS = "?"


def tendon_words(tendon: TendonDrawing) -> str:
    """Say in a few words what became of a tendon and where."""
    zone = tendon.told.get("zone")
    where = f"zone {zone.value}" if zone else "level not stated"
    deciding = tendon.told.get("treatment") or tendon.told.get("extent")
    proposed = " (proposed)" if deciding is not None and not deciding.settled else ""
    return f"{tendon.short()}{proposed}, {where}" if tendon.is_cut else f"{tendon.short()}{proposed}"


def _smooth(points: list[QPointF]) -> QPainterPath:
    """Return a soft curve through points (Catmull and Rom's spline: each tangent runs along its neighbours)."""
    path = QPainterPath(points[0])
    ring = [points[0], *points, points[-1]]
    for before, start, end, after in zip(ring, ring[1:], ring[2:], ring[3:], strict=False):
        path.cubicTo(start + (end - before) / 6, end - (after - start) / 6, end)
    return path


def _jagged(left: float, right: float, y: float) -> QPainterPath:
    path = QPainterPath(QPointF(left, y))
    steps = max(4, round((right - left) / 3))
    for step in range(1, steps + 1):
        path.lineTo(left + (right - left) * step / steps, y + (1.8 if step % 2 else -1.8))
    return path


def _legend(painter: QPainter, inks: Inks, place: QRectF) -> None:
    painter.setFont(text_font(painter, size=TEXT - 1))
    painter.setPen(QColor(inks.faint_words))
    words = (
        "Full lines: confirmed. Dashes: proposed. Dotted with ?: the note does not say, so unknown. "
        "Not to scale, and no measure of strength."
    )
    painter.drawText(place, int(Qt.TextFlag.TextWordWrap) | int(Qt.AlignmentFlag.AlignVCenter), words)
