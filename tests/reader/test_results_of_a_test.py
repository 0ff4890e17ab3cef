"""Which repairs a test on the table was of, as its results tell, and movements that are no test."""

import pytest
from reader_sentences import each

THREE = (
    "Left index and middle fingers. FDP of both completely divided and repaired with four strands of 4-0. "
    "The middle FDS was completely divided and repaired with a figure-of-eight of 4-0.\n"
)


@pytest.mark.parametrize(
    "text",
    [
        "Then I straightened both fingers passively. None of the three repairs gapped.",
        "I bent and straightened both fingers passively and watched the joins. No gap opened in any of them.",
        "Both fingers were passively ranged. All three repairs glided freely.",
    ],
)
def test_all_repairs_whose_result_is_told_were_tested(text: str) -> None:
    assert each(THREE + text, "test") == {"index FDP": "passive", "middle FDP": "passive", "middle FDS": "passive"}


def test_a_result_told_of_a_kind_is_not_of_the_others() -> None:
    text = "Both fingers were passively ranged. Neither profundus repair gapped."
    assert each(THREE + text, "test") == {"index FDP": "passive", "middle FDP": "passive"}


@pytest.mark.parametrize(
    "text",
    ["Pulled on both FDPs: no gap index, no gap middle.", "Traction on each FDP with a hook: index and middle no gap."],
)
def test_a_pull_on_both_of_a_kind(text: str) -> None:
    assert each(THREE + text, "test") == {"index FDP": "traction", "middle FDP": "traction"}


@pytest.mark.parametrize(
    "text",
    [
        "Left ring finger. FDP reinserted into the phalanx with a mini anchor loaded with 3-0 braided polyester.",
        "Left ring finger. FDP repaired with four strands of 4-0. In that finger I opened A3. No gap was seen.",
        "Left ring finger. FDP repaired with four strands of 4-0. The finger was opened in a zigzag. No gap was seen.",
    ],
)
def test_an_anchor_or_an_incision_is_no_test(text: str) -> None:
    assert each(text, "test") == {}


ONE = "Left ring finger. FDP completely divided and repaired with four strands of 4-0. "


@pytest.mark.parametrize(
    "text",
    [
        "Pulled on it: gap of 1 mm. Reinforced; recheck 0.",
        "A fist: gap 1 mm. Two more bites. A fist again: gap gone.",
        "It opened up 2 mm, so I put in two more bites and pulled again and there was no gap that time.",
        "Pulled on hard, it held without opening up.",
        "Tested: gap at the bone = zero.",
    ],
)
def test_no_gap_in_the_end(text: str) -> None:
    assert each(ONE + text, "gap") == {"ring FDP": "none"}


@pytest.mark.parametrize(
    "text",
    [
        "It gapped 2 mm on the first pull. Two more bites, and still a gap of 1 mm.",
        "A gap of 2 mm opened. Two more bites and a residual gap of 1 mm was seen.",
    ],
)
def test_how_wide_the_gap_was_in_the_end(text: str) -> None:
    assert each(ONE + text, "gap") == {"ring FDP": "seen"}
    assert each(ONE + text, "gap_mm") == {"ring FDP": 1}


@pytest.mark.parametrize(
    "text",
    [
        "It gapped 2 mm. The core was tightened and not rechecked, none of us thought it needed.",
        "It gapped 2 mm on the first pull. Two more bites.",
    ],
)
def test_a_gap_that_nobody_looked_at_again(text: str) -> None:
    assert each(ONE + text, "gap") == {"ring FDP": "seen"}


def test_no_gap_so_many_times() -> None:
    assert each(THREE + "Tested passively: no gap x 3.", "gap") == dict.fromkeys(
        ("index FDP", "middle FDP", "middle FDS"), "none"
    )


PROFUNDI = "Left ring and small fingers. FDP of both completely divided and repaired with four strands of 4-0. "


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("I pulled on the ring profundus with a hook. No gap. In the small finger a gap of 1 mm.", "traction"),
        ("Passive run: ring FDP glides freely. Small FDP catches at A4.", "passive"),
        ("She bent and stretched both for me. The ring FDP ran free. The small FDP did not gap.", "active"),
    ],
)
def test_a_result_told_right_after_a_test_was_seen_in_it(text: str, value: str) -> None:
    assert each(PROFUNDI + text, "test") == {"ring FDP": value, "small FDP": value}


@pytest.mark.parametrize(
    "text",
    [
        "Traction on the ring FDP showed no gap. All repairs run freely.",
        "Traction on the ring FDP showed no gap.\n\nThe small FDP ran free.",
        "Traction on the ring FDP showed no gap. The skin was closed. The small FDP ran free.",
    ],
)
def test_what_is_told_later_or_of_all_was_not_seen_in_a_pull_on_one(text: str) -> None:
    assert list(each(PROFUNDI + text, "test")) == ["ring FDP"]


WRIST = "Left forearm. FDP of the ring and small fingers divided and repaired with four strands of 4-0. "


@pytest.mark.parametrize(
    ("text", "field"),
    [
        ("The fingers were moved passively and none of the repairs gapped. The FCU was then repaired with 2-0.", "gap"),
        ("The FCR was repaired with 2-0. There was no tension on any of the finger repairs.", "tension"),
    ],
)
def test_a_wrist_flexor_is_not_among_those_told_of(text: str, field: str) -> None:
    assert each(WRIST + text, field) == {"ring FDP": "none", "small FDP": "none"}


def test_a_wrist_flexor_sewn_before_is_among_all() -> None:
    text = "The FCU was repaired with 2-0. On passive extension there was no gap in any of the tendon repairs."
    assert each(WRIST + text, "gap") == dict.fromkeys(("ring FDP", "small FDP", "FCU"), "none")
