"""Small cases and attempts for the tests of practice, all invented."""

from datetime import UTC, datetime, timedelta
from pathlib import Path

from notereader.practice import Attempt, Case, ExerciseBook, Marking, NamedContradiction, OpenAttempt, mark, new_attempt
from notereader.practice.cases import case_of
from notereader.record import Address, Evidence, Fact, Note, Record, Rival, Value, source_of

NOTE = """Date: 5 May 2041. Left ring finger, zone II. FDP completely divided, ends clean.
Skin closed with 5-0 nylon. In 2035 the same finger had a two-strand repair with 3-0 Prolene.
Procedure list: FDP repaired with a six-strand core.
FDP was repaired with a four-strand locked cruciate core of 4-0 Ethibond, 10 mm of tendon on each side.
A2 was intact. A4 was vented for 3 mm. Nerve: gap of 4 mm, grafted.
The repair was tested passively and glided freely.
Plan: wrist in 20 degrees of flexion, early passive motion from day 4.
"""

RING_FDP = Address("repairs", "ring", "FDP")
RING_A2 = Address("pulleys", "ring", "A2")
RING_A4 = Address("pulleys", "ring", "A4")


def at(words: str, number: int = 1) -> tuple[int, int]:
    """Return where words stand in NOTE."""
    start = -1
    for _ in range(number):
        start = NOTE.index(words, start + 1)
    return start, start + len(words)


def evidence(words: str, number: int = 1) -> list[Evidence]:
    return [Evidence.at(NOTE, *at(words, number), source_of(NOTE))]


def fact(value: Value, words: str, rivals: list[Rival] | None = None, basis: str = "stated") -> Fact:
    return Fact(value=value, basis=basis, status="confirmed", evidence=evidence(words), rivals=rivals or [])  # type: ignore[arg-type]


def key_record() -> Record:
    record = Record(note=Note.of(NOTE, "made"))
    put = record.put
    put(Address("operation", field="date"), fact("2041-05-05", "5 May 2041"))
    put(Address("operation", field="side"), fact("left", "Left"))
    put(RING_FDP.field_of("zone"), fact("II", "zone II"))
    put(RING_FDP.field_of("extent"), fact("complete", "FDP completely divided"))
    put(RING_FDP.field_of("ends"), fact("clean", "ends clean"))
    put(RING_FDP.field_of("treatment"), fact("repaired", "FDP was repaired"))
    six = Rival(value=6, evidence=evidence("six-strand"))
    put(RING_FDP.field_of("strands"), fact(4, "four-strand", [six]))
    put(RING_FDP.field_of("stitch"), fact("locked cruciate", "locked cruciate"))
    put(RING_FDP.field_of("hold"), fact("locking", "locked cruciate", basis="implied"))
    put(RING_FDP.field_of("size"), fact("4-0", "4-0 Ethibond"))
    put(RING_FDP.field_of("material"), fact("braided polyester", "4-0 Ethibond"))
    put(RING_FDP.field_of("purchase_mm"), fact(interval(10), "10 mm of tendon on each side"))
    put(RING_FDP.field_of("test"), fact("passive", "tested passively"))
    put(RING_FDP.field_of("glide"), fact("free", "glided freely"))
    put(RING_A2.field_of("finding"), fact("intact", "A2 was intact"))
    put(RING_A4.field_of("finding"), fact("vented", "A4 was vented for 3 mm"))
    put(RING_A4.field_of("extent_mm"), fact(3, "3 mm"))
    put(Address("aftercare", field="wrist_flexion_deg"), fact(interval(20), "wrist in 20 degrees of flexion"))
    put(Address("aftercare", field="programme"), fact("early passive", "early passive motion"))
    put(Address("aftercare", field="start_day"), fact(interval(4), "from day 4"))
    put(Address("elements", field="findings"), fact(True, "FDP completely divided"))
    return record


def interval(low: float, high: float | None = None) -> Value:
    from notereader.record import Interval

    return Interval(low=low, high=low if high is None else high)


def made_case() -> Case:
    return case_of(
        key_record(), "made", difficulty=2, teaches="two counts of strands", remark="The first repair is old."
    )


def perfect(case: Case, scope: str = "whole") -> Attempt:
    """Return the attempt that says exactly what the key says."""
    attempt = new_attempt(case, f"{case.id}-1", "Ada", scope)  # type: ignore[arg-type]
    attempt.record = case.answers.model_copy(deep=True)
    attempt.contradictions = [NamedContradiction(places=[hit.pieces[0].address]) for hit in case.contradictions]
    attempt.questions = [question.places[0] for question in case.questions[:3]]
    attempt.handed_in_at = attempt.started_at
    return attempt


def changed(case: Case, place: Address, new: Fact | None, scope: str = "whole") -> Attempt:
    """Return the perfect attempt with one fact replaced, or taken out."""
    attempt = perfect(case, scope)
    if new is None:
        attempt.record.drop(place)
    else:
        attempt.record.put(place, new)
    return attempt


def only_difference(marking: Marking):  # type: ignore[no-untyped-def]
    assert len(marking.differences) == 1, [(m.address, m.outcome) for m in marking.differences]
    return marking.differences[0]


def open_attempt(folder: Path, case: Case | None = None, scope: str = "therapy") -> OpenAttempt:
    return ExerciseBook(folder, "Ada").start(case or made_case(), scope)  # type: ignore[arg-type]


def handed_in(case: Case, attempt: Attempt, days: int = 0, student: str = "Ada") -> Marking:
    """Mark an attempt as handed in so many days after a fixed day."""
    attempt.handed_in_at = datetime(2041, 6, 1, 12, tzinfo=UTC) + timedelta(days=days)
    attempt.student = student
    return mark(case, attempt)
