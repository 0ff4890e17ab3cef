"""Anaesthesia that a label asks for or another of the family had, ranks, splints worn in all, labels left open."""

import pytest
from reader_sentences import each, record_of


def _of(text: str, group: str) -> dict[str, object]:
    return {p.field: f.value for p, f in record_of(text).walk() if p.group == group}


@pytest.mark.parametrize(
    "words",
    [
        "Asleep / awake: wide awake local",
        "Awake or asleep: wide awake local",
        "He chose WALANT because his dad had trouble after a general.",
    ],
)
def test_nobody_slept(words: str) -> None:
    assert _of(f"{words}\nFDP index repaired.", "operation")["anaesthesia"] == "wide-awake local"


def test_asleep_all_the_same() -> None:
    assert _of("Asleep / awake: asleep, LMA\nFDP index repaired.", "operation")["anaesthesia"] == "general"


@pytest.mark.parametrize("rank", ["Lt Cdr", "Lt Col"])
def test_a_rank_is_no_side(rank: str) -> None:
    note = f"operator | {rank} Ashbourne\nwhich | RIGHT hand\nFDP index repaired."
    assert _of(note, "operation")["side"] == "right"


def test_a_left_hand() -> None:
    assert _of("Lt hand, FDP index repaired.", "operation")["side"] == "left"


@pytest.mark.parametrize(
    ("words", "weeks"),
    [
        ("Place and hold x 4 wk inside splint, splint 6 wk altogether.", (6, 6)),
        ("Place and hold for 3 weeks in the splint, splint 6 weeks in all.", (6, 6)),
        ("Dorsal slab, wrist 20. Stays 6/52.", (6, 6)),
        ("Dorsal splint. We expect to keep her in it at least six weeks.", (6, None)),
        ("Dorsal splint. He is to stay in it for six weeks.", (6, 6)),
    ],
)
def test_how_long_it_is_worn(words: str, weeks: object) -> None:
    value = _of(f"FDP ring repaired. Post-op: {words}", "aftercare")["splint_weeks"]
    assert (value.low, value.high) == weeks  # type: ignore[attr-defined]


def test_not_how_long_it_is_worn() -> None:
    assert "splint_weeks" not in _of("FDP ring repaired. Post-op: dorsal slab. Stays in hospital 1/52.", "aftercare")


@pytest.mark.parametrize(
    ("words", "kind"),
    [
        ("plaster on the back of the hand and forearm", "dorsal blocking"),
        ("a slab on the back of the hand", "dorsal blocking"),
        ("a splint on the back of the end joint", "other"),
    ],
)
def test_on_the_back_of_the_hand(words: str, kind: str) -> None:
    assert _of(f"FDP ring repaired. Post-op: {words}, wrist 20 flexed.", "aftercare")["splint"] == kind


@pytest.mark.parametrize("words", ["IP's in full extension", "fingers otherwise straight", "PIP's and DIP's straight"])
def test_the_finger_joints(words: str) -> None:
    value = _of(f"FDP ring repaired. Dorsal splint: wrist 10 flexed, MP 70, {words}.", "aftercare")["ip_flexion_deg"]
    assert (value.low, value.high) == (0, 0)  # type: ignore[attr-defined]


@pytest.mark.parametrize(
    "words",
    [
        "Assistant: not recorded\nBlood loss: not documented\nImplants: not stated",
        "ASSISTANT       [not recorded]\nBLOOD LOSS      [not recorded]\nIMPLANT   [not stated]",
        "SPEC=                    IMPL=            EBL=",
    ],
)
def test_labels_nobody_filled_in(words: str) -> None:
    found = _of(f"{words}\nFDP ring repaired.", "elements")
    assert found.keys().isdisjoint(["assistant", "blood_loss", "implants", "specimens"])


def test_labels_filled_in() -> None:
    found = _of("Assistant: none\nBlood loss: nil\nImplants: none\nFDP ring repaired.", "elements")
    assert {"assistant", "blood_loss", "implants"} <= found.keys()


@pytest.mark.parametrize("words", ["FCR ran over the edge of the plate", "FPL ran over the same spike"])
def test_a_tendon_that_ran_over_an_edge(words: str) -> None:
    assert "mechanism" not in _of(f"{words} and proved frayed. It was smoothed.", "operation")


def test_a_wheel_that_ran_over_a_hand() -> None:
    note = "Injury: a trolley ran over the hand yesterday. Ring FDP cut completely."
    assert _of(note, "operation")["mechanism"] == "crush"


def test_asked_to_flex_the_wrist() -> None:
    note = "FCU repaired, four strands. Wrist: asked him to flex against my thumb, five times. No gap."
    assert each(note, "test") == {"FCU": "active"}
