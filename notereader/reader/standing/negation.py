"""Whether words stand under a negation in their clause: 'no gap', 'too thin to repair', 'peripheral = none'."""

from itertools import pairwise

from notereader.reader.layout.clauses import BOUNDS
from notereader.reader.page import Break, Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_VERBS = frozenset(["was", "were", "is", "are", "did", "had"])
# Negations that follow what they negate: 'an epitendinous suture was omitted on purpose'.
_AFTER = word_list("standing", "after")
_NOT_SEWN = (["not", "repaired"], ["not", "sutured"], ["not", "sewn"], ["not", "grafted"], ["not", "fixed"])


# 'Glides freely? No (catches at A2)': the answer to a label denies nothing behind it.
ANSWERED = frozenset(["unticked", "unfilled"])


def is_negated(page: Page, i: int, j: int, sentence: Sentence, reach: int = 5) -> bool:
    """Tell whether words i to j stand under a negation in their clause."""
    if too_much_for(page, i, sentence) is not None:
        return True
    for cue in within(page.cues, sentence.i, sentence.j):
        if cue.value != "negated" or page.standing[cue.i] in ANSWERED:
            continue
        if cue.j <= i and i - cue.j <= reach and not (_crossed(page, cue.j, i) or _leaves_bracket(page, cue.j, i)):
            return True
        other = "and" in page.words[j : cue.i] and page.words[cue.i] in _VERBS  # 'smoothed and the tendon was not sewn'
        if cue.i >= j and cue.i - j <= 5 and not _crossed(page, j, cue.i) and not other:
            phrase = " ".join(page.words[cue.i : cue.j])
            if phrase == "no" and (cue.j == sentence.j or _ends_field(page, cue)) and cue.i - j <= 2:
                return True
            if phrase in ("no", "none", "nil") and page.words[cue.i - 1] == "=" and cue.i - j <= _LONG_LABEL:
                return True  # 'Circumferential suture = none'
            beside = cue.i - j <= 1 and page.words[j : cue.i] != ["and"]  # 'FDP divided and not the FDS'
            if "not" in page.words[cue.i : cue.j] and Break.COLUMN in page.breaks[j : cue.i + 1]:
                continue  # 'FDS   complete   not repaired'
            if page.words[cue.i - 1] == "/" and page.words[cue.i : cue.i + 2] in _NOT_SEWN:
                continue  # 'FDS V .... cut / not repaired'
            if phrase in _AFTER or (phrase in ("not", "never", "none", "nil") and beside):
                return True
    return False


_LONG_LABEL = 3  # words


def too_much_for(page: Page, i: int, sentence: Sentence) -> int | None:
    """'Too thin to repair', 'too far out to be sutured', 'too distal for repair': return the 'too' that denies word i.

    'Not too thin to repair' denies nothing.
    """
    k = i - 1 - (page.words[i - 1] in _BEFORE_DEED)
    if k <= sentence.i or "too" not in sentence.said or page.words[k] not in ("to", "for"):
        return None
    first = max(sentence.i, k - _MEASURED)
    too = next((n for n in range(k - 1, first - 1, -1) if page.words[n] == "too"), None)
    denies = too is not None and page.words[too - 1] not in ("not", "n't") and BOUNDS.isdisjoint(page.words[too:k])
    return too if denies else None


_BEFORE_DEED = frozenset(["be", "direct", "primary", "a", "any", "formal"])
_MEASURED = 5  # words: 'too short and ragged'


def _ends_field(page: Page, cue: Mention) -> bool:
    """'Circumferential suture no; A4 vented': an answer, with the next label behind it; not '4-0... no, 3-0'."""
    closed = page.words[cue.j] in (";", ",") or page.breaks[cue.j] == Break.COLUMN
    return closed and not page.words[cue.i - 1].startswith("..") and page.words[cue.i - 2] != "+"


def _crossed(page: Page, i: int, j: int) -> bool:
    ended = any(page.words[k] in BOUNDS or page.words[k] in (".", "then", "with") for k in range(i, j))
    anew = any(a == "and" and b in _SUBJECTS_ANEW for a, b in pairwise(page.words[i:j]))
    anew = anew or _some_behind(page.words[i : j + 1])
    anew = anew or ("-", "-") in pairwise(page.words[i:j])  # 'no room -- repaired with two strands'
    anew = anew or speaker_anew(page.words[i:j]) or next_field(page, i, j)
    anew = anew or _result_then_it(page, i, j) or _result_after(page, i, j) or stated_anew(page, i, j)
    # 'not worth saving, so excised', but 'not so clean'; 'neither repair gapped and both were bulky'
    return ended or anew or "so" in page.words[i + 1 : j]


def _leaves_bracket(page: Page, i: int, j: int) -> bool:
    """'A cruciate (grasping, not locked) of 3-0': what is denied in a bracket ends where it closes."""
    closed = next((k for k in range(i, j) if page.words[k] in ("(", ")")), j)
    return closed < j and page.words[closed] == ")"


def _result_after(page: Page, i: int, j: int) -> bool:
    """'No gap after a four-strand repair', 'neither tension nor bulk following six strands': the repair was made."""
    after = next((k for k in range(i, j) if page.words[k] in ("after", "following")), None)
    return after is not None and any(m.kind in _RESULTS for m in within(page.mentions, i - 1, after))


def _result_then_it(page: Page, i: int, j: int) -> bool:
    """'There was no gap it was a little bulky', dictated without stops; not 'no fibre of it was divided'."""
    spots = {k for k in range(i, j - 1) if page.words[k : k + 2] == ["it", "was"]}
    return bool(spots) and any(m.kind in _RESULTS and m.j in spots for m in within(page.mentions, i - 1, j))


def stated_anew(page: Page, i: int, j: int) -> bool:
    """'No gap at all little bit bulky', 'no gap catches at A2', dictated without stops; not 'no gap or catching'.

    What a denied noun is followed by, with nothing that joins the two, is a statement of its own.
    """
    first = j + (page.words[j : j + 1] == ["a"])  # 'a bit tight'
    if first >= len(page.words) or page.words[first] not in _STATES:
        return False
    nouns = [m for m in within(page.mentions, i - 1, j) if m.kind in _RESULTS and m.j > i]
    return bool(nouns) and _JOINERS.isdisjoint(page.words[nouns[-1].j : j])


_STATES = word_list("standing", "states_of_repairs")
_JOINERS = frozenset([",", "or", "nor", "and", "/", "&", "+", "-", "not", "no", "any", "neither", "either"])
_RESULTS = frozenset(["gap", "tension", "bulk", "glide"])


def next_field(page: Page, i: int, j: int) -> bool:
    """'Tension: no     Gap: yes', 'Tension: no     Gap seen': the answer of one label, and the next column."""
    if Break.COLUMN not in page.breaks[i : j + 1]:
        return False
    capital = page.text[page.starts[i]].isupper() and page.text[page.starts[i - 1]].islower()
    labelled = capital and page.breaks[i] == Break.COLUMN  # 'Tension no     Gap seen'
    return labelled or j > i + 1 or (i > 1 and page.words[i - 2] in (":", "?", "="))


def speaker_anew(words: list[str]) -> bool:
    """Tell whether the speaker begins a statement: 'A2 was not cut I vented A4', not 'not that I could see'."""
    return any(a not in _LEADS_ON and b in ("i", "we") for a, b in pairwise(words))


_LEADS_ON = frozenset(["that", "which", "as", "what", "think", "believe", "because", "not", "no", "nothing"])
# '... and both were bulky', 'needed no core and received only a running 6-0'
_SUBJECTS_ANEW = frozenset(["both", "all", "they", "each", "it", "received", "got"])


def _some_behind(words: list[str]) -> bool:
    """'No gap and some tension', 'no gap and the superficial slight bulk': what is told to be there is not denied."""
    some = next((n for n, word in enumerate(words) if word in _SOME), 0)
    return some > 0 and not _JOINED.isdisjoint(words[:some])


_JOINED = frozenset(["and", ","])
_SOME = frozenset(["some", "slight", "mild", "moderate", "considerable", "marked", "definite"])
