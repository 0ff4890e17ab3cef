"""Notes that tell their fingers by their initials: I, M, R, S."""

from reader_sentences import each, told

NOTE = """Left hand, index, middle, ring and small fingers, zone 2. Knife.

FDP  I 100  M 100  R 60  S 100
All cut clean.

FDP core
I, M   6 str M-Tang, 4/0 Supramid
R      4 str cruciate, 4/0 Prolene
S      4 str cruciate, 4/0 Prolene
All 10 mm from cut edge bar S 7.
FDP epi
I, M, R  6/0 Prolene running
S        nil

Pulleys
A1 all four: opened full length
A2 I, R: vented dist 1/2.
A4 all: kept

glide: I free, M catches A2 lip, R + S free.

Tension: S yes
"""


def test_initials_that_head_lines() -> None:
    assert each(NOTE, "strands") == {"index FDP": 6, "middle FDP": 6, "ring FDP": 4, "small FDP": 4}
    assert each(NOTE, "peripheral_size") == dict.fromkeys(("index FDP", "middle FDP", "ring FDP"), "6-0")


def test_shares_behind_initials() -> None:
    whole = {"extent": "complete"}
    part = {"extent": "partial", "extent_percent": 60}
    cuts = told(NOTE, "extent", "extent_percent")
    assert cuts == {"index FDP": whole, "middle FDP": whole, "ring FDP": part, "small FDP": whole}


def test_a_length_of_all_but_one() -> None:
    lengths = {"index FDP": (10, 10), "middle FDP": (10, 10), "ring FDP": (10, 10), "small FDP": (7, 7)}
    assert each(NOTE, "purchase_mm") == lengths


def test_initials_within_lines() -> None:
    glide = {"index FDP": "free", "middle FDP": "catching", "ring FDP": "free", "small FDP": "free"}
    assert each(NOTE, "glide") == glide
    assert each(NOTE, "tension") == {"small FDP": "present"}
    found = told(NOTE, "finding", group="pulleys")
    assert found["index A2"] == found["ring A2"] == {"finding": "vented"}
    assert [found[f"{d} A1"]["finding"] for d in ("index", "middle", "ring", "small")] == ["released"] * 4
    assert [found[f"{d} A4"]["finding"] for d in ("index", "middle", "ring", "small")] == ["intact"] * 4


def test_letters_elsewhere_are_no_fingers() -> None:
    note = "R hand. M, 36 y. I cleaned the wound. FDP of the index completely cut, zone I. S side nurse. A2 kept."
    assert each(note, "extent") == {"index FDP": "complete"}
    assert each(note, "finding", group="pulleys") == {"index A2": "intact"}


def test_fingers_answered_under_one_label() -> None:
    note = (
        "FDP of the index, middle and ring fingers cut and repaired with 4 strands. Glide: index free, middle catches."
    )
    assert each(note, "glide") == {"index FDP": "free", "middle FDP": "catching"}


def test_all_but_one_finger_told_in_words() -> None:
    note = "FDP of the index and ring cut and repaired with a four-strand cruciate of 3-0 Ticron. "
    both = {"index FDP": (10, 10), "ring FDP": (8, 8)}
    assert each(note + "All with 10 mm purchase bar the ring 8.", "purchase_mm") == both
