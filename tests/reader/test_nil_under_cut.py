"""'Nil' in a grid: under 'Cut' none of a tendon was cut, under other titles it says nothing."""

import pytest
from reader_sentences import each

GRID = """Finger   Tendon   {title}      Core                               Afterwards
Index    FDP      100 %    4-strand cruciate, 4/0 Ethibond    no gap
         FDS      {cell}      -                                  -
Middle   FDP      100 %    4-strand cruciate, 4/0 Ethibond    no gap
"""


@pytest.mark.parametrize(("title", "cell"), [("Cut", "nil"), ("Division", "nil"), ("Cut", "none")])
def test_nil_under_cut(title: str, cell: str) -> None:
    assert each(GRID.format(title=title, cell=cell), "extent")["index FDS"] == "intact"


@pytest.mark.parametrize(("title", "cell"), [("Zone", "nil"), ("Cut", "-"), ("Cut", "n/a")])
def test_nil_elsewhere_and_no_answer(title: str, cell: str) -> None:
    assert "index FDS" not in each(GRID.format(title=title, cell=cell), "extent")
