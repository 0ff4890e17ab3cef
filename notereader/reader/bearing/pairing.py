"""A run of names becomes groups of targets: its tendons paired with its fingers and slips."""

from itertools import pairwise

from notereader.reader.bearing.quantifiers import PARTS
from notereader.reader.groups import DIGITS, WRIST, Group
from notereader.reader.mentions.measures import times_told
from notereader.reader.page import Break, Mention, Page
from notereader.vocabulary.wordlists import word_list

_PART_NOUNS = [[word] for word in sorted(PARTS)]
PLURAL_TENDONS = word_list("bearing", "plural_tendons")
ALL_FOUR = frozenset([("all", "four"), ("all", "4")])


def groups_of_run(page: Page, run: list[Mention], quantifiers: list[Mention]) -> list[Group]:
    """Turn a run of names into groups: tendons with their fingers, fingers with their tendons, or fingers alone."""
    run = _both_tendons(page, _alternatives(run), quantifiers)
    if _counted_last(page, run):
        return groups_of_run(page, run[:-1], quantifiers) + groups_of_run(page, run[-1:], quantifiers)
    if not any(m.kind in ("tendon", "slip", "digit") for m in run):
        known = (m for m in run if m.kind == "generic" and not _no_subject(page, m))
        return [_generic(page, m, quantifiers) for m in known] + _all_digits(page, run, quantifiers)
    if _fingers_and_thumb(page, run):
        return [Group(run[0].i, run[-1].j, every=True)]
    atoms = _with_ranges(page, _with_four(page, run))
    pairs = tuple(_pairs(page, atoms))
    digits = tuple(dict.fromkeys(m.value for m in atoms if m.kind == "digit"))
    tendons = tuple(dict.fromkeys(t for _, t, _ in pairs))
    every = _of_every_one(page, run, quantifiers) and (bool(digits) or not _two_of_one(page, run, tendons))
    group = Group(run[0].i, run[-1].j, digits, tendons, pairs, "", every)
    if not pairs:
        _without_tendon(page, run, group)
    elif not digits:
        _without_finger(page, run, group)
    return [group]


def _counted_last(page: Page, run: list[Mention]) -> bool:
    """'FDP small + FDS x3', 'FDP small and all FDS': the kind that closes a run is not of the finger before it."""
    last = run[-1]
    named = any(m.kind == "digit" for m in run[:-1])
    several = times_several(page, last.j) or _times_four(page, last.j) or page.words[last.i - 1] == "all"
    return last.kind == "tendon" and last.i < last.j and named and several  # no label of a cell


def _with_four(page: Page, run: list[Mention]) -> list[Mention]:
    """Return a run's tendons, slips and digits, and for 'the FDP of all four fingers' the four."""
    atoms = [m for m in run if m.kind in ("digit", "tendon", "slip")]
    four = any(m.kind == "plural" and _of_four(page, m, run) for m in run)
    if not four or any(m.kind == "digit" for m in run):
        return atoms
    return atoms + [Mention("digit", d, run[-1].i, run[-1].j) for d in DIGITS[1:]]


def _of_every_one(page: Page, run: list[Mention], quantifiers: list[Mention]) -> bool:
    """'Both FDPs', 'the FDP of each': of every one; not 'the profundus of the same finger'."""
    within_run = (q for q in quantifiers if q.i > run[0].i and q.j <= run[-1].i)
    return _quantified(page, run[0].i, quantifiers) or any(page.words[q.j - 1] != "same" for q in within_run)


def _two_of_one(page: Page, run: list[Mention], tendons: tuple[str, ...]) -> bool:
    """'Both the profundus and the FDS were divided': the two of one finger."""
    before = page.words[max(0, run[0].i - 3) : run[0].i]
    both = "both" in before[-2:] and before[-1] in ("both", "the", "its", "his", "her")
    return both and set(tendons) == {"FDP", "FDS"}


def _without_finger(page: Page, run: list[Mention], group: Group) -> None:
    """Note of how many fingers a tendon is told without one: 'FDP x 4', 'all the profundi', 'FDP of both'."""
    before, end = page.words[max(0, run[0].i - 3) : run[0].i], run[-1].j
    if (_tells_four(before) and "all" in before) or _times_four(page, end) or _row_of_all(page, run):
        group.four = 2
    elif before[-1:] == ["all"] or before[-2:] == ["all", "the"] or _all_behind(page, run) or _all_last(page, run):
        group.four = 1
    group.every = group.every or page.words[end - 1] in PLURAL_TENDONS
    group.every = group.every or page.words[end : end + 2] in _OF_EACH
    if len(run) == 1 and (_both_behind(page, run[0].j) or times_several(page, run[0].j)):
        group.every = True


_OF_EACH = (["of", "both"], ["in", "both"], ["of", "each"], ["of", "all"])


def _without_tendon(page: Page, run: list[Mention], group: Group) -> None:
    """Note which tendons of a finger 'the flexor', 'both tendons' or 'the repair' mean; the thumb has but one."""
    nouns = [m for m in run if m.kind == "generic"]
    if group.digits == ("thumb",) and any("flexor" in page.words[m.i : m.j] for m in nouns):
        group.pairs, group.tendons = (("thumb", "FPL", None),), ("FPL",)
    elif nouns:
        group.generic = "all" if any(m.value == "tendons" for m in nouns) or group.every else "one"


def _tells_four(words: list[str]) -> bool:
    """'Four', 'all 4': a bare '4' may count strands or lines."""
    return "four" in words or not ALL_FOUR.isdisjoint(pairwise(words))


def _quantified(page: Page, at: int, quantifiers: list[Mention], reach: int = 3) -> bool:
    near = (q for q in quantifiers if q.j <= at and at - q.j < reach)
    between = (page.words[q.j : at] for q in near if page.words[q.j - 1] != "same")
    return any({",", ":"}.isdisjoint(words) and words[:1] not in _PART_NOUNS for words in between)


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
    return last.kind == "tendon" and page.words[last.j - 1] in PLURAL_TENDONS and lead[-1:] == ["all"]


def _all_behind(page: Page, run: list[Mention]) -> bool:
    """'FDPs all ok', 'the profundi were all intact'."""
    after = [w for w in page.words[run[-1].j : run[-1].j + 3] if w not in ("were", "are")]
    plural = len(run) == 1 and page.words[run[0].j - 1] in PLURAL_TENDONS
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
    told = after[1:] if after[:1] in (["were"], ["are"], ["had"], [","], [":"], ["-"], ["="]) else after
    if tuple(told[:2]) in ALL_FOUR and told[2:3] not in (["strand"], ["strands"], ["core"], ["-"], ["fingers"]):
        return True
    stranded = after[2:3] in (["strand"], ["strands"], ["-"], ["core"]) and after[2:4] != ["-", ">"]
    return after[:2] == ["x", "4"] and not stranded


def times_several(page: Page, j: int) -> bool:
    """'FDP x2 and FPL: cruciate', 'FDS (x 3) left': as many of the kind; not 'FDP x 2 strands'."""
    return 1 < times_told(page.words, j) < len(DIGITS) - 1 and page.words[j + 2 : j + 3] not in (
        ["strand"],
        ["strands"],
        ["-"],
        ["core"],
    )


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
    if before in _OVER and not _STRANDED.isdisjoint(page.words[max(0, m.i - 4) : m.i - 1]):
        return True  # 'this put six strands over the junction'
    if before == "across" and not _CUT.isdisjoint(lead[-3:]):
        return False  # 'the three cut-across tendons', 'both sliced across tendons'
    tissue = before in _TISSUE and m.value == "tendon" and page.words[m.i - 2 : m.i - 1] not in (["the"], ["this"])
    return before in _NO_SUBJECT or tissue


_LED = 6  # words
_CUT = frozenset(["cut", "sliced", "severed", "divided", "cleft"])
_BY_MEANS = frozenset(["with", "by", "using", "received", "got", "had"])
_STRANDED = frozenset(["strand", "strands", "stranded"])
_EITHER = frozenset(["each", "either", "both"])
_OVER = frozenset(["over", "through", "at"])
_NO_SUBJECT = frozenset(["a", "crossing", "across", "spanning", "bridging"])
_TISSUE = word_list("bearing", "tissue")


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
