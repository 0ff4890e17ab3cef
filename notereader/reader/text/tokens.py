"""Step 1, tokens: splits a note as the trade reads it and cleans the spelling of each word, never its position.

Sizes (4-0, 4/0, #4-0), dates, times in weeks (6/52) and decimals stay whole; words broken at a line end are joined;
O for 0 and l for 1 are mended where the rest of the word decides; page headers of faxes are passed over.
"""

import re
import unicodedata
from functools import lru_cache

from spacy.tokens import Doc
from spacy.vocab import Vocab

from notereader.reader.page import Break, Page
from notereader.reader.text.capitals_misread import with_capitals_put_right
from notereader.reader.text.lost_letters import with_lost_letters
from notereader.reader.text.misheard import hear_numbers
from notereader.vocabulary.wordlists import word_list

_D = "[0-9OolI]"

# Characters that mean another one of the same length; positions must not shift.
_SAME_LENGTH = str.maketrans(
    {
        **dict.fromkeys("\u2010\u2011\u2012\u2013\u2014\u2212\u00ad", "-"),
        **dict.fromkeys("\u2018\u2019\u02bc\u0060\u00b4", "'"),
        **dict.fromkeys("\u201c\u201d", '"'),
        **dict.fromkeys("\u00a0\u2007\u2009\u202f\u3000\t\v\f", " "),
        **dict.fromkeys("\u200b\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069\ufeff", " "),
        "\u00d7": "x",
        "\u2022": "*",
        "\u2192": ">",
        "\u00ba": "\u00b0",
        **{chr(0xFF01 + k): chr(0x21 + k) for k in range(94)},
    }
)

# What a line that only draws a rule is made of.
_RULE = "-=~_.*|#+>< "

_IN_WORDS = "(?:one|two|three|four|five|six)"
# A line that belongs to the fax machine or the printer.
_HEADER_LINE = re.compile(
    rf"""[ ]*(?:
        .*\b(?:e?fax|facsimile|faxed)\b.*{_D}{{1,2}}[:.]{_D}{{2}}.*
      | .*\b(?:page|pg\.?|p\.|sheet)[ ]*{_D}{{1,3}}[ ]*(?:of|/|-)[ ]*{_D}{{1,3}}\b[ |=~-]*
      | .*\bp[ ]{_D}{{1,2}}[ ](?:of|/)[ ]{_D}{{1,2}}[ |=~-]*
      | .*\b(?:page|sheet)[ ]+{_IN_WORDS}[ ]+of[ ]+{_IN_WORDS}\b[ |=~-]*
      | [ =~-]*(?:end[ ]of[ ])?(?:page|pg\.?|p\.?|sheet)[ ]*{_D}{{1,2}}[ ]
        (?:ends?|cont(?:inue[sd]|'?d|\.)?|over)[ =~.-]*
      | .*\b(?:page|pg\.?)[ ]*{_D}{{3}}/{_D}{{3}}[ ]*
    )$""",
    re.VERBOSE | re.IGNORECASE,
)
# No line without one of these is a header; looking for them spares most lines the pattern.
_HEADER_HINTS = ("fax", "facs", "page", "pg", "p.", "heet", " p ")

# Most words are plain: letters alone, not begun as a figure may be misread, and no hyphen, figure or quote behind them.
# Found first, they need none of the other patterns tried; those would read them just so.
_PLAIN = r"(?:[A-HJ-NP-Za-kmnp-z]|[OolI][A-HJ-NP-Za-kmnp-z])[A-Za-z]*+(?=[\s.,;:)]|\Z)"

_TOKEN = re.compile(
    rf"""
    \s*+(?:
    (?P<dotted>(?<![0-9A-Za-z.])(?:[A-Z]\.){{3,4}}(?![0-9A-Za-z]))
  | (?P<without>(?<![0-9A-Za-z/])[wW]/(?:out\b|o(?=[ ](?!(?:of|and|in|with|under|then)\b)[A-Za-z])))
  | (?P<plain>{_PLAIN})
  | (?P<broken>[A-Za-z0-9]*[A-Za-z]-[ ]*\n\s*[a-z][a-z01]*+(?![0-9]))
  | (?P<date>(?<![0-9A-Za-z]){_D}{{1,2}}(?P<sep>[./-]){_D}{{1,2}}(?P=sep)(?:{_D}{{4}}|{_D}{{2}})(?![0-9A-Za-z])
        | (?<![0-9A-Za-z]){_D}{{4}}(?P<part>[./-]){_D}{{1,2}}(?P=part){_D}{{1,2}}(?![0-9A-Za-z])
        | (?<![0-9A-Za-z]){_D}{{1,2}}-[A-Za-z]{{3,9}}-(?:{_D}{{4}}|{_D}{{2}})(?![0-9A-Za-z]))
  | (?P<joint>(?<![0-9A-Za-z])(?:MCPJ?s?|MPJ?s?|PIPJ?s?|DIPJ?s?|IPJ?s?|W)(?=[0-9]{{1,2}}(?![0-9A-Za-z/.,-]))
        |(?<![0-9A-Za-z])(?:FD[PS]|fd[ps])(?=[2-5](?![0-9A-Za-z/-]|\.[0-9])))
  | (?P<size>\#?(?<![0-9A-Za-z.,])(?:1[O0-2]|[1-9l])(?:[ ]?[-/.][ ]?|')[0O](?![0-9A-Za-z"']|[.,][0-9]
        |/[0-9]{{2,4}}(?![0-9-])|(?:-|[ ]to[ ])[0-9][.,][0-9][ ]?(?:mm|cm)
        |[ ]?(?:mm|MM|cm|CM|ml|ML|g|G\b|kg|KG|mg|MG|%|[xX][ ]|K-?wire|K-?WIRE)))
  | (?P<times>(?<![0-9A-Za-z])[xX](?=[0-9]{{1,2}}(?:(?:-[0-9]{{1,2}})?/(?:7|52|12)|wks?|weeks)?(?![0-9A-Za-z/])))
  | (?P<term>(?<![0-9A-WYZa-wyz])[0-9OlI]{{1,2}}(?:-[0-9]{{1,2}})?/(?:7|52|12)(?![0-9A-Za-z/]))
  | (?P<decimal>(?<![0-9A-Za-z])[0-9OlI]+[.,][0-9O]+(?=[A-Za-z%\s,;)\]]|$|[.-]))
  | (?P<slipped>(?<![0-9A-Za-z])(?:[lI][O0]{{1,2}}(?=[ ]?(?:%|(?:mm|cm|ml|degrees|days|weeks)\b))
        |[lI](?=/[2-5](?![0-9A-Za-z/]))))
  | (?P<ordinal>[0-9]+(?:st|nd|rd|th)\b)
  | (?P<figure>(?:(?=[OolI]*[0-9]){_D}+(?![A-Za-z0-9]))|[0-9]+(?=[A-Za-z]*[^A-Za-z0-9\s]?)
        (?=(?:mm|cm|ml|mg|g|kg|deg|x|h|min|wks|weeks|days|wk|w|cc|G|pt|yo|y|yr|m|f|F|M)?(?![A-Za-z0-9])))
  | (?P<word>[^\W_]+(?:'[^\W\d_]+|(?<=\bthro)')?)
  | (?P<mark>\.{{2,}}|[^\w\s]|_)
    )
    """,
    re.VERBOSE,
)

# "zone lB", "zone Il": the letter l written for 1 or I.
_ZONE_SLIP = re.compile(r"(?:[lI]{1,3}[ABCDabcd]?|[lI]V)\Z")
# What may own a tendon: 'the little finger's profundus' is read as 'the little finger profundus'.
_OWNERS = frozenset(["finger", "thumb", "digit", "index", "ring", "middle", "little", "small", "long"])
# Signs of hurried notes that stand for a word.
_SIGNS = {
    **dict.fromkeys("\u00d8\u00f8\u2205", "no"),
    **dict.fromkeys("\u2702\u2704", "cut"),
    **dict.fromkeys("\u2713\u2714", "yes"),
}
# Short words that a scanner gives a nought; a denial lost would turn a sentence round.
_SHORT_WORDS = frozenset(
    ["ok", "no", "not", "non", "nor", "to", "on", "or", "for", "too", "two", "who", "row", "bow", "top"]
)
_WITH_ELLS = frozenset(["all", "full", "well", "will", "still", "till", "ill", "pull"])  # and ones for its l
# Short spellings of a word that phrases are made of.
_PLAIN_WORDS = dict.fromkeys(["thro", "thro'", "thru"], "through") | {
    f"{verb}nt": f"{verb}n't" for verb in ("does", "did", "was", "were", "is", "are", "has", "had", "could", "would")
}  # and hurried denials: 'it doesnt gap'
_TO_FIGURES = str.maketrans("OolI", "0011")


# Filled choices of a template: "{CLEAN/RAGGED: CLEAN}", "{WEEKS: 6}"; an answer with a bar in it is still a choice.
_CHOSEN = re.compile(r"\{(?P<asked>[^:{}\n]{1,60}: *)(?P<answer>(?! )[^:/|{}*_\n]{1,60}?) *\}")
# Fields of a template edited in place: "{3-0 Ethibond}", "{4}-strand"; that a few hold figures shows that they were.
_EDITED = re.compile(r"\{ ?(?P<answer>[^{}/|:*_?]{1,80}?) ?\}")
_WITH_FIGURE = re.compile(r"\{[^{}/|:*_?\n]{0,60}[0-9][^{}/|:*_?\n]{0,60}\}")
_FEWEST_EDITED = 2
# '{tendons_intact}: FCR, FPL', a label of a note that was filled in by a program.
_BRACED_LABEL = re.compile(r"^([ \t]*)\{([A-Za-z][^{}:|\n]{0,40})\}(?= ?:)", re.MULTILINE)
_FEWEST_LABELS = 4
_PLACEHOLDERS = word_list("scanned", "placeholders")
# Choices of a template that nobody filled in: "{intact / partial}", "[2 / 4 / 6]", "***".
_UNFILLED = re.compile(
    r"(?<=[^\n])\{\{[^{}\n]{0,200}\}\}|(?<=[^\n])\{(?! ?[xXvV]? ?\})[^{}\n]{0,200}\}|"
    r"\[[^\[\]\n/]{0,40}(?: / [^\[\]\n/]{0,40})+\]|\[[^\[\]\n/]{1,20}(?:/[^\[\]\n/]{1,20}){2,}\]|"
    r"\*{2,}|_{2,}|\((?:blank|left blank|empty)\)"
)
# 'A2 ***, A4 vented': so is the name before one that closes its clause, with what joins it to those before, or it
# would stand beside the next.
_BLANKED = "|".join(sorted(word_list("forms", "before_blanks"), key=len, reverse=True))
_UNFILLED_NAME = re.compile(
    rf"(?:[,;] ?|\band )?(?<![\w-])(?:{_BLANKED}) (?:{_UNFILLED.pattern})(?=[ \t]*(?:[,;.]|$))",
    re.IGNORECASE | re.MULTILINE,
)

# 'Gap: [N / Y, __ mm] -> N', 'wrist [20 flex / 0] => 0': choices of a template, answered behind an arrow.
_CHOSEN_BEHIND = re.compile(r"\[[^\[\]\n/]{0,40}(?:/[^\[\]\n/]{0,40})+\](?: mm)? {0,3}[-=]{0,2}> {0,3}(?=[^\s\[])")

# 'Side: R / (L) circled', 'Repair done?  Y / (N)', 'Hand: (Right) / left': of two answers the one in a ring was meant.
_RINGED = re.compile(
    r"(?<![\w/])(?:(?:R|L|Right|Left|Y|N|Yes|No) ?/ ?\((?P<last>R|L|Right|Left|Y|N|Yes|No)\)|"
    r"\((?P<first>R|L|Right|Left|Y|N|Yes|No)\) ?/ ?(?:R|L|Right|Left|Y|N|Yes|No)\b)(?! ?/)(?: ?,? ?circled)?",
    re.IGNORECASE,
)

# "zone [ IIB ]  bite [ 9 ] mm": a form whose answers stand in boxes; a single letter there is only a tick.
_BOXED = re.compile(
    r"(?<=[A-Za-z0-9)])( {1,12}| {0,3}\.{3,60} {0,3})\[( (?:[0-9]|[A-Za-z0-9][^\[\]\n]{0,78}[A-Za-z0-9%.)])) \]"
)
_FEWEST_BOXED = 6
# 'Zone: [2]   Core suture: [3-0 looped]': answers in brackets behind their labels; a letter or a cross is only a tick.
_ANSWERED = re.compile(r"(?<=:) {0,3}\[ ?(?:[0-9]|[A-Za-z0-9][^\[\]\n]{1,78}) ?\]|(?<=\w) {1,2}\[ ?[0-9]{1,3} ?\]")
_FEWEST_ANSWERED = 4
# 'A2: intact _x_  vented ___  repaired ___': short lines drawn behind the options of a row are its boxes.
_LINE_BOX = re.compile(r"(?<=[A-Za-z0-9%)])( {1,3})(_{1,2}[xX]_{1,2}|_{2,4})(?=[ ,;.]|$)(?! *(?:mm|cm|%|weeks|days))")
_ASKS_FIGURES = re.compile(r"\b(?:wrist|mp|mcp|mcpj|mpj|ip|ipj|pip|dip|zone|size|date|time) +_", re.IGNORECASE)
_FEWEST_LINES = 2
# 'A2: intact .....  vented .....': so are dots, where a row ends in them; elsewhere dots lead up to an answer.
_DOT_BOX = re.compile(r"(?<=[A-Za-z0-9%)]) \.{3,}(?= |$)")
_ENDS_IN_DOTS = re.compile(r"[a-z0-9)] \.{3,}$")
# Answers that say nothing without what was asked.
_BARE_ANSWERS = frozenset(["none", "nil", "no", "yes", "n", "y"])

# No choice without one of these; looking for them first spares most notes the pattern.
_UNFILLED_MARKS = ("{", "[", "**", "__", "(blank", "(left", "(empty")

# 'operative_findings = ...': the name of a field in a record printed from a computer.
_JOINING = re.compile(r"(?<=[^\W\d_])_(?=[^\W\d_])")
# 'strands: _4_   bite _10_ mm': what was written on the line of a form; a cross there is a tick.
_WRITTEN_ON_LINE = re.compile(r"(?<![\w_])(_{1,8})((?![xX]_)[A-Za-z0-9][^_\n]{0,30}(?<! ))(_{1,8})(?![\w_])")

# '.......... INDEX ......... MIDDLE': titles of a grid whose corner is empty, led to by dots.
_LED_TITLES = re.compile(r"^ *\.{3,} [^\n.]+(?:\.{3,} [^\n.]+)+$", re.MULTILINE)

# Three lines or more of 'FCU | through': a label and its answer, parted by one bar.
_PAIR = r"^ *+[A-Za-z][^|\n:]{1,30}?(?<! ) *+\|[^|\n:]*+$"
_PAIRS = re.compile(rf"{_PAIR}(?:\n{_PAIR}){{2,}}", re.MULTILINE)

# A space that parts words but not columns, in place of signs that are taken out.
_NO_WIDTH = "\x1f"

# Looked up once for every word.
_NONE, _SPACE, _COLUMN, _LINE, _BLANK = Break.NONE, Break.SPACE, Break.COLUMN, Break.LINE, Break.BLANK

# 'The ends, er, were clean', '. Um, tension': sounds of a speaker who thinks, with the comma behind them.
_HESITATION = re.compile(r"(?<=[,.;:?]) (?:[Uu]m|[Uu]hm?|[Ee]rm|[Ee]hm|er),")

# The space between two lines, blanked lines in it included.
_GAP = re.compile(r"\n[ \n\x00]*+")


# 'Q: Gap?   A: none' is 'Gap?   none' to the reader.
_ANSWER_OF_QUESTION = re.compile(r"(?<=\?)[ \t]*\n?[ \t]*A(?:ns)?[:.](?=[ \t])|^[ \t]*Q[:.](?=[^\n]*\?)", re.MULTILINE)


# 'Gap? .. N' and 'Gap (Y/N): N' are 'Gap?    N' and 'Gap      : N'.
_LED_ANSWER = re.compile(r"(?<=\?)[ \t]*\.{2,}(?=[ \t]*(?:[YyNn]|[Yy]es|[Nn]o|[Nn]il|[Nn]one)\b)")
_YES_OR_NO = re.compile(r"\(\s*[Yy](?:es)?\s*/\s*[Nn]o?\s*\)(?=[ \t]*[:?=])", re.ASCII)


def without_noise(text: str) -> str:
    """Return the note with its fax and page header lines blanked out; same length, so positions hold."""
    work = with_lost_letters(with_capitals_put_right(text.translate(_SAME_LENGTH)))
    if "_" in work:
        work = _WRITTEN_ON_LINE.sub(_off_line, _boxed_lines(_JOINING.sub(" ", work)))
    if "," in work:
        work = _HESITATION.sub(lambda sound: _NO_WIDTH * len(sound.group()), work)
    if "?" in work and _ANSWER_OF_QUESTION.search(work):
        work = _ANSWER_OF_QUESTION.sub(lambda found: " " * len(found.group()), work)
    if "?" in work and ".." in work:
        work = _LED_ANSWER.sub(lambda found: " " * len(found.group()), work)
    if "/" in work:
        work = _RINGED.sub(_ringed, work)
        work = _YES_OR_NO.sub(lambda found: " " * len(found.group()), work)
    if "|" in work:
        work = _PAIRS.sub(_colons, work)
    if "..." in work:
        work = _boxed_dots(work)
        work = _LED_TITLES.sub(_unled, work)
    if any(mark in work for mark in _UNFILLED_MARKS):
        work = _CHOSEN_BEHIND.sub(lambda choice: _NO_WIDTH * len(choice.group()), work)
        work = _CHOSEN.sub(_chosen, work)
        if len(_BRACED_LABEL.findall(work)) >= _FEWEST_LABELS:
            work = _BRACED_LABEL.sub(_bare_label, work)
        if "{" in work and len(_WITH_FIGURE.findall(work)) >= _FEWEST_EDITED:
            work = _EDITED.sub(_edited, work)
        work = _UNFILLED_NAME.sub(lambda choice: " " * len(choice.group()), work)
        work = _UNFILLED.sub(lambda choice: " " * len(choice.group()), work)
        if len(_BOXED.findall(work)) >= _FEWEST_BOXED:
            work = _BOXED.sub(_unboxed, work)
        if work.count(": [") >= _FEWEST_ANSWERED:
            work = _ANSWERED.sub(lambda box: box.group().replace("[", _NO_WIDTH).replace("]", _NO_WIDTH), work)
    if "\n" not in work:
        return work
    lines = work.replace("\x00", " ").split("\n")
    folded = work.casefold()
    hints = [hint for hint in _HEADER_HINTS if hint in folded]
    noise = [_is_noise(line, hints) for line in lines]
    if not any(noise):
        return "\n".join(lines)
    work = "\n".join("\x00" * len(line) if blank else line for line, blank in zip(lines, noise, strict=True))
    return _GAP.sub(_closed, work).replace("\x00", " ")


def _ringed(choice: re.Match[str]) -> str:
    """Return only the answer in a ring of 'R / (L) circled', at its place."""
    name = "last" if choice.group("last") else "first"
    before = choice.start(name) - choice.start()
    answer = choice.group(name)
    return _NO_WIDTH * before + answer + _NO_WIDTH * (len(choice.group()) - before - len(answer))


def _chosen(choice: re.Match[str]) -> str:
    """Return only the answer of '{CLEAN/RAGGED: CLEAN}', at its place; an open answer stays as it was."""
    whole, answer = choice.group(), choice.group("answer")
    if "or" in answer.casefold().split():
        return whole
    bare = answer.casefold() in _BARE_ANSWERS
    if bare and "/" not in choice.group("asked"):
        return f"{_NO_WIDTH}{whole[1:-1]}{_NO_WIDTH}"  # '{GAP: none}'
    labelled = choice.string[: choice.start()].rstrip(" ").endswith(":")
    before = choice.start("answer") - choice.start()
    lead = ":" if bare and not labelled else _NO_WIDTH  # 'Gap {YES/NO: NO}'
    return lead + _NO_WIDTH * (before - 1) + answer + _NO_WIDTH * (len(whole) - before - len(answer))


def _edited(field: re.Match[str]) -> str:
    """Return what was written into '{completely}' at its place; a choice or a placeholder stays as it was."""
    words = field.group("answer").casefold().split()
    if "or" in words or not _PLACEHOLDERS.isdisjoint(words):
        return field.group()
    return f"{_NO_WIDTH}{field.group()[1:-1]}{_NO_WIDTH}"


def _bare_label(label: re.Match[str]) -> str:
    """Return 'tendons intact' for '{tendons_intact}' at its place."""
    return f"{label.group(1)}{_NO_WIDTH}{label.group(2)}{_NO_WIDTH}"


def _unboxed(box: re.Match[str]) -> str:
    """Return 'zone : IIB  ' for 'zone [ IIB ]': a label and its answer, at the same places."""
    whole, lead = box.group(), box.group(1).replace(".", " ")  # 'zone ....... [ IIB ]'
    return f"{lead}:{box.group(2)}".ljust(len(whole))


def _off_line(line: re.Match[str]) -> str:
    """Return what was written on a line without the line, at its place."""
    return _NO_WIDTH * len(line.group(1)) + line.group(2) + _NO_WIDTH * len(line.group(3))


def _boxed_lines(text: str) -> str:
    """Return a text with brackets for the lines drawn behind options, at their places."""
    return "\n".join(_LINE_BOX.sub(_box, row) if _asks_by_lines(row) else row for row in text.split("\n"))


def _boxed_dots(text: str) -> str:
    """Return a text with brackets for the dots behind options, at their places."""
    return "\n".join(_DOT_BOX.sub(_dotted, row) if _asks_by_dots(row) else row for row in text.split("\n"))


def _asks_by_dots(row: str) -> bool:
    return _ENDS_IN_DOTS.search(row) is not None and len(_DOT_BOX.findall(row)) >= _FEWEST_LINES


def _dotted(dots: re.Match[str]) -> str:
    return " [ ]".ljust(len(dots.group()))


def _asks_by_lines(row: str) -> bool:
    """Tell whether lines are the boxes of a row: beside other boxes, or behind 'wrist', an empty one asks for words."""
    drawn = [found.group(2) for found in _LINE_BOX.finditer(row)]
    if len(drawn) < _FEWEST_LINES:
        return False
    ticked = any(line.strip("_") for line in drawn)
    return ticked or ("[" not in row and "(" not in row and not _ASKS_FIGURES.search(row))


def _box(line: re.Match[str]) -> str:
    drawn = line.group(2)
    box = f"[{drawn.strip('_')}]" if drawn.strip("_") else ("[ ]" if len(drawn) > len("[]") else "[]")
    return line.group(1) + box.ljust(len(drawn))


def _unled(line: re.Match[str]) -> str:
    """Return a line of titles with space in place of the dots."""
    return line.group().replace(".", " ")


def _colons(lines: re.Match[str]) -> str:
    """Return lines of label and answer with colons in place of their bars."""
    return lines.group().replace("|", ":")


def _is_noise(line: str, hints: list[str]) -> bool:
    """Tell whether a line only draws a rule or belongs to the fax machine; `hints`: those that its note holds."""
    if not line.strip(_RULE):
        return len(line) >= 3
    folded = line.casefold() if hints else ""
    return any(hint in folded for hint in hints) and _HEADER_LINE.match(line) is not None


def _closed(gap: re.Match[str]) -> str:
    """Return a gap as one line end where a blanked line stands in it: the lines around it belong together."""
    return "\n" + " " * (len(gap.group()) - 1) if "\x00" in gap.group() else gap.group()


@lru_cache(maxsize=20_000)
def _clean_word(raw: str) -> str:
    """Return the cleaned lower-case spelling of a word: full forms of ligatures, letters for figures inside words."""
    if raw == "lO":
        return "10"  # a fax's ten: no word has a small l before a capital O
    word = raw if raw.isascii() else _plain_letters(raw)
    if len(word) > 4 and "I" in word[1:] and word[1:].replace("I", "").islower():
        word = word[0] + word[1:].replace("I", "l")
    if len(word) >= 4 and not word.isalpha() and sum(map(str.isalpha, word)) > len(word) / 2:
        word = _mend_letters(word)
    elif len(word) in (2, 3) and "0" in word and word.replace("0", "o").lower() in _SHORT_WORDS:
        word = word.replace("0", "o")
    if "1" in word and word.replace("1", "l").lower() in _WITH_ELLS:
        word = word.replace("1", "l")
    word = word.lower()
    if word in _PLAIN_WORDS:
        return _PLAIN_WORDS[word]
    return word[:-2] if word.endswith("'s") and word[:-2] in _OWNERS else word


def _plain_letters(raw: str) -> str:
    """Drop accents and resolve ligatures: Silfverskiöld -> Silfverskiold."""
    spread = unicodedata.normalize("NFKD", raw.replace("\u00df", "ss").replace("\u00f8", "o").replace("\u00e6", "ae"))
    return "".join(c for c in spread if not unicodedata.combining(c)) or raw


def _mend_letters(word: str) -> str:
    """Read 1 as l (I among capitals) and 0 as o inside a word of at least three letters."""
    letters = [c for c in word if c.isalpha()]
    if len(letters) < 3 or any(c in "23456789" for c in word):
        return word
    return word.replace("1", "I" if word.isupper() else "l").replace("0", "O")


class NoteTokenizer:
    """Callable that turns a note into a Doc of cleaned words; the Page with the positions is in its user_data.

    `joinable` holds the words of the vocabulary: a word broken at a line end stays two words where its first half is
    itself one of them and the joined form is not ("four-strand", not "fourstrand").
    """

    def __init__(self, vocab: Vocab, joinable: frozenset[str]) -> None:
        self.vocab = vocab
        self.joinable = joinable

    def __call__(self, text: str) -> Doc:
        """Return the Doc of a note text."""
        page = Page(text)
        self._fill(page, without_noise(text))
        hear_numbers(page.words)
        doc = Doc(self.vocab, words=page.words)
        doc.user_data["page"] = page
        return doc

    def words_of(self, phrase: str) -> tuple[str, ...]:
        """Return the words of a phrase of the vocabulary, which holds nothing that a note has to be rid of."""
        page = Page(phrase)
        self._fill(page, phrase.translate(_SAME_LENGTH))
        hear_numbers(page.words)
        return tuple(page.words)

    def _fill(self, page: Page, work: str) -> None:
        words, starts, ends, breaks = page.words, page.starts, page.ends, page.breaks
        last, before = 0, ""
        tabbed = "\t" in page.text
        for found in _TOKEN.finditer(work):
            kind = found.lastgroup or ""
            start, end = found.span(kind)
            space = _SPACE if start == last + 1 and work[last] == " " else _break(work, last, start)
            if tabbed and space == _SPACE and page.text[start - 1] == "\t":
                space = _COLUMN  # a tab parts cells, however narrow it is
            raw = work[start:end]
            last = end
            if kind == "broken":
                self._add_broken(page, raw, start, end, space)
                before = page.words[-1]
                continue
            if kind == "plain" and "I" in raw and not raw.isupper():
                kind = "word"  # 'LittIe', 'haIf' of a scan
            if before in ("zone", "zn") and kind in ("plain", "word") and _ZONE_SLIP.match(raw):
                kind = "zone"
            if kind == "plain":
                before = _PLAIN_WORDS.get(lower := raw.lower(), lower)
            elif kind != "mark" or not raw.isascii():
                before = _cleaned(kind, raw)
            elif raw == "." and before in _UNITS and _goes_on(work, end):
                continue  # 'vented distally by 5 mm. of its length'
            else:
                before = "and" if raw == "&" and work[end : end + 1] == " " else raw  # but 'A&E'
            words.append(before)
            starts.append(start)
            ends.append(end)
            breaks.append(space)

    def _add_broken(self, page: Page, raw: str, start: int, end: int, space: int) -> None:
        """Add a word broken at a line end, joined or, where it is a compound, as two words with their hyphen."""
        first, _, rest = raw.partition("-")
        second = rest.strip()
        joined = _clean_word(first + second)
        if joined not in self.joinable and (first.lower() in self.joinable and second in self.joinable):
            _add(page, _cleaned("word", first), start, start + len(first), space)
            _add(page, "-", start + len(first), start + len(first) + 1, Break.NONE)
            _add(page, _clean_word(second), end - len(second), end, Break.NONE)
        else:
            _add(page, joined, start, end, space)


_UNITS = frozenset(["mm", "cm", "deg", "degs", "mins", "hrs", "wks", "wk"])


def _goes_on(work: str, end: int) -> bool:
    """Tell whether a small letter, or a comma, follows a full stop: it ends no sentence."""
    return work[end : end + 1] == "," or (work[end : end + 1] == " " and work[end + 1 : end + 2].islower())


def _cleaned(kind: str, raw: str) -> str:
    if raw in _SIGNS:
        return _SIGNS[raw]
    if kind == "word":
        return _clean_word(raw)
    if kind == "without":
        return kind  # 'w/o' behind which something is named; 'W/O + debridement' is a washout
    if kind == "dotted":
        return raw.replace(".", "").lower()
    if kind == "size":
        bare = raw.lstrip("#").replace(" ", "").replace("O", "0").replace("l", "1")
        return bare[:-2] + "-0"
    if kind == "zone":
        return raw.lower().replace("l", "1" if (raw[0] == "l" and not raw.isalpha()) or raw[1:2] in "ABCDabcd" else "i")
    if kind in ("figure", "decimal", "term", "slipped"):
        return raw.translate(_TO_FIGURES).replace(",", ".") if kind == "decimal" else raw.translate(_TO_FIGURES)
    if kind == "date":
        return raw if any(c.isalpha() and c not in "OolI" for c in raw) else raw.translate(_TO_FIGURES)
    return raw.lower()


def _add(page: Page, word: str, start: int, end: int, space: int) -> None:
    page.words.append(word)
    page.starts.append(start)
    page.ends.append(end)
    page.breaks.append(space)


def _break(work: str, last: int, start: int) -> int:
    if start == last:
        return _NONE if start else _BLANK
    lines = work.count("\n", last, start)
    if lines:
        return _BLANK if lines > 1 else _LINE
    return _COLUMN if start > last + 1 + work.count(_NO_WIDTH, last, start) else _SPACE
