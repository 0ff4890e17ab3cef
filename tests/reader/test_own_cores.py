"""A core suture told without a name is not that of a tendon which is told its own, by name, behind it."""

import pytest
from reader_sentences import each, told

_HEAD = "R middle finger. FDP divided completely. FDS divided completely. "


@pytest.mark.parametrize(
    ("words", "slip"),
    [
        (
            "Proximal tendons brought up. Core: M-Tang 6 strand, 4-0 looped nylon. Epitendinous: 6-0 nylon, running.\n"
            "FDS radial slip: 2 strand modified Kessler 5-0 Prolene.",
            "middle FDS radial",
        ),
        (
            "Proximal tendons delivered. Core suture Savage six strand with 4-0 Ticron. Running 6-0 around.\n"
            "FDS ulnar slip: horizontal mattress 5-0 PDS.",
            "middle FDS ulnar",
        ),
        (
            "\nCore suture: cruciate, 4 strand 3-0 Ethibond. Epitendinous 6-0 nylon.\nFDS: figure-of-eight 4-0.",
            "middle FDS",
        ),
    ],
)
def test_first_core_is_the_deep_flexors(words: str, slip: str) -> None:
    found = told(_HEAD + words, "stitch", "peripheral", "strands")
    assert {"stitch", "strands", "peripheral"} <= found["middle FDP"].keys()
    assert found["middle FDP"]["stitch"] != found[slip]["stitch"]
    assert "peripheral" not in found[slip]


@pytest.mark.parametrize(
    "words",
    [
        "Both tendons repaired: modified Kessler, 4-0 Prolene. FDS: 5-0 epitendinous as well.",
        "Both tendons were sewn with a modified Kessler of 4-0 Prolene. FDS: one mattress stitch besides.",
    ],
)
def test_core_told_of_both_stays(words: str) -> None:
    assert each(_HEAD + words, "stitch") == {"middle FDP": "modified kessler", "middle FDS": "modified kessler"}


def test_second_core_without_another_stitch() -> None:
    words = "FDP: cruciate 3-0, 4 strands. FDS lifted up. Modified Kessler 4-0. FDS: modified Kessler 4-0 Prolene."
    assert each(_HEAD + words, "stitch") == {"middle FDP": "cruciate", "middle FDS": "modified kessler"}
