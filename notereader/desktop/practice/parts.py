"""Small parts that every page of practice has: buttons, their row, a title, the key that goes back."""

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from notereader.desktop.flow_layout import FlowLayout
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


class Title(QLabel):
    """A title whose letters follow the look; plain words, never markup."""

    def __init__(self, words: str, look: Look, share: float = 1.5):
        super().__init__(words)
        self._share = share
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setWordWrap(True)
        # A method, so that the connection ends with the label.
        look.changed.connect(self._dress)
        self._dress()

    def _dress(self) -> None:
        self.setFont(larger(QApplication.font(), self._share, bold=True))


def filled(page: QWidget, margins: tuple[int, int, int, int], name: str) -> QVBoxLayout:
    """Return the column of a page; where large letters need more height than there is, the page scrolls."""
    inner = QWidget()
    scroll = QScrollArea()
    scroll.setWidget(inner)
    scroll.setWidgetResizable(True)
    scroll.setFrameShape(QScrollArea.Shape.NoFrame)
    scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    scroll.setAccessibleName(name)
    outer = QVBoxLayout(page)
    outer.setContentsMargins(0, 0, 0, 0)
    outer.addWidget(scroll)
    column = QVBoxLayout(inner)
    column.setContentsMargins(*margins)
    return column


def goes_back(page: QWidget, back: Callable[[], object]) -> None:
    """Let Esc go back from a page."""
    shortcut = QShortcut(QKeySequence("Esc"), page)
    shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
    shortcut.activated.connect(lambda: back())
