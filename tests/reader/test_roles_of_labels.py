"""'Epitendinous stitch on FPL: 6-0': the tendon behind 'on' ends the label of its suture and opens no new line."""

import pytest
from reader_sentences import each

SEWN = "Left thumb. FPL divided completely, zone II. FPL joined with a locked cruciate of 3-0 Prolene. "


@pytest.mark.parametrize(
    "words",
    [
        "The epitendinous stitch on FPL: 6-0 Prolene.",
        "Running suture around FPL: 6-0 Prolene, peripheral.",
        "Epitendinous suture on FPL: it was 6-0 Prolene.",
    ],
)
def test_the_thread_behind_the_label_is_the_peripheral_one(words: str) -> None:
    assert each(SEWN + words, "size") == {"thumb FPL": "3-0"}
    assert each(SEWN + words, "peripheral_size") == {"thumb FPL": "6-0"}


def test_a_tendon_that_heads_its_own_suture() -> None:
    note = "Left thumb. FPL divided completely, zone II. Extended on table. FPL: 3-0 Prolene cruciate."
    assert each(note, "size") == {"thumb FPL": "3-0"}
