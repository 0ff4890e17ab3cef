"""What was only assumed is not told, and what a step did not take away is still there."""

import pytest
from reader_sentences import each, told

SEWN = "The ring FDP was completely divided and was repaired with four strands. "


@pytest.mark.parametrize(
    ("text", "field"),
    [
        ("Full glide was assumed, not tested.", "glide"),
        ("Free glide was taken for granted.", "glide"),
        ("That it glided freely was presumed.", "glide"),
        ("It ran freely, but this was not checked.", "glide"),
        ("Glide free (untested).", "glide"),
        ("Absence of a gap was assumed rather than tested.", "gap"),
        ("No gap, though this was not tested.", "gap"),
    ],
)
def test_what_nobody_looked_at_is_not_told(text: str, field: str) -> None:
    assert told(SEWN + text, field) == {}


@pytest.mark.parametrize(
    ("text", "field", "value"),
    [
        ("Free glide was not assumed but seen.", "glide", "free"),
        ("Free glide was tested and seen.", "glide", "free"),
        ("No gap; active motion was not tested.", "gap", "none"),
    ],
)
def test_what_was_looked_at_is_told(text: str, field: str, value: str) -> None:
    assert each(SEWN + text, field) == {"ring FDP": value}


@pytest.mark.parametrize(
    ("text", "field", "value"),
    [
        ("A running 6-0 tidied it, but not enough to take away the bulk.", "bulk", "present"),
        ("I could not overcome the tension.", "tension", "present"),
        ("The epitendinous suture did not flatten the bulk.", "bulk", "present"),
        ("Lengthening was not enough to relieve the tension.", "tension", "present"),
        ("Flexing the wrist did not abolish the tension on it.", "tension", "present"),
        ("It gapped 1 mm. Two more bites did not get rid of the gap.", "gap", "seen"),
        ("It caught on A2. Venting A2 was not enough to cure the catching.", "glide", "catching"),
    ],
)
def test_what_was_not_taken_away_is_there(text: str, field: str, value: str) -> None:
    assert each(SEWN + text, field) == {"ring FDP": value}


@pytest.mark.parametrize(
    ("text", "field"),
    [
        ("The flap could not be kept and was removed, without any bulk.", "bulk"),
        ("The tag was removed and there was no tension.", "tension"),
        ("The stay could not be removed but there was no gap.", "gap"),
    ],
)
def test_another_thing_taken_away_says_nothing_of_it(text: str, field: str) -> None:
    assert each(SEWN + text, field) == {"ring FDP": "none"}


@pytest.mark.parametrize("verb", ["did not flatten the bulk", "could not take away all of the bulk"])
def test_a_peripheral_suture_that_was_not_enough_was_there(verb: str) -> None:
    assert each(f"{SEWN}The epitendinous suture {verb}.", "peripheral") == {"ring FDP": "present"}


@pytest.mark.parametrize("verb", ["could not be placed", "did not go in"])
def test_a_peripheral_suture_that_was_not_placed_was_not(verb: str) -> None:
    assert each(f"{SEWN}The epitendinous suture {verb}.", "peripheral") == {"ring FDP": "absent"}


@pytest.mark.parametrize("behind", ["and caught on the oblique pulley", "at the edge of A2"])
def test_a_join_that_parts_is_no_pulley_opened(behind: str) -> None:
    text = f"{SEWN}Passive: no gap. Active: the repair parted by 1 mm on its palmar face {behind}."
    assert told(text, "gap", "gap_mm") == {"ring FDP": {"gap": "seen", "gap_mm": 1.0}}


@pytest.mark.parametrize(
    "text", ["For the repair we opened 3 mm of A4.", "To let the repair through A4 was opened by 3 mm."]
)
def test_a_pulley_opened_is_no_join_that_parts(text: str) -> None:
    assert each(f"{SEWN}No gap. {text}", "gap") == {"ring FDP": "none"}


TITLE = "OPERATION: {} FDP, ring finger\nThe wound was extended. The FDP was cut for a third of its width. "


@pytest.mark.parametrize("title", ["Repair of", "Four-strand repair of"])
@pytest.mark.parametrize(
    "text", ["It was left as it was.", "It was left alone, not repaired.", "This was not sutured."]
)
def test_a_title_does_not_sew_a_partial_cut_that_was_left(title: str, text: str) -> None:
    assert each(TITLE.format(title) + text, "treatment") == {"ring FDP": "left"}


@pytest.mark.parametrize(
    "text",
    [
        "A core suture of 4-0 Prolene was laid. It was left slightly bulky.",
        "It was repaired with 4-0 Prolene. The sheath was opened. It was left open.",
    ],
)
def test_what_is_left_of_a_repair_is_no_tendon_left(text: str) -> None:
    assert each(TITLE.format("Repair of") + text, "treatment") == {"ring FDP": "repaired"}
