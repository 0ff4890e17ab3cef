"""'10 mm of tendon prox. and 8 dist.': the second length, told without its unit, with the other end."""

import pytest
from reader_sentences import each

REPAIRED = "Right middle finger. FDP completely divided and repaired with 3-0 Ticron. "


@pytest.mark.parametrize(
    "words",
    [
        "Took 10 mm of tendon prox. and 8 dist.",
        "Took 10 mm of tendon on the near side and 8 on the far.",
        "Purchase was 10 mm of tendon proximally and 8 distally.",
    ],
)
def test_each_with_its_end(words: str) -> None:
    assert each(REPAIRED + words, "purchase_mm") == {"middle FDP": (8, 10)}


@pytest.mark.parametrize(
    "words", ["Purchase 10 mm on the near side, with 6 throws of 6-0 on the far side.", "Purchase 10 mm proximally."]
)
def test_another_figure_is_no_length(words: str) -> None:
    assert each(REPAIRED + words, "purchase_mm") == {"middle FDP": (10, 10)}
