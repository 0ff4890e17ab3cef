"""Results told in small words: a slight opening, ends that met but tight, a run into a pulley without resistance."""

import pytest
from reader_sentences import each, told

RING = "The FDP of the ring finger was completely divided and was repaired. "


@pytest.mark.parametrize(
    ("text", "gap"),
    [
        ("There was slight opening on the dorsal face, less than a millimetre.", {"gap": "seen", "gap_mm": 1}),
        ("A slight opening of under 1 mm on the volar side remained.", {"gap": "seen", "gap_mm": 1}),
        ("A small opening in the sheath distally, 3 mm, was left.", {}),
    ],
)
def test_small_openings(text: str, gap: dict[str, object]) -> None:
    assert told(RING + text, "gap", "gap_mm").get("ring FDP", {}) == gap


@pytest.mark.parametrize(
    ("text", "tension"),
    [
        ("It does come together but tight.", {"ring FDP": "present"}),
        ("Took a bit of pull to get there, tight with wrist neutral, ok in 30 flex.", {"ring FDP": "present"}),
        ("The ends came together under some strain.", {"ring FDP": "present"}),
        ("The ends came together without strain.", {"ring FDP": "none"}),
    ],
)
def test_ends_that_met_but_tight(text: str, tension: dict[str, str]) -> None:
    assert each(RING + text, "tension") == tension


def test_drawn_straight_and_into_a_pulley() -> None:
    text = "I gently drew the finger straight; the junction did not separate, and it entered A4 without resistance."
    assert told(RING + text, "test", "gap", "glide") == {
        "ring FDP": {"test": "passive", "gap": "none", "glide": "free"}
    }
    assert each(RING + "The needle entered the tendon without difficulty.", "glide") == {}


@pytest.mark.parametrize(
    ("text", "finding"),
    [
        ("A slip of FDS was passed three times round the phalanx as a new A2 and sewn to itself.", "reconstructed"),
        ("A strip of palmaris was woven into a new A2.", "reconstructed"),
        ("The A2 was sewn with 5-0 Prolene.", "repaired"),
    ],
)
def test_made_as_a_new_pulley(text: str, finding: str) -> None:
    assert each(RING + text, "finding", group="pulleys") == {"ring A2": finding}


@pytest.mark.parametrize(
    ("text", "weeks"),
    [
        ("Button off at six weeks and the splint then too.", (6.0, 6.0)),
        ("Button out at 6 weeks, when the splint goes as well.", (6.0, 6.0)),
        ("Wires out at 4 weeks, the splint goes on to be worn at night.", None),
    ],
)
def test_a_splint_that_goes_with_the_button(text: str, weeks: tuple[float, float] | None) -> None:
    found = told(RING + text, "splint_weeks", group="aftercare").get("", {})
    assert found.get("splint_weeks") == weeks


def test_weeks_in_a_column() -> None:
    form = "AFTERCARE\n Splint   dorsal\n Weeks    6\n"
    assert told(RING + form, "splint_weeks", group="aftercare")[""] == {"splint_weeks": (6.0, 6.0)}


@pytest.mark.parametrize(
    ("text", "splint"),
    [
        ("Dorsal thumb ext-block slab: wrist 30 flex.", "dorsal blocking"),
        ("The plaster on the back with the wrist bent thirty.", "dorsal blocking"),
        ("Slab on the back of the hand and forearm, wrist 30 flexed.", "dorsal blocking"),
        ("Plaster in front, wrist 30 flexed.", "other"),
    ],
)
def test_slabs_on_the_back(text: str, splint: str) -> None:
    assert told(RING + text, "splint", group="aftercare")[""] == {"splint": splint}


@pytest.mark.parametrize(
    ("text", "mechanism"),
    [
        ("A locksmith cut his left index finger on a grinder-sharpened key blank.", "sharp"),
        ("He cut his ring finger on a saw-toothed lid.", "sharp"),
        ("Left ring finger cut by a grinder.", "saw"),
    ],
)
def test_what_a_thing_is_only_like(text: str, mechanism: str) -> None:
    assert told(text, "mechanism", group="operation")[""] == {"mechanism": mechanism}


@pytest.mark.parametrize("words", ["6-0 Prol, runn. lock.", "6-0 Prolene, runn. locking.", "epi 6-0 Prol cont. lock."])
def test_running_lock_in_short_is_no_lock_of_the_core(words: str) -> None:
    shown = {"peripheral": "present", "peripheral_pattern": "running locking"}
    assert told(RING + "Core 4-0 Ticron. " + words, "hold", "peripheral", "peripheral_pattern") == {"ring FDP": shown}


@pytest.mark.parametrize(
    ("text", "zone"),
    [("Ring FDP completely cut in zone one A.", "IA"), ("Ring FDP completely cut in zone one, a clean cut.", "I")],
)
def test_a_spoken_subzone(text: str, zone: str) -> None:
    assert each(text, "zone") == {"ring FDP": zone}
