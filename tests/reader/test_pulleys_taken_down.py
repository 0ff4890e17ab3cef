"""Pulleys taken down, off or out, those that were kept in other words, and the roof of the wrist."""

import pytest
from reader_sentences import each, told

CUT = "Index finger, zone 2. FDP cut through and sewn with four strands. "
THUMB = "Thumb, zone 2. FPL cut through and sewn with four strands. "
WRIST = "Zone 5, wrist. FDS middle cut through and sewn with four strands. "


@pytest.mark.parametrize(
    ("remark", "expected"),
    [
        ("I took A3 down completely and vented the distal third of A2.", ("vented", "released")),
        ("A2 was kept. We took the A3 pulley down.", ("intact", "released")),
        ("A2 kept. Took the whole A3 out.", ("intact", "excised")),
        ("A2 kept; I took the A3 pulley off.", ("intact", "excised")),
    ],
)
def test_taken_down(remark: str, expected: tuple[str, str]) -> None:
    assert each(CUT + remark, "finding", group="pulleys") == dict(zip(("index A2", "index A3"), expected, strict=True))


def test_a_share_stays_with_its_pulley() -> None:
    found = told(CUT + "I took A3 down completely and vented the distal third of A2.", group="pulleys")
    assert found["index A3"] == {"finding": "released"}
    assert found["index A2"]["part"] == "distal"


@pytest.mark.parametrize(
    "remark",
    [
        "The A2 pulley I did not need to touch.",
        "I never had to touch the A2.",
        "The A2 has survived.",
        "A2 stayed as it was.",
        "It passed under A2, which I was able to keep.",
        "A2 whole, dilated only.",
    ],
)
def test_kept_in_other_words(remark: str) -> None:
    assert each(CUT + remark, "finding", group="pulleys") == {"index A2": "intact"}


@pytest.mark.parametrize(
    "remark", ["Only its distal half of A2 survived.", "A2 whole only in its distal half.", "A2: only a rim is whole."]
)
def test_a_part_that_is_kept_is_not_the_whole(remark: str) -> None:
    assert each(CUT + remark, "finding", group="pulleys").get("index A2") != "intact"


@pytest.mark.parametrize(
    "remark",
    [
        "It was drawn under A2 and A4, neither of which required division.",
        "It was drawn under A2 and A4, both of which I was able to save.",
    ],
)
def test_two_that_were_passed_under(remark: str) -> None:
    assert each(CUT + remark, "finding", group="pulleys") == {"index A2": "intact", "index A4": "intact"}


@pytest.mark.parametrize(
    "remark", ["The oblique I left in one piece.", "The oblique one I was careful to save.", "Obl. pulley kept."]
)
def test_the_oblique_without_its_noun(remark: str) -> None:
    assert each(THUMB + remark, "finding", group="pulleys") == {"thumb oblique": "intact"}


@pytest.mark.parametrize(
    ("remark", "expected"),
    [
        ("Retinaculum left alone.", "intact"),
        ("Retinaculum divided from distal to proximal.", "released"),
        ("Retinaculum split right through.", "released"),
    ],
)
def test_retinaculum(remark: str, expected: str) -> None:
    assert each(WRIST + remark, "finding", group="pulleys") == {"flexor retinaculum": expected}


@pytest.mark.parametrize("words", ["strip of retinaculum", "piece of the retinaculum"])
def test_retinaculum_as_a_graft(words: str) -> None:
    found = each(CUT + f"A2 was rebuilt with a {words}, sutured in place.", "finding", group="pulleys")
    assert found == {"index A2": "reconstructed"}
