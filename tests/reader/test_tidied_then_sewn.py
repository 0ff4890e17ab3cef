"""Partial cuts tidied and then sewn, pulleys opened for the repair in hand, edges cut away, and orders told shortly."""

import pytest
from reader_sentences import each, told

from notereader.reader import read


def _value(text: str, entry: str, field: str, group: str = "repairs") -> object:
    return told(text, field, group=group).get(entry, {}).get(field)


def _from(text: str, field: str) -> object:
    """Return the low end of an interval of the orders, None where there is none."""
    fact = read(text).aftercare.get(field)
    return None if fact is None else fact.value.low


@pytest.mark.parametrize(
    "text",
    [
        "Thumb FPL partial, half its width. FPL tidied then 4-0 PDS core x1 (2 strand), no epitendinous.",
        "Thumb: FPL cut in half its width. Frayed part removed, FPL smoothed and 4-0 core (2 strands) put in.",
    ],
)
def test_a_partial_cut_tidied_and_then_sewn_is_repaired(text: str) -> None:
    assert _value(text, "thumb FPL", "treatment") == "repaired"
    assert _value(text, "thumb FPL", "strands") == 2


def test_a_partial_cut_tidied_without_a_core_stays_trimmed() -> None:
    text = "Ring FDP partial, 60%. Flap trimmed; no core used, no strands."
    assert _value(text, "ring FDP", "treatment") == "trimmed"


@pytest.mark.parametrize(
    "text",
    [
        "Thumb FPL cut. About 6 mm of tendon remained on the phalanx. Tajima 4-0 PDS.",
        "Thumb FPL cut. 8 mm of distal tendon was available. Tajima 4-0 PDS.",
    ],
)
def test_tendon_that_remained_is_no_length_taken(text: str) -> None:
    assert _value(text, "thumb FPL", "purchase_mm") is None


@pytest.mark.parametrize("words", ["running adaptation of 6-0 PDS", "a continuous adaptation with 6-0 PDS"])
def test_an_adaptation_all_along_is_a_peripheral_suture(words: str) -> None:
    text = f"Ring FDP divided. Kessler suture of 4-0 Ethibond and {words}."
    assert _value(text, "ring FDP", "peripheral_size") == "6-0"
    assert _value(text, "ring FDP", "size") == "4-0"


def test_a_gap_stands_beside_the_pulley_that_was_met() -> None:
    for words in ("Repair opened up by 1 mm and it snagged on A4.", "The junction opened 1 mm and caught under A2."):
        text = f"Left ring finger FDP cut through. 4-strand repair. {words}"
        assert _value(text, "ring FDP", "gap") == "seen"
    opened = "Left ring finger FDP cut through. 4-strand repair. After the repair we opened 3 mm of A2."
    assert _value(opened, "ring FDP", "gap") is None


@pytest.mark.parametrize("words", ["Fist again - tendon clears everything.", "Then it cleared all the pulleys."])
def test_what_clears_everything_runs_freely(words: str) -> None:
    text = f"Left ring finger FDP cut through. 4-strand repair. It snagged on A4, so A4 was vented. {words}"
    assert _value(text, "ring FDP", "glide") == "free"


@pytest.mark.parametrize("words", ["It passes everything but A2.", "It clears all the pulleys but A4."])
def test_what_clears_all_but_a_pulley_does_not_run_freely(words: str) -> None:
    text = f"Left ring finger FDP cut through. 4-strand repair. {words}"
    assert _value(text, "ring FDP", "glide") != "free"


def test_a_pulley_opened_for_the_repair_in_hand_is_of_its_finger() -> None:
    hurt = "FDP of middle and ring finger divided, A2 of the ring finger has been cut."
    text = f"{hurt} Middle finger: suture with Tsuge technique. It goes through, after A2 is vented 6 mm."
    assert _value(text, "middle A2", "finding", "pulleys") == "vented"
    assert _value(text, "ring A2", "finding", "pulleys") == "injured"
    mended = f"{hurt} The middle FDP got a Tsuge. A2 was repaired with 5-0."
    assert _value(mended, "ring A2", "finding", "pulleys") == "repaired"


@pytest.mark.parametrize(
    "words",
    ["Sheath opened between A2 and A4, both of these left intact.", "Opened between A2 and A4, both of them intact."],
)
def test_both_of_these_are_the_pulleys(words: str) -> None:
    assert _value(f"Ring FDP cut. {words}", "ring A4", "finding", "pulleys") == "intact"


def test_both_of_these_nerves_are_no_pulleys() -> None:
    assert told("Ring FDP cut. Opened between A2 and A4, both of these nerves intact.", group="pulleys") == {}


@pytest.mark.parametrize(
    "words", ["A1 edges excised.", "The ragged margins of A1 were removed.", "A tag of A1 was excised."]
)
def test_a_pulley_whose_edges_were_cut_away_is_trimmed(words: str) -> None:
    assert _value(f"Thumb FPL cut. Kessler. {words}", "thumb A1", "finding", "pulleys") == "trimmed"


@pytest.mark.parametrize("words", ["A1 was in tags and was excised.", "The remaining tags of A1 were excised."])
def test_a_pulley_of_which_nothing_is_left_is_excised(words: str) -> None:
    assert _value(f"Thumb FPL cut. Kessler. {words}", "thumb A1", "finding", "pulleys") == "excised"


_DONE = "Operation: repair of FDP left ring finger.\n\nThe FDP was divided. Four strand repair.\n\n"


@pytest.mark.parametrize(
    "words", ["Dorsal blocking splint, wrist 20 flexed, keep on 6/52.", "Dorsal blocking splint, to stay on for 6/52."]
)
def test_a_splint_kept_on_is_worn_so_long(words: str) -> None:
    assert _from(_DONE + words, "splint_weeks") == 6


@pytest.mark.parametrize(("words", "day"), [("Hand therapy 1/52.", 7), ("OT 1/52.", 7)])
def test_therapy_in_a_week_starts_then(words: str, day: int) -> None:
    assert _from(_DONE + words, "start_day") == day


@pytest.mark.parametrize("words", ["Hand therapy 6/52.", "Hand therapy 1/52 for a thermoplastic splint."])
def test_weeks_of_therapy_are_no_start(words: str) -> None:
    assert _from(_DONE + words, "start_day") is None


def test_the_day_on_which_a_programme_commences_is_its_start() -> None:
    words = "Seen by hand therapist on day 1 for a splint; early active programme to commence on day 3 in therapy."
    assert _from(_DONE + words, "start_day") == 3


@pytest.mark.parametrize(
    "words",
    [
        "FDP - ragged fibres trimmed, repaired 4/0 Prolene 2 strand core (Kessler).",
        "FDP: frayed tags pared away, then sutured with 4/0 Prolene, 2 strand Kessler core.",
    ],
)
def test_trimmed_and_behind_a_comma_sewn(words: str) -> None:
    text = f"Left middle finger. {words} 6/0 Prolene running epitendinous. Knot buried."
    assert told(text, "treatment", "size", "peripheral", "knot") == {
        "middle FDP": {"treatment": "repaired", "size": "4-0", "peripheral": "present", "knot": "buried"}
    }


@pytest.mark.parametrize(
    "words", ["flap trimmed, sutured the ulnar nerve", "flap trimmed, not sutured", "flap trimmed, repaired FDP"]
)
def test_trimmed_and_another_sewn(words: str) -> None:
    assert each(f"Left middle finger. FDS cut 30%: {words}.", "treatment")["middle FDS"] == "trimmed"
