"""The sample that a person confirms, and what it says of how often the program errs."""

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QPushButton, QSpinBox, QStackedWidget, QVBoxLayout, QWidget

from notereader.desktop.audit.asking import Ask, Overview, Sheet
from notereader.desktop.audit.chart_view import ChartView
from notereader.desktop.audit.sheet_table import SheetTable
from notereader.desktop.choice_box import ChoiceBox
from notereader.desktop.flow_layout import FlowLayout
from notereader.desktop.labels import plain_label
from notereader.desktop.look import Look

_HINT = (
    "The program reads and errs. Draw a random sample, open each of its notes with Return and settle every fact beside "
    "the note, then compare: the figures show how often the program erred, and the shares corrected for it. The same "
    "seed draws the same notes; a larger sample holds the smaller one, and nothing you entered is lost."
)
_WHOLE = "from all notes"
_USUAL = 40


class SamplePane(QWidget):
    """Draws, lists and compares. `opened` goes out with the number and the name of a case of the sample."""

    opened = Signal(int, str)
    # Tells that shares can be shown corrected now.
    compared = Signal()

    def __init__(self, look: Look, ask: Ask, parent: QWidget | None = None):
        super().__init__(parent)
        self._ask = ask
        self.number = QSpinBox(minimum=1, maximum=100_000, value=_USUAL, prefix="notes: ")
        self.number.setAccessibleName("Number of notes in the sample")
        self.strata = ChoiceBox()
        self.strata.setAccessibleName("Drawn from all notes or from each value of a column")
        self.strata.setMinimumContentsLength(14)
        self.seed = QSpinBox(minimum=0, maximum=999_999, prefix="seed: ")
        self.seed.setAccessibleName("Seed of the draw")
        for box in (self.number, self.seed):
            box.setMinimumHeight(28)
        self.draw = _button("&Draw the sample", self._draw)
        self.compare = _button("Com&pare with what is confirmed", self._compare)
        self.as_chart = QPushButton("As a &chart")
        self.as_chart.setAccessibleName("Reader error as a chart")
        self.as_chart.setCheckable(True)
        self.as_chart.toggled.connect(self._show_part)
        self.standing = plain_label()
        self.standing.setAccessibleName("How far the sample is confirmed")
        self.table = SheetTable("Notes of the sample")
        self.table.chosen.connect(lambda line, _: self.opened.emit(int(line.key), line.cells[0]))
        self.words = plain_label()
        self.words.setAccessibleName("What was compared")
        self.reader = SheetTable("How often the program erred, fact by fact")
        self.chart = ChartView("Chart: shares as read and corrected", look, ask)
        self.parts = QStackedWidget()
        self.parts.addWidget(self.reader)
        self.parts.addWidget(self.chart)
        self._lay_out()
        for table in (self.table, self.reader):
            look.changed.connect(table.fit)

    def show_overview(self, overview: Overview) -> None:
        """Offer the columns to draw from, and show how far the sample is."""
        chosen = self.strata.currentText()
        self.strata.clear()
        self.strata.addItem(_WHOLE, "")
        for name in overview.strata:
            self.strata.addItem(f"from each {name}", name)
        self.strata.setCurrentIndex(max(0, self.strata.findText(chosen)))
        self.renew()
        self._ask(lambda desk: desk.reader(), self._show_reader)

    def renew(self) -> None:
        """Show how far the sample is confirmed by now."""
        self._ask(lambda desk: desk.sample(), self._show_sample)

    def _draw(self) -> None:
        size, column, seed = self.number.value(), str(self.strata.currentData() or ""), self.seed.value()
        self.standing.setText("Drawing the sample and reading its notes …")
        self._ask(lambda desk: desk.draw(size, column, seed), self._show_drawn)

    def _compare(self) -> None:
        def show(sheet: Sheet) -> None:
            self._show_reader(sheet)
            self.compared.emit()

        self._ask(lambda desk: desk.compare(), show)

    def _show_drawn(self, sheet: Sheet) -> None:
        self._show_sample(sheet)
        self.table.setFocus()

    def _show_sample(self, sheet: Sheet) -> None:
        some = bool(sheet.lines)
        self.standing.setText(sheet.words)
        self.table.setVisible(some)
        self.compare.setEnabled(some)
        self.table.show_sheet(sheet)

    def _show_reader(self, sheet: Sheet) -> None:
        self.words.setText(sheet.words)
        self.parts.setVisible(bool(sheet.lines))
        self.as_chart.setEnabled(bool(sheet.lines))
        self.reader.show_sheet(sheet)
        self.chart.show_chart("corrected", "")

    def _show_part(self, chart: bool) -> None:
        self.parts.setCurrentWidget(self.chart if chart else self.reader)

    def _lay_out(self) -> None:
        top, below = FlowLayout(), FlowLayout()
        for part in (self.number, self.strata, self.seed, self.draw):
            top.addWidget(part)
        for part in (self.compare, self.as_chart):
            below.addWidget(part)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(plain_label(_HINT, "muted"))
        column.addLayout(top)
        column.addWidget(self.standing)
        column.addWidget(self.table, 2)
        column.addLayout(below)
        column.addWidget(self.words)
        column.addWidget(self.parts, 3)


def _button(words: str, slot: object) -> QPushButton:
    button = QPushButton(words)
    button.setAccessibleName(words.replace("&", ""))
    button.clicked.connect(lambda: slot())  # type: ignore[operator]
    return button
