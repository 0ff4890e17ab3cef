"""notereader read: a note in, a record out; many notes into a folder, and nothing is hidden or lost."""

import json
import os
import stat
import sys
from pathlib import Path

import pytest
from cli_running import NOTE, only_a_sentence, parsed, quotes_of, run_notereader, saved_note
from jsonschema import Draft202012Validator

from notereader.cli import main
from notereader.commands import read as command
from notereader.intake import NoteText
from notereader.record import Record, dump_record, load_record, record_schema

Output = pytest.CaptureFixture[str]


def test_one_note_becomes_one_record_on_standard_output(tmp_path: Path, capsys: Output) -> None:
    assert main(["read", str(saved_note(tmp_path))]) == 0
    out, err = capsys.readouterr()
    assert err == ""
    Draft202012Validator(record_schema()).validate(parsed(out))
    record = load_record(out)
    assert record.note.name == "ring.txt"
    assert record.note.text == NOTE
    facts = {place.words(): fact.value for place, fact in record.walk()}
    assert facts["ring FDP: core suture size"] == "4-0"
    assert quotes_of(record)
    assert all(NOTE[slice(*quote.span or (0, 0))] == quote.exact for quote in quotes_of(record))


def test_every_fact_is_a_proposal(tmp_path: Path, capsys: Output) -> None:
    main(["read", str(saved_note(tmp_path))])
    record = load_record(capsys.readouterr().out)
    assert {fact.status for _, fact in record.walk()} == {"proposed"}
    assert record.review.reviewer is None


def test_without_text_the_quotes_stay(tmp_path: Path, capsys: Output) -> None:
    assert main(["read", str(saved_note(tmp_path)), "--no-text"]) == 0
    data = parsed(capsys.readouterr().out)
    assert "text" not in data["note"]
    assert data["note"]["characters"] == len(NOTE)
    assert any(quote.exact == "no gap" for quote in quotes_of(load_record(data)))


def test_a_note_on_standard_input() -> None:
    done = run_notereader(["read", "-"], standard_input=NOTE.encode("utf-16"))
    assert done.returncode == 0
    record = load_record(done.stdout)
    assert record.note.text == NOTE
    assert record.note.name == "standard input"


def test_output_is_utf_8_whatever_the_system_uses(tmp_path: Path) -> None:
    note = saved_note(tmp_path, text=NOTE + "Silfverskiöld \U0001f9f5\n")
    done = run_notereader(["read", note], environment={"PYTHONIOENCODING": "ascii", "PYTHONUTF8": "0"})
    assert done.returncode == 0
    assert "Silfverskiöld \U0001f9f5" in parsed(done.stdout.decode("utf-8"))["note"]["text"]


def test_several_notes_need_a_folder(tmp_path: Path, capsys: Output) -> None:
    notes = [str(saved_note(tmp_path, name)) for name in ("a.txt", "b.txt")]
    assert main(["read", *notes]) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert "--out FOLDER" in err


def test_several_notes_become_one_file_each(tmp_path: Path, capsys: Output) -> None:
    notes = [str(saved_note(tmp_path, name)) for name in ("a.txt", "b.txt")]
    assert main(["read", *notes, "--out", str(tmp_path / "new" / "records")]) == 0
    out, err = capsys.readouterr()
    assert out == ""
    assert "2 notes read" in err
    assert "A person has to confirm each" in err
    for name in ("a", "b"):
        record = load_record((tmp_path / "new" / "records" / f"{name}.json").read_bytes())
        assert record.note.name == f"{name}.txt"


def test_one_bad_file_neither_stops_the_rest_nor_hides(tmp_path: Path, capsys: Output) -> None:
    good = [saved_note(tmp_path, name) for name in ("a.txt", "z.txt")]
    bad = tmp_path / "m.txt"
    bad.write_bytes(b"")
    out = tmp_path / "out"
    assert main(["read", str(good[0]), str(bad), str(tmp_path / "none.txt"), str(good[1]), "--out", str(out)]) == 1
    err = capsys.readouterr().err
    assert f"{bad.name}: The file is empty." in err
    assert "none.txt: There is no such file." in err
    assert "2 notes read" in err
    assert "2 refused" in err
    assert sorted(path.name for path in out.iterdir()) == ["a.json", "z.json"]


def test_one_bad_file_alone_is_refused_in_a_sentence(tmp_path: Path, capsys: Output) -> None:
    assert main(["read", str(tmp_path / "none.txt")]) == 1
    out, err = capsys.readouterr()
    assert out == ""
    assert only_a_sentence(err)


def test_two_notes_of_one_name_get_two_files(tmp_path: Path) -> None:
    (tmp_path / "a").mkdir()
    (tmp_path / "b").mkdir()
    notes = [saved_note(tmp_path / "a"), saved_note(tmp_path / "b", text=NOTE.replace("ring", "index"))]
    assert main(["read", *map(str, notes), "--out", str(tmp_path)]) == 0
    first, second = (load_record((tmp_path / name).read_bytes()) for name in ("ring.json", "ring-2.json"))
    assert {repair.digit for repair in first.repairs} == {"ring"}
    assert {repair.digit for repair in second.repairs} == {"index"}


def test_one_note_named_twice_is_read_once(tmp_path: Path) -> None:
    note = str(saved_note(tmp_path))
    assert main(["read", note, note, "--out", str(tmp_path)]) == 0
    assert [path.name for path in tmp_path.glob("*.json")] == ["ring.json"]


def test_a_pattern_is_resolved_where_the_shell_does_not(tmp_path: Path, capsys: Output) -> None:
    for name in ("a.txt", "b.txt", "c.doc"):
        saved_note(tmp_path, name)
    assert main(["read", str(tmp_path / "*.txt"), "--out", str(tmp_path / "out")]) == 0
    assert "2 notes read" in capsys.readouterr().err


def test_a_file_whose_name_looks_like_a_pattern_is_read(tmp_path: Path) -> None:
    note = saved_note(tmp_path, "ring[1].txt")
    assert main(["read", str(note), "--out", str(tmp_path)]) == 0
    assert (tmp_path / "ring[1].json").exists()


def test_a_draft_is_replaced_by_a_newer_one(tmp_path: Path) -> None:
    note = saved_note(tmp_path)
    main(["read", str(note), "--out", str(tmp_path)])
    saved_note(tmp_path, text=NOTE.replace("4-0", "3-0"))
    assert main(["read", str(note), "--out", str(tmp_path)]) == 0
    assert '"value": "3-0"' in (tmp_path / "ring.json").read_text(encoding="utf-8")


@pytest.mark.parametrize("how", ["status", "reviewer"])
def test_what_a_person_has_settled_is_never_written_over(tmp_path: Path, capsys: Output, how: str) -> None:
    note = saved_note(tmp_path)
    main(["read", str(note), "--out", str(tmp_path)])
    record = load_record((tmp_path / "ring.json").read_bytes())
    if how == "status":
        next(fact for _, fact in record.walk()).status = "confirmed"
    else:
        record.review.reviewer = "T. Reviewer"
    (tmp_path / "ring.json").write_text(dump_record(record), encoding="utf-8")
    before = (tmp_path / "ring.json").read_bytes()
    assert main(["read", str(note), "--out", str(tmp_path)]) == 1
    assert "a person has settled" in capsys.readouterr().err
    assert (tmp_path / "ring.json").read_bytes() == before


def test_something_else_of_that_name_is_left_alone(tmp_path: Path, capsys: Output) -> None:
    note = saved_note(tmp_path)
    (tmp_path / "ring.json").write_text("[1, 2, 3]")
    assert main(["read", str(note), "--out", str(tmp_path)]) == 1
    assert "was left as it is" in capsys.readouterr().err
    assert (tmp_path / "ring.json").read_text() == "[1, 2, 3]"


def test_a_note_is_never_replaced_by_its_own_record(tmp_path: Path) -> None:
    note = saved_note(tmp_path, "ring.json")
    assert main(["read", str(note), "--out", str(tmp_path)]) == 1
    assert note.read_text(encoding="utf-8") == NOTE


def test_a_folder_that_cannot_be_made_is_said(tmp_path: Path, capsys: Output) -> None:
    note = saved_note(tmp_path)
    assert main(["read", str(note), "--out", str(note / "out")]) == 2
    assert only_a_sentence(capsys.readouterr().err)


@pytest.mark.skipif(sys.platform == "win32", reason="Windows has no such permissions")
def test_records_are_readable_by_their_owner_only(tmp_path: Path) -> None:
    main(["read", str(saved_note(tmp_path)), "--out", str(tmp_path)])
    assert stat.S_IMODE((tmp_path / "ring.json").stat().st_mode) == 0o600
    assert not list(tmp_path.glob("*.part"))


@pytest.mark.skipif(sys.platform != "linux", reason="only there may a name be any bytes")
def test_a_name_that_is_no_utf_8(tmp_path: Path) -> None:
    name = os.fsencode(tmp_path) + b"/ring\xff.txt"
    with open(name, "wb") as stream:
        stream.write(NOTE.encode())
    done = run_notereader(["read", os.fsdecode(name)])
    assert done.returncode == 0
    assert load_record(done.stdout).note.name == "ring\ufffd.txt"
    done = run_notereader(["read", os.fsdecode(name), "--out", tmp_path])
    assert done.returncode == 0
    assert len(list(tmp_path.glob("*.json"))) == 1


def test_a_fault_of_the_program_on_one_note_does_not_stop_the_others(
    tmp_path: Path, capsys: Output, monkeypatch: pytest.MonkeyPatch
) -> None:
    reading = command.read_note

    def broken(note: NoteText) -> Record:
        if note.name == "a.txt":
            raise IndexError(f"no such word: {note.text}")
        return reading(note)

    monkeypatch.setattr(command, "read_note", broken)
    notes = [str(saved_note(tmp_path, name)) for name in ("a.txt", "b.txt")]
    assert main(["read", *notes, "--out", str(tmp_path / "out")]) == 1
    err = capsys.readouterr().err
    assert "a.txt: Something went wrong inside notereader" in err
    assert "IndexError" in err
    # What a fault says may quote the note.
    assert "four-strand" not in err
    assert (tmp_path / "out" / "b.json").exists()


def test_what_the_intake_warns_of_stands_in_the_record(tmp_path: Path, capsys: Output) -> None:
    note = tmp_path / "ring.docx"
    note.write_text(NOTE, encoding="utf-8")
    assert main(["read", str(note)]) == 0
    remarks = [remark.text for remark in load_record(capsys.readouterr().out).remarks]
    assert any("ends in .docx, but it is plain text" in remark for remark in remarks)


@pytest.mark.skipif(sys.platform == "win32", reason="needs a terminal of its own")
def test_progress_is_shown_on_a_terminal_only(tmp_path: Path) -> None:
    import pty
    import subprocess

    notes = [saved_note(tmp_path, f"{letter}.txt") for letter in "abc"]
    command_line = [sys.executable, "-m", "notereader", "read", *map(str, notes), "--out", str(tmp_path / "out")]
    terminal, end = pty.openpty()
    with subprocess.Popen(command_line, stderr=end, stdout=subprocess.DEVNULL) as process:
        os.close(end)
        seen = b""
        while process.poll() is None or b"3 notes read" not in seen:
            try:
                seen += os.read(terminal, 4096)
            except OSError:
                break
        assert process.wait(timeout=60) == 0
    os.close(terminal)
    assert b"2 of 3: " in seen
    assert b"3 notes read" in seen
    quiet = run_notereader(command_line[3:])
    assert b"2 of 3" not in quiet.stderr


def test_the_order_of_facts_is_the_same_every_time(tmp_path: Path) -> None:
    note = saved_note(tmp_path)
    # The order of sets differs from process to process; nothing in a record may hang on it.
    seen = {run_notereader(["read", note], environment={"PYTHONHASHSEED": seed}).stdout for seed in ("1", "2", "3")}
    assert len(seen) == 1
    assert json.loads(seen.pop())["repairs"]
