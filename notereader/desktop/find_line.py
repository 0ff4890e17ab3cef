"""The line below the note to find words in it."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QWidget

from notereader.desktop.labels import plain_label
from notereader.desktop.note_view import NoteView


class FindLine(QWidget):
    """Hidden until asked for; Return finds the next place, Esc goes back to the note."""

    def __init__(self, note: NoteView, parent: QWidget | None = None):
        super().__init__(parent)
        self._note = note
        self._words = QLineEdit()
        self._words.setPlaceholderText("Find in the note")
        self._words.setAccessibleName("Find in the note")
        self._told = plain_label(part="trouble")
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 2, 0, 2)
        layout.addWidget(self._words, 1)
        layout.addWidget(self._told)
        self._words.returnPressed.connect(self.next)
        leave = QShortcut(QKeySequence("Esc"), self)
        leave.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        leave.activated.connect(self._leave)
        self.hide()

    def begin(self) -> None:
        """Show the line and wait for words."""
        self.show()
        self._words.setFocus()
        self._words.selectAll()

    def next(self) -> None:
        """Find the next place of the words, or ask for words."""
        if not self._words.text():
            self.begin()
            return
        self._told.setText("" if self._note.find_words(self._words.text()) else "not in the note")

    def _leave(self) -> None:
        self.hide()
        self._note.setFocus()
