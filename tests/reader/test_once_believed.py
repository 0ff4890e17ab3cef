"""What was believed until it was seen, only thought of, or asked for is no finding; what was found and done is."""

import pytest
from reader_sentences import each, told

SEWN = "The FDP of the ring finger was completely divided and was repaired. "


@pytest.mark.parametrize(
    "belief",
    [
        "I had feared that the A2 was torn.",
        "We had assumed the A2 was cut.",
        "I had taken for granted that the A2 was lost.",
        "I had my doubts about the A2 because a bruise lay across it.",
    ],
)
def test_a_pulley_once_believed_to_be_torn_is_what_it_proved_to_be(belief: str) -> None:
    assert each(SEWN + belief, "finding", group="pulleys") == {}
    assert each(f"{SEWN}{belief} It was intact.", "finding", group="pulleys") == {"ring A2": "intact"}


@pytest.mark.parametrize(
    "text", ["As I had feared the A2 was torn.", "I had feared that the A2 was torn, and so it was."]
)
def test_a_belief_borne_out_is_told(text: str) -> None:
    assert each(SEWN + text, "finding", group="pulleys") == {"ring A2": "injured"}


@pytest.mark.parametrize(
    "thought",
    ["Cutting the A2 would have made life easier.", "Opening A2 would make it easier.", "To cut A2 would be easy."],
)
def test_a_deed_only_thought_of_was_not_done(thought: str) -> None:
    assert each(SEWN + thought, "finding", group="pulleys") == {}


@pytest.mark.parametrize(
    ("text", "finding"),
    [
        ("Venting A2 would have helped, but I left it alone.", "intact"),
        ("Cutting the A2 made life easier.", "vented"),
        ("I wanted to keep the A2 in one piece and did.", "intact"),
        ("The A2 stands entire.", "intact"),
    ],
)
def test_what_was_done_in_the_end_is_told(text: str, finding: str) -> None:
    assert each(SEWN + text, "finding", group="pulleys") == {"ring A2": finding}


@pytest.mark.parametrize(
    "text",
    [
        "I had called for 4-0. 3-0 Prolene was used.",
        "It was sewn with 3-0 Prolene, though I had asked for 4-0.",
        "3-0 Prolene was used though 4-0 had been requested.",
    ],
)
def test_the_size_asked_for_is_not_the_one_used(text: str) -> None:
    assert told(SEWN + text, "size") == {"ring FDP": {"size": "3-0"}}


def test_how_much_thicker_is_not_how_much_was_cut() -> None:
    for text in ("A repair 20 % thicker than the tendon will still pass.", "The join was 30 % bulkier."):
        assert told(SEWN + text, "extent") == {"ring FDP": {"extent": "complete"}}


@pytest.mark.parametrize("text", ["When in doubt about tension flex the wrist more.", "Concern about tension: none."])
def test_doubt_about_tension_is_no_tension(text: str) -> None:
    assert told(SEWN + text, "tension").get("ring FDP", {}).get("tension") != "present"


@pytest.mark.parametrize(
    "lead", ["With 4 cm missing the palmaris was used as a bridging graft", "Palmaris was used as a graft"]
)
def test_a_palmaris_used_as_a_graft_was_not_repaired(lead: str) -> None:
    text = f"Left long finger: direct repair of FDP was planned. {lead}, woven proximally after Pulvertaft."
    assert all("PL" not in name for name in told(text, "treatment", "stitch"))


@pytest.mark.parametrize(
    "thought",
    [
        "A running peripheral suture would have cut out, so it was omitted.",
        "An epitendinous suture would have added bulk.",
    ],
)
def test_a_suture_that_would_have_cut_out_was_not_placed(thought: str) -> None:
    assert told(SEWN + thought, "peripheral").get("ring FDP", {}).get("peripheral") != "present"


@pytest.mark.parametrize(
    "text", ["Unlike the middle finger, the FDS here is whole.", "Unlike the index, the ring FDS is intact."]
)
def test_a_finger_set_against_this_one_takes_nothing(text: str) -> None:
    assert told(SEWN + text, "extent") == {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "intact"}}


@pytest.mark.parametrize(
    "words", ["I planned six strands and managed four.", "I wanted six strands and managed only four."]
)
def test_a_plan_of_which_less_was_managed_is_not_told(words: str) -> None:
    assert told(f"Ring FDP divided. {words}", "strands").get("ring FDP", {}).get("strands") != 6
