"""Who can read the files, and what goes into logs."""

import logging
import os
import stat
import sys
import traceback
from pathlib import Path

import pytest
from casebook_helpers import STRANDS, TEXT, confirming, correcting, draft, opened

from notereader.casebook import Casebook, CasebookFault, EditRefused
from notereader.casebook.store import default_path

ONLY_OWNER = stat.S_IRWXU


@pytest.mark.skipif(sys.platform == "win32", reason="a person's folders are closed to others there by default")
def test_every_file_is_readable_by_its_owner_only(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    monkeypatch.setenv("HOME", str(tmp_path / "home"))
    assert default_path().is_relative_to(tmp_path)
    before = os.umask(0)
    try:
        for _ in range(2):
            book = Casebook()
            case = book.open(book.add(draft()))
            case.apply(confirming(case, STRANDS))
            book.close()
        book = Casebook()
        book.open(1).mark_read(["x"])
    finally:
        os.umask(before)
    made = list(default_path().parent.rglob("*"))
    assert {place.name for place in made} >= {"casebook.db", "casebook.db-wal", "casebook-copies"}
    assert [place for place in [default_path().parent, *made] if _open_to_others(place)] == []
    book.close()


def _open_to_others(place: Path) -> bool:
    """Tell whether others may do anything with a file; one that went meanwhile, as SQLite's journals do, is no harm."""
    try:
        return bool(place.stat().st_mode & 0o777 & ~ONLY_OWNER)
    except FileNotFoundError:
        return False


def test_no_word_of_the_note_reaches_logs_or_messages(path: Path, caplog: pytest.LogCaptureFixture) -> None:
    caplog.set_level(logging.DEBUG)
    messages = []
    for book in opened(path):
        case = book.open(book.add(draft(), title="Title of the case"))
        case.apply(confirming(case, STRANDS))
        case.history()
        book.cases("running peripheral")
        with pytest.raises(EditRefused) as refused:
            case.apply(correcting(case, STRANDS, 99))
        messages.append(str(refused.value))
        # The copy under way would keep the log beside the file alive.
        book._daily.finish()
        book._store._engine.dispose()
        path.write_bytes(b"broken")
        with pytest.raises(CasebookFault) as fault:
            case.apply(confirming(case, STRANDS))
        messages += traceback.format_exception(fault.value)
    said = caplog.text + "".join(messages)
    for words in ("running 6-0", "four-strand", "unauffällig", "Title of the case", TEXT):
        assert words not in said
