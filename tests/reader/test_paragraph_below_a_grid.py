"""A paragraph with a title of its own, below rows that stand in columns, is no row of theirs."""

from reader_sentences import each

ROWS = (
    "middle   ulnar N    divided, 3 sutures 9/0      ulnar A    divided, tied off\n"
    "ring     radial N   half cut, 2 epineural sutures\n\n"
)


def test_the_paragraph_is_read_by_itself() -> None:
    note = "Middle FDP and ring FDP divided, sutured with 4/0 Ticron.\n\n" + ROWS
    text = "Comment.  Both fingers were moved. The middle profundus was trimmed 2 mm; it ran freely. Ring: no hitch.\n"
    assert each(note + text, "glide") == {"middle FDP": "free", "ring FDP": "free"}
    other = "On table.  The middle profundus had been trimmed before that by 2 mm. No gap in the ring and middle FDP.\n"
    assert each(note + other, "gap") == {"middle FDP": "none", "ring FDP": "none"}
