"""Records written by released versions open in this one; the files are never made anew."""

import json
from pathlib import Path

import pytest
from jsonschema import Draft202012Validator

from notereader.appraisal import appraise
from notereader.record import Address, Interval, dump_record, load_record, record_schema

SPECIMENS = Path(__file__).parent / "specimens"
TENDON = Address("repairs", "middle", "FDP")


def test_a_record_of_version_1_opens_with_everything_in_it() -> None:
    data = (SPECIMENS / "record-version-1.json").read_text(encoding="utf-8")
    record = load_record(data)
    assert json.loads(dump_record(record)) == json.loads(data)
    facts = {place.text(): fact for place, fact in record.walk()}
    assert len(facts) == 11
    strands = facts[TENDON.field_of("strands").text()]
    assert (strands.value, strands.status, [rival.value for rival in strands.rivals]) == (6, "confirmed", [4])
    assert strands.evidence[0].exact == "six-strand"
    assert facts[TENDON.field_of("purchase_mm").text()].value == Interval(low=8, high=10)
    assert facts[TENDON.field_of("glide").text()].basis == "silent"
    assert facts["pulleys/middle/A4/-/finding"].said_by == "the surgeon"
    assert record.review.reviewer == "Hand clinic"
    assert [remark.text[:28] for remark in record.remarks] == ["The file is not all UTF-8; 1"]


@pytest.mark.parametrize("path", sorted(SPECIMENS.glob("*.json")), ids=lambda path: path.stem)
def test_every_specimen_can_be_worked_with(path: Path) -> None:
    record = load_record(path.read_bytes())
    Draft202012Validator(record_schema()).validate(json.loads(dump_record(record)))
    assert appraise(record).cautions
