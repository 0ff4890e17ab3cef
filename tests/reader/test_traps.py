"""Sentences that look like a finding and are none: open choices, blanks, wishes, plans, warnings, names of people."""

import pytest
from reader_sentences import told

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
