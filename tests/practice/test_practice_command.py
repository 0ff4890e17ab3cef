"""The command line of practice, from the list of cases to the teacher's report."""

import argparse
import io
import json
import socket
import sys
from datetime import date, timedelta

import pytest
from practice_making import key_record, made_case, perfect

from notereader.practice import command, ready_set, save_set
from notereader.practice.attempts import dump_attempt
from notereader.practice.command import add_arguments, run
from notereader.practice.words import tables
from notereader.record import Review, dump_record

GOOD = """side: right "R RF"
ring FDP: repaired "FDP repair"
ring FDP extent: complete "100%"
ring FDP strands: 4 "4 strands"
ring FDP size: 4/0 "4/0 Ticron"
ring A2: intact "A2 not touched"
"""


class InTwoDays(date):
    @classmethod
    def today(cls):
        return date.today() + timedelta(days=2)


def in_two_days(monkeypatch):
    monkeypatch.setattr(command, "date", InTwoDays)


@pytest.fixture
def practise(tmp_path, capsys, monkeypatch):
    """Run the command; return its status and what it printed on both streams."""

    def do(*words, typed=""):
        parser = argparse.ArgumentParser()
        add_arguments(parser)
        args = [str(word) for word in words]
        if args[0] in ("list", "take", "report"):
            args += ["--book", str(tmp_path / "book")]
        monkeypatch.setattr(sys, "stdin", io.StringIO(typed))
        status = run(parser.parse_args(args))
        out, err = capsys.readouterr()
        return status, out, err

    return do


def test_the_list_shows_difficulty_state_and_what_comes_next(practise):
    status, out, _ = practise("list")
    assert status == 0
    assert "01-plain-index" in out and "new" in out
    assert "Next: notereader practise take 01-plain-index" in out
    assert "skin suture" not in out, "what a case teaches gives it away"
    practise("take", "02", typed="side: right\n")
    assert "begun, not handed in" in practise("list")[1]


def test_a_case_is_taken_left_and_gone_on_with(practise, tmp_path):
    status, out, _ = practise("take", "02", typed=GOOD)
    assert status == 0
    assert "Your work is kept. Go on with: notereader practise take 02-terse-ring" in out
    assert "saved: ring FDP: core strands: 4 (line 17)" in out
    assert "   1  12/08/2031" in out, "the note is shown with line numbers"
    status, out, _ = practise("take", "02", typed="answers\ndone\n")
    assert "6 answers are there from before" in out
    assert "core suture size: 4-0" in out
    assert "MARKING: 02-terse-ring" in out
    assert "6 facts right with their words" in out
    assert tables().caution in " ".join(out.split())
    assert len(list((tmp_path / "book" / "me").glob("*.marking.json"))) == 1


def test_nothing_of_the_key_is_shown_before_the_work_is_handed_in(practise):
    _, out, _ = practise("take", "02", typed="fields\nhelp\nnote\nanswers\nleave\n")
    case = ready_set().case("02")
    shown = out.split("line each, for instance")[0]
    assert case.teaches not in out and case.remark not in out
    assert "adelaide" not in shown.replace("Adelaide", ""), "only the note's own words"


def test_a_line_that_is_not_understood_is_said_and_the_status_tells(practise, tmp_path):
    sheet = tmp_path / "answers.txt"
    sheet.write_text("ring FDP strnds: 4\ndone\n", "utf-8")
    status, out, _ = practise("take", "02", "--answers", sheet)
    assert status == 1
    assert "not saved: 'strnds' is not understood. Did you mean strands?" in out


def test_answers_can_come_from_a_file(practise, tmp_path):
    sheet = tmp_path / "answers.txt"
    sheet.write_text(GOOD + "# a remark of my own\ndone\n", "utf-8")
    status, out, _ = practise("take", "02", "--answers", sheet)
    assert status == 0 and "MARKING" in out
    status, _, err = practise("take", "02", "--answers", tmp_path / "missing.txt")
    assert status == 1 and "missing.txt could not be read" in err


def test_missed_facts_come_back_with_again(practise, monkeypatch):
    practise("take", "02", typed=GOOD + "done\n")
    status, _, err = practise("take", "--again")
    assert status == 1 and "No missed fact is due" in err

    in_two_days(monkeypatch)
    assert "missed facts are due again" in practise("list")[1]
    status, out, _ = practise("take", "--again", typed='ring FDP zone: 2A "zone 2A"\ndone\n')
    assert "Answer again only these, missed before:" in out
    assert "ring FDP: zone" in out
    assert "1 facts right with their words" in out
    assert "QUESTIONS" not in out


def test_a_set_without_keys_is_taken_and_marked_by_the_teacher(practise, tmp_path):
    teacher, student = tmp_path / "teacher.json", tmp_path / "student.json"
    record = tmp_path / "ring.json"
    record.write_text(dump_record(key_record()), "utf-8")
    assert practise("make", record, "--out", teacher, "--difficulty", "4")[0] == 0
    status, out, _ = practise("make", teacher, "--out", student, "--without-keys", "--title", "Week 1")
    assert status == 0 and "without their keys" in out
    typed = 'side: left "Left"\nring FDP: repaired "FDP was repaired"\ndone\n'
    status, out, _ = practise("take", "ring", "--set", student, "--student", "Ada", typed=typed)
    assert "Send this file to whoever gave you the cases" in out
    assert "MARKING" not in out
    handed = tmp_path / "book" / "Ada"
    status, out, _ = practise("mark", handed, "--set", teacher, "--out", tmp_path / "marks")
    assert status == 0
    assert "2 facts right with their words" in out
    assert sorted(p.name for p in (tmp_path / "marks").iterdir()) == [
        "Ada-ring.marking.json",
        "Ada-ring.txt",
        "facts.csv",
    ]


def test_a_batch_of_answers_is_marked_and_one_bad_file_stops_nothing(practise, tmp_path):
    folder = tmp_path / "in"
    folder.mkdir()
    (folder / "ada.txt").write_text("case: 02\nstudent: Ada\n" + GOOD, "utf-8")
    (folder / "bo.txt").write_text("case: 02\n" + GOOD.replace("4-0", "3-0"), "utf-8")
    (folder / "bad.txt").write_text("case: 02\nside: sideways\n", "utf-8")
    (folder / "none.txt").write_text("side: right\n", "utf-8")
    case = ready_set().case("01")
    (folder / "cy.json").write_text(dump_attempt(perfect(case)), "utf-8")
    status, out, err = practise("mark", folder)
    assert status == 1
    assert "3 marked, 2 not" in out
    assert "bad.txt, line 2: Side: 'sideways'" in err
    assert "does not say which case" in err
    assert "Ada" in out and "bo" in out and "100%" in out


def test_a_record_from_the_window_is_marked_as_an_answer(practise, tmp_path):
    case = made_case()
    save_set([case], tmp_path / "set.json")
    record = case.answers.model_copy(deep=True)
    record.review = Review(reviewer="Ada")
    (tmp_path / "answer.json").write_text(dump_record(record), "utf-8")
    status, out, _ = practise("mark", tmp_path / "answer.json", "--set", tmp_path / "set.json", "--whole")
    assert status == 0
    assert "MARKING: made (difficulty 2 of 5), Ada" in out
    assert "No difference to the key." in out.replace("\n", " ") or "CONTRADICTIONS" in out


def test_progress_is_reported_charted_and_exported(practise, tmp_path):
    practise("take", "02", typed=GOOD + "done\n")
    chart, table, export = tmp_path / "c.png", tmp_path / "p.csv", tmp_path / "p.json"
    status, out, _ = practise("report", "--chart", chart, "--csv", table, "--json", export)
    assert status == 0
    assert "PROGRESS, 1 cases" in out
    assert "Missed facts and the day they come back" in out
    assert chart.read_bytes().startswith(b"\x89PNG")
    assert "core suture" in table.read_text("utf-8")
    data = json.loads(export.read_text("utf-8"))
    assert data["progress"]["cases"] == 1
    assert "4/0 Ticron" not in export.read_text("utf-8"), "the note's words stay unless asked for"


def test_the_teacher_sees_several_students_exports(practise, tmp_path):
    exports = []
    for name in ("Ada", "Bo"):
        sheet = tmp_path / f"{name}.txt"
        sheet.write_text(f"case: 02\nstudent: {name}\n{GOOD}", "utf-8")
        practise("mark", sheet, "--out", tmp_path / name)
        exports.append(tmp_path / name)
    chart = tmp_path / "class.svg"
    status, out, _ = practise(
        "report", *exports, "--chart", chart, "--csv", tmp_path / "c.csv", "--json", tmp_path / "c.json"
    )
    assert status == 0
    assert "STUDENTS: 2" in out
    assert "FIELDS AS ITEMS" in out
    assert chart.exists() and (tmp_path / "c.csv").exists()
    assert json.loads((tmp_path / "c.json").read_text("utf-8"))["students"][0]["student"] == "Ada"
    assert "STUDENTS: 1" in practise("report", exports[0], "--teacher")[1]


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("take", "99"), "no case of this set"),
        (("list", "--set", "nowhere.json"), "could not be read"),
        (("report",), "no marking to report on yet"),
        (("mark", "nothing.txt"), "nothing.txt could not be read"),
    ],
)
def test_what_cannot_be_done_is_said_in_words(practise, words, said):
    status, _, err = practise(*words)
    assert status == 1
    assert said in err
    assert "Traceback" not in err


def test_no_connection_is_opened(practise, monkeypatch):
    def refuse(*_: object, **__: object) -> None:
        raise AssertionError("a socket was opened")

    monkeypatch.setattr(socket, "socket", refuse)
    assert practise("take", "02", typed=GOOD + "done\n")[0] == 0


def test_a_note_cannot_write_to_the_terminal(practise, tmp_path):
    """Escape sequences and marks that turn the writing round are shown as what they are."""
    note = "Left ring finger.\x1b[2J\u202e FDP repaired."
    (tmp_path / "bad.txt").write_text(note, "utf-8")
    (tmp_path / "bad.json").write_text("{}", "utf-8")
    (tmp_path / "cases.toml").write_text("", "utf-8")
    folder = tmp_path
    status, out, _ = practise("take", "bad", "--set", folder, typed='side: left "Left"\nanswers\n')
    assert status == 0
    assert "\x1b" not in out and "\u202e" not in out


def test_a_damaged_file_in_the_book_stops_nothing(practise, tmp_path):
    practise("take", "02", typed=GOOD + "done\n")
    book = tmp_path / "book" / "me"
    (book / "x.attempt.json").write_text("{", "utf-8")
    (book / "x.marking.json").write_text("{", "utf-8")
    status, out, err = practise("list")
    assert status == 0
    assert "x.attempt.json" in err and "x.marking.json" in err
    assert "marked," in out


def test_what_was_begun_again_is_gone_on_with(practise, tmp_path, monkeypatch):
    practise("take", "02", typed=GOOD + "done\n")

    in_two_days(monkeypatch)
    practise("take", "--again", typed='ring FDP zone: 2A "zone 2A"\n')
    out = practise("take", "--again", typed="answers\n")[1]
    assert "1 answers are there from before" in out
    assert "Answer again only these" not in practise("take", "02", typed="")[1]
