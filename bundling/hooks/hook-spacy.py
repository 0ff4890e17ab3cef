"""What PyInstaller cannot see of spaCy: its compiled modules import each other. Other languages and its tests stay out.

Takes the place of the hook for all of spaCy, which brings 60 MB of languages that notereader does not read.
"""

from PyInstaller.utils.hooks import collect_data_files, collect_submodules

_LANGUAGES = ("spacy.lang.en", "spacy.lang.xx")


def _wanted(name: str) -> bool:
    if ".tests" in name:
        return False
    parts = name.split(".")
    return parts[:2] != ["spacy", "lang"] or len(parts) < 3 or name.startswith(_LANGUAGES) or _is_common(parts[2])


def _is_common(name: str) -> bool:
    """Tell a module that all languages share (punctuation, lex_attrs) from a language by its code of two or three."""
    return len(name) > 3


hiddenimports = collect_submodules("spacy", filter=_wanted)
datas = collect_data_files(
    "spacy", excludes=["**/tests/**", "**/*.pyx", "**/*.pxd", "**/*.c", "**/*.cpp", "**/*.jinja"]
)
