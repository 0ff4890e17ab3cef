"""Where cases live between sessions: every edit saved at once, with its history, in SQLite or a server database."""

from notereader.casebook.case import HistoryLine, OpenCase
from notereader.casebook.casebook import Casebook, CaseLine
from notereader.casebook.edits import Content, Edit, EditRefused
from notereader.casebook.faults import CasebookFault, ChangedElsewhere, NotAllConfirmed

__all__ = [
    "CaseLine",
    "Casebook",
    "CasebookFault",
    "ChangedElsewhere",
    "Content",
    "Edit",
    "EditRefused",
    "HistoryLine",
    "NotAllConfirmed",
    "OpenCase",
]
