"""What was wanted and what was settled; how long a splint is kept on."""

import pytest
from reader_sentences import each

CUT = "Left small finger. FDP cut, repaired with 4-0 nylon. "


@pytest.mark.parametrize(
    ("words", "programme"),
    [
        ("Plan: the registrar wanted early active, settled between us: early passive.", "early passive"),
        ("T. wanted the hand in early passive motion. Settled: immobilised for 4 weeks.", "immobilisation"),
        (
            "Early active, day 4.\n\nAddendum: I wrote early active. I no longer want it: early passive.",
            "early passive",
        ),
        ("Therapy day 4, early active.\n\nAddendum: early passive, from day 4.", "early passive"),
    ],
)
def test_the_programme_settled_on(words: str, programme: str) -> None:
    assert each(CUT + words, "programme", group="aftercare") == {"": programme}


@pytest.mark.parametrize(
    "words",
    [
        "Dorsal splint: wrist 10 extension, MP 50, IP 0. Kept on for 5 weeks.",
        "She wears a dorsal blocking splint, wrist at 20 degrees of flexion. Please keep it on until 5 weeks.",
        "Splint: dorsal blocking.\nLength of splintage: 5 weeks",
    ],
)
def test_how_long_it_is_kept_on(words: str) -> None:
    assert each(CUT + words, "splint_weeks", group="aftercare") == {"": (5, 5)}
