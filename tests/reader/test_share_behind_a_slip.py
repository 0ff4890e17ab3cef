"""'Cut only in its radial slip, to about one third': the share behind the comma is of that slip."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    ("words", "slip", "share"),
    [
        ("The ring FDS was cut only in its ulnar slip, to about one quarter; the radial slip was whole.", "ulnar", 25),
        (
            "The superficialis of the ring was divided in its radial slip, by about 40%; its ulnar slip was intact.",
            "radial",
            40,
        ),
        ("Ring FDS was cut in its radial slip, to roughly a half.", "radial", 50),
    ],
)
def test_share_of_a_slip(words: str, slip: str, share: int) -> None:
    assert each(words, "extent")[f"ring FDS {slip}"] == "partial"
    assert each(words, "extent_percent") == {f"ring FDS {slip}": share}


def test_stumps_of_all_are_not_of_what_was_cut_in_part() -> None:
    words = (
        "Middle FDP divided completely. In the ring finger the superficialis was cut only in its radial slip, to about"
        " one third; the ulnar slip was untouched. All the stumps were clean."
    )
    assert "ring FDS radial" not in each(words, "ends")


def test_a_slip_cut_through_beside_a_whole_one() -> None:
    words = "The ring FDS was cut in its radial slip, the ulnar slip was intact."
    assert each(words, "extent") == {"ring FDS radial": "complete", "ring FDS ulnar": "intact"}


def test_share_of_a_wound_is_no_share_of_the_tendon() -> None:
    words = "The ring FDP was cut through. The wound was extended to about one third of the finger."
    assert not each(words, "extent_percent")
