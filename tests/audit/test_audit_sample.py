"""The random sample, the comparison with what a person confirmed, and the corrected rates."""

import random
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import pytest
from audit_making import DAY, audited, counted, folder_of, person_confirms, rows_of, table_of, table_source, truth_of
from demo_notes import DemoNote, demo_notes
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from notereader.audit.audit import Outcomes, Settings
from notereader.audit.criteria import criteria
from notereader.audit.journal import Journal
from notereader.audit.sample import allocate, compare, draw
from notereader.audit.sources import open_source
from notereader.audit.states import assess, note_state
from notereader.casebook import Casebook, Edit
from notereader.record import Address, Fact, Record, dump_record

NUMBER, SAMPLE = 240, 80
SITE = Settings(groups=("site",), sample=SAMPLE, sample_by="site", seed=5, day=DAY)


@pytest.fixture(scope="module")
def notes() -> list[DemoNote]:
    return demo_notes(NUMBER)


@pytest.fixture(scope="module")
def place(notes: list[DemoNote], tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with an audited table of notes, a drawn sample, and the sample as a careful person confirmed it."""
    place = tmp_path_factory.mktemp("sampled")
    source = table_source(table_of(place / "notes.csv", notes), day="operated", name="id")
    sample = counted(source, place / "out", SITE).sample
    assert sample is not None
    person_confirms(sample, notes, place / "confirmed.db")
    return place


@pytest.fixture(scope="module")
def compared(place: Path) -> Outcomes:
    """The same audit, gone on with after the person confirmed the sample."""
    source = table_source(place / "notes.csv", day="operated", name="id")
    settings = Settings(groups=("site",), seed=5, day=DAY, confirmed=place / "confirmed.db")
    return audited(source, place / "out", settings, resume=True, parts=["page", "tables"])


@pytest.fixture
def journal(place: Path) -> Iterator[Journal]:
    journal = Journal(place / "out")
    yield journal
    journal.close()


def test_the_known_rates_lie_inside_the_corrected_intervals(notes: list[DemoNote], compared: Outcomes) -> None:
    """At least 200 notes with known truth: every reported interval holds the true rate, where the raw ones do not."""
    results, inside, outside_raw = compared.results, 0, 0
    truths = [assess(note.truth).states for note in notes]
    for criterion in criteria():
        found = results.corrected(criterion.key)
        if found is None:
            continue
        letters = [states.get(criterion.key) for states in truths]
        true = [note_state(each) == "s" for each in letters if each]
        share = sum(true) / len(true)
        raw = results.tally.as_read.rate(criterion.key, "s")
        assert found.low - 1e-9 <= share <= found.high + 1e-9, criterion.key
        inside += 1
        assert raw.low is not None and raw.high is not None
        outside_raw += not raw.low <= share <= raw.high
    # The notes hold wordings that the reader does not know; without a correction some rates would be wrong.
    assert inside >= 60
    assert outside_raw >= 1


def test_the_report_says_what_was_compared(compared: Outcomes, place: Path) -> None:
    found = compared.results.comparison
    assert found is not None
    assert (found.compared, found.open, found.unknown, found.not_drawn) == (SAMPLE, 0, 0, 0)
    page = (place / "out" / "report.html").read_text(encoding="utf-8")
    assert f"{SAMPLE} notes of those read were confirmed by a person." in page
    rows = {row["criterion"]: row for row in rows_of(place / "out" / "reader.csv")}
    row = rows["needs/repairs.strands"]
    counts = [int(row[name]) for name in ("found", "missed", "invented", "rightly_none")]
    assert sum(counts) <= SAMPLE
    assert float(row["sensitivity"]) == pytest.approx(counts[0] / (counts[0] + counts[1]), abs=1e-6)
    assert float(row["corrected_low"]) <= float(row["share_corrected"]) <= float(row["corrected_high"])


def test_the_same_seed_draws_the_same_notes_and_a_larger_sample_holds_the_smaller(journal: Journal) -> None:
    small, large = draw(journal, 30, 7), draw(journal, 60, 7)
    assert draw(journal, 30, 7) == small
    assert large[:30] == small
    assert draw(journal, 30, 8) != small
    assert len(draw(journal, 10_000, 7)) == NUMBER


def test_every_note_is_as_likely_to_be_drawn(journal: Journal) -> None:
    drawn = Counter(key for seed in range(60) for key in draw(journal, 60, seed))
    # 60 draws with probability 1/4: 15 expected, standard deviation 3.4; five of them on either side.
    assert len(drawn) == NUMBER
    assert min(drawn.values()) >= 0 and max(drawn.values()) < 33


def test_a_stratified_sample_takes_its_share_of_each(journal: Journal, notes: list[DemoNote]) -> None:
    keys = set(draw(journal, SAMPLE, 5, "site"))
    by_row = {f"row {at + 2}": note.site for at, note in enumerate(notes)}
    drawn = Counter(by_row[key] for key in keys)
    whole = Counter(note.site for note in notes)
    assert all(abs(drawn[site] - SAMPLE * whole[site] / NUMBER) < 1 for site in whole)


@pytest.mark.parametrize(
    ("strata", "size", "expected"),
    [
        ({"a": 50, "b": 50}, 10, {"a": 5, "b": 5}),
        ({"a": 97, "b": 2, "c": 1}, 10, {"a": 8, "b": 1, "c": 1}),
        ({"a": 3, "b": 3}, 100, {"a": 3, "b": 3}),
        ({"a": 60, "b": 30, "c": 10}, 7, {"a": 4, "b": 2, "c": 1}),
        ({"a": 5, "b": 5, "c": 5}, 2, {"a": 0, "b": 1, "c": 1}),
        ({}, 5, {}),
    ],
)
def test_shares_of_a_stratified_sample(strata: dict[str, int], size: int, expected: dict[str, int]) -> None:
    assert allocate(Counter(strata), size) == expected


# The machine may be busy with other things; what takes its time does not fail.
@settings(deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(st.dictionaries(st.text(max_size=3), st.integers(1, 400), max_size=8), st.integers(0, 500))
def test_a_stratified_sample_is_as_large_as_asked_and_nowhere_larger_than_there_is(
    strata: dict[str, int], size: int
) -> None:
    sizes = allocate(Counter(strata), size)
    assert sum(sizes.values()) == min(size, sum(strata.values()))
    assert all(0 <= sizes[name] <= of for name, of in strata.items())
    if size >= len(strata):
        assert all(sizes.values())


def test_what_a_person_entered_in_the_sample_is_never_lost(tmp_path: Path) -> None:
    folder = folder_of(tmp_path / "notes", demo_notes(8))
    settings = Settings(sample=4, seed=1, day=DAY)
    sample = counted(open_source(folder), tmp_path / "out", settings).sample
    assert sample is not None
    book = Casebook(sample)
    case = book.open(book.cases()[0].id)
    number, place = case.id, Address("elements", field="procedure")
    before = case.record.fact(place)
    assert before is not None
    case.apply(Edit(place, before, before.model_copy(update={"status": "confirmed"})), who="ward")
    book.close()
    larger = Settings(sample=6, seed=1, day=DAY)
    counted(open_source(folder), tmp_path / "out", larger, resume=True)
    book = Casebook(sample)
    kept = book.open(number).record.fact(place)
    assert kept is not None and kept.status == "confirmed"
    assert len(book.cases()) == 6
    book.close()


def degraded(truth: Record, chance: random.Random) -> Record:
    """Return what a poor reader would propose: it misses a quarter and invents some."""
    record = truth.model_copy(deep=True)
    for place, fact in list(record.walk()):
        fact.status = "proposed"
        if place.field in ("gap", "size", "surgeon", "programme") and chance.random() < 0.25:
            record.drop(place)
    repair = record.repairs[0]
    invented = {"gap": "none", "size": "4-0"}
    for name, value in invented.items():
        if name not in repair.facts and chance.random() < 0.2:
            for each in record.repairs:
                each.facts[name] = Fact(value=value)
    record.review.confirmed_at = None
    return record


def test_a_reader_that_misses_and_invents_is_corrected_too(tmp_path: Path) -> None:
    """Records in place of notes: the reader's errors are drawn, so that both kinds are certain to occur."""
    truths, chance = demo_notes(260, seed=2), random.Random(9)
    drafts = tmp_path / "drafts"
    drafts.mkdir()
    for note in truths:
        (drafts / note.name).with_suffix(".json").write_text(dump_record(degraded(note.truth, chance)))
    settings = Settings(sample=110, seed=3, day=DAY)
    sample = counted(open_source(drafts), tmp_path / "out", settings).sample
    assert sample is not None
    confirmed = person_confirms(sample, truths, tmp_path / "confirmed.db")
    results = counted(
        open_source(drafts), tmp_path / "out", Settings(day=DAY, confirmed=confirmed), resume=True
    ).results
    for put_in, key in (("repairs.gap", "needs/repairs.gap"), ("repairs.size", "needs/repairs.size")):
        share = sum(note.put_in[put_in] for note in truths) / len(truths)
        error, found = results.reader_error(key), results.corrected(key)
        assert error is not None and found is not None
        assert error.notes.missed and error.notes.invented
        assert found.low <= share <= found.high
        assert error.sensitivity().share == pytest.approx(0.75, abs=0.12)


def test_what_is_not_comparable_is_told(journal: Journal, notes: list[DemoNote], tmp_path: Path) -> None:
    strangers = demo_notes(2, seed=99)
    unconfirmed = notes[0].truth.model_copy(deep=True)
    unconfirmed.review.confirmed_at = None
    next(fact for _, fact in unconfirmed.walk()).status = "proposed"
    records = [unconfirmed, notes[1].truth, notes[2].truth, *(n.truth for n in strangers)]
    found = compare(journal, records, drawn=["row 3"])
    assert (found.compared, found.open, found.unknown, found.not_drawn) == (2, 1, 2, 1)


def test_a_value_that_was_read_wrong_is_counted_apart_from_what_was_missed(tmp_path: Path) -> None:
    [note] = [n for n in demo_notes(30) if n.put_in["repairs.size"]][:1]
    folder = folder_of(tmp_path / "notes", [note])
    wrong = note.truth.model_copy(deep=True)
    for repair in wrong.repairs:
        repair.facts["size"].value = "2-0"
    (tmp_path / "confirmed").mkdir()
    (tmp_path / "confirmed" / "a.json").write_text(dump_record(wrong))
    settings = Settings(day=DAY, confirmed=tmp_path / "confirmed")
    results = counted(open_source(folder), tmp_path / "out", settings).results
    error = results.reader_error("fields/repairs.size")
    assert error is not None
    assert error.notes.true_stated == 1
    assert (error.same_values, error.values) == (0, len(wrong.repairs))


def test_confirmed_records_of_a_folder_serve_as_well(tmp_path: Path) -> None:
    notes = demo_notes(5)
    folder, truth = folder_of(tmp_path / "notes", notes), truth_of(tmp_path / "truth", notes)
    found = counted(open_source(folder), tmp_path / "out", Settings(day=DAY, confirmed=truth)).results.comparison
    assert found is not None and found.compared == 5
    assert found.not_drawn == 5
