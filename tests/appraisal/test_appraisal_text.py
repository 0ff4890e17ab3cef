"""What is printed: cautions, sources, no orders; and the resource files behind it."""

import json
import re
import tomllib
from pathlib import Path
from typing import Any

import pytest
from appraisal_making import proposed, record_of, repair_record, rivals

from notereader.appraisal import appraisal_text, appraise, figures, printed_appraisal, question_letter
from notereader.appraisal.cautions import all_cautions, cautions_about
from notereader.record import Record
from notereader.vocabulary import resource_folder, samples_folder
from notereader.vocabulary.places import ResourceFault

OWN = ("needs", "owed", "checks", "strength", "load", "glide", "healing", "cautions", "questions", "timeline")
SAMPLES = sorted(path for path in samples_folder().glob("*.json"))

# Words that would turn a report into an order or a promise.
ORDERS = re.compile(
    r"\b(you should|should be|must not|must be|we recommend|recommended|we advise|advisable|is safe|safely|start with"
    r"|do not (?:move|start|use)|avoid|allow(?:ed)? to|may begin|progress to|protocol:|guaranteed"
    r"|will hold|strong enough)\b",
    re.IGNORECASE,
)


def record_from_key(path: Path) -> Record:
    """Return the record of a sample's key, every fact proposed."""
    data = json.loads(path.read_text(encoding="utf-8"))
    data.pop("remark", None)

    def mark(part: Any) -> None:
        if isinstance(part, dict):
            if "value" in part and "evidence" in part:
                part.setdefault("status", "proposed")
                return
            part = list(part.values())
        if isinstance(part, list):
            for inner in part:
                mark(inner)

    mark(data)
    return Record.model_validate(data)


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_samples_are_appraised_without_orders_and_with_cautions(path: Path) -> None:
    record = record_from_key(path)
    before = record.model_dump_json()
    appraisal = appraise(record, day=7, posture_deg=60)
    assert record.model_dump_json() == before
    text = appraisal_text(appraisal) + question_letter(appraisal.questions, most=99)
    assert not ORDERS.findall(text.replace("recommends nothing", ""))
    assert "None" not in re.sub(r"None(?=\.| of the named)", "", text) and "{" not in text
    whole = " ".join(text.split())
    for caution in all_cautions():
        assert whole.count(caution) == 2


def test_there_are_samples() -> None:
    assert len(SAMPLES) >= 5


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_no_figure_without_a_source(path: Path) -> None:
    """Every mark in the text stands in the list, every factor, load, travel and window has a source."""
    appraisal = appraise(record_from_key(path), day=7)
    text = appraisal_text(appraisal)
    listed = {int(n) for n in re.findall(r"^ *\[(\d+)\]", text, re.MULTILINE)}
    assert {int(n) for n in re.findall(r"\[(\d+)\]", text)} == listed
    for tendon in appraisal.tendons:
        assert all(load.source for load in tendon.loads)
        assert tendon.strength is None or all(f.source for f in tendon.strength.factors)
    for digit in appraisal.glide:
        assert all(t.source for t in digit.travel) and all(c.source for c in (*digit.notes, *digit.pulleys))


def test_cautions_stand_wherever_figures_are() -> None:
    data = json.loads(printed_appraisal(repair_record(), day=7, as_json=True))
    assert data["cautions"] == all_cautions()
    assert all(tendon["cautions"] == cautions_about("general", "strength") for tendon in data["tendons"])
    assert all(digit["cautions"] == cautions_about("general", "glide") for digit in data["glide"])


@pytest.mark.parametrize(
    "part", ["no promise for one patient", "surgeon's orders", "local protocols", "licensed clinician"]
)
def test_the_usual_cautions_are_there(part: str) -> None:
    assert part in " ".join(all_cautions())


def test_an_empty_record_still_carries_the_cautions() -> None:
    text = " ".join(printed_appraisal(Record()).split())
    assert all(caution in text for caution in all_cautions())
    assert "The record holds no tendon." in text


def test_json_round_trip() -> None:
    appraisal = appraise(repair_record(), day=7)
    assert type(appraisal).model_validate_json(appraisal.model_dump_json()) == appraisal


def test_proposed_and_confirmed_are_told_apart() -> None:
    text = appraisal_text(appraise(repair_record(size=proposed("4-0"))))
    assert "4-0 (proposed)" in text
    assert "4 (confirmed" in text
    assert "1 proposed by the program" in text


def test_unknowns_are_shown_as_unknown() -> None:
    text = appraisal_text(appraise(repair_record(strands=None, stitch=None)))
    assert "strands: NOT STATED" in text


def test_rounding_never_narrows_a_range() -> None:
    from notereader.appraisal.models import ForceRange
    from notereader.appraisal.text import range_words

    assert range_words(ForceRange(low=14.9, high=20.1)) == "14 to 21 N"
    assert range_words(ForceRange(low=14.0, high=20.0)) == "14 to 20 N"


def test_lines_are_readable_on_paper() -> None:
    record = record_of(
        {f"repairs/{d}/{t}/-": dict(treatment="repaired") for d in ("ring", "small") for t in ("FDP", "FDS")}
    )
    assert max(len(line) for line in appraisal_text(appraise(record)).splitlines()) <= 112


def test_overlap_is_said_in_words() -> None:
    text = " ".join(appraisal_text(appraise(repair_record())).split())
    assert "the ranges overlap and the figures cannot say which is larger" in text


def _in_one_line(record: Record) -> str:
    return " ".join(appraisal_text(appraise(record)).split())


def test_a_width_the_record_does_not_give_is_said_to_be_the_usual_one() -> None:
    given = {"finding": "released", "extent_mm": 5.0}
    repair = {"repairs/ring/FDP/-": {"treatment": "repaired", "zone": "II"}}
    usual = _in_one_line(record_of({**repair, "pulleys/ring/A4/-": {"finding": "released"}}))
    told = _in_one_line(record_of({**repair, "pulleys/ring/A4/-": given}))
    assert "(A4 6.7 mm)" in usual and "add up to 7 mm" in usual
    assert "usual width of the pulley" not in told and "add up to 5 mm" in told


def test_a_contradiction_is_printed_with_both_values() -> None:
    text = " ".join(appraisal_text(appraise(repair_record(size=rivals("4-0", "3-0")))).split())
    assert "core suture size: the note says 4-0 and also 3-0" in text


@pytest.mark.parametrize("name", OWN)
def test_every_resource_of_the_appraisal_names_its_sources(name: str) -> None:
    """Every table that holds a figure has a source beside it or above it."""
    raw = tomllib.loads((resource_folder() / f"{name}.toml").read_text(encoding="utf-8"))
    bare = list(_bare_figures(raw, "source" in raw, name))
    assert not bare


# Settings and sentences, no figures of the trade; what stands behind them is said in the comments of their files.
_SETTINGS = {
    "limits",
    "strand_counts",
    "window",
    "no_figure",
    "sentences",
    "letter",
    "fields",
    "weights",
    "nerves",
    "arms",
    "point",
}


def _bare_figures(part: Any, sourced: bool, where: str) -> Any:
    if isinstance(part, dict):
        sourced = sourced or "source" in part
        for key, inner in part.items():
            if key not in _SETTINGS:
                yield from _bare_figures(inner, sourced or f"{key}_source" in part, f"{where}.{key}")
    elif isinstance(part, list):
        for inner in part:
            yield from _bare_figures(inner, sourced, where)
    elif isinstance(part, int | float) and not isinstance(part, bool) and not sourced:
        yield where


@pytest.mark.parametrize("name", OWN)
def test_no_sentence_of_the_resources_gives_an_order(name: str) -> None:
    text = (resource_folder() / f"{name}.toml").read_text(encoding="utf-8")
    assert not ORDERS.findall(text.replace("recommends nothing", ""))


def test_a_faulty_resource_is_named_with_its_entry(monkeypatch: pytest.MonkeyPatch) -> None:
    from notereader.appraisal.strength_tables import StrengthTables

    raw = tomllib.loads((resource_folder() / "strength.toml").read_text(encoding="utf-8"))
    raw["hold"][0]["low"] = 2.0
    monkeypatch.setattr(figures, "_raw", lambda name: raw)
    with pytest.raises(ResourceFault, match=r"strength\.toml: hold\.0.*must rise.*Mend that entry"):
        figures.load("strength.toml", StrengthTables)


def test_a_known_value_wider_than_the_unknown_is_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    from notereader.appraisal.strength_tables import StrengthTables

    raw = tomllib.loads((resource_folder() / "strength.toml").read_text(encoding="utf-8"))
    raw["hold"][0] |= {"low": 0.1, "high": 9.0}
    monkeypatch.setattr(figures, "_raw", lambda name: raw)
    with pytest.raises(ResourceFault, match="ranges wider than the unknown one"):
        figures.load("strength.toml", StrengthTables)
