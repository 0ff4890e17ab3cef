"""The student's work is on the disk after every step, whole, and never lost."""

import json
import os
import random
import signal
import stat
import subprocess
import sys
import time
from pathlib import Path

import pytest
from practice_making import NOTE, RING_A2, RING_FDP, at, made_case, open_attempt

from notereader.casebook import ChangedElsewhere, Edit, EditRefused
from notereader.practice import ExerciseBook, PracticeFault, exercise_book, load_attempt, ready_set
from notereader.practice.attempts import dump_attempt
from notereader.record import Address, Fact, ValueRefused

STRANDS = RING_FDP.field_of("strands")


def on_disk(attempt):
    return load_attempt(attempt.path)


def test_every_step_is_on_the_disk_when_it_returns(tmp_path):
    attempt = open_attempt(tmp_path)
    attempt.put(STRANDS, 4, [at("four-strand")])
    assert on_disk(attempt).record.fact(STRANDS).value == 4
    attempt.say_silent(RING_FDP.field_of("bulk"), RING_A2.field_of("finding"))
    assert on_disk(attempt).record.fact(RING_A2.field_of("finding")).basis == "silent"
    attempt.name_contradiction([STRANDS], "title and text")
    assert on_disk(attempt).contradictions[0].words == "title and text"
    attempt.rank_questions([STRANDS, RING_A2.field_of("finding")])
    assert on_disk(attempt).questions == [STRANDS.text(), RING_A2.field_of("finding").text()]
    attempt.forget(STRANDS)
    assert on_disk(attempt).record.fact(STRANDS) is None
    attempt.drop_contradiction(0)
    assert on_disk(attempt).contradictions == []
    attempt.mark_read([STRANDS.text()])
    assert on_disk(attempt).read == [STRANDS.text()]
    attempt.hand_in()
    assert on_disk(attempt).handed_in_at is not None
    assert on_disk(attempt).revision == attempt.revision == 8


def test_the_words_are_kept_with_their_place_and_the_text_is_not(tmp_path):
    attempt = open_attempt(tmp_path)
    attempt.put(STRANDS, 4, [at("four-strand")])
    raw = json.loads(attempt.path.read_text("utf-8"))
    assert "text" not in raw["record"]["note"]
    assert on_disk(attempt).record.fact(STRANDS).evidence[0].span == at("four-strand")
    assert attempt.record.fact(STRANDS).evidence[0].exact == "four-strand"


def test_only_the_owner_can_read_it(tmp_path):
    attempt = exercise_book("Ada Lovelace, 2nd", tmp_path).start(made_case())
    if os.name == "posix":
        assert stat.S_IMODE(attempt.path.stat().st_mode) == 0o600
        assert stat.S_IMODE(attempt.path.parent.stat().st_mode) == 0o700
    assert attempt.path.parent.name == "Ada-Lovelace-2nd"


def test_work_goes_on_where_it_was_left(tmp_path):
    case = made_case()
    attempt = open_attempt(tmp_path, case)
    attempt.put(STRANDS, 4, [at("four-strand")])
    again = ExerciseBook(tmp_path).unfinished(case)
    assert again.record == attempt.record
    again.put(RING_FDP.field_of("size"), "4-0", [at("4-0 Ethibond")])
    again.hand_in()
    assert ExerciseBook(tmp_path).unfinished(case) is None
    assert ExerciseBook(tmp_path).start(case).attempt.id == "made-2"


def test_what_is_handed_in_stays_as_it_is(tmp_path):
    attempt = open_attempt(tmp_path)
    attempt.hand_in()
    before = attempt.path.read_bytes()
    for step in (
        lambda: attempt.put(STRANDS, 4),
        lambda: attempt.say_silent(STRANDS),
        lambda: attempt.rank_questions([STRANDS]),
        attempt.hand_in,
    ):
        with pytest.raises(PracticeFault, match="handed in"):
            step()
    assert attempt.path.read_bytes() == before
    assert attempt.state == "confirmed"


def test_the_windows_edits_work_and_can_be_undone(tmp_path):
    """The window drives an attempt by the edits it drives a case with."""
    attempt = open_attempt(tmp_path)
    entry = Edit(RING_FDP, None, {"strands": Fact(value=4, status="added")})
    attempt.apply_all([entry], "Ada")
    change = Edit(STRANDS, attempt.record.fact(STRANDS), Fact(value=6, status="added"))
    attempt.apply(change)
    assert attempt.record.fact(STRANDS).value == 6
    attempt.apply(change.inverse())
    assert attempt.record.fact(STRANDS).value == 4
    attempt.apply(entry.inverse())
    assert attempt.record.facts_of(RING_FDP) is None
    assert attempt.history() == []
    assert attempt.state == "in work"
    attempt.confirm("Ada")
    assert attempt.state == "confirmed"


def test_an_impossible_step_changes_nothing(tmp_path):
    attempt = open_attempt(tmp_path)
    before = attempt.path.read_bytes()
    with pytest.raises(ValueRefused):
        attempt.put(STRANDS, 40)
    with pytest.raises(PracticeFault, match="no words at"):
        attempt.put(STRANDS, 4, [(0, len(NOTE) + 1)])
    with pytest.raises(PracticeFault, match="twice"):
        attempt.rank_questions([STRANDS, STRANDS])
    with pytest.raises(PracticeFault, match="Nothing was entered"):
        attempt.forget(STRANDS)
    with pytest.raises(PracticeFault, match="no contradiction"):
        attempt.drop_contradiction(0)
    with pytest.raises(EditRefused):
        attempt.apply(Edit(Address("repairs", "nose", "FDP"), None, {}))
    assert attempt.path.read_bytes() == before


def test_two_windows_on_one_attempt_do_not_overwrite_each_other(tmp_path):
    case = made_case()
    one = open_attempt(tmp_path, case)
    two = ExerciseBook(tmp_path).open("made-1", case)
    one.put(STRANDS, 4)
    with pytest.raises(ChangedElsewhere):
        two.put(STRANDS, 6)
    assert on_disk(one).record.fact(STRANDS).value == 4
    assert two.refresh()
    assert two.record.fact(STRANDS).value == 4
    assert not two.refresh()
    two.put(STRANDS, 6)
    assert one.refresh() and one.record.fact(STRANDS).value == 6


def test_a_folder_that_cannot_be_written_is_said_and_nothing_is_lost(tmp_path, monkeypatch):
    attempt = open_attempt(tmp_path)
    attempt.put(STRANDS, 4)

    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "replace", full)
    with pytest.raises(PracticeFault, match="No space left"):
        attempt.put(STRANDS, 6)
    monkeypatch.undo()
    assert attempt.record.fact(STRANDS).value == on_disk(attempt).record.fact(STRANDS).value == 4
    attempt.put(STRANDS, 6)
    assert not list(tmp_path.glob("*.part")) and not list(tmp_path.glob(".*"))


@pytest.mark.parametrize(
    ("content", "words"),
    [
        (b"", "not readable JSON"),
        (b"[]", "no attempt"),
        (b'{"format": "notereader-record"}', "no attempt"),
        (b'{"format": "notereader-attempt", "format_version": 9}', "newer"),
        (b'{"format": "notereader-attempt", "format_version": 1}', "faulty at"),
        (b"[" * 100_000, "not readable JSON"),
        (b"\xff\xfe\x00", "not readable JSON"),
    ],
)
def test_a_damaged_attempt_is_named_and_refused(tmp_path, content, words):
    path = tmp_path / "x.attempt.json"
    path.write_bytes(content)
    with pytest.raises(PracticeFault, match=words) as fault:
        load_attempt(path)
    assert "x.attempt.json" in str(fault.value)
    book = ExerciseBook(tmp_path)
    good = book.start(made_case())
    assert [attempt.id for attempt in book.attempts()] == [good.attempt.id]
    assert len(book.faults) == 1 and "x.attempt.json" in book.faults[0]
    assert path.read_bytes() == content


def test_an_address_that_is_none_is_refused(tmp_path):
    attempt = open_attempt(tmp_path)
    raw = json.loads(dump_attempt(attempt.attempt))
    raw["questions"] = ["not an address"]
    attempt.path.write_text(json.dumps(raw), "utf-8")
    with pytest.raises(PracticeFault, match="questions"):
        load_attempt(attempt.path)


def test_an_attempt_at_another_note_is_refused(tmp_path):
    open_attempt(tmp_path)
    with pytest.raises(PracticeFault, match="another note"):
        ExerciseBook(tmp_path).open("made-1", ready_set().cases[0])


WORKER = """
import sys
from pathlib import Path
from notereader.practice import ExerciseBook, ready_set
from notereader.record import Address
case = ready_set().case("01-plain-index")
attempt = ExerciseBook(Path(sys.argv[1])).start(case)
place = Address("repairs", "index", "FDP", None, "strands")
for number in range(100000):
    attempt.put(place, 1 + number % 16)
    print(attempt.revision, flush=True)
"""


def test_a_killed_process_loses_no_saved_step(tmp_path):
    """Kill the process at random moments: the file is whole and holds at least the last step that was reported."""
    case = ready_set().case("01-plain-index")
    for seed in range(5):
        folder = tmp_path / str(seed)
        folder.mkdir()
        process = subprocess.Popen(
            [sys.executable, "-c", WORKER, str(folder)], stdout=subprocess.PIPE, text=True, cwd=Path.cwd()
        )
        assert process.stdout is not None
        process.stdout.readline()
        time.sleep(random.Random(seed).uniform(0.0, 0.25))
        process.send_signal(signal.SIGKILL if os.name == "posix" else signal.SIGTERM)
        reported = [int(line) for line in process.stdout.read().split()] or [1]
        process.wait()
        attempt = ExerciseBook(folder).open("01-plain-index-1", case)
        assert attempt.revision >= reported[-1]
        assert attempt.record.fact(Address("repairs", "index", "FDP", None, "strands")).value == 1 + (
            (attempt.revision - 1) % 16
        )
