"""'Free', 'smooth' and 'all the way' of something that is no glide and no cut; glide in the carpal canal."""

import pytest
from reader_sentences import each

SEWN = "Left ring finger. FDP cut through. Repaired with a four-strand core of 4-0. No gap. "
WRIST = "Zone V. FCR and FDS of the ring finger divided, both repaired with 3-0 Ethibond. "


@pytest.mark.parametrize(
    "words",
    [
        "Plaster 4 weeks then free play.",
        "Cast off at 4 weeks, then free.",
        "Splint for six weeks, then free activity.",
        "Then free of the splint by week 8.",
        "The cut edge was smooth all the way.",
    ],
)
def test_the_hand_is_free_later_and_an_edge_is_smooth(words: str) -> None:
    assert each(SEWN + words, "glide") == {}


@pytest.mark.parametrize(
    "words",
    [
        "It caught on A2; A2 vented and then free.",
        "Touch of catching at A2, so it was opened 4 mm. Test 3: smooth all the way.",
        "It bumped on A1, which was opened 3 mm, then no bump.",
    ],
)
def test_a_repair_that_ran_in_the_end(words: str) -> None:
    assert each(SEWN + words, "glide") == {"ring FDP": "free"}


@pytest.mark.parametrize(
    "words", ["No triggering in the canal.", "The tendons glided freely through the carpal tunnel."]
)
def test_the_canal_is_of_the_tendons_that_run_in_it(words: str) -> None:
    assert each(WRIST + words, "glide") == {"ring FDS": "free"}


def test_elsewhere_the_flexor_of_the_wrist_runs_too() -> None:
    assert each(WRIST + "All repairs ran freely.", "glide") == {"FCR": "free", "ring FDS": "free"}


@pytest.mark.parametrize(
    "words", ["Small FDP intact all the way through.", "The small FDP was intact all the way through its excursion."]
)
def test_whole_all_the_way_through(words: str) -> None:
    assert each(words, "extent") == {"small FDP": "intact"}


def test_cut_all_the_way_through() -> None:
    assert each("Small FDP cut all the way through.", "extent") == {"small FDP": "complete"}
