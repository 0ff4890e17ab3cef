"""What stands around the programme and the repair without being it: days of rest, earlier years, a slip cut out."""

import pytest
from reader_sentences import each, told

REPAIRED = "FDP of the ring finger divided and repaired, six-strand M-Tang.\n"


def _after(words: str, field: str) -> object:
    return told(REPAIRED + "Post-operative orders: " + words, field, group="aftercare").get("", {}).get(field)


@pytest.mark.parametrize(
    "words",
    [
        "no movement for the first days; early active movement is begun on day 4.",
        "No motion for the first three days, then early active motion.",
    ],
)
def test_first_days_of_rest_are_no_programme(words: str) -> None:
    assert _after(words, "programme") == "early active"


@pytest.mark.parametrize("words", ["no movement for three weeks.", "No motion for 4 weeks, then early active motion."])
def test_weeks_of_rest_are(words: str) -> None:
    assert _after(words, "programme") == "immobilisation"


def test_weeks_and_a_half() -> None:
    assert _after("splint discarded at 5 weeks and a half.", "splint_weeks") == (5.5, 5.5)


@pytest.mark.parametrize(
    "words",
    [
        "In earlier years we used a four-strand modified Kessler with 3-0 braided polyester, which had two ruptures.",
        "In past years, up to 2027, our repair was a two-strand Kessler of 3-0 Prolene.",
    ],
)
def test_what_was_used_in_earlier_years(words: str) -> None:
    note = REPAIRED + words
    assert each(note, "strands") == {"ring FDP": 6}
    assert each(note, "stitch") == {"ring FDP": "m-tang"}


SEWN = "Middle FDP cut and repaired with a four-strand Kessler of 3-0 Prolene, with a running 5-0 nylon around it. "


@pytest.mark.parametrize(
    "words",
    [
        "The cut slip of the superficialis I did not sew; I took it out.",
        "The ulnar slip was beyond sewing, so I took it out.",
    ],
)
def test_a_slip_taken_out_takes_no_suture_with_it(words: str) -> None:
    assert each(SEWN + words, "peripheral")["middle FDP"] == "present"


def test_a_suture_taken_out_is_gone() -> None:
    assert each(SEWN + "It bunched, so I took it all out again.", "peripheral") == {"middle FDP": "absent"}


@pytest.mark.parametrize("words", ["both NVBs seen + intact", "both NVBs checked & intact"])
def test_seen_and_intact_by_a_sign(words: str) -> None:
    found = each("FDP middle finger cut.\n- " + words, "extent", group="injuries")
    assert found == {
        f"middle digital {kind} {side}": "intact" for kind in ("nerve", "artery") for side in ("radial", "ulnar")
    }
