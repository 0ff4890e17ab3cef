"""Places smaller than a State: addresses, postcodes, towns, hospitals."""

import re
from collections.abc import Iterable, Iterator
from functools import cache

from notereader.sharing.finds import Find
from notereader.sharing.known import is_known
from notereader.sharing.tables import tables

# A word with a capital; a word of capitals; with hyphens, apostrophes and a stop within: "St.", "O'Dell-Finch".
_NAME = r"(?:(?:St|Mt|Ft)\.[ ]?)?[^\W\d_a-zß-öø-ÿ](?:[^\W\d_]|['’\-](?=[^\W\d_]))*"
_LINK = r"(?:of|the|and|for|at|on|upon|le|la|de|del|da|di|van|von|der|den|&|-|–)"

_UK_POSTCODE = re.compile(r"\b[A-Z]{1,2}\d[A-Z\d]? \d[A-Z]{2}\b")
_CA_POSTCODE = re.compile(r"\b[ABCEGHJ-NPRSTVXY]\d[A-Z] ?\d[A-Z]\d\b")
_ZIP_FOUR = re.compile(r"(?<![\w-])\d{5}-\d{4}(?![\w-])")
_BOX = re.compile(r"\b(?:P\.? ?O\.? ?Box|Post Office Box)\s+\d+\b", re.IGNORECASE)
_COORDINATES = re.compile(r"(?<![\w.])-?\d{1,2}\.\d{4,},\s*-?\d{1,3}\.\d{4,}\b")
_WORD = re.compile(_NAME)
_STREET = "the form of an address"
# What goes on behind a street: ', Lower Tarn'.
_ONWARD = re.compile(rf",\s{{0,2}}({_NAME}(?:[ ]{_NAME}){{0,2}}(?:[ ]\d{{1,4}})?)(?![\w])")


def addresses(text: str) -> Iterator[Find]:
    """Yield streets with their numbers, postcodes, boxes, towns before a State, and what stands after 'Address:'."""
    for pattern, why in _forms():
        for match in pattern.finditer(text):
            end = _extended(text, match.end()) if why == _STREET else match.end()
            yield Find(match.start(), end, "place", text[match.start() : end], why)
    for match in _labelled().finditer(text):
        value = match["value"].strip(" \t,;.")
        if value and not all(is_known(word) for word in re.findall(r"[^\W\d_]+", value)):
            start = match.start("value") + match["value"].index(value)
            yield Find(start, start + len(value), "place", value, f"after '{match['label']}'")


def _extended(text: str, end: int) -> int:
    """Return where an address ends whose street ends here: a town that no list knows goes with it."""
    while (match := _ONWARD.match(text, end)) and not all(is_known(word) for word in _WORD.findall(match[1])):
        end = match.end()
    return end


def facilities(text: str) -> Iterator[Find]:
    """Yield hospitals and the like that have a name of their own; 'Hand Clinic' alone names none."""
    for match in _facilities().finditer(text):
        find = _trimmed(match.start(), match[0])
        if find is not None:
            yield find


def _trimmed(start: int, words: str) -> Find | None:
    """Return the named facility; None where all of its words are ordinary ones."""
    own = [word for word in _WORD.finditer(words) if not _is_ordinary(word[0])]
    return Find(start, start + len(words), "place", words, "a hospital or the like with its name") if own else None


def _is_ordinary(word: str) -> bool:
    plain = word.rstrip(".").lower()
    return is_known(plain) or plain in _facility_words()


@cache
def _facility_words() -> frozenset[str]:
    more = "community general district regional county city memorial national central teaching veterans day children's"
    places = tables().places
    return frozenset([*places.facilities, *places.parts, *tables().names.businesses, *more.split()])


@cache
def _forms() -> tuple[tuple[re.Pattern[str], str], ...]:
    places = tables().places
    streets, units = _any(places.streets), _any(places.units)
    states = "|".join(letters.upper() for letters in places.state_letters)
    number = r"\d{1,5}[A-Za-z]?(?:[-/]\d{1,4})?"
    unit = rf"(?:\d{{1,3}}[/-]\d{{1,2}},\s+)?(?:(?i:{units})\.?\s*#?\s*\w{{1,5}},?\s+)?"
    town = rf"(?:,?\s+{_NAME}(?:\s+{_NAME}){{0,2}})"
    return (
        (
            re.compile(rf"(?<![\w.-]){unit}{number},?\s+(?:{_NAME}\s+){{1,4}}(?i:{streets})\b\.?"),
            _STREET,
        ),
        (
            re.compile(
                rf"(?<![\w.-]){_NAME}(?:straße|strasse|gata|gatan|veien|vej|laan|straat|weg|allee|platz|gasse|vägen)\s+\d+\w?\b"
            ),
            _STREET,
        ),
        (
            re.compile(rf"\b{_NAME}(?:\s+{_NAME}){{0,3}},?\s+(?:{states})\s+\d{{5}}(?:-\d{{4}})?"),
            "a town before its State",
        ),
        # MD, PA and the like stand after names too.
        (
            re.compile(rf"\b[A-Z][a-z]{{2,}}(?:\s+[A-Z][a-z]{{2,}}){{0,2}},\s*(?!MD|PA|MA|DO|OT|PT|RN)(?:{states})\b"),
            "a town before its State",
        ),
        (re.compile(rf"\b(?:{states})\s+\d{{5}}(?:-\d{{4}})?\b"), "a postcode after its State"),
        (re.compile(rf"\b(?:D|A|CH|F|I|B|L|PL|N|S|DK|FIN|E|P|CZ|H)-\d{{4,5}}{town}"), "a postcode with its town"),
        (re.compile(r"(?<=[,a-z] )\d{5}\s+[A-Z][a-zà-ÿ]{3,}(?=,|\.|\n)"), _STREET),
        (_UK_POSTCODE, "the form of a postcode"),
        (_CA_POSTCODE, "the form of a postcode"),
        (_ZIP_FOUR, "the form of a postcode"),
        (_BOX, "a post office box"),
        (_COORDINATES, "the form of a place on the map"),
    )


@cache
def _labelled() -> re.Pattern[str]:
    labels = _any(tables().places.labels)
    # To the end of the line, or to the next label on it.
    end = r"(?=\s*(?:$|;|\||\t|\s{3,}|(?:\b[A-Z][A-Za-z.]*\s?){1,3}:))"
    return re.compile(
        rf"(?im:(?:^|[;|\t]|\s{{2,}}|[.]\s)\s*(?P<label>{labels})\s*:[ \t]*)(?P<value>[^\n]+?){end}", re.MULTILINE
    )


@cache
def _facilities() -> re.Pattern[str]:
    facilities = tables().places.facilities
    kinds = _any([each for word in facilities for each in (word.capitalize(), word.upper())])
    words = rf"(?:{_NAME}[ ]{{1,2}}(?:{_LINK}[ ])*){{1,7}}"
    after = rf"(?:[ ](?:of|for|at|in|OF|FOR|AT|IN)[ ](?:the[ ]|THE[ ])?{_NAME}(?:[ ](?:{_LINK}[ ])*{_NAME}){{0,4}})?"
    return re.compile(rf"(?<!\w)(?:{words})?(?:{kinds})(?![\w'’])(?!\s+(?i:an(?:a?)esth|endotr))({after})")


def _any(words: Iterable[str]) -> str:
    return "|".join(re.escape(word) for word in sorted(words, key=len, reverse=True))
