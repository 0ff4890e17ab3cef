"""What fuzzing found stays found: each case that once failed goes through its target again."""

import base64
import json
from pathlib import Path

import pytest
from fuzz_targets import TARGETS

FINDS = sorted((Path(__file__).parent / "finds").glob("*.json"))


@pytest.mark.parametrize("path", FINDS, ids=lambda path: path.stem)
def test_what_was_found_once_does_not_come_back(path: Path) -> None:
    find = json.loads(path.read_text(encoding="utf-8"))
    raw = base64.b64decode(find["base64"])
    check, _ = TARGETS[find["target"]]
    check(raw if find["kind"] == "bytes" else raw.decode("utf-8", "surrogatepass"))


def test_there_are_finds_to_go_through() -> None:
    assert FINDS
