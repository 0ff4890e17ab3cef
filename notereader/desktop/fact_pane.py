"""The fact in hand: its value and words, why to look twice, rivals, what can be done, and the editor."""

from collections.abc import Callable, Mapping

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QScrollArea, QStackedWidget, QVBoxLayout, QWidget

from notereader.desktop.editors import Typing, ValueEditor
from notereader.desktop.flow_layout import FlowLayout
from notereader.desktop.keys import key_named, keys_in_words
from notereader.desktop.labels import plain_label
from notereader.desktop.look import Look
from notereader.desktop.rows import Row, capital
from notereader.desktop.themes import larger
from notereader.record import Address, Value, ValueRefused, show_value

# Name of the key in keys.KEYS, and the short words for its button.
BUTTONS = {
    "confirm": "Confirm",
    "correct": "Enter …",
    "silent": "Note is silent",
    "withdraw": "Withdraw",
    "words": "Take selected words",
    "answer": "Surgeon's answer …",
}
# What can be done with a fact that has no value yet.
_WITHOUT_VALUE = frozenset({"correct", "answer", "silent", "ask", "add"})


class FactPane(QStackedWidget):
    """Shows one row in full, or the editor for it. It asks by signals and changes nothing itself."""

    wanted = Signal(str)
    rival_wanted = Signal(int)
    entered = Signal(object, object, bool)
    left = Signal()

    def __init__(
        self,
        look: Look,
        buttons: Mapping[str, str] = BUTTONS,
        called: Mapping[str, str] | None = None,
        typing: Typing | None = None,
        parent: QWidget | None = None,
    ):
        """Take the buttons as name of the key and short words; `called`: full words that differ from the key's.

        `typing`: how values are typed, where that is not the usual way.
        """
        super().__init__(parent)
        self._edited: Address | None = None
        self.setAccessibleName("Fact in hand")
        self._reading = ReadingSide(look, buttons, called or {}, self)
        self._reading.wanted.connect(self.wanted)
        self._reading.rival_wanted.connect(self.rival_wanted)
        self._editing = EditingSide(typing, self)
        self._editing.entered.connect(lambda value: self._finish(value, moved_on=False))
        self._editing.left.connect(self.leave_editor)
        self.addWidget(_scrolled(self._reading, "Fact in hand"))
        self.addWidget(_scrolled(self._editing, "Editor of the fact in hand"))

    @property
    def editing(self) -> bool:
        """True while the editor is shown."""
        return self.currentIndex() == 1

    def is_editing(self, row: Row | None) -> bool:
        """True while the editor of this row is open."""
        return self.editing and row is not None and row.address == self._edited

    def show_row(self, row: Row | None) -> None:
        """Show a fact. What was being entered for another one is entered first, unless it is impossible."""
        self.settle()
        self._reading.show_row(row)
        self.setCurrentIndex(0)

    def settle(self) -> str:
        """Enter what stands in an open editor; returns why that is impossible, else nothing."""
        if not self.editing:
            return ""
        try:
            value = self._editing.value()
        except ValueRefused as refusal:
            return str(refusal)
        if self._editing.touched:
            self._finish(value, moved_on=True)
        else:
            self.setCurrentIndex(0)
        return ""

    def _finish(self, value: Value, *, moved_on: bool) -> None:
        self.setCurrentIndex(0)
        self.entered.emit(self._edited, value, moved_on)

    def edit(self, row: Row, selected: str) -> None:
        """Open the editor for a row; `selected` are the words of the note that will go with the new value."""
        self._edited = row.address
        self._editing.begin(row, selected)
        self.setCurrentIndex(1)
        self._editing.setFocus()

    def leave_editor(self) -> None:
        """Close the editor without entering anything."""
        self.setCurrentIndex(0)
        self.left.emit()

    def refuse(self, words: str) -> None:
        """Say beside the fact why something was not done."""
        (self._editing if self.editing else self._reading).say(words)

    def tell(self, words: str) -> None:
        """Say beside the fact what was done or comes next."""
        self._reading.say(words, trouble=False)

    def focus_first(self) -> None:
        """Move the focus to the first control."""
        (self._editing if self.editing else self._reading).setFocus()


class ReadingSide(QWidget):
    """The fact in words, with buttons that name their keys."""

    wanted = Signal(str)
    rival_wanted = Signal(int)

    def __init__(
        self, look: Look, buttons: Mapping[str, str], called: Mapping[str, str], parent: QWidget | None = None
    ):
        super().__init__(parent)
        self._look = look
        self._called = called
        self._title = plain_label(part="muted")
        self._value = plain_label()
        self._quote = plain_label()
        self._tip = plain_label(part="muted")
        self._reasons = plain_label()
        self._trouble = plain_label(part="trouble")
        self._next = plain_label()
        self._rivals = QVBoxLayout()
        self._buttons = {name: self._button(name, words) for name, words in buttons.items()}
        row = FlowLayout()
        for button in self._buttons.values():
            row.addWidget(button)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 6, 8, 6)
        for part in (self._title, self._value, self._trouble, self._next, self._quote, self._tip, self._reasons):
            layout.addWidget(part)
        layout.addLayout(self._rivals)
        layout.addLayout(row)
        layout.addStretch(1)
        self.setFocusProxy(next(iter(self._buttons.values())))
        look.changed.connect(self._dress)
        self._dress()

    def show_row(self, row: Row | None) -> None:
        """Show a fact."""
        self.say("")
        self._title.setText(capital(row.address.words()) if row else "No fact in hand")
        self._value.setText(f"{row.value}  ·  {row.word}" if row else "")
        self._quote.setText(row.proof if row else "")
        self._tip.setText(f"What counts: {row.tip}" if row and row.tip else "")
        self._tip.setVisible(row is not None and bool(row.tip))
        reasons = row.reasons if row else ()
        self._reasons.setText(_reasons_text(reasons))
        self._reasons.setVisible(bool(reasons))
        self._show_rivals(row)
        has_value = row is not None and row.fact is not None and row.fact.value is not None
        for name, button in self._buttons.items():
            button.setEnabled(row is not None and (has_value or name in _WITHOUT_VALUE))

    def say(self, words: str, *, trouble: bool = True) -> None:
        """Say why something was not done, or what comes next, or nothing."""
        self._trouble.setText(words if trouble else "")
        self._trouble.setVisible(trouble and bool(words))
        self._next.setText("" if trouble else words)
        self._next.setVisible(not trouble)

    def _show_rivals(self, row: Row | None) -> None:
        while (item := self._rivals.takeAt(0)) is not None:
            if widget := item.widget():
                widget.deleteLater()
        for number, value in enumerate(row.rivals if row else ()):
            assert row is not None and row.fact is not None
            quote = " … ".join(" ".join(e.exact.split()) for e in row.fact.rivals[number].evidence)
            words = f"The note also says {value}: “{quote}”" if quote else f"The note also says {value}"
            key = f" ({keys_in_words(key_named('rival'))})" if number == 0 else ""
            button = QPushButton(f"Take {value} instead{key}")
            button.setAccessibleName(f"{words}. Take {value} instead")
            button.clicked.connect(self._asker(number))
            line = QWidget()
            beside = QHBoxLayout(line)
            beside.setContentsMargins(0, 0, 0, 0)
            beside.addWidget(plain_label(words), 1)
            beside.addWidget(button)
            self._rivals.addWidget(line)

    def _asker(self, number: int) -> Callable[[], None]:
        return lambda: self.rival_wanted.emit(number)

    def _button(self, name: str, words: str) -> QPushButton:
        key = key_named(name)
        button = QPushButton(f"{words}  {keys_in_words(key).split(' or ')[0]}")
        full = self._called.get(name, key.words)
        button.setAccessibleName(full)
        button.setToolTip(f"{full} ({keys_in_words(key)})")
        button.clicked.connect(lambda: self.wanted.emit(name))
        return button

    def _dress(self) -> None:
        self._value.setFont(larger(self.font(), 1.25, bold=True))
        self._next.setFont(larger(self.font(), 1.0, bold=True))


class EditingSide(QWidget):
    """The editor of one value with what it refuses, in words."""

    entered = Signal(object)
    left = Signal()

    def __init__(self, typing: Typing | None = None, parent: QWidget | None = None):
        super().__init__(parent)
        self._typing = typing
        self._editor: ValueEditor | None = None
        self._at_first = ""
        self._title = plain_label(part="muted")
        self._words = plain_label(part="muted")
        self._tip = plain_label(part="muted")
        self._trouble = plain_label(part="trouble")
        self._place = QVBoxLayout()
        enter = QPushButton("Enter it  Return")
        enter.setAccessibleName("Enter this value")
        enter.clicked.connect(self._enter)
        leave = QPushButton("Leave as it is  Esc")
        leave.setAccessibleName("Leave the fact as it is")
        leave.clicked.connect(self.left)
        row = FlowLayout()
        row.addWidget(enter)
        row.addWidget(leave)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 6, 8, 6)
        layout.addWidget(self._title)
        layout.addLayout(self._place)
        layout.addWidget(self._trouble)
        layout.addWidget(self._words)
        layout.addWidget(self._tip)
        layout.addLayout(row)
        layout.addStretch(1)
        for keys, slot in (("Return", self._enter), ("Enter", self._enter), ("Esc", self.left)):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(slot)

    def begin(self, row: Row, selected: str) -> None:
        """Show the editor that fits a row, with its present value."""
        if self._editor is not None:
            self._place.removeWidget(self._editor)
            self._editor.deleteLater()
        value: Value | None = row.fact.value if row.fact else None
        self._editor = ValueEditor(row.spec, value, self, self._typing)
        self._at_first = self._editor.words()
        self._place.addWidget(self._editor)
        self.setFocusProxy(self._editor)
        before = show_value(value, row.spec.unit) if value is not None else "nothing yet"
        self._title.setText(f"{capital(row.address.words())} · now: {before}")
        kept = row.quote or "none"
        self._words.setText(f"Goes with the selected words “{selected}”." if selected else f"Words of the note: {kept}")
        self._tip.setText(f"What counts: {row.tip}" if row.tip else "")
        self._tip.setVisible(bool(row.tip))
        self.say("")

    @property
    def touched(self) -> bool:
        """True where something else stands in the editor than at its beginning."""
        return self._editor is not None and self._editor.words() != self._at_first

    def value(self) -> Value:
        """Return what stands in the editor. Raises ValueRefused."""
        assert self._editor is not None
        return self._editor.value()

    def say(self, words: str) -> None:
        """Say why a value was refused, or nothing."""
        self._trouble.setText(words)
        self._trouble.setVisible(bool(words))

    def _enter(self) -> None:
        assert self._editor is not None
        try:
            self.entered.emit(self.value())
        except ValueRefused as refusal:
            self.say(str(refusal))
            self._editor.setFocus()


def _reasons_text(reasons: tuple[str, ...]) -> str:
    """Return the reasons to look twice: one on the line of its title, several in a list below it."""
    if len(reasons) < 2:
        return "".join(f"Look twice: {reason}" for reason in reasons)
    return "\n".join(["Look twice:", *(f"  \N{BULLET} {reason}" for reason in reasons)])


def _scrolled(side: QWidget, name: str) -> QScrollArea:
    """Let a side scroll where large letters need more height than there is."""
    scroll = QScrollArea()
    scroll.setWidgetResizable(True)
    scroll.setFrameShape(QScrollArea.Shape.NoFrame)
    scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    scroll.setAccessibleName(name)
    scroll.setWidget(side)
    return scroll
