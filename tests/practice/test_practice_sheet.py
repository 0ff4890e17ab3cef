"""Answer lines: what a line means, what it saves, and what it says when it is not understood."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from practice_making import NOTE, RING_A2, RING_A4, RING_FDP, at, open_attempt, perfect

from notereader.casebook import EditRefused
from notereader.practice import ExerciseBook, PracticeFault, ready_set
from notereader.practice.naming import places_of
from notereader.practice.quotes import find_words
from notereader.practice.sheet import HELP, answer_lines, enter_line
from notereader.record import Address, Interval, Record, ValueRefused
from notereader.vocabulary import field_specs


@pytest.fixture
def attempt(tmp_path):
    return open_attempt(tmp_path, scope="whole")


@pytest.mark.parametrize(
    ("line", "place", "value"),
    [
        ('side: left "Left"', Address("operation", field="side"), "left"),
        ('operation: side: left "Left"', Address("operation", field="side"), "left"),
        ("injury date: 4 May 2041", Address("operation", field="injury_date"), "2041-05-04"),
        ('ring FDP: repaired "FDP was repaired"', RING_FDP.field_of("treatment"), "repaired"),
        ('ring FDP: complete "completely"', RING_FDP.field_of("extent"), "complete"),
        ('RF profundus core strands: four "four-strand"', RING_FDP.field_of("strands"), 4),
        ('FDP of the ring finger purchase: 1 cm "10 mm"', RING_FDP.field_of("purchase_mm"), Interval(low=10, high=10)),
        ("ring A2: intact", RING_A2.field_of("finding"), "intact"),
        ("ring A4 pulley length: 3 mm", RING_A4.field_of("extent_mm"), 3),
        ("small FDS radial slip done: left", Address("repairs", "small", "FDS", "radial", "treatment"), "left"),
        (
            "index ulnar digital nerve: contused",
            Address("injuries", "index", "digital nerve", "ulnar", "extent"),
            "contused",
        ),
        (
            "index UDN treatment: repaired",
            Address("injuries", "index", "digital nerve", "ulnar", "treatment"),
            "repaired",
        ),
        ("median nerve: intact", Address("injuries", None, "median nerve", None, "extent"), "intact"),
        ("FPL: repaired", Address("repairs", "thumb", "FPL", None, "treatment"), "repaired"),
        ("FCU: left", Address("repairs", None, "FCU", None, "treatment"), "left"),
        ("thumb oblique pulley: intact", Address("pulleys", "thumb", "oblique", None, "finding"), "intact"),
        ("flexor retinaculum: released", Address("pulleys", None, "flexor retinaculum", None, "finding"), "released"),
        ("wrist: 20 flexion", Address("aftercare", field="wrist_flexion_deg"), Interval(low=20, high=20)),
        ("weeks: 6/52", Address("aftercare", field="splint_weeks"), Interval(low=6, high=6)),
        ("surgeon: yes", Address("elements", field="surgeon"), True),
    ],
)
def test_a_line_saves_its_fact(attempt, line, place, value):
    said = enter_line(attempt, line)
    assert said.startswith("saved")
    assert attempt.record.fact(place).value == value


def test_the_words_are_found_whatever_their_capitals_and_line_breaks(attempt):
    enter_line(attempt, 'ring FDP strands: 4 "FOUR-STRAND   locked"')
    assert attempt.record.fact(RING_FDP.field_of("strands")).evidence[0].exact == "four-strand locked"


def test_words_that_stand_twice_are_said_to_and_can_be_chosen(attempt):
    assert "stand 2 times" in enter_line(attempt, 'ring FDP treatment: repaired "repaired with a"')
    enter_line(attempt, 'ring FDP treatment: repaired "repaired with a" @2')
    span = attempt.record.fact(RING_FDP.field_of("treatment")).evidence[0].span
    assert span == at("repaired with a", 2)


def test_both_values_of_a_contradiction(attempt):
    enter_line(attempt, 'ring FDP strands: 4 "four-strand" or 6 "six-strand"')
    fact = attempt.record.fact(RING_FDP.field_of("strands"))
    assert (fact.value, [r.value for r in fact.rivals]) == (4, [6])
    assert fact.rivals[0].evidence[0].exact == "six-strand"


def test_a_bundle_is_a_nerve_and_an_artery_and_both_are_radial_and_ulnar(attempt):
    enter_line(attempt, "ring radial bundle: intact")
    assert len(attempt.record.injuries) == 2
    said = enter_line(attempt, "ring both bundles: intact")
    assert said.count("saved") == 4
    assert {(i.structure, i.side) for i in attempt.record.injuries} == {
        (structure, side) for structure in ("digital nerve", "digital artery") for side in ("radial", "ulnar")
    }
    enter_line(attempt, "index both digital nerves: intact")
    assert sum(i.digit == "index" for i in attempt.record.injuries) == 2


def test_silences_one_by_one_and_for_all_that_is_open(attempt):
    enter_line(attempt, "ring FDP: repaired")
    enter_line(attempt, "ring FDP extent: complete")
    enter_line(attempt, "ring FDP bulk: silent")
    assert attempt.record.fact(RING_FDP.field_of("bulk")).basis == "silent"
    said = enter_line(attempt, "ring FDP: others silent")
    assert "core strands" in said
    assert attempt.record.fact(RING_FDP.field_of("treatment")).value == "repaired"
    enter_line(attempt, "ring pulleys: others silent")
    assert attempt.record.fact(RING_A2.field_of("finding")).basis == "silent"
    enter_line(attempt, "aftercare: others silent")
    assert attempt.record.fact(Address("aftercare", field="programme")).basis == "silent"
    enter_line(attempt, "operation: others silent")
    assert attempt.record.fact(Address("operation", field="date")).basis == "silent"
    assert "Nothing was changed" in enter_line(attempt, "operation: others silent")


def test_the_note_is_never_asked_what_is_open(attempt):
    """'others silent' follows from what the student entered: of a tendon said to be intact nothing more is needed."""
    enter_line(attempt, "ring FDS extent: intact")
    assert "Nothing was changed" in enter_line(attempt, "ring FDS extent: others silent")


def test_contradictions_questions_and_taking_back(attempt):
    enter_line(attempt, "ring FDP: repaired")
    enter_line(attempt, "contradiction: ring FDP strands; ring FDP stitch")
    assert len(attempt.attempt.contradictions[0].places) == 2
    enter_line(attempt, "questions: gap; ring A3; programme")
    assert [Address.parse(p).field for p in attempt.attempt.questions] == ["gap", "finding", "programme"]
    with pytest.raises(PracticeFault, match="3 questions at most"):
        enter_line(attempt, "questions: gap; bulk; test; ends")
    enter_line(attempt, "forget contradiction 1")
    assert attempt.attempt.contradictions == []
    enter_line(attempt, "forget ring FDP")
    assert attempt.record.fact(RING_FDP.field_of("treatment")) is None
    with pytest.raises(PracticeFault, match="Nothing was entered"):
        enter_line(attempt, "forget ring FDP")


@pytest.mark.parametrize(
    ("line", "words"),
    [
        ("what?", "is no answer"),
        ("side:", "is no answer"),
        ("ring FDP strnds: 4", "Did you mean strands"),
        ("strands: 4", "whose"),
        ("A2: intact", "which finger"),
        ("ring: 4", "names no fact"),
        ("ring A2 strands: 4", "no such field"),
        ('ring FDP strands: 4 "eight-strand"', "do not stand in the note"),
        ('ring FDP strands: 4 "four-strand" @9', "no place 9"),
        ('ring FDP strands: 4 "four-strand', "quotation mark is missing"),
        ('ring FDP strands: 4 ""', "No words"),
        ("ring FDP peripheral: running", "It would fit: ring FDP peripheral pattern"),
        ("ring FDP gap: 2 mm", "It would fit: ring FDP gap mm"),
    ],
)
def test_a_line_that_is_not_understood_says_why_and_saves_nothing(attempt, line, words):
    before = attempt.path.read_bytes()
    with pytest.raises((PracticeFault, ValueRefused), match=words):
        enter_line(attempt, line)
    assert attempt.path.read_bytes() == before


def test_a_field_without_a_name_goes_to_the_only_tendon_that_was_hurt(attempt):
    enter_line(attempt, "ring FDP: complete")
    enter_line(attempt, "ring FDS: intact")
    enter_line(attempt, "glide: free")
    assert attempt.record.fact(RING_FDP.field_of("glide")).value == "free"


@pytest.mark.parametrize("case", ready_set().cases, ids=lambda case: case.id)
def test_what_is_shown_as_answered_can_be_typed_again(case, tmp_path):
    """Every key as answer lines, entered anew, is the same record: values, rivals, silences and places of words."""
    first = ExerciseBook(tmp_path / "a").start(case, "whole")
    whole = perfect(case)
    first._step(lambda attempt: attempt.__dict__.update(record=whole.record, contradictions=whole.contradictions))
    second = ExerciseBook(tmp_path / "b").start(case, "whole")
    for line in answer_lines(first):
        enter_line(second, line)
    assert list(answer_lines(second)) == list(answer_lines(first))
    for place, fact in first.record.walk():
        other = second.record.fact(place)
        assert other is not None, place.text()
        assert (other.value, [r.value for r in other.rivals]) == (fact.value, [r.value for r in fact.rivals])
        assert [_bare(case.text, e.span) for e in other.evidence] == [_bare(case.text, e.span) for e in fact.evidence]


def _bare(text, span):
    """Return a place without the spaces and line ends around its words, which no one types."""
    words = text[span[0] : span[1]]
    start = span[0] + len(words) - len(words.lstrip())
    return start, start + len(words.strip())


def test_every_field_can_be_called_by_its_name_and_by_its_label():
    entries = {"repairs": "ring FDP", "pulleys": "ring A2", "injuries": "ring radial digital nerve"}
    for group, specs in field_specs().items():
        for name, spec in specs.items():
            for called in (name.replace("_", " "), spec.label):
                place = places_of(f"{entries.get(group, '')} {called}", Record())[0]
                assert (place.group, place.field) == (group, name), called


def test_the_help_shows_only_lines_that_work(tmp_path):
    """Every example of the help is understood on the note it is taken from, or at least up to its words."""
    case = ready_set().case("02-terse-ring")
    attempt = ExerciseBook(tmp_path).start(case)
    for line in HELP.splitlines():
        example = line.split("   ")[0].strip() if line.startswith("  ") else ""
        if ":" in example:
            try:
                enter_line(attempt, example)
            except PracticeFault as fault:
                assert "do not stand in the note" in str(fault), (example, fault)


@settings(max_examples=300, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(
    st.text(alphabet=st.characters(), max_size=40),
    st.sampled_from(["", "ring FDP strands: ", "questions: ", "forget "]),
)
def test_any_line_is_saved_or_refused_in_words(attempt, text, start):
    try:
        assert enter_line(attempt, start + text)
    except (PracticeFault, ValueRefused, EditRefused) as fault:
        assert str(fault)


def test_words_are_found_by_number():
    assert find_words(NOTE, "finger").places == 2
    with pytest.raises(PracticeFault, match="there is no place 0"):
        find_words(NOTE, "finger", 0)
