"""Words of bulk that tell of no repair that it is bulky or slim: 'bulk acceptable', 'slid with no bunching'."""

from notereader.reader.page import Break, Mention
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_ACCEPTED = word_list("quality", "accepted_bulk")
_LEADS = word_list("quality", "leads_to_accepted")
_RAN = word_list("quality", "ran_with")
_NEAR = 8  # words
_BEFORE = 6  # words of what bulk is feared for
_TO_PASS = frozenset(["allow", "admit", "let", "accommodate", "pass"])


def only_spoken_of(scene: Scene, mention: Mention, word: str) -> bool:
    """Tell whether bulk is only accepted, compared, feared, a reason, or a label that nobody answered."""
    if _accepted(scene, mention) or _as_it_ran(scene, mention) or _why_none(scene, mention):
        return True
    before, after = scene.word_before(mention.i), scene.next_word(mention.j)
    less = mention.value == "present" and before == "less"
    if less and "than" in scene.words(mention.j, mention.j + 3):
        return True  # 'less bulky than I feared' is not bulky, and not slim either
    if before == "too" and after == "for":
        return True
    if mention.value == "present" and _taken_down(scene, mention):
        return True
    if scene.answer(mention.j) == "":
        return True
    if word != "bulk":
        return False
    if before in ("additional", "extra", "more", "added", "further"):
        return True  # 'the additional bulk was not thought justified'
    if not _TO_PASS.isdisjoint(scene.words(max(scene.sentence.i, mention.i - 3), mention.i)):
        return True  # 'to allow the bulk of the repairs through, A2 was vented'
    opens = mention.i == scene.sentence.i or scene.page.breaks[mention.i] >= Break.LINE
    if opens and after in ("", ".", ";"):
        return True  # 'Bulk ***.': a blank nobody filled in
    return _only_feared(scene, mention)  # 'none round the ring, where it would only add bulk'


def _accepted(scene: Scene, mention: Mention) -> bool:
    """'Bulk: acceptable', 'the bulk of the repair was tolerable': there is some, and how much nobody says."""
    if scene.page.words[mention.j - 1] != "bulk":
        return False
    k = mention.j
    while k < scene.sentence.j and scene.page.words[k] in _LEADS:
        k += 1
    return scene.next_word(k) in _ACCEPTED and scene.next_word(k + 1) in ("", ".", ",", ";", "and")


def _as_it_ran(scene: Scene, mention: Mention) -> bool:
    """'It slid nicely under the oblique with no bunching': nothing caught, and no girth is told."""
    if not scene.page.words[mention.j - 1].startswith("bunch"):
        return False
    lead = scene.words(max(scene.sentence.i, mention.i - _NEAR), mention.i)
    return not _RAN.isdisjoint(lead)


def _why_none(scene: Scene, mention: Mention) -> bool:
    """'NO epitendinous (too bulky)', 'no peripheral stitch as it would be bulky': why none was put, and no finding."""
    before = [m for m in scene.of("role") if m.value == "peripheral" and m.j <= mention.i and scene.negated(m.i, m.j)]
    between = scene.words(before[-1].j, mention.i) if before else []
    return bool(before) and not _REASONS.isdisjoint(between) and _WHY.issuperset(between)


_REASONS = frozenset(["(", "too", "as", "because", "since", "would"])
_WHY = _REASONS | {
    ",",
    "-",
    "suture",
    "stitch",
    "run",
    "it",
    "be",
    "been",
    "have",
    "was",
    "rather",
    "made",
    "for",
    "repair",
}


def _taken_down(scene: Scene, mention: Mention) -> bool:
    """'Took 2 mm off the bulge', 'I shaved the lump down': a lump that did not stay."""
    lead = [w for w in scene.words(max(scene.sentence.i, mention.i - 6), mention.i) if w != "the"]
    return lead[-1:] == ["off"] and not _TAKES_OFF.isdisjoint(lead)


_TAKES_OFF = frozenset(["took", "taken", "takes", "shaved", "pared", "trimmed"])


def _only_feared(scene: Scene, mention: Mention) -> bool:
    """'It would only add bulk', 'I stayed with four for fear of bulk', 'fearing bulk': none is told."""
    lead = scene.words(max(scene.sentence.i, mention.i - _BEFORE), mention.i)
    near = lead[-2:] if lead[-1:] == ["of"] else lead[-1:]
    if not _FEARS.isdisjoint(near):
        return True
    return not {"would", "might", "could"}.isdisjoint(lead) and not {"add", "adding", "mean"}.isdisjoint(lead)


_FEARS = frozenset(["fear", "fears", "fearing", "feared", "afraid", "wary", "risk", "dread"])
