"""Who operated, helped, gave the anaesthetic and signed, where no heading names them."""

import itertools
import re

from notereader.reader.desk import Desk
from notereader.reader.page import Break
from notereader.reader.rules.whole_note.element_words import near_words
from notereader.reader.rules.whole_note.signing_initials import signs_by_initials
from notereader.reader.rules.whole_note.signing_names import closing_name, signs_by_name
from notereader.reader.rules.whole_note.team_labels import team_member
from notereader.reader.rules.whole_note.whole import Span, element_list, scene_at
from notereader.reader.scene import Scene

_INITIALS = re.compile(r"[A-Z]{1,2}\Z|(?:[A-Za-z]\.){1,3}[A-Za-z]?\Z")
_DONE = frozenset(["performed", "operated", "done"])
_ANAESTHESIA = frozenset(["anaesthesia", "anesthesia"])
_GASES = ("anaes", "anes", "narcos")  # how words of anaesthesia begin
_TEAM = frozenset(["surgeon", "consultant", "attending"])


def surgeon(desk: Desk) -> Span | None:
    """'The registrar who operated', 'performed by the consultant', 'op = KJ', 'SpR, SHO assisting', 'I repaired'."""
    for scene in desk.saying(element_list("operates") | element_list("operator_labels") | _DONE):
        if scene.sentence.section not in ("indication", "previous", "instructions"):
            for span in near_words(scene, element_list("operates"), element_list("people"), 3):
                return span
            named = _done_by(scene) or _labelled(desk, scene, element_list("operator_labels"))
            if named is not None:
                return named
    early = desk.scenes[: max(6, len(desk.scenes) // 3)]
    helped = next((who for scene in early if (who := _before_assistant(scene)) is not None), None)
    pair = _me_and(desk) or _team(desk)
    named = helped or (pair[0] if pair is not None else None) or team_member(desk, "surgeon") or _graded_first(desk)
    return named or _letter_writer(desk) or _first_person(desk)


def _done_by(scene: Scene) -> Span | None:
    """'Performed on 21 November 2032 by the resident consultant'."""
    words = scene.page.words
    done = [k for k in range(scene.sentence.i, scene.sentence.j) if words[k] in _DONE]
    for k in done[:1]:
        by = next((m for m in range(k + 1, min(k + _FAR, scene.sentence.j)) if words[m] == "by"), None)
        if by is not None:
            near = range(by + 1, min(by + 5, scene.sentence.j))
            people = element_list("people") | (element_list("titles") if words[k] == "operated" else frozenset())
            who = next((m for m in near if words[m] in people), None)
            if who is not None and scene.told(k):
                return by, who + 1
    return None


_FAR = 12  # words: 'on the twenty-second of September 2032'


def _labelled(desk: Desk, scene: Scene, labels: frozenset[str]) -> Span | None:
    """'op = KJ', 'Op: W.K.', 'ass. Y.': initials behind a short label."""
    page = desk.page
    if labels.isdisjoint(scene.said):
        return None
    for k in range(scene.sentence.i, min(scene.sentence.j, scene.sentence.i + 40) - 1):
        if page.words[k] not in labels:
            continue
        at = k + 1
        while at < scene.sentence.j and page.words[at] in ("=", ":", ".", "-", "dr", "mr", "miss", "ms", "mrs", "prof"):
            at += 1
        if at >= scene.sentence.j:
            continue  # a label at the end of a note that was cut off
        begins = k == scene.sentence.i and scene.next_word(at + 1) in (",", ";", "/", "+")  # 'Surg AB, asst MN'
        begins = begins or (len(page.words[k]) > 2 and len(page.raw(at, at + 1)) == 2)  # 'Surg RK  Asst JO  Anaes DM'
        marked = at > k + 1 or page.raw(k, k + 1)[:1].islower() or begins
        if marked and _INITIALS.match(page.raw(at, at + 1)) and not _is_term(desk, at):
            return k, _initials_end(scene, at)
        if page.words[at] in ("none", "nil") and "=" in page.words[k:at]:
            return k, at + 1
        if page.words[k + 1] == ":" and page.words[at] in element_list("people"):
            return k, at + 1  # 'Ass: student'
    return None


def _initials_end(scene: Scene, k: int) -> int:
    """Return the word after initials that begin at word k: 'W.K.'."""
    words = scene.page.words
    while k + 2 < scene.sentence.j and words[k + 1] == "." and len(words[k + 2]) == 1 and words[k + 2].isalpha():
        k += 2
    return k + 1


def _is_term(desk: Desk, k: int) -> bool:
    """Tell whether a word means something of the trade: 'L', 'RF', 'FDP' are no initials."""
    page = desk.page
    known = [*scene_at(desk, k).mentions, *page.elements, *page.headings]
    return any(m.i <= k < m.j for m in known) or k in page.digit_words or k in page.tendon_words


def _before_assistant(scene: Scene) -> Span | None:
    """'SpR (K.B.), SHO assisting', 'Consultant, foundation doctor to assist': the first of the two operated."""
    words = scene.page.words
    if element_list("helps").isdisjoint(scene.said):
        return None
    people = [k for k in range(scene.sentence.i, scene.sentence.j) if words[k] in element_list("people")]
    helps = next((k for k in range(scene.sentence.i, scene.sentence.j) if words[k] in element_list("helps")), None)
    if helps is None or len(people) < 2 or people[0] - scene.sentence.i > 4 or "," not in words[people[0] : helps]:
        return None
    return people[0], people[0] + 1


def _me_and(desk: Desk) -> tuple[Span, Span] | None:
    """'me + FY2': who writes operated, who is named behind helped."""
    for scene in desk.scenes[: max(4, len(desk.scenes) // 4)]:
        words = scene.page.words
        if "me" not in scene.said:
            continue
        for k in range(scene.sentence.i, scene.sentence.j - 2):
            if words[k] == "me" and words[k + 1] in ("+", "&") and words[k + 2] in element_list("people"):
                return (k, k + 1), (k + 2, k + 3)
    return None


def _team(desk: Desk) -> tuple[Span, Span] | None:
    """'Surg ST6 + SHO', 'done by myself with the house officer': who operated, and with whom."""
    for scene in desk.scenes[: max(8, len(desk.scenes) // 3)]:
        words = scene.page.words
        if scene.sentence.section in ("indication", "previous", "instructions", "anaesthesia", "diagnosis"):
            continue
        if _JOINERS.isdisjoint(scene.said) or scene.said & element_list("only_spoken_with"):
            continue
        for k in range(scene.sentence.i + 1, scene.sentence.j - 1):
            helper = _helper(scene, k + 1) if words[k] in _JOINERS else None
            first = _operator_before(desk, scene, k) if helper is not None else None
            if helper is not None and first is not None:
                return (first, first + 1), (k, helper + 1)
    return None


_JOINERS = frozenset(["+", "with", "plus"])


def _helper(scene: Scene, k: int) -> int | None:
    """Return the word of a grade right behind 'with', with only small words before it, or None."""
    words = scene.page.words
    for m in range(k, min(k + 6, scene.sentence.j)):
        word = words[m]
        if word in element_list("people") or word.removesuffix("s") in element_list("people"):
            after = words[m + 1 : m + 4]
            gas = any(w.startswith(_GASES) or w in ("block", "anaesthetic", "anesthetic") for w in [word, *after])
            return None if gas else m
        if word in (".", ",", ";", ":", "for") or word in element_list("own_deeds"):
            return None
    return None


def _operator_before(desk: Desk, scene: Scene, k: int) -> int | None:
    """Return the word of who operated before 'with': a grade, 'me', initials, or who wrote 'I operated'."""
    words = scene.page.words
    for m in range(max(scene.sentence.i, k - 12), k):
        if words[m] in element_list("people") or words[m] in ("me", "myself", "i"):
            return m
        if m >= k - 3 and _INITIALS.match(desk.page.raw(m, m + 1)) and not _is_term(desk, m):
            return m
    return None


def _graded_first(desk: Desk) -> Span | None:
    """'Cons T. W. / reg assist / GA', 'Surg ST3, asst FY2': the grade that a line of the team begins with."""
    for scene in desk.scenes[:8]:
        words, i, j = scene.page.words, scene.sentence.i, scene.sentence.j
        if scene.header or j - i > 40 or scene.said & element_list("addresses"):
            continue
        k = i + (words[i] in element_list("operator_labels")) + (words[i : i + 2] in (["by", ":"], ["who", ":"]))
        k += words[k : k + 1] == [":"]
        graded = words[k : k + 1] and words[k] in element_list("grades") - {"department", "service", "grade", "staff"}
        team = any(w.startswith(_GASES) or w in element_list("helps") | _TEAM_SIGNS for w in scene.said)
        if graded and team and not words[k].startswith(_GASES):
            return k, min(k + 3, j)
    return None


_TEAM_SIGNS = frozenset(["+", "asst", "ass", "ga", "scrub", "walant", "tq", "block", "bier"])


def _letter_writer(desk: Desk) -> Span | None:
    """In a letter the surgeon is who signs it: 'Consultant hand surgeon' on the last line."""
    last = _last_lines(desk, 1)[0]
    words = set(desk.page.words[last[0] : last[1]])
    return last if words & {"surgeon", "consultant"} and last[1] - last[0] <= 12 else None


def _first_person(desk: Desk) -> Span | None:
    """'I repaired the FDP', 'I did it myself', 'operated by me': who writes operated."""
    for scene in desk.saying(element_list("own_deeds")):
        if scene.sentence.section in ("indication", "previous", "instructions", "teaching"):
            continue
        words = scene.page.words
        for k in range(scene.sentence.i, scene.sentence.j - 1):
            deed = words[k + 1] if words[k] in ("i", "we") else ""
            if deed in element_list("own_deeds") and not desk.page.standing[k]:
                return k, min(k + 3, scene.sentence.j)
    return None


def assistant(desk: Desk) -> Span | None:
    """'Consultant hand surgeon with associate specialist', 'the PA helping', 'fellow scrubbed', 'ass = RW'."""
    for scene in desk.scenes[: max(6, len(desk.scenes) // 3)]:
        words = scene.page.words
        if _TEAM.isdisjoint(scene.said) or scene.said.isdisjoint(("with", "+")):
            continue
        for k in range(scene.sentence.i + 1, scene.sentence.j - 1):
            team = set(scene.words(max(scene.sentence.i, k - 4), k)) & _TEAM
            if words[k] in ("with", "+") and team and set(words[k + 1 : k + 4]) & element_list("people"):
                return k + 1, min(k + 3, scene.sentence.j)
    for scene in desk.scenes:
        if scene.sentence.section in ("indication", "previous", "instructions", "signature"):
            continue
        found = _labelled(desk, scene, element_list("assistant_labels")) or _helped(desk, scene)
        if found is not None:
            return found
    pair = _me_and(desk) or _team(desk)
    return pair[1] if pair is not None else team_member(desk, "assistant")


def _helped(desk: Desk, scene: Scene) -> Span | None:
    """'the PA helping', 'fellow scrubbed', 'together with our fellow'."""
    words = scene.page.words
    for i, j in near_words(scene, element_list("people"), element_list("helps"), 3):
        alone = {"nobody", "no", "none", "not"} & set(words[max(scene.sentence.i, i - 3) : j])
        if scene.told(i) and not alone:
            return i, j
    together = range(scene.sentence.i, scene.sentence.j - 2) if "together" in scene.said else ()
    for k in together:
        if words[k : k + 2] == ["together", "with"] and set(words[k + 2 : k + 5]) & element_list("people"):
            return k, min(k + 4, scene.sentence.j)
    return None


# --- anaesthetist


def anaesthetist(desk: Desk) -> Span | None:
    """'by the anesthesia service', 'given by Dr. G', 'axillary block, Dr. C. present', 'Anaes: SAS grade'."""
    gases = frozenset(w for w in desk.page.words if w.startswith(_GASES))
    for scene in desk.scenes:
        given = [m for m in scene.of("anaesthesia") if desk.page.standing[m.i] in ("", "story")]
        for i, j in near_words(scene, _ANAESTHESIA, element_list("anaesthetic_people"), 2):
            if not any(h.i < j and i < h.j for h in desk.page.headings):
                return i, j
        headed = scene.sentence.section in ("anaesthesia", "anaesthetist")
        if given or headed or not gases.isdisjoint(scene.said):
            found = _giver(desk, scene, [m.j for m in given], headed)
            found = found or _labelled(desk, scene, element_list("anaesthetist_labels"))
            if found is not None:
                return found
        for i, j in near_words(scene, element_list("gives"), element_list("gases"), 3):
            before = [
                k for k in range(max(scene.sentence.i, i - 5), i) if scene.page.words[k] in element_list("titles")
            ]
            if before:  # 'Dr L. giving the anaesthetic'
                return before[-1], j
    return team_member(desk, "anaesthetist")


def _giver(desk: Desk, scene: Scene, after: list[int], headed: bool) -> Span | None:
    """Return the words of who gave an anaesthetic: behind 'by', or a doctor or a grade told in the same breath."""
    words, last = scene.page.words, scene.sentence.j
    gas = [k for k in range(scene.sentence.i, last) if words[k].startswith(_GASES)]
    low = min([*after, *(k + 1 for k in gas)], default=scene.sentence.i if headed else last)
    heads = {k for h in desk.page.headings for k in range(h.i, h.j)}
    for k in range(low, min(low + 16, last)):
        by = k > scene.sentence.i and words[k - 1] == "by"
        if by and (words[k] in _OPERATORS or set(words[k : k + 3]) & {"surgeon", "operator", "op"}):
            return None
        if k in heads or set(words[k : k + 6]) & element_list("helps"):
            continue
        titled = words[k] in element_list("titles") and k + 1 < last and words[k + 1] != ":"
        if titled and (by or k - low <= 6 or words[k - 1] in (",", "(", ":", "=")):
            return k - by, min(k + 3, last)
        near_gas = headed or any(0 < k - g <= 3 for g in gas)
        if words[k] in element_list("grades") and (by or near_gas) and words[k + 1 : k + 2] != ["surgeon"]:
            return k - by, k + 1
    return None


_OPERATORS = frozenset(["surgeon", "operator", "me", "surg", "self", "myself"])


# --- signature

_SIGNS_OFF = frozenset(["sincerely", "regards", "greetings", "wishes", "faithfully", "truly", "greeting", "thanks"])
_DOTTED = re.compile(r"\s*[(\[]?(?:[A-Z]\.[ ]?){2,3}(?:,.*|\s*/.*|\(.*|,? .{0,60})?\Z")


def signature(desk: Desk) -> Span | None:
    """Words of signing, initials, a name behind a closing formula, on the last lines; 'signed' of a consent is none."""
    page = desk.page
    for i, j in _endings(desk):
        words = page.words[i:j]
        if "unsigned" in words or ("not" in words and "signed" in words[words.index("not") :]):
            return None
        signing = [m.i for m in page.elements if m.value == "signature" and i <= m.i < j]
        signing += [i + n for n, w in enumerate(words) if w in element_list("signs")]
        signing = [k for k in signing if not _unsigned(desk, k, j)]
        if signing and not set(words) & {"consent", "form"}:
            return _around(page.words, min(signing), i, j)
        if len(page.raw(i, j)) < 80 and (_DOTTED.match(page.raw(i, j)) or _is_name(desk, i, j)):
            return i, j
        if page.words[i] in _YOURS and page.words[i + 1 : i + 2] == [","] and _TWO < j - i <= _LONGEST_NAME:
            return i, j  # 'Yours, A. B. Penhallow'
        if _is_graded(desk, i, j) or signs_by_name(desk, i, j) or signs_by_initials(desk, i, j):
            return i, j
    last, *above = _last_lines(desk)
    i, j = last
    if named := closing_name(desk, i, j):
        return named
    closing = page.words[above[0][0] : above[0][1]] if above else []
    if j - i <= _LONGEST_NAME and (_SIGNS_OFF & set(closing) or (len(closing) <= _SHORT and _YOURS & set(closing))):
        return i, j
    return None


_YOURS = frozenset(["yours", "ever"])  # 'As ever,', 'Yours,'
_TWO = 2
_SHORT, _LONGEST_NAME = 5, 12  # words of a line


def _is_graded(desk: Desk, i: int, j: int) -> bool:
    """'ST6 plastics', 'Plastics registrar, 11 June 2031': a last line of a grade and no more than a date."""
    page = desk.page
    dated = {k for d in page.dates for k in range(d.i, d.j)}
    words = [page.words[k] for k in range(i, j) if k not in dated and page.words[k][0].isalpha()]
    graded = all(w in element_list("signing_grades") for w in words)
    told = bool(set(words) & element_list("signing_grades"))
    return told and len(words) <= 6 and (graded or (j - i <= 6 and page.breaks[i] == Break.BLANK))


def _unsigned(desk: Desk, k: int, j: int) -> bool:
    """Tell whether a word of signing is denied or heads a line that nobody filled in."""
    page = desk.page
    if page.words[max(0, k - 1)] in ("not", "never", "un"):
        return True
    heading = next((h for h in page.headings if h.i <= k < h.j and h.value == "signature"), None)
    return heading is not None and not any(w[0].isalnum() for w in page.words[heading.j : max(j, heading.j)])


def _is_name(desk: Desk, i: int, j: int) -> bool:
    """Tell whether a line holds only initials with titles, grades and dates around them: 'TK 11/19/33', 'RT CT2'."""
    page = desk.page
    begins = page.breaks[i] >= Break.LINE or page.words[i - 1] == "."
    if j - i > 22 or not begins or any(w in ("clinic", "opd", "gp") for w in page.words[i:j]):
        return False
    if page.words[i] == "-" and page.breaks[i + 1 : i + 2] != [Break.NONE]:  # an item of a list
        return False
    named = False
    for k in range(i, j):
        word, raw = page.words[k], page.raw(k, k + 1)
        after = page.words[k + 1 : k + 2]
        dotted = len(raw) == 1 and raw.isalpha() and after == ["."]
        graded = k == i and bool(after) and after[0] in element_list("grades")
        if dotted or ((_INITIALS.match(raw) or graded) and (graded or not _is_term(desk, k))):
            named = True
        elif k > i and page.words[k - 1] == "/" and len(raw) == 2 and named:
            continue  # 'NV/tr': the typist
        elif raw != "." and (_is_term(desk, k) or (word.isalpha() and word not in _named_so())):
            return False
    return named


_BY = frozenset(
    [
        "dictated",
        "by",
        "reviewed",
        "checked",
        "for",
        "read",
        "transcribed",
        "typed",
        "jr",
        "sr",
        "end",
        "of",
        "dictation",
    ]
)


def _named_so() -> frozenset[str]:
    return element_list("titles") | element_list("grades") | element_list("signing_grades") | _BY


def _around(words: list[str], k: int, i: int, j: int) -> Span:
    """Return word k with the words before and after it in its clause, seven at most on each side."""
    first, last = k, k + 1
    while first > i and k - first < 7 and words[first - 1] not in (".", ";"):
        first -= 1
    while last < j and last - k < 7 and words[last] not in (".", ";"):
        last += 1
    return first, last


def _endings(desk: Desk) -> list[Span]:
    """Return the last lines of the note and of the body before an addendum, or last sentences where a line is long."""
    found: list[Span] = []
    for i, j in _last_lines(desk):
        inside = [(s.sentence.i, s.sentence.j) for s in desk.scenes if i <= s.sentence.i < j]
        found += inside[:-3:-1] if j - i > 40 else [(i, j)]
    last = desk.scenes[-1].sentence
    if last.j - last.i <= 10 and (last.i, last.j) not in found and found[:1] and last.i > found[0][0]:
        found.insert(1, (last.i, last.j))  # 'EBL minimal. J.W., ST4'
    added = [s.h for s in desk.page.sections if s.kind == "addendum"]
    return found[:4] + [span for k in added[:1] for span in _last_lines(desk, 2, k)]


def _last_lines(desk: Desk, count: int = 3, end: int | None = None) -> list[Span]:
    """Return the last lines of the note, or of what stands before word `end`, the last one first."""
    page = desk.page
    stop = len(page.words) if end is None else end
    starts = (k for k in range(stop - 1, 0, -1) if page.breaks[k] >= Break.LINE)  # from the end: few are wanted
    last = [*itertools.islice(starts, count), 0][:count]
    return [(i, j) for i, j in zip(last, [stop, *last], strict=False) if i < j]
