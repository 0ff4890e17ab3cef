"""Looks for faults in the resource files and says for each the file, the entry and the mend, in plain words.

For whoever adds a stitch, a spelling or a figure: no knowledge of the program is needed to read what it says.
"""

import tomllib
from pathlib import Path
from typing import Any

from notereader.vocabulary.checking_fields import fields_faults
from notereader.vocabulary.checking_names import Names, reference_faults
from notereader.vocabulary.checking_sources import source_faults
from notereader.vocabulary.checking_sutures import material_faults, size_faults, stitch_faults
from notereader.vocabulary.checking_terms import term_faults
from notereader.vocabulary.checking_words import word_list_faults
from notereader.vocabulary.faults import EntryFault
from notereader.vocabulary.places import resource_folder
from notereader.vocabulary.terms import TERM_FILES

__all__ = ["EntryFault", "check_resources", "read_resources"]

# Files of the other rooms: their shape is checked where they are used, their names and sources here.
_OTHER_FILES = (
    "audit.toml",
    "cautions.toml",
    "checks.toml",
    "doubts.toml",
    "glide.toml",
    "healing.toml",
    "identifiers.toml",
    "load.toml",
    "needs.toml",
    "owed.toml",
    "practice.toml",
    "questions.toml",
    "strength.toml",
    "timeline.toml",
)
_WORD_LISTS = ("spelling.toml", "reading.toml")
KNOWN_FILES = tuple(
    sorted({"fields.toml", "stitches.toml", "materials.toml", "sizes.toml", *TERM_FILES, *_WORD_LISTS, *_OTHER_FILES})
)

Files = dict[str, dict[str, Any]]


def check_resources(folder: Path | None = None) -> list[EntryFault]:
    """Return every fault of the resource files in a folder, by file; without a folder, of the program's own."""
    files, faults = read_resources(folder or resource_folder())
    if "fields.toml" in files:
        faults += fields_faults(files["fields.toml"])
    names = Names.of(files)
    faults += stitch_faults(files.get("stitches.toml", {}), names.stitch_values)
    faults += material_faults(files.get("materials.toml", {}), names.material_values)
    faults += size_faults(files.get("sizes.toml", {}))
    faults += term_faults({name: files[name] for name in TERM_FILES if name in files}, names)
    for name in _WORD_LISTS:
        faults += word_list_faults(name, files.get(name, {}))
    for name in sorted(files):
        faults += reference_faults(name, files[name], names)
        faults += source_faults(name, files[name])
    return sorted(set(faults))


def read_resources(folder: Path) -> tuple[Files, list[EntryFault]]:
    """Return the parsed files of a folder by name, and the faults that keep others from being read."""
    files: Files = {}
    faults = []
    for name in sorted({path.name for path in folder.glob("*.toml")} | set(KNOWN_FILES)):
        if name not in KNOWN_FILES:
            faults.append(
                EntryFault(name, "the file", "no part of the program reads it", "move it away or mend its name")
            )
            continue
        try:
            files[name] = tomllib.loads((folder / name).read_text(encoding="utf-8"))
        except FileNotFoundError:
            faults.append(EntryFault(name, "the file", "it is missing", f"put it back into {folder}"))
        except OSError as fault:
            faults.append(EntryFault(name, "the file", f"it cannot be read ({fault.strerror})", "mend its permissions"))
        except UnicodeDecodeError as fault:
            wrong = f"it is not UTF-8 at byte {fault.start}"
            faults.append(EntryFault(name, "the file", wrong, "save it as UTF-8"))
        except tomllib.TOMLDecodeError as fault:
            faults.append(EntryFault(name, "the file", f"not valid TOML: {fault}", "mend that line"))
    return files, faults
