"""'A bit tight' of a repair is tension, of a pulley or a sheath it tells how the repair ran."""

import pytest
from reader_sentences import told

NOTE = "Left ring finger, FDP completely divided and repaired with four strands of 3-0 Ethibond. "


@pytest.mark.parametrize(
    ("text", "tension"),
    [
        ("It came together a bit tight.", "present"),
        ("Passive extension: no gap, a little tight.", "present"),
        ("The repair did not gap and was tight.", "present"),
        ("It ran freely and it was not tight.", "none"),
        ("Both neither gapped nor is any of them tight; none of them is tight.", "none"),
    ],
)
def test_a_tight_repair(text: str, tension: str) -> None:
    assert told(NOTE + text, "tension")["ring FDP"] == {"tension": tension}


@pytest.mark.parametrize(
    "text",
    [
        "On passive motion it was slightly tight under A2, which was accepted.",
        "On passive motion it ran, a little tight in A4, through the full excursion.",
    ],
)
def test_tight_at_a_pulley(text: str) -> None:
    assert told(NOTE + text, "tension", "glide")["ring FDP"] == {"glide": "restricted"}


@pytest.mark.parametrize(
    "text",
    [
        "The skin was a bit tight.",
        "A4 was a little tight and was vented 3 mm.",
        "The splint was rather tight.",
        "The sheath was quite tight.",
    ],
)
def test_what_is_tight_is_something_else(text: str) -> None:
    assert "tension" not in told(NOTE + text, "tension").get("ring FDP", {})


def test_free_once_the_tight_pulley_was_opened() -> None:
    text = NOTE + "Passive excursion: no gap; tight at A2, which was opened 3 mm at its distal edge, thereafter free."
    assert told(text, "glide")["ring FDP"] == {"glide": "free"}
