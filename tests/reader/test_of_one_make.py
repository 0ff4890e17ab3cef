"""'No gap in any FDP repair; the others not tested', 'in any core A repair': of one kind or make only."""

import pytest
from reader_sentences import each

CUT = "Ring FDP and FDS, FCU cut and repaired. "


@pytest.mark.parametrize(
    "words",
    [
        "No gap in any FDP repair; the others were not tested.",
        "Fingers moved by pulling on the tendons: no gap in any of the profundus repairs; the others not tested.",
        "No FDP repair gapped.",
        "Pulled on the ring FDP: no gap; the other repairs were not tested.",
    ],
)
def test_no_gap_in_one_kind(words: str) -> None:
    assert each(CUT + words, "gap") == {"ring FDP": "none"}


@pytest.mark.parametrize("words", ["No gap; the others were not tested.", "No gap on traction, the rest not tested."])
def test_others_untested_and_nobody_named(words: str) -> None:
    assert each(CUT + words, "gap") == {}


@pytest.mark.parametrize(
    "words", ["No gap in any repair.", "The repairs were pulled on: no gap. The glide was not tested."]
)
def test_no_gap_in_all(words: str) -> None:
    assert each(CUT + words, "gap") == dict.fromkeys(("ring FDP", "ring FDS", "FCU"), "none")


LIST = """Left wrist, zone V.

No.  Structure           Found                 Done
 1   PL                  cut                   not repaired
 2   FCR                 80 %                  Kessler 2-0 PDS + no epitendinous
 3   FPL                 cut                   core A {plus} running 5-0 Prolene
 4   FDS 2               cut                   core B
 5   FDS 5               thin, cut             not repaired
 6   FDP 4               cut                   core A {plus} running 5-0 Prolene

core A = 3-0 Ethibond, double modified Kessler (4 strands), knots buried
core B = 3-0 Ethibond, single modified Kessler (2 strands), knots buried; no epitendinous

{tested}
"""


@pytest.mark.parametrize("plus", ["+", "and", "with"])
def test_a_lettered_core_with_more(plus: str) -> None:
    note = LIST.format(plus=plus, tested="")
    assert each(note, "strands") == {"FCR": 2, "thumb FPL": 4, "index FDS": 2, "ring FDP": 4}
    outer = {"FCR": "absent", "thumb FPL": "present", "index FDS": "absent", "ring FDP": "present"}
    assert each(note, "peripheral") == outer


def test_cut_in_a_cell_of_a_tendon_without_a_finger() -> None:
    cut = dict.fromkeys(("PL", "thumb FPL", "index FDS", "small FDS", "ring FDP"), "complete")
    assert each(LIST.format(plus="+", tested=""), "extent") == {"FCR": "partial"} | cut


@pytest.mark.parametrize("tested", ["No gap in any core A repair; the others not tested.", "Core A repairs: no gap."])
def test_no_gap_in_one_make(tested: str) -> None:
    found = each(LIST.format(plus="+", tested=tested), "gap")
    assert found == {"thumb FPL": "none", "ring FDP": "none"}


@pytest.mark.parametrize("words", ["tested in the same way", "checked likewise"])
def test_tested_likewise_tells_no_result(words: str) -> None:
    note = f"FPL and index FDP cut and repaired. FPL: passive motion, no gap. The index FDP was {words}."
    assert each(note, "gap") == {"thumb FPL": "none"}
    assert each(note, "test") == {"thumb FPL": "passive", "index FDP": "passive"}


@pytest.mark.parametrize("faults", ["neither gap nor catching", "neither gapping nor triggering"])
def test_neither_fault_of_one_repair(faults: str) -> None:
    words = f"The thumb repair was tested by passive extension, showing {faults}; the index repair was bulky."
    assert each("Thumb FPL and index FDP cut and repaired. " + words, "gap") == {"thumb FPL": "none"}


def test_neither_of_two_repairs() -> None:
    words = "Neither repair gapped nor caught."
    found = each("Thumb FPL and index FDP cut and repaired. " + words, "gap")
    assert found == {"thumb FPL": "none", "index FDP": "none"}
