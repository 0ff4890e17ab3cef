"""Small parts that every page of practice has: buttons, their row, a title, the key that goes back."""

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QWidget

from notereader.desktop.flow_layout import FlowLayout
from notereader.desktop.labels import plain_label
from notereader.desktop.look import Look
from notereader.desktop.themes import larger


def button(words: str, do: Callable[[], object]) -> QPushButton:
    """Return a button; an ampersand before a letter makes Alt and the letter press it, two blanks part its key."""
    made = QPushButton(words)
    made.setAccessibleName(words.replace("&", "").split("  ")[0].removesuffix(" …"))
    made.clicked.connect(lambda: do())
    return made


def in_a_row(*buttons: QWidget) -> FlowLayout:
    """Return buttons beside one another, in as many lines as they need."""
    row = FlowLayout()
    for one in buttons:
        row.addWidget(one)
    return row


def title(words: str, look: Look, share: float = 1.5) -> QLabel:
    """Return a title whose letters follow the look."""
    label = plain_label(words)

    def dress() -> None:
        label.setFont(larger(QApplication.font(), share, bold=True))

    look.changed.connect(dress)
    dress()
    return label


def goes_back(page: QWidget, back: Callable[[], object]) -> None:
    """Let Esc go back from a page."""
    shortcut = QShortcut(QKeySequence("Esc"), page)
    shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
    shortcut.activated.connect(lambda: back())
