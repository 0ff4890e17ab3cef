"""A tendon under its finger's own head, a thread shared within a sentence, cells and threads over two lines."""

import pytest
from reader_sentences import each, told

HEADED = """INDEX
FDP gone, Z2, FDP 4 str cruciate 3-0 Ethibond
RING
{line}
"""


@pytest.mark.parametrize(
    "line",
    [
        "FDP cut, pulled through to bone on 3-0 Prolene, button over the nail.",
        "P2 chipped\nFDP 100 at DIP level, drawn to bone on 3-0 Prolene, button over the nail.",
    ],
)
def test_a_tendon_under_the_head_of_its_finger(line: str) -> None:
    assert each(HEADED.format(line=line), "treatment") == {"index FDP": "repaired", "ring FDP": "reinserted"}


@pytest.mark.parametrize(
    "text",
    [
        "The two slips of the superficialis were rejoined separately. On the radial side a modified Kessler of "
        "4-0 Prolene was used, and on the ulnar side a horizontal mattress of the same suture.",
        "FDS: radial slip a Kessler of 4-0 Prolene, ulnar slip a mattress with the same suture.",
    ],
)
def test_the_other_slip_takes_the_same_thread(text: str) -> None:
    found = told(f"Ring finger. FDS cut. {text}", "size", "material")
    assert found["ring FDS ulnar"] == {"size": "4-0", "material": "polypropylene"}


def test_another_finger_takes_the_thread_and_not_the_stitch() -> None:
    found = told(
        "Index FDP: modified Kessler of 4-0 Fiberwire. Middle FDP: cruciate of the same suture.", "size", "stitch"
    )
    assert found["middle FDP"] == {"size": "4-0", "stitch": "cruciate"}


@pytest.mark.parametrize(
    "text",
    [
        "A2 was enlarged by a V-Y plasty, its two remnants being joined as a wider ring with 5-0 PDS.",
        "A2 was widened by a plasty and its edges joined with 5-0.",
    ],
)
def test_what_is_sewn_of_a_plasty_widens(text: str) -> None:
    assert each(f"Ring finger. {text}", "finding", group="pulleys") == {"ring A2": "widened"}


def test_a_widened_pulley_that_was_sewn_later() -> None:
    text = "Ring finger. A2 was widened, then tore and was repaired with 5-0."
    assert each(text, "finding", group="pulleys") == {"ring A2": "repaired"}


GRID = """Left hand.
| part      | zone | core                | size         | remarks            |
| index FDP | II   | Tsuge, three loops, | 4-0 nylon    | 6 strands, purchase|
|           |      | looped              |              | 1 cm each end      |
| ring FDP  | II   | Adelaide            | 4-0 FiberWire| 4 strands          |
"""


def test_a_barred_row_goes_on_below_a_blank_label() -> None:
    assert each(GRID, "looped") == {"index FDP": True}
    assert list(each(GRID, "purchase_mm")) == ["index FDP"]


@pytest.mark.parametrize("kind", ["looped", "braided"])
def test_a_thread_goes_on_in_the_next_line(kind: str) -> None:
    thread = f"4-0 {kind}\nSupramid and a 6-0 Prolene that runs round and locks.\n"
    text = f"Plan made before.\nFDP ring has a Tsuge in {thread}"
    found = told(text, "material", "peripheral_material")
    assert found == {"ring FDP": {"material": "nylon", "peripheral_material": "polypropylene"}}


@pytest.mark.parametrize("title", ["Spaghetti wrist R - op sheet", "SPAGHETTI WRIST R"])
def test_a_side_behind_the_part(title: str) -> None:
    assert told(title, "side", group="operation") != {}


TWO = "Index. FDP cut, 4 strand cruciate 3-0 Ethibond. Ring. FDP cut, pulled through to bone, button over the nail. "


@pytest.mark.parametrize("text", ["Nothing untoward, wires + button in.", "K-wires and button left in place."])
def test_a_button_left_in_is_the_one_told_of(text: str) -> None:
    found = each(TWO + "Index: skin left open. " + text, "stitch")
    assert found == {"index FDP": "cruciate", "ring FDP": "pull-out"}


def test_a_button_told_once_holds_its_tendon() -> None:
    assert each("Ring. FDP cut, 3-0 Prolene to bone, button in.", "stitch") == {"ring FDP": "pull-out"}
