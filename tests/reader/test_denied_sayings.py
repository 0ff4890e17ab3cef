"""What a writer denies that one could say is not told; a bad state denied so is read as before."""

import pytest
from reader_sentences import each, told

SEWN = "The FDP of the ring finger was completely divided and was repaired. "


@pytest.mark.parametrize(
    "text",
    [
        "On extension the result could hardly be called gap-free.",
        "I cannot say that the repair was not bulky, nor that it did not snag at A2.",
        "I can hardly claim that there was no gap.",
        "One could scarcely call the ends clean.",
        "Nobody would call the run free.",
        "It would be wrong to say that there was no gap.",
        "To call the repair gap-free would be untrue.",
        "I cannot claim that it was not under tension.",
        "It is not the case that no epitendinous suture was used.",
    ],
)
def test_what_cannot_be_said_is_not_told(text: str) -> None:
    assert told(SEWN + text, "gap", "bulk", "glide", "ends", "tension", "peripheral") == {}


def test_a_pulley_that_cannot_be_said_to_be_whole_is_not_told() -> None:
    assert told(f"{SEWN}It cannot be said that A2 is intact.", "finding", group="pulleys") == {}


@pytest.mark.parametrize(
    ("text", "field", "value"),
    [
        ("I can say that there was no gap.", "gap", "none"),
        ("It must be said that there was no gap.", "gap", "none"),
        ("I would not call it bulky.", "bulk", "none"),
        ("There was no gap, it is true, but it was tight.", "gap", "none"),
        ("The glide was free with no catching I would call it smooth.", "glide", "free"),
        ("I do not claim a beautiful repair, but it was not bulky.", "bulk", "none"),
    ],
)
def test_what_is_said_all_the_same_is_told(text: str, field: str, value: str) -> None:
    assert each(SEWN + text, field) == {"ring FDP": value}
