"""What `needs` keeps from a rule holds nothing for it: every kept note reads the same with all gates open."""

import inspect
import sys
from pathlib import Path

import pytest

from notereader.reader import read
from notereader.record import dump_record

NOTES = sorted(Path(__file__).parents[1].joinpath("notes").rglob("*.txt"))


def drafts() -> dict[str, str]:
    """Return the draft of every kept note, by the note's name."""
    return {str(path): dump_record(read(path.read_bytes().decode("utf-8"), path.name)) for path in NOTES}


def open_gates(monkeypatch: pytest.MonkeyPatch) -> set[str]:
    """Put the bare rule in place of every gated one, wherever it was imported to. RETURNS the names of the rules."""
    opened: set[str] = set()
    for module in [m for name, m in sys.modules.items() if name.startswith("notereader.reader")]:
        for name, value in list(vars(module).items()):
            if inspect.isfunction(value) and value.__code__.co_name == "gated":
                monkeypatch.setattr(module, name, inspect.unwrap(value))
                opened.add(name)
    return opened


def test_no_gate_keeps_a_fact_out(monkeypatch: pytest.MonkeyPatch) -> None:
    """A rule that was taught to look for more, and whose need was not widened, shows here."""
    gated = drafts()
    opened = open_gates(monkeypatch)
    assert {"extents", "stitches", "gap"} <= opened
    missed = [name for name, draft in drafts().items() if draft != gated[name]]
    assert not missed
