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
        "On passive motion there was no gap. It ran a little tight at the A2 but did not snag.",
        "No gap. It glides a bit tightly beneath A4 without catching.",
        "No gap. It moved somewhat stiffly through A2, no snagging.",
        "No gap. It was a little snug at A4 but did not catch.",
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


def test_snug_of_a_good_fit() -> None:
    assert told(NOTE + "The repair lay snug under A2 and glided freely.", "glide")["ring FDP"] == {"glide": "free"}


def test_free_once_the_tight_pulley_was_opened() -> None:
    text = NOTE + "Passive excursion: no gap; tight at A2, which was opened 3 mm at its distal edge, thereafter free."
    assert told(text, "glide")["ring FDP"] == {"glide": "free"}


@pytest.mark.parametrize(
    ("text", "tension"),
    [
        ("Tight!", "present"),
        ("Wrist bent to bring the ends together = tight.", "present"),
        ("The ends met, tight, with the wrist flexed.", "present"),
        ("Tight? Yes, somewhat.", "present"),
        ("Tight? n     Bulky? n", "none"),
        ("It wasn't tight.", "none"),
        ("Nothing tight.", "none"),
        ("The repair is a bit tense.", "present"),
        ("The ends met without undue force.", "none"),
    ],
)
def test_tight_alone_or_asked(text: str, tension: str) -> None:
    assert told(NOTE + text, "tension")["ring FDP"] == {"tension": tension}


@pytest.mark.parametrize(
    "text", ["The FDP came through to the wound without force.", "Tight? ____", "Tight fist made."]
)
def test_no_word_on_the_tension(text: str) -> None:
    assert told(NOTE + text, "tension") == {}


FIXED = "Ring FDP pulled off its bone, zone I, FDS intact. Reinserted with a pull-out of 3-0 Prolene over a button. "


@pytest.mark.parametrize(
    ("text", "tension"),
    [
        ("The stump edge was tacked to the periosteum with 5-0 PDS. The repair is under slight tension.", "present"),
        ("Ulnar digital nerve: two 9-0 nylon.\nTension: moderate, accepted.", "present"),
        ("Nerve: bruised.\nTension: none.", "none"),
        ("Ulnar digital nerve sewn with 9-0. Passive motion: glides freely, no gap, tension none.", "none"),
        ("FDP: tied down to the distal phalanx, tension a little high.", "present"),
    ],
)
def test_tension_of_a_tendon_behind_other_work(text: str, tension: str) -> None:
    assert told(FIXED + text, "tension")["ring FDP"] == {"tension": tension}


@pytest.mark.parametrize(
    "text",
    [
        "The ulnar digital nerve was sewn with 9-0 nylon. No tension.",
        "Ulnar digital nerve: four 9-0 nylon stitches.\nTension: none",
        "Skin closed with 5-0 nylon. No tension.",
        "The flap was set in with 5-0 nylon. It lay without tension.",
    ],
)
def test_tension_of_other_work(text: str) -> None:
    assert told(FIXED + text, "tension") == {}


PAIR = "Ring and middle FDP cut through. Both repaired with a four-strand cruciate, 3-0 Ticron. "


@pytest.mark.parametrize(
    ("text", "ring", "middle"),
    [
        ("No gap at either repair. There was no tension.", "none", "none"),
        ("Ring under tension; rest not.", "present", "none"),
        ("The ring FDP met under tension; the rest met without tension.", "present", "none"),
    ],
)
def test_tension_of_the_rest_and_of_all(text: str, ring: str, middle: str) -> None:
    shown = {name: facts["tension"] for name, facts in told(PAIR + text, "tension").items()}
    assert shown == {"ring FDP": ring, "middle FDP": middle}


@pytest.mark.parametrize(
    "text",
    [
        "I set the tension so that the tip met the palm.",
        "The finger straightens to 20 before the tension becomes noticeable.",
        "Tension by traction on the muscle: no gap.",
    ],
)
def test_tension_that_was_set_or_put_on(text: str) -> None:
    assert told(NOTE + text, "tension") == {}
