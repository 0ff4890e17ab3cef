"""How the ends looked and how the finished repair behaved: ends, trimming, gap, test, glide, tension, bulk."""

import pytest
from reader_sentences import quote_of, told

QUALITY = ("ends", "trimmed_mm", "gap", "gap_mm", "test", "glide", "tension", "bulk")
REPAIR = (
    "Right index finger, zone II. FDP completely divided and repaired with a four-strand core suture of 4-0 nylon. "
)
OTHER = "Left ring finger. The FDP was cut through. Core: modified Kessler, 3-0 Prolene, two strands. "


def quality(note: str) -> dict[str, dict[str, object]]:
    return told(note, *QUALITY)


@pytest.mark.parametrize(
    ("sentence", "value"),
    [
        ("The tendon ends were clean.", "clean"),
        ("Sharp, clean-cut ends.", "clean"),
        ("The ends were ragged.", "ragged"),
        ("Frayed tendon ends were found.", "ragged"),
        ("The tendon ends were crushed.", "crushed"),
        ("Both ends were attenuated.", "attenuated"),
        ("The ends were ragged and were freshened to healthy fibres.", "ragged"),
    ],
)
def test_ends(sentence: str, value: str) -> None:
    assert quality(f"Right index finger, zone II. FDP completely divided. {sentence} FDP repaired with 4-0 nylon.") == {
        "index FDP": {"ends": value}
    }
    assert quality(f"Left ring finger. FDP cut through. {sentence} Repaired, core of 3-0 Prolene.") == {
        "ring FDP": {"ends": value}
    }


@pytest.mark.parametrize(
    "sentence",
    [
        "The ends were freshened.",
        "The nerve ends were clean.",
        "The wound was clean.",
        "The wound edges were ragged.",
        "Tendon ends: clean / ragged / crushed",
        "[ ] ends clean",
        "The ends were not clean.",
        "The ends were trimmed back to clean tendon.",
        "The bone ends were crushed.",
    ],
)
def test_no_ends(sentence: str) -> None:
    assert not told(
        f"Right index finger, zone II. FDP completely divided. {sentence} FDP repaired with 4-0 nylon.", "ends"
    )


@pytest.mark.parametrize(
    ("sentence", "mm"),
    [
        ("The ends were trimmed back 3 mm.", 3),
        ("2 mm was resected from the tendon ends.", 2),
        ("Tendon ends trimmed by 1 to 2 mm.", 2),
        ("The stumps were cut back 0.4 cm.", 4),
    ],
)
def test_trimming(sentence: str, mm: float) -> None:
    note = f"Right index finger. FDP completely divided. {sentence} FDP repaired with 4-0 nylon."
    assert told(note, "trimmed_mm") == {"index FDP": {"trimmed_mm": mm}}


@pytest.mark.parametrize(
    "sentence",
    [
        "The nerve ends were trimmed back 3 mm.",
        "The skin edge was trimmed by 2 mm.",
        "The K-wire was trimmed 5 mm from the skin.",
        "A2 was trimmed by 4 mm.",
        "The suture tails were cut 3 mm long.",
    ],
)
def test_trimming_of_other_things(sentence: str) -> None:
    assert not told(
        f"Right index finger. FDP completely divided. {sentence} FDP repaired with 4-0 nylon.", "trimmed_mm"
    )


@pytest.mark.parametrize(
    ("sentence", "expected"),
    [
        ("No gap was seen.", {"gap": "none"}),
        ("There was no gapping of the repair.", {"gap": "none"}),
        ("A 2 mm gap was seen.", {"gap": "seen", "gap_mm": 2}),
        ("The repair gapped by 1 mm.", {"gap": "seen", "gap_mm": 1}),
        ("A gap of 1-2 mm appeared at the repair.", {"gap": "seen", "gap_mm": 2}),
        ("Slight gapping was noted.", {"gap": "seen"}),
    ],
)
def test_gap(sentence: str, expected: dict[str, object]) -> None:
    assert told(REPAIR + sentence, "gap", "gap_mm") == {"index FDP": expected}
    assert told(OTHER + sentence, "gap", "gap_mm") == {"ring FDP": expected}


@pytest.mark.parametrize(
    "sentence",
    [
        "The repair looked sound.",
        "There was a 2 cm gap in the digital nerve.",
        "A gap between the stumps of 15 mm was closed before the repair.",
        "If a gap is seen on ultrasound the repair is revised.",
        "Gap: yes / no",
        "Gap: ___ mm",
        "[ ] no gap",
        "A gap of 2 mm or more doubles the risk of rupture.",
        "It is important that there be no gap.",
        "No gap in the nerve.",
        "Gapping was not looked for.",
    ],
)
def test_no_word_on_a_gap_of_the_repair(sentence: str) -> None:
    assert not told(REPAIR + sentence, "gap", "gap_mm")


@pytest.mark.parametrize(
    ("sentences", "value"),
    [
        ("A 1 mm gap was seen and mended with one more stitch. No gap remained.", "none"),
        ("A gap of 1 mm appeared. Two further stitches closed it and on a second test there was no gap.", "none"),
        ("No gap at first. On full extension a 2 mm gap appeared.", "seen"),
        ("A gap was seen and two more stitches were placed.", "seen"),
    ],
)
def test_the_last_look_at_a_gap_decides(sentences: str, value: str) -> None:
    assert told(REPAIR + sentences, "gap")["index FDP"]["gap"] == value


@pytest.mark.parametrize(
    ("sentence", "value"),
    [
        ("The patient flexed the finger actively and the repair held.", "active"),
        ("Active flexion on the table was full.", "active"),
        ("Full passive motion was tested.", "passive"),
        ("The finger was moved passively through its full range to test the repair.", "passive"),
        ("Traction on the proximal tendon was used to test the repair.", "traction"),
    ],
)
def test_test_on_the_table(sentence: str, value: str) -> None:
    assert told(REPAIR + sentence, "test") == {"index FDP": {"test": value}}
    assert told(OTHER + sentence, "test") == {"ring FDP": {"test": value}}


@pytest.mark.parametrize(
    "sentence",
    [
        "Active flexion was not tested.",
        "Early active flexion will start on day 3.",
        "Before the operation he had no active flexion.",
        "Passive exercises from day 4.",
        "The repair was not tested.",
        "The tendon was delivered by traction.",
        "Tested: active / passive",
    ],
)
def test_no_test(sentence: str) -> None:
    assert not told(REPAIR + sentence, "test")


@pytest.mark.parametrize(
    ("sentence", "value"),
    [
        ("The repair glided freely under A2.", "free"),
        ("Free glide of the repair.", "free"),
        ("No triggering.", "free"),
        ("The repair caught on the A2 pulley.", "catching"),
        ("The repair triggered at the A4.", "catching"),
        ("The repair did not glide freely.", "restricted"),
        ("The repair caught on A4 until A4 was vented, then it glided freely.", "free"),
        ("The repair caught on A2, so A2 was vented.", "catching"),
    ],
)
def test_glide(sentence: str, value: str) -> None:
    assert told(REPAIR + sentence, "glide") == {"index FDP": {"glide": value}}
    assert told(OTHER + sentence, "glide") == {"ring FDP": {"glide": value}}


@pytest.mark.parametrize(
    "sentence",
    [
        "The hand had been caught in a door.",
        "Tendon gliding exercises from week 2.",
        "Glide: free / catching / restricted",
        "The nerve was freed and glided freely.",
        "If the repair catches, A4 should be vented.",
        "Glide was not checked.",
        "The aim is free glide under A2.",
    ],
)
def test_no_glide(sentence: str) -> None:
    assert not told(REPAIR + sentence, "glide")


@pytest.mark.parametrize(
    ("sentence", "field", "value"),
    [
        ("The repair was free of tension.", "tension", "none"),
        ("There was no tension on the repair.", "tension", "none"),
        ("The repair was under some tension.", "tension", "present"),
        ("The repair is tight, under tension.", "tension", "present"),
        ("The repair was bulky.", "bulk", "present"),
        ("The repair was not bulky.", "bulk", "none"),
        ("No bunching of the repair.", "bulk", "none"),
    ],
)
def test_tension_and_bulk(sentence: str, field: str, value: str) -> None:
    assert told(REPAIR + sentence, "tension", "bulk") == {"index FDP": {field: value}}
    assert told(OTHER + sentence, "tension", "bulk") == {"ring FDP": {field: value}}
    assert quote_of(REPAIR + sentence, "index FDP", field) in sentence


@pytest.mark.parametrize(
    "sentence",
    [
        "The nerve was repaired without tension.",
        "Skin closed without tension.",
        "The digital nerve lay under tension.",
        "Tension: yes / no",
        "Tension was set with the finger in its cascade.",
        "A bulky dressing was applied.",
        "Bulk: none / present",
        "A tension-free repair is what one aims for.",
    ],
)
def test_tension_and_bulk_of_others(sentence: str) -> None:
    assert not told(REPAIR + sentence, "tension", "bulk")


@pytest.mark.parametrize(
    ("sentence", "expected"),
    [
        ("Neither repair gapped.", {"index FDP": {"gap": "none"}, "small FDP": {"gap": "none"}}),
        (
            "The index repair glided freely; the small finger repair caught on A2.",
            {"index FDP": {"glide": "free"}, "small FDP": {"glide": "catching"}},
        ),
        ("The small finger FDP was bulky.", {"small FDP": {"bulk": "present"}}),
    ],
)
def test_whose_behaviour(sentence: str, expected: dict[str, dict[str, object]]) -> None:
    note = (
        "Left hand. Index FDP divided and repaired with 4-0 nylon. Small FDP divided and repaired with 3-0 nylon. "
        + sentence
    )
    assert quality(note) == expected


@pytest.mark.parametrize("zero", ["Tension: 0. Bulk: 0.", "Tension on the repair: nil. Bulk nil."])
def test_a_nought_for_tension_and_bulk(zero: str) -> None:
    note = f"Ring FDP repaired with 3-0 Ethibond. {zero}"
    assert told(note, "tension", "bulk") == {"ring FDP": {"tension": "none", "bulk": "none"}}
