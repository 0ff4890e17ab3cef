"""PDFs and pictures: their text layer where there is one, else their words recognised, page by page in order."""

from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Literal

from notereader.intake.child import Task, parse_apart
from notereader.intake.cleaning import clean_text
from notereader.intake.note import IntakeRefused, WordConfidence
from notereader.intake.parsed import Page, Parsed, name_pages
from notereader.intake.recognition import HOW_TO_GET, RecognisedPage, find_tesseract, recognise

# Below these, in percent, a word is a guess, and a page was hardly readable.
_GUESS = 60
_POOR_PAGE = 70


@dataclass
class PagedText:
    """Text made of pages, what a person should know of it, and how sure its recognised words are."""

    text: str = ""
    warnings: list[str] = field(default_factory=list)
    confidences: list[WordConfidence] = field(default_factory=list)


def read_paged(kind: Literal["pdf", "image"], data: bytes) -> PagedText:
    """Return the text of a PDF or an image file; pages that are pictures are recognised where Tesseract is installed.

    Raises IntakeRefused where nothing can be read without it.
    """
    parsed = parse_apart(kind, data)
    scanned = [number for number, page in enumerate(parsed.pages) if page.scanned]
    if not scanned:
        return _joined(parsed.pages, parsed.warnings)
    program = find_tesseract()
    if program is None:
        return _without_recognition(kind, parsed, scanned)
    task: Task = "pdf-picture" if kind == "pdf" else "image-picture"
    recognised = recognise(program, lambda number: parse_apart(task, data, number).picture, scanned)
    pages: list[Page | RecognisedPage] = list(parsed.pages)
    for number, page in zip(scanned, recognised, strict=True):
        # A stamp in characters is in the picture too; but where little was recognised, it may say more.
        if _letters(page.text) >= _letters(parsed.pages[number].text):
            pages[number] = page
    return _joined(pages, [*parsed.warnings, *_warnings(recognised)])


def _without_recognition(kind: Literal["pdf", "image"], parsed: Parsed, scanned: list[int]) -> PagedText:
    if kind == "image":
        raise IntakeRefused("This is a picture; its words have to be recognised first.", HOW_TO_GET)
    if len(scanned) == len(parsed.pages):
        raise IntakeRefused("The PDF is a scan: its pages are pictures without text.", HOW_TO_GET)
    not_read = f"{name_pages([n + 1 for n in scanned], 'a picture', 'pictures')}; words in pictures were not read."
    return _joined(parsed.pages, [*parsed.warnings, f"{not_read} {HOW_TO_GET}"])


def _joined(pages: Iterable[Page | RecognisedPage], warnings: list[str]) -> PagedText:
    """Set pages one below the other, with no empty line between: sentences run on over a page's end."""
    whole = PagedText(warnings=warnings)
    for page in pages:
        # Cleaned before it is added, so that the places of its recognised words hold.
        text = clean_text(page.text)
        if not text:
            continue
        if whole.text and not whole.text.endswith("\n"):
            whole.text += "\n"
        offset = len(whole.text)
        whole.text += text
        if isinstance(page, RecognisedPage):
            whole.confidences.extend(
                WordConfidence(start + offset, end + offset, sure) for start, end, sure in page.confidences
            )
    return whole


def _letters(text: str) -> int:
    return sum(map(str.isalnum, text))


def _warnings(pages: list[RecognisedPage]) -> list[str]:
    sure = [word.confidence for page in pages for word in page.confidences]
    if not sure:
        raise IntakeRefused(
            "No words could be recognised in the picture.",
            "Scan the page again at 300 dots per inch, or type the note.",
        )
    guesses = sum(confidence < _GUESS for confidence in sure)
    sentences = [
        "The words were recognised from a picture of the page: compare sizes, counts, digits and 'no' or 'not' with it."
        + (f" {guesses} of {len(sure)} words are little more than guesses." if guesses else "")
    ]
    if sum(sure) / len(sure) < _POOR_PAGE:
        sentences.append("The picture was hardly readable. Do not rely on this text; scan it again or type the note.")
    return sentences
