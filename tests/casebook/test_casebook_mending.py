"""Daily copies, and damaged casebook files brought back from them and from what the damaged file still holds."""

import contextlib
import os
import sqlite3
from collections.abc import Callable
from contextlib import closing
from datetime import date, timedelta
from pathlib import Path
from typing import Any

import pytest
from casebook_helpers import A2, GLIDE, SIZE, STRANDS, confirming, correcting, draft, opened

from notereader.casebook import Casebook, CasebookFault, Edit, backup
from notereader.casebook.backup import Backups, DailyBackup
from notereader.casebook.faults import DamagedCasebook
from notereader.casebook.store import damage_mark
from notereader.record import Record

DAY = date(2031, 3, 14)


@pytest.fixture(autouse=True)
def _copies_only_when_asked_for(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(DailyBackup, "remind", lambda self: None)


def contents(path: Path) -> dict[int, tuple[Record, int, str, int]]:
    """Return record, revision, state and length of history of every case."""
    book = Casebook(path)
    found = {}
    for line in book.cases(limit=10_000):
        case = book.open(line.id)
        found[line.id] = (case.record, case.revision, case.state, len(case.history()))
    book.close()
    return found


def work(path: Path, cases: int, turns: int) -> None:
    """Add cases and edit all there are."""
    for book in opened(path):
        for _ in range(cases):
            book.add(draft())
        for line in book.cases():
            case = book.open(line.id)
            for turn in range(turns):
                case.apply(correcting(case, STRANDS, (case.revision + turn) % 16 + 1), who="ward")
            if case.record.facts_of(A2) is not None and line.id % 3 == 0:
                case.apply(Edit.dropping(case.record, A2), who="ward")
            if line.id % 5 == 0:
                case.apply_all([confirming(case, place) for place, _ in case.record.walk()], who="ward")
                case.confirm("ward")


@pytest.fixture
def worked(path: Path) -> Path:
    """A casebook with a copy of yesterday and a day's work since: old cases edited, new ones added."""
    work(path, cases=12, turns=2)
    assert Backups(path).make(DAY) is not None
    work(path, cases=6, turns=2)
    return path


def spoil(path: Path, first: int, last: int, content: bytes | None = None) -> None:
    with path.open("r+b") as stream:
        stream.seek(first)
        stream.write(content if content is not None else os.urandom(last - first))


def page_size(path: Path) -> int:
    return int.from_bytes(path.read_bytes()[16:18], "big")


def files_of(path: Path) -> dict[Path, bytes]:
    """Return the casebook file and its log as they lie on the disk at this moment."""
    return {place: place.read_bytes() for place in (path, path.with_name(f"{path.name}-wal"))}


def put_back(files: dict[Path, bytes]) -> None:
    """Make it so again, as after the power failed."""
    for place, content in files.items():
        place.write_bytes(content)


def record_bytes(path: Path, number: int) -> bytes:
    """Return the stored bytes of a case's record, in the file itself and not in the log."""
    with closing(sqlite3.connect(f"{path.as_uri()}?immutable=1", uri=True)) as raw:
        found = raw.execute("SELECT data FROM casebook_records WHERE case_id = ?", (number,)).fetchone()[0]
    return bytes(found)


def kinds(path: Path, number: int) -> list[str]:
    for book in opened(path):
        found = [line.kind for line in book.open(number).history()]
    return found


def notice(path: Path) -> str:
    book = Casebook(path)
    book.close()
    return " ".join(book.notices)


def test_copies_are_made_once_a_day_and_the_oldest_dropped(path: Path) -> None:
    backups = Backups(path, keep=7)
    work(path, cases=1, turns=1)
    for days in range(10):
        today = DAY + timedelta(days=days)
        assert backups.due(today)
        assert backups.make(today) is not None
        assert backups.make(today) is None
        work(path, cases=1, turns=0)
    assert [copy.stem[-10:] for copy in backups.newest_first()] == [
        (DAY + timedelta(days=days)).isoformat() for days in range(9, 2, -1)
    ]
    assert len(contents(backups.newest_first()[0])) == 10


def test_other_files_and_odd_names_do_not_disturb_the_copies(tmp_path: Path) -> None:
    for name in ("book [1]*-2.db", "book", "book.sqlite"):
        path = tmp_path / name
        backups = Backups(path)
        work(path, cases=1, turns=0)
        backups.folder.mkdir()
        (backups.folder / "notes-1.db").write_text("not a copy")
        (backups.folder / f"{path.stem}-000009.db").write_text("not a copy")
        made = backups.make(DAY)
        assert backups.newest_first() == [made]
        path.unlink()
        assert "2031-03-14" in notice(path)
        assert contents(path)[1][0] == draft()


def test_a_linked_casebook_is_mended_where_it_lies(worked: Path, tmp_path: Path) -> None:
    (tmp_path / "links").mkdir()
    link = tmp_path / "links" / "mine.db"
    link.symlink_to(worked)
    before = contents(worked)
    spoil(worked, 0, page_size(worked))
    assert "mended" in notice(link)
    assert link.is_symlink()
    assert contents(worked) == contents(link) == before


def test_no_copy_pushes_out_an_older_one_while_nothing_changes(path: Path) -> None:
    backups = Backups(path)
    Casebook(path).close()
    assert backups.make(DAY) is None
    work(path, cases=1, turns=0)
    assert backups.make(DAY) is not None
    assert backups.make(DAY + timedelta(days=1)) is None
    assert len(backups.newest_first()) == 1


def test_a_clock_set_wrong_drops_no_new_copy(path: Path) -> None:
    backups = Backups(path, keep=3)
    for today in (date(2099, 1, 1), date(2099, 1, 2), date(2099, 1, 3), DAY, DAY - timedelta(days=400)):
        work(path, cases=1, turns=0)
        assert backups.make(today) is not None
    assert [copy.stem[-10:] for copy in backups.newest_first()] == ["2030-02-07", "2031-03-14", "2099-01-03"]


def test_a_copy_is_made_by_itself_when_a_casebook_is_opened(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    work(path, cases=1, turns=1)
    monkeypatch.undo()
    for book in opened(path):
        book._daily.finish()
        assert [copy.stem[-10:] for copy in Backups(path).newest_first()] == [date.today().isoformat()]
    assert book.notices == []


def test_a_copy_that_cannot_be_made_is_told_and_stops_no_work(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    work(path, cases=1, turns=1)
    Backups(path).folder.write_text("in the way")
    monkeypatch.undo()
    for book in opened(path):
        book._daily.finish()
        case = book.open(1)
        case.apply(confirming(case, STRANDS))
    assert len(book.notices) == 1
    assert "daily copy" in book.notices[0]


def test_a_damaged_casebook_never_replaces_a_good_copy(worked: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    before = contents(worked)
    good = Backups(worked).newest_first()
    spoil(worked, 4 * page_size(worked), 5 * page_size(worked))
    with pytest.raises(CasebookFault, match="damaged"):
        Backups(worked).make(DAY + timedelta(days=1))
    assert Backups(worked).newest_first() == good
    assert "mended" in notice(worked)
    assert contents(worked) == before


def test_a_whole_casebook_is_not_touched(worked: Path) -> None:
    before = worked.read_bytes()
    assert notice(worked) == ""
    assert worked.read_bytes() == before


def test_a_spoilt_first_page_costs_nothing(worked: Path) -> None:
    before = contents(worked)
    size = page_size(worked)
    spoil(worked, 0, size)
    told = notice(worked)
    assert "restored from the daily copy of 2031-03-14" in told
    assert "18 cases changed since" in told
    assert contents(worked) == before
    aside = list(worked.parent.glob("book-damaged-*.db"))
    assert len(aside) == 1
    assert str(aside[0]) in told
    assert notice(worked) == ""


def test_any_one_spoilt_page_costs_at_most_what_is_told(worked: Path, tmp_path: Path) -> None:
    before = contents(worked)
    whole = worked.read_bytes()
    size = page_size(worked)
    lost = 0
    for page in range(len(whole) // size):
        worked.write_bytes(whole[: page * size] + bytes(size) + whole[(page + 1) * size :])
        told = notice(worked)
        spoilt = told.partition("number ")[2].partition(".")[0]
        numbers = {int(number) for number in spoilt.split(", ") if number}
        after = contents(worked)
        assert {number for number, found in before.items() if after.get(number) != found} <= numbers, page
        lost += len(numbers)
        for number in numbers & set(after):
            assert "mended" in kinds(worked, number) or number < 13
        # What had been copied is there in any case.
        assert set(range(1, 13)) <= set(after)
        assert all(found[1] + 1 == found[3] or number in numbers for number, found in after.items())
    print(f"{len(whole) // size} pages spoilt one at a time: {lost} cases not whole, of {len(before)} each time")


def test_a_file_cut_short_keeps_what_was_copied_and_tells(worked: Path) -> None:
    before = contents(worked)
    os.truncate(worked, worked.stat().st_size // 2)
    assert "mended" in notice(worked)
    after = contents(worked)
    assert set(range(1, 13)) <= set(after)
    # One line more tells of the mending.
    assert all(after[number][1] <= before[number][1] + 1 for number in after)


@pytest.mark.parametrize("content", [None, b"", b"nothing of a database", bytes(200_000)])
def test_a_lost_file_is_restored_from_the_last_copy(worked: Path, content: bytes | None) -> None:
    copied = contents(Backups(worked).newest_first()[0])
    worked.unlink()
    if content is not None:
        worked.write_bytes(content)
    assert "restored from the daily copy of 2031-03-14" in notice(worked)
    assert contents(worked) == copied


def test_a_damaged_copy_is_passed_over(worked: Path) -> None:
    copied = contents(Backups(worked).newest_first()[0])
    made = Backups(worked).make(DAY + timedelta(days=1))
    spoil(made, page_size(made), made.stat().st_size)
    worked.unlink()
    assert "2031-03-14" in notice(worked)
    assert contents(worked) == copied


@pytest.mark.parametrize("with_copy", [True, False])
@pytest.mark.parametrize("step", range(5))
def test_mending_that_was_broken_off_is_taken_up_again(
    worked: Path, monkeypatch: pytest.MonkeyPatch, with_copy: bool, step: int
) -> None:
    """Broken off at each change of a name in turn; part of the work is still in the log."""
    book = Casebook(worked)
    case = book.open(3)
    case.apply(confirming(case, SIZE), who="ward")
    kept = files_of(worked)
    book.close()
    before = contents(worked)
    put_back(kept)
    if not with_copy:
        for copy in Backups(worked).newest_first():
            copy.unlink()
    place = worked.read_bytes().index(record_bytes(worked, 7)[:200])
    spoil(worked, place, place + 200, bytes(200))
    damage_mark(worked).touch()
    left = step

    def broken_off(change: Callable[..., None]) -> Callable[..., None]:
        def perhaps(*arguments: Any, **named: Any) -> None:
            nonlocal left
            left -= 1
            if left < 0:
                raise KeyboardInterrupt
            change(*arguments, **named)

        return perhaps

    with monkeypatch.context() as patch, contextlib.suppress(KeyboardInterrupt):
        patch.setattr(os, "replace", broken_off(os.replace))
        Casebook(worked).close()
    notice(worked)
    after = contents(worked)
    if with_copy:
        assert after == before
    else:
        # The record was spoilt and nowhere else; all other cases are whole.
        assert {**after, 7: None} == {**before, 7: None}
    assert notice(worked) == ""


def test_without_any_copy_what_can_be_read_is_kept(worked: Path) -> None:
    before = contents(worked)
    for copy in Backups(worked).newest_first():
        copy.unlink()
    size = page_size(worked)
    spoil(worked, worked.stat().st_size - 2 * size, worked.stat().st_size)
    told = notice(worked)
    assert "mended" in told
    after = contents(worked)
    assert len(after) >= len(before) - 4
    assert sum(after[number] == before[number] for number in after) >= len(before) - 4


def test_without_copy_and_beyond_reading_the_file_is_left_alone(path: Path) -> None:
    work(path, cases=2, turns=1)
    size = page_size(path)
    spoil(path, size, path.stat().st_size, bytes(path.stat().st_size - size))
    before = path.read_bytes()
    with pytest.raises(CasebookFault, match=r"no daily copy.*Nothing was changed"):
        Casebook(path)
    assert path.read_bytes() == before
    assert [place.name for place in path.parent.iterdir() if place.suffix in (".mending", ".mended", ".reading")] == []


def test_a_spoilt_record_is_made_again_from_copy_and_history(worked: Path) -> None:
    before = contents(worked)
    with closing(sqlite3.connect(worked)) as raw:
        raw.execute("UPDATE casebook_records SET data = zeroblob(length(data)) WHERE case_id = 7")
        raw.commit()
    book = Casebook(worked)
    with pytest.raises(DamagedCasebook, match="start it again"):
        book.open(7)
    assert book.open(8).record == before[8][0]
    book.close()
    assert "mended" in notice(worked)
    assert contents(worked) == before


def test_edits_still_in_the_log_are_taken_over(worked: Path) -> None:
    """The log holds what was not yet moved into the file when the program was killed."""
    book = Casebook(worked)
    case = book.open(3)
    case.apply(confirming(case, SIZE), who="ward")
    case.apply(confirming(case, GLIDE), who="ward")
    kept = files_of(worked)
    book.close()
    put_back(kept)
    spoil(worked, 0, page_size(worked))
    assert "mended" in notice(worked)
    assert Casebook(worked).open(3).record == case.record


def test_cases_go_on_after_mending(worked: Path) -> None:
    spoil(worked, 0, page_size(worked))
    for book in opened(worked):
        case = book.open(book.add(draft()))
        case.apply(confirming(case, STRANDS))
        old = book.open(1)
        old.apply(correcting(old, STRANDS, 16))
        assert book.cases()[0].id == 1


def test_what_was_shown_stays_shown(worked: Path) -> None:
    for book in opened(worked):
        book.open(15).mark_read([STRANDS.text()])
    spoil(worked, 0, page_size(worked))
    assert Casebook(worked).open(15).read == {STRANDS.text()}


def test_large_files_are_not_checked_at_every_start(worked: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    from notereader.casebook import mending

    monkeypatch.setattr(mending, "CHECKED_AT_START", 0)
    monkeypatch.setattr(mending, "first_damage", lambda path: pytest.fail("was checked"))
    Casebook(worked).close()


def test_only_one_process_at_a_time_copies_or_mends(path: Path) -> None:
    with backup.exclusive(path), pytest.raises(sqlite3.OperationalError), backup.exclusive(path, wait_seconds=0.05):
        pytest.fail("two at once")
