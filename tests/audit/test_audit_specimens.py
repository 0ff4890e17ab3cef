"""The journal of an audit begun with a released version opens in this one; the file is never made anew."""

import shutil
from pathlib import Path

import pytest

from notereader.audit import journal as journals
from notereader.audit.faults import AuditFault
from notereader.audit.journal import FILE_NAME, Journal

SPECIMEN = Path(__file__).parent / "specimens" / "journal-version-1.db"


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    shutil.copy(SPECIMEN, tmp_path / FILE_NAME)
    return tmp_path


def test_a_journal_of_version_1_opens_with_what_was_found(folder: Path) -> None:
    journal = Journal(folder)
    rows = [*journal.rows()]
    journal.close()
    assert [row.name for row in rows] == sorted(row.name for row in rows)
    assert len(rows) == 4
    assert all(row.assessment is not None and not row.refusal for row in rows)


def test_a_journal_of_other_criteria_is_refused_in_words_and_left_as_it_is(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(journals, "_criteria_keys", lambda: "others")
    before = (folder / FILE_NAME).read_bytes()
    with pytest.raises(AuditFault, match=r"begun by another version of this program\. Begin afresh, or choose another"):
        Journal(folder)
    assert (folder / FILE_NAME).read_bytes() == before
