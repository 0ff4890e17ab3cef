"""Pulleys of several fingers: taken up by 'that', all of them but one, and what only passes under them."""

import pytest
from reader_sentences import told

SEWN = "The FDP of the index and ring fingers were repaired with four strands of 4-0 each. "


def found(remark: str) -> dict[str, object]:
    return {name: facts["finding"] for name, facts in told(SEWN + remark, group="pulleys").items()}


@pytest.mark.parametrize(
    ("remark", "expected"),
    [
        ("The A4 of the ring had been destroyed. That of the index was intact.", ("intact", "injured")),
        ("The A4 of the ring finger was released fully, and that of the index finger too.", ("released", "released")),
        ("The A4 of the ring was vented, as was that of the index.", ("vented", "vented")),
        (
            "The A4 of the ring was vented by 6 mm, and that of the index was preserved.",
            ("intact", "vented"),
        ),
        ("All A4 pulleys were intact except that of the ring, which was vented.", ("intact", "vented")),
        ("The A4 pulleys were intact apart from the ring, vented distally.", ("intact", "vented")),
        ("A4 vented: ring. A4 intact: index.", ("intact", "vented")),
    ],
)
def test_the_same_pulley_of_another_finger(remark: str, expected: tuple[str, str]) -> None:
    assert found(remark) == dict(zip(("index A4", "ring A4"), expected, strict=True))


def test_all_but_one_leaves_that_one_open() -> None:
    assert found("All A4 pulleys were intact except that of the ring.") == {"index A4": "intact"}
    assert found("The A4 pulleys were intact apart from that of the ring.") == {"index A4": "intact"}


def test_that_which_runs_is_no_pulley() -> None:
    remark = "The index repair passed beneath A2 freely, and that of the ring finger caught at the edge of A3."
    assert "ring A2" not in found(remark)
    assert told(SEWN + remark, "glide")["ring FDP"] == {"glide": "catching"}


def test_those_of_another_finger_are_not_left_out() -> None:
    remark = "The stumps of the index FDP were sharp, but those of the ring FDP were frayed."
    assert told(SEWN + remark, "ends")["ring FDP"] == {"ends": "ragged"}
