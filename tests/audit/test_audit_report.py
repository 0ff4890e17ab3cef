"""The report: the same bytes each time, nothing from outside, no patient text unless asked, safe in a spreadsheet."""

import csv
import hashlib
import io
import json
import re
from dataclasses import replace
from datetime import date
from html.parser import HTMLParser
from pathlib import Path
from typing import ClassVar

import pypdfium2
import pytest
from audit_making import PLAIN, audited, bytes_of, folder_of, rows_of, small_audit, table_of, table_source, truth_of
from demo_notes import demo_notes

from notereader import __version__
from notereader.audit.audit import Settings
from notereader.audit.criteria import criteria
from notereader.audit.rates import rate
from notereader.audit.report.lists import COLUMNS, csv_bytes
from notereader.audit.report.words import percent, rate_words
from notereader.audit.sources import open_source
from notereader.record import Note, Record, dump_record
from notereader.vocabulary import resource_folder

EVERYTHING = ("report.html", "report.pdf", "audit.json", "rates.csv", "periods.csv", "notes.csv", "states.csv")
MARK = "Ottoline Featherstonehaugh"


@pytest.fixture(scope="module")
def full(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder of a report with everything in it: groups, periods, reader error, agreement."""
    place = tmp_path_factory.mktemp("full")
    notes = demo_notes(40)
    truth = truth_of(place / "truth", notes)
    settings = Settings(groups=("site", "stitch"), day=date(2033, 1, 1), confirmed=truth, other=truth, seed=4)
    audited(table_source(table_of(place / "notes.csv", notes), day="operated", name="id"), place / "out", settings)
    return place / "out"


def test_every_part_of_the_report_is_there(full: Path) -> None:
    files = bytes_of(full)
    assert set(EVERYTHING) <= set(files)
    assert {"reader.csv", "agreement.csv", "disagreements.csv", "contradictions.csv", "columns.csv"} <= set(files)
    assert "facts.csv" not in files
    assert not list(full.glob("*.part"))


def test_the_same_input_seed_and_date_give_the_same_bytes(tmp_path: Path) -> None:
    notes = demo_notes(6)
    reports = []
    for name in ("one", "two"):
        folder = folder_of(tmp_path / name / "notes", notes)
        truth = truth_of(tmp_path / name / "truth", notes)
        settings = Settings(groups=("folder",), sample=4, seed=2, day=PLAIN.day, confirmed=truth, other=truth)
        audited(open_source(folder), tmp_path / name / "out", settings)
        reports.append(bytes_of(tmp_path / name / "out"))
    assert reports[0] == reports[1]


def test_another_date_is_another_report(tmp_path: Path) -> None:
    small_audit(tmp_path, 2)
    before = bytes_of(tmp_path / "out")
    audited(open_source(tmp_path / "notes"), tmp_path / "out", Settings(day=date(2034, 2, 2)), resume=True)
    assert bytes_of(tmp_path / "out")["report.html"] != before["report.html"]
    assert "2034-02-02" in (tmp_path / "out" / "report.html").read_text()


def test_it_says_with_what_it_was_read(full: Path) -> None:
    page = (full / "report.html").read_text(encoding="utf-8")
    data = json.loads((full / "audit.json").read_bytes())
    assert data["reader"]["version"] == __version__
    assert f"notereader {__version__}" in page
    for path in resource_folder().glob("*.toml"):
        digest = hashlib.sha256(path.read_bytes()).hexdigest()
        assert data["reader"]["resources_sha256"][path.name] == digest
        assert digest in page
    assert data["date"] == "2033-01-01" and data["settings"]["Seed"] == "4"


class Page(HTMLParser):
    """Checks that every tag is closed, and gathers what a page points at."""

    EMPTY: ClassVar[set[str]] = {"meta", "br", "img", "link", "path", "use", "rect"}

    def __init__(self) -> None:
        super().__init__()
        self.open: list[str] = []
        self.points: list[str] = []
        self.tags: set[str] = set()
        self.charts = 0

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.add(tag)
        self.charts += tag == "svg"
        self.points += [value or "" for name, value in attrs if name in ("src", "href", "xlink:href", "data")]
        if tag not in self.EMPTY:
            self.open.append(tag)

    def handle_endtag(self, tag: str) -> None:
        if tag not in self.EMPTY:
            assert self.open.pop() == tag, f"</{tag}> closes nothing"


def test_the_page_stands_alone(full: Path) -> None:
    text = (full / "report.html").read_text(encoding="utf-8")
    page = Page()
    page.feed(text)
    assert page.open == []
    assert page.charts >= 4
    assert not {"script", "link", "iframe", "object"} & page.tags
    outside = [p for p in page.points if not p.startswith("#") and not p.startswith("../notes.csv")]
    assert outside == []
    # Addresses in the charts name standards; nothing is fetched from them.
    fetched = re.findall(r"url\((?!#)[^)]*\)|@import", text)
    assert fetched == []


def test_each_note_of_a_folder_is_linked(tmp_path: Path) -> None:
    notes = demo_notes(3)
    folder = folder_of(tmp_path / "my notes #1", notes)
    audited(open_source(folder), tmp_path / "out")
    page = Page()
    page.feed((tmp_path / "out" / "report.html").read_text())
    linked = [p for p in page.points if not p.startswith("#")]
    assert len(linked) == 3
    assert all(link.startswith("../my%20notes%20%231/") for link in linked)


def test_the_print_can_be_opened_and_says_the_same(full: Path) -> None:
    document = pypdfium2.PdfDocument(full / "report.pdf")
    text = "\n".join(page.get_textpage().get_text_range() for page in document)
    assert len(document) >= 5
    for words in ("Completeness of operative notes", "never rank people", "How often the program erred", __version__):
        assert words in text.replace("\r\n", " ").replace("\n", " ")
    for page in document:
        width, height = page.get_size()
        assert (round(width), round(height)) == (595, 842)


def test_no_text_of_a_table_of_the_print_runs_into_the_margin(full: Path) -> None:
    document = pypdfium2.PdfDocument(full / "report.pdf")
    for page in document:
        text = page.get_textpage()
        right = max(text.get_charbox(at)[2] for at in range(text.count_chars()))
        assert right < 595 - 30


def test_a_table_of_the_print_that_fits_on_one_page_is_on_one_page(full: Path) -> None:
    document = pypdfium2.PdfDocument(full / "report.pdf")
    title = "state it, by site"
    [text] = [t for page in document if title in (t := page.get_textpage().get_text_range())]
    assert "State of A4" in text.partition(title)[2]


def test_the_json_holds_everything(full: Path) -> None:
    data = json.loads((full / "audit.json").read_bytes())
    assert data["format"] == "notereader-audit"
    assert len(data["notes"]) == data["counts"]["counted"] == 40
    assert [c["key"] for c in data["criteria"]] == [c.key for c in criteria()]
    assert all(len(note["states"]) == len(criteria()) for note in data["notes"])
    at = [c["key"] for c in data["criteria"]].index("needs/repairs.size")
    stated = sum(note["states"][at] == "s" for note in data["notes"])
    assert data["criteria"][at]["notes"]["stated"]["count"] == stated
    assert data["criteria"][at]["reader_error"]["stated_corrected"]["low"] >= 0
    assert data["agreement"]["shared"] == 40
    assert data["cautions"] and data["groups"]["site"]


def test_every_column_of_every_table_is_explained(full: Path) -> None:
    told = {(row["file"], row["column"]) for row in rows_of(full / "columns.csv")}
    for path in full.glob("*.csv"):
        if path.name in ("columns.csv", "states.csv"):
            continue
        head = next(csv.reader(io.StringIO(path.read_text(encoding="utf-8-sig"))))
        assert {(path.name, column) for column in head} - told <= {("notes.csv", "site"), ("notes.csv", "stitch")}
    assert {name for name, _ in told} <= set(COLUMNS)


@pytest.fixture
def named(tmp_path: Path) -> Path:
    """A folder of notes that name a patient in the text and in the file's name."""
    notes = tmp_path / "notes"
    notes.mkdir()
    for at, note in enumerate(demo_notes(3)):
        text = f"Patient: {MARK}\n{note.text}The FDP of {MARK} was sewn.\n"
        (notes / f"{MARK} {at}.txt").write_text(text)
    return notes


def spoken(folder: Path) -> str:
    """Return everything that a report says, the print included."""
    files = bytes_of(folder)
    pages = pypdfium2.PdfDocument(folder / "report.pdf")
    text = "".join(page.get_textpage().get_text_range() for page in pages)
    return text + "".join(content.decode("utf-8", "replace") for name, content in files.items() if name != "report.pdf")


def test_no_words_of_a_note_are_in_a_report_unless_asked(named: Path, tmp_path: Path) -> None:
    settings = Settings(day=PLAIN.day, with_names=False, other=tmp_path / "other")
    (named / "x.json").write_text((truth_of(tmp_path / "truth", demo_notes(1)) / "note-00000.json").read_text())
    record = Record(note=Note.of((named / f"{MARK} 1.txt").read_text(encoding="utf-8"), f"{MARK} 1"))
    other = tmp_path / "other"
    other.mkdir()
    (other / "a.json").write_text(dump_record(record))
    audited(open_source(named), tmp_path / "out", settings)
    said = spoken(tmp_path / "out")
    assert MARK not in said
    assert "Featherstonehaugh" not in said and "completely divided" not in said
    assert "note 1" in said
    told = rows_of(tmp_path / "out" / "disagreements.csv")
    assert told and not any(row["first_words"] or row["second_words"] for row in told)


def test_the_words_of_the_notes_where_they_are_asked_for(named: Path, tmp_path: Path) -> None:
    silent = tmp_path / "silent"
    silent.mkdir()
    for note in sorted(named.glob("*.txt")):
        text = note.read_text(encoding="utf-8")
        (silent / note.with_suffix(".json").name).write_text(dump_record(Record(note=Note.of(text, note.name))))
    settings = Settings(day=PLAIN.day, with_words=True, other=silent)
    audited(open_source(named), tmp_path / "out", settings)
    rows = rows_of(tmp_path / "out" / "facts.csv")
    assert any("completely divided" in row["words"] for row in rows)
    note = json.loads((tmp_path / "out" / "audit.json").read_bytes())["notes"][0]
    assert any(fact["words"] for fact in note["facts"].values())
    assert any("divided" in row["first_words"] for row in rows_of(tmp_path / "out" / "disagreements.csv"))
    assert "“" in (tmp_path / "out" / "report.html").read_text(encoding="utf-8").partition("Where they differ")[2]


FORMULAS = ["=1+1", "+1", "-1+1", "@SUM(A1)", "\t=1", "\r=1", "＝1", ";=1"]


@pytest.mark.parametrize("formula", FORMULAS)
def test_no_cell_is_a_formula(tmp_path: Path, formula: str) -> None:
    note = demo_notes(1)[0]
    path = tmp_path / "notes.csv"
    with path.open("w", encoding="utf-8", newline="") as stream:
        csv.writer(stream).writerows([["id", "text", "ward"], [formula, note.text, formula]])
    settings = Settings(groups=("ward",), day=PLAIN.day)
    audited(table_source(path, name="id"), tmp_path / "out", settings, parts=["tables"])
    for name, content in bytes_of(tmp_path / "out").items():
        if name.endswith(".csv"):
            for cells in csv.reader(io.StringIO(content.decode("utf-8-sig"), newline="")):
                assert not any(re.match(r"[\s\x00-\x1f]*[=+\-@＝＋－＠](?!\d|\.)", cell) for cell in cells), name


def test_figures_keep_their_minus() -> None:
    assert b"".join(csv_bytes([["a", -0.25, "-x", None]])) == b"\xef\xbb\xbfa,-0.25,'-x,\r\n"


def test_names_that_look_like_markup_or_formulas_of_charts_are_shown_as_they_are(tmp_path: Path) -> None:
    note = demo_notes(1)[0]
    path = tmp_path / "notes.csv"
    odd = '<b>$x^{2$ & "co"</b>'
    with path.open("w", encoding="utf-8", newline="") as stream:
        csv.writer(stream).writerows([["id", "text", "ward"], [odd, note.text, odd]])
    audited(table_source(path, name="id"), tmp_path / "out", Settings(groups=("ward",), day=PLAIN.day))
    text = (tmp_path / "out" / "report.html").read_text(encoding="utf-8")
    page = Page()
    page.feed(text)
    assert page.open == [] and "b" not in page.tags
    assert "&lt;b&gt;$x^{2$ &amp; &quot;co&quot;&lt;/b&gt;" in text


def test_the_cautions_stand_on_page_and_print(full: Path) -> None:
    page = (full / "report.html").read_text(encoding="utf-8")
    for words in ("not about operations, surgeons or results", "never rank people", "may be wrong"):
        assert words in page


def test_a_report_without_a_confirmed_sample_says_that_the_error_is_unknown(tmp_path: Path) -> None:
    small_audit(tmp_path, 2)
    assert "how often the program misread is not known" in (tmp_path / "out" / "report.html").read_text()


def test_a_report_that_cannot_be_written_leaves_the_old_one(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    small_audit(tmp_path, 2)
    before = (tmp_path / "out" / "report.html").read_bytes()

    def full_disk(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("notereader.audit.report.files.os.fsync", full_disk)
    from notereader.audit.faults import AuditFault

    with pytest.raises(AuditFault, match="could not be written"):
        audited(open_source(tmp_path / "notes"), tmp_path / "out", replace(PLAIN, seed=5), resume=True)
    assert (tmp_path / "out" / "report.html").read_bytes() == before
    assert not list((tmp_path / "out").glob(".*.part"))


def test_how_figures_are_written() -> None:
    assert rate_words(rate(9, 40)) == "22 % (12 to 38)"
    assert rate_words(rate(0, 0)) == "–"
    assert percent(0.4231, 2000) == "42.3 %"
