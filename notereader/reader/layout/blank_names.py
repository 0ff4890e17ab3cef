"""Names with nothing on the line behind them: 'A3 ______, A4 retained', 'FDP (blank), FDS intact'.

Nothing is told of them, and what is told of the next name is not told of them too.
"""

import re

from notereader.reader.page import Mention, Page

_BLANKS = re.compile(r"_{2,}|\((?:left )?blank\)|\(empty\)")
_NAMES = frozenset(["pulley", "tendon"])
_ENDS = frozenset([",", ";", "."])


def drop_blank_names(page: Page) -> None:
    """Drop the names that were left blank.

    'A2 vented __ mm' and 'FDP ____ strands' go on behind the line and keep their name.
    """
    if _BLANKS.search(page.text):
        page.mentions = [m for m in page.mentions if not _is_blank(page, m)]


def _is_blank(page: Page, name: Mention) -> bool:
    if name.kind not in _NAMES or not name.i < name.j:
        return False
    k = name.j + (page.words[name.j : name.j + 1] == [":"])
    if k >= len(page.words) or page.words[k] not in _ENDS:
        return False
    return _BLANKS.search(page.text, page.ends[name.j - 1], page.starts[k]) is not None
