"""The marking as readable text for terminal, paper and screen readers."""

import textwrap
import unicodedata
from collections.abc import Iterable, Iterator

from notereader.practice.marks import ContradictionMark, FactMark, Marking, QuestionsMark, Words
from notereader.record.address import small

WIDTH = 100


def marking_text(marking: Marking) -> str:
    """Return a marking as plain text: the summary, every difference with the note's words, the cautions."""
    lines = [
        *_head(marking),
        *_facts(marking),
        *_contradictions(marking.contradictions),
        *_questions(marking.questions),
        *_kinds(marking),
        *_behind(marking),
        "",
        *(line for caution in marking.cautions for line in fill(caution, "    ", "  * ")),
    ]
    return "\n".join(lines) + "\n"


def marking_line(marking: Marking) -> str:
    """Return a marking in one line, for a list of many."""
    count = marking.counts
    right, stated = (
        count["right"] + count["wrong words"],
        sum(count[o] for o in ("right", "wrong words", "wrong", "missed")),
    )
    return (
        f"{marking.share:>5.0%}  {right:>3} of {stated:>3} facts, {marking.over} over-stated, "
        f"{count['read in']} read in, {count['missed']} missed  {marking.case}"
    )


def seen(text: str) -> str:
    """Return a text as a terminal can show it: control characters and marks that turn its direction become visible."""
    hidden = {c for c in text if unicodedata.category(c) in ("Cc", "Cf", "Cs") and c not in "\n\t"}
    return text.translate({ord(c): "\ufffd" for c in hidden}) if hidden else text


def fill(words: str, indent: str = "", first: str | None = None) -> list[str]:
    """Wrap a sentence to the width of the page."""
    start = indent if first is None else first
    return textwrap.wrap(words, WIDTH, initial_indent=start, subsequent_indent=indent) or [start.rstrip()]


def quoted(words: Iterable[Words]) -> str:
    """Return the note's words on one line, several places parted by ' ... '."""
    return " ... ".join(f'"{" ".join(w.quote.split())}"' for w in words)


def _head(marking: Marking) -> Iterator[str]:
    count = marking.counts
    student = f", {marking.student}" if marking.student else ""
    yield f"MARKING: {marking.case} (difficulty {marking.difficulty} of 5){student}"
    yield ""
    if marking.over:
        yield from fill(
            f"{marking.over} over-stated: the worst fault, for somebody would trust a repair, a pulley or an order "
            "more than the note allows."
        )
    else:
        yield "Nothing was over-stated."
    yield (
        f"{count['right']} facts right with their words, {count['wrong words']} right with wrong words, "
        f"{count['wrong']} wrong, {count['missed']} missed, {count['read in']} read into the note."
    )
    silences = count["silence seen"] + count["silence unsaid"]
    yield f"{count['silence seen']} of {silences} silences that matter were named."
    kappa = "" if marking.kappa is None else f" Agreement on what is stated at all, beyond chance: {marking.kappa:.2f}."
    yield f"Points: {marking.share:.0%} of what the case can bring.{kappa}"


def _facts(marking: Marking) -> Iterator[str]:
    differences = marking.differences
    wrong_places = [entry for entry in marking.entries if not entry.right]
    if not differences and not wrong_places:
        yield ""
        yield "No difference to the key."
        return
    yield from _title("DIFFERENCES, THE GRAVEST FIRST")
    for entry in wrong_places:
        yield from fill(f"{entry.sentence} {entry.why}", "    ", "  * ")
    told: set[str] = set()
    for mark in differences:
        if mark.outcome != "silence unsaid":
            yield from _difference(mark, told)
    silences = [mark for mark in differences if mark.outcome == "silence unsaid"]
    if silences:
        yield from fill(silences[0].sentence, "    ", "  * ")
        yield from fill("; ".join(f"{m.where}: {small(m.label)}" for m in silences), "      ")


def _difference(mark: FactMark, told: set[str]) -> Iterator[str]:
    """Say one difference; why a field matters is said once."""
    sign = "!" if mark.over else "*"
    yield from fill(f"{mark.where}: {small(mark.label)} ({mark.outcome}). {mark.sentence}", "    ", f"  {sign} ")
    if mark.key_words:
        yield from fill(f"The note: {quoted(mark.key_words)}", "      ")
    if mark.said_words and mark.outcome in ("wrong words", "wrong", "read in"):
        yield from fill(f"You marked: {quoted(mark.said_words)}", "      ")
    if mark.tip:
        yield from fill(f"What counts: {mark.tip}", "      ")
    if mark.why and mark.field not in told:
        told.add(mark.field)
        yield from fill(f"Why it matters ({mark.bears}): {mark.why}", "      ")


def _contradictions(hits: list[ContradictionMark]) -> Iterator[str]:
    if not hits:
        return
    yield from _title("CONTRADICTIONS")
    for hit in hits:
        yield from fill(f"{hit.outcome}: {hit.words.rstrip('.')}. {hit.sentence}", "    ", "  * ")
        if hit.key_words:
            yield from fill(f"The note: {quoted(hit.key_words)}", "      ")


def _questions(marked: QuestionsMark | None) -> Iterator[str]:
    if marked is None:
        return
    yield from _title("QUESTIONS FOR THE SURGEON")
    if not marked.asked:
        yield "  You ranked none."
    for number, asked in enumerate(marked.asked, 1):
        place = (
            f"number {asked.place} by its worth ({asked.effect:.0%})" if asked.place else "not among those worth asking"
        )
        yield from fill(f"{asked.asked}: {place}. {asked.sentence}".rstrip(), "     ", f"  {number}. ")
    if marked.asked and marked.best:
        agreement = (
            ""
            if marked.rank_agreement is None
            else f" Order: {marked.rank_agreement:+.2f} (1 is the right order, -1 the reverse)."
        )
        share = "" if marked.worth_share is None else f" Worth: {marked.worth_share:.0%} of the best ranking."
        yield from fill(f"{marked.among_best} of {len(marked.best)} are among the first.{share}{agreement}", "  ")
    if marked.best:
        yield "  First by what the answer would settle:"
    for number, best in enumerate(marked.best, 1):
        where = f" ({best.where})" if best.where else ""
        yield from fill(f"{best.text}{where} Asked because {best.reason}.", "       ", f"    {number}. ")


def _kinds(marking: Marking) -> Iterator[str]:
    yield from _title("BY KIND OF FACT")
    for kind in marking.kinds:
        over = f", {kind.over} over-stated" if kind.over else ""
        yield f"  {kind.right:>3} of {kind.trials:>3}  {kind.label}{over}"


def _behind(marking: Marking) -> Iterator[str]:
    if marking.teaches or marking.remark:
        yield from _title("WHAT THE CASE TEACHES")
        if marking.teaches:
            yield from fill(f"{marking.teaches[0].upper()}{marking.teaches[1:]}.", "  ")
        yield from fill(marking.remark, "  ")


def _title(words: str) -> list[str]:
    return ["", words, "-" * len(words)]
