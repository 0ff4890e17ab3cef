"""'1st ass: Dr X' names an assistant; a word that only looks like it does not."""

import pytest
from reader_sentences import record_of


def _assistant(text: str) -> bool:
    return any(p.group == "elements" and p.field == "assistant" for p, _ in record_of(text).walk())


@pytest.mark.parametrize("line", ["1st ass: Dr Pim", "First ass. : Dr Pim", "Ass: student", "ass: nurse"])
def test_first_ass(line: str) -> None:
    assert _assistant(f"Surgeon: Dr Quill\n{line}\nFDP of the index repaired.")


@pytest.mark.parametrize("line", ["Mass: none", "Class: student", "1st assessment: numb tip"])
def test_no_assistant(line: str) -> None:
    assert not _assistant(f"Surgeon: Dr Quill\n{line}\nFDP of the index repaired.")
