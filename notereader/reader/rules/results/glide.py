"""How the repair runs through sheath and pulleys."""

from dataclasses import dataclass
from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.page import Break, Mention
from notereader.reader.rules.deeds.smoothed import any_smoothed, of_the_smoothed
from notereader.reader.rules.results.behaviour import after_repair, behaving, denied, foreign, lay_behaviour
from notereader.reader.rules.results.canal import of_the_canal
from notereader.reader.rules.results.caught_before import of_those_that_caught
from notereader.reader.rules.results.freed_later import freed_later
from notereader.reader.rules.results.not_taken_away import not_taken_away
from notereader.reader.rules.results.sought import sought_in_vain
from notereader.reader.scene import Scene, Subject
from notereader.vocabulary.wordlists import word_list

_CATCH_WORDS = word_list("quality", "catch_words")
_CATCH_PLACES = word_list("quality", "catch_places")
_FREE_WORDS = word_list("quality", "free_words")
_GLIDE_FORMS = word_list("quality", "glide_forms")
_RUN_FORMS = word_list("quality", "run_forms")
_RUN_FREE = word_list("quality", "run_free")
_HINDRANCE = word_list("quality", "hindrance")
_NO_TENDON = word_list("quality", "moves_no_tendon")
_RESOLVED = word_list("quality", "resolved")
_PATIENTS = word_list("quality", "patients")
_MOVES = frozenset(["move", "moves", "moved", "goes", "went", "came", "comes"])
_BODY = frozenset(["finger", "fingers", "digit", "digits", "thumb", "joint", "joints", "wrist", "hand"])
_REACHED = frozenset(["achieved", "obtained", "possible", "reached", "restored", "had"])
_SOME = frozenset(["some", "a", "little", "slight", "mild", "considerable", "more", "much", "bit", "of", "increased"])
_FLAPS = frozenset(["flap", "tag", "stump", "fringe", "shred"])
_SURFACES = frozenset(["surface", "surfaces", "contour", "outline"])
_ALONE_WORDS = frozenset(["free", "smooth"])
_IN_A_WORD = {
    **dict.fromkeys(("free", "freely", "smooth", "smoothly"), "free"),
    **dict.fromkeys(("tight", "tightly", "stiff", "stiffly", "limited"), "restricted"),
}  # what a word alone answers where the glide is asked for
SAYS_GLIDE = _GLIDE_FORMS | _RUN_FORMS | _ALONE_WORDS
_TELLS_GLIDE = SAYS_GLIDE | _IN_A_WORD.keys()
_ALONE = frozenset(
    ["", ",", ";", ":", ".", "and", "-", "=", "as", "too", "now", "also", "+", "&", "/", "is", "was", "'s", "to"]
)
_SOON = 40  # words
_PASSES = frozenset(
    ["pass", "passes", "passed", "past", "through", "under", "beneath", "enters", "entered", "clears", "clear"]
)
_GLIDE_NOUNS = frozenset(["glide", "gliding", "excursion", "run", "runs", "glides"])
_EDGES = frozenset(["edge", "lip", "margin", "pulley", "rim", "border"])


@dataclass(slots=True)
class _Event:
    """What words i to j say of the glide; the words that say so may go on to `end`."""

    i: int
    j: int
    value: str
    end: int = 0


def glide(desk: Desk, scene: Scene) -> None:
    """Find how the repair ran: 'glided freely', 'caught on A2', 'no triggering'. The last word decides."""
    if "glide" not in scene.kinds and (_TELLS_GLIDE | _TIGHT).isdisjoint(scene.said):
        return
    if scene.sentence.section == "mechanism":
        return  # 'How: caught under the platen of a press'
    asked = _asked(scene)
    if not (desk.repairable() or scene.setting.focus or any_smoothed(desk)):
        return
    told = (_answered(scene) if asked else []) or _told(desk, scene)
    found = [*told, *_run_freely(desk, scene), *_free_alone(desk, scene), *_hindered(desk, scene)]
    events = sorted(found, key=lambda e: e.i)
    before = ""
    for event in events:
        if (
            _how_far_tested(scene, event)
            or _ends_compound(scene, event.i)
            or _of_a_joint(scene, event)
            or _of_training(scene, event)
        ):
            continue
        if "smooth" in scene.words(event.i, event.j) and not _SURFACES.isdisjoint(
            scene.words(scene.part(event.i)[0], event.i)
        ):
            continue  # 'The surface of the repair was smooth'
        if "smooth" in scene.words(event.i, event.j) and _of_an_edge(scene, event.i):
            continue
        if event.value == "free" and (_but_for_a_place(scene, event.j) or _not_quite(scene, event.j)):
            continue
        if event.value == "free" and freed_later(scene, event.i, event.j):
            continue
        if event.value != "free" and _of_the_time_before(scene):
            continue
        if "gone" in scene.words(event.i, event.j) and not _RETURNED.isdisjoint(scene.words(event.j, scene.sentence.j)):
            continue  # 'The click was gone for a moment and came back'
        if before == "catching" and event.value == "restricted":
            continue  # 'it catches and does not glide freely' says one thing
        if before == "restricted" and event.value == "free" and _only_no_catch(scene, event):
            continue  # 'moves but not freely, no click', 'a bit tight under A2 but did not snag'
        if before == "restricted" and "excursion" in scene.words(event.i, event.j):
            continue  # 'a little tight in A2, but it ran the full excursion': how far, not how
        before = event.value
        groups = [g for g in scene.setting.groups if event.i < g.i and g.j < event.j and g.tendons]
        inside = [g for g in groups if scene.next_word(g.j) == ":"]
        at = event.j - 1 if inside else event.i  # 'Glide, repair 2: free'
        targets = behaving(desk, scene, at, event.j)
        if groups and not inside:  # 'Gliding    FDP index and middle free'
            targets = list(dict.fromkeys(t for g in groups for t in behaving(desk, scene, g.i, g.j)))
        fingers = _fingers_answered(scene, event)
        if fingers and not groups:
            kinds = {t.tendon for t in targets} | {"FPL"}
            targets = [t for t in desk.repairable(fingers) if t.tendon in kinds and t.digit in fingers]
        targets = of_the_smoothed(desk, scene, event.i, targets)
        targets = of_those_that_caught(desk, scene, event.i, targets)
        targets = of_the_canal(scene, event.j, targets)
        end = max(event.j, event.end)
        lay_behaviour(desk, scene, targets, "glide", event.value, event.i, end, f"glide {event.value}")


def _only_no_catch(scene: Scene, event: _Event) -> bool:
    """'No click', 'did not snag': that nothing caught does not say that it ran freely."""
    return "not" in scene.words(event.i, event.j) or not _NO_CATCH.isdisjoint(scene.words(event.i - 1, event.i + 1))


_NO_CATCH = frozenset(["no", "not", "never", "without"])
_RETURNED = frozenset(["back", "returned", "again", "still", "until", "unless", "reappeared"])


def _how_far_tested(scene: Scene, event: _Event) -> bool:
    """'No gap at 20 degrees short of full extension': how far the finger was stretched when it was looked at."""
    if "short" not in scene.words(event.i, event.j):
        return False
    lead = scene.words(max(scene.sentence.i, event.i - _MEASURED), event.i)
    return not _REACHED_AT.isdisjoint(lead) and any(w[0].isdecimal() for w in lead)


_MEASURED = 4  # words: 'at about 20 degrees'
_REACHED_AT = frozenset(["at", "until", "till", "before", "from", "in"])


def _of_an_edge(scene: Scene, k: int) -> bool:
    """'The cut edge was smooth all the way': how an edge was, and not how the repair ran."""
    lead = scene.words(max(scene.sentence.i, k - 2), k)
    return lead[-1:] in (["was"], ["were"], ["is"], ["are"]) and lead[0] in _EDGES | {"edges", "ends", "end", "cut"}


def _ends_compound(scene: Scene, k: int) -> bool:
    """Tell whether word k ends a compound: 'tension-free', 'pain-free afterwards'."""
    page = scene.page
    return page.words[k - 1] == "-" and page.breaks[k - 1] == page.breaks[k] == Break.NONE


def _of_the_time_before(scene: Scene) -> bool:
    """'It slid smoothly once A4 was open. Before that it had jammed.': how it ran until something was done."""
    return scene.words(scene.sentence.i, scene.sentence.i + 2) in _BEFORE_THAT and "had" in scene.said


_BEFORE_THAT = (["before", "that"], ["before", "this"], ["until", "then"])


def _of_a_joint(scene: Scene, event: _Event) -> bool:
    """'The PIP joint locked briefly, then moved freely': a joint moves; a tendon named or taken up after it runs."""
    if "moved" not in scene.words(event.i, event.j):
        return False
    last = max((m.j for m in scene.of("joint") if m.j <= event.i), default=-1)
    behind = scene.words(last, event.i) if last >= 0 else []
    named = any(g.tendons or g.generic for g in scene.setting.groups if last <= g.i < event.i)
    return last >= 0 and not named and "it" not in behind


def _of_training(scene: Scene, event: _Event) -> bool:
    """'No resistance for eight weeks': what the hand must not do, not how the repair ran."""
    after = scene.next_word(event.j)
    return "resistance" in scene.words(event.i, event.j) and after in ("for", "until", "training", "exercises", "work")


def _fingers_answered(scene: Scene, event: _Event) -> tuple[str, ...]:
    """'Glide: index free, middle catches, ring + small free': of 'glide: index free' the fingers it is said of."""
    word = scene.page.words[event.j - 1]
    fingers = [g for g in scene.setting.groups if g.digits and not g.tendons and g.i > event.i]
    if not any(g.j < event.j for g in fingers) or ":" not in scene.words(event.i, event.j):
        return ()
    own = [g for g in fingers if g.j < event.j or scene.next_word(g.j) == word]
    return tuple(dict.fromkeys(d for g in own for d in g.digits))


def _asked(scene: Scene) -> bool:
    """Tell whether a cell stands under 'Glide': its words need not name a tendon or a test."""
    labels = scene.sentence.prefix
    return any(not _GLIDE_NOUNS.isdisjoint(scene.words(*label)) for label in labels)


def _answered(scene: Scene) -> list[_Event]:
    """'Glide: [x] free   [ ] catches': one word of the vocabulary, or 'free', answers."""
    found = [_Event(m.i, m.j, m.value) for m in scene.of("glide") if scene.told(m.i) and m.i < m.j]
    k = scene.sentence.i
    value = _IN_A_WORD.get(scene.page.words[k])
    if not found and value and scene.sentence.j - k <= 2 and scene.told(k):
        found = [_Event(k, k + 1, value)]
    return [e for e in found if not denied(scene, e.i, e.j, 4, free=e.value == "free")]


def _told(desk: Desk, scene: Scene) -> list[_Event]:
    """Return what the vocabulary's phrases say."""
    found = []
    for mention in scene.of("glide"):
        if not scene.told(mention.i) or not _is_glide(desk, scene, mention):
            continue
        value = mention.value
        if _of_tenodesis(scene, mention):
            continue
        if _is_purpose(scene, mention) or scene.word_before(mention.i) in ("may", "might"):
            continue
        if scene.words(mention.j, mention.j + 2) == ["on", "nothing"] or scene.next_word(mention.j) == "nothing":
            continue
        lead_in = scene.words(scene.part(mention.i)[0], mention.i)
        if not {"said", "felt", "feels"}.isdisjoint(lead_in) and not _felt_it(scene, mention):
            continue  # what the patient says of it
        lead = scene.words(max(scene.sentence.i, mention.i - 3), mention.i)
        if value == "free" and ("less", "than") in pairwise(lead):
            value = "restricted"  # 'with distinct drag, less than a full excursion'
        ended = _ended(scene, mention) if value == "catching" else None
        ended = True if value == "catching" and scene.next_word(mention.j) == "nowhere" else ended
        none = scene.answer(mention.j) in _NO or _none_behind(scene, mention) or sought_in_vain(desk, scene, mention)
        if value == "catching" and none:
            ended = True  # 'catching: none', 'catching (-)'
        if ended is not None:
            value = "free" if ended else "catching"
        elif value == "catching" and not_taken_away(scene, mention.i):
            pass  # 'Venting A4 did not abolish the catch'
        elif denied(scene, mention.i, mention.j, 4, free=value == "free", after=value == "catching"):
            value = "restricted" if value == "free" else "free"
        hand = value == "catching" and not _BODY.isdisjoint(lead) and "caught" in scene.words(mention.i, mention.j)
        behind = scene.words(mention.j, min(mention.j + 4, scene.sentence.j))
        if value == "free" and "not" in behind and not _REACHED.isdisjoint(behind):
            value = "restricted"  # 'smooth glide was not achieved'
        if value == "free" and (scene.next_word(mention.j) == "until" or behind[:2] in _SO_FAR):
            continue  # 'it ran freely until the finger was straight, then it caught', 'freely up to A4'
        if value == "free" and scene.words(mention.j, mention.j + 2) in _TO_DO:
            continue  # 'He is free to move the other fingers'
        if value == "free" and (lead[-1:] in _NEARLY or _before_a_stitch(behind) or _of_the_others(scene, mention)):
            continue
        if after_repair(desk, scene) or not (value == "free" or hand):  # 'his hand was caught under the hatch'
            end = (_this_ended(scene, mention) or 0) + 1 if ended else 0
            found.append(_Event(mention.i, mention.j, value, end))
    return found


def _felt_it(scene: Scene, mention: Mention) -> bool:
    """'I moved the finger again and felt it catch', 'One could see it catching': what the surgeon noted himself."""
    lead = scene.words(max(scene.sentence.i, mention.i - 2), mention.i)
    return lead[-1:] == ["it"] and not _SENSING.isdisjoint(lead) and _PATIENTS.isdisjoint(scene.said)


_SENSING = frozenset(["felt", "feel", "saw", "see", "heard", "watched"])


def _not_quite(scene: Scene, k: int) -> bool:
    """'It slid under A4, although not perfectly', 'ran freely, though not quite at the end of flexion'."""
    behind = scene.words(k, min(k + _OWNED_UP, scene.sentence.j))
    taken_back = any(a == "not" and b in _WHOLLY for a, b in pairwise(behind))
    return taken_back and not _ALTHOUGH.isdisjoint(behind)


_OWNED_UP = 9  # words
_WHOLLY = frozenset(["perfectly", "quite", "entirely", "wholly", "smoothly", "fully", "completely", "throughout"])
_ALTHOUGH = frozenset(["although", "though", "but", "if", "however"])
_TO_DO = (["to", "move"], ["to", "use"], ["to", "bend"], ["to", "go"], ["to", "leave"])
_SO_FAR = (["up", "to"], ["as", "far"], ["only", "to"])
_NEARLY = (["almost"], ["nearly"])


def _before_a_stitch(behind: list[str]) -> bool:
    """'It glided freely before the last stitch': not what it did in the end."""
    return behind[:2] == ["before", "the"] and not _STITCHES.isdisjoint(behind[2:])


_STITCHES = frozenset(["last", "epitendinous", "peripheral", "core", "suture", "stitch", "stitches", "sutures"])


def _of_the_others(scene: Scene, mention: Mention) -> bool:
    """'The other tendons glided freely': not the one that was spoken of."""
    first = scene.part(mention.i)[0]
    return scene.words(first, mention.i) in (
        ["the", "other", "tendons"],
        ["other", "tendons"],
        ["all", "other", "tendons"],
    )


def _none_behind(scene: Scene, mention: Mention) -> bool:
    marked = scene.next_word(mention.j) in (":", "=", "-")
    return marked and scene.next_word(mention.j + 1) in _NO and scene.next_word(mention.j + 2) in ("", ".", ",", ";")


_NO = frozenset(["no", "none", "nil", "n"])


def _but_for_a_place(scene: Scene, k: int) -> bool:
    """'glided freely except under A3': not free there."""
    k += scene.next_word(k) == ","
    save = any(tuple(scene.words(k, k + len(phrase))) == phrase for phrase in _SAVE)
    save = save or (scene.next_word(k) == "but" and scene.word_before(k) in _EVERY)  # 'passes everything but A2'
    pulleys = [m for m in scene.of("pulley", "pulleys") if k < m.i <= k + 5]
    at_the_end = not _EXTREMES.isdisjoint(scene.words(k, k + 6))  # 'free except the last 10 degrees'
    return (
        save and (bool(pulleys) or at_the_end) and not any(g.digits and k < g.i <= k + 5 for g in scene.setting.groups)
    )


_EVERY = frozenset(["everything", "everywhere", "all", "pulleys"])
_EXTREMES = frozenset(["last", "terminal", "final", "extreme", "extremes", "end", "full"])
_SAVE = frozenset([("except",), ("save",), ("bar",), ("but", "for"), ("apart", "from"), ("other", "than")])


def _is_purpose(scene: Scene, mention: Mention) -> bool:
    """'A1 was released so that the repair would not catch' tells what was hoped for."""
    lead = scene.words(max(scene.sentence.i, mention.i - 9), mention.i)
    purpose = any(list(pair) in _SO_THAT for pair in pairwise(lead))
    return purpose and not _WOULD.isdisjoint(lead)


_SO_THAT = (["so", "that"], ["in", "order"], ["so", "as"], ["so", "it"], ["so", "they"], ["so", "nothing"])
_WOULD = frozenset(["would", "should", "could", "might", "to", "wouldn't", "won't", "couldn't", "shouldn't"])


def _ended(scene: Scene, mention: Mention) -> bool | None:
    """'the catching was abolished' is over, 'the catching did not wholly disappear' is not; else None."""
    text = f" {' '.join(scene.words(mention.j, min(mention.j + 16, scene.sentence.j)))} "
    if any(f" {p} " in text for p in ("none after", "there was none", "none since", "none now", "none afterwards")):
        return True
    reach = min(mention.j + 7, scene.part(mention.i)[1])
    k = next((k for k in range(mention.j, reach) if _resolves(scene, k)), None)
    k = k if k is not None else _this_ended(scene, mention)
    if k is None:
        return None
    return {"not", "never", "partly", "largely", "almost"}.isdisjoint(scene.words(mention.j, k))


def _this_ended(scene: Scene, mention: Mention) -> int | None:
    """Return the word of '..., and this disappeared after A4 was opened', '; a further venting abolished this'."""
    words, last = scene.page.words, scene.sentence.j
    for k in range(mention.j, last):
        if any(g.i == k and (g.digits or g.tendons) for g in scene.setting.groups) and words[k - 1] not in _PLACING:
            return None  # 'The middle caught, the ring did not'
        if _resolves(scene, k) and not _TAKES_UP.isdisjoint([*scene.words(k - 2, k), *scene.words(k + 1, k + 2)]):
            return k
    return None


def _resolves(scene: Scene, k: int) -> bool:
    word = scene.page.words[k]
    return word in _RESOLVED or (word == "away" and scene.page.words[k - 1] in ("went", "gone", "going"))


_PLACING = frozenset(["in", "of", "the", "left", "right"])
_TAKES_UP = frozenset(["this", "which", "that", "it"])


def _is_glide(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """Catching words live elsewhere too: hair caught, a finger caught in a door, tendon caught by the core."""
    section = scene.sentence.section
    told = bool(desk.topic) and after_repair(desk, scene)  # a narrative may stand under 'Procedure'
    if section in ("diagnosis", "indication") or (section == "procedure" and not told):
        return False
    if mention.value == "restricted" or " ".join(scene.words(mention.i, mention.j)) not in _CATCH_WORDS:
        return _tendon_runs(scene, mention.i) if mention.value == "free" else not foreign(scene, mention.i, mention.j)
    if _takes_tendon(scene, mention) or not after_repair(desk, scene):
        return False
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    of_sheath = ("sheath", "flap") in pairwise(scene.words(scene.sentence.i, scene.sentence.j)) or "back" in words
    words -= _OF_SHEATH if of_sheath else set()
    flaps = words & _FLAPS - ({"stump"} if scene.page.words[mention.j : mention.j + 4][-1:] == ["stump"] else set())
    if ("swollen" in words or flaps or {"cut", "edge"} <= words) and "repair" not in words:
        return False
    subject = scene.owner(mention.i, mention.j)
    if (
        subject is not None
        and subject.group is None
        and not (subject.kind == "role" or _is_where(scene, subject, mention))
    ):
        return False
    near = words & _CATCH_PLACES or scene.of("test", "pulley", "gap") or _tested_before(desk, scene)
    near = near or _just_told(desk, scene) or _of_a_finger_alone(scene, mention)
    near = near or _at_every_pass(scene, mention) or _felt_it(scene, mention)
    return bool(near) or _caught_before(desk, scene)


def _at_every_pass(scene: Scene, mention: Mention) -> bool:
    """'It caught at every pass', 'it still catches each time'."""
    behind = scene.words(mention.j, min(mention.j + 4, scene.sentence.j))
    return any(a in ("every", "each", "either") and b in _PASS for a, b in pairwise(behind))


_PASS = frozenset(["pass", "time", "stroke", "cycle", "bend", "excursion", "movement", "way", "trip"])
_OF_SHEATH = frozenset(["flap"])  # 'the flap was sewn back': that of the sheath, no flap of the tendon


def _of_a_finger_alone(scene: Scene, mention: Mention) -> bool:
    """'None caught.', 'The ring caught, the others ran freely': said of a repair and of nothing it caught on."""
    if any(m is not mention and m.value in ("free", "catching") for m in scene.of("glide")):
        return True
    closes = scene.next_word(mention.j) in _CLAUSE_ENDS
    lead = scene.word_before(mention.i)
    named = any(g.j == mention.i and (g.digits or g.tendons) for g in scene.setting.groups)
    before = scene.words(max(scene.sentence.i, mention.i - 2), mention.i)
    return closes and (named or lead in _NOBODY or before in _ONE_THAT)


# 'the ring that is catching'
_ONE_THAT = (["of", "them"], ["one", "that"], ["one", "which"], ["that", "is"], ["that", "was"])
_CLAUSE_ENDS = frozenset(["", ".", ",", ";", "and", "but", "while", "whereas", ")"])
_NOBODY = frozenset(["none", "neither", "nothing"])


def _is_where(scene: Scene, subject: Subject, mention: Mention) -> bool:
    """'catches when entering the new A2': a pulley told behind is the place; 'A4 was stuck to bone' tells of A4."""
    if subject.kind not in ("pulley", "pulleys"):
        return False
    apart = not {";", "."}.isdisjoint(scene.words(subject.j, mention.i)) and scene.next_word(mention.j) == "at"
    if apart or scene.words(mention.j - 1, mention.j) == ["at"]:
        return True  # 'A2 and A4 kept; catches at A2'
    met = "where" in scene.words(subject.j, mention.i)  # 'until it met the edge of A2, where it snagged'
    k = subject.i
    while k > scene.sentence.i and scene.page.words[k - 1] in _PART_OF:
        k -= 1  # 'under the rest of A2'
    lead = scene.words(max(scene.sentence.i, k - 3), k)  # 'under the mended A4'
    met = met or (lead[-1:] in (["with"], ["after"], ["despite"]) and "it" in scene.words(mention.i - 2, mention.i))
    return met or subject.i >= mention.j or not _PASSES.isdisjoint(lead)


_PART_OF = frozenset(["the", "rest", "remainder", "remnant", "half", "part", "what", "was", "left", "remained", "of"])


def _caught_before(desk: Desk, scene: Scene) -> bool:
    """'It catches on A4. A4 vented 2 mm. Catch gone.'"""
    last = scene.sentence.i
    return any(f.value == "catching" for f in desk.laid("glide", since=last - _SOON + 1, before=last))


def _tested_before(desk: Desk, scene: Scene) -> bool:
    before = desk.scene_before(scene)
    if before is None or before.sentence.block != scene.sentence.block:
        return False
    return bool(before.of("test", "gap"))


def _another_catches(desk: Desk, scene: Scene) -> bool:
    """'IF = free. MF = catches at A2.': the next statement of the paragraph, on another finger, tells how it ran."""
    behind = desk.scene_after(scene)
    if behind is None or behind.sentence.block != scene.sentence.block or not behind.setting.groups:
        return False
    finger = behind.setting.groups[0]
    return finger.i == behind.sentence.i and bool(finger.digits) and any(m.i < m.j for m in behind.of("glide"))


def _just_told(desk: Desk, scene: Scene) -> bool:
    """'MF + RF no gap. MF glides. RF glides.': how the repairs ran or held is being told, one after another."""
    last = scene.sentence.i
    return bool(desk.laid("glide", "gap", "test", since=last - _SOON + 1, before=last))


def _takes_tendon(scene: Scene, mention: Mention) -> bool:
    """'8 mm caught each way', 'catching 12 mm of tendon' tell of the core's purchase."""
    near = [q for q in scene.quantities if q.unit == "mm" and (0 <= q.i - mention.j <= 2 or 0 <= mention.i - q.j <= 5)]
    gaps = scene.of("gap")
    near = [q for q in near if not any(m.i == q.j or m.j == q.i for m in gaps)]  # 'a 1 mm gap and it caught at A2'
    if not near:
        return False
    beside = any(q.i == mention.j or mention.i == q.j for q in near)
    return beside or _EDGES.isdisjoint(scene.words(scene.sentence.i, scene.sentence.j))


_NOT_SO = frozenset(["not", "never", "hardly", "barely", "scarcely", "isn't", "wasn't"])


def _run_freely(desk: Desk, scene: Scene) -> list[_Event]:
    """'glides through free', 'went back and forth under the pulley freely': a verb of running with a word for free."""
    taken = {k for m in scene.of("glide") for k in range(m.i, m.j)}
    found: list[_Event] = []
    for k in range(scene.sentence.i, scene.sentence.j):
        word = scene.page.words[k]
        wanted = _FREE_WORDS if word in _GLIDE_FORMS else _RUN_FREE if word in _RUN_FORMS else None
        if wanted is None or k in taken or not scene.told(k) or not after_repair(desk, scene):
            continue
        if word == "slips" and scene.next_word(k + 1) in _OF_SLIPS:
            continue  # 'FDS slips held their stitches well'
        free = _free_near(scene, k, wanted)
        if free is None and word in ("glides", "glided", "slides", "slid") and _bare(desk, scene, k):
            free = k
        if free is None or free in taken or _names_a_suture(scene, k) or not _tendon_runs(scene, k):
            continue
        if word == "excursion" and _tests_by(scene, k):
            continue  # 'under full excursion there was no gap', 'full passive excursion produced no gap'
        i, j = min(free, k), max(free, k) + 1
        hindered = denied(scene, i, j, 4, free=True) or not _NOT_SO.isdisjoint(scene.words(i, j))
        found.append(_Event(i, j, "restricted" if hindered else "free"))  # 'the glide was not free'
    return found[:1]


def _names_a_suture(scene: Scene, k: int) -> bool:
    """'4-0 nylon, 6/0 running; A4 excised, A2 ok': a running suture."""
    size = scene.word_before(k).endswith("-0") or scene.next_word(k + 1).endswith("-0")
    return scene.page.words[k] == "running" and (size or any(m.i == k + 1 or m.j == k for m in scene.of("role")))


_OF_SLIPS = frozenset(["held", "hold", "were", "are", "had", "have", "took", "lay", "lie", "sewn", "repaired", "cut"])


def _of_tenodesis(scene: Scene, mention: Mention) -> bool:
    """'Wrist tenodesis showed full excursion': the fingers went all the way, no word of how the repair ran."""
    named = any(g.tendons or g.generic for g in scene.setting.groups)
    words = scene.words(mention.i, mention.j)
    return "tenodesis" in scene.words(scene.part(mention.i)[0], mention.i) and words[-1:] == ["excursion"] and not named


def _tests_by(scene: Scene, k: int) -> bool:
    """Tell whether the excursion at word k is what a repair was tested by."""
    before = scene.words(max(scene.sentence.i, k - 2), k)
    return before in (["under", "full"], ["on", "full"], ["through", "full"]) or before[-1:] in (
        ["passive"],
        ["active"],
    )


def _hindered(desk: Desk, scene: Scene) -> list[_Event]:
    """'slides with some drag', 'did not move freely', 'runs freely under A2 but not under A4'."""
    if not after_repair(desk, scene):
        return []
    words = scene.page.words
    tight = next((k for k in range(scene.sentence.i, scene.sentence.j) if _tight_at_a_pulley(scene, k)), None)
    if tight is not None:
        return [_Event(tight, tight + 1, "restricted", tight + 3)]
    verbs = [k for k in range(scene.sentence.i, scene.sentence.j) if words[k] in _GLIDE_FORMS | _RUN_FORMS]
    for k in verbs:
        after = scene.words(k + 1, min(k + 8, scene.sentence.j))
        led = [w for w in after if w not in _SOME]
        drags = led[:1] in (["with"], ["against"]) and led[1:2] != [] and led[1] in _HINDRANCE
        halted = bool(_FREE_WORDS & set(after[:2])) and (("but", "not") in pairwise(after))
        not_free = after[:1] != [] and after[0] in _FREE_WORDS and denied(scene, k, k + 1, 2, free=True)
        if (drags or halted or not_free) and scene.told(k) and _tendon_runs(scene, k):
            return [_Event(k, k + 1 + (len(after) - len(led) + 2 if drags else 1), "restricted")]
    return []


def _free_alone(desk: Desk, scene: Scene) -> list[_Event]:
    """'Ring: free and no gap', 'no gap, free as well', 'It was smooth': one word beside what was seen or tested."""
    if _ALONE_WORDS.isdisjoint(scene.said) or "ends" in scene.said or not after_repair(desk, scene):
        return []
    caught = [m.i for m in scene.of("glide") if m.value == "catching"]
    caught += [k for k in range(scene.sentence.i, scene.sentence.j) if _tight_at_a_pulley(scene, k)]
    tested = "gap" in scene.kinds or caught or _tested_before(desk, scene) or _just_told(desk, scene)
    tested = tested or _another_catches(desk, scene)
    if not (tested or ("test" in scene.kinds and "smooth" in scene.said)):
        return []
    first_caught = scene.sentence.i if _caught_before(desk, scene) else min(caught, default=scene.sentence.j)
    taken = {k for m in scene.of("glide") for k in range(m.i, m.j)}
    found: list[_Event] = []
    for k in range(scene.sentence.i, scene.sentence.j):
        if scene.page.words[k] not in _ALONE_WORDS or k in taken or not scene.told(k) or foreign(scene, k, k + 1):
            continue
        if _ends_compound(scene, k) or scene.words(k + 1, k + 3) in _TO_DO:
            continue  # 'the repair was tension-free', 'He is free to move the other fingers'
        before, after = scene.word_before(k), scene.next_word(k + 1)
        if before == "now":
            before = scene.word_before(k - 1)  # '-> A4 shaved back 2 mm -> now free'
        named = any(g.j == k for g in scene.setting.groups)  # 'IF, MF, RF free, no gap'
        if before == "not" and scene.word_before(k - 1) in ("/", ",", ";", "and", "but"):
            return [*found, _Event(k - 1, k + 1, "restricted")]  # 'no gap / not free'
        leads = named or before in _ALONE or before == ">"  # 'catches at A2 -> A2 vented 5 mm -> free'
        leads = leads or (k > first_caught and before in _AT_LAST)
        closes = after in _ALONE or (leads and _since_when(scene, k + 1, k > first_caught))
        if leads and closes and not denied(scene, k, k + 1, 2, free=True):
            found.append(_Event(k, k + 1, "free"))  # 'index free, middle catches -> A4 opened -> free'
    return found


_AT_LAST = frozenset(["that", "motion", "then", "again", "glide", "afterwards", "thereafter", "it"])
_BEGINNINGS = frozenset(["start", "outset", "beginning", "first"])


def _since_when(scene: Scene, k: int, caught: bool) -> bool:
    """'free from the start'; after a catch also 'free once A4 had been vented'."""
    if scene.words(k, k + 1) == ["from"]:
        return not _BEGINNINGS.isdisjoint(scene.words(k + 1, k + 3))
    return caught and not {"once", "after", "when"}.isdisjoint(scene.words(k, k + 1))


def _tight_at_a_pulley(scene: Scene, k: int) -> bool:
    """'The ring was a little tight in A2', 'glides a bit stiffly beneath A4', 'somewhat snug at A2': not freely."""
    word = scene.page.words[k]
    snug = word == "snug" and scene.word_before(k) in _SOMEWHAT  # 'lay snug under A2' tells of a good fit
    if not (snug or word in _TIGHT - {"snug"}) or scene.next_word(k + 1) not in _AT_A_PULLEY:
        return False
    if not scene.told(k) or scene.word_before(k) in ("not", "no", "too", "less", "never"):
        return False
    taken = any(m.i <= k < m.j for m in scene.of("glide"))
    behind = any(k < m.i <= k + 4 for m in scene.of("pulley", "pulleys"))
    return behind and not taken and not foreign(scene, k, k + 1)


_TIGHT = frozenset(["tight", "tightly", "stiffly", "snug"])
_SOMEWHAT = frozenset(["little", "bit", "somewhat", "slightly", "rather", "touch"])
_AT_A_PULLEY = frozenset(["in", "at", "under", "beneath", "below", "through"])


def _bare(desk: Desk, scene: Scene, k: int) -> bool:
    """'passive ROM: glides, no gap', 'worked passively, glides below the new loop': nothing said against it."""
    if _not_quite(scene, k):
        return False
    tested = bool(scene.of("test", "gap")) or "passive" in scene.said or _tested_before(desk, scene)
    tested = tested or _just_told(desk, scene)
    return tested and scene.next_word(k + 1) in ("", ",", ".", ";", "below", "under", "beneath", "through", "past")


def _free_near(scene: Scene, k: int, wanted: frozenset[str]) -> int | None:
    first, last = scene.part(k)
    if last - k <= 2:
        last = scene.sentence.j  # 'GLIDE   [x] free'
    before, after = max(first, k - 4), min(last, k + (10 if wanted is _RUN_FREE else 6))
    places = [*range(k + 1, after), *range(k - 1, before - 1, -1)]
    words = scene.page.words
    return next((n for n in places if _says_free(scene, n, words[k], wanted)), None)


def _says_free(scene: Scene, n: int, verb: str, wanted: frozenset[str]) -> bool:
    """'ran well', 'moved without any resistance'; 'all went well' says nothing of a tendon."""
    word = scene.page.words[n]
    if not scene.told(n) or scene.next_word(n + 1) == "fist" or (word in ("well", "fine") and verb in _MOVES):
        return False
    if word == "well" and scene.word_before(n) == "as":
        return False  # 'a running 6-0 was placed as well'
    if word == "full" and not _OF_A_JOINT.isdisjoint(scene.words(n + 1, n + 3)):
        return False  # 'on table excursion: passive full extension' tells how far the finger went
    if verb in _CAME and "together" in scene.words(max(scene.sentence.i, n - 3), n + 3):
        return False  # 'the ends came together easily'
    return word in wanted or (word in _HINDRANCE and "without" in scene.words(max(scene.sentence.i, n - 2), n))


_OF_A_JOINT = frozenset(["extension", "flexion", "passive", "active"])
_AS_PLANNED = frozenset(["well", "smoothly", "easily", "nicely", "smooth", "beautifully"])
_CAME = frozenset(["came", "come", "comes", "coming", "went", "goes"])

_PUT = frozenset(["in", "down", "home", "on", "off", "out"])


def _repair_since(words: list[str]) -> bool:
    """'I bent the finger and the tendon stayed put and moved freely': told of the tendon named since."""
    bodies = [n for n, w in enumerate(words) if w in _BODY]
    return bool(bodies) and not _REPAIRS.isdisjoint(words[bodies[-1] + 1 :])


_REPAIRS = frozenset(["tendon", "tendons", "repair", "repairs", "join", "junction", "graft"])


def _tendon_runs(scene: Scene, k: int) -> bool:
    """Tell whether it is a tendon or a repair that runs, and not a finger, a nerve or a suture."""
    first, last = scene.part(k)
    word = scene.page.words[k]
    if word in _CAME and scene.next_word(k + 1) in _PUT and scene.next_word(k + 2) != "and":
        return False  # 'It went in without trouble', 'came out easily': a stitch; 'went in and out easily' tells a run
    lead = k if word == "everything" else max(first, k - 3)  # 'when the tip was bent everything slid nicely'
    if foreign(scene, k, k + 1) or not {"tip", "nerve", "exercises"}.isdisjoint(scene.words(lead, min(last, k + 4))):
        return False
    around = scene.words(first, min(last, k + 2))
    while ("by", "hand") in pairwise(around):
        around.remove("hand")  # 'when I moved the finger by hand it ran freely'
    if "suture" in around[:-1] and around[around.index("suture") + 1] in ("line", "site"):
        around.remove("suture")
    named = not {"tendon", "repair", "it", "join", "junction"}.isdisjoint(scene.words(max(first, k - 2), k))
    named = named or any(0 <= k - m.j <= 1 for m in scene.of("tendon"))  # 'the ring finger FDP moved freely'
    named = named or _repair_since(around)
    if word in _MOVES and not _BODY.isdisjoint(around) and not named:
        return False
    tested = not scene.kinds.isdisjoint(("test", "gap"))
    if "everything" in around and not tested and not _AS_PLANNED.isdisjoint(scene.words(k, min(last, k + 3))):
        return False  # 'everything ran smoothly' tells of the operation
    beside = any(g.tendons and g.j == k for g in scene.setting.groups)  # 'by traction in the wound the FDS ran freely'
    return word not in _RUN_FORMS or beside or _NO_TENDON.isdisjoint(around)
