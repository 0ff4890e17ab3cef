"""What `needs` keeps from a rule holds nothing for it: kept notes read the same with all gates open."""

import inspect
import sys
from pathlib import Path

import pytest
from collections_of_notes import its_turn, reading_of

from notereader.reader import read

FOLDERS = sorted(Path(__file__).parents[1].joinpath("notes").iterdir())


def open_gates(monkeypatch: pytest.MonkeyPatch) -> set[str]:
    """Put the bare rule in place of every gated one, wherever it was imported to. RETURNS the names of the rules."""
    opened: set[str] = set()
    for module in [m for name, m in sys.modules.items() if name.startswith("notereader.reader")]:
        for name, value in list(vars(module).items()):
            if inspect.isfunction(value) and value.__code__.co_name == "gated":
                monkeypatch.setattr(module, name, inspect.unwrap(value))
                opened.add(name)
    return opened


@pytest.mark.parametrize("folder", FOLDERS, ids=lambda folder: folder.name)
def test_no_gate_keeps_a_fact_out(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A rule that was taught to look for more, and whose need was not widened, shows here."""
    paths = [path for path in folder.glob("*.txt") if its_turn(f"needs {path.stem}")]
    texts = {path.stem: path.read_bytes().decode("utf-8") for path in paths}
    gated = {name: reading_of(text) for name, text in texts.items()}
    opened = open_gates(monkeypatch)
    assert {"extents", "stitches", "gap"} <= opened
    missed = [name for name, text in texts.items() if read(text) != gated[name]]
    assert not missed
