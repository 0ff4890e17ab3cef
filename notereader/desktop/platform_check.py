"""Looks, before Qt does, whether the libraries of its screen plugin are there: Qt itself would abort without a word."""

import ctypes
import os
import sys
from pathlib import Path

import PySide6


def missing_library() -> str:
    """Return the fault of the first screen plugin that cannot be loaded, or an empty text."""
    if not sys.platform.startswith("linux"):
        return ""
    wanted = os.environ.get("QT_QPA_PLATFORM", "").partition(":")[0]
    if not wanted:
        if not (os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY")):
            return "there is no screen: neither DISPLAY nor WAYLAND_DISPLAY is set"
        wanted = "xcb" if os.environ.get("DISPLAY") else "wayland"
    plugin = Path(PySide6.__file__).parent / "Qt" / "plugins" / "platforms" / f"libq{wanted}.so"
    if not plugin.exists():
        return ""
    try:
        ctypes.CDLL(str(plugin))
    except OSError as fault:
        return str(fault)
    return ""
