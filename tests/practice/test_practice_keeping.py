"""What an exercise book keeps: markings beside attempts, and from both where each case stands."""

from datetime import date, timedelta

from practice_making import changed, fact, handed_in, key_record, made_case, perfect

from notereader.practice import (
    ExerciseBook,
    keep_marking,
    kept_markings,
    mark_what_waits,
    most_due,
    returns,
    standings,
)
from notereader.record import Address

STRANDS = Address("repairs", "ring", "FDP", None, "strands")


def test_a_kept_marking_is_found_again_and_a_damaged_one_is_named(tmp_path):
    book, case = ExerciseBook(tmp_path, "Ada"), made_case()
    marking = handed_in(case, perfect(case))
    keep_marking(book, marking)
    (tmp_path / "broken.marking.json").write_text("{", "utf-8")
    found, faults = kept_markings(book)
    assert found == [marking], "with the words of the note, which the marking page shows"
    assert len(faults) == 1 and "broken.marking.json" in faults[0]


def test_where_a_case_stands(tmp_path):
    book, case = ExerciseBook(tmp_path, "Ada"), made_case()
    assert [s.words for s in standings([case], [], [])] == ["new"]
    attempt = book.start(case)
    assert [s.words for s in standings([case], book.attempts(), [])] == ["begun, not handed in"]
    attempt.hand_in()
    first, second = handed_in(case, perfect(case)), handed_in(case, changed(case, STRANDS, None), days=1)
    last = standings([case], book.attempts(), [second, first])[0]
    assert last.marking == second, "the last marking, in whatever order they are found"
    assert last.words == f"marked, {second.share:.0%} of the points"


def test_a_repeat_of_single_facts_changes_nothing_in_where_a_case_stands(tmp_path):
    book, case = ExerciseBook(tmp_path, "Ada"), made_case()
    book.start(case, "again", [STRANDS])
    assert standings([case], book.attempts(), [])[0].words == "new"


def test_what_was_handed_in_and_never_marked_is_marked_once(tmp_path):
    """As after a crash between handing in and marking, or where the key came later."""
    book, case = ExerciseBook(tmp_path, "Ada"), made_case()
    open_yet, done = book.start(case), book.start(case)
    done.hand_in()
    assert mark_what_waits(book, [case.without_key()], book.attempts()) == [], "without the key it goes on waiting"
    marked = mark_what_waits(book, [case], book.attempts())
    assert [m.attempt for m in marked] == [done.attempt.id]
    assert kept_markings(book)[0] == marked
    assert mark_what_waits(book, [case], book.attempts()) == []
    assert open_yet.state == "in work"


def test_the_case_with_most_missed_facts_due_comes_first():
    case = made_case()
    missed = handed_in(case, changed(case, STRANDS, None))
    day = returns([missed])[0].due
    assert most_due([case], [missed], day - timedelta(days=1)) is None
    found, places = most_due([case], [missed], day)
    assert found == case and places == [STRANDS]
    assert most_due([], [missed], date.max) is None, "a case that is not there any more asks nothing"


def test_a_fact_that_was_right_does_not_come_back():
    case = made_case()
    right = handed_in(case, changed(case, STRANDS, fact(4, "four-strand", key_record().fact(STRANDS).rivals)))
    assert most_due([case], [right], date.max) is None
