"""Saving the report: which files, with or without the names of the notes, and where."""

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QCheckBox, QFileDialog, QPushButton, QVBoxLayout, QWidget

from notereader.desktop.audit.asking import Ask, Overview
from notereader.desktop.flow_layout import FlowLayout
from notereader.desktop.labels import agreed, plain_label

if TYPE_CHECKING:
    from notereader.audit.results import Part

# The parts of a report, their words, and a file by which an earlier report is known.
_PARTS: "dict[Part, tuple[str, str]]" = {
    "page": ("Charts and tables for the browser (&HTML)", "report.html"),
    "print": ("The same for paper (&PDF)", "report.pdf"),
    "tables": ("Every figure for spreadsheets (&CSV)", "rates.csv"),
    "data": ("Everything for other programs (&JSON)", "audit.json"),
}
_HINT = (
    "The report says what was read, with which version of the program and of its knowledge, and how the figures are "
    "made. It stands alone: nothing in it is fetched from elsewhere."
)
_NAMES = "They can name a person. With them come links to the notes; without this neither is in the report."


class ReportPane(QWidget):
    """Asks what to save, and saves it."""

    def __init__(self, ask: Ask, parent: QWidget | None = None):
        super().__init__(parent)
        self._ask = ask
        self.parts: dict[Part, QCheckBox] = {}
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(plain_label(_HINT, "muted"))
        for part, (words, _) in _PARTS.items():
            box = QCheckBox(words)
            box.setAccessibleName(words.replace("&", ""))
            box.setChecked(True)
            box.toggled.connect(self._enable)
            self.parts[part] = box
            column.addWidget(box)
        self.with_names = QCheckBox("With the &names of the notes")
        self.with_names.setAccessibleName("With the names of the notes")
        self.with_names.setAccessibleDescription(_NAMES)
        column.addSpacing(8)
        column.addWidget(self.with_names)
        column.addWidget(plain_label(_NAMES, "muted"))
        self.words = plain_label(part="muted")
        column.addWidget(self.words)
        self.save = QPushButton("&Save the report …")
        self.save.setAccessibleName("Save the report")
        self.save.clicked.connect(self._ask_and_save)
        row = FlowLayout()
        row.addWidget(self.save)
        column.addLayout(row)
        self.told = plain_label()
        self.told.setAccessibleName("How saving went")
        column.addWidget(self.told)
        column.addStretch(1)

    def show_overview(self, overview: Overview) -> None:
        """Say whether words of the notes will be in it."""
        self.told.setText("")
        self.words.setText(
            "The tables and the data hold the words of the notes that prove each fact, as you asked under “Source”."
            if overview.with_words
            else "No words of the notes are in it."
        )

    def _enable(self) -> None:
        self.save.setEnabled(any(box.isChecked() for box in self.parts.values()))

    def _ask_and_save(self) -> None:
        folder = QFileDialog.getExistingDirectory(self, "Folder for the report")
        if folder and self._may_replace(Path(folder)):
            parts = tuple(part for part, box in self.parts.items() if box.isChecked())
            with_names = self.with_names.isChecked()
            self.told.setText("Saving …")
            self._ask(lambda desk: desk.save(folder, parts, with_names), lambda names: self._tell(folder, names))

    def _may_replace(self, folder: Path) -> bool:
        there = [
            file for part, (_, file) in _PARTS.items() if self.parts[part].isChecked() and (folder / file).exists()
        ]
        if not there:
            return True
        question = f"An earlier report lies in this folder ({', '.join(there)}). Replace it?"
        return agreed(self, question)

    def _tell(self, folder: str, names: list[str]) -> None:
        self.told.setText(f"Saved in {folder}: {', '.join(names)}.")
