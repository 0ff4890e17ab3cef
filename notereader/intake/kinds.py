"""What a file is, told by its first bytes and not by the ending of its name."""

import re

from notereader.intake.note import IntakeRefused, Kind

_PASTE = "Open it in the program it came from, copy the note's text and paste it here."
_WEB_PAGE = re.compile(rb"\s*<(?:!doctype\s+html|html)\b", re.IGNORECASE)
_XML = re.compile(rb"\s*<\?xml\b")
_OUR_RECORD = re.compile(rb'\s*\{\s*"format"\s*:\s*"notereader-record"')

# A PDF may have other bytes before its header (ISO 32000-1, annex H.3.4.1: within the first 1024).
_PDF_HEADER_WITHIN = 1024

OLE = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"
_ZIPS = (b"PK\x03\x04", b"PK\x05\x06", b"PK\x07\x08")

_PICTURES = (b"\x89PNG\r\n\x1a\n", b"\xff\xd8\xff", b"II*\x00", b"MM\x00*", b"GIF87a", b"GIF89a")

_SOUND = ("This is a sound recording, not a text.", "Have the dictation typed and read the typed note.")
_PROGRAM = ("This is a program, not a note.", "Choose the file that holds the note.")
_ARCHIVE = ("This is a packed archive, not a note.", "Unpack it and read the note inside.")
_DATABASE = ("This is a database, not a note.", "Choose the file that holds the note.")
_FILM = ("This is a film, not a note.", "Choose the file that holds the note.")

# First bytes -> what to say. Only signatures that no typed text begins with.
_OTHERS: tuple[tuple[bytes, tuple[str, str]], ...] = (
    (b"\x7fELF", _PROGRAM),
    (b"\xcf\xfa\xed\xfe", _PROGRAM),
    (b"\xce\xfa\xed\xfe", _PROGRAM),
    (b"\xca\xfe\xba\xbe", _PROGRAM),
    (b"\x1f\x8b", _ARCHIVE),
    (b"7z\xbc\xaf\x27\x1c", _ARCHIVE),
    (b"Rar!\x1a\x07", _ARCHIVE),
    (b"\xfd7zXZ\x00", _ARCHIVE),
    (b"BZh91AY&SY", _ARCHIVE),
    (b"SQLite format 3\x00", _DATABASE),
    (b"ID3\x03", _SOUND),
    (b"ID3\x04", _SOUND),
    (b"OggS\x00", _SOUND),
    (b"fLaC\x00", _SOUND),
    (b"\x1aE\xdf\xa3", _FILM),
)

# The names of streams inside an OLE file are UTF-16. The first that is found decides.
_OLE_STREAMS: tuple[tuple[str, tuple[str, str]], ...] = (
    (
        "EncryptedPackage",
        (
            "The document is protected by a password.",
            "Open it with its password, save a copy without one (or copy its text and paste it here).",
        ),
    ),
    ("WordDocument", ("This is a Word document of the old .doc kind.", "Save it as .docx in Word and read that.")),
    ("Workbook", ("This is a spreadsheet, not a note.", _PASTE)),
    ("PowerPoint Document", ("These are slides, not a note.", _PASTE)),
    ("__substg1.0_", ("This is a saved e-mail, not a note.", _PASTE)),
)

_ENDINGS: dict[str, Kind] = {
    ".txt": "txt",
    ".text": "txt",
    ".docx": "docx",
    ".rtf": "rtf",
    ".pdf": "pdf",
    ".png": "image",
    ".jpg": "image",
    ".jpeg": "image",
    ".tif": "image",
    ".tiff": "image",
    ".bmp": "image",
    ".gif": "image",
    ".webp": "image",
}
_KIND_WORDS: dict[Kind, str] = {
    "txt": "plain text",
    "docx": "a Word document (.docx)",
    "rtf": "a rich text document (.rtf)",
    "pdf": "a PDF",
    "image": "a picture",
}


def kind_of(data: bytes) -> Kind:
    """Return what the content is; a zip archive counts as 'docx' until its parts have been looked at.

    Raises IntakeRefused for content that is certainly no note. 'txt' means that nothing else was recognised.
    """
    for signature, (what, advice) in _OTHERS:
        if data.startswith(signature):
            raise IntakeRefused(what, advice)
    if data.startswith(OLE):
        raise _refused_ole(data)
    if data.startswith(_ZIPS):
        return "docx"
    if _is_pdf(data):
        return "pdf"
    if data[:64].lstrip(b"\xef\xbb\xbf \t\r\n").startswith(b"{\\rtf"):
        return "rtf"
    if _is_picture(data):
        return "image"
    _refuse_media(data)
    _refuse_marked_up(data[:1024].removeprefix(b"\xef\xbb\xbf"))
    return "txt"


def ending_warning(name: str, kind: Kind) -> str | None:
    """Return a sentence where the file's ending says another kind than its content, or None."""
    ending = re.search(r"\.[^.]*\Z", name.lower())
    said = _ENDINGS.get(ending.group()) if ending else None
    if ending is None or said is None or said == kind:
        return None
    return f"The file's name ends in {ending.group()}, but it is {_KIND_WORDS[kind]}; it was read as that."


def _is_pdf(data: bytes) -> bool:
    at = data[:_PDF_HEADER_WITHIN].find(b"%PDF-")
    # A typed text may mention the header; only a PDF also has the words that end it.
    return at == 0 or (at > 0 and b"startxref" in data[at:])


def _is_picture(data: bytes) -> bool:
    if data.startswith(_PICTURES):
        return True
    # A bitmap's two letters may begin a word, its four reserved zero bytes may not.
    if data.startswith(b"BM") and data[6:10] == b"\x00" * 4:
        return True
    return data.startswith(b"RIFF") and data[8:12] == b"WEBP"


def _refuse_media(data: bytes) -> None:
    if data[4:8] == b"ftyp":
        if data[8:12] in (b"heic", b"heix", b"mif1", b"avif"):
            raise IntakeRefused("This kind of picture cannot be opened.", "Save it as PNG or JPEG and read that.")
        raise IntakeRefused(*(_SOUND if data[8:11] == b"M4A" else _FILM))
    if data.startswith(b"RIFF") and data[8:12] in (b"WAVE", b"AVI "):
        raise IntakeRefused(*(_SOUND if data[8:12] == b"WAVE" else _FILM))
    if data.startswith(b"MZ") and b"\x00" in data[:64]:
        raise IntakeRefused(*_PROGRAM)


def _refuse_marked_up(head: bytes) -> None:
    if _WEB_PAGE.match(head):
        raise IntakeRefused("This is a web page, not a plain note.", _PASTE)
    if _XML.match(head):
        raise IntakeRefused("This is an XML file, not a plain note.", _PASTE)
    if _OUR_RECORD.match(head):
        raise IntakeRefused("This is a record made by notereader, not a note.", "Open it as a record.")


def _refused_ole(data: bytes) -> IntakeRefused:
    for stream, (what, advice) in _OLE_STREAMS:
        if stream.encode("utf-16-le") in data:
            return IntakeRefused(what, advice)
    return IntakeRefused("This is an office file of an old kind that cannot be read.", "Save it as .docx or PDF.")
