"""Short invented notes, each a wording or a layout of its own, with the facts of repairs and pulleys they state.

Every line of a bank is one note: its text and the facts expected of it. The floors are what the reader reaches today
over the facts of repairs and pulleys, rounded down to the whole percent; a floor may only rise. People who had not
seen the rules wrote the banks; they do not count a plain 'divided' as cut through, as the reader does.
"""

import json
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from notereader.reader import read

HERE = Path(__file__).parent
FLOORS = {
    "behaviour_of_several": 93,
    "extents_of_several": 95,
    "forms_and_lists": 94,
    "layouts": 92,
    "layouts_again": 98,
    "one_tendon_in_short": 92,
    "references": 90,
    "several_tendons_in_short": 85,
    "short_notes_mixed": 93,
    "sutures_of_several": 95,
    "traps": 82,
    "traps_again": 93,
    "wordings_in_short_notes": 98,
    "wordings_of_fields": 94,
}
# Percent of what is read that must be right, whatever is missed. The traps were written to mislead: their facts are
# hinted at ('a third of that', 'content with the same next door') so that even people err.
_LEAST_PRECISE = {"traps": 85}
_LEAST_PRECISE_ELSEWHERE = 92

Facts = dict[str, Any]


@cache
def counts(bank: str) -> tuple[int, int, int]:
    """Return how many facts of a bank are read right, read wrong, and missed."""
    right = wrong = missed = 0
    for line in (HERE / f"{bank}.jsonl").read_text(encoding="utf-8").splitlines():
        case = json.loads(line)
        expected = {k: _plain(v) for k, v in case["expect"].items() if k.startswith(("repairs", "pulleys"))}
        found = _facts(case["text"])
        hits = {k for k in found if k in expected and _same(found[k], expected[k])}
        right += len(hits)
        wrong += len(found.keys() - hits)
        missed += len(expected.keys() - hits)
    return right, wrong, missed


def _facts(text: str) -> Facts:
    found: Facts = {}
    for place, fact in read(text).walk():
        if place.group in ("repairs", "pulleys"):
            parts = (place.group, place.digit or "-", place.part, place.side or "-", place.field)
            found["/".join(str(p) for p in parts)] = _plain(fact.model_dump(mode="json")["value"])
    return found


def _plain(value: object) -> object:
    if isinstance(value, dict):
        return value.get("low"), value.get("high")
    if isinstance(value, list):
        return tuple(value)
    return value.casefold() if isinstance(value, str) else value


def _same(a: object, b: object) -> bool:
    pairs = [v if isinstance(v, tuple) else (v, v) for v in (a, b)]
    return pairs[0] == pairs[1]


@pytest.mark.parametrize("bank", sorted(FLOORS))
def test_a_bank_of_wordings_is_read_as_well_as_before(bank: str) -> None:
    right, wrong, missed = counts(bank)
    reached = 100 * 2 * right / (2 * right + wrong + missed)
    assert reached >= FLOORS[bank], f"{bank}: {reached:.2f} of 100 ({right} right, {wrong} wrong, {missed} missed)"


@pytest.mark.parametrize("bank", sorted(FLOORS))
def test_what_is_read_of_a_bank_is_seldom_wrong(bank: str) -> None:
    right, wrong, _missed = counts(bank)
    assert 100 * right / (right + wrong) >= _LEAST_PRECISE.get(bank, _LEAST_PRECISE_ELSEWHERE)


def test_every_bank_has_its_floor() -> None:
    assert {path.stem for path in HERE.glob("*.jsonl")} == FLOORS.keys()
