"""What the panes say of the confirmed facts: no more than a person settled, and with the cautions."""

from datetime import date

from desktop_samples import sample_record
from PySide6.QtCore import QDate, Qt
from PySide6.QtGui import QGuiApplication

from notereader.appraisal import all_cautions, appraise, appraise_settled
from notereader.appraisal.text import range_words
from notereader.desktop.answer_dialog import AnswerDialog
from notereader.desktop.letter_dialog import LetterDialog
from notereader.desktop.meaning import meaning_of
from notereader.desktop.meaning_panes import save_letter
from notereader.desktop.summary import letter_pdf
from notereader.record import SURGEON, Address

TODAY = date(2026, 1, 1)


def confirmed_sample():
    record = sample_record("01-plain-index")
    for _, fact in record.walk():
        fact.status = "confirmed"
    return record


def test_with_nothing_confirmed_no_strength_is_shown():
    meaning = meaning_of(sample_record("01-plain-index"), 7, 0, TODAY)
    assert meaning.tendons and all(line.strength is None for line, _ in meaning.tendons)
    assert "Breaking force" not in meaning.strength and "Nothing of it is confirmed" in meaning.strength
    assert f"{len(meaning.settled.left_out)} proposed facts still unconfirmed" in meaning.strength


def test_the_numbers_are_those_of_the_appraisal():
    record = confirmed_sample()
    strength = appraise(record, 7).tendons[0].strength
    assert range_words(strength.breaking) in meaning_of(record, 7, 0, TODAY).strength


def test_unconfirmed_strands_stay_unknown():
    record = confirmed_sample()
    record.repairs[0].facts["strands"].status = "proposed"
    record.repairs[0].facts["stitch"].status = "proposed"
    factors = appraise_settled(record, 7).confirmed.tendons[0].strength.factors
    assert next(f for f in factors if f.name == "strands").value == "not stated"


def test_cautions_stand_on_strength_and_weeks():
    meaning = meaning_of(confirmed_sample(), 7, 0, TODAY)
    for page in (meaning.strength, *(words for _, words in meaning.tendons)):
        assert all(caution[:30].replace("'", "&#x27;") in page for caution in all_cautions())


def test_the_panes_fill_when_seen_and_the_letter_is_a_pdf(qtbot, open_sample):
    page = open_sample("02-terse-ring").page
    assert page.strength.meaning is None
    page.side._tabs.setCurrentWidget(page.weeks)
    qtbot.waitUntil(lambda: not page.weeks.chart.pixmap().isNull())
    assert "unknown" in page.weeks.page.toPlainText().lower()
    assert letter_pdf(page.questions.meaning.letter).startswith(b"%PDF")


def test_a_letter_that_cannot_be_saved_is_told_and_one_that_can_is_whole(qtbot, open_sample, tmp_path):
    page, told = open_sample("02-terse-ring").page, []
    save_letter(page.feed, "Is the A2 pulley whole?", tmp_path / "letter.txt", told.append)
    save_letter(page.feed, "Is the A2 pulley whole?", tmp_path / "nowhere" / "letter.txt", told.append)
    qtbot.waitUntil(lambda: len(told) == 2)
    assert (tmp_path / "letter.txt").read_text() == "Is the A2 pulley whole?"
    assert told[0] == "Saved as letter.txt." and told[1].startswith("It could not be saved")


def test_the_surgeons_answer_is_entered_by_keyboard_with_its_source_and_day(qtbot, open_sample, monkeypatch):
    """What the note says stays as a rival; the list says where the value comes from."""
    page = open_sample("02-terse-ring").page
    place = Address("repairs", "ring", "FDP", None, "strands")
    page.session.take_in_hand(place)

    def answer(dialog):
        qtbot.keyClicks(dialog.focusWidget(), "6")
        dialog._day.setDate(QDate(2026, 3, 9))
        dialog._check()
        return dialog.result()

    monkeypatch.setattr(AnswerDialog, "exec", answer)
    page.facts.setFocus()
    qtbot.keyClick(page.facts, Qt.Key.Key_E, Qt.KeyboardModifier.ShiftModifier)
    qtbot.waitUntil(lambda: page.session.record.fact(place).status == "added")
    fact = page.session.record.fact(place)
    assert (fact.value, fact.said_by, fact.said_on) == (6, SURGEON, date(2026, 3, 9))
    assert [rival.value for rival in fact.rivals] == [4]
    row = page.model.item(page.model.line_of(place))
    assert row.proof == "Surgeon's answer of 2026-03-09." and "surgeon's answer of 2026-03-09" in row.sentence()
    page.run("undo")
    qtbot.waitUntil(lambda: page.session.record.fact(place).value == 4)


def test_the_letter_can_be_changed_and_is_copied_as_changed(qtbot, open_sample, monkeypatch):
    page = open_sample("02-terse-ring").page
    page.side._tabs.setCurrentWidget(page.questions)
    qtbot.waitUntil(lambda: page.questions.meaning is not None)
    draft = page.questions.letter
    assert "A3 pulley" in draft

    def change(dialog):
        assert dialog.letter() == draft
        dialog.text.appendPlainText("Please ring before noon.")

    monkeypatch.setattr(LetterDialog, "exec", change)
    page.questions.edit()
    page.questions.copy()
    assert QGuiApplication.clipboard().text() == f"{draft}\nPlease ring before noon."
