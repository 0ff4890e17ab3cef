"""Lists of tendons by kind: all of one, those of the same fingers, and what had gone as well."""

import pytest
from reader_sentences import each

FOUR = ("index", "middle", "ring", "small")
WRIST = "Wound above the wrist, zone 5. FCU and FDS ring were divided completely. "


@pytest.mark.parametrize(
    "remark",
    ["FPL, all the FDPs, FDS index and median nerve intact.", "FDS index fine. FDPs all ok (II to V)."],
)
def test_all_of_a_kind_at_the_wrist(remark: str) -> None:
    found = each(WRIST + remark, "extent")
    assert {d: found.get(f"{d} FDP") for d in FOUR} == dict.fromkeys(FOUR, "intact")
    assert found["index FDS"] == "intact"
    assert "middle FDS" not in found


def test_all_of_a_kind_but_for_the_cut_one() -> None:
    note = "Wound above the wrist, zone 5. FDP small was divided completely. FPL and all the FDPs intact."
    assert each(note, "extent")["small FDP"] == "complete"


@pytest.mark.parametrize(
    "remark",
    [
        "The FDS of the ring and small fingers and the FDP of the same two fingers were completely divided.",
        "The superficialis tendons to the ring and small fingers and the profundus tendons to the same fingers "
        "were completely divided.",
    ],
)
def test_the_same_two_fingers(remark: str) -> None:
    names = [f"{digit} {tendon}" for digit in ("ring", "small") for tendon in ("FDP", "FDS")]
    assert each("Zone 5. " + remark, "extent") == dict.fromkeys(names, "complete")


def test_the_same_finger_is_one() -> None:
    note = "The FDS of the ring finger and the FDP of the same finger were completely divided in zone 2."
    assert each(note, "extent") == {"ring FDP": "complete", "ring FDS": "complete"}


@pytest.mark.parametrize(
    "remark", ["The ulnar slip of FDS had gone as well.", "The ulnar slip of the superficialis had gone too."]
)
def test_gone_as_well(remark: str) -> None:
    assert each("Ring finger. FDP cut right through. " + remark, "extent")["ring FDS ulnar"] == "complete"


def test_gone_somewhere_is_no_cut() -> None:
    note = "Ring finger. FDP cut right through. The FDS slip had gone back into the palm."
    assert "ring FDS" not in each(note, "extent")


@pytest.mark.parametrize("remark", ["So have the two slips of the FDS.", "So has the FDS."])
def test_so_have_the_slips(remark: str) -> None:
    assert each("Ring finger. FDP has been cut clean through. " + remark, "extent")["ring FDS"] == "complete"


@pytest.mark.parametrize("words", ["was never touched", "was all there", "was in perfect shape"])
def test_whole_in_other_words(words: str) -> None:
    assert each(f"Ring finger. FDP cut through. The FDS {words}.", "extent")["ring FDS"] == "intact"
