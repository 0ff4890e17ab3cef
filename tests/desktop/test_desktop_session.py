"""One case between keys and casebook: order, undo, what others change, what cannot be saved."""

import pytest
from desktop_samples import sample_record

from notereader.casebook import Casebook, CasebookFault, Edit
from notereader.desktop import steps
from notereader.desktop.session import Session
from notereader.desktop.shelf import Shelf
from notereader.desktop.worker import Worker
from notereader.record import Address

STRANDS = Address("repairs", "ring", "FDP", None, "strands")
SIDE = Address("operation", field="side")


@pytest.fixture
def path(tmp_path):
    return str(tmp_path / "casebook.db")


@pytest.fixture
def session(qtbot, path):
    worker = Worker("test")
    case = Shelf(path).add(sample_record("02-terse-ring"), "ring")
    made = Session(case, worker, lambda: "here")
    made.notices = []
    made.noticed.connect(made.notices.append)
    yield made
    made.close()
    worker.finish()


@pytest.fixture
def through(qtbot, session):
    return lambda: qtbot.waitUntil(lambda: session.idle)


def elsewhere(path, address, value, who="Anna"):
    """Change a fact as another process would: through a casebook of its own."""
    case = Casebook(path).open(1)
    before = case.record.fact(address)
    case.apply(Edit(address, before, before.model_copy(update={"value": value, "status": "corrected"})), who)


def stored(path):
    return Casebook(path).open(1).record


def test_nothing_shows_before_it_is_written(qtbot, session, through, path):
    seen = []
    session.record_changed.connect(lambda record: seen.append(stored(path).fact(STRANDS) == record.fact(STRANDS)))
    session.act(lambda record: steps.confirm(record, STRANDS))
    assert session.record.fact(STRANDS).status == "proposed", "not yet written, so not yet shown"
    through()
    assert seen == [True]


def test_actions_run_in_order_on_the_record_as_it_then_stands(session, through, path):
    for value in (5, 6, 7):
        session.act(lambda record, v=value: steps.correct(record, STRANDS, v))
    through()
    assert stored(path).fact(STRANDS).value == 7
    session.undo()
    session.undo()
    through()
    assert stored(path).fact(STRANDS).value == 5
    session.redo()
    through()
    assert stored(path).fact(STRANDS).value == 6
    assert session.undo_stack.index() == 2


def test_what_an_order_orders_comes_before_what_waits(session, through):
    done = []

    def outer(record):
        session.act(lambda r: done.append("inner") or steps.Step("", ()))
        done.append("outer")
        return steps.Step("", ())

    session.act(outer)
    session.act(lambda r: done.append("next") or steps.Step("", ()))
    through()
    assert done == ["outer", "inner", "next"]


def test_undo_is_history_too(qtbot, session, through):
    session.act(lambda record: steps.confirm(record, STRANDS))
    session.undo()
    through()
    lines = []
    session.history(lines.extend)
    qtbot.waitUntil(lambda: bool(lines))
    assert [line.kind for line in lines] == ["imported", "edited", "edited"]
    assert lines[-1].note == "undone"
    assert [line.who for line in lines] == ["", "here", "here"]


def test_another_windows_change_is_taken_over_and_said(session, through, path):
    elsewhere(path, STRANDS, 6)
    session.look_elsewhere()
    through()
    assert session.record.fact(STRANDS).value == 6
    (notice,) = session.notices
    assert "ring FDP: core strands: 4 (proposed) → 6 (corrected)" in notice.words


def test_changes_of_other_facts_are_merged_and_said(session, through, path):
    elsewhere(path, SIDE, "left")
    session.act(lambda record: steps.confirm(record, STRANDS))
    through()
    assert stored(path).fact(SIDE).value == "left"
    assert stored(path).fact(STRANDS).status == "confirmed"
    assert "operation: side: right (proposed) → left (corrected)" in session.notices[0].words


def test_a_change_of_the_same_fact_is_offered_not_overwritten(session, through, path):
    elsewhere(path, STRANDS, 6)
    session.act(lambda record: steps.correct(record, STRANDS, 8))
    through()
    assert stored(path).fact(STRANDS).value == 6
    assert session.record.fact(STRANDS).value == 6, "theirs is shown"
    (notice,) = session.notices
    assert "Anna" in notice.words and "now 6 (corrected)" in notice.words and "8 (corrected)" in notice.words
    assert [words for words, _ in notice.offers] == ["Keep theirs", "Enter mine"]
    notice.offers[1][1]()
    through()
    assert stored(path).fact(STRANDS).value == 8
    session.undo()
    through()
    assert stored(path).fact(STRANDS).value == 6


def test_keeping_theirs_changes_nothing(session, through, path):
    elsewhere(path, STRANDS, 6)
    session.act(lambda record: steps.withdraw(record, STRANDS))
    through()
    session.notices[0].offers[0][1]()
    through()
    assert stored(path).fact(STRANDS).value == 6
    assert session.undo_stack.count() == 0


def test_undo_of_what_another_changed_since_is_offered_too(session, through, path):
    session.act(lambda record: steps.correct(record, STRANDS, 8))
    through()
    elsewhere(path, STRANDS, 6)
    session.undo()
    through()
    assert stored(path).fact(STRANDS).value == 6
    assert session.undo_stack.count() == 0, "what cannot be undone is not offered again"
    assert "Anna" in session.notices[0].words


def test_what_cannot_be_saved_is_said_and_can_be_tried_again(session, through, path, monkeypatch):
    saving = type(session._case).apply_all

    def full(self, edits, who=""):
        raise CasebookFault("The casebook cannot grow: the disk is full.")

    monkeypatch.setattr(type(session._case), "apply_all", full)
    session.act(lambda record: steps.confirm(record, STRANDS))
    through()
    (notice,) = session.notices
    assert "disk is full" in notice.words
    assert session.record.fact(STRANDS).status == "proposed"
    monkeypatch.setattr(type(session._case), "apply_all", saving)
    notice.offers[0][1]()
    through()
    assert stored(path).fact(STRANDS).status == "confirmed"
    assert session.undo_stack.count() == 1


def test_a_refused_action_is_said_about_the_fact_in_hand(session, through):
    session.take_in_hand(STRANDS)
    session.act(lambda record: steps.take_rival(record, STRANDS, 0))
    through()
    assert session.notices[0].about == STRANDS
    assert session.undo_stack.count() == 0


def test_what_was_in_hand_is_read_and_stays_so(qtbot, session, path):
    session.take_in_hand(STRANDS)
    qtbot.waitUntil(lambda: STRANDS.text() in Casebook(path).open(1).read)
    assert STRANDS.text() in session.read


def test_confirming_the_record_names_the_reviewer(session, through, path):
    addresses = [address for address, _ in session.record.walk()]
    for address in addresses:
        session.act(lambda record, a=address: steps.confirm(record, a))
    session.confirm_case(lambda: None)
    through()
    assert Casebook(path).open(1).state == "confirmed"
    assert stored(path).review.reviewer == "here"
