"""At which zone each tendon was cut."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Group
from notereader.reader.layout.tables import zone_value
from notereader.reader.page import Break, Mention
from notereader.reader.reasons import Reason
from notereader.reader.rules.dealt_out import dealt_out, targets_of_kind
from notereader.reader.rules.sutures.suture_owners import respective
from notereader.reader.scene import Scene, digits_at, group_targets


def zones(desk: Desk, scene: Scene) -> None:
    """Find the zone of each cut tendon; a zone without a tendon is said of every cut tendon of its digits."""
    _closing_a_cell(desk, scene)
    _at_the_same_level(desk, scene)
    _ticked(desk, scene)
    if "zone" not in scene.kinds and scene.sentence.section != "zone":
        return
    if _dealt(desk, scene) or _in_pairs(desk, scene) or _beside_fingers(desk, scene) or _by_finger(desk, scene):
        return
    _zone_heading(desk, scene)
    for mention in _zones(scene):
        if scene.page.standing[mention.i] == "story" and _only_in_story(desk):
            desk.add(
                scene,
                "repairs",
                ("*", "*", None),
                "zone",
                mention.value,
                [(mention.i, mention.j)],
                "zone of the cut tendons",
                Reason("in_story_before"),
            )
        if not scene.told(mention.i) or scene.sentence.section in ("instructions", "admin"):
            continue
        if _is_extensor(scene):
            continue
        named = _zone_named(scene, mention)
        targets = [t for group in named for t in group_targets(scene, group)]
        targets = respective(scene, mention.i, _peers(scene), targets)
        digits = _zone_digits(desk, scene, mention)
        if "respectively" in scene.said and len(digits) == len(_peers(scene)) > 1 and mention.i in _peers(scene):
            digits = (
                digits[_peers(scene).index(mention.i)],
            )  # 'ring and small fingers, zone I and zone II respectively'
        if targets:
            for target in targets:
                desk.tendon(scene, target, "zone", mention.value, [(mention.i, mention.j)], "zone of a named tendon")
        else:
            for digit in digits or ("*",):
                desk.add(
                    scene,
                    "repairs",
                    (digit, "*", None),
                    "zone",
                    mention.value,
                    [(mention.i, mention.j)],
                    "zone of the cut tendons of a digit",
                )


def _dealt(desk: Desk, scene: Scene) -> bool:
    """'Cut in zone II in the index and ring and in zone III in the small': lay down what is dealt out over fingers."""
    told = {(m.i, m.j): m.value for m in _zones(scene) if scene.told(m.i)}
    dealt = {} if _is_extensor(scene) else dealt_out(desk, scene, sorted(told), ("extent", "hurt"))
    named = any(g.tendons for g in scene.setting.groups)
    for span, digits in dealt.items():
        for target in targets_of_kind(scene, digits) if named else ():
            desk.tendon(scene, target, "zone", told[span], [span], "zone and finger in pairs")
        for digit in digits if not named else ():
            desk.add(scene, "repairs", (digit, "*", None), "zone", told[span], [span], "zone and finger in pairs")
    return bool(dealt)


def _at_the_same_level(desk: Desk, scene: Scene) -> None:
    """'Long: profundus cut by a quarter, same level', 'the FDP at the same level': of the zone told of last."""
    words = scene.page.words
    spots = range(scene.sentence.i, scene.sentence.j - 1)
    k = next((k for k in spots if words[k] == "same" and words[k + 1] == "level" and scene.told(k)), None)
    cut = "%" in scene.units or bool(scene.of("extent", "fraction", "hurt"))
    if k is None or not cut or scene.of("zone", "pulley"):
        return
    subject = scene.owner(k, k + 2)
    told = desk.laid("zone", before=scene.sentence.i)
    if not told or (subject is not None and subject.kind not in ("tendon", "digit")):
        return
    for digit in digits_at(scene, None, k):
        if not any(f.entry[0] == digit for f in told):
            span = [(k, k + 2)]
            desk.add(
                scene, "repairs", (digit, "*", None), "zone", told[-1].value, span, "at the level of the one before"
            )


def _ticked(desk: Desk, scene: Scene) -> None:
    """'Diagnosis: flexor tendon injury, zone [ ] I  [x] II  [ ] III': ticked on a line about something else."""
    if not scene.said.issuperset(("zone", "]")) or scene.of("zone") or scene.sentence.section == "zone":
        return
    words, last = scene.page.words, scene.sentence.j
    at = scene.sentence.i + scene.words(scene.sentence.i, last).index("zone")
    closed = [k for k in range(at + 1, last - 1) if words[k] == "]" and words[k - 1] in ("x", "v")]
    ticked = [k for k in closed if scene.told(k + 1)]
    if len(ticked) != 1:
        return
    letter = next((words[n + 2] for n in range(at, last - 2) if words[n] == "subzone" and words[n + 1] == ":"), "")
    value = zone_value([_unslipped(words[ticked[0] + 1]), letter])
    if value is None:
        return
    span = [(at, ticked[0] + 2)]
    named = [t for g in scene.setting.groups if g.tendons for t in group_targets(scene, g)]
    for target in named:
        desk.tendon(scene, target, "zone", value, span, "zone of a named tendon")
    for digit in (scene.setting.digits or ("*",)) if not named else ():
        desk.add(scene, "repairs", (digit, "*", None), "zone", value, span, "zone of the cut tendons of a digit")


def _closing_a_cell(desk: Desk, scene: Scene) -> None:
    """'FDP   cut through, II' in a grid: Roman figures that close the cell behind how far the tendon was cut."""
    k = scene.sentence.j - 1
    cut = scene.of("extent", "fraction") or "%" in scene.units
    if not scene.sentence.prefix or scene.word_before(k) != "," or not cut or scene.of("zone"):
        return
    figure = scene.page.raw(k, k + 1)
    value = zone_value([scene.page.words[k]]) if figure.isupper() and figure[0] in "IV" else None
    named = [g for g in scene.setting.groups if g.tendons and g.i == g.j]
    for target in group_targets(scene, named[0]) if value and named and scene.told(k) else []:
        desk.tendon(scene, target, "zone", str(value), [(k, k + 1)], "zone of a named tendon")


def _in_pairs(desk: Desk, scene: Scene) -> bool:
    """'Zone 3 in the ring, zone 2 in the small finger', 'Z3 in D4, D5 Z2': a zone and a finger, pair by pair."""
    told = [m for m in scene.of("zone", "digit") if scene.told(m.i)]
    pairs = [(a, b) if a.kind == "zone" else (b, a) for a, b in zip(told[::2], told[1::2], strict=False)]
    digits = {digit.value for _, digit in pairs}
    if len(pairs) < _FEWEST_PAIRS or len(told) % 2 or len(digits) < len(pairs) or scene.of("tendon"):
        return False
    if any(zone.kind == digit.kind for zone, digit in pairs) or "respectively" in scene.said or _is_extensor(scene):
        return False
    for zone, digit in pairs:
        span = [(min(zone.i, digit.i), max(zone.j, digit.j))]
        desk.add(scene, "repairs", (digit.value, "*", None), "zone", zone.value, span, "zone and finger in pairs")
    return True


_FEWEST_PAIRS = 2


def _beside_fingers(desk: Desk, scene: Scene) -> bool:
    """'..., zone IIC in the ring finger and zone IIB in the small', 'index (zone 2B) and middle (zone 2C)'."""
    zones = [m for m in _zones(scene) if scene.told(m.i)]
    if len(zones) < _FEWEST_PAIRS or _is_extensor(scene) or "respectively" in scene.said:
        return False
    fingers = scene.of("digit")
    behind = [next((d for d in fingers if _led_by(scene, z, d)), None) for z in zones]
    before = [next((d for d in reversed(fingers) if _leads_to(scene, d, z)), None) for z in zones]
    pairs = next((found for p in (behind, before) if len(found := [d for d in p if d is not None]) == len(zones)), [])
    if len({d.value for d in pairs}) < len(zones) or any(_tendon_of(scene, d) for d in pairs):
        return False
    for zone, finger in zip(zones, pairs, strict=True):
        span = [(min(zone.i, finger.i), max(zone.j, finger.j))]
        for digit in _listed_with(scene, finger, zones):
            desk.add(scene, "repairs", (digit, "*", None), "zone", zone.value, span, "zone and finger in pairs")
    return True


def _tendon_of(scene: Scene, finger: Mention) -> bool:
    """'Index FDP zone 2B': the zone of a named tendon, not of a finger."""
    return any(m.j == finger.i or m.i == finger.j for m in scene.of("tendon"))


def _listed_with(scene: Scene, finger: Mention, zones: list[Mention]) -> tuple[str, ...]:
    """Return the finger with those it is listed with, 'ring and small finger (zone II)', if no zone stands between."""
    group = next((g for g in scene.setting.groups if g.i <= finger.i < g.j and not g.tendons), None)
    parted = group is None or any(group.i <= z.i < group.j for z in zones)
    return (finger.value,) if parted or group is None else group.digits


def _led_by(scene: Scene, zone: Mention, finger: Mention) -> bool:
    between = scene.words(zone.j, finger.i) if zone.j <= finger.i <= zone.j + 3 else [","]
    return all(word in _LEADS or word in ("left", "right", "l", "r") for word in between)


def _leads_to(scene: Scene, finger: Mention, zone: Mention) -> bool:
    between = scene.words(finger.j, zone.i) if finger.j <= zone.i <= finger.j + 2 else [";"]
    return all(word in ("(", "[", ",", ":", "-", "in", "at", "is", "was") for word in between)


def _by_finger(desk: Desk, scene: Scene) -> bool:
    """'Zone: II (ring), I (small)', 'ZONE: Index II. Middle III.': each finger with its own zone beside it."""
    first = scene.words(scene.sentence.i, scene.sentence.i + 1)
    if scene.sentence.section != "zone" and first not in (["zone"], ["zones"], ["level"]):
        return False
    found: list[tuple[Group, str, int]] = []
    for group in (g for g in scene.setting.groups if g.digits and not g.tendons and scene.told(g.i)):
        k = group.j + (scene.next_word(group.j) in (":", "=", "-"))
        before = next((m for m in range(group.i - 1, scene.sentence.i, -1) if scene.page.words[m] not in _LEADS), None)
        ahead = scene.words(k, k + 1) if scene.next_word(k + 1) in ("", ",", ".", ";", "and") else []
        apart = before is not None and (before < group.i - 1 or scene.word_before(before) in ("zone", ",", ":", "zn"))
        led = scene.words(before, before + 1) if before is not None and apart else []
        for words, at in ((ahead, k), (led, before)):
            value = zone_value([_unslipped(w) for w in words])
            if value and at is not None:
                found.append((group, value, at))
                break
    if not found or (len(found) == 1 and len(scene.of("zone")) > 1):
        return False
    for group, value, at in found:
        for digit in group.digits:
            span = [(min(group.i, at), max(group.j, at + 1))]
            desk.add(scene, "repairs", (digit, "*", None), "zone", value, span, "zone of the cut tendons of a digit")
    return True


_LEADS = frozenset(["(", "in", "the", "for", "[", "of"])


_OF_A_FORM = frozenset(["form", "sheet", "template", "version", "card", "model"])  # 'Theatre ..... form T2'


def _zones(scene: Scene) -> list[Mention]:
    """Return the zones of a sentence; 'zones IIC and IIB' are two, and so are 'zone 2B and 2C, respectively'."""
    found: list[Mention] = []
    for mention in scene.of("zone"):
        if scene.word_before(mention.i) in _OF_A_FORM:
            continue
        found.append(mention)
        value = zone_value(scene.words(mention.j + 1, mention.j + 2))
        behind = [w for w in scene.words(mention.j + 2, min(mention.j + 4, scene.sentence.j)) if w != ","]
        several = scene.page.words[mention.i] == "zones" or behind[:1] == ["respectively"]
        if several and scene.next_word(mention.j) in ("and", "/", "&", ",") and value:
            found.append(Mention("zone", value, mention.j + 1, mention.j + 2))
    return found


def _peers(scene: Scene) -> list[int]:
    """Return the zones that 'respectively' deals out: those named before it."""
    words = scene.words(scene.sentence.i, scene.sentence.j)
    end = scene.sentence.i + words.index("respectively") if "respectively" in words else scene.sentence.j
    ahead = [m.i for m in _zones(scene) if m.i < end]
    return ahead if len(ahead) > 1 else [m.i for m in _zones(scene)]


def _is_extensor(scene: Scene) -> bool:
    return any(m.kind == "structure" and m.value == "extensor tendon" for m in scene.mentions) and not any(
        m.kind == "tendon" for m in scene.mentions
    )


def _zone_named(scene: Scene, mention: Mention) -> list[Group]:
    """Return the tendon groups a zone belongs to: those before it since the last other zone, else those after it."""
    groups = [g for g in scene.setting.groups if g.tendons]
    following = scene.next_word(mention.j)
    if (
        following in ("all", "throughout")
        or (following == "both" and scene.next_word(mention.j + 1) in ("", ".", ",", ";"))
        or scene.words(mention.i - 2, mention.i) == ["all", "at"]
    ):
        return []  # 'Zone five all of this', 'All at zone IV:'
    if _of_all_before(scene, mention):
        return []
    if scene.word_before(mention.i) == "both" and mention.i > scene.sentence.i + 2:
        return [g for g in groups if g.j <= mention.i]
    zones_before = [m for m in _zones(scene) if m.j <= mention.i]
    if "respectively" in scene.words(mention.j, scene.sentence.j):
        zones_before = []
    low = zones_before[-1].j if zones_before else scene.sentence.i
    before = [g for g in groups if low <= g.i and g.j <= mention.i]
    if before:
        return before
    after = [g for g in groups if g.i >= mention.j]
    next_zone = next((m.i for m in scene.of("zone") if m.i >= mention.j), scene.sentence.j)
    after = [g for g in after if g.i < next_zone]
    glued = [g for g in after if g.i - mention.j <= 5]
    opens = mention.i - scene.sentence.i <= 1 and ":" in scene.words(mention.j, glued[0].i) if glued else False
    if glued and (opens or scene.next_word(mention.j) == ":"):
        return after  # 'In zone 3 one sees: ...; ...; ...', 'Index finger, zone II: laceration of FDP and of one slip'
    return glued if not zones_before or scene.header else []


def _of_all_before(scene: Scene, mention: Mention) -> bool:
    """'...; all of these divisions lay in zone IIC': a clause of its own on every cut told before it."""
    first, _ = scene.part(mention.i)
    lead = scene.words(first, mention.i)
    named = any(first <= g.i < mention.i and (g.tendons or g.digits) for g in scene.setting.groups)
    return first > scene.sentence.i and lead[:1] in (["all"], ["both"]) and len(lead) > 2 and not named


def _zone_digits(desk: Desk, scene: Scene, mention: Mention) -> tuple[str, ...]:
    """Return the digits a zone is said of; none where it is the only zone of the note and no digit stands beside it."""
    first, last = scene.part(mention.i)
    values = desk.values_told("zone")
    following = scene.next_word(mention.j)
    if _of_all_before(scene, mention):
        named = [d for g in scene.setting.groups if g.digits and g.j <= mention.i for d in g.digits]
        return tuple(dict.fromkeys(named)) if len(values) > 1 else ()
    if following == "throughout" or (
        len(values) == 1 and (mention.value in ("IV", "V") or following in ("all", "both"))
    ):
        return ()
    opens = scene.word_before(mention.i) == "("  # 'Middle (zone III). FDP cut.'
    groups = [g for g in scene.setting.groups if g.digits]
    here = any(first <= g.i < last or scene.header or (opens and g.j == mention.i - 1) for g in groups)
    return digits_at(scene, None, mention.i) if here or len(values) > 1 else ()


def _only_in_story(desk: Desk) -> bool:
    zones = [(s, m) for s in desk.having("zone") for m in s.of("zone")]
    return len({m.value for _, m in zones}) == 1 and not any(s.told(m.i) for s, m in zones)


def _unslipped(word: str) -> str:
    """Return 'iii' for the 'lll' of a scan."""
    return word.replace("l", "i") if set(word) <= {"l", "i"} else word


# 'Zone: [x] I  [ ] II': what draws a ticked box.
_BOX = frozenset(["[", "]", "(", ")", "x", "\u2611", "\u2612"])


# 'Level  [ ] 1  [x] 2   -> [x] D', 'Level [x] II   if II: [x] C'
_ASKS_LEVEL = frozenset(["level", "-", ">", "sub", "subzone", ":", ",", "if"])


def _behind_label(scene: Scene) -> int:
    """Return the word behind the colon or the wider gap of a label of a few words, or the first of the sentence."""
    first, last = scene.sentence.i, min(scene.sentence.i + _LONG_LABEL, scene.sentence.j)
    behind = next((k + 1 for k in range(first, last) if scene.page.words[k] == ":"), 0)
    if behind or not _BOX.isdisjoint(scene.said):
        return behind or first
    return next((k for k in range(first + 1, last) if scene.page.breaks[k] == Break.COLUMN), first)


_LONG_LABEL = 6  # words


def _letter_behind(desk: Desk, scene: Scene) -> list[str]:
    """'Zone: [x] 2   sub: [ ]A [x]B': the letter ticked under the next label of the line."""
    after = desk.scene_after(scene)
    if after is None or after.sentence.section != "zone" or after.sentence.block != scene.sentence.block:
        return []
    asked = [word for span in after.sentence.prefix for word in after.words(*span)]
    letters = [w for w in after.words(after.sentence.i, after.sentence.j) if w not in _BOX]
    return letters if not _OF_ZONE.isdisjoint(asked) and len(letters) == 1 and letters[0] in "abcd" else []


_OF_ZONE = frozenset(["sub", "subzone", "subzones", "subdivision"])


def _zone_heading(desk: Desk, scene: Scene) -> None:
    """'Zone: II', 'Zone | 2', 'Tendon zone: 2C', 'Level of injury: 3' on a line of its own."""
    if scene.sentence.section != "zone" or scene.of("zone"):
        return
    words = [k for k in range(_behind_label(scene), scene.sentence.j) if scene.told(k)]
    if sum(scene.page.words[k] == "/" for k in words) >= 2:  # choices: the one in brackets was taken
        words = [k for k in words if scene.words(k - 1, k) == ["("] and scene.next_word(k + 1) == ")"][:1]
    told = (_unslipped(scene.page.words[k]) for k in words if scene.page.words[k] not in _BOX | _ASKS_LEVEL)
    value = zone_value(list(dict.fromkeys([*told, *_letter_behind(desk, scene)])))
    named = [t for g in scene.setting.groups if g.tendons for t in group_targets(scene, g)]
    if not named and scene.setting.labelled:
        named = list(scene.setting.focus)  # 'Tendon: FDP / Zone: 2B'
    for target in named if value else []:
        desk.tendon(scene, target, "zone", str(value), [(scene.sentence.i, scene.sentence.j)], "zone of a named tendon")
    if value and not named:
        own = tuple(d for g in scene.setting.groups for d in g.digits)
        focus = scene.setting.digits if value not in ("IV", "V") else ()  # a wrist has one level for all
        for digit in own or focus or ("*",):
            span = [(scene.sentence.i, scene.sentence.j)]
            desk.add(scene, "repairs", (digit, "*", None), "zone", value, span, "zone of the cut tendons of a digit")
