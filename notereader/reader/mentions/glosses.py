"""A name told twice, the second time in brackets, is one: 'flexor digitorum profundus (FDP)', 'FDS (superficialis)'.

Its brackets hold no aside and end no clause: 'the profundus (FDP) was cut and the superficialis (FDS) was intact'.
"""

from dataclasses import replace

from notereader.reader.page import Mention, Page

_NAMES = frozenset(["tendon", "pulley", "material", "structure", "sided"])
_OPENING, _CLOSING = "(", ")"


def close_glosses(page: Page) -> None:
    """Make one mention of a name and its gloss, and replace the brackets by the word that they hold."""
    if _OPENING not in page.words:
        return
    found: list[Mention] = []
    for mention in page.mentions:
        before = found[-1] if found else None
        if before is not None and _glosses(page, before, mention):
            found[-1] = mention = replace(before, j=mention.j + 1)
        else:
            found.append(mention)
        if mention.kind in _NAMES and page.words[mention.j - 1] == _CLOSING:
            _close(page, mention)
    page.mentions = found


def _glosses(page: Page, name: Mention, gloss: Mention) -> bool:
    """Tell whether a mention is the whole of a bracket right behind the same name."""
    same = (name.kind, name.value) == (gloss.kind, gloss.value) and name.kind in _NAMES
    opened = gloss.i == name.j + 1 and page.words[name.j] == _OPENING
    return same and opened and page.words[gloss.j : gloss.j + 1] == [_CLOSING]


def _close(page: Page, mention: Mention) -> None:
    opened = [k for k in range(mention.i, mention.j - 1) if page.words[k] == _OPENING]
    if len(opened) == 1:
        page.words[opened[0]] = page.words[opened[0] + 1]
        page.words[mention.j - 1] = page.words[mention.j - 2]
