"""The side panes of what the confirmed facts mean: strength and glide, the weeks as a chart, open questions."""

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QGuiApplication, QImage, QPixmap, QResizeEvent, QShowEvent
from PySide6.QtWidgets import (
    QFileDialog,
    QLabel,
    QPushButton,
    QScrollArea,
    QSpinBox,
    QTextBrowser,
    QVBoxLayout,
    QWidget,
)
from shiboken6 import isValid

from notereader.desktop.choice_box import ChoiceBox
from notereader.desktop.files import write_whole
from notereader.desktop.flow_layout import FlowLayout
from notereader.desktop.labels import plain_label
from notereader.desktop.letter_dialog import LetterDialog
from notereader.desktop.look import Look
from notereader.desktop.meaning import Meaning, MeaningFeed
from notereader.desktop.summary import letter_pdf

CAUTION = (
    "Bench figures are no promise for one patient. The surgeon's orders, local protocols and a licensed clinician's "
    "judgement decide. Nothing here is a recommendation."
)
_ANSWERS = "An answer goes into the record by Shift+E on its fact in the list; L lists every field."


class MeaningPane(QWidget):
    """Shows one page of a meaning under the cautions; the feed works only while a pane is seen."""

    def __init__(self, feed: MeaningFeed, title: str, part: str):
        super().__init__()
        self._feed, self._part = feed, part
        self.meaning: Meaning | None = None
        self.page = QTextBrowser()
        self.page.setAccessibleName(title)
        self.page.setOpenLinks(False)
        self.page.setTabChangesFocus(True)
        self.top = FlowLayout()
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(4, 4, 4, 4)
        self.column.addWidget(plain_label(CAUTION, "muted"))
        self.column.addLayout(self.top)
        self.column.addWidget(self.page, 1)
        self.setFocusProxy(self.page)
        feed.add(self)
        feed.changed.connect(self.show_meaning)
        feed.failed.connect(self.page.setPlainText)

    def show_meaning(self, meaning: Meaning) -> None:
        """Show it, staying where the reader was."""
        self.meaning = meaning
        bar = self.page.verticalScrollBar()
        place = bar.value()
        self.page.setHtml(self.html(meaning))
        bar.setValue(place)

    def html(self, meaning: Meaning) -> str:
        """Return the page of this pane."""
        return str(getattr(meaning, self._part))

    def showEvent(self, event: QShowEvent) -> None:  # noqa: N802
        """Ask for what is not worked out yet."""
        super().showEvent(event)
        self._feed.wake()


class StrengthPane(MeaningPane):
    """Strength against load and glide, for a day that can be chosen."""

    def __init__(self, feed: MeaningFeed):
        super().__init__(feed, "What the confirmed facts mean for strength and glide", "strength")
        self.day = QSpinBox(minimum=-1, maximum=365, value=-1, prefix="day ")
        self.day.setSpecialValueText("day: today")
        self.day.setAccessibleName("Day after the operation")
        self.day.setMinimumHeight(28)
        self.day.valueChanged.connect(lambda day: feed.choose(None if day < 0 else day, 0))
        self.top.addWidget(self.day)


class WeeksPane(MeaningPane):
    """The ranges of one tendon over the weeks, as a chart and the same in words."""

    def __init__(self, feed: MeaningFeed, look: Look):
        super().__init__(feed, "The chart in words", "")
        self._look = look
        self.tendon = ChoiceBox()
        self.tendon.setAccessibleName("Tendon shown in the chart")
        self.tendon.setSizeAdjustPolicy(ChoiceBox.SizeAdjustPolicy.AdjustToContents)
        self.tendon.activated.connect(self._renew)
        self.top.addWidget(self.tendon)
        self.chart = QLabel("")
        self.chart.setTextFormat(Qt.TextFormat.PlainText)
        self.chart.setAccessibleName("Chart of strength range against load ranges; the same in words below")
        self.frame = QScrollArea()
        self.frame.setWidget(self.chart)
        self.frame.setWidgetResizable(True)
        self.frame.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.frame.setAccessibleName("Chart of strength range against load ranges; the same in words below")
        self.column.insertWidget(2, self.frame)
        self._rest = QTimer(self, interval=200, singleShot=True)
        self._rest.timeout.connect(self._renew)
        look.changed.connect(self._renew)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        """Draw the chart as wide as the pane is now, once it rests."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self._rest.start()

    def html(self, meaning: Meaning) -> str:
        """Return the words of the tendon chosen, and order its chart."""
        chosen = max(self.tendon.currentIndex(), 0)
        self.tendon.clear()
        self.tendon.addItems([line.where for line, _ in meaning.tendons])
        if not meaning.tendons:
            return "<p>The record holds no tendon.</p>"
        chosen = min(chosen, len(meaning.tendons) - 1)
        self.tendon.setCurrentIndex(chosen)
        line, words = meaning.tendons[chosen]
        theme, width, letters = self._look.theme, max(280, self.width() - 34), self.font().pointSizeF()

        def draw() -> object:
            from notereader.desktop.meaning_chart import ChartInks, draw_chart

            inks = ChartInks(theme.base, theme.text, theme.muted, theme.accent, theme.trouble)
            return draw_chart(line, inks, width, letters)

        self._feed.run(draw, self._show_chart, self._not_drawn)
        return words

    def _show_chart(self, drawn: object) -> None:
        if not isValid(self):
            return  # The case was left while its chart was drawn.
        width, height, pixels = (getattr(drawn, name) for name in ("width", "height", "pixels"))
        image = QImage(pixels, width, height, width * 4, QImage.Format.Format_RGBA8888)
        self.chart.setPixmap(QPixmap.fromImage(image))
        self.frame.setFixedHeight(min(height + 6, max(160, self.height() * 3 // 5)))

    def _not_drawn(self, fault: Exception) -> None:
        if isValid(self):
            self.chart.setText(f"The chart could not be drawn ({fault}). It stands in words below.")

    def _renew(self) -> None:
        if self.meaning is not None:
            self.show_meaning(self.meaning)


class QuestionsPane(MeaningPane):
    """What is open or disagrees, and the letter to the surgeon."""

    def __init__(self, feed: MeaningFeed):
        super().__init__(feed, "Open questions and contradictions", "questions")
        self._edited: str | None = None
        for words, slot in (
            ("Letter to the surgeon …", self.edit),
            ("Copy letter", self.copy),
            ("Save letter …", self.ask_and_save),
        ):
            button = QPushButton(words)
            button.clicked.connect(slot)
            self.top.addWidget(button)
        self.told = plain_label()
        self.column.insertWidget(2, plain_label(_ANSWERS, "muted"))
        self.column.insertWidget(3, self.told)

    @property
    def letter(self) -> str:
        """The letter as the person left it, else as it is drafted."""
        if self._edited is not None:
            return self._edited
        return self.meaning.letter if self.meaning is not None else ""

    def edit(self) -> None:
        """Show the letter to be changed."""
        if self.meaning is not None:
            draft = self.meaning.letter
            dialog = LetterDialog(self.letter, draft, self._save, self)
            dialog.exec()
            self._edited = None if dialog.letter() == draft else dialog.letter()

    def copy(self) -> None:
        """Put the letter on the clipboard."""
        if self.meaning is not None:
            QGuiApplication.clipboard().setText(self.letter)
            self.told.setText("The letter is on the clipboard.")

    def ask_and_save(self) -> None:
        """Ask for a file and save the letter there, as PDF or text by its name."""
        if self.meaning is not None:
            self._save(self.letter)

    def _save(self, letter: str) -> None:
        path, _ = QFileDialog.getSaveFileName(self, "Save the letter", "questions.pdf", "PDF (*.pdf);;Text (*.txt)")
        if path:
            self.told.setText("Saving …")
            save_letter(self._feed, letter, Path(path), self._tell)

    def _tell(self, words: str) -> None:
        if isValid(self):
            self.told.setText(words)


def save_letter(feed: MeaningFeed, letter: str, path: Path, tell: Callable[[str], None]) -> None:
    """Write the letter in the background and tell how it went."""
    pdf = path.suffix.lower() == ".pdf"
    feed.run(
        lambda: write_whole(path, letter_pdf(letter) if pdf else letter.encode("utf-8")),
        lambda _: tell(f"Saved as {path.name}."),
        lambda fault: tell(f"It could not be saved: {fault}. Choose another folder or file and try again."),
    )
