"""'All ends', 'no epitendinous in the palm': said under a list of repairs, of every one in it."""

import pytest
from reader_sentences import each

CUT = "Middle FDP severed, index FDP and index FDS severed. Middle FDS about 2/3 cut. "
SEWN = "Index FDP, index FDS, middle FDP and middle FDS repaired with 3-0 PDS."


@pytest.mark.parametrize("words", ["All ends ragged.", "All the ends were ragged."])
def test_all_ends_behind_a_partial_cut(words: str) -> None:
    found = each(CUT + words + " " + SEWN, "ends")
    assert found == dict.fromkeys(("middle FDP", "index FDP", "index FDS", "middle FDS"), "ragged")


def test_ends_of_the_last_alone() -> None:
    assert each("Index FDP severed. Ring FDS 50%, ends ragged. Ring FDS sewn.", "ends") == {"ring FDS": "ragged"}


LIST = "Index and middle FDP cut through, FDS index cut through, zone III.\n"
LIST += " index FDP: 3-0 Ethibond, six strands\n middle FDP: same\n index FDS: 3-0 Ethibond 2 strand Tajima\n"


@pytest.mark.parametrize(
    "words", [" no epitendinous used in palm", " epitendinous not used at this level", "No epitendinous sutures used."]
)
def test_none_under_a_list(words: str) -> None:
    assert each(LIST + words, "peripheral") == dict.fromkeys(("index FDP", "middle FDP", "index FDS"), "absent")


def test_none_of_the_wrist() -> None:
    note = "Wrist, zone V. FDP to index and middle repaired with 3/0 Ethibond. FCR with 3/0 Ethibond. "
    none = dict.fromkeys(("index FDP", "middle FDP", "FCR"), "absent")
    assert each(note + "No epitendinous sutures were placed.", "peripheral") == none
    one = "Index FDP repaired with 3/0 Ethibond. Ring FDP repaired with 3/0 Ethibond and a running 6-0. "
    assert each(one + "No epitendinous sutures were placed in the index.", "peripheral")["ring FDP"] == "present"
