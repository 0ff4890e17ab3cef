"""What a good repair is like: 'a well done repair shows no gap and slides freely', 'any sound repair is free of bulk'.

It is told to a pupil of every repair, and of none of this hand; 'a good repair was achieved' tells of one.
"""

from notereader.reader.page import Page, Sentence
from notereader.vocabulary.wordlists import word_list

_PRAISE = word_list("customs", "praise")
_REPAIRS = word_list("customs", "repairs_in_general")
_OF_ANY = frozenset(["any", "every"])
_ONE = frozenset(["a", "an"])
_SHOWS = word_list("customs", "shows")
_MADE = word_list("customs", "made")
_TURNS = word_list("published", "turns")
_LONGEST = 4  # words from the article to its noun: 'a really well done repair'
_REACH = 6  # words from the noun to its verb: 'a repair that is well done shows'


def mark_exemplary(page: Page, sentence: Sentence) -> None:
    """Set aside what a sentence tells of good repairs in general, up to where it turns to this hand."""
    if _SHOWS.isdisjoint(sentence.said) or _REPAIRS.isdisjoint(sentence.said):
        return
    words = page.words
    for k in range(sentence.i, sentence.j - 2):
        opens = k == sentence.i or words[k - 1] in _BOUNDS
        if opens and words[k] in _ONE | _OF_ANY and _holds_of_any(words[k : min(k + _LONGEST + _REACH, sentence.j)]):
            end = next((n for n in range(k, sentence.j) if words[n] in _TURNS), sentence.j)
            page.mark(k, end, "teaching")
            return


_BOUNDS = frozenset([",", ";", ":", "(", '"', "that", "ideally"])


def _holds_of_any(words: list[str]) -> bool:
    """Tell whether words say of a repair in general how it is: 'a sound repair glides', 'a tendon well sewn has'."""
    noun = next((n for n in range(1, min(_LONGEST + 1, len(words))) if words[n] in _REPAIRS), None)
    if noun is None:
        return False
    told = noun + 1
    if words[told : told + 1] != [] and words[told] in _THAT:
        if "well" not in words[told:]:
            return False  # 'a good repair that glides freely' tells of one
        told = words.index("well", told)
    verb = next((n for n in range(told, len(words)) if words[n] in _SHOWS), None)
    if verb is None or not _STOPS.isdisjoint(words[:verb]):
        return False
    made = words[verb] in _BE and not _MADE.isdisjoint(words[verb + 1 : verb + 2])
    return not made and (words[0] in _OF_ANY or not _PRAISE.isdisjoint(words[:verb]))


_STOPS = frozenset([",", ";", ".", "(", "was", "were", "this", "of"])
_THAT = frozenset(["that", "which"])
_BE = frozenset(["is", "has"])
