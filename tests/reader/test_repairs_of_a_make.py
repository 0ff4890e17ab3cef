"""Repairs told by how they were sewn, 'the two Beckers', 'the eight-strand repairs': what is said is of no other.

Crossed: three ways to tell who was sewn how, three stitches, and what is told of those of one make.
"""

import pytest
from reader_sentences import each

_BODIES = {
    "by kinds": (
        "The index and middle profundi were repaired with a {n}-strand {s} of 3-0 Ethibond, the four superficialis "
        "tendons with a two-strand Kessler of 4-0 Ethibond.",
        {"index FDP", "middle FDP"},
        {"index FDS", "middle FDS", "ring FDS", "small FDS"},
    ),
    "finger by finger": (
        "Index: FDP cut, half, one figure-of-eight of 4-0 nylon. Long: FDP cut through, {n}-strand {s} of 3-0 "
        "Mersilene. FDS horizontal mattress of 4-0 Mersilene. Ring: FDP cut through, {n}-strand {s} of 3-0 Mersilene.",
        {"middle FDP", "ring FDP"},
        {"index FDP", "middle FDS"},
    ),
    "in short": (
        "FDP ring and small: {n}-strand {s} 4-0 Prolene. FDS ring and small: Kessler, 2 strands, 4-0 Prolene.",
        {"ring FDP", "small FDP"},
        {"ring FDS", "small FDS"},
    ),
}
_MAKES = (("four", "Strickland"), ("six", "Savage"), ("eight", "Becker"))
_EDGES = (
    "None of these received an epitendinous suture except the two {n}-strand repairs, in which 5-0 nylon was run.",
    "No epitendinous suture was added except in the two {n}-strand repairs, which had 5-0 nylon.",
    "An epitendinous suture of 5-0 nylon was added to the two {s} repairs only.",
    "Only the two {n}-strand repairs received an epitendinous suture of 5-0 nylon.",
    "Only the {s} repairs were given an epitendinous 5-0 nylon.",
    "None had a peripheral suture save the {s} repairs (5-0 nylon, running).",
    "Epitendinous suture, 5-0 nylon, in the two {s} repairs, none in the others.",
    "No circumferential suture apart from the two {n}-strand repairs, where 5-0 nylon was used.",
    "The {n}-strand repairs alone were finished with a running epitendinous suture of 5-0 nylon.",
    "Epitendinous suture omitted in all but the two {n}-strand repairs (5-0 nylon running).",
    "None of the others received an epitendinous suture; the two {n}-strand repairs had 5-0 nylon round the edge.",
)
_TOLD = (
    ("No gap in the two {s} repairs.", "gap", "none"),
    ("On traction the {n}-strand repairs did not gap.", "gap", "none"),
    ("Neither of the {s} repairs gapped.", "gap", "none"),
    ("Only the two {s} repairs were tested by traction; they did not gap.", "gap", "none"),
    ("The {s} repairs glided freely.", "glide", "free"),
    ("The {n}-strand repairs caught at A2.", "glide", "catching"),
    ("The {s} repairs were bulky.", "bulk", "present"),
    ("There was no tension on the two {s} repairs.", "tension", "none"),
    ("Bites of 12 mm either side in the two {s} repairs.", "purchase_mm", (12, 12)),
    ("The purchase was 12 mm in the {n}-strand repairs.", "purchase_mm", (12, 12)),
    ("The knots of the {s} repairs were buried.", "knot", "buried"),
    ("The {s} repairs were locked.", "hold", "locking"),
)


def _note(body: str, make: tuple[str, str], words: str) -> str:
    return f"Left hand.\n{body}\n\n{words}".format(n=make[0], s=make[1])


@pytest.mark.parametrize("make", _MAKES)
@pytest.mark.parametrize("body", _BODIES)
def test_edge_sutures_of_those_alone(body: str, make: tuple[str, str]) -> None:
    text, own, others = _BODIES[body]
    wanted = dict.fromkeys(own, "present") | dict.fromkeys(others, "absent")
    notes = [_note(text, make, words) for words in _EDGES]
    assert [note for note in notes if each(note, "peripheral") != wanted] == []


@pytest.mark.parametrize("make", _MAKES)
@pytest.mark.parametrize("body", _BODIES)
def test_what_is_told_of_those_is_of_no_other(body: str, make: tuple[str, str]) -> None:
    text, own, _ = _BODIES[body]
    notes = [(_note(text, make, words), field, dict.fromkeys(own, value)) for words, field, value in _TOLD]
    assert [note for note, field, wanted in notes if each(note, field) != wanted] == []


def test_none_but_those() -> None:
    text, _, others = _BODIES["in short"]
    note = _note(text, _MAKES[0], "No gap except in the two {s} repairs, where 1 mm was seen.")
    assert each(note, "gap") == dict.fromkeys(others, "none")


def test_all_repairs_are_of_every_make() -> None:
    text, own, others = _BODIES["in short"]
    assert set(each(_note(text, _MAKES[0], "No gap in any of the repairs."), "gap")) == own | others
