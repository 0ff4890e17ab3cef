"""What the facts mean: gaps, contradictions, questions, strength against load, glide and pulleys, time line."""

from notereader.appraisal.answers import SURGEON, enter_answer
from notereader.appraisal.appraise import appraise
from notereader.appraisal.models import Appraisal, Question
from notereader.appraisal.printing import printed_appraisal
from notereader.appraisal.questions import question_letter
from notereader.appraisal.text import appraisal_text

__all__ = [
    "SURGEON",
    "Appraisal",
    "Question",
    "appraisal_text",
    "appraise",
    "enter_answer",
    "printed_appraisal",
    "question_letter",
]
