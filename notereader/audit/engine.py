"""Which reader and which knowledge an audit was made with, so that two audits can be told apart or found alike."""

import hashlib
import platform
from dataclasses import dataclass
from functools import cache
from importlib.metadata import PackageNotFoundError, version

from notereader import __version__
from notereader.vocabulary import resource_folder

# What can change what is read besides our own code.
_LIBRARIES = ("spacy", "rapidfuzz", "pydantic")


@dataclass(frozen=True, slots=True)
class Engine:
    """Version of the reader, the SHA-256 of each resource file, and the versions of the libraries it reads with."""

    reader: str
    resources: tuple[tuple[str, str], ...]
    libraries: tuple[tuple[str, str], ...]

    def stamp(self) -> str:
        """Return a short text that differs where any part differs."""
        return hashlib.sha256(repr((self.reader, self.resources, self.libraries)).encode()).hexdigest()[:16]


@cache
def engine() -> Engine:
    """Return what this process reads with."""
    files = sorted(resource_folder().glob("*.toml"))
    sums = tuple((path.name, hashlib.sha256(path.read_bytes()).hexdigest()) for path in files)
    libraries = (("python", platform.python_version()), *((name, _version(name)) for name in _LIBRARIES))
    return Engine(__version__, sums, libraries)


@cache
def stamp() -> str:
    """Return the stamp of what this process reads with."""
    return engine().stamp()


def _version(name: str) -> str:
    try:
        return version(name)
    except PackageNotFoundError:
        return "unknown"
