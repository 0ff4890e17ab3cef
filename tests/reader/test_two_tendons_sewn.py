"""Crossings of two tendons or two fingers with sutures of their own, each told in its own way."""

import pytest
from reader_sentences import Shown, told

_FIELDS = ("strands", "stitch", "size", "material", "knot", "peripheral")
_A: dict[str, object] = {"strands": 4, "stitch": "cruciate", "size": "3-0", "material": "polypropylene"}
_B: dict[str, object] = {"strands": 2, "stitch": "tajima", "size": "4-0", "material": "nylon"}
_ONE, _OTHER = "four-strand cruciate of 3-0 Prolene", "two-strand Tajima of 4-0 nylon"
_PAIRS = {
    "FDP and FDS": ("Left ring finger. FDP and FDS completely divided.", "FDP", "FDS", "ring FDP", "ring FDS"),
    "named in full": (
        "Left ring finger. Both flexors cut through.",
        "deep flexor",
        "superficial flexor",
        "ring FDP",
        "ring FDS",
    ),
    "fingers": (
        "Left hand. FDP of index and ring finger completely divided, FDS intact.",
        "index FDP",
        "ring FDP",
        "index FDP",
        "ring FDP",
    ),
    "rays": (
        "Left index and ring fingers: FDP cut through in each.",
        "FDP II",
        "FDP IV",
        "index FDP",
        "ring FDP",
    ),
}
_TELLINGS: list[tuple[str, dict[str, object], dict[str, object]]] = [
    (f"Whereas the {{a}} took a {_ONE}, only a {_OTHER} fitted into the {{b}}.", {}, {}),
    (f"The {{a}} took a {_ONE}; a {_OTHER} went into the {{b}}.", {}, {}),
    (
        f"The {{a}} was repaired with a {_ONE}, knots buried; the {{b}} with a {_OTHER}, knots outside.",
        {"knot": "buried"},
        {"knot": "external"},
    ),
    (
        f"Core {{a}}: {_ONE}\nCore {{b}}: {_OTHER}\nEpitendinous {{a}}: running 6-0 PDS\nEpitendinous {{b}}: none",
        {"peripheral": "present"},
        {"peripheral": "absent"},
    ),
    (
        f"Tendon: {{a}}\nCore: {_ONE}\nEpitendinous: running 6-0 PDS\nTendon: {{b}}\nCore: {_OTHER}\nEpitendinous: nil",
        {"peripheral": "present"},
        {"peripheral": "absent"},
    ),
]


def _upper(name: str) -> str:
    return name[:1].upper() + name[1:]


@pytest.mark.parametrize(("telling", "of_one", "of_other"), _TELLINGS)
@pytest.mark.parametrize("pair", _PAIRS.values(), ids=_PAIRS)
def test_each_its_own(
    pair: tuple[str, str, str, str, str], telling: str, of_one: dict[str, object], of_other: dict[str, object]
) -> None:
    lead, a, b, one, other = pair
    a, b = (_upper(a), _upper(b)) if telling.startswith(("Core", "Tendon")) else (a, b)
    found: Shown = told(f"{lead}\n{telling.format(a=a, b=b)}", *_FIELDS)
    assert found == {one: {**_A, **of_one}, other: {**_B, **of_other}}


@pytest.mark.parametrize("pair", _PAIRS.values(), ids=_PAIRS)
def test_counts_in_brackets(pair: tuple[str, str, str, str, str]) -> None:
    lead, a, b, one, other = pair
    found = told(f"{lead}\nStrands: 4 ({a}), 2 ({b}). Suture: 3-0 PDS for both.", "strands")
    assert found == {one: {"strands": 4}, other: {"strands": 2}}


def test_one_rank_alone_parts_no_fingers() -> None:
    note = "Left ring finger. FDP and FDS completely divided.\nTendon: FDP II\nCore: four-strand cruciate of 3-0 PDS"
    assert "index FDS" not in told(note)


@pytest.mark.parametrize(
    ("sentence", "expected"),
    [
        ("UDN: running 9-0 nylon.", {"digital nerve ulnar": {"treatment": "repaired"}}),
        ("Volar plate repaired with running 5-0 PDS.", {"volar plate": {"treatment": "repaired"}}),
        ("Volar plate: continuous 5-0 PDS.", {}),
        ("UDN continuous.", {"digital nerve ulnar": {"extent": "intact"}}),
    ],
)
def test_running_thread_is_no_running_nerve(sentence: str, expected: Shown) -> None:
    found = told(f"Left ring finger. FDP completely divided. {sentence}", group="injuries")
    assert {name.removeprefix("ring "): facts for name, facts in found.items()} == expected
