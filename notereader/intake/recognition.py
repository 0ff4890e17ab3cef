"""Words of pictures, recognised by the Tesseract program where it is installed.

Tesseract gets each picture through a pipe and answers in its table form; no picture and no word is written to disk.
"""

import base64
import os
import shutil
import subprocess
import sys
import time
from collections.abc import Callable, Iterable, Iterator
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field

from notereader.intake import limits
from notereader.intake.child import no_window
from notereader.intake.cleaning import clean_text
from notereader.intake.note import IntakeRefused, WordConfidence
from notereader.intake.word_rows import Word, placed

HOW_TO_GET = (
    "Install Tesseract, a free program that recognises words in pictures (Debian or Ubuntu: 'sudo apt install "
    "tesseract-ocr'; macOS with Homebrew: 'brew install tesseract'; Windows: its installer, into the proposed folder), "
    "then read the file again. Or ask for the note as text."
)

# Where it is installed without being on the search path, as for programs started from a desktop.
_USUAL_PLACES = (
    "/usr/bin/tesseract",
    "/usr/local/bin/tesseract",
    "/opt/homebrew/bin/tesseract",
    r"C:\Program Files\Tesseract-OCR\tesseract.exe",
    r"C:\Program Files (x86)\Tesseract-OCR\tesseract.exe",
)
_WORD_LEVEL = "5"
_COLUMNS = 12


@dataclass
class RecognisedPage:
    """The text of one picture, and how sure each of its words is."""

    text: str = ""
    confidences: list[WordConfidence] = field(default_factory=list)


def find_tesseract() -> str | None:
    """Return the path of the Tesseract program, or None where it is not installed."""
    found = shutil.which("tesseract")
    return found or next((place for place in _USUAL_PLACES if os.access(place, os.X_OK)), None)


def recognise(program: str, picture_of: Callable[[int], str], numbers: list[int]) -> list[RecognisedPage]:
    """Recognise the words of the pages with these numbers, several at a time; return a page for each, in order.

    `picture_of` gives the picture of a page (PNG in base64). Raises IntakeRefused where there are too many pages,
    Tesseract lacks English, fails, or needs longer than the limits.
    """
    if len(numbers) > limits.MAX_SCANNED_PAGES:
        raise IntakeRefused(
            f"{len(numbers)} pages are pictures; at most {limits.MAX_SCANNED_PAGES} are recognised at once.",
            "Take out the pages of the operative note and read those alone.",
        )
    deadline = time.monotonic() + limits.RECOGNITION_SECONDS
    command = [program, "stdin", "stdout", "-l", "eng", "--dpi", "300", "--psm", _layout_option(program), "tsv"]

    def page(number: int) -> RecognisedPage:
        picture = base64.b64decode(picture_of(number))
        return page_from_table(
            _run(command, picture, min(limits.PAGE_RECOGNITION_SECONDS, deadline - time.monotonic()))
        )

    with ThreadPoolExecutor(max_workers=os.cpu_count() or 1) as pool:
        return list(pool.map(page, numbers))


def page_from_table(table: str) -> RecognisedPage:
    """Build a page from Tesseract's table: its words in the rows of the page, columns set apart by three spaces."""
    page = RecognisedPage()
    for before, word in placed(_words(table)):
        page.text += before
        start = len(page.text)
        page.text += word.text
        page.confidences.append(WordConfidence(start, len(page.text), round(word.confidence)))
    return page


def _words(table: str) -> Iterator[Word]:
    for row in table.splitlines():
        cells = row.split("\t", _COLUMNS - 1)
        if len(cells) < _COLUMNS or cells[0] != _WORD_LEVEL:
            continue
        text = clean_text(cells[-1]).strip()
        if text:
            left, top, width, height = map(int, cells[6:10])
            yield Word(tuple(cells[1:5]), left, top, width, height, float(cells[10]), text)


def _layout_option(program: str) -> str:
    """Return the page layout option: with the orientation data installed, pages lying on their side are turned too."""
    languages = _run([program, "--list-langs"], b"", limits.PAGE_RECOGNITION_SECONDS).split()
    if "eng" not in languages:
        raise IntakeRefused(
            "The picture cannot be recognised: Tesseract lacks its English language data.",
            "Install it (Debian or Ubuntu: 'sudo apt install tesseract-ocr-eng') and read the file again.",
        )
    return "1" if "osd" in languages else "3"


def _run(command: list[str], data: bytes, seconds: float) -> str:
    try:
        done = subprocess.run(
            command,
            input=data,
            capture_output=True,
            timeout=max(0.0, seconds),
            env=_environment(),
            creationflags=no_window(),
            check=True,
        )
    except subprocess.TimeoutExpired:
        raise IntakeRefused(
            "Recognising the words took too long.",
            "Scan the page again at 300 dots per inch in black and white, or read fewer pages at once.",
        ) from None
    except (OSError, subprocess.CalledProcessError) as fault:
        raise IntakeRefused(
            f"Tesseract could not recognise the picture{_reason(fault)}.",
            "Scan the page again, or ask for the note as text.",
        ) from None
    return done.stdout.decode("utf-8", "replace")


def _reason(fault: Exception) -> str:
    if isinstance(fault, subprocess.CalledProcessError):
        lines: Iterable[str] = fault.stderr.decode("utf-8", "replace").strip().splitlines()[-1:]
    else:
        lines = [str(fault)]
    return "".join(f" ({line[:120]})" for line in lines)


def _environment() -> dict[str, str]:
    """Return an environment for a program that is not ours: one thread for each page, and its own libraries."""
    environment = {**os.environ, "OMP_THREAD_LIMIT": "1"}
    if getattr(sys, "frozen", False):
        # A frozen program puts its own libraries first; it keeps what was there before under this name.
        original = environment.pop("LD_LIBRARY_PATH_ORIG", None)
        environment.pop("LD_LIBRARY_PATH", None)
        if original:
            environment["LD_LIBRARY_PATH"] = original
    return environment
