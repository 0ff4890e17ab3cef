"""Exporting the record: JSON to a file or the clipboard, with or without the note's text, and the PDF summary."""

import re
from collections.abc import Callable
from pathlib import Path

from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QPushButton,
    QVBoxLayout,
    QWidget,
)
from shiboken6 import isValid

from notereader.desktop.export import how_settled, json_of
from notereader.desktop.files import write_whole
from notereader.desktop.flow_layout import FlowLayout
from notereader.desktop.labels import plain_label
from notereader.desktop.summary import save_summary
from notereader.desktop.worker import Worker
from notereader.record import Record

PRIVACY = (
    "The export holds words quoted from the note, and with its text the whole note: these can name a person. "
    "It is not anonymised."
)


class ExportDialog(QDialog):
    """Says what is not confirmed before anything leaves, and what was done after."""

    def __init__(self, record: Record, title: str, worker: Worker, parent: QWidget | None = None):
        super().__init__(parent)
        self.setWindowTitle("Export")
        self._record = record
        self._title = title
        self._worker = worker
        self.state = plain_label(how_settled(record))
        self.state.setAccessibleName("How far the record is confirmed")
        self.with_text = QCheckBox("With the &text of the note")
        self.with_text.setChecked(record.note.text is not None)
        self.with_text.setEnabled(record.note.text is not None)
        self.save = QPushButton("&Save as JSON …")
        self.copy = QPushButton("&Copy as JSON")
        self.summary = QPushButton("Summary as &PDF …")
        for button, slot in ((self.save, self._save), (self.copy, self._copy), (self.summary, self._summary)):
            button.setAccessibleName(button.text().replace("&", "").removesuffix(" …"))
            button.clicked.connect(slot)
        row = FlowLayout()
        for button in (self.save, self.copy, self.summary):
            row.addWidget(button)
        self.told = plain_label("")
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.addWidget(self.state)
        layout.addWidget(self.with_text)
        layout.addWidget(plain_label(PRIVACY))
        layout.addLayout(row)
        layout.addWidget(self.told)
        layout.addWidget(buttons)
        self.setMinimumWidth(460)
        self.save.setDefault(True)
        self.save.setFocus()

    def content(self) -> str:
        """Return the JSON as it would leave now."""
        return json_of(self._record, text=self.with_text.isChecked())

    def _save(self) -> None:
        path, _ = QFileDialog.getSaveFileName(self, "Save the record", file_name(self._title, ".json"), "JSON (*.json)")
        if path:
            self._try(lambda: write_whole(Path(path), self.content().encode("utf-8")), f"Saved as {Path(path).name}.")

    def _copy(self) -> None:
        QGuiApplication.clipboard().setText(self.content())
        self.told.setText("The record is on the clipboard.")

    def _summary(self) -> None:
        path, _ = QFileDialog.getSaveFileName(self, "Save the summary", file_name(self._title, ".pdf"), "PDF (*.pdf)")
        if path:
            self._try(lambda: save_summary(self._record, Path(path)), f"Saved as {Path(path).name}.")

    def _try(self, job: Callable[[], None], done: str) -> None:
        """Do it in the background: drawing the pages of a summary takes a moment."""
        self.told.setText("Saving …")
        self._worker.run(job, lambda _: self._tell(done), lambda fault: self._tell(_not_saved(fault)))

    def _tell(self, words: str) -> None:
        if isValid(self):
            self.told.setText(words)


def file_name(title: str, ending: str) -> str:
    """Return a name every system takes for a file, made from the name of a case."""
    plain = re.sub(r"[^\w.-]+", "-", Path(title).stem).strip("-.")
    return (plain or "record") + ending


def _not_saved(fault: Exception) -> str:
    return f"It could not be saved: {fault}. Choose another folder or file and try again."
