"""What the finished repair is, what was looked for in vain, and which of several is singled out."""

import pytest
from reader_sentences import each, told

SEWN = "The ring FDP was completely divided and was repaired with four strands. "


@pytest.mark.parametrize(
    ("text", "field"),
    [
        ("Much tension on the first approximation; the finished repair is without tension.", "tension"),
        ("Before lengthening, tension marked. After lengthening, no tension at all.", "tension"),
        ("The core left a bulky waist, the running suture took it down, so that it shows no bulk.", "bulk"),
        ("The knots were bulky and were re-tied. The repair thereafter was slim with no bulk.", "bulk"),
        ("One would expect four strands to make it bulky. The repair is not bulky.", "bulk"),
    ],
)
def test_what_the_finished_repair_is_stands(text: str, field: str) -> None:
    assert each(SEWN + text, field) == {"ring FDP": "none"}


@pytest.mark.parametrize(
    ("text", "field"),
    [
        ("No tension at first. In the end it was under tension.", "tension"),
        ("The repair was bulky. No bulk was seen at first.", "bulk"),
        ("It was under tension. With the wrist bent it was not under tension.", "tension"),
    ],
)
def test_what_it_was_on_the_way_does_not(text: str, field: str) -> None:
    assert each(SEWN + text, field) == {"ring FDP": "present"}


@pytest.mark.parametrize(
    ("text", "field", "value"),
    [
        ("I looked for tension with the wrist straight, with both straight. None.", "tension", "none"),
        ("A gap was looked for. None was seen.", "gap", "none"),
        ("Bulk was looked for: none.", "bulk", "none"),
        ("I looked for catching under A2 and A4. There was none.", "glide", "free"),
    ],
)
def test_what_was_looked_for_in_vain_was_not_there(text: str, field: str, value: str) -> None:
    assert each(SEWN + text, field) == {"ring FDP": value}


@pytest.mark.parametrize(
    ("text", "field"),
    [
        ("I did not look for a gap. None.", "gap"),
        ("I looked for a gap. None of the other tendons was cut.", "gap"),
        ("It was tested for a gap. One of 1 mm was seen.", "gap"),
    ],
)
def test_another_none_is_no_answer(text: str, field: str) -> None:
    assert each(SEWN + text, field).get("ring FDP") != "none"


BOTH = "Ring and little FDP divided, each repaired with four strands. "


@pytest.mark.parametrize(
    ("text", "field", "values"),
    [
        ("It is the little that is free and the ring that is catching.", "glide", ("catching", "free")),
        ("It is the little that is bulky and the ring that is not.", "bulk", ("none", "present")),
        ("It was the little that gapped 1 mm and the ring that did not.", "gap", ("none", "seen")),
    ],
)
def test_each_of_those_singled_out_has_its_own(text: str, field: str, values: tuple[str, str]) -> None:
    text = f"{BOTH}No gap was wider. {text}" if field == "glide" else BOTH + text
    assert each(text, field) == {"ring FDP": values[0], "small FDP": values[1]}


@pytest.mark.parametrize("text", ["It was the small whose A2 was vented.", "It was the small that had its A2 vented."])
def test_a_short_name_singled_out_is_a_finger(text: str) -> None:
    assert told(f"{BOTH}{text}", "finding", group="pulleys") == {"small A2": {"finding": "vented"}}


@pytest.mark.parametrize("text", ["It is the middle of the slip that was thin.", "It is a little that was lost."])
def test_another_middle_is_no_finger(text: str) -> None:
    assert "middle FDP" not in told(f"Ring FDP divided and repaired. {text}")
