"""The word lists of the reader: found by name, and a missing one is told in plain words."""

import re
from pathlib import Path

import pytest

from notereader.vocabulary.places import ResourceFault
from notereader.vocabulary.wordlists import word_list

READER = Path(__file__).parents[2] / "notereader" / "reader"
ASKED = re.compile(r'word_list\("(\w+)", "(\w+)"\)')
BY_NAME = {"_list": "operation", "order_list": "aftercare", "element_list": "elements"}


def test_a_missing_list_is_told_in_plain_words() -> None:
    with pytest.raises(ResourceFault, match=r"reading\.toml: \[headings\] nothing"):
        word_list("headings", "nothing")
    with pytest.raises(ResourceFault, match=r"\[nowhere\]"):
        word_list("nowhere", "ordinary")


def test_every_list_the_reader_asks_for_is_there() -> None:
    asked = set()
    for file in READER.rglob("*.py"):
        code = file.read_text(encoding="utf-8")
        asked.update(ASKED.findall(code))
        for function, table in BY_NAME.items():
            if function != "_list" or file.name == "operation.py":
                asked.update((table, name) for name in re.findall(rf'(?<!\w){function}\("(\w+)"\)', code))
    assert len(asked) > 30
    for table, name in sorted(asked):
        assert word_list(table, name), (table, name)
