"""The one or two sentences that explain each difference, with the words of resources/practice.toml."""

from notereader.practice.marks import FactMark
from notereader.practice.promise import leaning
from notereader.practice.words import WHOSE, name_of, spec_of, tables, tip, why
from notereader.record import Address, Fact, Interval, Value, show_value
from notereader.vocabulary import FieldSpec


def shown(place: Address, value: Value) -> str:
    """Say a value in plain words, degrees with their direction."""
    return shown_by(spec_of(place), value)


def shown_by(spec: FieldSpec, value: Value) -> str:
    """Say a value of a field in plain words, degrees with their direction; value_of() reads them again."""
    if "degrees" in spec.unit and isinstance(value, Interval):
        return _angle(value)
    return show_value(value, spec.unit)


def explained(mark: FactMark, place: Address, key: Fact | None, said: Fact | None) -> FactMark:
    """Return the mark with its sentence and the reason why the fact matters; what is right gets neither."""
    if mark.outcome == "right":
        return mark
    reason = why(name_of(place))
    mark.sentence = _sentence(mark, place, key, said).format(said=mark.said, true=mark.true, where=mark.where)
    mark.tip = tip(name_of(place)) if mark.outcome == "wrong" else ""
    mark.why, mark.bears, mark.source = reason.text, reason.bears, reason.source
    return mark


def whose_sentence(said: Address, true: Address) -> tuple[str, str]:
    """Return the sentence for facts filed under the wrong digit, slip or side, and why it matters."""
    words = tables().sentence.whose.format(said=said.entry_words(), true=true.entry_words())
    return words, why(WHOSE).text


def _sentence(mark: FactMark, place: Address, key: Fact | None, said: Fact | None) -> str:
    words = tables().sentence
    if mark.outcome == "wrong words":
        return {
            "none": words.words_none,
            "too little": words.words_too_little,
            "too much": words.words_too_much,
        }.get(mark.proof or "", words.words_elsewhere)
    if mark.outcome == "wrong":
        return _wrong(place, key, said)
    if mark.outcome == "missed":
        if mark.implied:
            return words.missed_implied
        return words.missed_silent if said is not None and said.basis == "silent" else words.missed
    if mark.outcome == "read in":
        return words.read_in_over if mark.over else words.read_in
    return words.silence_seen if mark.outcome == "silence seen" else words.silence_unsaid


def _wrong(place: Address, key: Fact | None, said: Fact | None) -> str:
    words = tables().sentence
    assert key is not None and said is not None and key.value is not None and said.value is not None
    if any(rival.value == said.value for rival in key.rivals):
        return words.rival
    lean = leaning(spec_of(place), said.value, key.value)
    if place.field == "zone" and lean != "other":
        return words.finer if lean == "over" else words.coarser
    return {"over": words.wrong_over, "under": words.wrong_under, "other": words.wrong_other}[lean]


def _angle(value: Interval) -> str:
    ends = [figure for figure in (value.low, value.high) if figure is not None]
    if all(figure == 0 for figure in ends):
        return "neutral (0 degrees)"
    if all(figure <= 0 for figure in ends):
        turned = Interval(
            low=None if value.high is None else abs(value.high), high=None if value.low is None else abs(value.low)
        )
        return f"{show_value(turned)} degrees of extension"
    return show_value(value, "degrees of flexion")
