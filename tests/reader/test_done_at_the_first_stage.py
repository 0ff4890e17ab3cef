"""What a note of a second stage says was done at the first is no deed of this operation."""

import pytest

from notereader.reader import read

SECOND = "Second stage reconstruction, left ring finger. The graft was woven into the profundus. "


@pytest.mark.parametrize(
    "told",
    [
        "The A2 and A4 pulleys reconstructed in the first stage were under the skin.",
        "Summary of the first stage (for context): scar excised, A2 and A4 rebuilt over a rod.",
        "The A2 and A4 pulleys rebuilt at stage one are covered by scar.",
    ],
)
def test_pulleys_rebuilt_then_are_not_rebuilt_now(told: str) -> None:
    assert "reconstructed" not in [p.facts["finding"].value for p in read(SECOND + told).pulleys]


@pytest.mark.parametrize("when", ["during the first stage", "in the first time", "at stage one"])
def test_a_tendon_excised_then_is_not_excised_now(when: str) -> None:
    record = read(SECOND + f"The remaining superficialis was excised {when}.")
    assert not [r for r in record.repairs if r.tendon == "FDS" and "treatment" in r.facts]


def test_what_is_done_now_beside_it_stays() -> None:
    record = read(
        SECOND + "The A4 pulley was reconstructed with a slip of FDS. The rod from the first stage was removed."
    )
    assert [p.facts["finding"].value for p in record.pulleys if p.pulley == "A4"] == ["reconstructed"]


def test_a_first_time_of_a_primary_repair_is_no_stage() -> None:
    record = read("Left ring finger. FDP cut through. FDS was excised in the first time available.")
    assert [r.facts["treatment"].value for r in record.repairs if r.tendon == "FDS"] == ["excised"]


@pytest.mark.parametrize("sewn", ["not repaired", "not sutured"])
def test_a_slash_parts_the_cut_from_what_was_not_done(sewn: str) -> None:
    record = read(f"Right wrist, zone V.\n\nFDS V ...... cut through / {sewn}\nFDP V ...... intact\n")
    told = {r.tendon: {n: f.value for n, f in r.facts.items()} for r in record.repairs}
    assert (told["FDS"]["extent"], told["FDS"]["treatment"]) == ("complete", "left")


def test_a_state_denied_behind_a_slash_stays_denied() -> None:
    record = read("Left ring finger. FDP repaired with 3-0 Prolene. Gap / not seen.")
    assert "seen" not in [r.facts["gap"].value for r in record.repairs if "gap" in r.facts]


@pytest.mark.parametrize(
    "told",
    [
        "Stage 1 (silicone rod, A2 and A4 rebuilt over it) was done 14 January 2029.",
        "The first stage (rod laid in, A2 reconstructed) was in May.",
    ],
)
def test_what_stands_in_brackets_behind_the_first_stage(told: str) -> None:
    record = read("Stage 2 reconstruction, left ring finger. " + told + " The A2 pulley was sound.")
    assert [p.facts["finding"].value for p in record.pulleys if p.pulley == "A2"] == ["intact"]


@pytest.mark.parametrize("fate", ["Rod discarded.", "The rod was taken out and discarded."])
def test_a_discarded_rod_is_no_tendon(fate: str) -> None:
    record = read(SECOND + "FDS absent. " + fate)
    assert not [r for r in record.repairs if r.tendon == "FDS" and "treatment" in r.facts]
