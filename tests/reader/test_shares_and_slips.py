"""Shares in every order, partial releases, slips of which one was left: nothing is read as more than was said."""

import itertools

import pytest
from reader_sentences import each, told

_NAMES = ("FDP", "the profundus", "flexor digitorum profundus", "the deep flexor")
_SHARES = {
    30: (
        "{} 30% cut.",
        "{} had a 30% laceration.",
        "30% cut of {}.",
        "{}: 30 % partial",
        "{} cut (30%).",
        "{} ~30% cut",
    ),
    50: ("{} half cut.", "half of {} was divided", "{} cut through half its width.", "{} halved", "{} 50/50 cut"),
    33: ("{} cut a third through.", "one third of {} was cut", "{} cut through 1/3", "a third of {} divided"),
}


@pytest.mark.parametrize(("frame", "share"), [(frame, share) for share, frames in _SHARES.items() for frame in frames])
def test_shares_in_every_order(frame: str, share: int) -> None:
    for name in _NAMES:
        note = "Left ring finger, zone 2. " + frame.format(name)
        assert told(note, "extent", "extent_percent") == {"ring FDP": {"extent": "partial", "extent_percent": share}}


@pytest.mark.parametrize("frame", ["{} cut in part.", "{} severed in part.", "{} cut part way."])
def test_cut_in_part(frame: str) -> None:
    assert each("Left ring finger. " + frame.format("FDP"), "extent") == {"ring FDP": "partial"}


def test_a_whole_cut_stays_whole() -> None:
    assert each("Left ring finger. The other half of the FDP was divided too: complete.", "extent") != {
        "ring FDP": "intact"
    }
    assert each("Left ring finger. FDP divided, half of the FDS divided.", "extent") == {
        "ring FDP": "complete",
        "ring FDS": "partial",
    }


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Partial release of the A2 pulley.", "vented"),
        ("A2: partial release.", "vented"),
        ("Release of the A2 pulley.", "released"),
        ("Complete release of the A2 pulley.", "released"),
    ],
)
def test_partial_release(note: str, expected: str) -> None:
    assert each("Left ring finger. " + note, "finding", group="pulleys") == {"ring A2": expected}


@pytest.mark.parametrize(
    ("words", "order"),
    list(
        itertools.product(
            ("repaired with 4-0 Prolene", "sutured, 4-0 Prolene"), (("radial", "ulnar"), ("ulnar", "radial"))
        )
    ),
)
@pytest.mark.parametrize("joiner", [", ", " and "])
def test_one_slip_left(joiner: str, words: str, order: tuple[str, str]) -> None:
    left, sewn = order
    note = f"Left ring finger. FDS completely cut. FDS {left} slip left{joiner}{sewn} slip {words}."
    found = told(note, "treatment", "size")
    assert found[f"ring FDS {left}"] == {"treatment": "left"}
    assert found[f"ring FDS {sewn}"] == {"treatment": "repaired", "size": "4-0"}
    assert "ring FDS" not in found
