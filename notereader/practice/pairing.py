"""Which tendon, pulley or structure of the student's is which of the key's, also where it was filed wrongly."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import NamedTuple

from notereader.practice.promise import same_value
from notereader.practice.words import spec_of
from notereader.record import Address, Fact, Record, Value

Facts = dict[str, Fact]


@dataclass(frozen=True, slots=True)
class Pair:
    """An entry of the key and the student's entry for it; either may be missing."""

    key: Address | None
    said: Address | None
    key_facts: Facts
    said_facts: Facts

    @property
    def misfiled(self) -> bool:
        """True where the facts are there under another digit, slip or side."""
        return self.key is not None and self.said is not None and self.key != self.said


def pairs(key: Record, said: Record) -> Iterator[Pair]:
    """Yield every entry of both records, paired by address first and then by what they say."""
    theirs = dict(said.entries())
    left: list[tuple[Address, Facts]] = []
    for place, facts in key.entries():
        if place in theirs:
            yield Pair(place, place, facts, theirs.pop(place))
        else:
            left.append((place, facts))
    yield from _misfiled(left, theirs)
    for place, facts in left:
        yield Pair(place, None, facts, {})
    for place, facts in theirs.items():
        yield Pair(None, place, {}, facts)


class _Chance(NamedTuple):
    """Two entries that may be the same one, filed differently."""

    alike: float
    key: Address
    said: Address

    def order(self) -> tuple[float, list[str]]:
        """Sort the most alike first; ties by the two addresses whoever's they are, so that pairing is symmetric."""
        return -self.alike, sorted((self.key.text(), self.said.text()))


def _misfiled(left: list[tuple[Address, Facts]], theirs: dict[Address, Facts]) -> Iterator[Pair]:
    """Pair what is alike in all but digit, slip or side, the most alike first; takes the paired ones out of both."""
    ours = dict(left)
    chances = [
        _Chance(_alike(ours[key], theirs[said], key), key, said)
        for key in ours
        for said in theirs
        if (key.group, key.part) == (said.group, said.part)
    ]
    for alike, key, said in sorted(chances, key=_Chance.order):
        if alike > 0 and key in ours and said in theirs:
            left.remove((key, ours[key]))
            yield Pair(key, said, ours.pop(key), theirs.pop(said))


def _alike(first: Facts, second: Facts, place: Address) -> float:
    """Return the share of all stated facts that both hold alike, 0 where most of the shared ones differ."""
    one, two = _values(first), _values(second)
    shared = [name for name in one if name in two]
    same = [name for name in shared if same_value(spec_of(place.field_of(name)), one[name], two[name])]
    if not same or 2 * len(same) < len(shared):
        return 0.0
    return len(same) / len(one.keys() | two.keys())


def _values(facts: Facts) -> dict[str, Value]:
    return {name: fact.value for name, fact in facts.items() if fact.live and fact.value is not None}
