"""Asks how the note contradicts itself: another value for the fact in hand, or a clash with another fact."""

from PySide6.QtWidgets import QDialog, QDialogButtonBox, QFormLayout, QLineEdit, QVBoxLayout, QWidget

from notereader.desktop.choice_box import ChoiceBox
from notereader.desktop.editors import ValueEditor
from notereader.desktop.labels import plain_label
from notereader.desktop.practice.answers import with_value
from notereader.desktop.practice.typing import STUDENTS
from notereader.desktop.rows import Row, capital
from notereader.record import Address, Record, Value, ValueRefused

_HOW = ("The note gives another value for it", "It cannot hold together with another fact", "Said in my own words only")


class ContradictionDialog(QDialog):
    """Gives the other value, or the other fact, and the student's own words."""

    def __init__(self, row: Row, record: Record, selected: str, parent: QWidget | None = None):
        super().__init__(parent)
        self.setWindowTitle("Name a contradiction")
        self.how = ChoiceBox()
        self.how.addItems(_HOW)
        self.how.setAccessibleName("How the note contradicts itself")
        self.value_box = ValueEditor(row.spec, None, self, STUDENTS)
        self.value_box.finished.connect(self._check)
        self.other = ChoiceBox()
        self.other.setAccessibleName("The other fact")
        for place, words in with_value(record):
            if place != row.address:
                self.other.addItem(f"{capital(place.words())}: {words}", place)
        self.words = QLineEdit()
        self.words.setAccessibleName("In your own words, may be left empty")
        self._trouble = plain_label(part="trouble")
        self._goes_with = plain_label(
            f"Goes with the selected words “{selected}”." if selected else "No words are selected in the note."
        )
        self._form = QFormLayout()
        self._form.addRow("&How", self.how)
        self._form.addRow("Other &value", self.value_box)
        self._form.addRow("Other &fact", self.other)
        self._form.addRow("Your &words", self.words)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel)
        buttons.accepted.connect(self._check)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        now = f"{row.value}" if row.fact is not None else "nothing entered"
        layout.addWidget(plain_label(f"{capital(row.address.words())}: {now}"))
        layout.addLayout(self._form)
        layout.addWidget(self._goes_with)
        layout.addWidget(self._trouble)
        layout.addWidget(buttons)
        self.setMinimumWidth(460)
        self.how.currentIndexChanged.connect(self._offer)
        has_value = row.fact is not None and row.fact.value is not None
        self.how.setCurrentIndex(0 if has_value else 2)
        self._offer()
        self.how.setFocus()

    def second_value(self) -> Value | None:
        """Return the other value the note gives, None where it is not that. Raises ValueRefused."""
        return self.value_box.value() if self.how.currentIndex() == 0 else None

    def other_place(self) -> Address | None:
        """Return the other fact, None where it is not that."""
        place = self.other.currentData() if self.how.currentIndex() == 1 else None
        return place if isinstance(place, Address) else None

    def _offer(self) -> None:
        how = self.how.currentIndex()
        for shown, part in ((how == 0, self.value_box), (how == 1, self.other), (how != 0, self.words)):
            self._form.setRowVisible(part, shown)
        self._goes_with.setVisible(how == 0)
        self._trouble.clear()

    def _check(self) -> None:
        try:
            self.second_value()
        except ValueRefused as refusal:
            self._trouble.setText(str(refusal))
            return
        if self.how.currentIndex() == 1 and self.other_place() is None:
            self._trouble.setText("No other fact is entered yet. Enter it first, then name the contradiction.")
            return
        self.accept()
