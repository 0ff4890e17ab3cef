"""Word documents, rich text and PDFs: every word a person sees in print, in the order of the page."""

import docx
import pytest
from docx.oxml import parse_xml
from docx.oxml.ns import nsdecls
from intake_making import NOTE, docx_bytes, form_pdf, pdf_bytes, picture_pdf, rtf_bytes, simple_docx

from notereader.intake import read_bytes

W14 = 'xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006"'


def docx_with(*blocks: str) -> bytes:
    """Return a Word document whose body begins with these paragraphs in WordprocessingML."""
    document = docx.Document()
    for at, block in enumerate(blocks):
        document.element.body.insert(at, parse_xml(f"<w:p {nsdecls('w')} {W14}>{block}</w:p>"))
    return docx_bytes(document)


def run(text: str, properties: str = "") -> str:
    """Return a run of text with these properties."""
    return f'<w:r><w:rPr>{properties}</w:rPr><w:t xml:space="preserve">{text}</w:t></w:r>'


def test_docx_keeps_headers_tables_and_text_in_order() -> None:
    document = docx.Document()
    document.add_heading("Operation note")
    document.add_paragraph("Before the table.")
    table = document.add_table(3, 2)
    table.cell(0, 0).text, table.cell(0, 1).text = "Digit", "ring"
    table.cell(1, 0).text, table.cell(1, 1).text = "Findings", "FDP cut\nFDS intact"
    inner = table.cell(2, 1).add_table(1, 2)
    inner.cell(0, 0).text, inner.cell(0, 1).text = "Zone", "II"
    document.add_paragraph("After\tthe table.")
    document.sections[0].header.paragraphs[0].text = "Hand unit"
    document.sections[0].footer.paragraphs[0].text = "Signed"
    note = read_bytes(docx_bytes(document), "note.docx")
    assert note.text == (
        "Hand unit\nOperation note\nBefore the table.\nDigit\tring\nFindings\nFDP cut\nFDS intact\n\tZone\tII\n"
        "After\tthe table.\nSigned"
    )
    assert (note.kind, note.warnings, note.confidences) == ("docx", [], [])


def test_docx_shows_a_header_of_several_sections_once_and_a_first_page_header_in_use() -> None:
    document = docx.Document()
    document.add_paragraph("FDP repaired.")
    document.add_section()
    first = document.sections[0]
    first.header.paragraphs[0].text = "Hand unit"
    first.first_page_header.paragraphs[0].text = "Page one"
    document.sections[1].header.paragraphs[0].text = "Hand unit"
    assert "Page one" not in read_bytes(docx_bytes(document), "n.docx").text
    first.different_first_page_header_footer = True
    assert read_bytes(docx_bytes(document), "n.docx").text.split("\n")[:3] == ["Page one", "Hand unit", "FDP repaired."]


@pytest.mark.parametrize(
    ("inside", "shown"),
    [
        (run("A2") + run(" ") + run("vented"), "A2 vented"),
        ("<w:r><w:t>4</w:t><w:noBreakHyphen/><w:t>0</w:t></w:r>", "4-0"),
        ("<w:r><w:t>one</w:t><w:br/><w:t>two</w:t><w:tab/><w:t>three</w:t></w:r>", "one\ntwo\tthree"),
        (f"<w:ins>{run('inserted')}</w:ins>", "inserted"),
        (f"<w:hyperlink>{run('linked')}</w:hyperlink>", "linked"),
        (f"<w:sdt><w:sdtPr/><w:sdtContent>{run('six-strand')}</w:sdtContent></w:sdt>", "six-strand"),
        ('<w:r><w:t>45</w:t><w:sym w:font="Symbol" w:char="F0B0"/></w:r>', "45°"),
        ('<w:r><w:sym w:font="Wingdings" w:char="F0FE"/><w:t> intact</w:t></w:r>', "☑ intact"),
        (
            '<w:r><w:fldChar w:fldCharType="begin"><w:ffData><w:checkBox><w:default w:val="0"/><w:checked/>'
            "</w:checkBox></w:ffData></w:fldChar><w:t> vented</w:t></w:r>",
            "☒ vented",
        ),
        (
            '<w:r><w:fldChar w:fldCharType="begin"><w:ffData><w:checkBox><w:default w:val="0"/></w:checkBox></w:ffData>'
            "</w:fldChar><w:t> vented</w:t></w:r>",
            "☐ vented",
        ),
        (
            '<w:r><w:fldChar w:fldCharType="begin"><w:ffData><w:ddList><w:result w:val="1"/>'
            '<w:listEntry w:val="nylon"/><w:listEntry w:val="polypropylene"/></w:ddList></w:ffData></w:fldChar></w:r>',
            "polypropylene",
        ),
        (
            "<w:r><mc:AlternateContent><mc:Choice Requires='x'><w:t>once</w:t></mc:Choice>"
            "<mc:Fallback><w:t>once</w:t></mc:Fallback></mc:AlternateContent></w:r>",
            "once",
        ),
        (
            "<w:r><w:pict><w:txbxContent><w:p><w:r><w:t>in a box</w:t></w:r></w:p></w:txbxContent></w:pict></w:r>"
            + run("beside"),
            "beside\nin a box",
        ),
    ],
)
def test_docx_inline_content(inside: str, shown: str) -> None:
    note = read_bytes(docx_with(inside), "note.docx")
    assert note.text.rstrip("\n") == shown
    assert note.warnings == []


@pytest.mark.parametrize(
    ("inside", "how"),
    [
        (f"<w:del><w:r><w:delText>A2 intact</w:delText></w:r></w:del>{run('A2 vented')}", "deleted"),
        (f"<w:moveFrom>{run('A2 intact')}</w:moveFrom>{run('A2 vented')}", "deleted"),
        (run("A2 intact", "<w:vanish/>") + run("A2 vented"), "hidden"),
        (run("A2 intact", "<w:strike/>") + run("A2 vented", '<w:strike w:val="0"/>'), "struck through"),
        (
            "<w:sdt><w:sdtPr><w:showingPlcHdr/></w:sdtPr><w:sdtContent>"
            + run("A2 intact")
            + "</w:sdtContent></w:sdt>"
            + run("A2 vented"),
            "prompts of unfilled fields",
        ),
    ],
)
def test_docx_leaves_out_what_nobody_says_and_tells(inside: str, how: str) -> None:
    note = read_bytes(docx_with(inside), "note.docx")
    assert note.text.rstrip("\n") == "A2 vented"
    assert note.warnings == [f"Words marked as {how} were left out of the note; compare with the original."]


def test_docx_symbols_of_unknown_fonts_are_shown_as_unknown() -> None:
    note = read_bytes(docx_with('<w:r><w:t>A</w:t><w:sym w:font="Odd" w:char="F041"/></w:r>'), "note.docx")
    assert note.text.rstrip("\n") == "A\ufffd"
    assert note.warnings == ["1 symbol of a special font is shown as \ufffd. Check the original."]


def test_rtf_gives_its_text() -> None:
    body = r"\pard OPERATION NOTE\par Ring FDP, 4\endash 0, 45\'b0, \u8220?free\u8221? glide\line next\par"
    note = read_bytes(rtf_bytes(body), "note.rtf")
    assert note.text == "OPERATION NOTE\nRing FDP, 4–0, 45°, “free” glide\nnext\n"
    assert (note.kind, note.warnings) == ("rtf", [])


def test_rtf_characters_beyond_the_first_plane_come_as_one() -> None:
    assert read_bytes(rtf_bytes(r"FDP \u-10179?\u-8704?"), "n.rtf").text == "FDP 😀"


def test_rtf_tables_are_set_apart_by_tabs() -> None:
    row = r"\trowd\cellx1000\cellx2000 Zone\cell II\cell\row "
    assert read_bytes(rtf_bytes(row + r"\pard After\par"), "n.rtf").text == "Zone\tII\nAfter\n"


def test_rtf_headers_are_read_and_pictures_are_not() -> None:
    body = r"{\header Hand unit\par}{\pict\wmetafile8 0100090000} FDP repaired"
    assert read_bytes(rtf_bytes(body), "n.rtf").text.split() == ["Hand", "unit", "FDP", "repaired"]


@pytest.mark.parametrize(
    ("mark", "how"),
    [("deleted", "deleted"), ("v", "hidden"), ("strike", "struck through"), ("striked1", "struck through")],
)
def test_rtf_leaves_out_what_nobody_says_and_tells(mark: str, how: str) -> None:
    note = read_bytes(rtf_bytes(rf"A2 {{\{mark} \'41 \u65?A2 intact}}vented, A4 \{mark} cut\plain  vented"), "n.rtf")
    assert note.text.split() == ["A2", "vented,", "A4", "vented"]
    assert note.warnings == [f"Words marked as {how} were left out of the note; compare with the original."]


def test_rtf_style_names_with_such_marks_are_no_reason_to_warn() -> None:
    note = read_bytes(
        rtf_bytes(r"{\stylesheet{\s1\strike Old text;}}{\*\listtext\v x}A2 vented, \strike0 free"), "n.rtf"
    )
    assert (note.text, note.warnings) == ("A2 vented, free", [])


@pytest.mark.parametrize(
    ("piece", "things"),
    [(r"{\shp{\*\shpinst{\shptxt A4 cut}}}", "text boxes"), (r"{\footnote A4 cut}", "footnotes")],
)
def test_rtf_says_what_it_did_not_read(piece: str, things: str) -> None:
    note = read_bytes(rtf_bytes("A2 vented" + piece), "n.rtf")
    assert note.text == "A2 vented"
    assert note.warnings == [f"The document has {things}; their text was not read. Check the original."]


def test_pdf_gives_its_pages_in_order_with_their_lines() -> None:
    note = read_bytes(pdf_bytes(NOTE, "Second page.\nThird line."), "note.pdf")
    assert note.text == NOTE + "Second page.\nThird line."
    assert (note.kind, note.warnings, note.confidences) == ("pdf", [], [])


def test_pdf_keeps_hyphens_and_line_ends_at_the_end_of_lines() -> None:
    text = "core of size 4-\n0 in a six-\nstrand\nrepair -\n- free"
    assert read_bytes(pdf_bytes(text), "n.pdf").text == text


def test_pdf_with_bytes_before_its_header_is_read() -> None:
    assert read_bytes(b"\r\n\r\n" + pdf_bytes(NOTE), "n.pdf").text == NOTE.rstrip("\n")


@pytest.mark.parametrize("appearances", [False, True])
def test_pdf_form_values_stand_beside_their_labels(appearances: bool) -> None:
    note = read_bytes(form_pdf(appearances=appearances), "form.pdf")
    assert note.text.split("\n") == ["Core strands: 6", "A2 vented: ☒", "A4 vented: ☐", "End of the form."]


def test_pdf_text_over_a_picture_of_the_page_is_doubted() -> None:
    note = read_bytes(picture_pdf(NOTE), "n.pdf")
    assert note.text == NOTE.rstrip("\n")
    assert note.warnings == [
        "Page 1 is a picture with text laid over: the words were probably recognised by a machine. "
        "Compare sizes, counts and digits with the original."
    ]


def test_pdf_of_another_library_is_read() -> None:
    matplotlib = pytest.importorskip("matplotlib")
    matplotlib.use("Agg")
    import io

    from matplotlib import pyplot

    with matplotlib.rc_context({"pdf.fonttype": 42}):
        figure = pyplot.figure(figsize=(8.3, 11.7))
        figure.text(0.1, 0.9, "Ring FDP, 45° – “free” 😀\nA2 vented")
        stream = io.BytesIO()
        figure.savefig(stream, format="pdf")
        pyplot.close(figure)
    assert read_bytes(stream.getvalue(), "n.pdf").text == "Ring FDP, 45° – “free” 😀\nA2 vented"


@pytest.mark.parametrize(
    ("data", "name", "warning"),
    [
        (NOTE.encode(), "n.docx", "The file's name ends in .docx, but it is plain text; it was read as that."),
        (
            simple_docx(),
            "n.PDF",
            "The file's name ends in .pdf, but it is a Word document (.docx); it was read as that.",
        ),
        (pdf_bytes(NOTE), "n.txt", "The file's name ends in .txt, but it is a PDF; it was read as that."),
        (
            rtf_bytes("FDP"),
            "n.jpg",
            "The file's name ends in .jpg, but it is a rich text document (.rtf); it was read as that.",
        ),
    ],
)
def test_a_wrong_ending_is_said(data: bytes, name: str, warning: str) -> None:
    assert read_bytes(data, name).warnings == [warning]


@pytest.mark.parametrize("name", ["n.txt", "n", "n.log", "clipboard", ".txt", "n.v2"])
def test_an_ending_that_says_no_other_kind_is_no_matter(name: str) -> None:
    assert read_bytes(NOTE.encode(), name).warnings == []


def test_rtf_in_a_file_named_doc_is_usual() -> None:
    assert read_bytes(rtf_bytes("FDP repaired"), "note.doc").warnings == []
