"""Nerves and vessels told whole together, by a fellow, by a denial or by what only seems to speak of them."""

import pytest
from reader_sentences import told
from test_injuries import injuries, ring

WHOLE_NERVES = ring(RN="intact", UN="intact")
WHOLE_ARTERIES = ring(RA="intact", UA="intact")


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        ("Nerves intact.", WHOLE_NERVES),
        ("The nerves were seen and are fine.", WHOLE_NERVES),
        ("The vessels were all intact.", WHOLE_ARTERIES),
        ("Neither nerve of the ring finger had been harmed.", WHOLE_NERVES),
        ("Nerves both looked at with the loupes and neither is cut.", WHOLE_NERVES),
        ("Both digital nerves I saw, and both were fine.", WHOLE_NERVES),
        ("Both digital nerves and both arteries looked perfectly sound.", WHOLE_NERVES | WHOLE_ARTERIES),
        ("Nerves and arteries were seen on both sides and are whole.", WHOLE_NERVES | WHOLE_ARTERIES),
        ("Both nn. + aa. ok.", WHOLE_NERVES | WHOLE_ARTERIES),
        ("Arteries: both bleeding well.", WHOLE_ARTERIES),
        ("The nerves are in continuity, as are both vessels.", WHOLE_NERVES | WHOLE_ARTERIES),
        ("The digital nerves lay well away from the cut and were not harmed.", WHOLE_NERVES),
    ],
)
def test_both_of_a_finger_told_whole_together(sentence: str, lines: dict[str, str]) -> None:
    assert injuries(sentence) == lines


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        ("The radial digital nerve was cut and the ulnar one was not.", ring(RN="complete", UN="intact")),
        ("RDN cut. The ulnar one was not.", ring(RN="complete", UN="intact")),
        ("RDN cut. Its fellow on the ulnar side looked entirely healthy.", ring(RN="complete", UN="intact")),
        ("The radial digital nerve was cut. The other side's nerve I saw: intact.", ring(RN="complete", UN="intact")),
        ("RDN cut. The nerve on the other side was intact.", ring(RN="complete", UN="intact")),
        (
            "Radial digital nerve and radial digital artery cut, ulnar ones spared.",
            ring(RN="complete", RA="complete", UN="intact", UA="intact"),
        ),
        (
            "The radial digital artery and both its nerves were intact.",
            ring(RA="intact", RN="intact", UN="intact"),
        ),
        ("UDN cut, UDA also, but it no longer bleeds.", ring(UN="complete", UA="complete")),
        ("UDN cut. Ulnar artery of the finger: ditto cut.", ring(UN="complete", UA="complete")),
    ],
)
def test_one_told_by_the_other(sentence: str, lines: dict[str, str]) -> None:
    assert injuries(sentence) == lines


@pytest.mark.parametrize(
    "sentence",
    [
        "Bipolar for two vessels.",
        "The vessels of the skin were coagulated, the wound is fine.",
        "Nerves not looked for.",
        "RDN cut; the nerves were repaired later that night elsewhere, fine.",
    ],
)
def test_what_tells_nothing_of_both(sentence: str) -> None:
    assert "intact" not in " ".join(injuries(sentence).values())
    assert not any("artery" in name for name in injuries(sentence))


@pytest.mark.parametrize("rest", ["Rest intact.", "The rest was intact.", "Everything else was found intact."])
def test_the_rest_is_not_the_tendon_cut_before(rest: str) -> None:
    note = f"Ring finger: FDP cut. UDN cut, 9-0 nylon. {rest}"
    assert "extent" not in told(note).get("ring FDP", {})


def test_a_look_at_all_of_a_nerve_is_no_cut() -> None:
    assert injuries("Radial digital nerve: fine, I saw all of it.") == ring(RN="intact")
    assert injuries("The radial digital nerve was intact, we traced all of it.") == ring(RN="intact")
