"""The text of a Word document in the order of its body. Runs in the parsing process only.

python-docx opens the package; its paragraphs leave out content controls, text boxes and tracked insertions, which
hospital templates are made of, so the tree itself is walked here (ECMA-376, part 1, section 17).
"""

import io
import zipfile
from collections.abc import Iterator
from typing import TYPE_CHECKING, Any

from notereader.intake.limits import MAX_PARTS, MAX_UNPACKED_BYTES, MAX_XML_BYTES
from notereader.intake.note import IntakeRefused
from notereader.intake.parsed import Page, Parsed, left_out_warnings

if TYPE_CHECKING:
    from docx.document import Document

_W = "{http://schemas.openxmlformats.org/wordprocessingml/2006/main}"
_MC = "{http://schemas.openxmlformats.org/markup-compatibility/2006}"
_RESAVE = "Open it in a word processor, save it as .docx, or copy its text and paste it here."

# What only wraps other content: it is opened, not read.
_WRAPPERS = {f"{_W}{name}" for name in ("sdtContent", "sdt", "customXml", "smartTag", "ins", "moveTo", "hyperlink")}
_WRAPPERS |= {f"{_W}{name}" for name in ("fldSimple", "dir", "bdo")}
_DELETED = {f"{_W}del", f"{_W}moveFrom"}
_SHAPES = {f"{_W}drawing", f"{_W}pict", f"{_W}object"}
_FIXED = {
    f"{_W}tab": "\t",
    f"{_W}br": "\n",
    f"{_W}cr": "\n",
    # Sizes are often typed with it; as a plain hyphen they read the same and search the same.
    f"{_W}noBreakHyphen": "-",
}
# Characters of the two symbol fonts that bear on a note: boxes and ticks, degrees and comparisons.
_SYMBOLS = {
    "wingdings": {0x6F: "☐", 0xA8: "☐", 0xFB: "✗", 0xFC: "✓", 0xFD: "☒", 0xFE: "☑"},
    "symbol": {0xA3: "≤", 0xB0: "°", 0xB1: "±", 0xB3: "≥", 0xB4: "×", 0x2D: "−", 0x6D: "μ"},
}


def parse_docx(data: bytes) -> Parsed:
    """Return headers, body with its tables and text boxes, notes and footers of a Word document as one page.

    Raises IntakeRefused for other zip archives, for one that would unpack beyond the limits, and for Word documents
    of another kind.
    """
    names = _check_archive(data)
    import docx

    try:
        document = docx.Document(io.BytesIO(data))
    except ValueError:
        raise IntakeRefused("This is a Word template or a document with macros.", _RESAVE) from None
    except KeyError:
        raise IntakeRefused("The Word document lacks its main part, or is of the 'strict' kind.", _RESAVE) from None
    walk = _Walk()
    before, after = _edges(document, walk)
    body = list(walk.blocks(document.element.body))
    lines = [*before, *body, *_notes(document, walk), *after]
    return Parsed([Page("\n".join(lines))], [*walk.warnings(), *_embedded_warning(names)])


def _check_archive(data: bytes) -> set[str]:
    """Return the names of the parts; refuse what is no Word document or would unpack beyond the limits.

    No part is unpacked for it.
    """
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            parts = archive.infolist()
            names = {part.filename for part in parts}
            _refuse_other_archives(names)
    except (zipfile.BadZipFile, NotImplementedError, EOFError):
        raise IntakeRefused("The document is damaged: its archive cannot be opened.", _RESAVE) from None
    if any(part.flag_bits & 1 for part in parts):
        raise IntakeRefused("The archive is protected by a password.", "Unpack it and read the note inside.")
    unpacked = sum(part.file_size for part in parts)
    trees = sum(part.file_size for part in parts if part.filename.lower().endswith((".xml", ".rels")))
    if len(parts) > MAX_PARTS or unpacked > MAX_UNPACKED_BYTES or trees > MAX_XML_BYTES:
        raise IntakeRefused(
            f"The document would unpack to {unpacked:,} bytes in {len(parts):,} parts, more than any note.",
            "If it is a real note, copy its text and paste it here; if you do not know where it came from, delete it.",
        )
    return names


def _embedded_warning(names: set[str]) -> list[str]:
    if not any(name.startswith("word/embeddings/") for name in names):
        return []
    return ["The document holds other files; what they say was not read. Check the original."]


def _refuse_other_archives(names: set[str]) -> None:
    if any(name.startswith("word/") for name in names):
        return
    if any(name.startswith("xl/") for name in names):
        raise IntakeRefused("This is a spreadsheet, not a note.", "Copy the note's text out of it and paste it here.")
    if any(name.startswith("ppt/") for name in names):
        raise IntakeRefused("These are slides, not a note.", "Copy the note's text out of them and paste it here.")
    if {"mimetype", "content.xml"} <= names:
        raise IntakeRefused("This is an OpenDocument file.", "Save it as .docx and read that.")
    raise IntakeRefused("This is a packed archive, not a note.", "Unpack it and read the note inside.")


def _edges(document: "Document", walk: "_Walk") -> tuple[list[str], list[str]]:
    """Return the lines of the headers and of the footers that show in print, each text once."""
    even = document.settings.odd_and_even_pages_header_footer
    headers: dict[str, None] = {}
    footers: dict[str, None] = {}
    for section in document.sections:
        first = section.different_first_page_header_footer
        shown = [
            (headers, section.first_page_header, first),
            (headers, section.header, True),
            (headers, section.even_page_header, even),
            (footers, section.first_page_footer, first),
            (footers, section.footer, True),
            (footers, section.even_page_footer, even),
        ]
        for texts, edge, in_use in shown:
            # Asking a linked edge for its content would make a new, empty one.
            if in_use and not edge.is_linked_to_previous:
                texts["\n".join(walk.blocks(edge.part.element)).strip("\n")] = None
    return [text for text in headers if text], [text for text in footers if text]


def _notes(document: "Document", walk: "_Walk") -> list[str]:
    from docx.oxml import parse_xml

    lines: list[str] = []
    for relation in document.part.rels.values():
        if not relation.is_external and relation.reltype.endswith(("/footnotes", "/endnotes")):
            for note in parse_xml(relation.target_part.blob):
                # The typed ones are the separator lines above the notes.
                if note.get(f"{_W}type") is None:
                    lines.extend(walk.blocks(note))
    return lines


class _Walk:
    """Goes through a document's tree and remembers what it left out."""

    def __init__(self) -> None:
        self._left_out: set[str] = set()
        self._unknown_symbols = 0

    def warnings(self) -> list[str]:
        """Return a sentence for each kind of text that is in the file but not in the note."""
        sentences = left_out_warnings(self._left_out)
        if self._unknown_symbols:
            number = self._unknown_symbols
            symbols = "1 symbol of a special font is" if number == 1 else f"{number} symbols of a special font are"
            sentences.append(f"{symbols} shown as \ufffd. Check the original.")
        return sentences

    def blocks(self, container: Any) -> Iterator[str]:
        """Yield the lines of a body, cell, header, note or text box."""
        for child in container:
            tag = child.tag
            if tag == f"{_W}p":
                yield from self._paragraph(child)
            elif tag == f"{_W}tbl":
                yield from self._table(child)
            elif self._is_prompt(child):
                continue
            elif tag in _WRAPPERS:
                yield from self.blocks(child)
            elif tag == f"{_MC}AlternateContent":
                yield from self.blocks(_chosen(child))

    def _table(self, table: Any) -> Iterator[str]:
        for row in _unwrapped(table, f"{_W}tr"):
            if row.find(f"{_W}trPr/{_W}del") is not None:
                self._leave_out("deleted", row)
                continue
            cells = ["\n".join(self.blocks(cell)).strip("\n") for cell in _unwrapped(row, f"{_W}tc")]
            if any("\n" in cell for cell in cells):
                yield "\n".join(cell for cell in cells if cell)
            else:
                yield "\t".join(cells).rstrip("\t")

    def _paragraph(self, paragraph: Any) -> Iterator[str]:
        boxes: list[Any] = []
        yield "".join(self._inline(paragraph, boxes))
        for box in boxes:
            yield from self.blocks(box)

    def _inline(self, parent: Any, boxes: list[Any]) -> Iterator[str]:
        for child in parent:
            tag = child.tag
            if tag == f"{_W}r":
                how = _not_shown(child)
                if how:
                    self._leave_out(how, child)
                else:
                    yield from self._run(child, boxes)
            elif self._is_prompt(child):
                continue
            elif tag in _WRAPPERS:
                yield from self._inline(child, boxes)
            elif tag in _DELETED:
                self._leave_out("deleted", child)
            elif tag == f"{_MC}AlternateContent":
                yield from self._inline(_chosen(child), boxes)

    def _run(self, run: Any, boxes: list[Any]) -> Iterator[str]:
        for child in run:
            tag = child.tag
            if tag == f"{_W}t":
                yield child.text or ""
            elif tag in _FIXED:
                yield _FIXED[tag]
            elif tag == f"{_W}sym":
                yield self._symbol(child)
            elif tag == f"{_W}fldChar":
                yield _form_field(child)
            elif tag in _SHAPES:
                boxes.extend(child.iter(f"{_W}txbxContent"))
            elif tag == f"{_MC}AlternateContent":
                yield from self._run(_chosen(child), boxes)

    def _symbol(self, symbol: Any) -> str:
        font = (symbol.get(f"{_W}font") or "").lower()
        try:
            code = int(symbol.get(f"{_W}char") or "", 16)
        except ValueError:
            code = 0
        # Symbol fonts are mapped into the private area from U+F000.
        shown = _SYMBOLS.get(font, {}).get(code - 0xF000 if code >= 0xF000 else code)
        if shown is None:
            self._unknown_symbols += 1
        return shown or "\ufffd"

    def _is_prompt(self, element: Any) -> bool:
        """Tell whether this is a field that nobody filled in and that shows what should be entered."""
        if element.find(f"{_W}sdtPr/{_W}showingPlcHdr") is None:
            return False
        self._leave_out("prompts of unfilled fields", element)
        return True

    def _leave_out(self, how: str, element: Any) -> None:
        if any((part.text or "").strip() for part in element.iter(f"{_W}t", f"{_W}delText")):
            self._left_out.add(how)


def _unwrapped(parent: Any, wanted: str) -> Iterator[Any]:
    for child in parent:
        if child.tag == wanted:
            yield child
        elif child.tag in _WRAPPERS:
            yield from _unwrapped(child, wanted)


def _chosen(alternate: Any) -> Any:
    """Return the first choice of alternate content; its fallback says the same once more, for older programs."""
    choice = alternate.find(f"{_MC}Choice")
    return choice if choice is not None else alternate.find(f"{_MC}Fallback")


def _not_shown(run: Any) -> str | None:
    """Tell whether a run is hidden or struck through: words that a reader of the print would not take as said."""
    for name, how in (("vanish", "hidden"), ("strike", "struck through"), ("dstrike", "struck through")):
        switch = run.find(f"{_W}rPr/{_W}{name}")
        if switch is not None and switch.get(f"{_W}val") not in ("0", "false", "off"):
            return how
    return None


def _form_field(mark: Any) -> str:
    """Return the box of a check box form field, or the chosen entry of a list; other fields carry their own text."""
    box = mark.find(f"{_W}ffData/{_W}checkBox")
    if box is not None:
        state = box.find(f"{_W}checked")
        if state is None:
            state = box.find(f"{_W}default")
        checked = state is not None and state.get(f"{_W}val") not in ("0", "false", "off")
        return "☒" if checked else "☐"
    choice = mark.find(f"{_W}ffData/{_W}ddList")
    if choice is None:
        return ""
    entries = [entry.get(f"{_W}val") or "" for entry in choice.findall(f"{_W}listEntry")]
    chosen = choice.find(f"{_W}result")
    if chosen is None:
        chosen = choice.find(f"{_W}default")
    number = (chosen.get(f"{_W}val") if chosen is not None else None) or "0"
    return entries[int(number)] if number.isdecimal() and int(number) < len(entries) else ""
