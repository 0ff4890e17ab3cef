"""While a note is read: its text on one side, what is being done on the other, and a way to stop."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QProgressBar, QPushButton, QSplitter, QVBoxLayout, QWidget

from notereader.desktop.labels import plain_label
from notereader.desktop.look import Look
from notereader.desktop.note_view import NoteView


class ReadingPage(QWidget):
    """Shows that something goes on; `cancelled` goes out when the person has waited enough."""

    cancelled = Signal()

    def __init__(self, look: Look, parent: QWidget | None = None):
        super().__init__(parent)
        self._note = NoteView(look)
        self._stage = plain_label()
        self._stage.setAccessibleName("What is being done")
        bar = QProgressBar()
        bar.setRange(0, 0)
        bar.setTextVisible(False)
        bar.setAccessibleName("Work under way")
        self._cancel = QPushButton("Stop  Esc")
        self._cancel.setAccessibleName("Stop reading")
        self._cancel.clicked.connect(self.cancelled)
        shortcut = QShortcut(QKeySequence("Esc"), self)
        shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        shortcut.activated.connect(self.cancelled)
        side = QWidget()
        column = QVBoxLayout(side)
        column.addStretch(1)
        for part in (self._stage, bar, self._cancel):
            column.addWidget(part)
        column.addStretch(2)
        split = QSplitter()
        split.addWidget(self._note)
        split.addWidget(side)
        layout = QVBoxLayout(self)
        layout.addWidget(split)
        self.setFocusProxy(self._cancel)

    def begin(self, stage: str) -> None:
        """Start with an empty note side."""
        self._note.show_note("")
        self.say(stage)

    def show_note(self, text: str) -> None:
        """Show the text that is being read."""
        self._note.show_note(text)

    def say(self, stage: str) -> None:
        """Say what is being done now."""
        self._stage.setText(stage)
