"""How often an ordinary English word is taken for a misspelt name of the trade: at most once in 20,000 words.

The words are the most frequent English ones after the wordfreq package (Speer 2022), which is gathered from books,
news, subtitles and the web; words of the vocabulary itself are left out, for they need no rescue.
"""

import pytest

from notereader.reader.mentions.rescue import Rescue
from notereader.vocabulary.terms import terms

wordfreq = pytest.importorskip("wordfreq")
WORDS = 20_000


@pytest.fixture(scope="module")
def rescue() -> Rescue:
    return Rescue(terms())


def ordinary_words(rescue: Rescue, count: int) -> list[str]:
    """Return the most frequent English words that are none of the vocabulary's."""
    ranked = wordfreq.top_n_list("en", 3 * count)
    return [word for word in ranked if word.isalpha() and word.isascii() and word not in rescue.known][:count]


def test_ordinary_words_are_not_rescued(rescue: Rescue) -> None:
    words = ordinary_words(rescue, WORDS)
    assert len(words) == WORDS
    rescued = {word: name for word in words if (name := rescue.spelling(word))}
    assert len(rescued) <= 1, rescued


@pytest.mark.parametrize(
    "names", [("kesller", "kessler"), ("prolenne", "prolene"), ("ethibnd", "ethibond"), ("strikland", "strickland")]
)
def test_misspelt_names_are(rescue: Rescue, names: tuple[str, str]) -> None:
    """So that the rate above is not bought by rescuing nothing."""
    written, meant = names
    assert rescue.spelling(written) == meant


@pytest.mark.parametrize("word", ["earn", "barn"])
def test_short_words_with_rn_are_no_scanned_m(rescue: Rescue, word: str) -> None:
    assert rescue.spelling(word) is None
