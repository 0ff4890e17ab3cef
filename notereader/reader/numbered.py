"""Repairs told by number: 'TENDON REPAIR 2' or 'TENDON 2' above its lines, then 'Gap, repair 2: 1 mm' further down."""

from dataclasses import dataclass, field

from notereader.reader.groups import Group, resolve_pairs
from notereader.reader.page import Break, Page, Sentence

_NOUNS = frozenset(["repair", "repairs", "tendon", "tendons"])
_JOINS = frozenset(["and", "&", "+", ","])
_LONGEST_HEAD = 4  # words


@dataclass(slots=True)
class NumberedRepairs:
    """The tendon of each numbered repair, as far as the note has told."""

    tendons: dict[str, Group] = field(default_factory=dict)
    pending: str = ""  # the number of the part of the note whose tendon is not told yet

    def told(self, page: Page, sentence: Sentence) -> list[Group]:
        """Return a group for every 'repair 1', 'repairs 1 and 2' of a sentence whose tendon is known."""
        found: list[Group] = []
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
                targets = resolve_pairs(named, named.digits or digits)
                pairs = tuple((t.digit, t.tendon, t.slip) for t in targets)
                own = tuple(dict.fromkeys(t.digit for t in targets if t.digit))
                self.tendons[self.pending] = Group(named.i, named.j, own, named.tendons, pairs)
                self.pending = ""
