"""The student's questions for the surgeon against the appraisal's order."""

from collections.abc import Callable, Sequence

from notereader.appraisal import Question
from notereader.practice.cases import Case
from notereader.practice.marks import AskedMark, BestQuestion, QuestionsMark
from notereader.practice.measures import discounted_share, somers_d
from notereader.practice.words import tables
from notereader.record import Address

Moved = Callable[[Address], Address]


def mark_questions(case: Case, ranked: Sequence[str], moved: Moved) -> QuestionsMark:
    """Compare ranked questions (addresses) with the appraisal's order; `moved` puts misfiled facts right."""
    questions = case.questions
    places = [_place_of(questions, moved(Address.parse(place))) for place in ranked]
    asked = [_asked(ranked, places, i, questions) for i in range(len(ranked))]
    most = tables().asking.ranked
    effects = [question.effect for question in questions]
    gains = [0.0 if _again(places, i) else mark.effect for i, mark in enumerate(asked)]
    order = [-float(i) for i in range(len(asked))]
    least = min(sorted(effects, reverse=True)[:most], default=0.0)
    return QuestionsMark(
        asked=asked,
        best=[BestQuestion(text=q.text, where=q.where, reason=q.reason, effect=q.effect) for q in questions[:most]],
        among_best=sum(gain > 0 and gain >= least for gain in gains[:most]),
        rank_agreement=somers_d([mark.effect for mark in asked], order),
        worth_share=discounted_share(gains, effects, most),
    )


def _asked(ranked: Sequence[str], places: Sequence[int | None], i: int, questions: Sequence[Question]) -> AskedMark:
    words, place = tables().sentence, places[i]
    mark = AskedMark(address=ranked[i], asked=Address.parse(ranked[i]).words(), place=None, effect=0.0)
    if place is None:
        mark.sentence = words.question_answered
        return mark
    mark.place, mark.effect = place + 1, questions[place].effect
    if _again(places, i):
        mark.sentence = words.question_twice
    elif any(questions[place].effect > _effect(questions, earlier) for earlier in places[:i]):
        mark.sentence = words.question_late.format(said=i + 1, true=place + 1)
    return mark


def _effect(questions: Sequence[Question], place: int | None) -> float:
    return 0.0 if place is None else questions[place].effect


def _again(places: Sequence[int | None], i: int) -> bool:
    return places[i] is not None and places[i] in places[:i]


def _place_of(questions: Sequence[Question], place: Address) -> int | None:
    """Return where a question stands in the appraisal's order, from 0, or None where it is not among them."""
    return next((i for i, q in enumerate(questions) if any(_same(place, Address.parse(p)) for p in q.places)), None)


def _same(asked: Address, offered: Address) -> bool:
    """True where a question about one address is the question about the other."""
    if asked == offered:
        return True
    if offered.group == "injuries" == asked.group:
        return asked.digit == offered.digit
    if offered.group == "pulleys" and offered.field.startswith("extent") and asked.field.startswith("extent"):
        return asked.entry() == offered.entry()
    return False
