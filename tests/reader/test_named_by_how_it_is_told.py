"""What is told beside a name decides what it means: a cruciate that locks, a pulley rebuilt before, both tendons."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "core",
    [
        "a four strand cruciate of 3/0 Ticron, locked at each corner",
        "a cruciate repair of 3-0 Ethibond, locking",
        "a cruciate, locked version, of 3-0 Fiberwire",
    ],
)
def test_a_cruciate_that_locks(core: str) -> None:
    note = f"Index FDP completely divided. I used {core}."
    assert told(note, "stitch", "hold") == {"index FDP": {"stitch": "locked cruciate", "hold": "locking"}}


def test_a_cruciate_whose_outer_suture_locks_stays_plain() -> None:
    note = "Index FDP completely divided. Cruciate 3-0 Fiberwire. Running locking 6-0 Prolene around it."
    assert each(note, "stitch") == {"index FDP": "cruciate"}


@pytest.mark.parametrize(
    "words", ["Neither tendon of the small finger had been touched.", "Small finger: neither flexor was injured."]
)
def test_neither_tendon_is_both(words: str) -> None:
    note = f"Right ring and small fingers. FDP of the ring completely divided. {words}"
    found = each(note, "extent")
    assert found == {"ring FDP": "complete", "small FDP": "intact", "small FDS": "intact"}


@pytest.mark.parametrize(
    ("words", "finding"),
    [
        ("The reconstructed A2 was not disturbed.", "intact"),
        ("Rebuilt pulley A2 holding well, intact.", "intact"),
        ("A2 was reconstructed with a strip of tendon.", "reconstructed"),
        ("I reconstructed A2 with a strip of tendon.", "reconstructed"),
    ],
)
def test_a_pulley_rebuilt_before(words: str, finding: str) -> None:
    assert each(f"Small finger. {words}", "finding", group="pulleys") == {"small A2": finding}


def test_a_suture_is_of_the_deep_flexor_named_last() -> None:
    note = (
        "Ring finger. FDP is cut. FDS is cut: the radial slip is sutured with one 4-0 PDS figure of eight.\n\n"
        "FDP ends smooth. Lim-Tsai technique, six strands, 4-0 looped Supramid."
    )
    assert each(note, "strands") == {"ring FDP": 6}


@pytest.mark.parametrize("words", ["FDP and FDS gone over P1, ragged.", "FDP and FDS are cut over their full width."])
def test_tendons_that_are_gone(words: str) -> None:
    assert each(f"Index finger. {words}", "extent") == {"index FDP": "complete", "index FDS": "complete"}
