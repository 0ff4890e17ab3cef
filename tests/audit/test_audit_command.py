"""The audit from the command line."""

import sys
from argparse import ArgumentParser
from pathlib import Path

import pytest
from audit_making import bytes_of, folder_of, person_confirms, rows_of, table_of
from demo_notes import demo_notes

from notereader.audit.command import DONE, FAULT, STOPPED, add_arguments, run


def audit(*words: object) -> int:
    """Return the exit code of `notereader audit ...`."""
    parser = ArgumentParser(prog="notereader audit")
    add_arguments(parser)
    return run(parser.parse_args([str(word) for word in words]))


def test_a_folder(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    notes = folder_of(tmp_path / "notes", demo_notes(5))
    assert audit(notes, "--out", tmp_path / "out", "--group", "folder", "--date", "2033-01-01") == DONE
    said = capsys.readouterr().out
    assert "5 notes counted." in said
    assert "report.html" in said
    assert {"report.html", "report.pdf", "audit.json", "rates.csv"} <= set(bytes_of(tmp_path / "out"))


def test_a_table_a_sample_and_the_confirmed_sample(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """The whole way that a quality lead goes."""
    notes = demo_notes(12)
    table = table_of(tmp_path / "notes.csv", notes)
    columns = ("--text-column", "note text", "--date-column", "operated", "--name-column", "id", "--group", "site")
    out = tmp_path / "out"
    assert audit(table, "--out", out, *columns, "--sample", 6, "--seed", 3, "--workers", 2) == DONE
    assert "sample.db" in capsys.readouterr().out
    confirmed = person_confirms(out / "sample.db", notes, tmp_path / "confirmed.db")
    assert audit(table, "--out", out, *columns, "--seed", 3, "--resume", "--confirmed", confirmed) == DONE
    assert len(rows_of(out / "reader.csv")) > 50
    assert {row["column"] for row in rows_of(out / "rates.csv")} == {"", "site"}


def test_work_that_lies_there_is_asked_about(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    notes = folder_of(tmp_path / "notes", demo_notes(2))
    assert audit(notes, "--out", tmp_path / "out") == DONE
    assert audit(notes, "--out", tmp_path / "out") == FAULT
    said = capsys.readouterr().err
    assert "--resume" in said and "--afresh" in said
    assert audit(notes, "--out", tmp_path / "out", "--resume") == DONE
    assert audit(notes, "--out", tmp_path / "out", "--afresh") == DONE


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ([], "Say what to audit"),
        (["none"], "no file or folder"),
        (["notes", "--group", "ward"], "no column 'ward'"),
        (["notes", "--confirmed", "none"], "no file or folder"),
        (["notes", "--casebook"], "Say what to audit"),
    ],
)
def test_what_cannot_be_done_is_said_in_words(
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
    words: list[str],
    said: str,
) -> None:
    monkeypatch.chdir(tmp_path)
    folder_of(tmp_path / "notes", demo_notes(1))
    assert audit("--out", "out", *words) == FAULT
    assert said in capsys.readouterr().err


@pytest.mark.parametrize("wrong", [["--workers", "-1"], ["--sample", "x"], ["--date", "yesterday"]])
def test_an_impossible_value_is_refused(tmp_path: Path, wrong: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit):
        audit(tmp_path, "--out", tmp_path / "out", *wrong)
    assert "invalid" in capsys.readouterr().err


def test_a_stop_by_the_person_keeps_the_work(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    notes = folder_of(tmp_path / "notes", demo_notes(6))
    done = []

    def stop_at_the_fourth(self: object, progress: object) -> None:
        done.append(progress)
        if len(done) == 4:
            raise KeyboardInterrupt

    monkeypatch.setattr("notereader.audit.command._Teller.__call__", stop_at_the_fourth)
    assert audit(notes, "--out", tmp_path / "out") == STOPPED
    assert "--resume" in capsys.readouterr().err
    monkeypatch.undo()
    assert audit(notes, "--out", tmp_path / "out", "--resume") == DONE
    assert len(rows_of(tmp_path / "out" / "notes.csv")) == 6


def test_dask_that_is_not_installed_or_not_there(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    notes = folder_of(tmp_path / "notes", demo_notes(1))
    monkeypatch.setitem(sys.modules, "distributed", None)
    assert audit(notes, "--out", tmp_path / "out", "--dask", "tcp://127.0.0.1:9") == FAULT
    assert "'dask' extra" in capsys.readouterr().err


def test_a_cluster_by_its_address(tmp_path: Path) -> None:
    distributed = pytest.importorskip("distributed")
    notes = folder_of(tmp_path / "notes", demo_notes(6))
    at_home = {"n_workers": 2, "threads_per_worker": 1, "processes": True, "dashboard_address": None}
    date = ("--date", "2033-01-01")
    with distributed.LocalCluster(host="127.0.0.1", protocol="tcp://", **at_home) as cluster:
        assert audit(notes, "--out", tmp_path / "cluster", "--dask", cluster.scheduler_address, *date) == DONE
    assert audit(notes, "--out", tmp_path / "plain", *date) == DONE
    assert bytes_of(tmp_path / "cluster") == bytes_of(tmp_path / "plain")


def test_the_help_loads_neither_reader_nor_charts() -> None:
    import subprocess

    script = (
        "import sys; from argparse import ArgumentParser; from notereader.audit.command import add_arguments; "
        "add_arguments(ArgumentParser()); "
        "print([name for name in ('spacy', 'matplotlib', 'sqlalchemy', 'numpy') if name in sys.modules])"
    )
    told = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, check=True)
    assert told.stdout.strip() == "[]"
