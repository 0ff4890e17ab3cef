"""Files made to do harm among the inputs of an audit: left out with the reason, in time, and the rest is counted."""

import io
import time
import zipfile
from collections.abc import Iterator
from pathlib import Path

import openpyxl
import pytest
from audit_making import audited, folder_of, rows_of
from demo_notes import demo_notes

from notereader.audit.faults import AuditFault
from notereader.audit.peers import records_in
from notereader.audit.sources import open_source

DEEP = b"[" * 300_000
TWICE = b'{"format": "notereader-record", "format_version": 1, "repairs": [], "repairs": []}'


@pytest.fixture(autouse=True)
def _in_time() -> Iterator[None]:
    begun = time.perf_counter()
    yield
    assert time.perf_counter() - begun < 60


def huge(path: Path) -> Path:
    """Make a file of 100 MB that takes no room."""
    with path.open("wb") as stream:
        stream.write(b'{"format": "notereader-record"')
        stream.truncate(100_000_000)
    return path


def workbook(path: Path, part: str, content: bytes) -> Path:
    """Write a workbook in which one part has other content."""
    book = openpyxl.Workbook()
    book.active.append(["text"])
    book.active.append(["FDP of the ring finger repaired."])
    stream = io.BytesIO()
    book.save(stream)
    with zipfile.ZipFile(stream) as old, zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as new:
        for name in old.namelist():
            new.writestr(name, content if name == part else old.read(name))
    return path


def test_hostile_records_in_a_folder_are_left_out_and_the_rest_counted(tmp_path: Path) -> None:
    notes = tmp_path / "notes"
    folder_of(notes, demo_notes(2))
    (notes / "deep.json").write_bytes(DEEP)
    (notes / "twice.json").write_bytes(TWICE)
    huge(notes / "huge.json")
    huge(notes / "huge.txt")
    found = audited(open_source(notes), tmp_path / "out")
    assert (found.results.tally.counted, found.results.tally.refused) == (2, 4)
    said = {row["note"]: row["said"] for row in rows_of(tmp_path / "out" / "notes.csv")}
    assert "larger than 64 MB" in said["huge.json"]
    assert "no readable JSON" in said["deep.json"]
    assert "'repairs' is entered twice" in said["twice.json"]
    assert "more than 50 MB" in said["huge.txt"]


@pytest.mark.parametrize("content", [DEEP, TWICE])
def test_a_hostile_record_of_a_second_reader_is_refused_by_name(tmp_path: Path, content: bytes) -> None:
    path = tmp_path / "record.json"
    path.write_bytes(content)
    with pytest.raises(AuditFault, match=r"record\.json cannot be used as a record"):
        list(records_in(path))


def test_a_huge_record_of_a_second_reader_is_refused_unread(tmp_path: Path) -> None:
    with pytest.raises(AuditFault, match="larger than 64 MB"):
        list(records_in(huge(tmp_path / "record.json")))


def test_a_workbook_that_would_unpack_to_very_much_is_refused(tmp_path: Path) -> None:
    path = workbook(tmp_path / "notes.xlsx", "xl/theme/theme1.xml", bytes(260_000_000))
    assert path.stat().st_size < 1_000_000
    with pytest.raises(AuditFault, match="unpacks to more than 250 MB"):
        audited(open_source(path), tmp_path / "out")


def test_entities_of_a_workbook_are_not_expanded(tmp_path: Path) -> None:
    laughs = '<!DOCTYPE s [<!ENTITY a "FDP repaired ">' + "".join(
        f'<!ENTITY {chr(98 + n)} "{f"&{chr(97 + n)};" * 10}">' for n in range(9)
    )
    sheet = (
        f'{laughs}]><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData><row r="1">'
        '<c r="A1" t="inlineStr"><is><t>&j;</t></is></c></row></sheetData></worksheet>'
    )
    path = workbook(tmp_path / "notes.xlsx", "xl/worksheets/sheet1.xml", sheet.encode())
    with pytest.raises(AuditFault, match="no Excel workbook that can be read"):
        audited(open_source(path), tmp_path / "out")
