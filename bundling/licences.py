"""Lists the licence of everything inside a built folder, from the metadata of the installed packages.

Run by build.py, in the environment that was built from:  python licences.py INSIDE TARGET
INSIDE is the spec's list of the places that everything inside was copied from. Raises SystemExit naming what states no
licence.
"""

import platform
import re
import shutil
import subprocess
import sys
import sysconfig
from importlib.metadata import Distribution, distributions
from pathlib import Path

_FILES = re.compile(r"(^|/)(licen[cs]e|copying|notice|authors|copyright)[^/]*$", re.IGNORECASE)
_RULE = "=" * 100


def main(inside: Path, target: Path) -> None:
    """Write the list of everything inside."""
    sources = {Path(line).resolve() for line in inside.read_text(encoding="utf-8").splitlines()}
    packages = [found for found in sorted(distributions(), key=_name) if _is_inside(found, sources)]
    parts = [_python(), *map(_package, packages), *_system_libraries(sources)]
    summary = [part.partition("\n")[0] for part in parts]
    head = (
        "What is inside notereader besides its own code (MIT, see LICENSE), and under which licences.\n"
        "Made from the packages' own metadata; the full texts follow the summary.\n"
    )
    target.write_text("\n".join([head, *summary, "", *(f"{_RULE}\n{part}\n" for part in parts)]), encoding="utf-8")
    missing = [line for line in summary if line.endswith(": not stated")]
    if missing:
        raise SystemExit("No licence is stated for:\n" + "\n".join(missing))
    print(f"{target}: {len(packages)} packages, {len(parts)} parts")


def _is_inside(found: Distribution, sources: set[Path]) -> bool:
    """Tell whether any file of a package was built in; the builder itself is inside as what starts the program."""
    files = found.files or []
    return _name(found) == "pyinstaller" or any(Path(str(path.locate())).resolve() in sources for path in files)


def _name(found: Distribution) -> str:
    return re.sub(r"[-_.]+", "-", found.metadata["Name"]).lower()


def _package(found: Distribution) -> str:
    texts = [path for path in found.files or [] if _FILES.search(str(path))]
    words = "\n\n".join(f"--- {path}\n{_text(path.locate())}" for path in sorted(texts, key=str))
    return f"{found.metadata['Name']} {found.version}: {_licence(found)}\n\n{words}".rstrip()


def _licence(found: Distribution) -> str:
    """Return the licence a package states: an SPDX expression, its classifiers, or the first line of its field."""
    meta = found.metadata
    stated = meta.get("License-Expression")
    if stated:
        return str(stated)
    classified = [
        line.rpartition("::")[2].strip() for line in meta.get_all("Classifier") or [] if line.startswith("License ::")
    ]
    named = [words for words in classified if words != "OSI Approved"]
    free = (meta.get("License") or "").strip().partition("\n")[0]
    return "; ".join(named) or free[:120] or "not stated"


def _python() -> str:
    path = Path(sysconfig.get_path("stdlib")) / "LICENSE.txt"
    found = path if path.exists() else Path(sys.base_prefix) / "LICENSE.txt"
    words = _text(found) if found.exists() else "See https://docs.python.org/3/license.html"
    return f"Python {platform.python_version()}: PSF-2.0\n\n{words}"


def _system_libraries(sources: set[Path]) -> list[str]:
    """Return a part for each Debian package whose libraries were copied in; elsewhere the wheels bring their own."""
    if shutil.which("dpkg-query") is None:
        return []
    owners: dict[str, set[str]] = {}
    for source in sorted(sources):
        if source.is_relative_to("/usr/lib"):
            owners.setdefault(_owner(source), set()).add(source.name)
    return [_system_part(owner, names) for owner, names in sorted(owners.items())]


def _owner(library: Path) -> str:
    """Return the Debian package that owns a library; /lib is a link to /usr/lib, and the package may know either."""
    for place in (library, Path("/") / library.relative_to("/usr")):
        asked = ["dpkg-query", "--search", str(place)]
        owner = subprocess.run(asked, capture_output=True, text=True, check=False).stdout.partition(":")[0]
        if owner:
            return owner
    return f"unknown owner of {library}"


def _system_part(package: str, libraries: set[str]) -> str:
    copyright_file = Path("/usr/share/doc") / package / "copyright"
    words = _text(copyright_file) if copyright_file.exists() else ""
    stated = sorted({line.partition(":")[2].strip() for line in words.splitlines() if line.startswith("License:")})
    told = ", ".join(stated) or ("see its text below" if words else "not stated")
    return f"{package} (Debian, for {', '.join(sorted(libraries))}): {told}\n\n{words}".rstrip()


def _text(path: object) -> str:
    return Path(str(path)).read_text(encoding="utf-8", errors="replace").strip()


if __name__ == "__main__":
    main(Path(sys.argv[1]), Path(sys.argv[2]))
