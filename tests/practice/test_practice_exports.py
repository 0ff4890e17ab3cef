"""Exports and the teacher's view: what is written, what is left out, what is read again."""

import csv
import io
import json
from xml.etree import ElementTree

import pytest
from practice_making import NOTE, RING_FDP, changed, evidence, handed_in, made_case, perfect

from notereader.practice import (
    PracticeFault,
    export_json,
    facts_csv,
    progress_csv,
    progress_figure,
    progress_of,
    read_markings,
    ready_set,
    save_figure,
    teacher_csv,
    teacher_figure,
    teacher_view,
)
from notereader.practice.exports import model_json
from notereader.practice.reporting import progress_text, teacher_text
from notereader.practice.words import tables
from notereader.record import Fact

CASE = made_case()
SIZE = RING_FDP.field_of("size")
STRANDS = RING_FDP.field_of("strands")


def rows(text):
    assert text.startswith("\ufeff")
    return list(csv.DictReader(io.StringIO(text.lstrip("\ufeff"))))


def over(case=CASE, **kwargs):
    return handed_in(
        case, changed(case, SIZE, Fact(value="3-0", status="added", evidence=evidence("3-0 Prolene"))), **kwargs
    )


def a_class():
    """Ten students: the first have everything, each next one misses one more field of the ring FDP."""
    fields = ["size", "strands", "stitch", "material", "ends", "test", "glide", "zone", "extent"]
    found = []
    for number in range(10):
        attempt = perfect(CASE)
        for field in fields[:number]:
            attempt.record.drop(RING_FDP.field_of(field))
        found.append(handed_in(CASE, attempt, student=f"S{number}"))
    return found


def test_an_export_is_read_again_as_it_was(tmp_path):
    markings = [over(), handed_in(ready_set().cases[0], perfect(ready_set().cases[0]))]
    path = tmp_path / "export.json"
    path.write_text(export_json(markings, progress_of(markings), words=True), "utf-8")
    assert read_markings(path) == markings
    path.write_text(markings[0].model_dump_json(), "utf-8")
    assert read_markings(path) == markings[:1]


def test_the_words_of_the_note_leave_only_when_asked():
    marking = over()
    with_words, without = export_json([marking], words=True), export_json([marking])
    assert "locked cruciate core" not in without
    for quote in ("4-0 Ethibond", "FDP was repaired", "six-strand", "The first repair is old"):
        assert quote in with_words or quote == "six-strand"
        assert quote not in without
    assert "Ethibond" not in facts_csv([marking])
    assert "4-0 Ethibond" in facts_csv([marking], words=True)


def test_every_export_carries_the_caution():
    markings = a_class()
    progress, view = progress_of(markings[:1]), teacher_view(markings)
    for text in (
        export_json(markings),
        model_json(view),
        facts_csv(markings),
        progress_csv(progress),
        teacher_csv(view),
    ):
        assert tables().caution in text
    for text in (progress_text(progress, markings[:1]), teacher_text(view)):
        assert tables().caution in " ".join(text.split())


def test_the_table_of_facts_has_a_row_for_each_mark():
    marking = over()
    table = rows(facts_csv([marking]))
    assert len(table) == len(marking.facts) + len(marking.contradictions)
    row = next(r for r in table if r["address"] == SIZE.text())
    assert (row["outcome"], row["over_stated"], row["said"], row["key"]) == ("wrong", "yes", "3-0", "4-0")
    assert float(row["points"]) == -3


@pytest.mark.parametrize("name", ["=1+2", "+SUM(A1)", "-2+3", "@cmd", "\t=x", "＝A1"])
def test_no_cell_is_taken_for_a_formula(name):
    table = rows(facts_csv([over(student=name)]))
    assert all(row["student"].startswith("'") for row in table)
    assert all(not row["points"].startswith("'") for row in table)


def test_difficulty_of_a_field_is_the_share_right():
    view = teacher_view(a_class())
    lines = {line.field: line for line in view.fields}
    assert lines["repairs.size"].difficulty == pytest.approx(0.1)
    assert lines["repairs.extent"].difficulty == pytest.approx(0.9)
    assert lines["repairs.treatment"].difficulty == 1.0
    assert view.fields[0].field == "repairs.size"
    assert lines["repairs.glide"].students == 10


def test_a_field_that_only_the_strong_have_right_discriminates():
    lines = {line.field: line for line in teacher_view(a_class()).fields}
    assert lines["repairs.ends"].discrimination > 0.5
    assert lines["repairs.ends"].upper_lower == 1.0
    assert lines["repairs.treatment"].discrimination is None  # everybody has it: no spread
    assert lines["repairs.treatment"].upper_lower == 0.0


def test_few_students_give_no_discrimination():
    view = teacher_view(a_class()[:3])
    assert all(line.discrimination is None and line.upper_lower is None for line in view.fields)
    assert "Fewer than" in view.note
    assert view.note in " ".join(teacher_text(view).split())


def test_only_the_first_time_a_case_was_taken_counts():
    first, second = over(student="A"), handed_in(CASE, perfect(CASE), days=3, student="A")
    view = teacher_view([second, first])
    assert view.students[0].cases == 1
    assert view.students[0].over == 1


def test_what_students_entered_instead_is_shown():
    view = teacher_view([over(student="A"), over(student="B"), handed_in(CASE, perfect(CASE), student="C")])
    line = view.facts[0]
    assert (line.address, line.right, line.students, line.over) == (SIZE.text(), 1, 3, 2)
    assert line.said_instead == ["3-0 (2)"]
    assert "instead: 3-0 (2)" in " ".join(teacher_text(view).split())


@pytest.mark.parametrize("form", ["png", "svg", "pdf"])
def test_charts_are_drawn_in_each_form(tmp_path, form):
    markings = a_class()
    progress = progress_of([over(), handed_in(ready_set().cases[0], perfect(ready_set().cases[0]), 2)], "Ada")
    for name, figure in (("own", progress_figure(progress)), ("class", teacher_figure(teacher_view(markings)))):
        path = tmp_path / f"{name}.{form}"
        save_figure(figure, path)
        head = path.read_bytes()[:5]
        assert head == {"png": b"\x89PNG\r", "svg": b"<?xml", "pdf": b"%PDF-"}[form]
        if form == "svg":
            ElementTree.parse(path)


def test_the_chart_shows_each_kind_with_its_range_and_the_caution():
    figure = progress_figure(progress_of([over()], "Ada"))
    titles = " ".join(axis.get_title() for axis in figure.axes if axis.get_visible())
    assert "core suture" in titles and "few trials" in titles
    words = " ".join(text.get_text() for text in figure.texts)
    assert "Ada" in words
    assert tables().caution[:40] in " ".join(words.split())


def test_an_unknown_form_of_chart_is_refused(tmp_path):
    figure = progress_figure(progress_of([]))
    with pytest.raises(PracticeFault, match="written as"):
        save_figure(figure, tmp_path / "x.bmp")
    with pytest.raises(PracticeFault, match="could not be written"):
        save_figure(figure, tmp_path / "no" / "x.png")


@pytest.mark.parametrize(
    ("content", "words"),
    [
        (b"{", "not readable JSON"),
        (b"[]", "holds no markings"),
        (b'{"format": "notereader-markings", "format_version": 9}', "newer"),
        (b'{"format": "notereader-marking", "format_version": 1}', "faulty at"),
    ],
)
def test_a_file_without_markings_is_refused_in_words(tmp_path, content, words):
    path = tmp_path / "m.json"
    path.write_bytes(content)
    with pytest.raises(PracticeFault, match=words):
        read_markings(path)
    with pytest.raises(PracticeFault, match="could not be read"):
        read_markings(tmp_path / "missing.json")


def test_the_json_is_plain_json():
    data = json.loads(export_json([over()]))
    assert data["format"] == "notereader-markings"
    assert data["markings"][0]["facts"]
    assert NOTE not in json.dumps(data)
    assert STRANDS.text() in json.dumps(data)
