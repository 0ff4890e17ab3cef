"""The first page: one sentence of what to do, a sample to try, and the cases so far."""

from pathlib import Path

from PySide6.QtCore import QMimeData, Signal
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QMenu, QPushButton, QVBoxLayout, QWidget

from notereader.desktop.case_list import CaseList
from notereader.desktop.flow_layout import FlowLayout
from notereader.desktop.labels import plain_label
from notereader.desktop.look import Look
from notereader.desktop.themes import larger
from notereader.vocabulary import samples_folder

SENTENCE = "Paste the operative note here, drop its file, or open it; the program proposes every fact for you to check."
PROMISE = "Nothing leaves this computer. Every change is kept at once; there is nothing to save."


class StartPage(QWidget):
    """Asks for a note. What is to be done goes out by signals."""

    wanted = Signal(str)
    sample_wanted = Signal(object)

    def __init__(self, look: Look, parent: QWidget | None = None):
        super().__init__(parent)
        self._look = look
        self._title = plain_label("What holds this tendon?")
        self._sentence = plain_label(SENTENCE)
        promise = plain_label(PROMISE, "muted")
        self.trouble = plain_label(part="trouble")
        self.trouble.hide()
        self.paste = self._button("Paste the note  Ctrl+V", "paste")
        self.open = self._button("Open a file …  Ctrl+O", "open")
        self.sample = QPushButton("Try a sample")
        self.sample.setAccessibleName("Try a sample note")
        self.sample.setMenu(self._samples())
        row = FlowLayout()
        self.practise = self._button("Practise  F8", "practise")
        self.audit = self._button("Audit many notes  F9", "audit")
        for button in (self.paste, self.open, self.sample, self.practise, self.audit):
            row.addWidget(button)
        self.cases = CaseList()
        self.cases.hide()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(48, 36, 48, 24)
        layout.setSpacing(12)
        for part in (self._title, self._sentence):
            layout.addWidget(part)
        layout.addLayout(row)
        layout.addWidget(self.trouble)
        layout.addWidget(promise)
        layout.addSpacing(12)
        layout.addWidget(self.cases, 10)
        layout.addStretch(1)
        look.changed.connect(self._dress)
        self._dress()

    def tell_trouble(self, words: str) -> None:
        """Say why a note could not be taken in, or nothing."""
        self.trouble.setText(words)
        self.trouble.setVisible(bool(words))

    def _button(self, words: str, name: str) -> QPushButton:
        button = QPushButton(words)
        button.setAccessibleName(words.split("  ")[0])
        button.clicked.connect(lambda: self.wanted.emit(name))
        return button

    def _samples(self) -> QMenu:
        menu = QMenu("Samples", self)
        for path in sorted(samples_folder().glob("*.txt")):
            action = menu.addAction(sample_title(path))
            action.triggered.connect(lambda _=False, chosen=path: self.sample_wanted.emit(chosen))
        menu.setEnabled(not menu.isEmpty())
        return menu

    def _dress(self) -> None:
        self._title.setFont(larger(self.font(), 1.7, bold=True))
        self._sentence.setFont(larger(self.font(), 1.2))


def sample_title(path: Path) -> str:
    """Return the name of a sample as words: '02-terse-ring.txt' is 'Terse ring'."""
    return path.stem.split("-", 1)[-1].replace("-", " ").capitalize()


def dropped(event: QDragEnterEvent | QDropEvent) -> Path | str | None:
    """Return the file or the text that is being dropped, or None."""
    data: QMimeData = event.mimeData()
    files = [url.toLocalFile() for url in data.urls() if url.isLocalFile()]
    if files:
        return Path(files[0])
    return data.text() if data.hasText() and not data.urls() else None
