from collections.abc import Iterator
from pathlib import Path

import pytest
from casebook_helpers import opened

from notereader.casebook import Casebook


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "book.db"


@pytest.fixture
def book(path: Path) -> Iterator[Casebook]:
    yield from opened(path)
