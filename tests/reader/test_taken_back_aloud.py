"""States that a speaker takes back in the same breath, and negations that end where the speaker begins anew."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Ring A2 pulley was released, no, correction, A2 was preserved.", {"ring A2": "intact"}),
        ("Ring finger. I laid the A2 open no actually I did not touch it, A2 was preserved.", {"ring A2": "intact"}),
        ("Index A2 preserved, sorry, A2 vented for 5 mm.", {"index A2": "vented"}),
        (
            "Ring finger. A2 intact. A4 excised, scratch that, A4 vented distally for 3 mm.",
            {"ring A2": "intact", "ring A4": "vented"},
        ),
        ("Ring finger. I took down the A4 sorry not took down I vented the A4.", {"ring A4": "vented"}),
        ("Ring A2 vented 4, sorry, 5 mm. A4 intact.", {"ring A2": "vented", "ring A4": "intact"}),
    ],
)
def test_a_pulley_taken_back(note: str, expected: dict[str, str]) -> None:
    assert each(note, "finding", "pulleys") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Ring finger. FDS intact no sorry FDS was half cut. FDP cut right through.", "partial"),
        ("The ring FDS was completely cut, wait no, it was a partial cut of about 60 percent.", "partial"),
        ("Ring FDP cut completely at the A2, sorry, the A4 pulley, ring FDS intact.", "intact"),
    ],
)
def test_how_far_a_tendon_was_cut_taken_back(note: str, expected: str) -> None:
    assert each(note, "extent")["ring FDS"] == expected


def test_the_name_alone_put_right_takes_nothing_else_back() -> None:
    assert each("Ring FDP cut completely at the A2, sorry, the A4 pulley, ring FDS intact.", "extent") == {
        "ring FDP": "complete",
        "ring FDS": "intact",
    }


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("ring finger the A2 was not cut I vented the A4 for three millimetres", "vented"),
        ("ring finger A2 not touched I released A4", "released"),
    ],
)
def test_a_denial_ends_where_the_speaker_begins_anew(note: str, expected: str) -> None:
    assert each(note, "finding", "pulleys") == {"ring A2": "intact", "ring A4": expected}


@pytest.mark.parametrize(
    "note",
    [
        "Index FDS the same Kessler of 4-0 as was used before.",
        "Index FDS same Kessler, 3-0.",
    ],
)
def test_the_same_stitch_has_the_full_name_of_the_one_before(note: str) -> None:
    before = "Index FDP repaired with a modified Kessler of 3-0 Prolene. "
    assert each(before + note, "stitch") == {"index FDP": "modified kessler", "index FDS": "modified kessler"}
    assert each(before + "Index FDS with a Kessler, 4-0.", "stitch")["index FDS"] == "kessler"


@pytest.mark.parametrize(
    ("note", "glide"),
    [
        ("small finger FDP repaired no gapping no triggering under the pulleys good cascade", "free"),
        ("Small finger FDP repaired with 4-0. Tested passively no gap free glide under A2.", "free"),
        ("Small finger FDP repaired with 4-0. It was not gapping and not running freely.", "restricted"),
    ],
)
def test_each_no_of_a_dictation_is_of_its_own_noun(note: str, glide: str) -> None:
    assert each(note, "glide") == {"small FDP": glide}


@pytest.mark.parametrize("size", ["two zero", "three zero"])
def test_a_size_spoken_with_zero_denies_nothing(size: str) -> None:
    note = f"FCR cut right through. FCR {size} prolene figure of eight. "
    note += "FCR tight in neutral so we left it with a bit of tension."
    assert each(note, "stitch") == {"FCR": "figure-of-eight"}
    assert each(note, "treatment") == {"FCR": "repaired"}
    assert each(note, "tension") == {"FCR": "present"}


def test_a_partial_cut_left_with_something_open_is_not_sewn() -> None:
    assert each("The ring FDS was 30% cut and I left it, no tension.", "treatment") == {"ring FDS": "left"}


def test_a_note_that_ends_in_a_correction() -> None:
    assert each("Ring FDP cut through. No gap, sorry,", "extent") == {"ring FDP": "complete"}


@pytest.mark.parametrize(
    ("note", "glide"),
    [
        ("It glided free, no, let me be accurate, it was catching under A4.", "catching"),
        ("It ran freely, let me put that right, it was catching at A2.", "catching"),
        ("It glided free, and to be accurate it was tested three times.", "free"),
    ],
)
def test_how_it_ran_put_right(note: str, glide: str) -> None:
    assert each("Ring FDP divided, four-strand repair. " + note, "glide") == {"ring FDP": glide}


def test_a_run_taken_back_is_not_free_whatever_took_its_place() -> None:
    note = "Ring FDP divided, four-strand repair. It glided free, no, let me be accurate, it caught once per pass."
    assert each(note, "glide").get("ring FDP") != "free"
