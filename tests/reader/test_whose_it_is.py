"""Whose a fact is, where a note tells it by place, by exception, by a grid or by a correction."""

import pytest
from reader_sentences import Shown, fact_of, told

TWO = "Left index: profundus and superficialis completely divided in zone II. "


@pytest.mark.parametrize(
    ("note", "field", "expected"),
    [
        (
            TWO + "Both were sewn with 3-0 Ethibond. The former glided freely, the latter caught on A2.",
            "glide",
            {"index FDP": "free"},
        ),
        (TWO + "The ends of the former were clean, those of the latter ragged.", "ends", {"index FDP": "clean"}),
        (
            "Ring FDP and small FDP were completely cut. The first was sewn with six strands, the second with four.",
            "strands",
            {"ring FDP": 6, "small FDP": 4},
        ),
        (
            "FCR and FPL were completely divided. The former was sewn with 2-0 Ethibond, the latter with 3-0 Ethibond.",
            "size",
            {"FCR": "2-0", "thumb FPL": "3-0"},
        ),
    ],
)
def test_a_tendon_told_by_its_place(note: str, field: str, expected: dict[str, object]) -> None:
    found = {entry: facts[field] for entry, facts in told(note, field).items()}
    assert expected.items() <= found.items()


@pytest.mark.parametrize(
    ("correction", "right"),
    [
        ("ADDENDUM: It was the middle finger throughout, not the ring.", "middle"),
        ("Correction: the middle finger was operated on, not the ring finger.", "middle"),
        ("CORRECTION\nSorry, wrong finger in the header. It is the MIDDLE finger.", "middle"),
        ("Addendum: the wrong finger was dictated above. The small finger was operated on.", "small"),
        ("ADDENDUM\nThis should be the small finger instead of the ring finger.", "small"),
    ],
)
def test_a_correction_of_the_finger_reaches_back(correction: str, right: str) -> None:
    note = f"Left ring finger. FDP completely divided, repaired with a four-strand cruciate.\n\n{correction}\n"
    assert told(note, "strands") == {f"{right} FDP": {"strands": 4}}
    assert "not the ring" in " ".join(fact_of(note, f"{right} FDP", "strands").look_twice)


@pytest.mark.parametrize(
    "correction",
    [
        "ADDENDUM: the FDP of the middle finger was sewn with 4-0, not that of the ring finger.",
        "The middle finger was sore, not the ring finger.",
    ],
)
def test_a_correction_of_one_thing_moves_no_finger(correction: str) -> None:
    note = f"Left ring finger. FDP completely divided, repaired with a four-strand cruciate.\n\n{correction}\n"
    assert told(note, "strands")["ring FDP"] == {"strands": 4}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index and ring. A2 was intact in the ring finger and vented 4 mm distally in the index finger.",
            {"ring A2": {"finding": "intact"}, "index A2": {"finding": "vented", "extent_mm": 4, "part": "distal"}},
        ),
        (
            "Index and ring. A2 was vented 5 mm distally in the index finger, while it was left intact in the ring.",
            {"ring A2": {"finding": "intact"}, "index A2": {"finding": "vented", "extent_mm": 5, "part": "distal"}},
        ),
        (
            "Index, middle and ring. A2 is intact in every finger except the index, where its distal 4 mm was vented.",
            {
                "index A2": {"finding": "vented", "extent_mm": 4, "part": "distal"},
                "middle A2": {"finding": "intact"},
                "ring A2": {"finding": "intact"},
            },
        ),
        (
            "Middle finger. The A2 pulley was left untouched and the A4 pulley was incised for its proximal 5 mm.",
            {
                "middle A2": {"finding": "intact"},
                "middle A4": {"finding": "vented", "extent_mm": 5, "part": "proximal"},
            },
        ),
        (
            "Middle finger. Decided not to vent A2 as A4 already open.",
            {"middle A2": {"finding": "intact"}},
        ),
        (
            "Ring finger and small finger. Venting: ring A2 distal third, small A4 complete.",
            {
                "ring A2": {"finding": "vented", "extent_percent": 33, "part": "distal"},
                "small A4": {"finding": "vented"},
            },
        ),
    ],
)
def test_each_pulley_has_its_own_finger_and_state(note: str, expected: Shown) -> None:
    assert told(note, group="pulleys") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right ring and small fingers. In both the FDP was completely divided; the FDS was intact in the ring and "
            "half cut in the small.",
            {"ring FDP": "complete", "small FDP": "complete", "ring FDS": "intact", "small FDS": "partial"},
        ),
        (
            "The profundus to the ring finger was completely severed, as was its superficialis. The same was true of "
            "the middle finger.",
            {"ring FDP": "complete", "ring FDS": "complete", "middle FDP": "complete", "middle FDS": "complete"},
        ),
        (
            "Index and middle fingers. FDP completely divided in both. FDS intact in both.",
            {"index FDP": "complete", "middle FDP": "complete", "index FDS": "intact", "middle FDS": "intact"},
        ),
        (
            "FCR, palmaris longus and FCU were exposed. All three were completely divided.",
            {"FCR": "complete", "PL": "complete", "FCU": "complete"},
        ),
        ("Index FDS three quarters whole, the other quarter frayed.", {}),
        (
            "Index and middle fingers. The profundus was completely divided in all fingers but the index, where it was "
            "intact.",
            {"middle FDP": "complete", "index FDP": "intact"},
        ),
        (
            "Ring and small fingers, saw. FDP completely cut in all fingers but the small one, where it was intact.",
            {"ring FDP": "complete", "small FDP": "intact"},
        ),
        (
            "Finger 3: FDP completely divided. Finger 4: FDP intact, FDS completely divided.",
            {"middle FDP": "complete", "ring FDP": "intact", "ring FDS": "complete"},
        ),
        (
            "Fingers 3 and 4 were cut. FDP of finger 3 completely divided, FDP of finger 4 intact.",
            {"middle FDP": "complete", "ring FDP": "intact"},
        ),
        (
            "Right ring and small fingers. In the ring finger the profundus was completely divided. The other finger "
            "was done next. Here the profundus was intact.",
            {"ring FDP": "complete", "small FDP": "intact"},
        ),
    ],
)
def test_extents_shared_or_told_apart(note: str, expected: dict[str, str]) -> None:
    assert {entry: facts["extent"] for entry, facts in told(note, "extent").items()} == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "              INDEX                    MIDDLE\nFDP           complete                 complete\n"
            "FDS           intact                   complete\n"
            "Core          4-0 Fiberwire, 6 str     4-0 Fiberwire, 4 str\n",
            {"index FDP": 6, "middle FDP": 4},
        ),
        (
            "| Finger | FDP | FDS | Core |\n| Index | complete | intact | 4-strand cruciate |\n"
            "| Middle | complete | partial 40% | 6-strand Savage |\n",
            {"index FDP": 4, "middle FDP": 6},
        ),
        (
            "tendon         cut           repaired        how\n"
            "FCU            whole         yes             core 3-0, 2 strand\n"
            "FDS 3          whole         yes             core 3-0, 4 strand\n"
            "FCR            none          -               intact\n",
            {"FCU": 2, "middle FDS": 4},
        ),
        (
            "Tendon  Zone  Finding   Repair\nFDP2    II    100%      4s cruciate 3-0 Fiberwire\n"
            "FDP3    II    60%       2s Kessler 4-0 Prolene\n",
            {"index FDP": 4, "middle FDP": 2},
        ),
        (
            "1) FDP small finger\n2) FDS small finger\n3) FDP ring finger\n"
            "Tendon 1: complete, repaired, 4 strand cruciate. "
            "Tendon 2: complete, excised. Tendon 3: 60 % cut, repaired with two-strand Kessler.",
            {"small FDP": 4, "ring FDP": 2},
        ),
    ],
)
def test_the_core_of_a_grid_or_list_is_of_the_deep_flexor(note: str, expected: dict[str, int]) -> None:
    assert {entry: facts["strands"] for entry, facts in told(note, "strands").items()} == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring and small FDP were completely divided. Every FDP was repaired with 3-0 Ethibond. Every one except "
            "that of the ring finger was given a running 6-0 Prolene.",
            {"small FDP"},
        ),
        (
            "The ring FDP and FDS were completely cut and sewn with 3-0 Ethibond. The profundus repair, not the "
            "superficialis, was dressed up with a running 6-0 Prolene around it.",
            {"ring FDP"},
        ),
        (
            "I repaired the FDP to the small finger with four strands of 4-0 Fiberwire, the FDP to the ring finger "
            "with six, and added a running 6-0 Prolene to each.",
            {"ring FDP", "small FDP"},
        ),
    ],
)
def test_an_outer_suture_of_some_only(note: str, expected: set[str]) -> None:
    found = told(note, "peripheral")
    assert {entry for entry, facts in found.items() if facts["peripheral"] == "present"} == expected


@pytest.mark.parametrize(
    "note",
    [
        "Index FDP completely divided. None of these tendons was given an epitendinous suture. Core 3-0 Ethibond.",
        "Index FDP repaired with 3-0 Ethibond, and not with a circumferential suture.",
    ],
)
def test_an_outer_suture_denied_is_absent(note: str) -> None:
    assert told(note, "peripheral") == {"index FDP": {"peripheral": "absent"}}


def test_a_slip_that_was_whole_was_not_sewn() -> None:
    note = (
        "Ring finger. Of the FDS, the radial slip was completely divided and the ulnar slip was intact. "
        "The FDS was repaired with a 4-0 Prolene Kessler."
    )
    assert told(note, "size", "extent") == {
        "ring FDS radial": {"extent": "complete", "size": "4-0"},
        "ring FDS ulnar": {"extent": "intact"},
    }


@pytest.mark.parametrize(
    ("row", "digit"),
    [
        ("FPL     [ ] complete [ ] partial", "index"),
        ("Thumb   [ ] FPL cut [ ] FPL repaired", "index"),
    ],
)
def test_a_row_without_a_tick_turns_to_nothing(row: str, digit: str) -> None:
    note = f"Index finger.\nFDP     [x] complete [ ] partial\n{row}\nCore: 4-strand cruciate, 3-0 Ethibond\n"
    assert set(told(note, "strands")) == {f"{digit} FDP"}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "\tMiddle\tRing\tSmall\nFDP\tcompletely divided\tcompletely divided\tintact\n"
            "FDS\tintact\tcompletely divided\tcompletely divided\n",
            {
                "middle FDP": "complete",
                "ring FDP": "complete",
                "small FDP": "intact",
                "middle FDS": "intact",
                "ring FDS": "complete",
                "small FDS": "complete",
            },
        ),
        (
            "      | RING       | SMALL\nFDP   | complete   | complete\n"
            "DONE  |            |\nFDS   | complete   | intact\n",
            {"ring FDP": "complete", "small FDP": "complete", "ring FDS": "complete", "small FDS": "intact"},
        ),
        (
            "FDP\nIndex: completely divided, zone II.\nMiddle: intact.\n\nFDS\nIndex: intact.\n"
            "Middle: completely divided.\n",
            {"index FDP": "complete", "middle FDP": "intact", "index FDS": "intact", "middle FDS": "complete"},
        ),
        (
            "Finger            Middle\nTendon            FDP\nCut               completely divided\n"
            "Tendon            FDS\nCut               intact\n",
            {"middle FDP": "complete", "middle FDS": "intact"},
        ),
        (
            "SEEN      INDEX   FDP divided, zone 2A. FDS intact. RDN contused, left.\n"
            "          MIDDLE  FDP 70% cut, zone 2A. FDS intact. UDN divided.\n",
            {"index FDP": "complete", "index FDS": "intact", "middle FDP": "partial", "middle FDS": "intact"},
        ),
    ],
)
def test_a_layout_gives_each_finger_its_own_tendons(note: str, expected: dict[str, str]) -> None:
    assert {entry: facts["extent"] for entry, facts in told(note, "extent").items()} == expected
