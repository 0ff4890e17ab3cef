"""The note as it is looked through before sharing: what will be changed and what is kept, marked."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QTextCharFormat
from PySide6.QtWidgets import QTextEdit, QWidget

from notereader.desktop.look import Look
from notereader.desktop.note_view import NoteView
from notereader.desktop.themes import MarkKind

if TYPE_CHECKING:
    from notereader.sharing import Find


@dataclass(frozen=True)
class Choice:
    """A find and whether the person lets it be changed in the copy."""

    find: "Find"
    changed: bool = True


class FindsView(NoteView):
    """Marks what will be changed by a ground and a line through, what is kept by dots below."""

    def __init__(self, look: Look, parent: QWidget | None = None):
        self._choices: Sequence[Choice] = ()
        self._current: int | None = None
        super().__init__(look, parent)
        self.setAccessibleName("The note, with what was found marked")
        self.setAccessibleDescription("Select words with Shift and the arrow keys to have them blanked too.")

    def show_choices(self, choices: Sequence[Choice], current: int | None) -> None:
        """Mark the finds; the one in hand, by its number in the list, is boxed and brought into sight."""
        self._choices, self._current = choices, current
        self._dress()
        if current is not None:
            cursor = self._cursor(choices[current].find.start)
            place = self.cursorRect(cursor)
            if not self.viewport().rect().contains(place):
                bar = self.verticalScrollBar()
                bar.setValue(bar.value() + place.center().y() - self.viewport().height() * 2 // 5)
        self.viewport().update()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802
        """Draw the note, and a box around the find in hand."""
        super().paintEvent(event)
        if self._current is None or self._current >= len(self._choices):
            return
        painter = QPainter(self.viewport())
        painter.setPen(QColor(self._look.theme.accent))
        for box in self._boxes(self._choices[self._current].find):
            painter.drawRect(box.adjusted(-2, -1, 2, 1))
        painter.end()

    def _boxes(self, find: "Find") -> list[QRect]:
        """Return the place of a find on the screen, a box for each line."""
        boxes: list[QRect] = []
        for position in range(find.start, find.end):
            left, right = self.cursorRect(self._cursor(position)), self.cursorRect(self._cursor(position + 1))
            if right.top() != left.top():
                continue  # The blank at which the line breaks.
            box = QRect(left.topLeft(), QPoint(right.left(), left.bottom()))
            if boxes and boxes[-1].top() == box.top():
                boxes[-1] = boxes[-1].united(box)
            else:
                boxes.append(box)
        return boxes

    def _dress(self) -> None:
        selections = []
        for choice in self._choices:
            selection = QTextEdit.ExtraSelection()
            selection.cursor = self._cursor(choice.find.start, choice.find.end)
            selection.format = self._format(choice.changed)
            selections.append(selection)
        self.setExtraSelections(selections)

    def _format(self, changed: bool) -> QTextCharFormat:
        mark = self._look.theme.marks[MarkKind.LOOK_TWICE if changed else MarkKind.CONFIRMED]
        look = QTextCharFormat()
        look.setForeground(QColor(mark.letters))
        if changed:
            look.setBackground(QColor(mark.ground))
            look.setFontStrikeOut(True)
        else:
            look.setUnderlineColor(QColor(mark.line))
            look.setUnderlineStyle(QTextCharFormat.UnderlineStyle.DotLine)
        return look


KEY = (
    "In the note: struck out = changed in the copy; dotted below = kept as it is; boxed = the line in hand of the list."
)

# What a checked line of the list means to Qt.
CHECKED, UNCHECKED = Qt.CheckState.Checked, Qt.CheckState.Unchecked
