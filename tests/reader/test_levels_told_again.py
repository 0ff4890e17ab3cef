"""Zones told as the level of the finger before, and as a dictation hears their number."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    "text",
    [
        "Index: FDP cut by 70%, zone II. Long: profundus cut by 25%, same level.",
        "Index: FDP completely torn, zone II. Middle: FDP completely torn at the same level.",
    ],
)
def test_the_same_level(text: str) -> None:
    assert each(text, "zone") == {"index FDP": "II", "middle FDP": "II"}


def test_a_nerve_at_the_same_level() -> None:
    text = (
        "Ring: FDP completely cut, zone II. Small finger: ulnar digital nerve cut at the same level. FDP of the small"
        " finger completely cut."
    )
    assert each(text, "zone") == {"ring FDP": "II"}


@pytest.mark.parametrize(
    "text",
    [
        "Preop diagnosis laceration left ring finger zone to flexor tendon. The FDP was completely cut.",
        "Left ring finger, the FDP was completely cut in zone too.",
        "Left ring finger laceration zone to. FDP completely cut.",
    ],
)
def test_a_zone_misheard(text: str) -> None:
    assert each(text, "zone") == {"ring FDP": "II"}


@pytest.mark.parametrize(
    "text",
    [
        "Left ring finger. FDP completely cut in the zone to the left of the wound.",
        "Left ring finger. FDP completely cut. Scar ran from zone to zone.",
    ],
)
def test_a_zone_that_leads_on(text: str) -> None:
    assert each(text, "zone") == {}


@pytest.mark.parametrize(
    ("line", "zone"),
    [("LEVEL   V, above the crease", "V"), ("Zone      IIB", "IIB"), ("Level     III\nConsent   signed", "III")],
)
def test_a_level_behind_a_wider_gap(line: str, zone: str) -> None:
    assert each(f"FDP index cut through.\n\n{line}\n", "zone") == {"index FDP": zone}


def test_a_level_that_is_no_zone() -> None:
    assert each("FDP index cut through.\n\nLEVEL   above the crease\n", "zone") == {}
