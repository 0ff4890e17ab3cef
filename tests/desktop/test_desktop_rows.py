"""Headings and rows: order, standing, what is asked for, what is unread."""

import pytest
from desktop_samples import sample_record

from notereader.desktop.rows import Heading, Row, Standing, items_of, standing_of
from notereader.record import Address, Fact, Record, Rival


def rows(record, **how):
    return [item for item in items_of(record, **how) if isinstance(item, Row)]


def headings(record, **how):
    return [item.title for item in items_of(record, **how) if isinstance(item, Heading)]


def one_tendon(**facts):
    record = Record()
    record.put(Address("repairs", "ring", "FDP", None, "treatment"), Fact(value="repaired"))
    for name, value in facts.items():
        record.put(Address("repairs", "ring", "FDP", None, name), Fact(value=value))
    return record


def test_grouped_by_operation_tendons_pulleys_injuries_aftercare():
    titles = headings(sample_record("02-terse-ring"))
    assert titles == [
        "Operation",
        "Ring FDP",
        "Ring FDS",
        "Ring: pulleys",
        "Other injuries",
        "Aftercare",
        "Named in the note",
    ]


def test_every_fact_of_every_sample_has_exactly_one_row():
    for name in ("01-plain-index", "03-thumb-fpl", "13-saw-respectively", "16-wrist-many-tendons", "10-nerve-only"):
        record = sample_record(name)
        for how in ({}, {"thought_first": True}, {"every_field": True}):
            shown = [row.address for row in rows(record, **how) if row.fact is not None]
            assert sorted(a.text() for a in shown) == sorted(a.text() for a, _ in record.walk())


def test_what_matters_most_is_listed_where_it_was_not_found():
    missing = {row.address.field for row in rows(one_tendon()) if row.fact is None and row.address.group == "repairs"}
    assert missing == {"strands", "size", "peripheral", "gap", "glide"}
    pulleys = [row.address.part for row in rows(one_tendon()) if row.address.group == "pulleys"]
    assert pulleys == ["A2", "A4"]


def test_a_tendon_found_intact_is_asked_for_nothing():
    record = Record()
    record.put(Address("repairs", "ring", "FDS", None, "extent"), Fact(value="intact"))
    assert [row.address.field for row in rows(record) if row.address.group == "repairs"] == ["extent"]
    assert not [row for row in rows(record) if row.address.group == "pulleys"]


def test_gap_width_is_asked_for_only_where_a_gap_was_seen():
    def asked(record):
        return any(row.address.field == "gap_mm" for row in rows(record))

    assert asked(one_tendon(gap="seen"))
    assert not asked(one_tendon(gap="none"))


def test_every_field_lists_every_field_of_an_entry():
    from notereader.vocabulary import field_specs

    listed = {r.address.field for r in rows(one_tendon(), every_field=True) if r.address.group == "repairs"}
    assert listed == set(field_specs()["repairs"])


@pytest.mark.parametrize(
    ("fact", "standing"),
    [
        (None, Standing.NOT_FOUND),
        (Fact(value=4), Standing.PROPOSED),
        (Fact(value=4, status="confirmed"), Standing.CONFIRMED),
        (Fact(value=4, status="corrected"), Standing.CORRECTED),
        (Fact(value=4, status="added"), Standing.ADDED),
        (Fact(value=4, status="withdrawn"), Standing.WITHDRAWN),
        (Fact(value=None, basis="silent", status="confirmed"), Standing.SILENT),
        (Fact(value=None, basis="silent", status="corrected"), Standing.SILENT),
    ],
)
def test_standing(fact, standing):
    assert standing_of(fact) is standing


def test_unread_until_it_was_in_hand():
    record = one_tendon()
    address = Address("repairs", "ring", "FDP", None, "treatment")
    assert [r.unread for r in rows(record) if r.address == address] == [True]
    assert [r.unread for r in rows(record, read={address.text()}) if r.address == address] == [False]
    assert not any(row.unread for row in rows(record) if row.fact is None)


def test_what_needs_thought_comes_first_and_stays_there_when_settled():
    record = one_tendon()
    address = Address("repairs", "ring", "FDP", None, "strands")
    record.put(address, Fact(value=2, rivals=[Rival(value=4)]))
    implied = Address("repairs", "ring", "FDP", None, "hold")
    record.put(implied, Fact(value="locking", basis="implied"))
    first = [row.address for row in rows(record, thought_first=True)][:2]
    assert first == [address, implied]
    assert headings(record, thought_first=True)[0] == "To think about"
    record.put(address, Fact(value=2, status="confirmed", rivals=[Rival(value=4)]))
    assert [row.address for row in rows(record, thought_first=True)][:2] == first


def test_a_row_says_all_of_itself_in_one_sentence():
    record = one_tendon()
    address = Address("repairs", "ring", "FDP", None, "purchase_mm")
    from notereader.record import Interval

    record.put(address, Fact(value=Interval(low=7, high=10), look_twice=["far from its tendon"], rivals=[]))
    row = next(row for row in rows(record) if row.address == address)
    assert row.sentence() == (
        "ring FDP: purchase each side: 7 to 10 mm. proposed. unread. look twice: far from its tendon."
    )
