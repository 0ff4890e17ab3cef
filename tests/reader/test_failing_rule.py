"""A rule that fails costs only what it would have read, and the draft says so; under the tests' setting it ends all."""

import pytest

from notereader.reader import pipeline, read
from notereader.reader.desk import Desk
from notereader.reader.scene import Scene

NOTE = "Right ring finger. FDP cut and repaired with 4-0 nylon. A2 was vented."


def broken(desk: Desk, scene: Scene) -> None:
    if scene.of("pulley"):
        raise KeyError("such")


def test_the_rest_is_read_and_the_draft_says_what_may_be_missing(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv(pipeline.STRICT)
    monkeypatch.setattr(pipeline, "pulleys", broken)
    record = read(NOTE)
    assert not record.pulleys and record.repairs[0].facts["size"].value == "4-0"
    remark = next(remark for remark in record.remarks if "failed" in remark.text)
    assert "broken" in remark.text and "such" not in remark.text
    assert [each.exact for each in remark.evidence] == ["A2 was vented."]


def test_the_tests_hear_of_it(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(pipeline, "pulleys", broken)
    with pytest.raises(ValueError):
        read(NOTE)
