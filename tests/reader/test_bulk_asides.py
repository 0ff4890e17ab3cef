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


SEWN_THUMB = "Thumb, zone II. FPL cut. FPL sewn with six strands of 3-0 Ethibond"


@pytest.mark.parametrize(
    "words",
    [
        ", knots inside; NO epitendinous (too bulky)",
        ". No epitendinous suture because it would be bulky.",
        ". No peripheral stitch (bulk).",
        ", no epitendinous, too bulky.",
        ". No peripheral stitch since it would have been too bulky.",
    ],
)
def test_why_no_peripheral_suture_was_put(words: str) -> None:
    assert each(SEWN_THUMB + words, "bulk") == {}
    assert each(SEWN_THUMB + words, "peripheral") == {"thumb FPL": "absent"}


@pytest.mark.parametrize(
    ("words", "value"),
    [(". No epitendinous suture. The repair was bulky.", "present"), (". Not bulky, no epitendinous.", "none")],
)
def test_bulk_told_beside_it(words: str, value: str) -> None:
    assert each(SEWN_THUMB + words, "bulk") == {"thumb FPL": value}
