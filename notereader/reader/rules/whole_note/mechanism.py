"""How the injury came about: the thing that hurt or the way a tendon gave way, told in story, lists or body."""

from notereader.reader.desk import Desk
from notereader.reader.page import Break, Mention
from notereader.reader.reasons import Reason
from notereader.reader.rules.whole_note.whole import NOWHERE, case_list, lay
from notereader.reader.scene import Scene

_STORY_FIRST = {"indication": 0, "mechanism": 0, "injury_date": 0, "diagnosis": 1, "procedure": 2}
_MARKS = frozenset([",", ".", ";", "", "("])


def mechanism(desk: Desk) -> None:
    """Find how the injury came about, in the story, the diagnosis or the title."""
    found: list[tuple[int, Scene, Mention]] = []
    for scene in desk.having("mechanism"):
        section = scene.sentence.section
        rank = _STORY_FIRST.get(section, 3)
        if section == "admin" and scene.of("digit", "side"):
            rank = 2  # 'Re: man of 45, left thumb, glass door'
        elif section in case_list("not_mechanism_sections") or (rank == 3 and not _tells_story(scene)):
            continue
        found += [(rank, scene, m) for m in scene.of("mechanism") if _is_mechanism(desk, scene, m)]
    torn = [(_STORY_FIRST.get(s.sentence.section, 3), s, m) for s in desk.saying(_TORN.keys()) for m in _torn_tendon(s)]
    torn = [f for f in torn if _is_mechanism(desk, f[1], f[2])]
    found += [f for f in torn if f[1].header and f[2].value == "rupture" and not _names_injury(found)]
    found = found or ([] if _cut_by_something(desk) else torn)
    if not found:
        return
    chosen = min(_firmest(found), key=lambda f: (f[0], f[2].i))[2]
    lay(desk, "mechanism", chosen, [(s, m) for _, s, m in found], "mechanism named")


def _torn_tendon(scene: Scene) -> list[Mention]:
    """'Rupture of a zone II repair', 'the tendon had ruptured completely', 'I found the profundus avulsed'."""
    if scene.sentence.section in case_list("not_mechanism_sections"):
        return []
    words = [k for k in range(scene.sentence.i, scene.sentence.j) if scene.page.words[k] in _TORN]
    given_way = [k for k in words if scene.words(k - 2, k) in (["repair", "had"], ["repair", "has"], ["suture", "had"])]
    told = [] if scene.kinds.isdisjoint(("tendon", "generic")) else [k for k in words if scene.told(k)]
    found = sorted({*told, *given_way})  # 'the previous repair had ruptured'
    return [Mention("mechanism", _TORN[scene.page.words[k]], k, k + 1) for k in found]


_TORN = {
    "rupture": "rupture",
    "ruptured": "rupture",
    "popped": "rupture",
    "avulsed": "avulsion",
    "avulsion": "avulsion",
}


def _names_injury(found: list[tuple[int, Scene, Mention]]) -> bool:
    """Tell whether a title or diagnosis names how it came about: 'crush injury' beside 'FDP rupture'."""
    return any(s.header and {"injury", "laceration"} & set(s.words(m.i, m.j + 1)) for _, s, m in found)


def _cut_by_something(desk: Desk) -> bool:
    """'Slashed her palm on a ...', 'trapped his finger in a ...': things the vocabulary lacks, told by their verb."""
    for scene in desk.scenes:
        i, j = scene.sentence.i, scene.sentence.j
        if scene.sentence.section not in ("indication", "mechanism", "injury_date") and not _tells_story(scene):
            continue
        for k in range(i, j - 3):
            value = _verb_of(scene.page.words[k])
            if not value or desk.page.standing[k] not in ("", "story") or scene.next_word(k + 1) in _TRIMS:
                continue
            if scene.word_before(k) == "%":
                continue  # '20% cut on the radial edge' tells of a tendon
            leads = case_list("cut_by") if value == "sharp" else case_list("crushed_by")
            by = next((m for m in range(k + 1, min(k + 9, j - 1)) if scene.page.words[m] in leads), None)
            if by is not None and not any(m.kind == "tendon" for m in scene.mentions):
                span = (k, min(by + 4, j))
                reason = Reason("thing_unnamed")
                desk.add(scene, "operation", NOWHERE, "mechanism", value, [span], "hurt by a thing", reason)
                return True
    return False


def _is_mechanism(desk: Desk, scene: Scene, m: Mention) -> bool:
    if (
        desk.page.standing[m.i] not in ("", "story", "question") and scene.word_before(m.i) not in ("had", "has")
    ) or scene.negated(m.i, m.j, 2):
        return False
    if is_no_thing(scene, m):
        return False
    if scene.next_word(m.j) in case_list("trades") or (m.value == "bite" and _bites_of_a_stitch(scene, m)):
        return False
    return m.value != "rupture" or not case_list("risk") & set(scene.words(scene.sentence.i, scene.sentence.j))


_LIKENED = frozenset(["sharpened", "toothed", "like", "shaped", "ground", "honed", "edged", "style"])
_TRIMS = frozenset(["back", "to", "short", "away", "off", "down", "flush"])


def _verb_of(word: str) -> str:
    if word in case_list("cutting"):
        return "sharp"
    return "crush" if word in case_list("crushing") else ""


def is_no_thing(scene: Scene, m: Mention) -> bool:
    """'I saw him in clinic', 'both stumps were crushed', 'a wire was passed': seeing, a state of the ends, a tool."""
    word = " ".join(scene.words(m.i, m.j))
    if word == "saw" and m.i == scene.sentence.i and scene.page.breaks[m.j : m.j + 1] == [Break.COLUMN]:
        return True  # 'Saw    old suture in the stump' is a label
    if word == "saw":
        return scene.word_before(m.i) in ("i", "he", "she", "we", "they", "who", "and", "it", "you", "him")
    if scene.next_word(m.j) == "-" and scene.next_word(m.j + 1) in _LIKENED:
        return True  # 'a grinder-sharpened key', 'a saw-toothed lid'
    if word in case_list("tools"):
        return bool(case_list("tool_work") & set(scene.words(scene.sentence.i, scene.sentence.j)))
    if word == "ran over":
        return any(t.j == m.i for t in scene.of("tendon"))  # 'FCR ran over the same edge'
    return word == "crushed" and bool(scene.of("endword", "extent"))


def _bites_of_a_stitch(scene: Scene, m: Mention) -> bool:
    """'~1 cm bites each side', 'epineurial bites': what a needle takes."""
    if scene.page.words[m.j - 1] not in ("bite", "bites") or m.j - m.i > 1:
        return False
    if "mm" in scene.words(scene.sentence.i, scene.sentence.j) or any(q.unit == "mm" for q in scene.quantities):
        return True
    return bool(scene.of("material", "stitch", "pattern", "tendon", "strandword"))


def _firmest(found: list[tuple[int, Scene, Mention]]) -> list[tuple[int, Scene, Mention]]:
    """A rupture goes before all; a saw, a crush or a bite says more than 'broken' told in one breath with it."""
    ruptured = [f for f in found if f[2].value == "rupture"]
    others = [f for f in found if f[2].value not in ("rupture", "sharp")]
    if all(f[1].page.words[f[2].i] == "felt" for f in ruptured) and any(f[2].value == "avulsion" for f in others):
        ruptured = []  # 'grabbed a shirt and felt a snap'
    if ruptured and not _names_injury(others):
        return ruptured
    found = others if ruptured else [f for f in found if f[2].value != "rupture"] or found
    special = [f for f in found if f[2].value != "sharp"]
    special = [f for f in special if f[0] <= 2] or special
    if not special:
        return found
    firm = [f for f in special if " ".join(f[1].words(f[2].i, f[2].j)) not in case_list("weak_mechanism")]
    told = {id(f[1]) for f in special}
    return firm or [f for f in found if f[2].value == "sharp" and (f[0] <= 1 or id(f[1]) in told)] or special


def _tells_story(scene: Scene) -> bool:
    """Outside the story a mechanism counts only in a sentence that tells one, or at the start of the note."""
    words = scene.said
    if scene.sentence.block <= 1 and any(m.kind in ("digit", "side", "hurt", "zone") for m in scene.mentions):
        return True
    i, j = scene.sentence.i, scene.sentence.j
    if scene.sentence.block <= 2 and any(d.i >= i and d.j <= j for d in scene.page.dates):
        return True
    if _told_early(scene, words) or _cut_by_the_thing(scene):
        return True
    return len(words & case_list("story")) >= 2


def _told_early(scene: Scene, words: frozenset[str]) -> bool:
    """'Bench saw, 3 days back.', 'She had fallen on to a bottle', 'Slate edge 15/10/2032', before the operation."""
    i, j = scene.sentence.i, scene.sentence.j
    if 2 * i >= len(scene.page.words) or scene.page.standing[i] not in ("", "story") or words & case_list("surgical"):
        return False
    if any(m.i == i and scene.next_word(m.j) in _MARKS for m in scene.of("mechanism")):
        return True
    dated = any(d.i >= i and d.j <= j for d in scene.page.dates)
    return dated or bool(words & case_list("hurting"))


def _cut_by_the_thing(scene: Scene) -> bool:
    """'The A2 was cut by the original glass', 'already slit by the knife': what cut is told in the body."""
    for m in scene.of("mechanism"):
        before = scene.words(max(scene.sentence.i, m.i - 4), m.i)
        if "by" in before and scene.told(m.i) and not {"with", "and", ","} & set(before[before.index("by") :]):
            return bool(scene.of("extent", "hurt", "opened"))
    return False
