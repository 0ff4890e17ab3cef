"""Marking: a student's attempt held against the key of its case."""

from collections import Counter
from collections.abc import Iterator, Sequence
from typing import Literal

from notereader.appraisal.cautions import cautions_about
from notereader.appraisal.models import Contradiction
from notereader.practice.asking import mark_questions
from notereader.practice.attempts import Attempt
from notereader.practice.cases import NERVE_FIELD, Case
from notereader.practice.explain import explained, shown, whose_sentence
from notereader.practice.faults import PracticeFault
from notereader.practice.marks import OUTCOMES, ContradictionMark, EntryMark, FactMark, Marking, Outcome, Words
from notereader.practice.measures import kappa
from notereader.practice.pairing import Pair, pairs
from notereader.practice.promise import leaning, same_value
from notereader.practice.proofs import other_proofs
from notereader.practice.quotes import judge, spans_of
from notereader.practice.tallies import tallies
from notereader.practice.words import kind_of, name_of, spec_of, tables
from notereader.record import Address, Fact, Record
from notereader.vocabulary import field_specs


def mark(case: Case, attempt: Attempt) -> Marking:
    """Return the marking of an attempt.

    Raises PracticeFault where the case has no key or the attempt was made on another note.
    """
    if attempt.sha256 != case.sha256:
        raise PracticeFault(f"The attempt '{attempt.id}' was made on another note than the case '{case.id}' holds.")
    found = list(pairs(case.answers, attempt.record))
    facts = [m for pair in found for m in _fact_marks(case, attempt, pair)]
    entries = [m for pair in found if (m := _entry_mark(attempt, pair)) is not None]
    again = attempt.scope == "again"
    hits = [] if again else _contradiction_marks(case, attempt, found)
    worth = sum(m.worth for m in facts) + sum(m.worth for m in hits)
    points = sum(m.points for m in facts) + sum(m.points for m in entries) + sum(m.points for m in hits)
    raw = points / worth if worth else float(points >= 0)
    return Marking(
        cautions=[tables().caution, *cautions_about("strength", "glide")],
        case=case.id,
        sha256=case.sha256,
        difficulty=case.difficulty,
        attempt=attempt.id,
        student=attempt.student,
        scope=attempt.scope,
        handed_in_at=attempt.handed_in_at,
        share=round(max(0.0, raw), 4),
        raw_share=round(raw, 4),
        counts=_counts(facts),
        over=sum(m.over for m in facts),
        kappa=_agreement(case, attempt, found),
        facts=facts,
        entries=entries,
        contradictions=hits,
        questions=None if again else mark_questions(case, attempt.questions, lambda place: _moved(found, place)),
        kinds=tallies(facts, entries, hits),
        teaches=case.teaches,
        remark=case.remark,
    )


def _counts(facts: Sequence[FactMark]) -> dict[Outcome, int]:
    count = Counter(m.outcome for m in facts)
    return {outcome: count[outcome] for outcome in OUTCOMES}


def _moved(found: Sequence[Pair], place: Address) -> Address:
    """Return where the student's address belongs by the key."""
    pair = next((p for p in found if p.misfiled and p.said == place.entry()), None)
    return place if pair is None or pair.key is None else pair.key.field_of(place.field)


def _fields(pair: Pair) -> list[str]:
    group = (pair.key or pair.said or Address("operation")).group
    return [name for name in field_specs()[group] if name in pair.key_facts or name in pair.said_facts]


def _fact_marks(case: Case, attempt: Attempt, pair: Pair) -> Iterator[FactMark]:
    entry = pair.key or pair.said
    assert entry is not None
    for name in _fields(pair):
        place = entry.field_of(name)
        if attempt.covers(place):
            said = _standing(pair.said_facts.get(name))
            key = _fair(place, _standing(pair.key_facts.get(name)), said)
            if key is not None or (said is not None and said.live):
                yield _fact_mark(case, attempt.record, place, key, said)


def _standing(fact: Fact | None) -> Fact | None:
    """Return a fact, or None where it was withdrawn."""
    return None if fact is None or fact.status == "withdrawn" else fact


def _fair(place: Address, key: Fact | None, said: Fact | None) -> Fact | None:
    """Return the key's fact, with a rival in its place where the student gave both and neither promises more."""
    if key is None or said is None or key.value is None or said.value is None:
        return key
    rival = next((r for r in key.rivals if r.value == said.value), None)
    both = any(r.value == key.value for r in said.rivals)
    if rival is None or not both or leaning(spec_of(place), said.value, key.value) != "other":
        return key
    return key.model_copy(update={"value": rival.value, "evidence": rival.evidence})


def _fact_mark(case: Case, record: Record, place: Address, key: Fact | None, said: Fact | None) -> FactMark:
    made = FactMark(
        address=place.text(),
        where=place.entry_words(),
        label=spec_of(place).label,
        kind=kind_of(name_of(place)),
        field=name_of(place),
        outcome=_outcome(record, place, key, said),
        implied=key is not None and key.basis == "implied",
        said="" if said is None or said.value is None else shown(place, said.value),
        true="" if key is None or key.value is None else shown(place, key.value),
        said_words=_words(case.text, said),
        key_words=_words(case.text, key),
    )
    if made.outcome in ("wrong", "read in") and said is not None and said.value is not None:
        made.leaning = leaning(spec_of(place), said.value, key.value if key is not None else None)
    if made.outcome == "right" and key is not None and said is not None:
        _judge_words(case, place, key, said, made)
    _count(made, spec_of(place).weight)
    return explained(made, place, key, said)


def _outcome(record: Record, place: Address, key: Fact | None, said: Fact | None) -> Outcome:
    true = key.value if key is not None else None
    claimed = said.value if said is not None else None
    if true is not None and claimed is not None:
        return "right" if same_value(spec_of(place), claimed, true) else "wrong"
    if true is not None:
        return "missed"
    if claimed is not None:
        return "read in"
    return "silence seen" if said is not None or _said_otherwise(record, place) else "silence unsaid"


def _said_otherwise(record: Record, place: Address) -> bool:
    """True where a needed silence was said at a neighbouring address that means the same."""
    for other, fact in record.walk():
        if fact.basis != "silent" or fact.status == "withdrawn":
            continue
        if place.group == "injuries" == other.group and place.field == NERVE_FIELD and place.digit == other.digit:
            return True
        if place.field.startswith("extent_") and other.entry() == place.entry() and other.field.startswith("extent_"):
            return True
    return False


def _judge_words(case: Case, place: Address, key: Fact, said: Fact, made: FactMark) -> None:
    """Judge the words of a right value; words elsewhere are compared with every place that states the fact."""
    proofs = spans_of(key)
    if not proofs or key.value is None:
        return
    marked = spans_of(said)
    made.proof = judge(case.text, place, key.value, marked, proofs)
    if made.proof == "elsewhere":
        further = other_proofs(case.text, place, key.value, proofs)
        made.proof = judge(case.text, place, key.value, marked, further)
    if made.proof != "fit":
        made.outcome = "wrong words"


def _count(made: FactMark, weight: int) -> None:
    """Set what the fact can bring and what it brought."""
    points = tables().points
    if made.outcome in ("silence seen", "silence unsaid"):
        made.worth = weight * points.silence_share
        made.points = made.worth if made.outcome == "silence seen" else 0.0
        return
    made.worth = 0.0 if made.outcome == "read in" else weight * (points.implied_share if made.implied else 1.0)
    share = {
        "right": points.right,
        "wrong words": points.wrong_words,
        "wrong": points.wrong,
        "missed": points.missed,
        "read in": points.read_in,
    }[made.outcome]
    made.points = weight * points.overstated if made.over else (made.worth or weight) * share


def _words(text: str, fact: Fact | None) -> list[Words]:
    spans = [] if fact is None else spans_of(fact)
    return [Words(quote=text[start:end], start=start, end=end) for start, end in spans]


def _entry_mark(attempt: Attempt, pair: Pair) -> EntryMark | None:
    """Mark whose the facts are, where the student made an entry with at least one fact that was asked."""
    if pair.said is None or pair.said.part is None:
        return None
    own, entry = pair.said, pair.key or pair.said
    asked = [n for n, f in pair.said_facts.items() if f.live and attempt.covers(entry.field_of(n))]
    if not asked:
        return None
    if not pair.misfiled:
        stated = any(fact.live for fact in pair.key_facts.values())
        return EntryMark(address=entry.text(), where=entry.entry_words(), right=True) if stated else None
    words, reason = whose_sentence(own, entry)
    points = tables().points
    return EntryMark(
        address=entry.text(),
        where=entry.entry_words(),
        filed_under=own.entry_words(),
        right=False,
        points=points.wrong_whose * points.whose_weight,
        sentence=words,
        why=reason,
    )


def _contradiction_marks(case: Case, attempt: Attempt, found: Sequence[Pair]) -> list[ContradictionMark]:
    named = [{_moved(found, Address.parse(p)).text() for p in hit.places} for hit in attempt.contradictions]
    # Entering both values of a fact names the contradiction as well.
    named += [{_moved(found, place).text()} for place, fact in attempt.record.walk() if fact.live and fact.rivals]
    marks = [_contradiction_mark(case, hit, named) for hit in case.contradictions]
    known = {piece.address for hit in (*case.contradictions, *case.unusual) for piece in hit.pieces}
    for hit in case.unusual:
        if any(places & {piece.address for piece in hit.pieces} for places in named):
            marks.append(_contradiction_mark(case, hit, named))
    unfounded = {frozenset(places) for places in named if not places & known}
    return [*marks, *(_unfounded(places) for places in sorted(unfounded, key=sorted))]


def _contradiction_mark(case: Case, hit: Contradiction, named: Sequence[set[str]]) -> ContradictionMark:
    points, words = tables().points, tables().sentence
    places = list(dict.fromkeys(piece.address for piece in hit.pieces))
    seen = any(given & set(places) for given in named)
    unusual = hit.kind == "implausible"
    named_as: Literal["unusual", "named"] = "unusual" if unusual else "named"
    return ContradictionMark(
        outcome=named_as if seen else "missed",
        title=hit.title,
        words=hit.words,
        places=places,
        sentence=words.contradiction_named if seen else words.contradiction_missed,
        worth=0.0 if unusual else points.contradiction,
        points=points.contradiction if seen and not unusual else 0.0,
        key_words=[w for place in places for w in _both_sides(case, Address.parse(place))],
    )


def _both_sides(case: Case, place: Address) -> list[Words]:
    """Return the words of a fact and of its rivals."""
    fact = case.answers.fact(place)
    if fact is None:
        return []
    spans = [*spans_of(fact), *(e.span for rival in fact.rivals for e in rival.evidence if e.span is not None)]
    return [Words(quote=case.text[start:end], start=start, end=end) for start, end in spans]


def _unfounded(places: frozenset[str]) -> ContradictionMark:
    return ContradictionMark(
        outcome="unfounded",
        title="No contradiction",
        words="; ".join(Address.parse(place).words() for place in sorted(places)),
        places=sorted(places),
        sentence=tables().sentence.contradiction_none,
        points=-tables().points.contradiction / 2,
    )


def _agreement(case: Case, attempt: Attempt, found: Sequence[Pair]) -> float | None:
    """Return kappa over every field of every entry in play: is it stated, by the key and by the student?"""
    table: Counter[tuple[bool, bool]] = Counter()
    for pair in found:
        entry = pair.key or pair.said
        assert entry is not None
        for name in field_specs()[entry.group]:
            if attempt.covers(entry.field_of(name)):
                table[_live(pair.key_facts.get(name)), _live(pair.said_facts.get(name))] += 1
    return kappa(table[True, True], table[True, False], table[False, True], table[False, False])


def _live(fact: Fact | None) -> bool:
    return fact is not None and fact.live
