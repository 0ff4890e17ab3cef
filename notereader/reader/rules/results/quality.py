"""How the ends looked and how the finished repair behaved, by the rules of each."""

from notereader.reader.desk import Desk
from notereader.reader.rules.cuts.ends import ends
from notereader.reader.rules.cuts.ends_likened import ends_likened
from notereader.reader.rules.cuts.lying_apart import lying_apart
from notereader.reader.rules.cuts.trimming import trimmed
from notereader.reader.rules.results.bulk import bulk
from notereader.reader.rules.results.gap_doubts import gap_owned_up
from notereader.reader.rules.results.gaps import gap
from notereader.reader.rules.results.gaps_gone import gap_gone
from notereader.reader.rules.results.glide import glide
from notereader.reader.rules.results.table_test import table_test
from notereader.reader.rules.results.tension import tension
from notereader.reader.rules.results.tension_needed import tension_needed
from notereader.reader.rules.results.tight import tight
from notereader.reader.rules.results.told_apart import answered_next
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_SKIP = word_list("quality", "skip")


def quality(desk: Desk, scene: Scene) -> None:
    """Find what is said of ends, gap, test, glide, tension and bulk."""
    if scene.sentence.section in _SKIP or _orders_therapy(scene):
        return
    ends(desk, scene)
    ends_likened(desk, scene)
    trimmed(desk, scene)
    gap(desk, scene)
    gap_gone(desk, scene)
    gap_owned_up(desk, scene)
    lying_apart(desk, scene)
    glide(desk, scene)
    tension(desk, scene)
    tension_needed(desk, scene)
    tight(desk, scene)
    bulk(desk, scene)
    answered_next(desk, scene)
    table_test(desk, scene)


def _orders_therapy(scene: Scene) -> bool:
    """'He will see therapy for active flexion without restriction': what is to come, not how the repair ran."""
    return "will" in scene.said and not _THERAPY.isdisjoint(scene.said)


_THERAPY = frozenset(["therapy", "therapist", "physiotherapy", "physiotherapist", "physio"])
