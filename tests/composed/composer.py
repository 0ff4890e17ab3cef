"""Composes short invented notes from plain sentences, with what they say: two or three tendons and what befell each.

The wording of a sentence is drawn by chance; its truth is known because the sentence was built from it.
"""

import random
from collections.abc import Sequence
from dataclasses import dataclass
from dataclasses import field as made_by

Place = tuple[str, str, str]  # digit, part, field: ('ring', 'FDP', 'strands')

_NAMES = {"thumb": ["thumb"], "index": ["index"], "middle": ["middle", "long"], "ring": ["ring"]}
_NAMES |= {"small": ["small", "little"]}
_COUNTS = {2: "two", 4: "four", 6: "six"}
_THREADS = ["3-0 Ethibond", "4-0 Prolene", "3-0 FiberWire"]
_DEEP = ["FDP", "profundus", "deep flexor"]
_SUPERFICIAL = ["FDS", "superficialis", "sublimis"]


@dataclass(slots=True)
class Composed:
    """A composed note: its sentences and what they say."""

    chance: random.Random
    sentences: list[str] = made_by(default_factory=list)
    truth: dict[Place, object] = made_by(default_factory=dict)
    names: dict[str, str] = made_by(default_factory=dict)  # digit -> how this note calls it

    def say(self, *wordings: str) -> None:
        """Add one of several wordings of the same truth."""
        sentence = self.chance.choice(wordings)
        self.sentences.append(sentence[0].upper() + sentence[1:])

    def know(self, digits: Sequence[str], field: str, value: object, part: str = "") -> None:
        """Note what a sentence says of the deep flexors of some fingers, or of another part of theirs."""
        for digit in digits:
            self.truth[(digit, part or _deep(digit), field)] = value

    def called(self, digits: Sequence[str]) -> str:
        """Return fingers as a list of words: 'index, long and ring'."""
        words = [self.names[d] for d in digits]
        return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} and {words[-1]}"

    def deep(self, digit: str) -> str:
        """Return a name of the deep flexor of a digit, with its finger."""
        kind = "FPL" if digit == "thumb" else self.chance.choice(_DEEP)
        return f"{self.names[digit]} {kind}"

    @property
    def text(self) -> str:
        """Return the note."""
        return " ".join(self.sentences)


def _deep(digit: str) -> str:
    return "FPL" if digit == "thumb" else "FDP"


def compose(seed: int) -> Composed:
    """Return the note of a seed: two or three fingers with their deep flexors cut and sewn."""
    chance = random.Random(seed)
    digits = chance.sample(list(_NAMES), chance.choice([2, 2, 3]))
    digits = [d for d in _NAMES if d in digits]
    note = Composed(chance, names={d: chance.choice(_NAMES[d]) for d in digits})
    note.say(f"{note.called(digits)}, zone II.", f"left hand, {note.called(digits)}, knife, zone II.")
    named = " and ".join(f"{note.names[d]} {_deep(d)}" for d in digits)
    note.say(f"the {named} were completely divided.", f"{named} completely divided.")
    note.know(digits, "extent", "complete")
    for tell in (_ends, _cores, _purchase, _around, _pulleys, _superficial, _behaviour):
        tell(note, digits)
    return note


def _ends(note: Composed, digits: list[str]) -> None:
    one, rest = digits[:1], digits[1:]
    first, second = note.chance.choice([("clean", "ragged"), ("ragged", "clean")])
    if note.chance.random() < 0.4:
        note.say(f"all ends were {first}.", f"the ends were {first} in {_all(digits)}.")
        note.know(digits, "ends", first)
        return
    a, b = note.called(one), note.called(rest)
    note.say(
        f"the ends were {first} in the {a} and {second} in the {b}.",
        f"the {a} ends were {first}, those of the {b} {second}.",
        f"{a} ends {first}, {b} ends {second}.",
    )
    note.know(one, "ends", first)
    note.know(rest, "ends", second)


def _all(digits: list[str]) -> str:
    return "both" if len(digits) == 2 else "all three"


def _cores(note: Composed, digits: list[str]) -> None:
    choice = note.chance.choice
    if note.chance.random() < 0.4:
        n, thread = choice(list(_COUNTS)), choice(_THREADS)
        note.say(
            f"{_all(digits)} were repaired with a {_COUNTS[n]}-strand core of {thread}.",
            f"{_all(digits)} tendons received {_COUNTS[n]} strands of {thread}.",
        )
        cores = dict.fromkeys(digits, (n, thread))
    else:
        cores = {d: (choice(list(_COUNTS)), choice(_THREADS)) for d in digits}
        for digit, (n, thread) in cores.items():
            subject = note.deep(digit)
            note.say(
                f"the {subject} was repaired with {_COUNTS[n]} strands of {thread}.",
                f"{subject}: {n} strands, {thread}.",
                f"the {subject} received a {_COUNTS[n]}-strand core of {thread}.",
            )
    for digit, (n, thread) in cores.items():
        note.know([digit], "strands", n)
        note.know([digit], "size", thread.split()[0])
        note.know([digit], "treatment", "repaired")


def _purchase(note: Composed, digits: list[str]) -> None:
    a, b = note.called(digits[:1]), note.called(digits[1:])
    note.say(
        f"purchase was 10 mm in the {a} and 8 mm in the {b}.",
        f"the bites were 10 mm in the {a}, 8 mm in the {b}.",
    )
    note.know(digits[:1], "purchase_mm", 10.0)
    note.know(digits[1:], "purchase_mm", 8.0)


def _around(note: Composed, digits: list[str]) -> None:
    one, rest = digits[:1], digits[1:]
    a, b = note.called(one), note.called(rest)
    wide = note.chance.choice(["all", "none", "one"])
    if wide == "all":
        note.say(f"a running 6-0 Prolene was placed round {_all(digits)}.", f"epitendinous 6-0 in {_all(digits)}.")
        note.know(digits, "peripheral", "present")
    elif wide == "none":
        note.say("no epitendinous suture was used.", "epitendinous: none.")
    else:
        note.say(
            f"epitendinous: {a} 6-0 Prolene, {b} none.",
            f"an epitendinous 6-0 Prolene was added in the {a} but not in the {b}.",
            f"a running 6-0 was used in the {a}; the {b} had no epitendinous suture.",
        )
        note.know(one, "peripheral", "present")
        note.know(rest, "peripheral", "absent")


def _pulleys(note: Composed, digits: list[str]) -> None:
    if "thumb" in digits or len(digits) != 2:
        return
    one, other = digits
    a, b = note.names[one], note.names[other]
    note.say(
        f"A2 was vented over its distal third in the {a} and left intact in the {b}.",
        f"the distal third of A2 was opened in the {a} finger, while in the {b} finger A2 was preserved.",
        f"A2 was kept in the {b}; in the {a} its distal third was vented.",
    )
    note.know([one], "finding", "vented", "A2")
    note.know([other], "finding", "intact", "A2")


def _superficial(note: Composed, digits: list[str]) -> None:
    digit = note.chance.choice([d for d in digits if d != "thumb"])
    name = f"{note.names[digit]} {note.chance.choice(_SUPERFICIAL)}"
    fate = note.chance.choice(["repaired", "excised", "left", "intact"])
    if fate == "intact":
        note.say(f"the {name} was intact.", f"{name} intact.")
        note.know([digit], "extent", "intact", "FDS")
        return
    note.say(f"the {name} was completely divided.", f"the {name} had also been cut through completely.")
    note.know([digit], "extent", "complete", "FDS")
    wordings = {
        "repaired": ["was repaired with 4-0 PDS mattress sutures", "was sutured with a 4-0 PDS horizontal mattress"],
        "excised": ["was excised", "was resected to make room"],
        "left": ["was left unrepaired", "was not repaired"],
    }[fate]
    note.say(*(f"the {name} {wording}." for wording in wordings))
    note.know([digit], "treatment", fate, "FDS")
    if fate == "repaired":
        note.know([digit], "size", "4-0", "FDS")


def _behaviour(note: Composed, digits: list[str]) -> None:
    one, rest = digits[:1], digits[1:]
    a, b = note.called(one), note.called(rest)
    note.say(
        f"a 1 mm gap was seen in the {note.deep(one[0])}; the {b} did not gap.",
        f"the {note.deep(one[0])} gapped 1 mm, none in the {b}.",
        f"gap: {a} 1 mm, {b} none.",
    )
    note.know(one, "gap", "seen")
    note.know(rest, "gap", "none")
    note.say(f"the {a} caught at A2, the {b} ran freely.", f"glide: {a} catching, {b} free.")
    note.know(one, "glide", "catching")
    note.know(rest, "glide", "free")
