"""Bad input gives a clear error or a record, never a traceback and never a hang.

How long each takes, and far larger ones, is measured in tests/benchmarks.
"""

import json
from pathlib import Path

import pytest
from cli_running import NOTE, only_a_sentence, quotes_of
from jsonschema import Draft202012Validator

from notereader.cli import main
from notereader.record import load_record, record_schema

Output = pytest.CaptureFixture[str]

REFUSED = {
    "empty": b"",
    "only white space": b" \r\n\t \xc2\xa0\n" * 50,
    "only marks": b"---\n...\n***\n" * 20,
    "zero bytes": bytes(4_000),
    "random bytes": bytes((7 * k * k + 13 * k) % 251 for k in range(60_000)),
    "a program": b"\x7fELF" + bytes(range(256)) * 8,
    "5 MB of text": NOTE.encode() * (5_000_000 // len(NOTE)),
    "5 MB of one letter": b"a" * 5_000_000,
    "200,000 words on one line": " ".join((NOTE.split() * 3_000)[:200_000]).encode(),
    "more than a spaCy text may hold": NOTE.encode() * (1_500_000 // len(NOTE)),
    "a record": b'{"format": "notereader-record", "format_version": 1}',
    "a web page": b"<!DOCTYPE html><html><body>FDP repaired</body></html>",
    "a broken archive": b"PK\x03\x04" + bytes(500),
    "a broken PDF": b"%PDF-1.7\n" + b"1 0 obj << /Type /Catalog >>\n" * 20,
    "a broken picture": b"\x89PNG\r\n\x1a\n" + bytes(500),
}

READ = {
    "lone surrogates": ("FDP \ud83d of the ring finger \udc00repaired. " + NOTE).encode("utf-8", "surrogatepass"),
    "lone surrogates in UTF-16": b"\xff\xfe" + ("FDP \ud83d repaired. " + NOTE).encode("utf-16-le", "surrogatepass"),
    "control characters": ("\x07\x1b[2J" + NOTE.replace(" ", "\x0b ", 5)).encode(),
    "right-to-left marks": ("\u202e" + NOTE.replace("no gap", "\u200fno\u202d gap\u2066")).encode(),
    "bytes of no encoding": NOTE.encode() + bytes(range(128, 256)),
    "carriage returns": NOTE.replace("\n", "\r").encode(),
    "no line at all": NOTE.replace("\n", " ").encode(),
    "one letter": b"a",
    "one figure": b"4",
    "a long word": b"a" * 200_000,
    "5,000 words on one line": " ".join((NOTE.split() * 60)[:5_000]).encode(),
    "deep brackets": b"(" * 2_000 + b"FDP repaired" + b")" * 2_000,
    "many empty lines": b"\n" * 100_000 + NOTE.encode(),
    "combining marks": ("FDP r" + "\u0301" * 2_000 + "epaired").encode(),
}


@pytest.mark.parametrize("name", REFUSED)
def test_what_is_no_note_is_refused_in_a_sentence(tmp_path: Path, capsys: Output, name: str) -> None:
    path = tmp_path / "note.txt"
    path.write_bytes(REFUSED[name])
    assert main(["read", str(path)]) == 1
    out, words = capsys.readouterr()
    assert out == ""
    assert only_a_sentence(words)
    assert words.startswith(("note.txt: ", f"{path}: "))


@pytest.mark.parametrize("name", READ)
def test_what_is_odd_is_read(tmp_path: Path, capsys: Output, name: str) -> None:
    path = tmp_path / "note.txt"
    path.write_bytes(READ[name])
    assert main(["read", str(path)]) == 0
    out, err = capsys.readouterr()
    assert err == ""
    data = json.loads(out)
    Draft202012Validator(record_schema()).validate(data)
    record = load_record(data)
    assert record.note.text is not None
    for quote in quotes_of(record):
        assert quote.span is not None
        assert record.note.text[slice(*quote.span)] == quote.exact


@pytest.mark.parametrize("name", ["lone surrogates", "control characters", "right-to-left marks", "carriage returns"])
def test_odd_characters_hide_no_fact(tmp_path: Path, capsys: Output, name: str) -> None:
    path = tmp_path / "note.txt"
    path.write_bytes(READ[name])
    assert main(["read", str(path)]) == 0
    record = load_record(capsys.readouterr().out)
    facts = {place.words(): fact.value for place, fact in record.walk()}
    assert facts["ring FDP: core suture size"] == "4-0"
    assert facts["ring FDP: gap after repair"] == "none"


@pytest.mark.parametrize("name", ["", "no such folder/note.txt", "nul\0byte", "."])
def test_a_name_that_leads_nowhere(name: str, capsys: Output) -> None:
    assert main(["read", name]) == 1
    assert only_a_sentence(capsys.readouterr().err)
