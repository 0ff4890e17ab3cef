"""The cautions travel with every form in which facts of strength, motion and pulleys leave."""

import json
from pathlib import Path

import pytest
from exchange_helpers import A4, STRANDS, SURGEON, WRIST, confirmed, example

from notereader.appraisal.cautions import brief_caution, cautions_about
from notereader.cli import main
from notereader.exchange import with_caution, without_caution, write_record
from notereader.exchange.cautions import brief_caution_for, cautions_for


def test_which_cautions_go_with_which_facts() -> None:
    assert cautions_for(STRANDS) == cautions_for(WRIST) == cautions_about("general", "strength", "glide")
    assert cautions_for(A4) == cautions_about("general", "glide")
    assert cautions_for(SURGEON) == cautions_about("general")
    assert brief_caution_for(A4) == brief_caution_for(STRANDS) == brief_caution()
    assert brief_caution_for(SURGEON) == ""


def test_a_record_carries_the_caution_once_and_gives_it_back() -> None:
    record = confirmed()
    twice = with_caution(with_caution(record))
    assert [remark.text for remark in twice.remarks] == [f"Caution: {brief_caution()}"]
    assert without_caution(twice) == record
    assert record.remarks == []


@pytest.mark.parametrize("form", ["text", "html", "json", "fhir", "csv"])
def test_every_form_says_it(form: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    write_record(example(), tmp_path / "record.json")
    assert main(["export", str(tmp_path / "record.json"), f"--{form}"]) == 0
    out = " ".join(capsys.readouterr().out.replace("&#x27;", "'").split())
    assert "no promise for one patient" in out
    assert "decide" in out
    if form == "json":
        assert json.loads(out)["remarks"]
