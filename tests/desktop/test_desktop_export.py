"""What leaves the window: JSON, summary, and that it says what nobody confirmed."""

import json

import jsonschema
import pypdfium2
import pytest
from desktop_samples import sample_record
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication

from notereader.desktop import export
from notereader.desktop.export_dialog import ExportDialog, file_name
from notereader.desktop.finger import digits_to_draw
from notereader.desktop.summary import summary_pdf
from notereader.desktop.worker import Worker
from notereader.record import load_record, record_schema

pytestmark = pytest.mark.usefixtures("qapp")


def confirmed(name="02-terse-ring"):
    record = sample_record(name)
    for _, fact in record.walk():
        fact.status = "confirmed"
    return record


def pdf_text(record):
    document = pypdfium2.PdfDocument(summary_pdf(record))
    return " ".join(" ".join(page.get_textpage().get_text_range() for page in document).split())


def test_an_export_before_all_is_confirmed_says_so():
    record = sample_record("02-terse-ring")
    record.operation["side"].status = "confirmed"
    every = sum(1 for _ in record.walk())
    said = f"Not everything is confirmed: {every - 1} of {every} facts are only proposed"
    assert said in export.how_settled(record)
    data = json.loads(export.json_of(record, text=True))
    assert said in data["remarks"][0]["text"]
    assert data["review"]["confirmed_at"] is None
    assert f"{every - 1} of {every} were proposed by the program and nobody has confirmed" in pdf_text(record)


def test_a_second_export_says_it_once_and_taking_it_in_drops_it():
    record = sample_record("02-terse-ring")
    once = load_record(export.json_of(record, text=True))
    twice = load_record(export.json_of(once, text=True))
    assert len(twice.remarks) == 2
    assert export.taken_in(twice) == record


def test_a_fully_settled_record_carries_no_such_remark():
    (remark,) = json.loads(export.json_of(confirmed(), text=True))["remarks"]
    assert "Bench figures are no promise" in remark["text"]


@pytest.mark.parametrize("text", [True, False])
def test_the_export_meets_the_published_schema(text):
    data = json.loads(export.json_of(sample_record("13-saw-respectively"), text=text))
    jsonschema.Draft202012Validator(record_schema()).validate(data)
    assert ("text" in data["note"]) == text


def test_the_record_itself_is_not_changed_by_exporting():
    record = sample_record("02-terse-ring")
    export.json_of(record, text=False)
    assert record == sample_record("02-terse-ring")


def test_the_summary_holds_values_words_unknowns_cautions_and_the_pictures():
    from notereader.appraisal.cautions import cautions_about

    record = sample_record("13-saw-respectively")
    pages = pypdfium2.PdfDocument(summary_pdf(record))
    words = " ".join(" ".join(page.get_textpage().get_text_range() for page in pages).split())
    for expected in ("Core strands", "four-strand cruciate", "Middle FDP", "braided polyester", "proposed"):
        assert expected in words
    assert "Not stated in the note" in words
    for caution in cautions_about("general"):
        assert caution[:40] in words
    images = [each for page in pages for each in page.get_objects() if each.type == pypdfium2.raw.FPDF_PAGEOBJ_IMAGE]
    assert len(images) >= len(digits_to_draw(record)) == 4


def test_the_dialog_says_what_is_not_confirmed_and_copies(qtbot):
    worker = Worker("test")
    dialog = ExportDialog(sample_record("02-terse-ring"), "ring", worker)
    qtbot.addWidget(dialog)
    dialog.show()
    assert "only proposed by the program" in dialog.state.text()
    dialog.with_text.setChecked(False)
    qtbot.mouseClick(dialog.copy, Qt.MouseButton.LeftButton)
    copied = json.loads(QGuiApplication.clipboard().text())
    assert "text" not in copied["note"]
    assert load_record(copied).operation["side"].value == "right"
    worker.finish()


def test_saving_and_failing_to_save_are_said_in_words(qtbot, tmp_path, monkeypatch):
    worker = Worker("test")
    dialog = ExportDialog(confirmed(), "ring", worker)
    qtbot.addWidget(dialog)
    chosen = [tmp_path / "summary.pdf"]
    monkeypatch.setattr("PySide6.QtWidgets.QFileDialog.getSaveFileName", lambda *_: (str(chosen[0]), ""))
    qtbot.mouseClick(dialog.summary, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: "Saved as summary.pdf" in dialog.told.text())
    assert chosen[0].read_bytes().startswith(b"%PDF")
    chosen[0] = tmp_path / "missing" / "record.json"
    qtbot.mouseClick(dialog.save, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: "could not be saved" in dialog.told.text())
    worker.finish()


@pytest.mark.parametrize(
    ("title", "name"),
    [
        ("ring-zone2.txt", "ring-zone2.json"),
        ("Pasted 2031-03-14 10:32", "Pasted-2031-03-14-10-32.json"),
        ("../../etc", "etc.json"),
        ("???", "record.json"),
    ],
)
def test_names_of_files(title, name):
    assert file_name(title, ".json") == name
