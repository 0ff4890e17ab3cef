"""What is said of a search and of a find."""

from collections.abc import Iterable

from notereader.sharing.finds import Find
from notereader.sharing.tables import kinds

INCOMPLETE = (
    "No such search is complete. Names that look like ordinary words, rare occupations, unusual stories and spelling "
    "slips are missed. Read the whole note yourself before you share it."
)

MIXED_DATES = (
    "Some dates are kept while others are moved: whoever knows one of both, or compares them, learns by how many days "
    "the others were moved. Keep all dates or none."
)


def mixed_dates(kept: Iterable[Find], changed: Iterable[Find]) -> bool:
    """True where dates are kept beside others that are moved."""
    return any(find.kind == "date" for find in kept) and any(find.shift is not None for find in changed)


def action_words(find: Find) -> str:
    """Say what becomes of a find in the copy."""
    if find.shift is not None:
        return "moved with all dates"
    return f"becomes {find.blank or kinds()[find.kind].blank}"
