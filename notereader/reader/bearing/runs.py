"""Runs of tendons, fingers and slips that stand together: where one ends and the next begins."""

from dataclasses import dataclass
from itertools import pairwise

from notereader.reader.bearing.left_out import leaves_out
from notereader.reader.bearing.named_for_place import names_place
from notereader.reader.bearing.pairing import ALL_FOUR, PLURAL_TENDONS, times_several
from notereader.reader.mentions.measures import count_of, times_told
from notereader.reader.page import Break, Mention, Page, Sentence, within
from notereader.reader.standing.lending import into_pulley
from notereader.vocabulary.wordlists import word_list

_GLUE = word_list("bearing", "glue")


@dataclass(frozen=True, slots=True)
class Named:
    """What one sentence names: its tendons, fingers and slips, all its mentions, and words like 'both'."""

    page: Page
    sentence: Sentence
    atoms: list[Mention]
    mentions: list[Mention]
    quantifiers: list[Mention]


def runs_of(named: Named) -> list[list[Mention]]:
    """Return the tendons, fingers and slips of a sentence in runs of those that stand together."""
    runs: list[list[Mention]] = []
    for atom in named.atoms:
        if not runs or _begins_anew(named, runs[-1], atom):
            runs.append([])
        runs[-1].append(atom)
    return runs


def _begins_anew(named: Named, run: list[Mention], atom: Mention) -> bool:
    """Tell whether a name does not belong to the run before it, but begins another."""
    return _stands_apart(named, run, atom) or _opens_list(named, run, atom) or _told_apart(named, run, atom)


def _stands_apart(named: Named, run: list[Mention], atom: Mention) -> bool:
    """Tell whether the words between keep a name from the run: a verb, a place, the next subject."""
    page = named.page
    return (
        not _glued(page, run[-1].j, atom.i, named.quantifiers)
        or _behind_a_lone_one(page, run, atom)
        or names_place(page, atom.i, atom.j)
        or _next_slip(page, run[-1], atom)
        or _next_subject(page, run, atom)
        or _left_behind(page, run, atom)
    )


def _opens_list(named: Named, run: list[Mention], atom: Mention) -> bool:
    """Tell whether a list ends at the run, and a name opens another or stands by itself."""
    page, atoms = named.page, named.atoms
    return (
        _new_list(run, atom, page, atoms)
        or _after_both(run, atom, page, atoms)
        or _after_all(run, atom, page, atoms)
        or _finger_of_its_own(run, atom, page, atoms)
        or _of_all_four(run, atom, page)
        or _so_many_beside_one(run, atom, page)
        or _behind_other_fingers(run, atom, page)
    )


def _told_apart(named: Named, run: list[Mention], atom: Mention) -> bool:
    """Tell whether a name is told of apart from the run: excepted, likened to it, whole, with a result of its own."""
    page, mentions = named.page, named.mentions
    through = atom.kind == run[-1].kind == "tendon" and into_pulley(page, named.sentence.i, run[-1].i)
    return (
        through
        or _excepted_of(page, run, atom, named.sentence)
        or _after_likeness(run, atom, page)
        or _after_result(run, atom, page)
        or _whole_before(page, run[-1], atom, mentions)
        or _whole_behind(page, run, atom, mentions)
        or _each_with_its_own(page, run, atom, mentions)
        or _result_of_its_own(page, run, atom, mentions)
    )


_PARTED = frozenset(["divided", "severed", "transected", "lacerated"])
_ALONE = (["alone"], ["only"])
_IN_TURN = frozenset(["thereafter", "subsequently"])
_NEXT_IN_TURN = (["and", "then"], [",", "then"], ["and", "afterwards"], ["and", "finally"], ["and", "lastly"])


def _glued(page: Page, i: int, j: int, quantifiers: list[Mention]) -> bool:
    """Tell whether only connecting words stand between two atoms."""
    if j - i > 6:
        return False
    quantified = {k for q in quantifiers for k in range(q.i, q.j)}
    if page.words[j - 1] in _PARTED and (page.words[j - 2] == "the" or count_of(page.words[j - 2]) > 1):
        j -= 1  # 'the divided profundus and the two divided superficialis tendons'
    i += _goes_on_in_turn(page, i, j)
    i += page.words[i : i + 1] in _ALONE and page.words[i + 1 : i + 2] == ["of"]  # 'the profundus alone of the middle'
    i += _wholly_and(page, i, j)
    if times_told(page.words, i) and page.words[i] == "x" and page.words[i + 2] in _LISTING:
        i += 2  # 'FDS x3 (middle, ring, small) and FDP small'
    words = page.words[i:j]
    if "," in words and any(w in ("in", "on", "at") for w in words):
        return False
    compares = "as" in words and ("as", "well") not in pairwise(words) and ("well", "as") not in pairwise(words)
    if compares or ("same", "as") in pairwise(words):
        return False  # 'middle profundus same as the index'
    if ("none", ",") in pairwise(words) or any(a == "none" and b in _PLACING for a, b in pairwise(words)):
        return False  # 'Gap: FPL none, index 1 mm', '6-0 for the FDP, none for the FDS'
    if ("and", "cut") in pairwise(words) and any(a == "cut" and b in _PLACING for a, b in pairwise(words)):
        return False  # 'The FDS was whole in the ring and cut in the small finger'
    if ("left", "the") in pairwise(words):
        return False  # 'the saw had cut the profundus and left the superficialis intact'
    if ("and", "repaired") in pairwise(words):
        return False  # 'I excised the ulnar slip and repaired the radial one'
    if ("cut", ",") in pairwise(words) or ("repaired", ",") in pairwise(words):
        return False  # 'the ulnar slip cut, radial slip untouched', 'FDP repaired, FDS left unrepaired'
    if any(w in _IN_TURN and words[n - 1] != "and" for n, w in enumerate(words)):
        return False  # 'FDS excised, thereafter FDP', but 'the profundi and thereafter the superficiales'
    if words[-1:] in (["other"], ["remaining"]) and page.words[j] in _FINGERS:
        j -= 1  # 'FDS of other fingers'
    return all(page.words[k] in _GLUE or page.words[k] in _IN_TURN or k in quantified for k in range(i, j))


_FINGERS = frozenset(["fingers", "digits"])
_LISTING = frozenset(["(", ":"])


def _goes_on_in_turn(page: Page, i: int, j: int) -> int:
    """'The ring profundus and then the middle superficialis were joined', not '... and then the FDS was excised'.

    RETURNS: how many words lead on to the next in turn; 0 where they do not.
    """
    length = 1 if page.words[i : i + 1] == ["then"] else 2 * (page.words[i : i + 2] in _NEXT_IN_TURN)
    if page.words[i - 1] in _SLIPS or not _OF_ONE.isdisjoint(page.words[j : j + _NAME]):
        return 0
    return length


def _wholly_and(page: Page, i: int, j: int) -> bool:
    """'It had severed both tendons of the index entirely and the profundus of the middle.': cut through, both of them.

    Not where more is told of the second: 'the FDP completely and the FDS by half'.
    """
    if page.words[i : i + 2] not in _WHOLLY:
        return False
    ahead = range(j, min(j + _TO_ITS_END, len(page.words)))
    end = next((k for k in ahead if page.words[k] in _STOPS), j)
    named = {k for m in within(page.mentions, j, end) if m.kind in _NAMES for k in range(m.i, m.j)}
    return end > j and all(k in named or page.words[k] in _OF_NAMES for k in range(j, end))


_WHOLLY = tuple([word, "and"] for word in ("entirely", "completely", "cleanly", "totally", "wholly", "fully"))
_TO_ITS_END = 10  # words
_STOPS = frozenset([".", ",", ";"])
_NAMES = frozenset(["tendon", "digit", "generic"])
_OF_NAMES = frozenset(["of", "the", "alone", "only", "in", "finger", "tendon"])


def _behind_a_lone_one(page: Page, run: list[Mention], atom: Mention) -> bool:
    """'... and the profundus alone of the middle, the middle FDS keeping half': behind the comma of another one."""
    lone = any(page.words[m.j : m.j + 1] in _ALONE for m in run if m.kind == "tendon")
    return lone and page.words[run[-1].j : run[-1].j + 1] == [","] and run[-1].j < atom.i


_SLIPS = frozenset(["slip", "slips"])
_OF_ONE = frozenset(["was", "is", "i", "we", "had", "has"])


def _left_behind(page: Page, run: list[Mention], atom: Mention) -> bool:
    """'FDS left, FDP repaired', 'radial slip left and ulnar slip sewn': the first was left, and is no list with it."""
    behind = page.words[run[-1].j : run[-1].j + 2]
    return run[-1].kind == atom.kind in ("tendon", "slip") and behind in (
        ["left", ","],
        ["left", "and"],
        ["left", "but"],
    )


def _whole_before(page: Page, last: Mention, atom: Mention, mentions: list[Mention]) -> bool:
    """'... with an intact FDS, the middle FDP and FDS were cut': what was called whole is no part of the next list."""
    whole = any(m.kind == "extent" and m.value == "intact" and m.j == last.i for m in mentions)
    return whole and last.kind == "tendon" and atom.kind == "digit" and "," in page.words[last.j : atom.i]


def _whole_behind(page: Page, run: list[Mention], atom: Mention, mentions: list[Mention]) -> bool:
    """'Laceration of FDP, FDS intact', '... with the FDS intact': what is called whole is no part of the list."""
    between = [w for w in page.words[run[-1].j : atom.i] if w not in _DETERMINERS]
    if between not in ([","], ["with"], [",", "with"]):
        return False
    own = [m for m in within(mentions, atom.i, atom.j + _NAME) if m.kind in ("tendon", "digit")]
    end = max((m.j for m in own), default=atom.j)
    end += page.words[end : end + 1] == ["being"]
    if not any(m.kind == "tendon" for m in own):
        return False
    whole = any(m.kind == "extent" and m.value == "intact" and m.i == end for m in mentions)
    cut = [m for m in mentions if m.kind == "extent" and m.value != "intact" and m.j <= run[0].i]
    return whole and bool(cut) and ("with" in between or run[0].i - cut[-1].j <= _NAME)


_DETERMINERS = frozenset(["the", "its", "his", "her", "their"])
_NAME = 4  # words


def _each_with_its_own(page: Page, run: list[Mention], atom: Mention, mentions: list[Mention]) -> bool:
    """'An intact profundus and a superficialis cut by 30 %': one told before its name, the other behind it."""
    if run[0].kind != "tendon" or atom.kind != "tendon" or page.words[run[-1].j] not in ("and", ","):
        return False
    told = next((m for m in mentions if m.kind == "extent" and m.j == run[0].i), None)
    behind = (m for m in mentions if m.kind in ("extent", "hurt") and 0 <= m.i - atom.j <= 3)
    return told is not None and any(m.value != told.value for m in behind)


def _result_of_its_own(page: Page, run: list[Mention], atom: Mention, mentions: list[Mention]) -> bool:
    """'Free glide in index and ring, middle restricted': behind the comma another result is told of another finger."""
    if any(m.kind != "digit" for m in (*run, atom)) or page.words[run[-1].j : atom.i] not in ([","], [",", "the"]):
        return False
    results = [m for m in mentions if m.kind in ("gap", "glide")]
    before = [m for m in results if m.j <= run[0].i and _IN_THE.issuperset(page.words[m.j : run[0].i])]
    behind = [m for m in results if 0 <= m.i - atom.j <= 1]
    return bool(before and behind) and before[-1].value != behind[0].value


_IN_THE = frozenset(["in", "the", "of", "at", "for"])


def _new_list(run: list[Mention], atom: Mention, page: Page, atoms: list[Mention]) -> bool:
    """'FDP repair MF + LF, FDS slip RF': behind a comma a tendon with a finger of its own begins a new list."""
    fingers_first = run[0].kind == "digit" and all(m.kind == "digit" for m in run)
    if not fingers_first or atom.kind != "tendon" or page.words[run[-1].j : atom.i] != [","]:
        return False
    later = [m for m in atoms if m.i >= atom.j and m.kind in ("digit", "tendon")]
    tendon_before = any(m.kind == "tendon" and m.j <= run[0].i for m in atoms)
    last = atom
    while later and later[0].kind == "tendon" and page.words[last.j : later[0].i] in (["and"], ["&"], ["+"], ["/"]):
        last = later.pop(0)  # 'FDP repair MF, FDP + FDS repair RF'
    return tendon_before and bool(later) and later[0].kind == "digit" and later[0].i - last.j <= 2


def _excepted_of(page: Page, run: list[Mention], atom: Mention, sentence: Sentence) -> bool:
    """'All repairs, the FCU excluded, were pulled': what is left out of all is no name for them."""
    ends = (k for k in range(atom.j, min(atom.j + 2, sentence.j)) if leaves_out(page, k, sentence.j))
    return "," in page.words[run[-1].j : atom.i] and next(ends, None) is not None


def _after_likeness(run: list[Mention], atom: Mention, page: Page) -> bool:
    """'Ring - FDP through like the middle, FDS nicked': the finger it is likened to has nothing behind the comma.

    'Unlike the middle finger, the FDS here is whole', 'unlike the index, the ring FDS is intact'.
    """
    lead = page.words[max(0, run[0].i - 2) : run[0].i]
    likened = (
        lead[-1:] == ["like"] or lead == ["like", "the"] or (lead == ["in", "the"] and page.words[run[0].i - 3] == "as")
    )
    fingers = all(m.kind == "digit" for m in run)
    behind = page.words[run[-1].j : atom.i]
    if fingers and "unlike" in lead:
        return behind in ([","], [",", "the"], [",", "its"])  # not ', where both FDS slips were cut'
    return likened and fingers and atom.kind == "tendon" and behind == [","]


def _of_all_four(run: list[Mention], atom: Mention, page: Page) -> bool:
    """'the superficialis of the small finger, the profundus tendons of all four fingers': fingers of its own."""
    behind = page.words[atom.j : atom.j + 4]
    four = not ALL_FOUR.isdisjoint(pairwise(behind)) and behind[:1] in (["of"], ["to"], ["in"])
    return atom.kind == "tendon" and four and any(m.kind == "digit" for m in run)


def _so_many_beside_one(run: list[Mention], atom: Mention, page: Page) -> bool:
    """'FPL and FDP x2', 'FDPs and FPL: ...': a kind of several fingers is no tendon of the thumb or the wrist."""
    pair = (run[-1], atom)
    if any(m.kind != "tendon" for m in (*run, atom)):
        return False
    several = [m for m in pair if m.value in ("FDP", "FDS") and _is_several(page, m, atom)]
    return len(several) == 1 and any(m.value not in ("FDP", "FDS") for m in pair)


def _behind_other_fingers(run: list[Mention], atom: Mention, page: Page) -> bool:
    """'FDS of the other fingers, all FDP and FPL': only the first is told of the other fingers.

    'The remaining profundi, the superficialis of the small finger and FCU': so is a kind told by what remains of it.
    """
    named = [m.kind for m in run]
    if named == ["tendon"] and page.words[run[0].i - 1] in ("other", "remaining"):
        listed = page.words[run[0].j] == "," and page.words[run[0].j - 1] in PLURAL_TENDONS
        return listed and atom.kind == "tendon" and atom.value != run[0].value
    others = named == ["tendon", "plural"] and page.words[run[1].i - 1] in ("other", "remaining")
    return atom.kind == "tendon" and others and page.words[atom.i - 1] != "every"


def _is_several(page: Page, m: Mention, last: Mention) -> bool:
    label = page.words[last.j : last.j + 1] == [":"] and page.breaks[m.i] >= Break.LINE
    return times_several(page, m.j) or (label and page.words[m.j - 1] in PLURAL_TENDONS)


def _after_result(run: list[Mention], atom: Mention, page: Page) -> bool:
    """'No gap ring, little opened 1 mm': the finger behind the comma begins a statement of its own."""
    alone = len(run) == 1 and run[0].kind == atom.kind == "digit" and page.words[run[0].i - 1] in ("gap", "gapping")
    return alone and page.words[run[0].j : atom.i] == [","] and page.words[atom.j : atom.j + 1] not in ([","], ["and"])


def _after_both(run: list[Mention], atom: Mention, page: Page, atoms: list[Mention]) -> bool:
    """'FDP of both fingers and FDS of the index': a tendon with a finger of its own behind one that is told of both."""
    before = [m for m in run if m.kind == "tendon"]
    if atom.kind != "tendon" or not before or any(m.kind == "digit" for m in run):
        return False
    between = page.words[before[-1].j : atom.i]
    if between[:4] in _OF_THE_FOUR:
        return True  # 'the profundus of the four fingers, the FPL and the superficialis of ring and small'
    later = [m for m in atoms if m.i >= atom.j and m.kind in ("digit", "tendon")]
    own = bool(later) and later[0].kind == "digit" and later[0].i - atom.j <= 2
    wide = between[:2] in (["of", "both"], ["in", "both"], ["of", "each"], ["of", "all"], ["to", "all"], ["to", "both"])
    return own and wide and not {"and", ","}.isdisjoint(between[2:])


def _after_all(run: list[Mention], atom: Mention, page: Page, atoms: list[Mention]) -> bool:
    """'All the FDPs, FDS index and the median nerve': a tendon with its own finger behind all of a kind."""
    last = run[-1]
    wide = last.kind == "tendon" and page.words[last.j - 1] in PLURAL_TENDONS
    lead = [w for w in page.words[max(0, last.i - 2) : last.i] if w != "the"][-1:]
    behind = [a for a in atoms if a.i >= atom.j][:1]
    own = bool(behind) and behind[0].kind == "digit" and behind[0].i - atom.j <= 2
    return atom.kind == "tendon" and wide and lead == ["all"] and own


def _finger_of_its_own(run: list[Mention], atom: Mention, page: Page, atoms: list[Mention]) -> bool:
    """'Both profundi and the middle superficialis': a finger behind tendons of several is that of the next tendon.

    'Both profundus repairs and ...', 'each of the profundus repairs and ...', 'each profundus and ...' are several too.
    """
    if atom.kind != "digit" or not _of_several(run, page):
        return False
    lead = page.words[max(0, run[0].i - 3) : run[0].i]
    counted = not _SEVERAL.isdisjoint(lead)
    others = not _OTHERS.isdisjoint(lead)  # 'the other profundi, the index FDS', 'the rest of the profundi'
    more = [m for m in atoms if m.i >= atom.j]
    digits = next((n for n, m in enumerate(more) if m.kind != "digit"), 0) if others else 0  # 'the index and ring FDS'
    behind = more[digits] if more else None
    own = behind is not None and behind.kind == "tendon" and behind.i - atom.j <= 1 + 2 * digits
    between = [w for w in page.words[run[-1].j : atom.i] if w != "the"]
    return own and ((counted and between in (["and"], [",", "and"], ["+"])) or (others and between in _LISTS))


def _of_several(run: list[Mention], page: Page) -> bool:
    """Tell whether a run is a kind of tendons and no finger: 'profundi', 'profundus repairs', 'each profundus'."""
    repairs = run[-1].kind == "generic" and run[-1].value == "tendons"
    if any(m.kind != "tendon" for m in (run[:-1] if repairs else run)):
        return False
    return repairs or page.words[run[-1].j - 1] in PLURAL_TENDONS or page.words[run[0].i - 1] in _EACH


_EACH = frozenset(["each", "every"])
_LISTS = ([","], ["and"], [",", "and"], ["+"], ["&"])
_OTHERS = frozenset(["remaining", "other", "rest"])
_SEVERAL = frozenset(["both", "two", "three", "all", "four"]) | _EACH


def _next_slip(page: Page, before: Mention, atom: Mention) -> bool:
    """'40% of the ulnar slip, radial slip uninjured': behind a comma alone the other slip begins a new statement."""
    between = page.words[before.j : atom.i]
    alone = page.words[atom.j : atom.j + 1] in (["was"], ["is"], ["i"], ["we"])  # 'radial slip, and the ulnar was cut'
    bounds = (
        [","],
        [",", "the"],
        [",", "its"],
        *(([",", "and", "the"], [",", "and"], ["and", "the"]) if alone else ()),
    )
    return before.kind == atom.kind == "slip" and between in bounds


def _next_subject(page: Page, run: list[Mention], atom: Mention) -> bool:
    """'Trimmed 2 mm on the FDP, the FDS was too thin': behind a comma the singular verb is of the second alone."""
    between = page.words[run[-1].j : atom.i]
    if between == ["and", "the"]:
        return _put_at(page, run[0].i) and page.words[atom.j : atom.j + 2] in _GOT_NONE
    if between != [",", "the"]:
        return False
    if atom.kind == "digit":
        return page.words[atom.j] in _TOLD_OF  # 'a gap in the index profundus, the ring did not gap'
    return atom.kind == run[-1].kind == "tendon" and page.words[atom.j] in _SINGULAR


def _put_at(page: Page, k: int) -> bool:
    """'6-0 went round the FDP and the FDS was left without': what is put round the one is not of the next."""
    return page.words[k - 1 - (page.words[k - 1] == "the")] in _PLACING


_GOT_NONE = (["was", "left"], ["had", "none"], ["got", "none"], ["went", "without"], ["did", "not"], ["had", "nothing"])
_TOLD_OF = frozenset(["did", "ran", "glided", "caught", "gapped", "held", "moved", "slid", "had", "has", "opened"])
_SINGULAR = frozenset(["was", "is", "had", "has"])
_PLACING = frozenset(["for", "to", "on", "in", "round", "around"])
_OF_THE_FOUR = tuple([lead, "the", four, "fingers"] for lead in ("of", "in", "to") for four in ("four", "4"))
