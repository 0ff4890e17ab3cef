"""The other commands: schema, appraise, export, audit, practise, version, and what is said of a wrong call."""

import csv
import io
import json
from pathlib import Path

import pytest
from cli_running import NOTE, only_a_sentence, parsed, run_notereader, saved_note

from notereader import __version__
from notereader.cli import main
from notereader.record import dump_record, load_record, record_schema

Output = pytest.CaptureFixture[str]


@pytest.fixture
def record(tmp_path: Path) -> Path:
    """The record of the note, as a file."""
    main(["read", str(saved_note(tmp_path)), "--out", str(tmp_path)])
    return tmp_path / "ring.json"


def settled(record: Path) -> None:
    """Let a person have confirmed one fact of a record."""
    read = load_record(record.read_bytes())
    next(fact for _, fact in read.walk()).status = "confirmed"
    record.write_text(dump_record(read), encoding="utf-8")


def test_the_schema_is_printed_as_it_is_published(capsys: Output) -> None:
    assert main(["schema"]) == 0
    assert parsed(capsys.readouterr().out) == record_schema()


def test_the_version(capsys: Output) -> None:
    with pytest.raises(SystemExit) as ended:
        main(["--version"])
    assert ended.value.code == 0
    assert capsys.readouterr().out == f"notereader {__version__}\n"


def test_every_command_has_a_help_page(capsys: Output) -> None:
    with pytest.raises(SystemExit):
        main(["--help"])
    named = capsys.readouterr().out
    for command in (
        "read",
        "explain",
        "appraise",
        "export",
        "share",
        "audit",
        "practise",
        "open",
        "schema",
        "check-resources",
    ):
        assert f"\n    {command}" in named
        with pytest.raises(SystemExit) as ended:
            main([command, "--help"])
        assert ended.value.code == 0
        assert capsys.readouterr().out.startswith(f"usage: notereader {command}")


def test_an_appraisal_of_a_record(record: Path, capsys: Output) -> None:
    capsys.readouterr()
    assert main(["appraise", str(record), "--day", "10", "--posture", "60"]) == 0
    out = capsys.readouterr().out
    assert "day 10 after the operation, the tendon bent by 60 degrees" in " ".join(out.split())
    assert out.count("CAUTIONS") == 2


def test_an_appraisal_as_json(record: Path, capsys: Output) -> None:
    capsys.readouterr()
    assert main(["appraise", str(record), "--day", "3", "--json"]) == 0
    data = parsed(capsys.readouterr().out)
    assert data["format"] == "notereader-appraisal"
    assert data["day"] == 3
    assert data["cautions"]


def test_an_appraisal_of_a_record_on_standard_input(record: Path) -> None:
    done = run_notereader(["appraise", "-", "--json"], standard_input=record.read_bytes())
    assert done.returncode == 0
    assert parsed(done.stdout)["note"] == "ring.txt"


@pytest.mark.parametrize(
    ("options", "says"), [(["--day", "-1"], "before the operation"), (["--posture", "400"], "is not possible")]
)
def test_a_day_or_bend_that_cannot_be(record: Path, capsys: Output, options: list[str], says: str) -> None:
    capsys.readouterr()
    assert main(["appraise", str(record), *options]) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert says in err
    assert only_a_sentence(err)


def test_a_note_given_for_a_record(tmp_path: Path, capsys: Output) -> None:
    assert main(["appraise", str(saved_note(tmp_path))]) == 1
    err = capsys.readouterr().err
    assert only_a_sentence(err)
    assert "notereader read NOTE" in err


@pytest.mark.parametrize("command", ["appraise", "export", "explain"])
def test_a_record_that_is_none(tmp_path: Path, capsys: Output, command: str) -> None:
    broken = tmp_path / "broken.json"
    broken.write_text('{"format": "notereader-record", "format_version": 9}')
    assert main([command, str(broken)]) == 1
    out, err = capsys.readouterr()
    assert out == ""
    assert only_a_sentence(err)
    assert "update this one" in err


def test_a_summary_in_words_warns_of_what_is_not_confirmed(record: Path, capsys: Output) -> None:
    capsys.readouterr()
    assert main(["export", str(record)]) == 0
    out, err = capsys.readouterr()
    assert "NOT ALL FACTS ARE CONFIRMED" in out
    assert "CAUTIONS" in out
    assert "only proposed by the program" in err


def test_a_page_for_a_browser(record: Path, tmp_path: Path) -> None:
    assert main(["export", str(record), "--html", "--out", str(tmp_path / "page.html")]) == 0
    assert (tmp_path / "page.html").read_text(encoding="utf-8").startswith("<!DOCTYPE html>")


def test_a_table_of_several_records_with_its_dictionary(record: Path, tmp_path: Path, capsys: Output) -> None:
    other = saved_note(tmp_path, "index.txt", NOTE.replace("ring", "index"))
    main(["read", str(other), "--out", str(tmp_path)])
    assert main(["export", str(record), str(tmp_path / "index.json"), "--csv", "--out", str(tmp_path / "f.csv")]) == 0
    rows = list(csv.DictReader(io.StringIO((tmp_path / "f.csv").read_text(encoding="utf-8-sig"))))
    assert {row["note_name"] for row in rows} == {"ring.txt", "index.txt"}
    assert (tmp_path / "f-columns.csv").exists()
    assert "f-columns.csv says what its columns mean" in capsys.readouterr().err


def test_a_table_without_words_of_the_notes(record: Path, capsys: Output) -> None:
    capsys.readouterr()
    assert main(["export", str(record), "--csv", "--no-text"]) == 0
    assert "four-strand" not in capsys.readouterr().out


def test_several_summaries_need_a_folder(record: Path, tmp_path: Path, capsys: Output) -> None:
    copy = tmp_path / "copy.json"
    copy.write_bytes(record.read_bytes())
    assert main(["export", str(record), str(copy)]) == 2
    (tmp_path / "out").mkdir()
    assert main(["export", str(record), str(copy), "--text", "--out", str(tmp_path / "out")]) == 0
    assert sorted(path.name for path in (tmp_path / "out").iterdir()) == ["copy.txt", "ring.txt"]


def test_one_bad_record_does_not_stop_the_others(record: Path, tmp_path: Path, capsys: Output) -> None:
    capsys.readouterr()
    assert main(["export", str(record), str(tmp_path / "none.json"), "--csv"]) == 1
    out, err = capsys.readouterr()
    assert "ring.txt" in out
    assert "none.json could not be read" in err


def test_an_export_does_not_write_over_what_a_person_settled(record: Path, tmp_path: Path, capsys: Output) -> None:
    settled(record)
    before = record.read_bytes()
    assert main(["export", str(record), "--json", "--no-text", "--out", str(tmp_path)]) == 1
    assert "a person has settled" in capsys.readouterr().err
    assert record.read_bytes() == before
    assert main(["export", str(record), "--html", "--out", str(record)]) == 1
    assert record.read_bytes() == before


def test_an_export_to_a_place_that_is_not_there(record: Path, tmp_path: Path, capsys: Output) -> None:
    capsys.readouterr()
    assert main(["export", str(record), "--json", "--out", str(tmp_path / "no" / "where.json")]) == 1
    assert "could not be written" in capsys.readouterr().err


def test_an_audit_of_a_folder(tmp_path: Path, capsys: Output) -> None:
    (tmp_path / "notes").mkdir()
    for name in ("a.txt", "b.txt"):
        saved_note(tmp_path / "notes", name)
    assert main(["audit", str(tmp_path / "notes"), "--out", str(tmp_path / "report")]) == 0
    assert any((tmp_path / "report").iterdir())


def test_the_list_of_cases_to_practise(capsys: Output, tmp_path: Path) -> None:
    done = run_notereader(["practise", "list"], environment={"HOME": str(tmp_path), "XDG_DATA_HOME": str(tmp_path)})
    assert done.returncode == 0
    assert b"01-plain-index" in done.stdout


def test_a_note_where_a_command_is_expected(tmp_path: Path, capsys: Output) -> None:
    note = str(saved_note(tmp_path))
    assert main([note]) == 2
    err = capsys.readouterr().err
    assert f"notereader read {note}" in err
    assert only_a_sentence(err)


@pytest.mark.parametrize(
    "arguments", [["raed"], ["read"], ["read", "--colour"], ["appraise", "r.json", "--day", "two"]]
)
def test_a_wrong_call_is_said_and_nothing_done(arguments: list[str], capsys: Output) -> None:
    with pytest.raises(SystemExit) as ended:
        main(arguments)
    assert ended.value.code == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert "usage: notereader" in err


def test_resources_are_checked(capsys: Output) -> None:
    assert main(["check-resources"]) == 0
    out, err = capsys.readouterr()
    assert out == ""
    assert "no faults found" in err


def test_a_folder_of_resources_that_is_none(tmp_path: Path, capsys: Output) -> None:
    assert main(["check-resources", str(tmp_path / "none")]) == 2
    assert only_a_sentence(capsys.readouterr().err)


def test_json_on_standard_output_is_nothing_but_json(record: Path) -> None:
    for arguments in (["schema"], ["read", record.with_suffix(".txt")], ["appraise", record, "--json"]):
        json.loads(run_notereader(arguments).stdout)
