"""The marking beside the note: each difference with its words, why it matters, and the way on."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QSplitter, QTextBrowser, QVBoxLayout, QWidget

from notereader.desktop.labels import plain_label
from notereader.desktop.look import Look
from notereader.desktop.mark_key import MarkKey
from notereader.desktop.marks import Span
from notereader.desktop.note_view import NoteView
from notereader.desktop.practice.naming import level_words
from notereader.desktop.practice.parts import button, filled, goes_back, in_a_row
from notereader.desktop.themes import MarkKind, larger
from notereader.record import Address

if TYPE_CHECKING:
    from notereader.desktop.practice.marking_lines import Line
    from notereader.practice import Case, Marking

_MARKS = {MarkKind.IN_HAND: "words that say it", MarkKind.RIVAL: "words you marked"}
_PLACE = Address("operation")


class MarkingPage(QWidget):
    """Shows one marking. Where the case is not in the set any more, its note is missing and the words still stand."""

    next_wanted = Signal()
    again_wanted = Signal(str)
    progress_wanted = Signal()
    left = Signal()

    def __init__(self, look: Look):
        super().__init__()
        self._look = look
        self._lines: list[Line] = []
        self._case_id = ""
        self.strip = plain_label()
        self.strip.setAccessibleName("The marking in one line")
        self.caution = plain_label(part="muted")
        self.note = NoteView(look)
        self.note.setAccessibleDescription("The note, with the words of the line in hand marked.")
        self.list = QListWidget()
        self.list.setAccessibleName("Marking")
        self.list.setAccessibleDescription("Up and down go through the differences; what each means stands below.")
        self.list.setWordWrap(True)
        self.list.setSpacing(2)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.detail = QTextBrowser()
        self.detail.setAccessibleName("What the line in hand means")
        self.detail.setOpenLinks(False)
        self.detail.setTabChangesFocus(True)
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.note, 1)
        column.addWidget(MarkKey(look, _MARKS))
        right = QSplitter(Qt.Orientation.Vertical)
        right.addWidget(self.list)
        right.addWidget(self.detail)
        right.setChildrenCollapsible(False)
        for part in (self.list, self.detail):
            part.setMinimumHeight(120)
        whole = QSplitter(Qt.Orientation.Horizontal)
        whole.addWidget(left)
        whole.addWidget(right)
        whole.setSizes([460, 540])
        whole.setChildrenCollapsible(False)
        self.next = button("Take the ne&xt case", self.next_wanted.emit)
        self.again = button("Take this case a&gain", lambda: self.again_wanted.emit(self._case_id))
        self.progress = button("Pr&ogress, export …", self.progress_wanted.emit)
        self.back = button("All cases  Esc", self.left.emit)
        layout = filled(self, (8, 6, 8, 8), "Marking and note")
        layout.addWidget(self.strip)
        layout.addWidget(whole, 1)
        layout.addLayout(in_a_row(self.next, self.again, self.progress, self.back))
        layout.addWidget(self.caution)
        self.list.currentRowChanged.connect(self._show_line)
        goes_back(self, self.left.emit)
        for keys, way in (("F6", 1), ("Shift+F6", -1)):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(lambda way=way: self._walk(way))
        look.changed.connect(self._dress)

    def show_marking(self, marking: "Marking", case: "Case | None") -> None:
        """Show a marking beside its note."""
        from notereader.desktop.practice.marking_lines import headline, lines_of

        self._case_id = marking.case
        self._lines = lines_of(marking)
        self.strip.setText(f"{marking.case}, {level_words(marking.difficulty)}  ·  {headline(marking)}")
        self.caution.setText(marking.cautions[0])
        self.note.show_note(case.text if case else "")
        self.note.setPlaceholderText("This case is not among the cases any more, so its note cannot be shown.")
        self.again.setEnabled(case is not None)
        self.list.clear()
        for line in self._lines:
            item = QListWidgetItem(line.title)
            if line.heading:
                item.setFlags(Qt.ItemFlag.NoItemFlags)
            self.list.addItem(item)
        self._dress()
        self.list.setCurrentRow(0)
        self.list.setFocus()

    def _show_line(self, row: int) -> None:
        if not 0 <= row < len(self._lines):
            return
        line = self._lines[row]
        self.detail.setHtml(line.html)
        kinds = ((line.said_words, MarkKind.RIVAL), (line.key_words, MarkKind.IN_HAND))
        spans = [Span(start, end, _PLACE, kind) for words, kind in kinds for start, end in words]
        # The words that say it come first, for the note scrolls to the first.
        self.note.show_in_hand(sorted(spans, key=lambda span: span.kind is not MarkKind.IN_HAND))

    def _walk(self, way: int) -> None:
        parts: list[QWidget] = [self.note, self.list, self.detail, self.next]
        here = self.focusWidget()
        at = parts.index(here) if here in parts else 0
        parts[(at + way) % len(parts)].setFocus(Qt.FocusReason.ShortcutFocusReason)

    def _dress(self) -> None:
        for row, line in enumerate(self._lines):
            if line.heading:
                item = self.list.item(row)
                item.setFont(larger(self.font(), 1.05, bold=True))
                item.setForeground(self.palette().text())
                item.setBackground(self.palette().window())
