"""Progress over time, the next case, and the return of what was missed."""

from datetime import date, timedelta

import pytest
from practice_making import RING_FDP, changed, handed_in, made_case, perfect

from notereader.practice import Case, due_on, next_case, progress_of, ready_set, returns
from notereader.practice.choosing import coverage, level_of
from notereader.practice.words import tables

CASE = made_case()
SAMPLES = ready_set().cases
SIZE = RING_FDP.field_of("size")
FIRST = date(2041, 6, 1)


def good(case, days=0):
    return handed_in(case, perfect(case, "therapy"), days)


def bad_core(case, days=0):
    """The perfect attempt with every fact of the core suture left out."""
    attempt = perfect(case, "therapy")
    for place, _ in list(attempt.record.walk()):
        if place.group == "repairs" and place.field in ("strands", "stitch", "size", "material", "looped"):
            attempt.record.drop(place)
    return handed_in(case, attempt, days)


def kind(progress, key):
    return next(k for k in progress.kinds if k.key == key)


def test_without_any_case_nothing_is_known():
    progress = progress_of([])
    assert progress.cases == 0
    assert all((k.middle, k.low, k.high) == (None, 0.0, 1.0) for k in progress.kinds)
    assert next_case(SAMPLES, []).case.difficulty == 1


def test_few_cases_leave_a_wide_range_and_more_narrow_it():
    widths = []
    for count in (1, 3, 8):
        core = kind(progress_of([good(SAMPLES[n], n) for n in range(count)]), "core")
        widths.append(core.high - core.low)
        assert core.middle == 1.0
        assert core.low < 1.0
    assert widths == sorted(widths, reverse=True)
    assert kind(progress_of([good(CASE)]), "done").unsure


def test_later_cases_count_more():
    rising = kind(progress_of([bad_core(SAMPLES[0], 0), *(good(SAMPLES[n], n) for n in (1, 2, 3))]), "core")
    falling = kind(progress_of([*(good(SAMPLES[n], n) for n in (1, 2, 3)), bad_core(SAMPLES[0], 9)]), "core")
    assert rising.right == falling.right and rising.trials == falling.trials
    assert rising.middle > 0.5 > falling.middle - 0.3
    assert rising.middle > falling.middle


def test_the_half_life_is_as_the_table_says():
    """A case four cases back weighs half of the newest: 0 of 4 then, 4 of 4 now, nothing of the kind between."""
    assert tables().progress.half_life_cases == 4
    nothing = next(case for case in SAMPLES if not coverage(case)["core"])
    line = [bad_core(CASE, 0), *(good(nothing, d) for d in (1, 2, 3)), good(CASE, 4)]
    # Cases without a fact of the kind do not age the others: the newest weighs 1, the older one 2 ** -0.25.
    expected = 1 / (1 + 2**-0.25)
    assert kind(progress_of(line), "core").middle == pytest.approx(expected)


def test_the_weakest_kind_comes_first_and_points_stand_in_their_order():
    progress = progress_of([bad_core(SAMPLES[0], 5), good(SAMPLES[1], 2)])
    assert progress.kinds[0].key == "core"
    points = kind(progress, "core").points
    assert [(p.number, p.case) for p in points] == [(1, SAMPLES[1].id), (2, SAMPLES[0].id)]
    assert points[1].right == 0


def test_the_next_case_is_never_one_that_was_taken_while_another_is_left():
    done = []
    for day in range(len(SAMPLES)):
        chosen = next_case(SAMPLES, done)
        assert not chosen.again
        assert chosen.case.sha256 not in {m.sha256 for m in done}
        done.append(good(chosen.case, day))
    assert {m.sha256 for m in done} == {case.sha256 for case in SAMPLES}
    last = next_case(SAMPLES, done)
    assert last.again
    assert last.case.sha256 == done[0].sha256


def test_difficulty_rises_at_most_one_step_at_a_time():
    done, hardest = [], 0
    for day in range(len(SAMPLES)):
        case = next_case(SAMPLES, done).case
        assert case.difficulty <= hardest + 1
        hardest = max(hardest, case.difficulty)
        done.append(good(case, day))


def test_the_next_case_exercises_what_goes_worst():
    """With two cases alike but for what they hold, the one with the weak kind is chosen."""
    with_core = _only(
        lambda place: place.group == "repairs" and place.field in ("strands", "size", "material", "stitch")
    )
    with_pulleys = _only(lambda place: place.group == "pulleys")
    weak_core = [bad_core(case, n) for n, case in enumerate(SAMPLES[:3])]
    assert next_case([with_core, with_pulleys], weak_core).case.id == with_core.id
    weak_pulleys = []
    for n, case in enumerate(SAMPLES[:3]):
        attempt = perfect(case, "therapy")
        for place, _ in list(attempt.record.walk()):
            if place.group == "pulleys":
                attempt.record.drop(place)
        weak_pulleys.append(handed_in(case, attempt, n))
    assert next_case([with_core, with_pulleys], weak_pulleys).case.id == with_pulleys.id


def test_the_reason_tells_nothing_of_what_is_in_the_case():
    chosen = next_case(SAMPLES, [bad_core(SAMPLES[0])])
    assert "core suture" in chosen.reason
    assert chosen.case.id not in chosen.reason
    assert "to begin with" in next_case(SAMPLES, []).reason
    assert "nothing went wrong" in next_case(SAMPLES, [good(SAMPLES[0])]).reason


def test_cases_without_keys_are_not_chosen():
    assert next_case([CASE.without_key()], []) is None


def test_level_rises_with_what_is_sure():
    assert level_of(progress_of([])) == 1
    one, five = (level_of(progress_of([good(SAMPLES[n], n) for n in range(count)])) for count in (1, 5))
    assert 1 < one < five <= 5


def test_a_missed_fact_comes_back_ever_later_and_is_learnt_in_the_end():
    steps = tables().progress.return_days
    line = [handed_in(CASE, changed(CASE, SIZE, None, "therapy"), 0)]
    day = 0
    for step, days in enumerate(steps):
        (item,) = returns(line)
        day += days
        assert item.due == FIRST + timedelta(days=day)
        assert due_on(line, item.due - timedelta(days=1)) == []
        assert [i.address for i in due_on(line, item.due)] == [SIZE.text()]
        assert item.missed == 1
        attempt = perfect(CASE, "again")
        attempt.asked = [SIZE.text()]
        attempt.id = f"again-{step}"
        line.append(handed_in(CASE, attempt, day))
    assert returns(line) == []


def test_missed_again_starts_from_the_first_step():
    line = [handed_in(CASE, changed(CASE, SIZE, None, "therapy"), 0), good(CASE, 1)]
    assert returns(line)[0].due == FIRST + timedelta(days=1 + tables().progress.return_days[1])
    line.append(handed_in(CASE, changed(CASE, SIZE, None, "therapy"), 4))
    (item,) = returns(line)
    assert item.due == FIRST + timedelta(days=4 + tables().progress.return_days[0])
    assert item.missed == 2
    assert item.words == "ring FDP: core suture size"


def test_repeats_of_single_facts_do_not_count_as_progress():
    attempt = perfect(CASE, "again")
    attempt.asked = [SIZE.text()]
    assert progress_of([handed_in(CASE, attempt)]).cases == 0


def _only(wanted):
    record = CASE.answers.model_copy(deep=True)
    for place, fact_there in list(record.walk()):
        if not wanted(place) or not fact_there.live:
            record.drop(place)
    assert any(True for _ in record.walk())
    text = CASE.text + str(len([*record.walk()]))
    record.note.text = None
    name = "-".join(sorted({place.group for place, _ in record.walk()}))
    return Case(id=name, text=text, difficulty=2, key=record)


def test_coverage_counts_silences_and_contradictions_apart():
    held = coverage(CASE)
    assert held["contradictions"] == 1
    assert held["silence"] == sum(f.basis == "silent" for _, f in CASE.answers.walk())
    assert held["core"] == 4
