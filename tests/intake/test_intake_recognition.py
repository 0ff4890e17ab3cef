"""Scanned notes: pages that we print, spoil and scan ourselves come back as text with a confidence for each word."""

import difflib
import random
import shutil

import pytest
from intake_making import pdf_bytes, picture_pdf
from intake_scanning import DPI, FAX_DPI, image_bytes, printed, scanned, scanned_pdf
from PIL import Image

from notereader.intake import IntakeRefused, NoteText, clean_text, limits, read_bytes
from notereader.intake.page_pictures import picture_from_image, straightened, tilt
from notereader.intake.recognition import find_tesseract, page_from_table, recognise

NOTE = """OPERATION NOTE

Side: right      Digit: small finger      Zone: II
Under general anaesthesia the finger was explored through a Bruner incision.
The FDP was completely divided. The FDS was intact.
The A2 pulley was vented over its distal 5 mm. The A4 pulley was preserved.
The FDP was repaired with a four-strand core suture of 4-0 braided polyester,
taking 9 mm of tendon on each side, and a running 6-0 polypropylene suture.
There was no gap on traction and the tendon did not catch.
Dorsal blocking splint with the wrist in 20 degrees of extension."""

needs_tesseract = pytest.mark.skipif(shutil.which("tesseract") is None, reason="Tesseract is not installed")


def words_found(note: NoteText, text: str = NOTE) -> float:
    """Return the share of the words of a text that were recognised, in order."""
    wanted, found = text.split(), note.text.split()
    blocks = difflib.SequenceMatcher(None, wanted, found, autojunk=False).get_matching_blocks()
    return sum(block.size for block in blocks) / len(wanted)


def check_confidences(note: NoteText) -> None:
    """Every word has a confidence, at its place."""
    assert note.recognised
    assert clean_text(note.text) == note.text
    assert [note.text[start:end] for start, end, _ in note.confidences] == note.text.split()
    assert all(0 <= confidence <= 100 for _, _, confidence in note.confidences)


@pytest.fixture(scope="module")
def scans() -> dict[str, NoteText]:
    """The same page in three qualities, recognised."""
    page = printed(NOTE)
    return {
        "good": read_bytes(image_bytes(scanned(page, "good")), "scan.png"),
        "fair": read_bytes(image_bytes(scanned(page, "fair"), "JPEG"), "copy.jpg"),
        "poor": read_bytes(image_bytes(scanned(page, "poor"), "TIFF", FAX_DPI, compression="group4"), "fax.tif"),
    }


@needs_tesseract
@pytest.mark.parametrize(("quality", "at_least"), [("good", 0.97), ("fair", 0.97), ("poor", 0.8)])
def test_a_scan_is_read(scans: dict[str, NoteText], quality: str, at_least: float) -> None:
    note = scans[quality]
    assert words_found(note) >= at_least
    assert note.kind == "image"
    assert note.warnings[0].startswith("The words were recognised from a picture of the page: compare sizes")
    check_confidences(note)


@needs_tesseract
def test_worse_scans_are_less_sure(scans: dict[str, NoteText]) -> None:
    def sureness(note: NoteText) -> float:
        return sum(confidence for *_, confidence in note.confidences) / len(note.confidences)

    assert sureness(scans["good"]) > sureness(scans["poor"])


@needs_tesseract
def test_lines_stay_lines(scans: dict[str, NoteText]) -> None:
    found = [line for line in scans["good"].text.split("\n") if line]
    assert len(found) == sum(bool(line) for line in NOTE.split("\n"))
    assert [line[:12] for line in found] == [line[:12] for line in NOTE.split("\n") if line]


@needs_tesseract
@pytest.mark.parametrize("turned", [90, 180, 270])
def test_a_page_lying_on_its_side_is_turned(turned: int) -> None:
    page = printed(NOTE).rotate(turned, expand=True)
    assert words_found(read_bytes(image_bytes(page), "scan.png")) >= 0.97


@needs_tesseract
def test_the_pages_of_a_scanned_pdf_come_in_order() -> None:
    note = read_bytes(scanned_pdf(printed("First page: FDP."), printed("Second page: FDS.")), "scan.pdf")
    assert note.text.split("\n") == ["First page: FDP.", "Second page: FDS."]
    assert note.kind == "pdf"
    check_confidences(note)


@needs_tesseract
def test_the_pages_of_a_fax_in_tiff_come_in_order() -> None:
    first, second = printed("First page: FDP.").convert("1"), printed("Second page: FDS.").convert("1")
    note = read_bytes(image_bytes(first, "TIFF", save_all=True, append_images=[second]), "fax.tif")
    assert note.text.split("\n") == ["First page: FDP.", "Second page: FDS."]
    check_confidences(note)


@needs_tesseract
def test_a_pdf_with_text_and_a_scanned_page_gives_both_and_confidences_only_for_the_scan() -> None:
    grey = printed("Scanned page: FDP repaired.").resize((1240, 1754)).convert("L")
    data = picture_pdf(pages_of_text=("Typed page: A2 vented over 5 mm.",), grey=grey.tobytes(), size=grey.size)
    note = read_bytes(data, "n.pdf")
    assert note.text.split("\n") == ["Scanned page: FDP repaired.", "Typed page: A2 vented over 5 mm."]
    assert [note.text[start:end] for start, end, _ in note.confidences] == ["Scanned", "page:", "FDP", "repaired."]


@needs_tesseract
def test_a_phone_picture_is_turned_by_its_own_mark() -> None:
    page = printed(NOTE).rotate(90, expand=True)
    exif = Image.Exif()
    exif[0x0112] = 6  # Exif 2.32, Orientation: the picture has to be turned a quarter to the right
    assert words_found(read_bytes(image_bytes(page, "JPEG", exif=exif), "p.jpg")) >= 0.97


@needs_tesseract
def test_a_see_through_picture_shows_the_paper() -> None:
    page = printed(NOTE)
    clear = Image.new("RGBA", page.size, (0, 0, 0, 0))
    clear.putalpha(page.point([255 - value for value in range(256)]))
    assert words_found(read_bytes(image_bytes(clear), "s.png")) >= 0.97


@needs_tesseract
def test_a_blank_picture_is_refused() -> None:
    with pytest.raises(IntakeRefused) as refused:
        read_bytes(image_bytes(Image.new("L", (800, 1100), 255)), "blank.png")
    assert str(refused.value) == (
        "blank.png: No words could be recognised in the picture. "
        "Scan the page again at 300 dots per inch, or type the note."
    )


@needs_tesseract
def test_a_page_full_of_specks_is_read_within_the_limits() -> None:
    page = printed(NOTE)
    dots = Image.frombytes("L", page.size, random.Random(1).randbytes(page.width * page.height))
    page.paste(0, mask=dots.point([255 * (value < 25) for value in range(256)]))
    # With its specks on it, nothing is recognised on this page; other such pages take minutes.
    assert words_found(read_bytes(image_bytes(page.convert("1")), "specks.png")) >= 0.9


@pytest.mark.parametrize("side", [9_000, 30_000])
def test_too_large_a_picture_is_refused(side: int) -> None:
    with pytest.raises(IntakeRefused, match=r"The picture is too large\. Scan the page again at 300 dots per inch\."):
        picture_from_image(image_bytes(Image.new("1", (side, side))), 0)


def test_a_damaged_picture_is_refused() -> None:
    with pytest.raises(IntakeRefused, match=r"The picture is damaged and cannot be opened\. Scan the page again\."):
        read_bytes(b"\x89PNG\r\n\x1a\n and no more", "p.png")


@pytest.mark.parametrize("angle", [-7.0, -2.6, -0.5, 0.0, 1.3, 4.0])
def test_the_tilt_of_a_page_is_found_and_mended(angle: float) -> None:
    page = printed(NOTE).rotate(angle, Image.Resampling.BICUBIC, fillcolor=255)
    assert tilt(page) == pytest.approx(angle, abs=0.2)
    assert tilt(straightened(page)) == pytest.approx(0, abs=0.2)


# What stands in Tesseract's table: block, paragraph, line, word, left, top, confidence, text.
Cell = tuple[int, int, int, int, int, int, float, str]


def table(*rows: Cell) -> str:
    """Return Tesseract's table form of words in letters of 10 by 20 dots."""
    head = "level\tpage_num\tblock_num\tpar_num\tline_num\tword_num\tleft\ttop\twidth\theight\tconf\ttext"
    lines = [
        f"5\t1\t{b}\t{p}\t{li}\t{w}\t{left}\t{top}\t{10 * len(text)}\t20\t{conf}\t{text}"
        for b, p, li, w, left, top, conf, text in rows
    ]
    return "\n".join([head, "4\t1\t1\t1\t1\t0\t0\t0\t9\t9\t-1\t", *lines])


def block(number: int, left: int, top: int, *lines: str) -> list[Cell]:
    """Return the words of a block of lines 40 dots apart, a space being as wide as a letter."""
    cells: list[Cell] = []
    for row, line in enumerate(lines):
        at = left
        for word_number, word in enumerate(line.split(" "), 1):
            if word:
                cells.append((number, 1, row + 1, word_number, at, top + 40 * row, 90, word))
            at += 10 * (len(word) + 1)
    return cells


def test_the_table_becomes_lines_and_confidences() -> None:
    rows: list[Cell] = [
        (1, 1, 1, 1, 0, 0, 96.4, "FDP"),
        (1, 1, 1, 2, 40, 2, 41.6, "cut"),
        (1, 1, 2, 1, 0, 40, 90, " "),
        (1, 2, 1, 1, 0, 40, 8, "A2"),
        (1, 2, 2, 1, 0, 80, 8, "vented"),
        (2, 1, 1, 1, 0, 160, 99, "4-0"),
    ]
    page = page_from_table(table(*rows))
    assert page.text == "FDP cut\nA2\nvented\n\n4-0"
    assert page.confidences == [(0, 3, 96), (4, 7, 42), (8, 10, 8), (11, 17, 8), (19, 22, 99)]


def test_labels_and_values_in_blocks_of_their_own_become_rows_again() -> None:
    labels = block(1, 0, 0, "Why", "Found", "Did")
    values = block(2, 200, 3, "FDP repaired in 2036, other hospital", "scar from A1 to A4", "FDP freed, A1 divided")
    page = page_from_table(table(*labels, *values))
    assert page.text.split("\n") == [
        "Why   FDP repaired in 2036, other hospital",
        "Found   scar from A1 to A4",
        "Did   FDP freed, A1 divided",
    ]
    assert [page.text[start:end] for start, end, _ in page.confidences] == page.text.split()


def test_a_wide_gap_parts_columns_and_a_stretched_space_does_not() -> None:
    page = page_from_table(table(*block(1, 0, 0, "Zone: II     Side:  right")))
    assert page.text == "Zone: II   Side: right"


@pytest.mark.parametrize("quarters", [1, 2, 3])
def test_places_on_a_page_that_came_turned_are_turned_back(quarters: int) -> None:
    cells = [*block(1, 0, 0, "Why", "Found"), *block(2, 200, 0, "FDP repaired in 2036", "scar from A1")]
    rows = [
        f"5\t1\t{b}\t{p}\t{li}\t{w}\t"
        + "\t".join(map(str, turned(left, top, 10 * len(text), 20, quarters)))
        + f"\t{conf}\t{text}"
        for b, p, li, w, left, top, conf, text in cells
    ]
    assert page_from_table("\n".join(rows)).text == "Why   FDP repaired in 2036\nFound   scar from A1"


def turned(left: int, top: int, width: int, height: int, quarters: int) -> tuple[int, int, int, int]:
    """Return a place on a page of 1000 by 1000 dots that was turned by quarters."""
    for _ in range(quarters):
        left, top, width, height = 1000 - top - height, left, height, width
    return left, top, width, height


def test_two_columns_of_running_text_are_not_mixed() -> None:
    left = block(1, 0, 0, *["the FDP was found cut in zone"] * 5)
    right = block(2, 600, 0, *["the splint was made by the therapist"] * 5)
    page = page_from_table(table(*left, *right))
    lines = page.text.split("\n")
    assert lines == [*["the FDP was found cut in zone"] * 5, "", *["the splint was made by the therapist"] * 5]


def test_a_tall_speck_between_lines_joins_nothing() -> None:
    cells = block(1, 0, 0, "FDP repaired.", "A2 vented.")
    page = page_from_table(table(*cells, (2, 1, 1, 1, 500, 22, 5, "|")))
    assert page.text.split("\n")[0].startswith("FDP repaired.")
    assert "FDP repaired. A2" not in " ".join(page.text.split("\n")[:1])


def test_a_table_without_words_is_an_empty_page() -> None:
    assert page_from_table(table()).text == ""


def test_too_many_scanned_pages_are_refused() -> None:
    with pytest.raises(IntakeRefused) as refused:
        recognise("tesseract", lambda number: "", list(range(21)))
    assert str(refused.value) == (
        "21 pages are pictures; at most 20 are recognised at once. "
        "Take out the pages of the operative note and read those alone."
    )


def test_a_tesseract_without_english_is_said(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("notereader.intake.recognition._run", lambda *_: "List of available languages (1):\nosd\n")
    with pytest.raises(IntakeRefused, match=r"Tesseract lacks its English language data\. Install it"):
        recognise("tesseract", lambda number: "", [0])


def test_a_tesseract_that_fails_is_said() -> None:
    with pytest.raises(IntakeRefused, match=r"Tesseract could not recognise the picture\. Scan the page again"):
        recognise("false", lambda number: "", [0])
    with pytest.raises(IntakeRefused, match=r"Tesseract could not recognise the picture \(.*No such file"):
        recognise("/no/such/program", lambda number: "", [0])


@needs_tesseract
def test_a_recognition_that_takes_too_long_is_stopped(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(limits, "RECOGNITION_SECONDS", 0.0)
    with pytest.raises(IntakeRefused) as refused:
        read_bytes(image_bytes(printed(NOTE)), "scan.png")
    assert str(refused.value) == (
        "scan.png: Recognising the words took too long. "
        "Scan the page again at 300 dots per inch in black and white, or read fewer pages at once."
    )


def test_tesseract_is_looked_for_beside_the_search_path(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(shutil, "which", lambda name: None)
    monkeypatch.setattr("notereader.intake.recognition._USUAL_PLACES", ("/no/such/place", "/bin/sh"))
    assert find_tesseract() == "/bin/sh"
    monkeypatch.setattr("notereader.intake.recognition._USUAL_PLACES", ("/no/such/place",))
    assert find_tesseract() is None


def test_a_pdf_with_text_needs_no_tesseract(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("notereader.intake.paged.find_tesseract", lambda: pytest.fail("looked for Tesseract"))
    assert read_bytes(pdf_bytes(NOTE.replace("\n\n", "\n")), "n.pdf").confidences == []


def test_the_stated_resolution_is_used() -> None:
    import base64
    import io

    from notereader.intake.page_pictures import picture_from_image

    half = Image.new("L", (1000, 500), 255)
    picture = picture_from_image(image_bytes(half, dpi=(200, 100)), 0).picture
    assert Image.open(io.BytesIO(base64.b64decode(picture))).size == (1000 * DPI // 200, 500 * DPI // 100)
