"""Two tendons, told in every order: sutures dealt out ahead of their tendons, references, results of one alone."""

import itertools

import pytest
from reader_sentences import Shown, told

_FOUR, _TWO = "4-strand cruciate of 3-0 Ethibond", "2-strand Kessler of 4-0 Prolene"
_CUT = (
    "FPL and index FDP completely divided.",
    "Thumb: FPL completely divided. Index: FDP completely divided.",
    "The flexor pollicis longus and the index profundus were both completely divided.",
    "THUMB\nFPL complete\n\nINDEX\nFDP complete\n",
    "1) FPL complete 2) FDP index complete",
)
_SEWN = (
    f"FPL repaired with a {_FOUR}, index FDP with a {_TWO}.",
    f"The FPL and FDP were repaired with a {_FOUR} and a {_TWO} respectively.",
    f"FPL: {_FOUR}. FDP: {_TWO}.",
    f"Thumb: {_FOUR}. Index: {_TWO}.",
    f"A {_FOUR} was used for the FPL and a {_TWO} for the FDP.",
    f"{_FOUR} in the thumb, {_TWO} in the index.",
    f"Repair: {_FOUR} (thumb), {_TWO} (index).",
    f"Index FDP {_TWO}; FPL {_FOUR}",
)
_RESULTS: tuple[tuple[str, dict[str, str]], ...] = (
    ("The FPL did not gap; the index FDP had a 1 mm gap.", {"thumb FPL": "none", "index FDP": "seen"}),
    ("No gap in the thumb, but a 1 mm gap in the index.", {"thumb FPL": "none", "index FDP": "seen"}),
    ("Gap: thumb 0, index 1 mm.", {"thumb FPL": "none", "index FDP": "seen"}),
    ("No gap (FPL). 1 mm gap (FDP).", {"thumb FPL": "none", "index FDP": "seen"}),
    ("FPL no gap; FDP not tested.", {"thumb FPL": "none"}),
    ("FPL: no gap. FDP not tested.", {"thumb FPL": "none"}),
    ("FPL: gapping was not looked for.", {}),
)


@pytest.mark.parametrize("sewn", _SEWN)
def test_two_tendons_in_every_order(sewn: str) -> None:
    for cut in _CUT:
        found = told(f"Right hand, zone 2.\n{cut}\n{sewn}", "strands", "size")
        assert found == {"thumb FPL": {"strands": 4, "size": "3-0"}, "index FDP": {"strands": 2, "size": "4-0"}}, cut


@pytest.mark.parametrize(("results", "expected"), _RESULTS)
def test_results_of_one_alone(results: str, expected: dict[str, str]) -> None:
    for cut, sewn in itertools.product(_CUT, _SEWN):
        found: Shown = told(f"Right hand, zone 2.\n{cut}\n{sewn}\n{results}", "gap")
        assert {name: facts["gap"] for name, facts in found.items()} == expected, (cut, sewn)


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        # A suture told behind its tendon is not that of the next one.
        (
            "Repaired with a four-strand cruciate in the index FDP, 3-0 Ethibond, and a two-strand Kessler in the FPL, "
            "4-0 Prolene.",
            {"index FDP": "3-0", "thumb FPL": "4-0"},
        ),
        ("The index FDP took 3-0 Ethibond and the FPL 4-0 Prolene.", {"index FDP": "3-0", "thumb FPL": "4-0"}),
    ],
)
def test_sutures_behind_their_tendons(note: str, expected: dict[str, str]) -> None:
    found = told("Right hand. FPL and index FDP completely divided. " + note, "size")
    assert {name: facts["size"] for name, facts in found.items()} == expected


@pytest.mark.parametrize("rest", ["FDS left.", "FDS not repaired."])
def test_the_same_for_one_of_two(rest: str) -> None:
    note = (
        "Right hand. Index and small FDP and FDS completely divided. "
        f"Index: FDP {_FOUR}; FDS {_TWO}.\nSmall: same for FDP; {rest}"
    )
    found = told(note, "strands")
    assert found == {"index FDP": {"strands": 4}, "index FDS": {"strands": 2}, "small FDP": {"strands": 4}}


@pytest.mark.parametrize(
    ("likeness", "expected"),
    [
        ("FPL: identical stitch and thread to the index finger.", {"index FDP": 6, "thumb FPL": 6}),
        ("FPL identical to the index FDP.", {"index FDP": 6, "thumb FPL": 6}),
        ("FPL: not identical to the index finger.", {"index FDP": 6}),
    ],
)
def test_identical_to_another(likeness: str, expected: dict[str, int]) -> None:
    note = f"Right hand. {_CUT[0]} Index FDP sewn with a six-strand Savage of 4-0 Ethibond. {likeness}"
    assert {name: facts["strands"] for name, facts in told(note, "strands").items()} == expected


@pytest.mark.parametrize("question", ["How many strands? Six.", "Core suture, how many strands?  6", "Strands? six"])
def test_a_question_answered_by_a_count(question: str) -> None:
    note = f"Left small finger. FDP completely divided and repaired.\n{question}\nStitch: Savage."
    assert told(note, "strands") == {"small FDP": {"strands": 6}}


@pytest.mark.parametrize("ring", ["A2 still holds as a ring.", "The pulley closed like a ring."])
def test_a_ring_that_is_no_finger(ring: str) -> None:
    note = f"Left small finger. FDP completely divided. {ring} FDP repaired with a four-strand cruciate."
    assert told(note, "strands") == {"small FDP": {"strands": 4}}


def test_tighter_than_that_of_another_finger() -> None:
    note = (
        "Left index finger. FDP completely divided. The resting position was set a little tighter than that of the "
        "middle finger. FDP repaired with a four-strand cruciate."
    )
    assert told(note, "strands") == {"index FDP": {"strands": 4}}
