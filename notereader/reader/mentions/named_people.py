"""Names of people that stitches and threads bear too: 'Dr Sandhurst-Lee', 'Anaesthetist: Evans', 'R. Steel, MD'."""

from notereader.reader.page import Break, Mention, Page
from notereader.vocabulary.wordlists import word_list

_KINDS = frozenset(["stitch", "material"])
_TITLES = word_list("elements", "titles") | frozenset(["sister", "nurse"])
_DEGREES = word_list("elements", "degrees")
_LABELS = (
    word_list("elements", "people")
    | word_list("elements", "operator_labels")
    | frozenset(["assistant", "signed", "sister", "nurse"])
)
_LONGEST_NAME = 6  # words and marks of a name, its title and initials included


def names_a_person(page: Page, mention: Mention) -> bool:
    """Tell whether a stitch or thread is the end of somebody's name, by the title, label or degree beside it."""
    if mention.kind not in _KINDS or not _capital(page, mention.i) or mention.rescued:
        return False
    after = [w for w in page.words[mention.j : mention.j + 2] if w != ","]
    if mention.j - mention.i == 1 and after[:1] and after[0] in _DEGREES:
        return _same_line(page, mention.j)
    if _double_barrelled(page, mention):
        return True
    k = mention.i
    while k > 0 and mention.i - k < _LONGEST_NAME and page.breaks[k] < Break.LINE:
        k -= 1
        word = page.words[k]
        if word in _TITLES:
            return True
        if word == ":":
            return page.words[k - 1] in _LABELS
        if not (_capital(page, k) or word == "-" or (word == "." and _abbreviated(page, k))):
            return False
    return False


def _double_barrelled(page: Page, mention: Mention) -> bool:
    """'Sandhurst-Lee' on a line of its own, 'Cons (Sandhurst-Lee)': who signs or operated, and no stitch."""
    words, first, last = page.words, mention.i - 2, mention.j
    if first < 0 or last - mention.i > 1 or words[first + 1] != "-" or not _capital(page, first):
        return False
    joined = page.starts[first] + len(words[first]) + 1 == page.starts[mention.i] == page.starts[first + 1] + 1
    if joined and words[first - 1] == "(" and words[last : last + 1] == [")"]:
        return words[first - 2] in _LABELS
    if not joined or words[first] in _OF_A_CORE or (last < len(words) and page.breaks[last] < Break.LINE):
        return False
    while page.breaks[first] < Break.LINE and words[first - 1] == "." and len(words[first - 2]) == 1:
        first -= 2
    return page.breaks[first] >= Break.LINE


_OF_A_CORE = word_list("elements", "before_a_stitch")


def _capital(page: Page, k: int) -> bool:
    return page.text[page.starts[k]].isupper()


def _abbreviated(page: Page, k: int) -> bool:
    """'Dr. Lee', 'R. Lee': a stop that ends no sentence."""
    return k > 0 and (len(page.words[k - 1]) == 1 or page.words[k - 1] in _TITLES)


def _same_line(page: Page, k: int) -> bool:
    return k < len(page.breaks) and page.breaks[k] < Break.LINE
