"""Sentences that name a good state and tell of none: not managed, only a rule, another's, doubted or a label's."""

from collections.abc import Iterator
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Statement:
    """One finding said in three ways, and the fields that would tell it."""

    done: str  # 'A2 was preserved'
    do: str  # 'preserve A2'
    noun: str  # 'preservation of A2'
    fields: frozenset[str]


_CORE = frozenset(["strands", "size", "material", "stitch", "hold", "knot", "purchase_mm"])
STATEMENTS = (
    Statement("A2 was preserved", "preserve A2", "preservation of A2", frozenset(["finding"])),
    Statement(
        "six strands of 3-0 Ethibond were placed",
        "place six strands of 3-0 Ethibond",
        "a six-strand core of 3-0 Ethibond",
        _CORE,
    ),
    Statement("a locked cruciate was used", "use a locked cruciate", "a locked cruciate repair", _CORE),
    Statement("the knot was buried between the ends", "bury the knot between the ends", "a buried knot", _CORE),
    Statement(
        "10 mm of tendon was taken on each side", "take 10 mm of tendon on each side", "a purchase of 10 mm", _CORE
    ),
    Statement(
        "no gap was seen on passive motion",
        "see no gap on passive motion",
        "absence of a gap on passive motion",
        frozenset(["gap"]),
    ),
)
# 'Usually we {do}': each tells of no finding of this operation.
_FRAMES = (
    "At the first operation elsewhere {done}.",
    "In the opposite hand, two years ago, {done}.",
    "The plan had been to {do}.",
    "We had intended to {do}, which proved impossible.",
    "{noun} was considered and rejected.",
    "{noun} would have been preferable but could not be had.",
    "Textbooks recommend {noun}.",
    "Our unit's protocol asks for {noun}.",
    "Usually we {do}.",
    "Consent was taken for {noun}.",
    "If the repair fails, I would {do}.",
    "It was not possible to {do}.",
    "We were unable to {do}.",
    "We failed to {do}.",
    "Nothing was done to {do}.",
    "There was no need to {do}.",
    "Next time I would {do}.",
    "I cannot say whether {done}.",
    "It is not recorded whether {done}.",
    "A neighbouring theatre had just finished a case in which {done}.",
    "{noun} was abandoned.",
    "In such cases {noun} is said to be best.",
)
_ADVERBS = (
    "hardly",
    "only partly",
    "supposedly",
    "far from",
    "no longer",
    "probably",
    "anything but",
    "insufficiently",
)
_DOUBTED = {
    "The ends were {} clean.": ("ends", "clean"),
    "Glide was {} free.": ("glide", "free"),
    "The knots were {} buried.": ("knot", "buried"),
    "The repair was {} tension-free.": ("tension", "none"),
    "The core was {} locking.": ("hold", "locking"),
    "A2 was {} intact.": ("finding", "intact"),
    "The FDS was {} intact.": ("extent", "intact"),
}
_THINGS = (
    "Bone",
    "Joint",
    "Vincula",
    "Perfusion",
    "Muscle",
    "Skin edges",
    "Median nerve",
    "Ulnar digital nerve",
    "Wound",
)
_STATES = (
    "intact",
    "clean",
    "no gap",
    "no tension",
    "buried knot",
    "running 8-0 nylon",
    "not injured",
    "sharp clean edges",
)


def traps() -> Iterator[tuple[str, frozenset[str], frozenset[object] | None]]:
    """Yield a sentence, the fields in which nothing may be told, and the values meant where it is only of these."""
    for statement in STATEMENTS:
        for frame in _FRAMES:
            sentence = frame.format(done=statement.done, do=statement.do, noun=statement.noun)
            yield sentence[0].upper() + sentence[1:], statement.fields, None
    for wording, (field, value) in _DOUBTED.items():
        for adverb in _ADVERBS:
            yield wording.format(adverb), frozenset([field]), frozenset([value])
    repair = frozenset(["extent", "ends", "gap", "tension", "knot", "peripheral", "peripheral_size"])
    for thing in _THINGS:
        for state in _STATES:
            yield f"{thing}: {state}.", repair, None
