"""Adjectives that share their noun: 'the deep and superficial flexors', 'the superficial was not'."""

from notereader.reader.page import Break, Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_JOINING = word_list("shared_nouns", "joining")
_ADJECTIVES = {"deep": "FDP", "superficial": "FDS", "shallow": "FDS"}
_SLIPS = {"rs": "radial", "us": "ulnar"}
_SIDED = ("structure", "sided", "bundle", "anynerve", "anyartery")
_DIGITS = ("digit", "digit?")
_ONES = frozenset(["one", "ones"])
_BEFORE_ONE = frozenset([",", ";", ":", "and", "&", "but", "."])
_AFTER = word_list("shared_nouns", "after")


def settle_shared_nouns(page: Page) -> None:
    """Add the tendons that only an adjective names, where a tendon of that kind is named with its noun."""
    made = _slips_of_percents(page) + _slips_by_letters(page) + _long_flexor(page)
    if any(m.kind == "tendon" and page.words[m.i] in _ADJECTIVES for m in page.mentions):
        taken = {k for m in page.mentions if m.kind in ("tendon", "generic") for k in range(m.i, m.j)}
        bare = [k for k, word in enumerate(page.words) if word in _ADJECTIVES and k not in taken]
        made += [m for k in bare for m in _shared(page, k)]
    if made:
        page.mentions = sorted([*page.mentions, *made], key=lambda m: (m.i, m.j))
    if "median" in page.words:
        _share_nerves(page)
    if "nerve" in page.words or "nerves" in page.words:
        _share_digital_nerves(page)


def _share_nerves(page: Page) -> None:
    """'Median and ulnar nerves divided': the two nerves of the wrist, each by its name."""
    words = page.words
    for k in range(len(words) - 3):
        pair = words[k] if words[k + 1] in ("and", "&", "+", "/") and words[k + 3] in _NERVES else ""
        if {pair, words[k + 2]} != {"median", "ulnar"}:
            continue
        page.mentions = [m for m in page.mentions if m.j <= k or m.i >= k + 4 or m.kind not in _NERVE_WORDS]
        page.mentions.append(Mention("structure", f"{pair} nerve", k, k + 1))
        page.mentions.append(Mention("structure", f"{words[k + 2]} nerve", k + 2, k + 4))
        page.mentions.sort(key=lambda m: (m.i, m.j))


def _share_digital_nerves(page: Page) -> None:
    """'Of the nerves, the radial digital of the index and the ulnar digital of the ring', '..., the ulnar of the ring'.

    Where fingers are told with them; without, the sides alone are read behind the noun.
    """
    made: list[Mention] = []
    dropped: list[Mention] = []
    for sentence in page.sentences:
        for k, end, noun in _sides_of_fingers(page, sentence):
            made.append(Mention("sided", f"{page.words[k]} digital nerve", k, end))
            dropped += [m for m in within(page.mentions, k, k + 1) if m.kind == "border"]
            if not _AMONG.isdisjoint(page.words[max(sentence.i, noun.i - 2) : noun.i]):
                dropped.append(noun)  # 'of the nerves' are those told apart behind it, and no others
    if made:
        kept = [m for m in page.mentions if m not in dropped]
        page.mentions = sorted([*kept, *made], key=lambda m: (m.i, m.j))


def _sides_of_fingers(page: Page, sentence: Sentence) -> list[tuple[int, int, Mention]]:
    """Return the sides that share the noun of a nerve before them and stand before 'of the ring': words, noun."""
    if sentence.said.isdisjoint(_SIDES) or sentence.said.isdisjoint(_NERVES):
        return []
    here = within(page.mentions, sentence.i, sentence.j)
    nouns = [m for m in here if m.kind in _SIDED]
    fingers = {m.i for m in here if m.kind == "digit"}
    found: list[tuple[int, int, Mention]] = []
    for k in (k for k in range(sentence.i, sentence.j - 3) if page.words[k] in _SIDES):
        end = k + 1 + (page.words[k + 1] == "digital")
        finger = end + 1 + (page.words[end + 1] == "the")
        noun = next((m for m in reversed(nouns) if m.j <= k), None)
        told = page.words[end] in _OF_FINGER and finger in fingers and not any(m.i <= k < m.j for m in nouns)
        if told and noun is not None and noun.value.endswith("nerve"):
            found.append((k, end, noun))
    return found


_SIDES = frozenset(["radial", "ulnar"])
_AMONG = frozenset(["of", "among", "amongst"])
_OF_FINGER = frozenset(["of", "to", "in"])
_NERVES = frozenset(["nerves", "nerve", "nn", "ns"])
_NERVE_WORDS = frozenset(["anynerve", "structure", "border", "sided", "role"])


def _long_flexor(page: Page) -> list[Mention]:
    """'I opened the thumb and found the long flexor cut': where the finger spoken of last is the thumb, its flexor."""
    words = page.words
    spots = {k for k in range(1, len(words) - 1) if words[k] == "long" and words[k + 1] == "flexor"}
    if not spots:
        return []
    digits = [m for m in page.mentions if m.kind == "digit" and m.i not in spots]
    taken = {k for m in page.mentions if m.kind == "tendon" for k in range(m.i, m.j)}
    of_thumb = [k for k in sorted(spots - taken) if _thumb_before(digits, k)]
    page.mentions = [m for m in page.mentions if not (m.kind in _DIGITS and m.i in spots)]
    return [Mention("tendon", "FPL", k, k + 2) for k in of_thumb]


def _thumb_before(digits: list[Mention], k: int) -> bool:
    """Tell whether the digit named last before word k is the thumb, or the only one that the note names."""
    before = [m for m in digits if m.i < k]
    return (before or digits)[-1:] != [] and (before or digits)[-1].value == "thumb"


def _shared(page: Page, k: int) -> list[Mention]:
    """Return the tendon that the adjective at word k names, if it names one."""
    words = page.words
    others = [a for a, tendon in _ADJECTIVES.items() if tendon != _ADJECTIVES[words[k]]]
    j = k + 1
    while j < len(words) and j - k < 5 and words[j] in _JOINING and page.breaks[j] < Break.COLUMN:
        j += 1
    if (
        j > k + 1
        and j < len(words)
        and words[j] in others
        and any(m.i == j and m.kind == "tendon" for m in page.mentions)
    ):
        return [Mention("tendon", _ADJECTIVES[words[k]], k, k + 1)]
    ones = words[k + 1 : k + 2] != [] and words[k + 1] in _ONES
    if k == 0 or not (words[k - 1] == "the" or (ones and words[k - 1] in _BEFORE_ONE)):
        return []
    end = k + 2 if words[k + 1 : k + 2] and words[k + 1] in _ONES else k + 1
    after = words[end] if end < len(words) else "."
    return [Mention("tendon", _ADJECTIVES[words[k]], k, end)] if end > k + 1 or after in _AFTER else []


def _slips_of_percents(page: Page) -> list[Mention]:
    """'FDS both slips nicked, radial 10%, ulnar 30%': sides with a share, in a sentence about the slips of an FDS."""
    made: list[Mention] = []
    for sentence in page.sentences:
        if "%" not in sentence.said:
            continue
        here = within(page.mentions, sentence.i, sentence.j)
        slips = next((m for m in here if m.kind == "slip"), None)
        if slips is None:
            continue
        own = [m for m in here if m.kind in ("tendon", "slip", *_SIDED)]
        if own[-1].kind in _SIDED or not any(m.value == "FDS" for m in own):
            continue
        for k in range(slips.j, sentence.j - 2):
            shared = page.words[k] in _SLIPS.values() and page.words[k + 1][0].isdecimal() and page.words[k + 2] == "%"
            if shared and not any(m.i <= k < m.j for m in own):
                made.append(Mention("slip", page.words[k], k, k + 1))
    return made


def _slips_by_letters(page: Page) -> list[Mention]:
    """'FDS: RS 100 %, US 50 %': a note that has both short forms means the slips, not ultrasound."""
    spots = [k for k, word in enumerate(page.words) if word in _SLIPS and page.raw(k, k + 1).isupper()]
    both = {page.words[k] for k in spots} == set(_SLIPS)
    beside = any(page.words[max(0, k - 2) : k].count("fds") for k in spots)
    return [Mention("slip", _SLIPS[page.words[k]], k, k + 1) for k in spots] if both and beside else []
