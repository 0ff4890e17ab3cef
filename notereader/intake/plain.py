"""Bytes of a plain text file -> characters, whatever encoding they were written in."""

import codecs
import re
from dataclasses import dataclass

# Longest first: the UTF-32 mark begins with the UTF-16 one.
_MARKS = (
    (codecs.BOM_UTF32_LE, "utf-32-le", "UTF-32"),
    (codecs.BOM_UTF32_BE, "utf-32-be", "UTF-32"),
    (codecs.BOM_UTF8, "utf-8", "UTF-8"),
    (codecs.BOM_UTF16_LE, "utf-16-le", "UTF-16"),
    (codecs.BOM_UTF16_BE, "utf-16-be", "UTF-16"),
)
# How much is looked at to tell UTF-16 without a mark, and what share of zero high bytes Western text shows at least.
_LOOKED_AT = 65_536
_ZEROS_OF_UTF16 = 0.7
_ZEROS_OF_CHANCE = 0.1

# Control characters that stand in honest text: tab to carriage return, the end mark of old systems, escape, NEL.
_CONTROLS = re.compile(r"[\x01-\x08\x0e-\x19\x1c-\x1f\x7f\ufffd]")
_CONTROLS_OF_BINARY = 0.02

_STRAY_BYTES = re.compile(r"[\udc80-\udcff]")
_WINDOWS = {0xDC00 + byte: bytes([byte]).decode("cp1252", "replace") for byte in range(0x80, 0x100)}


@dataclass(frozen=True)
class Decoded:
    """Characters, and what a person should know of how they were told."""

    text: str
    warnings: list[str]


def decode(data: bytes) -> Decoded:
    """Decode the bytes of a text file.

    A byte order mark decides; without one, UTF-16 is told by its zero bytes; all else is UTF-8 in which bytes that
    are not UTF-8 are taken as Windows-1252, one by one, so that files in either encoding and mixtures come out right.
    """
    for mark, codec, name in _MARKS:
        if data.startswith(mark):
            return _by_codec(data[len(mark) :], codec, name)
    without_mark = _utf16_without_mark(data)
    if without_mark:
        return _by_codec(data, without_mark, "UTF-16")
    return _utf8_or_windows(data)


def is_binary(text: str) -> bool:
    """Tell whether decoded bytes were no text at all: too many control characters for anything that was typed."""
    return len(_CONTROLS.findall(text)) > max(1, _CONTROLS_OF_BINARY * len(text))


def _by_codec(data: bytes, codec: str, name: str) -> Decoded:
    if codec == "utf-8":
        return _utf8_or_windows(data)
    text = data.decode(codec, "replace")
    lost = text.count("\ufffd")
    return Decoded(text, [_unreadable(lost, name)] if lost else [])


def _utf16_without_mark(data: bytes) -> str | None:
    sample = data[: _LOOKED_AT - _LOOKED_AT % 2]
    half = len(sample) // 2
    if not half:
        return None
    even = sample[0::2].count(0) / half
    odd = sample[1::2].count(0) / half
    if odd >= _ZEROS_OF_UTF16 and even <= _ZEROS_OF_CHANCE:
        return "utf-16-le"
    if even >= _ZEROS_OF_UTF16 and odd <= _ZEROS_OF_CHANCE:
        return "utf-16-be"
    return None


def _utf8_or_windows(data: bytes) -> Decoded:
    # 'surrogateescape' turns each byte that is not UTF-8 into one of U+DC80 to U+DCFF, which no UTF-8 decodes to.
    text = data.decode("utf-8", "surrogateescape")
    strays = _STRAY_BYTES.findall(text)
    if not strays:
        return Decoded(text, [])
    rescued = [_WINDOWS[ord(stray)] for stray in strays]
    lost = rescued.count("\ufffd")
    warnings = []
    if len(rescued) > lost:
        shown = " ".join(dict.fromkeys(c for c in rescued if c != "\ufffd"))[:39]
        warnings.append(
            f"The file is not all UTF-8; {_count(len(rescued) - lost, 'character')} read as Windows-1252 ({shown}). "
            "Check them against the original."
        )
    if lost:
        warnings.append(_unreadable(lost, "UTF-8 or Windows-1252"))
    return Decoded(text.translate(_WINDOWS), warnings)


def _unreadable(number: int, encoding: str) -> str:
    return f"{_count(number, 'byte')} not {encoding} and shown as \ufffd. Check the original."


def _count(number: int, noun: str) -> str:
    return f"1 {noun} was" if number == 1 else f"{number:,} {noun}s were"
