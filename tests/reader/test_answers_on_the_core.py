"""Labels on how the core holds and on its thread, answered; counts that head a line; stitches as they are heard."""

import pytest
from reader_sentences import each, told

CORE = "Ring FDP cut through, zone II. FDP repaired with a Strickland of 4-0 Prolene. "


@pytest.mark.parametrize(
    ("line", "hold"),
    [
        ("Locking: yes", "locking"),
        ("Locking        [x] yes  [ ] no", "locking"),
        ("Each grasp was locked with a loop 2 mm across.", "locking"),
        ("Locking loops of 2 to 3 mm were taken.", "locking"),
    ],
)
def test_locking_told_or_answered(line: str, hold: str) -> None:
    assert each(CORE + "\n" + line, "hold") == {"ring FDP": hold}


@pytest.mark.parametrize("line", ["Locked: registrar", "Locking: no", "Locking        [ ] yes  [ ] no"])
def test_no_lock(line: str) -> None:
    assert "locking" not in each(CORE + "\n" + line, "hold").values()


@pytest.mark.parametrize(
    ("line", "looped"),
    [
        ("Looped: no.", False),
        ("Looped ....... No", False),
        ("Looped   [ ] yes [x] no", False),
        ("Looped? Yes.", True),
    ],
)
def test_looped_answered(line: str, looped: bool) -> None:
    assert each(CORE + "\n" + line, "looped") == {"ring FDP": looped}


@pytest.mark.parametrize(
    "line", ["Strands 4.", "Strands 4, knots buried.", "Two anchors, 4 threads through the tendon."]
)
def test_counts_that_head_a_line(line: str) -> None:
    assert each("Ring FDP cut through. FDP: 4-0 Prolene. " + line, "strands") == {"ring FDP": 4}


def test_no_count() -> None:
    assert each("Ring FDP cut through. FDP: 4-0 Prolene. Strands 2 of the 4 pulled out.", "strands") == {}


@pytest.mark.parametrize(
    ("heard", "stitch"),
    [
        ("four strand locked cruise she ate", "locked cruciate"),
        ("six strand lim sigh", "lim-tsai"),
        ("adelayed repair", "adelaide"),
        ("strict land style", "strickland"),
        ("u point", "horizontal mattress"),
        ("fig. of 8", "figure-of-eight"),
    ],
)
def test_stitches_as_they_are_heard(heard: str, stitch: str) -> None:
    assert each("Ring FDP cut through. The FDP was repaired with 3-0 Prolene, " + heard, "stitch") == {
        "ring FDP": stitch
    }


@pytest.mark.parametrize(
    "note",
    [
        "I placed two simple sutures of 5-0 Prolene and no epitendinous stitch there.",
        "One simple suture of 5-0 Prolene was enough for the cut half.",
    ],
)
def test_counted_simple_sutures_hold_the_tendon(note: str) -> None:
    assert told("Ring FDP cut 60 percent, zone II. " + note, "stitch", "size", "peripheral_pattern")["ring FDP"] == {
        "stitch": "simple",
        "size": "5-0",
    }


@pytest.mark.parametrize(
    "note", ["Two simple sutures of 6-0 Prolene round the edge.", "Simple sutures of 6-0 Prolene round it."]
)
def test_simple_sutures_round_the_edge(note: str) -> None:
    core = "Ring FDP cut through. FDP: cruciate, 3-0 Ticron. "
    assert told(core + note, "stitch", "peripheral_pattern")["ring FDP"] == {
        "stitch": "cruciate",
        "peripheral_pattern": "interrupted",
    }


@pytest.mark.parametrize(
    "note",
    [
        "Mini anchor in P3, its 3-0 FiberWire tails run up the tendon.",
        "Anchor in P3; 3-0 FiberWire run along the tendon and tied.",
    ],
)
def test_the_thread_of_an_anchor_is_no_peripheral_suture(note: str) -> None:
    shown = told("Ring FDP pulled off its bone, zone I. " + note, "size", "stitch", "peripheral")["ring FDP"]
    assert shown == {"size": "3-0", "stitch": "anchor"}


@pytest.mark.parametrize(
    "note",
    [
        "FDP: 3-0 Ticron, cruciate (an extra throw? no, thought enough).",
        "A single cruciate of 3-0 Ticron was considered sufficient.",
    ],
)
def test_asides_and_judgements_take_nothing_back(note: str) -> None:
    assert told("Ring FDP cut through. " + note, "stitch", "size")["ring FDP"] == {"stitch": "cruciate", "size": "3-0"}


def test_what_was_considered_is_not_told() -> None:
    assert "stitch" not in told("Ring FDP cut through. A cruciate of 3-0 Ticron was considered.").get("ring FDP", {})


@pytest.mark.parametrize(
    ("words", "stitch"),
    [
        ("Tsuge with looped 4-0 nylon, three of them, 6 strands", "triple tsuge"),
        ("three looped 4-0 stitches after Tsuge", "triple tsuge"),
        ("triple looped suture by Tsuge method", "triple tsuge"),
        ("looped 4-0 nylon, Tsuge, placed twice: four strands", "double tsuge"),
        ("Tsuge with looped 4-0 nylon", "tsuge"),
        ("modified Kessler doubled, 3-0 Ticron", "double modified kessler"),
    ],
)
def test_a_stitch_placed_more_than_once(words: str, stitch: str) -> None:
    assert each("Ring FDP cut through. FDP: " + words, "stitch") == {"ring FDP": stitch}


@pytest.mark.parametrize("words", ["Tsuge, 4 strands of looped nylon", "four strands of looped nylon, Tsuge fashion"])
def test_a_count_alone_gives_a_stitch_no_other_name(words: str) -> None:
    found = told(f"Ring FDP cut through. FDP: {words}.", "stitch", "strands")
    assert found["ring FDP"] == {"stitch": "tsuge", "strands": 4}


@pytest.mark.parametrize("words", ["every loop of it locked", "a second loop of the same at right angles"])
def test_a_loop_of_a_stitch_is_no_looped_thread(words: str) -> None:
    assert each("Ring FDP cut through. FDP: six-strand Savage, 4-0 Ticron, " + words, "looped") == {}
