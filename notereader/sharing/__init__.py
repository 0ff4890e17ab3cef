"""Sharing without identifiers: what may tell who somebody is, found by rules, shown to a person, then blanked."""

from notereader.sharing.by_hand import by_hand, everywhere
from notereader.sharing.copying import CleanCopy, random_shift, replacement
from notereader.sharing.finding import find_identifiers
from notereader.sharing.finds import Find
from notereader.sharing.records import NAME_OF_COPY, find_in_record, share_record
from notereader.sharing.words import INCOMPLETE, MIXED_DATES, action_words, mixed_dates

__all__ = [
    "INCOMPLETE",
    "MIXED_DATES",
    "NAME_OF_COPY",
    "CleanCopy",
    "Find",
    "action_words",
    "by_hand",
    "everywhere",
    "find_identifiers",
    "find_in_record",
    "mixed_dates",
    "random_shift",
    "replacement",
    "share_record",
]
