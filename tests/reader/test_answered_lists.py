"""A list whose marks answer the list before it: 'a) FCU cut', then further down 'a) four strands'."""

from reader_sentences import each, told

FOUND = """Zone V, right.
Found:
 a) FCU cut through
 b) ulnar nerve cut through
 c) FDS ring and small cut through
"""
LETTERS = (
    FOUND
    + """
Done:
 c) each 2 strands, 3-0 Ethibond
 a) 4 strands, 2-0 Ethibond
 b) 9-0 nylon, epineural
"""
)
NUMBERS = """Index finger, zone II.
Found
1) FDP divided completely
2) FDS divided completely
3) ulnar digital nerve divided

Done
1) 4-strand cruciate, 3-0 Ethibond
2) horizontal mattress, 4-0 Prolene
3) nylon 9-0
"""


def test_letters_of_the_list_before() -> None:
    assert each(LETTERS, "strands") == {"ring FDS": 2, "small FDS": 2, "FCU": 4}
    assert each(LETTERS, "size") == {"ring FDS": "3-0", "small FDS": "3-0", "FCU": "2-0"}
    assert each(LETTERS, "treatment", group="injuries") == {"ulnar nerve": "repaired"}


def test_numbers_of_the_list_before() -> None:
    assert told(NUMBERS, "size", "stitch") == {
        "index FDP": {"size": "3-0", "stitch": "cruciate"},
        "index FDS": {"size": "4-0", "stitch": "horizontal mattress"},
    }


def test_a_line_that_names_its_own_keeps_it() -> None:
    words = FOUND + "\nDone:\n a) FDS ring: 2 strands 3-0 Ethibond\n b) FCU: 4 strands 2-0 Ethibond\n"
    assert each(words, "strands") == {"ring FDS": 2, "FCU": 4}


def test_one_mark_alone_answers_nothing() -> None:
    words = FOUND + "\nAfterwards:\n a) splint\n d) therapy on day 4\n"
    assert not each(words, "treatment")


def test_profundus_of_all_fingers_whole_at_a_wrist() -> None:
    words = "Zone V. FCU and FDS of the ring and small fingers severed. Profundus of all fingers intact."
    extents = each(words, "extent")
    assert [extents.get(f"{digit} FDP") for digit in ("index", "middle", "ring", "small")] == ["intact"] * 4


def test_profundus_of_all_fingers_cut_is_of_those_named() -> None:
    words = "FCU and FDS of the ring and small fingers severed. Profundus of all fingers severed."
    assert "index FDP" not in each(words, "extent")
