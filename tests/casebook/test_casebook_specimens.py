"""Casebooks written by released versions open in this one; the files are never made anew."""

import shutil
from pathlib import Path

from casebook_helpers import SIZE, STRANDS, confirming, draft, opened

SPECIMENS = Path(__file__).parent / "specimens"


def test_a_casebook_of_version_1_opens(path: Path) -> None:
    shutil.copy(SPECIMENS / "casebook-version-1.db", path)
    for book in opened(path):
        assert book.notices == []
        assert [(line.id, line.title, line.state, line.facts_open) for line in book.cases()] == [
            (2, "Ring finger, confirmed", "confirmed", 0),
            (1, "Ring finger", "in work", 8),
        ]
        case = book.open(1)
        assert case.read == {STRANDS.text(), SIZE.text()}
        assert case.record.fact(STRANDS).value == 6
        assert case.record.note == draft().note
        assert [line.who for line in case.history()] == ["Hand clinic", "Hand clinic"]
        case.apply(confirming(case, SIZE))
        assert book.open(2).record.review.reviewer == "Hand clinic"
        assert [line.id for line in book.cases("größe confirmed")] == [2]
