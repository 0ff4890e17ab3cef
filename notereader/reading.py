"""A note from the intake through the reader: the draft record, with what the intake knows of the note's words."""

from bisect import bisect_left

from notereader.intake import IntakeRefused, NoteText, WordConfidence
from notereader.record import Evidence, Fact, Record, Remark

# A long operative note has some 10,000 characters. Far longer texts are whole patient files, whose earlier operations
# would be read as this one; and the reader has to answer within seconds.
LONGEST = 250_000

# Below these, in percent, a recognised word may be another one, and is little more than a guess. Measured on our own
# faxes: of the words that were recognised wrongly two thirds lie below the first, and one right word in ten.
SURE = 90
GUESS = 60


def read_note(note: NoteText) -> Record:
    """Return the draft record of a note.

    The intake's warnings stand among its remarks. Where a word that proves a fact was recognised from a picture and is
    not surely recognised, that is a reason to look at the fact twice. Raises IntakeRefused for a text that is far
    longer than any operative note.
    """
    if len(note.text) > LONGEST:
        raise IntakeRefused(
            f"The text is too long for one operative note: {len(note.text):,} characters; the limit is {LONGEST:,}.",
            "Cut out the operative note and read that alone.",
            note.name,
        )
    # Loading the reader takes a second; who only refuses a file need not wait for it.
    from notereader.reader import read

    record = read(note.text, _writable(note.name))
    record.remarks.extend(Remark(text=warning) for warning in note.warnings)
    if note.confidences:
        for _, fact in record.walk():
            fact.look_twice.extend(_guesses(fact, note))
    return record


def _writable(name: str) -> str:
    """Return a file's name with what cannot be written as UTF-8 replaced."""
    return name.encode("utf-8", "surrogateescape").decode("utf-8", "replace")


def _guesses(fact: Fact, note: NoteText) -> list[str]:
    found = {word for evidence in fact.evidence for word in _unsure_words(evidence, note.confidences)}
    return [
        f"the picture is hard to read here: '{note.text[word.start : word.end]}' {_doubt(word)}"
        for word in sorted(found)
    ]


def _doubt(word: WordConfidence) -> str:
    return "is little more than a guess" if word.confidence < GUESS else "may be another word"


def _unsure_words(evidence: Evidence, words: list[WordConfidence]) -> list[WordConfidence]:
    span = evidence.span
    if span is None:
        return []
    start, end = span
    first = bisect_left(words, start, key=lambda word: word.end)
    last = bisect_left(words, end, key=lambda word: word.start)
    return [word for word in words[first:last] if word.end > start and word.confidence < SURE]
