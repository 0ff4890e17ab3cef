"""Whose ends, gap, glide and test are told: 'both', 'either', 'all ends', a test with its results told after."""

import pytest
from reader_sentences import Shown, told

TWO = (
    "Left hand. Index finger: FDP completely divided, repaired with a four-strand cruciate of 4-0 nylon. "
    "Middle finger: FDP completely divided, repaired with a four-strand cruciate of 4-0 nylon. "
)
ONE = "Right ring finger, zone II. FDP completely divided, repaired with a four-strand core of 3-0 Ethibond. "


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger: FDP cut completely, FDS cut completely too, all ends ragged. FDP repaired with 4-0 nylon.",
            {"ring FDP": {"ends": "ragged"}, "ring FDS": {"ends": "ragged"}},
        ),
        (
            "In the ring finger the profundus was severed and the superficialis too; I found the ends of both clean. "
            "Both were repaired with 4-0 nylon.",
            {"ring FDP": {"ends": "clean"}, "ring FDS": {"ends": "clean"}},
        ),
        (
            "Index FDP divided and ring FDP divided, stumps frayed and clean respectively. Both repaired, 4-0 nylon.",
            {"index FDP": {"ends": "ragged"}, "ring FDP": {"ends": "clean"}},
        ),
        (
            "Index FDP completely divided, repaired with 4-0 nylon. Index FDS completely divided, not repaired. "
            "Middle FDP completely divided, repaired with 4-0 nylon. Both repairs: ends clean.",
            {"index FDP": {"ends": "clean"}, "middle FDP": {"ends": "clean"}},
        ),
        (
            "Index finger: FDP completely divided. FDS 30% cut, left alone. Ring finger: FDP completely divided. "
            "Ends clean in both. Both FDP repaired with 4-0 nylon.",
            {"index FDP": {"ends": "clean"}, "ring FDP": {"ends": "clean"}},
        ),
    ],
)
def test_whose_ends(note: str, expected: Shown) -> None:
    assert told(note, "ends") == expected


@pytest.mark.parametrize(
    ("sentence", "mm"),
    [
        ("Ends a bit ragged, I cut off 3 mm to reach something decent.", 3.0),
        ("Both ends were crushed; I cut them back about 5 mm to solid tendon.", 5.0),
        ("I took 2 mm off each end.", 2.0),
        ("Ends trimmed: 4 mm", 4.0),
        ("The ends were ragged, so 3 mm of each was pared back.", 3.0),
    ],
)
def test_trimming_in_other_words(sentence: str, mm: float) -> None:
    note = f"Right ring finger. FDP completely divided. {sentence} Repaired with 4-0 nylon, four strands."
    assert told(note, "trimmed_mm") == {"ring FDP": {"trimmed_mm": mm}}


@pytest.mark.parametrize(
    "sentence",
    [
        "A4 was frayed, its distal 3 mm trimmed off.",
        "Core purchase was 10 mm on both sides, ends trimmed.",
        "The skin edges were cut back 2 mm.",
        "A 2 mm flap of skin was trimmed.",
    ],
)
def test_lengths_that_were_not_trimmed_from_the_tendon(sentence: str) -> None:
    assert not told(ONE + sentence, "trimmed_mm")


@pytest.mark.parametrize(
    ("sentence", "value"),
    [
        ("The tendon went back and forth under A2 freely.", "free"),
        ("It passes smoothly beneath the pulleys.", "free"),
        ("No gap and the repair glided freely.", "free"),
        ("No gapping and free gliding.", "free"),
        ("It did not run freely.", "restricted"),
        ("The repair caught on A2 and after venting the catching was abolished.", "free"),
        (
            "It caught at the edge of A4, and although 3 mm was vented the catching did not wholly disappear.",
            "catching",
        ),
        ("Still catches when entering the new A2.", "catching"),
        ("As it passed into the sheath it kept catching at the edge of A2.", "catching"),
        ("GLIDE  [x] free  [ ] catches", "free"),
        ("On traction the tip came to the palm, though the glide was restricted.", "restricted"),
    ],
)
def test_glide_in_other_words(sentence: str, value: str) -> None:
    assert told(ONE + sentence, "glide") == {"ring FDP": {"glide": value}}


@pytest.mark.parametrize(
    "sentence",
    [
        "The finger moves freely.",
        "A4 was shredded and stuck to bone.",
        "The cut edge of the A4 flap was catching on the retractor.",
        "The nerve ran freely beside it.",
        "A running 6-0 nylon was passed easily around it.",
        "Locking throws catching 12 mm of tendon along each edge.",
        "If it does not glide freely, ring me.",
    ],
)
def test_words_that_tell_of_no_glide(sentence: str) -> None:
    assert not told(ONE + sentence, "glide")


@pytest.mark.parametrize(
    ("sentence", "value"),
    [
        ("On passive extension before closing there was no gap.", "passive"),
        ("Pulled the finger out straight and there was no gap.", "passive"),
        ("Pulled on the tendon in the wound, no gap.", "traction"),
        ("POST-REPAIR CHECK: [active / passive / traction] passive.", "passive"),
        ("TESTED BY  [x] patient  [ ] surgeon", "active"),
        ("No active test as he was asleep. I bent it for him.", "passive"),
    ],
)
def test_the_test_in_other_words(sentence: str, value: str) -> None:
    assert told(ONE + sentence, "test") == {"ring FDP": {"test": value}}


@pytest.mark.parametrize(
    "sentence",
    [
        "No active test was possible.",
        "Before the block he could not actively flex.",
        "Tested by [ ] patient [ ] surgeon",
    ],
)
def test_no_test_of_the_repair(sentence: str) -> None:
    assert not told(ONE + sentence, "test")


@pytest.mark.parametrize(
    ("sentences", "expected"),
    [
        (
            "Both gliding freely.",
            {"index FDP": {"glide": "free"}, "middle FDP": {"glide": "free"}},
        ),
        (
            "Fingers moved passively, no gap in any repair.",
            {"index FDP": {"gap": "none", "test": "passive"}, "middle FDP": {"gap": "none", "test": "passive"}},
        ),
        (
            "Passive test both: no gap.",
            {"index FDP": {"gap": "none", "test": "passive"}, "middle FDP": {"gap": "none", "test": "passive"}},
        ),
        (
            "Traction on the index FDP opened no gap. Middle FDP the same: no gap.",
            {"index FDP": {"gap": "none", "test": "traction"}, "middle FDP": {"gap": "none", "test": "traction"}},
        ),
        (
            "Asked her to make a fist. Index: no gap. Middle: 1 mm gap.",
            {
                "index FDP": {"gap": "none", "test": "active"},
                "middle FDP": {"gap": "seen", "gap_mm": 1.0, "test": "active"},
            },
        ),
        (
            "On passive motion the index FDP glides freely, whereas the middle FDP catches on A2. Neither of the two "
            "gapped.",
            {
                "index FDP": {"gap": "none", "test": "passive", "glide": "free"},
                "middle FDP": {"gap": "none", "test": "passive", "glide": "catching"},
            },
        ),
        (
            "Index: no gap, free passage. Middle: no gap either, but it hesitates under A2.",
            {"index FDP": {"gap": "none", "glide": "free"}, "middle FDP": {"gap": "none", "glide": "catching"}},
        ),
    ],
)
def test_whose_test_gap_and_glide(sentences: str, expected: Shown) -> None:
    assert told(TWO + sentences, "gap", "gap_mm", "test", "glide") == expected


@pytest.mark.parametrize(
    ("sentence", "value"),
    [
        ("Passive swing: runs clear, no gap.", "passive"),
        ("Before closing I moved the finger through its whole range and could see no gap.", "passive"),
        ("When the wrist was tipped up and down the tendon moved without restriction.", "passive"),
        ("The fingers were extended together and the suture held without any gap.", "passive"),
        ("He made ten fists and no gap was seen.", "active"),
        ("On gently pulling the proximal tendon the seam held, with no gap.", "traction"),
    ],
)
def test_the_test_by_who_moves_what(sentence: str, value: str) -> None:
    assert told(ONE + sentence, "test") == {"ring FDP": {"test": value}}


@pytest.mark.parametrize(
    "sentence",
    [
        "Passive exercises from day 3, no catching expected.",
        "The joints were moved to free adhesions.",
        "In clinic he moved the finger poorly.",
        "If I moved the finger there would be no gap.",
    ],
)
def test_motion_that_is_no_test(sentence: str) -> None:
    assert not told(ONE + sentence, "test")


@pytest.mark.parametrize(
    ("sentence", "value"),
    [
        ("Passive ROM: glides, no gap.", "free"),
        ("Passive movement: runs clear of the pulleys.", "free"),
        ("There was a catch on A2; and after I cut a little more there was none.", "free"),
        ("Slight catch at A4 before it was opened, none after.", "free"),
        ("It runs, but drags a touch at the edge of A2.", "catching"),
        ("It still scraped at the enlarged pulley.", "catching"),
        ("Under passive movement the tendon glides jerkily at the border of A2.", "catching"),
        ("With that in place the tendon ran stiffly.", "restricted"),
    ],
)
def test_glide_told_plainly(sentence: str, value: str) -> None:
    assert told(ONE + sentence, "glide") == {"ring FDP": {"glide": value}}
