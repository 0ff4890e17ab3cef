"""Every way out of the program, broken off at its last step: what stood there before stays whole."""

import os
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from exchange_helpers import example

from notereader.audit.report.files import written
from notereader.exchange import summary_html, write_facts, write_file, write_record
from notereader.exchange.database import CaseOut, write_database
from notereader.practice.exports import save_text

Write = Callable[[Path], Any]


def report_of_an_audit(path: Path) -> None:
    with written(path) as stream:
        stream.write(b"report" * 1000)


WAYS: dict[str, Write] = {
    "record": lambda path: write_record(example(), path),
    "table": lambda path: write_facts([example()], path),
    "summary": lambda path: write_file(path, summary_html(example())),
    "database": lambda path: write_database([CaseOut(1, example())], path),
    "audit": report_of_an_audit,
    "practice": lambda path: save_text(path, "markings" * 1000),
}


@pytest.mark.parametrize("way", WAYS)
def test_an_export_broken_off_leaves_the_old_file_whole(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, way: str
) -> None:
    path = tmp_path / "out.file"
    WAYS[way](path)
    before = path.read_bytes()
    kept = {place.name for place in tmp_path.iterdir()}

    def killed(*_: object, **__: object) -> None:
        raise KeyboardInterrupt

    with monkeypatch.context() as patch, pytest.raises(KeyboardInterrupt):
        # What puts the finished file in its place, in each of its spellings.
        patch.setattr(os, "replace", killed)
        patch.setattr(Path, "replace", killed)
        WAYS[way](path)
    assert path.read_bytes() == before
    assert {place.name for place in tmp_path.iterdir()} == kept
    WAYS[way](path)
    assert path.exists()
