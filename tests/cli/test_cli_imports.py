"""What is loaded when: no Qt for the command line, no spaCy before a note is read, nothing heavy for a refusal."""

import json
import subprocess
import sys
from pathlib import Path

import pytest
from cli_running import run_notereader, saved_note

from notereader.vocabulary import samples_folder

HEAVY = ("PySide6", "spacy", "sqlalchemy", "matplotlib", "pandas", "docx", "pypdfium2")

_PROGRAM = """
import json, sys
from notereader.cli import main
try:
    main(sys.argv[1:])
except SystemExit:
    pass
sys.stderr.write(json.dumps(sorted({name.partition(".")[0] for name in sys.modules})))
"""


def loaded(arguments: list[str]) -> set[str]:
    """Return the top names of everything that a command loads."""
    command_line = [sys.executable, "-c", _PROGRAM, *arguments]
    done = subprocess.run(command_line, capture_output=True, timeout=120, check=True)
    return set(json.loads(done.stderr.splitlines()[-1]))


@pytest.mark.parametrize(
    ("arguments", "wanted"),
    [
        (["--version"], set()),
        (["--help"], set()),
        (["schema"], set()),
        (["read", "none.txt"], set()),
        (["read", str(samples_folder() / "01-plain-index.txt")], {"spacy"}),
        (["explain", str(samples_folder() / "01-plain-index.txt")], {"spacy"}),
        (["appraise", "none.json"], set()),
        (["export", "none.json"], set()),
        (["share", str(samples_folder() / "01-plain-index.txt")], set()),
    ],
    ids=lambda value: " ".join(Path(part).name for part in value) if isinstance(value, list) else "",
)
def test_only_what_a_command_needs_is_loaded(arguments: list[str], wanted: set[str]) -> None:
    assert loaded(arguments) & set(HEAVY) == wanted


def pretended_qt(folder: Path, fault: str) -> dict[str, str]:
    """Return an environment in which Qt cannot be loaded."""
    package = folder / "PySide6"
    package.mkdir()
    (package / "__init__.py").write_text(f"raise ImportError({fault!r})\n")
    return {"PYTHONPATH": str(folder)}


def test_reading_needs_no_qt(tmp_path: Path) -> None:
    environment = pretended_qt(tmp_path, "Qt was loaded to read a note")
    for arguments in (["read", saved_note(tmp_path)], ["explain", saved_note(tmp_path)]):
        done = run_notereader(arguments, environment=environment)
        assert done.returncode == 0, done.stderr


@pytest.mark.parametrize("arguments", [[], ["open"], ["open", "note.txt"]])
def test_a_missing_library_is_named_with_its_debian_package(tmp_path: Path, arguments: list[str]) -> None:
    fault = "libEGL.so.1: cannot open shared object file: No such file or directory"
    done = run_notereader(arguments, environment=pretended_qt(tmp_path, fault))
    words = done.stderr.decode()
    assert done.returncode == 2
    assert done.stdout == b""
    assert "Traceback" not in words
    assert len(words.strip().splitlines()) == 1
    assert "libegl1" in words


def test_without_a_command_the_window_opens(monkeypatch: pytest.MonkeyPatch) -> None:
    from notereader import cli
    from notereader.desktop import window

    opened: list[object] = []
    monkeypatch.setattr(window, "run", lambda argv: opened.append(argv) or 0)
    assert cli.main([]) == 0
    assert cli.main(["open", "note.txt", "--casebook", "book.db"]) == 0
    monkeypatch.setattr(sys, "argv", ["notereader-window", "note.txt"])
    assert cli.window() == 0
    assert opened == [[], ["note.txt", "--casebook", "book.db"], ["note.txt"]]
