"""Figures of an audit: the lists of facts, groups beside one another, periods in a row. A cell leads to its notes."""

from collections.abc import Sequence
from dataclasses import replace
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QPushButton, QStackedWidget, QVBoxLayout, QWidget

from notereader.desktop.audit.asking import Ask, Overview, Sheet, Want
from notereader.desktop.audit.chart_view import ChartView
from notereader.desktop.audit.sheet_table import SheetTable
from notereader.desktop.choice_box import ChoiceBox
from notereader.desktop.flow_layout import FlowLayout
from notereader.desktop.labels import plain_label
from notereader.desktop.look import Look

if TYPE_CHECKING:
    from notereader.audit.report.rows import Line

# The columns of the table of states that hold a share of notes, with the letter of their state.
_LETTERS = {2: "s", 3: "i", 4: "-", 5: "c"}
_LEADS = {"s": "state", "i": "only imply", "-": "are silent on", "c": "contradict themselves on"}


class FiguresPane(QWidget):
    """A choice above, below it a table or, by a button, the same as a chart. `notes_wanted` asks for some notes."""

    notes_wanted = Signal(object)

    def __init__(self, name: str, choice: str, hint: str, look: Look, ask: Ask, parent: QWidget | None = None):
        super().__init__(parent)
        self.ask = ask
        self.choice = ChoiceBox()
        self.choice.setAccessibleName(choice)
        self.choice.setMinimumContentsLength(30)
        self.choice.setSizeAdjustPolicy(ChoiceBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.choice.activated.connect(self.renew)
        self.as_chart = QPushButton("As a &chart")
        self.as_chart.setAccessibleName("As a chart")
        self.as_chart.setCheckable(True)
        self.as_chart.toggled.connect(self._show_part)
        self.words = plain_label(part="muted")
        self.table = SheetTable(name)
        self.table.chosen.connect(self._choose)
        self.chart = ChartView(f"Chart: {name}", look, ask)
        self.parts = QStackedWidget()
        self.parts.addWidget(self.table)
        self.parts.addWidget(self.chart)
        self.top = FlowLayout()
        self.top.addWidget(self.choice)
        self.top.addWidget(self.as_chart)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(self.top)
        column.addWidget(plain_label(hint, "muted"))
        column.addWidget(self.words)
        column.addWidget(self.parts, 1)
        look.changed.connect(self.table.fit)

    def offer(self, choices: Sequence[tuple[str, str]]) -> None:
        """Offer (key, words) to choose from; what was chosen stays chosen where it still is there."""
        chosen = self.chosen
        self.choice.clear()
        for key, words in choices:
            self.choice.addItem(words, key)
        self.choice.setCurrentIndex(max(0, self.choice.findData(chosen)))
        self.renew()

    @property
    def chosen(self) -> str:
        """The key of what is chosen, '' where there is nothing to choose."""
        return str(self.choice.currentData() or "")

    def renew(self) -> None:
        """Show what is chosen now."""
        raise NotImplementedError

    def want(self, line: "Line", column: int) -> Want | None:
        """Return which notes a cell leads to, or None."""
        raise NotImplementedError

    def show_sheet(self, sheet: Sheet) -> None:
        """Show a sheet and what is said of it."""
        self.table.show_sheet(sheet)
        self.words.setText(sheet.words)
        self.words.setVisible(bool(sheet.words))

    def _choose(self, line: Any, column: int) -> None:
        want = self.want(line, column)
        if want is not None:
            self.notes_wanted.emit(want)

    def _show_part(self, chart: bool) -> None:
        self.parts.setCurrentWidget(self.chart if chart else self.table)


class FactsPane(FiguresPane):
    """The lists of facts: what a therapist needs, every field of the record, published standards."""

    def __init__(self, look: Look, ask: Ask):
        hint = (
            "Share of notes in each state with its 95 % interval, among the notes it applies to. Return on a share "
            "lists its notes."
        )
        super().__init__("Facts and the share of notes that state them", "List of facts", hint, look, ask)
        self._summary = ""
        self.words.setProperty("part", "")

    def show_overview(self, overview: Overview) -> None:
        """Offer the lists."""
        self._summary = overview.summary
        self.offer(overview.lists)

    def renew(self) -> None:
        """Show the list that is chosen."""
        kind = self.chosen
        if kind:
            self.ask(lambda desk: replace(desk.states(kind), words=self._summary), self.show_sheet)
            self.chart.show_chart("states", kind)

    def want(self, line: "Line", column: int) -> Want | None:
        """Return the notes in the state of a column."""
        letter = _LETTERS.get(column)
        return None if letter is None else Want(line.key, letter, words=f"they {_LEADS[letter]} {line.cells[0]}")


class GroupsPane(FiguresPane):
    """What changes the work most, by the groups of a column."""

    def __init__(self, look: Look, ask: Ask):
        hint = (
            "Share of notes that state it, with its 95 % interval. Return on a share "
            "lists the notes of the group that are silent on it. The figures are about notes, never to rank people."
        )
        super().__init__("Share of notes that state it, by group", "Grouped by", hint, look, ask)
        self._names: list[str] = []

    def show_overview(self, overview: Overview) -> None:
        """Offer the columns."""
        self.offer([(column, column) for column in overview.columns])
        self.words.setText(
            "" if overview.columns else "Tick a column under “Source” and count again to compare groups."
        )
        self.words.setVisible(not overview.columns)
        self.parts.setVisible(bool(overview.columns))

    def renew(self) -> None:
        """Show the groups of the column that is chosen."""
        column = self.chosen
        if column:
            self.ask(lambda desk: (desk.groups(column), desk.group_names(column)), self._show)
            self.chart.show_chart("groups", column)

    def want(self, line: "Line", column: int) -> Want | None:
        """Return the notes of the group that are silent."""
        if column < 1:
            return None
        group = self._names[column - 1]
        words = f"of {self.chosen} {group}, they are silent on {line.cells[0]}"
        return Want(line.key, "-", self.chosen, group, words=words)

    def _show(self, found: tuple[Sheet, list[str]]) -> None:
        sheet, self._names = found
        self.show_sheet(sheet)


class PeriodsPane(FiguresPane):
    """One fact over time, with limits and signals, and the signals of all that changes the work most."""

    def __init__(self, look: Look, ask: Ask):
        hint = (
            "Share of notes that state it, period by period, with limits three standard deviations from the average. A "
            "signal is a question, not a verdict. Return on a period lists its notes that are silent on it."
        )
        super().__init__("Periods with their limits", "Fact over time", hint, look, ask)
        self.signals = SheetTable("Signals in what changes the work most")
        self.signals.chosen.connect(self._go_to)
        self.signal_words = plain_label()
        column = self.layout()
        assert isinstance(column, QVBoxLayout)
        column.addWidget(self.signal_words)
        column.addWidget(self.signals)
        look.changed.connect(self.signals.fit)

    def show_overview(self, overview: Overview) -> None:
        """Offer the facts that have a chart."""
        self.offer(overview.charted)
        some = bool(overview.charted)
        for part in (self.parts, self.signals):
            part.setVisible(some)
        self.words.setText(
            "" if some else "There are too few notes with a date of the operation for a chart over time."
        )
        self.words.setVisible(not some)
        self.signal_words.setText("")
        if some:
            self.ask(lambda desk: desk.signals(), self._show_signals)

    def renew(self) -> None:
        """Show the fact that is chosen."""
        key = self.chosen
        if key:
            self.ask(lambda desk: desk.periods(key), self.show_sheet)
            self.chart.show_chart("period", key)

    def want(self, line: "Line", column: int) -> Want | None:
        """Return the notes of a period that are silent."""
        words = f"of {line.key}, they are silent on {self.choice.currentText()}"
        return Want(self.chosen, "-", period=line.key, words=words)

    def _show_signals(self, sheet: Sheet) -> None:
        self.signals.show_sheet(sheet)
        self.signals.setVisible(bool(sheet.lines))
        lead = "Signals; Return shows the fact." if sheet.lines else ""
        self.signal_words.setText(f"{lead} {sheet.words}".strip())

    def _go_to(self, line: "Line", _column: int) -> None:
        self.choice.setCurrentIndex(self.choice.findData(line.key))
        self.renew()
        self.choice.setFocus()
