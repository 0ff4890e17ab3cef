"""Records out as JSON and in again: nothing changes, nothing newer or broken is taken for what it is not."""

import json
from typing import Any

import pytest
from hypothesis import given, settings
from jsonschema import Draft202012Validator
from record_making import records

from notereader.record import (
    FORMAT_VERSION,
    Address,
    Evidence,
    Fact,
    Note,
    Record,
    RecordRefused,
    Repair,
    dump_record,
    load_record,
    loading,
    record_schema,
)

TEXT = "Four-strand repair of FDP."
SCHEMA = Draft202012Validator(record_schema())


def sound() -> dict[str, Any]:
    """Return a record in JSON with one fact and its proof."""
    fact = Fact(value=4, evidence=[Evidence.at(TEXT, 0, 11, "")])
    record = Record(note=Note.of(TEXT, "n.txt"), repairs=[Repair(digit="ring", tendon="FDP", facts={"strands": fact})])
    return json.loads(dump_record(record))


@given(records())
@settings(max_examples=60, deadline=None)
def test_a_record_comes_back_as_it_went_out(record: Record) -> None:
    text = dump_record(record)
    again = load_record(text)
    assert again == record
    assert dump_record(again) == text


@given(records())
@settings(max_examples=50, deadline=None)
def test_every_record_meets_the_published_schema(record: Record) -> None:
    SCHEMA.validate(json.loads(dump_record(record)))
    SCHEMA.validate(json.loads(dump_record(record, text=False)))


@given(records())
@settings(max_examples=50, deadline=None)
def test_addresses_lead_back_to_their_facts(record: Record) -> None:
    for place, fact in record.walk():
        assert Address.parse(place.text()) == place
        assert record.fact(place) is fact


@given(records())
@settings(max_examples=50, deadline=None)
def test_without_text_only_the_text_is_gone(record: Record) -> None:
    whole, bare = json.loads(dump_record(record)), json.loads(dump_record(record, text=False))
    assert whole["note"].pop("text") == record.note.text
    assert bare == whole


def test_json_is_accepted_as_bytes_text_and_parsed() -> None:
    text = json.dumps(sound())
    assert load_record(text) == load_record(text.encode()) == load_record(sound())


def test_a_newer_format_is_refused_with_what_to_do() -> None:
    with pytest.raises(RecordRefused, match=r"format version 2.*reads up to version 1.*update"):
        load_record({**sound(), "format_version": FORMAT_VERSION + 1})


@pytest.mark.parametrize("version", [0, -1, "1", 1.0, None, True])
def test_a_version_that_is_none_is_refused(version: object) -> None:
    with pytest.raises(RecordRefused, match="format_version"):
        load_record({**sound(), "format_version": version})


def test_an_older_format_goes_through_every_migration(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(loading, "FORMAT_VERSION", 3)
    monkeypatch.setattr(
        loading,
        "MIGRATIONS",
        {
            1: lambda raw: {**raw, "format_version": 2, "notes": raw["note"]},
            2: lambda raw: {key: value for key, value in {**raw, "format_version": 3}.items() if key != "notes"},
        },
    )
    assert load_record(sound()).format_version == 3


@pytest.mark.parametrize(
    ("content", "says"),
    [
        ("", "no readable JSON"),
        ("{", "no readable JSON"),
        ("[" * 200_000, "no readable JSON"),
        ("[1]", "expected an object"),
        ("{}", '"format" is None'),
        (b"\xff\xfe\x00", "no readable JSON"),
        ('{"format": "something-else", "format_version": 1}', "something-else"),
    ],
)
def test_what_is_no_record_is_refused(content: str | bytes, says: str) -> None:
    with pytest.raises(RecordRefused, match=says):
        load_record(content)


def change(raw: dict[str, Any], path: str, value: object) -> dict[str, Any]:
    """Return a record in JSON with one value changed; the path is dotted, numbers are places in lists."""
    *way, last = path.split(".")
    here: Any = raw
    for step in way:
        here = here[int(step)] if step.isdigit() else here[step]
    here[int(last) if last.isdigit() else last] = value
    return raw


FACT = "repairs.0.facts.strands"


@pytest.mark.parametrize(
    ("path", "value", "says"),
    [
        ("unknown", 1, "unknown"),
        (f"{FACT}.colour", "red", "colour"),
        ("repairs.0.facts.wings", {"value": 2}, "there is no such field; known are zone"),
        (f"{FACT}.value", 99, "99 is not possible"),
        (f"{FACT}.value", "four", "not possible"),
        (f"{FACT}.status", "sure", "repairs.0.facts.strands.status"),
        ("repairs.0.tendon", "EDC", "repairs.0.tendon"),
        ("note.text", TEXT + "!", "checksum"),
        (f"{FACT}.evidence.0.selector.0.end", 500, "do not stand at"),
        (f"{FACT}.evidence.0.selector.0.start", 1, "do not stand at"),
        (f"{FACT}.evidence.0.selector.0.start", -1, "greater than or equal to 0"),
        (f"{FACT}.evidence.0.selector.1.exact", "six-strand", "do not stand at"),
    ],
)
def test_a_record_that_contradicts_itself_is_refused(path: str, value: object, says: str) -> None:
    with pytest.raises(RecordRefused, match=says):
        load_record(change(sound(), path, value))


def test_a_quote_that_ends_before_it_begins_is_refused() -> None:
    raw = change(sound(), f"{FACT}.evidence.0.selector.0.start", 11)
    with pytest.raises(RecordRefused, match="lies before its start"):
        load_record(change(raw, f"{FACT}.evidence.0.selector.0.end", 3))


def test_a_remark_whose_words_do_not_stand_there_is_refused() -> None:
    raw = sound()
    raw["remarks"] = [{"text": "odd", "evidence": [Evidence.at(TEXT, 0, 11, "").model_dump(mode="json")]}]
    assert load_record(raw).remarks[0].text == "odd"
    raw["remarks"][0]["evidence"][0]["selector"][0]["end"] = 12
    with pytest.raises(RecordRefused, match=r"A remark: the quoted words do not stand at 0-12 of the note"):
        load_record(raw)


def test_a_place_beyond_a_note_whose_text_was_left_out_is_refused() -> None:
    raw = sound()
    del raw["note"]["text"]
    assert load_record(raw).note.text is None
    with pytest.raises(RecordRefused, match=r"do not stand at 0-27 of the note"):
        load_record(change(raw, f"{FACT}.evidence.0.selector.0.end", len(TEXT) + 1))


@pytest.mark.parametrize("name", ["strands", "repairs", "value"])
def test_a_name_entered_twice_in_one_object_is_refused(name: str) -> None:
    # RFC 8259, section 4: of names that are not unique a reader may take either value.
    text = json.dumps(sound())
    doubled = text.replace(f'"{name}": ', f'"{name}": 0, "{name}": ', 1)
    with pytest.raises(RecordRefused, match=f"no readable JSON: '{name}' is entered twice in one object"):
        load_record(doubled)


@pytest.mark.parametrize("figure", ["NaN", "Infinity", "-Infinity", "1e999", "1" * 5000])
def test_a_figure_that_is_none_is_refused(figure: str) -> None:
    text = json.dumps(sound()).replace('"value": 4', f'"value": {figure}')
    with pytest.raises(RecordRefused):
        load_record(text)


def test_one_tendon_entered_twice_is_refused() -> None:
    raw = sound()
    raw["repairs"].append(raw["repairs"][0])
    with pytest.raises(RecordRefused, match="ring FDP is entered twice; put its facts into one entry"):
        load_record(raw)
