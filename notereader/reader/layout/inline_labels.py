"""Words that head a section at the start of a line, and only label an answer within one.

'FDP small / FDP ring   Found: intact   Edge: clean' tells of these tendons; no section of findings and none of the
peripheral suture begins there.
"""

from notereader.reader.page import Break, Mention, Page, within
from notereader.vocabulary.wordlists import word_list

_NAME_LABELS = word_list("headings", "name_labels")
_STATE_LABELS = word_list("headings", "state_labels")
_EDGE_LABELS = word_list("headings", "edge_labels")
_EDGES_AS_FOUND = word_list("headings", "edges_as_found")


def labels_an_answer(page: Page, heading: Mention, begins: bool, headed: bool) -> bool:
    """Tell whether a heading only asks for the name or the state of a tendon.

    `begins` says whether it opens its line, `headed` whether another heading stands on the line before it.
    """
    behind = page.words[heading.j : heading.j + 2]
    if heading.j - heading.i != 1 or behind[:1] != [":"]:
        return False
    word = page.words[heading.i]
    if word in _NAME_LABELS:
        return names_a_tendon(page, heading)
    if word in _EDGE_LABELS:
        return behind[-1] in _EDGES_AS_FOUND
    return word in _STATE_LABELS and page.breaks[heading.i] == Break.COLUMN and not begins and not headed


def names_a_tendon(page: Page, heading: Mention) -> bool:
    """Tell whether a label is answered with the name of a tendon: 'Tendon: FCU', 'Name: FDS small'."""
    return any(m.kind == "tendon" for m in within(page.mentions, heading.j + 1, heading.j + 2))
