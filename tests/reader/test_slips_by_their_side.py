"""Slips named by their side alone, behind 'both slips', or as the one and the other."""

import pytest
from reader_sentences import told

SEWN = "The FDP of the ring finger was completely divided and repaired. "


@pytest.mark.parametrize(
    "text",
    [
        "Of the two superficialis slips only the radial was repaired, with 5-0 Prolene; the ulnar was excised.",
        "One slip of FDS, the ulnar, was excised to make room and the other was repaired with 5-0 Prolene.",
        "One slip of FDS (the ulnar one) was excised and the other was repaired with 5-0 Prolene.",
        "We repaired the radial FDS slip with 5-0 Prolene and excised the ulnar.",
        "The radial slip of the FDS was repaired with 5-0 Prolene, while its ulnar slip was resected.",
    ],
)
def test_each_slip_has_its_own_fate(text: str) -> None:
    found = told(SEWN + text, "treatment", "size")
    assert found["ring FDS radial"] == {"treatment": "repaired", "size": "5-0"}
    assert found["ring FDS ulnar"] == {"treatment": "excised"}
    assert "ring FDS" not in found


@pytest.mark.parametrize(
    ("text", "fate"),
    [
        ("FDS: both slips cut. Ulnar sutured with 5-0 nylon, radial left alone.", "left"),
        ("Both slips of FDS were cut. The ulnar was sewn with 5-0 nylon and the radial trimmed.", "trimmed"),
    ],
)
def test_sides_behind_both_slips(text: str, fate: str) -> None:
    found = told(SEWN + text, "treatment")
    assert found["ring FDS ulnar"] == {"treatment": "repaired"}
    assert found["ring FDS radial"] == {"treatment": fate}


def test_a_nerve_told_behind_both_slips_is_no_slip() -> None:
    found = told(SEWN + "Both slips of FDS were cut. The radial digital nerve was repaired, the ulnar was intact.")
    assert "ring FDS radial" not in found
    assert "ring FDS ulnar" not in found


def test_an_edge_of_its_own_is_of_the_tendon() -> None:
    found = told("Ring finger FDS partially cut, 30 %: its frayed edge was trimmed.", "treatment")
    assert found == {"ring FDS": {"treatment": "trimmed"}}


@pytest.mark.parametrize(
    "text",
    [
        "FDS was cut as well. I took out the ulnar one and joined the radial one with a 5-0 PDS simple stitch.",
        "Its FDS is two cotton threads; I joined the radial one with 5-0 PDS and took out the ulnar one.",
    ],
)
def test_slips_told_as_ones(text: str) -> None:
    found = told("Small finger. FDP cut and repaired. " + text, "treatment", "size")
    assert found["small FDS radial"] == {"treatment": "repaired", "size": "5-0"}
    assert found["small FDS ulnar"] == {"treatment": "excised"}
    assert "small FDS" not in found


def test_nerves_told_as_ones_are_no_slips() -> None:
    text = "Ring finger. FDS cut. Digital nerves: the ulnar one was cut, the radial one was whole."
    assert not any(name.endswith(("radial", "ulnar")) for name in told(text))
