"""One slip sewn, told without its side or with the other's fate: its core is that slip's."""

import pytest
from reader_sentences import each, told

FDP = "Ring FDP cut through, zone II, and repaired with a four-strand cruciate, 3-0 Ticron. "


@pytest.mark.parametrize(
    ("note", "slip", "stitch"),
    [
        (
            "FDS: ulnar slip divided, radial slip intact. The slip was joined by one figure of eight of 5-0 PDS.",
            "ulnar",
            1,
        ),
        ("The radial slip of the FDS was severed. The superficialis slip took a mattress of 4-0 Prolene.", "radial", 2),
        (
            "FDS divided. It was sewn with a mattress of 4-0 Ethibond to the ulnar slip; the radial slip was cut out.",
            "ulnar",
            2,
        ),
        ("FDS divided. A mattress of 5-0 Ticron in the radial slip, and the ulnar slip was excised.", "radial", 2),
        ("FDS divided. FDS: one slip only -> ulnar, 4-0 nylon, figure of eight; radial slip excised.", "ulnar", 1),
    ],
)
def test_core_of_the_slip_that_was_sewn(note: str, slip: str, stitch: int) -> None:
    named = {1: "figure-of-eight", 2: "horizontal mattress"}[stitch]
    assert each(FDP + note, "stitch") == {"ring FDP": "cruciate", f"ring FDS {slip}": named}


@pytest.mark.parametrize(
    "note",
    [
        "Both slips of the FDS were cut. The slip was trimmed.",
        "FDS: radial slip cut, ulnar slip cut. The slip nearest the bone got a stitch of 4-0 Prolene.",
    ],
)
def test_which_of_two_slips_is_not_guessed(note: str) -> None:
    assert not {"ring FDS radial", "ring FDS ulnar"} & {
        name for name, facts in told(FDP + note, "size", "stitch").items() if facts
    }


def test_a_thread_told_far_from_an_excision_is_no_slips() -> None:
    old = "The FDS had been sewn with a Kessler of 4-0 Ethibond. "
    filler = "The skin was marked and the arm was prepared. " * 9
    note = FDP + old + filler + "The FDS had held; I took out the ulnar slip, the radial slip remains."
    assert "ring FDS radial" not in each(note, "strands")
