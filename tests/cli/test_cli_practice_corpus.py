"""Every note of a folder of practice notes that may lie beside the checkout gives a valid record."""

import json
from pathlib import Path

import pytest
from cli_running import quotes_of
from jsonschema import Draft202012Validator

from notereader.cli import main
from notereader.record import load_record, record_schema
from notereader.vocabulary import resource_folder

NOTES = sorted((resource_folder().parent.parent / "shared" / "corpus" / "practice").glob("*.txt"))


@pytest.mark.skipif(not NOTES, reason="no practice notes beside this checkout")
def test_every_practice_note_gives_a_valid_record(tmp_path: Path) -> None:
    assert main(["read", *map(str, NOTES), "--out", str(tmp_path)]) == 0
    schema = Draft202012Validator(record_schema())
    for note in NOTES:
        data = json.loads((tmp_path / f"{note.stem}.json").read_bytes())
        schema.validate(data)
        record = load_record(data)
        text = record.note.text
        assert text is not None
        for quote in quotes_of(record):
            assert quote.span is not None
            assert text[slice(*quote.span)] == quote.exact
