"""Rest that the surgeon ordered in words other than 'immobilisation': no motion, a hand kept still."""

from notereader.reader.desk import Desk
from notereader.reader.rules.whole_note.whole import Span, is_order, order_list
from notereader.reader.scene import Scene

_MEANWHILE = (
    *("meanwhile", "in that time", "in this time", "during that", "during this", "until then", "till then"),
    *("before then", "for that time", "in the meantime", "for this period", "for that period", "is to be permitted"),
    *("in it", "during this time", "before that", "until it comes off", "till it comes off"),
    *("is permitted", "is allowed", "to be permitted", "to be allowed", "throughout"),
)
_DENIES = frozenset(["no", "not", "without", "nil"])
_KEEPS = frozenset(
    ["kept", "keep", "keeps", "stay", "stays", "held", "hold", "remain", "remains", "lies", "lie", "rest"]
)
_WEEKS = frozenset(["week", "weeks", "wk", "wks"])


def ordered_rest(desk: Desk, scene: Scene) -> Span | None:
    """Return the words of 'no motion meanwhile', 'four weeks without movement', 'kept completely still for 3 weeks'.

    'No movement until I say so' sets no rest.
    """
    words, end = scene.page.words, scene.sentence.j
    if _DENIES.isdisjoint(scene.said) and "still" not in scene.said:
        return None
    for k in range(scene.sentence.i, end - 1):
        if words[k] in _DENIES and is_order(desk, scene, k):
            span = _no_motion(scene, k)
            if span is not None:
                return span
        still = words[k + 1 : min(k + 4, end)]
        if words[k] in _KEEPS and "still" in still and is_order(desk, scene, k):
            return k, k + 2 + still.index("still")
    return None


def _no_motion(scene: Scene, k: int) -> Span | None:
    words, end = scene.page.words, scene.sentence.j
    moves = next((n for n in range(k + 1, min(k + 4, end)) if words[n] in order_list("moving")), None)
    if moves is None or {"active", "resisted", "loaded", "heavy", "against"} & set(words[k:moves]):
        return None
    rest = scene.words(moves + 1, min(moves + 8, end))
    n = next((n for n in range(len(rest)) if " ".join(rest[n : n + 4]).startswith(_MEANWHILE)), None)
    if n is not None:
        return k, moves + 2 + n
    first = scene.sentence.i if scene.word_before(k) == "," else scene.part(k)[0]
    before = scene.words(max(first, k - 3), k)  # 'to rest in it for three weeks, without exercises'
    if words[k] == "without" and _WEEKS & set(before):
        return k, moves + 1
    after = [w for w in rest if w not in (",", "_", "x")]
    lasts = bool(_WEEKS & set(after[1:4] if after[:1] == ["for"] else after[1:2]))
    ordered = scene.of("splint") and scene.sentence.section in _ORDERED and words[moves] not in _THERAPY
    return (k, moves + 1) if lasts or ordered else None


_THERAPY = frozenset(["therapy", "physio", "physiotherapy"])  # 'no splint and no therapy are needed'
_ORDERED = frozenset(["instructions", "splint"])
