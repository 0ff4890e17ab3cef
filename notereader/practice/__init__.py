"""Practice: a student reads a note unaided, is marked against its key and learns from the difference."""

from notereader.practice.attempts import (
    Attempt,
    ExerciseBook,
    NamedContradiction,
    OpenAttempt,
    exercise_book,
    load_attempt,
    new_attempt,
)
from notereader.practice.cases import Case, case_of
from notereader.practice.charts import progress_figure, save_figure, teacher_figure
from notereader.practice.choosing import NextCase, Return, due_on, next_case, returns
from notereader.practice.exports import export_json, facts_csv, progress_csv, read_markings, teacher_csv
from notereader.practice.faults import PracticeFault
from notereader.practice.handins import take_in
from notereader.practice.keeping import CaseStanding, keep_marking, kept_markings, mark_what_waits, most_due, standings
from notereader.practice.marking import mark
from notereader.practice.marks import ContradictionMark, EntryMark, FactMark, Marking, QuestionsMark
from notereader.practice.printing import marking_text
from notereader.practice.progress import Progress, progress_of
from notereader.practice.sets import CaseSet, load_set, ready_set, save_set
from notereader.practice.teacher import TeacherView, teacher_view
from notereader.practice.words import tip, why

__all__ = [
    "Attempt",
    "Case",
    "CaseSet",
    "CaseStanding",
    "ContradictionMark",
    "EntryMark",
    "ExerciseBook",
    "FactMark",
    "Marking",
    "NamedContradiction",
    "NextCase",
    "OpenAttempt",
    "PracticeFault",
    "Progress",
    "QuestionsMark",
    "Return",
    "TeacherView",
    "case_of",
    "due_on",
    "exercise_book",
    "export_json",
    "facts_csv",
    "keep_marking",
    "kept_markings",
    "load_attempt",
    "load_set",
    "mark",
    "mark_what_waits",
    "marking_text",
    "most_due",
    "new_attempt",
    "next_case",
    "progress_csv",
    "progress_figure",
    "progress_of",
    "read_markings",
    "ready_set",
    "returns",
    "save_figure",
    "save_set",
    "standings",
    "take_in",
    "teacher_csv",
    "teacher_figure",
    "teacher_view",
    "tip",
    "why",
]
