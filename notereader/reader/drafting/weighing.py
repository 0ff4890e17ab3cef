"""Which proposed facts are to be looked at twice: the signs of a misreading are added up, and the heaviest are told."""

from notereader.reader.drafting.signs import Signs
from notereader.reader.page import Page
from notereader.record import Address, Fact, Record
from notereader.vocabulary.doubts import DoubtTable, doubt_table
from notereader.vocabulary.fields import field_specs

_AT_MOST = 3  # reasons added to one fact: more are not read


def weigh(record: Record, page: Page) -> None:
    """Add to each fact of a draft that bears signs enough of a misreading the reasons to look at it twice."""
    table, signs = doubt_table(), Signs(page, record)
    for place, fact in signs.facts:
        if place.group != "elements" and fact.value is not None:  # an element is a stretch of the note, never misread
            fact.look_twice.extend(_reasons(table, place, fact, signs.of(place, fact)))


def _reasons(table: DoubtTable, place: Address, fact: Fact, found: list[tuple[str, str]]) -> list[str]:
    name = f"{place.group}.{place.field}"
    weights = table.weights[name]
    before = table.fields.get(name, 0.0) + table.values.get(f"{name}={fact.value}", 0.0)
    if table.start + before + sum([weights[sign] for sign, _ in found]) <= table.enough:
        return []
    told = [(weights[sign], table.signs[sign].reason, word) for sign, word in found]
    if before >= table.often:
        told.append((before, table.often_misread, field_specs()[place.group][place.field].label.lower()))
    heavy = sorted((each for each in told if each[0] > 0 and each[1]), key=lambda each: -each[0])[:_AT_MOST]
    return [reason.replace("WORD", word) for _, reason, word in heavy] or [table.often_misread.replace("WORD", name)]
