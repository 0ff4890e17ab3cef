"""Letters to whoever operated before: what 'you' did is history; and bundles to which a tendon was cut back."""

import pytest
from reader_sentences import each, told

SEWN = " The FDP was ruptured. It was sutured anew with a four-strand core of 3-0 nylon."


@pytest.mark.parametrize(
    "before",
    [
        "You had operated on this finger in May with two strands of 4-0 Vicryl, the FDS having been removed by you.",
        "The FDS had been excised by you in May.",
        "You repaired the FDP with two strands of 4-0 Vicryl in May.",
    ],
)
def test_what_the_reader_of_a_letter_did_is_history(before: str) -> None:
    facts = told(f"Right ring finger. {before}{SEWN}")
    assert set(facts) == {"ring FDP"}
    assert (facts["ring FDP"]["strands"], facts["ring FDP"]["size"]) == (4, "3-0")


def test_who_was_only_referred_was_cut_now() -> None:
    note = "Right ring finger, referred by you. FDP cut through and sutured with a four-strand core."
    assert each(note, "extent") == {"ring FDP": "complete"}


@pytest.mark.parametrize(
    "words", ["I resected 4 mm until the bundles looked healthy.", "Ends cut back 4 mm to healthy bundles, intact."]
)
def test_bundles_to_which_a_tendon_was_cut_back(words: str) -> None:
    note = f"Ring finger. FDP cut through. {words} It was sutured with a four-strand core."
    assert told(note, group="injuries") == {}
    assert each(note, "extent") == {"ring FDP": "complete"}


def test_bundles_behind_a_trimmed_tendon_are_nerve_and_artery() -> None:
    note = "Ring finger. FDP trimmed. Both bundles intact."
    assert len(each(note, "extent", group="injuries")) == 4


@pytest.mark.parametrize("treatment", ["none", "{repair / excision / none}"])
def test_treatment_in_the_line_of_a_tendon_heads_no_aftercare(treatment: str) -> None:
    note = f"DIGIT 1: Index\nFDP: transected. 4-0 nylon.\nFDS: partial. Treatment: {treatment}.\nA2: intact."
    assert each(note, "finding", group="pulleys") == {"index A2": "intact"}


def test_treatment_on_a_line_of_its_own_heads_aftercare() -> None:
    note = "Index FDP: transected. 4-0 nylon.\nTreatment: early active motion. A2 to be left."
    assert each(note, "finding", group="pulleys") == {}


@pytest.mark.parametrize(
    "words",
    [
        "With the wrist rocked passively in both directions no tendon repair gapped.",
        "On passive motion both ways no tendon repair gapped.",
        "No tendon repair opened when moved passively.",
    ],
)
def test_both_directions_are_no_two_tendons(words: str) -> None:
    note = (
        "FCU cut through. FDP of ring and small fingers cut through. The two profundi were sutured first, "
        f"each with a four-strand core, the FCU with a figure-of-eight. {words}"
    )
    assert each(note, "gap") == dict.fromkeys(("FCU", "ring FDP", "small FDP"), "none")


def test_no_repair_of_a_sheath_that_opened() -> None:
    note = "Index FDP cut, 4-0 nylon. No repair of the sheath, which opened on flexion."
    assert each(note, "gap") == {}


def test_bundles_to_which_a_nerve_was_cut_back_are_its_own() -> None:
    note = (
        "Index. FDP cut. The radial digital nerve was completely divided, and once cut back to good bundles it gapped."
    )
    assert each(note, "extent", group="injuries")["index digital nerve radial"] == "complete"
