"""Paints the lines of the list of facts: a heading, or a row of two lines."""

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem

from notereader.desktop.facts_model import COUNT, ITEM
from notereader.desktop.look import Look
from notereader.desktop.rows import Heading, Row, Standing
from notereader.desktop.signs import draw_sign
from notereader.desktop.themes import MarkKind, Theme, larger

_PAD = 6
_UNREAD_BAR = 5
_SMALL = 0.88


class RowPainter(QStyledItemDelegate):
    """Draws headings and rows in the colours of the look."""

    def __init__(self, look: Look):
        super().__init__(look)
        self._look = look

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex) -> QSize:  # noqa: N802
        """Return the height of one line of the list."""
        height = option.fontMetrics.height()
        item = index.data(ITEM)
        if isinstance(item, Heading):
            return QSize(10, height + 3 * _PAD)
        if item.fact is None:
            return QSize(10, height + 2 * _PAD)
        small = QFontMetrics(larger(option.font, _SMALL)).height()
        return QSize(10, height + small + 2 * _PAD)

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        """Draw one line of the list."""
        painter.save()
        item = index.data(ITEM)
        if isinstance(item, Heading):
            self._heading(painter, option, item, index.data(COUNT))
        else:
            self._row(painter, option, item)
        painter.restore()

    def _heading(self, painter: QPainter, option: QStyleOptionViewItem, item: Heading, count: str) -> None:
        theme = self._look.theme
        place = option.rect
        painter.fillRect(place, QColor(theme.window))
        words = place.adjusted(_PAD, _PAD, -_PAD, 0)
        painter.setPen(QColor(theme.text))
        painter.setFont(larger(option.font, 1.05, bold=True))
        _write(painter, words, item.title, Qt.AlignmentFlag.AlignVCenter)
        painter.setFont(larger(option.font, _SMALL))
        painter.setPen(QColor(theme.muted))
        _write(painter, words, count, _RIGHT)
        painter.setPen(QPen(QColor(theme.edge), 1))
        painter.drawLine(place.bottomLeft(), place.bottomRight())

    def _row(self, painter: QPainter, option: QStyleOptionViewItem, row: Row) -> None:
        theme = self._look.theme
        place = option.rect
        in_hand = bool(option.state & QStyle.StateFlag.State_Selected)
        painter.fillRect(place, QColor(theme.row_in_hand if in_hand else theme.base))
        if in_hand:
            painter.setPen(QPen(QColor(theme.accent), 2))
            painter.drawRect(place.adjusted(1, 1, -2, -2))
        if row.unread:
            painter.fillRect(place.left() + 2, place.top() + 3, _UNREAD_BAR, place.height() - 6, QColor(theme.accent))
        self._sign(painter, option, row, theme)
        left = place.left() + _UNREAD_BAR + option.fontMetrics.height() + 3 * _PAD
        lines = QRect(left, place.top() + _PAD, place.right() - left - _PAD, place.height() - 2 * _PAD)
        self._first_line(painter, option, row, lines, theme)
        if row.fact is not None:
            self._second_line(painter, option, row, lines, theme)

    def _sign(self, painter: QPainter, option: QStyleOptionViewItem, row: Row, theme: Theme) -> None:
        side = option.fontMetrics.height() * 0.95
        place = QRectF(option.rect.left() + _UNREAD_BAR + _PAD, option.rect.top() + _PAD, side, side)
        doubt = row.unsettled and row.needs_thought
        draw_sign(painter, place, row.standing, look_twice=doubt, ink=_ink_of(row, theme), paper=QColor(theme.base))

    def _first_line(
        self, painter: QPainter, option: QStyleOptionViewItem, row: Row, lines: QRect, theme: Theme
    ) -> None:
        line = QRect(lines.left(), lines.top(), lines.width(), option.fontMetrics.height())
        strong = larger(option.font, 1.0, bold=True)
        label, value = f"{row.label}  ", row.value
        wanted = _width(option.font, label) + 2 + _width(strong, value)
        standing_font = larger(option.font, _SMALL, bold=row.unread)
        standing = f"{row.word} · unread" if row.unread else row.word
        if wanted + _width(standing_font, standing) + 2 * _PAD > line.width() and row.unread:
            standing = "unread"  # The sign still says the rest.
        painter.setFont(standing_font)
        painter.setPen(_ink_of(row, theme))
        _write(painter, line, standing, _RIGHT)
        room = line.width() - _width(standing_font, standing) - 2 * _PAD
        # In a narrow list the value matters more than the whole name of the field.
        width = min(_width(option.font, label) + 2, max(room * 2 // 5, room - _width(strong, value) - 2))
        painter.setFont(option.font)
        painter.setPen(QColor(theme.muted))
        _write(painter, QRect(line.left(), line.top(), width, line.height()), label)
        strong.setStrikeOut(row.standing is Standing.WITHDRAWN)
        painter.setFont(strong)
        painter.setPen(QColor(theme.text))
        _write(painter, QRect(line.left() + width, line.top(), room - width, line.height()), value)

    def _second_line(
        self, painter: QPainter, option: QStyleOptionViewItem, row: Row, lines: QRect, theme: Theme
    ) -> None:
        painter.setFont(larger(option.font, _SMALL))
        height = painter.fontMetrics().height()
        line = QRect(lines.left(), lines.bottom() - height + 1, lines.width(), height)
        warning = " · ".join(_warnings(row))
        if warning:
            painter.setPen(QColor(theme.marks[MarkKind.LOOK_TWICE].line if row.unsettled else theme.muted))
            _write(painter, line, warning, _RIGHT)
        room = line.width() - (painter.fontMetrics().horizontalAdvance(warning) + 2 * _PAD if warning else 0)
        painter.setPen(QColor(theme.muted))
        _write(painter, QRect(line.left(), line.top(), room, height), _quote_line(row))


_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


def _write(painter: QPainter, place: QRect, words: str, how: Qt.AlignmentFlag = Qt.AlignmentFlag.AlignVCenter) -> None:
    cut = painter.fontMetrics().elidedText(words, Qt.TextElideMode.ElideRight, max(0, place.width()))
    painter.drawText(place, how | Qt.TextFlag.TextSingleLine, cut)


def _width(font: QFont, words: str) -> int:
    return QFontMetrics(font).horizontalAdvance(words)


def _ink_of(row: Row, theme: Theme) -> QColor:
    return QColor(theme.standing_ink(row.standing, doubt=row.unsettled and row.needs_thought))


def _warnings(row: Row) -> list[str]:
    found = []
    if row.rivals:
        found.append(f"note also says {', '.join(row.rivals)}")
    if row.reasons:
        found.append("look twice" if len(row.reasons) == 1 else f"look twice: {len(row.reasons)} reasons")
    return found


def _quote_line(row: Row) -> str:
    if row.elsewhere:
        return row.elsewhere
    if row.quote:
        return f"“{row.quote}”"
    return "the note does not say" if row.standing is Standing.SILENT else "entered without words of the note"
