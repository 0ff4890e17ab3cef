"""'A2 was opened because the suture caught' is no suture of A2; a repair 'under some pull' was not pulled on."""

import pytest
from reader_sentences import each, told

CUT = "Ring FDP cut through and repaired with 3-0 Ethibond. "


@pytest.mark.parametrize(
    "words",
    [
        "A2 was opened over 8 mm because the suture caught.",
        "A2 of the ring finger is opened by 8 mm since the suture stumbled at its border.",
        "A2 was vented 8 mm so that the suture could pass.",
        "A2 opened 8 mm as the repair caught on it.",
    ],
)
def test_why_it_was_opened(words: str) -> None:
    assert told(CUT + words, group="pulleys") == {"ring A2": {"finding": "vented", "extent_mm": 8}}


@pytest.mark.parametrize("words", ["A2 was opened over 8 mm and closed by suture.", "A2 cut, suture of A2 with 5-0."])
def test_sewn_again(words: str) -> None:
    assert each(CUT + words, "finding", group="pulleys") == {"ring A2": "repaired"}


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("With the wrist straight the repair was under some pull.", {"tension": "present"}),
        ("The repair lay under a little pull.", {"tension": "present"}),
        ("The repair was under no pull.", {"tension": "none"}),
        ("On a gentle pull in the palm it ran freely.", {"test": "traction"}),
    ],
)
def test_pull(words: str, expected: dict[str, object]) -> None:
    assert told(CUT + words, "tension", "test") == {"ring FDP": expected}


def test_a_slip_we_resect() -> None:
    note = "Ring FDP and FDS cut through. The radial slip we suture with 4-0, and the ulnar slip we resect for room."
    assert each(note, "treatment") == {"ring FDS radial": "repaired", "ring FDS ulnar": "excised"}
