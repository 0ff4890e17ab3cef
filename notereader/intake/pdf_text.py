"""The text layer of a PDF, page by page. Runs in the parsing process only."""

import re
from contextlib import closing
from typing import Any, NamedTuple

from notereader.intake.limits import MAX_PAGES, refuse_long
from notereader.intake.note import IntakeRefused
from notereader.intake.parsed import Page, Parsed, name_pages

_PRINT_AGAIN = "Open it in a PDF viewer and print it to a new PDF, or copy its text and paste it here."

# pdfium puts one of these for a hyphen at a line's end and leaves the line's end out.
_LINE_END_HYPHEN = re.compile("[\x02\ufffe](?:\r?\n)?")
_NO_CHARACTER = re.compile("[\x00-\x08\x0e-\x1f\ufffd\ue000-\uf8ff]")
_GARBLED = 0.2  # share of the characters for which the file has no meaning

# A page with fewer letters than this and a picture on it is a scan; over a picture of the whole page there may be a
# few more, of a fax line or a stamp.
_FEW_LETTERS = 20
_STAMP_LETTERS = 80
_MOSTLY_PICTURE = 0.5
# Letters drawn as shapes leave this many shapes and no characters.
_MANY_SHAPES = 50
_DEEPEST = 3


class _PageRead(NamedTuple):
    """A page; whether a picture of it lies behind its text; whether annotations strike words out."""

    page: Page
    covered: bool = False
    struck: bool = False


class _Annotations(NamedTuple):
    """Whether fields or typed annotations add words to a page or strike words out, and its boxes to tick."""

    add: bool
    strike: bool
    boxes: list["_Piece"]


class _Piece(NamedTuple):
    """A run of text and its place on the page, in points from the lower left corner."""

    left: float
    bottom: float
    right: float
    top: float
    text: str

    @property
    def middle(self) -> float:
        return (self.bottom + self.top) / 2

    def lies_in(self, other: "_Piece") -> bool:
        """Tell whether the middle of this piece lies within another."""
        across = (self.left + self.right) / 2
        return other.left <= across <= other.right and other.bottom <= self.middle <= other.top


def parse_pdf(data: bytes) -> Parsed:
    """Return the text of each page with its lines kept; pages that are pictures come back marked as scanned.

    Filled form fields and typed annotations are part of the text, where they stand on the page. Raises IntakeRefused
    for files that need a password, are damaged or have too many pages.
    """
    pages: list[Page] = []
    covered: list[int] = []
    struck: list[int] = []
    size = 0
    with closing(open_pdf(data)) as document:
        for number in range(len(document)):
            read = _read_page(document, number)
            pages.append(read.page)
            if read.covered:
                covered.append(number + 1)
            if read.struck:
                struck.append(number + 1)
            size += len(read.page.text.encode("utf-8", "surrogatepass"))
            refuse_long(sum(len(page.text) for page in pages), size)
    return Parsed(pages, [*_covered_warning(covered), *_struck_warning(struck)])


def open_pdf(data: bytes) -> Any:
    """Return the pypdfium2 document; raises IntakeRefused where it cannot be opened or has too many pages."""
    import pypdfium2
    import pypdfium2.raw as pdfium

    try:
        document = pypdfium2.PdfDocument(data)
        number = len(document)
    except pypdfium2.PdfiumError as fault:
        if fault.err_code in (pdfium.FPDF_ERR_PASSWORD, pdfium.FPDF_ERR_SECURITY):
            raise IntakeRefused(
                "The PDF is protected by a password.",
                "Open it with its password and print it to a new PDF, or copy its text and paste it here.",
            ) from None
        raise IntakeRefused("The PDF is damaged and cannot be opened.", _PRINT_AGAIN) from None
    if number > MAX_PAGES:
        raise IntakeRefused(
            f"The PDF has {number:,} pages; the limit is {MAX_PAGES}.",
            "Print the pages of the operative note to a PDF of their own and read that.",
        )
    if number <= 0:
        raise IntakeRefused("The PDF has no pages.", _PRINT_AGAIN)
    if document.get_formtype() == pdfium.FORMTYPE_XFA_FULL:
        raise IntakeRefused("The PDF is a form of the XFA kind, whose text cannot be read.", _PRINT_AGAIN)
    # Before any page is loaded, or the values of form fields would not be drawn.
    document.init_forms()
    return document


def _covered_warning(numbers: list[int]) -> list[str]:
    if not numbers:
        return []
    return [
        f"{name_pages(numbers, 'a picture', 'pictures')} with text laid over: the words were probably recognised by a "
        "machine. Compare sizes, counts and digits with the original."
    ]


def _struck_warning(numbers: list[int]) -> list[str]:
    if not numbers:
        return []
    marked = name_pages(numbers, "marked", "marked")
    return [f"{marked} with words struck out, which are still in the text. Compare with the original."]


def _read_page(document: Any, number: int) -> "_PageRead":
    import pypdfium2

    try:
        page = document[number]
        annotations = _annotations(document, page)
        if annotations.add:
            # Flattening draws fields and typed annotations into the page; it has to be loaded again to show them.
            pypdfium2.raw.FPDFPage_Flatten(page, pypdfium2.raw.FLAT_NORMALDISPLAY)
            page = document[number]
        text_page = page.get_textpage()
    except pypdfium2.PdfiumError:
        raise IntakeRefused(f"Page {number + 1} of the PDF is damaged.", _PRINT_AGAIN) from None
    text = _by_place(text_page, annotations.boxes) if annotations.add else text_page.get_text_range()
    text = _LINE_END_HYPHEN.sub("-\n", text).replace("\r\n", "\n")
    letters = sum(map(str.isalnum, text))
    if len(_NO_CHARACTER.findall(text)) > _GARBLED * len(text):
        return _PageRead(Page("", scanned=True), struck=annotations.strike)
    drawn, covered = _drawn(page)
    if drawn and letters < (_STAMP_LETTERS if covered else _FEW_LETTERS):
        return _PageRead(Page(text, scanned=True), struck=annotations.strike)
    return _PageRead(Page(text), covered, annotations.strike)


def _annotations(document: Any, page: Any) -> _Annotations:
    import pypdfium2.raw as pdfium

    kinds = set()
    boxes = []
    for index in range(pdfium.FPDFPage_GetAnnotCount(page)):
        annotation = pdfium.FPDFPage_GetAnnot(page, index)
        if not annotation:
            continue
        kind = pdfium.FPDFAnnot_GetSubtype(annotation)
        kinds.add(kind)
        if kind == pdfium.FPDF_ANNOT_WIDGET and document.formenv:
            boxes.extend(_box_to_tick(document.formenv, annotation))
        pdfium.FPDFPage_CloseAnnot(annotation)
    adds = kinds & {pdfium.FPDF_ANNOT_WIDGET, pdfium.FPDF_ANNOT_FREETEXT, pdfium.FPDF_ANNOT_STAMP}
    return _Annotations(bool(adds), pdfium.FPDF_ANNOT_STRIKEOUT in kinds, boxes)


def _box_to_tick(form: Any, annotation: Any) -> list[_Piece]:
    """Return the state of a check box or radio button as a character; its drawing may be shapes without any."""
    import pypdfium2.raw as pdfium

    kind = pdfium.FPDFAnnot_GetFormFieldType(form, annotation)
    hidden = pdfium.FPDFAnnot_GetFlags(annotation) & (pdfium.FPDF_ANNOT_FLAG_HIDDEN | pdfium.FPDF_ANNOT_FLAG_NOVIEW)
    place = pdfium.FS_RECTF()
    if kind not in (pdfium.FPDF_FORMFIELD_CHECKBOX, pdfium.FPDF_FORMFIELD_RADIOBUTTON) or hidden:
        return []
    if not pdfium.FPDFAnnot_GetRect(annotation, place):
        return []
    ticked = pdfium.FPDFAnnot_IsChecked(form, annotation)
    return [_Piece(place.left, place.bottom, place.right, place.top, "☒" if ticked else "☐")]


def _by_place(text_page: Any, boxes: list[_Piece]) -> str:
    """Return the text in the order of its place on the page, so that a field's value stands beside its label.

    The file keeps field values behind all other text. Pieces whose middles lie within each other's height are one line.
    """
    pieces = list(boxes)
    for index in range(text_page.count_rects()):
        left, bottom, right, top = text_page.get_rect(index)
        piece = _Piece(left, bottom, right, top, text_page.get_text_bounded(left, bottom, right, top).strip())
        # The tick itself, where it is drawn as a character, would come beside the box.
        if piece.text and not any(piece.lies_in(box) for box in boxes):
            pieces.append(piece)
    lines: list[list[_Piece]] = []
    for piece in sorted(pieces, key=lambda piece: -piece.middle):
        if lines and lines[-1][0].bottom <= piece.middle <= lines[-1][0].top:
            lines[-1].append(piece)
        else:
            lines.append([piece])
    return "\n".join(" ".join(piece.text for piece in sorted(line)) for line in lines)


def _drawn(page: Any) -> tuple[bool, bool]:
    """Tell whether a page shows pictures or many shapes, and whether pictures cover most of it."""
    import pypdfium2.raw as pdfium

    width, height = page.get_size()
    area = 0.0
    pictures = shapes = 0
    for thing in page.get_objects(max_depth=_DEEPEST):
        if thing.type == pdfium.FPDF_PAGEOBJ_IMAGE:
            pictures += 1
            left, bottom, right, top = thing.get_bounds()
            area += max(0.0, right - left) * max(0.0, top - bottom)
        elif thing.type in (pdfium.FPDF_PAGEOBJ_PATH, pdfium.FPDF_PAGEOBJ_SHADING):
            shapes += 1
    return bool(pictures) or shapes >= _MANY_SHAPES, area > _MOSTLY_PICTURE * width * height
