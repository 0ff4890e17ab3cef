"""Counting by criterion, group and period, and what the report's figures rest on."""

from collections import Counter
from pathlib import Path

import pytest
from audit_making import PLAIN, audited, folder_of, rows_of, table_of, table_source, truth_of
from demo_notes import DemoNote, demo_notes

from notereader.audit.audit import Settings
from notereader.audit.criteria import field_key
from notereader.audit.faults import AuditFault
from notereader.audit.journal import NoteRow
from notereader.audit.rates import wilson
from notereader.audit.results import charts_of
from notereader.audit.sources import open_source
from notereader.audit.states import Assessment, assess
from notereader.audit.tally import MOST_GROUPS, most_missing, period_of, tally


def row(place: int, states: dict[str, str], columns: dict[str, str] | None = None, **more: object) -> NoteRow:
    """Return a note of a journal with given states."""
    day = str(more.get("day", ""))
    found = Assessment("", bool(more.get("confirmed")), states, {}, {}, (), day, "not stated")
    return NoteRow(place, f"{place}", f"{place}", "", columns or {}, day, False, "", "", False, found)


STRANDS = field_key("repairs", "strands")


def test_shares_carry_wilsons_interval_on_the_notes_it_applies_to() -> None:
    states = [{STRANDS: "s"}] * 9 + [{STRANDS: "-"}] * 6 + [{STRANDS: "i"}] * 3 + [{STRANDS: "c"}] * 2 + [{}] * 50
    counted = tally(row(at, each) for at, each in enumerate(states))
    assert counted.counted == 70
    found = [counted.whole.rate(STRANDS, letter) for letter in "sic-"]
    assert [(r.count, r.of) for r in found] == [(9, 20), (3, 20), (2, 20), (6, 20)]
    assert (found[0].low, found[0].high) == wilson(9, 20)


def test_places_are_counted_beside_notes() -> None:
    counted = tally([row(0, {STRANDS: "ss"}), row(1, {STRANDS: "s-"}), row(2, {STRANDS: "-"})])
    assert (counted.whole.count(STRANDS, "s"), counted.whole.of(STRANDS)) == (1, 3)
    places = counted.places.rate(STRANDS, "s")
    assert (places.count, places.of) == (3, 5)


def test_groups_and_notes_without_a_value() -> None:
    rows = [row(0, {STRANDS: "s"}, {"site": "north"}), row(1, {STRANDS: "-"}, {"site": ""})]
    counted = tally(rows, ["site", "confirmed"])
    assert counted.group_sizes["site"] == {"north": 1, "(none)": 1}
    assert counted.by_group["site"]["north"].count(STRANDS, "s") == 1
    assert counted.group_sizes["confirmed"] == {"as read": 2}


def test_a_column_of_names_is_no_group() -> None:
    rows = (row(at, {STRANDS: "s"}, {"who": f"patient {at}"}) for at in range(MOST_GROUPS + 1))
    with pytest.raises(AuditFault, match="'who' has more than 200 different values"):
        tally(rows, ["who"])


@pytest.mark.parametrize(
    ("day", "month", "quarter", "year"),
    [("2031-03-31", "2031-03", "2031 Q1", "2031"), ("2031-10-01", "2031-10", "2031 Q4", "2031"), ("", "", "", "")],
)
def test_periods(day: str, month: str, quarter: str, year: str) -> None:
    assert (period_of(day, "month"), period_of(day, "quarter"), period_of(day, "year")) == (month, quarter, year)


def test_a_change_of_practice_is_a_signal_and_no_change_is_none() -> None:
    stated = [0.3] * 12 + [0.8] * 12
    rows = []
    for month, share in enumerate(stated):
        day = f"{2031 + month // 12}-{month % 12 + 1:02}-15"
        for at in range(20):
            size = field_key("repairs", "size")
            states = {STRANDS: "s" if at < 20 * share else "-", size: "s" if (at + month) % 2 else "-"}
            rows.append(row(len(rows), states, day=day))
    charts = charts_of(tally(rows))
    changed = [point.signals for point in charts[STRANDS].points]
    assert "run" in changed[7] and "run" in changed[-1]
    assert not any(point.signals for point in charts[field_key("repairs", "size")].points)
    assert charts[STRANDS].centre == pytest.approx(0.55)


def test_the_most_missing_come_first_and_what_all_state_is_not_among_them() -> None:
    date, zone = "needs/operation.date", "needs/repairs.zone"
    rows = [row(at, {date: "s", zone: "-" if at else "s", "needs/repairs.size": "i"}) for at in range(3)]
    assert [c.key for c in most_missing(tally(rows).whole, "needs")] == [zone]


def test_confirmed_notes_are_not_counted_as_read() -> None:
    rows = [row(0, {STRANDS: "s"}, confirmed=True), row(1, {STRANDS: "-"})]
    counted = tally(rows)
    assert (counted.whole.of(STRANDS), counted.as_read.of(STRANDS), counted.confirmed) == (2, 1, 1)


@pytest.fixture(scope="module")
def notes() -> list[DemoNote]:
    return demo_notes(120)


# What the generator puts in -> the criterion that counts it, where one fact of the note decides it for every tendon.
PUT_IN = {
    "operation.date": "fields/operation.date",
    "operation.mechanism": "fields/operation.mechanism",
    "operation.anaesthesia": "fields/operation.anaesthesia",
    "elements.surgeon": "rcs/surgeon",
    "elements.closure": "fields/elements.closure",
    "repairs.strands": "needs/repairs.strands",
    "repairs.stitch": "needs/repairs.stitch",
    "repairs.size": "needs/repairs.size",
    "repairs.zone": "fields/repairs.zone",
    "repairs.gap": "needs/repairs.gap",
    "repairs.glide": "fields/repairs.glide",
    "repairs.peripheral": "needs/repairs.peripheral",
    "pulleys.A2": "needs/pulleys.A2.finding",
    "pulleys.A4": "needs/pulleys.A4.finding",
    "nerves": "needs/nerves",
    "aftercare.splint": "needs/aftercare.splint",
}


def test_confirmed_records_give_the_rates_that_the_generator_put_in(notes: list[DemoNote], tmp_path: Path) -> None:
    """The whole way from files to counts, held against a count that knows nothing of the audit."""
    found = audited(open_source(truth_of(tmp_path / "truth", notes)), tmp_path / "out", parts=[])
    assert found.results.tally.confirmed == len(notes)
    for put_in, key in PUT_IN.items():
        expected = sum(note.put_in[put_in] for note in notes)
        rate = found.results.tally.whole.rate(key, "s")
        assert (rate.count, rate.of) == (expected, len(notes)), key


def test_rates_by_group_as_the_generator_put_them_in(notes: list[DemoNote], tmp_path: Path) -> None:
    settings = Settings(groups=("site",), day=PLAIN.day)
    rows = [row(at, assess(n.truth).states, {"site": n.site}) for at, n in enumerate(notes)]
    counted = tally(rows, settings.groups)
    for site, counts in counted.by_group["site"].items():
        expected = sum(note.put_in["repairs.size"] for note in notes if note.site == site)
        assert counts.count("needs/repairs.size", "s") == expected


def test_the_tables_of_the_report_say_the_same(notes: list[DemoNote], tmp_path: Path) -> None:
    path = table_of(tmp_path / "notes.csv", notes)
    settings = Settings(groups=("site",), day=PLAIN.day)
    found = audited(table_source(path, day="operated", name="id"), tmp_path / "out", settings, parts=["tables"])
    rates = rows_of(tmp_path / "out" / "rates.csv")
    [whole] = [
        r
        for r in rates
        if (r["criterion"], r["column"], r["counting"], r["state"]) == ("needs/repairs.size", "", "notes", "stated")
    ]
    rate = found.results.tally.whole.rate("needs/repairs.size", "s")
    assert (int(whole["count"]), int(whole["of"])) == (rate.count, rate.of)
    assert (float(whole["low"]), float(whole["high"])) == pytest.approx((rate.low, rate.high), abs=1e-6)
    by_site = {r["group"]: int(r["of"]) for r in rates if r["criterion"] == "rcs/surgeon" and r["column"] == "site"}
    assert by_site == Counter(note.site for note in notes)
    states = rows_of(tmp_path / "out" / "states.csv")
    assert len(states) == len(notes)
    assert sum(r["needs/repairs.size"] == "stated" for r in states) == rate.count
    periods = [r for r in rows_of(tmp_path / "out" / "periods.csv") if r["criterion"] == "rcs/surgeon"]
    assert sum(int(r["of"]) for r in periods) == len(notes)
    assert {r["period"] for r in periods} == {note.day.isoformat()[:7] for note in notes}


def test_an_empty_folder_gives_an_empty_report(tmp_path: Path) -> None:
    (tmp_path / "notes").mkdir()
    found = audited(open_source(tmp_path / "notes"), tmp_path / "out")
    assert found.results.tally.counted == 0
    assert "Nothing to count" in (tmp_path / "out" / "report.html").read_text()


def test_notes_without_a_tendon_are_told_and_count_where_they_can(tmp_path: Path) -> None:
    (tmp_path / "notes").mkdir()
    (tmp_path / "notes" / "nerve.txt").write_text(
        "Surgeon: consultant\nThe ulnar digital nerve was repaired with 9-0 nylon.\n"
    )
    folder_of(tmp_path / "notes", demo_notes(1))
    counted = audited(open_source(tmp_path / "notes"), tmp_path / "out", parts=[]).results.tally
    assert (counted.counted, counted.without_tendon) == (2, 1)
    assert (counted.whole.of("needs/repairs.size"), counted.whole.of("rcs/surgeon")) == (1, 2)
