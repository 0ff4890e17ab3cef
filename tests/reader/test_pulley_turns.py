"""What became of each pulley: parts of an injured one, later totals, 'which I preserved', active deeds in a row."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. A2 was torn in its distal part and A4 was intact.",
            {"ring A2": {"finding": "injured", "part": "distal"}, "ring A4": {"finding": "intact"}},
        ),
        (
            "Ring finger. The A2 pulley had a cut in its proximal part, nothing was done about it.",
            {"ring A2": {"finding": "injured", "part": "proximal"}},
        ),
        (
            "Ring finger. A4 had been bitten through in its middle and was left.",
            {"ring A4": {"finding": "injured", "part": "middle"}},
        ),
        (
            "Ring finger. I vented A4 by a further 3 mm, 7 mm in all.",
            {"ring A4": {"finding": "vented", "extent_mm": 7}},
        ),
        (
            "Index finger: distal 1/3 A2 vented, A4 preserved.",
            {
                "index A2": {"finding": "vented", "extent_percent": 33, "part": "distal"},
                "index A4": {"finding": "intact"},
            },
        ),
        (
            "The profundus was passed back under A4, which I preserved, in the ring finger. A2 intact.",
            {"ring A2": {"finding": "intact"}, "ring A4": {"finding": "intact"}},
        ),
        (
            "Thumb. I did not disturb the oblique pulley, and the A1 I divided all the way along.",
            {"thumb A1": {"finding": "released"}, "thumb oblique": {"finding": "intact"}},
        ),
        ("Ring finger. A1 was split in full to deliver the tendon.", {"ring A1": {"finding": "released"}}),
        ("Thumb. The A1 was slit along its whole length.", {"thumb A1": {"finding": "released"}}),
        (
            "Thumb. The oblique pulley had been cut by the glass and was repaired with 5-0 PDS.",
            {"thumb oblique": {"finding": "repaired"}},
        ),
        (
            "Thumb. The oblique pulley had been opened by the saw over its middle few millimetres,"
            " which I drew together with two 5-0 PDS sutures.",
            {"thumb oblique": {"finding": "repaired"}},
        ),
        (
            "Index finger. A4 was gone, so I took a strip of palmaris longus, wove it between the "
            "tags, and had a serviceable A4.",
            {"index A4": {"finding": "reconstructed"}},
        ),
        (
            "Thumb. The oblique pulley could not be sutured because of tissue loss, so we made a "
            "new one with a strip of extensor retinaculum.",
            {"thumb oblique": {"finding": "reconstructed"}},
        ),
        (
            "Ring finger. A2 reconstructed with a palmaris graft, three wraps.",
            {"ring A2": {"finding": "reconstructed"}},
        ),
        (
            "Ring finger. A2 untouched. Of the A4 pulley we notched the proximal third.",
            {
                "ring A2": {"finding": "intact"},
                "ring A4": {"finding": "vented", "extent_percent": 33, "part": "proximal"},
            },
        ),
        (
            "Ring finger. A 3 mm cut was made in the proximal edge of A4 so that the knot went by.",
            {"ring A4": {"finding": "vented", "extent_mm": 3, "part": "proximal"}},
        ),
        (
            "Small finger. Pulleys: A1 released, A2 intact, A3 excised, A4 vented distal half.",
            {
                "small A1": {"finding": "released"},
                "small A2": {"finding": "intact"},
                "small A3": {"finding": "excised"},
                "small A4": {"finding": "vented", "extent_percent": 50, "part": "distal"},
            },
        ),
        (
            "Small finger. A2 and A4 both preserved.",
            {"small A2": {"finding": "intact"}, "small A4": {"finding": "intact"}},
        ),
        (
            "Small finger. The critical pulleys were preserved: A2, A4.",
            {"small A2": {"finding": "intact"}, "small A4": {"finding": "intact"}},
        ),
        ("Small finger. A4 needed no venting.", {"small A4": {"finding": "intact"}}),
        ("Small finger. We planned to vent A4 if the repair caught; it did not.", {}),
        ("Small finger. Had A4 been in the way I would have vented it.", {}),
        ("Small finger. Venting of A4 was considered but the repair passed.", {}),
        ("Small finger. A4 was vented at the first operation.", {}),
        (
            "Small finger. C1 and A3 opened to reach the tendon.",
            {"small A3": {"finding": "vented"}, "small C1": {"finding": "vented"}},
        ),
        ("Small finger. A2 was widened with a V-Y plasty.", {"small A2": {"finding": "widened"}}),
        (
            "Small finger. The opened part of A2 was enlarged with a V-Y plasty of its rim.",
            {"small A2": {"finding": "widened"}},
        ),
        ("Small finger. A2 closed again with 6-0 PDS.", {"small A2": {"finding": "repaired"}}),
        (
            "Small finger. The distal 50% of A2 was released.",
            {"small A2": {"finding": "vented", "extent_percent": 50, "part": "distal"}},
        ),
        (
            "Small finger. A2: 1/3 vented proximally.",
            {"small A2": {"finding": "vented", "extent_percent": 33, "part": "proximal"}},
        ),
        ("Small finger. A2: vented 2/3 of its length.", {"small A2": {"finding": "vented", "extent_percent": 67}}),
        (
            "Small finger. A2 released completely, A4 incised at its distal margin for 3 mm.",
            {"small A2": {"finding": "released"}, "small A4": {"finding": "vented", "extent_mm": 3, "part": "distal"}},
        ),
        (
            "Small finger. A2 sacrificed; A4 ok.",
            {"small A2": {"finding": "excised"}, "small A4": {"finding": "intact"}},
        ),
        (
            "Small finger. A2 torn by the glass, sutured; A4 torn, left.",
            {"small A2": {"finding": "repaired"}, "small A4": {"finding": "injured"}},
        ),
        ("Small finger. The edge of A2 was trimmed by 2 mm.", {"small A2": {"finding": "trimmed", "extent_mm": 2}}),
        (
            "Small finger. The crushed middle of A2 was cut away, roughly 6 mm, leaving a proximal and a distal rim.",
            {"small A2": {"finding": "trimmed", "extent_mm": 6, "part": "middle"}},
        ),
        (
            "Middle and ring fingers. A2 was lacerated in the ring finger; in the middle finger it was intact.",
            {"middle A2": {"finding": "intact"}, "ring A2": {"finding": "injured"}},
        ),
        (
            "Middle and ring fingers. A4 vented 5 mm in both fingers.",
            {"middle A4": {"finding": "vented", "extent_mm": 5}, "ring A4": {"finding": "vented", "extent_mm": 5}},
        ),
        (
            "Middle and ring fingers. A4 of the middle vented, that of the ring left whole.",
            {"middle A4": {"finding": "vented"}, "ring A4": {"finding": "intact"}},
        ),
        (
            "FPL divided at the wrist. The flexor retinaculum was divided completely.",
            {"flexor retinaculum": {"finding": "released"}},
        ),
        (
            "FPL divided at the wrist. The transverse carpal ligament was divided over about 15 mm.",
            {"flexor retinaculum": {"finding": "vented", "extent_mm": 15}},
        ),
        ("The retinaculum was lengthened in a Z and sutured back.", {"flexor retinaculum": {"finding": "repaired"}}),
        (
            "I did nothing to the median nerve beyond opening the retinaculum over its full "
            "length; I did not put the retinaculum back.",
            {"flexor retinaculum": {"finding": "released"}},
        ),
        ("Carpal tunnel released in full.", {"flexor retinaculum": {"finding": "released"}}),
        (
            "Ring finger. A2 20% vented to pass the repair; rest of A2 solid.",
            {"ring A2": {"finding": "vented", "extent_percent": 20}},
        ),
        ("Ring finger. A4: opened fully, both limbs. Not repaired.", {"ring A4": {"finding": "released"}}),
        ("Ring finger. A4 release complete.", {"ring A4": {"finding": "released"}}),
    ],
)
def test_states_of_pulleys(note: str, expected: dict[str, dict[str, object]]) -> None:
    assert told(note, "finding", "part", "extent_mm", "extent_percent", group="pulleys") == expected


@pytest.mark.parametrize(
    "words",
    ["A2 had to be windowed for 4 mm to let the repair through.", "To pass the repair A2 was vented for 4 mm."],
)
def test_a_pulley_opened_for_the_repair_is_of_the_finger_that_has_one(words: str) -> None:
    note = "I repaired the index FDP with a four-strand cruciate. I left the nick in the middle finger alone. " + words
    assert told(note, "finding", group="pulleys") == {"index A2": {"finding": "vented"}}


def test_a_pulley_of_a_finger_that_was_sewn_too() -> None:
    note = (
        "Index FDP and middle FDP cut through. I repaired the index FDP with 3-0 PDS. In the middle finger a "
        "four-strand cruciate was set. A2 had to be vented to let the repair through."
    )
    assert told(note, "finding", group="pulleys") == {"middle A2": {"finding": "vented"}}


@pytest.mark.parametrize(
    "words",
    ["A third of A2 was divided to allow the repair to be done.", "A2 was opened, enabling the suture to be done."],
)
def test_what_an_opening_was_for(words: str) -> None:
    assert told("Small FDP cut through. " + words, "finding", group="pulleys") == {"small A2": {"finding": "vented"}}


def test_an_opening_still_to_be_done() -> None:
    assert told("Small FDP cut through. A2 release to be done.", group="pulleys") == {}


@pytest.mark.parametrize("words", ["gone through completely", "gone thru completely"])
def test_gone_through(words: str) -> None:
    note = f"Ring FDP cut through. A2 vent distal 1/2 + A3 {words}; A4 OK."
    assert told(note, "finding", group="pulleys")["ring A3"] == {"finding": "released"}


@pytest.mark.parametrize("slip", ["resected FDS slip", "excised superficialis"])
def test_a_pulley_built_with_what_was_excised(slip: str) -> None:
    note = f"Ring FDP repaired. A2: rebuilt with the {slip} wrapped round the phalanx."
    assert told(note, "finding", group="pulleys") == {"ring A2": {"finding": "reconstructed"}}


@pytest.mark.parametrize(
    ("words", "finding"),
    [
        ("I had to lay open A2 for half of its length to get at the junction.", "vented"),
        ("The rebuilt A2 held and was left as it was.", "intact"),
        ("The A2 and A4 pulleys were left as they were.", "intact"),
    ],
)
def test_laid_open_and_left_as_it_was(words: str, finding: str) -> None:
    shown = told("Ring FDP cut through. " + words, "finding", group="pulleys")
    assert shown["ring A2"] == {"finding": finding}


@pytest.mark.parametrize(
    "words",
    ["I passed it back under A4, having first eased A4 with a dilator, not cut.", "A4 was stretched and not cut."],
)
def test_a_pulley_only_dilated(words: str) -> None:
    assert told("Ring FDP cut through. " + words, "finding", group="pulleys") == {"ring A4": {"finding": "intact"}}


def test_a_pulley_eased_without_a_dilator() -> None:
    assert told("Ring FDP cut through. I eased A4.", "finding", group="pulleys") == {"ring A4": {"finding": "vented"}}


@pytest.mark.parametrize(
    "words",
    [
        "A1 pulley thick and white. Divided along the whole of its length with scissors.",
        "The A1 pulley was thickened. Divided over its full length.",
    ],
)
def test_a_deed_over_the_whole_length_that_opens_a_sentence(words: str) -> None:
    shown = told("Ring trigger finger. " + words, "finding", group="pulleys")
    assert shown == {"ring A1": {"finding": "released"}}


def test_a_deed_on_something_else_that_opens_a_sentence() -> None:
    shown = told("Ring finger. A1 was kept. Divided FDP sewn along its whole length.", "finding", group="pulleys")
    assert shown == {"ring A1": {"finding": "intact"}}


@pytest.mark.parametrize(
    ("words", "finding"),
    [
        ("divided from its distal edge, where the fat appears, to the forearm fascia", "released"),
        ("divided from the distal border to the wrist crease", "released"),
        ("incised at its distal edge", "vented"),
    ],
)
def test_a_retinaculum_from_edge_to_edge(words: str, finding: str) -> None:
    note = f"Left carpal tunnel. The transverse carpal ligament was {words}."
    assert told(note, "finding", group="pulleys") == {"flexor retinaculum": {"finding": finding}}


@pytest.mark.parametrize("words", ["are solid", "reconstructed in the first time are solid"])
def test_solid_pulleys(words: str) -> None:
    shown = told(f"Second stage, ring finger. The A2 and A4 pulleys {words}.", "finding", group="pulleys")
    assert shown == {"ring A2": {"finding": "intact"}, "ring A4": {"finding": "intact"}}
