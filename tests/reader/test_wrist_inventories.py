"""An inventory at the wrist, then the sutures told of kinds, of all, by likeness, in turn, and what was left."""

import itertools

import pytest
from reader_sentences import each, told

_FINGERS = ("index", "middle", "ring", "small")
_FDS = tuple(f"{finger} FDS" for finger in _FINGERS)
_FDP = ("index FDP", "middle FDP")
_WHOLE = ("ring FDP", "small FDP")
_CUT = {
    "times four": "Divided completely: FCR, PL, FDS x 4, FDP to index and middle. FDP ring and small intact.",
    "all four": "All four FDS, the FDP to index and middle, FCR and PL were completely divided. The FDP to ring and "
    "small were intact.",
    "numbered": "1. FCR - complete\n2. PL - complete\n3. FDS index, middle, ring, small - complete\n"
    "4. FDP index, middle - complete\n5. FDP ring, small - intact",
    "ranges": "FCR, PL, FDS II-V and FDP II-III were all completely transected; FDP IV-V intact.",
    "ranks": "FCR cut 100 %\nPL cut 100 %\nFDS 2nd, 3rd, 4th, 5th cut 100 %\nFDP 2nd, 3rd cut 100 %. FDP 4th, 5th OK",
    "lines": "FCR: complete\nPL: complete\nFDS: all four complete\nFDP: index + middle complete, ring + small intact",
    "prose": "There was complete division of the flexor carpi radialis, the palmaris longus, all four superficialis "
    "tendons and the profundus tendons to the index and middle fingers. The profundi of the ring and small fingers "
    "were intact.",
}
_TWO, _FOUR = "2-strand modified Kessler 4-0 Prolene", "4-strand cruciate 3-0 Ethibond"
_DEEP_AND_FCR = {**dict.fromkeys((*_FDP, "FCR"), 4), **dict.fromkeys(_FDS, 2)}
_SEWN = [
    (f"FDP x 2 and FCR: {_FOUR}. FDS x 4: {_TWO}. PL excised.", _DEEP_AND_FCR),
    (
        f"The two profundi and FCR were repaired with a {_FOUR}, the four superficialis tendons with a {_TWO}. "
        "PL was excised.",
        _DEEP_AND_FCR,
    ),
    (
        f"All repaired with {_FOUR} except PL, which was excised.",
        dict.fromkeys((*_FDP, "FCR", *_FDS), 4),
    ),
    (f"FDPs {_FOUR}; all FDS {_TWO}; FCR as FDP; PL left.", _DEEP_AND_FCR),
    (f"Deep flexors then FCR by {_FOUR}. Superficial flexors by {_TWO}. Palmaris longus left.", _DEEP_AND_FCR),
    (f"Repairs. FDP: {_FOUR}. FDS: {_TWO}. FCR: {_FOUR}. PL: nil done.", _DEEP_AND_FCR),
]


@pytest.mark.parametrize("cut", _CUT.values(), ids=_CUT)
def test_what_was_cut(cut: str) -> None:
    expected = {**dict.fromkeys(("FCR", "PL", *_FDS, *_FDP), "complete"), **dict.fromkeys(_WHOLE, "intact")}
    assert each("Left wrist laceration, zone 5.\n" + cut, "extent") == expected


@pytest.mark.parametrize(("sewn", "expected"), _SEWN)
def test_sutures_of_kinds_and_of_all(sewn: str, expected: dict[str, object]) -> None:
    missed = []
    for cut in _CUT.values():
        note = f"Left wrist laceration, zone 5.\n{cut}\n{sewn}"
        if each(note, "strands") != expected:
            missed.append(note)
    assert not missed


@pytest.mark.parametrize(("cut", "sewn"), list(itertools.product(_CUT.values(), (s for s, _ in _SEWN[3:]))))
def test_palmaris_that_was_left(cut: str, sewn: str) -> None:
    assert told(f"Left wrist laceration, zone 5.\n{cut}\n{sewn}", "treatment", "strands")["PL"] == {"treatment": "left"}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Right ring FDP and FDS completely cut. FDP 4-strand cruciate 3-0 Ethibond; FDS left.", "left"),
        ("Right ring finger. FDP and FDS completely cut. FDP 4-strand cruciate. FDS left.", "left"),
        ("Operation: FDS left. Ring finger.", None),  # the hand
    ],
)
def test_left_and_the_left_hand(note: str, expected: str | None) -> None:
    found = told(note, "treatment").get("ring FDS", {}).get("treatment")
    assert (found if found == "left" else None) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Ring FDP then middle FDP repaired by a four-strand cruciate.", {"ring FDP": 4, "middle FDP": 4}),
        ("Ring FDP, then middle FDP, sewn with a six-strand Savage.", {"ring FDP": 6, "middle FDP": 6}),
        ("Ring FDP inspected, then middle FDP repaired by a four-strand cruciate.", {"middle FDP": 4}),
    ],
)
def test_one_then_the_other(note: str, expected: dict[str, object]) -> None:
    assert each("Left ring and middle FDP completely cut. " + note, "strands") == expected
