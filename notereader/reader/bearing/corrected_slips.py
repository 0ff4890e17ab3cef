"""The slip put right: 'Correction: the slip that was sewn was the ulnar one', 'it was the ulnar slip, not the radial'.

Such a sentence takes back the side of the slip everywhere before it. Where a note tells of one finger's slips only, the
words of the two slips before it change places before any rule asks whose a finding is.
"""

from notereader.reader.bearing.corrected_digits import CORRECTS
from notereader.reader.page import Mention, Page, Sentence, within

_OTHER = {"radial": "ulnar", "ulnar": "radial"}
_NOUNS = frozenset(["slip", "half", "limb", "tail"])
_BEFORE_SIDE = frozenset(["the", "actually", "really", "in", "fact", "of", "course", ",", "its", "indeed"])
_BEHIND_SIDE = frozenset(["", ".", ";", ",", "one", "slip", "side", "half", "and", "-", ")"])
_INSTEAD = (["instead", "of"], ["rather", "than"])
_STATES = ("extent", "deed")
_OTHERS = frozenset(["pulley", "sided", "bundle", "anynerve", "anyartery", "structure"])


def put_slips_right(page: Page) -> None:
    """Let the two slips change places before a sentence that says the wrong one was written."""
    if not _NOUNS & set(page.words) or len({m.value for m in page.mentions if m.kind == "digit"}) > 1:
        return
    for sentence in page.sentences:
        if sentence.section != "addendum" and CORRECTS.isdisjoint(sentence.said):
            continue
        right = _meant(page, sentence)
        if right and page.slips_changed is None and _was_told_of_the_other(page, sentence, right):
            for m in page.mentions:
                if m.kind == "slip" and m.j <= sentence.i:
                    m.value = _OTHER.get(m.value, m.value)
            page.slips_changed = sentence.i


def _meant(page: Page, sentence: Sentence) -> str:
    """Return the side that a correction gives to the slip it speaks of; '' where it says anything else."""
    mentions = within(page.mentions, sentence.i, sentence.j)
    if _NOUNS.isdisjoint(sentence.said) or any(m.kind in _OTHERS for m in mentions):
        return ""
    if "slip" not in sentence.said and not any(m.value == "FDS" for m in mentions):
        return ""  # 'the ulnar half of the finger'
    sides = [k for k in range(sentence.i, sentence.j) if page.words[k] in _OTHER]
    denied = {page.words[k] for k in sides if _is_denied(page, sentence, k)}
    meant = {page.words[k] for k in sides} - denied
    if len(meant) != 1 or len(denied) > 1:
        return ""
    return meant.pop() if denied or any(_is_told(page, sentence, k) for k in sides) else ""


def _is_denied(page: Page, sentence: Sentence, k: int) -> bool:
    before = [w for w in page.words[max(sentence.i, k - 3) : k] if w != "the"]
    behind = [w for w in page.words[k + 1 : min(k + 4, sentence.j)] if w not in _NOUNS]
    misread = (before[-1:] == ["for"] and behind[:1] == ["read"]) or behind[:2] == ["should", "read"]
    return misread or before[-1:] == ["not"] or before[-2:] in _INSTEAD


def _is_told(page: Page, sentence: Sentence, k: int) -> bool:
    """'The slip that was cut was the ulnar one': the side is all that the sentence says of a slip known already."""
    n = k - 1
    while n > sentence.i and page.words[n] in _BEFORE_SIDE:
        n -= 1
    behind = page.words[k + 1] if k + 1 < sentence.j else ""
    named = _NOUNS & set(page.words[sentence.i : n])
    return bool(named) and page.words[n] in ("was", "is") and page.words[k - 1] != "of" and behind in _BEHIND_SIDE


def _was_told_of_the_other(page: Page, sentence: Sentence, right: str) -> bool:
    """Tell whether what the correction says of its slip was told of the other slip before, and not of this one."""
    said = {m.value for m in within(page.mentions, sentence.i, sentence.j) if m.kind in _STATES}
    told: dict[str, set[str]] = {"radial": set(), "ulnar": set()}
    slips = [m for m in page.mentions if m.kind == "slip" and m.value in told and m.j <= sentence.i]
    for n, slip in enumerate(slips):
        behind = slips[n + 1].i if n + 1 < len(slips) else sentence.i
        told[slip.value] |= {""} | {m.value for m in _states_near(page, slip, behind)}
    wrong = _OTHER[right]
    return bool(said & told[wrong]) and not said & told[right] if said else "" in told[wrong]


def _states_near(page: Page, slip: Mention, last: int) -> list[Mention]:
    """Return the states told behind a slip, up to the next slip or the end of its sentence."""
    end = next((s.j for s in page.sentences if s.i <= slip.i < s.j), last)
    return [m for m in within(page.mentions, slip.j, min(end, last)) if m.kind in _STATES]
