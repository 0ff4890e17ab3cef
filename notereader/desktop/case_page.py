"""The page of an open case: what the reader proposed, to be confirmed or corrected beside the note."""

from collections.abc import Callable

from notereader.desktop import steps
from notereader.desktop.answer_dialog import AnswerDialog
from notereader.desktop.band import Band
from notereader.desktop.export import open_facts
from notereader.desktop.fact_pane import FactPane
from notereader.desktop.facts_model import FactsModel
from notereader.desktop.facts_page import ENTRIES, FactsPage
from notereader.desktop.look import Look
from notereader.desktop.mark_key import MarkKey
from notereader.desktop.marks import spans_of
from notereader.desktop.meaning import MeaningFeed
from notereader.desktop.meaning_panes import QuestionsPane, StrengthPane, WeeksPane
from notereader.desktop.picture_view import PictureView
from notereader.desktop.rows import Row
from notereader.desktop.session import Session
from notereader.desktop.worker import Worker
from notereader.record import Address, Record


class CasePage(FactsPage):
    """Shows a case of the casebook, with the picture of the finger and what the confirmed facts mean."""

    def __init__(self, session: Session, title: str, look: Look, band: Band, worker: Worker):
        super().__init__(session, title, look, band, FactsModel(), FactPane(look), MarkKey(look))
        self.picture = PictureView(look)
        self.picture.failed.connect(self.tell)
        self.side.add_pane("Finger", self.picture)
        self.feed = MeaningFeed(worker, self)
        self.strength, self.weeks, self.questions = (
            StrengthPane(self.feed),
            WeeksPane(self.feed, look),
            QuestionsPane(self.feed),
        )
        for name, pane in (("Strength, glide", self.strength), ("Weeks", self.weeks), ("Questions", self.questions)):
            self.side.add_pane(name, pane)

    def _table(self) -> dict[str, Callable[[], None]]:
        return {
            **super()._table(),
            "confirm": lambda: self._on_row(lambda row: self._act(lambda r: steps.confirm(r, row.address))),
            "confirm_heading": lambda: self._on_row(self._confirm_heading),
            "answer": lambda: self._on_row(self._answer),
            "rival": lambda: self._on_row(lambda row: self._take_rival(0)),
            "withdraw": lambda: self._on_row(lambda row: self._act(lambda r: steps.withdraw(r, row.address))),
            "withdraw_entry": lambda: self._on_row(self._withdraw_entry),
            "confirm_case": self._confirm_case,
            "thought_first": lambda: self._arrange_facts(thought_first=not self.model.thought_first),
        }

    def _connect(self) -> None:
        super()._connect()
        self.pane.rival_wanted.connect(self._take_rival)

    # What is shown

    def _show_record(self, record: Record) -> None:
        super()._show_record(record)
        self.picture.show_record(record)
        self.feed.show_record(record)

    def _show_in_hand(self, address: Address | None) -> None:
        super()._show_in_hand(address)
        self.picture.follow(address)

    def _count(self) -> None:
        rows = self.model.rows()
        unsettled, every = open_facts(self.session.record)
        unread = sum(row.unread for row in rows)
        thought = sum(row.needs_thought and row.unsettled for row in rows)
        settled = f"{every - unsettled} of {every} settled"
        state = "confirmed" if self.session.state == "confirmed" else "not yet confirmed"
        self.strip.setText(f"{self.title}  ·  {settled}  ·  {unread} unread  ·  {thought} to think about  ·  {state}")
        self.title_changed.emit()

    # What is done

    def _next(self) -> None:
        if not self.facts.next_unsettled() and not open_facts(self.session.record)[0]:
            self.pane.tell("Every fact is settled. Ctrl+Return confirms the record as a whole.")

    def _take_rival(self, number: int) -> None:
        address = self.session.in_hand
        if address is not None:
            self._act(lambda record: steps.take_rival(record, address, number))

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

    def _answer(self, row: Row) -> None:
        dialog = AnswerDialog(row, self)
        if dialog.exec():
            value, said_on = dialog.value(), dialog.said_on()
            self._act(lambda record: steps.answer(record, row.address, value, said_on))

    def _withdraw_entry(self, row: Row) -> None:
        if row.address.group not in ENTRIES:
            self.pane.refuse("Only tendons, pulleys and other injuries can be withdrawn as a whole.")
            return
        self._act(lambda record: steps.withdraw_entry(record, row.address))

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
