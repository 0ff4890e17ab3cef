"""One action on the undo stack."""

from collections.abc import Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtGui import QUndoCommand

if TYPE_CHECKING:
    from notereader.casebook import Edit


class EditCommand(QUndoCommand):
    """Holds the edits of one action and the way back.

    The casebook is written in the background, and the stack must never be ahead of it. So the session writes first and
    moves the stack when the casebook has it; undo() and redo() of the command itself have nothing left to do.
    """

    def __init__(self, words: str, edits: Sequence["Edit"]):
        super().__init__(words)
        self.edits = tuple(edits)

    def way_back(self) -> list["Edit"]:
        """Return the edits that undo the action, last one first."""
        return [replace(edit.inverse(), note="undone") for edit in reversed(self.edits)]
