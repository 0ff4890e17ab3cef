"""Which tendons and digits words name: a target, a group of targets, and what a sentence is about."""

from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import NamedTuple

from notereader.reader.page import Mention, Sentence

DIGITS = ("thumb", "index", "middle", "ring", "small")
WRIST = frozenset(["FCR", "FCU", "PL"])


class Target(NamedTuple):
    """A tendon of a digit, or a slip of it."""

    digit: str | None
    tendon: str
    slip: str | None = None


@dataclass(slots=True)
class Group:
    """Targets named together in words i to j.

    `tendons` empty: only digits were named. `every`: all of them are meant.
    """

    i: int
    j: int
    digits: tuple[str, ...] = ()
    tendons: tuple[str, ...] = ()
    pairs: tuple[tuple[str | None, str, str | None], ...] = ()  # digit (None: from context), tendon, slip
    generic: str = ""  # "one" for 'the tendon', "all" for 'both tendons'
    every: bool = False  # 'each FDP', 'both fingers'
    four: int = 0  # 2: 'all four FDS', 1: 'all FDP' of a hand
    reference: bool = False  # named only to compare: 'repaired like the index'
    excepted: bool = False  # left out: 'except the FCR'
    place: bool = False  # told by its place in what was named before: 'the latter'

    @property
    def collective(self) -> bool:
        """Tell whether the group is a whole kind of tendons, none of them by name: 'the finger flexors'."""
        return bool(self.tendons) and not self.pairs


@dataclass(slots=True)
class Setting:
    """What a sentence is about: its own groups, and what was spoken of when it began."""

    sentence: Sentence
    groups: list[Group] = field(default_factory=list)
    digits: tuple[str, ...] = ()  # digits in focus when the sentence begins
    focus: tuple[Target, ...] = ()  # tendons in focus when the sentence begins
    after: tuple[Target, ...] = ()  # tendons in focus when it ends
    after_digits: tuple[str, ...] = ()
    labelled: bool = False  # the sentence before was nothing but the name of the tendon in focus
    all_before: bool = False  # 'both repairs:' was the last subject
    relabelled: bool = False  # a digit was named since the last tendon: its deep flexor is meant
    wide: tuple[str, ...] = ()  # tendons last named as 'all three FDP', whatever the digit
    mentions: list[Mention] = field(default_factory=list)  # of the sentence, those of a grid's labels first


def has(digit: str, tendon: str) -> bool:
    """Tell whether a digit has a tendon: the thumb its FPL, the fingers FDP and FDS."""
    return tendon == "FPL" if digit == "thumb" else tendon in ("FDP", "FDS")


def resolve_pairs(group: Group, digits: Iterable[str]) -> list[Target]:
    """Return the targets of a group, tendons without a digit taking the digits given."""
    targets: list[Target] = []
    context = list(digits)
    for digit, tendon, slip in group.pairs:
        if digit == "":
            targets.append(Target(None, tendon, None))
        elif digit is not None:
            targets.append(Target(digit, tendon, slip))
        else:
            own = [d for d in context if d != "thumb"]
            targets += [Target(d, tendon, slip) for d in own] or [Target(None, tendon, slip)]
    return list(dict.fromkeys(targets))
