"""What was trimmed or excised: the tendon itself, its flap, or only its ends, a suture, what went before a repair."""

from notereader.reader.desk import Desk
from notereader.reader.page import Mention, Quantity
from notereader.reader.rules.cuts.trimming import NO_END_PIECE, hurt_over
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_FLAP = word_list("tendons", "flap")
WAS = frozenset(["was", "is", "were", "are", "still", "remained", "had", "found", "seen", "to", "be", "all"])
SEWN_WITH = frozenset(["suture", "sutures", "stitch", "stitches", "thread"])
AT_ITS_DEED = 3  # words: 'repair of the FDP'


def trims_tendon(scene: Scene, mention: Mention) -> bool:
    """Ends trimmed back before a repair are no 'trimmed' tendon."""
    part = set(scene.words(max(scene.sentence.i, mention.i - 3), min(scene.sentence.j, mention.j + 3)))
    sentence = set(scene.words(scene.sentence.i, scene.sentence.j))
    if sentence & {"ends", "stumps", "stump"} and not sentence & _FLAP:
        return False
    first, last = scene.part(mention.i)
    lengths = [q.i for q in scene.quantities if q.unit == "mm" and first <= q.i < last]
    if any(q.unit == "mm" and q.i >= mention.i and q.i - mention.j <= 3 for q in scene.quantities):
        return False
    if any(0 < mention.i - k <= 8 for k in lengths) and not sentence & _FLAP:
        return False  # 'four millimetres of FDP trimmed altogether'
    return not part & {"strand", "strands", "skin", "knot", "needle", "knots"} and scene.next_word(mention.j) not in (
        "suture",
        "sutures",
    )


def trims_ends(scene: Scene, mention: Mention) -> bool:
    """'from each stump 2.5 mm are resected': the ends were trimmed, the tendon was not taken out."""
    first = max(scene.sentence.i, mention.i - 8, _own_clause(scene, mention))
    behind = scene.words(mention.j, min(scene.sentence.j, mention.j + 6))
    if "leaving" in behind[:3]:
        return False  # 'FDP excised, leaving 1 cm of stump on the phalanx': all but the stump
    near = {*scene.words(first, mention.j), *(behind[: behind.index(",")] if "," in behind else behind)}
    if "discarded" in scene.words(mention.i, mention.j) or _stumps_taken_out(scene, mention):
        return False
    told = [q for q in scene.quantities if q.unit == "mm" and not hurt_over(scene, q)]
    lengths = [q.j - 1 for q in told if (q.high or q.low or 0) < NO_END_PIECE]
    of_each = any(0 < mention.i - k <= 9 and "of" in scene.words(k, mention.i) for k in lengths)
    return (
        bool(near & {"stump", "stumps", "ends", "end", "edges"})
        or of_each
        or _of_a_piece(scene, mention)
        or any(_last_piece(scene, q, mention) for q in told)
        or any(abs(k - mention.i) <= 4 or _of_a_length(scene, k, mention.i) for k in lengths)
    )


def _of_a_piece(scene: Scene, mention: Mention) -> bool:
    """'The crushed piece of FPL was cut away', 'the mangled bit of the FDP was resected': no more than that."""
    lead = next((g for g in reversed(scene.setting.groups) if g.tendons and g.j <= mention.i), None)
    before = scene.words(max(scene.sentence.i, lead.i - _SHORT_LEAD), lead.i) if lead is not None else []
    before = before[: len(before) - (before[-1:] == ["the"])]
    between = scene.words(lead.j, mention.i) if lead is not None else []
    bad = before[-2:-1] != [] and before[-2] in _PIECES_OF and before[-1] == "of" and not _BAD.isdisjoint(before[:-2])
    return bad and _WAS.issuperset(between)


_SHORT_LEAD = 5  # words: 'the crushed piece of the'
_PIECES_OF = frozenset(["piece", "part", "bit", "portion", "segment", "stretch"])
_BAD = frozenset(["crushed", "frayed", "mangled", "bruised", "ragged", "torn", "shredded", "damaged", "contused"])
_WAS = frozenset(["was", "were", "then", "had", "been", "has", "is", "being"])


def _of_a_length(scene: Scene, k: int, i: int) -> bool:
    """'After 2 mm in all had been removed they held a suture': nothing stands between the length and the deed."""
    return k < i and _IN_ALL.issuperset(scene.words(k + 1, i))


_IN_ALL = frozenset(
    ["in", "all", "total", "altogether", "of", "it", "had", "have", "has", "been", "was", "were", "to", "be"]
)


def _own_clause(scene: Scene, mention: Mention) -> int:
    """'Ends debrided, FDS excised': return where the clause of the tendon right before the deed begins, else 0."""
    beside = next((g for g in scene.setting.groups if g.tendons and 0 <= mention.i - g.j <= 1), None)
    opens = beside is not None and scene.word_before(beside.i) in (",", ";", ".", "-", ">")
    return beside.i if beside is not None and opens else 0


def _stumps_taken_out(scene: Scene, mention: Mention) -> bool:
    """'The superficialis stumps were stuck in scar and were removed': all that was left of a tendon not sewn."""
    lead = next((g for g in reversed(scene.setting.groups) if g.tendons and g.j <= mention.i), None)
    noun = scene.next_word(lead.j) if lead is not None else ""
    whole = lead is not None and (noun in _REMAINS or (lead.tendons == ("FDS",) and noun == "stumps"))
    lengths = any(q.unit == "mm" for q in scene.quantities)
    sewn = any(d.value == "repaired" for d in scene.of("deed"))
    return whole and not (lengths or sewn or scene.of("ends"))


_REMAINS = frozenset(["remnant", "remnants", "remains", "remainder"])


def _last_piece(scene: Scene, q: Quantity, mention: Mention) -> bool:
    """'The last 2 mm was frayed and I removed it': a piece of the end."""
    small = (q.high or 0) < NO_END_PIECE and scene.word_before(q.i) in ("last", "final", "terminal", "distal", "very")
    return small and 0 < mention.i - q.j <= _NEAR_PIECE and scene.next_word(mention.j) in ("it", "this", "that", "them")


_NEAR_PIECE = 7  # words


def takes_suture_out(scene: Scene, mention: Mention) -> bool:
    """'The second Kessler was started and taken out again': a suture was removed, not its tendon."""
    first, _ = scene.part(mention.i)
    if any(g.tendons and 0 <= g.i - mention.j <= 1 for g in scene.setting.groups):
        return False  # 'sewn with 4-0 Prolene, and excised the ulnar slip'
    if scene.word_before(mention.i - (scene.word_before(mention.i) in ("was", "were"))) in SEWN_WITH:
        return True  # 'and that suture was removed'
    if scene.word_before(mention.i) == "it" and first > scene.sentence.i:
        first = scene.part(first - 1)[0]  # 'started with 3-0 Prolene, it cut out, replaced by 4-0 Ethibond'
    threads = [m for m in scene.of("stitch", "material", "strandword", "knotword") if first <= m.i and m.j <= mention.i]
    tendons = [g for g in scene.setting.groups if first <= g.i and g.j <= mention.i and g.tendons]
    return bool(threads) and not (tendons and tendons[-1].i > threads[-1].i)


def of_a_stitch(scene: Scene, mention: Mention) -> bool:
    """'A modified Kessler and a cruciate, but the first tore out, so we took it out': the stitch, not the tendon."""
    if not {"it", "them"} & set(scene.words(mention.i, mention.j)):
        return False
    before = [m for m in scene.of("stitch", "strandword") if m.j <= mention.i]
    named = [g for g in scene.setting.groups if g.tendons and g.j <= mention.i and g.i > before[-1].i] if before else []
    return bool(before) and not named and not scene.of("slip")


def before_repair(scene: Scene, mention: Mention) -> bool:
    """'repaired after minor resection', 'debrided very lightly and then repaired': what went before the repair."""
    before = scene.words(max(scene.sentence.i, mention.i - 3), mention.i)
    ahead = next((d for d in scene.of("deed") if d.value == "repaired" and 0 < d.i - mention.j <= 8), None)
    between = scene.words(mention.j, ahead.i) if ahead is not None else []
    if ahead is not None and "," in between and _THEN.issuperset(between) and not _sews_another(scene, ahead):
        return True  # 'FDP - tags trimmed, repaired with 4/0 Prolene', 'frayed fibres pared away, then sutured'
    if not {"then", "and"}.isdisjoint(between) and {"not", "nothing", "no", ";", ".", ","}.isdisjoint(between):
        return not any(g.tendons for g in scene.setting.groups if ahead is not None and mention.j <= g.i < ahead.i)
    led = not {"after", "following"}.isdisjoint(before)
    return led and any(d.value == "repaired" and d.j <= mention.i for d in scene.of("deed"))


_THEN = frozenset([",", "then", "and", "off", "away", "back"])


def _sews_another(scene: Scene, deed: Mention) -> bool:
    """'Flap trimmed, sutured the ulnar nerve', '..., repair of the FDP': what is named behind a deed."""
    kinds = ("tendon", "digit", "pulley", "structure", "sided", "anynerve", "anyartery")
    near = (m.i - deed.j for m in scene.of(*kinds))
    return any(0 <= n <= AT_ITS_DEED for n in near)


def sewn_next(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'Ring FDP: edges tidied. Modified Kessler, two strands.': its core is told right behind, without a name."""
    after = desk.scene_after(scene)
    if mention.j < scene.sentence.j - 1 or after is None or after.sentence.block != scene.sentence.block:
        return False
    return not after.subjects and bool(after.of("stitch")) and bool(after.of("strandword", "material"))
