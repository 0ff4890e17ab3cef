"""Case sets: the samples, folders, single files, with and without keys."""

import json
from pathlib import Path

import pytest
from practice_making import NOTE, key_record, made_case, perfect

from notereader.practice import PracticeFault, case_of, load_set, mark, ready_set, save_set
from notereader.practice.cases import identifier
from notereader.record import dump_record
from notereader.vocabulary import samples_folder


def test_the_samples_are_a_ready_set_from_plain_to_hard():
    cases = ready_set().cases
    assert len(cases) >= 15
    difficulties = [case.difficulty for case in cases]
    assert difficulties == sorted(difficulties)
    assert {1, 2, 3, 4, 5} == set(difficulties)
    assert all(case.teaches and case.remark for case in cases)


def test_the_difficulties_are_those_of_the_readme():
    table = (samples_folder() / "README.md").read_text("utf-8").splitlines()
    rows = [[cell.strip() for cell in line.split("|")] for line in table if line.startswith(("| 0", "| 1"))]
    told = {case.id: case.difficulty for case in load_set(samples_folder()).cases}
    assert {row[1]: int(row[3]) for row in rows} == told


def test_several_ready_cases_of_every_difficulty_contradict_themselves():
    contradicting = [case for case in ready_set().cases if case.contradictions]
    assert len(contradicting) >= 4
    assert {hit.check for case in contradicting for hit in case.contradictions} >= {
        "two_values",
        "side_differs",
        "pulley_two_states",
        "strands_and_stitch",
        "dates_in_order",
    }


def test_every_key_holds_the_silences_that_matter():
    nearly_silent = ready_set().case("14-nearly-silent").key
    silent = [place for place, fact in nearly_silent.walk() if fact.basis == "silent"]
    assert len(silent) > 15
    assert any(place.field == "strands" for place in silent)


def test_a_single_file_keeps_everything(tmp_path):
    path = tmp_path / "set.json"
    save_set(ready_set().cases, path, "My class")
    again = load_set(path)
    assert again.title == "My class"
    assert again.cases == ready_set().cases


def test_a_set_without_keys_can_be_taken_and_marked_only_with_the_keys(tmp_path):
    case = made_case()
    path = tmp_path / "set.json"
    save_set([case], path, keys=False)
    handed = load_set(path).cases[0]
    assert handed.text == case.text
    assert handed.key is None and not handed.remark and not handed.teaches
    assert "Ethibond core" not in path.read_text("utf-8").replace(NOTE, "")
    with pytest.raises(PracticeFault, match="without its key"):
        mark(handed, perfect(case))
    assert mark(case, perfect(case)).perfect


def test_a_folder_of_notes_with_keys_and_of_whole_records(tmp_path):
    (tmp_path / "one.txt").write_text(NOTE, "utf-8")
    (tmp_path / "one.json").write_text(json.dumps({"operation": {"side": {"value": "left", "evidence": []}}}), "utf-8")
    (tmp_path / "two.json").write_text(dump_record(key_record()), "utf-8")
    (tmp_path / "cases.toml").write_text('title = "Two"\n[case.one]\ndifficulty = 5\n', "utf-8")
    found = load_set(tmp_path)
    assert found.title == "Two"
    assert [(case.id, case.difficulty) for case in found.cases] == [("two", 3), ("one", 5)]


def test_a_single_confirmed_record_is_a_set_of_one(tmp_path):
    path = tmp_path / "ring.json"
    path.write_text(dump_record(key_record()), "utf-8")
    assert [case.id for case in load_set(path).cases] == ["ring"]


def test_a_case_can_be_made_of_a_confirmed_case_of_the_casebook(tmp_path):
    from notereader.casebook import Casebook

    book = Casebook(tmp_path / "casebook.db")
    try:
        opened = book.open(book.add(key_record(), title="Ring"))
        opened.confirm("A. Therapist")
        case = case_of(opened.record, "Ring finger")
    finally:
        book.close()
    assert case.id == "Ring-finger"
    assert mark(case, perfect(case)).perfect


@pytest.mark.parametrize(
    ("name", "content", "words"),
    [
        ("a.json", b"{", "not readable JSON"),
        ("a.json", b'{"format": "notereader-cases", "format_version": 2}', "newer"),
        ("a.json", b'{"format": "notereader-cases", "format_version": 1, "cases": [{"id": ""}]}', "faulty at"),
        ("a.json", b'{"format": "other"}', "no notereader record"),
        ("a.json", b'{"format": "notereader-cases", "format_version": 1, "cases": []}', "holds no case"),
        ("missing.json", None, "could not be read"),
    ],
)
def test_a_file_that_is_no_set_is_refused_in_words(tmp_path, name, content, words):
    path = tmp_path / name
    if content is not None:
        path.write_bytes(content)
    with pytest.raises(PracticeFault, match=words) as fault:
        load_set(path)
    assert name in str(fault.value)


def test_an_empty_folder_is_refused(tmp_path):
    with pytest.raises(PracticeFault, match="holds no case"):
        load_set(tmp_path)


def test_a_faulty_list_of_difficulties_is_named(tmp_path):
    (tmp_path / "one.json").write_text(dump_record(key_record()), "utf-8")
    (tmp_path / "cases.toml").write_text("[case.one]\ndifficulty = 9\n", "utf-8")
    with pytest.raises(PracticeFault, match=r"cases.toml: case.one.difficulty"):
        load_set(tmp_path)
    (tmp_path / "cases.toml").write_text("[[[", "utf-8")
    with pytest.raises(PracticeFault, match="not valid TOML"):
        load_set(tmp_path)


def test_a_key_that_quotes_what_is_not_there_is_refused(tmp_path):
    (tmp_path / "one.txt").write_text("Another note altogether, long enough to hold all positions. " * 20, "utf-8")
    (tmp_path / "one.json").write_text(dump_record(key_record(), text=False), "utf-8")
    with pytest.raises(PracticeFault, match=r"one.json.*quoted words"):
        load_set(tmp_path)


def test_a_key_of_another_note_inside_a_set_is_refused(tmp_path):
    path = tmp_path / "set.json"
    save_set([made_case()], path)
    raw = json.loads(path.read_text("utf-8"))
    raw["cases"][0]["text"] += " more"
    path.write_text(json.dumps(raw), "utf-8")
    with pytest.raises(PracticeFault, match="another note"):
        load_set(path)


def test_two_cases_of_one_name_are_refused(tmp_path):
    with pytest.raises(PracticeFault, match="two cases"):
        save_set([made_case(), made_case()], tmp_path / "set.json")


def test_a_case_is_found_by_part_of_its_name():
    cases = ready_set()
    assert cases.case("thumb").id == "03-thumb-fpl"
    with pytest.raises(PracticeFault, match="several cases"):
        cases.case("0")
    with pytest.raises(PracticeFault, match="no case"):
        cases.case("99")


@pytest.mark.parametrize(("name", "made"), [("Ring 2/b", "Ring-2-b"), ("../../etc", "etc"), ("", ""), ("жэ", "жэ")])
def test_names_become_safe_file_names(name, made):
    assert identifier(name) == made
    assert Path(made).name == made
