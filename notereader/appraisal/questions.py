"""Questions for the surgeon, ordered by how much the answer would change the picture, and the letter that asks them."""

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache

from pydantic import Field

from notereader.appraisal.construct import Construct
from notereader.appraisal.figures import Status, Table, load
from notereader.appraisal.known import Case, Entry, Known
from notereader.appraisal.models import Completeness, Contradiction, NeedItem, Question
from notereader.appraisal.strength import share_if_unknown, spread_shares
from notereader.record import Address

# Facts that are asked in company: the second is dropped where the first is asked of the same tendon.
_WITH = {"repairs.stitch": "repairs.strands", "repairs.hold": "repairs.stitch"}
# Facts of a note that are the case's identifiers; their values are never put into a letter.
_IDENTIFIERS = ("operation.date", "operation.injury_date")


class QuestionRow(Table):
    """One question with its reason; `effect` is given for facts outside the strength model."""

    field: str
    text: str
    reason: str
    effect: float = Field(default=0.0, ge=0, le=1)


class QuestionSentences(Table):
    """Sentences of the questions."""

    disputed: str
    says: str
    nearby: str
    silent: str
    silent_confirmed: str
    unclear: str


class LetterWords(Table):
    """The fixed parts of the letter; identifiers are blanks."""

    opening: str
    none: str
    answer_line: str
    closing: str


class QuestionTables(Table):
    """Everything in questions.toml."""

    source: str
    status: Status
    in_letter: int
    disputed_least: float
    fds_share: float = Field(gt=0, le=1)
    inferred_share: float = Field(gt=0, le=1)
    question: tuple[QuestionRow, ...]
    sentences: QuestionSentences
    letter: LetterWords


@cache
def question_tables() -> QuestionTables:
    """Return the questions and the words of the letter."""
    return load("questions.toml", QuestionTables)


@dataclass(frozen=True, slots=True)
class _Open:
    """One open point before points of several tendons are put together."""

    key: str
    where: str
    place: str
    says: str
    effect: float
    effect_from: str
    disputed: bool


def questions_of(
    case: Case, needs: Completeness, found: list[Contradiction], constructs: dict[str, Construct]
) -> list[Question]:
    """Return the questions, the most telling first.

    `constructs` holds the sutured tendons by the text of their address; the share of spread that an unknown causes
    there ranks its question. Everything else ranks by the figure in questions.toml.
    """
    opens = [*_silent(case, needs, constructs), *_disputed(case, found, constructs)]
    merged: dict[tuple[str, str, bool], list[_Open]] = {}
    for point in opens:
        merged.setdefault((point.key, point.says, point.disputed), []).append(point)
    questions = [_question(points) for points in merged.values()]
    return sorted(questions, key=lambda q: -q.effect)


def question_letter(questions: list[Question], most: int | None = None) -> str:
    """Return a letter as plain text that asks the questions, at most `most` (None: the number in questions.toml).

    Identifiers are left as blanks to be filled in by hand; no date of the case is printed.
    """
    words = question_tables().letter
    chosen = questions[: question_tables().in_letter if most is None else most]
    if not chosen:
        return f"{words.opening}\n\n{words.none}\n\n{words.closing}\n"
    asked = []
    for number, q in enumerate(chosen, 1):
        where = f" ({q.where})" if q.where else ""
        asked.append(f"{number}. {q.text}{where}\n   {q.says} I ask because {q.reason}.\n   {words.answer_line}")
    return "\n\n".join([words.opening, *asked, words.closing]) + "\n"


def row_for(key: str) -> QuestionRow:
    """Return the question of a field, the general one where it has none of its own."""
    rows = {row.field: row for row in question_tables().question}
    return rows.get(key, rows["other"])


def _question(points: list[_Open]) -> Question:
    first = points[0]
    row = row_for(first.key)
    wheres = ", ".join(dict.fromkeys(p.where for p in points if p.where))
    best = max(points, key=lambda p: p.effect)
    text = f"{row.text} {question_tables().sentences.disputed}" if first.disputed and row.field != "other" else row.text
    return Question(
        key=first.key,
        text=text,
        where=wheres,
        reason=row.reason,
        says=first.says,
        effect=round(best.effect, 4),
        effect_from=best.effect_from,
        places=list(dict.fromkeys(p.place for p in points)),
    )


def _silent(case: Case, needs: Completeness, constructs: dict[str, Construct]) -> Iterable[_Open]:
    """Yield the needed facts that the note does not state, or only implies."""
    items = [i for group in needs.needs for i in group.items if i.state in ("silent", "implied") and not i.elsewhere]
    asked = {(i.where, _key(i)) for i in items}
    for item in items:
        key = _key(item)
        effect, where_from = _effect(item.address, key, constructs)
        if not effect:
            continue
        if (item.where, _WITH.get(key)) in asked and _silent_too(items, item.where, _WITH[key]):
            continue
        if key not in {row.field for row in question_tables().question}:
            continue
        yield _Open(key, _where(item), item.address, _says(case, item), effect, where_from, False)


def _silent_too(items: list[NeedItem], where: str, key: str) -> bool:
    return any(i.where == where and _key(i) == key and i.state == "silent" for i in items)


def _key(item: NeedItem) -> str:
    place = Address.parse(item.address)
    if place.group == "injuries":
        return "injuries.any"
    if place.group == "pulleys" and place.field.startswith("extent"):
        return "pulleys.extent"
    return f"{place.group}.{place.field}"


def _where(item: NeedItem) -> str:
    place = Address.parse(item.address)
    if place.group in ("operation", "aftercare"):
        return ""
    if place.group == "injuries":
        return "thumb" if place.digit == "thumb" else f"{place.digit} finger"
    return place.entry_words()


def _effect(address: str, key: str, constructs: dict[str, Construct]) -> tuple[float, str]:
    """Return how much of the picture the answer would settle, and where that figure comes from."""
    place = Address.parse(address)
    construct = constructs.get(place.entry().text())
    if construct is not None:
        unknown = spread_shares(construct).get(place.field)
        if unknown is not None:
            return unknown, "share of the spread of the breaking force that this unknown causes"
        if (forgotten := share_if_unknown(construct, place.field)) > 0:
            return forgotten * question_tables().inferred_share, "an inference, counted as part of not knowing"
    share = question_tables().fds_share if place.part == "FDS" else 1.0
    return row_for(key).effect * share, f"set by hand: {question_tables().source}"


def _says(case: Case, item: NeedItem) -> str:
    """Say what the note does give near the open point, without any identifier."""
    words = question_tables().sentences
    place = Address.parse(item.address)
    entry = next((e for e in case.entries() if e.place == place.entry()), None)
    if item.state == "implied" and entry is not None and (known := entry.known(place.field)) is not None:
        return words.unclear.format(words=_quoted(known))
    near = _nearby(entry, place.field)
    silent = words.silent_confirmed if item.confirmed else words.silent
    return f"{silent} {words.nearby.format(words=near)}" if near else silent


def _nearby(entry: Entry | None, field: str) -> str:
    """Return what the note says of the same suture, where the question is about it."""
    about = ("strands", "size", "material", "stitch", "hold", "purchase_mm", "lock_mm")
    if entry is None or entry.place.group != "repairs" or field not in about:
        return ""
    known = [k for name in about if name != field and (k := entry.known(name)) is not None and not k.implied]
    return ", ".join(_plain(k) for k in known)


def _plain(known: Known) -> str:
    label = known.place.words().split(": ")[-1]
    return f"{label} {known.shown()}"


def _quoted(known: Known) -> str:
    return f"'{known.quote}', read as {known.shown()}" if known.quote else known.shown()


def _disputed(case: Case, found: list[Contradiction], constructs: dict[str, Construct]) -> Iterable[_Open]:
    """Yield one open point for each hit of a named check."""
    words, least = question_tables().sentences, question_tables().disputed_least
    for hit in found:
        place = Address.parse(hit.pieces[0].address)
        key = f"{place.group}.{place.field}"
        construct = constructs.get(place.entry().text())
        effect = row_for(key).effect
        if construct is not None and place.field:
            effect = max(effect, share_if_unknown(construct, place.field) * question_tables().inferred_share)
        if hit.kind == "contradiction":
            effect = max(effect, least)
        elif effect == 0:
            effect = row_for("other").effect
        says = words.says.format(words=_hit_words(case, hit))
        where = place.entry_words() if place.part else ""
        yield _Open(key, where, hit.pieces[0].address, says, effect, "named check: " + hit.title.lower(), True)


def _hit_words(case: Case, hit: Contradiction) -> str:
    """Say what a check rests on, values only; the case's dates are left out."""
    parts = []
    for piece in hit.pieces:
        place = Address.parse(piece.address)
        label = place.words().split(": ")[-1]
        if f"{place.group}.{place.field}" in _IDENTIFIERS:
            parts.append(f"{label} (left out here)")
            continue
        quote = f" ('{piece.quote}')" if piece.quote else ""
        parts.append(f"{label} {piece.value}{quote}")
    return "; ".join(dict.fromkeys(parts))
