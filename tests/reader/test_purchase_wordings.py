"""How much tendon a core holds: labels of forms, and words of where the thread goes in or how far it runs."""

import pytest
from reader_sentences import each

CORE = "Ring FDP cut through, zone II. FDP: four-strand cruciate, 3-0 Ticron. "


@pytest.mark.parametrize(
    ("note", "low", "high"),
    [
        ("Bite from cut end: 9 mm each side.", 9, 9),
        ("Bites: 8 / 10", 8, 10),
        ("FDP purchase (mm) ...... 7-8", 7, 8),
        ("Bites 9", 9, 9),
        ("Core hold 1 cm each side.", 10, 10),
        ("It was locked into the tendon with about a centimetre of hold.", 10, 10),
        ("The thread was woven into the last 12 mm of the FDP.", 12, 12),
        ("Criss-cross in the tendon over 10 mm.", 10, 10),
        ("The sutures run up the tendon 10 mm in Krackow fashion.", 10, 10),
        ("I took ten mil on the far side and the same on the near one.", 10, 10),
        ("Each bite about 1 cm away from the cut end.", 10, 10),
        ("The tendon is gripped 8 to 9 mm from the stump.", 8, 9),
        ("Bites of ten either side.", 10, 10),
        ("1 cm each end.", 10, 10),
        ("12 mm up, 10 mm down.", 10, 12),
        ("Purch 11 mm.", 11, 11),
        ("Ten milimetres each side, no sorry not ten, eight milimetres each side.", 8, 8),
    ],
)
def test_tendon_held(note: str, low: float, high: float) -> None:
    assert each(CORE + note, "purchase_mm") == {"ring FDP": (low, high)}


@pytest.mark.parametrize(
    "note",
    [
        "Hold 10 minutes.",
        "The ends were cut back, 6 mm from each.",
        "The last 12 mm of the wound was left open.",
        "A2 vented over 8 mm.",
        "Purchase: ____ mm",
    ],
)
def test_no_tendon_held(note: str) -> None:
    assert each(CORE + note, "purchase_mm") == {}


@pytest.mark.parametrize("line", ["Purchase (mm): 10", "Bite from cut end: 10 mm"])
def test_a_length_below_two_tendons_is_given_to_neither(line: str) -> None:
    form = "Ring finger: FDP and FDS cut through.\nSuture: 3-0 Ticron (FDP) / 4-0 Ticron (FDS)\n"
    assert each(form + line, "purchase_mm") == {}
