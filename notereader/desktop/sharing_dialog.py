"""Sharing without identifiers: what was found is shown beside the note, and the copy is made only after a look."""

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QSplitter,
    QVBoxLayout,
    QWidget,
)
from shiboken6 import isValid

from notereader.desktop.finds_view import CHECKED, KEY, UNCHECKED, Choice, FindsView
from notereader.desktop.flow_layout import FlowLayout
from notereader.desktop.labels import plain_label
from notereader.desktop.look import Look
from notereader.desktop.themes import Theme
from notereader.desktop.worker import Worker
from notereader.record import Record

if TYPE_CHECKING:
    from notereader.sharing import Find

_TICK = "Tick what is to be changed, untick what may stay (Space). Words you select in the note can be added."
_DATES = "All dates move back by one random number of days, which is kept nowhere, so the days between them stay true."
_LOOKED = "I have &looked through the whole note and at everything found"
_NO_TEXT = "This record came without the text of its note. Without it nobody can look for identifiers in it."


class SharingDialog(QDialog):
    """Shows the note with the finds marked and listed; saves a copy of the note or of the record."""

    def __init__(self, record: Record, look: Look, worker: Worker, parent: QWidget | None = None):
        super().__init__(parent)
        self.setWindowTitle("Share without identifiers")
        self.resize(1060, 680)
        self._record, self._worker = record, worker
        self._text = record.note.text or ""
        self._choices: list[Choice] = []
        self.warning = plain_label("", part="trouble")
        self.warning.setAccessibleName("What this search cannot do")
        self.note = FindsView(look)
        self.list = QListWidget()
        self.list.setAccessibleName("What was found: ticked is changed in the copy")
        self.list.setWordWrap(True)
        self.add = QPushButton("&Blank the selected words too")
        self.looked = QCheckBox(_LOOKED)
        self.save_note = QPushButton("Save the &note as text …")
        self.save_record = QPushButton("Save the &record …")
        self.told = plain_label("Looking …")
        self.setStyleSheet(_boxes_of(look.theme))
        self._arrange()
        self._connect()
        self._allow()
        if record.note.text is None:
            self._tell(_NO_TEXT)
        else:
            self.note.show_note(self._text)
            self._search()

    def choices(self) -> list[Choice]:
        """Return every find with what the person decided on it."""
        return list(self._choices)

    def _arrange(self) -> None:
        parts = QSplitter(Qt.Orientation.Horizontal)
        parts.addWidget(self.note)
        parts.addWidget(self.list)
        parts.setStretchFactor(0, 3)
        parts.setStretchFactor(1, 2)
        row = FlowLayout()
        for button in (self.add, self.save_note, self.save_record):
            button.setAutoDefault(False)
            row.addWidget(button)
        close = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        close.rejected.connect(self.reject)
        # Return in the list must not close the dialog with all that was decided.
        close.button(QDialogButtonBox.StandardButton.Close).setAutoDefault(False)
        layout = QVBoxLayout(self)
        layout.addWidget(self.warning)
        layout.addWidget(plain_label(_TICK))
        layout.addWidget(parts, 1)
        layout.addWidget(plain_label(f"{KEY} {_DATES}", part="muted"))
        layout.addWidget(self.looked)
        layout.addLayout(row)
        layout.addWidget(self.told)
        layout.addWidget(close)

    def _connect(self) -> None:
        self.list.itemChanged.connect(self._take_ticks)
        self.list.currentRowChanged.connect(lambda _: self._mark())
        self.note.selectionChanged.connect(self._allow)
        self.looked.toggled.connect(self._allow)
        self.add.clicked.connect(self._add)
        self.save_note.clicked.connect(self._save_note)
        self.save_record.clicked.connect(self._save_record)

    # Finding and choosing

    def _search(self) -> None:
        def job() -> "tuple[str, list[Find]]":
            # Imported where it is used, and in the background: the lists of words take a moment.
            from notereader.sharing import INCOMPLETE, find_in_record

            return INCOMPLETE, find_in_record(self._record)

        def done(found: "tuple[str, list[Find]]") -> None:
            if isValid(self):
                self.warning.setText(found[0])
                self._show([Choice(find) for find in found[1]], 0)
                self.list.setFocus()
                self._tell(f"{len(found[1])} places found. Nothing is written before you have looked.")

        self._worker.run(job, done, lambda fault: self._tell(f"The search failed: {fault}"))

    def _show(self, choices: list[Choice], current: int) -> None:
        from notereader.sharing import MIXED_DATES, action_words, mixed_dates

        self._choices = choices
        self.list.blockSignals(True)
        self.list.clear()
        for choice in choices:
            find = choice.find
            line = self._text.count("\n", 0, find.start) + 1
            words = " ".join(find.words.split())
            becomes = action_words(find) if choice.changed else "kept as it is"
            item = QListWidgetItem(f"{find.kind}: “{words}” {becomes}\nline {line}, {find.why}")
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            item.setCheckState(CHECKED if choice.changed else UNCHECKED)
            self.list.addItem(item)
        self.list.setCurrentRow(min(current, len(choices) - 1))
        self.list.blockSignals(False)
        kept = [choice.find for choice in choices if not choice.changed]
        if mixed_dates(kept, self._chosen()):
            self._tell(MIXED_DATES)
        self._mark()
        self._allow()

    def _take_ticks(self) -> None:
        ticks = [self.list.item(row).checkState() == CHECKED for row in range(self.list.count())]
        choices = [Choice(choice.find, tick) for choice, tick in zip(self._choices, ticks, strict=True)]
        # Not at once: Qt is still busy with the line that was ticked.
        QTimer.singleShot(0, self, lambda: self._show(choices, self.list.currentRow()))

    def _mark(self) -> None:
        row = self.list.currentRow()
        self.note.show_choices(self._choices, row if 0 <= row < len(self._choices) else None)

    def _add(self) -> None:
        from notereader.sharing import by_hand

        span = self.note.selected_span()
        if span is None:
            return
        kept = {choice.find for choice in self._choices if not choice.changed}
        finds = by_hand(self._text, *span, [choice.find for choice in self._choices])
        self.note.clear_selection()
        self._show(
            [Choice(f, f not in kept) for f in finds],
            next(n for n, f in enumerate(finds) if f.start <= span[0] < f.end),
        )

    def _allow(self) -> None:
        """Enable what can be done: adding with words selected, saving only after a look."""
        self.add.setEnabled(bool(self._text) and self.note.selected_span() is not None)
        ready = bool(self._text) and self.looked.isChecked()
        self.looked.setEnabled(bool(self._text))
        self.save_note.setEnabled(ready)
        self.save_record.setEnabled(ready)

    # Saving

    def _chosen(self) -> "list[Find]":
        return [choice.find for choice in self._choices if choice.changed]

    def _save_note(self) -> None:
        text, finds = self._text, self._chosen()

        def content() -> str:
            from notereader.sharing import CleanCopy, random_shift

            return CleanCopy(text, finds, random_shift()).text

        self._save("Save the copy of the note", "shared-note.txt", "Text (*.txt)", content)

    def _save_record(self) -> None:
        record, finds = self._record, self._chosen()

        def content() -> str:
            from notereader.desktop.export import json_of
            from notereader.sharing import random_shift, share_record

            return json_of(share_record(record, finds, random_shift()), text=True)

        self._save("Save the copy of the record", "shared-record.json", "JSON (*.json)", content)

    def _save(self, title: str, name: str, kinds: str, content: Callable[[], str]) -> None:
        chosen, _ = QFileDialog.getSaveFileName(self, title, name, kinds)
        if not chosen:
            return
        path = Path(chosen)

        def job() -> None:
            from notereader.desktop.files import write_whole

            write_whole(path, content().encode("utf-8", "replace"))

        self._tell("Saving …")
        self._worker.run(
            job,
            lambda _: self._tell(f"Saved as {path.name}. Read it once more before it leaves."),
            lambda fault: self._tell(f"It could not be saved: {fault}. Choose another folder or file and try again."),
        )

    def _tell(self, words: str) -> None:
        if isValid(self):
            self.told.setText(words)


def _boxes_of(theme: Theme) -> str:
    """Return the style of empty boxes: without an edge of its own a box is not to be seen on dark ground."""
    box = f"width: 12px; height: 12px; border: 2px solid {theme.edge}; background: {theme.base};"
    return f"QCheckBox::indicator:unchecked, QListView::indicator:unchecked {{ {box} }}"
