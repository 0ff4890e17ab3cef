"""Builds the one folder that a therapist copies and starts; needs no Python where it is used.

Run with Python 3.11 or newer, on the system it is meant for:  python bundling/build.py
What comes out: dist/notereader with the two programs, their libraries and LICENCES.txt. Prints size and start-up time.
"""

import os
import shutil
import subprocess
import sys
import tempfile
import time
import venv
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
ENVIRONMENT = ROOT / "build" / "environment"
BUILT = ROOT / "dist" / "notereader"
WINDOWS = sys.platform == "win32"

# A name as people give it: spaces, letters beyond ASCII.
ODD_NAME = "Hand clinic – Größe 针"


def main() -> int:
    """Build, list the licences, and read a sample with what was built; return the exit status."""
    python = _environment()
    os.chdir(ROOT)
    _run(python, "-m", "PyInstaller", "--noconfirm", "--log-level", "WARN", "bundling/notereader.spec")
    _strip()
    _run(python, "bundling/licences.py", "build/inside.txt", str(BUILT / "LICENCES.txt"))
    return _tried()


def _environment() -> Path:
    """Make an environment of the program's own needs alone: what is installed there is what is built in."""
    venv.create(ENVIRONMENT, clear=True, with_pip=True)
    python = ENVIRONMENT / ("Scripts/python.exe" if WINDOWS else "bin/python")
    _run(python, "-m", "pip", "install", "-q", f"{ROOT}[bundle]")
    # The spec takes the package from the checkout; a second one beside it would be found first.
    _run(python, "-m", "pip", "uninstall", "-q", "-y", "notereader")
    return python


def _strip() -> None:
    """Take the debugging tables out of spaCy's libraries: nine tenths of their size. Others come without."""
    program = shutil.which("strip")
    if program and sys.platform == "linux":
        for library in (BUILT / "_internal" / "spacy").rglob("*.so"):
            _run(Path(program), "--strip-unneeded", str(library))


def _run(program: Path, *arguments: str) -> None:
    subprocess.run([str(program), *arguments], check=True)


def _tried() -> int:
    """Read a sample with the built program from a folder with an odd name, without this Python's surroundings."""
    with tempfile.TemporaryDirectory() as place:
        folder = Path(place) / ODD_NAME
        shutil.copytree(BUILT, folder, symlinks=True)
        note = folder / f"{ODD_NAME}.txt"
        shutil.copy(ROOT / "samples" / "01-plain-index.txt", note)
        program = folder / ("notereader.exe" if WINDOWS else "notereader")
        kept = ("SystemRoot", "TEMP", "TMP", "HOME", "USERPROFILE", "LOCALAPPDATA", "APPDATA")
        bare = {name: os.environ[name] for name in kept if name in os.environ}
        times = []
        for arguments in (["--version"], ["check-resources"], ["read", str(note)], ["read", str(note)]):
            begun = time.perf_counter()
            done = subprocess.run([str(program), *arguments], env=bare, capture_output=True, check=False)
            times.append(f"{' '.join(arguments[:1])} {time.perf_counter() - begun:.2f} s")
            if done.returncode:
                print(done.stderr.decode("utf-8", "replace"))
                return 1
    if b'"strands"' not in done.stdout:
        print("The built program read no strands in the sample.")
        return 1
    files = [path for path in BUILT.rglob("*") if path.is_file() and not path.is_symlink()]
    print(f"{BUILT}: {sum(path.stat().st_size for path in files) / 1e6:.0f} MB in {len(files)} files")
    print("; ".join(times))
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
