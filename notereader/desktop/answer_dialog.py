"""Asks for what the surgeon answered about one fact, and on which day."""

from datetime import date

from PySide6.QtCore import QDate
from PySide6.QtWidgets import QDateEdit, QDialog, QDialogButtonBox, QFormLayout, QVBoxLayout, QWidget

from notereader.desktop.editors import ValueEditor
from notereader.desktop.labels import plain_label
from notereader.desktop.rows import Row, capital
from notereader.record import Value, ValueRefused

_HINT = "It is entered with its source and day. What the note says stays beside it and is never overwritten."


class AnswerDialog(QDialog):
    """Gives the value and the day of an answer; refuses values the field cannot take, in words."""

    def __init__(self, row: Row, parent: QWidget | None = None):
        super().__init__(parent)
        self.setWindowTitle("The surgeon's answer")
        self._editor = ValueEditor(row.spec, None, self)
        self._day = QDateEdit(QDate.currentDate())
        self._day.setDisplayFormat("yyyy-MM-dd")
        self._day.setMaximumDate(QDate.currentDate())
        self._day.setMinimumHeight(28)
        self._day.setAccessibleName("Day of the answer")
        self._trouble = plain_label(part="trouble")
        now = f"The note: {row.value}" if row.fact is not None and row.fact.value is not None else "The note: nothing"
        form = QFormLayout()
        form.addRow("&Answer", self._editor)
        form.addRow("Answered &on", self._day)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel)
        buttons.accepted.connect(self._check)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.addWidget(plain_label(f"{capital(row.address.words())}. {now}."))
        layout.addLayout(form)
        layout.addWidget(self._trouble)
        layout.addWidget(plain_label(_HINT, "muted"))
        layout.addWidget(buttons)
        self._editor.finished.connect(self._check)
        self._editor.setFocus()

    def value(self) -> Value:
        """Return what was answered. Raises ValueRefused."""
        return self._editor.value()

    def said_on(self) -> date:
        """Return the day of the answer."""
        day = self._day.date()
        return date(day.year(), day.month(), day.day())

    def _check(self) -> None:
        try:
            self.value()
        except ValueRefused as refusal:
            self._trouble.setText(str(refusal))
            self._editor.setFocus()
            return
        self.accept()
