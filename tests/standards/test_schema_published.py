"""The record's schema against JSON Schema 2020-12, by the jsonschema library (an implementation not our own)."""

import json
from pathlib import Path

import pytest
from jsonschema import Draft202012Validator

from notereader.reader import read
from notereader.record import dump_record, load_record, record_schema
from notereader.vocabulary import samples_folder

SAMPLES = sorted(samples_folder().glob("*.txt"))


def test_the_schema_is_a_sound_schema() -> None:
    schema = record_schema()
    assert schema["$schema"] == "https://json-schema.org/draft/2020-12/schema"
    Draft202012Validator.check_schema(schema)


def test_every_reference_within_the_schema_leads_somewhere() -> None:
    schema = record_schema()

    def references(part: object) -> list[str]:
        if isinstance(part, dict):
            own = [part["$ref"]] if "$ref" in part else []
            return own + [ref for value in part.values() for ref in references(value)]
        return [ref for value in part for ref in references(value)] if isinstance(part, list) else []

    assert {ref.removeprefix("#/$defs/") for ref in references(schema)} <= set(schema["$defs"])


@pytest.mark.parametrize("sample", SAMPLES, ids=lambda path: path.stem)
def test_what_the_reader_makes_of_a_sample_is_valid(sample: Path) -> None:
    text = sample.read_text(encoding="utf-8")
    data = json.loads(dump_record(read(text, sample.name)))
    Draft202012Validator(record_schema()).validate(data)
    assert load_record(data).note.text == text


@pytest.mark.parametrize(
    "wrong",
    [
        {"format_version": 2},
        {"format": "other"},
        {"repairs": [{"digit": "ring", "tendon": "FDP", "facts": {"wings": {}}}]},
        {"repairs": [{"digit": "ring", "tendon": "EDC", "facts": {}}]},
        {"more": 1},
    ],
)
def test_the_schema_refuses_what_no_record_may_hold(wrong: dict[str, object]) -> None:
    data = {**json.loads(dump_record(read("FDP repaired.", "n"))), **wrong}
    assert not Draft202012Validator(record_schema()).is_valid(data)
