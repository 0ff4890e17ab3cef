"""No module gives one name twice: the later value would silently take the place of the earlier one."""

import ast
from collections import Counter
from pathlib import Path

import pytest

import notereader

MODULES = sorted(Path(notereader.__file__).parent.rglob("*.py"))


def _names(module: ast.Module) -> list[str]:
    names: list[str] = []
    for node in module.body:
        if isinstance(node, ast.FunctionDef | ast.ClassDef):
            names.append(node.name)
        elif isinstance(node, ast.Assign):
            names += [target.id for target in node.targets if isinstance(target, ast.Name)]
        elif isinstance(node, ast.AnnAssign) and isinstance(node.target, ast.Name):
            names.append(node.target.id)
    return names


@pytest.mark.parametrize("folder", sorted({path.parent for path in MODULES}), ids=lambda folder: folder.name)
def test_every_name_of_a_module_is_given_once(folder: Path) -> None:
    modules = {path.name: ast.parse(path.read_text(encoding="utf-8")) for path in MODULES if path.parent == folder}
    twice = [f"{name}: {n}" for name, m in modules.items() for n, count in Counter(_names(m)).items() if count > 1]
    assert not twice
