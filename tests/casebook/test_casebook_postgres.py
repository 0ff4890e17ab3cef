"""The same casebook on a PostgreSQL server, where the server's programs are found on this machine."""

import os
import shutil
import socket
import subprocess
import sys
import tempfile
import threading
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from casebook_helpers import A2, SIZE, STRANDS, confirming, correcting, draft
from sqlalchemy import create_engine, text
from sqlalchemy.exc import DBAPIError

from notereader.casebook import Casebook, CasebookFault, ChangedElsewhere, Edit
from notereader.record import Note, Record

pytest.importorskip("psycopg", reason="the 'team' extra is not installed")


def programs() -> Path | None:
    """Return the folder with the server's programs."""
    found = shutil.which("postgres")
    places = [Path(found).resolve().parent] if found else []
    places += sorted(Path("/usr/lib/postgresql").glob("*/bin"), reverse=True)
    return next((place for place in places if (place / "initdb").exists()), None)


@pytest.fixture(scope="module")
def server() -> Iterator[str]:
    """A server of its own with an empty data folder; the URL of its first database without the name."""
    folder = programs()
    if folder is None or sys.platform == "win32":
        pytest.skip("no PostgreSQL server on this machine")
    data = Path(tempfile.mkdtemp(prefix="casebook-server-"))
    who: dict[str, Any] = {}
    if os.geteuid() == 0:
        # The server refuses to run as root.
        who = {"user": "nobody", "group": "nogroup", "extra_groups": []}
        shutil.chown(data, "nobody", "nogroup")
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    quiet: dict[str, Any] = {"check": True, "stdout": subprocess.DEVNULL, "cwd": data, **who}
    subprocess.run([folder / "initdb", "-D", data / "db", "-U", "team", "-A", "trust", "-E", "UTF8"], **quiet)
    options = f"-p {port} -c listen_addresses=127.0.0.1 -c unix_socket_directories={data} -c fsync=off"
    control = [folder / "pg_ctl", "-D", data / "db", "-w", "-l", data / "log"]
    subprocess.run([*control, "-o", options, "start"], **quiet)
    yield f"postgresql://team@127.0.0.1:{port}"
    subprocess.run([*control, "-m", "immediate", "stop"], **quiet)
    shutil.rmtree(data, ignore_errors=True)


@pytest.fixture
def url(server: str, request: pytest.FixtureRequest) -> str:
    """An empty database."""
    name = f"test_{abs(hash(request.node.name))}"
    engine = create_engine(f"{server}/postgres".replace("postgresql", "postgresql+psycopg"))
    with engine.connect().execution_options(isolation_level="AUTOCOMMIT") as connection:
        connection.execute(text(f"CREATE DATABASE {name}"))
    engine.dispose()
    return f"{server}/{name}"


@pytest.fixture
def team(url: str) -> Iterator[Casebook]:
    book = Casebook(url)
    yield book
    book.close()


def test_a_case_is_kept_edited_confirmed_and_found(team: Casebook, url: str) -> None:
    number = team.add(draft(), title="Größe")
    case = team.open(number)
    drop = Edit.dropping(case.record, A2)
    case.apply(drop, who="ward")
    case.apply(drop.inverse(), who="ward")
    assert case.record == draft()
    case.mark_read([STRANDS.text()])
    case.apply_all([confirming(case, place) for place, _ in case.record.walk()], who="ward")
    case.confirm("ward")
    other = Casebook(url)
    again = other.open(number)
    assert (again.record, again.state, again.read) == (case.record, "confirmed", {STRANDS.text()})
    assert [line.kind for line in again.history()][-2:] == ["edited", "confirmed"]
    assert [line.id for line in other.cases("GRÖSSE four-strand", state="confirmed")] == [number]
    assert other.cases("50%") == []
    other.close()


def test_two_windows_merge_or_are_told(team: Casebook, url: str) -> None:
    number = team.add(draft())
    other = Casebook(url)
    mine, theirs = team.open(number), other.open(number)
    theirs.apply(confirming(theirs, SIZE), who="other")
    mine.apply(confirming(mine, STRANDS), who="me")
    assert (mine.revision, mine.record.fact(SIZE).status) == (2, "confirmed")
    with pytest.raises(ChangedElsewhere) as caught:
        theirs.apply(correcting(theirs, STRANDS, 2), who="other")
    assert caught.value.who == "me"
    assert theirs.refresh()
    assert theirs.record == mine.record
    other.close()


def test_windows_that_edit_at_the_same_time_lose_no_edit(team: Casebook, url: str) -> None:
    number = team.add(draft())

    def work(who: str) -> None:
        book = Casebook(url)
        case = book.open(number)
        done = 0
        while done < 25:
            try:
                case.apply(correcting(case, STRANDS, case.record.fact(STRANDS).value % 16 + 1), who=who)
                done += 1
            except ChangedElsewhere:
                case.refresh()
        book.close()

    threads = [threading.Thread(target=work, args=(who,)) for who in ("one", "two", "three")]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    case = team.open(number)
    assert case.revision == 75
    assert case.record.fact(STRANDS).value == (4 + 75 - 1) % 16 + 1


def test_many_windows_opening_a_new_casebook_make_its_tables_once(url: str) -> None:
    faults: list[Exception] = []

    def begin() -> None:
        try:
            Casebook(url).close()
        except CasebookFault as fault:
            faults.append(fault)

    threads = [threading.Thread(target=begin) for _ in range(6)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert faults == []


def test_characters_that_the_server_refuses_are_kept_in_the_text(team: Casebook) -> None:
    note = "nul\0 emoji🙂 end"
    number = team.add(Record(note=Note.of(note, "odd\0name")))
    assert team.open(number).record.note.text == note
    assert [line.id for line in team.cases("emoji🙂")] == [number]


def test_history_can_only_be_added_to(team: Casebook, url: str) -> None:
    team.add(draft())
    engine = create_engine(url.replace("postgresql", "postgresql+psycopg"))
    for line in ("UPDATE casebook_edits SET who = 'nobody'", "DELETE FROM casebook_edits"):
        with pytest.raises(DBAPIError, match="only ever added"), engine.begin() as connection:
            connection.execute(text(line))
    engine.dispose()


def test_a_newer_casebook_is_refused(team: Casebook, url: str) -> None:
    engine = create_engine(url.replace("postgresql", "postgresql+psycopg"))
    with engine.begin() as connection:
        connection.execute(text("UPDATE casebook_about SET schema_version = 99"))
    engine.dispose()
    with pytest.raises(CasebookFault, match="newer notereader"):
        Casebook(url)


def test_a_connection_that_was_cut_is_made_again(team: Casebook, url: str) -> None:
    case = team.open(team.add(draft()))
    engine = create_engine(url.replace("postgresql", "postgresql+psycopg"))
    with engine.begin() as connection:
        connection.execute(
            text(
                "SELECT pg_terminate_backend(pid) FROM pg_stat_activity "
                "WHERE pid <> pg_backend_pid() AND datname = current_database()"
            )
        )
    engine.dispose()
    case.apply(confirming(case, STRANDS), who="ward")
    assert team.open(case.id).record == case.record
