"""Words of bulk that tell of no repair that it is bulky or slim."""

import pytest
from reader_sentences import each

SEWN = "Thumb FPL divided, repaired with a four-strand 3-0 Ethibond core. "


@pytest.mark.parametrize(
    "words",
    [
        "Bulk acceptable.",
        "The bulk of the repair was tolerable.",
        "It slid under A2 with no bunching.",
        "It ran in the sheath without bunching or catching.",
    ],
)
def test_nothing_is_told(words: str) -> None:
    assert each(SEWN + words, "bulk") == {}


@pytest.mark.parametrize(
    ("words", "bulk"),
    [("No bunching of the repair.", "none"), ("Bulk: acceptable, not bulky.", "none"), ("It was bulky.", "present")],
)
def test_what_is_told_stays_told(words: str, bulk: str) -> None:
    assert each(SEWN + words, "bulk") == {"thumb FPL": bulk}
