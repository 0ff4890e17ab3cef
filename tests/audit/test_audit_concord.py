"""Two readers of the same notes."""

from pathlib import Path

import pytest
from audit_making import DAY, audited, counted, folder_of, record_with, rows_of, truth_of
from demo_notes import demo_notes

from notereader.audit.agreement import kappa
from notereader.audit.audit import Settings
from notereader.audit.concord import Agreement, agree
from notereader.audit.criteria import field_key
from notereader.audit.faults import AuditFault
from notereader.audit.peers import records_in
from notereader.audit.sources import NoteInput, open_source
from notereader.audit.work import record_of
from notereader.record import Evidence, Fact, Note, Record, dump_record
from notereader.vocabulary import samples_folder

RING = "repairs/ring/FDP/-/"


def of(found: Agreement, group: str, name: str) -> object:
    return next(each for each in found.fields if each.key == field_key(group, name))


def pair(text: str, first: dict[str, object], second: dict[str, object]) -> tuple[Record, Record]:
    return record_with(first, note=Note.of(text, text)), record_with(second, note=Note.of(text, text))


def test_silence_is_a_value_and_places_of_either_reader_count() -> None:
    one, two = pair("a", {RING + "size": "4-0"}, {RING + "size": "3-0", "repairs/small/FDP/-/size": "4-0"})
    found = agree([one], [two], seed=1)
    size = of(found, "repairs", "size")
    assert (size.places, size.percent) == (2, 0.0)  # type: ignore[attr-defined]
    knot = of(found, "repairs", "knot")
    assert (knot.places, knot.percent, knot.kappa.value) == (2, 1.0, None)  # type: ignore[attr-defined]
    assert {(d.place, d.first, d.second) for d in found.disagreements} == {
        ("ring FDP: core suture size", "4-0", "3-0"),
        ("small FDP: core suture size", "", "4-0"),
    }


def test_kappa_of_the_fields_is_that_of_their_pairs() -> None:
    sides = [("left", "left")] * 8 + [("right", "right")] * 6 + [("left", "right")] * 3 + [("right", None)] * 2
    firsts, seconds = [], []
    for at, (a, b) in enumerate(sides):
        facts = {"operation/-/-/-/side": a}, {"operation/-/-/-/side": b} if b else {}
        one, two = pair(f"note {at}", *facts)
        firsts.append(one)
        seconds.append(two)
    found = of(agree(firsts, reversed(seconds), seed=1), "operation", "side")
    expected = kappa([(a, b or "") for a, b in sides])
    assert found.kappa == expected  # type: ignore[attr-defined]
    assert found.percent == pytest.approx(14 / 19)  # type: ignore[attr-defined]
    alpha = found.alpha  # type: ignore[attr-defined]
    assert alpha.low < alpha.value < alpha.high


def test_figures_are_compared_by_distance() -> None:
    values = [(2, 2), (4, 4), (6, 6), (4, 6), (8, 8)]
    notes = [pair(f"n{at}", {RING + "strands": a}, {RING + "strands": b}) for at, (a, b) in enumerate(values)]
    found = of(agree(*zip(*notes, strict=True), seed=1), "repairs", "strands")
    figures = found.figures  # type: ignore[attr-defined]
    assert figures.value > found.alpha.value  # type: ignore[attr-defined]
    assert figures.low < figures.value <= figures.high


def test_notes_are_matched_by_text_or_by_name_and_the_rest_is_told() -> None:
    one, two = pair("same text", {RING + "size": "4-0"}, {RING + "size": "4-0"})
    two.note.name = "another name"
    key = record_with({RING + "size": "4-0"}, note=Note(name="n7.txt"))
    read = record_with({RING + "size": "4-0"}, note=Note.of("seventh", "N7.docx"))
    alone = record_with({}, note=Note.of("alone", "n9"))
    found = agree([one, read, alone], [two, key, record_with({}, note=Note.of("other", "n10"))], seed=1)
    assert (found.shared, found.only_first, found.only_second) == (2, 1, 1)


def test_the_words_of_the_note_stand_beside_a_disagreement() -> None:
    text = "sewn with 4-0"
    said = Fact(value="4-0", status="confirmed", evidence=[Evidence.at(text, 10, 13, "")])
    one, two = pair(text, {RING + "size": said}, {})
    assert agree([one], [two], seed=1).disagreements[0].first_words == "4-0"


def test_what_the_surgeon_answered_is_not_compared() -> None:
    answer = Fact(value="4-0", status="added", said_by="surgeon")
    one, two = pair("a", {RING + "size": answer, RING + "knot": "buried"}, {RING + "knot": "buried"})
    assert agree([one], [two], seed=1).disagreements == []


def test_a_person_against_the_keys_of_the_samples(tmp_path: Path) -> None:
    """The keys that ship with the samples are records with less in them; the program reads the notes beside them."""
    settings = Settings(day=DAY, other=samples_folder(), seed=1)
    found = audited(open_source(samples_folder()), tmp_path / "out", settings, parts=["tables"]).results.agreement
    assert found is not None
    keys = [path for path in samples_folder().rglob("*.json") if path.with_suffix(".txt").exists()]
    assert len(keys) >= 16
    assert (found.shared, found.only_second) == (len(keys), 0)
    rows = rows_of(tmp_path / "out" / "agreement.csv")
    sides = next(row for row in rows if row["field"] == "fields/operation.side")
    assert int(sides["places"]) == len(keys)
    assert len(rows_of(tmp_path / "out" / "disagreements.csv")) == len(found.disagreements) > 0


def test_readers_who_agree_in_all(tmp_path: Path) -> None:
    notes = demo_notes(6)
    first, second = truth_of(tmp_path / "first", notes), truth_of(tmp_path / "second", notes)
    found = counted(open_source(first), tmp_path / "out", Settings(day=DAY, other=second)).results.agreement
    assert found is not None and found.disagreements == []
    assert all(each.percent == 1 for each in found.fields)


def test_notes_that_nobody_else_read_are_counted_without_being_read_again(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    notes = demo_notes(6)
    folder, second = folder_of(tmp_path / "notes", notes), truth_of(tmp_path / "second", notes[:2])
    counted(open_source(folder), tmp_path / "out", Settings(day=DAY))
    read: list[str] = []

    def noted(item: NoteInput) -> tuple[Record, str, bool]:
        read.append(item.name)
        return record_of(item)

    monkeypatch.setattr("notereader.audit.audit.record_of", noted)
    settings = Settings(day=DAY, other=second)
    found = counted(open_source(folder), tmp_path / "out", settings, resume=True).results.agreement
    assert found is not None
    assert (found.shared, found.only_first, found.only_second) == (2, 4, 0)
    assert len(read) == 2


def test_records_of_one_file_and_refusals_that_name_the_file(tmp_path: Path) -> None:
    path = tmp_path / "one.json"
    path.write_text(dump_record(demo_notes(1)[0].truth))
    assert len(list(records_in(path))) == 1
    path.write_text('{"notes": []}')
    with pytest.raises(AuditFault, match=r"one\.json.*no record and no key"):
        list(records_in(path))
    path.write_text("not json")
    with pytest.raises(AuditFault, match=r"one\.json"):
        list(records_in(path))
