"""Crossings of how a core is told with how its edge suture is told, left out, or another thing sewn beside it."""

import itertools

import pytest
from reader_sentences import each, told

_LEAD = "Left ring finger, zone 2. FDP completely divided."
_SUTURE = ("strands", "stitch", "size", "material", "purchase_mm", "knot")
_EDGE = ("peripheral", "peripheral_pattern", "peripheral_size", "peripheral_material")
_CORE = {"strands": 6, "stitch": "becker", "size": "3-0", "material": "braided polyester"}
_CORES: list[tuple[str, dict[str, object]]] = [
    ("Core: 6-strand Becker, 3-0 Ethibond, 10 mm bites.", {"purchase_mm": (10, 10)}),
    ("The ends were brought together with a six-strand Becker of 3/0 Ethibond.", {}),
    ("I placed a 6S Becker using 3-0 Ethibond.", {}),
    ("FDP -> Becker x6 strands, Ethibond 000.", {}),
    (
        "With 3-0 Ethibond a Becker was made, six strands between the ends, knots left on the surface.",
        {"knot": "external"},
    ),
    ("A Becker of six 3-0 Ethibond strands, knots buried.", {"knot": "buried"}),
    (
        "Becker; strands: six; thread: Ethibond three-oh; bite (mm): 8; knots: outside.",
        {"purchase_mm": (8, 8), "knot": "external"},
    ),
    ("A Becker with three pairs of strands of 3-0 Ethibond was laid.", {}),
]
_RUN = {
    "peripheral": "present",
    "peripheral_pattern": "running",
    "peripheral_size": "6-0",
    "peripheral_material": "polypropylene",
}
_NONE = {"peripheral": "absent"}
_EDGES: list[tuple[str, dict[str, str]]] = [
    ("The epitendinous layer was a running 6-0 Prolene.", _RUN),
    ("On top of that a running peripheral suture, 6-0 Prolene.", _RUN),
    ("A running 6-0 Prolene circumferential stitch completed it.", _RUN),
    ("Peripheral suture absent.", _NONE),
    ("Circumferential suture (-).", _NONE),
    ("The epitendinous suture was spared.", _NONE),
    ("A peripheral suture was not needed.", _NONE),
    ("I refrained from an epitendinous suture.", _NONE),
    ("I gave up on a peripheral suture.", _NONE),
    ("I felt that a peripheral suture would add only bulk and left it out.", _NONE),
    ("An epitendinous suture would have been desirable but there was no room.", _NONE),
    ("An epitendinous suture was tried with 6-0 Prolene but abandoned.", _NONE),
    ("A running 6-0 Prolene was meant to follow but was not placed.", _NONE),
    ("I usually add an epitendinous suture, here I did not.", _NONE),
    ("The sheath was closed with a running 6-0 Prolene.", {}),
    ("Sheath: running 6-0 Prolene.", {}),
    ("A2: running 6-0 Prolene.", {}),
    ("A4 with a running 6-0 PDS.", {}),
    ("Running 5-0 nylon to the fascia.", {}),
    ("I then closed the flap with a running 5-0 nylon.", {}),
    ("A 3-0 nylon was passed through the nail for the rubber band.", {}),
    ("The finger was held with a 2-0 Prolene traction suture through the nail.", {}),
]


@pytest.mark.parametrize(("core", "more"), _CORES)
def test_core_beside_every_edge(core: str, more: dict[str, object]) -> None:
    missed = []
    for edge, expected in _EDGES:
        found = told(f"{_LEAD} {core} {edge}", *_SUTURE, *_EDGE)
        if found != {"ring FDP": {**_CORE, **more, **expected}}:
            missed.append((edge, found))
    assert not missed


@pytest.mark.parametrize(
    "thing", ["the sheath", "the tendon sheath", "the A2 pulley", "the skin", "the ulnar digital nerve", "the flap"]
)
def test_things_sewn_in_the_sentence_of_the_core(thing: str) -> None:
    missed = []
    verbs, patterns = ("closed", "sewn", "repaired"), ("a running", "an interrupted", "a continuous")
    frames = (
        "A {core} was placed and {thing} was {verb} with {pattern} 6-0 nylon.",
        "A {core} was placed, {thing} {verb} with {pattern} 6-0 nylon.",
        "A {core} was placed before {thing} was {verb} with {pattern} 6-0 nylon.",
        "After {thing} was {verb} with {pattern} 6-0 nylon, a {core} was placed.",
    )
    for frame, verb, pattern in itertools.product(frames, verbs, patterns):
        core = "four-strand cruciate of 3-0 PDS"
        note = f"{_LEAD} {frame.format(core=core, thing=thing, verb=verb, pattern=pattern)}"
        expected = {"strands": 4, "stitch": "cruciate", "size": "3-0", "material": "polydioxanone"}
        if told(note, *_SUTURE, *_EDGE) != {"ring FDP": expected}:
            missed.append(note)
    assert not missed


@pytest.mark.parametrize(
    "told_of_core",
    [
        "A four-strand core of 3-0 PDS was placed through a window in the sheath, with a running 6-0 Prolene.",
        "Four strands of 3-0 PDS were placed, the sheath was closed, and a running 6-0 Prolene added round the tendon.",
        "Four-strand core of 3-0 PDS distal to A2, running 6-0 Prolene.",
        "Four strands of 3-0 PDS and a running epitendinous 6-0 Prolene were placed and the sheath sewn with 4-0.",
    ],
)
def test_edge_sutures_near_another_thing(told_of_core: str) -> None:
    assert told(f"{_LEAD} {told_of_core}", "peripheral", "peripheral_size") == {
        "ring FDP": {"peripheral": "present", "peripheral_size": "6-0"}
    }


@pytest.mark.parametrize(
    "sentence",
    [
        "I usually skip the epitendinous suture, here I did not.",
        "An epitendinous suture usually gaps but not here.",
        "I usually add an epitendinous suture, and I did so here.",
        "The peripheral suture was reserved for the other hand.",
        "An edge suture would add a third of strength.",
    ],
)
def test_edge_sutures_left_open(sentence: str) -> None:
    assert each(f"{_LEAD} Four-strand core. {sentence}", "peripheral") == {}


@pytest.mark.parametrize(
    ("sentence", "strands"),
    [
        ("Savage of 2-0 Ethibond, 6 strands planned, 4 achieved.", 4),
        ("Adelaide: four strands passed, two held.", 2),
        ("Of the six strands of the Kirchmayr two pulled through, leaving four.", 4),
        ("Two strands held, six were passed.", 2),
        ("Core of six strands, all six held.", 6),
        ("A cruciate with 4 strands of 3-0 held.", 4),
        ("Four strands remained after two had cut out.", 4),
        ("Two pairs of strands crossed the repair.", 4),
        ("A pair of strands crossed the repair.", 2),
        ("4x 3-0 Ethibond strands laid as a Bunnell.", 4),
        ("Six 4-0 nylon core strands cross the repair.", 6),
        ("A two-strand Kirchmayr was supplemented by a further four strands of the same suture, six in all.", 6),
        ("A four-strand core was placed; a further four were considered.", 4),
    ],
)
def test_counts_that_hold(sentence: str, strands: int) -> None:
    assert each(f"{_LEAD} {sentence}", "strands") == {"ring FDP": strands}


@pytest.mark.parametrize(
    "sentence",
    [
        "A four-strand Becker of 3-0 nylon was placed after a two-strand Tajima of 4-0 Ticron had cut out.",
        "The core is a four-strand Becker of 3-0 nylon, the two-strand Tajima of the first attempt having snapped.",
        "There was no room for a six-strand Savage of 4-0 Ticron, so a four-strand Becker of 3-0 nylon was placed.",
        "A four-strand Becker of 3-0 nylon was preferred to a six-strand Savage of 4-0 Ticron.",
        "A four-strand Becker of 3-0 nylon was chosen over a two-strand Kessler of 4-0 Ticron.",
    ],
)
def test_cores_that_did_not_stay(sentence: str) -> None:
    assert told(f"{_LEAD} {sentence}", *_SUTURE) == {
        "ring FDP": {"strands": 4, "stitch": "becker", "size": "3-0", "material": "nylon"}
    }


def test_cores_that_stayed() -> None:
    note = f"{_LEAD} A 4-strand Becker of 3-0 was placed after the glass had cut the sheath. There was room for it."
    assert each(note, "strands") == {"ring FDP": 4}


@pytest.mark.parametrize(
    ("sentence", "stitch"),
    [
        ("FDP fixed to P3 with 3-0 Prolene over the nail.", "pull-out"),
        ("The 3-0 Prolene was pulled out through the nail and tied over it, with traction on the finger.", "pull-out"),
        ("A 3-0 nylon was passed through the nail for Kleinert traction.", None),
        ("A hook was sewn to the nail with 3-0 nylon.", None),
        ("A hole was made through the nail for the elastic band.", None),
        ("A 3-0 nylon suture was placed at the fingertip for rubber band traction.", None),
    ],
)
def test_threads_through_the_nail(sentence: str, stitch: str | None) -> None:
    found = told(f"{_LEAD} {sentence}", "stitch", "size").get("ring FDP", {})
    assert found == ({"stitch": stitch, "size": "3-0"} if stitch else {})
