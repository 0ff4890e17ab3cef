"""A pulley told sewn by the thread alone, closed again later, or made anew, and what only looks so."""

import pytest
from reader_sentences import each

_HEAD = "Left ring finger, zone II. FDP completely divided, repaired with a four-strand 3-0 Ticron core. "


def _found(words: str) -> dict[str, object]:
    return each(_HEAD + words, "finding", group="pulleys")


@pytest.mark.parametrize(
    "words",
    [
        "A3 rent -> 5-0 PDS x 3.",
        "A3: 6-0 Prolene repair.",
        "A3 = 5-0 Vicryl, loosely.",
        "The A3 pulley had been cut by the glass and we put three 6-0 PDS in it.",
        "A3 was already divided in the injury, two sutures of 5-0 nylon placed.",
    ],
)
def test_thread_behind_a_tear(words: str) -> None:
    assert _found(words) == {"ring A3": "repaired"}


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("A3 torn. Skin 5-0 nylon.", {"ring A3": "injured"}),
        ("A3 torn, skin closed with 5-0 nylon.", {"ring A3": "injured"}),
        ("A3 was torn and the FDP was sewn with 4-0 Ethibond.", {"ring A3": "injured"}),
    ],
)
def test_thread_of_something_else(words: str, expected: dict[str, object]) -> None:
    assert _found(words) == expected


@pytest.mark.parametrize(
    "words",
    [
        "We divided the flexor retinaculum for room, and it was afterwards sewn together again.",
        "The flexor retinaculum was opened, and at the end it was repaired.",
    ],
)
def test_closed_again(words: str) -> None:
    assert _found(words) == {"flexor retinaculum": "repaired"}


def test_it_may_be_the_tendon() -> None:
    words = "A4 was opened and the FDP was passed, then it was repaired with 4-0."
    assert _found(words) == {"ring A4": "vented"}


@pytest.mark.parametrize(
    "words",
    [
        "A2 was destroyed by scar and I made another with a strip of extensor retinaculum.",
        "A2 then made new from a strip of palmaris longus.",
        "The A2 made from a slip of FDS.",
    ],
)
def test_made_anew(words: str) -> None:
    assert _found(words) == {"ring A2": "reconstructed"}


@pytest.mark.parametrize(
    "words",
    [
        "A2 and A4 reconstructed at the first stage; both intact.",
        "Rebuilt pulleys A2 and A4 undisturbed.",
        "(Rod placed, A2 and A4 reconstructed then.) A2 and A4 intact.",
    ],
)
def test_made_before(words: str) -> None:
    assert "reconstructed" not in _found(words).values()


@pytest.mark.parametrize(
    "words",
    [
        "The A3 pulley was shredded and I took that out altogether.",
        "A3 torn, debrided away completely.",
        "A3 in rags, debrided off, all of it.",
        "A3 had been sliced by the blade into two halves and we cut both away.",
        "A3 out.",
        "A2 kept   A3 out   A4 kept",
    ],
)
def test_cut_away(words: str) -> None:
    assert _found(words)["ring A3"] == "excised"


def test_needle_out_is_no_pulley_out() -> None:
    assert "ring A3" not in _found("The needle passed under A3 and out of the skin.")


@pytest.mark.parametrize(
    "words",
    ["The damaged bit of A2 was trimmed.", "I took out the torn edge of A2.", "We took off the loose rim of A2."],
)
def test_a_bit_taken_out(words: str) -> None:
    assert _found(words) == {"ring A2": "trimmed"}
