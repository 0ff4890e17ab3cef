"""The reader against every collection of notes with keys.

The target is an F1 of 0.97 over the facts of repairs and pulleys, and over all facts, with at most 0.2 % of the
proposed facts of repairs and pulleys over-stated, 99 % of the evidence touching the key's, and no broken quote. The
floors below are what the reader reaches today, rounded down to the whole percent: where one stands below 97, that is
how far there is to go. A floor may only rise. `fresh1`, `fresh2` and later batches were each read once with the rules
frozen before anything was learnt from them; what stands here is the score since then.
"""

import importlib.util
import io
import json
import re
import tomllib
from contextlib import redirect_stdout
from dataclasses import dataclass
from functools import cache
from pathlib import Path

import jsonschema
import pytest
from collections_of_notes import PRACTICE, ROOT, its_turn, notes, places, record_of, tally_of
from scoring import STRENGTH_GROUPS, Tally

from notereader.record import record_schema

# Known over-stated facts, by collection/note, entry and field, each with the reason why it is still read wrongly.
ALLOWED_OVERSTATEMENTS: dict[str, str] = tomllib.loads(
    Path(__file__).with_name("overstated.toml").read_text(encoding="utf-8")
)


@dataclass(frozen=True)
class Floor:
    """Whole percents a collection must reach: F1 of repairs and pulleys, F1 of all, evidence that touches the key."""

    strength: int
    everything: int
    touching: int


FLOORS = {
    "fresh1": Floor(99, 99, 98),
    "fresh2": Floor(99, 99, 98),
    "fresh3": Floor(97, 98, 96),
    "fresh4": Floor(99, 99, 97),
    "fresh5": Floor(98, 99, 97),
    "fresh6": Floor(96, 97, 97),
    "fresh7": Floor(97, 97, 98),
    "fresh8": Floor(96, 96, 96),
    "fresh9": Floor(99, 97, 96),
    "fresh10": Floor(98, 98, 97),
    "fresh11": Floor(97, 97, 97),
    "fresh12": Floor(96, 97, 96),
    "fresh13": Floor(97, 97, 97),
    "fresh14": Floor(98, 98, 98),
    "fresh15": Floor(98, 99, 98),
    "fresh16": Floor(98, 98, 97),
    "fresh17": Floor(99, 99, 97),
    "fresh18": Floor(99, 99, 98),
    "fresh19": Floor(98, 98, 97),
    "fresh20": Floor(97, 98, 97),
    "fresh21": Floor(98, 99, 98),
    "fresh22": Floor(99, 99, 98),
    "fresh23": Floor(99, 99, 98),
    "fresh24": Floor(99, 99, 98),
    "fresh25": Floor(99, 99, 98),
    "fresh26": Floor(100, 99, 98),
    "fresh27": Floor(96, 96, 97),
    "fresh28": Floor(97, 96, 97),
    "fresh29": Floor(97, 96, 97),
    "fresh30": Floor(97, 96, 97),
    "fresh31": Floor(98, 98, 97),
    "fresh32": Floor(98, 97, 98),
    "fresh33": Floor(97, 97, 97),
    "fresh34": Floor(97, 97, 98),
    "fresh35": Floor(96, 96, 97),
    "fresh36": Floor(97, 96, 97),
    "fresh37": Floor(95, 93, 97),
    "fresh38": Floor(97, 95, 95),
    "fresh39": Floor(95, 93, 97),
    "fresh40": Floor(93, 94, 95),
    "fresh41": Floor(95, 94, 96),
    "fresh43": Floor(96, 94, 96),
    "fresh46": Floor(96, 94, 97),
    "fresh47": Floor(96, 95, 95),
    "fresh48": Floor(96, 96, 96),
    "fresh49": Floor(97, 96, 94),
    "fresh42": Floor(94, 93, 94),
    "fresh44": Floor(96, 93, 98),
    "fresh45": Floor(95, 94, 94),
    "fresh50": Floor(95, 94, 95),
    "fresh51": Floor(94, 93, 92),
    "fresh52": Floor(96, 94, 95),
    "fresh53": Floor(96, 93, 96),
    "fresh54": Floor(96, 94, 95),
    "fresh55": Floor(97, 94, 94),
    "fresh56": Floor(96, 95, 97),
    "fresh57": Floor(97, 96, 96),
    "fresh58": Floor(96, 95, 96),
    "fresh59": Floor(97, 96, 96),
    "fresh60": Floor(99, 98, 96),
    "fresh61": Floor(97, 96, 95),
    "fresh62": Floor(99, 97, 97),
    "fresh63": Floor(98, 96, 96),
    "fresh64": Floor(97, 96, 96),
    "fresh65": Floor(97, 96, 94),
    "fresh66": Floor(98, 97, 97),
    "fresh67": Floor(97, 97, 98),
    "fresh68": Floor(96, 97, 96),
    "fresh69": Floor(98, 97, 96),
    "fresh70": Floor(95, 95, 97),
    "fresh71": Floor(97, 98, 96),
    "fresh72": Floor(97, 97, 98),
    "fresh73": Floor(93, 93, 94),
    "fresh74": Floor(96, 95, 96),
    "fresh75": Floor(99, 99, 98),
    "fresh76": Floor(98, 98, 97),
    "fresh77": Floor(99, 99, 96),
    "fresh78": Floor(94, 94, 96),
    "fresh79": Floor(96, 97, 97),
    "fresh80": Floor(92, 92, 96),
    "fresh81": Floor(98, 97, 94),
    "fresh82": Floor(94, 92, 96),
    "fresh83": Floor(98, 98, 97),
    "fresh84": Floor(93, 93, 95),
    "fresh85": Floor(99, 97, 96),
    "fresh86": Floor(95, 94, 95),
    "fresh87": Floor(93, 92, 94),
    "fresh88": Floor(97, 96, 96),
    "fresh89": Floor(95, 95, 96),
    "fresh90": Floor(95, 96, 96),
    "fresh91": Floor(94, 95, 96),
    "fresh92": Floor(93, 94, 96),
    "fresh93": Floor(90, 91, 96),
    "fresh94": Floor(89, 91, 95),
    "fresh95": Floor(95, 95, 97),
    "fresh96": Floor(95, 95, 97),
    "fresh97": Floor(91, 92, 95),
    "fresh98": Floor(89, 88, 91),
    "fresh99": Floor(93, 95, 96),
    "fresh100": Floor(91, 93, 97),
    "fresh101": Floor(96, 95, 95),
    "fresh104": Floor(96, 97, 96),
    "fresh105": Floor(97, 97, 97),
    "voices1": Floor(98, 98, 98),
    "voices2": Floor(95, 96, 96),
    "voices3": Floor(96, 96, 96),
    "voices4": Floor(97, 97, 97),
    "voices5": Floor(97, 97, 97),
    "voices6": Floor(99, 99, 98),
    "voices7": Floor(96, 96, 96),
    "voices8": Floor(97, 96, 97),
    "voices9": Floor(98, 97, 97),
    "voices10": Floor(95, 94, 96),
    "voices11": Floor(95, 95, 96),
    "voices12": Floor(98, 97, 96),
    "voices13": Floor(92, 94, 96),
    "voices14": Floor(87, 91, 94),
    "voices15": Floor(92, 92, 93),
    "voices16": Floor(97, 97, 98),
    "golden": Floor(99, 99, 99),
    "samples": Floor(99, 99, 99),
    "practice": Floor(99, 99, 99),
}

# A new collection is held to nothing but sound quotes and the allow-list until its first score is written down here.
UNMEASURED = Floor(0, 0, 0)
COLLECTIONS = sorted(places())


@pytest.mark.parametrize("name", COLLECTIONS)
def test_reader_reaches_the_floor(name: str) -> None:
    tally, floor = tally_of(name), FLOORS.get(name, UNMEASURED)
    assert sum(tally.right.values()) > 0
    reached = (100 * tally.f1(*STRENGTH_GROUPS), 100 * tally.f1(), 100 * tally.touching / max(1, tally.touchable))
    for value, least in zip(reached, (floor.strength, floor.everything, floor.touching), strict=True):
        assert value >= least, f"{name}: reached {reached}, the floor is {floor}"


# All collections together; the mark is 97 of repairs and pulleys. With the hard notes of fresh94 to fresh98 the
# evidence touches the key in just under 97 of 100; no collection kept before fell.
TOGETHER = Floor(97, 96, 96)


def test_all_notes_together_reach_the_floor() -> None:
    everything = Tally()
    for name in COLLECTIONS:
        everything.add(tally_of(name))
    assert 100 * everything.f1(*STRENGTH_GROUPS) >= TOGETHER.strength
    assert 100 * everything.f1() >= TOGETHER.everything
    assert 100 * everything.touching / everything.touchable >= TOGETHER.touching


@pytest.mark.parametrize("name", COLLECTIONS)
def test_every_quote_is_the_words_at_its_position(name: str) -> None:
    assert tally_of(name).broken_quotes == 0
    for text, _ in notes(places()[name]).values():
        for group in ("repairs", "pulleys", "injuries"):
            for entry in record_of(text)[group]:
                for fact in entry["facts"].values():
                    assert fact["evidence"], (group, entry["digit"], fact)


@pytest.mark.parametrize("name", COLLECTIONS)
def test_nothing_is_overstated_that_is_not_listed(name: str) -> None:
    new = [fault for fault in tally_of(name).overstated if fault.line() not in ALLOWED_OVERSTATEMENTS]
    assert not new, "over-stated and not on the list: " + "; ".join(f"{f.line()}: {f.said} for {f.truth}" for f in new)


def test_the_list_of_known_overstatements_holds_nothing_mended() -> None:
    there = {fault.line() for name in COLLECTIONS for fault in tally_of(name).overstated}
    listed = {line for line in ALLOWED_OVERSTATEMENTS if line.split("/")[0] in COLLECTIONS}
    assert listed <= there, f"mended, take out of the list: {sorted(listed - there)}"
    assert all(reason.strip() for reason in ALLOWED_OVERSTATEMENTS.values())


@pytest.mark.parametrize("name", COLLECTIONS)
def test_notes_without_a_tendon_repair_get_none(name: str) -> None:
    treated = ("repaired", "reinserted", "grafted")
    for note, (text, key) in notes(places()[name]).items():
        if any("value" in entry["facts"].get("treatment", {}) for entry in key.get("repairs") or []):
            continue
        record = record_of(text)
        assert not [e for e in record["repairs"] if e["facts"].get("treatment", {}).get("value") in treated], note
        assert any("No repair" in remark["text"] for remark in record.get("remarks", [])), note


@cache
def _schema() -> jsonschema.Draft202012Validator:
    return jsonschema.Draft202012Validator(record_schema())


@pytest.mark.parametrize("name", COLLECTIONS)
def test_records_are_valid_by_the_published_schema(name: str) -> None:
    validator = _schema()
    chosen = [(note, text) for note, (text, _) in notes(places()[name]).items() if its_turn(f"schema {note}")]
    for note, text in chosen:
        faults = [error.message for error in validator.iter_errors(record_of(text))]
        assert not faults, (note, faults[:3])


@pytest.mark.skipif(not PRACTICE.is_dir(), reason="the shared notes are not beside this checkout")
def test_scorer_counts_as_the_shared_one(tmp_path: Path) -> None:
    spec = importlib.util.spec_from_file_location("shared_score", PRACTICE.parent / "score.py")
    assert spec is not None and spec.loader is not None
    shared = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(shared)
    for note, (text, _) in notes(PRACTICE).items():
        (tmp_path / f"{note}.json").write_text(json.dumps(record_of(text)), encoding="utf-8")
    printed = io.StringIO()
    with redirect_stdout(printed):
        shared.score(PRACTICE, tmp_path, show=True)
    tally, lines = tally_of("practice"), printed.getvalue()
    triples = sum(tally.right.values()) + sum(tally.missed.values())
    assert f"ALL P {_precision(tally.right, tally.wrong):.3f}" in lines
    whole = re.search(r"^ALL .* F1 (\S+)  triples=(\d+)$", lines, re.M)
    strength = re.search(r"^REPAIRS\+PULLEYS .* F1 (\S+)$", lines, re.M)
    assert whole is not None and whole.groups() == (f"{tally.f1():.3f}", str(triples))
    assert strength is not None and strength.group(1) == f"{tally.f1(*STRENGTH_GROUPS):.3f}"
    assert f"OVERSTATED {len(tally.overstated)} of {tally.promising} " in lines
    assert f"EVIDENCE touches key {tally.touching}/{tally.touchable}  broken quotes {tally.broken_quotes}" in lines
    assert lines.count("ERR\t") == len(tally.faults)
    for tag in tally.right:
        count = tally.right[tag] + tally.missed[tag]
        assert re.search(rf"^{re.escape(tag)} .* n={count}$", lines, re.M), tag


def _precision(right: dict[str, int], wrong: dict[str, int]) -> float:
    return sum(right.values()) / (sum(right.values()) + sum(wrong.values()))


def test_every_note_has_a_key_and_every_key_a_note() -> None:
    for folder in [*(ROOT / "tests" / "notes").iterdir(), ROOT / "samples"]:
        texts, keys = ({p.stem for p in folder.glob(f"*.{kind}")} for kind in ("txt", "json"))
        assert texts == keys and texts, folder.name
