"""The list of a student's answers as a Qt model."""

from collections.abc import Sequence

from notereader.desktop.facts_model import FactsModel
from notereader.desktop.practice.answers import AnswerRow, answer_items
from notereader.desktop.rows import Heading, Item
from notereader.practice import Attempt
from notereader.record import Address


class AnswersModel(FactsModel):
    """Lists what one attempt asks for. Every field is listed at first: which ones are left out would be a hint."""

    def __init__(self, attempt: Attempt):
        super().__init__()
        self._asked = attempt.covers
        self._again: Sequence[Address] = [Address.parse(place) for place in attempt.asked]
        self.every_field = attempt.scope != "again"

    def open_under(self, heading: Heading) -> list[Address]:
        """Return what matters and is still open under a heading."""
        return [row.address for row in self.rows() if row.heading == heading and row.unsettled]

    def _listed(self) -> list[Item]:
        return answer_items(self._record, self._asked, self._again, every_field=self.every_field)

    def _counted(self, heading: Heading) -> str:
        rows = [row for row in self.rows() if row.heading == heading and isinstance(row, AnswerRow)]
        entered, open_yet = sum(row.fact is not None for row in rows), sum(row.unsettled for row in rows)
        parts = [f"{entered} entered"] if entered else []
        return ", ".join([*parts, *([f"{open_yet} open"] if open_yet else [])])
