"""A repair that failed before this operation lends nothing to the new one."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "note",
    [
        "The ring FDP had ruptured through the old four-strand repair. It was revised with a 3-0 core suture.",
        "The old six-strand 4-0 repair of the ring FDP had pulled through. The ends were freshened and joined with 3-0 "
        "Ethibond.",
        "Ring FDP: previous 4-strand repair found ruptured. Re-repaired with 3-0 Prolene.",
        "The former modified Kessler suture of the ring FDP had given way. It was sewn again with 3-0 Prolene.",
    ],
)
def test_the_strands_of_the_old_repair_are_not_those_of_the_new_one(note: str) -> None:
    assert each(note, "size") == {"ring FDP": "3-0"}
    assert told(note, "strands", "stitch") == {}


@pytest.mark.parametrize(
    "note",
    [
        "Ring FDP: reported as repaired with four strands in the referral letter; only two were found.",
        "According to the transfer note the ring FDP had been given six strands; we counted four.",
    ],
)
def test_what_a_letter_said_of_it_is_no_finding(note: str) -> None:
    assert told(note, "strands") == {}


@pytest.mark.parametrize(
    "note",
    [
        "The old scar was opened. The ring FDP was given a four-strand repair.",
        "A previous release of A1 was seen. The ring FDP received a four-strand core.",
    ],
)
def test_what_else_is_old_takes_nothing_from_the_repair(note: str) -> None:
    assert each(note, "strands") == {"ring FDP": 4}


ELSEWHERE = "Colleagues elsewhere sutured the deep flexor of her middle finger in April with a two-strand Kessler. "


@pytest.mark.parametrize(
    "words",
    [
        "The old repair had pulled apart altogether. FDS was whole. I repaired the tendon again",
        "FDS had been stitched at that first operation too and was whole. I repaired the tendon again, this time",
        "The FDS was intact. The tendon was sutured anew",
        "Today the superficialis was uninjured. I sewed the tendon again",
    ],
)
def test_sewn_again_beside_a_whole_superficialis(words: str) -> None:
    found = told(f"{ELSEWHERE}{words} with a six-strand Yoshizu of 4-0 looped nylon.", "strands", "stitch", "treatment")
    assert found == {"middle FDP": {"strands": 6, "stitch": "yoshizu", "treatment": "repaired"}}


@pytest.mark.parametrize("extent", ["completely cut", "50 % cut"])
def test_a_superficialis_cut_today_is_the_tendon(extent: str) -> None:
    note = f"{ELSEWHERE}Today the FDS was found {extent}. It was repaired with a two-strand Kessler of 4-0 nylon."
    assert set(told(note, "strands")) == {"middle FDS"}
