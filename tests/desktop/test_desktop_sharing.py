"""Sharing from the window: shown first, decided by keys, written only after a look."""

import json
import os
import stat
import sys

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QTextCharFormat
from PySide6.QtWidgets import QApplication

from notereader.desktop import files
from notereader.desktop.sharing_dialog import SharingDialog
from notereader.desktop.worker import Worker
from notereader.reader import read
from notereader.record import Note, Record, load_record
from notereader.sharing import INCOMPLETE

TEXT = """Date: 14 March 2031
Patient: Thandeka Quellborough, lighthouse keeper of Skerrow
Surgeon: Dr Kessler
FDP of the ring finger was repaired with a four-strand modified Kessler of 4-0 Ethibond. A2 was intact.
"""


@pytest.fixture
def dialog(qtbot, look):
    worker = Worker("test")
    made = SharingDialog(read(TEXT, "quellborough.txt"), look, worker)
    qtbot.addWidget(made)
    made.show()
    qtbot.waitUntil(lambda: made.list.count() > 0)
    yield made
    worker.finish()


def row_of(dialog: SharingDialog, words: str) -> int:
    return next(n for n, choice in enumerate(dialog.choices()) if words in choice.find.words)


def saved(qtbot, dialog, monkeypatch, tmp_path, button, name) -> str:
    path = tmp_path / name
    monkeypatch.setattr("PySide6.QtWidgets.QFileDialog.getSaveFileName", lambda *_: (str(path), ""))
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: "Saved as" in dialog.told.text())
    return path.read_text(encoding="utf-8")


def test_everything_found_is_listed_with_what_becomes_of_it_and_why(dialog) -> None:
    lines = [dialog.list.item(n).text() for n in range(dialog.list.count())]
    assert any("“Thandeka Quellborough” becomes [name]" in line and "line 2, after 'Patient'" in line for line in lines)
    assert any("“14 March 2031” moved with all dates" in line for line in lines)
    assert dialog.warning.text() == INCOMPLETE
    assert "No such search is complete" in dialog.warning.text()


def test_marks_differ_by_more_than_colour(qtbot, dialog) -> None:
    dialog.list.item(1).setCheckState(Qt.CheckState.Unchecked)
    qtbot.waitUntil(lambda: not dialog.choices()[1].changed)
    selections = dialog.note.extraSelections()
    changed, kept = selections[0].format, selections[1].format
    assert changed.fontStrikeOut() and not kept.fontStrikeOut()
    assert kept.underlineStyle() == QTextCharFormat.UnderlineStyle.DotLine
    assert "kept as it is" in dialog.list.item(1).text()


def test_the_stitch_is_not_marked_though_the_surgeon_is_called_so(dialog) -> None:
    found = [choice.find for choice in dialog.choices() if choice.find.words == "Kessler"]
    assert [find.start for find in found] == [TEXT.index("Kessler")]


def test_nothing_can_be_saved_before_a_look(qtbot, dialog) -> None:
    assert not dialog.save_note.isEnabled() and not dialog.save_record.isEnabled()
    dialog.looked.setFocus()
    qtbot.keyClick(dialog.looked, Qt.Key.Key_Space)
    assert dialog.save_note.isEnabled() and dialog.save_record.isEnabled()


def test_the_list_has_the_focus_and_space_keeps_a_find(qtbot, dialog) -> None:
    qtbot.waitUntil(lambda: QApplication.focusWidget() is dialog.list)
    row = row_of(dialog, "Quellborough")
    for _ in range(row):
        qtbot.keyClick(dialog.list, Qt.Key.Key_Down)
    qtbot.keyClick(dialog.list, Qt.Key.Key_Space)
    qtbot.waitUntil(lambda: not dialog.choices()[row].changed)
    assert dialog.list.currentRow() == row
    qtbot.keyClick(dialog.list, Qt.Key.Key_Return)
    assert dialog.isVisible()


def test_words_are_added_by_hand_from_the_keyboard(qtbot, dialog, monkeypatch, tmp_path) -> None:
    assert not dialog.add.isEnabled()
    start = TEXT.index("lighthouse keeper")
    dialog.note.select_span(start, start + len("lighthouse keeper"))
    assert dialog.add.isEnabled()
    dialog.add.setFocus()
    qtbot.keyClick(dialog.add, Qt.Key.Key_Space)
    assert row_of(dialog, "lighthouse keeper") == dialog.list.currentRow()
    dialog.looked.setChecked(True)
    out = saved(qtbot, dialog, monkeypatch, tmp_path, dialog.save_note, "copy.txt")
    assert "Patient: [name], [removed] of [place]" in out
    assert "modified Kessler of 4-0 Ethibond. A2 was intact." in out
    assert "14 March 2031" not in out


def test_the_copy_of_the_record_proves_its_facts(qtbot, dialog, monkeypatch, tmp_path) -> None:
    dialog.looked.setChecked(True)
    out = saved(qtbot, dialog, monkeypatch, tmp_path, dialog.save_record, "copy.json")
    record = load_record(out)
    assert "uellborough" not in out
    assert record.note.name == "shared note"
    assert sum(1 for _ in record.walk()) == sum(1 for _ in read(TEXT, "x").walk())
    remarks = " ".join(remark["text"] for remark in json.loads(out)["remarks"])
    assert "only proposed by the program" in remarks and "no promise for one patient" in remarks


def test_a_date_kept_beside_moved_ones_is_warned_of(qtbot, look) -> None:
    worker = Worker("test")
    made = SharingDialog(read("Operated 14 March 2031, injured 12 March 2031. FDP repaired.", "x"), look, worker)
    qtbot.addWidget(made)
    qtbot.waitUntil(lambda: made.list.count() == 2)
    made.list.item(0).setCheckState(Qt.CheckState.Unchecked)
    qtbot.waitUntil(lambda: "Keep all dates or none" in made.told.text())
    worker.finish()


def test_the_help_says_that_nothing_is_encrypted() -> None:
    from notereader.desktop.help_page import cautions_page

    assert "there is no passphrase" in cautions_page()
    assert "expected to be encrypted" in cautions_page()


def test_a_record_without_its_text_cannot_be_shared(qtbot, look) -> None:
    worker = Worker("test")
    made = SharingDialog(Record(note=Note(name="x")), look, worker)
    qtbot.addWidget(made)
    made.looked.setChecked(True)
    assert not made.save_note.isEnabled()
    assert "without the text" in made.told.text()
    worker.finish()


def test_the_key_opens_it_on_the_case(qtbot, open_sample, monkeypatch) -> None:
    window = open_sample("02-terse-ring")
    shown = []
    monkeypatch.setattr(SharingDialog, "exec", lambda self: shown.append(self))
    window.run("share")
    qtbot.waitUntil(lambda: bool(shown))
    assert shown[0].note.toPlainText().startswith(window.page.session.record.note.text[:20])


@pytest.mark.skipif(sys.platform == "win32", reason="a person's folders are closed to others there by default")
def test_what_the_window_writes_only_its_owner_can_read(tmp_path) -> None:
    before = os.umask(0)
    try:
        (tmp_path / "old.json").write_text("old")
        for name in ("old.json", "new.json"):
            files.write_whole(tmp_path / name, b"content")
            assert stat.S_IMODE((tmp_path / name).stat().st_mode) == 0o600
    finally:
        os.umask(before)
