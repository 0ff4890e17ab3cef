"""What was undone, seemed so at first or is true of a part only is not promised."""

import pytest
from reader_sentences import told

HEAD = "Left index finger. FDP cut through, four strands"


@pytest.mark.parametrize(
    "words",
    ["The epitendinous was cut out again since it bunched.", "The epitendinous suture was taken out again."],
)
def test_an_epitendinous_suture_undone(words: str) -> None:
    facts = told(f"{HEAD}, epitendinous 6-0. {words}", "peripheral")
    assert facts == {"index FDP": {"peripheral": "absent"}}


@pytest.mark.parametrize(
    "words",
    [
        "FDS intact at first sight, on traction its ulnar slip was cut.",
        "FDS thought intact by the casualty officer.",
        "Most of the FDS intact.",
        "FDS function intact preoperatively.",
    ],
)
def test_a_superficialis_only_seemingly_or_partly_intact(words: str) -> None:
    assert "index FDS" not in told(f"{HEAD}. {words}", "extent")


@pytest.mark.parametrize("words", ["Later A2 tore when the finger was extended.", "A2 tore as it was dilated."])
def test_a_pulley_that_tore(words: str) -> None:
    facts = told(f"{HEAD}. A2 intact. {words}", group="pulleys")
    assert facts["index A2"]["finding"] == "injured"


def test_plain_intact_stays() -> None:
    assert told(f"{HEAD}. The FDS was intact.", "extent")["index FDS"] == {"extent": "intact"}


@pytest.mark.parametrize(
    "first",
    [
        "I had at first tied the ring FDP to the middle as a tenodesis; its end was found and that suture was removed.",
        "At first the ring FDP had been joined to its neighbour as a tenodesis; later those stitches were undone.",
    ],
)
def test_a_tenodesis_undone_again(first: str) -> None:
    note = f"Ring FDP cut through. It was repaired with a six-strand Yoshizu, 4-0 looped nylon. {first}"
    assert told(note, "treatment", "strands")["ring FDP"] == {"treatment": "repaired", "strands": 6}


@pytest.mark.parametrize("out", ["The stay suture was removed.", "That thread was excised."])
def test_a_suture_removed_is_no_tendon_removed(out: str) -> None:
    note = f"Ring FDP cut through. It was repaired with 4-0 nylon. {out}"
    assert told(note, "treatment") == {"ring FDP": {"treatment": "repaired"}}


@pytest.mark.parametrize(
    "slips", ["too frayed to hold a stitch and were excised", "would not take a suture and were excised"]
)
def test_slips_that_hold_no_suture_are_still_excised(slips: str) -> None:
    assert told(f"Both slips of the ring FDS cut, {slips}.", "treatment") == {"ring FDS": {"treatment": "excised"}}
