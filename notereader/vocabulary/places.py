"""Where the resource files and the samples lie: inside an installed package, or beside it in a checkout."""

import tomllib
from pathlib import Path
from typing import Any

_PACKAGE = Path(__file__).resolve().parent.parent


class ResourceFault(Exception):
    """A resource file that cannot be used; the message names file, entry and mend."""


def _folder(installed: str, checkout: str) -> Path:
    inside = _PACKAGE / installed
    return inside if inside.is_dir() else _PACKAGE.parent / checkout


def resource_folder() -> Path:
    """Return the folder of the TOML files with the trade's knowledge."""
    return _folder("_resources", "resources")


def samples_folder() -> Path:
    """Return the folder of the invented notes to start with."""
    return _folder("_samples", "samples")


def resource_file(name: str) -> dict[str, Any]:
    """Read one TOML file of resources/ by file name.

    Raises ResourceFault where it is missing, cannot be read or is not TOML, with the line that is wrong.
    """
    path = resource_folder() / name
    try:
        with path.open("rb") as stream:
            return tomllib.load(stream)
    except FileNotFoundError:
        raise ResourceFault(f"{name}: the file is missing from {path.parent}. Put it back or install again.") from None
    except OSError as fault:
        raise ResourceFault(f"{name}: the file cannot be read ({fault.strerror}). Mend its permissions.") from None
    except UnicodeDecodeError as fault:
        raise ResourceFault(f"{name}: not UTF-8 at byte {fault.start}. Save the file as UTF-8.") from None
    except tomllib.TOMLDecodeError as fault:
        raise ResourceFault(f"{name}: not valid TOML: {fault}. Mend that line.") from None
