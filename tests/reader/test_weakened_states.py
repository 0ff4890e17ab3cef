"""Good states that an adverb takes back are not told, and a suture that is only guessed at is none."""

import pytest
from reader_sentences import told

SEWN = "The FDP of the ring finger was completely divided and was repaired. "


@pytest.mark.parametrize("adverb", ["hardly", "supposedly", "far from", "only partly", "probably", "no longer"])
@pytest.mark.parametrize(
    ("text", "field"),
    [
        ("The ends were {} clean.", "ends"),
        ("The tendon glided {} freely.", "glide"),
        ("The knots were {} buried.", "knot"),
        ("The repair was {} tension-free.", "tension"),
        ("The repair was {} gap-free.", "gap"),
        ("The core was {} locking.", "hold"),
    ],
)
def test_a_good_state_taken_back_is_not_told(text: str, field: str, adverb: str) -> None:
    found = told(SEWN + text.format(adverb), field)
    assert found.get("ring FDP", {}).get(field) not in ("clean", "free", "buried", "none", "locking")


@pytest.mark.parametrize("adverb", ["apparently", "seemingly", "anything but", "insufficiently"])
def test_a_pulley_that_only_seems_whole_is_not_told(adverb: str) -> None:
    assert told(f"{SEWN}A2 was {adverb} intact.", "finding", group="pulleys") == {}


@pytest.mark.parametrize("text", ["The repair was not tension-free.", "The repair was never quite tension-free."])
def test_freedom_denied_is_no_freedom(text: str) -> None:
    assert told(SEWN + text, "tension").get("ring FDP", {}).get("tension") != "none"


@pytest.mark.parametrize(
    "text",
    [
        "Four strands of 3-0 Ethibond were allegedly placed.",
        "Supposedly a four-strand core of 3-0 Ethibond.",
        "A running 6-0 was reportedly added.",
        "Six strands were nearly achieved.",
        "I almost placed eight strands of 4-0 Ethibond.",
    ],
)
def test_a_suture_by_hearsay_is_not_told(text: str) -> None:
    assert told(SEWN + text, "strands", "size", "peripheral") == {}


@pytest.mark.parametrize(
    ("text", "field", "value"),
    [
        ("The ends were quite clean.", "ends", "clean"),
        ("The tendon glided perfectly freely.", "glide", "free"),
        ("The repair was tension-free.", "tension", "none"),
        ("Four strands of 3-0 Ethibond were placed, possibly a little bulky.", "strands", 4),
    ],
)
def test_a_good_state_that_is_only_praised_is_told(text: str, field: str, value: object) -> None:
    assert told(SEWN + text, field) == {"ring FDP": {field: value}}


@pytest.mark.parametrize(
    "text",
    [
        "A peripheral suture was probably placed.",
        "A 6-0 epitendinous suture may have been placed.",
        "An epitendinous suture appears to have been added.",
        "I believe an epitendinous suture was placed.",
        "Epitendinous: 6-0 Prolene probably.",
        "Epitendinous suture: probably.",
        "Epitendinous: ?6-0 Prolene.",
        "Likely four strands.",
        "Four strands (I think).",
        "3-0 Ethibond, four strands I believe.",
        "Strands: 4 (probably)",
    ],
)
def test_a_suture_that_is_a_guess_is_not_told(text: str) -> None:
    assert told(SEWN + "\n" + text, "strands", "peripheral", "peripheral_size") == {}


@pytest.mark.parametrize(
    "text",
    [
        "As far as I recall A2 was intact.",
        "A2 was intact, I think.",
        "A2 intact (probably).",
        "A2 intact (as far as I recall).",
        "A2 ?intact.",
        "?A2 intact.",
    ],
)
def test_a_pulley_that_is_whole_by_a_guess_is_not_told(text: str) -> None:
    assert told(SEWN + "\n" + text, "finding", group="pulleys") == {}


@pytest.mark.parametrize(
    "text", ["No gap, I think.", "No gap (I believe).", "?no gap.", "Gap: ?none", "Gap: probably none", "Gap: possibly"]
)
def test_a_gap_that_is_a_guess_is_not_told(text: str) -> None:
    assert told(SEWN + "\n" + text, "gap") == {}


@pytest.mark.parametrize("text", ["Gap? None.", "Gap ? none", "I think we were careful. No gap."])
def test_an_answer_behind_a_question_is_no_guess(text: str) -> None:
    assert told(SEWN + "\n" + text, "gap") == {"ring FDP": {"gap": "none"}}


@pytest.mark.parametrize(
    "text", ["I believe the four-strand repair gapped by 2 mm.", "The four-strand core probably gapped."]
)
def test_of_a_guess_the_worse_finding_stays_told(text: str) -> None:
    assert told(SEWN + text, "strands", "gap") == {"ring FDP": {"gap": "seen"}}


def test_a_pulley_that_was_probably_divided_stays_told() -> None:
    text = "Probably the A2 pulley was divided and four strands were placed."
    assert told(SEWN + text, "finding", group="pulleys") == {"ring A2": {"finding": "released"}}
