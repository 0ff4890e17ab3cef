"""Telegraphic notes of one or two fingers: abbreviations, arrows and plus signs, one line or a list for each finger."""

import random
from collections.abc import Iterator
from dataclasses import dataclass

_NAMES = {
    "index": ("IF", "Index", "D2"),
    "middle": ("MF", "Middle", "D3"),
    "ring": ("RF", "Ring", "D4"),
    "small": ("SF", "Little", "D5"),
}
_THREADS = {"Prolene": "polypropylene", "Ethibond": "braided polyester", "FiberWire": "polyblend", "nylon": "nylon"}
_PULLEYS: dict[str, dict[str, str]] = {
    "A2 ok, A4 vented 3 mm": {"A2": "intact", "A4": "vented"},
    "A2 + A4 kept": {"A2": "intact", "A4": "intact"},
    "A4 excised, A2 ok": {"A4": "excised", "A2": "intact"},
    "A2 untouched": {"A2": "intact"},
    "": {},
}
_RESULTS: dict[str, dict[str, object]] = {
    "no gap": {"gap": "none"},
    "gap 1 mm passive": {"gap": "seen", "gap_mm": 1},
    "passive: no gap, free": {"gap": "none", "glide": "free"},
    "free run": {"glide": "free"},
    "": {},
}

Place = tuple[str, str, str]  # finger, tendon or pulley, field
Segment = tuple[str, dict[tuple[str, str], object]]  # words, and what they say by part and field


@dataclass(frozen=True, slots=True)
class Telegram:
    """A telegraphic note and what it says."""

    text: str
    truth: dict[Place, object]


def telegram(seed: int) -> Telegram:
    """Return the note that belongs to a seed."""
    chance = random.Random(seed)
    drawn = chance.sample(list(_NAMES), chance.choice((1, 1, 2)))
    arrow, plus = chance.choice((" -> ", " => ", " > ", ": ")), chance.choice((" + ", ", ", " & "))
    between, opening = chance.choice((". ", "; ", "\n- ")), chance.choice((": ", " - ", "\n- "))
    lines, truth = [f"{chance.choice(('R', 'L'))} hand, {chance.choice(('knife', 'glass'))}, Z2."], {}
    for finger in (f for f in _NAMES if f in drawn):
        segments = list(_segments(chance, arrow, plus))
        lines.append(chance.choice(_NAMES[finger]) + opening + between.join(words for words, _ in segments) + ".")
        truth |= {(finger, *place): value for _, told in segments for place, value in told.items()}
    return Telegram("\n".join(lines) + "\n", truth)


def _segments(chance: random.Random, arrow: str, plus: str) -> Iterator[Segment]:
    yield _cut(chance, plus)
    yield _core(chance, arrow, plus)
    pulleys = chance.choice(list(_PULLEYS))
    if pulleys:
        yield pulleys, {(name, "finding"): state for name, state in _PULLEYS[pulleys].items()}
    result = chance.choice(list(_RESULTS))
    if result:
        yield result, {("FDP", field): value for field, value in _RESULTS[result].items()}


def _cut(chance: random.Random, plus: str) -> Segment:
    words, told = chance.choice(
        (
            ("FDP 100%", {("FDP", "extent"): "complete"}),
            ("FDP cut through", {("FDP", "extent"): "complete"}),
            ("FDP 70%", {("FDP", "extent"): "partial", ("FDP", "extent_percent"): 70}),
        )
    )
    if chance.random() < 0.5:
        return f"{words}{plus}FDS {chance.choice(('ok', 'intact', 'whole'))}", told | {("FDS", "extent"): "intact"}
    return words, told


def _core(chance: random.Random, arrow: str, plus: str) -> Segment:
    count, thread, size = chance.choice((2, 4, 6)), chance.choice(list(_THREADS)), chance.choice(("3-0", "4-0", "4/0"))
    words = chance.choice(
        (
            f"FDP{arrow}{count} strand {size} {thread}",
            f"FDP {count} str {size} {thread}",
            f"FDP repair{arrow}{size} {thread} x{count} strands",
        )
    )
    told: dict[str, object] = {"strands": count, "size": size.replace("/", "-"), "material": _THREADS[thread]}
    around = chance.random()
    if around < 0.45:
        words += plus + chance.choice(("6-0 running", "epi 6-0", "running epi 6-0"))
        told |= {"peripheral": "present", "peripheral_size": "6-0"}
    elif around < 0.7:
        words += plus + chance.choice(("no epi", "epi nil"))
        told["peripheral"] = "absent"
    return words, {("FDP", field): value for field, value in (told | {"treatment": "repaired"}).items()}
