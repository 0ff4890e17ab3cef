"""Two denials make a statement; a bad state denied twice over is never taken for absent."""

import pytest
from reader_sentences import each, told

SEWN = "The FDP of the ring finger was completely divided and was repaired with four strands of 4-0 nylon. "


@pytest.mark.parametrize(
    ("text", "field", "value"),
    [
        ("I will not deny that it came together under tension.", "tension", "present"),
        ("There is no denying that it gapped by 1 mm.", "gap", "seen"),
        ("No doubt the repair was bulky.", "bulk", "present"),
        ("I make no secret of the gap.", "gap", "seen"),
        ("It did not fail to catch at A4.", "glide", "catching"),
        ("Nothing I did prevented a gap.", "gap", "seen"),
        ("A gap could not be avoided.", "gap", "seen"),
        ("Neither gap nor catching was absent.", "gap", "seen"),
        ("There was no lack of tension.", "tension", "present"),
        ("The gap was not small.", "gap", "seen"),
        ("The tension was not relieved by flexing the wrist.", "tension", "present"),
        ("The epitendinous suture was not omitted.", "peripheral", "present"),
    ],
)
def test_a_denial_taken_back_in_the_same_breath(text: str, field: str, value: str) -> None:
    assert each(SEWN + text, field) == {"ring FDP": value}


@pytest.mark.parametrize(
    "text",
    [
        "It would not close without a gap.",
        "I could not bring the ends together without tension.",
        "There was not one cycle without a gap.",
        "No position was found in which it did not gap.",
        "At no time was the repair not under tension.",
        "There is no use pretending it did not gap.",
        "No stitch would close the gap.",
        "I did not mind the gap.",
        "Nothing was done about the bulk.",
    ],
)
def test_a_bad_state_denied_twice_over_is_not_absent(text: str) -> None:
    assert told(SEWN + text, "gap", "tension", "bulk") == {}


@pytest.mark.parametrize(
    ("text", "field"),
    [
        ("At no time was there a gap.", "gap"),
        ("There was no gap with or without traction.", "gap"),
        ("There was no gap when the wrist was not flexed.", "gap"),
        ("It did not gap at any point and was not bulky.", "bulk"),
        ("No tension was needed and there was no gap.", "tension"),
    ],
)
def test_a_single_denial_stays_one(text: str, field: str) -> None:
    assert each(SEWN + text, field) == {"ring FDP": "none"}


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("Catching was not abolished by venting A4.", "vented"),
        ("No catching after A4 was vented.", "vented"),
        ("It did not run better after A4 was released.", "released"),
        ("The tendon could not be passed without venting A4.", None),
        ("Little of A4 remains intact.", None),
        ("Hardly anything of A4 was left intact.", None),
        ("So much for an intact A4.", None),
        ("A4 was not vented.", "intact"),
        ("We managed without venting A4.", "intact"),
        ("I sacrificed nothing of A4, which is intact.", "intact"),
    ],
)
def test_denials_beside_a_pulley(text: str, value: str | None) -> None:
    assert each(SEWN + text, "finding", group="pulleys").get("ring A4") == value


@pytest.mark.parametrize(
    "text",
    [
        "Free glide is something else.",
        "Gap-free it was not.",
        "A slim repair looks different.",
        "So much for free glide.",
    ],
)
def test_a_good_state_named_in_irony_is_not_told(text: str) -> None:
    assert told(SEWN + text, "glide", "gap", "bulk") == {}


@pytest.mark.parametrize("text", ["It is stronger than two strands.", "As strong as six strands, I should say."])
def test_strands_that_a_repair_is_likened_to(text: str) -> None:
    assert each(SEWN + text, "strands") == {"ring FDP": 4}
