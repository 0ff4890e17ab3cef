"""What was found of and done to each pulley; the last thing done wins."""

import re
from bisect import bisect_right
from dataclasses import replace
from itertools import pairwise

from notereader.reader.desk import Desk, is_correction
from notereader.reader.groups import DIGITS, Group
from notereader.reader.mentions.measures import count_of
from notereader.reader.page import Break, Mention
from notereader.reader.rules.asides import in_an_aside
from notereader.reader.rules.deeds.passed_under import of_what_passed_under
from notereader.reader.rules.finger_lines import of_one_finger
from notereader.reader.rules.pulleys.attach import WEAK, Attachment, Thing, others
from notereader.reader.rules.pulleys.dealt_pulleys import dealt_pulleys
from notereader.reader.rules.pulleys.fingers_behind import fingers_behind, joined, of_its_statement, starts
from notereader.reader.rules.pulleys.pulley_names import (
    ANNULAR,
    PART_NOUNS,
    PARTS,
    PulleyGroup,
    excepted_pulleys,
    is_tendon_end,
    made_from,
    named,
    of_its_stuff,
)
from notereader.reader.rules.pulleys.pulley_owners import DILATED, SHARED, at_an_end, opened_at_an_end, owned_after_all
from notereader.reader.rules.pulleys.pulley_shares import (
    Share,
    in_full,
    only_part,
    part_in,
    reach_end,
    reach_of,
    share_in,
    shares_in_turn,
)
from notereader.reader.rules.pulleys.pulley_states import DEEDS, OPENINGS, pulley_words, state_of, strongest
from notereader.reader.rules.pulleys.pulley_undone import stitches_gave_way, undone_next
from notereader.reader.rules.pulleys.pulleys_apart import told_of_all_but
from notereader.reader.rules.pulleys.pulleys_in_turn import in_turn
from notereader.reader.rules.pulleys.pulleys_lost import lost_after_all
from notereader.reader.rules.pulleys.pulleys_opened_on import opened_on
from notereader.reader.rules.pulleys.same_there import same_there
from notereader.reader.rules.pulleys.windows import WINDOWS
from notereader.reader.rules.structures.part_digits import every_digit
from notereader.reader.scene import Scene, digits_at
from notereader.vocabulary.wordlists import word_list

_THUMB_ONLY = frozenset(["oblique", "variable"])
_FINGER_ONLY = frozenset(["A3", "A4", "A5", "C1", "C2", "C3"])
_SKIP = frozenset(["instructions", "closure", "dressing", "admin", "anaesthesia", "blood_loss", "specimens"])
_NAMES = ("pulley", "pulley?", "pulleys")  # kinds of mentions that name one
_OTHERS = ("tendon", "structure", "sided", "bundle", "role", "anynerve", "anyartery", "bone", "fracture")
_ALSO = word_list("pulleys", "also")
_TOGETHER = (
    *(
        [lead, verb]
        for lead in ("as", "so")
        for verb in ("was", "were", "is", "are", "did", "do", "does", "has", "had")
    ),
    ["and", "so"],
    ["together", "with"],
    ["along", "with"],
    ["well", "as"],
)
_PRONOUNS = word_list("pulleys", "pronouns")
_NOT_OF_LANDMARKS = frozenset(["cut", "back", "trimmed", "divided", "excised", "resected"])
_WHY = frozenset(["because", "as", "since", "so", "to", "for"])
_PLURAL = frozenset(["they", "both", "these", "neither", "them"])
_BARE_DIGITS = {"middle": "middle", "long": "middle", "little": "small", "small": "small"}


def pulleys(desk: Desk, scene: Scene) -> None:
    """Find the state of every pulley named in a sentence, or spoken of as 'it' or 'both' right after."""
    if scene.sentence.section in _SKIP or opened_on(desk, scene):
        return
    goes_on = bool(desk.last_pulleys) and scene.sentence.i == desk.last_pulley_end
    if scene.kinds.isdisjoint(_NAMES) and not goes_on:
        return
    if scene.of("pulley") and stitches_gave_way(desk, scene):
        return
    if goes_on:
        undone_next(desk, scene)
        if same_there(desk, scene):
            return
    if lost_after_all(desk, scene):
        return
    if scene.answered_no():
        return  # 'A4 vented?   No'
    _all_annular(desk, scene)
    groups, places = named(desk, scene)
    words = [w for w in pulley_words(scene) if not of_its_stuff(scene, w) and not _knocks(scene, w)]
    apart = told_of_all_but(scene, words)
    for fingers, told in apart:
        _lay(desk, scene, groups[0], told, fingers)
    if apart:
        return
    groups, words = in_turn(scene, *_dealt(desk, scene, groups, words))
    _attach(scene, groups, places, words)
    _same_again(scene, groups)
    if is_correction(scene):
        _not_so(desk, scene, groups)
    for group in groups:
        for digits, actions in _by_digit(scene, group).items():
            action = strongest(scene, actions)
            if action is not None:
                _lay(desk, scene, group, action, digits)
    if not groups and not places:
        if not _of_another_day(scene, words):
            _pronoun(desk, scene, words)
    else:
        last = (groups or places)[-1]
        desk.last_pulley_end = scene.sentence.j
        desk.last_pulley_named = bool(groups)
        desk.last_pulleys = [(value, _digits(desk, scene, last.mentions[0], value)) for value in last.values]
        desk.last_pulleys_told = [(v, _digits(desk, scene, g.mentions[0], v)) for g in groups for v in g.values]


def _knocks(scene: Scene, word: Mention) -> bool:
    """'A1, against which the suture knocked, is incised': the suture is no repair of the pulley."""
    return word.value == "repaired" and in_an_aside(scene, word.i)


def _dealt(
    desk: Desk, scene: Scene, groups: list[PulleyGroup], words: list[Mention]
) -> tuple[list[PulleyGroup], list[Mention]]:
    """Lay down what is dealt out over fingers, statement by statement; return the pulleys and words that are left."""
    if len({g.digits for g in scene.setting.groups if g.digits}) < 2 and "respectively" not in scene.said:
        return groups, words
    cuts = [k for k in range(scene.sentence.i, scene.sentence.j) if scene.page.words[k] == ";"]
    spans = [(scene.sentence.i, scene.sentence.j)]
    if cuts:
        spans += pairwise([scene.sentence.i, *cuts, scene.sentence.j])
    for i, j in spans:
        inside = [g for g in groups if i <= g.i < j]
        shares = dealt_pulleys(scene, words, i, j) if inside else []
        for share in shares or ():
            _lay(desk, scene, inside[0], share.action, share.fingers, (share.i, share.j))
        if shares is None or shares:
            groups = [g for g in groups if g not in inside]
            words = [w for w in words if not i <= w.i < j]
    return groups, words


def _not_so(desk: Desk, scene: Scene, groups: list[PulleyGroup]) -> None:
    """An addendum's 'A2 is not intact', 'it was A4 that was vented, not A3': what was told before holds no more."""
    for group in groups:
        denied = scene.word_before(group.i) == "not" and scene.words(group.i - 2, group.i) in (
            [",", "not"],
            ["and", "not"],
        )
        whole = any(m.value == "intact" and scene.words(m.i - 1, m.i) == ["not"] for m in group.actions)
        for name in group.values if denied or whole else ():
            for digit in _digits(desk, scene, group.mentions[0], name):
                desk.take_back("pulleys", (digit, name, None), "finding", scene.sentence.i)


def _of_another_day(scene: Scene, words: list[Mention]) -> bool:
    """'A2 intact. A4 had been vented at the first operation, so we rebuilt it': 'it' is not the pulley before."""
    earlier = [m.j for m in scene.of("pulley") if not scene.told(m.i)]
    return bool(earlier and words) and min(earlier) <= words[0].i


# --- which words speak of which pulleys


def _attachment(scene: Scene, groups: list[PulleyGroup], places: list[PulleyGroup], words: list[Mention]) -> Attachment:
    things = [Thing(g.i, g.j, n) for n, g in enumerate(groups)]
    beside = [Thing(p.i, p.j) for p in places] + _stumps(scene)
    cut = {k for w in words for k in range(w.i, w.j)}  # 'A2 was nicked and I made a window there': no sheath beside it
    kept = [t for t in others(scene, _OTHERS) if not (t.i in cut and scene.page.words[t.i] in WINDOWS)]
    return Attachment(scene, things, [*kept, *beside], words, PART_NOUNS)


def _stumps(scene: Scene) -> list[Thing]:
    """'A1 was split to deliver it, and its tip was cut back 2 mm': the end of the tendon, and not of the pulley."""
    words = scene.page.words
    spots = (m.i - (words[m.i] not in ("its", "the")) for m in scene.of("endword"))
    return [Thing(k, k + 2) for k in spots if is_tendon_end(scene.words(k - 1, k + 4))]


def _attach(scene: Scene, groups: list[PulleyGroup], places: list[PulleyGroup], words: list[Mention]) -> None:
    """Give every word to the pulleys it speaks of."""
    if not words:
        return
    subjects: list[PulleyGroup] = []  # parted from the pulleys before them
    for word in words:
        back = _attachment(scene, groups, places, words).touches_back(word)
        if back is not None and back.n >= 0 and len(groups[back.n].mentions) > 1:
            subjects += _split(scene, groups, back.n, word, words)
    attachment = _attachment(scene, groups, places, words)
    for word in words:
        if opened_at_an_end(scene, groups, places, word):
            continue
        strong = word.value != "intact" or " ".join(scene.words(word.i, word.j)) not in WEAK
        owners = attachment.owners(word, loosely=strong)
        cuts = scene.page.words[word.i] not in ("vented", "released")  # these are words of the surgeon's own doing
        if word.value in ("vented", "released") and cuts and attachment.with_others(word):
            word = Mention("opened", "injured", word.i, word.j)  # cut together with tendons: the accident did it
        parted = [n for n in owners if groups[n] in subjects]
        for n in parted or owners:
            if not _of_the_main_clause(scene, groups[n], word):
                groups[n].actions.append(word)
        if not owners:
            owned_after_all(scene, groups, places, word)


def _of_the_main_clause(scene: Scene, group: PulleyGroup, word: Mention) -> bool:
    """'The tendon was led through A4, which was left uncut, and was fixed to bone': 'and was' is of the tendon."""
    if of_what_passed_under(scene, group.i, group.j, word):
        return True
    if word.value not in SHARED or scene.next_word(group.j) != "," or scene.page.words[group.j + 1] != "which":
        return False
    told = any(group.j < m.i < word.i for m in group.actions)
    k = word.i
    while scene.word_before(k) in ("was", "were", "then"):
        k -= 1
    return told and scene.words(k - 2, k) == [",", "and"]


def _split(scene: Scene, groups: list[PulleyGroup], n: int, word: Mention, words: list[Mention]) -> list[PulleyGroup]:
    """Part the pulleys that are the subject of a word from those before them, and return them; [] where none are.

    'I released A1 and A2 was preserved', 'we spared A1 and A2, and A3 was vented'.
    """
    group = groups[n]
    ahead = [w for w in words if w.value != word.value and _has_as_object(scene, w, group)]
    leads = any(scene.word_before(w.i) not in ("was", "were", "is", "are") for w in ahead)
    cut = _first_subject(scene, group) if leads else 0
    if not cut:
        return []
    last = PulleyGroup(group.mentions[cut:], group.values[cut:])
    group.mentions, group.values = group.mentions[:cut], group.values[:cut]
    groups.insert(n + 1, last)
    return [last]


def _has_as_object(scene: Scene, w: Mention, group: PulleyGroup) -> bool:
    """Tell whether a word leads up to pulleys with nothing named between: 'I released both A1 and A2'."""
    lead = scene.words(w.j, group.i) if w.j <= group.i else [","]
    return all(word in _BEFORE_OBJECT or word in PARTS or word in PART_NOUNS for word in lead)


_BEFORE_OBJECT = frozenset(["the", "both", "all", "of", "its", "his", "her", "whole", "entire", "full", "length"])


def _first_subject(scene: Scene, group: PulleyGroup) -> int:
    """Return which of a row of pulleys is the first of those that the verb behind it is of; 0: of all of them."""
    if len(group.values) != len(group.mentions) or scene.next_word(group.j) == "both":
        return 0
    if scene.next_word(group.j) not in ("were", "are"):
        return len(group.mentions) - 1
    joints = [scene.words(a.j, b.i) for a, b in pairwise(group.mentions)]
    cuts = [k for k, joint in enumerate(joints, 1) if joint == [",", "and"]]
    return cuts[0] if len(cuts) == 1 and cuts[0] < len(joints) else 0


def _same_again(scene: Scene, groups: list[PulleyGroup]) -> None:
    """'A2 vented, A4 likewise', 'A2 was kept, as was A4': a pulley without a word takes those of the one before."""
    _so_was_tendon(scene, groups)
    for before, group in pairwise(groups):
        if group.actions or not before.actions:
            continue
        digits = scene.page.digit_words
        behind = (k for k in range(group.j, min(group.j + _FAR_BEHIND, scene.sentence.j)) if k not in digits)
        after = [scene.page.words[k] for k in behind if scene.page.words[k] not in ("of", "the")][:3]
        ahead = [w for w in scene.words(max(before.j, group.i - 4), group.i) if w not in ("the", "its")]
        wholly = [m for m in scene.of("fully") if 0 <= m.i - group.j <= 6 and "," not in scene.words(group.j, m.i)]
        if "same" in after and scene.words(group.j, group.j + 5)[after.index("same") + 1 :][:1] in _A_DIGIT:
            continue  # 'A4 of the same finger'
        led = 1 if ahead[-1:] == ["with"] else 2 if ahead[-2:] == ["w", "/"] else 0
        taken_along = led > 0 and before.actions[-1].j == group.i - led  # 'A3 was excised with C2'
        if any(w in _ALSO for w in after) or ahead[-2:] in _TOGETHER or taken_along:
            group.actions = before.actions[-1:] if ahead[-2:] in _TOGETHER else list(before.actions)
        elif wholly and any(0 <= m.i - wholly[0].j <= 4 for m in scene.of("opened")):
            continue  # 'A4 in its entirety, were respected' has a word of its own
        elif wholly and any(m.value in ("vented", "released") for m in before.actions):
            group.actions = [Mention("opened", "released", wholly[0].i, wholly[0].j)]
        elif (length := _length_ahead(scene, before, group)) and before.actions[-1].value in _OPENED:
            group.actions = [Mention("opened", "vented", *length)]
        elif _share_behind(scene, group) and before.actions[-1].value in OPENINGS:
            group.actions = [Mention("opened", before.actions[-1].value, group.j, group.j + 1)]


_FAR_BEHIND = 8  # words: 'and that of the index finger too'


def _share_behind(scene: Scene, group: PulleyGroup) -> bool:
    """'The index A2 was opened in its proximal third and the middle A2 in its distal half': as the one before."""
    led = scene.next_word(group.j) in ("in", "over", "for", "by")
    later = [m.i for m in scene.of("opened", "pulley") if m.i >= group.j]
    return led and bool(share_in(scene, group.j, min([group.j + 5, scene.sentence.j, *later])))


def _length_ahead(scene: Scene, before: PulleyGroup, group: PulleyGroup) -> tuple[int, int] | None:
    """'Venting A3 completely and 6 mm at the far end of A2': the length that was opened of the next pulley."""
    for q in scene.quantities:
        lead = scene.words(q.j, group.i)
        joined = scene.word_before(q.i) == "and" and before.actions[-1].j < q.i
        if q.unit == "mm" and q.j <= group.i and joined and lead[:1] == ["at"] and at_an_end(lead[1:]):
            return q.i, q.j
    return None


_OPENED = ("vented", "released")
_A_DIGIT = (["finger"], ["digit"], ["thumb"], ["ray"])


def _so_was_tendon(scene: Scene, groups: list[PulleyGroup]) -> None:
    """'Its superficialis was intact, and so were A2 and A4': the word is said of a tendon first."""
    of_pulleys = [m for g in groups for m in g.actions]
    for group in (g for g in groups if not g.actions):
        lead = [w for w in scene.words(max(scene.sentence.i, group.i - 4), group.i) if w not in ("the", "both", "its")]
        said = [m for m in scene.of("extent") if m.j <= group.i and scene.told(m.i)]
        if said and lead[-2:] in _SO_WERE and not any(m.i == said[-1].i or m.j > said[-1].j for m in of_pulleys):
            state = "intact" if said[-1].value == "intact" else "injured"
            group.actions = [Mention("opened", state, said[-1].i, said[-1].j)]


_SO_WERE = [[a, b] for a in ("so", "as") for b in ("was", "were", "is", "are")]
_TAKES_UP = frozenset(["it", "they", "this", "both", "these"])


def _by_digit(scene: Scene, group: PulleyGroup) -> dict[tuple[str, ...], list[Mention]]:
    """Return the words for a group of pulleys by digit: 'A4 was vented in the ring finger and excised in the index'."""
    bare = [g for g in scene.setting.groups if g.digits and not g.tendons]
    fingers = [g for g in bare if g.j > group.i]
    if any(g for g in fingers if scene.next_word(g.j) in _TAKES_UP):
        fingers = [g for g in bare if g.j > group.i - 4]  # 'In the middle A2 was vented; in the ring it is intact'
    found: dict[tuple[str, ...], list[Mention]] = {}
    for m in group.actions:
        near = [g for g in fingers if 0 <= g.i - m.j <= 3 and not g.excepted]
        after = [g for g in near if scene.next_word(g.j) not in _TAKES_UP]
        after = after or _told_behind(scene, group, m, fingers)
        before = [g for g in fingers if 0 <= m.i - g.j <= (12 if g.excepted or _opens_part(scene, g, m) else 5)]
        if after or before:
            found.setdefault((after[:1] or before[-1:])[0].digits, []).append(m)
    told = sum(len(actions) for actions in found.values())
    rest = [m for m in group.actions if not any(m in actions for actions in found.values())]
    excepted = any(g.excepted and g.digits in found for g in scene.setting.groups)
    every = any(g.every and not g.digits for g in scene.setting.groups) or bool(_all_but(scene, group.mentions[0]))
    if rest and excepted and every:
        return {**found, (): rest}  # 'intact in every finger except the index, where its distal 4 mm was vented'
    return found if len(found) > 1 and told == len(group.actions) else {(): group.actions}


def _opens_part(scene: Scene, group: Group, m: Mention) -> bool:
    """'..., but in the middle finger the distal third of it had to be divided': the finger opens the clause."""
    first, _ = scene.part(m.i)
    lead = [w for w in scene.words(first, group.i) if w not in ("but", "and", "while", "whereas", "the")]
    return first <= group.i and lead == ["in"]


def _told_behind(scene: Scene, group: PulleyGroup, m: Mention, fingers: list[Group]) -> list[Group]:
    """'intact in the ring finger and vented 4 mm distally in the little finger': a finger may follow the measure."""
    later = [a.i for a in group.actions if a.i > m.i]
    reach = min([m.j + 9, scene.sentence.j, *later])
    led = [g for g in fingers if m.j <= g.i < reach and "in" in scene.words(g.i - 2, g.i)]
    return [g for g in led[:1] if {",", ";"}.isdisjoint(scene.words(m.j, g.i)) and starts(scene, g.i)]


# --- laying down


def _lay(
    desk: Desk,
    scene: Scene,
    group: PulleyGroup,
    action: Mention,
    fingers: tuple[str, ...],
    within: tuple[int, int] | None = None,
) -> None:
    """Lay down what became of a group of pulleys; nothing outside the words given is told of it."""
    value = state_of(scene, action)
    tunnel = scene.words(group.i, group.j) in (["carpal", "tunnel"], ["carpal", "canal"])
    if value is None or (tunnel and value not in ("vented", "released")):
        return
    group = _singled_out(scene, group, action)
    low, high = reach_of(scene, group, action, bool(fingers))
    if within is not None:
        low, high = max(low, within[0]), min(high, within[1])
    if value == "intact" and (only_part(scene, group, action, low) or _only_this_time(desk, scene, group, action)):
        return
    whole = tunnel or (group.values == ["flexor retinaculum"] and _from_edge_to_edge(scene, action))
    a_length = any(q.i == action.i for q in scene.quantities)  # 'A3 completely and 6 mm at the far end of A2'
    if whole or (value == "vented" and not a_length and in_full(scene, low, high)):
        value = "released"
    value, share = _measured(scene, value, low, high, action.j)
    if value == "excised" and _a_part_of_it(scene, group, action):
        value = "trimmed"
    if _the_rest_too(scene, action):
        value, share = "released", {}
    if value in ("vented", "trimmed") and "part" not in share and "there" in scene.words(low, high):
        share |= _part_before(desk, scene, group)
    i, j = min(group.i, action.i), max(group.j, action.j)
    span = (i, j) if j - i <= 24 else (action.i, action.j)
    left_out = excepted_pulleys(scene)
    dealt = _dealt_shares(scene, group, action) if share else {}
    entries = [(d, name) for name in group.values for d in fingers or _digits(desk, scene, group.mentions[0], name)]
    in_turn = shares_in_turn(scene, share, len(entries), low, high)
    for n, (digit, name) in enumerate(entries):
        if value == "intact" and _hurt_so_far(desk, scene, (digit, name, None)):
            continue
        if (digit, name) not in left_out:
            own = in_turn[n] if in_turn else dealt.get(digit, share)
            _put(desk, scene, digit, name, value, own, span)


def _singled_out(scene: Scene, group: PulleyGroup, action: Mention) -> PulleyGroup:
    """'Of A2, A3 and A4 only the last could be kept', 'only the former was intact': the one it is said of."""
    between = scene.words(group.j, action.i)
    if len(group.values) < _SEVERAL or "only" not in between:
        return group
    pick = slice(-1, None) if not _LAST.isdisjoint(between) else slice(1) if not _FIRST.isdisjoint(between) else None
    return group if pick is None else replace(group, mentions=group.mentions[pick], values=group.values[pick])


_SEVERAL = 2
_LAST, _FIRST = frozenset(["last", "latter"]), frozenset(["first", "former"])


def _hurt_so_far(desk: Desk, scene: Scene, entry: tuple[str | None, str, str | None]) -> bool:
    """'A3 was lacerated. ... A3 left as it was': left so, which is not whole; an addendum may say otherwise."""
    told = [f for f in desk.told_of("pulleys", entry) if f.field == "finding" and not f.header]
    return (
        bool(told) and told[-1].value == "injured" and not is_correction(scene) and scene.sentence.section != "addendum"
    )


def _from_edge_to_edge(scene: Scene, action: Mention) -> bool:
    """'The ligament was divided from its distal edge to the forearm fascia', 'from distal to proximal': in full."""
    behind = scene.words(action.j, scene.sentence.j)
    if any(behind[n : n + 4] in _END_TO_END for n in range(len(behind))):
        return action.value in ("vented", "released")
    start = behind.index("from") if "from" in behind else len(behind)
    edge = not {"edge", "end", "border", "margin", "fat"}.isdisjoint(behind[start : start + 5])
    return action.value in ("vented", "released") and edge and "to" in behind[start + 2 :]


_END_TO_END = (["from", "distal", "to", "proximal"], ["from", "proximal", "to", "distal"])


def _only_this_time(desk: Desk, scene: Scene, group: PulleyGroup, action: Mention) -> bool:
    """'A4 was not touched today' of a pulley that the story tells to have been opened before: it is not whole."""
    behind = scene.words(action.j, min(action.j + 3, scene.sentence.j))
    if behind[:1] != ["today"] and behind[:2] not in (["this", "time"], ["at", "this"], ["on", "this"]):
        return False
    before = [m for s in desk.having("pulley") for m in s.of("pulley") if m.value in group.values]
    return any(desk.page.standing[m.i] in ("history", "story") for m in before)


def _dealt_shares(scene: Scene, group: PulleyGroup, action: Mention) -> dict[str | None, Share]:
    """'Vented for its distal 40% in the long finger and for its distal 25% in the small': each finger's own share."""
    found: dict[str | None, Share] = {}
    low = min(group.i, action.i)
    for g in (g for g in scene.setting.groups if g.i > low and g.digits and not g.tendons):
        share = share_in(scene, low, g.i) if starts(scene, g.i) else {}
        found |= dict.fromkeys(g.digits, share) if share else {}
        low = g.j
    return found if len(found) > 1 else {}


def _the_rest_too(scene: Scene, action: Mention) -> bool:
    """'Torn through half its length; the remainder was divided too': nothing of it is left standing."""
    before = scene.words(max(scene.sentence.i, action.i - 4), action.i)
    return state_of(scene, action) == "released" and not {"rest", "remainder", "remaining"}.isdisjoint(before)


def _a_part_of_it(scene: Scene, group: PulleyGroup, action: Mention) -> bool:
    """'Loose strips of A2 were cut off', 'A3: torn part cut off': what was cut away is named, and is a part."""
    if action.j <= group.i:  # 'I took out the torn edge of A2'
        between = set(scene.words(action.j, group.i))
        return _names_a_part(scene, group.i) and between <= _CUT_PARTS | _TORN | {"the", "a", "of"}
    named = _names_a_part(scene, group.i) or _names_a_part(scene, action.i) or _takes_a_part(scene, action)
    return group.j <= action.i and named


def _takes_a_part(scene: Scene, action: Mention) -> bool:
    """'A2: excised the torn flap', 'removed its frayed edge'; 'A5 torn, excised the tags' took all that was left."""
    behind = scene.words(action.j, min(action.j + 4, scene.sentence.j))
    led = behind[:1] in (["the"], ["a"], ["its"], ["that"], ["this"])
    noun = next((n for n, word in enumerate(behind) if word in _CUT_PARTS | {"tongue"}), 0)
    return led and noun > 0 and not behind[noun].endswith("s") and _TORN.issuperset(behind[1:noun])


_TORN = word_list("pulleys", "torn_part")


def _names_a_part(scene: Scene, k: int) -> bool:
    """Tell whether a part is named right before word k: 'strips of', 'torn part was', but not 'was in strips and'."""
    lead = scene.words(max(scene.sentence.i, k - 5), k)
    if scene.page.breaks[k] == Break.COLUMN:
        return False  # the cell before
    while lead[-1:] and lead[-1] in ("of", "the", "was", "were"):
        lead = lead[:-1]
    return bool(lead) and lead[-1] in _CUT_PARTS and lead[-2:-1] not in (["was"], ["in"], ["as"], ["remaining"])


_CUT_PARTS = frozenset(
    [
        *("part", "parts", "flap", "flaps", "strip", "strips", "portion", "tag", "tags", "fringe", "fringes"),
        *("edge", "edges", "rim", "rims", "margin", "margins", "lip", "lips", "border", "borders"),
    ]
)


def _measured(scene: Scene, value: str, low: int, high: int, after: int) -> tuple[str, Share]:
    """Return a state and the share told with it; a release of half is a venting, an excision of 3 mm a trimming.

    What stands behind the deed, from word `after` on, counts before what stands ahead of it.
    """
    share = share_in(scene, low, high) | share_in(scene, max(low, after), high) if value in OPENINGS else {}
    if value == "injured":
        return value, part_in(scene, low, high)
    if value in ("vented", "released") and "extent_percent" in share and share["extent_percent"][0] == 100:
        return "released", {}
    if value == "released" and "extent_percent" in share:
        return "vented", share
    if value == "excised" and share and not in_full(scene, low, high):
        return "trimmed", share
    return value, share if value in ("vented", "trimmed") else {}


def _put(
    desk: Desk, scene: Scene, digit: str | None, pulley: str, value: str, share: Share, span: tuple[int, int]
) -> None:
    digit = "thumb" if pulley in _THUMB_ONLY else None if pulley == "flexor retinaculum" else digit
    entry = (digit, pulley, None)
    known = desk.told_of("pulleys", entry)
    if value == "intact" and any(f.header and f.field == "finding" and f.value in DEEDS for f in known):
        return  # the title promises less than the text: the weaker stands
    desk.add(scene, "pulleys", entry, "finding", value, [span], f"pulley {value}")
    rule = f"how much of the pulley was {value}"
    for name, (figure, words) in share.items():
        desk.add(scene, "pulleys", entry, name, figure, [span, words], rule)
    told = {f.field: f for f in known if f.field != "finding" and f.rule == rule}
    for field, f in told.items():  # what was told of the same deed before still holds
        if field not in share and not scene.header:
            desk.add(scene, "pulleys", entry, field, f.value, [span, f.spans[-1]], rule)


def _part_before(desk: Desk, scene: Scene, group: PulleyGroup) -> Share:
    """'It caught on the distal edge of A2. I vented A2 there': the part told just before."""
    for at in (scene, _scene_before(desk, scene)):
        for m in at.of("pulley") if at is not None else []:
            if at is not None and m.value in group.values and m not in group.mentions and m.i < group.i:
                part = part_in(at, max(at.sentence.i, m.i - 4), m.j)
                if part:
                    return part
    return {}


def _scene_before(desk: Desk, scene: Scene) -> Scene | None:
    n = bisect_right(desk.scenes, scene.sentence.i, key=lambda s: s.sentence.i) - 2
    return desk.scenes[n] if n >= 0 else None


# --- of which digit


def _digits(desk: Desk, scene: Scene, mention: Mention, pulley: str) -> tuple[str | None, ...]:
    """Return the digits a pulley is of; A3 and the like are never of a thumb."""
    found = _digits_told(desk, scene, mention)
    of_a_finger = found == ("thumb",) and _of_a_finger_tendon(desk, scene)
    if (pulley in _FINGER_ONLY or of_a_finger) and "thumb" in found:
        rest = tuple(d for d in found if d != "thumb") or tuple(d for d in scene.every_digit if d != "thumb")
        return rest if len(rest) == 1 or len(found) > 1 else (None,)
    return found or (None,)


def _of_a_finger_tendon(desk: Desk, scene: Scene) -> bool:
    """'FDP -> catches on A2. A2 not touched.' of a thumb and a finger: told right behind the finger's FDP."""
    before = desk.scene_before(scene)
    if before is None or any(g.digits or g.tendons for g in scene.setting.groups):
        return False
    named = [g for g in before.setting.groups if g.tendons]
    return bool(named) and set(named[-1].tendons) <= {"FDP", "FDS"} and not any(g.digits for g in named)


def _digits_told(desk: Desk, scene: Scene, mention: Mention) -> tuple[str | None, ...]:
    groups = scene.setting.groups
    own = of_its_statement(desk, scene, mention)
    if own:
        return own
    every = _every_group(scene, mention)
    behind = next((g for g in groups if g.digits and 1 <= g.i - mention.j <= 2), None)
    of_it = behind is not None and scene.words(mention.j, behind.i)[:1] == ["of"]
    if every is not None and every.j <= mention.i and behind is not None and (of_it or starts(scene, behind.i)):
        return behind.digits  # 'A2 was kept in both fingers, I opened A4 in the ring finger'
    if every is not None:
        left_out = {d for g in groups if g.excepted and g.i >= every.j for d in g.digits}
        return tuple(d for d in every_digit(desk, scene, every) if d not in left_out)
    if _all_but(scene, mention):
        return _all_but(scene, mention)
    if scene.words(mention.j, mention.j + 3) in _IN_THAT and len(scene.setting.digits) == 1:
        before = [g for g in groups if g.digits and g.j <= mention.i]
        return before[-1].digits if before else scene.setting.digits
    behind_it = fingers_behind(scene, mention)
    if behind_it:
        return behind_it
    right_before = next((g for g in groups if g.digits and g.j == mention.i and g.i < g.j), None)
    if right_before is not None:
        return right_before.digits  # 'ring A2 distal third, small A4 complete'
    listed = [g for g in groups if g.digits and not g.tendons and g.i > mention.j and scene.word_before(g.i) == ":"]
    if listed and not any(g.digits and g.i < listed[0].i for g in groups):
        return listed[0].digits  # 'A2 vented 5 mm distally: middle.'
    last = next((p for p in reversed(scene.of("pulley")) if p.i > mention.i and joined(scene, mention, p)), mention)
    listed_of = [g for g in groups if g.digits and 0 < g.i - last.j <= 2 and scene.page.words[last.j] == "of"]
    if last is not mention and listed_of:
        return listed_of[0].digits  # 'both A2 and A4 of the ring'
    beside = [g for g in groups if g.digits and 0 <= g.i - mention.j <= 3]
    if beside and {".", ";"}.isdisjoint(scene.words(mention.j, beside[0].i)):  # not 'A4 whole. middle A2 whole'
        return beside[0].digits
    bare = _BARE_DIGITS.get(scene.next_word(mention.j))
    if bare and not PART_NOUNS & set(scene.words(mention.j + 1, mention.j + 2)):
        return (bare,)
    told = digits_at(scene, None, mention.i)
    several = _in_several(scene, mention)
    if several and len(scene.every_digit) == several:
        return scene.every_digit
    of_the_made = [g for g in groups if g.digits and g.i >= mention.j and made_from(scene, g)]
    if of_the_made and not any(g.digits and g not in of_the_made for g in groups):
        return of_the_made[0].digits  # 'A2 was rebuilt with a slip of FDS in the ring'
    if any(g.digits for g in groups):
        return told
    if several and len(both := _fingers_before(desk, scene, several)) == several:
        return both
    if any(m.value in _THUMB_ONLY for m in scene.of("pulley")):
        return ("thumb",)
    return _known_digits(desk, scene, mention, told) or told


def _fingers_before(desk: Desk, scene: Scene, several: int) -> tuple[str, ...]:
    """'A2 was vented in the middle; in the ring it was kept. A4 was intact in both.': the fingers told of before it."""
    found: dict[str, None] = {}
    before = desk.scene_before(scene)
    while before is not None and before.sentence.block == scene.sentence.block and before.of("pulley"):
        found |= dict.fromkeys(d for g in before.setting.groups for d in g.digits if not g.reference)
        if len(found) >= several:
            break
        before = desk.scene_before(before)
    return tuple(found)


_IN_THAT = [[a, b, c] for a in ("in", "of") for b in ("that", "this") for c in ("finger", "digit")]


def _in_several(scene: Scene, mention: Mention) -> int:
    """'A2 intact in both, A4 vented in the middle', 'both A4 pulleys': of how many fingers a pulley is told, else 0."""
    if any(g.tendons and not made_from(scene, g) for g in scene.setting.groups):
        return 0
    if _told_of_several(scene, mention) and (many := _how_many(scene, mention)):
        return many
    last = scene.sentence.j
    last = next((k for k in range(mention.j, last) if scene.page.words[k] in (",", ".", ";")), last)
    if any(mention.j <= p.i < last and not joined(scene, p, mention) for p in scene.of("pulley")):
        return 0  # 'A1 released in the middle finger and A2 preserved in both'
    words = scene.words(mention.j, last)
    if words[:1] == ["all"] and ":" in words[1:3]:  # 'A1 all four: opened full length', 'A4 all: kept'
        return len(scene.every_digit) if words[1] == ":" else count_of(words[1])
    named = [p for p in scene.of("pulley") if p.i > mention.i and joined(scene, mention, p)]
    behind = scene.words(named[-1].j if named else mention.j, last)
    if behind[:1] == ["of"] and behind[1:2] in (["all"], ["both"]):  # 'C2 and A3 of all three opened'
        return 2 if behind[1] == "both" else count_of(behind[2]) if behind[2:] else 0
    while words[-1:] and words[-1] in _OF_THESE:
        words = words[:-1]
    if words[-2:] in (["in", "both"], ["on", "both"]):
        return 2
    if words[-2:] == ["in", "each"]:
        return len(scene.every_digit)
    if words[-2:-1] == ["x"] and any(m.i == mention.j and m.j == last - 2 for m in scene.of("opened")):
        return count_of(words[-1])  # 'A2 kept x 2', but 'A2 repaired with 5-0 x 3'
    return 3 if words[-3:] in (["in", "all", "three"], ["in", "all", "3"]) else 0


def _told_of_several(scene: Scene, mention: Mention) -> bool:
    """'A4 pulleys', 'A4s', and not 'A2 and A4 pulleys': one pulley of more fingers than one."""
    name = scene.page.words[mention.j - 1]
    noun = scene.next_word(mention.j) == "pulleys"
    listed = any(joined(scene, p, mention) for p in scene.of("pulley") if p.i != mention.i)
    return (noun or _PLURAL_NAME.match(name) is not None) and not listed


def _how_many(scene: Scene, mention: Mention) -> int:
    """'Both A4 pulleys', 'A4s both kept', 'all A2s'; bare 'A4s', 'A4 pulleys' of both fingers where there are two."""
    behind = scene.next_word(mention.j + (scene.next_word(mention.j) == "pulleys"))
    behind = scene.next_word(mention.j + 1) if behind in ("were", "are") else behind
    beside = {scene.word_before(mention.i - (scene.word_before(mention.i) == "the")), behind}
    if "both" in beside:
        return _PAIR
    return len(scene.every_digit) if "all" in beside or len(scene.every_digit) == _PAIR else 0


_PLURAL_NAME = re.compile(r"[ac][1-5]s\Z")
_OF_THESE = frozenset(["of", "them", "these", "the", "fingers", "digits"])


def _all_but(scene: Scene, mention: Mention) -> tuple[str, ...]:
    """'All A2 pulleys were intact except that of the ring': every finger of the note but the one left out."""
    left_out = {d for g in scene.left_out if g.i > mention.j and not g.tendons for d in g.digits}
    many = scene.next_word(mention.j) == "pulleys" or scene.word_before(mention.i) in ("all", "every", "each")
    return tuple(d for d in scene.every_digit if d not in left_out) if many and left_out else ()


def _every_group(scene: Scene, mention: Mention) -> Group | None:
    """Return 'both fingers' where it is said of this pulley: no other pulley or finger stands between."""
    for g in scene.setting.groups:
        if not g.every or g.tendons or g.digits or g.generic:
            continue
        i, j = min(g.i, mention.i), max(g.j, mention.j)
        others = [p for p in scene.of("pulley") if p.i != mention.i and i <= p.i < j and not joined(scene, p, mention)]
        fingers = [d for d in scene.setting.groups if d.digits and i <= d.i < j]
        if not others and not fingers:
            return g
    return None


def _known_digits(desk: Desk, scene: Scene, mention: Mention, told: tuple[str, ...]) -> tuple[str | None, ...]:
    """Return the one digit for which this pulley was told hurt, or told at all where the focus is astray.

    The focus is astray in an addendum, and in a finger that has no cut tendon while another one has.
    """
    of_repair = _digit_of_the_repair(desk, scene, told)
    if of_repair:
        return of_repair
    known = [f for digit in (*DIGITS, None) for f in desk.told_of("pulleys", (digit, mention.value, None))]
    cut = {t.digit for t in desk.cut()}
    first, last = scene.part(mention.i)
    found = {m.value for m in scene.of("opened", "extent") if first <= m.i < last}
    late = scene.sentence.section == "addendum" and not _finger_added(desk, scene)
    astray = late or bool(cut and not cut & set(told) and not of_one_finger(desk, scene))
    deeds = found & DEEDS
    if _sewn_in_focus(desk, told):
        deeds -= {
            "vented",
            "released",
        }  # 'Middle: Tsuge. It passes A2 since A2 was vented.', and A2 of the ring was torn
    mends = bool(deeds) or astray  # 'A2 torn' or 'A2 preserved' behind words on another finger is that finger's
    listed = set(scene.every_digit)
    if astray and cut == listed and len(cut) == 1 and not known and not _just_named_digit(desk, scene):
        return tuple(cut)  # 'The tendons of the ring finger lay whole. ... No triggering at A1, which I did not open.'
    if not late and _headed_by(desk, scene, told):
        return ()  # 'Index. A1 had a nick. ... Middle. Nerves intact. A1 was opened': each paragraph of its own finger
    hurt = [f for f in known if (f.value == "injured" and mends) or (astray and f.entry[0] in cut)]
    digits = tuple(dict.fromkeys(f.entry[0] for f in hurt))
    if len(digits) != 1 or (digits != told and of_one_finger(desk, scene)):
        return ()  # 'INDEX / A2 excised, A4 torn / MIDDLE / A2 torn, A4 excised'
    return digits


def _sewn_in_focus(desk: Desk, told: tuple[str, ...]) -> bool:
    """Tell whether the finger in focus is one whose core suture is told: its pulleys are opened for that repair."""
    return len(told) == 1 and any(desk.has_suture(t) for t in desk.repairable(told))


def _headed_by(desk: Desk, scene: Scene, told: tuple[str, ...]) -> bool:
    """Tell whether the paragraph begins with the finger in focus and nothing else: 'Middle. ...'."""
    first: Scene | None = scene
    while first is not None and (before := desk.scene_before(first)) is not None:
        if before.sentence.block != scene.sentence.block:
            break
        first = before
    named = first.setting.groups[:1] if first is not None else []
    alone = bool(named) and first is not None and first.sentence.j - first.sentence.i <= _LONGEST_HEAD
    return alone and bool(named[0].digits) and not named[0].tendons and named[0].digits == told


_LONGEST_HEAD = 4  # words: 'Middle finger.'


def _digit_of_the_repair(desk: Desk, scene: Scene, told: tuple[str, ...]) -> tuple[str | None, ...]:
    """'I left the nick in the middle finger. A2 was vented to let the repair through': of the finger with a repair."""
    if _REPAIR.isdisjoint(scene.said):
        return ()
    sewn = {t.digit for t, deed in desk.treatments.items() if t.digit and deed in ("repaired", "reinserted", "grafted")}
    here = sewn & set(told) or any(desk.has_suture(t) for t in desk.repairable(told))
    return tuple(sewn) if len(sewn) == 1 and not here else ()


_REPAIR = frozenset(["repair", "join", "tenorrhaphy"])


def _just_named_digit(desk: Desk, scene: Scene) -> bool:
    before = desk.scene_before(scene)
    return before is not None and any(g.digits for g in before.setting.groups)


def _finger_added(desk: Desk, scene: Scene) -> bool:
    """'ADDENDUM. The ring finger was left out ...': an addendum that named a finger before speaks of that finger."""
    before = (s for s in desk.scenes if s.sentence.section == "addendum" and s.sentence.i < scene.sentence.i)
    return any(g.digits for s in before for g in s.setting.groups)


# --- without a name


def _all_annular(desk: Desk, scene: Scene) -> None:
    """'all five annular pulleys were left alone'."""
    for mention in scene.of("pulleys"):
        phrase = scene.words(mention.i, mention.j)
        if mention.value != "annular" or not {"all", "five"} & set(phrase) or not scene.told(mention.i):
            continue
        after = [m for m in scene.of("opened") if m.i >= mention.j and scene.told(m.i)]
        if after and state_of(scene, after[0]) == "intact":
            for digit in _digits(desk, scene, mention, ""):
                for pulley in ANNULAR:
                    _put(desk, scene, digit, pulley, "intact", {}, (mention.i, after[0].j))


def _pronoun(desk: Desk, scene: Scene, words: list[Mention]) -> None:
    """'Released it over its full length', 'Both were kept', 'The distal 4 mm was incised' right after pulleys."""
    words = [m for m in words if "together" not in scene.words(m.i, m.j)]  # 'It came together' is said of the ends
    action = strongest(scene, words)
    if not desk.last_pulleys or scene.sentence.i != desk.last_pulley_end or action is None:
        return
    if not desk.last_pulley_named and state_of(scene, action) == "intact":
        return  # 'It caught at A4. It looks good.'
    if not desk.last_pulley_named and _NOT_OF_LANDMARKS & set(scene.words(action.i, action.j)):
        return  # 'The profundus lay beside A1, frayed. This was cut back 4 mm.'
    first = _past_the_finger(scene)
    opening = set(scene.words(first, min(first + 5, scene.sentence.j)))
    several = any(
        scene.page.words[k] in _PLURAL and scene.word_before(k) not in ("in", "on")  # 'It was intact in both fingers'
        for k in range(first, min(first + 5, scene.sentence.j))
    ) or _each_was(scene, first)
    if {"both", "each"} & opening and len(desk.last_pulleys) == 1 and len(desk.last_pulleys_told) == _PAIR:
        desk.last_pulleys = desk.last_pulleys_told  # 'A2 was a mere edge and A4 was absent. Both were rebuilt'
    a_part = words[0].value in ("vented", "released") and _opens_with_a_part(scene, first)
    pronoun = (words[0].i - first <= 5 and bool(_PRONOUNS & opening)) or _its_part(scene, action)
    pronoun = pronoun or _each_was(scene, first)
    pronoun = pronoun or (desk.last_pulley_named and _opens_with_its_part(scene))
    pronoun = pronoun or _divided_whole(desk, scene, action) or _only_dilated(desk, scene, action)
    tendons = [g for g in scene.setting.groups if g.tendons and not g.generic and not _reason(scene, action, g)]
    if several != (len(desk.last_pulleys) > 1) or not (a_part or pronoun) or (tendons and not several):
        return
    if any(g.j <= action.i for g in tendons):
        return  # 'Ring: FDP and FDS both completely divided'
    if state_of(scene, action) == "repaired" and scene.of("strandword", "stitch"):
        return  # '... back under A2, which is intact. It was repaired with a four-strand cruciate': the tendon
    if state_of(scene, action) == "intact" and not _REST.isdisjoint(opening):
        return  # 'The oblique pulley is half there. The rest of it was kept.'
    if state_of(scene, action) not in SHARED or _nothing_else(desk, scene) or _only_dilated(desk, scene, action):
        _lay_again(desk, scene, action)


def _each_was(scene: Scene, first: int) -> bool:
    """'A2 and A4 were gone. Each was reconstructed with a strip of retinaculum': of both."""
    return scene.page.words[first] == "each" and scene.next_word(first + 1) in ("was", "is", "has", "had")


def _opens_with_a_part(scene: Scene, first: int) -> bool:
    """'The distal 4 mm was incised', and not 'the proximal stump needed a second cut in the palm, closed with 5-0'."""
    spots = range(first, min(first + 5, scene.sentence.j))
    return any(scene.page.words[k] in PARTS and scene.next_word(k + 1) not in _NO_PULLEY for k in spots)


_NO_PULLEY = frozenset(["stump", "stumps", "end", "ends", "tendon", "phalanx", "palm", "wound", "incision", "crease"])
_PAIR = 2
_REST = frozenset(["rest", "remainder", "remnant", "remnants"])


def _divided_whole(desk: Desk, scene: Scene, action: Mention) -> bool:
    """'A1 pulley thick and white. Divided along its whole length.': a deed that opens the sentence, of that pulley."""
    opens = action.i == scene.sentence.i and action.value in OPENINGS and desk.last_pulley_named
    others = scene.of("structure", "sided", "anynerve", "anyartery") or any(g.tendons for g in scene.setting.groups)
    return opens and not others and bool(scene.of("fully"))


def _only_dilated(desk: Desk, scene: Scene, action: Mention) -> bool:
    """'A4 narrow. Dilated with a tube, preserved.', 'A4 dilated. Not cut.': kept is what was stretched to let it by."""
    before = _scene_before(desk, scene)
    if not desk.last_pulley_named or state_of(scene, action) != "intact" or before is None:
        return False
    if any(g.tendons or g.digits for g in scene.setting.groups) or scene.of(
        "structure", "sided", "anynerve", "anyartery"
    ):
        return False
    if action.i == scene.sentence.i:
        return not DILATED.isdisjoint(before.said) and not scene.words(action.j, scene.sentence.j - 1)
    return scene.page.words[scene.sentence.i] in DILATED


def _its_part(scene: Scene, action: Mention) -> bool:
    """'It would have been in the way, so its distal half was excised': a part of what was told of before.

    So it is behind the deed: 'to pass the stump I divided its distal third', 'by the end half of it had been opened'.
    """
    lead = scene.words(max(scene.part(action.i)[0], action.i - 6), action.i)
    behind = scene.words(action.j, action.j + _PART_NEAR)
    ahead = "its" in lead and not PARTS.keys().isdisjoint(lead[lead.index("its") :])
    share = any(lead[k : k + 2] == ["of", "it"] and lead[k - 1] in _SHARES for k in range(1, len(lead)))
    return ahead or share or (behind[:1] == ["its"] and not PARTS.keys().isdisjoint(behind))


_PART_NEAR = 4  # words: 'its most distal third'
_SHARES = frozenset(["half", "third", "quarter", "most", "part"])


def _opens_with_its_part(scene: Scene) -> bool:
    """'Its distal edge had begun to fray, and a strip of 3 mm was cut away': of the pulley told of before."""
    lead = scene.words(scene.sentence.i + 1, scene.sentence.i + 3)
    return scene.page.words[scene.sentence.i] == "its" and not _EDGES.isdisjoint(lead)


_EDGES = frozenset(["edge", "edges", "rim", "margin", "lip", "border"])


def _reason(scene: Scene, action: Mention, group: Group) -> bool:
    """Tell whether a tendon is only why a pulley was opened, or what it was rebuilt from.

    'I vented its distal third because the FDP repair would not pass', 'It was rebuilt from a slip of FDS'.
    """
    between = scene.words(action.j, group.i) if group.i > action.j else []
    rebuilt = action.value == "reconstructed" and not {"from", "with", "using", "of"}.isdisjoint(between)
    return rebuilt or not _WHY.isdisjoint(between)


def _past_the_finger(scene: Scene) -> int:
    """Return the word after the finger that a sentence opens with: 'In the index finger it was excised.'"""
    lead = next((g for g in scene.setting.groups if g.digits and not g.tendons and g.i < g.j), None)
    return lead.j if lead is not None and lead.i - scene.sentence.i <= 2 else scene.sentence.i


def _nothing_else(desk: Desk, scene: Scene) -> bool:
    """Tell whether neither this sentence nor the one before names anything but pulleys."""
    before = _scene_before(desk, scene)
    named = [s.group for s in scene.subjects]
    fingers = all(g is not None and (g.digits or g.every) and not (g.tendons or g.generic) for g in named)
    return fingers and before is not None and not any(s.kind == "tendon" for s in before.subjects)


def _lay_again(desk: Desk, scene: Scene, action: Mention) -> None:
    """Lay down a state of the pulleys of the sentence before."""
    value = state_of(scene, action)
    group = PulleyGroup([action], [value for value, _ in desk.last_pulleys])
    low, high = scene.sentence.i, reach_end(scene, group, action.j)
    if value is None:
        return
    if value == "vented" and in_full(scene, low, high):
        value = "released"
    value, share = _measured(scene, value, low, high, action.j)
    if value == "excised" and not _EDGES.isdisjoint(scene.words(max(low, action.i - 4), action.i)):
        value = "trimmed"  # 'A sliver of its edge was excised'
    fingers = [g.digits for g in scene.setting.groups if g.digits and not (g.tendons or g.reference)]
    for name, digits in desk.last_pulleys:
        for digit in fingers[0] if fingers else digits:  # 'A2 was kept in the ring. In the small it was divided.'
            _put(desk, scene, digit, name, value, share, (action.i, action.j))
