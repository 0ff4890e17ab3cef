"""What a note shows struck through is no finding; what was left standing is."""

import pytest
from reader_sentences import each, quote_of, told

SEWN = "Ring finger FDP divided, repaired with two strands.\n"


@pytest.mark.parametrize(
    ("line", "glide"),
    [
        ("Glide (delete as applicable): ~~free~~ / catching / ~~restricted~~", "catching"),
        ("Glide: free / ~~catching~~ / ~~restricted~~", "free"),
        ("Glide: <s>free</s> / catching", "catching"),
        ("Glide: <del>free</del> <del>restricted</del> catching", "catching"),
        ("Glide: f\u0336r\u0336e\u0336e\u0336 / catching", "catching"),
    ],
)
def test_struck_options(line: str, glide: str) -> None:
    assert each(SEWN + line, "glide") == {"ring FDP": glide}


@pytest.mark.parametrize("line", ["Core: ~~3-0~~ 4-0 ~~Ethibond~~ Prolene.", "Core: <s>3-0 Ethibond</s> 4-0 Prolene."])
def test_struck_words_of_a_suture(line: str) -> None:
    facts = told(SEWN + line, "size", "material", "strands")["ring FDP"]
    assert facts == {"size": "4-0", "material": "polypropylene", "strands": 2}
    assert quote_of(SEWN + line, "ring FDP", "size") == "4-0"


@pytest.mark.parametrize("line", ["Glide (delete as applicable): free / catching", "Glide: free ~ catching?"])
def test_options_nobody_struck_stay_open(line: str) -> None:
    assert each(SEWN + line, "glide") == {}


def test_a_single_wave_strikes_nothing() -> None:
    assert each(SEWN + "Purchase ~10 mm each side, 4-0 Prolene ~ free glide.", "glide") == {"ring FDP": "free"}
