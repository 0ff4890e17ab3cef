"""Travel, Landsmeer's geometry and belt friction against published figures and worked values."""

from itertools import pairwise
from math import exp, pi
from statistics import fmean

import pytest

from notereader.appraisal.geometry import arm_bowed, bowstring, friction_loss, travel, travel_bowed
from notereader.appraisal.glide import arm_sets, fist_angles, travel_sum
from notereader.appraisal.glide_tables import glide_tables

FINGERS = ("index", "middle", "ring", "small")


def test_full_range_against_the_measured_travel() -> None:
    """Human cadaver, six hands (PMC3056482): 37.9 +/- 1.5 mm of FDP from straight to full flexion.

    The published moment arms give 36 to 45 mm over a full fist; the measured travel must lie within what they give.
    """
    fists = [travel_sum(arms, fist_angles(d)) for d in FINGERS for arms, _, _ in arm_sets(d, "FDP")]
    measured = next(m for m in glide_tables().measured if m.label.startswith("full range"))
    assert (measured.mm, measured.spread) == (37.9, 1.5)
    assert min(fists) <= measured.mm <= max(fists)
    assert fmean(fists) == pytest.approx(measured.mm, rel=0.10)


@pytest.mark.parametrize(("digit", "mm"), [("index", 40.9), ("middle", 45.4), ("ring", 42.8), ("small", 36.1)])
def test_fist_by_ketchum_arms(digit: str, mm: float) -> None:
    """Ketchum 1978 arms over 90, 100 and 70 degrees; the totals were worked out by hand from the table."""
    arms, source, _ = arm_sets(digit, "FDP")[0]
    assert "Ketchum 1978" in source
    assert travel_sum(arms, {"MCP": 90, "PIP": 100, "DIP": 70}) == pytest.approx(mm, abs=0.06)


@pytest.mark.parametrize(
    ("digit", "dip", "pip", "mcp"),
    [
        ("index", 1.13, 1.71, 1.76),
        ("middle", 1.22, 1.87, 2.02),
        ("ring", 1.19, 1.82, 1.82),
        ("small", 1.05, 1.48, 1.55),
    ],
)
def test_travel_for_ten_degrees(digit: str, dip: float, pip: float, mcp: float) -> None:
    """Ketchum 1978 arms, FDP: millimetres for ten degrees at each joint, worked out by hand."""
    arms = arm_sets(digit, "FDP")[0][0]
    assert travel(arms["DIP"], 10) == pytest.approx(dip, abs=0.006)
    assert travel(arms["PIP"], 10) == pytest.approx(pip, abs=0.006)
    assert travel(arms["MCP"], 10) == pytest.approx(mcp, abs=0.006)


@pytest.mark.parametrize(("deg", "mm"), [(180 / pi, 10.0), (90, 15.71), (0, 0.0)])
def test_first_model(deg: float, mm: float) -> None:
    """E = r x angle: an arm of 10 mm over one radian moves 10 mm (definition of the radian)."""
    assert travel(10, deg) == pytest.approx(mm, abs=0.01)


@pytest.mark.parametrize(("y", "mm", "arm"), [(5, 6.2, 6.8), (10, 7.1, 8.6), (20, 9.0, 12.2)])
def test_third_model_at_sixty_degrees(y: float, mm: float, arm: float) -> None:
    """Landsmeer's third model, re-derived and checked numerically: d 5 mm at 60 degrees."""
    assert travel_bowed(5, y, 60) == pytest.approx(mm, abs=0.06)
    assert arm_bowed(5, y, 60) == pytest.approx(arm, abs=0.06)


@pytest.mark.parametrize(("y", "arm"), [(5, 7.9), (10, 10.7), (20, 16.4)])
def test_third_model_arm_at_ninety_degrees(y: float, arm: float) -> None:
    """Landsmeer's third model, re-derived and checked numerically: d 5 mm at 90 degrees."""
    assert arm_bowed(5, y, 90) == pytest.approx(arm, abs=0.06)


def test_third_model_without_distance_is_the_first() -> None:
    """With the pulley at the joint (y = 0) the third model is E = d x angle."""
    assert travel_bowed(8, 0, 75) == pytest.approx(travel(8, 75))


def test_longer_openings_give_more_bowing() -> None:
    bowed = [bowstring(mm) for mm in (0, 5, 10, 20)]
    assert bowed[0].extra_mm == pytest.approx(0, abs=1e-9)
    assert bowed[0].lost_deg == pytest.approx(0, abs=1e-6)
    assert bowed[0].arm_mm == bowed[0].intact_arm_mm
    for less, more in pairwise(bowed):
        assert less.extra_mm < more.extra_mm
        assert less.lost_deg < more.lost_deg
        assert less.arm_mm < more.arm_mm


@pytest.mark.parametrize(("mu", "share"), [(0.022, 0.034), (0.04, 0.061), (0.063, 0.094)])
def test_belt_friction_at_ninety_degrees(mu: float, share: float) -> None:
    """Euler's belt law at a quarter turn: 1 - exp(-mu pi/2), worked out by hand."""
    assert friction_loss(mu, 90) == pytest.approx(share, abs=0.001)


def test_belt_friction_over_two_pulleys_is_that_over_their_sum() -> None:
    """Euler's belt law: only the whole angle counts."""
    kept = (1 - friction_loss(0.05, 30)) * (1 - friction_loss(0.05, 60))
    assert kept == pytest.approx(1 - friction_loss(0.05, 90))
    assert kept == pytest.approx(exp(-0.05 * pi / 2))


@pytest.mark.parametrize(("material", "mu"), [("polyblend", 0.054), ("braided polyester", 0.076), ("nylon", 0.130)])
def test_friction_of_sutures(material: str, mu: float) -> None:
    """PMC2796445: friction of 3-0 sutures."""
    assert next(s.mu for s in glide_tables().friction_suture if s.material == material) == mu


def test_moment_arms_are_largest_at_the_knuckle_for_fds() -> None:
    """Flexor arms grow towards the palm (read in a secondary text); holds for every published FDS set here."""
    for digit in FINGERS:
        for arms, _, _ in arm_sets(digit, "FDS"):
            assert arms["MCP"] > arms["PIP"]
