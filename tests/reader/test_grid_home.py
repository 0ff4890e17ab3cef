"""Behind a grid a note goes on with the finger it named before, and not with the grid's last row."""

import pytest

from notereader.reader import read

_GRIDS = (
    "TENDON       ZONE   CUT    REPAIR\nFDP middle   II     100%   yes\nFDP ring     -      0      -\n",
    "Tendon | Found | Done\nFDP middle | complete | repaired\nFDS ring | intact | -\n",
    "         FDP        FDS\nMiddle   complete   complete\nRing     intact     intact\n",
)
_TEXTS = ("Free text\nFDP: six-strand modified Savage, 3-0 FiberWire.", "Core six-strand Savage in 3-0 FiberWire.")


def _sewn(text: str) -> set[str | None]:
    return {p.digit for p, _ in read(text).walk() if p.group == "repairs" and p.field in ("strands", "size")}


@pytest.mark.parametrize("grid", _GRIDS)
@pytest.mark.parametrize("text", _TEXTS)
@pytest.mark.parametrize("head", ["Limb: right\nFinger: middle", "Operation: FDP repair, right middle finger"])
def test_the_finger_named_before_is_taken_up_again(grid: str, text: str, head: str) -> None:
    assert _sewn(f"{head}\n\n{grid}\n{text}\n") == {"middle"}


def test_a_note_that_named_several_goes_on_as_before() -> None:
    head = "Operation: FDP repair, right middle and ring fingers"
    grid = "         FDP        FDS\nMiddle   complete   intact\nRing     complete   intact\n"
    assert "middle" not in _sewn(f"{head}\n\n{grid}\nRing: core six-strand Savage in 3-0 FiberWire.\n")


def test_fingers_that_head_their_own_boxes_keep_them() -> None:
    boxes = "  FDP: ( ) cut ( ) part (x) intact\n  FDS ( ) cut ( ) part (x) intact\n"
    text = f"Index finger\n  FDP (x) cut ( ) intact\n  FDS   ( ) cut (x) intact\nRing finger\n{boxes}"
    whole = {(p.digit, p.part) for p, f in read(text).walk() if p.field == "extent" and f.value == "intact"}
    assert whole == {("index", "FDS"), ("ring", "FDP"), ("ring", "FDS")}
