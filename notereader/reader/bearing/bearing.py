"""Step 6, bearing: which digits, tendons and slips a clause is about, carried across sentences.

Tendons and digits that stand together ("FDS and FDP of the index and middle fingers") form a group of targets. A
clause without one takes the group it is nearest to in its sentence, else what was spoken of before.
"""

from dataclasses import dataclass, field, replace
from itertools import pairwise

from spacy.language import Language
from spacy.tokens import Doc

from notereader.reader.bearing.corrected_digits import put_right
from notereader.reader.bearing.corrected_slips import put_slips_right
from notereader.reader.bearing.counted_fingers import count_fingers
from notereader.reader.bearing.digits import settle_digits
from notereader.reader.bearing.each_finger import lend_listed_fingers, spread_over_fingers
from notereader.reader.bearing.grid_home import HomeFinger
from notereader.reader.bearing.grouping import groups_of, mentions_by_sentence, take_up_before
from notereader.reader.bearing.numbered import NumberedRepairs
from notereader.reader.bearing.numbered_rows import NumberedRows
from notereader.reader.bearing.only_one_of import settle_only_one_of, take_the_one
from notereader.reader.bearing.ordinals import at_place, fingers_told, places_told
from notereader.reader.bearing.otherwise_hurt import settle_otherwise_hurt
from notereader.reader.bearing.passing_by import passes_by
from notereader.reader.bearing.pulleys_again import settle_pulleys_again
from notereader.reader.bearing.relative_digits import settle_relative_digits
from notereader.reader.bearing.slips import settle_slips
from notereader.reader.groups import DIGITS, WRIST, Group, Setting, Target, has, resolve_pairs
from notereader.reader.layout.answered_cuts import settle_answered_cuts
from notereader.reader.layout.answered_totals import settle_totals
from notereader.reader.layout.blank_names import drop_blank_names
from notereader.reader.layout.slashed import part_at_slashes
from notereader.reader.mentions.fibre_bundles import settle_fibre_bundles
from notereader.reader.mentions.shared_nouns import settle_shared_nouns
from notereader.reader.mentions.taken_by_wound import settle_taken
from notereader.reader.mentions.wounds_named import settle_wounds
from notereader.reader.page import Break, Mention, Page, Sentence, page_of, within
from notereader.vocabulary.wordlists import word_list


@dataclass(slots=True)
class _Course:
    """What was spoken of up to a sentence of the note."""

    digits: tuple[str, ...] = ()
    focus: tuple[Target, ...] = ()
    wide: tuple[str, ...] = ()  # kinds of tendons told of every finger
    labelled: bool = False  # the last sentence heads what follows
    all_before: bool = False  # it spoke of all
    relabelled: bool = False  # it named another finger and no tendon
    seen: dict[str, None] = field(default_factory=dict)  # digits named so far
    heading: tuple[str, ...] = ()  # tendons that stand alone on a line, as the head of lines for the fingers
    listed: tuple[Target, ...] = ()  # the tendons of the last sentence that named several
    list_head: tuple[Target, ...] = ()  # the tendons on a line of their own above a list
    pair: tuple[str, ...] = ()  # the fingers of the last sentence that named two


@Language.component("notereader_bearing")
def bearing(doc: Doc) -> Doc:
    """Fill the Page's settings, one a sentence. RETURNS the same Doc."""
    page = page_of(doc)
    _settle_names(page)
    by_sentence = mentions_by_sentence(page)
    course, repairs, rows = _Course(), NumberedRepairs(), NumberedRows(page.rows)
    home = HomeFinger(page)
    for sentence, mentions in zip(page.sentences, by_sentence, strict=True):
        if home.left_for_grid(sentence, course.digits, named=len(course.seen)):
            course.digits, course.focus = home.digits, ()
        groups = groups_of(page, mentions, sentence)
        take_the_one(page, groups)
        groups += rows.told(page, sentence)
        groups += _by_place(page, sentence, mentions, groups, course)
        groups += _fingers_by_place(page, sentence, groups, course.pair) + repairs.told(page, sentence, groups)
        _complete(page, sentence, mentions, groups, course)
        _begin_line(page, sentence, course)
        setting = Setting(
            sentence,
            groups,
            course.digits,
            course.focus,
            wide=course.wide,
            labelled=course.labelled,
            all_before=course.all_before,
            relabelled=course.relabelled,
            mentions=mentions,
        )
        repairs.note(page, sentence, groups, course.digits)
        rows.note(sentence, groups)
        _move_on(page, setting, course)
        setting.after, setting.after_digits = course.focus, course.digits
        page.settings.append(setting)
    return doc


def _settle_names(page: Page) -> None:
    """Settle what each name means before any is given to a sentence: which finger, which slip, and those put right."""
    drop_blank_names(page)
    settle_totals(page)
    settle_answered_cuts(page)
    settle_shared_nouns(page)
    settle_fibre_bundles(page)
    settle_wounds(page)
    settle_taken(page)
    settle_otherwise_hurt(page)
    settle_slips(page)
    settle_digits(page)
    part_at_slashes(page)
    settle_pulleys_again(page)
    count_fingers(page)
    settle_relative_digits(page)
    settle_only_one_of(page)
    put_right(page)
    put_slips_right(page)


def _complete(page: Page, sentence: Sentence, mentions: list[Mention], groups: list[Group], course: _Course) -> None:
    """Give the groups of a sentence the fingers and tendons that were named before it."""
    seen = tuple(course.seen)
    if groups:
        groups.sort(key=lambda g: g.i)
        take_up_before(page, sentence, groups, course.focus)
    _all_of_them(page, groups, course.digits, seen)
    _other_finger(page, sentence, groups, course.digits, seen)
    lend_listed_fingers(page, sentence, groups)
    spread_over_fingers(page, sentence, groups, mentions, seen or course.digits)
    course.heading = _under_heading(page, sentence, groups, mentions, course.heading)


def _begin_line(page: Page, sentence: Sentence, course: _Course) -> None:
    """Let each line of a list begin with the tendons on the line above the list."""
    if not _in_list(page, sentence):
        course.list_head = ()
    if course.list_head and (_at_bullet(page, sentence.i) or _at_bullet(page, sentence.i - 1)):
        course.digits = tuple(dict.fromkeys(t.digit for t in course.list_head if t.digit))
        course.focus = course.list_head


def _move_on(page: Page, setting: Setting, course: _Course) -> None:
    """Go on to what a sentence speaks of, where it tells of this operation or of what was planned or asked."""
    sentence, groups = setting.sentence, setting.groups
    turned = _standing(page, groups) in _TURNED_TO
    if not turned and groups and not course.digits:
        course.digits = next((g.digits for g in groups if g.digits), ())
    elif (turned or _takes_back(page, sentence)) and not (
        _nothing_ticked(page, sentence) or _left_blank(page, sentence) or passes_by(page, sentence, setting)
    ):
        _turn_to(page, setting, course)
    if groups:
        course.listed, course.pair = _listed(setting) or course.listed, _two_fingers(groups) or course.pair
    if _heads_list(page, sentence, groups):
        course.list_head = course.focus


def _standing(page: Page, groups: list[Group]) -> str:
    """Return how what a sentence names stands: '' where anything of it is a finding, 'none' where it names nothing."""
    if any(not page.standing[g.i] for g in groups):
        return ""
    return page.standing[groups[0].i] if groups else "none"


def _turn_to(page: Page, setting: Setting, course: _Course) -> None:
    """Take up the digits and tendons of a sentence, and how it speaks of them."""
    sentence, groups = setting.sentence, setting.groups
    course.digits, course.focus = _moved(page, setting)
    course.seen.update(dict.fromkeys(d for g in groups if not g.reference for d in g.digits))
    if len(course.seen) > 1 and _heads_all(sentence, groups):
        course.digits, course.focus = tuple(course.seen), ()  # 'BOTH FINGERS' heads what follows
    named = [g for g in groups if g.tendons or g.digits]
    course.labelled = _heads_what_follows(page, sentence, groups, course.heading)
    if groups and not (course.wide and not named and page.words[groups[-1].i] in ("both", "each")):
        course.all_before = groups[-1].generic == "all" and not groups[-1].digits
    if named:
        last = _last_told_of(page, named)
        course.relabelled = not last.tendons and not _says_which_finger(page, sentence, last, setting)
        course.wide = last.tendons if last.every and not last.digits else ()


def _last_told_of(page: Page, named: list[Group]) -> Group:
    """'6-0 round the two profundus repairs; none on the superficialis. Both repairs ...': the former are spoken of."""
    last = named[-1]
    if len(named) > 1 and named[-2].every and not (named[-2].digits or last.digits or last.every):
        between = page.words[named[-2].j : last.i]
        cut = next((n for n in range(len(between) - 1, -1, -1) if between[n] in (",", ";")), None)
        if cut is not None and not _NONE.isdisjoint(between[cut + 1 : cut + 3]):
            return named[-2]
    return last


_NONE = frozenset(["none", "nothing", "no", "not"])


def _heads_what_follows(page: Page, sentence: Sentence, groups: list[Group], heading: tuple[str, ...]) -> bool:
    """Tell whether a sentence is little more than a name, labels its line, or is a finger under a heading."""
    if not groups:
        return False
    little = sum(g.j - g.i for g in groups) >= sentence.j - sentence.i - 3
    if little and not _tells_a_cut(page, sentence):
        return True
    return _labels_line(page, sentence, groups) or (bool(heading) and groups[0].tendons == heading)


def _takes_back(page: Page, sentence: Sentence) -> bool:
    """'I was wrong to call the middle FDS intact' of an addendum: it speaks of that tendon all the same."""
    return page.in_addendum(sentence) and not _TAKING_BACK.isdisjoint(sentence.said)


_TAKING_BACK = word_list("bearing", "taking_back")


def _left_blank(page: Page, sentence: Sentence) -> bool:
    """'FPL   ___   ___   ___' at the end of a grid: a row that nobody filled in turns to nobody."""
    if sentence.j - sentence.i > _ROW_NAME:
        return False
    last = page.starts[sentence.j] if sentence.j < len(page.starts) else len(page.text)
    cells = page.text[page.starts[sentence.i] : last].split()[sentence.j - sentence.i :]
    return len(cells) > 1 and all(set(cell) == {"_"} for cell in cells)


_ROW_NAME = 2  # words


def _all_of_them(page: Page, groups: list[Group], digits: tuple[str, ...], seen: tuple[str, ...]) -> None:
    """'Middle, ring and small fingers. FDP of all fingers divided.': of all that the note has named so far."""
    if not 1 < len(digits) < len(DIGITS) - 1 or set(digits) != set(seen) or "thumb" in digits:
        return
    for group in groups:
        words = page.words[group.i : group.j]
        if _whole_at_wrist(page, group):
            continue
        if group.digits == DIGITS[1:] and "all" in words and _FOUR.isdisjoint(words):
            group.digits = digits
            group.pairs = tuple(pair for pair in group.pairs if pair[0] in digits or pair[0] not in DIGITS[1:])


_FOUR = frozenset(["four", "4"])


def _whole_at_wrist(page: Page, group: Group) -> bool:
    """'FCU and both FDS of the ring and small fingers cut. Profundus of all fingers unhurt': of all four."""
    beside = [*within(page.mentions, group.j, group.j + 2), *within(page.mentions, group.i - 4, group.i)]
    whole = any(m.kind == "extent" and m.value == "intact" and _leads_to(page, m, group) for m in beside)
    return whole and any(m.kind == "tendon" and m.value in WRIST for m in page.mentions)


def _leads_to(page: Page, mention: Mention, group: Group) -> bool:
    """Tell whether a word stands behind a group, or before it as the label of a list: 'Intact: ...'."""
    return mention.i >= group.j or page.words[mention.j : group.i] == [":"]


def _heads_list(page: Page, sentence: Sentence, groups: list[Group]) -> bool:
    """'FDP of IF and of MF' on a line of its own, above lines that begin with a dash."""
    one = len(groups) == 1 and bool(groups[0].tendons) and len(groups[0].pairs) > 1
    whole = one and groups[0].i == sentence.i and sentence.j - groups[0].j <= 1 and not groups[0].reference
    return whole and page.breaks[sentence.i] >= Break.LINE and _at_bullet(page, sentence.j)


def _at_bullet(page: Page, k: int) -> bool:
    return page.words[k : k + 1] in (["-"], ["*"]) and page.breaks[k] >= Break.LINE


def _in_list(page: Page, sentence: Sentence) -> bool:
    """Tell whether a sentence begins a line with a dash, or goes on within one."""
    return page.breaks[sentence.i] < Break.LINE or _at_bullet(page, sentence.i) or _at_bullet(page, sentence.i - 1)


def _tells_a_cut(page: Page, sentence: Sentence) -> bool:
    """'FDS partially cut.' tells of a tendon; 'FDS: cut.' may head what follows."""
    cut = any(m.kind == "extent" and m.value == "partial" for m in within(page.mentions, sentence.i, sentence.j))
    return cut and ":" not in sentence.said


def _labels_line(page: Page, sentence: Sentence, groups: list[Group]) -> bool:
    """'* FDS small: complete.': a tendon heads its line, and what follows on the line is told of it."""
    first = groups[0] if groups else None
    if first is None or not first.tendons or len([g for g in groups if g.tendons]) > 1:
        return False
    lead = [w for w in page.words[sentence.i : first.i] if w[0].isalnum()]
    heads = page.words[first.j : first.j + 1] == [":"] and page.breaks[sentence.i] >= Break.LINE and not lead
    return heads and sentence.j - first.j <= 4 and sentence.j < len(page.words) and page.breaks[sentence.j] < Break.LINE


def _says_which_finger(page: Page, sentence: Sentence, group: Group, setting: Setting) -> bool:
    """'Tendon 2: FDS', then 'Finger: index': the label only says of which finger the tendon is."""
    label = page.words[sentence.i : sentence.i + 2]
    return (
        label[:1] in (["finger"], ["digit"], ["ray"])
        and label[1:] == [":"]
        and bool(setting.focus)
        and group.i > sentence.i
    )


def _other_finger(
    page: Page, sentence: Sentence, groups: list[Group], digits: tuple[str, ...], seen: tuple[str, ...]
) -> None:
    """'In the other finger the FDP was cut', 'its neighbour catches': of two fingers the one not spoken of.

    It becomes a group of its own.
    """
    if len(seen) != 2 or _LEADS_TO_OTHER.isdisjoint(sentence.said):
        return
    words = page.words
    spots = range(sentence.i, sentence.j - 2)
    k = next((k for k in spots if words[k : k + 3] in _THE_OTHER or _its_neighbour(words, k)), -1)
    named = next((g.digits for g in reversed(groups) if g.digits and g.j <= k), digits)
    if k < 0 or len(named) != 1 or named[0] not in seen or any(g.digits and g.i > k for g in groups):
        return
    end = k + (2 if words[k + 1] in _NEIGHBOUR else 3)
    kept = [g for g in groups if g.j <= k or g.i >= end]
    for cut in [g for g in groups if g.i < end < g.j and g.tendons]:  # 'the other finger the FDP'
        kept.append(Group(end, cut.j, tendons=cut.tendons, pairs=tuple((None, t, s) for _, t, s in cut.pairs)))
    other = Group(k, end, tuple(d for d in seen if d != named[0]))
    for owned in [g for g in kept if g.tendons and not g.digits and words[g.j : k] in _OF_THE_OTHER]:
        kept.remove(owned)  # 'the radial slip of its neighbour': one name, and no slip of the finger before
        pairs = tuple((d, tendon, slip) for d in other.digits for _, tendon, slip in owned.pairs if has(d, tendon))
        other = replace(other, i=owned.i, tendons=owned.tendons, pairs=pairs)
    groups[:] = sorted([*kept, other], key=lambda g: g.i)


def _its_neighbour(words: list[str], k: int) -> bool:
    """'Its neighbour catches', 'the index caught, its neighbour ran freely', but not 'just like its neighbour'."""
    compared = words[k - 1 : k] and words[k - 1] in ("like", "as", "than", "to", "with")
    return words[k] in ("its", "the") and words[k + 1] in _NEIGHBOUR and not compared


_THE_OTHER = (["the", "other", "finger"], ["the", "other", "digit"])
_NEIGHBOUR = frozenset(["neighbour", "neighbor"])
_LEADS_TO_OTHER = _NEIGHBOUR | {"other"}
_OF_THE_OTHER = (["of"], ["in"], ["to"])


def _under_heading(
    page: Page, sentence: Sentence, groups: list[Group], mentions: list[Mention], heading: tuple[str, ...]
) -> tuple[str, ...]:
    """'FDP' on a line of its own, then 'Index: completely divided.': give the finger it; return the heading."""
    alone = [g for g in groups if g.tendons and not g.digits]
    own_line = page.breaks[sentence.i] >= Break.LINE
    if own_line and len(groups) == len(alone) == 1 and all(m.kind in _HEADING for m in mentions):
        rest = 1 + any(m.kind == "role" for m in mentions)  # 'FDP core'
        covers = _after_mark(page, sentence, alone[0].i) and sentence.j - alone[0].j <= rest
        return alone[0].tendons if covers else ()
    first = groups[0] if groups else None
    label = page.words[sentence.j - 1] == ":" and sentence.j - sentence.i <= 5 and own_line
    if label and not alone:
        return ()  # 'Test:' above 'Index: passive, no gap' ends what 'FDS:' headed
    if first is None and not any(m.kind in ("pulley", "structure", "sided") for m in mentions):
        return heading
    labels = first is not None and _after_mark(page, sentence, first.i) and bool(first.digits)
    labels = labels and not any(g.tendons for g in groups)
    if first is None or not labels or first.j + 1 >= sentence.j:
        return ()
    if page.words[first.j] != ":" and page.breaks[first.j] != Break.COLUMN:
        return ()
    pairs = [(d, t, None) for d in first.digits for t in heading if has(d, t)]
    first.pairs, first.tendons = tuple(pairs), tuple(dict.fromkeys(t for _, t, _ in pairs))
    return heading


_HEADING = frozenset(["tendon", "generic", "role"])


def _after_mark(page: Page, sentence: Sentence, k: int) -> bool:
    """Tell whether no more than the mark of a list stands before word k: '4. FDS', '- index: intact'."""
    lead = page.words[sentence.i : k]
    numbered = len(lead) == 2 and lead[1] in (".", ")") and (lead[0].isdecimal() or len(lead[0]) == 1)
    return not lead or numbered or lead in (["-"], ["*"], ["+"])


def _nothing_ticked(page: Page, sentence: Sentence) -> bool:
    """'FPL   [ ] complete  [ ] partial   [ ]', 'FPL  n/a': a row of a form that was left empty turns to nothing."""
    if page.words[sentence.j - 3 : sentence.j] == ["n", "/", "a"] and sentence.j - sentence.i <= 5:
        return True
    if "[" not in sentence.said:
        return False
    if page.breaks[sentence.j : sentence.j + 1] < [Break.LINE] and sentence.j < len(page.words):
        return False  # 'Ring: FDP [ ] cut [ ] intact   FDS [x] cut [ ] intact': more of the same row follows
    standing = page.standing[sentence.i : sentence.j]
    words = page.words[sentence.i : sentence.j]
    boxes = sum(a == "[" and b == "]" for a, b in pairwise(words))
    return boxes > 1 and "unticked" in standing and words.count("[") == boxes


def _heads_all(sentence: Sentence, groups: list[Group]) -> bool:
    """Tell whether a sentence is nothing but 'BOTH FINGERS' or 'All digits:'."""
    whole = [g for g in groups if g.every and not (g.tendons or g.digits or g.generic)]
    return len(groups) == len(whole) == 1 and sentence.j - sentence.i <= 3


def _listed(setting: Setting) -> tuple[Target, ...]:
    """Return the tendons a sentence names one after another, where it names several."""
    named = [g for g in setting.groups if g.tendons and not (g.reference or g.excepted or g.place)]
    digits = setting.digits
    found: dict[Target, None] = {}
    for group in named:
        found.update(dict.fromkeys(resolve_pairs(group, group.digits or digits)))
        digits = group.digits or digits
    # 'Index FDS: radial slip divided, ulnar slip 20 per cent': the two slips, and no third tendon
    parted = {(t.digit, t.tendon) for t in found if t.slip}
    kept = tuple(t for t in found if t.slip or (t.digit, t.tendon) not in parted)
    return kept if len(kept) > 1 else ()


def _by_place(
    page: Page,
    sentence: Sentence,
    mentions: list[Mention],
    groups: list[Group],
    course: _Course,
) -> list[Group]:
    """Return groups for 'the former', 'the latter', 'the second': of the tendons named in the sentence or before it."""
    found: list[Group] = []
    for k, end, word in places_told(page, sentence, mentions):
        own = _listed(Setting(sentence, [g for g in groups if g.j <= k], course.digits))
        wide = any(g.tendons and not g.digits and g.i < k and g.tendons[0] not in WRIST for g in groups)
        # 'the two FDPs, the former with 3-0': of which fingers is not told
        targets = own or (() if wide else course.listed)
        place = at_place(word, len(targets))
        kinds = next((g.tendons for g in reversed(groups) if g.i < k and wide and not g.digits and g.tendons), ())
        kind = at_place(word, 2) if len(kinds) == 2 != len(targets) else None
        two = _two_kinds(groups if groups or not page.settings else page.settings[-1].groups, k)
        if two:
            kinds, kind = two, at_place(word, 2)
        if kind is not None:  # 'the divided profundus and the two superficiales, the former ... and the latter ...'
            pairs = ((None, kinds[kind], None),)
            found.append(Group(k, end, (), (kinds[kind],), pairs, every=True, place=True))
        elif place is not None and not any(g.i <= end - 1 < g.j for g in groups):
            t = targets[place]
            pair = ("" if t.digit is None and t.tendon in WRIST else t.digit, t.tendon, t.slip)
            found.append(Group(k, end, (t.digit,) if t.digit else (), (t.tendon,), (pair,), place=True))
    return found


def _two_kinds(groups: list[Group], k: int) -> tuple[str, ...]:
    """'3-0 for the profundi and 4-0 for the superficialis; in the former ...': two kinds, one at least of several."""
    named = [g for g in groups if g.j <= k and g.tendons and not g.generic]
    kinds = tuple(dict.fromkeys(t for g in named for t in g.tendons))
    alone = all(len(g.tendons) == 1 and not g.digits for g in named)
    return kinds if alone and len(kinds) == 2 and any(g.every for g in named) else ()


def _two_fingers(groups: list[Group]) -> tuple[str, ...]:
    """Return the two fingers a sentence names, where it names neither more nor fewer."""
    named = tuple(dict.fromkeys(d for g in groups if not (g.reference or g.excepted) for d in g.digits))
    return named if len(named) == 2 else ()


def _fingers_by_place(page: Page, sentence: Sentence, groups: list[Group], pair: tuple[str, ...]) -> list[Group]:
    """'A4 was vented in the former and left intact in the latter': of the two fingers named last."""
    found: list[Group] = []
    for k, place in fingers_told(page, sentence):
        before = [g for g in groups if g.j <= k]
        fingers = _two_fingers(before) or (() if any(g.digits for g in before) else pair)
        tendons = any(g.tendons for g in before)  # 'the two profundi ..., in the former the knots were buried'
        if fingers and not tendons and not any(g.i <= k + 1 < g.j for g in groups):
            found.append(Group(k, k + 2, (fingers[place],)))
    return found


_COUNTED = 2
_TURNED_TO = frozenset(["", "plan", "question", "unticked", "unfilled"])


def _moved(page: Page, setting: Setting) -> tuple[tuple[str, ...], tuple[Target, ...]]:
    """Return the digits and tendons in focus after a sentence."""
    digits, focus = setting.digits, setting.focus
    for group in setting.groups:
        if group.reference or group.excepted:
            continue
        if group.digits:
            if not group.tendons and group.digits != digits and focus:
                known = [t for t in focus if t.digit is None or t.digit in digits]  # 'FDP avulsion R RF'
                same = tuple(Target(d, t.tendon) for d in group.digits for t in known if has(d, t.tendon))
                own_flexor = tuple(t for t in setting.focus if t.digit in group.digits)
                focus = tuple(
                    dict.fromkeys(same or own_flexor)
                )  # 'in the thumb 10 mm, 8 mm in the ring': each its own flexor
            digits = group.digits
        if group.tendons:
            counted = group.four == _COUNTED and not group.digits  # 'FDS x4 -> figure-of-eight. No epi'
            focus = tuple(resolve_pairs(group, DIGITS[1:] if counted else digits))
            own = tuple(dict.fromkeys(t.digit for t in focus if t.digit))
            digits = own or digits
    return digits, focus
