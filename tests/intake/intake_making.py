"""Real files of every kind, made for the tests of the intake. All notes are invented."""

import io
import struct
import zipfile

import docx
from docx.document import Document

NOTE = (
    "OPERATION NOTE\n"
    "Right index finger, zone II.\n"
    "The FDP was repaired with a four-strand core of 4-0 braided polyester.\n"
    "The A2 pulley was vented over 6 mm at 45° of flexion.\n"
)


def docx_bytes(document: Document) -> bytes:
    """Return a document of python-docx as the bytes of a file."""
    stream = io.BytesIO()
    document.save(stream)
    return stream.getvalue()


def simple_docx(text: str = NOTE) -> bytes:
    """Return a Word document with one paragraph for each line."""
    document = docx.Document()
    for line in text.splitlines():
        document.add_paragraph(line)
    return docx_bytes(document)


def zip_bytes(parts: dict[str, bytes]) -> bytes:
    """Return a zip archive of these parts."""
    stream = io.BytesIO()
    with zipfile.ZipFile(stream, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, content in parts.items():
            archive.writestr(name, content)
    return stream.getvalue()


def rtf_bytes(body: str, head: str = r"\ansi\ansicpg1252\deff0{\fonttbl{\f0\fswiss\fcharset0 Arial;}}") -> bytes:
    """Return a rich text document with this body in RTF's own codes."""
    return ("{\\rtf1" + head + "\n" + body + "}").encode("cp1252")


def stream_object(content: bytes, entries: bytes = b"") -> bytes:
    """Return a PDF stream object."""
    return b"<<%s/Length %d>>stream\n" % (entries, len(content)) + content + b"\nendstream"


def pdf_of_objects(objects: list[bytes], trailer: bytes = b"") -> bytes:
    """Return a PDF of these objects, numbered from 1; the first is the catalogue."""
    out = bytearray(b"%PDF-1.7\n")
    offsets = []
    for number, content in enumerate(objects, 1):
        offsets.append(len(out))
        out += b"%d 0 obj\n" % number + content + b"\nendobj\n"
    table = len(out)
    out += b"xref\n0 %d\n0000000000 65535 f \n" % (len(objects) + 1)
    for offset in offsets:
        out += b"%010d 00000 n \n" % offset
    out += b"trailer\n<</Size %d/Root 1 0 R%s>>\nstartxref\n%d\n%%%%EOF" % (len(objects) + 1, trailer, table)
    return bytes(out)


FONT = b"<</Type/Font/Subtype/Type1/BaseFont/Helvetica/Encoding/WinAnsiEncoding>>"


def text_content(text: str) -> bytes:
    """Return the drawing of lines of text from the top of an A4 page."""
    lines = b""
    for line in text.splitlines():
        escaped = line.replace("\\", "\\\\").replace("(", "\\(").replace(")", "\\)")
        lines += b"(" + escaped.encode("cp1252") + b") '\n"
    return b"BT /F1 11 Tf 60 800 Td 16 TL " + lines + b" ET"


def pdf_bytes(*pages: str, trailer: bytes = b"") -> bytes:
    """Return a PDF with a text layer: one page for each text, its lines below each other."""
    objects = [b"<</Type/Catalog/Pages 2 0 R>>", b"", FONT]
    kids = []
    for text in pages:
        number = len(objects) + 1
        kids.append(b"%d 0 R" % number)
        objects.append(
            b"<</Type/Page/Parent 2 0 R/MediaBox[0 0 595 842]/Resources<</Font<</F1 3 0 R>>>>/Contents %d 0 R>>"
            % (number + 1)
        )
        objects.append(stream_object(text_content(text)))
    objects[1] = b"<</Type/Pages/Kids[%s]/Count %d>>" % (b" ".join(kids), len(kids))
    return pdf_of_objects(objects, trailer)


def picture_pdf(
    text: str = "",
    *,
    pages_of_text: tuple[str, ...] = (),
    grey: bytes = b"\x80" * 16,
    size: tuple[int, int] = (4, 4),
) -> bytes:
    """Return a PDF whose first page is a picture of the whole page, with this text over it, then pages of text."""
    objects = [
        b"<</Type/Catalog/Pages 2 0 R>>",
        b"",
        FONT,
        b"<</Type/Page/Parent 2 0 R/MediaBox[0 0 595 842]"
        b"/Resources<</Font<</F1 3 0 R>>/XObject<</I 5 0 R>>>>/Contents 6 0 R>>",
        stream_object(
            grey,
            b"/Type/XObject/Subtype/Image/Width %d/Height %d/ColorSpace/DeviceGray/BitsPerComponent 8" % size,
        ),
        stream_object(b"q 595 0 0 842 0 0 cm /I Do Q " + text_content(text)),
    ]
    kids = [b"4 0 R"]
    for page in pages_of_text:
        number = len(objects) + 1
        kids.append(b"%d 0 R" % number)
        objects.append(
            b"<</Type/Page/Parent 2 0 R/MediaBox[0 0 595 842]/Resources<</Font<</F1 3 0 R>>>>/Contents %d 0 R>>"
            % (number + 1)
        )
        objects.append(stream_object(text_content(page)))
    objects[1] = b"<</Type/Pages/Kids[%s]/Count %d>>" % (b" ".join(kids), len(kids))
    return pdf_of_objects(objects)


def locked_pdf() -> bytes:
    """Return a PDF that no empty password opens: its key entries belong to none."""
    key = b"<" + b"5a" * 32 + b">"
    encrypt = b"/Encrypt<</Filter/Standard/V 1/R 2/O%s/U%s/P -4>>/ID[<00><00>]" % (key, key)
    return pdf_bytes(NOTE, trailer=encrypt)


def form_pdf(*, appearances: bool = False) -> bytes:
    """Return a PDF form: labels in the page; beside them a text field, a ticked box, an empty box, a hidden field.

    With `appearances`, fields carry their own drawing, the tick being a letter of a symbol font; else the viewer draws.
    """
    place = b"/P 3 0 R/DA(/Helv 10 Tf 0 g)"
    value = b"/AP<</N 12 0 R>>" if appearances else b""
    tick = b"/AP<</N<</Yes 13 0 R>>>>"
    labels = (
        b"BT /F1 10 Tf 60 703 Td (Core strands:) Tj 0 -40 Td (A2 vented:) Tj 0 -40 Td (A4 vented:) Tj "
        b"0 -40 Td (End of the form.) Tj ET"
    )
    return pdf_of_objects(
        [
            b"<</Type/Catalog/Pages 2 0 R/AcroForm<</Fields[6 0 R 7 0 R 8 0 R 9 0 R]%s"
            b"/DA(/Helv 10 Tf 0 g)/DR<</Font<</Helv 4 0 R/ZaDb 11 0 R>>>>>>>>"
            % (b"" if appearances else b"/NeedAppearances true"),
            b"<</Type/Pages/Kids[3 0 R]/Count 1>>",
            b"<</Type/Page/Parent 2 0 R/MediaBox[0 0 595 842]/Resources<</Font<</F1 4 0 R>>>>/Contents 5 0 R"
            b"/Annots[6 0 R 7 0 R 8 0 R 9 0 R]>>",
            FONT,
            stream_object(labels),
            b"<</Type/Annot/Subtype/Widget/FT/Tx/T(n)/V(6)/Rect[200 700 260 714]/F 4%s%s>>" % (place, value),
            b"<</Type/Annot/Subtype/Widget/FT/Btn/T(b)/V/Yes/AS/Yes/Rect[200 660 214 674]/F 4%s%s>>" % (place, tick),
            b"<</Type/Annot/Subtype/Widget/FT/Btn/T(c)/V/Off/AS/Off/Rect[200 620 214 634]/F 4%s%s>>" % (place, tick),
            b"<</Type/Annot/Subtype/Widget/FT/Tx/T(h)/V(secret)/Rect[200 600 260 614]/F 2%s>>" % place,
            b"<<>>",
            b"<</Type/Font/Subtype/Type1/BaseFont/ZapfDingbats>>",
            stream_object(
                b"/Tx BMC q BT /Helv 10 Tf 2 4 Td (6) Tj ET Q EMC",
                b"/Type/XObject/Subtype/Form/BBox[0 0 60 14]/Resources<</Font<</Helv 4 0 R>>>>",
            ),
            stream_object(
                b"q BT /ZaDb 10 Tf 2 3 Td (4) Tj ET Q",
                b"/Type/XObject/Subtype/Form/BBox[0 0 14 14]/Resources<</Font<</ZaDb 11 0 R>>>>",
            ),
        ]
    )


def ole_bytes(stream: str) -> bytes:
    """Return an OLE compound file (MS-CFB) of one sector of table and one of folder, holding one empty stream."""
    header = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + b"\x00" * 16
    header += struct.pack(
        "<HHHHH6xIIIIIIIIII", 0x3E, 3, 0xFFFE, 9, 6, 0, 1, 1, 0, 4096, 0xFFFFFFFE, 0, 0xFFFFFFFE, 0, 0
    )
    header += b"\xff" * (512 - len(header))
    table = struct.pack("<II", 0xFFFFFFFD, 0xFFFFFFFE) + b"\xff" * 504
    return header + table + _folder_entry("Root Entry", 5) + _folder_entry(stream, 2) + b"\x00" * 256


def _folder_entry(name: str, kind: int) -> bytes:
    encoded = name.encode("utf-16-le") + b"\x00\x00"
    entry = encoded.ljust(64, b"\x00") + struct.pack("<HBB", len(encoded), kind, 1) + b"\xff" * 12
    return entry.ljust(128, b"\x00")
