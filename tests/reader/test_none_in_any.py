"""No peripheral suture: in any, in the others, of a kind by its label; and ones told beside a 'ring' or an edge."""

import pytest
from reader_sentences import each

FOUR = "Ring and middle FDP and FDS cut through. FDP: Savage 4-0 Ticron in each. FDS: modified Kessler 4-0 Ticron. "
ALL = ("middle FDP", "middle FDS", "ring FDP", "ring FDS")


@pytest.mark.parametrize("note", ["Epi: none in any of the four.", "No epitendinous suture was placed on any tendon."])
def test_none_in_any(note: str) -> None:
    assert each(FOUR + note, "peripheral") == dict.fromkeys(ALL, "absent")


@pytest.mark.parametrize(
    "note",
    [
        "A running 6-0 epitendinous was added to the two profundus tendons; the others had none.",
        "A running 6-0 epitendinous went round both FDPs; the other tendons received none.",
    ],
)
def test_the_others_had_none(note: str) -> None:
    assert each(FOUR + note, "peripheral") == {n: "present" if "FDP" in n else "absent" for n in ALL}


TWO = "Index FDP and FDS cut through. FDP: Savage 4-0 Ticron. FDS: modified Kessler 4-0 Ticron. "


@pytest.mark.parametrize(
    "note",
    [
        "Peripheral FDP: simple running, 6-0 Prolene\nPeripheral FDS: not used",
        "Epitendinous FDP: running 6-0 Prolene\nEpitendinous FDS: none",
    ],
)
def test_a_label_of_one_kind(note: str) -> None:
    assert each(TWO + note, "peripheral") == {"index FDP": "present", "index FDS": "absent"}


def test_a_core_and_nothing_else() -> None:
    note = "Index FDP and FDS cut through. FDP: Savage 4-0 Ticron + running 6-0 Prolene. FDS: Kessler 4-0 Ticron only."
    assert each(note, "peripheral") == {"index FDP": "present", "index FDS": "absent"}


@pytest.mark.parametrize(
    ("note", "pattern"),
    [
        ("Outer suture: a few single 6-0 nylon stitches, not a ring.", "interrupted"),
        ("Epitendinous 6-0 nylon, interrupted, eight bites in a ring.", "interrupted"),
        ("I oversewed the edges with 6-0 nylon, taking a continuous locking bite.", "running locking"),
        ("The edges were oversewn with running 6-0 nylon.", "running"),
    ],
)
def test_round_the_edge_and_no_finger(note: str, pattern: str) -> None:
    assert each("Thumb FPL cut through. FPL: Savage 4-0 Ticron. " + note, "peripheral_pattern") == {
        "thumb FPL": pattern
    }


def test_a_noun_cut_off_from_its_label_tells_nothing() -> None:
    note = TWO + "Peripheral FDP: simple running, 6-0 Prolene. Peripheral FDS: not used."
    assert each(note, "peripheral").get("index FDS") != "present"


@pytest.mark.parametrize(
    ("note", "pattern"),
    [
        ("Epi: 6-0 Prolene, running locking, all the way round", "running locking"),
        ("Then an overcast (continuous) of PDS 6-0.", "running"),
        ("Then 6-0 Prolene round and round.", "running"),
        ("Epi: 6-0 Prolene, over & over, right round.", "running"),
    ],
)
def test_patterns_round_the_edge(note: str, pattern: str) -> None:
    core = "Index FDP cut through. Core: cruciate 4-0 Ticron. "
    assert each(core + note, "peripheral_pattern") == {"index FDP": pattern}


@pytest.mark.parametrize("them", ["both of these", "both of them"])
def test_both_of_these(them: str) -> None:
    note = "Index and middle FDP cut through. Index FDP: Savage, 4-0 Ticron. Middle FDP: same stitch. "
    assert each(note + f"I put running 6-0 epitendinous on {them}.", "peripheral") == {
        "index FDP": "present",
        "middle FDP": "present",
    }
