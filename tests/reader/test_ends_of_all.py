"""Ends told of all cut tendons at once, and of the one that is left out."""

import pytest
from reader_sentences import each, told

CUT = "Findings: Index FDP and FDS divided. Ring FDP divided, FDS intact. Ulnar digital nerve of the ring divided. "


@pytest.mark.parametrize(
    "note",
    [
        "Ends everywhere sharp.",
        "Tendon ends were neat throughout.",
        "Every edge is sharp and neat.",
        "A11 ends are clean.",
        "Tendon ends clean, the lot.",
    ],
)
def test_ends_of_all(note: str) -> None:
    assert each(CUT + note, "ends") == dict.fromkeys(["index FDP", "index FDS", "ring FDP"], "clean")


@pytest.mark.parametrize(
    "note",
    [
        "The tendon ends were clean throughout with the exception of the ring finger profundus, the ends of which were "
        "frayed.",
        "All stumps were sharp except that of the ring profundus, whose end was ragged.",
        "The stumps were sharp in every tendon but the ring FDP, the ends of which were ragged.",
    ],
)
def test_the_one_left_out_has_ends_of_its_own(note: str) -> None:
    assert each(CUT + note, "ends") == {"index FDP": "clean", "index FDS": "clean", "ring FDP": "ragged"}


@pytest.mark.parametrize("note", ["FDS + FDP ends clean.", "The FDP and FDS ends were sharp."])
def test_ends_of_kinds_behind_words_on_another_tendon(note: str) -> None:
    cut = "Findings: Index FDP and FDS divided. Ring FDP divided. FPL divided, ragged. " + note
    sharp = dict.fromkeys(["index FDP", "index FDS", "ring FDP"], "clean")
    assert each(cut, "ends") == {**sharp, "thumb FPL": "ragged"}


@pytest.mark.parametrize(
    ("fate", "found"),
    [("Ring FDP: two strands of 4-0 Prolene, modified Kessler.", "clean"), ("Ring FDP: not sutured.", None)],
)
def test_a_cut_in_part_has_ends_where_it_was_sewn(fate: str, found: str | None) -> None:
    note = f"Index FDP divided. Ring FDP 60% cut. All ends clean. Index FDP: four strands of 3-0 Prolene. {fate}"
    assert told(note, "ends").get("ring FDP", {}).get("ends") == found
    assert told(note, "ends")["index FDP"] == {"ends": "clean"}


@pytest.mark.parametrize(
    "note",
    [
        "SMALL\nFlexor tendons and both digital nerves intact.\n",
        "Small finger: flexors, nerves and vessels uninjured.",
        "Small finger: both flexor tendons and the ulnar nerve intact.",
    ],
)
def test_flexors_of_a_finger_told_with_its_nerves(note: str) -> None:
    assert each("Ring FDP cut through.\n" + note, "extent") == {
        "ring FDP": "complete",
        "small FDP": "intact",
        "small FDS": "intact",
    }


@pytest.mark.parametrize(
    "note",
    [
        "Small finger: FDP cut. Other flexor tendons intact.",
        "Small finger: flexor tendon sheath intact.",
        "Small finger: FDP cut. Flexor tendons and nerves intact distally.",
    ],
)
def test_flexors_not_told_intact(note: str) -> None:
    assert "intact" not in each("Ring FDP cut through.\n" + note, "extent").values()


def test_flexors_but_for_one() -> None:
    assert each("Ring finger explored. Flexor tendons intact except FDP.", "extent") == {"ring FDS": "intact"}
