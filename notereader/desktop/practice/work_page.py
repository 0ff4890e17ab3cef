"""The page on which a student reads a note unaided and enters what it says."""

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QMessageBox

from notereader.desktop.band import Band
from notereader.desktop.fact_pane import FactPane
from notereader.desktop.facts_page import ENTRIES, FactsPage
from notereader.desktop.keys import PRACTICE_WORDS
from notereader.desktop.look import Look
from notereader.desktop.mark_key import MarkKey
from notereader.desktop.practice import answers
from notereader.desktop.practice.answer_pane import AGAIN, TASK, AnswerPane
from notereader.desktop.practice.answers_model import AnswersModel
from notereader.desktop.practice.contradiction_dialog import ContradictionDialog
from notereader.desktop.practice.naming import case_title, counted, level_words
from notereader.desktop.practice.typing import STUDENTS
from notereader.desktop.rows import Row, capital
from notereader.desktop.session import Session
from notereader.desktop.themes import MarkKind
from notereader.practice import OpenAttempt
from notereader.practice.words import tables
from notereader.record import Address, Record

_BUTTONS = {
    "correct": "Enter …",
    "silent": "Note is silent",
    "words": "Take selected words",
    "contradiction": "Contradiction …",
    "ask": "Ask the surgeon",
    "withdraw": "Take back",
    "add": "Add tendon, pulley …",
}
_MARKS = {
    MarkKind.ADDED: "words you marked",
    MarkKind.RIVAL: "words of a second value",
    MarkKind.IN_HAND: "the fact in hand",
}


class WorkPage(FactsPage):
    """Shows an attempt: the reading window's note, list and editors without proposals. `handed_in` goes out once."""

    handed_in = Signal()
    leaving = Signal()
    called = PRACTICE_WORDS
    typing = STUDENTS
    missed = "What the note tells of"

    def __init__(self, session: Session, attempt: OpenAttempt, look: Look, band: Band):
        self._attempt = attempt
        self.model: AnswersModel
        super().__init__(
            session,
            case_title(attempt.case.id),
            look,
            band,
            AnswersModel(attempt.attempt),
            FactPane(look, _BUTTONS, self.called, self.typing),
            MarkKey(look, _MARKS),
            "Task, questions",
        )
        self.facts.setAccessibleName("Your answers")
        self.facts.setAccessibleDescription("Return enters what the note says of the fact in hand. F1 lists all keys.")
        again = attempt.attempt.scope == "again"
        self.answer = AnswerPane(look, AGAIN if again else TASK)
        if again:
            self.answer.hide_lists()
        self.side.add_pane("Task and questions", self.answer)
        self.answer.hand_in_wanted.connect(self._hand_in)
        self.answer.leaving.connect(self.leaving)
        self.answer.contradiction_dropped.connect(self._drop_contradiction)
        self.answer.question_moved.connect(self._move_question)
        self.answer.question_dropped.connect(self._drop_question)

    def _table(self) -> dict[str, Callable[[], None]]:
        return {
            **super()._table(),
            "confirm": lambda: self._on_row(self._edit),
            "silent_rest": lambda: self._on_row(self._silent_rest),
            "withdraw": lambda: self._on_row(self._take_back),
            "withdraw_entry": lambda: self._on_row(self._take_back_entry),
            "rival": lambda: self._on_row(lambda row: self._other_first(0)),
            "contradiction": lambda: self._on_row(self._contradiction),
            "ask": lambda: self._on_row(self._ask),
            "confirm_case": self._hand_in,
        }

    # What is shown

    def _show_record(self, record: Record) -> None:
        super()._show_record(record)
        self.answer.show_answers(self._named(record), [_words(place) for place in self._ranked()])

    def _named(self, record: Record) -> list[str]:
        both = [f"{capital(place.words())}: the note says {values}" for place, values in answers.two_values(record)]
        for hit in self._attempt.attempt.contradictions:
            places = " against ".join(_words(place) for place in hit.places)
            both.append(f"{places} – {hit.words}" if hit.words else places)
        return both

    def _ranked(self) -> list[str]:
        return list(self._attempt.attempt.questions)

    def _count(self) -> None:
        record, attempt = self.session.record, self._attempt.attempt
        facts = [fact for _, fact in record.walk()]
        silent = sum(fact.basis == "silent" for fact in facts)
        open_yet = sum(row.unsettled for row in self.model.rows())
        parts = [
            f"Practice: {self.title}, {level_words(self._attempt.case.difficulty)}",
            f"{len(facts) - silent} entered",
            f"{silent} said silent",
            f"{open_yet} open",
        ]
        if attempt.scope != "again":
            parts.append(counted(len(self._named(record)), "contradiction"))
            parts.append(f"{len(attempt.questions)} of {tables().asking.ranked} questions")
        parts.append("handed in" if self.session.state == "confirmed" else "every step is saved")
        self.strip.setText("  ·  ".join(parts))
        self.title_changed.emit()

    # What is done

    def _next(self) -> None:
        if not self.facts.next_unsettled():
            self.pane.tell("Nothing that matters is open. Rank your questions (Q), then hand in with Ctrl+Return.")

    def _entered(self) -> None:
        self.pane.tell("Entered and saved. Down goes on; N brings the next that is open.")

    def _connect(self) -> None:
        super()._connect()
        self.pane.rival_wanted.connect(self._other_first)

    def _other_first(self, number: int) -> None:
        address = self.session.in_hand
        if address is not None:
            self.session.act(lambda record: answers.other_first(record, address, number))

    def _silent_rest(self, row: Row) -> None:
        places = self.model.open_under(row.heading)
        self._act(lambda record: answers.say_silent(record, places))

    def _take_back(self, row: Row) -> None:
        self.session.act(lambda record: answers.take_back(record, row.address))

    def _take_back_entry(self, row: Row) -> None:
        if row.address.group not in ENTRIES:
            self.pane.refuse("Only tendons, pulleys and other structures can be taken back as a whole.")
            return
        self.session.act(lambda record: answers.take_back_entry(record, row.address))

    def _contradiction(self, row: Row) -> None:
        if self._attempt.attempt.scope == "again":
            self.pane.refuse("This exercise asks only for the facts listed.")
            return
        dialog = ContradictionDialog(row, self.session.record, self._selected_words(), self)
        if not dialog.exec():
            return
        value, other, words = dialog.second_value(), dialog.other_place(), dialog.words.text().strip()
        if value is not None:
            evidence = self._selected_evidence()
            self.note.clear_selection()
            self.session.act(lambda record: answers.second_value(record, row.address, value, evidence))
            return
        places = [row.address, *([other] if other is not None else [])]
        self.session.change(lambda: self._attempt.name_contradiction(places, words))

    def _drop_contradiction(self, number: int) -> None:
        both = answers.two_values(self.session.record)
        if number < len(both):
            self.session.act(lambda record: answers.one_value(record, both[number][0]))
        else:
            self.session.change(lambda: self._attempt.drop_contradiction(number - len(both)))

    def _ask(self, row: Row) -> None:
        ranked, most = self._ranked(), tables().asking.ranked
        if self._attempt.attempt.scope == "again":
            self.pane.refuse("This exercise asks only for the facts listed.")
        elif row.address.text() in ranked:
            self.pane.refuse(f"It is your question number {ranked.index(row.address.text()) + 1} already.")
        elif len(ranked) >= most:
            self.pane.refuse(f"{most} questions are ranked already. Take one back in the pane 'Task and questions'.")
        else:
            told = f"Ranked as question {len(ranked) + 1} of {most}."
            self._rank([*ranked, row.address.text()], lambda: self.pane.tell(told))

    def _move_question(self, number: int, way: int) -> None:
        ranked = answers.moved(self._ranked(), number, way)
        self._rank(ranked, lambda: self.answer.questions.setCurrentRow(max(0, min(number + way, len(ranked) - 1))))

    def _drop_question(self, number: int) -> None:
        self._rank([place for at, place in enumerate(self._ranked()) if at != number])

    def _rank(self, ranked: list[str], then: Callable[[], None] = lambda: None) -> None:
        places = [Address.parse(place) for place in ranked]
        self.session.change(lambda: self._attempt.rank_questions(places), then)

    def _hand_in(self) -> None:
        trouble = self.pane.settle()
        if trouble:
            self.pane.refuse(trouble)
            return
        self.session.when_idle(self._ask_and_hand_in)

    def _ask_and_hand_in(self) -> None:
        if self.session.state != "confirmed" and not self._agreed():
            self.facts.setFocus()
            return
        if self.session.state == "confirmed":
            self.handed_in.emit()
        else:
            self.session.confirm_case(self.handed_in.emit)

    def _agreed(self) -> bool:
        box = QMessageBox(QMessageBox.Icon.Question, "Hand in", self._what_is_handed_in(), parent=self)
        box.setTextFormat(Qt.TextFormat.PlainText)
        hand_in = box.addButton("Hand in", QMessageBox.ButtonRole.AcceptRole)
        box.addButton("Go on working", QMessageBox.ButtonRole.RejectRole)
        box.setDefaultButton(hand_in)
        box.exec()
        return box.clickedButton() is hand_in

    def _what_is_handed_in(self) -> str:
        facts = [fact for _, fact in self.session.record.walk() if fact.live]
        bare = sum(not fact.evidence for fact in facts)
        open_yet = sum(row.unsettled for row in self.model.rows())
        lines = [f"Entered: {counted(len(facts), 'fact')}."]
        if bare:
            lines.append(f"Without words of the note: {bare}. A right value without its words counts half.")
        if open_yet:
            lines.append(
                f"Open: {open_yet} that change the work are neither entered nor called silent (N goes to each)."
            )
        if self._attempt.attempt.scope != "again":
            lines.append(f"Questions ranked: {len(self._ranked())} of {tables().asking.ranked}.")
        return "\n".join([*lines, "", "Once handed in, nothing can be changed. Hand in now?"])


def _words(place: str) -> str:
    return capital(Address.parse(place).words())
