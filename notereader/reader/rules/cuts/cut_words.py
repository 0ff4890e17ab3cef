"""Whether words say that a tendon was cut, and how far, and not how it was dealt with or what else was cut."""

from itertools import pairwise

from notereader.reader.page import Break, Mention
from notereader.reader.rules.cuts.cut_owners import all_of_them, cut_through, state_after_state
from notereader.reader.rules.cuts.intact_words import tells_whole
from notereader.reader.rules.cuts.parted import attributive
from notereader.reader.rules.cuts.pieces import takes_piece_off
from notereader.reader.rules.strangers import has_strange_subject, labelled_stranger
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_IS_DEED_WORDS = word_list("tendons", "is_deed_words")
_BARE_IS_CUT_WORDS = word_list("tendons", "bare_is_cut_words") | {""}
_BARE_IS_CUT_WORDS_2 = word_list("tendons", "bare_is_cut_words_2") | {""}
_BARE = frozenset(
    [
        "all the way",
        "through",
        "out",
        "off",
        "gone",
        "right across",
        "clean across",
        "right through",
        "clean through",
        "cleanly through",
        "straight through",
        "across",
    ]
)
_BARE_BETWEEN = word_list("tendons", "bare_between")
_NOT_A_CUT = word_list("tendons", "not_a_cut")
_SHARE_LEADS = word_list("tendons", "share_leads")
_WHERE = frozenset(["above", "at", "in", "over", "proximal", "just", "near", "on"])
_WHOLLY = frozenset(
    [
        *("completely", "all of it", "fully", "entirely", "totally", "throughout", "all the way"),
        *("all the way through", "right through", "all through", "the whole way through", "whole way through"),
    ]
)
_PIECES = word_list("tendons", "pieces")
# 'A nick not worth a stitch', 'nick not repaired': the cut itself is not denied.
_LEFT_SO = [["not", w] for w in ("worth", "repaired", "sutured", "sewn", "stitched", "needing", "requiring")]


def _counts_what_follows(scene: Scene, mention: Mention) -> bool:
    """'The FPL was repaired in two strands', 'sewn in two stages': how many, and not how it was cut."""
    return scene.page.words[mention.j - 1] in ("two", "half") and scene.next_word(mention.j) in _COUNTED


_COUNTED = frozenset(["strand", "strands", "-", "stage", "stages", "layers", "rows", "steps", "bites", "passes"])


def of_no_tendon(scene: Scene, mention: Mention) -> bool:
    """Tell whether words for a cut, or for none, are said of a wound, a suture, a gap or a share told elsewhere."""
    word = " ".join(scene.words(mention.i, mention.j))
    if word in ("nick", "nicks") and _way_in(scene, mention, word):
        return True
    if word in ("cut off", "cut away") and _cuts_off_another(scene, mention):
        return True
    if mention.value == "complete" and _of_what_was_left(scene, mention):
        return True
    if word == "100 %" and _in_brackets_of_another(scene, mention):
        return True
    if _counts_what_follows(scene, mention):
        return True
    if labelled_stranger(scene, mention.i) or _of_a_suture(scene, mention, word):
        return True  # 'Vincula: intact'
    if scene.next_word(mention.j) == "by" and any(m.i <= mention.i < m.j for m in scene.of("gap")):
        return True  # 'on traction it parted by a millimetre': a gap
    if word in _WHOLLY and _behind_intact(scene, mention):
        return True  # 'had been spared completely', 'FDS intact, all of it'
    if "respectively" in scene.said and _shares_dealt_out(scene, mention):
        return True
    return attributive(scene, mention)


def tells_how_far(scene: Scene, mention: Mention) -> bool:
    """Tell whether words for a cut, or for none, say so of the tendon they belong to."""
    word = " ".join(scene.words(mention.i, mention.j))
    if word == "gone" and _only_moved(scene, mention):
        return False
    if word in _BARE and not (_told_of_a_cut(scene, mention) or _bare_is_cut(scene, mention)):
        return False
    if word in ("complete", "completely") and _completes_another(scene, mention):
        return False
    if mention.value == "intact":
        return tells_whole(scene, mention)
    if scene.negated(mention.i, mention.j) and scene.words(mention.j, mention.j + 2) not in _LEFT_SO:
        return False
    return mention.value != "complete" or not _short_of_complete(scene, mention, word)


def _in_brackets_of_another(scene: Scene, mention: Mention) -> bool:
    """'Cut: FCR, FPL (40 %), median n. (100 %)': the share of the nerve right before its bracket."""
    named = scene.of("structure", "sided", "anynerve", "anyartery")
    return scene.word_before(mention.i) == "(" and any(m.j == mention.i - 1 for m in named)


def _way_in(scene: Scene, mention: Mention, word: str) -> bool:
    """'Through a 1 cm nick above the wrist', 'harvested through two nicks': a cut in the skin."""
    measured = word == "nick" and scene.word_before(mention.i) in ("cm", "mm")
    if measured and scene.next_word(mention.j) in _WHERE:
        return True
    return "through" in scene.words(max(scene.sentence.i, mention.i - 3), mention.i)


def _of_what_was_left(scene: Scene, mention: Mention) -> bool:
    """'FPL 90 % through. ... The last fibres were cut across and squared off': by the surgeon, and no finding."""
    lead = [w for w in scene.words(max(scene.sentence.i, mention.i - _LEFT), mention.i) if w not in ("was", "were")]
    return lead[-1:] != [] and lead[-1] in _FIBRES and lead[-2:-1] != [] and lead[-2] in _LAST


_LEFT = 4  # words
_FIBRES = frozenset(["fibers", "fibres", "bridge", "strand", "strands"])
_LAST = frozenset(["last", "remaining", "residual", "few", "intact"])


def _cuts_off_another(scene: Scene, mention: Mention) -> bool:
    """'The loose fibres were cut off', 'the tape was cut off'."""
    near = scene.words(max(scene.sentence.i, mention.i - 5), mention.i)
    if not _PIECES.isdisjoint(near) or takes_piece_off(scene, mention):
        return True
    return has_strange_subject(scene, mention.i) or _of_jewellery(scene, mention)


def _of_a_suture(scene: Scene, mention: Mention, word: str) -> bool:
    """'Epitendinous left out', 'sutures enter 1.2 cm from the division', '..., tendon repair in two'."""
    before = scene.word_before(mention.i)
    if word == "out":
        return before == "left"
    if word == "in two":
        return before in ("repair", "repairs", "suture", "sutures", "surgery")
    return word == "division" and scene.words(max(scene.sentence.i, mention.i - 2), mention.i) == ["from", "the"]


def _only_moved(scene: Scene, mention: Mention) -> bool:
    """'The proximal end had gone to the palm'."""
    moved = scene.page.words[mention.i - 1] in ("has", "had", "have", "was")
    return moved and not _where_gone(scene, mention)


def _told_of_a_cut(scene: Scene, mention: Mention) -> bool:
    """'The knife went through', 'FDP  [x] through  [ ] part': more than a bare 'through'."""
    if any(m.j <= mention.i for m in scene.of("agent")) and cut_through(scene, mention):
        return True
    if all_of_them(scene, mention) or state_after_state(scene, mention):
        return True
    first = mention.i - (scene.word_before(mention.i) == "all")
    return scene.words(first - 2, first) in _TICKED


_TICKED = (["x", "]"], ["x", ")"], ["v", "]"], ["v", ")"])


def _completes_another(scene: Scene, mention: Mention) -> bool:
    """'Completely intact', 'excised completely': how far another deed or state goes; not 'complete   not repaired'."""
    if mention.j < scene.sentence.j and scene.page.breaks[mention.j] == Break.COLUMN:
        return False
    if scene.next_word(mention.j) in _NOT_A_CUT:
        return True
    if any(m.i == mention.j and m.value == "intact" for m in scene.of("extent")):
        return True
    return any(d.j == mention.i and d.value in ("excised", "trimmed", "repaired") for d in scene.of("deed"))


def _short_of_complete(scene: Scene, mention: Mention, word: str) -> bool:
    """Tell whether what reads as cut through is the surgeon's doing, a likeness, or has a share beside it."""
    if _is_deed(scene, mention, word) or _is_likeness(scene, mention) or _partial_before_name(scene, mention, word):
        return True
    return _share_behind(scene, mention) or _share_before(scene, mention)


def _partial_before_name(scene: Scene, mention: Mention, word: str) -> bool:
    """'Partial FDS division', 'incomplete transection' with the tendon's name between: the noun alone is no more."""
    named = next((g.i for g in scene.setting.groups if g.tendons and g.j == mention.i), None)
    if named is None or word not in _CUT_NOUNS:
        return False
    return any(m.value == "partial" and m.j == named for m in scene.of("extent"))


_CUT_NOUNS = frozenset(["division", "transection", "severance", "section", "divisions", "transections"])


def _of_jewellery(scene: Scene, mention: Mention) -> bool:
    """'His ring was cut off in the emergency room'."""
    before = scene.words(max(scene.sentence.i, mention.i - 4), mention.i)
    return any(a in ("his", "her", "wedding", "a") and b in ("ring", "band", "watch") for a, b in pairwise(before))


def _behind_intact(scene: Scene, mention: Mention) -> bool:
    """Tell whether a word that means the whole of a thing closes a statement that it is whole."""
    end = mention.i - (scene.word_before(mention.i) in (",", "-", "("))
    return any(m.value == "intact" and m.j == end for m in scene.of("extent", "opened"))


def _shares_dealt_out(scene: Scene, mention: Mention) -> bool:
    """'FDS of both cut 60% and 100% respectively': the shares of its own part of the sentence tell how far."""
    first, last = scene.part(mention.i)
    several = sum(q.unit == "%" for q in scene.quantities) > 1
    return several and any(q.unit == "%" and first <= q.i < last for q in scene.quantities)


def _where_gone(scene: Scene, mention: Mention) -> bool:
    """'The same two tendons had gone at a more distal level', 'the ulnar slip had gone as well': cut there, or too."""
    lead = scene.words(max(scene.sentence.i, mention.i - 3), mention.i - 1)
    named = lead[-1:] != [] and lead[-1] in _GOES
    behind = scene.words(mention.j, mention.j + 2)
    return named and (behind[:1] in (["at"], ["too"], ["also"], ["completely"]) or behind == ["as", "well"])


_GOES = frozenset(["tendons", "tendon", "flexors", "profundus", "superficialis", "fdp", "fds", "slip", "slips"])


def _bare_is_cut(scene: Scene, mention: Mention) -> bool:
    """Tell whether a bare 'through' says that a tendon was cut: it must stand right after the tendon."""
    before = [s for s in scene.subjects if s.j <= mention.i and s.kind == "tendon"]
    if not before:
        return False
    between = scene.words(before[-1].j, mention.i)
    if len(between) > 3 or any(w not in _BARE_BETWEEN and not w.startswith("..") for w in between):
        return False
    after = scene.next_word(mention.j)
    if scene.words(mention.i, mention.j)[-1:] in (["through"], ["gone"]):
        return after in _BARE_IS_CUT_WORDS_2
    return after in _BARE_IS_CUT_WORDS


def _is_deed(scene: Scene, mention: Mention, word: str) -> bool:
    """'divided' can be the surgeon's doing: 'the FDS slip was divided to make room'."""
    if word not in ("divided", "out", "off", "cut clean", "cut across"):
        return False
    after = scene.words(mention.j, mention.j + 4)
    return len(after) > 1 and after[0] == "to" and after[1] in _IS_DEED_WORDS


def _is_likeness(scene: Scene, mention: Mention) -> bool:
    """'treated as a complete division' says what it was not."""
    before = scene.words(max(scene.sentence.i, mention.i - 3), mention.i)
    return "as" in before[:-1] and set(before[before.index("as") + 1 :]) <= {"a", "an", "the", "if", "though"}


def _share_behind(scene: Scene, mention: Mention) -> bool:
    """'Divided in its radial half', 'cut through a third of its width': not all of it."""
    behind = [m for m in scene.of("fraction") if 0 <= m.i - mention.j <= 4]
    between = scene.words(mention.j, behind[0].i) if behind else []
    return bool(behind) and _SHARE_LEADS.issuperset(between)


def _share_before(scene: Scene, mention: Mention) -> bool:
    """'Some 60 percent of the profundus had been severed', 'a third of the FDP was divided'."""
    first, _ = scene.part(mention.i)
    ends = [q.j for q in scene.quantities if q.unit == "%" and (q.high or 100) < 100]
    if scene.word_before(mention.i) == "-" and any(m.j == mention.i - 1 for m in scene.of("fraction")):
        return True  # 'the half-section of the superficialis'
    if mention.i in ends and not scene.page.words[mention.i].startswith("complete"):
        return True  # 'FDS 30% division'
    halved = scene.page.words[mention.i] != "gone"  # 'with half of the FDS gone': excised
    ends += [m.j - (halved and scene.page.words[m.j - 1] == "of") for m in scene.of("fraction")]  # 'half of'
    leads = [k for k in ends if first <= k < mention.i and scene.page.words[k] == "of"]
    return any(0 < g.i - k <= 4 and g.j <= mention.i for k in leads for g in scene.setting.groups if g.tendons)


def of_trimming(scene: Scene, mention: Mention) -> bool:
    """'FDS not cut back', 'the ends were not cut down': what was not trimmed says of no tendon that it is whole."""
    return scene.page.words[mention.j - 1] in ("cut", "pared") and scene.next_word(mention.j) in _TRIMMED_OFF


_TRIMMED_OFF = frozenset(["back", "down", "away", "off", "short", "out"])
