"""No peripheral suture besides a core, in other words: 'and nothing more', '...; the FDS did not', 'only the FDP'."""

import pytest
from reader_sentences import each

CUT = "Ring finger, zone 2. FDP and FDS cut through completely. "
DEEP = CUT + "FDP: four-strand cruciate 3-0 Ethibond, 6-0 Prolene running epitendinous. "
BOTH = CUT + "FDP: four-strand cruciate 3-0 Ethibond. FDS: modified Kessler 4-0. "


@pytest.mark.parametrize(
    "remark",
    [
        "FDS: modified Kessler 4-0 Ethibond, nothing around.",
        "FDS repaired with a modified Kessler of 4-0 Ethibond and nothing more.",
        "FDS was joined with a figure-of-eight of 4-0 polyester, and nothing further.",
        "FDS modified Kessler, each slip 4-0 Ethibond, and nothing round those.",
    ],
)
def test_nothing_besides(remark: str) -> None:
    assert each(DEEP + remark, "peripheral") == {"ring FDP": "present", "ring FDS": "absent"}


@pytest.mark.parametrize(
    "remark",
    [
        "Only the profundus was given a circumferential suture, a running 6-0 Prolene.",
        "The FDP received a running 5-0 Prolene epitendinous; the FDS did not.",
        "FDP given 6-0 Prolene running epitendinous; FDS none.",
        "Epitendinous with 6-0 Prolene running done in FDP; in the FDS not done.",
        "A running 6-0 Prolene epitendinous completed the FDP repair; none was placed upon the superficialis.",
    ],
)
def test_left_out_behind_the_one_that_got_it(remark: str) -> None:
    assert each(BOTH + remark, "peripheral") == {"ring FDP": "present", "ring FDS": "absent"}


@pytest.mark.parametrize(
    "remark",
    [
        "FDS: modified Kessler 4-0 Ethibond, nothing else was injured.",
        "FDS: modified Kessler 4-0 Ethibond. No gap of the FDP; FDS none.",
    ],
)
def test_nothing_of_another_kind(remark: str) -> None:
    assert each(DEEP + remark, "peripheral").get("ring FDS") is None


@pytest.mark.parametrize("words", ["epi same", "epitendinous same"])
@pytest.mark.parametrize(("first", "state"), [("epi 6-0 Prolene running", "present"), ("no epi", "absent")])
def test_the_same_as_the_one_before(words: str, first: str, state: str) -> None:
    note = (
        f"Index and middle. Index FDP: 4-strand cruciate, 3-0 Ethibond, {first}. "
        f"Middle FDP: 2-strand Kessler 4-0 Ticron, {words}."
    )
    assert each(note, "peripheral") == {"index FDP": state, "middle FDP": state}
