"""Trade names and short names of threads, stitches and structures that were added to the word lists."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Dagrofil.",
            {"ring FDP": "braided polyester"},
        ),
        (
            "Ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Cottony Dacron.",
            {"ring FDP": "braided polyester"},
        ),
        (
            "Ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Seralene.",
            {"ring FDP": "polypropylene"},
        ),
        (
            "Ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Optilene.",
            {"ring FDP": "polypropylene"},
        ),
        (
            "Ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Seralon.",
            {"ring FDP": "nylon"},
        ),
        (
            "Ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethiloop.",
            {"ring FDP": "nylon"},
        ),
    ],
)
def test_threads(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["material"] for entry, facts in told(note, "material").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger, sheet of steel. FDP completely divided, the steel having made a neat cut. Repaired "
            "with 3-0 Prolene.",
            {"ring FDP": "polypropylene"},
        ),
        (
            "Index finger. The steel edge went through the FDP. Repaired with 4-0 nylon.",
            {"index FDP": "nylon"},
        ),
        (
            "Ring finger. FDP completely divided, repaired with 3-0 steel wire.",
            {"ring FDP": "steel"},
        ),
    ],
)
def test_steel_that_cut_is_no_thread(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["material"] for entry, facts in told(note, "material").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. FDS completely divided, repaired with a fig-8 of 4-0 Prolene.",
            {"ring FDS": "figure-of-eight"},
        ),
        (
            "Ring finger. FDS completely divided, repaired with two figure-8s of 4-0 Prolene.",
            {"ring FDS": "figure-of-eight"},
        ),
    ],
)
def test_figures_of_eight(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["stitch"] for entry, facts in told(note, "stitch").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "Locking corners.",
            {"ring FDP": "locking"},
        ),
        (
            "Ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. The "
            "corners do not lock.",
            {"ring FDP": "grasping"},
        ),
        (
            "Ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Prolene. No "
            "lock at the corners.",
            {"ring FDP": "grasping"},
        ),
    ],
)
def test_locks_denied(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["hold"] for entry, facts in told(note, "hold").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. FDP completely divided. Rad dig n. completely divided, uln dig n. intact.",
            {"ring digital nerve radial": "complete", "ring digital nerve ulnar": "intact"},
        ),
        (
            "Ring finger. FDP completely divided. Uln. dig. art. intact, rad. dig. art. completely divided.",
            {"ring digital artery ulnar": "intact", "ring digital artery radial": "complete"},
        ),
        (
            "Left wrist. FCU completely divided. Uln n. completely divided, uln a. completely divided. Med n. intact.",
            {"ulnar nerve": "complete", "ulnar artery": "complete", "median nerve": "intact"},
        ),
    ],
)
def test_short_names_of_nerves_and_arteries(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent", group="injuries").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. FDP completely divided, repaired with 3-0 Ethibond. Repair of ulnar digital nerve: "
            "two 9-0 nylon, knots buried.",
            {},
        ),
        (
            "Wrist. FCU completely divided, repaired with 3-0 Ethibond. Superficial arch tied.",
            {},
        ),
        (
            "Ring finger. FDP completely divided, repaired with 3-0 Ethibond, knots buried.",
            {"ring FDP": "buried"},
        ),
    ],
)
def test_knots_of_a_nerve_are_not_of_the_core(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["knot"] for entry, facts in told(note, "knot").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. FDP completely divided, repaired with 3-0 Ethibond. Tension set with the wrist flexed.",
            {},
        ),
        (
            "Ring finger. FDP grafted with palmaris. Tension judged by the cascade.",
            {},
        ),
        (
            "Ring finger. FDP completely divided, repaired with 3-0 Ethibond under tension.",
            {"ring FDP": "present"},
        ),
    ],
)
def test_setting_the_tension_is_no_tension(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["tension"] for entry, facts in told(note, "tension").items()}
    assert found == expected
