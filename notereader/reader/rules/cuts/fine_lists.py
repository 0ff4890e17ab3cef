"""'OK: FCU, ulnar n + a, FDP 4+5': a weak word for whole at the head of a list that tells nothing else of its names."""

from notereader.reader.page import Break, Mention
from notereader.reader.scene import Scene

# Of what else a line would tell than that what it names is whole.
_TELLS_MORE = ("hurt", "deed", "ends", "gap", "glide", "bulk", "tension", "test", "stitch", "strandword", "material")


def heads_a_list(scene: Scene, mention: Mention) -> bool:
    """Tell whether a word labels a line of names, the first of them a tendon or another structure, and nothing more."""
    if mention.i != scene.sentence.i or scene.page.breaks[mention.i] < Break.LINE or scene.next_word(mention.j) != ":":
        return False
    names = scene.of("tendon", "structure", "sided", "anynerve", "anyartery")
    states = [m for m in scene.of("extent") if m.i != mention.i]
    leads = any(m.i == mention.j + 1 for m in names)
    return leads and not states and not scene.of(*_TELLS_MORE)
