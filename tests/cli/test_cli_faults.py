"""Whatever goes wrong ends in one sentence and an exit status, never in a traceback, and quotes nothing of a note."""

import os
import subprocess
import sys
from pathlib import Path

import pytest
from cli_running import only_a_sentence, run_notereader, saved_note

from notereader import cli
from notereader.commands import schema
from notereader.commands.terminal import harmless
from notereader.vocabulary.places import ResourceFault

Output = pytest.CaptureFixture[str]


def fault_in_schema(monkeypatch: pytest.MonkeyPatch, fault: BaseException) -> int:
    """Let a command break down with this fault; return the exit status."""

    def broken(arguments: object) -> int:
        raise fault

    monkeypatch.setattr(schema, "run", broken)
    return cli.main(["schema"])


@pytest.mark.parametrize(
    ("fault", "status", "says"),
    [
        (KeyError("four-strand repair of Mr Invented"), 1, "Something went wrong inside notereader"),
        (RecursionError("four-strand"), 1, "RecursionError"),
        (MemoryError(), 1, "not enough memory"),
        (OSError(28, "No space left on device"), 1, "No space left on device"),
        (KeyboardInterrupt(), 130, "Stopped."),
        (ResourceFault("stitches.toml: not valid TOML. Mend that line."), 1, "notereader check-resources"),
    ],
)
def test_a_fault_becomes_a_sentence(
    monkeypatch: pytest.MonkeyPatch, capsys: Output, fault: BaseException, status: int, says: str
) -> None:
    assert fault_in_schema(monkeypatch, fault) == status
    err = capsys.readouterr().err
    assert says in err
    assert only_a_sentence(err)
    assert "four-strand" not in err


def test_a_fault_of_the_program_names_its_place(monkeypatch: pytest.MonkeyPatch, capsys: Output) -> None:
    def broken(*_: object, **__: object) -> int:
        return int("secret words of a note")

    monkeypatch.setattr("notereader.commands.schema.put", broken)
    assert cli.main(["schema"]) == 1
    err = capsys.readouterr().err
    assert "ValueError at commands/schema.py line" in err
    assert "secret" not in err


@pytest.mark.skipif(not os.path.exists("/dev/full"), reason="needs a disk that is always full")
def test_a_full_disk_behind_standard_output() -> None:
    with open("/dev/full", "wb") as full:
        command_line = [sys.executable, "-m", "notereader", "schema"]
        done = subprocess.run(command_line, stdout=full, stderr=subprocess.PIPE, timeout=60, check=False)
    assert done.returncode == 1
    assert only_a_sentence(done.stderr.decode())


@pytest.mark.skipif(sys.platform == "win32", reason="pipes break in another way there")
def test_a_reader_of_the_output_that_has_had_enough() -> None:
    gone, end = os.pipe()
    os.close(gone)
    command_line = [sys.executable, "-m", "notereader", "schema"]
    done = subprocess.run(command_line, stdout=end, stderr=subprocess.PIPE, timeout=60, check=False)
    os.close(end)
    assert done.returncode == 1
    assert done.stderr == b""


def test_broken_resources_are_named_with_what_to_do(tmp_path: Path) -> None:
    """The whole way: an installed package whose stitches somebody has edited wrongly."""
    import shutil

    from notereader.vocabulary import resource_folder

    package = tmp_path / "notereader"
    shutil.copytree(Path(cli.__file__).parent, package, ignore=shutil.ignore_patterns("__pycache__", "desktop"))
    shutil.copytree(resource_folder(), package / "_resources")
    stitches = package / "_resources" / "stitches.toml"
    stitches.write_text(stitches.read_text(encoding="utf-8") + '\n[[stitch]]\nnmae = "cruciate"\n', encoding="utf-8")
    note = saved_note(tmp_path)
    done = run_notereader(["read", note], folder=tmp_path)
    words = done.stderr.decode()
    assert done.returncode == 1
    assert only_a_sentence(words)
    assert "stitches.toml: [[stitch]] number" in words
    assert "check-resources" in words
    done = run_notereader(["check-resources"], folder=tmp_path)
    assert done.returncode == 1
    assert b"'nmae' is no key that is known here" in done.stdout


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("plain name.txt", "plain name.txt"),
        ("two\nlines\ttab", "two lines tab"),
        ("\x1b[31mred", "\ufffd[31mred"),
        ("a\u202egpj.txt", "a\ufffdgpj.txt"),
        ("sur\udcffrogate", "sur\ufffdrogate"),
        ("Silfverskiöld 针", "Silfverskiöld 针"),
    ],
)
def test_names_on_a_terminal_are_harmless(text: str, shown: str) -> None:
    assert harmless(text) == shown
