"""Which words name a slip of a superficialis: 'its ulnar half', 'of its two slips the radial was whole'."""

from notereader.reader.page import Break, Mention, Page, Sentence, within

_SIDES = frozenset(["radial", "ulnar"])
_PARTS = frozenset(["half", "part", "limb", "tail"])
_PLURALS = frozenset(["slips", "halves", "limbs", "tails"])
_SAYS = frozenset(
    [
        *("was", "is", "being", "had", "has", "were", "cut", "gone", "intact", "whole", "one"),
        *("alone", "only", "got", "took", "received", "needed"),
    ]
)
_OF_THEM = (["of", "them"], ["of", "these"], ["of", "the"])
_GIVEN = range(2, 4)  # words: 'the ulnar a Kessler', 'the ulnar a small Kessler'
_OTHERS = frozenset(["pulley", "pulley?", "sided", "bundle", "anynerve", "anyartery", "structure"])
_LEADS_ON = frozenset(["of", "to", "through", "into", "from", "under", "at"])
_APART = frozenset(["out", "away"])
_ACTS = frozenset(["i", "we", "and", "then", "to", "was", "were"])
_OF_IT = frozenset(["fds", "superficialis", "sublimis", "superficial"])


def settle_slips(page: Page) -> None:
    """Add the slips told as halves, or by their side alone, and drop the shares that such a half only seems to be."""
    _drop_extensor_slips(page)
    _drop_articles(page)
    _settle_the_other(page)
    _settle_short_sides(page)
    if not page.words or _SIDES.isdisjoint(page.words):
        return
    made: list[Mention] = []
    latest = ""
    of_both = False  # the sentence before told of both slips
    for sentence in page.sentences:
        inside = within(page.mentions, sentence.i, sentence.j)
        if "slip" in sentence.said:
            inside = _with_that_slip(page, sentence, inside, made)
            inside = _with_bare_slip(page, sentence, inside, made)
        if not _SIDES.isdisjoint(sentence.said) and not any(m.kind in _OTHERS for m in inside):
            made += _told(page, sentence, inside, latest, of_both)
        if not _APART.isdisjoint(sentence.said):
            made += _taken_out(page, sentence, inside)
        latest = next((m.value for m in reversed(inside) if m.kind == "tendon"), latest)
        of_both = any(m.kind == "slip" and m.value == "both" for m in inside)
    slips = [*made, *(m for m in page.mentions if m.kind == "slip" and m.value in _SIDES)]
    taken = {k for m in slips for k in range(m.i, m.j)}
    kept = [m for m in page.mentions if not (m.kind in ("fraction", "extent") and m.j - m.i == 1 and m.i in taken)]
    page.mentions = sorted([*kept, *made], key=lambda m: (m.i, m.j)) if made else kept


def _drop_extensor_slips(page: Page) -> None:
    """'Extensor digiti minimi, two slips, both repaired': the slips of an extensor are none of a superficialis."""
    extensors = [m for m in page.mentions if m.kind == "structure" and m.value == "extensor tendon"]
    others: set[int] = set()
    for extensor in extensors:
        reach = min(extensor.j + _NEAR, len(page.words))
        end = next((k for k in range(extensor.j, reach) if page.words[k] in (".", ";")), reach)
        behind = within(page.mentions, extensor.j, end)
        flexor = next((m.i for m in behind if m.kind == "tendon"), end)
        others.update(m.i for m in behind if m.kind == "slip" and m.i < flexor)
    if others:
        page.mentions = [m for m in page.mentions if m.kind != "slip" or m.i not in others]


def _drop_articles(page: Page) -> None:
    """'The radial took a mattress suture, the ulnar a small Kessler': 'a' is the article of the stitch, no artery."""
    stitches = {m.i for m in page.mentions if m.kind in ("stitch", "strandword", "pattern")}
    page.mentions = [
        m
        for m in page.mentions
        if m.kind != "structure" or page.words[m.j - 1] != "a" or stitches.isdisjoint(range(m.j, m.j + 2))
    ]


def _settle_short_sides(page: Page) -> None:
    """Add the slip of 'FDS rad.: cut', 'FDS uln. | intact', 'FDS (radial): cut', 'radial FDS sewn'."""
    named = {k for m in page.mentions if m.kind == "slip" for k in range(m.i, m.j)}
    made: list[Mention] = []
    for tendon in (m for m in page.mentions if m.kind == "tendon" and m.value == "FDS" and m.i < m.j):
        slip = _shortened(page, tendon) or _labelled(page, tendon) or _before_name(page, tendon)
        if slip is not None and named.isdisjoint(range(slip.i, slip.j)):
            made.append(slip)
    if made:
        page.mentions = sorted([*page.mentions, *made], key=lambda m: (m.i, m.j))


def _shortened(page: Page, tendon: Mention) -> Mention | None:
    """'FDS rad.: cut', 'FDS uln. | intact'."""
    side = _SHORT_SIDES.get(page.words[tendon.j]) if tendon.j < len(page.words) else None
    j = tendon.j + 1 + (page.words[tendon.j + 1 : tendon.j + 2] == ["."])
    free = j >= len(page.words) or page.words[j] not in _NOT_OF_SLIPS
    return Mention("slip", side, tendon.j, j) if side is not None and free else None


def _labelled(page: Page, tendon: Mention) -> Mention | None:
    """'FDS radial: cut', 'FDS ulnar .... severed', 'FDS (radial) | sewn': a label, and no place 'radial' on it."""
    words, k = page.words, tendon.j
    bracketed = words[k : k + 1] == ["("] and words[k + 2 : k + 3] == [")"]
    at = k + bracketed
    end = at + 1 + bracketed
    if at >= len(words) or words[at] not in _SIDES or end >= len(words) or page.breaks[at] >= Break.LINE:
        return None
    closed = words[end] in (":", "|", "=") or words[end].startswith("..") or page.breaks[end] == Break.COLUMN
    return Mention("slip", words[at], k, end) if closed else None


def _before_name(page: Page, tendon: Mention) -> Mention | None:
    """'Radial FDS cut, ulnar FDS intact': the side right before the tendon; not 'radial and ulnar FDS cut'."""
    words, k = page.words, tendon.i - 1
    if k < 0 or words[k] not in _SIDES or page.breaks[tendon.i] >= Break.COLUMN:
        return None
    listed = k > 1 and words[k - 1] in _AND and words[k - 2] in _SIDES
    plain = words[tendon.j : tendon.j + 1] != [] and words[tendon.j] in _NOT_OF_SLIPS | _PLURALS
    return None if listed or plain else Mention("slip", words[k], k, tendon.i)


_AND = frozenset(["and", "or", "/", "&", "+", ","])
_SHORT_SIDES = {"rad": "radial", "uln": "ulnar"}
_NOT_OF_SLIPS = frozenset(
    ["slip", "half", "dig", "digital", "nerve", "artery", "side", "border", "bundle", "nv", "tail"]
)


def _settle_the_other(page: Page) -> None:
    """Add the slip of 'one slip was excised, the other sutured', told by what is left of two."""
    made: list[Mention] = []
    for one in [m for m in page.mentions if m.kind == "slip" and m.value == "one"]:
        named = _side_behind(page, one.j)
        one.value = _side_in_brackets(page, one.j) or (named.value if named else one.value)
        made += [named] if named else []
    for slip in [m for m in page.mentions if m.kind == "slip" and m.value in _SIDES and m.i < m.j]:
        made += _the_one_left(page, slip) or _the_one_of_the_next(page, slip)
    for one in [m for m in page.mentions if m.kind == "slip" and m.value == "one"]:
        end = next((k for k in range(one.j, len(page.words)) if page.words[k] in (".", ";")), len(page.words))
        at = next((k for k in range(one.j, end - 2) if page.words[k : k + 2] == ["the", "other"]), None)
        if at is not None and page.words[at + 2] not in _NOUNS_OF_OTHERS:
            made.append(Mention("slip", "other", at, at + 2))
    if made:
        page.mentions = sorted([*page.mentions, *made], key=lambda m: (m.i, m.j))


def _side_in_brackets(page: Page, k: int) -> str:
    """Return the side of 'one slip (ulnar)', 'one slip removed (U)', told in brackets at most two words behind it."""
    for at in range(k, min(k + 3, len(page.words) - 2)):
        if page.words[at] == "(" and page.words[at + 2] == ")":
            return _IN_BRACKETS.get(page.words[at + 1], "")
    return ""


def _side_behind(page: Page, k: int) -> Mention | None:
    """Return the slip that 'one slip of FDS, the ulnar, was excised', 'one slip (the ulnar one)' names right behind."""
    words = page.words
    at = next((n for n in range(k, min(k + 4, len(words) - 3)) if words[n] in (",", "(", "-")), None)
    if at is None or words[at + 1] != "the" or words[at + 2] not in _SIDES:
        return None
    end = at + 3 + (words[at + 3] in ("one", "slip"))
    closed = words[end : end + 1] in ([","], [")"], ["-"])
    return Mention("slip", words[at + 2], at + 1, end) if closed else None


_IN_BRACKETS = {
    **dict.fromkeys(("u", "ul", "uln", "ulnar"), "ulnar"),
    **dict.fromkeys(("r", "rad", "radial"), "radial"),
}


def _the_one_left(page: Page, slip: Mention) -> list[Mention]:
    """'Ulnar slip removed, the other repaired with 4-0': the slip of the other side, told by what is left of two."""
    words, end = page.words, slip.j
    while end < len(words) and words[end] not in (".", ";") and end - slip.j < _NEAR:
        end += 1
    other = "radial" if slip.value == "ulnar" else "ulnar"
    behind = [m for m in within(page.mentions, slip.j, end) if m.kind == "slip"]
    if behind[:1] and behind[0].value == "other":
        behind[0].value = other  # 'radial slip sewn, other slip excised'
    at = next((k for k in range(slip.j, end - 1) if words[k : k + 2] in _THE_OTHER), None)
    if behind or at is None or words[at - 1] in _LEADS_TO_OTHER or words[at + 2 : at + 3] == [] or at + 2 >= len(words):
        return []
    between = within(page.mentions, slip.j, at)
    if words[at + 2] in _NOUNS_OF_OTHERS | {"one", "flexor", "nerve", "pulley"}:
        return []
    if any(m.kind in ("digit", *_OTHERS) for m in between) or any(
        m.kind == "tendon" for m in within(page.mentions, at + 2, at + 3)
    ):
        return []
    return [Mention("slip", other, at, at + 2)]


def _the_one_of_the_next(page: Page, slip: Mention) -> list[Mention]:
    """'The radial slip was taken out; the other one I smoothed', 'The other slip was pared': a statement of its own."""
    words, end = page.words, slip.j
    while end < len(words) and words[end] not in (".", ";") and end - slip.j < _NEAR:
        end += 1
    at = end + 1
    if words[end : end + 1] not in (["."], [";"]) or words[at : at + 2] != ["the", "other"]:
        return []
    if words[at + 2 : at + 3] not in (["one"], ["slip"], ["half"], ["limb"]) or page.breaks[at] >= Break.BLANK:
        return []
    between = within(page.mentions, slip.j, end)
    if any(m.kind in ("digit", "slip", "tendon", *_OTHERS) for m in between):
        return []
    other = "radial" if slip.value == "ulnar" else "ulnar"
    known = [m for m in within(page.mentions, at, at + 3) if m.kind == "slip"]
    for mention in known:
        mention.value = other
    return [] if known else [Mention("slip", other, at, at + 3)]


_THE_OTHER = (["the", "other"], ["its", "fellow"])
_LEADS_TO_OTHER = frozenset(["in", "of", "on", "from", "to", "for", "with", "than", "at"])
_NOUNS_OF_OTHERS = frozenset(
    ["finger", "fingers", "hand", "tendon", "tendons", "end", "side", "slip", "digit", "stump"]
)


def _with_that_slip(page: Page, sentence: Sentence, inside: list[Mention], made: list[Mention]) -> list[Mention]:
    """'The radial slip was gone. I cut that slip out': add the slip named last; return the mentions of the sentence."""
    words = page.words
    for k in range(sentence.i, sentence.j - 1):
        cut = words[k] in _CUT and words[k - 1] in ("the", "this", "that")  # 'the cut slip was sewn'
        if not (words[k] in _THAT or cut) or words[k + 1] != "slip":
            continue
        before = [m for m in within(page.mentions, max(0, k - _NEAR), k) if m.kind == "slip"]
        if before and before[-1].value in _SIDES and not any(m.i <= k + 1 < m.j for m in inside):
            made.append(Mention("slip", before[-1].value, k, k + 2))
            inside = sorted([*inside, made[-1]], key=lambda m: (m.i, m.j))
    return inside


def _with_bare_slip(page: Page, sentence: Sentence, inside: list[Mention], made: list[Mention]) -> list[Mention]:
    """'Ulnar slip cut, radial slip whole. ... The slip got a single 4-0': add the one slip of its finger that was hurt.

    Nothing where the finger has two hurt slips, or the one hurt was taken out.
    """
    words = page.words
    named = {k for m in inside if m.kind == "slip" for k in range(m.i, m.j)}
    for k in range(sentence.i, sentence.j):
        if words[k] != "slip" or k in named or words[k - 1] not in _BARE or words[k + 1 : k + 2] in _NOT_ITS_OWN:
            continue
        if any(m.value == "excised" and 0 < m.i - k <= _SOON for m in inside):
            continue  # 'Specimen: FDS slip, discarded' is the other one
        before = [
            m for m in within(page.mentions, max(0, k - _FAR), k) if m.kind in ("slip", "digit", "extent", "deed")
        ]
        own = [m.value for m in inside if m.kind == "digit"] or [m.value for m in before if m.kind == "digit"][-1:]
        sides = {m.value for n, m in enumerate(before) if _hurt_of(before, n, own)}
        if len(sides) == 1 and sides <= _SIDES:
            made.append(Mention("slip", sides.pop(), k, k + 1))
            inside = sorted([*inside, made[-1]], key=lambda m: (m.i, m.j))
    return inside


def _hurt_of(before: list[Mention], n: int, digits: list[str]) -> bool:
    """Tell whether the n-th mention is a slip of the one finger given and is not told to be whole or taken out."""
    if before[n].kind != "slip":
        return False
    finger = next((m.value for m in reversed(before[:n]) if m.kind == "digit"), None)
    fate = before[n + 1] if n + 1 < len(before) else None
    spared = fate is not None and fate.value in ("intact", "excised", "left") and fate.i - before[n].j <= _SOON
    return not spared and (not digits or [finger] == digits)


_BARE = frozenset(["the", "its", "superficialis", "fds", "sublimis", "divided", "severed", "injured", "lacerated"])
_NOT_ITS_OWN = (["of"], ["from"], ["knot"], ["that"], ["which"])
_FAR = 250  # words
_SOON = 4  # words
_NEAR = 40  # words
_THAT = frozenset(["that", "this"])
_CUT = frozenset(["cut", "divided", "severed", "torn", "injured", "lacerated", "transected"])


def _told(page: Page, sentence: Sentence, inside: list[Mention], latest: str, of_both: bool) -> list[Mention]:
    """Return the slips of one sentence; `latest` is the tendon named last before it.

    `of_both`: the sentence before told of both slips, 'FDS: both slips cut. Ulnar sutured, radial excised.'
    """
    words, found = page.words, []
    named = {k for m in inside if m.kind == "slip" for k in range(m.i, m.j)}
    near = [m for m in within(page.mentions, sentence.i - _NEAR, sentence.j) if m.kind in ("tendon", *_OTHERS)]
    for k in range(sentence.i, sentence.j - 1):
        if words[k] not in _SIDES or k in named:
            continue
        tendon = next((m.value for m in reversed(inside) if m.kind == "tendon" and m.i <= k), latest)
        ahead = next(
            (m.value for m in inside if m.kind == "tendon" and ";" not in words[k : m.i] and 0 < m.i - k <= 4), ""
        )
        several = (
            of_both
            or _one_of_two(words, sentence, k, near)
            or not _PLURALS.isdisjoint(words[sentence.i : k])
            or any(m.kind == "slip" and m.j <= k for m in inside)
        )
        tendon = (
            "FDS" if of_both or any(m.kind == "slip" and m.j <= k for m in inside) else tendon
        )  # no other has slips
        half = words[k + 1] in _PARTS and _of_the_tendon(words, k + 2) and not _place_of_a_cut(words, k)
        if half and "FDS" in (tendon, ahead):
            found.append(Mention("slip", words[k], k, k + 2))
        elif several and tendon == "FDS" and _opens(page, sentence, k) and _said_of_side(words, inside, k):
            found.append(Mention("slip", words[k], k, k + 1 + (words[k + 1] == "one")))
    return found


def _one_of_two(words: list[str], sentence: Sentence, k: int, near: list[Mention]) -> bool:
    """'FDS was cut; I took out the ulnar one and joined the radial one': of the superficialis named last, nothing else.

    `near`: the tendons and what has sides besides them, in and shortly before the sentence.
    """
    ones = {words[n] for n in range(sentence.i, sentence.j - 1) if words[n] in _SIDES and words[n + 1] == "one"}
    last = next((m for m in reversed(near) if m.i <= k), None)
    return ones == _SIDES and words[k + 1] == "one" and last is not None and last.value == "FDS"


def _opens(page: Page, sentence: Sentence, k: int) -> bool:
    """Tell whether a side has an article, or opens a statement of what was done: 'Ulnar sutured, radial excised'."""
    if page.words[k - 1] in ("the", "("):
        return True
    done = any(m.i == k + 1 for m in within(page.mentions, k + 1, k + 2) if m.kind == "deed")
    return done and (k == sentence.i or page.words[k - 1] in (",", ";", "and", ":"))


def _said_of_side(words: list[str], inside: list[Mention], k: int) -> bool:
    """Tell whether a side alone is a slip: 'the ulnar was trimmed', 'left the ulnar alone', 'excised the ulnar.'

    So it is where it is one of two ('only the ulnar of them') or is told what it was given ('the ulnar a Kessler').
    """
    if words[k + 1 : k + 3] in _OF_THEM or any(m.kind == "stitch" and m.i - k in _GIVEN for m in inside):
        return True
    if words[k + 1] in _SAYS or any(m.kind == "deed" and m.i == k + 1 for m in inside):
        return True
    done = any(m.kind == "deed" and m.j == k - 1 for m in inside)
    return done and words[k + 1] in (".", ",", ";", "and", "with", "to", "for", "because", "as")


def _taken_out(page: Page, sentence: Sentence, inside: list[Mention]) -> list[Mention]:
    """'took the radial slip out', 'cut the ulnar slip of the FDS away': a verb in two parts around the slip."""
    words, found = page.words, []
    slips = [m for m in inside if m.kind == "slip"]
    for k in range(sentence.i + 3, sentence.j) if slips else ():
        if words[k] not in _APART or (k + 1 < sentence.j and words[k + 1] in _LEADS_ON):
            continue
        verb = next((n for n in range(k - 1, max(sentence.i, k - 9), -1) if words[n] in ("took", "cut", "take")), None)
        if verb is not None and any(verb < m.i and m.j <= k for m in slips) and words[verb - 1] in _ACTS:
            found.append(Mention("deed", "excised", k, k + 1))
    return found


def _of_the_tendon(words: list[str], k: int) -> bool:
    """Tell whether a half is not that of something else: 'the ulnar half of the FDS', not 'of A2'."""
    if words[k : k + 1] != ["of"]:
        return True
    noun = words[k + 2 : k + 3] if words[k + 1 : k + 2] in (["the"], ["its"], ["this"]) else words[k + 1 : k + 2]
    return bool(noun) and noun[0] in _OF_IT


def _place_of_a_cut(words: list[str], k: int) -> bool:
    """'Superficialis was cut on its radial half, 50 per cent': where an undivided tendon was cut, and no slip."""
    return words[k - 2] in _ON and words[k - 1] in ("the", "its") and words[k - 3] in _CUT_ON


_ON = frozenset(["on", "over", "in", "across", "at", "through"])
_CUT_ON = frozenset(["cut", "nicked", "divided", "severed", "lacerated", "notched", "sliced", "injured", "damaged"])
