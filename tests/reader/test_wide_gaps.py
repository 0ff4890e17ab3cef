"""Scanned text with wide gaps between words is running text; columns of a grid stay columns."""

from notereader.reader import read

SCAN = (
    "Findings:\n"
    "Wound  opened up and down.  FDP of the ring finger\n"
    "divided,  ends ragged.  Radial slip of FDS whole.  Ulnar\n"
    "slip  cut, left  alone.  FDP sutured  with a 4-strand\n"
    "cruciate of  3-0  Ethibond.   Running\n"
    "6-0  Prolene  round  the edge.  No  gap seen.\n"
)
LINES = (
    "Technique:\n"
    "The  middle finger  was opened .  FPL  is not  involved.  FDP  completely\n"
    "severed  in  zone  2 .  It  was  joined  by  a  modified  Kessler  of  4-0\n"
    "nylon  and the  A2  pulley  was  kept  whole .\n"
)
GRID = (
    "Left ring and middle fingers.\n\n"
    "Finger  Tendon  Found      Core\n"
    "ring    FDP     complete   3-0 Ethibond\n"
    "middle  FDP     half       4-0 Prolene\n"
)


def _facts(text: str, digit: str, tendon: str, slip: str | None = None) -> dict[str, object]:
    found = [r for r in read(text).repairs if (r.digit, r.tendon, r.slip) == (digit, tendon, slip)]
    return {name: fact.value for entry in found for name, fact in entry.facts.items()}


def test_a_scan_s_wide_gaps_part_nothing() -> None:
    told = _facts(SCAN, "ring", "FDP")
    assert {k: told.get(k) for k in ("extent", "ends", "treatment", "strands", "size", "peripheral_size")} == {
        "extent": "complete",
        "ends": "ragged",
        "treatment": "repaired",
        "strands": 4,
        "size": "3-0",
        "peripheral_size": "6-0",
    }


def test_a_slip_broken_at_the_line_end_gets_its_own_words_only() -> None:
    told = _facts(SCAN, "ring", "FDS", "ulnar")
    assert told["treatment"] == "left"
    assert not {"strands", "size", "peripheral", "ends", "gap"} & set(told)


def test_lines_broken_in_mid_sentence_go_on() -> None:
    told = _facts(LINES, "middle", "FDP")
    assert (told.get("extent"), told.get("stitch"), told.get("size")) == ("complete", "modified kessler", "4-0")
    assert told.get("material") == "nylon"


def test_columns_of_a_grid_stay_columns() -> None:
    assert _facts(GRID, "ring", "FDP").get("size") == "3-0"
    assert _facts(GRID, "middle", "FDP").get("size") == "4-0"
    assert _facts(GRID, "middle", "FDP").get("extent") == "partial"


def test_small_letters_under_one_another_are_columns() -> None:
    text = (
        "Left hand, ring and small fingers.\n\n"
        "FINGER   FDP         FDS        A2\n"
        "ring     cut through  untouched  kept\n"
        "small    cut through  cut across  vented\n"
    )
    assert _facts(text, "ring", "FDS").get("extent") == "intact"
    assert _facts(text, "small", "FDS").get("extent") == "complete"
