"""Every refusal: what is wrong, where, and what to do; and nothing but a note or a refusal comes out."""

import io
import json
import os
import struct
import zipfile
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from intake_making import (
    NOTE,
    locked_pdf,
    ole_bytes,
    pdf_bytes,
    pdf_of_objects,
    picture_pdf,
    rtf_bytes,
    simple_docx,
    zip_bytes,
)
from intake_scanning import image_bytes
from PIL import Image

from notereader.intake import IntakeRefused, NoteText, clean_text, limits, read_bytes, read_file, read_stream, worker

PASTE = "Open it in the program it came from, copy the note's text and paste it here."
RESAVE = "Open it in a word processor, save it as .docx, or copy its text and paste it here."
PRINT = "Open it in a PDF viewer and print it to a new PDF, or copy its text and paste it here."
CHOOSE = "Choose the file that holds the note."


def refusal(data: bytes, name: str = "n") -> str:
    with pytest.raises(IntakeRefused) as refused:
        read_bytes(data, name)
    text = str(refused.value)
    assert text == f"{name}: {refused.value.what} {refused.value.advice}"
    return text.removeprefix(f"{name}: ")


@pytest.mark.parametrize(
    ("data", "sentence"),
    [
        (b"", "The file is empty. Choose the file that holds the operative note."),
        (b" \r\n\t", "There is no text in it. Choose the file that holds the note, or paste its text."),
        (b"MZ\x90\x00\x03\x00\x00\x00", f"This is a program, not a note. {CHOOSE}"),
        (b"\x7fELF\x02\x01\x01", f"This is a program, not a note. {CHOOSE}"),
        (b"\x1f\x8b\x08\x00", "This is a packed archive, not a note. Unpack it and read the note inside."),
        (b"SQLite format 3\x00", f"This is a database, not a note. {CHOOSE}"),
        (
            b"RIFF\x24\x00\x00\x00WAVEfmt ",
            "This is a sound recording, not a text. Have the dictation typed and read the typed note.",
        ),
        (b"RIFF\x24\x00\x00\x00AVI LIST", f"This is a film, not a note. {CHOOSE}"),
        (
            b"\x00\x00\x00\x18ftypM4A ",
            "This is a sound recording, not a text. Have the dictation typed and read the typed note.",
        ),
        (b"\x00\x00\x00\x18ftypisom", f"This is a film, not a note. {CHOOSE}"),
        (
            b"\x00\x00\x00\x18ftypheic",
            "This kind of picture cannot be opened. Save it as PNG or JPEG and read that.",
        ),
        (b"<!DOCTYPE html><p>FDP repaired", f"This is a web page, not a plain note. {PASTE}"),
        (b"\xef\xbb\xbf<?xml version='1.0'?><note/>", f"This is an XML file, not a plain note. {PASTE}"),
        (
            b'{"format": "notereader-record", "format_version": 1}',
            "This is a record made by notereader, not a note. Open it as a record.",
        ),
        (
            ole_bytes("EncryptedPackage"),
            "The document is protected by a password. Open it with its password, save a copy without one "
            "(or copy its text and paste it here).",
        ),
        (
            ole_bytes("WordDocument"),
            "This is a Word document of the old .doc kind. Save it as .docx in Word and read that.",
        ),
        (ole_bytes("Workbook"), f"This is a spreadsheet, not a note. {PASTE}"),
        (ole_bytes("Odd"), "This is an office file of an old kind that cannot be read. Save it as .docx or PDF."),
    ],
)
def test_what_is_no_note_is_named(data: bytes, sentence: str) -> None:
    assert refusal(data) == sentence


@pytest.mark.parametrize(
    ("data", "sentence"),
    [
        (
            zip_bytes({"[Content_Types].xml": b"<x/>", "xl/workbook.xml": b"<x/>"}),
            "This is a spreadsheet, not a note. Copy the note's text out of it and paste it here.",
        ),
        (
            zip_bytes({"[Content_Types].xml": b"<x/>", "ppt/presentation.xml": b"<x/>"}),
            "These are slides, not a note. Copy the note's text out of them and paste it here.",
        ),
        (
            zip_bytes({"mimetype": b"application/vnd.oasis.opendocument.text", "content.xml": b"<x/>"}),
            "This is an OpenDocument file. Save it as .docx and read that.",
        ),
        (
            zip_bytes({"note.txt": NOTE.encode()}),
            "This is a packed archive, not a note. Unpack it and read the note inside.",
        ),
        (
            zip_bytes({"inner.zip": zip_bytes({"inner.docx": simple_docx()})}),
            "This is a packed archive, not a note. Unpack it and read the note inside.",
        ),
        (zip_bytes({}), "This is a packed archive, not a note. Unpack it and read the note inside."),
        (b"PK\x03\x04 and no more", f"The document is damaged: its archive cannot be opened. {RESAVE}"),
        (simple_docx()[:-200], f"The document is damaged: its archive cannot be opened. {RESAVE}"),
        (
            zip_bytes({"word/document.xml": b"<x/>"}),
            f"The Word document lacks its main part, or is of the 'strict' kind. {RESAVE}",
        ),
    ],
)
def test_archives_that_are_no_word_document(data: bytes, sentence: str) -> None:
    assert refusal(data) == sentence


def with_part(name: str, content: bytes) -> bytes:
    """Return a Word document with one part put in or in place of its own."""
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(simple_docx())) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as new:
        for part in old.namelist():
            if part != name:
                new.writestr(part, old.read(part))
        new.writestr(name, content)
    return out.getvalue()


def test_a_macro_document_is_refused() -> None:
    with zipfile.ZipFile(io.BytesIO(simple_docx())) as archive:
        types = archive.read("[Content_Types].xml")
    kind = b"application/vnd.openxmlformats-officedocument.wordprocessingml.document.main+xml"
    assert kind in types
    data = with_part(
        "[Content_Types].xml", types.replace(kind, b"application/vnd.ms-word.document.macroEnabled.main+xml")
    )
    assert refusal(data) == f"This is a Word template or a document with macros. {RESAVE}"


@pytest.mark.parametrize("name", ["word/media/picture.png", "word/document.xml"])
def test_a_zip_bomb_is_refused_before_it_unpacks(name: str) -> None:
    bomb = with_part(name, b"\x00" * (260_000_000 if name.endswith("png") else 61_000_000))
    assert len(bomb) < 400_000
    assert refusal(bomb).startswith("The document would unpack to ")
    assert refusal(bomb).endswith(
        "more than any note. If it is a real note, copy its text and paste it here; "
        "if you do not know where it came from, delete it."
    )


def test_too_many_parts_are_refused() -> None:
    parts = {f"word/{number}.bin": b"" for number in range(limits.MAX_PARTS + 1)}
    assert "bytes in 5,001 parts, more than any note" in refusal(zip_bytes(parts))


def test_an_archive_whose_parts_need_a_password_is_refused() -> None:
    data = bytearray(zip_bytes({"word/document.xml": b"<x/>"}))
    folder = data.rindex(b"PK\x01\x02")
    data[folder + 8 : folder + 10] = struct.pack("<H", 1)
    assert refusal(bytes(data)) == "The archive is protected by a password. Unpack it and read the note inside."


def test_entities_in_a_word_document_are_not_expanded() -> None:
    laughs = '<!DOCTYPE w [<!ENTITY a "FDP repaired ">' + "".join(
        f'<!ENTITY {chr(98 + n)} "{f"&{chr(97 + n)};" * 10}">' for n in range(9)
    )
    words = "http://schemas.openxmlformats.org/wordprocessingml/2006/main"
    body = f'{laughs}]><w:document xmlns:w="{words}"><w:body><w:p><w:r><w:t>&j;</w:t></w:r></w:p></w:body></w:document>'
    assert refusal(with_part("word/document.xml", body.encode())).startswith("The")


@pytest.mark.parametrize(
    ("data", "sentence"),
    [
        (
            locked_pdf(),
            "The PDF is protected by a password. Open it with its password and print it to a new PDF, "
            "or copy its text and paste it here.",
        ),
        (b"%PDF-1.7 and no more", f"The PDF is damaged and cannot be opened. {PRINT}"),
        (
            pdf_of_objects([b"<</Type/Catalog/Pages 2 0 R>>", b"<</Type/Pages/Kids[]/Count 0>>"]),
            f"The PDF is damaged and cannot be opened. {PRINT}",
        ),
        (pdf_bytes(""), "There is no text in it. Choose the file that holds the note, or paste its text."),
        (
            pdf_bytes(*["FDP"] * 201),
            "The PDF has 201 pages; the limit is 200. "
            "Print the pages of the operative note to a PDF of their own and read that.",
        ),
    ],
)
def test_pdfs_that_cannot_be_read(data: bytes, sentence: str) -> None:
    assert refusal(data) == sentence


def test_a_pdf_that_claims_a_huge_number_of_pages_is_read_as_far_as_it_goes() -> None:
    data = pdf_bytes(NOTE).replace(b"/Count 1>>", b"/Count 2000000000>>")
    assert read_bytes(data, "n.pdf").text == NOTE.rstrip("\n")


def test_a_pdf_whose_pages_go_in_a_circle_is_refused() -> None:
    assert refusal(
        pdf_of_objects([b"<</Type/Catalog/Pages 2 0 R>>", b"<</Type/Pages/Kids[2 0 R 2 0 R]/Count 2/Parent 2 0 R>>"])
    )


def test_a_script_in_a_pdf_does_nothing() -> None:
    data = pdf_bytes(NOTE).replace(
        b"<</Type/Catalog", b"<</OpenAction<</S/JavaScript/JS(while(true){}app.alert(1))>>/Type/Catalog"
    )
    assert read_bytes(data, "n.pdf").text == NOTE.rstrip("\n")


def test_a_scanned_pdf_without_tesseract_says_how_to_get_it(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("notereader.intake.paged.find_tesseract", lambda: None)
    sentence = refusal(picture_pdf())
    assert sentence.startswith(
        "The PDF is a scan: its pages are pictures without text. Install Tesseract, a free program that recognises"
    )
    assert "sudo apt install tesseract-ocr" in sentence
    assert refusal(picture_pdf("FAX 03:14 p. 1/2")) == sentence


def test_a_page_that_is_a_picture_among_others_is_said_without_tesseract(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("notereader.intake.paged.find_tesseract", lambda: None)
    note = read_bytes(picture_pdf(pages_of_text=("FDP of the ring finger repaired.",)), "n.pdf")
    assert note.text == "FDP of the ring finger repaired."
    assert note.warnings[0].startswith("Page 1 is a picture; words in pictures were not read. Install Tesseract")


def test_a_picture_without_tesseract_says_how_to_get_it(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("notereader.intake.paged.find_tesseract", lambda: None)
    assert refusal(image_bytes(Image.new("L", (40, 40), 255))).startswith(
        "This is a picture; its words have to be recognised first. Install Tesseract"
    )


def test_broken_rtf_is_refused() -> None:
    assert refusal(rtf_bytes(r"\uc FDP")) == (
        "The rich text document is damaged: its codes do not make sense. "
        "Open it in a word processor, save it again, or copy its text and paste it here."
    )


def test_rtf_of_many_groups_is_read_or_refused_in_time() -> None:
    deep = rtf_bytes("{" * 200_000 + "FDP" + "}" * 200_000)
    assert read_bytes(deep, "n.rtf").text == "FDP"


def test_a_parser_that_hangs_is_stopped(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(limits, "PARSE_SECONDS", 0.2)
    monkeypatch.setattr(limits, "PARSE_PATIENCE", 1)
    # striprtf's search for links takes quadratic time on many openings of a field.
    data = rtf_bytes(r"{\field{\*\fldinst{HYPERLINK " * 30_000)
    assert refusal(data) == "Reading it took longer than 0 seconds. Copy the note's text out of it and paste it here."


def test_a_parser_that_works_without_end_is_stopped_before_the_clock_runs_out(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(limits, "PARSE_SECONDS", 1.0)
    monkeypatch.setattr(limits, "PARSE_PATIENCE", 1000)
    data = rtf_bytes(r"{\field{\*\fldinst{HYPERLINK " * 60_000)
    assert refusal(data).startswith("Reading it took longer than 1 seconds.")


def test_a_parser_that_takes_too_much_memory_is_stopped(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(limits, "PARSE_MEMORY_BYTES", 1_000_000)
    data = rtf_bytes(r"{\field{\*\fldinst{HYPERLINK " * 30_000)
    assert (
        refusal(data) == "Reading it took more than 1 MB of memory. Copy the note's text out of it and paste it here."
    )


def test_a_parser_that_dies_is_a_damaged_file(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("notereader.intake.child._command", lambda: ["/bin/false"])
    assert refusal(rtf_bytes("FDP")) == (
        "The file is damaged: reading it broke off. Copy the note's text out of it and paste it here."
    )


def test_a_parser_that_cannot_start_is_said(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setattr("notereader.intake.child._command", lambda: [str(tmp_path / "nothing")])
    assert refusal(rtf_bytes("FDP")) == (
        "The process that reads such files did not start (No such file or directory). "
        "Copy the note's text out of it and paste it here."
    )


def test_a_fault_of_a_library_is_a_damaged_file(monkeypatch: pytest.MonkeyPatch) -> None:
    def fails(data: bytes) -> None:
        raise RecursionError

    monkeypatch.setattr("notereader.intake.rtf_text.parse_rtf", fails)
    assert b"The file is damaged: its content cannot be followed." in worker.answer("rtf", b"{\\rtf1}")


def file_refusal(path: Path) -> str:
    with pytest.raises(IntakeRefused) as refused:
        read_file(path)
    assert str(refused.value).startswith(f"{path}: ")
    return str(refused.value).removeprefix(f"{path}: ")


def test_a_missing_file(tmp_path: Path) -> None:
    assert file_refusal(tmp_path / "no.txt") == "There is no such file. Check the name and the folder."


def test_a_folder(tmp_path: Path) -> None:
    assert file_refusal(tmp_path) == "This is a folder. Choose a file in it."


def test_a_name_no_file_can_have() -> None:
    assert file_refusal(Path("a\x00b")) == "This is no file name. Check the name and the folder."


def test_a_name_too_long(tmp_path: Path) -> None:
    assert file_refusal(tmp_path / ("a" * 5000)).startswith("The file could not be read (File name too long)")


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="no named pipes here")
def test_a_pipe_is_not_waited_for(tmp_path: Path) -> None:
    pipe = tmp_path / "pipe"
    os.mkfifo(pipe)
    assert file_refusal(pipe) == ("This is not an ordinary file. Copy the note to a file, or use standard input.")


def test_a_file_of_another_owner(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path = tmp_path / "n.txt"
    path.write_text(NOTE)

    def forbidden(*_: object, **__: object) -> None:
        raise PermissionError(13, "Permission denied")

    # Taking the permission away does not keep root from reading.
    monkeypatch.setattr(Path, "open", forbidden)
    assert file_refusal(path) == (
        "You are not allowed to read this file. Ask its owner for leave, or copy the note's text and paste it."
    )


def test_a_removed_drive(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path = tmp_path / "n.txt"
    path.write_text(NOTE)

    def gone(*_: object, **__: object) -> None:
        raise OSError(5, "Input/output error")

    monkeypatch.setattr(Path, "open", gone)
    assert file_refusal(path) == (
        "The file could not be read (Input/output error). "
        "Check that its drive is connected and try again, or copy the file to this computer."
    )


def test_a_huge_file_is_refused_without_reading_it(tmp_path: Path) -> None:
    path = tmp_path / "huge.txt"
    with path.open("wb") as stream:
        stream.truncate(100_000_000)
    assert file_refusal(path) == (
        "The file is too large for a note: more than 50 MB. Choose the file that holds the operative note."
    )


def test_an_endless_stream_is_not_read_to_its_end() -> None:
    class Endless(io.RawIOBase):
        def read(self, size: int = -1) -> bytes:
            assert 0 < size <= limits.MAX_FILE_BYTES + 1
            return b"a" * size

    with pytest.raises(IntakeRefused, match=r"^standard input: The file is too large for a note: more than 50 MB\."):
        read_stream(Endless())  # type: ignore[arg-type]


def test_a_file_and_a_stream_give_the_same_note(tmp_path: Path) -> None:
    path = tmp_path / "Ring Größe 😀.docx"
    path.write_bytes(simple_docx())
    from_file = read_file(str(path))
    assert (from_file.text.rstrip("\n"), from_file.name) == (NOTE.rstrip("\n"), path.name)
    with path.open("rb") as stream:
        assert read_stream(stream).text == from_file.text


def check(data: bytes) -> None:
    """Whatever the bytes: a clean note, or a refusal in whole sentences."""
    try:
        note = read_bytes(data, "n")
    except IntakeRefused as refused:
        assert refused.what[0].isupper() and refused.what.endswith(".")
        assert refused.advice[0].isupper() and refused.advice.endswith(".")
    else:
        assert isinstance(note, NoteText)
        assert note.text and clean_text(note.text) == note.text
        assert len(note.text.encode("utf-8")) <= limits.MAX_TEXT_BYTES
        assert all(warning.endswith(".") for warning in note.warnings)
        assert all(0 <= start < end <= len(note.text) for start, end, _ in note.confidences)


STARTS = [b"", b"\xff\xfe", b"\xfe\xff", b"\xef\xbb\xbf", b"BM", b"MZ", b"RIFF", b"<", b"{", b"\x00\x00\x00\x18ftyp"]


@settings(max_examples=800, deadline=None)
@given(st.sampled_from(STARTS), st.binary(max_size=400))
def test_any_bytes(start: bytes, rest: bytes) -> None:
    check(start + rest)


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(
    st.sampled_from([b"%PDF-1.7\n", b"PK\x03\x04", b"{\\rtf1 ", b"II*\x00", b"\x89PNG\r\n\x1a\n"]),
    st.binary(max_size=400),
)
def test_any_bytes_behind_the_start_of_a_document(start: bytes, rest: bytes) -> None:
    check(start + rest)


@st.composite
def spoiled(draw: st.DrawFn) -> bytes:
    """A sound document in which some bytes were changed, cut out or doubled."""
    data = bytearray(
        draw(st.sampled_from([pdf_bytes(NOTE), simple_docx(), rtf_bytes(r"FDP \b repaired\par A2"), picture_pdf()]))
    )
    for _ in range(draw(st.integers(1, 6))):
        at = draw(st.integers(0, max(0, len(data) - 1)))
        match draw(st.sampled_from(["change", "cut", "double"])):
            case "change":
                data[at : at + 1] = draw(st.binary(min_size=1, max_size=4))
            case "cut":
                del data[at : at + draw(st.integers(1, 200))]
            case _:
                data[at:at] = data[at : at + draw(st.integers(1, 200))]
    return bytes(data)


@settings(max_examples=20, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(spoiled())
def test_spoiled_documents(data: bytes) -> None:
    check(data)


RTF_PIECES = [
    *"\\{}'*;-0123456789abu FDP",
    "\n",
    "\\u",
    "\\bin",
    "\\'",
    "\\v",
    "\\pict",
    "\\cell",
    "\\deleted",
    "\\par",
]


@settings(max_examples=400, deadline=None)
@given(st.lists(st.sampled_from(RTF_PIECES), max_size=120))
def test_any_rtf_codes(codes: list[str]) -> None:
    # In this process: the parser is pure Python and cannot take the test down with it.
    answer = json.loads(worker.answer("rtf", b"{\\rtf1 " + "".join(codes).encode() + b"}"))
    assert answer.keys() in ({"refused"}, {"pages", "warnings", "picture"})
