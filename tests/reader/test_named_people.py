"""People who bear the name of a stitch or a thread are neither."""

import pytest
from reader_sentences import each, told

SEWN = "Index FDP divided and repaired with 3-0 Prolene."


@pytest.mark.parametrize(
    "head",
    [
        "Surgeon: Dr Sandhurst-Lee. ",
        "Anaesthetist: Evans-Harding. ",
        "Operator Miss A. Becker. ",
        "Dictated by R. Tsuge, MD. ",
        "Assisted by Mr Savage. ",
    ],
)
def test_a_name_is_no_stitch(head: str) -> None:
    assert told(head + SEWN, "stitch", "strands") == {}


@pytest.mark.parametrize(
    "foot", ["Sandhurst-Lee", "P. Ashdown-Becker", "Harcourt-Evans\nRegistrar", "T.R. Orford-Savage\n"]
)
def test_who_signs_is_no_stitch(foot: str) -> None:
    sewn = "Index FDP divided and repaired with a four-strand cruciate of 3-0 Prolene.\nBoth arteries clipped.\n"
    assert each(sewn + foot, "stitch") == {"index FDP": "cruciate"}
    assert told(SEWN + "\n" + foot, "stitch", "strands") == {}


@pytest.mark.parametrize("line", ["Core-Becker", "4-strand-Savage", "Savage"])
def test_a_stitch_on_a_line_of_its_own_stays_one(line: str) -> None:
    assert "index FDP" in each("Index FDP divided and repaired:\n" + line + "\n3-0 Prolene.", "stitch")


def test_a_name_is_no_thread() -> None:
    assert each("Surgeon: Mr O. Silk. Index FDP divided, modified Kessler 4-0.", "material") == {}


@pytest.mark.parametrize(
    ("words", "stitch"),
    [
        ("Mr Orford put a Savage into the index FDP.", "savage"),
        ("Dr. Orford. Kessler repair of the index FDP, 3-0.", "kessler"),
        ("Index FDP: Lee repair, 3-0.", "lee"),
    ],
)
def test_a_stitch_behind_a_name_stays_one(words: str, stitch: str) -> None:
    assert each("Index FDP divided. " + words, "stitch") == {"index FDP": stitch}


@pytest.mark.parametrize("head", ["OP NOTE - Kestler-Rowe / registrar. ", "Present: Kesler-Brand. "])
def test_a_double_name_near_a_stitchs_is_a_person(head: str) -> None:
    assert each(head + SEWN, "stitch") == {}


@pytest.mark.parametrize("team", ["SHO (Bramall) + Cons (Ravenscar-Lee).", "Surgeon (Holt-Lee).", "Reg (Ash-Tang)"])
def test_a_double_name_in_brackets_behind_a_role(team: str) -> None:
    assert each(f"{team}\nIndex FDP divided and repaired with four strands.", "stitch") == {}


@pytest.mark.parametrize("core", ["repaired (Lim-Tsai)", "with a six-strand core (Lim-Tsai)"])
def test_a_double_name_in_brackets_behind_a_repair(core: str) -> None:
    assert each(f"Index FDP divided, {core}, 4-0 nylon.", "stitch") == {"index FDP": "lim-tsai"}
