"""How each of several repairs behaved, told by the others, by exceptions and by short verbs."""

import pytest
from reader_sentences import told

SEWN = "The FDP of the index, middle and ring fingers were repaired with four strands of 4-0 each.\n"
TWO = "The FDP of the ring and small fingers were repaired with four strands of 4-0 each.\n"


def said(note: str, field: str) -> dict[str, object]:
    return {name.removesuffix(" FDP"): facts[field] for name, facts in told(note, field).items()}


@pytest.mark.parametrize(
    ("remark", "expected"),
    [
        ("The ring repair catches, the rest glide freely.", ("free", "free", "catching")),
        ("The ring caught on A4, the others ran freely.", ("free", "free", "catching")),
        ("With the exception of the ring all ran freely; the ring caught.", ("free", "free", "catching")),
        ("All glided freely except the ring, which caught at A2.", ("free", "free", "catching")),
        ("None caught.", ("free", "free", "free")),
        ("Only the ring caught.", (None, None, "catching")),
        ("The ring was the only one that caught.", (None, None, "catching")),
    ],
)
def test_how_each_ran(remark: str, expected: tuple[str | None, ...]) -> None:
    told_of = zip(("index", "middle", "ring"), expected, strict=True)
    assert said(SEWN + remark, "glide") == {finger: value for finger, value in told_of if value}


@pytest.mark.parametrize(
    ("remark", "expected"),
    [
        ("The ring gapped, the others did not.", ("none", "none", "seen")),
        ("The ring repair showed a gap whereas the index and middle showed none.", ("none", "none", "seen")),
        ("All but the ring were without a gap; the ring gapped 1 mm.", ("none", "none", "seen")),
        ("None gapped except the ring.", ("none", "none", "seen")),
        ("Not one of the three gapped.", ("none", "none", "none")),
        ("No gap (middle).", (None, "none", None)),
    ],
)
def test_which_gapped(remark: str, expected: tuple[str | None, ...]) -> None:
    told_of = zip(("index", "middle", "ring"), expected, strict=True)
    assert said(SEWN + remark, "gap") == {finger: value for finger, value in told_of if value}


@pytest.mark.parametrize(
    ("remark", "field", "expected"),
    [
        ("The small caught on A4, the other ran freely.", "glide", {"ring": "free", "small": "catching"}),
        ("The small was under some tension, the other was not.", "tension", {"ring": "none", "small": "present"}),
        (
            "The small repair was under slight tension, the ring was slack.",
            "tension",
            {"ring": "none", "small": "present"},
        ),
        ("Only the small was under tension.", "tension", {"small": "present"}),
        ("The small gapped.", "gap", {"small": "seen"}),
    ],
)
def test_a_finger_named_by_its_short_name_alone(remark: str, field: str, expected: dict[str, str]) -> None:
    assert said(TWO + remark, field) == expected


@pytest.mark.parametrize(
    "remark", ["One of them caught at A4.", "No triggering from one or the other.", "The hand was caught in a door."]
)
def test_what_tells_of_no_finger(remark: str) -> None:
    assert "catching" not in said(TWO + remark, "glide").values()
