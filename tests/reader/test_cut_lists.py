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


@pytest.mark.parametrize(
    "words",
    [
        "It was seen that the FDP of the ring finger was nicked over some twenty per cent of its width and that the "
        "FDS and FDP of the index and middle fingers and the FPL were intact.",
        "On looking along the wound from one side to the other the FCU was found to be cut completely and the "
        "FDP of the ring finger and the FPL were intact.",
    ],
)
def test_a_long_list_of_whole_tendons_stays_together(words: str) -> None:
    found = told(f"Left wrist. {words}", "extent")
    whole = {name.split()[-1] for name, facts in found.items() if facts["extent"] == "intact"}
    assert {"FDP", "FPL"} <= whole


@pytest.mark.parametrize(
    "words",
    [
        "Findings\nRight wrist laceration, zone V, with division of:\n  FPL\n  FDS to ring and small\n  median nerve\n",
        "DIAGNOSIS: Left wrist, zone V, transection of:\n- FPL\n- FDS ring and small\n- median nerve\n",
        "Findings\nWrist cut, complete lacerations of the following:\n- FPL\n- FDS ring and small\n- median nerve\n",
    ],
)
def test_a_longer_head_whose_last_words_lead_to_its_list(words: str) -> None:
    assert {name: facts["extent"] for name, facts in told(words, "extent").items()} == dict.fromkeys(
        ("thumb FPL", "ring FDS", "small FDS"), "complete"
    )
    assert told(words, "extent", group="injuries") == {"median nerve": {"extent": "complete"}}


@pytest.mark.parametrize(
    "words",
    [
        "Findings\nRight wrist wound, to be looked at for division of:\n  FPL\n  FDS to ring and small\n",
        "Findings\nAfter complete division of the skin we looked at these:\n  FPL\n  FDS to ring and small\n",
        "Procedures\nRight wrist wound, zone V, with exploration of:\n  FPL\n  FDS to ring and small\n",
    ],
)
def test_a_longer_head_that_tells_of_no_cut(words: str) -> None:
    assert told(words, "extent") == {}


@pytest.mark.parametrize("words", ["Both divided profundi", "The two cut profundi", "Each severed FDP"])
def test_tendons_named_as_cut_are_none_that_were_whole(words: str) -> None:
    found = told(f"The FDP of the ring and small fingers were not injured. {words}: 3-0 PDS, four strands.", "strands")
    assert found == {}
