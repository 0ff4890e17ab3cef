"""Both flexors of a finger told as repaired, and a plan that goes on behind its label."""

import pytest
from reader_sentences import each

PLAN = "Plan for the left index FDP (complete laceration): four-strand cruciate, running epitendinous stitch. "


@pytest.mark.parametrize(
    "text",
    [
        "Index finger, both flexors repaired. Profundus ends were clean.",
        "Index finger: both flexor tendons were sewn.",
        "Left index finger. Both flexor tendons were divided and repaired.",
    ],
)
def test_both_flexors(text: str) -> None:
    assert each(text, "treatment") == {"index FDP": "repaired", "index FDS": "repaired"}


@pytest.mark.parametrize(
    "text",
    [
        "Thumb. Both flexors repaired.",
        "Ring and small fingers. Both flexors repaired.",
        "Index finger, both flexors not repaired.",
        "Index finger, both flexors could have been repaired.",
    ],
)
def test_not_of_one_finger_or_not_sewn(text: str) -> None:
    assert "repaired" not in each(text, "treatment").values()


@pytest.mark.parametrize(
    "text",
    [
        PLAN + "Done: two-strand Kessler.",
        "Plan, left index FDP (cut): six-strand Savage. Done: two-strand Kessler.",
    ],
)
def test_a_plan_behind_its_label(text: str) -> None:
    assert each(text, "strands") == {"index FDP": 2}
    assert each(text, "stitch") == {"index FDP": "kessler"}
    assert not each(text, "peripheral")


def test_a_label_that_plans_nothing() -> None:
    assert each("Left index FDP (complete laceration): four-strand cruciate.", "strands") == {"index FDP": 4}
