"""Loads, pulley limits, standards and time windows as the resources hold them, against the publications named."""

import pytest

from notereader.appraisal.completeness import owed_tables
from notereader.appraisal.glide_tables import glide_tables
from notereader.appraisal.margin import load_tables, loads_for

KGF = 9.80665


def activity(key: str) -> tuple[float, float]:
    found = next(a for a in load_tables().activity if a.key == key)
    return found.low, found.high


@pytest.mark.parametrize(("key", "kgf"), [("passive", 0.9), ("active", 3.5), ("tip_pinch", 12.0)])
def test_upper_loads(key: str, kgf: float) -> None:
    """Schuind 1992, J Hand Surg Am: up to 0.9 kgf passive, 3.5 kgf active unresisted, 12 kgf tip pinch."""
    assert activity(key)[1] == pytest.approx(kgf * KGF, rel=0.03)


@pytest.mark.parametrize(
    ("key", "median"), [("place_and_hold", 3), ("active", 6), ("isolated_fdp", 24), ("isolated_fds", 13)]
)
def test_medians_lie_in_the_load_ranges(key: str, median: float) -> None:
    """Edsfeldt 2015, J Hand Surg Eur (12 patients): medians in newton."""
    low, high = activity(key)
    assert low <= median <= high


@pytest.mark.parametrize(("key", "grams"), [("light_grip", 1500), ("strong_grip", 5000), ("tip_pinch", 9000)])
def test_grip_loads(key: str, grams: float) -> None:
    """Strickland after Urbaniak 1975, from memory, in grams of force."""
    assert activity(key)[0] == pytest.approx(grams / 1000 * KGF, rel=0.01)


@pytest.mark.parametrize(("key", "grams"), [("light_grip", 2250), ("strong_grip", 7500)])
def test_allowance_for_drag(key: str, grams: float) -> None:
    """Strickland's table with half added for drag, from memory; Viinikainen 2008 estimates the same half."""
    with_drag = next(load for load in loads_for("FDP") if load.key == key)
    assert with_drag.high == pytest.approx(grams / 1000 * KGF, rel=0.01)


@pytest.mark.parametrize("key", ["passive", "place_and_hold", "active"])
def test_uninjured_ranges_as_summarised(key: str) -> None:
    """Viinikainen 2008: passive 2 to 9 N, active 2 to 19 N in uninjured tendons; the ranges here reach as far."""
    low, high = activity(key)
    assert low <= 2
    assert high >= (9 if key == "passive" else 19)


def test_pulley_window() -> None:
    """Plast Reconstr Surg 2018;141:1427: one opening of up to about 15 to 20 mm."""
    window = glide_tables().window
    assert (window.low_mm, window.high_mm) == (15, 20)


def test_ccda_operative_note_sections() -> None:
    """HL7 C-CDA Operative Note: eight sections that shall be there, the two diagnoses held as one by the record."""
    ccda = next(s for s in owed_tables().standard if s.key == "ccda")
    wanted = {"anaesthesia", "complications", "diagnosis", "blood_loss", "findings", "specimens", "procedure"}
    held = {name for item in ccda.items for name in (*item.elements, *item.facts)}
    assert held == wanted
    assert len(ccda.items) + 1 == 8


def test_accreditation_minimum() -> None:
    """The Joint Commission RC.02.01.03: surgeon, assistants, procedure, findings, blood loss, specimens, diagnosis."""
    standard = next(s for s in owed_tables().standard if s.key == "accreditation")
    held = {name for item in standard.items for name in item.elements}
    assert held == {"surgeon", "assistant", "procedure", "findings", "blood_loss", "specimens", "diagnosis"}
