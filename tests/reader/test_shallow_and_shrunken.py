"""The superficialis as the shallow tendon, a tendon that shortened of itself, and deeds told in plainer words."""

import pytest
from reader_sentences import each, told


def test_the_shallow_tendon_is_the_superficialis() -> None:
    assert each("Shallow tendon of the index was cut away, nothing was put back in.", "treatment") == {
        "index FDS": "excised"
    }
    note = "The deep and the shallow flexors of the middle finger were untouched."
    assert each(note, "extent") == {"middle FDP": "intact", "middle FDS": "intact"}
    assert told("The wound of the index was shallow and the tendon sheath was not open.") == {}


@pytest.mark.parametrize(
    "story",
    [
        "The flexor pollicis longus had shortened by then.",
        "The FPL of the thumb had retracted and shortened.",
        "The FPL has already shortened.",
    ],
)
def test_a_tendon_that_shortened_of_itself_was_not_trimmed(story: str) -> None:
    note = f"{story} Proximally the graft was woven into the FPL in the Pulvertaft fashion, 3-0 Ethibond."
    assert told(note, "treatment", "stitch") == {"thumb FPL": {"treatment": "grafted", "stitch": "pulvertaft"}}


def test_a_tendon_shortened_by_the_surgeon_was() -> None:
    note = "The FPL was found partly cut. I had shortened the frayed FPL."
    assert each(note, "treatment") == {"thumb FPL": "trimmed"}


@pytest.mark.parametrize(
    "deed", ["took the whole of the tendon out", "took all of it out", "took the whole tendon out", "took it out whole"]
)
def test_a_repair_that_was_taken_out_is_none(deed: str) -> None:
    note = f"The FDS repair of the ring finger was not sound and I {deed}."
    assert each(note, "treatment") == {"ring FDS": "excised"}


@pytest.mark.parametrize("opened", ["let right open", "laid right open", "let fully open"])
def test_a_pulley_let_right_open_is_released(opened: str) -> None:
    assert each(f"The A1 pulley of the index was {opened}.", "finding", group="pulleys") == {"index A1": "released"}


def test_a_pulley_left_open_is_not() -> None:
    assert each("The skin over A1 of the index was left right open.", "finding", group="pulleys") == {}
