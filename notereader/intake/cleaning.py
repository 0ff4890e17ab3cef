"""The one normalisation of note text. After it, nothing changes the text, so positions in it hold ever after."""

import re

_DROPPED = re.compile(r"[\x00\ufdd0\ufdd1]")
_SURROGATES = re.compile(r"[\ud800-\udfff]")
_LINE_ENDS = re.compile(r"\r\n|[\r\x85\u2028\u2029]")


def clean_text(text: str) -> str:
    r"""Return the text as it is stored, hashed, read and shown.

    - a byte order mark at the start goes;
    - CR LF, CR, NEL (U+0085), U+2028 and U+2029 become one line feed each, the line ends of the Unicode Standard's
      newline guidelines (section 5.8) without form feed and vertical tab, which are kept;
    - NUL, the noncharacters U+FDD0 and U+FDD1 and lone surrogates go: they cannot be written as UTF-8 (surrogates) or
      do not survive a text widget. Two surrogates that form a pair become the character they stand for.

    Everything else stays as it came: other control characters, no-break and zero-width spaces, ligatures, combining
    marks, right-to-left marks. Cleaning a cleaned text changes nothing.
    """
    text = _DROPPED.sub("", text)
    if _SURROGATES.search(text):
        text = text.encode("utf-16-le", "surrogatepass").decode("utf-16-le", "ignore")
    return _LINE_ENDS.sub("\n", text.lstrip("\ufeff"))
