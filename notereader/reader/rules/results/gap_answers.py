"""What answers a gap that is asked for: 'Gap: 0', 'gap on passive stretch: nil', 'Gap (mm) ..... 0'."""

from notereader.reader.page import Break, Mention
from notereader.reader.scene import Scene

_WHERE = frozenset(["at", "the", "bone", "repair", "join", "site"])
NOUGHT = frozenset(["0", "zero", "nil", "no", "none", "negative", "neg", "ve"])  # '-ve'
_ASKING = frozenset([":", "=", "-"])


def denied_at_the_end(scene: Scene, mention: Mention) -> bool:
    """'Gap on pull          N', 'gap test: passive ext -> 0': the answer stands apart, at the end of the line."""
    words, k = scene.page.words, scene.sentence.j - 1
    k -= words[k] == "."
    between = scene.words(mention.j, k)
    if not between or words[k] not in NOUGHT | {"n"} or len(between) > _LONG_LABEL or "." in between:
        return False
    apart = scene.page.breaks[k] >= Break.COLUMN or scene.arrow(k - 1)
    return apart and mention.i == scene.sentence.i


_LONG_LABEL = 7  # words


def answered(scene: Scene, mention: Mention) -> str | None:
    """Return the word that answers 'Gap: 0', 'gap = nil'; '' where only a dash does, None where nothing is asked."""
    k = mention.j
    whose = scene.words(k, min(k + 6, scene.sentence.j))
    if whose[:1] == [","] and ":" in whose and not {"repair", "repairs"}.isdisjoint(whose):
        k += whose.index(":")  # 'Gap, repairs 1 and 2: none'
    named = scene.page.tendon_words
    ahead = range(k, min(k + 5, scene.sentence.j))
    place = next((n for n in ahead if scene.page.words[n] not in _WHERE and n not in named), k)
    if scene.words(k, k + 1) in (["at"], ["in"]) and scene.words(place, place + 1) in (["="], [":"], ["-"]):
        k = place  # 'gap at bone = zero', 'gap at FDP - none seen'
    while k < scene.sentence.j and (scene.page.words[k] in _ASKING or scene.page.standing[k] == "unticked"):
        k += 1
    if k == mention.j and _asked_again(scene, mention):
        return "none"
    if k < scene.sentence.j:
        return scene.page.words[k]
    return "" if k > mention.j and scene.page.words[k - 1] == "-" else None


def answered_behind(scene: Scene, mention: Mention) -> str | None:
    """'Gap on passive stretch: nil', 'gap check by passive motion - none': the nought behind how it was looked for."""
    ticked = _ticked_behind(scene, mention)
    if ticked is not None:
        return ticked
    if scene.next_word(mention.j) not in _HOW_SOUGHT:
        return None
    marks = (k for k in range(mention.j + 1, min(mention.j + _LONG_LABEL + 2, scene.sentence.j)))
    mark = next((k for k in marks if scene.page.words[k] in _ANSWERS and k + 1 < scene.sentence.j), None)
    while mark is not None and scene.next_word(mark + 1) in _ANSWERS:
        mark += 1
    if mark is None or not _ends_answer(scene, mark + 2):
        return None
    return scene.next_word(mark + 1) if scene.next_word(mark + 1) in NOUGHT else None


def _ends_answer(scene: Scene, k: int) -> bool:
    """'nil', 'none in any of the three repairs'."""
    of_all = scene.next_word(k) == "in" and scene.next_word(k + 1) in ("any", "either", "both", "all", "each")
    return of_all or scene.next_word(k) in ("", ".", ",", ";")


def _ticked_behind(scene: Scene, mention: Mention) -> str | None:
    """'Gap on passive stretch [ ] yes [x] no', 'Gap (mm) ..... 0': a nought that is ticked, or stands behind a unit."""
    words, last = scene.page.words, min(mention.j + _LONG_LINE, scene.sentence.j)
    last = next((k for k in range(mention.j, last) if words[k] in ("|", ".", ";")), last)
    if words[mention.j : mention.j + 3] == ["(", "mm", ")"]:
        k = next((k for k in range(mention.j + 3, last) if words[k] not in _ANSWERS and words[k][:2] != ".."), last)
        closes = scene.next_word(k + 1) == "" or scene.page.breaks[k + 1] >= Break.COLUMN
        return words[k] if k < last and closes and words[k] in NOUGHT else None
    ticked = next((k for k in range(mention.j, last - 3) if words[k + 1] == "x" and words[k] in ("[", "(")), None)
    if ticked is None or words[ticked + 3] not in NOUGHT:
        return None
    marked = [k for k in range(ticked, last - 1) if words[k] == "[" and words[k + 1] != "]"]
    return words[ticked + 3] if len(marked) <= 1 else None


_LONG_LINE = 14  # words
_HOW_SOUGHT = frozenset(["on", "at", "under", "in", "test", "check", "during", "after", "with", "when"])
_ANSWERS = frozenset([*_ASKING, ">"])


def _asked_again(scene: Scene, mention: Mention) -> bool:
    """'Gap was checked again after this on passive extension: none.': the answer closes the sentence."""
    last = scene.sentence.j - (scene.page.words[scene.sentence.j - 1] == ".")
    closes = last - 2 > mention.j and scene.words(last - 2, last)[:1] == [":"] and scene.page.words[last - 1] in NOUGHT
    asked = scene.next_word(mention.j) in ("was", "is") and not _CHECKED.isdisjoint(scene.words(mention.j, last))
    return closes and asked and len(scene.of("gap")) == 1


_CHECKED = frozenset(["checked", "tested", "sought", "assessed", "measured", "rechecked", "retested"])
