"""What the program imports is what its installation brings: the wheel is tried beside the tests' own packages."""

import ast
import re
import sys
import tomllib
from functools import cache
from importlib.metadata import packages_distributions
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]


def _names(requirements: list[str]) -> set[str]:
    found = {re.split(r"[\s<>=!~;\[]", requirement)[0] for requirement in requirements}
    return {re.sub(r"[-_.]+", "-", name).lower() for name in found}


REQUIRED = _names(PROJECT["dependencies"])
OPTIONAL = _names([r for name in ("fhir", "dask", "team") for r in PROJECT["optional-dependencies"][name]])
BRINGS_ALONG = {"shiboken6": "pyside6-essentials"}  # a part of PySide6


def _imports(tree: ast.AST, top: bool) -> set[str]:
    """Return the packages that a module imports as it is loaded (`top`), or in any of its functions."""
    nodes = ast.iter_child_nodes(tree) if top else ast.walk(tree)
    found: set[str] = set()
    for node in nodes:
        if isinstance(node, ast.Import):
            found |= {alias.name.split(".")[0] for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.module and not node.level:
            found.add(node.module.split(".")[0])
    return found - set(sys.stdlib_module_names) - {"notereader"}


@cache
def _distributions() -> dict[str, list[str]]:
    return dict(packages_distributions())


def _brought_by(package: str) -> set[str]:
    named = _distributions().get(package, [package])
    return {BRINGS_ALONG.get(name, name) for name in (re.sub(r"[-_.]+", "-", n).lower() for n in named)}


@pytest.mark.parametrize(
    "path", sorted((ROOT / "notereader").rglob("*.py")), ids=lambda p: p.relative_to(ROOT).as_posix()
)
def test_every_import_is_installed_with_the_program(path: Path) -> None:
    tree = ast.parse(path.read_text(encoding="utf-8"))
    missing = {p for p in _imports(tree, top=True) if not _brought_by(p) & REQUIRED}
    assert not missing, "imported on loading, and not among the dependencies"
    unknown = {p for p in _imports(tree, top=False) if not _brought_by(p) & (REQUIRED | OPTIONAL)}
    assert not unknown, "imported, and not among the dependencies or the extras"
