"""A dictation's 'c one', its misheard threads, its statements that follow without stops, and nerves set over sides."""

import pytest
from reader_sentences import each, told

CUT = "Ring finger. FDP cut and repaired. "


@pytest.mark.parametrize(
    "words",
    [
        "took down c one and the a three.",
        "released c one and a three.",
        "opened the c one pulley and the a three pulley",
    ],
)
def test_cruciate_pulleys_spelt_out(words: str) -> None:
    assert each(CUT + words, "finding", group="pulleys").keys() == {"ring A3", "ring C1"}


@pytest.mark.parametrize("words", ["four oh prolene c two strands", "we did a c one more stitch"])
def test_a_letter_that_is_no_pulley(words: str) -> None:
    assert each(CUT + words, "finding", group="pulleys") == {}


@pytest.mark.parametrize(
    "words", ["sewn with a t jima four oh at the bond", "mended with a ta jima four oh effie bond"]
)
def test_misheard_names(words: str) -> None:
    found = told(f"Ring finger. FDS cut and {words}.", "stitch", "material")
    assert found == {"ring FDS": {"stitch": "tajima", "material": "braided polyester"}}


@pytest.mark.parametrize(
    "words",
    [
        "Nerves of the ring finger: ulnar digital cut, radial fine.",
        "Nerves in the ring finger, the ulnar digital is out completely, radial side is okay.",
        "Nerves, the ulnar digital was cut, the radial side was okay.",
    ],
)
def test_nerves_over_their_sides(words: str) -> None:
    found = each(CUT + words, "extent", group="injuries")
    assert found == {"ring digital nerve ulnar": "complete", "ring digital nerve radial": "intact"}


@pytest.mark.parametrize(
    "words",
    ["Nerves in the ring finger not looked at, ulnar skin flap cut.", "Nerves at the wrist: ulnar cut, radial fine."],
)
def test_sides_of_something_else(words: str) -> None:
    assert not any("digital nerve" in name for name in each(CUT + words, "extent", group="injuries"))


RUN = (
    "right hand exploration okay index f d p cut all the way and repaired with eight strand winters gelberman looped "
    "four oh supramid and running six oh nylon for the epi index f d s "
)


@pytest.mark.parametrize(
    "words",
    [
        "a kessler with four oh ethibond long f d p same eight strand same suture and same epi",
        "just the ulnar slip got a kessler with four oh ethibond ring f d p same suture and same epi",
    ],
)
def test_a_short_name_begins_a_statement(words: str) -> None:
    superficial = {name: facts for name, facts in told(RUN + words).items() if "FDS" in name}
    assert [facts["strands"] for facts in superficial.values()] == [2]
    assert all("peripheral" not in facts for facts in superficial.values())


def test_a_state_ends_a_statement() -> None:
    words = "both slips are good nerves in the index the radial digital is cut completely ulnar side is okay"
    found = each(RUN + words, "extent", group="injuries")
    assert found == {"index digital nerve radial": "complete", "index digital nerve ulnar": "intact"}


@pytest.mark.parametrize(
    ("words", "whose"),
    [
        ("both cut all the way and the ends were frayed on the superficialis", {"index FDS"}),
        ("all cut and the edges are ragged on the profundus", {"index FDP"}),
        ("both cut and the ends were ragged", {"index FDP", "index FDS"}),
    ],
)
def test_ends_of_the_one_named_behind(words: str, whose: set[str]) -> None:
    assert each(f"Index finger. FDP and FDS {words}. Both repaired.", "ends").keys() == whose
