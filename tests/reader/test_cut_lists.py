"""Lists of what was cut, and what a list names as whole at its end."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    "words",
    [
        "Complete division of the ring FDP with the FDS intact.",
        "Ring finger: complete laceration of FDP, with its FDS intact.",
        "There was a complete division of the ring FDP, the FDS intact.",
    ],
)
def test_a_whole_tendon_behind_a_cut_one(words: str) -> None:
    assert told(words, "extent") == {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "intact"}}


@pytest.mark.parametrize(
    ("words", "cut"),
    [
        ("There was complete division of the FCR, the median nerve and the PL, with the FPL intact.", {"FCR", "PL"}),
        ("Complete laceration of the FCU, the ulnar nerve, the ulnar artery and the PL.", {"FCU", "PL"}),
    ],
)
def test_nerves_in_a_list_of_cut_tendons(words: str, cut: set[str]) -> None:
    found = told(f"Left wrist. {words}", "extent")
    assert {name.split()[-1] for name, facts in found.items() if facts["extent"] == "complete"} == cut
