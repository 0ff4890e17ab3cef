"""A rod sewn to the stump is no repair; a tendon cut out that a pulley was made of is not the pulley."""

import pytest
from reader_sentences import each

CUT = "Ring finger, FDP and FDS cut in zone II and scarred. "


@pytest.mark.parametrize(
    "words",
    [
        "I put in a silicone rod, and sewed its tail to the stump of the profundus with 4-0 Ethibond.",
        "We laid in a silastic rod and tacked its end to the profundus stump with 3-0 Prolene.",
    ],
)
def test_a_rod_sewn_to_the_stump(words: str) -> None:
    assert (each(CUT + words, "treatment"), each(CUT + words, "size")) == ({}, {})


def test_the_tendon_sewn() -> None:
    assert each(CUT + "I sewed the profundus with 4-0 Ethibond.", "size") == {"ring FDP": "4-0"}


@pytest.mark.parametrize(
    "words",
    [
        "The A2 was gone and I rebuilt it with a strip of the superficialis I had just removed.",
        "A2 was rebuilt with a slip of the FDS which had been resected.",
    ],
)
def test_made_of_what_was_cut_out(words: str) -> None:
    assert each(CUT + words, "finding", group="pulleys") == {"ring A2": "reconstructed"}


def test_the_pulley_cut_out_after_all() -> None:
    words = "A2 was rebuilt with a slip of the FDS but it had frayed and I removed it."
    assert each(CUT + words, "finding", group="pulleys") == {"ring A2": "excised"}
