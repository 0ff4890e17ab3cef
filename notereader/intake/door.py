"""The door: files, bytes, streams and pasted text come in; the text of a note or a refusal goes out."""

import stat
from pathlib import Path
from typing import BinaryIO

from notereader.intake.cleaning import clean_text
from notereader.intake.kinds import ending_warning, kind_of
from notereader.intake.limits import MAX_FILE_BYTES, MAX_RAW_TEXT_BYTES, refuse_long
from notereader.intake.note import IntakeRefused, Kind, NoteText, WordConfidence

_OTHER_FILE = "Choose the file that holds the operative note."


def read_file(path: str | Path) -> NoteText:
    """Read a note from a .txt, .docx, .rtf or .pdf file, or from a picture of it.

    Raises IntakeRefused with a sentence that says what is wrong, where, and what to do.
    """
    path = Path(path)
    try:
        data = _content(path)
    except IntakeRefused as refused:
        raise IntakeRefused(refused.what, refused.advice, str(path)) from None
    return read_bytes(data, path.name)


def read_stream(stream: BinaryIO, name: str = "standard input") -> NoteText:
    """Read a note from an open binary stream to its end, or until it is too long. Raises IntakeRefused."""
    return read_bytes(stream.read(MAX_FILE_BYTES + 1), name)


def read_bytes(data: bytes, name: str) -> NoteText:
    """Read a note from the content of a file; `name` is shown and its ending compared. Raises IntakeRefused."""
    try:
        return _read(data, name)
    except IntakeRefused as refused:
        raise IntakeRefused(refused.what, refused.advice, name) from None


def read_text(text: str, name: str = "pasted text") -> NoteText:
    """Take text that a person pasted or typed. Raises IntakeRefused where it is empty or too long."""
    try:
        return _accepted(clean_text(text), name, "txt", [], [])
    except IntakeRefused as refused:
        raise IntakeRefused(refused.what, refused.advice, name) from None


def _content(path: Path) -> bytes:
    try:
        about = path.stat()
        if stat.S_ISDIR(about.st_mode):
            raise IntakeRefused("This is a folder.", "Choose a file in it.")
        if not stat.S_ISREG(about.st_mode):
            # A device or pipe may never end.
            raise IntakeRefused("This is not an ordinary file.", "Copy the note to a file, or use standard input.")
        _refuse_large(about.st_size)
        with path.open("rb") as stream:
            return stream.read(MAX_FILE_BYTES + 1)
    except FileNotFoundError:
        raise IntakeRefused("There is no such file.", "Check the name and the folder.") from None
    except PermissionError:
        raise IntakeRefused(
            "You are not allowed to read this file.", "Ask its owner for leave, or copy the note's text and paste it."
        ) from None
    except OSError as fault:
        raise IntakeRefused(
            f"The file could not be read ({fault.strerror or fault}).",
            "Check that its drive is connected and try again, or copy the file to this computer.",
        ) from None
    except ValueError:
        raise IntakeRefused("This is no file name.", "Check the name and the folder.") from None


def _refuse_large(size: int) -> None:
    if size > MAX_FILE_BYTES:
        raise IntakeRefused(
            f"The file is too large for a note: more than {MAX_FILE_BYTES // 1_000_000} MB.", _OTHER_FILE
        )


def _read(data: bytes, name: str) -> NoteText:
    _refuse_large(len(data))
    if not data:
        raise IntakeRefused("The file is empty.", _OTHER_FILE)
    kind = kind_of(data)
    wrong_ending = ending_warning(name, kind)
    before = [wrong_ending] if wrong_ending else []
    if kind == "txt":
        return _plain(data, name, before)
    if kind == "docx" or kind == "rtf":
        from notereader.intake.child import parse_apart

        parsed = parse_apart(kind, data)
        return _accepted(clean_text(parsed.pages[0].text), name, kind, [*before, *parsed.warnings], [])
    from notereader.intake.paged import read_paged

    paged = read_paged(kind, data)
    return _accepted(paged.text, name, kind, [*before, *paged.warnings], paged.confidences)


def _plain(data: bytes, name: str, warnings: list[str]) -> NoteText:
    from notereader.intake.plain import decode, is_binary

    if len(data) > MAX_RAW_TEXT_BYTES:
        refuse_long(len(data), len(data))
    # Old systems fill their records up with zero bytes.
    decoded = decode(data.rstrip(b"\x00") if data.count(0) < len(data) // 4 else data)
    text = clean_text(decoded.text)
    if is_binary(text):
        raise IntakeRefused("This is not a text document: it holds characters that nobody types.", _OTHER_FILE)
    return _accepted(text, name, "txt", [*warnings, *decoded.warnings], [])


def _accepted(text: str, name: str, kind: Kind, warnings: list[str], confidences: list[WordConfidence]) -> NoteText:
    """Return the note where its text, already clean, is neither empty nor too long."""
    if not any(map(str.isalnum, text)):
        raise IntakeRefused("There is no text in it.", "Choose the file that holds the note, or paste its text.")
    refuse_long(len(text), len(text.encode("utf-8")))
    return NoteText(text, name, kind, warnings, confidences)
