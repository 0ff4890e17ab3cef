"""What the facts mean: gaps, contradictions, questions, strength against load, glide and pulleys, time line."""

from notereader.appraisal.appraise import appraise
from notereader.appraisal.cautions import all_cautions, cautions_about
from notereader.appraisal.models import Appraisal, Question
from notereader.appraisal.printing import printed_appraisal
from notereader.appraisal.questions import question_letter
from notereader.appraisal.settled import Settled, appraise_settled, settled_day, settled_only
from notereader.appraisal.text import appraisal_text

__all__ = [
    "Appraisal",
    "Question",
    "Settled",
    "all_cautions",
    "appraisal_text",
    "appraise",
    "appraise_settled",
    "cautions_about",
    "printed_appraisal",
    "question_letter",
    "settled_day",
    "settled_only",
]
