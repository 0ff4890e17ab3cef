"""'Radial digital nerve: seen? Yes. Divided? Yes. Repaired? Yes, 9-0', 'Pull-out button used?   N': forms that ask."""

import pytest
from reader_sentences import each, told

FPL = "Digit: Thumb\nFPL divided? Yes. Completely? Yes\n"


@pytest.mark.parametrize(
    ("line", "expected"),
    [
        (
            "Radial digital nerve: seen? Yes. Divided? Yes, completely. Repaired? Yes, 9/0 nylon.",
            {"thumb digital nerve radial": {"extent": "complete", "treatment": "repaired"}},
        ),
        (
            "Ulnar digital nerve: looked for? Yes. Cut? No, in continuity.",
            {"thumb digital nerve ulnar": {"extent": "intact"}},
        ),
    ],
)
def test_all_questions_of_a_line_are_about_its_name(line: str, expected: dict[str, dict[str, str]]) -> None:
    assert told(FPL + line, group="injuries") == expected


@pytest.mark.parametrize(
    "line", ["A1 pulley: seen? Yes. Full length? Yes, released.", "A1 pulley: opened? Yes. In full? Yes, released."]
)
def test_a_pulley_asked_about(line: str) -> None:
    assert each(FPL + line, "finding", group="pulleys") == {"thumb A1": "released"}


@pytest.mark.parametrize(
    "lines",
    [
        "15  Pull-out button used?         N\n16  Anchor used?                  N\n",
        "Bone anchor used? No\nFixed by a pull-out? N\n",
    ],
)
def test_what_was_not_used_fixes_nothing(lines: str) -> None:
    core = "Core suture strands          2\nCore suture name    modified Kessler\n"
    note = f"Digit   index\nFDP cut through?   Y\n{lines}{core}"
    shown = told(note, "stitch", "strands", "treatment")
    assert shown == {"index FDP": {"stitch": "modified kessler", "strands": 2, "treatment": "repaired"}}


@pytest.mark.parametrize(
    ("line", "extent"), [("Radial digital nerve cut?     N, seen intact", "intact"), ("RDN divided? Y", "complete")]
)
def test_a_nerve_asked_about(line: str, extent: str) -> None:
    note = f"Digit   index\nFDP cut through?   Y\n{line}\n"
    assert each(note, "extent", group="injuries") == {"index digital nerve radial": extent}


@pytest.mark.parametrize(("line", "tension"), [("Repair under tension?   N", "none"), ("Under tension? Y", "present")])
def test_tension_asked_about(line: str, tension: str) -> None:
    note = f"Digit   index\nFDP cut through?   Y\nCore: 4 strands 3-0\n{line}\n"
    assert each(note, "tension") == {"index FDP": tension}


@pytest.mark.parametrize("lines", ["Right hand?    N\nLeft hand?     Y\n", "Left hand? Yes\nRight hand? No\n"])
def test_the_side_asked_about(lines: str) -> None:
    assert each(lines + FPL, "side", group="operation") == {"": "left"}
