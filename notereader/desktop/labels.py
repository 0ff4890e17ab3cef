"""Words on the screen that are never taken for markup, whatever a note or a file name holds."""

from html import escape

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QMessageBox, QWidget


def plain_label(words: str = "", part: str = "") -> QLabel:
    """Return a label that shows its words as they are and breaks them where the width ends.

    `part` is how the style sheet calls it: 'muted', 'trouble' or nothing.
    """
    label = QLabel(words)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setWordWrap(True)
    label.setProperty("part", part)
    return label


def plain_tip(words: str) -> str:
    """Return words for a tool tip: Qt would guess from the first ones whether they are markup."""
    return f"<p>{escape(words)}</p>"


def question_box(parent: QWidget, question: str) -> QMessageBox:
    """Return a box that asks yes or no and shows the question as it is; it may quote a file or what a person typed."""
    yes, no = QMessageBox.StandardButton.Yes, QMessageBox.StandardButton.No
    box = QMessageBox(QMessageBox.Icon.Question, "notereader", question, yes | no, parent)
    box.setTextFormat(Qt.TextFormat.PlainText)
    return box


def agreed(parent: QWidget, question: str) -> bool:
    """Ask a yes or no question and return whether the answer was yes."""
    return question_box(parent, question).exec() == QMessageBox.StandardButton.Yes
