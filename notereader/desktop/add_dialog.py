"""Asks for a missed tendon, pulley or injury with the first thing the note says of it."""

from dataclasses import dataclass
from typing import get_args

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QDialog, QDialogButtonBox, QFormLayout, QVBoxLayout, QWidget

from notereader.desktop.choice_box import ChoiceBox
from notereader.desktop.editors import Typing, ValueEditor
from notereader.desktop.finger import PULLEYS
from notereader.desktop.labels import plain_label
from notereader.desktop.rows import DIGITS
from notereader.record import Address, Record, Value, ValueRefused
from notereader.record.models import Border, Structure, Tendon
from notereader.vocabulary import field_specs

_NO_DIGIT = "none (wrist or not said)"
_NEITHER = "not said"


@dataclass(frozen=True)
class _Sort:
    """A sort of entry: its group, what its part is called, whether it has sides, and the field asked first."""

    title: str
    group: str
    part: str
    side: str
    first_field: str


_SORTS = (
    _Sort("Tendon", "repairs", "Tendon", "Slip", "treatment"),
    _Sort("Pulley", "pulleys", "Pulley", "", "finding"),
    _Sort("Other injury", "injuries", "Structure", "Side", "treatment"),
)


class AddDialog(QDialog):
    """Gives the address and the first value of a new entry; refuses what is entered already."""

    def __init__(
        self,
        record: Record,
        digit: str | None,
        group: str,
        selected: str,
        parent: QWidget | None = None,
        what: str = "What was missed",
        typing: Typing | None = None,
    ):
        super().__init__(parent)
        self.setWindowTitle(f"Add {what[0].lower()}{what[1:]}")
        self._record = record
        self._typing = typing
        self._sort = _box(what, [sort.title for sort in _SORTS])
        self._digit = _box("Digit", [*DIGITS, _NO_DIGIT])
        self._digit.setCurrentText(digit or _NO_DIGIT)
        self._part, self._side = _box("Which"), _box("Side")
        self._field = _box("What the note says of it")
        self._editor: ValueEditor | None = None
        self._trouble = plain_label(part="trouble")
        self._form = QFormLayout()
        self._form.addRow("&What", self._sort)
        self._form.addRow("&Digit", self._digit)
        self._form.addRow("W&hich", self._part)
        self._form.addRow("&Side or slip", self._side)
        self._form.addRow("The note &tells of", self._field)
        words = plain_label(
            f"Goes with the selected words “{selected}”." if selected else "No words are selected in the note."
        )
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel)
        buttons.accepted.connect(self._check)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.addLayout(self._form)
        layout.addWidget(words)
        layout.addWidget(self._trouble)
        layout.addWidget(buttons)
        self._sort.currentIndexChanged.connect(self._offer_parts)
        self._digit.currentIndexChanged.connect(self._offer_parts)
        self._field.currentIndexChanged.connect(self._offer_editor)
        groups = [sort.group for sort in _SORTS]
        self._sort.setCurrentIndex(groups.index(group) if group in groups else 0)
        self._offer_parts()

    def address(self) -> Address:
        """Return the address of what is to be added, with its field."""
        sort = _SORTS[self._sort.currentIndex()]
        digit = self._digit.currentText()
        side = self._side.currentText() if sort.side else _NEITHER
        return Address(
            sort.group,
            None if digit == _NO_DIGIT else digit,
            self._part.currentText(),
            None if side == _NEITHER else side,
            self._field.currentData() or sort.first_field,
        )

    def value(self) -> Value:
        """Return what the note says of it. Raises ValueRefused."""
        assert self._editor is not None
        return self._editor.value()

    def _check(self) -> None:
        address = self.address()
        try:
            self.value()
        except ValueRefused as refusal:
            self._trouble.setText(str(refusal))
            return
        if self._record.facts_of(address):
            words = f"{address.entry_words()} is already entered. Close this and go to its facts in the list."
            self._trouble.setText(words)
            return
        self.accept()

    def _offer_parts(self) -> None:
        sort = _SORTS[self._sort.currentIndex()]
        digit = self._digit.currentText()
        _fill(self._part, _parts(sort, None if digit == _NO_DIGIT else digit))
        _fill(self._side, [_NEITHER, *get_args(Border)] if sort.side else [_NEITHER])
        self._side.setEnabled(bool(sort.side))
        self._field.blockSignals(True)
        self._field.clear()
        for spec in field_specs()[sort.group].values():
            self._field.addItem(spec.label, spec.name)
        self._field.setCurrentIndex(self._field.findData(sort.first_field))
        self._field.blockSignals(False)
        self._offer_editor()

    def _offer_editor(self) -> None:
        sort = _SORTS[self._sort.currentIndex()]
        if self._editor is not None:
            self._form.removeRow(self._editor)
        spec = field_specs()[sort.group][self._field.currentData()]
        self._editor = ValueEditor(spec, None, self, self._typing)
        self._editor.finished.connect(self._check)
        self._form.addRow("&Value", self._editor)
        self._trouble.clear()


def _parts(sort: _Sort, digit: str | None) -> list[str]:
    if sort.group == "repairs":
        return list(get_args(Tendon))
    if sort.group == "injuries":
        return list(get_args(Structure))
    return list(reversed(PULLEYS["wrist" if digit is None else "thumb" if digit == "thumb" else "finger"]))


def _box(name: str, choices: list[str] | None = None) -> QComboBox:
    box = ChoiceBox()
    box.setAccessibleName(name)
    box.addItems(choices or [])
    return box


def _fill(box: QComboBox, choices: list[str]) -> None:
    """Offer other choices, keeping the present one where it is still possible."""
    present = box.currentText()
    box.blockSignals(True)
    box.clear()
    box.addItems(choices)
    box.setCurrentIndex(max(0, box.findText(present, Qt.MatchFlag.MatchExactly)))
    box.blockSignals(False)
