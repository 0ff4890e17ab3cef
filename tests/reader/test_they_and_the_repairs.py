"""'They', 'the superficialis repairs', 'trim the loose fibers': of several tendons told as a kind, which are meant."""

import pytest
from reader_sentences import each, told

SIX = (
    "Right hand, zone III. The FDP and FDS of the middle, ring and small fingers were all divided. The small finger "
    "superficialis was half divided. Each profundus was repaired with a Becker core of 3-0 Ticron. "
)


@pytest.mark.parametrize(
    "words",
    [
        "The superficialis tendons were thinner. In the middle and ring fingers they received a modified Kessler of "
        "4-0 Ticron, and in the small finger I was content to trim the loose fibers.",
        "The superficialis tendons were flat. I gave them a modified Kessler of 4-0 Ticron in the middle and ring "
        "fingers; in the small finger the loose edge was trimmed.",
    ],
)
def test_they_are_the_kind_told_before(words: str) -> None:
    stitches = each(SIX + words, "stitch")
    assert stitches["middle FDS"] == stitches["ring FDS"] == "modified kessler"
    assert stitches["middle FDP"] == stitches["ring FDP"] == "becker"
    assert each(SIX + words, "treatment")["small FDS"] == "trimmed"


@pytest.mark.parametrize(
    "words",
    [
        "A running 6-0 Prolene was added around each profundus; the superficialis repairs were left without one.",
        "Each profundus was finished with a running 6-0 Prolene. The superficialis repairs did not get one.",
    ],
)
def test_repairs_without_a_finger_are_not_of_the_finger_named_last(words: str) -> None:
    note = (
        "Both flexors of the ring and small fingers were cut; the small superficialis was only nicked. The ring "
        "superficialis was sewn with a two-strand modified Kessler of 4-0 Ticron. In the small finger I looked at it. "
    )
    assert "small FDS" not in each(note + words, "treatment")
    assert each(note + words, "peripheral").get("small FDS") != "present"
    assert each(note + words, "peripheral")["ring FDS"] == "absent"


@pytest.mark.parametrize(
    ("words", "cut"),
    [
        ("The ring FDP was cut except that 20 percent of the fibers still held on the radial side.", 80),
        ("FDP of the ring finger was divided, but 30% of its width was still attached.", 70),
        ("FDP of the ring finger was divided through 30% of its width.", 30),
    ],
)
def test_a_share_that_still_holds_is_not_the_share_cut(words: str, cut: int) -> None:
    assert told(words, "extent", "extent_percent") == {"ring FDP": {"extent": "partial", "extent_percent": cut}}
