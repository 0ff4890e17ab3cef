"""Repairs told by number.

'TENDON REPAIR 2' or 'TENDON 2' above its lines, then 'Gap, repair 2: 1 mm' further down; '1) FDP: ...', '2) FDS: ...',
then 'Pulled on, 1) only: no gap'; 'Layer one (FPL, profundus to index): ...', then 'Layer two: as for layer one'.
"""

from dataclasses import dataclass, field
from itertools import pairwise

from notereader.reader.groups import WRIST, Group, resolve_pairs
from notereader.reader.page import Break, Page, Sentence

_NOUNS = frozenset(["repair", "repairs", "tendon", "tendons"])
_JOINS = frozenset(["and", "&", "+", ","])
_LEADS = _JOINS | {"for", "on", "in", "of", "(", "each", "both", "only"}
_NEXT_NUMBER = 3  # words from one number to the next
_LONGEST_HEAD = 4  # words


@dataclass(slots=True)
class NumberedRepairs:
    """The tendon of each numbered repair, as far as the note has told."""

    tendons: dict[str, Group] = field(default_factory=dict)
    lines: dict[str, Group] = field(default_factory=dict)  # of '1) FDP 4 and 5: ...', by the number of the line
    layers: dict[tuple[str, str], Group] = field(default_factory=dict)  # of 'Layer one (FPL, FDP to index): ...'
    pending: str = ""  # the number of the part of the note whose tendon is not told yet

    def told(self, page: Page, sentence: Sentence, groups: list[Group]) -> list[Group]:
        """Return a group for every 'repair 1', 'repairs 1 and 2' of a sentence whose tendon is known.

        An 'each' that numbers of lines narrow down, 'on each, 1) and 5) only', is taken out of the groups.
        """
        found: list[Group] = self._lines_told(page, sentence) if self.lines and ")" in sentence.said else []
        for group in [g for g in groups if found and g.generic == "all" and g.j <= found[0].i]:
            groups.remove(group)
        found += self._layers_told(page, sentence) if self.layers else []
        if not self.tendons or _NOUNS.isdisjoint(sentence.said):
            return found
        words = page.words
        for k in range(sentence.i, sentence.j - 1):
            if words[k] not in _NOUNS:
                continue
            n = k + 1
            while n < sentence.j and (words[n] in self.tendons or (words[n] in _JOINS and found)):
                known = self.tendons.get(words[n])
                if known is not None:
                    found.append(Group(k if n == k + 1 else n, n + 1, known.digits, known.tendons, known.pairs))
                n += 1
        return found

    def note(self, page: Page, sentence: Sentence, groups: list[Group], digits: tuple[str, ...]) -> None:
        """Remember a heading with a number, and the first tendon named below it."""
        self._note_line(page, sentence, groups, digits)
        self._note_layer(page, sentence, groups, digits)
        if not self.pending and _NOUNS.isdisjoint(sentence.said):
            return
        words = page.words[sentence.i : sentence.j]
        words = words[:-1] if words[-1:] == [":"] else words
        heads = len(words) <= _LONGEST_HEAD and words[-2:-1] != [] and words[-2] in _NOUNS and words[-1].isdecimal()
        if heads and page.breaks[sentence.i] >= Break.LINE:
            self.pending = words[-1]
        elif self.pending:
            named = next((g for g in groups if g.tendons and not g.reference), None)
            if named is not None:
                self.tendons[self.pending] = _with_fingers(named, digits)
                self.pending = ""

    def _note_line(self, page: Page, sentence: Sentence, groups: list[Group], digits: tuple[str, ...]) -> None:
        """Remember which tendon opens a line of a numbered list."""
        number, mark = [*page.words[sentence.i : sentence.i + 2], "", ""][:2]
        opens = number.isdecimal() and mark == ")" and page.breaks[sentence.i] >= Break.LINE
        if opens and groups and groups[0].i == sentence.i + 2 and groups[0].tendons:
            self.lines[number] = _with_fingers(groups[0], digits)

    def _note_layer(self, page: Page, sentence: Sentence, groups: list[Group], digits: tuple[str, ...]) -> None:
        """Remember which tendons a layer or group is said to hold: 'Layer one (FPL, profundus to index): ...'."""
        named = _layer(page, sentence.i)
        if named is None or not groups or not groups[0].tendons or groups[0].reference:
            return
        lead = page.words[sentence.i + 2 : groups[0].i]
        if {*lead} <= {"(", ":", "-", "the", "was", "were", ","} and ":" in page.words[sentence.i : sentence.j]:
            self.layers[named] = _with_fingers(groups[0], digits)

    def _layers_told(self, page: Page, sentence: Sentence) -> list[Group]:
        """Return a group for every 'layer one' behind the beginning of a sentence; 'as for layer one' compares."""
        found = []
        for k in range(sentence.i + 1, sentence.j - 1):
            known = self.layers.get(_layer(page, k) or ("", ""))
            if known is not None:
                compared = not _LIKENING.isdisjoint(page.words[max(sentence.i, k - 3) : k])
                found.append(Group(k, k + 2, known.digits, known.tendons, known.pairs, reference=compared))
        return found

    def _lines_told(self, page: Page, sentence: Sentence) -> list[Group]:
        """Return one group for 'on each, 1) and 5) only': the tendons of those lines of a list."""
        words = page.words
        spots = [
            k
            for k in range(sentence.i + 1, sentence.j - 1)
            if words[k] in self.lines and words[k + 1] == ")" and words[k - 1] in _LEADS
        ]
        only = spots and words[spots[-1] + 2 : spots[-1] + 3] in (["only"], ["alone"])
        if not only or any(b - a > _NEXT_NUMBER for a, b in pairwise(spots)):
            return []
        known = [self.lines[words[k]] for k in spots]
        pairs = tuple(dict.fromkeys(pair for g in known for pair in g.pairs))
        tendons = tuple(dict.fromkeys(t for g in known for t in g.tendons))
        own = tuple(dict.fromkeys(d for g in known for d in g.digits))
        return [Group(spots[0], spots[-1] + 2, own, tendons, pairs)]


def _layer(page: Page, k: int) -> tuple[str, str] | None:
    """Return the noun and number of 'layer one', 'group 2', 'set B' at word k, or None."""
    noun, number = [*page.words[k : k + 2], "", ""][:2]
    number = _NUMBERS.get(number, number)
    known = number.isdecimal() or number in ("a", "b", "c", "d")
    return (noun, number) if noun in _LAYERS and known else None


_LAYERS = frozenset(["layer", "group", "set", "batch", "tier"])
_NUMBERS = {"one": "1", "two": "2", "three": "3", "four": "4"}
_LIKENING = frozenset(["as", "like", "same"])


def _with_fingers(named: Group, digits: tuple[str, ...]) -> Group:
    """Return a group with the fingers its tendons are of, those spoken of where it names none."""
    targets = resolve_pairs(named, named.digits or digits)
    pairs = tuple((t.digit or ("" if t.tendon in WRIST else None), t.tendon, t.slip) for t in targets)
    own = tuple(dict.fromkeys(t.digit for t in targets if t.digit))
    return Group(named.i, named.j, own, named.tendons, pairs)
