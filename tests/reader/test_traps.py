"""Sentences that look like a finding and are none: open choices, blanks, wishes, plans, warnings, names of people."""

import pytest
from reader_sentences import each, told

INDEX = "Left index finger, zone II. FDP completely divided. FDP repaired with a two-strand core of 5-0 Prolene. "
THUMB = "Right thumb. FPL cut clean through; FPL repaired, core 5-0 Prolene, two strands.\n"
FIELDS = (
    "strands",
    "stitch",
    "size",
    "hold",
    "purchase_mm",
    "knot",
    "peripheral",
    "ends",
    "gap",
    "test",
    "glide",
    "tension",
    "bulk",
)
PLAIN = {"strands": 2, "size": "5-0"}


@pytest.mark.parametrize(
    "sentence",
    [
        # choices nobody made
        "Knot: inside / outside",
        "Repair site: bulky / not bulky",
        "Ends: sharp / frayed",
        "Glide through A2: smooth / catching",
        "Gapping Y / N",
        "Tested by: active flexion / passive motion / traction",
        "Hold: locking/grasping",
        "Epitendinous: yes/no",
        # blanks
        "Gap at full extension: ____",
        "Purchase ____ mm each side",
        "Strand count: ***",
        "Number of core strands: ......",
        # wishes, rules, warnings
        "Ten millimetres of purchase would be ideal.",
        "Ideally there is no gap and no tension.",
        "One should always lock the core.",
        "The repair must not gap.",
        "It is hoped that the repair will glide freely.",
        "Make sure that the repair is not bulky.",
        "Gapping beyond 3 mm leads to rupture.",
        "An epitendinous suture is known to add strength.",
        "Avoid tension on the repair.",
        # plans and conditions
        "We intend to add an epitendinous suture at the second look.",
        "A four-strand repair will be done when the swelling has gone.",
        "Were a gap to form, a six-strand revision with 3-0 Ethibond is needed.",
        "In case of rupture: four-strand repair, 3-0 Ethibond.",
        # risks told
        "He understands that the repair may gap, rupture, stick or catch.",
        "Warned of gap formation and of triggering.",
        # people and places
        "Assisted by Dr Evans.",
        "The scrub nurse was Ms Savage.",
        "cc Professor Becker, hand therapy.",
        "Lee, R., theatre nurse.",
        "Transferred from Adelaide by road.",
        # other things
        "The previous dressing was bulky and tight.",
        "The K-wire had good purchase of 10 mm.",
        "The door lock had caught his sleeve.",
        "Each hand was moved passively before the block.",
        "Nerve gap 4 mm, no tension on the nerve.",
    ],
)
def test_nothing_is_taken_from(sentence: str) -> None:
    assert told(INDEX + sentence, *FIELDS) == {"index FDP": PLAIN}
    assert told(THUMB + sentence, *FIELDS) == {"thumb FPL": PLAIN}


@pytest.mark.parametrize(
    ("sentence", "field", "value"),
    [
        ("Knot: inside.", "knot", "buried"),
        ("Gapping: none.", "gap", "none"),
        ("Gap: 2 mm.", "gap", "seen"),
        ("Tendon ends: frayed.", "ends", "ragged"),
        ("Hold: locking.", "hold", "locking"),
        ("Epitendinous: yes, running 6-0.", "peripheral", "present"),
        ("Glide: catching at A2.", "glide", "catching"),
        ("Purchase 8 mm each side.", "purchase_mm", (8, 8)),
        ("The repair is not bulky.", "bulk", "none"),
        ("The repair lies without tension.", "tension", "none"),
    ],
)
def test_what_was_filled_in_is_taken(sentence: str, field: str, value: object) -> None:
    """So that the silence above is not bought by reading nothing."""
    assert told(INDEX + sentence, field) == {"index FDP": {field: value}}
    assert told(THUMB + sentence, field) == {"thumb FPL": {field: value}}


@pytest.mark.parametrize(
    ("words", "count"), [("two to four strands", 2), ("6 to 8 strands", 6), ("4 or 6 strands", 4), ("4-6 strand", 4)]
)
def test_ranges_take_the_lower_figure(words: str, count: int) -> None:
    shown = told(
        f"Left small finger. FDP completely divided. FDP repaired with a core of 4-0 nylon, {words}.", "strands"
    )
    assert shown in ({"small FDP": {"strands": count}}, {})


SEWN = "Ring finger. FDP divided and repaired with a four-strand cruciate of 3-0 PDS. "


@pytest.mark.parametrize(
    ("words", "field"),
    [
        ("Gap testing was not performed.", "gap"),
        ("The gap test was left out.", "gap"),
        ("I could not be sure that there was no gap.", "gap"),
        ("It is not clear whether it ran freely.", "glide"),
        ("It ran freely until the PIP was straightened.", "glide"),
        ("Peripheral suture: see diagram.", "peripheral"),
        ("Epitendinous: refer to drawing.", "peripheral"),
    ],
)
def test_what_was_not_seen_or_not_kept_is_not_told(words: str, field: str) -> None:
    assert each(SEWN + words, field) == {}


@pytest.mark.parametrize(
    "words",
    [
        "Peripheral suture attempted, tore out, abandoned.",
        "A 6-0 peripheral suture was opened on the table but not used.",
    ],
)
def test_a_peripheral_suture_given_up_is_absent(words: str) -> None:
    assert each(f"Ring FDP divided, repaired with four strands. {words}", "peripheral") == {"ring FDP": "absent"}


@pytest.mark.parametrize(
    "words",
    [
        "FDS not seen, presumed intact.",
        "FDS assumed to be intact.",
        "FDS intact proximally, distally its slips were cut.",
    ],
)
def test_a_tendon_presumed_or_partly_intact_is_not_intact(words: str) -> None:
    assert "ring FDS" not in each("Ring finger. FDP divided. " + words, "extent")


@pytest.mark.parametrize("words", ["Clean ends had been hoped for but they were frayed.", "Clean ends were hoped for."])
def test_ends_hoped_for_are_not_clean(words: str) -> None:
    assert each("Ring finger. FDP divided. " + words + " Repaired with 3-0 PDS.", "ends").get("ring FDP") != "clean"


@pytest.mark.parametrize("words", ["No gap in the one that was tested.", "No gap in the one which was pulled on."])
def test_the_one_that_was_tested_is_unnamed(words: str) -> None:
    note = "Ring and small. FDP of both divided and repaired with a cruciate of 3-0 PDS. " + words
    assert each(note, "gap") == {}


@pytest.mark.parametrize(
    "words", ["Small: as ring but half the strands.", "Small FDP the same as the ring but fewer strands."]
)
def test_the_same_but_fewer_strands_has_no_count(words: str) -> None:
    note = "Ring and small. FDP of both divided. Ring FDP: cruciate, 4 strands, 3-0 PDS. " + words
    assert each(note, "strands") == {"ring FDP": 4}


EXCEPT = "Index, middle and ring. FDP of all three divided and repaired with 3-0 PDS. "


@pytest.mark.parametrize(
    ("words", "field", "value"),
    [
        ("The tendon ends were clean except those of the ring.", "ends", "clean"),
        ("No gap in any of the repairs apart from that of the ring.", "gap", "none"),
        ("All ran freely bar the one in the ring finger.", "glide", "free"),
        ("All repairs glided freely with the exception of those in the ring finger.", "glide", "free"),
        ("None of the repairs was under tension other than that of the ring finger.", "tension", "none"),
    ],
)
def test_those_of_the_ring_are_left_out(words: str, field: str, value: str) -> None:
    assert each(EXCEPT + words, field) == {"index FDP": value, "middle FDP": value}


@pytest.mark.parametrize(
    "words",
    [
        "A2 and A4 were intact in all fingers except for the A2 of the index.",
        "A2 and A4 were intact in all fingers apart from A2 of the index.",
    ],
)
def test_a_pulley_of_one_finger_is_left_out(words: str) -> None:
    found = each("Index, middle and ring fingers. FDP of all three divided. " + words, "finding", group="pulleys")
    assert "index A2" not in found and found["index A4"] == found["ring A2"] == "intact"


@pytest.mark.parametrize(
    ("words", "field", "never"),
    [
        ("Smooth glide was not achieved.", "glide", "free"),
        ("Free gliding could not be obtained.", "glide", "free"),
        ("Tension free? No.", "tension", "none"),
        ("A locked stitch was used on one side only.", "hold", "locking"),
        ("It was locked at one end only.", "hold", "locking"),
    ],
)
def test_what_was_not_reached_or_on_one_side_only(words: str, field: str, never: str) -> None:
    assert each(SEWN + words, field).get("ring FDP") != never


def test_a_pulley_left_out_that_was_vented() -> None:
    note = (
        "Index and ring. FDP of both cut. A2 and A4 were intact in both fingers except for the A2 of the index, which "
        "was vented over 5 mm."
    )
    found = each(note, "finding", group="pulleys")
    assert found == {"index A2": "vented", "index A4": "intact", "ring A2": "intact", "ring A4": "intact"}
