"""Templates whose choices stand in brackets before what was typed: 'A2 was [intact/vented] vented', 'bite [__] 8 mm'.

In a note that answers some of its brackets so, what they offer says nothing, whether it was answered or left open.
"""

import re

_NOTHING = "\x1f"  # takes no room between two words
_OPTION = r"[^\[\]\n/]{1,30}"
_CHOICE = re.compile(rf"\[(?P<options>{_OPTION}(?:/{_OPTION})+)\](?:-\w+)?")
_BLANK = re.compile(r"\[_{2,}\]")
_TWICE = re.compile(r"\[(?P<said>[^\[\]\n]{4,60})\] +(?=(?P=said))")  # '[Epi: 6-0 Prolene] Epi: 6-0 Prolene, index'
_SIZE = re.compile(r"\d ?/ ?0\b|\d{1,2} ?/ ?\d{1,2} ?/ ?\d{2}")  # '[4/0 Prolene]', '[22/08/2030]'
# 'Subzone (A-D): B', 'Zone (I-V): II': the first and the last of what may be filled in.
_LETTERS_OFFERED = re.compile(
    r"(?P<label>\b(?:sub-?)?zone) ?\((?:A ?[-\u2013] ?[CD]|(?:I|1) ?[-\u2013] ?(?:V|5))\)(?= ?[:.])", re.IGNORECASE
)
_FEWEST = 3  # choices, two of them answered, or a bracket holds a remark
_FEWEST_ANSWERS = 2
_REACH = 40  # characters


def without_typed_choices(text: str) -> str:
    """Return a text of the same length without the choices of a template that was typed into."""
    text = _LETTERS_OFFERED.sub(lambda m: m["label"] + " " * (len(m.group()) - len(m["label"])), text)
    if text.count("[") < _FEWEST:
        return text
    choices = [m for m in _CHOICE.finditer(text) if not _SIZE.search(m["options"])]
    if len(choices) < _FEWEST or sum(_answered(text, m) for m in choices) < _FEWEST_ANSWERS:
        return text
    signs = list(text)
    for m in (*choices, *_BLANK.finditer(text), *_TWICE.finditer(text)):
        i, j = m.span()
        j -= 1 if m.re is _TWICE else 0
        while text[j : j + 1] == " ":
            j += 1
        signs[i:j] = _NOTHING * (j - i)
    return "".join(signs)


def _answered(text: str, choice: re.Match[str]) -> bool:
    """Tell whether one of the options of a choice is what stands right behind it."""
    behind = text[choice.end() : choice.end() + _REACH].lstrip(" ").casefold()
    options = (option.strip(" _%").casefold() for option in choice["options"].split("/"))
    return any(option and behind.startswith(option) for option in options)
