"""Faxes: letters lost inside a word, and running text with wide gaps that is no grid."""

import pytest
from reader_sentences import each

from notereader.reader.text.lost_letters import with_lost_letters

CUT = "Ring finger. FDP completely divided and repaired with a four-strand cruciate, 4-0 Ethibond. "


@pytest.mark.parametrize(
    ("words", "field", "value"),
    [
        ("6-0 Prolene c ntinuous circumf rential.", "peripheral_size", "6-0"),
        ("Ep tendinous 6-0 Prolene.", "peripheral", "present"),
        ("Pulled on the repair: no gapp ng.", "gap", "none"),
    ],
)
def test_a_letter_lost_inside_a_word(words: str, field: str, value: str) -> None:
    assert each(CUT + words, field) == {"ring FDP": value}


def test_only_the_lost_letter_is_filled() -> None:
    assert with_lost_letters("no gapp ng, gap ring") == "no gapping, gap ring"


def test_running_text_with_wide_gaps_is_no_grid() -> None:
    note = (
        "Right ring finger.\n"
        "A2 pulley - distal third incised\n"
        "to allow  access.   A4 preserved.   F.D.P.  -  4 strand  Strickland\n"
        "(Indiana)  with 4/0 Ethibond, knots buried between the ends;  6/0\n"
        "Prolene  continuous circumferential.   F.D.S. ulnar slip  -  single mod.\n"
        "Kessler  5/0 Ethibond.    Full passive  excursion:  glides freely beneath\n"
        "A2, no gapping.\n"
    )
    assert each(note, "size") == {"ring FDP": "4-0", "ring FDS ulnar": "5-0"}
    assert each(note, "material") == {"ring FDP": "braided polyester", "ring FDS ulnar": "braided polyester"}
