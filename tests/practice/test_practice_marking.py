"""Marking: every kind of difference, and what each costs."""

from datetime import date

import pytest
from practice_making import (
    NOTE,
    RING_A2,
    RING_A4,
    RING_FDP,
    at,
    changed,
    evidence,
    handed_in,
    interval,
    key_record,
    made_case,
    only_difference,
    perfect,
)

from notereader.practice import NamedContradiction, PracticeFault, case_of, mark, marking_text, ready_set
from notereader.practice.words import tables
from notereader.record import Address, Evidence, Fact, Rival, enter_answer, source_of

CASE = made_case()
STRANDS = RING_FDP.field_of("strands")


def said(value, words="four-strand", rivals=None, number=1):
    return Fact(value=value, status="added", evidence=evidence(words, number), rivals=rivals or [])


def silent():
    return Fact(value=None, basis="silent", status="added")


def test_the_key_against_itself_is_perfect():
    marking = mark(CASE, perfect(CASE))
    assert marking.perfect
    assert marking.share == 1.0
    assert marking.kappa == 1.0
    assert marking.over == 0
    assert all(kind.right == kind.trials for kind in marking.kinds)


@pytest.mark.parametrize("case", ready_set().cases, ids=lambda case: case.id)
def test_every_sample_key_against_itself_is_perfect(case):
    marking = mark(case, perfect(case))
    assert marking.perfect
    assert marking.share == 1.0
    assert marking.questions.worth_share in (None, 1.0)


def test_missed():
    difference = only_difference(mark(CASE, changed(CASE, RING_A4.field_of("extent_mm"), None)))
    assert difference.outcome == "missed"
    assert difference.points == 0
    assert "3 mm" in difference.sentence
    assert difference.key_words[0].quote == "3 mm"


def test_said_silent_though_stated_is_missed_and_told_so():
    difference = only_difference(mark(CASE, changed(CASE, RING_FDP.field_of("ends"), silent())))
    assert difference.outcome == "missed"
    assert difference.sentence == "You said that the note is silent. It says clean."


def test_wrong_and_over_stated():
    attempt = changed(CASE, RING_FDP.field_of("size"), said("3-0", "4-0 Ethibond"))
    marking = mark(CASE, attempt)
    difference = only_difference(marking)
    assert (difference.outcome, difference.leaning, difference.over) == ("wrong", "over", True)
    assert "promises more" in difference.sentence
    assert difference.bears == "strength"
    assert marking.over == 1


def test_wrong_on_the_careful_side():
    difference = only_difference(mark(CASE, changed(CASE, RING_FDP.field_of("size"), said("5-0", "4-0 Ethibond"))))
    assert (difference.outcome, difference.leaning, difference.over) == ("wrong", "under", False)


def test_read_into_a_silent_note_is_over_stated_where_it_promises_something():
    attempt = changed(CASE, RING_FDP.field_of("gap"), said("none", "tested passively"))
    difference = only_difference(mark(CASE, attempt))
    assert (difference.outcome, difference.over, difference.true) == ("read in", True, "")
    assert "silence promises nothing" in difference.sentence


def test_read_into_a_silent_note_on_the_careful_side_is_no_over_statement():
    difference = only_difference(mark(CASE, changed(CASE, RING_FDP.field_of("gap"), said("seen", "gap"))))
    assert (difference.outcome, difference.over) == ("read in", False)


def test_right_value_with_words_that_do_not_prove_it():
    attempt = changed(CASE, STRANDS, said(4, "two-strand"))
    difference = only_difference(mark(CASE, attempt))
    assert (difference.outcome, difference.proof) == ("wrong words", "elsewhere")
    assert difference.points == difference.worth / 2
    assert difference.said_words[0].quote == "two-strand"


def test_right_value_without_words():
    difference = only_difference(mark(CASE, changed(CASE, STRANDS, Fact(value=4, status="added"))))
    assert (difference.outcome, difference.proof) == ("wrong words", "none")


def test_right_value_with_words_that_leave_out_what_says_it():
    purchase = RING_FDP.field_of("purchase_mm")
    difference = only_difference(mark(CASE, changed(CASE, purchase, said(interval(10), "of tendon on each side"))))
    assert (difference.outcome, difference.proof) == ("wrong words", "too little")


def test_right_value_with_the_whole_note_marked():
    whole = Evidence.at(NOTE, 0, len(NOTE), source_of(NOTE))
    attempt = changed(CASE, STRANDS, Fact(value=4, status="added", evidence=[whole]))
    assert only_difference(mark(CASE, attempt)).proof == "too much"


@pytest.mark.parametrize(
    ("place", "value", "words"),
    [
        (STRANDS, 4, "four"),
        (STRANDS, 4, "a four-strand locked cruciate core"),
        (RING_FDP.field_of("purchase_mm"), interval(10), "10 mm"),
        (RING_FDP.field_of("purchase_mm"), interval(10), "10"),
        (RING_FDP.field_of("extent"), "complete", "completely"),
        (RING_FDP.field_of("material"), "braided polyester", "Ethibond"),
        (RING_A2.field_of("finding"), "intact", "intact"),
        (Address("aftercare", field="wrist_flexion_deg"), interval(20), "20 degrees"),
    ],
)
def test_a_smaller_quote_is_enough_where_it_says_the_value(place, value, words):
    assert mark(CASE, changed(CASE, place, said(value, words))).perfect


def test_half_a_date_is_not_enough():
    date = Address("operation", field="date")
    assert only_difference(mark(CASE, changed(CASE, date, said("2041-05-05", "2041")))).proof == "too little"


def test_another_place_that_states_the_fact_counts_where_the_reader_finds_it_there():
    sample = ready_set().case("01-plain-index")
    attempt = perfect(sample)
    start = sample.text.index("completely divided")
    assert start not in range(*sample.key.fact(_fdp("extent")).evidence[0].span)
    words = Evidence.at(sample.text, start, start + len("completely divided"), source_of(sample.text))
    attempt.record.put(_fdp("extent"), Fact(value="complete", status="added", evidence=[words]))
    assert mark(sample, attempt).perfect


def test_words_of_another_suture_never_count():
    sample = ready_set().case("02-terse-ring")
    attempt = perfect(sample)
    start = sample.text.index("6/0 Vicryl")
    words = Evidence.at(sample.text, start, start + 3, source_of(sample.text))
    place = Address("repairs", "ring", "FDP", None, "peripheral_size")
    attempt.record.put(place, Fact(value="6-0", status="added", evidence=[words]))
    assert only_difference(mark(sample, attempt)).proof == "elsewhere"


def _fdp(field):
    return Address("repairs", "index", "FDP", None, field)


def test_rival_taken_instead_of_the_weaker_value():
    attempt = changed(CASE, STRANDS, said(6, "six-strand", [Rival(value=4, evidence=evidence("four-strand"))]))
    difference = only_difference(mark(CASE, attempt))
    assert difference.over
    assert difference.sentence.startswith("The note says both: 4 and 6.")


def test_what_only_follows_counts_half_when_missed():
    difference = only_difference(mark(CASE, changed(CASE, RING_FDP.field_of("hold"), None)))
    assert difference.implied
    assert difference.worth == 1.0  # the field weighs 2
    assert "second look" in difference.sentence


def test_needed_silence_unsaid_and_said():
    tension = RING_FDP.field_of("tension")
    assert CASE.key.fact(tension).basis == "silent"
    difference = only_difference(mark(CASE, changed(CASE, tension, None)))
    assert (difference.outcome, difference.worth, difference.points) == ("silence unsaid", 1.0, 0.0)
    seen = next(m for m in mark(CASE, perfect(CASE)).facts if m.address == tension.text())
    assert (seen.outcome, seen.points) == ("silence seen", 1.0)


def test_silence_about_a_digits_nerves_may_be_said_of_any_nerve():
    attempt = perfect(CASE)
    place = next(p for p, f in attempt.record.walk() if p.group == "injuries")
    attempt.record.drop_entry(place)
    attempt.record.put(Address("injuries", "ring", "digital nerve", "ulnar", "treatment"), silent())
    assert mark(CASE, attempt).perfect


def test_facts_under_the_wrong_finger_are_one_grave_fault_and_not_twenty():
    attempt = perfect(CASE)
    attempt.record.repairs[0].digit = "middle"
    marking = mark(CASE, attempt)
    wrong = [entry for entry in marking.entries if not entry.right]
    assert [(entry.where, entry.filed_under) for entry in wrong] == [("ring FDP", "middle FDP")]
    assert not marking.differences
    assert marking.share < 1
    assert (
        next(k for k in marking.kinds if k.key == "whose").right
        < next(k for k in marking.kinds if k.key == "whose").trials
    )


def test_the_wrong_slip_is_caught():
    sample = ready_set().case("06-child-index")
    attempt = perfect(sample)
    for repair in attempt.record.repairs:
        if repair.slip:
            repair.slip = {"radial": "ulnar", "ulnar": "radial"}[repair.slip]
    assert not mark(sample, attempt).perfect


def test_an_invented_tendon_is_read_in():
    attempt = perfect(CASE)
    attempt.record.put(Address("repairs", "index", "FDP", None, "strands"), said(4))
    difference = only_difference(mark(CASE, attempt))
    assert (difference.outcome, difference.over, difference.where) == ("read in", True, "index FDP")


def test_a_withdrawn_fact_is_not_said():
    attempt = perfect(CASE)
    attempt.record.fact(STRANDS).status = "withdrawn"
    assert only_difference(mark(CASE, attempt)).outcome == "missed"


def test_over_statement_weighs_most():
    points = {}
    for name, new in {
        "over": said("3-0", "4-0 Ethibond"),
        "under": said("5-0", "4-0 Ethibond"),
        "words": said("4-0", "5-0 nylon"),
        "missed": None,
    }.items():
        points[name] = only_difference(mark(CASE, changed(CASE, RING_FDP.field_of("size"), new))).points
    careful_read_in = changed(CASE, RING_FDP.field_of("gap"), said("seen", "gap"))
    points["read in"] = only_difference(mark(CASE, careful_read_in)).points
    assert points["over"] == min(points.values())
    assert points["over"] < points["read in"] < points["under"] < points["missed"] < points["words"]


def test_contradiction_named_missed_and_unfounded():
    (hit,) = CASE.contradictions
    assert hit.check == "two_values"
    named = mark(CASE, perfect(CASE)).contradictions
    assert [h.outcome for h in named] == ["named"]
    attempt = perfect(CASE)
    attempt.contradictions = [NamedContradiction(places=[RING_FDP.field_of("size").text()])]
    attempt.record.fact(STRANDS).rivals = []
    found = mark(CASE, attempt)
    assert [h.outcome for h in found.contradictions] == ["missed", "unfounded"]
    assert not found.perfect
    assert found.share < 1


def test_entering_both_values_names_the_contradiction():
    attempt = perfect(CASE)
    attempt.contradictions = []
    assert mark(CASE, attempt).contradictions[0].outcome == "named"


def test_an_unusual_finding_may_be_named_and_need_not_be():
    sample = ready_set().case("16-wrist-many-tendons")
    assert sample.unusual and not sample.contradictions
    attempt = perfect(sample)
    attempt.contradictions = [NamedContradiction(places=[sample.unusual[0].pieces[0].address])]
    assert [h.outcome for h in mark(sample, attempt).contradictions] == ["unusual"]
    assert mark(sample, attempt).share == 1.0


def test_questions_against_the_appraisal():
    best = [q.places[0] for q in CASE.questions[:3]]
    attempt = perfect(CASE)
    attempt.questions = best[::-1]
    turned = mark(CASE, attempt).questions
    assert turned.rank_agreement == pytest.approx(-1)
    assert turned.among_best == 3
    assert turned.worth_share < 1
    assert "after a question whose answer would settle less; by its worth" in turned.asked[1].sentence
    attempt.questions = [RING_FDP.field_of("zone").text(), best[0]]
    mixed = mark(CASE, attempt).questions
    assert mixed.asked[0].place is None
    assert "answers this" in mixed.asked[0].sentence
    assert mixed.rank_agreement == -1


def test_a_question_put_twice_counts_once():
    sample = ready_set().case("01-plain-index")
    attempt = perfect(sample)
    attempt.questions = sample.questions[0].places[:2]
    marked = mark(sample, attempt).questions
    assert marked.among_best == 1
    assert marked.asked[1].sentence == tables().sentence.question_twice


def test_questions_follow_a_misfiled_tendon():
    attempt = perfect(CASE)
    attempt.record.repairs[0].digit = "middle"
    attempt.questions = [p.replace("/ring/FDP/", "/middle/FDP/") for p in attempt.questions]
    assert mark(CASE, attempt).questions.worth_share == 1.0


def test_therapy_scope_leaves_the_owed_parts_out():
    attempt = changed(CASE, Address("elements", field="findings"), None, "therapy")
    assert mark(CASE, attempt).perfect
    attempt.scope = "whole"
    assert only_difference(mark(CASE, attempt)).field == "elements.findings"


def test_only_what_is_asked_again_is_marked():
    attempt = changed(CASE, STRANDS, said(6, "six-strand"), "again")
    attempt.asked = [RING_FDP.field_of("size").text()]
    marking = mark(CASE, attempt)
    assert [m.field for m in marking.facts] == ["repairs.size"]
    assert marking.questions is None
    assert marking.perfect


def test_the_wrong_note_is_refused():
    with pytest.raises(PracticeFault, match="another note"):
        mark(ready_set().cases[0], perfect(CASE))


def test_a_case_without_its_key_cannot_be_marked():
    with pytest.raises(PracticeFault, match="without its key"):
        mark(CASE.without_key(), perfect(CASE))


def test_the_printed_marking_shows_words_reasons_and_cautions():
    text = marking_text(mark(CASE, changed(CASE, RING_FDP.field_of("size"), said("3-0", "3-0 Prolene"))))
    flat = " ".join(text.split())
    assert "1 over-stated" in flat
    assert 'The note: "4-0 Ethibond"' in flat
    assert 'You marked: "3-0 Prolene"' in flat
    assert "Why it matters (strength)" in flat
    assert tables().caution in flat
    assert "The first repair is old." in flat


def test_every_kind_of_difference_is_explained_with_its_reason():
    attempt = perfect(CASE)
    attempt.record.put(RING_FDP.field_of("size"), said("3-0", "3-0 Prolene"))
    attempt.record.put(RING_FDP.field_of("gap"), said("none", "gap"))
    attempt.record.put(RING_FDP.field_of("material"), said("braided polyester", "5-0 nylon"))
    attempt.record.drop(RING_FDP.field_of("ends"))
    attempt.record.drop(RING_FDP.field_of("bulk"))
    marking = handed_in(CASE, attempt)
    assert {m.outcome for m in marking.differences} == {"wrong", "read in", "wrong words", "missed", "silence unsaid"}
    assert all(m.sentence and m.why and m.bears and m.source for m in marking.differences)
    assert marking.differences[0].over


def test_answers_the_surgeon_gave_later_are_not_in_the_note():
    record = key_record()
    enter_answer(record, RING_FDP.field_of("bulk"), "none", date(2041, 5, 9))
    enter_answer(record, STRANDS, 6, date(2041, 5, 9))
    case = case_of(record, "made")
    assert case.key.fact(RING_FDP.field_of("bulk")).basis == "silent"
    told = case.key.fact(STRANDS)
    assert (told.value, [r.value for r in told.rivals]) == (4, [6])
    assert at("four-strand") == told.evidence[0].span


def test_a_proposed_record_is_no_key():
    record = key_record()
    record.fact(STRANDS).status = "proposed"
    with pytest.raises(PracticeFault, match="not confirmed"):
        case_of(record, "made")
    record = key_record()
    record.note.text = None
    with pytest.raises(PracticeFault, match="without its note"):
        case_of(record, "made")


def test_of_two_values_that_promise_alike_either_may_stand_first():
    sample = ready_set().case("17-two-sides")
    side = Address("operation", field="side")
    attempt = perfect(sample)
    fact = attempt.record.fact(side)
    rival = fact.rivals[0]
    assert (fact.value, rival.value) == ("right", "left")
    turned = Fact(value="left", status="added", evidence=rival.evidence, rivals=[Rival(value="right")])
    attempt.record.put(side, turned)
    assert mark(sample, attempt).perfect
    attempt.record.put(side, Fact(value="left", status="added", evidence=rival.evidence))
    assert only_difference(mark(sample, attempt)).outcome == "wrong"


def test_a_contradiction_between_two_facts_is_named_by_either():
    sample = ready_set().case("19-figures-that-clash")
    hit = next(h for h in sample.contradictions if h.check == "strands_and_stitch")
    for piece in hit.pieces:
        attempt = perfect(sample)
        attempt.contradictions[0] = NamedContradiction(places=[piece.address])
        assert mark(sample, attempt).perfect
