"""Nerves and arteries named by others, listed under a label, or counted; and which bone was broken and fixed."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "The radial digital nerve of the ring finger was divided. The artery beside it was intact.",
            {"ring digital artery radial": "intact", "ring digital nerve radial": "complete"},
        ),
        (
            "The ulnar digital nerve of the index and the radial digital nerve of the middle finger were transected;"
            " their companion arteries were patent.",
            {
                "index digital artery ulnar": "intact",
                "index digital nerve ulnar": "complete",
                "middle digital artery radial": "intact",
                "middle digital nerve radial": "complete",
            },
        ),
        (
            "Ring finger. Radial digital nerve cut; its ulnar counterpart intact.",
            {"ring digital nerve radial": "complete", "ring digital nerve ulnar": "intact"},
        ),
        (
            "Thumb. The ulnar digital nerve was contused. Its radial fellow was whole.",
            {"thumb digital nerve radial": "intact", "thumb digital nerve ulnar": "contused"},
        ),
        (
            "Ring finger. UDN cut, 9-0. Artery divided.",
            {"ring digital artery ulnar": "complete", "ring digital nerve ulnar": "complete"},
        ),
        # Only which arteries are meant is told by the nerves.
        (
            "The radial digital nerve of the index was contused. The artery accompanying this nerve was cut.",
            {"index digital artery radial": "complete", "index digital nerve radial": "contused"},
        ),
        ("Ring finger. The FDP was divided. The artery beside it was intact.", {}),
    ],
)
def test_a_companion_is_on_the_side_and_in_the_finger_of_the_one_named(note: str, expected: dict[str, str]) -> None:
    assert each(note, "extent", "injuries") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Repair of middle and ring fingers.\nThe radial digital nerve of the middle finger was divided;"
            " the remaining three digital nerves were intact.",
            {
                "middle digital nerve radial": "complete",
                "middle digital nerve ulnar": "intact",
                "ring digital nerve radial": "intact",
                "ring digital nerve ulnar": "intact",
            },
        ),
        (
            "The radial digital nerve of the index and the ulnar digital nerve of the middle finger were divided,"
            " while the other digital nerve of each finger was intact.",
            {
                "index digital nerve radial": "complete",
                "index digital nerve ulnar": "intact",
                "middle digital nerve radial": "intact",
                "middle digital nerve ulnar": "complete",
            },
        ),
        # The count does not agree with what was told: silence.
        (
            "Repair of middle and ring fingers.\nThe radial digital nerve of the middle finger was divided;"
            " the remaining five digital nerves were intact.",
            {"middle digital nerve radial": "complete"},
        ),
    ],
)
def test_the_rest_are_those_not_told_hurt(note: str, expected: dict[str, str]) -> None:
    assert each(note, "extent", "injuries") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "PROCEDURE: repair of FDP, index and middle fingers; repair of two digital nerves\n"
            "FINDINGS: The radial digital nerve of the index and the ulnar digital nerve of the middle were divided.\n"
            "TECHNIQUE: The two nerves were sutured with 9-0 nylon.",
            {"index digital nerve radial": "repaired", "middle digital nerve ulnar": "repaired"},
        ),
        # A title does not tell which.
        ("PROCEDURE: repair of FDP, ring and small fingers; repair of digital nerves", {}),
        (
            "The ulnar digital nerve of the middle finger was cut, the radial digital nerve of the ring finger was"
            " contused. The contused nerve of the ring finger was left undisturbed.",
            {"ring digital nerve radial": "left"},
        ),
    ],
)
def test_nerves_told_by_their_number_or_state_are_those_told_cut(note: str, expected: dict[str, str]) -> None:
    assert each(note, "treatment", "injuries") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index finger.\nNerves: radial cut, ulnar intact",
            {"index digital nerve radial": {"extent": "complete"}, "index digital nerve ulnar": {"extent": "intact"}},
        ),
        (
            "OP: index, middle, small\n\nNerves\nIF uln: cut, 9/0\nMF both bruised, left\nLF rad: intact",
            {
                "index digital nerve ulnar": {"extent": "complete", "treatment": "repaired"},
                "middle digital nerve radial": {"extent": "contused", "treatment": "left"},
                "middle digital nerve ulnar": {"extent": "contused", "treatment": "left"},
                "small digital nerve radial": {"extent": "intact"},
            },
        ),
        (
            "Ring finger\nDig. nerve : radial  [x] cut  [ ] intact    ulnar [ ] cut  [x] intact",
            {"ring digital nerve radial": {"extent": "complete"}, "ring digital nerve ulnar": {"extent": "intact"}},
        ),
        (
            "Middle finger. On the ulnar side of this finger both the nerve and the artery were cut.",
            {
                "middle digital artery ulnar": {"extent": "complete"},
                "middle digital nerve ulnar": {"extent": "complete"},
            },
        ),
        (
            "Ring finger.\n* Ulnar bundle: nerve divided, artery intact\n* Radial bundle: intact",
            {
                "ring digital artery radial": {"extent": "intact"},
                "ring digital artery ulnar": {"extent": "intact"},
                "ring digital nerve radial": {"extent": "intact"},
                "ring digital nerve ulnar": {"extent": "complete"},
            },
        ),
        # The slips of the superficialis are no nerves.
        ("Ring finger. Nerves not seen.\nFDS: radial cut, ulnar intact", {}),
    ],
)
def test_sides_are_listed_under_a_label(note: str, expected: dict[str, dict[str, str]]) -> None:
    assert told(note, group="injuries") == expected


@pytest.mark.parametrize(
    "note",
    [
        "Ring finger. Ulnar digital nerve bruised, I let it be.",
        "Ring finger.\nUDN contused: nil done",
        "Ring finger. The ulnar digital nerve was contused, in continuity, and was left undisturbed.",
        "Ring finger. The ulnar digital nerve had a small nick, I left that alone.",
    ],
)
def test_a_nerve_let_be_is_left(note: str) -> None:
    assert each(note, "treatment", "injuries") == {"ring digital nerve ulnar": "left"}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Wrist, zone V. The radial half of the median nerve was divided.", "partial"),
        ("Wrist, zone V. The median nerve was cut through about 70 percent of its thickness.", "partial"),
        ("Wrist, zone V. The median nerve was partly cut. Its divided fascicles were repaired.", "partial"),
        ("Wrist, zone V. The median nerve was divided and repaired.", "complete"),
    ],
)
def test_a_share_of_a_nerve_is_a_partial_cut(note: str, expected: str) -> None:
    assert each(note, "extent", "injuries") == {"median nerve": expected}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "DIAGNOSIS: fracture of the middle phalanx of the middle finger; FDP cut, ring finger\n"
            "FINDINGS\nRing finger. FDP divided.\nThe broken phalanx was fixed with two screws.",
            {"middle phalanx": "fixed"},
        ),
        ("Small finger.\nBone: metacarpal shaft fracture, 1.5 mm plate", {"small metacarpal": "fixed"}),
        ("Middle finger.\nP1 fracture, stable: left alone", {"middle phalanx": "left"}),
        ("Middle finger.\nThe P1 fracture was not fixed.", {"middle phalanx": "left"}),
        # A joint held by a wire, a wire tied over a button: no fracture.
        ("Small finger. Middle phalanx not hurt. K-wire across the DIP joint.", {}),
        ("Ring finger. The pull-out wire went through the distal phalanx and was fixed over a button.", {}),
    ],
)
def test_a_bone_is_fixed_where_it_was_broken(note: str, expected: dict[str, str]) -> None:
    assert each(note, "treatment", "injuries") == expected
