"""A marking as lines to walk through, each with its words of the note and its explanation. Knows no Qt.

Every text of a note or a file is escaped.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from html import escape

from notereader.desktop.practice.naming import counted, level_words
from notereader.practice.marks import AskedMark, ContradictionMark, EntryMark, FactMark, Marking, QuestionsMark, Words
from notereader.record import Address
from notereader.record.address import small

_HEADINGS = {
    "over": "Over-stated: the worst fault",
    "whose": "Under the wrong finger, tendon or side",
    "wrong": "Wrong",
    "read in": "Read into the note",
    "missed": "Missed",
    "wrong words": "Right value, wrong words",
    "silence unsaid": "The note is silent, and you did not say so",
    "contradictions": "Contradictions",
    "questions": "Questions for the surgeon",
    "silence seen": "Silence you saw",
    "right": "Right",
}
_SIGNS = {
    "over": "!",
    "whose": "×",
    "wrong": "×",
    "read in": "+",
    "missed": "–",
    "wrong words": "≈",
    "silence unsaid": "?",
    "silence seen": "✓",
    "right": "✓",
}
_HITS = {"named": "✓", "missed": "–", "unusual": "✓", "unfounded": "×"}


@dataclass(frozen=True)
class Line:
    """One line of a marking: a heading, or something to read with its words of the note.

    `key_words` say the fact, `said_words` are those the student marked; both in code points, the end not included.
    """

    title: str
    html: str = ""
    key_words: tuple[tuple[int, int], ...] = ()
    said_words: tuple[tuple[int, int], ...] = ()
    heading: bool = False


def lines_of(marking: Marking) -> list[Line]:
    """Return the lines of a marking: the summary, then what there is to learn, gravest first, right last."""
    groups: dict[str, list[Line]] = {kind: [] for kind in _HEADINGS}
    groups["whose"] = [_whose(entry) for entry in marking.entries if not entry.right]
    for mark in [*marking.differences, *(m for m in marking.facts if m.outcome in ("right", "silence seen"))]:
        groups["over" if mark.over else mark.outcome].append(_fact(mark))
    groups["contradictions"] = [_contradiction(hit) for hit in marking.contradictions]
    groups["questions"] = list(_questions(marking.questions))
    lines = [Line("Summary", _summary(marking))]
    for kind, found in groups.items():
        if found:
            lines += [Line(f"{_HEADINGS[kind]} ({len(found)})", heading=True), *found]
    return lines


def headline(marking: Marking) -> str:
    """Return the marking in one line."""
    count = marking.counts
    stated = sum(count[o] for o in ("right", "wrong words", "wrong", "missed"))
    return (
        f"{marking.over} over-stated  ·  {count['right'] + count['wrong words']} of {stated} values right  ·  "
        f"{count['missed']} missed  ·  {count['read in']} read into the note  ·  {marking.share:.0%} of the points"
    )


def _summary(marking: Marking) -> str:
    count = marking.counts
    over = (
        f"<b>{marking.over} over-stated.</b> That is the worst fault: somebody would trust a repair, a pulley or an "
        "order more than the note allows."
        if marking.over
        else "<b>Nothing was over-stated.</b>"
    )
    silences = count["silence seen"] + count["silence unsaid"]
    facts = (
        f"{counted(count['right'], 'fact')} right with their words, {count['wrong words']} right with wrong words, "
        f"{count['wrong']} wrong, {count['missed']} missed, {count['read in']} read into the note. "
        f"{count['silence seen']} of {silences} silences that matter were said."
    )
    kappa = (
        ""
        if marking.kappa is None
        else f" Agreement with the key on what is stated at all, beyond chance (kappa): {marking.kappa:.2f}."
    )
    body = [
        f"<h3>{escape(marking.case)}, {escape(level_words(marking.difficulty))}</h3>",
        f"<p>{over}</p><p>{escape(facts)}</p>",
        f"<p>{marking.share:.0%} of the points the case can bring.{kappa}</p>",
        "<p>Go down the list: each line shows its words in the note, and below why it matters.</p>",
    ]
    if marking.teaches:
        body.append(
            f"<h4>What the case teaches</h4><p>{escape(_capital(marking.teaches))}. {escape(marking.remark)}</p>"
        )
    kinds = (
        f"{kind.label}: {kind.right} of {kind.trials}" + (f", {kind.over} over-stated" if kind.over else "")
        for kind in marking.kinds
    )
    return "".join([*body, "<h4>By kind of fact</h4>", _list(kinds), "<h4>Cautions</h4>", _list(marking.cautions)])


def _fact(mark: FactMark) -> Line:
    what = f"{_capital(mark.where)}: {small(mark.label)}"
    kind = "over" if mark.over else mark.outcome
    body = [f"<h3>{escape(what)}</h3>", f"<p><b>{_SIGNS[kind]} {escape(_word(mark))}</b></p>"]
    if mark.sentence:
        body.append(f"<p>{escape(mark.sentence)}</p>")
    if mark.outcome in ("right", "silence seen"):
        body.append(f"<p>You entered: {escape(mark.said or 'the note is silent')}.</p>")
    body += _quotes("Words of the note", mark.key_words)
    body += _quotes("You marked", mark.said_words)
    if mark.tip:
        body.append(f"<p><b>What counts:</b> {escape(mark.tip)}</p>")
    if mark.why:
        body.append(f"<p><b>Why it matters ({escape(mark.bears or '')}):</b> {escape(mark.why)}</p>")
        body.append(f"<p>Source: {escape(mark.source)}.</p>")
    return Line(
        f"{_SIGNS[kind]} {what} – {_short(mark)}", "".join(body), _spans(mark.key_words), _spans(mark.said_words)
    )


def _word(mark: FactMark) -> str:
    return {"read in": "read into the note", "wrong words": "right value, wrong words"}.get(
        mark.outcome, "over-stated" if mark.over else mark.outcome
    ) + (", over-stated" if mark.over and mark.outcome == "read in" else "")


def _short(mark: FactMark) -> str:
    if mark.outcome == "wrong":
        return f"you: {mark.said}; the note: {mark.true}"
    if mark.outcome == "read in":
        return f"you: {mark.said}; the note is silent"
    if mark.outcome == "missed":
        return f"the note: {mark.true}"
    return mark.true or "the note is silent"


def _whose(entry: EntryMark) -> Line:
    title = f"{_SIGNS['whose']} {_capital(entry.where)} – you entered it under {entry.filed_under}"
    return Line(
        title, f"<h3>{escape(_capital(entry.where))}</h3><p>{escape(entry.sentence)}</p><p>{escape(entry.why)}</p>"
    )


def _contradiction(hit: ContradictionMark) -> Line:
    body = [
        f"<h3>{escape(hit.title)}</h3>",
        f"<p><b>{_HITS[hit.outcome]} {hit.outcome}</b></p>",
        f"<p>{escape(hit.words)}</p><p>{escape(hit.sentence)}</p>",
        *_quotes("Words of the note", hit.key_words),
    ]
    places = ", ".join(dict.fromkeys(_capital(Address.parse(place).words()) for place in hit.places))
    title = f"{_HITS[hit.outcome]} {places} – {hit.title.lower()}, {hit.outcome}"
    return Line(title, "".join(body), _spans(hit.key_words))


def _questions(marked: QuestionsMark | None) -> Iterator[Line]:
    if marked is None:
        return
    asked = [f"{number}. {_asked(one)}" for number, one in enumerate(marked.asked, 1)] or ["You ranked none."]
    best = [f"{b.text}" + (f" ({b.where})" if b.where else "") + f" Asked because {b.reason}." for b in marked.best]
    body = ["<h3>Questions for the surgeon</h3>", "<h4>Yours</h4>", _list(asked)]
    if marked.asked and marked.best:
        figures = [f"{marked.among_best} of {len(marked.best)} are among the first."]
        if marked.rank_agreement is not None:
            figures.append(f"Order: {marked.rank_agreement:+.2f} (1 is the right order, -1 the reverse).")
        if marked.worth_share is not None:
            figures.append(f"Worth: {marked.worth_share:.0%} of the best ranking.")
        body.append(f"<p>{escape(' '.join(figures))}</p>")
    numbered = "".join(f"<li>{escape(words)}</li>" for words in best)
    body.append(
        f"<h4>First by what the answer would settle</h4><ol>{numbered}</ol>" if best else "<p>None is open.</p>"
    )
    yield Line(f"Yours and the most telling ones – {marked.among_best} of {len(marked.best)}", "".join(body))


def _asked(asked: AskedMark) -> str:
    place = f"number {asked.place} by its worth" if asked.place else "not among those worth asking"
    return f"{_capital(asked.asked)}: {place}. {asked.sentence}".rstrip()


def _quotes(lead: str, words: Iterable[Words]) -> list[str]:
    quotes = [f"“{' '.join(w.quote.split())}”" for w in words]
    return [f"<p><b>{lead}:</b> {escape(' … '.join(quotes))}</p>"] if quotes else []


def _spans(words: Iterable[Words]) -> tuple[tuple[int, int], ...]:
    return tuple((w.start, w.end) for w in words)


def _list(items: Iterable[str]) -> str:
    return f"<ul>{''.join(f'<li>{escape(item)}</li>' for item in items)}</ul>"


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]
