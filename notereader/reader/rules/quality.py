"""How the ends looked and how the finished repair behaved: ends, trimming, gap, test, glide, tension, bulk."""

from notereader.reader.bearing import Target
from notereader.reader.desk import Desk, carried, owners, tendon_owner
from notereader.reader.page import Mention
from notereader.reader.rules.sutures import respective, said_of_all, suture_owners
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_FOREIGN_WORDS = word_list("quality", "foreign_words")
_OF_TENDON_WORDS = word_list("quality", "of_tendon_words")
_TRIMMED_WORDS = word_list("quality", "trimmed_words")
_IS_REPAIR_GAP_WORDS = word_list("quality", "is_repair_gap_words")
_IS_GLIDE_WORDS = word_list("quality", "is_glide_words")
_IS_GLIDE_WORDS_2 = word_list("quality", "is_glide_words_2")
_FREE_WORDS_WORDS = word_list("quality", "free_words_words")
_TENSION_WORDS = word_list("quality", "tension_words")
_BULK_WORDS = word_list("quality", "bulk_words")
_IS_TEST_WORDS = word_list("quality", "is_test_words")
_IS_TEST_CONTEXT = word_list("quality", "is_test_context")
_IS_TEST_WORDS_2 = word_list("quality", "is_test_words_2")

_SKIP = word_list("quality", "skip")


def quality(desk: Desk, scene: Scene) -> None:
    """Find what is said of ends, gap, test, glide, tension and bulk."""
    if scene.sentence.section in _SKIP:
        return
    _ends(desk, scene)
    _trimmed(desk, scene)
    _gap(desk, scene)
    _glide(desk, scene)
    _tension(desk, scene)
    _bulk(desk, scene)
    _test(desk, scene)


def _lay(
    desk: Desk,
    scene: Scene,
    targets: list[Target],
    name: str,
    value: str | float,
    i: int,
    j: int,
    rule: str,
    *reasons: str,
) -> None:
    for target in targets:
        desk.tendon(scene, target, name, value, [(i, j)], rule, *reasons)


def _foreign(scene: Scene, i: int, j: int) -> bool:
    """Tell whether words i to j belong to a nerve, a vessel, skin or another structure."""
    subject = scene.owner(i, j)
    if subject is None or subject.mention is None:
        return False
    if subject.kind == "role":
        return subject.mention.value not in ("core", "peripheral")
    return subject.kind in _FOREIGN_WORDS


# --- ends


def _ends(desk: Desk, scene: Scene) -> None:
    found = [m for m in scene.of("ends") if scene.told(m.i) and not _foreign(scene, m.i, m.j)]
    if not found:
        return
    strong = [m for m in found if {"ends", "end", "edges", "stumps"} & set(scene.words(m.i, m.j))]
    nouns = scene.of("endword")
    kept: list[Mention] = []
    for mention in found:
        near_noun = any(abs(n.i - mention.i) <= 9 and scene.word_before(n.i) not in ("bone", "nerve") for n in nouns)
        if (near_noun or mention in strong or _of_tendon(scene, mention)) and not _negated_quality(scene, mention):
            kept.append(mention)
    for mention in _one_part_each(scene, kept):
        targets = _cut_owners(desk, scene, mention)
        targets = respective(scene, mention.i, [m.i for m in found], targets)
        for target in targets:
            desk.tendon(scene, target, "ends", mention.value, [_with_noun(scene, mention, nouns)], "ends as found")


def _negated_quality(scene: Scene, mention: Mention) -> bool:
    return scene.negated(mention.i, mention.j, 3) or (
        mention.value == "clean" and scene.word_before(mention.i) in ("washed", "to", "until")
    )


def _one_part_each(scene: Scene, kept: list[Mention]) -> list[Mention]:
    """'ragged, trimmed back to clean tendon': as found counts; a clean end after trimming does not."""
    worse = [m for m in kept if m.value != "clean"]
    if not worse:
        return [m for m in kept if not _after_trimming(scene, m)]
    return [m for m in kept if m.value != "clean" or (m.i < worse[0].i and not _after_trimming(scene, m))]


def _after_trimming(scene: Scene, mention: Mention) -> bool:
    if mention.value != "clean":
        return False
    trims = [m for m in scene.of("restored", "deed") if m.value == "trimmed" and m.j <= mention.i]
    return any(set(scene.words(t.j, mention.i)) & {"to", "until", "back", "for"} for t in trims)


def _of_tendon(scene: Scene, mention: Mention) -> bool:
    """'the profundus was frayed', 'cut through cleanly': said of the tendon itself."""
    subject = scene.owner(mention.i, mention.j)
    if subject is None or subject.kind != "tendon":
        return False
    word = " ".join(scene.words(mention.i, mention.j))
    first, last = scene.part(mention.i)
    if word == "clean" and (last - first <= 2 or scene.word_before(mention.i) == "cut"):
        return True
    if word in _OF_TENDON_WORDS:
        return False
    return abs(subject.j - mention.i) <= 8 or abs(subject.i - mention.j) <= 3


def _with_noun(scene: Scene, mention: Mention, nouns: list[Mention]) -> tuple[int, int]:
    near = [n for n in nouns if abs(n.i - mention.i) <= 6]
    if not near:
        return mention.i, mention.j
    noun = min(near, key=lambda n: abs(n.i - mention.i))
    return min(noun.i, mention.i), max(noun.j, mention.j)


def _cut_owners(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """Return the cut tendons a remark on the ends belongs to."""
    targets, group = tendon_owner(desk, scene, mention.i, mention.j)
    if targets:
        return [t for t in targets if desk.extents.get(t) != "intact"]
    digits: tuple[str, ...] = ()
    if group is not None:
        digits = group.digits
        if group.generic == "all" or group.every:
            digits = digits or tuple(d for g in scene.setting.groups if g.digits for d in g.digits)
            return _whole(desk, digits or None)
    if _all_words(scene, mention):
        told = [t for t in _whole(desk, digits or None) if _named_before(desk, scene, t)]
        return told or _whole(desk, digits or None)
    if not scene.subjects and scene.setting.digits:
        here = [t for t in _whole(desk, scene.setting.digits) if _named_before(desk, scene, t)]
        if len(here) > 1:
            return here
    if "these" in scene.words(scene.sentence.i, mention.i) and scene.setting.focus:
        return [t for t in scene.setting.focus if desk.extents.get(t) != "intact"]
    if scene.setting.wide and not digits:
        return [t for t in _whole(desk, None) if t.tendon in scene.setting.wide]
    focus = [t for t in scene.setting.focus if desk.extents.get(t) != "intact" and (not digits or t.digit in digits)]
    if focus:
        return focus
    cut = _whole(desk, digits or scene.setting.digits or None)
    return cut if len(cut) == 1 or group is not None else carried(desk, scene, digits or None)[0]


def _named_before(desk: Desk, scene: Scene, target: Target) -> bool:
    """Tell whether the extent of a tendon was told before this sentence."""
    entry = (target.digit, target.tendon, target.slip)
    told = [f.order for f in desk.told_of("repairs", entry) if f.field == "extent" and not f.header]
    return bool(told) and min(told) < scene.sentence.j


def _all_words(scene: Scene, mention: Mention) -> bool:
    words = scene.words(scene.sentence.i, scene.sentence.j)
    if "every" in words and "end" in words:
        return True
    return (
        any(w in words for w in ("all", "four", "every"))
        and any(w in words for w in ("ends", "stumps", "edges"))
        and "both" not in words
    )


def _whole(desk: Desk, digits: tuple[str, ...] | None) -> list[Target]:
    """Return every cut tendon of the digits given; partial cuts that were only smoothed have no ends."""
    return [t for t in desk.cut(digits) if desk.extents.get(t) != "partial" or desk.treatments.get(t) == "repaired"]


def _trimmed(desk: Desk, scene: Scene) -> None:
    """'trimmed back 3 mm', '2 mm resected from each end'."""
    for q in scene.quantities:
        if q.unit != "mm" or q.high is None or not scene.told(q.i):
            continue
        verbs = [m for m in scene.of("restored", "deed") if m.value in ("trimmed", "excised") and -6 <= m.i - q.j <= 5]
        first, last = scene.part(q.i)
        verbs = [m for m in verbs if first <= m.i < last or abs(m.i - q.i) <= 4]
        if (
            not verbs
            or _foreign(scene, q.i, q.j)
            or any(m.kind == "pulley" and first <= m.i < last for m in scene.mentions)
        ):
            continue
        words = set(scene.words(scene.sentence.i, scene.sentence.j))
        named = words & _TRIMMED_WORDS
        if not named and (
            words & {"skin", "nerve", "wound", "bone", "nail"} or not (desk.cut() and verbs[0].value == "trimmed")
        ):
            continue
        targets = _cut_owners(desk, scene, Mention("ends", "", q.i, q.j))
        targets = respective(scene, q.i, [p.i for p in scene.quantities if p.unit == "mm"], targets)
        i, j = min(verbs[0].i, q.i), max(verbs[0].j, q.j)
        _lay(desk, scene, targets, "trimmed_mm", q.high, i, j, "tendon trimmed away")


# --- gap

_NONE = frozenset(["no", "none", "nil", "n", "nothing", "absent"])


def _gap(desk: Desk, scene: Scene) -> None:
    mentions = [m for m in scene.of("gap") if scene.told(m.i) and _is_repair_gap(desk, scene, m)]
    for mention in mentions:
        value = mention.value
        word = " ".join(scene.words(mention.i, mention.j))
        if word in ("any gap", "any gapping", "nor gap", "not gap"):
            if not scene.negated(mention.i, mention.j):
                continue
            value = "none"
        elif (value == "seen" and scene.next_word(mention.j) in ("0", "zero", "nil")) or (
            value == "seen"
            and (scene.negated(mention.i, mention.j) or scene.word_before(mention.i) in ("no", "0", "nil", "zero"))
        ):
            value = "none"
        answer = scene.answer(mention.j)
        if answer == "":
            continue
        if answer in _NONE:
            value = "none"
        targets = _behaving(desk, scene, mention.i, mention.j)
        if (
            value == "none"
            and {"looked", "assessed", "tested", "checked", "examined", "sought"}
            & set(scene.words(mention.j, mention.j + 5))
            and "not" in scene.words(mention.j, mention.j + 3)
        ):
            continue  # 'gapping was not looked for'
        widths = [
            q for q in scene.quantities if q.unit == "mm" and q.high is not None and _near_gap(scene, q.i, q.j, mention)
        ]
        if value == "seen" and widths and widths[0].high == 0:
            value = "none"
        if word in ("opened", "opened up", "gaping", "gape", "gapes") and not widths:
            continue
        _lay(desk, scene, targets, "gap", value, mention.i, mention.j, f"gap {value}")
        if value == "seen":
            for q in widths[:1]:
                i, j = min(q.i, mention.i), max(q.j, mention.j)
                _lay(desk, scene, targets, "gap_mm", float(q.high or 0), i, j, "width of the gap")
    if scene.of("mended") and mentions:
        return


def _near_gap(scene: Scene, i: int, j: int, mention: Mention) -> bool:
    return -4 <= mention.i - j <= 3 or 0 <= i - mention.j <= 4


def _is_repair_gap(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """A gap of a nerve, a wound, or between ends before the repair is none of the repair's."""
    word = " ".join(scene.words(mention.i, mention.j))
    if _foreign(scene, mention.i, mention.j) or scene.sentence.section in ("indication", "diagnosis"):
        return False
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    if words & {"epineurium", "nerve", "skin", "flap"} and not words & {"repair", "tendon", "repairs"}:
        return False
    after = scene.words(mention.j, mention.j + 3)
    if after[:1] == ["between"] and {"before", "closed"} <= words:
        return False
    if after[:1] == ["between"] and not words & _IS_REPAIR_GAP_WORDS:
        return False
    if word in ("opened", "opened up"):
        tested = scene.of("test") or words & {"extension", "straighten", "bend", "pull", "fist"}
        return bool(tested) and not any(m.kind in ("pulley",) for m in scene.mentions) and bool(desk.repairable())
    return bool(desk.repairable() or scene.setting.focus)


# --- whose behaviour


def _behaving(desk: Desk, scene: Scene, i: int, j: int) -> list[Target]:
    """Return the repaired tendons a remark on behaviour is about."""
    if said_of_all(scene, i):
        wide = suture_owners(desk, scene, i, j)[0]
        if len(wide) > 1:
            return wide
    targets, _ = owners(desk, scene, i, j)
    targets = [
        t
        for t in targets
        if desk.extents.get(t) != "intact" and desk.treatments.get(t) not in ("left", "excised", "trimmed")
    ]
    if targets:
        return targets
    subject = scene.owner(i, j)
    if subject is not None and subject.group is not None and (subject.group.generic == "all" or subject.group.every):
        return desk.repairable()
    if said_of_all(scene, i):
        return suture_owners(desk, scene, i, j)[0]
    if _either(scene):
        here = desk.repairable(scene.setting.digits or None)
        return here if len(here) > 1 else desk.repairable()
    found, _ = suture_owners(desk, scene, i, j)
    return found


def _either(scene: Scene) -> bool:
    words = scene.words(scene.sentence.i, scene.sentence.j)
    return any(w in words for w in ("either", "neither", "both", "each", "none", "all"))


# --- glide

_GLIDE_FORMS = word_list("quality", "glide_forms")


def _glide(desk: Desk, scene: Scene) -> None:
    if "glide" not in scene.kinds and _GLIDE_FORMS.isdisjoint(scene.words(scene.sentence.i, scene.sentence.j)):
        return
    if not (desk.repairable() or scene.setting.focus):
        return
    last: tuple[Mention, str] | None = None
    for mention in scene.of("glide"):
        if not scene.told(mention.i) or not _is_glide(scene, mention):
            continue
        value = mention.value
        negated = scene.negated(mention.i, mention.j, 4) and not _new_clause(scene, mention)
        if negated and value == "free":
            value = "catching" if scene.of("glide")[0].value == "catching" else "restricted"
        elif negated:
            value = "free"
        if value == "catching" and _until(scene, mention):
            continue
        if last is not None and last[1] == "catching" and mention.value == "free" and negated:
            continue
        if last is not None and last[1] == "catching" and value == "restricted":
            continue
        last = (mention, value)
        targets = _behaving(desk, scene, mention.i, mention.j)
        _lay(desk, scene, targets, "glide", value, mention.i, mention.j, f"glide {value}")
    _free_words(desk, scene)


def _new_clause(scene: Scene, mention: Mention) -> bool:
    """'no gap and the repair glided freely': the 'no' reaches only the gap."""
    before = scene.words(max(scene.sentence.i, mention.i - 4), mention.i)
    return (
        "and" in before
        and "no" in before[: before.index("and")]
        and not {"no", "not"} & set(before[before.index("and") :])
    )


def _until(scene: Scene, mention: Mention) -> bool:
    """'caught until A2 was vented, then ran free' is told by its last word alone."""
    later = [m for m in scene.of("glide") if m.i > mention.j and m.value == "free" and scene.told(m.i)]
    return any(not scene.negated(m.i, m.j, 4) for m in later)


def _is_glide(scene: Scene, mention: Mention) -> bool:
    """Catching words live elsewhere too: hair caught, a finger caught in a door, tendon caught by the core."""
    word = " ".join(scene.words(mention.i, mention.j))
    if scene.sentence.section in ("diagnosis", "indication", "procedure"):
        return False
    if word in _IS_GLIDE_WORDS:
        words = set(scene.words(scene.sentence.i, scene.sentence.j))
        place = words & _IS_GLIDE_WORDS_2 or scene.of("test")
        if (
            word in ("caught", "catching")
            and any(q.unit == "mm" and abs(q.i - mention.i) < 8 for q in scene.quantities)
            and not words & {"edge", "lip", "pulley", "margin"}
        ):
            return False
        if (
            word in ("caught", "catching")
            and words & {"centimetre", "cm", "each", "side"}
            and "tendon" in words
            and not words & {"edge", "lip", "margin"}
        ):
            return False
        if words & {"swollen", "stump"} and not words & {"repair"}:
            return False
        subject = scene.owner(mention.i, mention.j)
        if subject is not None and subject.group is None:
            return False
        return bool(place)
    return not _foreign(scene, mention.i, mention.j)


def _free_words(desk: Desk, scene: Scene) -> None:
    """'glides free through', 'a free glide': a form of glide with a word for free close by."""
    if any(scene.told(m.i) for m in scene.of("glide")):
        return
    page = scene.page
    for k in range(scene.sentence.i, scene.sentence.j):
        if page.words[k] in _GLIDE_FORMS and scene.told(k):
            near = range(max(scene.sentence.i, k - 4), min(scene.sentence.j, k + 6))
            free = next((n for n in near if page.words[n] in _FREE_WORDS_WORDS), None)
            if free is None or page.words[min(free + 1, len(page.words) - 1)] in ("fist",):
                continue
            if any(page.words[n] in ("tip", "nerve", "exercises") for n in near) or not _after_repair(desk, scene):
                continue
            i, j = min(free, k), max(free, k) + 1
            value = "restricted" if scene.negated(i, j, 4) else "free"
            _lay(desk, scene, _behaving(desk, scene, i, j), "glide", value, i, j, f"glide {value}")
            return


def _after_repair(desk: Desk, scene: Scene) -> bool:
    return any(
        f.field in ("strands", "stitch", "size", "treatment") and f.order < scene.sentence.j for f in desk.findings
    )


# --- tension and bulk


def _tension(desk: Desk, scene: Scene) -> None:
    for mention in scene.of("tension"):
        if not scene.told(mention.i) or _foreign(scene, mention.i, mention.j) or not _about_repair(desk, scene):
            continue
        word = " ".join(scene.words(mention.i, mention.j))
        value = mention.value
        before = scene.word_before(mention.i)
        if word == "tension" and scene.words(mention.j, mention.j + 2) in (
            ["was", "set"],
            ["is", "set"],
            ["was", "adjusted"],
        ):
            continue
        if word == "tension" and before in _TENSION_WORDS:
            continue
        if word in ("tension", "any tension"):
            value = "none" if scene.negated(mention.i, mention.j) else value
            if word == "any tension" and value == "none" and not scene.negated(mention.i, mention.j):
                continue
            if word == "tension" and value == "present" and scene.next_word(mention.j) in ("free", "-"):
                value = "none"
        elif value == "present" and scene.negated(mention.i, mention.j):
            value = "none"
        if word in ("no pull", "no strain") and not _names_repair(scene):
            continue
        if word in ("under tension", "with tension") and scene.of("gap"):
            continue
        _lay(
            desk,
            scene,
            _behaving(desk, scene, mention.i, mention.j),
            "tension",
            value,
            mention.i,
            mention.j,
            f"tension {value}",
        )


def _names_repair(scene: Scene) -> bool:
    return any(g.tendons or g.generic for g in scene.setting.groups)


def _about_repair(desk: Desk, scene: Scene) -> bool:
    """Tension or bulk told in a sentence of its own belongs to what was worked on last."""
    if _names_repair(scene):
        return True
    foreign = [s for s in scene.subjects if s.kind in ("structure", "sided", "anynerve", "anyartery", "bundle")]
    if foreign:
        return False
    return desk.topic in ("tendon", "core", "peripheral", "pulley", "") and bool(
        desk.repairable() or scene.setting.focus
    )


def _bulk(desk: Desk, scene: Scene) -> None:
    if "bulk" not in scene.kinds or not (desk.repairable() or scene.setting.focus):
        return
    found = [m for m in scene.of("bulk") if scene.told(m.i) and not _foreign(scene, m.i, m.j)]
    for mention in found:
        word = " ".join(scene.words(mention.i, mention.j))
        value = mention.value
        if (
            word in _BULK_WORDS
            and not _names_repair(scene)
            and not set(scene.words(scene.sentence.i, scene.sentence.j)) & {"join", "repair", "junction"}
        ):
            continue
        answer = scene.answer(mention.j)
        if answer == "":
            continue
        if value == "present" and (scene.negated(mention.i, mention.j) or answer in _NONE):
            value = "none"
        if word in ("neither bulky",) or (
            "neither" in scene.words(max(scene.sentence.i, mention.i - 6), mention.i) and value == "present"
        ):
            value = "none"
        if "none" in scene.words(max(scene.sentence.i, mention.i - 6), mention.i):
            value = "none"
        on_bone = (word.endswith("flat") and scene.words(mention.j, mention.j + 3)[-1:] == ["bone"]) or scene.words(
            mention.j, mention.j + 2
        ) == ["on", "bone"]
        if (
            word == "slim"
            or on_bone
            or (word.endswith("flat") and {"edges", "edge", "ends"} & set(scene.words(*scene.part(mention.i))))
        ):
            continue
        _lay(
            desk,
            scene,
            _behaving(desk, scene, mention.i, mention.j),
            "bulk",
            value,
            mention.i,
            mention.j,
            f"bulk {value}",
        )


# --- test

_EXAM = word_list("quality", "exam")
_EXAM_PHRASES = ("before the", "in ed", "on arrival", "on examination")


def _test(desk: Desk, scene: Scene) -> None:
    """Find how the finished repair was tested on the table; examinations before it are none."""
    mentions = [m for m in scene.of("test") if scene.told(m.i) and _is_test(desk, scene, m)]
    if not mentions or not _after_repair(desk, scene):
        return
    order = {"active": 0, "traction": 1, "passive": 2}
    mention = min(mentions, key=lambda m: (order[m.value], m.i))
    targets = _behaving(desk, scene, mention.i, mention.j)
    if any(g.generic == "all" for g in scene.setting.groups) or "all" in scene.words(
        scene.sentence.i, scene.sentence.i + 2
    ):
        targets = desk.repairable() or targets
    later = [g for g in scene.setting.groups if g.digits and g.i >= mention.j]
    if not [g for g in scene.setting.groups if g.j <= mention.i] and len(later) > 1:
        targets = desk.repairable(tuple(d for g in later for d in g.digits)) or targets
    if not _names_repair(scene) and mention.value == "active":
        targets = _of_digits(desk, scene) or targets
    _lay(desk, scene, targets, "test", mention.value, mention.i, mention.j, f"{mention.value} test on the table")


def _of_digits(desk: Desk, scene: Scene) -> list[Target]:
    digits = tuple(d for g in scene.setting.groups for d in g.digits)
    if not digits and {"fist", "fists", "fingers", "them"} & set(scene.words(scene.sentence.i, scene.sentence.j)):
        return desk.repairable()
    digits = digits or scene.setting.digits
    return (
        [t for t in desk.repairable(digits or None) if t.tendon in ("FDP", "FPL")]
        if not digits
        else desk.repairable(digits)
    )


def _is_test(desk: Desk, scene: Scene, mention: Mention) -> bool:
    section = scene.sentence.section
    if section in ("indication", "diagnosis", "procedure", "consent", "previous", "findings") and not desk.topic:
        return False
    words = scene.words(scene.sentence.i, scene.sentence.j)
    if set(words) & _EXAM or any(p in " ".join(words) for p in _EXAM_PHRASES if p != "before the"):
        return False
    word = " ".join(scene.words(mention.i, mention.j))
    if scene.words(mention.i, mention.i + 1) == ["i"] and scene.word_before(mention.i) in ("when", "if", "as", "until"):
        return False
    if _foreign(scene, mention.i, mention.j) and word in ("traction", "pulled", "pull", "himself", "herself", "ranged"):
        return False
    if word in _IS_TEST_WORDS:
        context = _IS_TEST_CONTEXT
        if not set(words) & context:
            return False
    if (
        word in ("traction", "pull", "pulled", "under traction", "gentle traction", "proximal traction")
        and set(words) & _IS_TEST_WORDS_2
        and not set(words) & {"gap", "gapping", "test", "tested", "checked"}
    ):
        return False
    if scene.negated(mention.i, mention.j, 4) and mention.value != "active":
        return not set(words) & {"tested", "test", "performed", "done"}
    text = " ".join(words)
    return not any(
        p in text
        for p in (
            "not tested",
            "not test",
            "no test",
            "never tested",
            "was dropped",
            "we dropped",
            "not attempted",
            "could not be tested",
            "not possible",
        )
    )
