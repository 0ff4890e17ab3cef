"""Edge sutures 'save on the middle, which has none', and grafts told without the tendon they mend."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    ("text", "peripheral", "strands"),
    [
        (
            "Ring and middle FDP: repaired, cruciate, 4-0, with running 6-0 epitendinous sutures save on the middle, "
            "which has none.",
            {"ring FDP": "present", "middle FDP": "absent"},
            {"ring FDP": 4, "middle FDP": 4},
        ),
        (
            "Index and ring FDP repaired with four strands and a running 6-0 epitendinous, except in the ring, "
            "where none was placed.",
            {"index FDP": "present", "ring FDP": "absent"},
            {"index FDP": 4, "ring FDP": 4},
        ),
        (
            "Index and ring FDP repaired with four strands and a running 6-0, except in the ring, which got none.",
            {"index FDP": "present", "ring FDP": "absent"},
            {"index FDP": 4, "ring FDP": 4},
        ),
    ],
)
def test_an_edge_suture_save_on_one(text: str, peripheral: dict[str, str], strands: dict[str, int]) -> None:
    assert each(text, "peripheral") == peripheral
    assert each(text, "strands") == strands


def test_a_gap_that_one_has_not() -> None:
    assert not each("Index and ring FDP repaired. Gap in all repairs except the ring, which has none.", "peripheral")


@pytest.mark.parametrize("text", ["A palmaris graft was placed.", "A tendon graft was then put in."])
def test_a_graft_put_in(text: str) -> None:
    assert each("Thumb, FPL divided completely. " + text, "treatment") == {"thumb FPL": "grafted"}


@pytest.mark.parametrize("text", ["A nerve graft was placed.", "A palmaris graft was considered."])
def test_no_graft_of_the_tendon(text: str) -> None:
    assert each("Index FDP cut and repaired. " + text, "treatment") == {"index FDP": "repaired"}
