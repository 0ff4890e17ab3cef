"""The letter to the surgeon as a draft that can be changed, copied and saved."""

from collections.abc import Callable

from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QDialog, QPlainTextEdit, QPushButton, QVBoxLayout, QWidget

from notereader.desktop.flow_layout import FlowLayout
from notereader.desktop.labels import plain_label

_HINT = (
    "A draft: change it as you like and fill in the blanks yourself. Your changes stay while this case is open; copy "
    "or save the letter to keep it."
)


class LetterDialog(QDialog):
    """Shows a letter to be changed. `save` is given the text as it stands when the button is pressed."""

    def __init__(self, letter: str, draft: str, save: Callable[[str], None], parent: QWidget | None = None):
        super().__init__(parent)
        self.setWindowTitle("Letter to the surgeon")
        self.resize(720, 620)
        self.text = QPlainTextEdit(letter)
        self.text.setAccessibleName("Letter to the surgeon")
        self.text.setTabChangesFocus(True)
        self.told = plain_label()
        row = FlowLayout()
        for words, do in (
            ("&Copy", self._copy),
            ("&Save …", lambda: save(self.letter())),
            ("&Draft anew", lambda: self.text.setPlainText(draft)),
            ("C&lose", self.accept),
        ):
            button = QPushButton(words)
            button.setAccessibleName(words.replace("&", "").removesuffix(" …"))
            button.setAutoDefault(False)
            button.clicked.connect(lambda _=False, do=do: do())
            row.addWidget(button)
        layout = QVBoxLayout(self)
        layout.addWidget(plain_label(_HINT, "muted"))
        layout.addWidget(self.text, 1)
        layout.addWidget(self.told)
        layout.addLayout(row)
        self.text.setFocus()

    def letter(self) -> str:
        """Return the letter as it stands now."""
        return self.text.toPlainText()

    def _copy(self) -> None:
        QGuiApplication.clipboard().setText(self.letter())
        self.told.setText("The letter is on the clipboard.")
