"""Templates whose choices stand in brackets before what was typed behind them."""

import pytest
from reader_sentences import each, told

NOTE = (
    "Left index and middle fingers, zone II.\n"
    "The FDP was found to be [intact/partially/completely] completely transected in both fingers. The FDS was"
    " [intact/cut] intact in both fingers. Tendon ends were [clean/ragged] ***.\n"
    "The ulnar digital nerve was [intact/cut] intact in both fingers. The radial digital nerve was *** .\n"
    "The A2 pulley was [preserved/vented __%/released] preserved in the index and vented 30% in the middle.\n"
    "Core repair of the FDP was done with a [2/4/6]-strand [Kessler/cruciate] 4-strand locked cruciate, [3-0/4-0] 4-0"
    " [Ethibond/FiberWire] FiberWire in both fingers, purchase of [__] 10 mm.\n"
    "FDP excursion was [smooth/restricted] smooth.\n"
)


def test_what_was_typed_is_read() -> None:
    fields = ("extent", "ends", "strands", "stitch", "size", "material", "purchase_mm")
    deep = {"extent": "complete", "strands": 4, "stitch": "locked cruciate", "size": "4-0", "material": "polyblend"}
    deep |= {"purchase_mm": (10, 10)}
    whole = {"extent": "intact"}
    expected = {"index FDP": deep, "middle FDP": deep, "index FDS": whole, "middle FDS": whole}
    assert told(NOTE, *fields) == expected
    assert each(NOTE, "glide")["middle FDP"] == "free"


def test_nerves_and_pulleys_of_a_template() -> None:
    nerves = {"index digital nerve ulnar": "intact", "middle digital nerve ulnar": "intact"}
    assert each(NOTE, "extent", group="injuries") == nerves
    assert each(NOTE, "finding", group="pulleys") == {"index A2": "intact", "middle A2": "vented"}


def test_choices_that_nobody_answered_say_nothing() -> None:
    note = """Ring finger. FDP [cut/whole]. Gap was [none/seen]. It glided [freely/with a catch].
The A2 pulley was [preserved/vented] vented."""
    assert each(note, "gap") == each(note, "glide") == {}


def test_brackets_of_an_ordinary_note_are_read() -> None:
    note = "Ring FDP cut through, sewn with a cruciate [3/0 Ticron], [6/0 Prolene] around it."
    assert each(note, "size") == {"ring FDP": "3-0"}


def test_a_length_in_both_fingers_is_of_the_tendon_named() -> None:
    note = (
        "Index and middle fingers. The FDP was cut through in both fingers, the FDS cut through in the middle finger."
        " The FDP was sewn with a 4-strand cruciate, 4-0 nylon in both fingers, purchase of 10 mm."
        " The middle FDS was repaired with 4-0 nylon."
    )
    assert each(note, "purchase_mm") == {"index FDP": (10, 10), "middle FDP": (10, 10)}
    apart = note.replace("purchase of 10 mm", "the FDS in the middle finger with a purchase of 8 mm")
    assert "index FDP" not in each(apart, "purchase_mm")


FLEXOR = "Left small finger. FDP divided, repaired. "


@pytest.mark.parametrize(
    ("words", "told_of"),
    [
        ("A2 {{intact / vented}}, A4 intact.", {"small A4": "intact"}),
        ("Pulleys: A2 ***, A4 vented 25%", {"small A4": "vented"}),
        ("Pulleys: A2 intact, A4 ***", {"small A2": "intact"}),
        ("A2 ***, A3 ***, A4 intact.", {"small A4": "intact"}),
        ("A2 ____ vented 3 mm, A4 intact.", {"small A2": "vented", "small A4": "intact"}),
    ],
)
def test_a_pulley_before_a_blank_is_not_told_with_the_next(words: str, told_of: dict[str, str]) -> None:
    assert each(FLEXOR + words, "finding", group="pulleys") == told_of


@pytest.mark.parametrize("blank", ["***", "{{intact / cut}}", "{intact / cut}", "____"])
def test_a_tendon_before_a_blank_is_not_told_with_the_next(blank: str) -> None:
    assert each(f"Left small finger. FDP {blank}, FDS intact.", "extent") == {"small FDS": "intact"}


@pytest.mark.parametrize("gap", ["gap {{none / mm}}", "gapping at bone {{none / ___ mm}}", "gap ***."])
def test_what_stands_before_a_blank_is_told(gap: str) -> None:
    found = told(f"{FLEXOR}Tendon runs without catching; {gap}", "glide", "gap")
    assert found == {"small FDP": {"glide": "free"}}


def test_a_line_that_a_blank_closes_does_not_go_on() -> None:
    """'A2 intact, A4 ***' at the end of a line: neither its comma nor what the next line names is read on."""
    note = (
        "Index finger\n  FDP laceration: complete\n  Pulleys: A2 ***, A4 vented\n"
        "Long finger\n  FDP laceration: complete\n  Pulleys: A2 intact, A4 ***\nDigital nerves: index radial - ***\n"
    )
    assert each(note, "finding", group="pulleys") == {"index A4": "vented", "middle A2": "intact"}
