"""A pulley that was whole or mended and gave way later is whole no more."""

import pytest
from reader_sentences import each, told

HEAD = "The ring FDP was transected and repaired with four strands. "


def _findings(text: str) -> dict[str, object]:
    return {name: facts["finding"] for name, facts in told(HEAD + text, "finding", group="pulleys").items()}


@pytest.mark.parametrize(
    ("text", "finding"),
    [
        ("A4 was kept. While delivering the stump, however, it split; the shreds were removed.", "excised"),
        ("A4 was intact on exposure. On closing the wound it tore across.", "injured"),
        ("A2 was kept. In the end nothing of A2 remained.", "injured"),
        ("A4 was preserved. It had frayed and was cut out in the end, so there is no A4 left.", "excised"),
        ("A4 was rebuilt with a graft. On testing the new A4 gave way.", "injured"),
        ("A2 was rebuilt. The new A2 unravelled and was removed as well.", "excised"),
        ("A2 was sutured. In the end it ruptured again.", "injured"),
    ],
)
def test_what_gave_way_later_is_not_whole(text: str, finding: str) -> None:
    assert list(_findings(text).values()) == [finding]


@pytest.mark.parametrize(
    "text",
    [
        "A4 was kept. When the repair was tested, it ripped across.",
        "A2 was preserved. As the tendon was drawn through, it split.",
    ],
)
def test_where_it_may_be_a_tendon_nothing_is_told(text: str) -> None:
    assert _findings(text) == {}


@pytest.mark.parametrize(
    ("text", "finding"),
    [
        ("A4 was intact. When the repair was tested it did not split.", "intact"),
        ("A4 was intact. After this it glided freely.", "intact"),
        ("A2 was sutured. The mended A2 tore again when tested and was redone with 4-0.", "repaired"),
        ("A2 was kept. No A2 was opened.", "intact"),
    ],
)
def test_what_held_or_was_mended_again_stays(text: str, finding: str) -> None:
    assert list(_findings(text).values()) == [finding]


@pytest.mark.parametrize(
    "text",
    [
        "A2 looked sound. Its distal edge had begun to fray and a 3 mm strip of that edge was cut away.",
        "A2 was intact. A sliver of its edge was excised at the end.",
    ],
)
def test_an_edge_cut_away_is_trimmed(text: str) -> None:
    assert _findings(text) == {"ring A2": "trimmed"}


@pytest.mark.parametrize(
    "words",
    ["excised the torn flap", "removed the frayed edge", "cut away its hanging tag"],
)
def test_a_torn_part_that_was_cut_away(words: str) -> None:
    assert each(f"Ring FDP cut. A2: {words}.", "finding", group="pulleys") == {"ring A2": "trimmed"}


@pytest.mark.parametrize("words", ["excised the tags", "excised what was left of it", "excised the torn pulley"])
def test_all_that_was_left_cut_away(words: str) -> None:
    assert each(f"Ring FDP cut. A2 torn, {words}.", "finding", group="pulleys") == {"ring A2": "excised"}
