"""What is to be read and how it is counted; how far the reading is, stopping it, and going on."""

import os
from time import monotonic
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QCheckBox,
    QFileDialog,
    QFormLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QProgressBar,
    QPushButton,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from notereader.desktop.audit.asking import Choice, Counting, Found
from notereader.desktop.choice_box import ChoiceBox
from notereader.desktop.flow_layout import FlowLayout
from notereader.desktop.labels import plain_label

if TYPE_CHECKING:
    from notereader.audit.audit import Progress

_SENTENCE = (
    "Choose a folder of notes or of exported records, a table with a note in each row, or a casebook. Each note is "
    "read as when you open it; records that a person confirmed are taken as they are."
)
_FILES = "Tables and casebooks (*.csv *.tsv *.tab *.xlsx *.xlsm *.db);;All files (*)"
_OWN = "my own casebook"
_NONE = "(none)"
_ORDERS: dict[str, bool | None] = {
    "as the dates themselves tell": None,
    "day first: 3/4/2031 is in April": True,
    "month first: 3/4/2031 is in March": False,
}
_ROWS_OF_GROUPS = 5


class SourcePane(QWidget):
    """Asks what to read. It works on nothing itself: `looked_for`, `wanted` and `stopped` go out."""

    looked_for = Signal(object)
    wanted = Signal(object, object)
    stopped = Signal()

    def __init__(self, parent: QWidget | None = None):
        super().__init__(parent)
        self._begun = 0.0
        self._readable = False
        self.place = QLineEdit()
        self.place.setAccessibleName("Folder, table or casebook to read")
        self.place.setPlaceholderText("Folder, table or casebook")
        self.place.returnPressed.connect(self.look)
        self.folder = _button("Choose a &folder …", self._ask_folder)
        self.file = _button("Choose a &table or casebook file …", self._ask_file)
        self.own = _button("My own &casebook", self._take_own)
        self.found = plain_label()
        self.found.setAccessibleName("What was found there")
        self._columns = self._make_columns()
        self._how = self._make_how()
        self.read = _button("&Read and count", lambda: self._want(afresh=False))
        self.afresh = _button("Begin &afresh", lambda: self._want(afresh=True))
        self.stop = _button("Stop  Esc", self.stopped.emit)
        shortcut = QShortcut(QKeySequence("Esc"), self)
        shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        shortcut.activated.connect(self.stop.click)
        self.bar = QProgressBar()
        self.bar.setAccessibleName("Notes read")
        self.bar.setTextVisible(False)
        self.told = plain_label()
        self.told.setAccessibleName("How far the reading is")
        self._lay_out()
        self._show_found(None)
        self.show_busy(False)

    def choice(self) -> Choice:
        """Return what is chosen now."""
        place = self.place.text().strip()
        if place == _OWN:
            return Choice()
        if not self._columns.isVisibleTo(self):
            return Choice(place)
        return Choice(
            place=place,
            sheet=_said(self.sheet),
            text="" if _said(self.file_column) else _said(self.text),
            file=_said(self.file_column),
            name=_said(self.name),
            day=_said(self.day),
            day_first=_ORDERS[self.order.currentText()],
        )

    def counting(self, *, afresh: bool = False) -> Counting:
        """Return how it is to be read and counted."""
        items = [self.groups.item(at) for at in range(self.groups.count())]
        return Counting(
            groups=tuple(item.text() for item in items if item.checkState() == Qt.CheckState.Checked),
            period=self.period.currentText(),  # type: ignore[arg-type]
            with_words=self.with_words.isChecked(),
            processes=self.processes.value(),
            afresh=afresh,
        )

    def look(self) -> None:
        """Have the place looked at that is named now, as far as one is."""
        if self.place.text().strip():
            self.looked_for.emit(self._place_only())

    def look_again(self) -> None:
        """Have the place looked at with the columns that are chosen now."""
        self.looked_for.emit(self.choice())

    def show_found(self, found: Found) -> None:
        """Show what was found at the place."""
        self._show_found(found)

    def show_trouble(self, words: str) -> None:
        """Say why nothing can be read there, or went wrong on the way."""
        self.told.setText("")
        self.found.setText(words)

    def show_busy(self, busy: bool) -> None:
        """Show that notes are being read, or that nothing is under way."""
        self.read.setEnabled(self._readable and not busy)
        for part in (self.afresh, self.folder, self.file, self.own, self.place, self._columns, self._how):
            part.setEnabled(not busy)
        self.stop.setEnabled(busy)
        self.bar.setVisible(busy)
        self.bar.setRange(0, 0)
        if busy:
            self._begun = monotonic()
            self.told.setText("Getting ready …")
            self.stop.setFocus()

    def show_progress(self, progress: "Progress") -> None:
        """Show how far the reading is."""
        if not self.stop.isEnabled():
            return
        whole = f" of {progress.total:,}" if progress.total is not None else ""
        words = [f"{progress.done:,}{whole} notes"]
        words += [f"{progress.kept:,} of them read before"] if progress.kept else []
        words += [f"{progress.refused:,} refused"] if progress.refused else []
        fresh = progress.done - progress.kept
        if progress.total is not None:
            self.bar.setRange(0, max(1, progress.total))
            self.bar.setValue(progress.done)
            if fresh >= 10:
                left = (monotonic() - self._begun) / fresh * (progress.total - progress.done)
                words.append(_about(left))
        self.told.setText(", ".join(words) + ".")

    # What is shown

    def _make_columns(self) -> QWidget:
        self.sheet, self.text, self.file_column = _box("Sheet"), _box("Text of the note"), _box("File of the note")
        self.name, self.day = _box("Name of the note"), _box("Date of the operation")
        self.order = _box("Order of day and month")
        self.order.addItems(list(_ORDERS))
        part = QWidget()
        self._form = _form(part)
        for words, box in (
            ("Sheet of the workbook", self.sheet),
            ("Column with the text of the note", self.text),
            ("or column that names its file", self.file_column),
            ("Column that tells notes apart", self.name),
            ("Column with the date of the operation", self.day),
            ("Order of day and month in it", self.order),
        ):
            self._form.addRow(_row_label(words), box)
        self.sheet.activated.connect(self.look)
        for box in (self.text, self.file_column, self.name, self.day, self.order):
            box.activated.connect(self.look_again)
        return part

    def _make_how(self) -> QWidget:
        self.groups = QListWidget()
        self.groups.setAccessibleName("Columns to group by")
        self.period = _box("Period of the charts over time")
        self.period.addItems(("month", "quarter", "year"))
        self.with_words = QCheckBox("Put the &words of the notes into the saved tables")
        self.processes = QSpinBox(minimum=1, maximum=max(1, os.cpu_count() or 1))
        self.processes.setValue(max(1, (os.cpu_count() or 1) // 2))
        self.processes.setAccessibleName("Processes that read at the same time")
        self.processes.setMinimumHeight(28)
        part = QWidget()
        form = _form(part)
        form.addRow(_row_label("Group by (Space ticks)"), self.groups)
        form.addRow(_row_label("Period of the charts over time"), self.period)
        form.addRow(_row_label("Processes that read at the same time"), self.processes)
        form.addRow(self.with_words)
        form.addRow(plain_label("They can name a person. Without this no word of a note gets into a report.", "muted"))
        return part

    def _lay_out(self) -> None:
        choose, work = FlowLayout(), FlowLayout()
        for button in (self.folder, self.file, self.own):
            choose.addWidget(button)
        for button in (self.read, self.afresh, self.stop):
            work.addWidget(button)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(plain_label(_SENTENCE))
        column.addWidget(self.place)
        column.addLayout(choose)
        column.addWidget(self.found)
        column.addWidget(self._columns)
        column.addWidget(self._how)
        column.addLayout(work)
        column.addWidget(self.bar)
        column.addWidget(self.told)
        column.addStretch(1)

    def _show_found(self, found: Found | None) -> None:
        is_table = found is not None and found.is_table
        self._columns.setVisible(is_table)
        self._how.setVisible(found is not None)
        self._readable = found is not None and not found.stale and not found.words.endswith("?")
        self.read.setEnabled(self._readable)
        self.afresh.setVisible(found is not None and found.kept > 0)
        self.read.setText("&Go on and count" if found is not None and found.kept else "&Read and count")
        self.read.setAccessibleName(self.read.text().replace("&", ""))
        if found is None:
            self.found.setText("")
            return
        kept = f" {found.kept:,} of its notes were read before and are not read again." if found.kept else ""
        if found.stale:
            kept = (
                f" {found.kept:,} of its notes were read before, by another version of the program or its knowledge. "
                "Begin afresh, so that all are read alike."
            )
        self.found.setText(
            f"{found.words[:1].upper()}{found.words[1:]}{'' if found.words.endswith('?') else '.'}{kept}"
        )
        if is_table:
            self._fill_columns(found)
        self._fill_groups(found.groups)

    def _fill_columns(self, found: Found) -> None:
        _fill(self.sheet, found.sheets, _said(self.sheet) or (found.sheets[0] if found.sheets else ""))
        self._form.setRowVisible(self.sheet, len(found.sheets) > 1)
        _fill(self.text, (_NONE, *found.headings), found.text or _said(self.text))
        for box in (self.file_column, self.name, self.day):
            _fill(box, (_NONE, *found.headings), _said(box))

    def _fill_groups(self, names: tuple[str, ...]) -> None:
        ticked = set(self.counting().groups)
        self.groups.clear()
        for name in names:
            item = QListWidgetItem(name)
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            item.setCheckState(Qt.CheckState.Checked if name in ticked else Qt.CheckState.Unchecked)
            self.groups.addItem(item)
        self.groups.setCurrentRow(0)
        rows = min(_ROWS_OF_GROUPS, max(2, len(names)))
        self.groups.setFixedHeight(rows * max(24, self.groups.sizeHintForRow(0)) + 8)

    # What is done

    def _place_only(self) -> Choice:
        """Return the place with its sheet; the columns of another table are not those of this one."""
        place = self.place.text().strip()
        return Choice("" if place == _OWN else place, sheet=_said(self.sheet))

    def _want(self, *, afresh: bool) -> None:
        self.wanted.emit(self.choice(), self.counting(afresh=afresh))

    def _ask_folder(self) -> None:
        self._take(QFileDialog.getExistingDirectory(self, "Choose a folder of notes or records"))

    def _ask_file(self) -> None:
        self._take(QFileDialog.getOpenFileName(self, "Choose a table or a casebook", "", _FILES)[0])

    def _take_own(self) -> None:
        self._take(_OWN)

    def _take(self, place: str) -> None:
        if place:
            self.place.setText(place)
            self.look()


def _button(words: str, slot: object) -> QPushButton:
    button = QPushButton(words)
    button.setAccessibleName(words.replace("&", "").removesuffix(" …").removesuffix("  Esc"))
    button.clicked.connect(lambda: slot())  # type: ignore[operator]
    return button


def _box(name: str) -> ChoiceBox:
    box = ChoiceBox()
    box.setAccessibleName(name)
    box.setMinimumContentsLength(12)
    return box


def _row_label(words: str) -> QLabel:
    """Return a label in one line: where it has no room, the form puts what it names below it."""
    label = plain_label(words)
    label.setWordWrap(False)
    return label


def _form(part: QWidget) -> QFormLayout:
    form = QFormLayout(part)
    form.setContentsMargins(0, 0, 0, 0)
    form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
    form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.FieldsStayAtSizeHint)
    return form


def _fill(box: ChoiceBox, names: tuple[str, ...], chosen: str) -> None:
    box.clear()
    box.addItems(names)
    box.setCurrentIndex(max(0, box.findText(chosen)))


def _said(box: ChoiceBox) -> str:
    words = box.currentText()
    return "" if words == _NONE else words


def _about(seconds: float) -> str:
    if seconds < 90:
        return "about a minute left" if seconds > 45 else "less than a minute left"
    return f"about {round(seconds / 60):,} minutes left"
