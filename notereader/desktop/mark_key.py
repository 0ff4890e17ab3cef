"""The line below the note that shows what each kind of mark means."""

from collections.abc import Mapping

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QResizeEvent, QTextCharFormat, QTextCursor
from PySide6.QtWidgets import QTextEdit, QWidget

from notereader.desktop.look import Look
from notereader.desktop.themes import MarkKind, mark_format

NAMES = {kind: kind.value for kind in MarkKind}


class MarkKey(QTextEdit):
    """Writes the name of each mark in its own look; as high as its lines need."""

    def __init__(self, look: Look, names: Mapping[MarkKind, str] = NAMES, parent: QWidget | None = None):
        super().__init__(parent)
        self._look = look
        self._names = names
        self.setReadOnly(True)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setFrameShape(QTextEdit.Shape.NoFrame)
        self.setStyleSheet("QTextEdit { border: none; background: transparent; }")
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName("What the marks in the note mean")
        look.changed.connect(self._write)
        self._write()

    def sizeHint(self) -> QSize:  # noqa: N802
        """Return the size its lines need."""
        return QSize(200, self._height())

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        """Grow with the number of lines."""
        super().resizeEvent(event)
        self.setFixedHeight(self._height())

    def _height(self) -> int:
        return round(self.document().size().height()) + 4

    def _write(self) -> None:
        self.document().setDefaultFont(self.font())
        self.clear()
        cursor = QTextCursor(self.document())
        for kind, name in self._names.items():
            cursor.insertText(name, mark_format(self._look.theme, kind))
            cursor.insertText("   ", QTextCharFormat())
        self.setFixedHeight(self._height())
