"""Sutures lost before the end: some strands of a core, a whole repair with its tendon, one edge suture of several."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    ("note", "left"),
    [
        ("Four strands of 4-0 Prolene were passed across the ring FDP. Two of them snapped and were withdrawn.", 2),
        ("Ring FDP divided, repaired with six strands of 4-0 nylon. Two of these broke on tying and were cut away.", 4),
        ("Ring FDP repaired with six strands of 4-0 nylon. Two of them tore out at the knot.", 4),
        ("Ring FDP repaired with six strands of 4-0 nylon. Two of them broke and were replaced.", 6),
        ("Ring FDP repaired with six strands of 4-0 nylon. None of them broke.", 6),
        ("Ring FDP repaired with six strands. The skin was sewn with five sutures. Two of them broke.", 6),
    ],
)
def test_strands_of_the_sentence_before(note: str, left: int) -> None:
    assert each(note, "strands") == {"ring FDP": left}


def test_strands_lost_in_one_finger() -> None:
    note = "Ring and small FDP repaired with four strands of 4-0 nylon each. Two of them in the ring snapped."
    assert each(note, "strands") == {"ring FDP": 2, "small FDP": 4}


@pytest.mark.parametrize(
    "note",
    [
        "On closing, the repair parted altogether. Too short for another try: tendon taken out, silicone rod put in.",
        "It came apart on the last test. The tendon was removed and a rod was placed.",
        "The repair burst when the splint was put on. I cut the tendon out and laid a rod for a later graft.",
    ],
)
def test_a_repair_lost_with_its_tendon(note: str) -> None:
    text = "Ring finger FDP: complete cut, four-strand repair with 4-0 nylon. " + note
    assert told(text, "treatment", "strands", "size") == {"ring FDP": {"treatment": "excised"}}


@pytest.mark.parametrize(
    "note",
    [
        "FDS was cut as well. The FDS tendon was excised.",
        "The skin edge parted at the end. A frayed bit of FDS tendon was excised.",
        "On testing it burst. A piece of scarred tendon was excised and the repair done again with four strands.",
    ],
)
def test_a_repair_that_stays(note: str) -> None:
    text = "Ring finger FDP: complete cut, four-strand repair with 4-0 nylon. " + note
    assert told(text, "treatment", "strands")["ring FDP"] == {"treatment": "repaired", "strands": 4}


@pytest.mark.parametrize(
    "note",
    [
        "Edge suture in place on both FDPs, ring and small, until the hook caught that of the ring and unravelled it.",
        "Both had an epitendinous 6-0. That of the ring was caught, unravelled and could not be put back.",
        "Both had an epitendinous 6-0. The ring's came undone at the end and was pulled out.",
    ],
)
def test_the_edge_suture_of_one_of_two(note: str) -> None:
    text = "Ring and small FDP cut through, each repaired with four strands. "
    assert each(text + note, "peripheral") == {"ring FDP": "absent", "small FDP": "present"}


@pytest.mark.parametrize(
    "note",
    [
        "Both had an epitendinous 6-0. That of the ring came undone and was run again.",
        "Both had an epitendinous 6-0. The small FDS, unravelled at its end, was pulled out of the wound.",
    ],
)
def test_both_edge_sutures_stay(note: str) -> None:
    text = "Ring and small FDP cut through, each repaired with four strands. "
    assert each(text + note, "peripheral") == {"ring FDP": "present", "small FDP": "present"}


@pytest.mark.parametrize(
    ("note", "peripheral"),
    [
        ("The repair jammed beneath A4, so the running suture was removed completely.", "absent"),
        ("It would not pass A2, so the edge suture was cut away again.", "absent"),
        ("The running suture was then taken out and replaced by a new one in 5-0.", "present"),
        ("The running suture of the skin was removed on day 12.", "present"),
    ],
)
def test_an_edge_suture_named_by_how_it_runs(note: str, peripheral: str) -> None:
    text = "Ring FDP cut, repaired with four strands and a running 6-0 epitendinous. "
    assert each(text + note, "peripheral") == {"ring FDP": peripheral}


@pytest.mark.parametrize(
    "note",
    [
        "Peripheral: two passes of 6-0, then thread broke, passes pulled out, peripheral abandoned.",
        "Epitendinous: half way round with 6-0, then it tore, stitches removed, epitendinous abandoned.",
        "Peripheral begun in 6-0, thread snapped, bites picked out, no peripheral.",
    ],
)
def test_begun_and_abandoned(note: str) -> None:
    assert each("Ring FDP cut, repaired, four strands. " + note, "peripheral") == {"ring FDP": "absent"}


@pytest.mark.parametrize(
    "note",
    [
        "The epitendinous 6-0 nylon snapped. It was replaced with a new one of 5-0 Prolene.",
        "Running 6-0 around it tore. A second one of 5-0 nylon held.",
        "The circumferential stitch broke halfway. It was taken out and replaced by a complete one in 5-0 Prolene.",
    ],
)
def test_a_second_edge_suture_is_no_core(note: str) -> None:
    facts = told("Ring FDP divided, four-strand repair. " + note, "size", "peripheral", "strands")
    assert facts == {"ring FDP": {"peripheral": "present", "strands": 4}}


def test_a_second_core_is_no_edge_suture() -> None:
    note = "Ring FDP divided, repaired with 3-0 Ethibond. The core suture broke. It was replaced by one in 4-0 Prolene."
    assert told(note, "peripheral") == {}


def test_a_fine_thread_added_behind_a_comma() -> None:
    for note in (
        "Index FDP, four-strand repair, with running 6-0.",
        "Index FDP, six-strand repair, with a running 6-0.",
    ):
        assert told(note, "size") == {}
        assert each(note, "peripheral") == {"index FDP": "present"}
    assert each("Index FDP cut, repair with running 5-0.", "size") == {"index FDP": "5-0"}


@pytest.mark.parametrize(
    "note",
    ["No repair was made and no trimming either.", "No repair was done.", "No suture was placed; it was left."],
)
def test_a_title_that_was_not_carried_out(note: str) -> None:
    text = "Operation: exploration and repair of FDP index finger\nReport: the FDP was cut by a quarter of its width. "
    assert each(text + note, "treatment") == {"index FDP": "left"}


def test_a_core_looked_at_again_is_no_new_edge_suture() -> None:
    text = "Ring FDP cut, repaired, four strands. Peripheral: two passes of 6-0, peripheral abandoned. "
    for note in ("The core was looked at again and had taken no harm.", "The core held when it was pulled again."):
        assert each(text + note, "peripheral") == {"ring FDP": "absent"}
