"""A line that names several tendons heads the lines of a list below it; hyphens do not end what was wished for."""

import pytest
from reader_sentences import each, told

FOUND = "Left hand, zone 2.\n\nIF: FDP + FDS 100%.\nMF: FDP 100%.\nRF: FDP 30%, FDS ok.\n\nDONE, BY TENDON\n\n"


@pytest.mark.parametrize("mark", ["-", "*"])
def test_each_line_of_a_list_begins_with_its_heading(mark: str) -> None:
    lines = (
        f"FDP of IF and of MF\n{mark} back to good tissue: IF 4 mm, MF 2 mm\n"
        f"{mark} 4/0 Fibreloop, 6 strands, Lim-Tsai\n"
        f"{mark} epi 6/0 Prolene, IF only\nFDP RF\n{mark} flap excised, edge smooth. No stitch.\n"
    )
    sewn = told(FOUND + lines, "strands", "stitch", "peripheral_size")
    core = {"strands": 6, "stitch": "lim-tsai"}
    assert sewn == {"index FDP": {**core, "peripheral_size": "6-0"}, "middle FDP": core}


def test_a_line_below_the_list_is_not_of_its_heading() -> None:
    lines = "FDP of IF and of MF\n- 4/0 Fibreloop, 6 strands\nFDS IF\n- both slips out, no room\n"
    assert each(FOUND + lines, "strands") == {"index FDP": 6, "middle FDP": 6}


@pytest.mark.parametrize(
    "words", ["Boss wanted a two-strand Bunnell, I said no.", "A wanted two-strand Bunnell was not needed."]
)
def test_a_hyphen_does_not_end_a_wish(words: str) -> None:
    note = "Ring FDP cut and repaired with a Strickland of four strands, 3-0 Ethibond. "
    assert told(note + words, "strands", "stitch") == {"ring FDP": {"strands": 4, "stitch": "strickland"}}
