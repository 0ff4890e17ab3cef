"""The side pane of a case in practice: what is asked, the contradictions named, the questions ranked."""

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFontMetrics, QKeySequence, QShortcut
from PySide6.QtWidgets import QApplication, QListWidget, QPushButton, QScrollArea, QVBoxLayout, QWidget

from notereader.desktop.labels import plain_label
from notereader.desktop.look import Look
from notereader.desktop.practice.parts import Title, in_a_row

TASK = (
    "1. Read the note. Select its words (F6 goes there, Shift and arrows select), then enter the fact they say: "
    "Return on its line. Tendons, pulleys and other structures are added with A.",
    "2. What changes the work and is left unsaid stands as 'open': S says that the note is silent.",
    "3. Where the note contradicts itself: C on the fact. Of two values, enter the one that promises less.",
    "4. Which three answers of the surgeon would help most? Q on each fact, the most telling first.",
    "5. Hand in. Every step is saved at once; you can leave and come back.",
)
# Lines that a list of contradictions or questions shows without scrolling; three questions are asked.
_LINES = 4
AGAIN = (
    "Enter again only the facts listed; they were missed before. Select the words that say it, then Return on its "
    "line. Where the note says nothing of it: S. Then hand in.",
)


class AnswerPane(QScrollArea):
    """Shows contradictions and questions; what is to be done with them goes out by signals."""

    hand_in_wanted = Signal()
    leaving = Signal()
    contradiction_dropped = Signal(int)
    question_moved = Signal(int, int)
    question_dropped = Signal(int)

    def __init__(self, look: Look, task: Sequence[str], parent: QWidget | None = None):
        super().__init__(parent)
        self.contradictions = _listing("Contradictions you named")
        self.questions = _listing("Questions you ranked, the most telling first")
        self.drop_contradiction = self._button(
            "Take back", "Take this contradiction back", self.contradictions, self.contradiction_dropped.emit
        )
        self.up = self._button("Up", "Move this question up", self.questions, lambda n: self.question_moved.emit(n, -1))
        self.down = self._button(
            "Down", "Move this question down", self.questions, lambda n: self.question_moved.emit(n, 1)
        )
        self.drop_question = self._button(
            "Take back", "Take this question back", self.questions, self.question_dropped.emit
        )
        hand_in = QPushButton("Hand in …  Ctrl+Return")
        hand_in.setAccessibleName("Hand in")
        hand_in.clicked.connect(self.hand_in_wanted)
        leave = QPushButton("Leave, go on later  F8")
        leave.setAccessibleName("Leave this case and go on later")
        leave.clicked.connect(self.leaving)
        inner = QWidget()
        column = QVBoxLayout(inner)
        column.setContentsMargins(6, 6, 6, 6)
        column.addWidget(Title("What is asked", look, 1.1))
        for words in task:
            column.addWidget(plain_label(words))
        self._second = QWidget()
        second = QVBoxLayout(self._second)
        second.setContentsMargins(0, 0, 0, 0)
        for words, listing, buttons in (
            ("Contradictions you named", self.contradictions, (self.drop_contradiction,)),
            ("Your questions for the surgeon", self.questions, (self.up, self.down, self.drop_question)),
        ):
            second.addWidget(Title(words, look, 1.1))
            second.addWidget(listing)
            second.addLayout(in_a_row(*buttons))
        column.addWidget(self._second)
        column.addLayout(in_a_row(hand_in, leave))
        column.addStretch(1)
        self.setWidget(inner)
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setAccessibleName("What is asked and what you answered beside the facts")
        for listing, slot in (
            (self.contradictions, self.drop_contradiction.click),
            (self.questions, self.drop_question.click),
        ):
            shortcut = QShortcut(QKeySequence("Del"), listing)
            shortcut.setContext(Qt.ShortcutContext.WidgetShortcut)
            shortcut.activated.connect(slot)
        look.changed.connect(self._fit)
        self._fit()

    def hide_lists(self) -> None:
        """Leave out contradictions and questions, where the exercise asks for neither."""
        self._second.hide()

    def show_answers(self, contradictions: Sequence[str], questions: Sequence[str]) -> None:
        """Show what was named and ranked."""
        _fill(self.contradictions, contradictions, "None named.")
        _fill(self.questions, [f"{n}. {words}" for n, words in enumerate(questions, 1)], "None ranked.")
        self.drop_contradiction.setEnabled(bool(contradictions))
        for button in (self.up, self.down, self.drop_question):
            button.setEnabled(bool(questions))

    def _button(self, words: str, name: str, listing: QListWidget, do: Callable[[int], object]) -> QPushButton:
        button = QPushButton(words)
        button.setAccessibleName(name)
        button.clicked.connect(lambda: do(max(0, listing.currentRow())))
        return button

    def _fit(self) -> None:
        """Let each list be as high as its usual lines."""
        for listing in (self.contradictions, self.questions):
            listing.setFixedHeight(QFontMetrics(QApplication.font()).height() * _LINES + 12)


def _listing(name: str) -> QListWidget:
    listing = QListWidget()
    listing.setAccessibleName(name)
    listing.setWordWrap(True)
    return listing


def _fill(listing: QListWidget, lines: Sequence[str], none: str) -> None:
    row = max(0, listing.currentRow())
    listing.clear()
    listing.addItems(list(lines) or [none])
    listing.setCurrentRow(min(row, listing.count() - 1))
