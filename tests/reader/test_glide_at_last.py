"""How a repair ran in the end: a catch that was ended, and fingers told one after another."""

import pytest
from reader_sentences import each

ONE = "Left middle finger, FDP completely divided and repaired with four strands of 4-0. On passive motion "
TWO = "Left middle and ring fingers, FDP of both completely divided and repaired with four strands of 4-0. "


@pytest.mark.parametrize(
    "text",
    [
        "it caught at the edge of A4; further venting abolished this.",
        "it caught a little at A4, and this disappeared after the opening had been lengthened.",
        "it caught on A2 until one stitch came out, after that free.",
        "it catches at A3, which was then released. After that it is free as well.",
        "it caught on A4; free once that pulley had been vented.",
        "there was slight catching at A1, A1 opened and motion free.",
    ],
)
def test_a_catch_that_was_ended(text: str) -> None:
    assert each(ONE + text, "glide") == {"middle FDP": "free"}


@pytest.mark.parametrize(
    "text",
    [
        "it caught at the edge of A4; further venting did not abolish this.",
        "it caught on the free edge of A4.",
        "it caught at A4, and this was not free after venting.",
        "it caught on A4, free of tension.",
    ],
)
def test_a_catch_that_stayed(text: str) -> None:
    assert each(ONE + text, "glide")["middle FDP"] in ("catching", "restricted")


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Passive test: no gap in either. Middle caught on A2. Ring free from the start.", ("catching", "free")),
        ("Passive test: no gap. MF glides. RF glides.", ("free", "free")),
        ("Passive test. MF runs free. RF catches a bit at the end of flexion.", ("free", "catching")),
        ("Passive test: no gap. MF catches at A4. RF does not run all the way.", ("catching", "restricted")),
    ],
)
def test_fingers_told_one_after_another(text: str, expected: tuple[str, str]) -> None:
    assert each(TWO + text, "glide") == dict(zip(("middle FDP", "ring FDP"), expected, strict=True))


@pytest.mark.parametrize(
    "text",
    [
        "there was clicking at A4, which I trimmed by 2 mm and it went away.",
        "it caught at A4; after venting this went away.",
    ],
)
def test_a_catch_that_went_away(text: str) -> None:
    assert each(ONE + text, "glide") == {"middle FDP": "free"}


def test_a_catch_that_did_not_go_away() -> None:
    assert each(ONE + "it caught at A4, and after venting it never went away.", "glide") == {"middle FDP": "catching"}
