"""'LF' is the little finger, unless the note calls its middle finger long or writes 'SF' for the small one."""

from dataclasses import replace

from notereader.reader.page import Mention, Page

_LF = frozenset(["LF", "L/F"])
_SMALL = frozenset(["SF", "S/F"])
_MIDDLE = frozenset(["MF", "M/F", "RMF", "LMF"])


def settle_long_fingers(page: Page) -> None:
    """'Long finger, zone II: LF FDP cut', 'FDS LF + RF cut, IF + SF intact': take LF for the long finger there."""
    digits = [m for m in page.mentions if m.kind in ("digit", "digit?")]
    spelt = [(m, page.raw(m.i, m.j)) for m in digits]
    if not any(text in _LF for _, text in spelt) or not _means_long(page, spelt):
        return
    page.mentions = [
        replace(m, value="middle") if m.kind == "digit" and page.raw(m.i, m.j) in _LF else m for m in page.mentions
    ]


def _means_long(page: Page, spelt: list[tuple[Mention, str]]) -> bool:
    texts = {text for _, text in spelt}
    if texts & _MIDDLE:
        return False
    middle = [page.words[m.i] for m, _ in spelt if m.value == "middle" and m.kind == "digit"]  # no '3 cm long'
    small = any(m.value == "small" and text not in _LF | _SMALL for m, text in spelt)
    return not small and (bool(texts & _SMALL) or (bool(middle) and set(middle) == {"long"}))
