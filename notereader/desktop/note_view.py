"""The note as text: read-only, comfortable to read, with the words of the facts marked."""

import re
from itertools import groupby

from PySide6.QtCore import QPointF, Qt, QTimer, Signal
from PySide6.QtGui import (
    QColor,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPolygonF,
    QResizeEvent,
    QTextBlockFormat,
    QTextCharFormat,
    QTextCursor,
    QTextDocument,
    QTextOption,
)
from PySide6.QtWidgets import QTextEdit, QWidget

from notereader.desktop.columns import column_format, columned_lines
from notereader.desktop.look import Look
from notereader.desktop.marks import Span, facts_at, marks_of
from notereader.desktop.positions import Positions, shown
from notereader.desktop.themes import MarkKind, mark_format
from notereader.record import Record

# Letters a line at most: in longer lines the eye loses its way back. Common practice.
LINE_LETTERS = 76
_ENDLESS_WORD = re.compile(r"\S{2000}")
_LINE_HEIGHT_PERCENT = 132.0
_MARGIN = 22
# Later ones are drawn over earlier ones: words that serve several facts look settled only when all of them are.
_ORDER = (
    MarkKind.CONFIRMED,
    MarkKind.CORRECTED,
    MarkKind.ADDED,
    MarkKind.RIVAL,
    MarkKind.PROPOSED,
    MarkKind.LOOK_TWICE,
    MarkKind.IN_HAND,
)
_RANK = {kind: rank for rank, kind in enumerate(_ORDER)}


class NoteView(QTextEdit):
    """Shows one note; `chosen` goes out with the fact whose words were clicked or asked for under the caret."""

    chosen = Signal(object)

    def __init__(self, look: Look, parent: QWidget | None = None):
        super().__init__(parent)
        self._look = look
        self._text = ""
        self._positions = Positions("")
        self._marks: list[Span] = []
        self._in_hand: list[Span] = []
        # The marks as Qt keeps them, each made once: most stay as they are from one change to the next.
        self._made: dict[tuple[int, int, int], QTextEdit.ExtraSelection] = {}
        self.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
        self.setAccessibleName("Note")
        self.setAccessibleDescription("The note. Return brings the fact whose words are under the caret.")
        self.setLineWrapMode(QTextEdit.LineWrapMode.FixedPixelWidth)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setMinimumWidth(220)
        # A note dropped here is meant for the window, which reads it; the text of this one is never changed.
        self.setAcceptDrops(False)
        look.changed.connect(self._dress_anew)

    def show_note(self, text: str) -> None:
        """Show the text of a note; positions given later count its code points."""
        self._text = text
        self._positions = Positions(text)
        self._marks, self._in_hand, self._made = [], [], {}
        self.document().setDocumentMargin(_MARGIN)
        self.document().setUndoRedoEnabled(False)
        # Qt takes minutes to break a run of letters this long at words. Nobody reads that, but it may be pasted.
        wrap = QTextOption.WrapMode
        unreadable = _ENDLESS_WORD.search(text) is not None
        self.setWordWrapMode(wrap.WrapAnywhere if unreadable else wrap.WrapAtWordBoundaryOrAnywhere)
        self._fit_lines()
        self.clear()
        spaced = QTextBlockFormat()
        spaced.setLineHeight(_LINE_HEIGHT_PERCENT, QTextBlockFormat.LineHeightTypes.ProportionalHeight.value)
        # The lines get their height as they are written: changing it afterwards would lay out everything again.
        cursor = QTextCursor(self.document())
        cursor.beginEditBlock()
        cursor.setBlockFormat(spaced)
        _write(cursor, shown(text))
        cursor.endEditBlock()
        self.moveCursor(QTextCursor.MoveOperation.Start)

    def show_record(self, record: Record, in_hand: list[Span] | None = None) -> None:
        """Mark the words of every fact of a record, and strongest those in hand; without `in_hand` those stay."""
        self._marks = marks_of(record)
        self._in_hand = self._in_hand if in_hand is None else in_hand
        self._dress()

    def show_in_hand(self, spans: list[Span]) -> None:
        """Mark these words strongest and scroll to the first of them."""
        self._in_hand = spans
        self._dress()
        if spans:
            self._scroll_to(spans[0])

    def selected_span(self) -> tuple[int, int] | None:
        """Return the selected words as code points, without blanks at either end; None where nothing is selected."""
        cursor = self.textCursor()
        start, end = self._positions.span_to_points(cursor.selectionStart(), cursor.selectionEnd())
        words = self._text[start:end]
        start += len(words) - len(words.lstrip())
        end -= len(words) - len(words.rstrip())
        return (start, end) if end > start else None

    def select_span(self, start: int, end: int) -> None:
        """Select words given in code points."""
        cursor = self.textCursor()
        cursor.setPosition(self._positions.to_utf16(start))
        cursor.setPosition(self._positions.to_utf16(end), QTextCursor.MoveMode.KeepAnchor)
        self.setTextCursor(cursor)

    def clear_selection(self) -> None:
        """Select nothing any more."""
        cursor = self.textCursor()
        cursor.clearSelection()
        self.setTextCursor(cursor)

    def find_words(self, words: str) -> bool:
        """Select the next place of these words after the caret, from the top again at the end; False where none is."""
        if not words:
            return False
        if self.find(words):
            return True
        self.moveCursor(QTextCursor.MoveOperation.Start)
        return self.find(words, QTextDocument.FindFlag(0))

    def choose_at_caret(self) -> bool:
        """Bring the fact whose words are under the caret, another one each time it is asked; False where none is."""
        hits = facts_at(self._marks, self._positions.to_points(self.textCursor().position()))
        if not hits:
            return False
        # Words that prove several facts give them one after the other.
        in_hand = self._in_hand[0].address if self._in_hand else None
        following = hits[(hits.index(in_hand) + 1) % len(hits)] if in_hand in hits else hits[0]
        self.chosen.emit(following)
        return True

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        """Choose the fact whose words were clicked."""
        super().mouseReleaseEvent(event)
        if event.button() == Qt.MouseButton.LeftButton and not self.textCursor().hasSelection():
            self.choose_at_caret()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        """Keep lines at a comfortable length."""
        super().resizeEvent(event)
        self._fit_lines()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802
        """Draw the text, and an arrow in the margin beside the words of the fact in hand."""
        super().paintEvent(event)
        if not self._in_hand:
            return
        painter = QPainter(self.viewport())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setBrush(QColor(self._look.theme.accent))
        painter.setPen(Qt.PenStyle.NoPen)
        for span in self._in_hand:
            if span.kind is MarkKind.IN_HAND:
                place = self.cursorRect(self._cursor(span.start))
                middle, size = place.center().y(), 6.0
                left = _MARGIN - 16.0
                arrow = [QPointF(left, middle - size), QPointF(left, middle + size), QPointF(left + 9, middle)]
                painter.drawPolygon(QPolygonF(arrow))
        painter.end()

    def _cursor(self, start: int, end: int | None = None) -> QTextCursor:
        cursor = QTextCursor(self.document())
        cursor.setPosition(self._positions.to_utf16(start))
        if end is not None:
            cursor.setPosition(self._positions.to_utf16(end), QTextCursor.MoveMode.KeepAnchor)
        return cursor

    def _dress_anew(self) -> None:
        self._made = {}
        self._dress()

    def _dress(self) -> None:
        """Mark everything, each place once for each kind."""
        wanted = sorted({(_RANK[span.kind], span.start, span.end) for span in (*self._marks, *self._in_hand)})
        self._made = {place: self._made.get(place) or self._selection(*place) for place in wanted}
        self.setExtraSelections(list(self._made.values()))

    def _selection(self, rank: int, start: int, end: int) -> QTextEdit.ExtraSelection:
        selection = QTextEdit.ExtraSelection()
        selection.cursor = self._cursor(start, end)
        selection.format = mark_format(self._look.theme, _ORDER[rank])
        return selection

    def _scroll_to(self, span: Span) -> None:
        place = self.cursorRect(self._cursor(span.start))
        port = self.viewport().rect()
        if place.top() < port.top() + place.height() or place.bottom() > port.bottom() - 2 * place.height():
            bar = self.verticalScrollBar()
            bar.setValue(bar.value() + place.center().y() - port.height() * 2 // 5)

    def _fit_lines(self) -> None:
        width = min(self.viewport().width(), self.fontMetrics().averageCharWidth() * LINE_LETTERS + 2 * _MARGIN)
        if width > 0 and width != self.lineWrapColumnOrWidth():
            self.setLineWrapColumnOrWidth(width)
            # The new width moves every line, the words in hand with them.
            QTimer.singleShot(0, self, self._keep_in_sight)

    def _keep_in_sight(self) -> None:
        if self._in_hand:
            self._scroll_to(self._in_hand[0])


def _write(cursor: QTextCursor, text: str) -> None:
    """Insert a note, its lines that stand in columns in letters of one width."""
    lines = text.split("\n")
    parts = groupby(zip(columned_lines(text), lines, strict=True), key=lambda part: part[0])
    for n, (columned, part) in enumerate(parts):
        written = "\n".join(line for _, line in part)
        cursor.insertText("\n" * (n > 0) + written, column_format() if columned else QTextCharFormat())
