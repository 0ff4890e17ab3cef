"""What an instruction waits for, what others published, planned or did earlier, is no finding; what was found is."""

import pytest
from reader_sentences import each, told

SEWN = "The FDP of the ring finger was completely divided and was repaired. "


@pytest.mark.parametrize(
    "condition",
    [
        "Provided the A2 is intact one may forgo a ring splint.",
        "Assuming an intact A2, no ring is needed.",
        "He may do without the ring, on condition that the A2 is intact.",
        "A full fist may be made only where A2 is intact.",
        "Once A2 is known to be intact the ring can go.",
    ],
)
def test_a_pulley_that_is_a_condition_is_not_told(condition: str) -> None:
    assert told(SEWN + condition, "finding", group="pulleys") == {}


@pytest.mark.parametrize(
    "condition",
    [
        "Once the repair glides freely go on to tabletop.",
        "When the repair glides freely, start the full fist.",
        "As soon as it glides freely, block the joint.",
        "Supposing it glides freely, start on day 3.",
    ],
)
def test_a_glide_that_is_waited_for_is_not_told(condition: str) -> None:
    assert told(SEWN + condition, "glide") == {}


@pytest.mark.parametrize("text", ["Once A4 was vented the repair glided freely.", "When tested it ran freely."])
def test_a_glide_that_came_about_is_told(text: str) -> None:
    assert told(SEWN + text, "glide") == {"ring FDP": {"glide": "free"}}


@pytest.mark.parametrize(
    "work",
    [
        "Harvell's series used 3-0 and six strands and had no gap.",
        "The Kestrin group used six strands of 3-0 without a gap.",
        "In the series of Harvell six strands of 3-0 were used.",
        "Dorwin's patients all had six strands and no gap.",
    ],
)
def test_what_others_published_is_not_told(work: str) -> None:
    assert told(SEWN + work, "strands", "size", "gap") == {}


def test_what_is_set_against_it_is_told() -> None:
    text = "Harvell's series used 3-0 and six strands; ours got two strands of 4-0."
    assert told(SEWN + text, "strands", "size") == {"ring FDP": {"strands": 2, "size": "4-0"}}


@pytest.mark.parametrize(
    "text", ["This was the patient's third group of tests: no gap.", "In both cases there was no gap."]
)
def test_nobody_s_series_is_told(text: str) -> None:
    assert told(SEWN + text, "gap") == {"ring FDP": {"gap": "none"}}


@pytest.mark.parametrize(
    "earlier",
    [
        "In March 2032 at Pellbridge a six-strand repair of the ring FDP was done, without gap, gliding freely.",
        "In May 2032 the ring FDP was repaired elsewhere with six strands, no gap, free glide.",
    ],
)
def test_a_repair_of_an_earlier_month_is_not_told(earlier: str) -> None:
    text = f"{earlier} It came apart. Today the FDP was sutured again with a two-strand Bunnell of 4-0 steel."
    found = told(text, "strands", "gap", "glide", "stitch")
    assert found == {"ring FDP": {"strands": 2, "stitch": "bunnell"}}


def test_a_month_alone_is_not_earlier() -> None:
    text = "In March 2032 the ring FDP was repaired with four strands. There was no gap."
    assert told(text, "strands", "gap") == {"ring FDP": {"strands": 4, "gap": "none"}}


@pytest.mark.parametrize(
    "plan",
    [
        "Plan for the ring finger: six-strand M-Tang.",
        "We discussed with Mr Ostrel a repair strong enough for early motion, meaning six strands or more.",
        "We had told him that he would get six strands.",
        "I discussed with her a six-strand repair.",
    ],
)
def test_what_was_planned_or_promised_is_not_told(plan: str) -> None:
    assert told(SEWN + plan, "strands", "stitch") == {}


@pytest.mark.parametrize("lead", ["The intention had been", "The intention was", "Our intention was"])
def test_a_pulley_that_was_to_be_left_is_not_told_whole(lead: str) -> None:
    text = f"{SEWN}{lead} to leave A4 alone; in the event it had to be released."
    assert each(text, "finding", group="pulleys") != {"ring A4": "intact"}
