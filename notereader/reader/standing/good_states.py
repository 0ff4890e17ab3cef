"""The good states of pulleys, tendons and repairs, by kind of mention: never told unless the note says so."""

from notereader.reader.page import Mention, Page, within
from notereader.vocabulary.wordlists import word_list

GOOD_STATES = {
    "opened": frozenset(["intact", "repaired", "reconstructed"]),
    "extent": frozenset(["intact"]),
    "ends": frozenset(["clean"]),
    "glide": frozenset(["free"]),
    "gap": frozenset(["none"]),
    "tension": frozenset(["none"]),
    "bulk": frozenset(["none"]),
}
# What tells a bad state away: 'absence of a gap'.
ABSENCE = frozenset(["absence", "freedom", "lack"])
OF_SUTURES = frozenset(["strandword", "stitch", "material", "role", "pattern", "bite", "hold"])
FREELY = word_list("weakened", "freely")
# With those of a suture: a buried knot, a locking hold, a tendon that was sewn.
GOOD = {
    **GOOD_STATES,
    "knot": frozenset(["buried"]),
    "hold": frozenset(["locking"]),
    "deed": frozenset(["repaired", "reinserted"]),
}


def mark_good_states(page: Page, i: int, j: int, standing: str) -> None:
    """Set aside the good states told in words i to j, 'freely' beside a verb among them."""
    for m in within(page.mentions, i, j):
        if m.i < m.j and m.value in GOOD.get(m.kind, ()):
            page.mark(m.i, m.j, standing)
    for n in range(i, j):
        if page.words[n] in FREELY:
            page.mark(n, n + 1, standing)


def is_good(m: Mention) -> bool:
    """Tell whether a mention is a good state or tells of a suture."""
    return m.kind in OF_SUTURES or m.value in GOOD.get(m.kind, ())
