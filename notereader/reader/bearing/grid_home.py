"""The finger a note is about, taken up again behind a grid: 'Finger: middle', a grid, then 'FDP: ends burnt'."""

from dataclasses import dataclass, field

from notereader.reader.page import Page, Sentence


@dataclass(slots=True)
class HomeFinger:
    """The one finger that a note named before its first grid.

    A grid tells of its neighbours too ('FDP ring   intact'); the text behind it does not go on with its last row.
    """

    page: Page
    digits: tuple[str, ...] = ()  # none where the note named no finger before, or several
    _labels: frozenset[int] = field(init=False)
    _within: bool = False
    _met: bool = False
    _at_home: bool = False  # the grid was come to from that finger

    def __post_init__(self) -> None:
        """Know where the titles and the labels of rows begin: they stand in sentences of their own."""
        self._labels = frozenset(first for s in self.page.sentences for first, _ in s.prefix)

    def left_for_grid(self, sentence: Sentence, digits: tuple[str, ...], named: int) -> bool:
        """Tell whether a sentence is the first behind a grid, which left the note at another finger than its own.

        `digits` is spoken of before the sentence; `named` is how many fingers the note has named so far.
        """
        inside = bool(sentence.prefix) or not self._labels.isdisjoint(range(sentence.i, sentence.j))
        if inside and not self._met:
            self._met, self.digits = True, digits if len(digits) == named == 1 else ()
        if inside and not self._within:
            self._at_home = bool(self.digits) and digits == self.digits
        ends, self._within = self._within and not inside, inside
        return ends and self._at_home and digits != self.digits
