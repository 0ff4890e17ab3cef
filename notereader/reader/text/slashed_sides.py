"""Sides told one after the other across a slash: 'nerves: rad complete -> 9-0 / uln contused' is two statements."""

import re

from notereader.reader.text.writing_out import Written

_RADIAL, _ULNAR = r"(?:rad(?:ial)?|RDN|RDA)\b", r"(?:uln(?:ar)?|UDN|UDA)\b"
_SAID = r"[^/;\n]*\w[^/;\n]*?"  # 'rad / uln intact' tells of both together
_PARTED = re.compile(
    rf"\b(?:{_RADIAL}{_SAID}(?P<slash> /)(?= {_ULNAR}[^\n]*\w)|{_ULNAR}{_SAID}(?P<stroke> /)(?= {_RADIAL}[^\n]*\w))",
    re.IGNORECASE,
)


def slashed_sides(text: str) -> list[Written]:
    """Return what is to be read in the place of each slash between two sides told of apart; often nothing."""
    if " / " not in text:
        return []
    found = _PARTED.finditer(text)
    return [Written(*m.span("slash" if m["slash"] else "stroke"), ";") for m in found]
