"""At the wrist a note speaks of kinds of flexors, and of each tendon named so far."""

import pytest
from reader_sentences import each

WRIST = "Left wrist. FCU, PL, FDS to index and ring and FDP to middle completely divided. "


@pytest.mark.parametrize(
    "text",
    [
        "The finger flexors were repaired with four strands of 4-0 Prolene, the wrist flexors with two.",
        "Finger flexors: four-strand 3-0 Ethibond. Wrist flexors: two-strand 3-0 Ethibond.",
        "The wrist flexors received two strands of 3-0 Ethibond. The finger flexors received four strands of it.",
    ],
)
def test_finger_flexors_and_wrist_flexors_have_cores_of_their_own(text: str) -> None:
    assert each(WRIST + text, "strands") == {
        "FCU": 2,
        "PL": 2,
        "index FDS": 4,
        "ring FDS": 4,
        "middle FDP": 4,
    }


def test_a_whole_finger_flexor_gets_no_core() -> None:
    text = "Right wrist. FCR, FDS to ring and small divided. FDS to middle intact. The finger flexors got four strands."
    assert set(each(text, "strands")) == {"ring FDS", "small FDS"}


@pytest.mark.parametrize(
    "text",
    [
        "FCU was divided. All four FDS had been cut through. FDP to index cut through. Each tendon got two strands.",
        "Divided completely: FCU; all four FDS; profundus to index. Each tendon got a two-strand core of 3-0 Ethibond.",
    ],
)
def test_each_tendon_of_a_wrist_is_every_one_named_so_far(text: str) -> None:
    fingers = [f"{digit} FDS" for digit in ("index", "middle", "ring", "small")]
    assert each("Left wrist, zone V. " + text, "strands") == dict.fromkeys(["FCU", *fingers, "index FDP"], 2)


def test_a_core_told_before_is_not_told_again() -> None:
    text = (
        "Left wrist. FCR was divided and repaired with two strands of 2-0 Ethibond. FDP index and ring were divided. "
    )
    assert each(text + "Each tendon received four strands of 3-0 Ethibond.", "strands") == {
        "FCR": 2,
        "index FDP": 4,
        "ring FDP": 4,
    }


@pytest.mark.parametrize(
    "row", ["middle and small had been", "index, middle and small were", "ring and little had all been"]
)
def test_the_last_of_a_row_of_fingers_is_one_of_them(row: str) -> None:
    found = each(f"Left wrist explored. FDS to {row} cut through completely.", "extent")
    assert "small FDS" in found


@pytest.mark.parametrize("text", ["FDPs all ok, FPL ok.", "The profundi were all intact."])
def test_all_behind_a_plural_is_every_finger(text: str) -> None:
    found = each(f"Left wrist. PL and FCR cut through. {text}", "extent")
    assert {d for d, v in found.items() if d.endswith("FDP") and v == "intact"} == {
        f"{digit} FDP" for digit in ("index", "middle", "ring", "small")
    }


@pytest.mark.parametrize("rest", ["index and little ok", "the index and little intact"])
def test_the_other_fingers_behind_a_stop_have_the_same_tendon(rest: str) -> None:
    assert each(f"Left wrist. FDS ring and middle cut through; {rest}.", "extent") == {
        "ring FDS": "complete",
        "middle FDS": "complete",
        "index FDS": "intact",
        "small FDS": "intact",
    }


def test_the_nerves_of_other_fingers_behind_a_stop_are_no_tendons() -> None:
    found = each("Left hand. FDS ring cut through; both digital nerves of the index intact; middle intact.", "extent")
    assert found == {"ring FDS": "complete"}


@pytest.mark.parametrize(
    "words",
    [
        "All severed finger flexors, deep and superficial, were sewn with 3-0 Ethibond in modified Kessler fashion.",
        "Each of the divided finger flexors got a two-strand modified Kessler of 3-0 Ethibond.",
    ],
)
def test_the_cut_ones_of_a_kind_are_not_the_whole_kind(words: str) -> None:
    note = "Left wrist. FCR severed.\nFDP ring and small severed; FDP index and middle spared.\n" + words
    assert each(note, "size") == {"ring FDP": "3-0", "small FDP": "3-0"}
    assert each(note, "extent")["index FDP"] == "intact"
