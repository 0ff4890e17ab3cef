"""Anchors told without a verb, whatever leads to the bone: 'FDP -> anchor to P3', 'Mitek on the distal phalanx'."""

import pytest
from reader_sentences import told

_FORMS = (
    "{n} → Mitek micro anchor {p} {b}, thread 3/0",
    "{n} -> anchor {p} {b}, 3-0 Fiberwire",
    "{n}: Mitek anchor {p} {b}",
    "{n} = micro anchor {p} {b}",
    "{n} with a mini anchor {p} {b}, 2-0 Fiberwire",
    "{n}: micro Corkscrew {p} {b}",
)
_NAMES = (("FDP", "index FDP", "P3"), ("FDS ulnar slip", "index FDS ulnar", "P2"), ("FDP", "index FDP", "base of P3"))


@pytest.mark.parametrize("name", _NAMES)
@pytest.mark.parametrize("form", _FORMS)
def test_an_anchor_to_bone(form: str, name: tuple[str, str, str]) -> None:
    missed = []
    for led in ("to", "in", "into", "at", "on"):
        note = "Left index finger. FDP cut through, FDS partly off.\n" + form.format(n=name[0], p=led, b=name[2])
        if told(note, "treatment", "stitch").get(name[1]) != {"treatment": "reinserted", "stitch": "anchor"}:
            missed.append(note)
    assert not missed


@pytest.mark.parametrize(
    "words", ["Anchors were at hand.", "He was cut by a corkscrew.", "No anchor was set in the bone."]
)
def test_no_anchor_in_bone(words: str) -> None:
    assert "treatment" not in told("Left index finger. FDP cut through. " + words).get("index FDP", {})


@pytest.mark.parametrize(
    "words",
    [
        "FDP sewn with a six-strand Lim-Tsai, anchored 10 mm from the cut face on either side.",
        "FDP repaired with a cruciate, its loops anchored about 8 mm from the ends.",
    ],
)
def test_loops_anchored_in_the_tendon(words: str) -> None:
    assert told("Left index finger. " + words, "treatment") == {"index FDP": {"treatment": "repaired"}}


def test_a_tendon_anchored_to_the_bone() -> None:
    words = "FDP anchored to the distal phalanx 5 mm from the joint with a Mitek."
    assert told("Left index finger. " + words, "treatment") == {"index FDP": {"treatment": "reinserted"}}
