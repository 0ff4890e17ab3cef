"""Editors for one value, by the kind of its field. Each refuses what cannot be, in words."""

import re
from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QLineEdit, QVBoxLayout, QWidget

from notereader.desktop.choice_box import ChoiceBox
from notereader.desktop.labels import plain_label
from notereader.record import Interval, Value, ValueRefused, check_value, show_value
from notereader.vocabulary import FieldSpec, sizes

_FIGURE = r"[-+−]?\d+(?:[.,]\d+)?"
_RANGE = re.compile(rf"({_FIGURE})\s*(?:to|until|–|-)\s*({_FIGURE})")
_OPEN = re.compile(rf"(at least|over|>=|≥|at most|under|up to|<=|≤)\s*({_FIGURE})")
_UPWARD = frozenset({"at least", "over", ">=", "≥"})
_YES_NO = {"yes": True, "no": False}


@dataclass(frozen=True)
class Typing:
    """How values are typed: read from words, written as words, and told in a hint.

    `free`: what can be chosen may be typed in other words too.
    """

    read: Callable[[FieldSpec, str], Value]
    write: Callable[[FieldSpec, Value], str]
    hint: Callable[[FieldSpec], str]
    free: bool = False


class ValueEditor(QWidget):
    """Takes one value for a field. `value()` gives it in stored form or raises ValueRefused with the reason.

    `finished` goes out for Return in a box that would keep the key from the dialog around it.
    """

    finished = Signal()

    def __init__(
        self, spec: FieldSpec, value: Value | None, parent: QWidget | None = None, typing: Typing | None = None
    ):
        super().__init__(parent)
        self.spec = spec
        self._typing = typing or USUAL
        self._box: QComboBox | QLineEdit = _box_for(spec, value, self._typing)
        self._box.setAccessibleName(spec.label)
        self._box.setAccessibleDescription(self._typing.hint(spec))
        hint = plain_label(self._typing.hint(spec), "muted")
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self._box)
        layout.addWidget(hint)
        self.setFocusProxy(self._box)
        if isinstance(self._box, QLineEdit):
            self._box.selectAll()
        elif (line := self._box.lineEdit()) is not None:
            line.returnPressed.connect(self.finished)

    def value(self) -> Value:
        """Return what was entered in stored form. Raises ValueRefused."""
        return self._typing.read(self.spec, self.words())

    def words(self) -> str:
        """Return what stands in the box, as it stands there."""
        return self._box.currentText() if isinstance(self._box, QComboBox) else self._box.text()


def value_from(spec: FieldSpec, words: str) -> Value:
    """Read a value as a therapist would type it ('4/0', '7-10', 'at least 8'). Raises ValueRefused with the reason."""
    words = " ".join(words.split())
    if not words:
        raise ValueRefused(f"{spec.label}: nothing is entered. {hint_of(spec)}")
    readers = {"whole": _figure, "number": _figure, "interval": _interval, "size": _size, "yes-no": _yes_no}
    reader = readers.get(spec.kind)
    if spec.kind == "named":
        return check_value(spec, words == "yes")
    return check_value(spec, reader(spec, words) if reader else words)


def hint_of(spec: FieldSpec) -> str:
    """Say in one line what can be entered."""
    bounded = spec.low is not None and spec.high is not None
    limits = f"{spec.low:g} to {spec.high:g} {spec.unit}".rstrip() if bounded else ""
    hints = {
        "choice": "Choose one; typing its first letters finds it.",
        "whole": f"A whole number from {limits}.",
        "number": f"A figure from {limits}.",
        "interval": f"'8', '7 to 10', 'at least 8' or 'at most 10'; from {limits}.",
        "size": "A USP size such as 4-0.",
        "date": "Year-month-day, such as 2031-03-14.",
        "yes-no": "Yes or no.",
        "named": "Is it in the note? Where it is not, mark that the note is silent.",
    }
    meaning = f"{spec.meaning[0].upper()}{spec.meaning[1:]}. " if spec.meaning else ""
    return meaning + hints[spec.kind]


# As a therapist types a value in the reading window.
USUAL = Typing(read=value_from, write=lambda spec, value: show_value(value), hint=hint_of)


def _box_for(spec: FieldSpec, value: Value | None, typing: Typing) -> QComboBox | QLineEdit:
    choices = {"choice": spec.values, "size": tuple(sizes()), "yes-no": tuple(_YES_NO), "named": ("yes",)}
    words = "" if value is None else typing.write(spec, value)
    if spec.kind not in choices:
        box = QLineEdit(words)
        box.setPlaceholderText({"date": "2031-03-14"}.get(spec.kind, ""))
        return box
    combo = ChoiceBox()
    combo.addItems(list(choices[spec.kind]))
    combo.setMaxVisibleItems(16)
    if spec.kind == "size" or (typing.free and spec.kind == "choice"):
        combo.setEditable(True)
        combo.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        combo.setCurrentText(words)
    else:
        combo.setCurrentIndex(combo.findText(words, Qt.MatchFlag.MatchExactly))
    return combo


def _plain_figure(words: str) -> float:
    return float(words.replace("−", "-").replace(",", "."))


def _without_unit(spec: FieldSpec, words: str) -> str:
    """Drop a unit typed after the figure: the field already has one."""
    first_word = spec.unit.split(" ")[0]
    return words.removesuffix(spec.unit).removesuffix(first_word).strip() if spec.unit else words


def _figure(spec: FieldSpec, words: str) -> Value:
    words = _without_unit(spec, words)
    if not re.fullmatch(_FIGURE, words):
        raise ValueRefused(f"{spec.label}: '{words}' is no figure. {hint_of(spec)}")
    return _plain_figure(words)


def _interval(spec: FieldSpec, words: str) -> Value:
    words = _without_unit(spec, words)
    if re.fullmatch(_FIGURE, words):
        figure = _plain_figure(words)
        return Interval(low=figure, high=figure)
    if both := _RANGE.fullmatch(words):
        low, high = _plain_figure(both[1]), _plain_figure(both[2])
        if high < low:
            raise ValueRefused(f"{spec.label}: the upper figure ({high:g}) is smaller than the lower one ({low:g}).")
        return Interval(low=low, high=high)
    if one := _OPEN.fullmatch(words):
        figure = _plain_figure(one[2])
        return Interval(low=figure, high=None) if one[1] in _UPWARD else Interval(low=None, high=figure)
    raise ValueRefused(f"{spec.label}: '{words}' is no figure and no range. {hint_of(spec)}")


def _size(spec: FieldSpec, words: str) -> Value:
    """Take 4-0, 4/0, 4.0, #4-0, 4-O, 4 0 and 0000 for the same size."""
    plain = words.lstrip("#").upper().replace("O", "0").replace(" ", "-").replace("/", "-").replace(".", "-")
    if re.fullmatch("0{2,12}", plain):
        return f"{len(plain)}-0"
    return "0" if plain == "1-0" else plain


def _yes_no(spec: FieldSpec, words: str) -> Value:
    if words.lower() not in _YES_NO:
        raise ValueRefused(f"{spec.label}: answer yes or no.")
    return _YES_NO[words.lower()]
