"""What is fuzzed: each target takes what hypothesis draws and fails on a crash, a hang or a wrong position.

Documents are parsed in this process and not in one of their own as in the program, so that a run takes minutes: what
would be only a refused file there (a parser's fault) is a find here only where it is no refusal in plain words. PDFs
are parsed in a fork with limits, as the program does in a process of its own: pdfium never comes back from some.
"""

import io
import json
import os
import time
import zipfile
from collections.abc import Iterator
from contextlib import contextmanager
from functools import cache
from pathlib import Path
from typing import Any
from unittest.mock import patch

from hypothesis import strategies as st

from notereader.appraisal import appraise
from notereader.exchange import facts_csv, summary_html
from notereader.intake import IntakeRefused, NoteText, clean_text, read_bytes, worker
from notereader.intake.parsed import Parsed
from notereader.reader import read
from notereader.record import Record, RecordRefused, dump_record, load_record

# A rule of the reader that fails is got over for a therapist; here it is a find.
os.environ.setdefault("NOTEREADER_STRICT", "1")
# A person waits this long at most.
HANG_SECONDS = 10.0
ROOT = Path(__file__).resolve().parents[2]


@contextmanager
def in_time() -> Iterator[None]:
    """Fail where the work within takes longer than a person waits; work, for the machine may be busy otherwise."""
    begun = time.process_time()
    yield
    took = time.process_time() - begun
    assert took < HANG_SECONDS, f"took {took:.1f} s"


def parse_here(task: str, data: bytes, page: int = 0) -> Parsed:
    """Parse a document in this process; raises IntakeRefused as the parsing process of the program does."""
    raw = json.loads(worker.answer(task, data, page))
    if "refused" in raw:
        raise IntakeRefused(*raw["refused"])
    return Parsed.from_json(raw)


def take_in(data: bytes, name: str = "n") -> None:
    """Whatever the bytes: a clean note whose facts stand where they say, or a refusal in whole sentences."""
    with (
        in_time(),
        patch("notereader.intake.child.parse_apart", parse_here),
        patch("notereader.intake.paged.parse_apart", parse_here),
        patch("notereader.intake.paged.find_tesseract", lambda: None),
    ):
        try:
            note = read_bytes(data, name)
        except IntakeRefused as refused:
            assert refused.what[:1].isupper() and refused.what.endswith("."), refused.what
            assert refused.advice[:1].isupper() and refused.advice.endswith("."), refused.advice
            return
    assert isinstance(note, NoteText)
    assert note.text and clean_text(note.text) == note.text
    note.text.encode("utf-8")
    read_note_text(note.text[:3000])


def read_note_text(text: str) -> None:
    """Read a clean text: every quote stands at its place, every fact is only proposed, the record opens again."""
    with in_time():
        record = read(text, "n")
    assert {fact.status for _, fact in record.walk()} <= {"proposed"}
    for evidence in quotes(record):
        span = evidence.span
        assert span is not None
        assert 0 <= span[0] < span[1] <= len(text), span
        assert evidence.exact == text[slice(*span)], (span, evidence.exact)
    assert load_record(dump_record(record)) == record


def open_record(data: str | bytes) -> None:
    """Open what may be a record: refused in words, or sound and fit for all that is done with a record."""
    with in_time():
        try:
            record = load_record(data)
        except RecordRefused as refused:
            assert str(refused)[:1].isprintable()
            return
        assert load_record(dump_record(record)) == record
        text = record.note.text
        for evidence in quotes(record):
            if text is not None and evidence.span is not None and evidence.exact:
                assert text[slice(*evidence.span)] == evidence.exact
        appraise(record)
        summary_html(record)
        facts_csv([record])


def quotes(record: Record) -> Iterator[Any]:
    """Yield all evidence of a record: of facts, rivals and remarks."""
    for _, fact in record.walk():
        yield from fact.evidence
        for rival in fact.rivals:
            yield from rival.evidence
    for remark in record.remarks:
        yield from remark.evidence


# --- what is drawn


# PDFs that had to be stopped, or that brought the parser down: refused in the program.
STOPPED = [0]


def parse_in_a_fork(task: str, data: bytes, page: int = 0) -> Parsed:
    """Parse a document in a fork of this process with limits on work and memory; raises IntakeRefused."""
    import resource  # not on Windows, where nobody fuzzes

    receiving, sending = os.pipe()
    child = os.fork()
    if child == 0:
        resource.setrlimit(resource.RLIMIT_CPU, (2, 2))
        resource.setrlimit(resource.RLIMIT_AS, (2_000_000_000, 2_000_000_000))
        with os.fdopen(sending, "wb") as stream:
            stream.write(worker.answer(task, data, page))
        os._exit(0)
    os.close(sending)
    with os.fdopen(receiving, "rb") as stream:
        out = stream.read()
    _, status = os.waitpid(child, 0)
    if status:
        STOPPED[0] += 1
        raise IntakeRefused("The file is damaged: reading it broke off.", "Copy the note's text out of it.")
    raw = json.loads(out)
    if "refused" in raw:
        raise IntakeRefused(*raw["refused"])
    return Parsed.from_json(raw)


def take_in_pdf(data: bytes) -> None:
    """Check a PDF as take_in does, parsed in a fork."""
    with patch(f"{__name__}.parse_here", parse_in_a_fork):
        take_in(data)


@cache
def notes() -> list[str]:
    """Return the invented notes of the samples and tests."""
    folders = (ROOT / "samples", *sorted((ROOT / "tests" / "notes").iterdir()))
    return [path.read_bytes().decode("utf-8") for folder in folders for path in sorted(folder.glob("*.txt"))]


WORDS = (
    *("FDP", "FDS", "FPL", "the index", "ring", "both fingers", "thumb", "zone II", "zone 2c", "4-0", "3/0", "6-0"),
    *("four-strand", "six strand", "modified Kessler", "cruciate", "running", "epitendinous", "core suture", "A2"),
    *("A4", "pulley", "vented", "intact", "released", "50 %", "half", "10 mm", "8 to 10 mm", "0.5 cm", "\n", "\n\n"),
    *("  ", " | ", ":", "[ ]", "[x]", "***", "not", "no gap", "gap of 2 mm", "if", "left", "right", "each", "neither"),
    *("respectively", "ADDENDUM", "1/7", "03/04/2031", "14 March 2031", "0", "l0", "4-O", "°", "30 degrees", "ß", "𝟜"),
    *("(", ")", ",", ".", ";", "?", "\t", "radial slip", "was", "planned", "previously", "repaired", "cut", "divided"),
    *(
        "with",
        "and",
        "of",
        "the",
        "digital nerve",
        "wrist",
        "extension",
        "flexion",
        "splint",
        "\u200b",
        "\u202e",
        "e\u0301",
    ),
    *("ﬁnger", "Ｆ", "\xad", "\x0c", "\u2028", "FDP:", "Surgeon", "Anaesthesia: GA", "1.", "-", "•", "w/", "tendon"),
)


@st.composite
def jumbles(draw: st.DrawFn) -> str:
    """Return words of the trade in any order, with odd characters between."""
    parts = draw(st.lists(st.sampled_from(WORDS) | st.text(max_size=4), max_size=80))
    return clean_text(draw(st.sampled_from(["", " ", "\n"])).join(parts))


@st.composite
def spliced(draw: st.DrawFn) -> str:
    """Return pieces of notes put together, with words and figures between."""
    pieces = []
    for _ in range(draw(st.integers(1, 5))):
        text = draw(st.sampled_from(notes()))
        start = draw(st.integers(0, len(text)))
        pieces.append(text[start : start + draw(st.integers(0, 300))])
        pieces.append(draw(st.sampled_from(WORDS)))
    return clean_text("".join(pieces))


ANY_NOTE = jumbles() | spliced() | st.text(max_size=300).map(clean_text)

STARTS = (
    *(
        b"",
        b"\xff\xfe",
        b"\xfe\xff",
        b"\xef\xbb\xbf",
        b"\xff\xfe\0\0",
        b"BM",
        b"MZ",
        b"RIFF",
        b"<",
        b"{",
        b"PK\x03\x04",
    ),
    *(
        b"\0\0\0\x18ftyp",
        b"%PDF-",
        b"{\\rtf1 ",
        b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1",
        b"GIF89a",
        b"II*\0",
        b"\x89PNG\r\n\x1a\n",
    ),
)
ANY_BYTES = st.tuples(st.sampled_from(STARTS), st.binary(max_size=300)).map(b"".join) | ANY_NOTE.flatmap(
    lambda text: st.sampled_from(["utf-8", "utf-16", "utf-16-be", "utf-32", "cp1252"]).map(
        lambda codec: text.encode(codec, "replace")
    )
)

RTF_PIECES = (
    *(
        "\\",
        "{",
        "}",
        "'",
        "*",
        ";",
        "-",
        "0",
        "9",
        "a",
        "b",
        "u",
        " ",
        "FDP repaired",
        "A2 vented",
        "\n",
        "\\u",
        "\\u-1 ?",
    ),
    *(
        "\\u99999999999 ?",
        "\\uc",
        "\\uc9 ",
        "\\bin",
        "\\bin9999999999 ",
        "\\bin3 abc",
        "\\'e9",
        "\\'zz",
        "\\v ",
        "\\v0 ",
    ),
    *("\\pict", "\\cell", "\\row", "\\deleted ", "\\par ", "\\strike ", "\\plain ", "\\object", "\\objdata 0105000002"),
    *("{\\*\\x ", '{\\field{\\*\\fldinst HYPERLINK "x"}{\\fldrslt ', "{\\fonttbl{\\f0 Arial;}}", "{\\info{\\title x}}"),
    *(
        "\\ansicpg1252 ",
        "\\ansicpg99999 ",
        "\\fcharset128 ",
        "\\f99 ",
        "{\\header h}",
        "\\tab ",
        "\\~",
        "\\_",
        "\\-",
        "\x00",
    ),
)
RTF = st.lists(st.sampled_from(RTF_PIECES), max_size=120).map(
    lambda codes: b"{\\rtf1" + "".join(codes).encode("cp1252", "replace") + b"}"
)

_W = "http://schemas.openxmlformats.org/wordprocessingml/2006/main"
_MC = "http://schemas.openxmlformats.org/markup-compatibility/2006"
TAGS = (
    *("w:p", "w:r", "w:t", "w:tbl", "w:tr", "w:tc", "w:sdt", "w:sdtContent", "w:ins", "w:del", "w:hyperlink", "w:br"),
    *(
        "w:tab",
        "w:noBreakHyphen",
        "w:pict",
        "w:txbxContent",
        "mc:AlternateContent",
        "mc:Choice",
        "mc:Fallback",
        "w:rPr",
    ),
    *(
        "w:vanish",
        "w:strike",
        "w:fldChar",
        "w:ffData",
        "w:checkBox",
        "w:default",
        "w:ddList",
        "w:listEntry",
        "w:result",
    ),
    *("w:sdtPr", "w:showingPlcHdr", "w:trPr", "w:delText", "w:sym", "w:smartTag", "w:moveFrom", "w:bdo", "w:sectPr"),
    *("w:headerReference", "w:footnoteReference", "w:titlePg", "w:object", "w:drawing", "w:unknown"),
)
_VALUES = st.sampled_from(
    ["0", "1", "false", "rId1", "rId99", "F0FE", "zz", "-1", "99999999999", "Wingdings", "", "even"]
)


@st.composite
def trees(draw: st.DrawFn, depth: int = 0) -> str:
    """Return a tree of WordprocessingML whose elements stand anywhere."""
    tag = draw(st.sampled_from(TAGS))
    name = draw(st.sampled_from(["", " w:val", " w:char", " w:font", " r:id", " w:type"]))
    attribute = f'{name}="{draw(_VALUES)}"' if name else ""
    inside = "" if depth > 4 else "".join(draw(st.lists(trees(depth + 1), max_size=2)))
    words = draw(st.sampled_from(["", "FDP repaired ", "A2", "&amp;", "\n"]))
    return f"<{tag}{attribute}>{words}{inside}</{tag}>"


@cache
def _plain_docx() -> bytes:
    import docx

    document = docx.Document()
    document.add_paragraph("FDP of the ring finger repaired.")
    document.sections[0].header.paragraphs[0].text = "Hand unit"
    stream = io.BytesIO()
    document.save(stream)
    return stream.getvalue()


def docx_with(tree: str) -> bytes:
    """Return a Word document with this tree for a body."""
    space = f'xmlns:w="{_W}" xmlns:mc="{_MC}"'
    space += ' xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"'
    body = f"<w:document {space}><w:body>{tree}</w:body></w:document>".encode()
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(_plain_docx())) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_STORED) as new:
        for part in old.namelist():
            new.writestr(part, body if part == "word/document.xml" else old.read(part))
    return out.getvalue()


PDF_PIECES = (
    *(b"BT ", b"ET ", b"/F1 11 Tf ", b"60 800 Td ", b"(FDP repaired) Tj ", b"<4644> Tj ", b"[(A2) -900 (vented)] TJ "),
    *(
        b"q ",
        b"Q ",
        b"/X0 Do ",
        b"1 0 0 1 0 0 cm ",
        b"0 0 0 0 0 0 cm ",
        b"99999999999 Tf ",
        b"-1e38 0 Td ",
        b"BI /W 9 ",
    ),
    *(
        b"ID abc EI ",
        b"/Tx BMC ",
        b"EMC ",
        b"W n ",
        b"0 0 9 9 re f ",
        b"[[[[ ",
        b">> ",
        b"<< ",
        b"\x00",
        b"(",
        b"((()",
        b"3 Tr ",
    ),
)
PDF_ENTRIES = (
    *(b"/Parent 2 0 R", b"/Parent 4 0 R", b"/MediaBox[0 0 595 842]", b"/MediaBox[0 0 1e9 1e9]", b"/MediaBox[9 9 0 0]"),
    *(b"/Resources 6 0 R", b"/Contents 5 0 R", b"/Contents[5 0 R 5 0 R 4 0 R]", b"/Annots[7 0 R 4 0 R]", b"/Rotate 45"),
    *(b"/Kids[4 0 R]", b"/Count 99999999", b"/Count -1", b"/UserUnit 1e9", b"/AA<</O 8 0 R>>", b"/Type/Pages"),
)


@st.composite
def pdfs(draw: st.DrawFn) -> bytes:
    """Return a PDF of one page with entries and drawing in any order, which may point at each other in circles."""
    entries = b"".join(draw(st.lists(st.sampled_from(PDF_ENTRIES), max_size=7)))
    drawing = b"".join(draw(st.lists(st.sampled_from(PDF_PIECES), max_size=40)))
    form = draw(
        st.sampled_from([b"/Fields[7 0 R]", b"/Fields[9 0 R]/XFA 5 0 R", b"/NeedAppearances true/Fields 7 0 R"])
    )
    kind = draw(
        st.sampled_from([b"/Tx/V(6)", b"/Btn/V/Yes/AS/Yes", b"/Ch/V(a)/Opt[(a)]", b"/Sig", b"/Tx/Parent 7 0 R"])
    )
    objects = [
        b"<</Type/Catalog/Pages 2 0 R/OpenAction 8 0 R/AcroForm<<%s>>>>" % form,
        b"<</Type/Pages/Kids[4 0 R]/Count 1>>",
        b"<</Type/Font/Subtype/Type1/BaseFont/Helvetica>>",
        b"<</Type/Page/Parent 2 0 R/Resources 6 0 R/Contents 5 0 R" + entries + b">>",
        b"<</Type/XObject/Subtype/Form/BBox[0 0 9 9]/Resources 6 0 R/Length %d>>stream\n%s\nendstream"
        % (len(drawing), drawing),
        b"<</Font<</F1 3 0 R>>/XObject<</X0 5 0 R>>>>",
        b"<</Type/Annot/Subtype/Widget/FT%s/T(n)/Rect[0 0 99 99]/P 4 0 R/AP<</N 5 0 R>>>>" % kind,
        b"<</S/JavaScript/JS(while\\(true\\){})/Next 8 0 R>>",
    ]
    out = bytearray(b"%PDF-1.7\n")
    offsets = []
    for number, content in enumerate(objects, 1):
        offsets.append(len(out))
        out += b"%d 0 obj\n%s\nendobj\n" % (number, content)
    table = len(out)
    out += b"xref\n0 %d\n0000000000 65535 f \n" % (len(objects) + 1)
    out += b"".join(b"%010d 00000 n \n" % offset for offset in offsets)
    previous = draw(st.sampled_from([b"", b"/Prev %d" % table, b"/Prev 99999999999", b"/XRefStm 9"]))
    out += b"trailer\n<</Size 9/Root 1 0 R%s>>\nstartxref\n%d\n%%%%EOF" % (previous, table)
    return _spoiled(draw, bytes(out)) if draw(st.booleans()) else bytes(out)


def _spoiled(draw: st.DrawFn, data: bytes) -> bytes:
    """Return the bytes with some changed, cut out or doubled."""
    out = bytearray(data)
    for _ in range(draw(st.integers(1, 6))):
        at = draw(st.integers(0, max(0, len(out) - 1)))
        how = draw(st.sampled_from(["change", "cut", "double"]))
        if how == "change":
            out[at : at + 1] = draw(st.binary(min_size=1, max_size=4))
        elif how == "cut":
            del out[at : at + draw(st.integers(1, 200))]
        else:
            out[at:at] = out[at : at + draw(st.integers(1, 200))]
    return bytes(out)


@cache
def _pictures() -> tuple[bytes, ...]:
    from PIL import Image

    page = Image.new("L", (24, 16), 200)
    made = []
    for kind in ("PNG", "JPEG", "TIFF", "BMP", "GIF", "WEBP"):
        stream = io.BytesIO()
        page.save(stream, kind)
        made.append(stream.getvalue())
    return tuple(made)


@st.composite
def pictures(draw: st.DrawFn) -> bytes:
    """Return a small picture of any kind, spoiled."""
    return _spoiled(draw, draw(st.sampled_from(_pictures())))


@st.composite
def documents(draw: st.DrawFn) -> bytes:
    """Return a Word document, spoiled as bytes or in its tree."""
    data = docx_with("".join(draw(st.lists(trees(), max_size=4))))
    return _spoiled(draw, data) if draw(st.integers(0, 3)) == 0 else data


@cache
def _records() -> list[str]:
    return [dump_record(read(text[:700], "n.txt"), indent=None) for text in notes()[::6]]


ODD_VALUES = st.sampled_from(
    [
        None,
        True,
        False,
        0,
        -1,
        1,
        4,
        2**63,
        10**40,
        1e308,
        -0.0,
        "",
        "4-0",
        "repaired",
        "<b>",
        "=1+2",
        "\ud800",
        [],
        {},
        [[]],
    ]
) | st.floats(allow_nan=True)


@st.composite
def changed_records(draw: st.DrawFn) -> str:
    """Return a record in JSON in which some values were replaced, doubled, moved or taken away."""
    raw = json.loads(draw(st.sampled_from(_records())))
    for _ in range(draw(st.integers(1, 4))):
        holder: Any = raw
        for _ in range(draw(st.integers(0, 9))):
            inner = list(holder.values()) if isinstance(holder, dict) else holder
            inside = [each for each in inner if isinstance(each, dict | list) and each]
            if not inside:
                break
            holder = inside[draw(st.integers(0, len(inside) - 1))]
        keys = list(holder) if isinstance(holder, dict) else list(range(len(holder)))
        key = draw(st.sampled_from(keys))
        how = draw(st.sampled_from(["value", "drop", "double", "number"]))
        if how == "value":
            holder[key] = draw(ODD_VALUES)
        elif how == "drop":
            del holder[key]
        elif how == "double" and isinstance(holder, list):
            holder.append(holder[key])
        elif isinstance(holder[key], int | float):
            holder[key] += draw(st.integers(-3, 3))
        if not holder:
            break
    return json.dumps(raw)


# Name of a target -> what checks a case, and what draws one.
TARGETS: dict[str, tuple[Any, st.SearchStrategy[Any]]] = {
    "bytes": (take_in, ANY_BYTES),
    "rtf": (take_in, RTF),
    "docx": (take_in, documents()),
    "pdf": (take_in_pdf, pdfs()),
    "image": (take_in, pictures()),
    "record": (open_record, changed_records()),
    "reading": (read_note_text, ANY_NOTE),
}
