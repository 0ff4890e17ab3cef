"""What a dictation spells out: 'a two' is the A2 pulley, where no strands, sutures or lengths are counted."""

from notereader.reader.page import Mention, Page, within
from notereader.vocabulary.wordlists import word_list

_FIVE = ("one", "two", "three", "four", "five")
_SPELT = {(a, word): f"{a.upper()}{n}" for a in "ac" for n, word in enumerate(_FIVE, 1) if a == "a" or n <= 3}
_TYPED = {**{f"a {n}": f"A{n}" for n in range(1, 6)}, **{f"c {n}": f"C{n}" for n in range(1, 4)}}  # 'A 2', in capitals
_AFTER = word_list("spoken", "after_pulley")
_BEFORE = word_list("spoken", "before_pulley")
_COUNTED = word_list("spoken", "counted")
_SAYS = frozenset(["was", "were", "is", "are", "pulley", "pulleys"])
_REACH = 4  # words in which a count names what it counts


def hear_pulleys(page: Page) -> None:
    """Add the pulleys of 'a two was kept', 'I had to vent A two', 'c one and a three' to the mentions of the Page."""
    words = page.words
    spots = ((k, _SPELT.get((words[k], words[k + 1]))) for k in range(len(words) - 1) if words[k] in ("a", "c"))
    made = [Mention("pulley", name, k, k + 2) for k, name in spots if name and _is_pulley(page, k)]
    made += _typed_apart(page)
    if made:
        taken = {k for m in made for k in range(m.i, m.j)}
        kept = [m for m in page.mentions if m.kind != "strandword" or taken.isdisjoint(range(m.i, m.j))]
        page.mentions = sorted([*kept, *made], key=lambda m: (m.i, m.j))


def _typed_apart(page: Page) -> list[Mention]:
    """Return the pulleys of 'A 2 kept whole; A 4 was cut', 'A 3 and C 2 slit': a capital and a figure apart."""
    words, found = page.words, []
    named = {m.i for m in page.mentions if m.kind == "pulley"}
    for k in range(len(words) - 1):
        name = _TYPED.get(f"{words[k]} {words[k + 1]}") if words[k] in ("a", "c") and k not in named else None
        if name and page.text[page.starts[k]].isupper() and _is_typed(words, k):
            found.append(Mention("pulley", name, k, k + 2))
    return found


def _is_typed(words: list[str], k: int) -> bool:
    behind = words[k + 2 : k + 5]
    if behind[:1] == ["and"] and " ".join(behind[1:]) in _TYPED:
        return True
    return behind[:1] != [] and behind[0] in _AFTER | {"slit"}


def _is_pulley(page: Page, k: int) -> bool:
    words = page.words
    after = words[k + 2] if k + 2 < len(words) else "."
    if after not in _SAYS and not _COUNTED.isdisjoint(words[k + 2 : k + 2 + _REACH]):
        return False
    rest = [w for w in words[k + 3 : k + 6] if w != "the"]  # 'c one and the a three'
    listed = after == "and" and tuple(rest[:2]) in _SPELT
    lead = [w for w in words[max(0, k - 4) : k] if w != "the"]
    listed = listed or (lead[-1:] == ["and"] and tuple(lead[-3:-1]) in _SPELT)
    opened = any(m.kind in ("opened", "restored") and m.j == k for m in within(page.mentions, max(0, k - 4), k))
    return after in _AFTER or listed or opened or _of_a_finger(page, k) or (k > 0 and words[k - 1] in _BEFORE)


def _of_a_finger(page: Page, k: int) -> bool:
    """'A two long finger vented', 'a four ring intact': a finger and its state follow; not 'a two finger splint'."""
    finger = next((m for m in within(page.mentions, k + 2, k + 3) if m.kind in ("digit", "digit?")), None)
    behind = within(page.mentions, finger.j, finger.j + _STATE_NEAR) if finger is not None else []
    return any(m.kind == "opened" for m in behind)


_STATE_NEAR = 2  # words
