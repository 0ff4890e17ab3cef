"""One open case for the window: the only way from a key to the casebook."""

from collections import deque
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtGui import QUndoStack

from notereader.desktop.commands import EditCommand
from notereader.desktop.differences import differences, said
from notereader.desktop.rows import capital
from notereader.desktop.steps import Change, Step, StepRefused
from notereader.desktop.worker import Worker
from notereader.record import Address, Fact, Record, ValueRefused

if TYPE_CHECKING:
    from notereader.casebook import ChangedElsewhere, Edit, HistoryLine, OpenCase
    from notereader.practice import OpenAttempt

# How often to look whether another window changed the case; one cheap query.
LOOK_ELSEWHERE_MS = 3000

Action = Callable[[Record], Step]
Then = Callable[[], None]


@dataclass(frozen=True)
class Notice:
    """Something to tell the person, with what can be done about it: words for a button and what it does."""

    words: str
    offers: tuple[tuple[str, Then], ...] = ()
    about: Address | None = None


@dataclass(frozen=True)
class _State:
    """What the background thread hands over after each piece of work."""

    record: Record
    state: str
    read: frozenset[str] = field(default_factory=frozenset)


class Session(QObject):
    """The open case: its record, the fact in hand, and every action on them.

    Actions run one after the other. Each is written to the casebook first; only then the record here changes, the undo
    stack moves and the signals go out, so the screen never shows what could still be lost.
    """

    record_changed = Signal(object)
    read_changed = Signal()
    in_hand_changed = Signal(object)
    noticed = Signal(object)

    def __init__(
        self,
        case: "OpenCase | OpenAttempt",
        worker: Worker,
        who: Callable[[], str],
        parent: QObject | None = None,
    ):
        """Take a case of the casebook, or a student's attempt, which has the same face."""
        super().__init__(parent)
        self._case = case
        self._worker = worker
        self._who = who
        self._orders: deque[Then] = deque()
        self._busy = False
        self._at_order = False
        self._closed = False
        self.record: Record = case.record
        self.state: str = case.state
        self.read: set[str] = set(case.read)
        self.in_hand: Address | None = None
        self.undo_stack = QUndoStack(self)
        self._clock = QTimer(self, interval=LOOK_ELSEWHERE_MS)
        self._clock.timeout.connect(self.look_elsewhere)
        self._clock.start()

    @property
    def idle(self) -> bool:
        """True where nothing is being written and nothing waits for it."""
        return not self._busy and not self._orders

    def close(self) -> None:
        """Stop looking at the casebook; what was ordered is still written, then the session goes."""
        self._clock.stop()
        self._closed = True
        self._order(self.deleteLater)

    def take_in_hand(self, address: Address | None) -> None:
        """Make a fact the one everything shows, and remember that it was read."""
        if address == self.in_hand:
            return
        self.in_hand = address
        self.in_hand_changed.emit(address)
        if address is not None:
            self.mark_read([address])

    def mark_read(self, addresses: Iterable[Address]) -> None:
        """Remember that these facts were shown to the person; places without a fact are left out."""
        texts = {a.text() for a in addresses if self.record.fact(a) is not None} - self.read
        if not texts:
            return
        self.read |= texts
        self.read_changed.emit()
        self._worker.run(lambda: self._case.mark_read(texts), lambda _: None, self._tell_fault)

    def act(self, action: Action, then: Then | None = None) -> None:
        """Do one action on the record as it stands when its turn comes; then, once it is written, `then`."""
        self._order(lambda: self._start(action, then))

    def undo(self) -> None:
        """Take the last action back."""
        self._order(lambda: self._move_stack(back=True))

    def redo(self) -> None:
        """Do again what was taken back last."""
        self._order(lambda: self._move_stack(back=False))

    def confirm_case(self, then: Then) -> None:
        """Confirm the whole record in the name of the reviewer."""
        self._order(lambda: self._write(lambda: self._case.confirm(self._who()), (), then))

    def change(self, job: Then, then: Then | None = None) -> None:
        """Let the background thread change something beside the facts and take over what then stands there."""
        self._order(lambda: self._write(job, (), then))

    def look_elsewhere(self) -> None:
        """Take over what another window or process saved, and say what it was."""
        if self.idle:
            self._refresh()

    def history(self, done: Callable[[list["HistoryLine"]], None]) -> None:
        """Fetch the history of the case."""
        self._worker.run(self._case.history, done, self._tell_fault)

    def when_idle(self, then: Then) -> None:
        """Do something once everything ordered so far is written."""
        self._order(then)

    def _refresh(self, besides: Iterable[Address] = ()) -> None:
        self._order(lambda: self._write(self._case.refresh, besides, None))

    def _order(self, start: Then) -> None:
        """Do something when its turn comes. What an order itself orders comes before everything already waiting."""
        if self._at_order:
            self._orders.appendleft(start)
            return
        self._orders.append(start)
        self._next()

    def _next(self) -> None:
        while self._orders and not self._busy and not self._at_order:
            order = self._orders.popleft()
            self._at_order = True
            try:
                order()
            finally:
                self._at_order = False

    def _start(self, action: Action, then: Then | None) -> None:
        try:
            step = action(self.record)
        except (StepRefused, ValueRefused) as refusal:
            self.noticed.emit(Notice(str(refusal), about=self.in_hand))
            return
        if step.changes:
            self._save(step.words, [self._edit(change) for change in step.changes], then)
        elif then is not None:
            then()

    def _edit(self, change: Change) -> "Edit":
        # Imported here, not above: SQLAlchemy comes with it and takes longer than the window may take to appear.
        from notereader.casebook import Edit

        address = change.address
        if not address.field and change.after is None:
            return Edit.dropping(self.record, address)
        before = self.record.fact(address) if address.field else self.record.facts_of(address)
        return Edit(address, before, change.after)

    def _save(self, words: str, edits: "Sequence[Edit]", then: Then | None) -> None:
        def done() -> None:
            self.undo_stack.push(EditCommand(words, edits))
            if then is not None and not self._closed:
                then()

        self._write_edits(edits, done, lambda: None)

    def _move_stack(self, *, back: bool) -> None:
        stack = self.undo_stack
        if not (stack.canUndo() if back else stack.canRedo()):
            return
        command = stack.command(stack.index() - 1 if back else stack.index())
        assert isinstance(command, EditCommand)
        move = stack.undo if back else stack.redo

        def refused() -> None:
            command.setObsolete(True)
            move()

        def done() -> None:
            move()
            self.take_in_hand(next((e.address for e in command.edits if e.address.field), self.in_hand))

        self._write_edits(command.way_back() if back else list(command.edits), done, refused)

    def _write_edits(self, edits: "Sequence[Edit]", done: Then, refused: Then) -> None:
        who = self._who()
        own = {edit.address for edit in edits}
        self._write(lambda: self._case.apply_all(edits, who), own, done, refused, edits)

    def _write(
        self,
        job: Callable[[], object],
        own: Iterable[Address],
        then: Then | None,
        refused: Then = lambda: None,
        edits: "Sequence[Edit]" = (),
    ) -> None:
        """Let the background thread change the case and take over what then stands there."""
        self._busy = True
        case = self._case

        def work() -> _State:
            job()
            return _State(case.record, case.state, frozenset(case.read))

        def done(state: _State) -> None:
            self._busy = False
            self._take_over(state, own)
            if then is not None:
                then()
            self._next()

        def failed(fault: Exception) -> None:
            self._busy = False
            refused()
            self._tell_refusal(fault, edits)
            self._next()

        self._worker.run(work, done, failed)

    def _take_over(self, state: _State, own: Iterable[Address]) -> None:
        foreign = [] if state.record is self.record else differences(self.record, state.record, set(own))
        record_differs = state.record is not self.record or state.state != self.state
        read_differs = not state.read <= self.read
        self.record, self.state = state.record, state.state
        self.read |= state.read
        if record_differs:
            self.record_changed.emit(self.record)
        elif read_differs:
            self.read_changed.emit()
        if foreign:
            more = f" and {len(foreign) - 3} more" if len(foreign) > 3 else ""
            self.noticed.emit(Notice(f"Changed in another window: {'; '.join(foreign[:3])}{more}. Shown here now."))

    def _tell_refusal(self, fault: Exception, edits: "Sequence[Edit]") -> None:
        from notereader.casebook import CasebookFault, ChangedElsewhere

        if isinstance(fault, ChangedElsewhere) and fault.edit is not None:
            self._offer_both(fault, fault.edit, edits)
        elif isinstance(fault, ChangedElsewhere):
            self.noticed.emit(Notice(str(fault)))
            self._refresh()
        elif isinstance(fault, CasebookFault) and edits:
            again = ("Try again", lambda: self._order(lambda: self._save("try again", edits, None)))
            self.noticed.emit(Notice(str(fault), (again,)))
        else:
            self._tell_fault(fault)

    def _offer_both(self, fault: "ChangedElsewhere", held: "Edit", edits: "Sequence[Edit]") -> None:
        """Show what someone else entered beside what was to be entered here, and let the person choose."""
        address = held.address
        who = fault.who or "someone"
        mine = held.after
        now = said(address, fault.record.fact(address)) if address.field else "changed"
        wanted = said(address, mine) if isinstance(mine, Fact) or mine is None else "your change"

        def insist() -> None:
            self._order(lambda: self._save(f"enter {address.words()} again", self._renewed(edits), None))

        keep = ("Keep theirs", lambda: None)
        words = (
            f"{capital(address.words())} was changed in another window by {who} at {fault.when.astimezone():%H:%M}: "
            f"it is now {now}. Yours, {wanted}, was not entered."
        )
        self.noticed.emit(Notice(words, (keep, ("Enter mine", insist)), about=address))
        self._refresh([address])

    def _renewed(self, edits: "Sequence[Edit]") -> "list[Edit]":
        """Return the edits once more, made upon what stands there now."""
        return [
            replace(e, before=self.record.fact(e.address) if e.address.field else self.record.facts_of(e.address))
            for e in edits
        ]

    def _tell_fault(self, fault: Exception) -> None:
        from notereader.casebook import CasebookFault

        known = isinstance(fault, CasebookFault | ValueError)
        words: Any = fault if known else f"Something went wrong ({type(fault).__name__}: {fault}). Nothing was changed."
        self.noticed.emit(Notice(str(words)))
