"""Tendons led beneath a whole pulley, pulleys cut so that the tendon ran or left as they were, others' fingers."""

import pytest
from reader_sentences import each, told

TORN = "Ring FDP torn off its bone. "
SEWN = "Ring FDP divided, repaired with a 4-strand 3-0 Ethibond core. "


@pytest.mark.parametrize(
    "words",
    [
        "I threaded the tendon back beneath an intact A4 pulley and reattached it to its bed with an anchor.",
        "The tendon was passed under the intact A4 and repaired with a pull-out.",
    ],
)
def test_what_is_led_beneath_is_sewn(words: str) -> None:
    assert each(TORN + words, "finding", group="pulleys") == {"ring A4": "intact"}
    assert each(TORN + words, "treatment") == {"ring FDP": "reinserted"}


def test_a_torn_pulley_is_sewn() -> None:
    assert each(TORN + "The A4 pulley was torn and repaired.", "finding", group="pulleys") == {"ring A4": "repaired"}


@pytest.mark.parametrize(
    "words",
    ["FDP ok after A3 cut through.", "It ran freely once A3 was cut.", "It passed after A3 had been divided."],
)
def test_cut_so_that_the_tendon_ran(words: str) -> None:
    assert each(SEWN + words, "finding", group="pulleys") == {"ring A3": "released"}


@pytest.mark.parametrize("words", ["A3 had been cut through by the glass.", "It was found after A3 had been cut."])
def test_cut_by_the_wound(words: str) -> None:
    assert each(SEWN + words, "finding", group="pulleys") == {"ring A3": "injured"}


@pytest.mark.parametrize("words", ["I left A1 as it was.", "I left the A1 pulley as found."])
def test_left_as_it_was(words: str) -> None:
    assert each(SEWN + words, "finding", group="pulleys") == {"ring A1": "intact"}


def test_a_torn_one_left_as_it_was() -> None:
    note = SEWN + "A1 was torn and I left it as it was."
    assert each(note, "finding", group="pulleys") == {"ring A1": "injured"}


@pytest.mark.parametrize(
    "words",
    [
        "I mention that a cousin's finger (ring, 2029, zone I) was repaired here with a button.",
        "Her father's thumb was repaired here, zone I, with a six-strand core.",
    ],
)
def test_a_finger_of_a_relative(words: str) -> None:
    note = "Index FDP cut to 80 per cent in zone II. " + words
    assert told(note, "zone", "strands") == {"index FDP": {"zone": "II"}}


def test_a_knife_of_a_relative() -> None:
    assert each("Index FDP cut to 80 per cent by his brother's knife in zone II.", "zone") == {"index FDP": "II"}


@pytest.mark.parametrize(
    ("line", "zone"), [("Zone: [ ] I  [x] II     Subzone (A-D): B", "IIB"), ("Zone (I-V): II", "II")]
)
def test_letters_offered_by_a_form(line: str, zone: str) -> None:
    assert each(line + "\nIndex FDP cut: 100 %", "zone") == {"index FDP": zone}


@pytest.mark.parametrize(
    ("words", "treatment"),
    [
        ("RDN: 4 mm defect after resection -> hollow conduit, 9/0 Ethilon ends", "conduit"),
        ("RDN gap of 6 mm, bridged with a conduit, 9/0 nylon", "conduit"),
        ("RDN: 9/0 Ethilon x4", "repaired"),
    ],
)
def test_a_defect_and_what_bridged_it(words: str, treatment: str) -> None:
    assert each("R thumb. " + words, "treatment", group="injuries") == {"thumb digital nerve radial": treatment}


def test_an_arm_asleep_is_under_a_block() -> None:
    assert not told("Ring FDP divided. Asleep arm, so passive only.", "anaesthesia", group="operation")
    assert each("Gen. anaes. Ring FDP divided.", "anaesthesia", group="operation") == {"": "general"}


@pytest.mark.parametrize("noun", ["circumferential", "epitendinous"])
def test_an_interlocking_outer_suture(noun: str) -> None:
    note = SEWN + f"An interlocking {noun} stitch of 6-0 Prolene completed it."
    assert each(note, "peripheral_pattern") == {"ring FDP": "running locking"}


def test_a_corresponding_artery_is_of_its_nerve() -> None:
    note = "Small finger. The ulnar digital nerve was divided; the corresponding artery was intact."
    assert each(note, "extent", group="injuries")["small digital artery ulnar"] == "intact"
