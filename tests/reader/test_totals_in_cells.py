"""A bare 'total' in a cell that a tendon heads is a complete cut."""

from notereader.reader import read


def _extents(text: str) -> dict[str, object]:
    return {
        f"{r.digit} {r.tendon}": r.facts["extent"].value
        for r in read(text).repairs
        if r.slip is None and "extent" in r.facts
    }


def test_a_total_under_a_tendon_is_a_complete_cut() -> None:
    told = _extents(
        "Left hand.\n\n| Finger | FDS | FDP | A2 |\n|---|---|---|---|\n"
        "| Index | total | 30 % | vented |\n| Ring | intact | total | kept |\n"
    )
    assert told == {"index FDS": "complete", "index FDP": "partial", "ring FDS": "intact", "ring FDP": "complete"}


def test_a_total_beside_a_partial_cut_is_enough() -> None:
    told = _extents(
        "Right hand.\n\n"
        "Finger   Zone   FDP       FDS\nmiddle   II     total     intact\nring     II     50 %      intact\n"
    )
    assert told["middle FDP"] == "complete"
    assert told["ring FDP"] == "partial"


def test_a_total_of_strands_or_in_a_row_of_sums_is_none() -> None:
    told = _extents(
        "Left hand.\n\n| Finger | FDS strands | FDP strands | Core |\n|---|---|---|---|\n"
        "| Index | 2 | 4 | total |\n| Total | 2 | 4 | total |\n"
    )
    assert told == {}
