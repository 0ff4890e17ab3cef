"""What the section of a sentence makes of it: lists under a heading, late entries, treatments, printed advice."""

import pytest
from reader_sentences import Shown, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "DIAGNOSIS: right index finger, FDP completely divided.\nTREATMENT: repaired under block.\n",
            {"index FDP": {"treatment": "repaired"}},
        ),
        (
            "FINDINGS: left small finger. FDS completely divided, FDP intact.\nTreatment: FDS excised.\n",
            {"small FDS": {"treatment": "excised"}},
        ),
        (
            "Findings: thumb, FPL cut through.\nTreatment: FPL sutured end to end.\n",
            {"thumb FPL": {"treatment": "repaired"}},
        ),
    ],
)
def test_treatment_that_tells_what_was_done(note: str, expected: Shown) -> None:
    assert told(note, "treatment") == expected


@pytest.mark.parametrize(
    "note",
    [
        (
            "FINDINGS: right index finger. FDP partially divided, 20%.\nTREATMENT: splint for three weeks, then "
            "therapy.\n"
        ),
        (
            "FINDINGS: left small finger. FDS nicked, FDP intact.\nTreatment: elevation, analgesia, clinic in five "
            "days.\n"
        ),
    ],
)
def test_treatment_that_gives_orders_repairs_nothing(note: str) -> None:
    assert told(note, "treatment") == {}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index and ring fingers, FDP of both completely divided.\n"
            "\n"
            "Core sutures\n"
            "1. Index FDP: 3-0 Ethibond, four strands\n"
            "2. Ring FDP: 4-0 Ethibond, four strands\n"
            "\n"
            "Peripheral sutures\n"
            "1. Index FDP: 6-0 Prolene\n"
            "2. Ring FDP: 5-0 nylon\n",
            {
                "index FDP": {
                    "size": "3-0",
                    "peripheral": "present",
                    "peripheral_size": "6-0",
                    "peripheral_material": "polypropylene",
                },
                "ring FDP": {
                    "size": "4-0",
                    "peripheral": "present",
                    "peripheral_size": "5-0",
                    "peripheral_material": "nylon",
                },
            },
        ),
        (
            "Middle and small fingers, FDP of both completely divided.\n"
            "\n"
            "Cores\n"
            "1. Middle FDP: 4-0 Prolene, six strands\n"
            "2. Small FDP: 4-0 Prolene, two strands\n"
            "\n"
            "Epitendinous sutures\n"
            "1. Middle FDP: 6-0 nylon\n"
            "2. Small FDP: 6-0 Prolene\n",
            {
                "middle FDP": {
                    "size": "4-0",
                    "peripheral": "present",
                    "peripheral_size": "6-0",
                    "peripheral_material": "nylon",
                },
                "small FDP": {
                    "size": "4-0",
                    "peripheral": "present",
                    "peripheral_size": "6-0",
                    "peripheral_material": "polypropylene",
                },
            },
        ),
    ],
)
def test_a_list_under_peripheral_sutures(note: str, expected: Shown) -> None:
    assert told(note, "size", "peripheral", "peripheral_size", "peripheral_material") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        (
            "A2 intact, A4 vented.\n\nLate entry, 7 June: the A2 pulley is not intact.\n",
            {"ring A4": {"finding": "vented"}},
        ),
        (
            "A2 and A4 intact.\n\nAddendum by the registrar: on review A4 was not intact.\n",
            {"ring A2": {"finding": "intact"}},
        ),
        (
            "A2 and A4 preserved.\n\nLate entry, 19 May: A2 is not intact, it was vented.\n",
            {"ring A2": {"finding": "vented"}, "ring A4": {"finding": "intact"}},
        ),
    ],
)
def test_a_late_entry_takes_back_an_intact_pulley(words: str, expected: Shown) -> None:
    note = (
        "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 Ethibond. "
        + words
    )
    assert told(note, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond.\n"
            "\n"
            "Late entry, 21 June: the core had two strands, not four.\n",
            {"ring FDP": {"strands": 2}},
        ),
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond. Running 6-0 Prolene round it.\n"
            "\n"
            "Addendum, 8 March: no peripheral suture was placed.\n",
            {"ring FDP": {"strands": 4, "peripheral": "absent"}},
        ),
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond. No gap.\n"
            "\n"
            "Late entry, 21 June: there was a gap of 1 mm.\n",
            {"ring FDP": {"strands": 4, "gap": "seen", "gap_mm": 1}},
        ),
    ],
)
def test_a_late_entry_corrects_the_body(note: str, expected: Shown) -> None:
    assert told(note, "strands", "peripheral", "gap", "gap_mm") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("A2 intact. A4 is not intact.", {"ring A2": {"finding": "intact"}}),
        ("A1 released.\n\nLate entry, 3 March: A2 was not intact.\n", {"ring A1": {"finding": "released"}}),
    ],
)
def test_a_denial_in_the_body_takes_nothing_back_from_other_pulleys(words: str, expected: Shown) -> None:
    note = (
        "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 Ethibond. "
        + words
    )
    assert told(note, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    "note",
    [
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond.\n\nPRINTED ADVICE: a running peripheral suture of 6-0 adds strength, and no gap is "
            "acceptable.\n"
        ),
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond.\n\nTemplate text: core of six strands, epitendinous 6-0 Prolene, no gap.\n"
        ),
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond. Most repairs need a peripheral suture of 6-0."
        ),
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond. Most surgeons would accept a gap of 2 mm."
        ),
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond.\n\nGeneral advice: FDP repairs should not gap under tension.\n"
        ),
    ],
)
def test_printed_advice_is_no_finding(note: str) -> None:
    assert told(note, "gap", "strands", "peripheral") == {"ring FDP": {"strands": 4}}


@pytest.mark.parametrize(
    "words",
    [
        "Addendum meant for another patient: index FDP completely divided, six strands of 4-0 Prolene.\n",
        "Entered in the wrong chart: small FDS intact, middle FDP eight strands.\n",
    ],
)
def test_what_belongs_to_another_patient_is_no_finding(words: str) -> None:
    note = (
        "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 Ethibond.\n\n"
    ) + words
    assert told(note, "strands", "peripheral", "extent") == {"ring FDP": {"strands": 4, "extent": "complete"}}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index finger. The ultrasound report called the FDP intact. On opening, FDP completely divided.",
            {"index FDP": {"extent": "complete"}},
        ),
        (
            "Right index finger. MRI suggested that the FDS was completely divided. At operation the FDS was "
            "intact and the FDP cut through.",
            {"index FDP": {"extent": "complete"}, "index FDS": {"extent": "intact"}},
        ),
    ],
)
def test_what_a_scan_said_is_no_finding(note: str, expected: Shown) -> None:
    assert told(note, "extent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left middle finger. Listed as repair of FDP and FDS. FDP completely divided, sewn with four strands "
            "of 3-0 Ethibond. FDS intact.",
            {"middle FDP": {"treatment": "repaired", "strands": 4}},
        ),
        (
            "Left middle finger. Consented for grafting of the FDP. FDP completely divided, sewn with four "
            "strands of 3-0 Ethibond.",
            {"middle FDP": {"treatment": "repaired", "strands": 4}},
        ),
        (
            "Left middle finger, FDP completely divided. Six strands had been the plan. Two strands of 4-0 "
            "Prolene were placed.",
            {"middle FDP": {"treatment": "repaired", "strands": 2}},
        ),
    ],
)
def test_what_was_booked_is_no_finding(note: str, expected: Shown) -> None:
    assert told(note, "treatment", "strands") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger, FDP completely divided. Sewn with six strands of 3-0 Ethibond and not the usual "
            "4-0 two strand.",
            {"ring FDP": {"strands": 6, "size": "3-0"}},
        ),
        (
            "Right index, FDP cut through. Core of 3-0 Prolene, four strands, not our customary 4-0.",
            {"index FDP": {"strands": 4, "size": "3-0"}},
        ),
    ],
)
def test_not_the_usual_is_what_it_was_not(note: str, expected: Shown) -> None:
    assert told(note, "strands", "size") == expected
