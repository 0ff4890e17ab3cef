"""A cut not worth a stitch was left; and the pulp of a finger is no state of a tendon's ends."""

import pytest
from reader_sentences import each

CUT = "Middle finger. FDP cut through, repaired with 3-0 Ethibond. "


@pytest.mark.parametrize(
    "words",
    [
        "FDS just a nick not worth a stitch.",
        "FDS nicked, not worth a suture.",
        "The FDS had a small flap, hardly worth repairing.",
        "FDS nicked and not thought worth repairing.",
        "The FDS nick was not judged worth a stitch.",
    ],
)
def test_not_worth_a_stitch(words: str) -> None:
    assert each(CUT + words, "treatment") == {"middle FDP": "repaired", "middle FDS": "left"}


@pytest.mark.parametrize(
    "words",
    [
        "FDS nicked; a suture was not worth the bulk.",
        "An epitendinous was not worth a stitch.",
        "The nerve nick was not worth a stitch.",
        "It was not worth the time to look for the FDS.",
    ],
)
def test_not_worth_something_else(words: str) -> None:
    assert each(CUT + words, "treatment") == {"middle FDP": "repaired"}


def test_not_worth_sewing_and_cut_away() -> None:
    words = "The radial slip of the FDS was cut through and not worth sewing, and I cut it away."
    assert each(CUT + words, "treatment").get("middle FDS radial") in (None, "excised")


def test_worth_repairing() -> None:
    words = "FDS cut through, it was worth repairing, so 4-0 Kessler."
    assert each(CUT + words, "treatment")["middle FDS"] == "repaired"


def test_slips_that_are_removed() -> None:
    words = "FDS cut through, not sutured, but both slips are removed."
    assert each(CUT + words, "treatment")["middle FDS"] == "excised"


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("On traction on the profundus the finger bent until the pulp touched the palm.", {}),
        ("Both ends of the FDP were pulp.", {"middle FDP": "crushed"}),
        ("The ends were frayed and soft.", {"middle FDP": "ragged"}),
        ("The ends were soft.", {"middle FDP": "attenuated"}),
    ],
)
def test_pulp_and_soft_ends(words: str, expected: dict[str, object]) -> None:
    assert each(CUT + words, "ends") == expected
