"""Ends told by picture and tests told by who moved what: wordings of many countries and habits."""

import pytest
from reader_sentences import told

BEFORE = (
    "Right ring finger, zone II. The FDP was completely divided. {} It was repaired with 4-0 Ethibond, four strands."
)
AFTER = (
    "Right ring finger, zone II. The FDP was completely divided. It was repaired with a four-strand locked cruciate "
    "of 4-0 Ethibond. {} The skin was closed with 5-0 nylon."
)


@pytest.mark.parametrize(
    ("sentence", "value"),
    [
        ("Nice flat faces on both ends.", "clean"),
        ("The ends looked as if a microtome had done it.", "clean"),
        ("Both of its ends were straight and shiny.", "clean"),
        ("Clean transection of the FDP.", "clean"),
        ("Both stumps were a bit furry.", "ragged"),
        ("Ends torn up by the blade.", "ragged"),
        ("Tendon ends were like a brush.", "ragged"),
        ("The ends were soggy and bruised.", "crushed"),
        ("Contused stumps were found.", "crushed"),
        ("Ends spongy, stretched thin.", "attenuated"),
        ("The stumps were wispy.", "attenuated"),
    ],
)
def test_ends_by_picture(sentence: str, value: str) -> None:
    assert told(BEFORE.format(sentence), "ends") == {"ring FDP": {"ends": value}}


@pytest.mark.parametrize(
    "sentence",
    [
        "The nerve ends were bruised.",
        "The skin edges were furry.",
        "The ends were torn off the sheath with difficulty.",
        "The finger was bruised.",
        "The wound was a clean cut.",
        "The profundus was contused.",
    ],
)
def test_pictures_of_other_things(sentence: str) -> None:
    assert not told(BEFORE.format(sentence), "ends")


def test_ends_of_both_tendons_named_together() -> None:
    note = "Right ring finger. FDP and FDS severed under A2, tendon ends crisp. FDP and FDS repaired with 4-0 Prolene."
    assert told(note, "ends") == {"ring FDP": {"ends": "clean"}, "ring FDS": {"ends": "clean"}}


@pytest.mark.parametrize(
    ("sentence", "value"),
    [
        ("The finger was carried through its whole range and no gap was seen.", "passive"),
        ("The digit was bent and straightened by my assistant and no gap was seen.", "passive"),
        ("I flexed the finger ten times and saw no gap.", "passive"),
        ("Rocking the wrist back and forth showed no gap.", "passive"),
        ("Passive run x 6. Smooth in, smooth out.", "passive"),
        ("Pulled thru range, nil catch.", "passive"),
        ("I got her to bend and straighten, no gap.", "active"),
        ("He opened and closed the finger for us and no gap was seen.", "active"),
        ("The patient, roused, flexed fully without triggering.", "active"),
        ("The patient was told to curl the finger and no gap was seen.", "active"),
        ("Voluntary movement showed no gap.", "active"),
        ("The tendon was loaded in the palm and no gap was seen.", "traction"),
        ("The tendon was drawn on with a hook and no gap was seen.", "traction"),
    ],
)
def test_who_moved_what(sentence: str, value: str) -> None:
    assert told(AFTER.format(sentence), "test")["ring FDP"] == {"test": value}


@pytest.mark.parametrize(
    "sentence",
    [
        "The finger will be moved passively by the therapist.",
        "The tendon had been pulled into the wound with forceps.",
        "The finger was moved aside with a retractor.",
        "He could not move the finger, yet no gap was seen.",
        "The wrist was placed in flexion and no gap was seen.",
    ],
)
def test_moved_but_not_tested(sentence: str) -> None:
    assert not told(AFTER.format(sentence), "test")


TWO = (
    "Right ring and small fingers, zone II. Both FDPs were completely divided. Both FDPs were repaired with a "
    "four-strand cruciate of 4-0 Ethibond. {} The skin was closed with 5-0 nylon."
)


@pytest.mark.parametrize(
    ("sentence", "expected"),
    [
        ("On passive stretching neither tendon gapes.", {"gap": "none"}),
        ("None of the repairs opened.", {"gap": "none"}),
        ("Both moved without any resistance.", {"glide": "free"}),
        ("Both repairs ran well.", {"glide": "free"}),
    ],
)
def test_said_of_both(sentence: str, expected: dict[str, object]) -> None:
    found = told(TWO.format(sentence), "gap", "glide")
    assert found == {"ring FDP": expected, "small FDP": expected}


@pytest.mark.parametrize(
    ("sentence", "expected"),
    [
        ("Nothing opened up between the ends.", {"gap": "none"}),
        ("The ends remained in contact.", {"gap": "none"}),
        ("The repair parted 1 mm.", {"gap": "seen", "gap_mm": 1}),
        ("On the first pull it opened by 2 mm.", {"gap": "seen", "gap_mm": 2}),
        ("The suture line ran smoothly under A2.", {"glide": "free"}),
        ("The tendon slipped without friction through the sheath.", {"glide": "free"}),
        ("The repair bumped at A2.", {"glide": "catching"}),
        ("It ran sluggishly.", {"glide": "restricted"}),
        ("The ends came together without any pull.", {"tension": "none"}),
        ("The stumps met without strain.", {"tension": "none"}),
        ("Tension: none.", {"tension": "none"}),
        ("The repair was rather tight.", {"tension": "present"}),
        ("The join was slim.", {"bulk": "none"}),
        ("The junction is no thicker than the tendon.", {"bulk": "none"}),
        ("The repair was a bit fat.", {"bulk": "present"}),
        ("Bulk: 0.", {"bulk": "none"}),
    ],
)
def test_how_the_repair_behaved(sentence: str, expected: dict[str, object]) -> None:
    assert told(AFTER.format(sentence), "gap", "gap_mm", "glide", "tension", "bulk") == {"ring FDP": expected}


@pytest.mark.parametrize(
    "sentence",
    [
        "The A2 pulley remained closed.",
        "The nerve ends met without a pull.",
        "The bulk of the muscle was intact.",
        "Subcutaneous fat was seen.",
        "A tube was passed without resistance.",
        "The operation went well.",
        "The sheath opened 4 mm.",
        "A2 and A4 were neither opened nor cut.",
    ],
)
def test_behaviour_of_other_things(sentence: str) -> None:
    assert not told(AFTER.format(sentence), "gap", "gap_mm", "glide", "tension", "bulk")
