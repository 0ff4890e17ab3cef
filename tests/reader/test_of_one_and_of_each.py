"""'For the FCR only', 'in each': of the tendons told so far, which one suture or length is of."""

import pytest
from reader_sentences import each, told

WRIST = "Left wrist, zone V. Flexor carpi radialis and flexor carpi ulnaris completely cut. "


@pytest.mark.parametrize(
    "words",
    [
        "Layer three (flexor carpi radialis, flexor carpi ulnaris): a two-strand modified Kessler of 2-0 Ethibond, to "
        "which 5-0 Prolene was added in running fashion for the carpi radialis only.",
        "FCR and FCU were repaired with a modified Kessler of 2-0 Ethibond, and a running 5-0 Prolene was put around "
        "the FCR alone.",
    ],
)
def test_a_thread_for_one_tendon_only(words: str) -> None:
    sewn = told(WRIST + words, "size", "peripheral", "peripheral_size")
    assert sewn["FCR"] == {"size": "2-0", "peripheral": "present", "peripheral_size": "5-0"}
    assert sewn["FCU"] == {"size": "2-0", "peripheral": "absent"}


def test_the_carpi_ulnaris_of_the_other_side_of_the_hand() -> None:
    assert told("The extensor carpi radialis was repaired with 4-0 Ethibond.") == {}


TWO = (
    "Right hand. FDP of the ring and small fingers cut through. Ring FDS cut through. The small FDP was repaired with "
    "a four-strand cruciate of 4-0 Ethibond. The ring FDP was repaired with a four-strand cruciate of 3-0 Ethibond. "
)
THIRD = "The ring superficialis was then approximated with a single 4-0 Ethibond mattress stitch."


@pytest.mark.parametrize("words", ["In each the suture purchase was 9 mm. ", "Both had a purchase of 9 mm. "])
def test_each_is_not_what_is_sewn_further_down(words: str) -> None:
    assert each(TWO + words + THIRD, "purchase_mm") == {"ring FDP": (9, 9), "small FDP": (9, 9)}


def test_what_is_denied_of_any_tendon_holds_of_the_next_too() -> None:
    note = TWO + "No epitendinous suture was placed in any of the tendons. " + THIRD
    assert each(note, "peripheral")["ring FDS"] == "absent"
