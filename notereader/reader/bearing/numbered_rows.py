"""Rows of a grid by their numbers: 'Lines 1 and 3: no epitendinous', 'as No. 2', remarks below that begin with one."""

from notereader.reader.bearing.bare_numbers import closes_bare_numbers, opens_bare_number, says_by_number
from notereader.reader.bearing.likened import LIKE
from notereader.reader.bearing.manner import mark_manner
from notereader.reader.groups import Group
from notereader.reader.layout.grid_lines import Row
from notereader.reader.page import Break, Page, Sentence
from notereader.vocabulary.wordlists import word_list

_OPENS = word_list("bearing", "line_groups_words")
_RANGED = frozenset(["-", "to"])


class NumberedRows:
    """Which tendons the numbered rows of a note's grids are about, as far as they were read."""

    def __init__(self, rows: list[Row]) -> None:
        self._rows = rows
        self._at = _rows_at(rows)
        self._known: dict[str, list[Group]] = {}
        self._by_number = False  # whether the note has spoken of 'No. 3' or 'by number': it may then say only '3'

    def note(self, sentence: Sentence, groups: list[Group]) -> None:
        """Remember which tendons the numbered rows are about that a sentence stands in."""
        if not self._at:
            return
        own = {n for k in range(sentence.i, sentence.j) for n in self._at.get(k, ())}
        if sentence.prefix:  # a cell that another row repeats is told of that row
            own &= {n for i, j in sentence.prefix for k in range(i, j) for n in self._at.get(k, ())}
        for row in (self._rows[n] for n in sorted(own)):
            if row.number.isdecimal():
                self._known.setdefault(row.number, []).extend(g for g in groups if row.i <= g.i < row.j and g.tendons)

    def told(self, page: Page, sentence: Sentence) -> list[Group]:
        """Read 'Lines 1 and 3:' and a number at the start of a remark as the tendons of those rows of the grid."""
        if not self._known:
            return []
        in_row = any(k in self._at for k in range(sentence.i, sentence.j))
        compares = page.words[sentence.i] in ("as", "like", "same")
        if (in_row and not compares) or (sentence.prefix and not in_row):
            return []
        self._by_number = self._by_number or (not in_row and says_by_number(page.words[sentence.i : sentence.j]))
        found: list[Group] = []
        k = sentence.i
        while k < sentence.j:
            numbers, end = self._numbers(page, sentence, k, in_row)
            if numbers:
                found.append(self._group(page, (k, end), numbers))
                if not in_row:
                    mark_manner(page, found[-1], sentence)  # 'except No. 3'
                like = found[-1].i > sentence.i and page.words[found[-1].i - 1] in LIKE
                found[-1].reference = found[-1].reference or like
            k = end if numbers else k + 1
        return found

    def _numbers(self, page: Page, sentence: Sentence, k: int, in_row: bool) -> tuple[list[str], int]:
        """Return the numbers of rows that word k opens, and where they end."""
        words = page.words
        leads = words[k] in _OPENS or (in_row and words[k] in LIKE)
        remark = k == sentence.i and page.breaks[k] >= Break.LINE and words[k] in self._known
        numbers: list[str] = []
        bare = not in_row and self._by_number and words[k] in self._known and opens_bare_number(page, sentence, k)
        if not (leads or remark or bare):
            return numbers, k
        k += 0 if words[k] in self._known else 1
        k += words[k : k + 1] == ["."]  # 'No. 3'
        while k < sentence.j and (words[k] in self._known or (numbers and self._joins(words, k))):
            if words[k] in self._known:
                numbers += self._between(numbers[-1], words[k]) if numbers and words[k - 1] in _RANGED else []
                numbers.append(words[k])
            k += 1
        if bare and not (leads or remark) and not closes_bare_numbers(page, sentence, k, len(numbers)):
            return [], k
        self._by_number = self._by_number or (bool(numbers) and leads and words[k - 1] in self._known)
        return numbers, k

    def _joins(self, words: list[str], k: int) -> bool:
        joined = words[k] in ("and", ",", "+", "&", "or") or words[k] in _RANGED
        return joined and words[k + 1 : k + 2] != [] and words[k + 1] in self._known

    def _between(self, first: str, last: str) -> list[str]:
        """'Ad 3-5': the rows that stand between two numbers."""
        return [str(n) for n in range(int(first) + 1, int(last)) if str(n) in self._known]

    def _group(self, page: Page, span: tuple[int, int], numbers: list[str]) -> Group:
        """Return the tendons of some rows as a group, without the 'as' that leads to them."""
        pairs = tuple(dict.fromkeys(p for n in numbers for g in self._known[n] for p in _row_pairs(g)))
        digits = tuple(dict.fromkeys(d for d, _, _ in pairs if d))
        first = span[0] + (page.words[span[0]] in LIKE)
        return Group(first, span[1], digits, tuple(dict.fromkeys(t for _, t, _ in pairs)), pairs)


def _rows_at(rows: list[Row]) -> dict[int, list[int]]:
    """Return word -> the rows it stands in, by their place in the list, so that no sentence goes through all rows."""
    found: dict[int, list[int]] = {}
    for n, row in enumerate(rows):
        for k in range(row.i, row.j):
            found.setdefault(k, []).append(n)
    return found


def _row_pairs(group: Group) -> list[tuple[str | None, str, str | None]]:
    own = group.digits[0] if group.digits else None
    return [(own if digit is None else digit, tendon, slip) for digit, tendon, slip in group.pairs]
