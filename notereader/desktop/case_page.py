"""The page of an open case: note, facts, fact in hand and side pane, moving together."""

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QInputDialog, QVBoxLayout, QWidget

from notereader.desktop import steps
from notereader.desktop.add_dialog import AddDialog
from notereader.desktop.band import Band
from notereader.desktop.case_layout import CaseLayout
from notereader.desktop.export import open_facts
from notereader.desktop.fact_pane import FactPane
from notereader.desktop.facts_model import FactsModel
from notereader.desktop.facts_view import FactsView
from notereader.desktop.find_line import FindLine
from notereader.desktop.labels import plain_label
from notereader.desktop.look import Look
from notereader.desktop.mark_key import MarkKey
from notereader.desktop.marks import Span, spans_of
from notereader.desktop.meaning import MeaningFeed
from notereader.desktop.meaning_panes import QuestionsPane, StrengthPane, WeeksPane
from notereader.desktop.note_view import NoteView
from notereader.desktop.picture_view import PictureView
from notereader.desktop.rows import DIGITS, Row
from notereader.desktop.session import Action, Notice, Session
from notereader.desktop.side_pane import SidePane
from notereader.desktop.worker import Worker
from notereader.record import Address, Evidence, Record, Value, source_of

_NO_TEXT = "This record came without the text of its note. Its quotes stand beside the facts."
_ENTRIES = ("repairs", "pulleys", "injuries")


class CasePage(QWidget):
    """Shows one session. `run` does what a key of the table names; everything else is moving the parts together."""

    title_changed = Signal()

    def __init__(
        self, session: Session, title: str, look: Look, band: Band, worker: Worker, parent: QWidget | None = None
    ):
        super().__init__(parent)
        self.session = session
        self.title = title
        self.band = band
        self.strip = plain_label()
        self.strip.setAccessibleName("State of this case")
        self.note = NoteView(look)
        self.finder = FindLine(self.note)
        self.model = FactsModel(self)
        self.facts = FactsView(self.model, look)
        self.pane = FactPane(look)
        self.picture = PictureView(look)
        self.side = SidePane()
        self.side.add_pane("Finger", self.picture)
        self.feed = MeaningFeed(worker, self)
        self.strength, self.weeks, self.questions = (
            StrengthPane(self.feed),
            WeeksPane(self.feed, look),
            QuestionsPane(self.feed),
        )
        for name, pane in (("Strength, glide", self.strength), ("Weeks", self.weeks), ("Questions", self.questions)):
            self.side.add_pane(name, pane)
        self._layout = CaseLayout(self.strip, [self.note, self.finder, MarkKey(look)], self.facts, self.pane, self.side)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self._layout)
        self._actions = self._table()
        self._connect()
        self.note.setPlaceholderText(_NO_TEXT)

    def fill(self) -> None:
        """Show the case. Apart from making the page, so that neither takes long enough to be felt."""
        self.note.show_note(self.session.record.note.text or "")
        self._show_record(self.session.record)
        self.facts.bring_first()
        self.facts.setFocus()

    def run(self, name: str) -> None:
        """Do what the key of that name in keys.KEYS stands for."""
        self._actions[name]()

    def knows(self, name: str) -> bool:
        """True where this page does what the key of that name stands for."""
        return name in self._actions

    def tell(self, words: str) -> None:
        """Say something in the band."""
        self.band.tell(Notice(words))

    def _table(self) -> dict[str, Callable[[], None]]:
        return {
            "confirm": lambda: self._on_row(lambda row: self._act(lambda r: steps.confirm(r, row.address))),
            "confirm_heading": lambda: self._on_row(self._confirm_heading),
            "correct": lambda: self._on_row(self._edit),
            "rival": lambda: self._on_row(lambda row: self._take_rival(0)),
            "silent": lambda: self._on_row(lambda row: self._act(lambda r: steps.mark_silent(r, row.address))),
            "withdraw": lambda: self._on_row(lambda row: self._act(lambda r: steps.withdraw(r, row.address))),
            "words": lambda: self._on_row(self._take_words),
            "add": self._add,
            "move": lambda: self._on_row(self._move),
            "withdraw_entry": lambda: self._on_row(self._withdraw_entry),
            "next_unsettled": self._next,
            "confirm_case": self._confirm_case,
            "undo": self.session.undo,
            "redo": self.session.redo,
            "thought_first": lambda: self._arrange_facts(thought_first=not self.model.thought_first),
            "every_field": lambda: self._arrange_facts(every_field=not self.model.every_field),
            "find": self.finder.begin,
            "find_next": self.finder.next,
            "choose_mark": self._choose_mark,
            "next_part": lambda: self._walk(1),
            "previous_part": lambda: self._walk(-1),
            "side_pane": self._layout.toggle_side,
        }

    def _connect(self) -> None:
        session = self.session
        session.record_changed.connect(self._show_record)
        session.read_changed.connect(self._show_read)
        session.in_hand_changed.connect(self._show_in_hand)
        session.noticed.connect(self._notice)
        self.facts.chosen.connect(session.take_in_hand)
        self.note.chosen.connect(session.take_in_hand)
        self.pane.wanted.connect(self.run)
        self.pane.rival_wanted.connect(self._take_rival)
        self.pane.entered.connect(self._enter)
        self.pane.left.connect(self.facts.setFocus)
        self.picture.failed.connect(self.tell)

    # What is shown

    def _show_record(self, record: Record) -> None:
        self.note.show_record(record, self._spans_in_hand())
        self.picture.show_record(record)
        self.feed.show_record(record)
        self._show_rows()
        row = self.facts.row_in_hand()
        if not self.pane.is_editing(row):
            self.pane.show_row(row)

    def _show_rows(self) -> None:
        self.model.show(self.session.record, self.session.read)
        self._count()
        row = self.facts.row_in_hand()
        if row is None or row.address != self.session.in_hand:
            self.facts.bring(self.session.in_hand)

    def _show_read(self) -> None:
        self.model.show_read(self.session.read)
        self._count()

    def _count(self) -> None:
        rows = self.model.rows()
        unsettled, every = open_facts(self.session.record)
        unread = sum(row.unread for row in rows)
        thought = sum(row.needs_thought and row.unsettled for row in rows)
        settled = f"{every - unsettled} of {every} settled"
        state = "confirmed" if self.session.state == "confirmed" else "not yet confirmed"
        self.strip.setText(f"{self.title}  ·  {settled}  ·  {unread} unread  ·  {thought} to think about  ·  {state}")
        self.title_changed.emit()

    def _show_in_hand(self, address: Address | None) -> None:
        if not self.facts.bring(address) and address is not None:
            # A fact that this arrangement leaves out is listed with all fields.
            self._arrange_facts(every_field=True)
            self.facts.bring(address)
        self.pane.show_row(self.facts.row_in_hand())
        self.picture.follow(address)
        self.note.show_in_hand(self._spans_in_hand())

    def _spans_in_hand(self) -> list[Span]:
        address = self.session.in_hand
        fact = None if address is None else self.session.record.fact(address)
        return [] if address is None or fact is None else spans_of(address, fact)

    def _notice(self, notice: Notice) -> None:
        if notice.about is not None and notice.about == self.session.in_hand and not notice.offers:
            self.pane.refuse(notice.words)
        else:
            self.band.tell(notice)

    # What is done

    def _act(self, action: Action) -> None:
        self.session.act(action, self._next)

    def _next(self) -> None:
        if not self.facts.next_unsettled() and not open_facts(self.session.record)[0]:
            self.pane.tell("Every fact is settled. Ctrl+Return confirms the record as a whole.")

    def _on_row(self, do: Callable[[Row], None]) -> None:
        """Do something with the row in hand, when earlier actions are through and have brought it."""

        def later(record: Record) -> steps.Step:
            row = self.facts.row_in_hand()
            if row is not None:
                do(row)
            return steps.Step("", ())

        self.session.act(later)

    def _edit(self, row: Row) -> None:
        self.pane.edit(row, self._selected_words())

    def _enter(self, address: Address, value: Value, moved_on: bool) -> None:
        evidence = self._selected_evidence()
        self.note.clear_selection()
        if not moved_on:
            self.facts.setFocus()
        self.session.act(
            lambda record: steps.correct(record, address, value, evidence), None if moved_on else self._next
        )

    def _take_rival(self, number: int) -> None:
        address = self.session.in_hand
        if address is not None:
            self._act(lambda record: steps.take_rival(record, address, number))

    def _take_words(self, row: Row) -> None:
        evidence = self._selected_evidence()
        if evidence is None:
            words = "Select words in the note first: F6 goes there, Shift and the arrow keys select."
            self.pane.refuse(words)
            return
        self.note.clear_selection()
        self.session.act(lambda record: steps.take_words(record, row.address, evidence))

    def _confirm_heading(self, row: Row) -> None:
        rows = [other for other in self.facts.rows_under(row.heading) if other.unsettled]
        unseen = {other.address for other in rows if other.unread}
        addresses = [other.address for other in rows]
        plain = steps.plain_ones(self.session.record, addresses)
        if not unseen:
            self.session.act(lambda record: steps.confirm_shown(record, addresses), self._next)
            return
        shown = self.facts.show_under(row.heading, unseen)
        if not shown:
            self.session.take_in_hand(next(other.address for other in rows if other.address in unseen))
            return
        facts = [(other.address, self.session.record.fact(other.address)) for other in shown]
        spans = [span for address, fact in facts if fact for span in spans_of(address, fact)]
        self.session.mark_read([other.address for other in shown])
        self.note.show_in_hand(sorted(spans, key=lambda span: span.start))
        left = len(unseen) - len(shown)
        stay = len(rows) - len(plain)
        words = f"Shown: {len(shown)} facts. "
        words += f"{left} more to show: press again." if left else f"Press again to confirm {len(plain)}."
        if stay:
            words += f" {stay} with something to look at twice stay for you."
        self.pane.tell(words)

    def _move(self, row: Row) -> None:
        place = row.address.entry()
        if place.group not in _ENTRIES:
            self.pane.refuse("Only tendons, pulleys and other injuries stand under a digit.")
            return
        choices = [*DIGITS, "none"]
        now = choices.index(place.digit or "none")
        chosen, agreed = QInputDialog.getItem(
            self, "Enter under another digit", f"{place.entry_words()} belongs to", choices, now, False
        )
        if agreed:
            digit = None if chosen == "none" else chosen
            self.session.act(lambda record: steps.move_entry(record, place, digit))

    def _withdraw_entry(self, row: Row) -> None:
        if row.address.group not in _ENTRIES:
            self.pane.refuse("Only tendons, pulleys and other injuries can be withdrawn as a whole.")
            return
        self._act(lambda record: steps.withdraw_entry(record, row.address))

    def _add(self) -> None:
        row = self.facts.row_in_hand()
        digit = row.address.digit if row else None
        group = row.address.group if row else "repairs"
        dialog = AddDialog(self.session.record, digit, group, self._selected_words(), self)
        if dialog.exec():
            address, value, evidence = dialog.address(), dialog.value(), self._selected_evidence()
            self.note.clear_selection()
            self.session.act(
                lambda record: steps.correct(record, address, value, evidence),
                lambda: self.session.take_in_hand(address),
            )

    def _confirm_case(self) -> None:
        unsettled, every = open_facts(self.session.record)
        if unsettled:
            self.tell(
                f"{unsettled} of {every} facts are not settled yet. Confirm or withdraw them first; N goes to each."
            )
            self.facts.next_unsettled(from_top=True)
            self.facts.setFocus()
            return
        self.session.confirm_case(lambda: self.tell("The record is confirmed. Ctrl+E exports it."))

    # Moving about

    def _arrange_facts(self, *, thought_first: bool | None = None, every_field: bool | None = None) -> None:
        first = self.model.thought_first if thought_first is None else thought_first
        every = self.model.every_field if every_field is None else every_field
        self.model.arrange(thought_first=first, every_field=every)
        if not self.facts.bring(self.session.in_hand):
            self.facts.bring_first()

    def _choose_mark(self) -> None:
        if self.note.choose_at_caret():
            self.facts.setFocus()

    def _walk(self, way: int) -> None:
        following = self._layout.part_after(self.focusWidget(), way)
        if following is self.pane:
            self.pane.focus_first()
        else:
            following.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def _selected_words(self) -> str:
        span = self.note.selected_span()
        text = self.session.record.note.text
        return "" if span is None or text is None else " ".join(text[span[0] : span[1]].split())

    def _selected_evidence(self) -> Evidence | None:
        span = self.note.selected_span()
        text = self.session.record.note.text
        return None if span is None or text is None else Evidence.at(text, *span, source_of(text))
