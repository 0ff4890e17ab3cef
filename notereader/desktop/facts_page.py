"""What every page with a note has: note, list of facts, fact in hand and side pane, moving together."""

from collections.abc import Callable, Mapping

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QInputDialog, QVBoxLayout, QWidget

from notereader.desktop import steps
from notereader.desktop.add_dialog import AddDialog
from notereader.desktop.band import Band
from notereader.desktop.case_layout import CaseLayout
from notereader.desktop.editors import Typing
from notereader.desktop.fact_pane import FactPane
from notereader.desktop.facts_model import FactsModel
from notereader.desktop.facts_view import FactsView
from notereader.desktop.find_line import FindLine
from notereader.desktop.labels import plain_label
from notereader.desktop.look import Look
from notereader.desktop.mark_key import MarkKey
from notereader.desktop.marks import Span, spans_of
from notereader.desktop.note_view import NoteView
from notereader.desktop.rows import DIGITS, Row
from notereader.desktop.session import Action, Notice, Session
from notereader.desktop.side_pane import SidePane
from notereader.record import Address, Evidence, Record, Value, source_of

_NO_TEXT = "This record came without the text of its note. Its quotes stand beside the facts."
ENTRIES = ("repairs", "pulleys", "injuries")


class FactsPage(QWidget):
    """Shows one session. `run` does what a key of the table names; everything else is moving the parts together.

    A kind of page adds its side panes and its own actions, and says what its strip counts and what comes next.
    """

    title_changed = Signal()
    # Full words of keys that mean something else on this kind of page.
    called: Mapping[str, str] = {}
    # What the dialog calls that adds a tendon, pulley or structure.
    missed = "What was missed"
    # How values are typed, where that is not the usual way.
    typing: Typing | None = None

    def __init__(
        self,
        session: Session,
        title: str,
        look: Look,
        band: Band,
        model: FactsModel,
        pane: FactPane,
        mark_key: MarkKey,
        beside: str = "Picture",
    ):
        super().__init__()
        self.session = session
        self.title = title
        self.band = band
        self.strip = plain_label()
        self.strip.setAccessibleName("State of this case")
        self.note = NoteView(look)
        self.finder = FindLine(self.note)
        self.model = model
        model.setParent(self)
        self.facts = FactsView(self.model, look)
        self.pane = pane
        self.side = SidePane()
        self._layout = CaseLayout(
            self.strip, [self.note, self.finder, mark_key], self.facts, self.pane, self.side, beside
        )
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
            "correct": lambda: self._on_row(self._edit),
            "silent": lambda: self._on_row(lambda row: self._act(lambda r: steps.mark_silent(r, row.address))),
            "words": lambda: self._on_row(self._take_words),
            "add": self._add,
            "move": lambda: self._on_row(self._move),
            "next_unsettled": self._next,
            "undo": self.session.undo,
            "redo": self.session.redo,
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
        self.pane.entered.connect(self._enter)
        self.pane.left.connect(self.facts.setFocus)

    def _count(self) -> None:
        """Say in the strip how far the work is."""
        raise NotImplementedError

    def _next(self) -> None:
        """Bring the fact to look at next."""
        raise NotImplementedError

    # What is shown

    def _show_record(self, record: Record) -> None:
        self.note.show_record(record, self._spans_in_hand())
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

    def _show_in_hand(self, address: Address | None) -> None:
        if not self.facts.bring(address) and address is not None:
            # A fact that this arrangement leaves out is listed with all fields.
            self._arrange_facts(every_field=True)
            self.facts.bring(address)
        self.pane.show_row(self.facts.row_in_hand())
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
            lambda record: steps.correct(record, address, value, evidence), None if moved_on else self._entered
        )

    def _entered(self) -> None:
        """Go on after a value was entered."""
        self._next()

    def _take_words(self, row: Row) -> None:
        evidence = self._selected_evidence()
        if evidence is None:
            words = "Select words in the note first: F6 goes there, Shift and the arrow keys select."
            self.pane.refuse(words)
            return
        self.note.clear_selection()
        self.session.act(lambda record: steps.take_words(record, row.address, evidence))

    def _move(self, row: Row) -> None:
        place = row.address.entry()
        if place.group not in ENTRIES:
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

    def _add(self) -> None:
        row = self.facts.row_in_hand()
        digit = row.address.digit if row else None
        group = row.address.group if row else "repairs"
        dialog = AddDialog(self.session.record, digit, group, self._selected_words(), self, self.missed, self.typing)
        if dialog.exec():
            address, value, evidence = dialog.address(), dialog.value(), self._selected_evidence()
            self.note.clear_selection()
            self.session.act(
                lambda record: steps.correct(record, address, value, evidence),
                lambda: self.session.take_in_hand(address),
            )

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
