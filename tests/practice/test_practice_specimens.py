"""Files written by the first version open in this one, with everything in them."""

from pathlib import Path

from notereader.practice import load_attempt, load_set, mark, read_markings

FOLDER = Path(__file__).parent / "specimens"


def test_a_set_an_attempt_and_its_marking_of_version_1_still_open():
    case = load_set(FOLDER / "cases-version-1.json").case("made")
    attempt = load_attempt(FOLDER / "attempt-version-1.json")
    (marking,) = read_markings(FOLDER / "markings-version-1.json")
    assert (attempt.student, len(attempt.contradictions), len(attempt.questions)) == ("Ada", 1, 3)
    assert [(m.field, m.outcome) for m in marking.differences] == [
        ("repairs.size", "wrong"),
        ("repairs.bulk", "silence unsaid"),
    ]
    # Marked anew, the same differences come out.
    assert [(m.field, m.outcome) for m in mark(case, attempt).differences] == [
        (m.field, m.outcome) for m in marking.differences
    ]
