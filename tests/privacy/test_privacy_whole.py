"""No network, no file that others can read, no words of a note where they do not belong: over the whole work at once.

The work and the window run in processes of their own. Python's audit hooks (PEP 578) see every socket that Python code
opens, in helper processes too; on Linux the kernel's own list is read as well, for what libraries in C might open.
"""

import json
import os
import stat
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any, NamedTuple

import pytest

try:
    from PySide6.QtWidgets import QApplication  # noqa: F401

    QT = True
except ImportError:
    QT = False

HERE = Path(__file__).parent
# In no other file of the project, and in nothing that the program says by itself.
PLANTED = "zibberquandle harvest"
NOTE = f"""Date of operation: 14 March 2031
The patient cut the ring finger during the {PLANTED}.
The FDP of the ring finger was completely divided in zone II and repaired with a four-strand cruciate of 4-0 braided
polyester and a running 6-0 polypropylene epitendinous suture. There was no gap. The A2 pulley was intact.
"""

# Loaded by every Python process that the driver starts: what reaches for a network is written down and refused.
WATCH = """
import os, sys
_LOG = os.environ.get("NOTEREADER_TEST_SOCKETS")
def _watch(event, args):
    if event == "socket.__new__":
        family = int(args[1])
        if family in (1, 16):
            return
        _refuse(f"{event} family {family}")
    elif event in ("socket.connect", "socket.bind", "socket.sendto", "socket.sendmsg"):
        if not isinstance(args[1], (str, bytes)):
            _refuse(f"{event} {args[1]!r}")
    elif event in ("socket.getaddrinfo", "socket.gethostbyname", "socket.gethostbyaddr", "urllib.Request"):
        _refuse(f"{event} {args!r}")
def _refuse(words):
    with open(_LOG, "a") as log:
        log.write(f"{sys.argv[:3]} {words}\\n")
    raise RuntimeError("a test forbids the network")
if _LOG:
    sys.addaudithook(_watch)
"""


class Done(NamedTuple):
    """How a run ended: what the driver told, its streams, the attempts to reach a network, and where it wrote."""

    told: list[dict[str, Any]]
    out: str
    err: str
    attempts: str
    folder: Path


def run(folder: Path, *arguments: str) -> Done:
    """Run the driver with watched sockets, a home of its own, and no umask: nothing but the program closes a file."""
    home = folder / "home"
    for made in (home, folder / "watch"):
        made.mkdir(exist_ok=True)
    (folder / "watch" / "sitecustomize.py").write_text(WATCH)
    log = folder / "watch" / "sockets.log"
    environment = {
        **os.environ,
        "PYTHONPATH": os.pathsep.join([str(folder / "watch"), str(HERE.parents[1])]),
        "NOTEREADER_TEST_SOCKETS": str(log),
        "HOME": str(home),
        "USERPROFILE": str(home),
        "XDG_CONFIG_HOME": str(home / "config"),
        "XDG_DATA_HOME": str(home / "data"),
        "XDG_CACHE_HOME": str(home / "cache"),
        "MPLCONFIGDIR": str(home / "matplotlib"),
        "QT_LOGGING_RULES": "*.debug=true",
    }
    ended = subprocess.run(
        [sys.executable, str(HERE / "privacy_driver.py"), arguments[0], str(folder), *arguments[1:]],
        capture_output=True,
        timeout=300,
        env=environment,
        check=False,
        umask=0 if sys.platform != "win32" else -1,
    )
    out, err = ended.stdout.decode("utf-8", "replace"), ended.stderr.decode("utf-8", "replace")
    told = [json.loads(line.removeprefix("TOLD ")) for line in err.splitlines() if line.startswith("TOLD ")]
    assert ended.returncode == 0, err
    return Done(told, out, err, log.read_text() if log.exists() else "", folder)


@pytest.fixture(scope="module")
def notes(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("privacy")
    (folder / "notes").mkdir()
    (folder / "notes" / "plain.txt").write_text(NOTE, encoding="utf-8")
    (folder / "notes" / "rich.rtf").write_bytes(b"{\\rtf1\\ansi FDP of the small finger was repaired in zone II.}")
    return folder


@pytest.fixture(scope="module")
def worked(notes: Path) -> Done:
    """Everything that can be done on the command line, done once."""
    return run(notes, "work")


@pytest.fixture(scope="module")
def windowed(notes: Path) -> Done:
    """A window that opened a note with the real reader, and was closed."""
    if not QT:
        pytest.skip("Qt cannot be loaded here")
    return run(notes, "window")


def test_the_watch_sees_a_socket(tmp_path: Path) -> None:
    """A test that could not fail would say nothing: the hook is held against code that does reach for a network."""
    (tmp_path / "sitecustomize.py").write_text(WATCH)
    environment = {**os.environ, "PYTHONPATH": str(tmp_path), "NOTEREADER_TEST_SOCKETS": str(tmp_path / "log")}
    code = "import urllib.request; urllib.request.urlopen('http://127.0.0.1:9/')"
    ended = subprocess.run([sys.executable, "-c", code], env=environment, capture_output=True, check=False)
    assert ended.returncode != 0
    assert "urllib.Request" in (tmp_path / "log").read_text()
    code = "import socket; socket.socket(socket.AF_INET, socket.SOCK_DGRAM)"
    subprocess.run([sys.executable, "-c", code], env=environment, capture_output=True, check=False)
    assert "socket.__new__" in (tmp_path / "log").read_text()


def test_the_work_was_done_without_a_network(worked: Done) -> None:
    assert worked.attempts == ""
    (told,) = worked.told
    assert set(told["codes"].values()) == {0}, told
    assert told["sockets"] == []
    assert told["modules"] == []


def test_the_window_opens_and_reads_without_a_network(windowed: Done) -> None:
    assert windowed.attempts == ""
    assert windowed.told[0]["sockets"] == []
    assert windowed.told[0]["modules"] == []
    assert windowed.told[1]["code"] == 0


@pytest.mark.skipif(sys.platform != "linux", reason="namespaces are Linux's")
def test_the_work_goes_on_where_there_is_no_network_at_all(tmp_path: Path) -> None:
    """In a network namespace of its own a process has not even a loopback that is up."""
    (tmp_path / "note.txt").write_text(NOTE, encoding="utf-8")
    call = ["unshare", "--net", sys.executable, "-m", "notereader", "read", str(tmp_path / "note.txt")]
    try:
        ended = subprocess.run(call, capture_output=True, timeout=120, cwd=HERE.parents[1], check=False)
    except FileNotFoundError:
        pytest.skip("there is no unshare here")
    if b"unshare" in ended.stderr:
        pytest.skip("no namespace can be made here")
    assert ended.returncode == 0
    assert b'"strands"' in ended.stdout


# Files


def open_to_others(folder: Path) -> Iterator[str]:
    for path in folder.rglob("*"):
        if not path.is_symlink() and stat.S_IMODE(path.stat().st_mode) & 0o077 and not path.is_dir():
            yield str(path.relative_to(folder))


@pytest.mark.skipif(sys.platform == "win32", reason="a person's folders are closed to others there by default")
def test_every_file_of_the_work_is_readable_by_its_owner_only(worked: Done) -> None:
    """The process runs with umask 0: whatever the program does not close itself would stand open to everybody."""
    made = [path for path in (worked.folder / "out").rglob("*") if path.is_file()]
    names = {path.name for path in made}
    assert {"plain.json", "shared.txt", "export.fhir", "export.sqlite", "export.csv", "export-columns.csv"} <= names
    assert {"journal.db"} <= names
    assert len(made) > 12
    assert list(open_to_others(worked.folder / "out")) == []


@pytest.mark.skipif(sys.platform == "win32", reason="a person's folders are closed to others there by default")
def test_casebook_settings_and_notes_under_way_are_their_owners_only(windowed: Done) -> None:
    book = windowed.folder / "out" / "book"
    assert (book / "casebook.db").exists()
    assert list(open_to_others(book)) == []
    own = [
        path for path in (windowed.folder / "home").rglob("*") if "notereader" in str(path.relative_to(windowed.folder))
    ]
    assert [path for path in own if path.name == "window.ini"]
    open_ones = [p for p in own if stat.S_IMODE(p.stat().st_mode) & 0o077]
    assert open_ones == []


@pytest.mark.skipif(sys.platform == "win32", reason="a person's folders are closed to others there by default")
def test_folders_that_are_made_are_closed(worked: Done, windowed: Done) -> None:
    for name in ("records", "audit", "book"):
        assert stat.S_IMODE((worked.folder / "out" / name).stat().st_mode) == 0o700, name


# Words


def test_no_word_of_the_note_is_said_or_logged(worked: Done, windowed: Done) -> None:
    """Only what was asked for shows the note: `explain` and `schema` give their results on standard output."""
    for said in (worked.err, windowed.err, windowed.out):
        assert PLANTED not in said
        assert "zibberquandle" not in said


def test_titles_and_settings_hold_no_more_than_the_name(windowed: Done) -> None:
    assert windowed.told[0]["titles"] == ["plain.txt – notereader"]
    for path in (windowed.folder / "home").rglob("*"):
        if path.is_file():
            assert b"zibberquandle" not in path.read_bytes(), path


def test_nothing_is_left_of_a_note_on_its_way(windowed: Done) -> None:
    waiting = windowed.folder / "home" / "data" / "notereader" / "waiting"
    assert not waiting.exists() or not [*waiting.glob("*.json")]


@pytest.mark.skipif(not QT, reason="Qt cannot be loaded here")
def test_a_fault_in_the_window_is_told_without_its_words(tmp_path: Path) -> None:
    done = run(tmp_path, "broken", PLANTED)
    assert done.told == [{"code": 0}]
    assert done.err.count("Something went wrong inside notereader") == 2
    assert "ValueError" in done.err
    assert "zibberquandle" not in done.err
    assert "Traceback" not in done.err


def test_a_fault_of_a_command_is_told_without_its_words(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    from notereader.cli import main
    from notereader.commands import share

    (tmp_path / "note.txt").write_text(NOTE, encoding="utf-8")

    def fail(text: str) -> None:
        raise ValueError(f"cannot do with {text}")

    monkeypatch.setattr(share, "find_identifiers", fail)
    assert main(["share", str(tmp_path / "note.txt")]) == 1
    said = capsys.readouterr()
    assert "Something went wrong inside notereader" in said.err
    assert "zibberquandle" not in said.err + said.out
