"""Plain sentences and lines of forms, each set into a short note: what they tell of one tendon or pulley, or do not."""

import tomllib
from pathlib import Path
from typing import Any

import pytest

from notereader.reader import read
from notereader.record import Interval

_BANKS = tomllib.loads((Path(__file__).parent / "sentence_banks.toml").read_text(encoding="utf-8"))["bank"]


def _name(bank: dict[str, Any]) -> str:
    return f"{' '.join(bank['of'])} {'not ' if 'not' in bank else ''}{bank.get('not', bank.get('says'))}"


def _told(text: str, *of: str) -> object:
    for place, fact in read(text).walk():
        if (place.group, place.digit, place.part, place.side or "", place.field) == of:
            return [fact.value.low, fact.value.high] if isinstance(fact.value, Interval) else fact.value
    return None


@pytest.mark.parametrize("bank", _BANKS, ids=_name)
def test_what_a_plain_sentence_tells(bank: dict[str, Any]) -> None:
    told = {s: _told(bank["note"].replace("@", s), *bank["of"]) for s in bank["sentences"]}
    if "says" in bank:
        assert {s: v for s, v in told.items() if v != bank["says"]} == {}
    else:
        assert {s: v for s, v in told.items() if v == bank["not"]} == {}
