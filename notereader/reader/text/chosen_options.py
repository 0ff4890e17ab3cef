"""Options in brackets that say nothing: those of 'Rehab: [active] [passive] [rest] -> passive chosen'.

So do the options in the title of a column: 'Tendon   Status (intact / partial / complete)   Repair (yes / no)'.
"""

import re

from notereader.vocabulary.wordlists import word_list

_OFFERED = re.compile(
    r"(?P<options>(?:\[[^\[\]\n]{3,30}\][ \t,/|]*){2,})(?=(?:-+>|=+>|\u2192)[ \t]*(?P<chosen>\w[^\n\[\]]*))"
)
# Behind a word, and before the next column, a bar or the end of the line.
_IN_TITLE = re.compile(r"(?<=[\w?])[ ]?\((?P<options>[^()\n:]{3,60})\)(?=[ ]{2,}|[ ]*\||[ ]*$)", re.MULTILINE)
_PARTED = re.compile(r"\s*(?:/|,|\bor\b)\s*")
_COLUMNS = re.compile(r"\S(?: {2,}| *\|) *\S")


def without_offers(text: str) -> str:
    """Return a text of the same length without the options of a line that names its choice behind an arrow.

    The options of a title go too, where every one of them tells a state.
    """
    text = _IN_TITLE.sub(lambda m: " " * len(m.group()) if _offers_states(m) else m.group(), text)
    return _OFFERED.sub(lambda m: " " * len(m["options"]) if _is_one_of_them(m) else m["options"], text)


def _offers_states(title: re.Match[str]) -> bool:
    """Tell whether brackets hold states to choose from, in a line of titles: of several columns, the first of labels.

    'FDP   cut (complete / clean)   sewn' is a row with its answers.
    """
    whole = title.string
    line = whole[whole.rfind("\n", 0, title.start()) + 1 :].partition("\n")[0]
    options = _PARTED.split(title["options"].strip().lower())
    states = all(option and word_list("scanned", "title_states").issuperset(option.split()) for option in options)
    of_labels = not word_list("scanned", "label_titles").isdisjoint(line.strip("| ").lower().split()[:1])
    return len(options) > 1 and states and of_labels and _COLUMNS.search(line) is not None


def _is_one_of_them(offered: re.Match[str]) -> bool:
    options = re.findall(r"\[\s*([^\[\]]+?)\s*\]", offered["options"])
    return any(offered["chosen"].lower().startswith(option.lower()) for option in options)
