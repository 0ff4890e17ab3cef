"""More words for a tendon cut through or spared, and words that only look like a cut."""

import pytest
from reader_sentences import Shown, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right ring finger, dog bite. The FDP was bitten right through, the FDS was not bitten.",
            {"ring FDP": "complete", "ring FDS": "intact"},
        ),
        (
            "Left index, circular saw. FDP sawn in two, FDS missed by the saw.",
            {"index FDP": "complete", "index FDS": "intact"},
        ),
        (
            "Left index, glass. Superficialis cut clean across, profundus whole.",
            {"index FDS": "complete", "index FDP": "intact"},
        ),
        (
            "Left middle finger. FDP off the distal phalanx. FDS intact.",
            {"middle FDP": "complete", "middle FDS": "intact"},
        ),
        (
            "Left middle finger. FDP gone right across, FDS in order.",
            {"middle FDP": "complete", "middle FDS": "intact"},
        ),
        (
            "Left small finger. FDS in good order. FDP cut right across.",
            {"small FDP": "complete", "small FDS": "intact"},
        ),
        (
            "Left small finger. FDS sawed clean through. FDP not sawn.",
            {"small FDS": "complete", "small FDP": "intact"},
        ),
    ],
)
def test_bitten_sawn_and_gone(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Thumb. FPL completely divided. The proximal end had gone to the thenar eminence.",
            {"thumb FPL": "complete"},
        ),
        (
            "Thumb. FPL completely divided. Its proximal end was fetched through a 2 cm nick above the wrist crease.",
            {"thumb FPL": "complete"},
        ),
        (
            "Ring finger. FDP completely divided and fetched via a 1 cm nick over the distal palm.",
            {"ring FDP": "complete"},
        ),
        (
            "Ring finger. FDP completely divided. FDP ends trimmed 2 mm, healthy.",
            {"ring FDP": "complete"},
        ),
        (
            "Index finger, FDP completely divided. FDS exposed in order to pass the FDP.",
            {"index FDP": "complete"},
        ),
    ],
)
def test_words_that_are_no_cut(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. FDP and FDS completely divided. FDP repaired with 3-0 Ethibond. No attempt was "
            "made to repair the FDS.",
            {"ring FDP": "repaired", "ring FDS": "left"},
        ),
        (
            "Ring finger. FDP and FDS completely divided. FDP repaired with 3-0 Ethibond. FDS: no attempt at repair.",
            {"ring FDP": "repaired", "ring FDS": "left"},
        ),
    ],
)
def test_left_without_a_repair(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["treatment"] for entry, facts in told(note, "treatment").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. FDP completely divided. There was little healthy FDP left. Repaired with 3-0 Ethibond.",
            {"ring FDP": "repaired"},
        ),
        (
            "Ring finger. FDP completely divided, with not much good tendon left. Repaired with 3-0 Ethibond.",
            {"ring FDP": "repaired"},
        ),
    ],
)
def test_tendon_left_over_is_not_left(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["treatment"] for entry, facts in told(note, "treatment").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Small finger. FDP and FDS completely divided. The FDS had to be removed. FDP repaired with 3-0 Ethibond.",
            {"small FDP": "repaired", "small FDS": "excised"},
        ),
        (
            "Index finger. FDP and FDS cut through. FDS has had to be removed to make room; FDP repaired "
            "with 4-0 Prolene.",
            {"index FDP": "repaired", "index FDS": "excised"},
        ),
    ],
)
def test_had_to_be_removed(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["treatment"] for entry, facts in told(note, "treatment").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left hand. Only the profundus of the index was intact. The other three were cut through.",
            {"index FDP": "intact", "middle FDP": "complete", "ring FDP": "complete", "small FDP": "complete"},
        ),
        (
            "Right hand. The FDP of the small finger alone was intact. The other three were completely divided.",
            {"small FDP": "intact", "index FDP": "complete", "middle FDP": "complete", "ring FDP": "complete"},
        ),
    ],
)
def test_the_rest_of_four(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Zone V, left wrist. FCU completely divided, FDP of small completely divided. Remaining finger "
            "flexors: intact.",
            {
                "FCU": "complete",
                "small FDP": "complete",
                "small FDS": "intact",
                "index FDP": "intact",
                "index FDS": "intact",
                "middle FDP": "intact",
                "middle FDS": "intact",
                "ring FDP": "intact",
                "ring FDS": "intact",
            },
        ),
        (
            "Right wrist, zone V. FCR completely divided. Other flexors of the fingers intact.",
            {
                "FCR": "complete",
                "index FDP": "intact",
                "index FDS": "intact",
                "middle FDP": "intact",
                "middle FDS": "intact",
                "ring FDP": "intact",
                "ring FDS": "intact",
                "small FDP": "intact",
                "small FDS": "intact",
            },
        ),
    ],
)
def test_other_flexors_at_the_wrist(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. FDP completely divided. The vinculum of the FDS was torn.",
            {"ring FDP": {"extent": "complete"}},
        ),
        (
            "Middle finger. FDP completely divided. The lumbrical of the FDP was cut out.",
            {"middle FDP": {"extent": "complete"}},
        ),
        (
            "Index finger. FDP completely divided. Paratenon of FDS torn.",
            {"index FDP": {"extent": "complete"}},
        ),
    ],
)
def test_a_neighbour_of_the_tendon(note: str, expected: Shown) -> None:
    assert told(note) == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger, zone I, distal to the FDS insertion: FDP torn through.",
            {"ring FDP": "complete"},
        ),
        (
            "Small finger. Just beyond the FDS insertion the FDP was completely divided.",
            {"small FDP": "complete"},
        ),
        (
            "Small finger. At the FDS decussation: FDP completely divided.",
            {"small FDP": "complete"},
        ),
    ],
)
def test_an_insertion_is_a_place(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. FDP and FDS completely divided. FDP repaired with 3-0 Ethibond. The ulnar slip "
            "tethered the profundus and was excised.",
            {"ring FDP": "repaired", "ring FDS ulnar": "excised"},
        ),
        (
            "Index finger. FDP and FDS completely divided. FDP repaired with 3-0 Ethibond. The superficialis "
            "crowded the profundus and was excised.",
            {"index FDP": "repaired", "index FDS": "excised"},
        ),
    ],
)
def test_the_object_of_a_verb(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["treatment"] for entry, facts in told(note, "treatment").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index, middle and ring fingers, left.\n"
            "FDP: completely divided in all three fingers.\n"
            "FDS: intact in all three fingers.\n",
            {
                "index FDP": "complete",
                "index FDS": "intact",
                "middle FDP": "complete",
                "middle FDS": "intact",
                "ring FDP": "complete",
                "ring FDS": "intact",
            },
        ),
        (
            "Middle and ring fingers, left.\nFDS: intact in both fingers.\nFDP: severed in both fingers.\n",
            {"middle FDP": "complete", "middle FDS": "intact", "ring FDP": "complete", "ring FDS": "intact"},
        ),
    ],
)
def test_all_fingers_of_a_line(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "PROCEDURE\n"
            "Repair of FDP ring, FDS ring and FDP small.\n"
            "\n"
            "FINDINGS\n"
            "The aforementioned tendons were completely divided.\n",
            {"ring FDP": "complete", "ring FDS": "complete", "small FDP": "complete"},
        ),
        (
            "PROCEDURE\n"
            "Repair of FDP index, FDS index and FDP small.\n"
            "\n"
            "FINDINGS\n"
            "All the tendons listed were completely divided.\n",
            {"index FDP": "complete", "index FDS": "complete", "small FDP": "complete"},
        ),
        (
            "PROCEDURE\nRepair of FDP middle and FDP ring.\n\nFINDINGS\nAbove tendons all completely divided.\n",
            {"middle FDP": "complete", "ring FDP": "complete"},
        ),
        (
            "PROCEDURE\n"
            "Repair of FDP ring, FDS ring and FDP small.\n"
            "\n"
            "FINDINGS\n"
            "All aforementioned tendons were cut through.\n",
            {"ring FDP": "complete", "ring FDS": "complete", "small FDP": "complete"},
        ),
    ],
)
def test_all_listed_tendons(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected
