"""An invented record with every kind of fact, and texts that mean harm."""

from datetime import UTC, date, datetime

from notereader.record import Address, Evidence, Fact, Interval, Note, Record, Rival, Value, source_of

TEXT = """Right middle finger, zone II. FDP: complete cut, repaired with a six-strand M-Tang core of 3-0 looped
nylon, 8 to 10 mm purchase. A4 was vented. No gapping.
Header: four-strand. Wrist splinted in 10 degrees of extension. Surgeon: the undersigned.
"""
SOURCE = source_of(TEXT)

STRANDS = Address("repairs", "middle", "FDP", None, "strands")
SIZE = Address("repairs", "middle", "FDP", None, "size")
PURCHASE = Address("repairs", "middle", "FDP", None, "purchase_mm")
GAP = Address("repairs", "middle", "FDP", None, "gap")
HOLD = Address("repairs", "middle", "FDP", None, "hold")
LOOPED = Address("repairs", "middle", "FDP", None, "looped")
GLIDE = Address("repairs", "middle", "FDP", None, "glide")
A4 = Address("pulleys", "middle", "A4", None, "finding")
WRIST = Address("aftercare", field="wrist_flexion_deg")
SURGEON = Address("elements", field="surgeon")

HARMFUL = [
    "<script>alert(1)</script>",
    "</td></table><img src=x onerror=alert(1)>",
    '" onmouseover="alert(1)',
    "&lt;b&gt; &#60;i&#62;",
    "{body} {0} %s",
    "<!-- ",
    "]]><style>*{display:none}</style>",
    "right‮tfel",
    "line\nbreak\ttab",
]


def quoted(words: str) -> list[Evidence]:
    """Return the evidence for words of the note."""
    start = TEXT.index(words)
    return [Evidence.at(TEXT, start, start + len(words), SOURCE)]


def said(value: Value, words: str, status: str = "proposed", **more: object) -> Fact:
    """Return a fact that the note states."""
    return Fact(value=value, status=status, evidence=quoted(words), **more)


def example() -> Record:
    """Return a record with a fact of every standing and basis."""
    record = Record(note=Note.of(TEXT, "middle.txt"))
    rival = Rival(value=4, evidence=quoted("four-strand"))
    record.put(STRANDS.field_of("treatment"), said("repaired", "repaired", "confirmed"))
    record.put(STRANDS, said(6, "six-strand", "confirmed", rivals=[rival]))
    record.put(SIZE, said("3-0", "3-0", look_twice=["thicker than most"]))
    record.put(PURCHASE, said(Interval(low=8, high=10), "8 to 10 mm", "corrected"))
    record.put(GAP, said("none", "No gapping", "withdrawn"))
    record.put(HOLD, said("locking", "M-Tang", basis="implied"))
    record.put(LOOPED, said(True, "looped", "confirmed"))
    record.put(GLIDE, Fact(value=None, basis="silent", status="confirmed"))
    record.put(A4, Fact(value="vented", status="added", said_by="the surgeon", said_on=date(2031, 3, 20)))
    record.put(WRIST, said(Interval(low=-10, high=-10), "10 degrees of extension", "confirmed"))
    record.put(SURGEON, said(True, "Surgeon", "confirmed"))
    record.review.reader_version = "0.1.0"
    return record


def confirmed() -> Record:
    """Return the same record confirmed as a whole."""
    record = example()
    for _, fact in record.walk():
        if fact.status == "proposed":
            fact.status = "confirmed"
    record.review.reviewer = "Hand clinic"
    record.review.confirmed_at = datetime(2031, 3, 21, 9, 30, tzinfo=UTC)
    return record


def poisoned(harm: str) -> Record:
    """Return a record with a harmful text wherever a record takes free text."""
    text = f"{harm} FDP repaired"
    record = Record(note=Note.of(text, harm))
    evidence = [Evidence.at(text, 0, len(harm), source_of(text))]
    fact = Fact(value=4, evidence=evidence, look_twice=[harm], rule=harm, said_by=harm)
    fact.rivals.append(Rival(value=2, evidence=evidence))
    record.put(STRANDS, fact)
    withdrawn = Fact(value="none", status="withdrawn", evidence=evidence, said_by=harm)
    record.put(GAP, withdrawn)
    record.review.reviewer = harm
    record.review.confirmed_at = datetime(2031, 3, 21, 9, 30, tzinfo=UTC)
    record.review.reader_version = harm
    return record
