"""Draws the repair of each tendon enlarged: core strands across the cut, the peripheral suture around it, a gap."""

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QPainter, QPainterPath, QPen

from notereader.desktop.finger import Drawing, TendonDrawing, Told
from notereader.desktop.themes import Inks

LENS_HEIGHT = 148.0
_A_ROW = 2
_PICTURE_HEIGHT = 66.0


def rows_of_repairs(drawing: Drawing) -> int:
    """Return how many rows of enlarged repairs a drawing has."""
    return -(-len(_sutured(drawing)) // _A_ROW)


def draw_repairs(painter: QPainter, drawing: Drawing, inks: Inks, first_row: QRectF, font: QFont) -> None:
    """Draw every sutured tendon enlarged, two to a row."""
    tendons = _sutured(drawing)
    columns = min(_A_ROW, max(1, len(tendons)))
    width = first_row.width() / columns
    for number, tendon in enumerate(tendons):
        row, column = divmod(number, _A_ROW)
        left, top = first_row.left() + column * width, first_row.top() + row * LENS_HEIGHT
        spare = width / 5 if columns == 1 else 0.0
        _repair(
            painter, tendon, inks, QRectF(left, top, width, LENS_HEIGHT).adjusted(3 + spare, 3, -3 - spare, -5), font
        )


def _sutured(drawing: Drawing) -> list[TendonDrawing]:
    return [tendon for tendon in drawing.tendons if tendon.is_sutured]


def _repair(painter: QPainter, tendon: TendonDrawing, inks: Inks, place: QRectF, font: QFont) -> None:
    painter.setPen(QPen(QColor(inks.outline), 1.0))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRoundedRect(place, 6, 6)
    width = min(place.width() - 20, 150)
    body = QRectF(place.center().x() - width / 2, place.top() + 10, width, _PICTURE_HEIGHT - 16)
    gap = 9.0 if tendon.value("gap") == "seen" else 0.0
    _ends(painter, inks, body, gap, to_bone=tendon.value("treatment") == "reinserted")
    _core(painter, tendon, inks, body)
    _seam(painter, tendon, inks, body)
    painter.setFont(font)
    painter.setPen(QColor(inks.words))
    words = QRectF(
        place.left() + 6, place.top() + _PICTURE_HEIGHT, place.width() - 12, place.height() - _PICTURE_HEIGHT
    )
    painter.drawText(words, int(Qt.TextFlag.TextWordWrap), _caption(tendon))


def _ends(painter: QPainter, inks: Inks, body: QRectF, gap: float, *, to_bone: bool) -> None:
    """Draw both tendon ends, or bone on the left where the tendon was put back to it."""
    half = body.width() / 2 - gap / 2
    painter.setPen(QPen(QColor(inks.tendon_edge), 1.4))
    painter.setBrush(QColor(inks.tendon))
    painter.drawRect(QRectF(body.right() - half, body.top(), half, body.height()))
    far_end = QRectF(body.left(), body.top(), half, body.height())
    if not to_bone:
        painter.drawRect(far_end)
        return
    painter.setPen(QPen(QColor(inks.outline), 1.6))
    painter.setBrush(QColor(inks.skin))
    painter.drawRoundedRect(far_end.adjusted(0, -4, 0, 4), 10, 10)
    painter.setPen(QColor(inks.words))
    painter.drawText(far_end.adjusted(2, -5, 0, 0), Qt.AlignmentFlag.AlignLeft, "bone")


def _core(painter: QPainter, tendon: TendonDrawing, inks: Inks, body: QRectF) -> None:
    strands = tendon.told.get("strands")
    reach = body.adjusted(body.width() * 0.16, 7, -body.width() * 0.16, -7)
    if strands is None or not isinstance(strands.value, int):
        painter.setPen(QPen(QColor(inks.hatch), 1.0, Qt.PenStyle.DotLine))
        painter.setBrush(QBrush(QColor(inks.hatch), Qt.BrushStyle.BDiagPattern))
        painter.drawRect(reach)
        _question(painter, inks, reach.center())
        return
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(_thread(inks, strands, 1.8))
    count = strands.value
    step = reach.height() / max(1, count - 1) if count > 1 else 0.0
    for number in range(count):
        y = reach.center().y() if count == 1 else reach.top() + number * step
        painter.drawLine(QPointF(reach.left(), y), QPointF(reach.right(), y))
        if number % 2 == 0 and number + 1 < count:
            # Two neighbouring strands are one thread that turns within the tendon.
            for x, way in ((reach.left(), -1), (reach.right(), 1)):
                turn = QPainterPath(QPointF(x, y))
                turn.cubicTo(QPointF(x + way * 8, y), QPointF(x + way * 8, y + step), QPointF(x, y + step))
                painter.drawPath(turn)


def _seam(painter: QPainter, tendon: TendonDrawing, inks: Inks, body: QRectF) -> None:
    """Along the cut: loops where there is a peripheral suture, nothing where there is none, a ? where nobody said."""
    told = tendon.told.get("peripheral")
    x = body.center().x()
    if told is None:
        _question(painter, inks, QPointF(x, body.top() - 1))
        return
    if told.value != "present":
        return
    painter.setPen(_thread(inks, told, 1.2))
    loops = 7
    step = body.height() / loops
    path = QPainterPath(QPointF(x - 6, body.top()))
    for number in range(loops):
        y = body.top() + number * step
        path.lineTo(x + 6, y + step / 2)
        path.lineTo(x - 6, y + step)
    painter.drawPath(path)


def _thread(inks: Inks, told: Told, width: float) -> QPen:
    return QPen(QColor(inks.suture), width, Qt.PenStyle.SolidLine if told.settled else Qt.PenStyle.DashLine)


def _question(painter: QPainter, inks: Inks, at: QPointF) -> None:
    font = QFont(painter.font())
    font.setPixelSize(15)
    font.setBold(True)
    painter.setFont(font)
    place = QRectF(at.x() - 9, at.y() - 9, 18, 18)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(inks.paper))
    painter.drawEllipse(place)
    painter.setPen(QColor(inks.words))
    painter.drawText(place, Qt.AlignmentFlag.AlignCenter, "?")


def _caption(tendon: TendonDrawing) -> str:
    return "\n".join([f"{tendon.name}: {_strands(tendon)}", _peripheral(tendon), _gap(tendon)])


def _strands(tendon: TendonDrawing) -> str:
    strands, size = tendon.told.get("strands"), tendon.told.get("size")
    proposed = "" if strands is None or strands.settled else " (proposed)"
    count = f"{strands.value} core strands{proposed}" if strands else "core strands not stated"
    return f"{count}, {size.words()}" if size else f"{count}, size not stated"


def _peripheral(tendon: TendonDrawing) -> str:
    told = tendon.told.get("peripheral")
    if told is None:
        return "peripheral suture not stated"
    proposed = "" if told.settled else " (proposed)"
    return f"peripheral suture{proposed}" if told.value == "present" else f"no peripheral suture{proposed}"


def _gap(tendon: TendonDrawing) -> str:
    gap, width = tendon.told.get("gap"), tendon.told.get("gap_mm")
    if gap is None:
        return "gap not stated"
    proposed = "" if gap.settled else " (proposed)"
    if gap.value == "none":
        return f"no gap{proposed}"
    return f"gap {width.words()}" if width else f"gap seen{proposed}"
