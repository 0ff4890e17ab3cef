"""Words of notes, files and people are shown as they are: nowhere in the window are they taken for markup."""

from datetime import UTC, datetime

import pytest
from PySide6.QtCore import QAbstractItemModel, QAbstractListModel, Qt
from PySide6.QtGui import QTextDocument
from PySide6.QtWidgets import QAbstractItemView, QLabel, QTextEdit, QWidget

from notereader.casebook import Casebook
from notereader.desktop.help_page import TextPage
from notereader.desktop.history_dialog import HistoryDialog
from notereader.desktop.labels import plain_tip, question_box
from notereader.desktop.meaning import meaning_of
from notereader.desktop.summary import summary_pdf
from notereader.record import Address, Evidence, Fact, Note, Record, Remark, Rival, source_of

HARM = "<b>HARM</b><img src='harm.png'><a href='harm'>HARM</a><script>HARM</script></p>"
STRANDS = Address("repairs", "ring", "FDP", None, "strands")


def harmful() -> Record:
    """Return a record with markup wherever a record takes free text."""
    text = f"{HARM} FDP of the ring finger repaired with four strands and two strands."
    record = Record(note=Note.of(text, HARM))
    proof = [Evidence.at(text, 0, len(HARM), source_of(text))]
    for field, value, other in (("strands", 4, 2), ("treatment", "repaired", "left"), ("gap", "none", "none")):
        rivals = [Rival(value=other, evidence=proof)]
        fact = Fact(value=value, evidence=proof, rivals=rivals, look_twice=[HARM], rule=HARM, said_by=HARM)
        record.put(STRANDS.field_of(field), fact)
    record.remarks.append(Remark(text=HARM, evidence=proof))
    record.review.reviewer = HARM
    record.review.confirmed_at = datetime(2031, 3, 21, tzinfo=UTC)
    return record


def assert_harmless(document: QTextDocument) -> None:
    """No picture, link or bold letter came of the harmful words."""
    block = document.begin()
    while block.isValid():
        for each in block:
            piece = each.fragment()
            style = piece.charFormat()
            assert not style.isImageFormat(), piece.text()
            assert "harm" not in style.anchorHref()
        block = block.next()
    words = document.toPlainText()
    assert words.count("HARM") == words.count("<b>HARM</b>") + 2 * words.count("'harm.png'"), words


def assert_shown_as_it_is(widget: QWidget) -> None:
    """Look through all labels, texts, lists and tips of a window."""
    for label in widget.findChildren(QLabel):
        assert label.textFormat() == Qt.TextFormat.PlainText or "HARM" not in label.text(), label.text()
    for text in widget.findChildren(QTextEdit):
        assert_harmless(text.document())
    for view in widget.findChildren(QAbstractItemView):
        assert_tips_harmless(view.model())
    for part in widget.findChildren(QWidget):
        assert_tip_harmless(part.toolTip())


def assert_tips_harmless(model: QAbstractItemModel | None) -> None:
    if model is None:
        return
    # A list has one column and no word for it.
    columns = 1 if isinstance(model, QAbstractListModel) else model.columnCount()
    for row in range(model.rowCount()):
        for column in range(columns):
            assert_tip_harmless(model.index(row, column).data(Qt.ItemDataRole.ToolTipRole))


def assert_tip_harmless(tip: str | None) -> None:
    if tip and "HARM" in tip:
        # Qt takes a tip for markup where it looks like it: then its words have to be written out.
        document = QTextDocument()
        document.setHtml(tip)
        assert_harmless(document)


@pytest.fixture
def harmed(qtbot, make_window, tmp_path):
    """A window with the harmful record in it."""
    book = Casebook(str(tmp_path / "casebook.db"))
    number = book.add(harmful(), title=HARM, who=HARM)
    book.close()
    window = make_window()
    with qtbot.waitSignal(window.case_shown):
        window.open_case(number, HARM)
    return window


def test_the_case_and_all_its_panes(qtbot, harmed):
    page = harmed.page
    assert page.note.toPlainText().startswith(HARM)
    for pane in (page.strength, page.weeks, page.questions):
        page.side._tabs.setCurrentWidget(pane)
        qtbot.waitUntil(lambda shown=pane: shown.meaning is not None)
    assert_shown_as_it_is(harmed)


def test_every_fact_in_hand(qtbot, harmed):
    for row in range(harmed.page.model.rowCount()):
        harmed.page.facts.setCurrentIndex(harmed.page.model.index(row, 0))
        assert_shown_as_it_is(harmed.page.pane)


def test_what_the_window_tells(harmed):
    harmed._tell(f"{HARM} was read.")
    harmed.start.tell_trouble(HARM)
    assert_shown_as_it_is(harmed.band)
    assert_shown_as_it_is(harmed.start)


def test_the_list_of_cases(qtbot, harmed):
    harmed.run("new")
    model = harmed.start.cases.table.model()
    qtbot.waitUntil(lambda: model.rowCount() == 1)
    assert any("HARM" in str(model.index(0, column).data()) for column in range(model.columnCount()))
    assert_shown_as_it_is(harmed.start)


def test_the_history(qtbot, harmed, tmp_path):
    book = Casebook(str(tmp_path / "casebook.db"))
    dialog = HistoryDialog(book.open(1).history())
    qtbot.addWidget(dialog)
    book.close()
    assert_shown_as_it_is(dialog)


def test_the_pages_of_what_the_facts_mean():
    record = harmful()
    for _, fact in record.walk():
        fact.status = "confirmed"
    meaning = meaning_of(record, 7, 0, datetime(2031, 3, 21).date())
    for html in (meaning.strength, meaning.questions, *(words for _, words in meaning.tendons)):
        document = QTextDocument()
        document.setHtml(html)
        assert_harmless(document)


def test_a_question_that_quotes_what_was_typed(qtbot):
    parent = QWidget()
    qtbot.addWidget(parent)
    box = question_box(parent, f"The value {HARM} cannot be entered. Close and lose it?")
    assert box.textFormat() == Qt.TextFormat.PlainText
    assert box.text().startswith(f"The value {HARM}")


def test_a_tip_and_a_page_of_help(qtbot):
    assert_tip_harmless(plain_tip(HARM))
    page = TextPage("Help", "<p>plain</p>")
    qtbot.addWidget(page)
    assert_shown_as_it_is(page)


def test_the_summary_on_paper():
    import pypdfium2

    pages = pypdfium2.PdfDocument(summary_pdf(harmful()))
    words = "".join("".join(page.get_textpage().get_text_range() for page in pages).split())
    # Broken over lines wherever the column ends; so it is compared without spaces.
    assert words.count("<b>HARM</b><imgsrc='harm.png'>") >= 3
