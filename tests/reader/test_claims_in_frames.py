"""A claim of every kind in frames that make it no finding (meant, doubted, of another hand), and its twins."""

import pytest
from reader_sentences import record_of

_BEFORE = "Left ring finger, zone II. The FDP was divided and repaired with a four-strand cruciate of 4-0 Prolene. "
# Said, done as an infinitive, as a noun, and what the record would then hold: field and value.
_CLAIMS = (
    ("A2 was intact", "keep A2 intact", "an intact A2", ("finding", "intact")),
    ("A1 was not opened", "leave A1 unopened", "an unopened A1", ("finding", "intact")),
    ("the A4 pulley was repaired", "repair the A4 pulley", "repair of the A4 pulley", ("finding", "repaired")),
    ("the repair was gliding freely", "get free glide", "free glide", ("glide", "free")),
    ("the repair was free of any gap", "leave no gap", "a gap-free repair", ("gap", "none")),
    (
        "a running 6-0 epitendinous suture was added",
        "add a running 6-0 epitendinous suture",
        "a running 6-0 epitendinous suture",
        ("peripheral", "present"),
    ),
    ("the FDS was intact", "keep the FDS intact", "an intact FDS", ("extent", "intact")),
    (
        "the ulnar digital nerve was intact",
        "keep the ulnar digital nerve intact",
        "an intact ulnar digital nerve",
        ("extent", "intact"),
    ),
)
_FRAMES = (
    "The idea was to {do}.",
    "We set out to {do}.",
    "One should {do}.",
    "At second look we will {do}.",
    "We could {do} at a second stage.",
    "He agreed to {noun}.",
    "We told him about {noun}.",
    "The consent form names {noun}.",
    "An attempt at {noun} was made.",
    "{noun} was on the list for today.",
    "Query {noun}.",
    "I doubt that {done}.",
    "I take it that {done}.",
    "I would love to say that {done}.",
    "I wonder whether {done}.",
    "Nobody looked whether {done}.",
    "Perhaps {done}.",
    "{done}, probably.",
    "{done}, but I did not look.",
    "{done} (not checked).",
    "In the other hand {done}.",
    "In the neighbouring finger {done}.",
    "Per the outside note, {done}.",
    "{done}. Sorry, wrong patient.",
    "{done}. This did not happen.",
)
_TWINS = (
    "{done}.",
    "At the end {done}.",
    "I was to find that {done}.",
    "{done}. The other finger was bandaged.",
    "{done}, the arteries were not examined.",
    "{done}, as I found to my relief.",
)


def _values(sentence: str, field: str) -> set[object]:
    return {fact.value for place, fact in record_of(_BEFORE + sentence).walk() if place.field == field}


def _capital(sentence: str) -> str:
    return sentence[0].upper() + sentence[1:]


@pytest.mark.parametrize("frame", _FRAMES)
def test_framed_claims_are_no_findings(frame: str) -> None:
    for done, do, noun, (field, value) in _CLAIMS:
        sentence = _capital(frame.format(done=done, do=do, noun=noun))
        assert value not in _values(sentence, field), sentence


@pytest.mark.parametrize("twin", _TWINS)
def test_plain_claims_stay_read(twin: str) -> None:
    for done, _, _, (field, value) in _CLAIMS:
        sentence = _capital(twin.format(done=done))
        assert value in _values(sentence, field), sentence


@pytest.mark.parametrize(
    ("sentence", "field"),
    [
        ("FDS clinically intact.", "extent"),
        ("A2: intact preop.", "finding"),
        ("A2 intact per ED.", "finding"),
        ("Gap ?none.", "gap"),
        ("Glide ?free.", "glide"),
        ("No catching, I hope.", "glide"),
    ],
)
def test_known_from_elsewhere_or_queried(sentence: str, field: str) -> None:
    assert not _values(sentence, field) & {"intact", "none", "free"}
