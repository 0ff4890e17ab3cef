"""A half that a cut lies on is no slip; what is taken off a pulley trims it."""

import pytest

from notereader.reader import read


def _facts(text: str, slip: str | None) -> dict[str, object]:
    found = [r for r in read(text).repairs if r.tendon == "FDS" and r.slip == slip]
    return {name: fact.value for entry in found for name, fact in entry.facts.items()}


@pytest.mark.parametrize(
    "told",
    [
        "Superficialis was cut on the radial half only, I judged by 40 per cent.",
        "FDS was nicked over its radial half, about 40 %.",
        "FDS divided through its radial half, 40 %, and left.",
    ],
)
def test_a_cut_on_one_half_is_a_partial_cut_of_the_whole_tendon(told: str) -> None:
    text = f"Left index finger. The profundus was cut across. {told} "
    assert _facts(text, None).get("extent") == "partial"
    assert _facts(text, None).get("extent_percent") == 40
    assert not _facts(text, "radial")


@pytest.mark.parametrize(
    "told", ["The radial half of FDS was cut through.", "Of FDS the radial half was severed, the ulnar half intact."]
)
def test_a_half_that_was_cut_is_a_slip(told: str) -> None:
    text = f"Left index finger. The profundus was cut across. {told} "
    assert _facts(text, "radial").get("extent") == "complete"


@pytest.mark.parametrize(
    "told", ["I took off the proximal 3 mm of A2.", "The distal 2 mm of A2 were taken off.", "Pared off A2 by 2 mm."]
)
def test_what_is_taken_off_a_pulley_trims_it(told: str) -> None:
    record = read(f"Left small finger. A2 was intact. The repair caught. {told} It then ran freely.")
    assert [p.facts["finding"].value for p in record.pulleys if p.pulley == "A2"] == ["trimmed"]


@pytest.mark.parametrize(
    "told", ["The dressing was taken off.", "The tourniquet was taken off at 50 min.", "A flap of skin was taken off."]
)
def test_what_is_taken_off_elsewhere_leaves_the_pulley(told: str) -> None:
    record = read(f"Left small finger. FDP repaired. A2 was intact. {told}")
    assert [p.facts["finding"].value for p in record.pulleys if p.pulley == "A2"] == ["intact"]
