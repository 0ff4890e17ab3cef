"""'It' is not the tendon something lay under; and small words that bound a length or deny a bulk."""

import pytest
from reader_sentences import each, told

CUT = "Right index. FDP and FDS completely cut, zone II. "
SEWN = "Right index. FDP cut, repaired with 3-0 Ethibond. "


@pytest.mark.parametrize(
    "words",
    [
        "The ulnar slip would not go back under the FDP so I cut it out.",
        "The ulnar slip of FDS would not pass beneath the profundus, so it was excised.",
        "FDS ulnar slip - lay underneath the FDP so I snipped it out.",
        "The ulnar slip of FDS was curled up beside the profundus, and I excised it.",
        "The ulnar slip had balled itself next to the FDP; it was cut out.",
    ],
)
def test_it_is_not_the_tendon_it_lay_under(words: str) -> None:
    assert each(CUT + words, "treatment") == {"index FDS ulnar": "excised"}


def test_a_tendon_told_of_behind_the_place() -> None:
    note = CUT + "The ulnar slip lay under the FDP, which was repaired with 3-0 Ethibond."
    assert each(note, "treatment") == {"index FDP": "repaired"}


@pytest.mark.parametrize("words", ["I took the whole of the FDS out.", "We took all of the superficialis out."])
def test_all_of_it_taken_out(words: str) -> None:
    assert each(CUT + words, "treatment") == {"index FDS": "excised"}


@pytest.mark.parametrize("words", ["bites of 8 mm at least", "purchase 8 mm or more", "purchase 8 mm+"])
def test_so_much_or_more(words: str) -> None:
    assert each(f"{SEWN}Double Kessler, {words}.", "purchase_mm") == {"index FDP": (8, None)}


@pytest.mark.parametrize("words", ["purchase 8 mm + 6-0 Prolene epitendinous", "bites 8 mm + running 6-0 Prolene"])
def test_a_length_and_then_the_next_suture(words: str) -> None:
    assert each(f"{SEWN}Double Kessler, {words}.", "purchase_mm") == {"index FDP": (8, 8)}


@pytest.mark.parametrize("total", ["4 mm altog.", "4 mm altogether"])
def test_lengths_summed_up_in_brackets(total: str) -> None:
    note = f"Left thumb. FPL complete. prox end frayed, dist end frayed; 2 mm off each ({total})"
    assert each(note, "trimmed_mm") == {"thumb FPL": 4}


@pytest.mark.parametrize(
    ("words", "value"),
    [
        ("I wouldn't call it bulky.", "none"),
        ("Nobody would call it bulky.", "none"),
        ("I would call it bulky.", "present"),
    ],
)
def test_what_one_would_call_it(words: str, value: str) -> None:
    assert each(SEWN + words, "bulk") == {"index FDP": value}


@pytest.mark.parametrize("words", ["Tension none. Bulk ***. Drain none.", "Gap: none\nBulk ____.\n"])
def test_a_bulk_left_blank(words: str) -> None:
    assert told(SEWN + words, "bulk") == {}
