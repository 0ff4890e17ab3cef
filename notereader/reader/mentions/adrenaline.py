"""'Epi' behind a local anaesthetic: adrenaline in 'lido + epi 14 cc', 'bupi w epi', and no epitendinous suture."""

from notereader.reader.page import Break, Mention, Page
from notereader.vocabulary.wordlists import word_list

_DRUGS = word_list("adrenaline", "drugs")
_AWAKE = word_list("adrenaline", "awake")
_JOINS = word_list("adrenaline", "joins")
_REACH = 5  # words: 'lido 1 % plain and'


def settle_adrenaline(page: Page) -> None:
    """Take 'epi' for adrenaline where a drug leads to it; lidocaine with it tells of an operation wide awake."""
    if "epi" not in page.words:
        return
    for n, mention in enumerate(page.mentions):
        if mention.kind == "role" and page.words[mention.i : mention.j] == ["epi"]:
            drug = _drug_before(page, mention.i)
            if drug >= 0:
                awake = page.words[drug] in _AWAKE
                kind, value = ("anaesthesia", "wide-awake local") if awake else ("neutral", "findings")
                page.mentions[n] = Mention(kind, value, drug if awake else mention.i, mention.j)
    page.mentions.sort(key=lambda m: (m.i, m.j))


def _drug_before(page: Page, k: int) -> int:
    """Return the word of the drug that only small words and shares lead from to 'epi', or -1."""
    for n in range(k - 1, max(k - _REACH, 0) - 1, -1):
        if page.breaks[n + 1] >= Break.LINE:
            return -1
        if page.words[n] in _DRUGS:
            return n
        if page.words[n] not in _JOINS and not page.words[n].replace(".", "", 1).isdecimal():
            return -1
    return -1
