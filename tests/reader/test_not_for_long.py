"""A good state that the next sentence ends is no finding, and neither is what a first try came to that did not last."""

import pytest
from reader_sentences import each, told

SEWN = "The FDP of the ring finger was completely divided and was repaired. "


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("On opening, A2 was intact. It did not remain so: to pass the stump I divided its distal third.", "vented"),
        ("A2 was whole at exploration. It did not stay that way; its distal half had to be opened.", "vented"),
        ("A4 was intact when seen. By the end half of it had been opened.", "vented"),
        ("A2 was found whole. Not for long: more room was needed.", None),
    ],
)
def test_a_pulley_that_did_not_remain_whole(text: str, value: str | None) -> None:
    assert each(SEWN + text, "finding", group="pulleys").get("ring A2" if "A2" in text else "ring A4") == value


def test_a_glide_that_did_not_last() -> None:
    assert told(f"{SEWN}The tendon glided freely. This did not last.", "glide") == {}


@pytest.mark.parametrize("text", ["A2 was intact. It was left so.", "A2 was intact. The repair did not take long."])
def test_a_pulley_that_stayed_whole(text: str) -> None:
    assert each(SEWN + text, "finding", group="pulleys") == {"ring A2": "intact"}


CUT = "The FDP of the ring finger was completely divided. "


@pytest.mark.parametrize(
    "text",
    [
        "First effort: six strands of 3-0 Prolene with no gap. It tore out on extension. Second effort: two strands, "
        "4-0 Ethibond.",
        "Attempt one: four strands, no gap. It pulled out. Attempt two: two strands of 4-0 Ethibond.",
        "At first four strands of 3-0 Prolene, no gap. The suture cut out. It was redone with two strands of "
        "4-0 Ethibond.",
    ],
)
def test_what_a_first_try_came_to_is_not_told(text: str) -> None:
    assert told(CUT + text, "strands", "size", "gap") == {"ring FDP": {"strands": 2, "size": "4-0"}}


@pytest.mark.parametrize(
    "text",
    [
        "First effort: four strands of 4-0 Ethibond with no gap. It did not tear out on extension.",
        "At first pass four strands of 4-0 Ethibond were placed. No gap was seen. The tourniquet failed.",
    ],
)
def test_a_first_try_that_held_is_told(text: str) -> None:
    assert told(CUT + text, "strands", "gap") == {"ring FDP": {"strands": 4, "gap": "none"}}
