"""Every way to name fingers beside every way to put them to a tendon: 'FDS 2nd, 3rd', 'F3 FDP', 'the FDP of the IV'."""

import pytest
from reader_sentences import told

_FINGERS = ("index", "middle", "ring", "small")
_NAMES = {
    "plain": ("index", "middle", "ring", "small"),
    "with a noun": ("index finger", "long finger", "ring finger", "little finger"),
    "initials": ("IF", "MF", "RF", "LF"),
    "ranks in figures": ("2nd", "3rd", "4th", "5th"),
    "ranks of fingers": ("2nd finger", "3rd finger", "4th finger", "5th finger"),
    "rays": ("second ray", "third ray", "fourth ray", "fifth ray"),
    "lettered": ("D2", "D3", "D4", "D5"),
    "lettered F": ("F2", "F3", "F4", "F5"),
    "numbered": ("digit 2", "digit 3", "digit 4", "digit 5"),
}
_LISTS = (
    ((0,), "{}"),
    ((3,), "{}"),
    ((1, 2), "{} and {}"),
    ((0, 2), "{}, {}"),
    ((0, 1, 2), "{}, {} and {}"),
    ((2, 3), "{} & {}"),
    ((1, 3), "{} + {}"),
    ((1, 2), "{}/{}"),
)
_FRAMES = (
    "FDP {} completely divided.",
    "FDP of {} completely divided.",
    "FDP {} - completely divided",
    "FDP ({}) completely divided.",
    "Complete division of the FDP to the {}.",
    "The profundus of the {} was completely divided.",
    "Divided completely: FDP {}.",
    "FDP {} 100 %",
)


@pytest.mark.parametrize("frame", _FRAMES)
@pytest.mark.parametrize("names", _NAMES.values(), ids=_NAMES)
def test_fingers_beside_a_tendon(frame: str, names: tuple[str, ...]) -> None:
    missed = []
    for chosen, form in _LISTS:
        note = "Left hand, zone 2.\n" + frame.format(form.format(*(names[n] for n in chosen)))
        wanted = {f"{_FINGERS[n]} FDP" for n in chosen}
        if set(told(note, "extent")) != wanted:
            missed.append(note)
    assert not missed


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("The FDP of the second and third was completely divided.", {"index FDP", "middle FDP"}),
        ("FDS to the fourth - 100 %.", {"ring FDS"}),
        ("FDP of III-V completely divided.", {"middle FDP", "ring FDP", "small FDP"}),
        ("The profundus of 4 was completely divided.", {"ring FDP"}),
        ("FDP of finger 3 completely divided.", {"middle FDP"}),
        ("FDP (2-4) completely divided.", {"index FDP", "middle FDP", "ring FDP"}),
    ],
)
def test_ranks_that_need_a_word_to_lead(note: str, expected: set[str]) -> None:
    assert set(told("Left hand. " + note, "extent")) == expected


@pytest.mark.parametrize(
    "note",
    [
        "Ring finger. Assistant: F2. FDP completely divided.",  # a doctor
        "Ring finger. FDP completely divided, level with the second and third metacarpal.",
        "Ring finger. FDP second look: completely divided.",
        "Ring finger. 2nd: FDP inspected, completely divided. 1st: wound opened.",
        "Ring finger. FDP (1) completely divided.",  # a count
    ],
)
def test_ranks_of_other_things(note: str) -> None:
    assert set(told(note, "extent")) == {"ring FDP"}
