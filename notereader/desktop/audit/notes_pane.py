"""The notes and their gaps, all of them or those behind a figure. Return opens one."""

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from notereader.desktop.audit.asking import Ask, Overview, Sheet, Want
from notereader.desktop.audit.sheet_table import SheetTable
from notereader.desktop.flow_layout import FlowLayout
from notereader.desktop.labels import plain_label
from notereader.desktop.look import Look

_HINT = (
    "Return opens a note beside its facts. Weighty gaps are facts that change the work most and that the note leaves "
    "out or contradicts."
)


class NotesPane(QWidget):
    """Lists notes. `opened` goes out with the key of one that is to be opened."""

    opened = Signal(str)

    def __init__(self, look: Look, ask: Ask, parent: QWidget | None = None):
        super().__init__(parent)
        self._ask = ask
        self.words = plain_label()
        self.words.setAccessibleName("Which notes are listed")
        self.all = QPushButton("Show &all notes")
        self.all.setAccessibleName("Show all notes")
        self.all.clicked.connect(lambda: self.show_notes(Want()))
        self.table = SheetTable("Notes and their gaps")
        self.table.chosen.connect(lambda line, _: self.opened.emit(line.key))
        top = FlowLayout()
        top.addWidget(self.all)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(plain_label(_HINT, "muted"))
        column.addWidget(self.words)
        column.addLayout(top)
        column.addWidget(self.table, 1)
        look.changed.connect(self.table.fit)

    def show_overview(self, _: Overview) -> None:
        """List all notes."""
        self.show_notes(Want())

    def show_notes(self, want: Want) -> None:
        """List the notes that are wanted."""
        self.all.setEnabled(bool(want.words))
        self._ask(lambda desk: desk.notes(want), self._show)

    def _show(self, sheet: Sheet) -> None:
        self.words.setText(sheet.words if sheet.words.endswith(".") else f"{sheet.words}.")
        self.table.show_sheet(sheet)
