"""A piece taken off a tendon leaves the tendon: its flap was excised, it was not, and it was not cut through."""

import pytest

from notereader.reader import read

_PIECES = ("A loose tag", "The flap", "A torn lip", "A hanging tongue", "A whisker", "The frayed edge", "A loose strip")
_TAKEN = ("was cut off", "was excised", "was then resected", "was removed", "was taken off", "was simply cut away")
_SURGEONS = ("cut off", "removed", "excised", "took off", "resected", "cut away")


def _of_deep(text: str) -> dict[str, object]:
    return {place.field: fact.value for place, fact in read(text).walk() if place.part == "FDP"}


@pytest.mark.parametrize("taken", _TAKEN)
@pytest.mark.parametrize("piece", _PIECES)
def test_a_piece_that_was_taken_off(piece: str, taken: str) -> None:
    for beside in ("of", "on"):
        found = _of_deep(f"{piece} {beside} the index profundus {taken}. The FDS was intact.")
        assert found.get("treatment") == "trimmed"
        assert "extent" not in found


@pytest.mark.parametrize("deed", _SURGEONS)
@pytest.mark.parametrize("piece", ["a small loose tag", "the hanging flap", "some torn fibres", "a tiny sliver"])
def test_a_piece_that_the_surgeon_took_off(piece: str, deed: str) -> None:
    found = _of_deep(f"I {deed} {piece} of the index profundus. The FDS was intact.")
    assert found.get("treatment") == "trimmed"
    assert "extent" not in found


@pytest.mark.parametrize(
    ("text", "treatment"),
    [
        ("The scarred index profundus was excised.", "excised"),
        ("The whole of the index profundus was resected, with the flap of sheath over it.", "excised"),
        (
            "The end was stringy and 2 mm of loose fibre was cut off. The index FDP was sutured with 4-0 Prolene.",
            "repaired",
        ),
        ("A flap of skin was cut off. The index FDP was divided and repaired with 4-0 Prolene.", "repaired"),
    ],
)
def test_a_whole_tendon_or_another_thing_taken_off(text: str, treatment: str) -> None:
    assert _of_deep(text).get("treatment") == treatment
