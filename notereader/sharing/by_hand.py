"""What a person adds to the finds."""

import re
from collections.abc import Iterable

from notereader.sharing.finds import Find

_WHY, _BLANK = "added by hand", "[removed]"


def by_hand(text: str, start: int, end: int, finds: Iterable[Find], kind: str = "other number") -> list[Find]:
    """Return the finds with the words from start to end as one more; finds that it covers or touches go into it."""
    touched = [find for find in finds if find.start < end and find.end > start]
    low, high = min([start, *(f.start for f in touched)]), max([end, *(f.end for f in touched)])
    kept = [find for find in finds if find not in touched]
    return sorted([*kept, Find(low, high, kind, text[low:high], _WHY, blank=_BLANK)], key=lambda find: find.start)


def everywhere(text: str, words: str, finds: Iterable[Find], kind: str = "other number") -> list[Find]:
    """Return the finds with every place where these words stand, capitals or not, as more of them."""
    found = list(finds)
    pattern = r"\s+".join(re.escape(word) for word in words.split())
    for match in re.finditer(pattern, text, re.IGNORECASE) if pattern else ():
        if not any(find.start <= match.start() and match.end() <= find.end for find in found):
            found = by_hand(text, match.start(), match.end(), found, kind)
    return found
