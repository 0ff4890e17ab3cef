"""Sutures begun and given up, the other slip of the next statement, what a cut spares, and pieces cut away."""

import pytest
from reader_sentences import each, told

CUT = "Ring FDP cut through, zone II. "


@pytest.mark.parametrize(
    ("told_so", "stitch"),
    [
        ("I began with a Savage, gave it up and ended with a pattern that has no name.", None),
        ("I began a Becker, gave it up, and did a cruciate instead.", "cruciate"),
        ("A six-strand Savage was attempted but abandoned; two strands of 3-0 were placed as a Kessler.", "kessler"),
        ("I began with a Savage and did not give it up.", "savage"),
    ],
)
def test_what_was_given_up_is_no_suture(told_so: str, stitch: str | None) -> None:
    assert each(CUT + told_so, "stitch").get("ring FDP") == stitch


def test_strands_given_up_are_not_counted() -> None:
    assert each(CUT + "I began with a Savage, gave it up and ended with a pattern of my own.", "strands") == {}


@pytest.mark.parametrize("behind", ["; the other one I merely smoothed.", ". The other slip was pared."])
def test_the_other_slip_of_the_next_statement(behind: str) -> None:
    note = "Ring finger: FDS radial slip cut through, ulnar slip 30 % cut. The FDS radial slip was excised"
    assert each(note + behind, "treatment") == {"ring FDS radial": "excised", "ring FDS ulnar": "trimmed"}


def test_the_other_finger_is_no_slip() -> None:
    note = "Ring finger: the radial slip of the FDS was excised. The other finger was pared."
    assert each(note, "treatment") == {"ring FDS radial": "excised"}


@pytest.mark.parametrize(
    ("note", "extent"),
    [
        ("Median nerve divided, except a strand dorsally (about 90 %).", "partial"),
        ("Median nerve: divided except for one fascicle.", "partial"),
        ("Median nerve severed save a thin strand.", "partial"),
        ("Median nerve divided, except the palmar branch which was intact.", "complete"),
    ],
)
def test_a_nerve_cut_but_for_a_strand(note: str, extent: str) -> None:
    assert each("Wrist. " + note, "extent", group="injuries") == {"median nerve": extent}


def test_a_tendon_cut_but_for_a_strip() -> None:
    assert each("FDS middle divided, except a strip on its dorsum.", "extent") == {"middle FDS": "partial"}


@pytest.mark.parametrize("note", ["a branch was cut and buried in muscle.", "branch divided.", "two branches cut."])
def test_a_branch_of_the_radial_nerve(note: str) -> None:
    found = each("Superficial radial nerve: " + note, "extent", group="injuries")
    assert found == {"radial nerve branch": "complete"}


def test_a_branch_of_another_nerve_is_not_the_nerve() -> None:
    assert each("Median nerve: a branch was cut.", "extent", group="injuries") == {}


SEWN = "Thumb FPL complete, zone II. Tajima core 3-0. "


@pytest.mark.parametrize(
    "piece", ["The crushed piece of FPL was cut away.", "The mangled bit of the FPL was resected."]
)
def test_a_crushed_piece_cut_away_leaves_the_tendon(piece: str) -> None:
    assert each(SEWN + piece, "treatment") == {"thumb FPL": "repaired"}


def test_a_tendon_cut_away_is_gone() -> None:
    assert each(SEWN + "The FPL was cut away.", "treatment") == {"thumb FPL": "excised"}


@pytest.mark.parametrize(
    "told_so",
    ["taking 11 mm on the hand side and 9 on the tip side.", "purchase 11 mm at the palm end and 9 at the tip end."],
)
def test_the_shorter_end_is_the_low_one(told_so: str) -> None:
    assert each(SEWN[:-2] + ", " + told_so, "purchase_mm") == {"thumb FPL": (9.0, 11.0)}


def test_knots_on_a_side_are_no_length() -> None:
    found = each(SEWN[:-2] + ", purchase 11 mm on the hand side and 4 knots on the tip side.", "purchase_mm")
    assert found == {"thumb FPL": (11.0, 11.0)}


@pytest.mark.parametrize(
    "tails", ["Every tail is hidden between the faces.", "The tails were tucked between the ends."]
)
def test_tails_between_the_ends(tails: str) -> None:
    assert each(CUT + "Four strand Kessler 3-0. " + tails, "knot") == {"ring FDP": "buried"}


def test_tails_cut_short_tell_no_place() -> None:
    assert each(CUT + "Four strand Kessler 3-0. The tails were cut short.", "knot") == {}


@pytest.mark.parametrize("day", ["Hurt the same evening.", "Injured that same afternoon."])
def test_hurt_the_same_evening(day: str) -> None:
    assert told("Done 12 Oct 2034. " + day, group="operation")[""]["injury_date"] == "2034-10-12"


def test_home_the_same_evening_is_no_accident() -> None:
    assert "injury_date" not in told("Done 12 Oct 2034. Went home the same evening.", group="operation")[""]


@pytest.mark.parametrize(
    "head", ["Original: knife; FDP 2-strand Kessler ruptured", "Original repair: FDP, 6-strand Savage"]
)
def test_the_original_repair_is_no_finding_of_today(head: str) -> None:
    assert each(f"Finger: R index\n{head}\nToday: tendon graft\n", "strands") == {}
