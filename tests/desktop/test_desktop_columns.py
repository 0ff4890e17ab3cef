"""Lines in columns keep their widths on the screen: a cross stands under its title."""

import pytest

from notereader.desktop.columns import columned_lines
from notereader.desktop.note_view import NoteView

GRID = "Form\n            intact   whole\nFDP ring                x\nFDS ring      x\n\nFDP repaired with 3-0."


def test_the_rows_of_a_grid_and_its_titles() -> None:
    assert columned_lines(GRID) == [False, True, True, True, False, False]
    assert columned_lines("FDP\tcut\tsewn\nFDS\tintact\t-") == [True, True]


@pytest.mark.parametrize("text", ["", "One line.", "Ring   finger\nFDP cut.", "a  b\nc  d", "\n\n"])
def test_running_text_has_none(text: str) -> None:
    assert columned_lines(text) == [False] * len(text.split("\n"))


def test_the_note_shows_them_in_letters_of_one_width(qtbot, look) -> None:
    view = NoteView(look)
    qtbot.addWidget(view)
    view.show_note(GRID)
    assert view.toPlainText() == GRID
    cursor = view.textCursor()
    seen = []
    for place in (GRID.index("Form"), GRID.index("FDP ring"), GRID.index("FDP repaired")):
        cursor.setPosition(place + 1)
        seen.append(cursor.charFormat().fontFixedPitch())
    assert seen == [False, True, False]
