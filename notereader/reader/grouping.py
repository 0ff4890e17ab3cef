"""Tendons, digits and slips that stand together as groups of targets, of one sentence each."""

from itertools import pairwise

from notereader.reader.groups import DIGITS, WRIST, Group, Target, has
from notereader.reader.manner import into_pulley, leaves_out, mark_manner, names_place
from notereader.reader.measures import count_of, times_told
from notereader.reader.page import Break, Mention, Page, Sentence, within
from notereader.reader.quantifiers import PARTS, bare_quantifier, others_told
from notereader.vocabulary.wordlists import word_list

_GLUE = word_list("bearing", "glue")
_PART_NOUNS = [[word] for word in sorted(PARTS)]


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
    for a in atoms:
        if a.kind == "slip" and a.value == "one":
            a.value = _side_in_brackets(page, a.j) or a.value
    if not any(a.kind == "tendon" and a.value == "FDS" for a in atoms):
        atoms = [a for a in atoms if a.kind != "slip" or _LIMBS.isdisjoint(page.words[a.i : a.j])]  # of a suture
    atoms = sorted([*atoms, *_other_slip(page, atoms, sentence)], key=lambda a: (a.i, a.j))
    atoms = _same_fingers(page, atoms)
    groups: list[Group] = []
    run: list[Mention] = []
    label = [a for a in atoms if a.i == a.j]
    if label:
        groups += _parse(page, label, [])  # 'Test, both: thumb no gap; index no gap': each cell is of its own finger
        atoms = [a for a in atoms if a.i < a.j]
    for atom in atoms:
        if run and (
            not _glued(page, run[-1].j, atom.i, quantifiers)
            or names_place(page, atom.i, atom.j)
            or _next_slip(page, run[-1], atom)
            or _next_subject(page, run, atom)
            or _left_behind(page, run, atom)
            or _new_list(run, atom, page, atoms)
            or _excepted_of(page, run, atom, sentence)
            or _after_likeness(run, atom, page)
            or _after_both(run, atom, page, atoms)
            or _after_all(run, atom, page, atoms)
            or _finger_of_its_own(run, atom, page, atoms)
            or _after_result(run, atom, page)
            or _of_all_four(run, atom, page)
            or _so_many_beside_one(run, atom, page)
            or _behind_other_fingers(run, atom, page)
            or _whole_before(page, run[-1], atom, mentions)
            or (atom.kind == "tendon" and run[-1].kind == "tendon" and into_pulley(page, sentence.i, run[-1].i))
            or _whole_behind(page, run, atom, mentions)
            or _each_with_its_own(page, run, atom, mentions)
        ):
            groups += _parse(page, run, quantifiers)
            run = []
        run.append(atom)
    if run:
        groups += _parse(page, run, quantifiers)
    groups += others_told(page, sentence, quantifiers, groups) or bare_quantifier(page, sentence, quantifiers, groups)
    groups = [g for g in groups if not (_of_the_tendons(page, g, groups) or _of_both_fingers(page, g, groups))]
    groups = [g for g in groups if not _leads_to_all(g, groups)]
    for group in groups:
        mark_manner(page, group, sentence)
    _take_up(page, groups, mentions)
    _lend_label(page, groups, sentence)
    return sorted((g for g in groups if g.i < sentence.j), key=lambda g: g.i)


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


_PARTED = frozenset(["divided", "severed", "transected", "lacerated"])
_IN_TURN = frozenset(["thereafter", "subsequently"])


def _glued(page: Page, i: int, j: int, quantifiers: list[Mention]) -> bool:
    """Tell whether only connecting words stand between two atoms."""
    if j - i > 6:
        return False
    quantified = {k for q in quantifiers for k in range(q.i, q.j)}
    if page.words[j - 1] in _PARTED and (page.words[j - 2] == "the" or count_of(page.words[j - 2]) > 1):
        j -= 1  # 'the divided profundus and the two divided superficialis tendons'
    words = page.words[i:j]
    if "," in words and any(w in ("in", "on", "at") for w in words):
        return False
    compares = "as" in words and ("as", "well") not in pairwise(words) and ("well", "as") not in pairwise(words)
    if compares or ("same", "as") in pairwise(words):
        return False  # 'middle profundus same as the index'
    if ("none", ",") in pairwise(words) or any(a == "none" and b in _PLACING for a, b in pairwise(words)):
        return False  # 'Gap: FPL none, index 1 mm', '6-0 for the FDP, none for the FDS'
    if ("and", "cut") in pairwise(words) and any(a == "cut" and b in _PLACING for a, b in pairwise(words)):
        return False  # 'The FDS was whole in the ring and cut in the small finger'
    if ("left", "the") in pairwise(words):
        return False  # 'the saw had cut the profundus and left the superficialis intact'
    if ("and", "repaired") in pairwise(words):
        return False  # 'I excised the ulnar slip and repaired the radial one'
    if ("cut", ",") in pairwise(words) or ("repaired", ",") in pairwise(words):
        return False  # 'the ulnar slip cut, radial slip untouched', 'FDP repaired, FDS left unrepaired'
    if any(w in _IN_TURN and words[n - 1] != "and" for n, w in enumerate(words)):
        return False  # 'FDS excised, thereafter FDP', but 'the profundi and thereafter the superficiales'
    if words[-1:] in (["other"], ["remaining"]) and page.words[j] in _FINGERS:
        j -= 1  # 'FDS of other fingers'
    return all(page.words[k] in _GLUE or page.words[k] in _IN_TURN or k in quantified for k in range(i, j))


_FINGERS = frozenset(["fingers", "digits"])


def _left_behind(page: Page, run: list[Mention], atom: Mention) -> bool:
    """'FDS left, FDP repaired', 'FDS left and FDP sewn': the first was left, and is no list with it."""
    behind = page.words[run[-1].j : run[-1].j + 2]
    return run[-1].kind == atom.kind == "tendon" and behind in (["left", ","], ["left", "and"], ["left", "but"])


def _whole_before(page: Page, last: Mention, atom: Mention, mentions: list[Mention]) -> bool:
    """'... with an intact FDS, the middle FDP and FDS were cut': what was called whole is no part of the next list."""
    whole = any(m.kind == "extent" and m.value == "intact" and m.j == last.i for m in mentions)
    return whole and last.kind == "tendon" and atom.kind == "digit" and "," in page.words[last.j : atom.i]


def _whole_behind(page: Page, run: list[Mention], atom: Mention, mentions: list[Mention]) -> bool:
    """'Laceration of FDP, FDS intact', '... with the FDS intact': what is called whole is no part of the list."""
    between = [w for w in page.words[run[-1].j : atom.i] if w not in _DETERMINERS]
    if between not in ([","], ["with"], [",", "with"]):
        return False
    own = [m for m in within(mentions, atom.i, atom.j + _NAME) if m.kind in ("tendon", "digit")]
    end = max((m.j for m in own), default=atom.j)
    end += page.words[end : end + 1] == ["being"]
    if not any(m.kind == "tendon" for m in own):
        return False
    whole = any(m.kind == "extent" and m.value == "intact" and m.i == end for m in mentions)
    cut = [m for m in mentions if m.kind == "extent" and m.value != "intact" and m.j <= run[0].i]
    return whole and bool(cut) and ("with" in between or run[0].i - cut[-1].j <= _NAME)


_DETERMINERS = frozenset(["the", "its", "his", "her", "their"])
_NAME = 4  # words


def _each_with_its_own(page: Page, run: list[Mention], atom: Mention, mentions: list[Mention]) -> bool:
    """'An intact profundus and a superficialis cut by 30 %': one told before its name, the other behind it."""
    if run[0].kind != "tendon" or atom.kind != "tendon" or page.words[run[-1].j] not in ("and", ","):
        return False
    told = next((m for m in mentions if m.kind == "extent" and m.j == run[0].i), None)
    behind = (m for m in mentions if m.kind in ("extent", "hurt") and 0 <= m.i - atom.j <= 3)
    return told is not None and any(m.value != told.value for m in behind)


def _new_list(run: list[Mention], atom: Mention, page: Page, atoms: list[Mention]) -> bool:
    """'FDP repair MF + LF, FDS slip RF': behind a comma a tendon with a finger of its own begins a new list."""
    fingers_first = run[0].kind == "digit" and all(m.kind == "digit" for m in run)
    if not fingers_first or atom.kind != "tendon" or page.words[run[-1].j : atom.i] != [","]:
        return False
    later = [m for m in atoms if m.i >= atom.j and m.kind in ("digit", "tendon")]
    tendon_before = any(m.kind == "tendon" and m.j <= run[0].i for m in atoms)
    last = atom
    while later and later[0].kind == "tendon" and page.words[last.j : later[0].i] in (["and"], ["&"], ["+"], ["/"]):
        last = later.pop(0)  # 'FDP repair MF, FDP + FDS repair RF'
    return tendon_before and bool(later) and later[0].kind == "digit" and later[0].i - last.j <= 2


def _excepted_of(page: Page, run: list[Mention], atom: Mention, sentence: Sentence) -> bool:
    """'All repairs, the FCU excluded, were pulled': what is left out of all is no name for them."""
    ends = (k for k in range(atom.j, min(atom.j + 2, sentence.j)) if leaves_out(page, k, sentence.j))
    return "," in page.words[run[-1].j : atom.i] and next(ends, None) is not None


def _after_likeness(run: list[Mention], atom: Mention, page: Page) -> bool:
    """'Ring - FDP through like the middle, FDS nicked': the finger it is likened to has nothing behind the comma.

    'Unlike the middle finger, the FDS here is whole', 'unlike the index, the ring FDS is intact'.
    """
    lead = page.words[max(0, run[0].i - 2) : run[0].i]
    likened = (
        lead[-1:] == ["like"] or lead == ["like", "the"] or (lead == ["in", "the"] and page.words[run[0].i - 3] == "as")
    )
    fingers = all(m.kind == "digit" for m in run)
    behind = page.words[run[-1].j : atom.i]
    if fingers and "unlike" in lead:
        return behind in ([","], [",", "the"], [",", "its"])  # not ', where both FDS slips were cut'
    return likened and fingers and atom.kind == "tendon" and behind == [","]


def _of_all_four(run: list[Mention], atom: Mention, page: Page) -> bool:
    """'the superficialis of the small finger, the profundus tendons of all four fingers': fingers of its own."""
    behind = page.words[atom.j : atom.j + 4]
    four = not _ALL_FOUR.isdisjoint(pairwise(behind)) and behind[:1] in (["of"], ["to"], ["in"])
    return atom.kind == "tendon" and four and any(m.kind == "digit" for m in run)


_ALL_FOUR = frozenset([("all", "four"), ("all", "4")])


def _tells_four(words: list[str]) -> bool:
    """'Four', 'all 4': a bare '4' may count strands or lines."""
    return "four" in words or not _ALL_FOUR.isdisjoint(pairwise(words))


def _so_many_beside_one(run: list[Mention], atom: Mention, page: Page) -> bool:
    """'FPL and FDP x2', 'FDPs and FPL: ...': a kind of several fingers is no tendon of the thumb or the wrist."""
    pair = (run[-1], atom)
    if any(m.kind != "tendon" for m in (*run, atom)):
        return False
    several = [m for m in pair if m.value in ("FDP", "FDS") and _is_several(page, m, atom)]
    return len(several) == 1 and any(m.value not in ("FDP", "FDS") for m in pair)


def _behind_other_fingers(run: list[Mention], atom: Mention, page: Page) -> bool:
    """'FDS of the other fingers, all FDP and FPL': only the first is told of the other fingers."""
    named = [m.kind for m in run]
    others = named == ["tendon", "plural"] and page.words[run[1].i - 1] in ("other", "remaining")
    return atom.kind == "tendon" and others and page.words[atom.i - 1] != "every"


def _is_several(page: Page, m: Mention, last: Mention) -> bool:
    label = page.words[last.j : last.j + 1] == [":"] and page.breaks[m.i] >= Break.LINE
    return _times_several(page, m.j) or (label and page.words[m.j - 1] in _PLURAL_TENDONS)


def _after_result(run: list[Mention], atom: Mention, page: Page) -> bool:
    """'No gap ring, little opened 1 mm': the finger behind the comma begins a statement of its own."""
    alone = len(run) == 1 and run[0].kind == atom.kind == "digit" and page.words[run[0].i - 1] in ("gap", "gapping")
    return alone and page.words[run[0].j : atom.i] == [","] and page.words[atom.j : atom.j + 1] not in ([","], ["and"])


def _after_both(run: list[Mention], atom: Mention, page: Page, atoms: list[Mention]) -> bool:
    """'FDP of both fingers and FDS of the index': a tendon with a finger of its own behind one that is told of both."""
    before = [m for m in run if m.kind == "tendon"]
    if atom.kind != "tendon" or not before or any(m.kind == "digit" for m in run):
        return False
    between = page.words[before[-1].j : atom.i]
    if between[:4] in _OF_THE_FOUR:
        return True  # 'the profundus of the four fingers, the FPL and the superficialis of ring and small'
    later = [m for m in atoms if m.i >= atom.j and m.kind in ("digit", "tendon")]
    own = bool(later) and later[0].kind == "digit" and later[0].i - atom.j <= 2
    wide = between[:2] in (["of", "both"], ["in", "both"], ["of", "each"], ["of", "all"], ["to", "all"], ["to", "both"])
    return own and wide and not {"and", ","}.isdisjoint(between[2:])


def _after_all(run: list[Mention], atom: Mention, page: Page, atoms: list[Mention]) -> bool:
    """'All the FDPs, FDS index and the median nerve': a tendon with its own finger behind all of a kind."""
    last = run[-1]
    wide = last.kind == "tendon" and page.words[last.j - 1] in _PLURAL_TENDONS
    lead = [w for w in page.words[max(0, last.i - 2) : last.i] if w != "the"][-1:]
    behind = [a for a in atoms if a.i >= atom.j][:1]
    own = bool(behind) and behind[0].kind == "digit" and behind[0].i - atom.j <= 2
    return atom.kind == "tendon" and wide and lead == ["all"] and own


def _finger_of_its_own(run: list[Mention], atom: Mention, page: Page, atoms: list[Mention]) -> bool:
    """'Both profundi and the middle superficialis': a finger behind tendons of several is that of the next tendon."""
    if atom.kind != "digit" or any(m.kind != "tendon" for m in run) or page.words[run[-1].j - 1] not in _PLURAL_TENDONS:
        return False
    counted = not _SEVERAL.isdisjoint(page.words[max(0, run[0].i - 2) : run[0].i])
    others = not _OTHERS.isdisjoint(page.words[max(0, run[0].i - 2) : run[0].i])  # 'the other profundi, the index FDS'
    more = [m for m in atoms if m.i >= atom.j]
    digits = next((n for n, m in enumerate(more) if m.kind != "digit"), 0) if others else 0  # 'the index and ring FDS'
    behind = more[digits] if more else None
    own = behind is not None and behind.kind == "tendon" and behind.i - atom.j <= 1 + 2 * digits
    between = [w for w in page.words[run[-1].j : atom.i] if w != "the"]
    return own and ((counted and between in (["and"], [",", "and"], ["+"])) or (others and between in _LISTS))


_LISTS = ([","], ["and"], [",", "and"], ["+"], ["&"])
_OTHERS = frozenset(["remaining", "other", "rest"])
_SEVERAL = frozenset(["both", "two", "three", "all", "each", "four"])


def _next_slip(page: Page, before: Mention, atom: Mention) -> bool:
    """'40% of the ulnar slip, radial slip uninjured': behind a comma alone the other slip begins a new statement."""
    between = page.words[before.j : atom.i]
    alone = page.words[atom.j : atom.j + 1] in (["was"], ["is"], ["i"], ["we"])  # 'radial slip, and the ulnar was cut'
    bounds = (
        [","],
        [",", "the"],
        [",", "its"],
        *(([",", "and", "the"], [",", "and"], ["and", "the"]) if alone else ()),
    )
    return before.kind == atom.kind == "slip" and between in bounds


def _next_subject(page: Page, run: list[Mention], atom: Mention) -> bool:
    """'Trimmed 2 mm on the FDP, the FDS was too thin': behind a comma the singular verb is of the second alone."""
    between = page.words[run[-1].j : atom.i]
    if between == ["and", "the"]:
        return _put_at(page, run[0].i) and page.words[atom.j : atom.j + 2] in _GOT_NONE
    if between != [",", "the"]:
        return False
    if atom.kind == "digit":
        return page.words[atom.j] in _TOLD_OF  # 'a gap in the index profundus, the ring did not gap'
    return atom.kind == run[-1].kind == "tendon" and page.words[atom.j] in _SINGULAR


def _put_at(page: Page, k: int) -> bool:
    """'6-0 went round the FDP and the FDS was left without': what is put round the one is not of the next."""
    return page.words[k - 1 - (page.words[k - 1] == "the")] in _PLACING


_GOT_NONE = (["was", "left"], ["had", "none"], ["got", "none"], ["went", "without"], ["did", "not"], ["had", "nothing"])
_TOLD_OF = frozenset(["did", "ran", "glided", "caught", "gapped", "held", "moved", "slid", "had", "has", "opened"])
_SINGULAR = frozenset(["was", "is", "had", "has"])


def _quantified(page: Page, at: int, quantifiers: list[Mention], reach: int = 3) -> bool:
    near = (q for q in quantifiers if q.j <= at and at - q.j < reach)
    between = (page.words[q.j : at] for q in near if page.words[q.j - 1] != "same")
    return any({",", ":"}.isdisjoint(words) and words[:1] not in _PART_NOUNS for words in between)


def _parse(page: Page, run: list[Mention], quantifiers: list[Mention]) -> list[Group]:
    """Turn a run of atoms into groups: T D pairs, D T pairs, or D alone."""
    run = _both_tendons(page, _alternatives(run), quantifiers)
    if not any(m.kind in ("tendon", "slip", "digit") for m in run):
        known = (m for m in run if m.kind == "generic" and not _no_subject(page, m))
        return [_generic(page, m, quantifiers) for m in known] + _all_digits(page, run, quantifiers)
    if _fingers_and_thumb(page, run):
        return [Group(run[0].i, run[-1].j, every=True)]
    atoms = [m for m in run if m.kind in ("digit", "tendon", "slip")]
    if any(m.kind == "plural" and _of_four(page, m, run) for m in run) and not any(m.kind == "digit" for m in run):
        at = run[-1]
        atoms += [Mention("digit", d, at.i, at.j) for d in DIGITS[1:]]
    atoms = _with_ranges(page, atoms)
    pairs = _pairs(page, atoms)
    every = _quantified(page, run[0].i, quantifiers) or any(
        q.i > run[0].i and q.j <= run[-1].i and page.words[q.j - 1] != "same" for q in quantifiers
    )  # not 'the profundus of the same finger'
    digits = tuple(dict.fromkeys(m.value for m in atoms if m.kind == "digit"))
    tendons = tuple(dict.fromkeys(t for _, t, _ in pairs))
    before = page.words[max(0, run[0].i - 3) : run[0].i]
    pair = set(tendons) == {"FDP", "FDS"}
    if pair and not digits and "both" in before[-2:] and before[-1] in ("both", "the", "its", "his", "her"):
        every = False  # 'both the profundus and the FDS were divided': the two of one finger
    group = Group(run[0].i, run[-1].j, digits, tendons, tuple(pairs), "", every)
    if pairs and not digits:
        group.four = (
            2
            if (_tells_four(before) and "all" in before) or _times_four(page, run[-1].j) or _row_of_all(page, run)
            else 1
            if before[-1:] == ["all"] or before[-2:] == ["all", "the"] or _all_behind(page, run) or _all_last(page, run)
            else 0
        )
        group.every = group.every or page.words[run[-1].j - 1] in _PLURAL_TENDONS
    if (
        pairs
        and not digits
        and page.words[run[-1].j : run[-1].j + 2] in (["of", "both"], ["in", "both"], ["of", "each"], ["of", "all"])
    ):
        group.every = True  # 'FDP of both'
    if pairs and not digits and len(run) == 1 and (_both_behind(page, run[0].j) or _times_several(page, run[0].j)):
        group.every = True
    if (
        not pairs
        and digits == ("thumb",)
        and any(m.kind == "generic" and "flexor" in page.words[m.i : m.j] for m in run)
    ):
        group.pairs, group.tendons = (("thumb", "FPL", None),), ("FPL",)
        return [group]
    if not pairs and any(m.kind == "generic" for m in run):
        group.generic = "all" if any(m.value == "tendons" for m in run if m.kind == "generic") or every else "one"
    return [group]


def _fingers_and_thumb(page: Page, run: list[Mention]) -> bool:
    """'Fingers and thumb moved passively': every digit worked on, and not the thumb alone."""
    if [(m.kind, m.value) for m in run if m.kind == "digit"] != [("digit", "thumb")] or len(run) != 2:
        return False
    plural = next((m for m in run if m.kind == "plural"), None)
    joined = page.words[run[0].j : run[1].i] in (["and"], ["&"], ["+"], ["and", "the"])
    return plural is not None and page.words[plural.j - 1] in ("fingers", "digits") and joined


def _all_last(page: Page, run: list[Mention]) -> bool:
    """'FPL and all the FDPs intact': all of the kind that closes the list."""
    last = run[-1]
    lead = [w for w in page.words[max(0, last.i - 2) : last.i] if w != "the"]
    return last.kind == "tendon" and page.words[last.j - 1] in _PLURAL_TENDONS and lead[-1:] == ["all"]


def _all_behind(page: Page, run: list[Mention]) -> bool:
    """'FDPs all ok', 'the profundi were all intact'."""
    after = [w for w in page.words[run[-1].j : run[-1].j + 3] if w not in ("were", "are")]
    plural = len(run) == 1 and page.words[run[0].j - 1] in _PLURAL_TENDONS
    return plural and after[:1] == ["all"] and after[1:2] not in (["four"], ["4"], ["three"], ["of"])


def _both_behind(page: Page, j: int) -> bool:
    """'FDP both - Adelaide', 'FDP (both): 4-0', 'FDP both 6-0': of both fingers."""
    after = [w for w in page.words[j : j + 4] if w not in ("(", ")")]
    return after[:1] == ["both"] and (after[1:2] in (["-"], [":"]) or "".join(after[1:2])[:1].isdecimal())


def _row_of_all(page: Page, run: list[Mention]) -> bool:
    """'FDP   all ok' on a line of its own, in a note that names a tendon of the wrist: those of all four fingers."""
    if len(run) > 1 or page.breaks[run[0].i] < Break.LINE or page.words[run[0].j : run[0].j + 1] != ["all"]:
        return False
    whole = page.words[run[0].j + 1 : run[0].j + 2]
    return whole != [] and whole[0] in _WHOLE and any(m.kind == "tendon" and m.value in WRIST for m in page.mentions)


_WHOLE = frozenset(["ok", "okay", "intact", "fine", "whole", "spared", "unhurt", "uninjured", "untouched"])


def _times_four(page: Page, j: int) -> bool:
    """'FDP x 4 intact', 'FDS x4 -> intact', 'of the FDS tendons all four were cut'; not 'FDP x 4 strands'."""
    after = [w for w in page.words[j : j + 5] if w not in ("(", ")")]
    told = after[1:] if after[:1] in (["were"], ["are"], ["had"], [","]) else after
    if tuple(told[:2]) in _ALL_FOUR and told[2:3] not in (["strand"], ["strands"], ["core"], ["-"], ["fingers"]):
        return True
    stranded = after[2:3] in (["strand"], ["strands"], ["-"], ["core"]) and after[2:4] != ["-", ">"]
    return after[:2] == ["x", "4"] and not stranded


def _times_several(page: Page, j: int) -> bool:
    """'FDP x2 and FPL: cruciate', 'FDS (x 3) left': as many of the kind; not 'FDP x 2 strands'."""
    return 1 < times_told(page.words, j) < len(DIGITS) - 1 and page.words[j + 2 : j + 3] not in (
        ["strand"],
        ["strands"],
        ["-"],
        ["core"],
    )


_PLACING = frozenset(["for", "to", "on", "in", "round", "around"])
_OF_THE_FOUR = tuple([lead, "the", four, "fingers"] for lead in ("of", "in", "to") for four in ("four", "4"))


def _of_four(page: Page, m: Mention, run: list[Mention]) -> bool:
    """'All four fingers', 'the 4 fingers', 'the FDP and FDS of all fingers', 'of all the fingers'."""
    before = page.words[max(0, m.i - 2) : m.i]
    tendons = any(other.kind == "tendon" and other.i < m.i for other in run)
    return (
        _tells_four(before)
        or before == ["the", "4"]
        or (tendons and (before[-1:] == ["all"] or before == ["all", "the"]))
    )


def _no_subject(page: Page, m: Mention) -> bool:
    """'A tendon of this calibre', 'four strands crossing the junction', 'trimmed to reach healthy tendon'."""
    before = page.words[m.i - 1]
    if m.value == "tendon" and page.words[m.i - 3 : m.i - 1] in ([",", "a"], [",", "an"]) and page.words[m.j] == ",":
        return True  # 'the FDS of the small finger, a slender tendon, accepted only a modified Kessler'
    lead = page.words[max(0, m.i - _LED) : m.i]
    if page.words[m.i] == "repairs" and not _BY_MEANS.isdisjoint(lead) and not _STRANDED.isdisjoint(lead):
        return True  # 'FDP ring and little with 4-strand locking repairs'
    if before == "of" and page.words[m.i - 3] in _EITHER and page.words[m.i - 2] in ("side", "sides"):
        return True  # '10 mm of tendon on either side of the junction'
    tissue = before in _TISSUE and m.value == "tendon" and page.words[m.i - 2 : m.i - 1] not in (["the"], ["this"])
    return before in _NO_SUBJECT or tissue


_LED = 6  # words
_BY_MEANS = frozenset(["with", "by", "using", "received", "got", "had"])
_STRANDED = frozenset(["strand", "strands", "stranded"])
_EITHER = frozenset(["each", "either", "both"])
_NO_SUBJECT = frozenset(["a", "crossing", "across", "spanning", "bridging"])
_TISSUE = word_list("bearing", "tissue")
_PLURAL_TENDONS = word_list("bearing", "plural_tendons")


def _with_ranges(page: Page, atoms: list[Mention]) -> list[Mention]:
    """Fill in '3rd to 5th FDS', 'FDP 2-5': the digits between two ends of a range."""
    full: list[Mention] = []
    for before, atom in zip([None, *atoms], atoms, strict=False):
        if before is not None and before.kind == atom.kind == "digit":
            between = page.words[before.j : atom.i]
            if between and between[0] in ("to", "-", "through") and len(between) <= 3:
                a, b = DIGITS.index(before.value), DIGITS.index(atom.value)
                full += [Mention("digit", DIGITS[n], atom.i, atom.j) for n in range(a + 1, b)]
        full.append(atom)
    return full


def _both_tendons(page: Page, run: list[Mention], quantifiers: list[Mention]) -> list[Mention]:
    """'both tendons of the small finger' are its profundus and its superficialis.

    So are 'the flexors of the ring and small fingers' in a list with other tendons.
    """
    listed = any(m.kind == "tendon" for m in run)
    pairs = [q for q in quantifiers if page.words[q.i] in ("both", "neither")]
    changed: list[Mention] = []
    for before, m, after in zip([None, *run], run, [*run[1:], None], strict=False):
        named = (
            before is not None and before.kind == "tendon" and before.j == m.i
        )  # 'the profundus repairs of the index'
        digit = after is not None and (after.kind == "digit" or _tells_four(page.words[m.j : after.i]))
        leads = not named and m.kind == "generic" and m.value == "tendons" and digit
        if (
            leads
            and page.words[m.j] in ("of", "to", "in")
            and (listed or page.words[m.i] == "both" or _quantified(page, m.i, pairs, 2))
        ):
            changed += [Mention("tendon", "FDP", m.i, m.j), Mention("tendon", "FDS", m.i, m.j)]
        else:
            changed.append(m)
    return changed


def _alternatives(run: list[Mention]) -> list[Mention]:
    """Drop doubled meanings of one span."""
    seen: set[tuple[int, str]] = set()
    kept = []
    for m in run:
        if (m.i, m.kind) not in seen or m.i == m.j:
            seen.add((m.i, m.kind))
            kept.append(m)
    return kept


def _counted_four(page: Page, i: int) -> bool:
    """'All four FDS', 'four divided FDS'; not 'four' at the end of one line over 'small FDP' on the next."""
    if i < 2 or page.breaks[i] >= Break.LINE or i - 1 in page.tendon_words:
        return False
    before = page.words[i - 2 : i] if page.breaks[i - 1] < Break.LINE else page.words[i - 1 : i]
    return _tells_four(before)


def _pairs(page: Page, atoms: list[Mention]) -> list[tuple[str | None, str, str | None]]:
    """Pair tendons with digits and slips, whichever came first."""
    fours = [a for a in atoms if a.kind == "tendon" and a.value in ("FDP", "FDS") and _counted_four(page, a.i)]
    atoms = [a for a in atoms if a not in fours]
    items = _items(page, atoms)
    fixed: list[tuple[str | None, str, str | None]] = [(d, a.value, None) for a in fours for d in DIGITS[1:]]
    fixed += [_fit(None, value, None) for kind, value, _ in items if kind == "tendon" and value not in ("FDP", "FDS")]
    items = [item for item in items if item[0] == "digit" or item[1] in ("FDP", "FDS")]
    chunks: list[list[tuple[str, str, str | None]]] = []
    for item in items:
        if chunks and (chunks[-1][0][0] == "digit") == (item[0] == "digit"):
            chunks[-1].append(item)
        else:
            chunks.append([item])
    kinds = [c[0][0] for c in chunks]
    if "tendon" not in kinds:
        return list(dict.fromkeys(fixed))
    digit_first = "digit" in kinds and kinds.index("digit") < kinds.index("tendon")
    pairs: list[tuple[str | None, str, str | None]] = list(fixed)
    held: list[str] = []
    for n, chunk in enumerate(chunks):
        if chunk[0][0] == "digit":
            held = [value for _, value, _ in chunk]
            continue
        after = chunks[n + 1] if n + 1 < len(chunks) else []
        digits = held if digit_first else [value for _, value, _ in after]
        ends = n + 2 < len(chunks) and n + 3 >= len(chunks) and all(t in ("FDP", "FDS") for _, t, _ in chunks[n + 2])
        if not digit_first and len(digits) > 1 and ends:
            lent = digits.pop()
            pairs += [_fit(lent, tendon, slip) for _, tendon, slip in chunks[n + 2]]
            chunks[n + 2] = [("digit", lent, None)]
        if any(tendon == "FPL" for _, tendon, _ in fixed):
            digits = [d for d in digits if d != "thumb"]  # 'thumb FPL and index FDP'
        places: list[str | None] = [*digits] or [None]
        for digit in places:
            pairs += [_fit(digit, tendon, slip) for _, tendon, slip in chunk]
        if digit_first and not held:
            continue
    return list(dict.fromkeys(pairs))


def _items(page: Page, atoms: list[Mention]) -> list[tuple[str, str, str | None]]:
    """Return digits and tendons in order, each slip joined with its FDS; a slip alone is one of the FDS."""
    items: list[tuple[str, str, str | None]] = []
    slips: list[str] = []
    for n, atom in enumerate(atoms):
        if atom.kind == "digit":
            items += [("tendon", "FDS", s) for s in _slips(slips)] if slips else []
            slips = []
            items.append(("digit", atom.value, None))
        elif atom.kind == "slip":
            if (
                items
                and items[-1][:2] == ("tendon", "FDS")
                and not slips
                and items[-1][2] is None
                and _own_slip(page, atoms, n)
            ):
                items.pop()
                items += [("tendon", "FDS", s) for s in _slips([atom.value])]
            elif not slips and _behind_its_finger(page, atoms, n):
                items[-2:-1] = [("tendon", "FDS", s) for s in _slips([atom.value])]
            else:
                slips.append(atom.value)
        else:
            if atom.value == "FDS" and slips:
                items += [("tendon", "FDS", s) for s in _slips(slips)]
                slips = []
                continue
            items += [("tendon", "FDS", s) for s in _slips(slips)] if slips else []
            slips = []
            items.append(("tendon", atom.value, None))
    return items + [("tendon", "FDS", s) for s in _slips(slips)] if slips else items


def _behind_its_finger(page: Page, atoms: list[Mention], n: int) -> bool:
    """'FDS ring, radial slip': a slip of the FDS whose finger stands between them, and none behind the slip."""
    if n < 2 or [(m.kind, m.value == "FDS") for m in atoms[n - 2 : n]] != [("tendon", True), ("digit", False)]:
        return False
    ends = n + 1 == len(atoms) or atoms[n + 1].kind != "digit"
    return ends and page.words[atoms[n - 1].j : atoms[n].i] in ([","], ["("], ["-"], [":"], [])


def _own_slip(page: Page, atoms: list[Mention], n: int) -> bool:
    """Tell whether a slip named after an FDS is of that FDS: 'FDS ulnar slip', 'superficialis, both slips'."""
    between = page.words[atoms[n - 1].j : atoms[n].i]
    return len(between) <= 2 and "and" not in between


def _slips(values: list[str]) -> list[str | None]:
    named: list[str | None] = [v for v in values if v in ("radial", "ulnar")]
    if "both" in values and not named:
        return [None]
    return named or [None]


def _fit(digit: str | None, tendon: str, slip: str | None) -> tuple[str | None, str, str | None]:
    if tendon in WRIST:
        return "", tendon, None
    if tendon == "FPL":
        return "thumb", tendon, None
    return digit, tendon, slip


def _generic(page: Page, mention: Mention, quantifiers: list[Mention]) -> Group:
    kind = _kind_of_flexors(page, mention)
    if kind:
        pairs = tuple(_fit(None, tendon, None) for tendon in kind if kind == ("FCR", "FCU"))
        return Group(mention.i, mention.j, tendons=kind, pairs=pairs, every=True)
    phrase = page.words[mention.i]
    every = mention.value == "tendons" or phrase == "both" or _quantified(page, mention.i, quantifiers)
    return Group(mention.i, mention.j, generic="all" if every else "one", every=every)


def _kind_of_flexors(page: Page, mention: Mention) -> tuple[str, ...]:
    """'The finger flexors got four strands, the wrist flexors two': the two kinds, where the note names a wrist's."""
    if page.words[mention.i : mention.j] != ["flexors"] or not mention.i:
        return ()
    named = {m.value for m in page.mentions if m.kind == "tendon"}
    of_wrist = not named.isdisjoint(WRIST) or ("wrist", "flexors") in pairwise(page.words)
    if page.words[mention.i - 2 : mention.i] in (["both", "wrist"], ["both", "carpal"]):
        return ("FCR", "FCU")
    return _KINDS.get(page.words[mention.i - 1], ()) if of_wrist else ()


_KINDS = {"finger": ("FDP", "FDS"), "digital": ("FDP", "FDS", "FPL"), "wrist": ("FCR", "FCU", "PL")}


def _all_digits(page: Page, run: list[Mention], quantifiers: list[Mention]) -> list[Group]:
    """Read 'both fingers', 'each digit' as every digit of the note."""
    for m in run:
        if m.kind == "plural" and _quantified(page, m.i, quantifiers, 2) and page.words[m.i - 1] != "same":
            return [Group(m.i, m.j, every=True)]
    return []
