"""What became of each pulley where a sentence shares, denies or limits it."""

import pytest
from reader_sentences import Shown, each, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring and small fingers, FDP of both completely divided. In neither finger had the A4 "
            "pulley been injured.",
            {"ring A4": "intact", "small A4": "intact"},
        ),
        (
            "Left middle finger, FDP completely divided. Neither A2 nor A4 was opened.",
            {"middle A2": "intact", "middle A4": "intact"},
        ),
        (
            "Left middle finger, FDP completely divided. A2 and A4: neither of these was vented.",
            {"middle A2": "intact", "middle A4": "intact"},
        ),
    ],
)
def test_neither_was_opened(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["finding"] for entry, facts in told(note, "finding", group="pulleys").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left middle finger, FDP completely divided. Neither A2 nor A4 was left intact.",
            {},
        ),
        (
            "Left middle finger, FDP completely divided. Neither of the pulleys A2 and A4 remained whole.",
            {},
        ),
        (
            "Left middle finger, FDP completely divided. Neither A1 nor A2 could be preserved.",
            {},
        ),
    ],
)
def test_neither_was_left_whole(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["finding"] for entry, facts in told(note, "finding", group="pulleys").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index and middle fingers, FDP of both completely divided. A2 was left intact in the index "
            "finger, but in the middle finger it was excised.",
            {"index A2": "intact", "middle A2": "excised"},
        ),
        (
            "Index and middle fingers, FDP of both completely divided. A4 was excised in the index finger "
            "and intact in the middle finger.",
            {"index A4": "excised", "middle A4": "intact"},
        ),
    ],
)
def test_kept_in_one_finger_divided_in_the_other(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["finding"] for entry, facts in told(note, "finding", group="pulleys").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Middle and ring fingers. FDP of both completely divided. A2 vented 5 mm distally: ring.",
            {"ring A2": {"finding": "vented", "extent_mm": 5, "part": "distal"}},
        ),
        (
            "Index and small fingers. FDP of both completely divided. A4 excised: index.",
            {"index A4": {"finding": "excised"}},
        ),
    ],
)
def test_the_finger_behind_a_colon(note: str, expected: Shown) -> None:
    assert told(note, group="pulleys") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index and middle fingers. FDP of both completely divided. Index A2 vented, middle A2 intact.",
            {"index A2": {"finding": "vented"}, "middle A2": {"finding": "intact"}},
        ),
        (
            "Middle and ring fingers. FDP of both completely divided. Ring A4 intact, middle A4 vented 4 mm.",
            {"middle A4": {"finding": "vented", "extent_mm": 4}, "ring A4": {"finding": "intact"}},
        ),
    ],
)
def test_the_middle_finger_is_no_part(note: str, expected: Shown) -> None:
    assert told(note, group="pulleys") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left middle finger, FDP completely divided. A2 had been laid open over its distal part by the glass.",
            {"middle A2": "injured"},
        ),
        (
            "Left middle finger, FDP completely divided. A4 was split along most of its length by the chisel.",
            {"middle A4": "injured"},
        ),
    ],
)
def test_cut_by_the_accident(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["finding"] for entry, facts in told(note, "finding", group="pulleys").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left middle finger, FDP completely divided. A2 had been torn by the glass. The rest of it was divided.",
            {"middle A2": "released"},
        ),
        (
            "Left middle finger, FDP completely divided. A4 was partly torn; the remainder was divided.",
            {"middle A4": "released"},
        ),
        (
            "Left middle finger, FDP completely divided. The remaining A2 was divided.",
            {"middle A2": "released"},
        ),
        (
            "Left middle finger, FDP completely divided. A2 had been opened by the saw and the remainder was incised.",
            {"middle A2": "released"},
        ),
    ],
)
def test_the_remainder_divided_too(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["finding"] for entry, facts in told(note, "finding", group="pulleys").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left middle finger, FDP completely divided. Pulleys: A2 good, A4 good.",
            {"middle A2": "intact", "middle A4": "intact"},
        ),
        (
            "Left middle finger, FDP completely divided. A2 and A4 were in order.",
            {"middle A2": "intact", "middle A4": "intact"},
        ),
        (
            "Left middle finger, FDP completely divided. A2 was exposed in order to see the stump.",
            {},
        ),
    ],
)
def test_good_pulleys_and_pulleys_in_order(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["finding"] for entry, facts in told(note, "finding", group="pulleys").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left middle finger, FDP completely divided. FDP repaired with 4-0 Prolene. A4 had been vented "
            "and was stitched shut again over the repair with 5-0 PDS.",
            {"middle A4": "repaired"},
        ),
        (
            "Left middle finger, FDP completely divided. FDP repaired with 3-0 Ethibond. A2, opened for "
            "access, was closed over the repair with 5-0 Prolene.",
            {"middle A2": "repaired"},
        ),
    ],
)
def test_closed_over_the_repair(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["finding"] for entry, facts in told(note, "finding", group="pulleys").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left middle finger, FDP completely divided. A2 was destroyed and was made anew from a slip of FDS.",
            {"middle A2": "reconstructed"},
        ),
        (
            "Left middle finger, FDP completely divided. A2 was beyond repair and was made again with palmaris.",
            {"middle A2": "reconstructed"},
        ),
        (
            "Left middle finger, FDP completely divided. A4 was made again from a slip of the FDS.",
            {"middle A4": "reconstructed"},
        ),
    ],
)
def test_made_anew(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["finding"] for entry, facts in told(note, "finding", group="pulleys").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left middle finger, FDP completely divided. A1 cleaved over its full length.",
            {"middle A1": {"finding": "released"}},
        ),
        (
            "Left middle finger, FDP completely divided. A4 was cleaved proximally for 3 mm.",
            {"middle A4": {"finding": "vented", "extent_mm": 3, "part": "proximal"}},
        ),
    ],
)
def test_cleaved(note: str, expected: Shown) -> None:
    assert told(note, group="pulleys") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left middle finger, FDP completely divided. A4 had to be removed.",
            {"middle A4": "excised"},
        ),
        (
            "Left middle finger, FDP completely divided. A3 and A4 were shredded and had to be removed.",
            {"middle A3": "excised", "middle A4": "excised"},
        ),
    ],
)
def test_a_pulley_had_to_be_removed(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["finding"] for entry, facts in told(note, "finding", group="pulleys").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left middle finger, FDP completely divided. The profundus lay frayed beside A1. This was "
            "trimmed back 3 mm.",
            {},
        ),
        (
            "Left middle finger, FDP completely divided. The stump was found under A2. It was cut back 2 mm.",
            {},
        ),
    ],
)
def test_a_pulley_as_a_landmark(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["finding"] for entry, facts in told(note, "finding", group="pulleys").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left middle finger, FDP completely divided. The tendon was drawn back under A2, which is "
            "intact. It was repaired with a four-strand cruciate of 3-0 Ethibond.",
            {"middle A2": "intact"},
        ),
        (
            "Left middle finger, FDP completely divided. The distal stump was fetched from under A4, which "
            "is intact. It was repaired with a six-strand Savage of 3-0 Ethibond.",
            {"middle A4": "intact"},
        ),
        (
            "Left middle finger, FDP completely divided. The profundus was passed back under A2, which was "
            "intact. It was repaired with a two-strand Kessler of 4-0 Prolene.",
            {"middle A2": "intact"},
        ),
    ],
)
def test_the_repair_under_a_pulley(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["finding"] for entry, facts in told(note, "finding", group="pulleys").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left hand. Ray IV and ray V: FDP completely divided. A2 IV vented, A4 V excised.",
            {"ring A2": "vented", "small A4": "excised"},
        ),
        (
            "Left hand. Ray III and ray IV: FDP completely divided. A1 III released, A1 IV intact.",
            {"middle A1": "released", "ring A1": "intact"},
        ),
        (
            "Right hand. Ray II and ray III: FDP completely divided. A4 II excised. A2 III vented.",
            {"index A4": "excised", "middle A2": "vented"},
        ),
    ],
)
def test_the_fingers_of_pulleys_by_numeral(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["finding"] for entry, facts in told(note, "finding", group="pulleys").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring and small fingers. FDP of the small finger completely divided, A2 of the ring cut through "
            "by the glass.",
            {"ring A2": "injured"},
        ),
        (
            "Index and middle fingers. FDP of the index completely divided, A4 of the middle finger torn.",
            {"middle A4": "injured"},
        ),
    ],
)
def test_the_finger_of_the_pulley(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["finding"] for entry, facts in told(note, "finding", group="pulleys").items()}
    assert found == expected


@pytest.mark.parametrize(
    "words",
    [
        "A1 pulley of the thumb released and the proximal end retrieved with a fine clip.",
        "I divided A1 and the proximal stump was brought out.",
    ],
)
def test_an_end_of_the_tendon_is_no_part_of_the_pulley(words: str) -> None:
    found = told("Left thumb. FPL completely divided. " + words, "finding", "part", group="pulleys")
    assert found == {"thumb A1": {"finding": "released"}}


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        (
            "The A2 pulley of the middle finger was vented; A4 of the same finger was left undisturbed.",
            {"middle A2": "vented", "middle A4": "intact"},
        ),
        (
            "The A2 pulley of the middle finger was vented, and both A2 and A4 of the ring were left undisturbed.",
            {"middle A2": "vented", "ring A2": "intact", "ring A4": "intact"},
        ),
    ],
)
def test_the_same_finger_does_not_mean_the_same_was_done(words: str, expected: dict[str, object]) -> None:
    assert each("Middle and ring fingers. FDP of both divided. " + words, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    "words",
    [
        "FDP -> no gap, catches on A2 edge at mid range. Accepted, A2 not touched.",
        "FDP: no gap, it caught on A2. A2 was left intact.",
    ],
)
def test_a_pulley_behind_the_finger_tendon_is_not_the_thumbs(words: str) -> None:
    note = (
        "Thumb and index finger. FPL and FDP cut and repaired with a 3-0 cruciate.\nFPL -> no gap, free run\n" + words
    )
    assert told(note, "finding", group="pulleys") == {"index A2": {"finding": "intact"}}
