"""All eight finger flexors at a wrist, where a tendon had gone, and a bulk that has to pass."""

import pytest
from reader_sentences import each

EIGHT = {f"{d} {t}" for d in ("index", "middle", "ring", "small") for t in ("FDP", "FDS")}
WRIST = "Wrist, zone 5: FCR cut completely. "


@pytest.mark.parametrize(
    "words",
    ["Finger flexors fine, all eight.", "All finger flexors intact.", "All eight finger flexors were whole."],
)
def test_all_of_them_whole(words: str) -> None:
    found = each(WRIST + words, "extent")
    assert {entry for entry, value in found.items() if value == "intact"} == EIGHT


@pytest.mark.parametrize(
    "words",
    [
        "Finger flexors intact.",
        "Not all eight finger flexors were intact.",
        "All eight finger flexors were exposed.",
    ],
)
def test_not_said_of_all(words: str) -> None:
    assert each(WRIST + words, "extent") == {"FCR": "complete"}


def test_all_but_the_one_that_was_cut() -> None:
    found = each(WRIST + "FDS ring cut through. All the other finger flexors were intact.", "extent")
    assert found["ring FDS"] == "complete"
    assert {entry for entry, value in found.items() if value == "intact"} == EIGHT - {"ring FDS"}


def test_where_a_tendon_had_gone() -> None:
    assert each("Ring. The FDP had gone at the level of the DIP joint.", "extent") == {"ring FDP": "complete"}
    assert each("Ring. The end of the FDP had gone to the palm.", "extent") == {}
    assert each("Ring. The proximal end had gone at least to the palm.", "extent") == {}


CUT = "Ring. FDP cut through and repaired with 3-0. "


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("To allow the bulk of the repair through, the distal half of A2 was vented.", {}),
        ("A2 was opened to admit the bulk of the repair.", {}),
        ("The bulk of the repair caught on A2.", {"ring FDP": "present"}),
        ("The repair is bulky.", {"ring FDP": "present"}),
    ],
)
def test_a_bulk_that_has_to_pass(words: str, expected: dict[str, object]) -> None:
    assert each(CUT + words, "bulk") == expected
