"""The threads and results of nerves, vessels, pulleys, plates, joints and extensors are none of the tendon's."""

import pytest
from reader_sentences import told

SEWN = "Index finger. FDP completely divided and repaired."
OF_SUTURES = ("size", "material", "strands", "stitch", "peripheral", "peripheral_size", "lock_mm", "purchase_mm")
ALONE = {"index FDP": {"extent": "complete", "treatment": "repaired"}}


@pytest.mark.parametrize(
    "sentence",
    [
        "Volar plate avulsed, fixed back with a 1.3 mm anchor, two-strand, 2-0 FiberWire.",
        "UCL of the MCP joint reattached with a suture anchor loaded with 3-0 braided polyblend.",
        "A2 cut lengthwise: repaired with 4-0 Ethibond in four passes and a running 6-0 over that.",
        "The torn volar plate was sutured with a figure-of-eight of 4-0 PDS and a running 6-0.",
        "Radial collateral ligament repaired: 3-0 Ethibond, two Kessler type stitches, 8 mm purchase.",
        "A4 was mended by a locked running suture, 5-0, locking bites of 2 mm.",
    ],
)
def test_all_threads_behind_a_thing_that_was_sewn_hold_that_thing(sentence: str) -> None:
    """'Volar plate fixed back with an anchor, two-strand, 2-0 FiberWire': none of it is the tendon's core."""
    assert told(f"{SEWN} {sentence}", "extent", "treatment", *OF_SUTURES) == ALONE


@pytest.mark.parametrize(
    "sentence",
    [
        "A4 repaired; four strand core of 3-0 Prolene.",
        "A4 repaired, then a four strand core of 3-0 Prolene.",
        "Volar plate repaired. FDP: four strands, 3-0 Prolene.",
    ],
)
def test_a_core_told_by_its_name_behind_it_is_the_tendons(sentence: str) -> None:
    assert told(f"{SEWN} {sentence}", "strands", "size") == {"index FDP": {"strands": 4, "size": "3-0"}}


@pytest.mark.parametrize(
    "sentence",
    [
        "Ulnar digital nerve repaired with 9-0. No gap.",
        "Ulnar digital nerve: 9-0 x4. No tension, no gap.",
        "The radial artery was mobilised and repaired with 8-0 nylon. No gap at the end and a good pulse below.",
        "A2 repaired with 5-0. There was no gap.",
        "Oblique pulley repaired with interrupted 5/0 PDS, no gap left in the pulley.",
        "No gap was left in the sheath.",
        "No gap remained in the volar plate.",
        "The joint is stable, congruent and moves freely.",
        "Joint now stable with no gap on stress.",
        "Collateral ligament repaired. Joint congruent, gliding smoothly.",
    ],
)
def test_a_result_of_another_thing_is_none_of_the_tendon(sentence: str) -> None:
    """'Nerve repaired with 9-0. No gap.', 'no gap left in the pulley', 'the joint is stable and moves freely'."""
    assert told(f"{SEWN} {sentence}", "gap", "tension", "glide") == {}


@pytest.mark.parametrize(
    "sentence",
    [
        "Ulnar digital nerve repaired with 9-0. No gap on passive extension.",
        "Ulnar digital nerve repaired with 9-0. The repair showed no gap.",
        "A4 vented. No gap.",
        "PIP joint stable, and the repair shows no gap.",
        "Volar plate sewn with 4-0.\nGap: none",
    ],
)
def test_a_result_of_the_repair_beside_it_is_told(sentence: str) -> None:
    assert told(f"{SEWN} {sentence}", "gap") == {"index FDP": {"gap": "none"}}


@pytest.mark.parametrize(
    "sentence",
    [
        "Extensor digiti minimi, two slips, both repaired with a running locked 4-0, a bite of 10 mm either side.",
        "The extensor hood: both slips torn, repaired with 4-0.",
        "EDC two slips, both cut, ends clean, repaired without tension.",
    ],
)
def test_slips_of_an_extensor_are_none_of_a_superficialis(sentence: str) -> None:
    assert told(f"{SEWN} {sentence}", "extent", "treatment", "ends", "tension", *OF_SUTURES) == ALONE


def test_slips_of_the_superficialis_behind_an_extensor_are_its_own() -> None:
    found = told("Ring. EDC intact, FDS both slips cut through and repaired.", "extent", "treatment")
    assert found == {"ring FDS": {"extent": "complete", "treatment": "repaired"}}


@pytest.mark.parametrize(
    "sentence", ["After EPL closure the tendon moved smoothly.", "Extensor hood was closed. It glided freely."]
)
def test_the_tendon_behind_a_closed_extensor_is_no_flexor(sentence: str) -> None:
    assert told(f"Thumb. FPL cut through, repaired. {sentence}", "glide") == {}


@pytest.mark.parametrize(
    "sentence",
    [
        "Radial nerve of the finger crushed, conduit held with two 8/0 sutures, peripheral seal with glue.",
        "Ulnar digital nerve sutured with 9-0, with a peripheral wrap of vein.",
        "Nerve conduit sealed peripherally with fibrin.",
    ],
)
def test_a_seal_around_a_nerve_is_no_peripheral_suture(sentence: str) -> None:
    assert told(f"{SEWN} {sentence}", "peripheral") == {}


@pytest.mark.parametrize(
    "sentence",
    [
        "Middle and ring FDP, left hand, both severed.",
        "Middle and ring FDP, left, each severed.",
        "FDP middle, FDP ring: both completely divided.",
        "Middle and ring FDP, L, both completely divided.",
    ],
)
def test_the_hand_parts_nothing_from_both(sentence: str) -> None:
    """'Middle and ring FDP, left hand, both severed': as without the hand between."""
    assert told(sentence, "extent") == {"middle FDP": {"extent": "complete"}, "ring FDP": {"extent": "complete"}}


def test_a_digit_with_its_hand_is_not_both() -> None:
    assert told("Middle FDP intact, left hand. Ring FDP severed.", "extent") == {
        "middle FDP": {"extent": "intact"},
        "ring FDP": {"extent": "complete"},
    }
