"""Tendons, digits and slips that stand together as groups of targets, of one sentence each."""

from itertools import pairwise

from notereader.reader.bearing.manner import mark_manner
from notereader.reader.bearing.pairing import groups_of_run
from notereader.reader.bearing.quantifiers import bare_quantifier, others_told
from notereader.reader.bearing.runs import Named, runs_of
from notereader.reader.groups import DIGITS, Group, Target, has
from notereader.reader.mentions.measures import count_of
from notereader.reader.page import Mention, Page, Sentence, within


def mentions_by_sentence(page: Page) -> list[list[Mention]]:
    """Return the mentions of each sentence, in order."""
    found: list[list[Mention]] = []
    m, mentions = 0, page.mentions
    for sentence in page.sentences:
        while m and mentions[m - 1].i >= sentence.i:
            m -= 1  # a cell told once more, for the column beside it
        while m < len(mentions) and mentions[m].i < sentence.i:
            m += 1
        own: list[Mention] = []
        while m < len(mentions) and mentions[m].i < sentence.j:
            own.append(mentions[m])
            m += 1
        found.append([*_labels_of(page, sentence), *own])
    return found


def _named_by_row(page: Page, sentence: Sentence) -> int:
    """'index FDP   [ ] Kessler [x] Tsuge': the word the row's label is placed at, though that option was not ticked.

    RETURNS: that word, or -1 where the head of the row names no tendon.
    """
    row = sentence.prefix[0] if sentence.prefix else (0, 0)
    named = any(m.kind == "tendon" and m.j <= row[1] for m in within(page.mentions, *row))
    return sentence.i if named else -1


def _labels_of(page: Page, sentence: Sentence) -> list[Mention]:
    """Return what a grid cell's labels name, placed right before the cell's first word."""
    at = sentence.i
    found = [
        Mention(m.kind, m.value, at, at)
        for i, j in sentence.prefix
        for m in within(page.mentions, i, j)
        if m.j <= j and not (page.words[at] in _NONE and _tells_where(page, i, m))
    ]
    for i, j in sentence.prefix:
        found += [Mention("digit", digit, at, at) for digit in _between_named(page, i, j)]
    if any(page.words[i:j][-2:] == ["x", "4"] for i, j in sentence.prefix):
        found += [Mention("digit", digit, at, at) for digit in DIGITS[1:]]  # 'FDS x 4'
    return found


def _between_named(page: Page, i: int, j: int) -> list[str]:
    """'FDP 3-5': the fingers that stand between two that a label names."""
    named = [m for m in within(page.mentions, i, j) if m.kind == "digit" and m.j <= j]
    found: list[str] = []
    for first, last in pairwise(named):
        if page.words[first.j : last.i] in (["-"], ["to"]):
            found += DIGITS[DIGITS.index(first.value) + 1 : DIGITS.index(last.value)]
    return found


def _tells_where(page: Page, first: int, m: Mention) -> bool:
    """'Gap at repair: no', 'Tension on FDP repair: none': what is denied is not that it was repaired."""
    asked = m.kind in ("deed", "opened") and m.value == "repaired"
    return asked and any(before.kind in _HOW_IT_IS for before in within(page.mentions, first, m.i))


_HOW_IT_IS = frozenset(["tension", "bulk", "gap", "glide", "test"])  # kinds of mention that tell how a repair fares
_NONE = frozenset(["no", "none", "n", "nil", "0", "not"])
_LIMBS = frozenset(["limb", "limbs", "tails", "halves"])
_ATOMS = frozenset(["digit", "tendon", "slip", "generic", "plural"])


def groups_of(page: Page, mentions: list[Mention], sentence: Sentence) -> list[Group]:
    """Return the groups of targets of one sentence, in order."""
    row_named = _named_by_row(page, sentence)
    labels_or_ticked = [m for m in mentions if m.i == m.j == row_named or page.standing[m.i : m.i + 1] != ["unticked"]]
    atoms = [m for m in labels_or_ticked if m.kind in _ATOMS]
    quantifiers = [m for m in mentions if m.kind == "quantifier" and not _only_answers(page, m)]
    if not (atoms or quantifiers):
        return []
    atoms = _with_slips(page, atoms, sentence)
    label = [a for a in atoms if a.i == a.j]
    named = Named(page, sentence, [a for a in atoms if a.i < a.j], mentions, quantifiers)
    # 'Test, both: thumb no gap; index no gap': each cell is of its own finger
    groups = groups_of_run(page, label, []) if label else []
    for run in runs_of(named):
        groups += groups_of_run(page, run, quantifiers)
    groups += others_told(page, sentence, quantifiers, groups) or bare_quantifier(page, sentence, quantifiers, groups)
    groups = [g for g in groups if not (_of_the_tendons(page, g, groups) or _of_both_fingers(page, g, groups))]
    groups = [g for g in groups if not _leads_to_all(g, groups)]
    for group in groups:
        mark_manner(page, group, sentence)
    _take_up(page, groups, mentions)
    _lend_label(page, groups, sentence)
    return sorted((g for g in groups if g.i < sentence.j), key=lambda g: g.i)


def _with_slips(page: Page, atoms: list[Mention], sentence: Sentence) -> list[Mention]:
    """Settle which side 'one slip' and 'the other' are, and drop the limbs of a suture."""
    for a in atoms:
        if a.kind == "slip" and a.value == "one":
            a.value = _side_in_brackets(page, a.j) or a.value
    if not any(a.kind == "tendon" and a.value == "FDS" for a in atoms):
        atoms = [a for a in atoms if a.kind != "slip" or _LIMBS.isdisjoint(page.words[a.i : a.j])]
    return _same_fingers(page, sorted([*atoms, *_other_slip(page, atoms, sentence)], key=lambda a: (a.i, a.j)))


def _side_in_brackets(page: Page, k: int) -> str:
    """'One slip (ulnar)', 'one slip only (the ulnar)', 'one slip, radial': the side told behind word k, or ''."""
    words = [w for w in page.words[k : k + 4] if w not in ("only", "the")]
    return (
        words[1]
        if words[:1] in (["("], ["-"], [","], ["->"], ["→"], [":"]) and words[1:2] in (["radial"], ["ulnar"])
        else ""
    )


def _lend_label(page: Page, groups: list[Group], sentence: Sentence) -> None:
    """'FDS: index excised. Ring repaired.': fingers that open what stands under a tendon's label are that tendon's."""
    label = next((g for g in groups if g.tendons and not g.digits), None)
    if label is None or label is not groups[0]:
        return
    inline = label.i == sentence.i < label.j and page.words[label.j : label.j + 1] == [":"]
    fingers = [g for g in groups if g.digits and not (g.tendons or g.generic or g.reference) and g.i < g.j]
    opens = bool(fingers) and fingers[0].i == (label.j + 1 if inline else sentence.i)
    if not opens or not (inline or label.i == label.j):
        return
    if inline and "".join(page.words[fingers[0].j : fingers[0].j + 1])[:1].isdecimal():
        return  # 'FDP: IF 100, MF 100, RF 50'
    for group in fingers if inline else fingers[:1]:
        pairs = [(d, tendon, slip) for d in group.digits for _, tendon, slip in label.pairs if has(d, tendon)]
        group.pairs, group.tendons = tuple(pairs), tuple(dict.fromkeys(tendon for _, tendon, _ in pairs))
    groups.remove(label)


def _leads_to_all(group: Group, groups: list[Group]) -> bool:
    """'No tension at the tendon repairs': 'the tendon' there is no single one."""
    return group.generic == "one" and any(g.generic == "all" and g.i == group.j for g in groups)


def _of_the_tendons(page: Page, group: Group, groups: list[Group]) -> bool:
    """'FCU last of the tendons, 2-0 Ethibond': the tendon is meant that stands before."""
    before = page.words[group.i - 3 : group.i]
    if (
        group.generic != "all"
        or before[1:] != ["of", "the"]
        or before[0] not in ("last", "first", "deepest", "largest")
    ):
        return False
    return any(g.tendons and 0 <= group.i - g.j <= 5 for g in groups)


def _of_both_fingers(page: Page, group: Group, groups: list[Group]) -> bool:
    """'In the index and middle fingers the FDP of each was cut': the quantifier takes up the fingers named before."""
    if group.generic != "all" or group.j - group.i != 1 or page.words[group.i - 1] != "of":
        return False
    return any(g.tendons and g.j == group.i - 1 and len(g.digits) > 1 for g in groups)


def _other_slip(page: Page, atoms: list[Mention], sentence: Sentence) -> list[Mention]:
    """'radial slip 100%, ulnar ok', 'the radial slip was cut, the ulnar not': the other slip, told by its side."""
    named = [a for a in atoms if a.kind == "slip" and a.value in ("radial", "ulnar") and a.i < a.j]
    if len({a.value for a in named}) != 1:
        return []
    other = "ulnar" if named[0].value == "radial" else "radial"
    for k in range(named[0].j, sentence.j - 1):
        before = page.words[k - 2 : k] if page.words[k - 1] == "the" else page.words[k - 1 : k]
        if page.words[k] == other and before[0] in (",", ";", "and", "but", "while") and _ends_side(page, k + 1):
            return [Mention("slip", other, k, k + 1)]
    return []


def _same_fingers(page: Page, atoms: list[Mention]) -> list[Mention]:
    """'The FDS of the ring and small fingers and the FDP of the same two fingers': the fingers named just before."""
    found: list[Mention] = []
    for atom in atoms:
        counted = count_of(page.words[atom.i - 1])
        k = atom.i - 1 - (counted > 1)
        last = [a for a in found if a.kind == "digit" and a.i < a.j]
        while last and last[0].j < last[-1].i - _ONE_LIST:
            last = last[1:]
        digits = list(dict.fromkeys(a.value for a in last))
        words = list(range(k, atom.j))
        of_tendon = bool(found) and found[-1].kind == "tendon" and page.words[k - 2 : k] in _OF_THE
        alike = atom.kind == "plural" and page.words[k] == "same" and of_tendon and len(digits) > 1
        if alike and counted in (0, 1, len(digits)) and len(digits) <= len(words):
            found += [Mention("digit", d, w, w + 1) for d, w in zip(digits, words, strict=False)]
        else:
            found.append(atom)
    return found


_ONE_LIST = 8  # words
_OF_THE = [[lead, "the"] for lead in ("of", "to", "in")]


def _ends_side(page: Page, k: int) -> bool:
    """Tell whether a side that ends before word k is told alone: no nerve, artery or edge follows it."""
    says = (m for m in within(page.mentions, k, k + 1) if m.kind in ("extent", "opened", "deed", "neutral", "hurt"))
    return page.words[k] in ("one", "not", "was", "is") or any(says) or page.words[k].endswith("%")


def _take_up(page: Page, groups: list[Group], mentions: list[Mention]) -> None:
    """'The profundus of the index was cut; that of the ring finger was not': the same tendon of another digit."""
    groups.sort(key=lambda g: g.i)
    joined: list[Group] = []
    for before, group in pairwise(groups):
        if group.tendons or group.generic or not group.digits or group.i == group.j or not before.pairs:
            continue
        words = page.words[max(before.j, group.i - 4) : group.i]
        words = words[:-1] if words[-1:] == ["the"] else words
        if _one_of_a_kind(page, before, group):
            group.tendons = before.tendons
            group.pairs = tuple((d, t, None) for d in group.digits for t in before.tendons if has(d, t))
            continue
        if words[-1:] not in (["of"], ["in"], ["to"], ["on"]) or words[-2:-1] not in _PRONOUNS:
            continue
        if any(m.kind in _OTHER_THINGS and before.j <= m.i < group.i for m in mentions):
            continue
        kinds = list(dict.fromkeys((tendon, slip) for _, tendon, slip in before.pairs))
        pairs = [(d, tendon, slip) for d in group.digits for tendon, slip in kinds if has(d, tendon)]
        group.pairs, group.tendons = tuple(pairs), tuple(dict.fromkeys(tendon for _, tendon, _ in pairs))
        between = [w for w in page.words[before.j : group.i] if w != "the"]
        if between[:1] in (["and"], ["&"]) and len(between) == 3 and len(before.digits) and pairs:
            digits = dict.fromkeys(
                (*before.digits, *group.digits)
            )  # 'the FDP of the ring and that of the little finger'
            group.i, group.digits, group.pairs = before.i, tuple(digits), (*before.pairs, *pairs)
            joined.append(before)
    groups[:] = [g for g in groups if not any(g is other for other in joined)]


def _one_of_a_kind(page: Page, before: Group, group: Group) -> bool:
    """'Of the deep flexors only the middle was cut': the fingers that follow a kind of tendon told of as several."""
    lead = page.words[max(0, before.i - 2) : before.i]
    between = page.words[before.j : group.i]
    several = lead == ["of", "the"] or lead[-1:] in (["of"], ["among"]) or lead == ["among", "the"]
    alone = before.every and not before.digits and not (before.generic or before.reference)
    return several and alone and _ONLY_THE.issuperset(between)


# Between a kind of tendon and the finger told of: 'of the profundi, only the'.
_ONLY_THE = frozenset([",", "only", "just", "the", "it", "was", "solely", "in"])


def take_up_before(page: Page, sentence: Sentence, groups: list[Group], focus: tuple[Target, ...]) -> None:
    """'That of the fifth: the same cruciate', '..., those to the ring whole': the one before, of another digit.

    So does its genitive: "the small finger's was left".
    """
    for n, group in enumerate(groups):
        if group.tendons or group.generic or not group.digits or group.reference:
            continue
        lead = [w for w in page.words[max(sentence.i, group.i - 3) : group.i] if w != "the"][-2:]
        if _its_own(page, group):
            lead = []
        elif lead[:1] not in _PRONOUNS or lead[1:] not in _OF_DIGIT:
            continue
        if any(m.kind == "pulley" for m in within(page.mentions, group.i - 3, group.i) if page.words[m.i] in _TAKES_UP):
            continue  # 'The A4 of the ring was destroyed. That of the index was intact'
        opens = [w for w in page.words[sentence.i : group.i] if w != "the"] == lead
        if not lead and any(m.kind in _OTHER_THINGS for m in within(page.mentions, sentence.i, group.i)):
            continue  # "the nerve of the ring was cut, the small finger's whole"
        kinds = [t.tendon for t in focus if t.slip is None] if opens else _kinds_before(page, groups[:n], group)
        group.pairs = tuple(
            (d, tendon, None) for d in group.digits for tendon in dict.fromkeys(kinds) if has(d, tendon)
        )
        group.tendons = tuple(dict.fromkeys(tendon for _, tendon, _ in group.pairs))


def _its_own(page: Page, group: Group) -> bool:
    """ "The small finger's was left": a finger's own, of which no noun tells what it is."""
    owned = page.raw(group.i, group.j).endswith(_POSSESSIVE)
    return owned and page.words[group.j : group.j + 1] != [] and page.words[group.j] in _HAVING


_POSSESSIVE = ("'s", "\u2019s")
_HAVING = frozenset(
    [
        *("was", "were", "is", "are", "being", "had", "has", "could", "would", "did", "got", "received", "took"),
        *("remained", "needed", "came", "gave", "ran", "glided", "caught"),
    ]
)


def _kinds_before(page: Page, before: list[Group], group: Group) -> list[str]:
    """Return the tendons that 'that' or 'those' in mid-sentence takes up: those named last, no other thing since."""
    named = [g for g in before if g.tendons and not g.reference]
    if not named or any(slip for _, _, slip in named[-1].pairs):
        return []
    between = within(page.mentions, max(0, named[-1].i - 4), group.i)
    if "that" in page.words[max(0, group.i - 3) : group.i] or _its_own(page, group):
        between = [m for m in between if m.kind != "strandword"]  # 'with four strands; that of the small was left'
    if any(m.kind in _OTHER_THINGS or m.kind in _THINGS_OF_TENDON for m in between):
        return []  # 'the stumps of the profundus were crisp, those of the ring ragged'
    return list(named[-1].tendons)


_OF_DIGIT = (["of"], ["in"], ["to"], ["from"], ["on"])
_THINGS_OF_TENDON = frozenset(["endword", "knotword", "stitch", "strandword", "material", "bite"])
_TAKES_UP = frozenset(["that", "those"])
_PRONOUNS = (["that"], ["those"], ["one"], ["ones"])
_OTHER_THINGS = frozenset(["pulley", "structure", "sided", "bundle", "anynerve", "anyartery", "bone"])


def _only_answers(page: Page, m: Mention) -> bool:
    """'Core stitch: none; tendon reattached to bone': the answer to a label, not 'none of them'.

    Nor are the words of 'neither trimmed nor repaired' said of two.
    """
    if page.words[m.i : m.j] == ["neither"] and page.words[m.j + 1 : m.j + 2] == ["nor"]:
        return page.words[m.j].endswith("ed") or page.words[m.j] in ("sewn", "cut")
    behind = page.words[m.j : m.j + 1]
    return page.words[m.i] == "none" and page.words[m.i - 1 : m.i] == [":"] and behind in ([";"], [","])
