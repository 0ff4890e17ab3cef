"""All searches together, in the order in which they have the right to words."""

import re
from collections.abc import Iterator, Sequence
from datetime import date

from notereader.sharing.capitals import AGAIN, CAPITAL, OPENING, capital_places
from notereader.sharing.dates import dates
from notereader.sharing.finds import Find, claimed
from notereader.sharing.known import is_known
from notereader.sharing.names import names
from notereader.sharing.numbers import bare_numbers, contacts, labelled_numbers, long_numbers
from notereader.sharing.places import addresses, facilities
from notereader.sharing.tables import tables

# What must never be taken for an identifier: sizes of sutures, pulleys, zones, shares.
_TRADE = re.compile(r"[0-9]{1,2}[-/]0|[ACac][1-5]|[0-9]{1,2}(?:-[0-9]{1,2})?|[IVX]{1,4}[A-D]?|T[1-5]")

# A row without any blank that is longer than every word and address, and blanks as no page has them.
_ENDLESS = re.compile(r"\S{160,}")
_BLANK = re.compile(r"(?<=\s{20})\s{20,}(?=\s)")
_ENDLESS_WHY = "a row without blanks too long to look through"
_NOTHING = "\0"


def find_identifiers(text: str, known: Sequence[date] = ()) -> list[Find]:
    """Return what may tell who somebody is in a text, in its order and without overlaps.

    `known` are days of which it is known that the text speaks of them, such as that of the operation; they tell the
    order of day and month. No such search is complete: what it returns has to be shown to a person, with the text.
    """
    rows = (match for match in _ENDLESS.finditer(text) if any(map(str.isalnum, match[0])))
    endless = [Find(*match.span(), "other number", match[0], _ENDLESS_WHY) for match in rows]
    finds = [find for find in claimed(_found(_searchable(text), known)) if not _is_trade(find)]
    return claimed([*endless, *finds])


def _searchable(text: str) -> str:
    """Return the text, position by position, without what nobody writes and every search would be slow in."""
    return _BLANK.sub(lambda match: _NOTHING * len(match[0]), _ENDLESS.sub(lambda m: _NOTHING * len(m[0]), text))


def _found(text: str, known: Sequence[date]) -> Iterator[Find]:
    yield from contacts(text)
    yield from dates(text, known)
    yield from labelled_numbers(text)
    yield from bare_numbers(text)
    yield from addresses(text)
    yield from facilities(text)
    people = names(text)
    # A capital alone is the weakest sign: what stands after 'from' is rather a place.
    yield from (find for find in people if find.why not in (CAPITAL, OPENING, AGAIN))
    yield from capital_places(text)
    yield from people
    yield from long_numbers(text)


def _is_trade(find: Find) -> bool:
    """True for words of the trade that are no identifiers whatever led to them."""
    if find.kind in ("date", "telephone", "fax"):
        return False
    if _TRADE.fullmatch(find.words) or find.words.lower().rstrip(".") in tables().names.titles:
        return True
    if find.words.lower() in tables().never.towns or any(map(str.isdigit, find.words)):
        return False
    return (find.kind != "name" or find.words.islower()) and is_known(find.words)
