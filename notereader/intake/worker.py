"""The parsing process: takes one document on standard input, answers in JSON on standard output, and ends.

Only what is listed here is ever imported there, so that it starts fast.
"""

import json
import os
import sys
from collections.abc import Callable

from notereader.intake.note import IntakeRefused
from notereader.intake.parsed import Parsed

# The first argument that makes a program a parsing process.
PARSE_FLAG = "--parse-document"


def serve_if_asked() -> None:
    """Do the parsing and leave, where this process was started for it; else return at once.

    A frozen program has no Python to start, so it starts itself again: its entry point must call this before all else.
    """
    if len(sys.argv) == 4 and sys.argv[1] == PARSE_FLAG:
        sys.exit(_serve(sys.argv[2], int(sys.argv[3])))


def answer(task: str, data: bytes, page: int = 0) -> bytes:
    """Return the JSON for one document: what Parsed.to_json writes, or {"refused": [what, advice]}."""
    try:
        return _parser_of(task, page)(data).to_json()
    except IntakeRefused as refused:
        return _refusal(refused.what, refused.advice)
    except Exception:
        # The libraries were not made for hostile files: any fault of theirs means that the file is not sound.
        return _refusal(
            "The file is damaged: its content cannot be followed.",
            "Open it in the program it came from, save it again, or copy its text and paste it here.",
        )


def _parser_of(task: str, page: int) -> Callable[[bytes], Parsed]:
    """Return the parser of a task; each is imported only where it is used, for they are slow to load."""
    if task == "docx":
        from notereader.intake.docx_text import parse_docx

        return parse_docx
    if task == "rtf":
        from notereader.intake.rtf_text import parse_rtf

        return parse_rtf
    if task == "pdf":
        from notereader.intake.pdf_text import parse_pdf

        return parse_pdf
    from notereader.intake import page_pictures

    if task == "image":
        return page_pictures.parse_image
    picture_of = page_pictures.picture_from_pdf if task == "pdf-picture" else page_pictures.picture_from_image
    return lambda data: picture_of(data, page)


def _refusal(what: str, advice: str) -> bytes:
    return json.dumps({"refused": [what, advice]}).encode("ascii")


def _serve(task: str, page: int) -> int:
    # A library that prints must not write into the answer. File numbers, because a program without a console has no
    # sys.stdin and sys.stdout.
    out = os.dup(1)
    os.dup2(os.open(os.devnull, os.O_WRONLY), 1)
    with os.fdopen(0, "rb", closefd=False) as stream:
        data = stream.read()
    with os.fdopen(out, "wb") as stream:
        stream.write(answer(task, data, page))
    return 0
