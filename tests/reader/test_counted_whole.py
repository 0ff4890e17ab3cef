"""'All nine were intact', 'the remaining flexors', 'the other profundi, FDS small and FCU': whole, told by a count."""

from itertools import product

import pytest
from reader_sentences import each

FINGERS = ("index", "middle", "ring", "small")
DEEP = [f"{digit} FDP" for digit in FINGERS]
EIGHT = [*DEEP, *(f"{digit} FDS" for digit in FINGERS)]
HEAD = "Exploration of the right wrist. "
LISTS = {
    "the superficialis and profundus tendons of all four fingers and the flexor pollicis longus": [*EIGHT, "thumb FPL"],
    "the four profundus tendons": DEEP,
    "FDP and FDS of the middle and ring fingers and the FPL": [
        *(f"{digit} {tendon}" for digit in ("middle", "ring") for tendon in ("FDP", "FDS")),
        "thumb FPL",
    ],
    "all nine flexor tendons": [*EIGHT, "thumb FPL"],
}
COUNTS = {4: "all four", 5: "all five", 9: "all nine"}
SAYINGS = [
    "I freed {tendons}. Each of these tendons was inspected and {count} were intact.",
    "The synovium was stripped from {tendons}; {count} tendons were whole.",
    "We looked at {tendons} in turn. {count} of them were found intact.",
]


@pytest.mark.parametrize(("tendons", "saying"), list(product(LISTS, SAYINGS)))
def test_as_many_as_named_are_whole(tendons: str, saying: str) -> None:
    words = saying.format(tendons=tendons, count=COUNTS[len(LISTS[tendons])])
    assert each(HEAD + words, "extent") == dict.fromkeys(LISTS[tendons], "intact")


@pytest.mark.parametrize(
    "words",
    [
        "I freed the four profundus tendons and the FPL. All four were intact.",
        "I freed the four profundus tendons. All four pulleys were intact.",
        "I freed the four profundus tendons. All four were intact except the index.",
        "I freed the median nerve. All nine were intact.",
    ],
)
def test_another_count_says_nothing(words: str) -> None:
    assert "index FDP" not in each(HEAD + words, "extent")


WRIST = "Zone V, left wrist. FPL and FDS of the middle and ring fingers were severed. "


@pytest.mark.parametrize(
    "words",
    [
        "The remaining flexors were intact.",
        "The other flexor tendons were whole.",
        "The remaining flexors were intact to inspection, in particular the four profundus tendons.",
    ],
)
def test_the_remaining_flexors(words: str) -> None:
    whole = dict.fromkeys([*DEEP, "index FDS", "small FDS"], "intact")
    cut = dict.fromkeys(["thumb FPL", "middle FDS", "ring FDS"], "complete")
    assert each(WRIST + words, "extent") == whole | cut


@pytest.mark.parametrize("words", ["The other flexor sheath was intact.", "The remaining wrist flexors were intact."])
def test_other_things_of_a_flexor(words: str) -> None:
    assert "index FDP" not in each(WRIST + words, "extent")


def test_one_cut_somehow_is_not_among_the_rest() -> None:
    words = "Zone V, left wrist. FCU and FDS ring cut. Remaining flexor tendons not injured."
    assert "ring FDS" not in each(words, "extent")


@pytest.mark.parametrize("last", ["the superficialis of the small finger and FCU", "the FDS of the small finger"])
def test_the_remaining_of_a_kind_and_another(last: str) -> None:
    head = "Left wrist. FCR and the profundi of the index and middle were severed. "
    found = each(f"{head}The remaining profundi, {last} were intact.", "extent")
    assert {name for name, extent in found.items() if extent == "intact"} >= {"ring FDP", "small FDP", "small FDS"}
    assert found["index FDP"] == found["middle FDP"] == "complete"


SEWN = "Left wrist. FPL completely severed and repaired. FDS index scored to a tenth of its thickness. "


@pytest.mark.parametrize(
    "words",
    [
        "The step-cut was sewn together so that the tendons would not bow.",
        "The fascia was sutured over the tendons.",
        "The roof was repaired lest the tendons bowstring.",
        "The divided tendons were sewn with a Becker.",
    ],
)
def test_what_is_sewn_for_the_tendons_sake(words: str) -> None:
    assert each(SEWN + words, "treatment") == {"thumb FPL": "repaired"}
