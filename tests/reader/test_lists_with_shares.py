"""Lists with a share behind one tendon, lists headed by a weak word for whole, and shares of a nerve beside them."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "line",
    [
        "Cut: FCR, FDS 3, FPL ~50 %, median n. (100 %), radial a.",
        "Lacerated: FCR, FDS middle and FPL (50 %), median n. (100 %).",
        "Divided: FCR, FDS middle, FPL about 50%.",
    ],
)
def test_the_share_is_of_the_last_and_the_others_are_cut_through(line: str) -> None:
    assert each(line, "extent") == {"FCR": "complete", "middle FDS": "complete", "thumb FPL": "partial"}
    assert each(line, "extent_percent") == {"thumb FPL": 50}


def test_a_bare_list_does_not_say_how_far() -> None:
    assert each("Cut: FCR, FDS 3, FDP 2", "extent") == {}


@pytest.mark.parametrize("word", ["OK", "Fine", "Whole", "Not cut"])
def test_a_word_for_whole_at_the_head_of_a_list(word: str) -> None:
    note = f"Divided: FCR, FDS 3.\n{word}: FCU, ulnar n + a, FDP 4+5"
    assert each(note, "extent") == {
        "FCR": "complete",
        "middle FDS": "complete",
        "FCU": "intact",
        "ring FDP": "intact",
        "small FDP": "intact",
    }


def test_a_deed_behind_it_is_no_list() -> None:
    assert each("Divided: FCR.\nOK: FCU repaired with 3-0 Prolene", "extent") == {"FCR": "complete"}


@pytest.mark.parametrize("good", ["good flow", "good Allen after release", "good refill"])
def test_good_said_of_something_else(good: str) -> None:
    assert told(f"Radial artery: sutured 8-0, {good}.", group="injuries") == {
        "radial artery": {"treatment": "repaired"}
    }


def test_a_good_artery_is_intact() -> None:
    assert each("Radial artery good and pulsating.", "extent", group="injuries") == {"radial artery": "intact"}


@pytest.mark.parametrize(
    "words",
    [
        "The ring profundus, and only it, sustained an incision of 45 percent, whereas its superficialis was whole.",
        "The ring FDP showed an incision of about 45 percent; its FDS was whole.",
    ],
)
def test_an_incision_of_the_tendon(words: str) -> None:
    assert each(words, "extent") == {"ring FDP": "partial", "ring FDS": "intact"}


def test_an_incision_of_the_skin() -> None:
    assert each("Through an incision of 30 percent more length the ring FDP was found.", "extent") == {}


@pytest.mark.parametrize(
    "words",
    [
        "its ends were softened, and after 2 mm in all had been removed they held a suture.",
        "after 2 mm in total had to be removed it was sewn.",
    ],
)
def test_a_length_removed_is_no_tendon_taken_out(words: str) -> None:
    note = f"Right ring finger. The profundus was completely divided; {words} A core of 3-0 Supramid, six strands."
    assert told(note, "treatment", "trimmed_mm") == {"ring FDP": {"treatment": "repaired", "trimmed_mm": 2}}


def test_a_tendon_that_was_removed() -> None:
    assert each("Ring FDS divided in zone II; it was removed.", "treatment") == {"ring FDS": "excised"}
