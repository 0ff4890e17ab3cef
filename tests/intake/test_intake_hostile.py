"""Files made to do harm: each is read for what it shows or refused in words, in time, and does nothing else."""

import io
import struct
import time
import zipfile
import zlib
from collections.abc import Iterator
from pathlib import Path

import pytest
from intake_making import (
    NOTE,
    pdf_bytes,
    pdf_of_objects,
    rtf_bytes,
    simple_docx,
    stream_object,
    text_content,
    zip_bytes,
)

from notereader.intake import IntakeRefused, limits, read_bytes, read_file, read_stream

# The parser's own limit is 8 seconds; a person waits 10 at most.
PATIENCE = 10.0


@pytest.fixture(autouse=True)
def _in_time() -> Iterator[None]:
    begun = time.perf_counter()
    yield
    assert time.perf_counter() - begun < 2 * PATIENCE


def read_or_refused(data: bytes, name: str) -> str:
    """Return the text of a note, or '' where it was refused in whole sentences."""
    try:
        return read_bytes(data, name).text
    except IntakeRefused as refused:
        assert refused.what.endswith(".") and refused.advice.endswith(".")
        return ""


def with_parts(parts: dict[str, bytes]) -> bytes:
    """Return a Word document with more parts in its archive."""
    stream = io.BytesIO(simple_docx())
    with zipfile.ZipFile(stream, "a", zipfile.ZIP_DEFLATED) as archive:
        for name, content in parts.items():
            archive.writestr(name, content)
    return stream.getvalue()


# --- archives


def test_an_archive_that_lies_about_its_sizes_is_refused() -> None:
    bomb = bytearray(with_parts({"word/footnotes.xml": bytes(100_000_000)}))
    at = bomb.rindex(b"word/footnotes.xml") - 46
    assert bomb[at : at + 4] == b"PK\x01\x02"
    bomb[at + 24 : at + 28] = struct.pack("<I", 100)
    assert len(bomb) < 200_000
    # Its own words are there to be read; of the part that lies no more than it claims is ever unpacked.
    assert read_or_refused(bytes(bomb), "n.docx") in ("", NOTE.rstrip("\n"))


def test_an_archive_whose_entries_share_one_swollen_part_is_refused() -> None:
    """Many entries of the folder point at the same packed bytes, so that a small file unpacks to very much."""
    bomb = with_parts({"word/document2.xml": bytes(1_000_000)})
    start = bomb.index(b"PK\x01\x02")
    end = bomb.rindex(b"PK\x05\x06")
    entry = bomb[bomb.rindex(b"PK\x01\x02") : end]
    folder = bomb[start:end] + entry * 300
    number = bomb[start:end].count(b"PK\x01\x02") + 300
    closing = struct.pack("<4s4H2LH", b"PK\x05\x06", 0, 0, number, number, len(folder), start, 0)
    with pytest.raises(
        IntakeRefused, match=r"would unpack to 30\d,\d{3},\d{3} bytes in 3\d\d parts, more than any note"
    ):
        read_bytes(bomb[:start] + folder + closing, "n.docx")


def test_documents_within_a_document_are_left_packed_and_told() -> None:
    swollen = zip_bytes({"word/document.xml": bytes(50_000_000)})
    note = read_bytes(with_parts({"word/embeddings/inner.docx": swollen}), "n.docx")
    assert note.text.rstrip("\n") == NOTE.rstrip("\n")
    assert note.warnings == ["The document holds other files; what they say was not read. Check the original."]


@pytest.mark.parametrize("depth", [1, 2, 50])
def test_archives_within_archives_are_refused(depth: int) -> None:
    packed = simple_docx()
    for level in range(depth):
        packed = zip_bytes({f"{level}.docx": packed})
    with pytest.raises(IntakeRefused, match="This is a packed archive, not a note"):
        read_bytes(packed, "n.docx")


def test_names_of_parts_that_lead_out_of_the_archive_write_nothing(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    data = with_parts({"../../escaped.txt": b"out", "/tmp/escaped.txt": b"out"})
    assert read_bytes(data, "n.docx").text.rstrip("\n") == NOTE.rstrip("\n")
    assert [*tmp_path.iterdir()] == []


def test_a_document_that_names_a_file_elsewhere_does_not_fetch_it(tmp_path: Path) -> None:
    secret = tmp_path / "secret.txt"
    secret.write_text("of another patient")
    words = "http://schemas.openxmlformats.org/wordprocessingml/2006/main"
    body = (
        f'<!DOCTYPE w [<!ENTITY x SYSTEM "{secret.as_uri()}">]><w:document xmlns:w="{words}"><w:body><w:p><w:r>'
        "<w:t>FDP repaired &x;</w:t></w:r></w:p></w:body></w:document>"
    )
    stream = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(simple_docx())) as old, zipfile.ZipFile(stream, "w") as new:
        for part in old.namelist():
            new.writestr(part, body if part == "word/document.xml" else old.read(part))
    assert "another patient" not in read_or_refused(stream.getvalue(), "n.docx")


# --- PDFs


def one_page(drawing: bytes, *more: bytes, page: bytes = b"", catalogue: bytes = b"") -> bytes:
    """Return a PDF of one page with this drawing (object 5); further objects count from 6."""
    objects = [
        b"<</Type/Catalog/Pages 2 0 R" + catalogue + b">>",
        b"<</Type/Pages/Kids[4 0 R]/Count 1>>",
        b"<</Type/Font/Subtype/Type1/BaseFont/Helvetica/Encoding/WinAnsiEncoding>>",
        b"<</Type/Page/Parent 2 0 R/MediaBox[0 0 595 842]/Resources<</Font<</F1 3 0 R>>/XObject<</X 6 0 R>>>>"
        b"/Contents 5 0 R" + page + b">>",
        drawing,
        *more,
    ]
    return pdf_of_objects(objects)


def test_a_drawing_in_a_pdf_that_draws_itself_is_read_or_stopped() -> None:
    itself = stream_object(
        b"q /X Do /X Do Q " + text_content("A2 vented"),
        b"/Type/XObject/Subtype/Form/BBox[0 0 595 842]/Resources<</Font<</F1 3 0 R>>/XObject<</X 6 0 R>>>>",
    )
    text = read_or_refused(one_page(stream_object(text_content("FDP repaired") + b" /X Do"), itself), "n.pdf")
    assert text == "" or text.startswith("FDP repaired")


def test_drawings_that_double_at_each_level_are_stopped(monkeypatch: pytest.MonkeyPatch) -> None:
    """Found by fuzzing: pdfium draws all of them, two to the power of forty."""
    monkeypatch.setattr(limits, "PARSE_SECONDS", 1.0)
    head = b"/Type/XObject/Subtype/Form/BBox[0 0 595 842]"
    levels = [stream_object(b"/X Do /X Do", head + b"/Resources<</XObject<</X %d 0 R>>>>" % (7 + n)) for n in range(40)]
    last = stream_object(b"0 0 9 9 re f", head)
    with pytest.raises(IntakeRefused, match=r"Reading it took (longer|more) than"):
        read_bytes(one_page(stream_object(text_content("FDP repaired") + b" /X Do"), *levels, last), "n.pdf")


def test_a_pdf_whose_tables_point_at_each_other_in_a_circle_is_read_or_refused() -> None:
    data = pdf_bytes(NOTE)
    table = data[data.rindex(b"startxref\n") + 10 :].split(b"\n")[0]
    circle = data.replace(b"/Root 1 0 R", b"/Root 1 0 R/Prev " + table)
    assert read_or_refused(circle, "n.pdf") in ("", NOTE.rstrip("\n"))


def test_a_pdf_stream_that_unpacks_to_hundreds_of_megabytes_is_stopped_or_read() -> None:
    packer = zlib.compressobj(9)
    once = b"".join(packer.compress(b" " * 1_000_000) for _ in range(400)) + packer.flush()
    twice = zlib.compress(once, 9)
    assert len(twice) < 5_000
    bomb = one_page(stream_object(twice, b"/Filter[/FlateDecode/FlateDecode]"))
    assert read_or_refused(bomb, "n.pdf") == ""


@pytest.mark.parametrize("nested", [b"[", b"<</A"])
def test_a_pdf_with_objects_a_hundred_thousand_deep_is_read_or_refused(nested: bytes) -> None:
    deep = one_page(stream_object(text_content(NOTE)), nested * 100_000, page=b"/Annots 6 0 R")
    assert read_or_refused(deep, "n.pdf") in ("", NOTE.rstrip("\n"))


@pytest.mark.parametrize(
    "action",
    [
        b"<</S/Launch/F(/bin/sh)>>",
        b"<</S/URI/URI(file:///etc/passwd)>>",
        b"<</S/SubmitForm/F(http://127.0.0.1:9/)>>",
        b"<</S/JavaScript/JS(while\\(true\\){})/Next 7 0 R>>",
        b"<</S/GoToE/F 8 0 R>>",
    ],
)
def test_actions_and_files_in_a_pdf_do_nothing(action: bytes) -> None:
    inner = stream_object(zlib.compress(pdf_bytes("of another patient")), b"/Type/EmbeddedFile/Filter/FlateDecode")
    data = one_page(
        stream_object(text_content(NOTE)),
        b"<<>>",
        action,
        b"<</Type/Filespec/F(inner.pdf)/EF<</F 9 0 R>>>>",
        inner,
        page=b"/AA<</O 7 0 R/C 7 0 R>>",
        catalogue=b"/OpenAction 7 0 R/Names<</EmbeddedFiles<</Names[(inner.pdf) 8 0 R]>>>>",
    )
    assert read_bytes(data, "n.pdf").text == NOTE.rstrip("\n")


# --- rich text


@pytest.mark.parametrize(
    ("body", "shown"),
    [
        (r"FDP \bin99999999999 repaired", "FDP"),
        (r"FDP \u-99999999999 ? repaired", "FDP"),
        (r"FDP \u99999999999 ? repaired", "FDP"),
        (r"FDP \uc99999999999 repaired", "FDP"),
        (r"FDP {\object\objemb{\*\objdata 0105000002000000}{\result repaired}}", "FDP"),
        (r'{\field{\*\fldinst DDEAUTO cmd "/k calc"}{\fldrslt FDP repaired}}', "FDP repaired"),
        (r'{\field{\*\fldinst INCLUDETEXT "/etc/passwd"}{\fldrslt FDP repaired}}', "FDP repaired"),
        (r"{\*\template /etc/passwd}FDP repaired", "FDP repaired"),
        (r"}}}}FDP repaired", "FDP"),
        (r"{{{{FDP repaired", "FDP repaired"),
        (r"FDP repaired {\v it was not}", "FDP repaired"),
        ("FDP " + r"\b" * 100_000 + " repaired", "FDP"),
        ("FDP repaired" + r"{\pict " + "0" * 1_000_000 + "}", "FDP repaired"),
    ],
)
def test_tricks_of_rich_text_show_no_more_than_a_print_would(body: str, shown: str) -> None:
    text = read_or_refused(rtf_bytes(body), "n.rtf")
    assert text == "" or text.lstrip("}{ ").startswith(shown)
    for harm in ("calc", "passwd", "root:", "0105", "it was not"):
        assert harm not in text


# --- size


@pytest.mark.parametrize(
    "start", [b"FDP repaired. ", b"%PDF-1.7\n", b"PK\x03\x04", b"{\\rtf1 ", b"\x89PNG\r\n\x1a\n", b"{"]
)
def test_a_hundred_megabytes_of_any_kind_are_refused_unread(tmp_path: Path, start: bytes) -> None:
    path = tmp_path / "huge.bin"
    with path.open("wb") as stream:
        stream.write(start)
        stream.truncate(100_000_000)
    with pytest.raises(IntakeRefused, match="more than 50 MB"):
        read_file(path)
    with path.open("rb") as stream, pytest.raises(IntakeRefused, match="more than 50 MB"):
        read_stream(stream)


@pytest.mark.parametrize(
    "deep", [b"[" * 1_000_000, b'{"a":' * 1_000_000, b'{"format": "notereader-record", "x": ' * 100_000]
)
def test_deep_json_given_for_a_note_is_refused_or_plain_text(deep: bytes) -> None:
    assert read_or_refused(deep, "n.json") in ("", deep.decode())
