"""A label of something that is no tendon, or its state told shortly, says nothing of the repair."""

import pytest
from reader_sentences import told

SEWN = "The FDP of the ring finger was cut in zone II and was repaired. "
ALONE = {"ring FDP": {"zone": "II", "treatment": "repaired"}}


@pytest.mark.parametrize(
    "text",
    [
        "Vincula: intact.",
        "Bone: not injured.",
        "Perfusion intact.",
        "Joint status: intact.",
        "Nerve status: intact.",
        "Pulley condition: A2 intact.",
        "Muscle - intact.",
    ],
)
def test_what_is_whole_is_not_the_tendon(text: str) -> None:
    assert told(SEWN + text) == ALONE


@pytest.mark.parametrize(
    "text",
    [
        "Skin edges: no tension.",
        "Wound: no gap.",
        "Palmar fascia - without tension",
        "Ulnar digital nerve: two strands of 8-0, buried knot.",
        "Artery: running 8-0 nylon.",
    ],
)
def test_sutures_and_results_of_other_things(text: str) -> None:
    assert told(SEWN + text) == ALONE


@pytest.mark.parametrize(
    ("text", "fact"),
    [
        ("Tug from palm: no gap.", ("gap", "none")),
        ("The graft ran free under A2.", ("glide", "free")),
        ("Wound washed; FDP: no tension.", ("tension", "none")),
    ],
)
def test_a_place_or_a_graft_is_no_stranger(text: str, fact: tuple[str, str]) -> None:
    assert told(SEWN + text)["ring FDP"].get(fact[0]) == fact[1]


def test_the_condition_of_the_tendon_is_its_own() -> None:
    assert told("Tendon: ring FDP. Zone: II. Condition: partial.", "extent") == {"ring FDP": {"extent": "partial"}}
