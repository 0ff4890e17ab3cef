"""A second reader of the same notes: how well the two agree, and every place where they differ."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFileDialog, QLineEdit, QPushButton, QVBoxLayout, QWidget

from notereader.desktop.audit.asking import Ask, Overview, Sheet
from notereader.desktop.audit.sheet_table import SheetTable
from notereader.desktop.flow_layout import FlowLayout
from notereader.desktop.labels import plain_label
from notereader.desktop.look import Look

if TYPE_CHECKING:
    from notereader.audit.report.rows import Line

_HINT = (
    "Name the casebook or the folder of exported records of a second person who read the same notes, or of their keys. "
    "The first reader is what was read or confirmed here. Kappa and alpha are 1 where both agree in all and 0 where "
    "they agree as by chance; where nearly all notes say the same, read them beside the percentage."
)
_FILES = "Casebooks and records (*.db *.json);;All files (*)"


class ReadersPane(QWidget):
    """Compares two readers. `opened` goes out with the key of a note that is to be opened."""

    opened = Signal(str)

    def __init__(self, look: Look, ask: Ask, parent: QWidget | None = None):
        super().__init__(parent)
        self._ask = ask
        self.place = QLineEdit()
        self.place.setAccessibleName("Casebook or folder of the second reader")
        self.place.setPlaceholderText("Casebook or folder of the second reader")
        self.place.returnPressed.connect(self._compare)
        folder, file = QPushButton("Choose a &folder …"), QPushButton("Choose a &casebook …")
        folder.clicked.connect(
            lambda: self._take(QFileDialog.getExistingDirectory(self, "Records of the second reader"))
        )
        file.clicked.connect(
            lambda: self._take(QFileDialog.getOpenFileName(self, "Casebook of the second reader", "", _FILES)[0])
        )
        self.compare = QPushButton("Com&pare the two")
        self.compare.clicked.connect(self._compare)
        row = FlowLayout()
        for button in (folder, file, self.compare):
            button.setAccessibleName(button.text().replace("&", "").removesuffix(" …"))
            row.addWidget(button)
        self.words, self.differ_words = plain_label(), plain_label()
        self.words.setAccessibleName("Which notes both read")
        self.fields = SheetTable("Agreement by field")
        self.differences = SheetTable("Where the two differ; Return opens the note")
        self.differences.chosen.connect(self._open)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(plain_label(_HINT, "muted"))
        column.addWidget(self.place)
        column.addLayout(row)
        column.addWidget(self.words)
        column.addWidget(self.fields, 1)
        column.addWidget(self.differ_words)
        column.addWidget(self.differences, 1)
        column.addStretch(0)
        for table in (self.fields, self.differences):
            table.hide()
            look.changed.connect(table.fit)

    def show_overview(self, _: Overview) -> None:
        """Forget a comparison with notes that were counted anew."""
        self.words.setText("")
        self.differ_words.setText("")
        self.fields.hide()
        self.differences.hide()

    def _open(self, line: "Line", _column: int) -> None:
        if line.key:
            self.opened.emit(line.key)

    def _take(self, place: str) -> None:
        if place:
            self.place.setText(place)
            self._compare()

    def _compare(self) -> None:
        place = self.place.text().strip()
        if place:
            self.words.setText("Comparing the two readers …")
            self._ask(lambda desk: desk.agree(place), self._show)

    def _show(self, found: tuple[Sheet, Sheet]) -> None:
        fields, differences = found
        for table, label, sheet in (
            (self.fields, self.words, fields),
            (self.differences, self.differ_words, differences),
        ):
            label.setText(sheet.words)
            table.show_sheet(sheet)
            table.setVisible(bool(sheet.lines))
        if fields.lines:
            self.fields.setFocus()
