"""The places that write and that the work at once does not reach: mending, older copies, practice, charts."""

import os
import stat
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from notereader.casebook import Casebook
from notereader.record import Note, Record

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="a person's folders are closed to others there")


@pytest.fixture(autouse=True)
def nothing_masked() -> Iterator[None]:
    """Only the program itself closes what it writes."""
    before = os.umask(0)
    yield
    os.umask(before)


def open_to_others(folder: Path) -> list[str]:
    return [str(p.relative_to(folder)) for p in folder.rglob("*") if stat.S_IMODE(p.stat().st_mode) & 0o077]


def test_a_mended_casebook_and_what_is_kept_of_the_damaged_one(tmp_path: Path) -> None:
    path = tmp_path / "book" / "casebook.db"
    book = Casebook(path)
    for number in range(30):
        book.add(Record(note=Note.of(f"FDP repaired, case {number}. " * 200, f"case {number}")))
    book.close()
    with path.open("r+b") as stream:
        stream.seek(8192)
        stream.write(b"\xff" * 8192)
    (path.parent / "casebook.db.damaged").touch(mode=0o600)
    mended = Casebook(path)
    assert mended.notices
    mended.close()
    assert len(list(path.parent.rglob("*"))) > 2
    assert open_to_others(path.parent) == []


def test_the_work_of_a_student_and_its_charts(tmp_path: Path) -> None:
    from matplotlib.figure import Figure

    from notereader.practice.attempts import ExerciseBook
    from notereader.practice.charts import save_figure
    from notereader.practice.exports import save_text
    from notereader.practice.sets import ready_set

    folder = tmp_path / "book"
    book = ExerciseBook(folder, "student")
    book.start(ready_set().cases[0])
    save_text(folder / "marking.txt", "words")
    save_figure(Figure(), folder / "chart.png")
    assert len(list(folder.iterdir())) >= 3
    assert open_to_others(folder) == []


def test_a_sample_handed_out_by_an_audit(tmp_path: Path) -> None:
    from notereader.cli import main

    (tmp_path / "notes").mkdir()
    (tmp_path / "notes" / "one.txt").write_text("FDP of the ring finger was repaired in zone II.")
    out = tmp_path / "audit"
    assert main(["audit", str(tmp_path / "notes"), "--out", str(out), "--sample", "1"]) == 0
    assert len(list(out.rglob("*.db"))) >= 2
    assert open_to_others(out) == []
