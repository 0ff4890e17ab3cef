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
