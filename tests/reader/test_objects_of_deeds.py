"""What a verb acts on: slips, stumps, flaps and nerves named as its object, and tendons named by what was done."""

import pytest
from reader_sentences import Shown, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. Both FDS slips cut. I excised the ulnar slip and repaired the radial slip.",
            {"ring FDS ulnar": {"treatment": "excised"}, "ring FDS radial": {"treatment": "repaired"}},
        ),
        (
            "Right middle finger. Both slips of FDS completely divided. We repaired the ulnar slip and then "
            "excised the radial slip.",
            {"middle FDS ulnar": {"treatment": "repaired"}, "middle FDS radial": {"treatment": "excised"}},
        ),
    ],
)
def test_the_slip_behind_the_verb(note: str, expected: Shown) -> None:
    assert told(note, "treatment") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left small finger. FDP intact. FDS partially cut, 30%. I trimmed the loose edge of the FDS.",
            {"small FDS": {"treatment": "trimmed"}},
        ),
        (
            "Right index finger. FDS intact. FDP partially cut, 25%, and we trimmed the torn flap of the FDP.",
            {"index FDP": {"treatment": "trimmed"}},
        ),
    ],
)
def test_the_loose_edge_behind_the_verb(note: str, expected: Shown) -> None:
    assert told(note, "treatment") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger, FDP completely divided. Distal stump tenodesed to the middle phalanx. Proximal "
            "stump cut short and left in the palm.",
            {"ring FDP": {"treatment": "tenodesed"}},
        ),
        (
            "Right small finger, FDP completely divided. The distal stump was reinserted with an anchor. A short "
            "piece of the proximal stump was left over.",
            {"small FDP": {"treatment": "reinserted"}},
        ),
    ],
)
def test_one_stump_left_is_not_the_tendon_left(note: str, expected: Shown) -> None:
    assert told(note, "treatment") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP intact. FDS partially cut, 20%, left.",
            {"ring FDS": {"treatment": "left"}},
        ),
        (
            "Right hand. IF FDP intact. IF FDS small nick left.",
            {"index FDS": {"treatment": "left"}},
        ),
    ],
)
def test_a_tendon_left_is_left(note: str, expected: Shown) -> None:
    assert told(note, "treatment") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger, cut by glass. FDP: frayed rims trimmed, cruciate of 3-0 Ethibond, four strands.",
            {"ring FDP": {"treatment": "repaired", "strands": 4}},
        ),
        (
            "Right thumb, saw. FPL: edges pared off, then Kessler with 4-0 Prolene, two strands.",
            {"thumb FPL": {"treatment": "repaired", "strands": 2}},
        ),
    ],
)
def test_trimmed_and_sewn_in_one_breath_is_repaired(note: str, expected: Shown) -> None:
    assert told(note, "treatment", "strands") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDS: flap trimmed. FDP completely divided, sewn with a four-strand cruciate of 3-0 "
            "Ethibond.",
            {"ring FDS": {"treatment": "trimmed"}, "ring FDP": {"treatment": "repaired", "strands": 4}},
        ),
        (
            "Left middle finger. FDP partially cut, 20%: flap trimmed, not sutured.",
            {"middle FDP": {"treatment": "trimmed"}},
        ),
    ],
)
def test_trimmed_and_not_sewn_stays_trimmed(note: str, expected: Shown) -> None:
    assert told(note, "treatment", "strands") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. FDP completely divided, repaired with four strands of 3-0 Ethibond. FDS cut and left. "
            "The repaired tendon ran freely.",
            {"ring FDP": {"treatment": "repaired"}, "ring FDS": {"treatment": "left"}},
        ),
        (
            "Ring and small fingers. FDP of both completely divided, both repaired with four strands of 3-0 "
            "Ethibond. Small FDS cut, excised. All the repaired tendons slid well.",
            {
                "ring FDP": {"treatment": "repaired"},
                "small FDP": {"treatment": "repaired"},
                "small FDS": {"treatment": "excised"},
            },
        ),
    ],
)
def test_sewn_tendons_as_a_name_repair_nothing_more(note: str, expected: Shown) -> None:
    assert told(note, "treatment") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, FDS intact. The ends were ragged beside the intact FDS.",
            {"ring FDP": {"ends": "ragged"}},
        ),
        (
            "Right small finger. FDP cut through. The FDS was intact; the ends were clean.",
            {"small FDP": {"ends": "clean"}},
        ),
    ],
)
def test_ends_beside_an_intact_tendon(note: str, expected: Shown) -> None:
    assert told(note, "ends") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP and FDS completely divided. The FDP ends were frayed and were trimmed by 4 mm "
            "in all.",
            {"ring FDP": {"ends": "ragged"}},
        ),
        (
            "Left thumb and index finger. FPL and index FDP completely divided. The FPL ends were crushed, "
            "trimmed 5 mm in all.",
            {"thumb FPL": {"ends": "crushed"}},
        ),
    ],
)
def test_in_all_is_a_sum_and_not_all_tendons(note: str, expected: Shown) -> None:
    assert told(note, "ends") == expected


@pytest.mark.parametrize(
    "words",
    [
        "Palmaris longus was harvested through two nicks.",
        "The FDS was drawn forward through a nick in the palm.",
    ],
)
def test_a_nick_gone_through_cuts_no_tendon(words: str) -> None:
    note = "Right ring finger. FDP completely divided. " + words
    assert told(note, "extent") == {"ring FDP": {"extent": "complete"}}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Middle finger. FDP completely divided, sewn with four strands of 3-0 Ethibond.\n"
            "Lumbrical to middle FDP: torn, excised.\n",
            {"middle FDP": {"treatment": "repaired"}},
        ),
        (
            "Index finger. FDP completely divided, sewn with two strands of 4-0 Prolene.\n"
            "Lumbrical of the index FDP: crushed, left.\n",
            {"index FDP": {"treatment": "repaired"}},
        ),
    ],
)
def test_the_fate_of_a_lumbrical_is_its_own(note: str, expected: Shown) -> None:
    assert told(note, "treatment", "ends") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index and ring fingers. FDP of both completely divided. Index FDP sewn with a four-strand cruciate "
            "of 3-0 Ethibond. The ring FDP was sewn in the same fashion as the index.",
            {"index FDP": {"strands": 4, "size": "3-0"}, "ring FDP": {"strands": 4, "size": "3-0"}},
        ),
        (
            "Small and middle fingers. FDP of both completely divided. Small FDP sewn with six strands of 4-0 "
            "Prolene. Middle FDP by the same technique as the small finger.",
            {"small FDP": {"strands": 6, "size": "4-0"}, "middle FDP": {"strands": 6, "size": "4-0"}},
        ),
    ],
)
def test_a_likeness_to_another_finger(note: str, expected: Shown) -> None:
    assert told(note, "strands", "size") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        (
            "The ring FDP could not be sewn in the same way as the index; two strands of 4-0 were used.",
            {"index FDP": {"strands": 6}, "ring FDP": {"strands": 2}},
        ),
        ("The ring FDP the same, four strands only.", {"index FDP": {"strands": 6}, "ring FDP": {"strands": 4}}),
    ],
)
def test_no_likeness_where_it_is_denied(words: str, expected: Shown) -> None:
    note = (
        "Index and ring fingers. FDP of both completely divided. Index FDP sewn with six strands of 3-0 Ethibond. "
    ) + words
    assert told(note, "strands") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right ring finger. FDS cut. I did not repair the ulnar slip and excised the radial slip.",
            {"ring FDS ulnar": {"treatment": "left"}, "ring FDS radial": {"treatment": "excised"}},
        ),
        (
            "Left small finger. Both FDS slips cut. I did not excise the radial slip and repaired the ulnar slip.",
            {"small FDS ulnar": {"treatment": "repaired"}},
        ),
    ],
)
def test_a_deed_denied_of_one_slip(note: str, expected: Shown) -> None:
    assert told(note, "treatment") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index finger.\n"
            "\n"
            "Tendon     Cut      Sewn\n"
            "FDP        60%      y - four strands of 3-0 Ethibond\n"
            "FDS        30%      n - left out\n",
            {
                "index FDP": {"extent_percent": 60, "treatment": "repaired"},
                "index FDS": {"extent_percent": 30, "treatment": "left"},
            },
        ),
        (
            "Left thumb and index finger.\n"
            "\n"
            "Tendon       Cut      Repaired\n"
            "FPL          20%      no\n"
            "Index FDP    80%      yes\n",
            {
                "thumb FPL": {"extent_percent": 20, "treatment": "left"},
                "index FDP": {"extent_percent": 80, "treatment": "repaired"},
            },
        ),
    ],
)
def test_a_cell_that_leaves_its_tendon_unsewn(note: str, expected: Shown) -> None:
    assert told(note, "extent_percent", "treatment") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Thumb. FPL completely divided, thenar motor branch intact.",
            {"thumb FPL": {"extent": "complete"}},
        ),
        (
            "Small finger. FDS explored with the ulnar nerve, motor branch intact. FDP cut through.",
            {"small FDP": {"extent": "complete"}},
        ),
    ],
)
def test_an_intact_branch_is_no_intact_tendon(note: str, expected: Shown) -> None:
    assert told(note, "extent") == expected


@pytest.mark.parametrize(
    "note",
    [
        (
            "Ring finger. FDP completely divided, sewn with four strands of 3-0 Ethibond. The ulnar digital nerve "
            "was sutured with no tension on the nerve."
        ),
        (
            "Thumb. FPL completely divided, sewn with four strands of 3-0 Ethibond. Skin closed without tension on"
            " the flaps."
        ),
    ],
)
def test_tension_of_other_structures(note: str) -> None:
    assert told(note, "tension") == {}


@pytest.mark.parametrize(
    "note",
    [
        (
            "Ring finger. FDP completely divided, sewn with four strands of 3-0 Ethibond. The extra bulk of a "
            "peripheral suture was not wanted."
        ),
        (
            "Ring finger. FDP completely divided. A 3-0 was opened but was too thick. Sewn with four strands of "
            "4-0 Ethibond."
        ),
    ],
)
def test_bulk_that_was_not_added(note: str) -> None:
    assert told(note, "bulk") == {}
