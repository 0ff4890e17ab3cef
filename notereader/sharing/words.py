"""What is said of a search and of a find."""

from notereader.sharing.finds import Find
from notereader.sharing.tables import kinds

INCOMPLETE = (
    "No such search is complete. Names that look like ordinary words, rare occupations, unusual stories and spelling "
    "slips are missed. Read the whole note yourself before you share it."
)


def action_words(find: Find) -> str:
    """Say what becomes of a find in the copy."""
    if find.shift is not None:
        return "moved with all dates"
    return f"becomes {find.blank or kinds()[find.kind].blank}"
