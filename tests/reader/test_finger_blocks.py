"""One block a finger: every kind of heading over every kind of block, so that no fact wanders to the other finger."""

import itertools

import pytest
from reader_sentences import each, told

_HEADS = (
    "{} FINGER:",
    "{} finger",
    "{}:",
    "1. {} finger",
    "--- {} ---",
    "(a) {} finger:",
    "{} finger.",
    "* {}",
    "Finger no: {}",
    "[{}]",
)
_FIRST = (
    "FDP and FDS completely divided. FDP repaired with a 4-strand cruciate of 3-0 Ethibond and a running 6-0 Prolene. "
    "FDS left. No gap, free glide. A2 vented.",
    "FDP: complete\nFDS: complete\nCore FDP: 4-strand cruciate 3-0 Ethibond\nPeripheral: running 6-0 Prolene\n"
    "FDS: left\nGap: none\nGlide: free\nA2: vented",
    "Both flexors were completely divided. The profundus was repaired with a four-strand cruciate of 3-0 Ethibond, "
    "then a running epitendinous 6-0 Prolene. The superficialis was left. There was no gap and it glided freely. The "
    "A2 pulley was vented.",
    "- FDP/FDS completely cut\n- FDP: 4-strand cruciate, 3-0 Ethibond + running 6-0 Prolene\n- FDS: not repaired\n"
    "- no gap, runs freely\n- A2 vented",
)
_SECOND = (
    "FDP completely divided, FDS intact. FDP repaired with a 6-strand Savage of 4-0 Prolene, no peripheral suture. "
    "1 mm gap, catches at A4. A2 intact.",
    "FDP: complete\nFDS: intact\nCore FDP: 6-strand Savage 4-0 Prolene\nPeripheral: none\nGap: 1 mm\nGlide: catches\n"
    "A2: intact",
    "The profundus was completely divided and the superficialis was intact. It was repaired with a six-strand Savage "
    "of 4-0 Prolene without a peripheral suture. There was a 1 mm gap and it caught at A4. A2 was intact.",
    "- FDP completely cut, FDS ok\n- FDP: 6-strand Savage, 4-0 Prolene, no epitendinous\n- gap 1 mm; catches\n"
    "- A2 intact",
)
_CLOSING = ("", "\nSkin closed with 5-0 nylon. Dorsal splint.")
_OF_FIRST = {"strands": 4, "size": "3-0", "peripheral": "present", "gap": "none", "glide": "free"}
_OF_SECOND = {"strands": 6, "size": "4-0", "peripheral": "absent", "gap": "seen", "glide": "catching"}


@pytest.mark.parametrize("head", _HEADS)
@pytest.mark.parametrize("kind", range(len(_FIRST)))
def test_blocks_of_two_fingers(head: str, kind: int) -> None:
    missed = []
    blocks = ((_FIRST[kind], _OF_FIRST, "vented"), (_SECOND[kind], _OF_SECOND, "intact"))
    for order, closing, gap in itertools.product((blocks, blocks[::-1]), _CLOSING, ("\n", "\n\n")):
        (first, own, pulley), (second, other, last) = order
        note = f"Left hand, zone 2.\n\n{head.format('Index')}\n{first}{gap}{head.format('Ring')}\n{second}{closing}"
        found = told(note, *_OF_FIRST)
        deep = {name: facts for name, facts in found.items() if name.endswith("FDP")}
        pulleys = each(note, "finding", group="pulleys")
        kept = {name: value for name, value in pulleys.items() if name.endswith("A2")}
        if deep != {"index FDP": own, "ring FDP": other} or kept != {"index A2": pulley, "ring A2": last}:
            missed.append((note, deep, kept))
    assert not missed


@pytest.mark.parametrize(
    "note",
    [
        "Left hand. Finger: ring\nThe FDP was completely divided.",
        "Left hand. Ring\nHer FDP had been cut all the way through.",
    ],
)
def test_ring_at_the_end_of_a_line(note: str) -> None:
    assert each(note, "extent") == {"ring FDP": "complete"}


def test_ring_as_a_deed() -> None:
    assert each("Left middle finger FDP completely divided. Any trouble, ring the ward.", "extent") == {
        "middle FDP": "complete"
    }


@pytest.mark.parametrize("closing", ["Skin closed with 5-0 nylon.", "Wound washed.", "Skin: 5-0 nylon"])
def test_a_state_at_the_end_of_a_line(closing: str) -> None:
    assert each(f"Left ring finger. FDP cut.\nA2 intact\n{closing}", "finding", group="pulleys") == {
        "ring A2": "intact"
    }
