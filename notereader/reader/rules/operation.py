"""The operation as a whole: dates, side, anaesthesia, mechanism."""

from notereader.reader.desk import Desk
from notereader.reader.page import FoundDate, Mention, Page
from notereader.reader.scene import Scene

_NOWHERE = ("", "", None)
_DEPTH = ["local", "sedation", "wide-awake local", "regional", "general"]
_INJURY_WORDS = frozenset("injury injured accident doi cut when sustained wound slipped fell caught put drove broke struck pinned slashed crushed grabbed ran stabbed lacerated knife glass saw drew opened burst trapped on came".split())
_OTHER_DATES = frozenset("transcribed dictated typed signed authenticated fax faxed received printed t: d: clinic reviewed recd sent discharged attested versions born dob entered authenticated. appointment".split())
_NOT_A_SIDE = frozenset(["hand dominant", "dominant", "-handed", "handed"])


def operation(desk: Desk) -> None:
    """Find the facts of the operation from the whole note."""
    _dates(desk)
    _side(desk)
    _anaesthesia(desk)
    _mechanism(desk)


def _section_of(desk: Desk, k: int) -> tuple[Scene, str]:
    scene = next(s for s in desk.scenes if s.sentence.i <= k < s.sentence.j)
    return scene, scene.sentence.section


def _dates(desk: Desk) -> None:
    dates = desk.page.dates
    if not dates:
        return
    chosen = _operation_date(desk, dates)
    if chosen is not None:
        _lay_date(desk, chosen, "date")
    injured = _injury_date(desk, dates, chosen)
    if injured is not None:
        _lay_date(desk, injured, "injury_date")


def _lay_date(desk: Desk, found: FoundDate, name: str) -> None:
    scene, _ = _section_of(desk, found.i)
    reasons = ["the order of day and month is inferred from the rest of the note"] if found.inferred else []
    desk.add(scene, "operation", _NOWHERE, name, found.value, [(found.i, found.j)], name.replace("_", " "), *reasons)


def _operation_date(desk: Desk, dates: list[FoundDate]) -> FoundDate | None:
    """Return the date of operation: under a date heading, else the first that is no other date."""
    headed = [d for d in dates if _section_of(desk, d.i)[1] == "date"]
    if headed:
        return headed[0]
    for found in dates:
        scene, section = _section_of(desk, found.i)
        if section in ("indication", "injury_date", "instructions", "signature", "previous", "mechanism", "consent"):
            continue
        if _is_other(desk, found) or _tells_injury(desk, scene, found):
            continue
        return found
    return None


def _line_words(desk: Desk, found: FoundDate, reach: int) -> list[str]:
    i = max(0, found.i - reach)
    return desk.page.words[i : found.i]


def _is_other(desk: Desk, found: FoundDate) -> bool:
    return bool(set(_line_words(desk, found, 6)) & _OTHER_DATES)


def _tells_injury(desk: Desk, scene: Scene, found: FoundDate) -> bool:
    """Tell whether the words beside a date speak of the accident."""
    near = set(desk.page.words[max(scene.sentence.i, found.i - 14) : min(scene.sentence.j, found.j + 14)])
    before = _line_words(desk, found, 4)
    if {"operation", "surgery", "theatre", "op", "list"} & set(before):
        return False
    return bool(near & _INJURY_WORDS - {"on", "when", "came"}) or any(m.kind == "mechanism" for m in scene.mentions)


def _injury_date(desk: Desk, dates: list[FoundDate], chosen: FoundDate | None) -> FoundDate | None:
    """Return the date of injury: under its heading, in the story, or beside words of the accident; never after the operation."""
    def possible(found: FoundDate) -> bool:
        return found is not chosen and (chosen is None or found.value <= chosen.value)

    headed = [d for d in dates if _section_of(desk, d.i)[1] in ("injury_date", "mechanism") and possible(d)]
    if headed:
        return headed[0]
    told = [d for d in dates if possible(d) and not _is_other(desk, d)]
    told = [d for d in told if chosen is None or d.value < chosen.value or _tells_injury(desk, _section_of(desk, d.i)[0], d)]
    for found in told:
        scene, section = _section_of(desk, found.i)
        if section in ("date", "signature", "instructions", "previous"):
            continue
        if section == "indication" and not _elsewhere(scene):
            return found
        if _tells_injury(desk, scene, found) and not _elsewhere(scene):
            return found
    return None


def _elsewhere(scene: Scene) -> bool:
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    return bool(words & {"repaired", "repair", "operated", "elsewhere", "clinic", "referred", "facility", "outside"})


# --- side


def _side(desk: Desk) -> None:
    """Find the side: its heading first, then titles and diagnoses, then the body; another side said of the hand is a rival."""
    found: list[tuple[int, Scene, Mention]] = []
    for scene in desk.scenes:
        rank = {"side": 0, "procedure": 1, "diagnosis": 1, "digit": 1}.get(scene.sentence.section, 2)
        for m in scene.of("side"):
            if _is_side(scene, m) and desk.page.standing[m.i] in ("", "story", "plan"):
                found.append((rank + (1 if desk.page.standing[m.i] else 0), scene, m))
    if not found:
        return
    found.sort(key=lambda f: (f[0], f[2].i))
    best = found[0]
    told: set[str] = set()
    for rank, scene, m in found:
        if m.value not in told and (rank <= 2 or m.value == best[2].value):
            told.add(m.value)
            desk.add(scene, "operation", _NOWHERE, "side", m.value, [(m.i, m.j)], "side named")


_SIDE_AFTER = frozenset(
    "hand wrist thumb index middle long ring small little finger palm arm forearm upper digit fifth fourth third second first "
    "2nd 3rd 4th 5th if mf rf sf lf d1 d2 d3 d4 d5 fpl fdp fds distal volar ray sided side dominant hand, flexor zone . , ; : ) | proximal side: "
    "extremity".split()
)


def _is_side(scene: Scene, m: Mention) -> bool:
    """'was left', 'right-handed' and 'right through' name no side."""
    words = scene.page.words
    after = words[m.j] if m.j < scene.sentence.j else ""
    second = words[m.j + 1] if m.j + 1 < scene.sentence.j else ""
    before = scene.word_before(m.i)
    if second in ("dominant", "handed", "dominance") or after in ("dominant", "handed", "through", "round", "away", "across", "on", "at", "after", "up", "beneath"):
        return False
    if after == "-" and second in ("handed", "hand") and "dominant" in words[m.j : m.j + 5]:
        return False
    if before in ("was", "were", "been", "is", "are", "be", "all", "i", "and", "had") and words[m.i] == "left" and after not in _SIDE_AFTER - {".", ",", ";", ")"}:
        return False
    if scene.sentence.section == "side":
        return True
    if len(words[m.i]) == 1:
        return after in _SIDE_AFTER or after in ("hand", "wrist") or any(g.i == m.j for g in scene.setting.groups) or after == "" or any(g.i <= m.j + 1 and g.j > m.j for g in scene.setting.groups)
    if before in ("his", "her", "the", "of", "in", ",", "", ":", "/", "|", "-", "a", "patient's", "on", "side") or after in _SIDE_AFTER:
        return after not in ("alone", "as", "where", "it", "be", "intact", "open", "in", "to", "out", "off", "loose", "untouched", "undisturbed", "with")
    return after in _SIDE_AFTER or any(g.i == m.j for g in scene.setting.groups)


# --- anaesthesia and mechanism


def _anaesthesia(desk: Desk) -> None:
    """Find the deepest anaesthesia stated; a block with sedation is regional, wide awake beats plain local."""
    headed: list[tuple[Scene, Mention]] = []
    loose: list[tuple[Scene, Mention]] = []
    for scene in desk.scenes:
        for m in scene.of("anaesthesia"):
            if scene.negated(m.i, m.j, 3) and not m.value.startswith("wide"):
                continue
            if not _was_given(desk, scene, m):
                continue
            (headed if scene.sentence.section in ("anaesthesia", "anaesthetist") else loose).append((scene, m))
    chosen = _deepest(headed) or _deepest(loose)
    wide = [f for f in loose if f[1].value == "wide-awake local"]
    if chosen and chosen[1].value == "local" and wide:
        chosen = wide[0]
    if chosen:
        scene, m = chosen
        desk.add(scene, "operation", _NOWHERE, "anaesthesia", m.value, [(m.i, m.j)], "deepest anaesthesia stated")


def _was_given(desk: Desk, scene: Scene, m: Mention) -> bool:
    """Offered, declined and postoperative anaesthesia was not given; ordinary words need a context."""
    standing = desk.page.standing[m.i]
    if standing in ("history", "teaching", "considered", "conditional"):
        return False
    after = scene.words(m.j, min(m.j + 4, scene.sentence.j))
    before = scene.words(max(scene.sentence.i, m.i - 3), m.i)
    if {"declined", "refused", "offered", "avoided"} & {*after, *before}:
        return False
    word = " ".join(scene.words(m.i, m.j))
    in_place = scene.sentence.section in ("anaesthesia", "anaesthetist", "procedure", "surgeon", "team")
    if word in ("general", "local", "regional", "plexus", "axillary", "mac"):
        return scene.sentence.section in ("anaesthesia", "anaesthetist") or bool({"anesthesia", "anaesthesia", "anesthetic", "anaesthetic", "anaes", "anaes:", "block"} & {*after, *before})
    if word in ("lidocaine", "lignocaine", "plain lidocaine", "plain lignocaine", "digital block", "ring block", "digital nerve block") and not in_place:
        return not {"postoperative", "relief", "end", "closing", "afterwards"} & set(scene.words(scene.sentence.i, scene.sentence.j))
    return True


def _deepest(found: list[tuple[Scene, Mention]]) -> tuple[Scene, Mention] | None:
    return max(found, key=lambda f: (_DEPTH.index(f[1].value), -f[1].i)) if found else None


def _mechanism(desk: Desk) -> None:
    """Find how the injury came about, in the story, the diagnosis or the title."""
    order = {"indication": 0, "mechanism": 0, "injury_date": 0, "diagnosis": 1, "procedure": 2}
    found: list[tuple[int, Scene, Mention]] = []
    for scene in desk.scenes:
        section = scene.sentence.section
        standing = desk.page.standing
        for m in scene.of("mechanism"):
            if standing[m.i] in ("history", "teaching", "plan", "considered", "conditional") or section in ("previous", "instructions", "implants", "dressing", "closure", "admin", "consent"):
                continue
            rank = order.get(section, 3)
            if rank == 3 and not _tells_story(scene):
                continue
            if not scene.negated(m.i, m.j, 2):
                found.append((rank, scene, m))
    if not found:
        return
    strong = [f for f in found if f[2].value not in ("sharp",)]
    special = [f for f in strong if f[0] <= 2] or strong
    pool = [f for f in found if f[2].value in ("rupture",)] or _ranked(special, found)
    rank, scene, m = min(pool, key=lambda f: (f[0], f[2].i))
    desk.add(scene, "operation", _NOWHERE, "mechanism", m.value, [(m.i, m.j)], "mechanism named")


def _ranked(special: list[tuple[int, Scene, Mention]], found: list[tuple[int, Scene, Mention]]) -> list[tuple[int, Scene, Mention]]:
    """A saw, a crush or a bite says more than 'broken' or 'cut'; where both are told in one breath it decides."""
    if not special:
        return found
    weak = {"door", "press", "drill", "hinge", "roller", "caught between", "gear", "belt", "rollers", "baler"}
    firm = [f for f in special if " ".join(f[1].words(f[2].i, f[2].j)) not in weak]
    if firm:
        return firm
    sharp = [f for f in found if f[2].value == "sharp" and f[0] <= 1]
    return sharp or special


_STORY = frozenset("old year yo male female sustained accident cut slipped fell injury injured patient yr man woman lady boy girl he she when working his her hand".split())


def _tells_story(scene: Scene) -> bool:
    """Outside the story a mechanism counts only in a sentence that tells one, or right at the start of the note."""
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    if scene.sentence.block <= 1 and any(m.kind in ("digit", "side", "hurt", "zone") for m in scene.mentions):
        return True
    return len(words & _STORY) >= 2
