"""The list of facts as a Qt model."""

from desktop_samples import sample_record
from PySide6.QtCore import Qt

from notereader.desktop.facts_model import COUNT, ITEM, FactsModel
from notereader.desktop.rows import Heading, Row
from notereader.record import Address


def test_keeps_qt_rules(qtmodeltester):
    model = FactsModel()
    model.show(sample_record("13-saw-respectively"), set())
    qtmodeltester.check(model, force_py=True)
    model.arrange(thought_first=True, every_field=True)
    qtmodeltester.check(model, force_py=True)


def test_headings_cannot_be_chosen_and_rows_can():
    model = FactsModel()
    model.show(sample_record("02-terse-ring"), set())
    for line in range(model.rowCount()):
        chosen = bool(model.flags(model.index(line)) & Qt.ItemFlag.ItemIsSelectable)
        assert chosen == isinstance(model.item(line), Row)


def test_a_changed_fact_changes_its_line_and_resets_nothing(qtbot):
    model = FactsModel()
    record = sample_record("02-terse-ring")
    model.show(record, set())
    address = Address("repairs", "ring", "FDP", None, "strands")
    changed = record.model_copy(deep=True)
    changed.fact(address).status = "confirmed"
    with qtbot.assertNotEmitted(model.modelReset), qtbot.waitSignal(model.dataChanged):
        model.show(changed, set())
    line = model.line_of(address)
    assert model.index(line).data(ITEM).standing == "confirmed"
    assert "confirmed" in model.index(line).data(Qt.ItemDataRole.AccessibleTextRole)


def test_a_heading_counts_what_is_settled():
    model = FactsModel()
    record = sample_record("02-terse-ring")
    record.operation["side"].status = "confirmed"
    model.show(record, set())
    first = model.item(0)
    assert isinstance(first, Heading)
    assert model.index(0).data(COUNT) == f"1 of {len(record.operation)} settled"
