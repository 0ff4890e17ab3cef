"""Tendons told to be cut, by their number, and named behind a colon or in brackets: every one of the list was cut."""

import pytest
from reader_sentences import each

_LISTS = {
    "in full": (
        "the flexor carpi radialis, palmaris longus, flexor pollicis longus, the superficialis to the index, middle, "
        "ring and small fingers, and the profundus to the index and middle fingers"
    ),
    "in short": "PL, FCR, FPL, FDS index, middle, ring and small, FDP index and middle",
}
_TENDONS = {
    *("FCR", "PL", "thumb FPL", "index FDP", "middle FDP"),
    *("index FDS", "middle FDS", "ring FDS", "small FDS"),
}
_RAGGED = (
    "Nine of the twelve tendons at risk were divided, all of them with frayed margins as is usual for a saw: {}.",
    "Nine tendons were divided, all of them ragged: {}.",
    "Nine tendons, all of them ragged, were divided, namely {}.",
    "These tendons were found transected, each with frayed ends: {}.",
)
_CUT = (
    *_RAGGED,
    "Nine of twelve flexors had been cut through: {}.",
    "The saw had gone through nine tendons: {}.",
    "Of the twelve tendons nine were severed ({}).",
    "Nine structures were completely transected, as is usual in such wounds: {}.",
)


@pytest.mark.parametrize("names", _LISTS.values(), ids=_LISTS)
@pytest.mark.parametrize("words", _CUT)
def test_all_of_the_list(words: str, names: str) -> None:
    note = "Left wrist, zone V.\n" + words.format(names)
    assert each(note, "extent") == dict.fromkeys(_TENDONS, "complete")
    assert each(note, "ends") == (dict.fromkeys(_TENDONS, "ragged") if words in _RAGGED else {})


@pytest.mark.parametrize(
    "words",
    [
        "None of the tendons was divided: {}.",
        "The tendons that may be severed were looked for: {}.",
        "Not all of the tendons were divided: {}.",
        "A nerve was divided and these tendons were seen: {}, all of which moved.",
    ],
)
def test_none_of_the_list(words: str) -> None:
    assert "complete" not in each("Left wrist.\n" + words.format(_LISTS["in short"]), "extent").values()


def test_a_list_that_tells_shares() -> None:
    note = "Left wrist.\nFour tendons were divided: FCR, PL, FPL 50 %, FDS of the index."
    assert each(note, "extent").get("thumb FPL") != "complete"


_SIGNS = (" >> ", " / ", "; ", ", ", " -> ", " | ", " + ")
_SHORT = ("PL", "FCU 100 %", "FDS middle + ring + small", "FDP small")


@pytest.mark.parametrize("head", ["divided:\n", "divided: ", "CUT THROUGH:\n", "divided, from radial to ulnar:\n"])
@pytest.mark.parametrize("sign", _SIGNS)
def test_a_list_that_says_of_one_that_it_was_cut_fully(sign: str, head: str) -> None:
    found = each(f"R wrist, z V\n\n{head}{sign.join(_SHORT)}\n", "extent")
    assert found == dict.fromkeys(("PL", "FCU", "middle FDS", "ring FDS", "small FDS", "small FDP"), "complete")


@pytest.mark.parametrize("last", ["FDP small intact", "FDP small 40 %", "FDP small not seen"])
def test_a_list_that_says_otherwise_of_one(last: str) -> None:
    found = each(f"R wrist, z V\n\ndivided: PL, FCU 100 %, FDS middle, {last}\n", "extent")
    assert found.get("small FDP") != "complete"
