"""The band above note and facts: one sentence when something went wrong or changed elsewhere, and what can be done."""

from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QWidget

from notereader.desktop.labels import plain_label
from notereader.desktop.session import Notice, Then


class Band(QFrame):
    """Hidden until there is something to say; several notices wait for one another."""

    def __init__(self, parent: QWidget | None = None):
        super().__init__(parent)
        self.setProperty("part", "band")
        self.setAccessibleName("Notice")
        self._waiting: list[Notice] = []
        self._words = plain_label()
        self._row = QHBoxLayout(self)
        self._row.addWidget(self._words, 1)
        self._buttons: list[QPushButton] = []
        self.hide()

    @property
    def words(self) -> str:
        """What is said now; empty where nothing is."""
        return self._words.text() if self._waiting else ""

    def tell(self, notice: Notice) -> None:
        """Say something, after what is being said already."""
        if notice.words in [waiting.words for waiting in self._waiting]:
            return
        self._waiting.append(notice)
        if len(self._waiting) == 1:
            self._show()

    def clear(self) -> None:
        """Say nothing more."""
        self._waiting.clear()
        self.hide()

    def take(self, number: int) -> None:
        """Press a button: first the offers, then the one that puts the notice away."""
        self._buttons[number].click()

    def _show(self) -> None:
        for button in self._buttons:
            button.deleteLater()
        self._buttons.clear()
        notice = self._waiting[0]
        self._words.setText(notice.words)
        for words, then in notice.offers or (("Understood", lambda: None),):
            self._offer(words, then)
        self.show()
        # Screen readers are told, for the band takes no focus away from the work.
        QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(self, notice.words))

    def _offer(self, words: str, then: Then) -> None:
        button = QPushButton(words)
        button.setAccessibleName(words)

        def taken() -> None:
            self._waiting.pop(0)
            if self._waiting:
                self._show()
            else:
                self.hide()
            then()

        button.clicked.connect(taken)
        self._row.addWidget(button)
        self._buttons.append(button)
