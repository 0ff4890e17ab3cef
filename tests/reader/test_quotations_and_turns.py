"""What a book says ends with its quotation; what was done then is told behind it."""

import pytest
from reader_sentences import each, told

BOOK = 'What the book says: "six strands should be placed if active motion is intended." '


@pytest.mark.parametrize(
    "met",
    [
        "What we met: the ring FDP, cut right through, ends crisp. We placed four strands of 4-0 Fiberwire.",
        "Our case: ring FDP cut through, ends clean, sewn with four strands of 4-0 Fiberwire.",
    ],
)
def test_a_condition_ends_with_its_quotation(met: str) -> None:
    assert told(BOOK + met, "extent", "ends", "strands") == {
        "ring FDP": {"extent": "complete", "ends": "clean", "strands": 4}
    }


def test_a_condition_without_a_quotation_reaches_on() -> None:
    assert told("Six strands should be placed in the ring FDP if active motion is intended, with 3-0.", "strands") == {}


@pytest.mark.parametrize("turn", ["and then we placed", "and then I put in"])
def test_what_was_done_behind_a_quoted_rule(turn: str) -> None:
    note = f"Ring FDP cut through. The attending quoted the six-strand rule at me {turn} four strands of 4-0 Fiberwire."
    assert each(note, "strands") == {"ring FDP": 4}


@pytest.mark.parametrize(
    "double", ["with point of Tsuge double, four strands, looped nylon 4-0", "by a Tsuge double, nylon loop 4-0"]
)
def test_double_behind_the_stitch(double: str) -> None:
    assert each(f"Tenorrhaphy of FDP of the ring {double}.", "stitch") == {"ring FDP": "double tsuge"}


@pytest.mark.parametrize(
    "both", ["Both take a peripheral suture of polypropylene 6-0.", "Both took a running 6-0 Prolene."]
)
def test_both_take(both: str) -> None:
    note = f"Middle and ring FDP cut through. Both sewn with 3-0 Ethibond. {both}"
    assert each(note, "peripheral") == {"middle FDP": "present", "ring FDP": "present"}


@pytest.mark.parametrize("order", ["wrist 20 of flexion, MCF 70, IF in extension 0", "wrist 20 flexion, MCP 70, IF 0"])
def test_the_finger_joints_of_a_splint_are_no_index(order: str) -> None:
    note = f"Middle and ring FDP cut through. A4 of both conserved. Posterior splint, {order}."
    assert each(note, "finding", group="pulleys") == {"middle A4": "intact", "ring A4": "intact"}


@pytest.mark.parametrize("reason", ["since bulk is in theory a concern", "because bulk was a concern in principle"])
def test_a_rule_given_as_a_reason_leaves_what_it_explains(reason: str) -> None:
    note = f"Ring FDS cut through. It received a modified Kessler of 4-0 PDS, no epitendinous suture, {reason}."
    assert told(note, "stitch", "size", "peripheral") == {
        "ring FDS": {"stitch": "modified kessler", "size": "4-0", "peripheral": "absent"}
    }


@pytest.mark.parametrize("other", ["It would be also possible to take it out.", "It would be possible to excise it."])
def test_what_would_be_possible_was_not_done(other: str) -> None:
    note = f"Ring FDS radial slip cut through, sewn with a mattress suture of 4-0 PDS. {other}"
    assert each(note, "treatment") == {"ring FDS radial": "repaired"}


@pytest.mark.parametrize("before", ["Before that it had jammed.", "Until then it had caught on the rim."])
def test_how_it_ran_before_is_not_how_it_runs(before: str) -> None:
    note = f"Ring FDP sewn with 3-0 Ethibond. It slid smoothly once A4 was open. {before}"
    assert each(note, "glide") == {"ring FDP": "free"}


def test_how_it_ran_in_the_end_still_counts() -> None:
    note = "Ring FDP sewn with 3-0 Ethibond. It slid smoothly. In the end it caught on A2."
    assert each(note, "glide") == {"ring FDP": "catching"}
