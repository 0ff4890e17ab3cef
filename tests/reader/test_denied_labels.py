"""Labels that name a good state and are answered with no, and answers that tell nothing."""

import pytest
from reader_sentences import told

HEAD = "Ring FDP repaired.\n"


@pytest.mark.parametrize(
    "line",
    [
        *("A2 intact: no", "A2 intact? N", "A2 preserved Y/N: N", "All pulleys intact: N"),
        *("Free glide: no", "Glide free - no", "No gap: false", "Gap absent: no", "Tension free: no"),
        *("Ends clean: no", "Clean ends? N", "FDS intact: no", "FDS intact? N"),
        *("4-strand: no", "Circumferential suture done: No"),
    ],
)
def test_a_good_state_denied(line: str) -> None:
    assert told(HEAD + line, "glide", "gap", "tension", "ends", "extent", "strands").get("ring FDP") is None
    assert told(HEAD + line, "extent").get("ring FDS") is None
    assert told(HEAD + line, "peripheral").get("ring FDP") in (None, {"peripheral": "absent"})
    assert told(HEAD + line, group="pulleys") == {}


def test_only_the_one_that_is_answered() -> None:
    found = told(HEAD + "A2 intact - N, A4 intact - Y", group="pulleys")
    assert found == {"ring A4": {"finding": "intact"}}


@pytest.mark.parametrize("line", ["Gap: no", "Gap after repair: no", "Gap: [ ] yes [x] no", "Gap? N"])
def test_no_gap_is_still_none(line: str) -> None:
    assert told(HEAD + line, "gap") == {"ring FDP": {"gap": "none"}}


@pytest.mark.parametrize("line", ["Gap: no data", "Gap: No comment", "Tension: no idea", "Gap? no answer"])
def test_an_answer_that_tells_nothing(line: str) -> None:
    assert told(HEAD + line, "gap", "tension") == {}


@pytest.mark.parametrize("line", ["Tension: no    Gap: yes", "Bulk: no     Gap: 1 mm"])
def test_the_next_column_is_not_denied(line: str) -> None:
    assert told(HEAD + line, "gap")["ring FDP"] == {"gap": "seen"}


def test_normal_is_not_no() -> None:
    assert told("IF: FDP seen - N. FDS seen - N.", "extent")["index FDP"] == {"extent": "intact"}


@pytest.mark.parametrize("line", ["gap free ...... N (1 mm)", "No gap: N - 2 mm", "Gap-free? No (1 mm)"])
def test_a_good_state_denied_with_its_reason(line: str) -> None:
    assert told(HEAD + line, "gap").get("ring FDP") != {"gap": "none"}


@pytest.mark.parametrize("line", ["Glides freely? No (catches at A2)", "glides free ..... N (catches)"])
def test_the_answer_denies_nothing_behind_it(line: str) -> None:
    assert told(HEAD + line, "glide") == {"ring FDP": {"glide": "catching"}}


def test_dotted_lines_with_yes_and_no() -> None:
    found = told(HEAD + "gap ........ N\nglides free ..... Y\n", "gap", "glide")
    assert found == {"ring FDP": {"gap": "none", "glide": "free"}}
