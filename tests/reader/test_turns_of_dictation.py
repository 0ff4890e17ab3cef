"""Corrections of a zone, likenesses, musings about a pulley, asides between a tendon and its state."""

import pytest
from reader_sentences import each, told

CUT = "Left index finger. FDP cut through, repaired with 3-0 nylon. "


@pytest.mark.parametrize(
    ("words", "zone"),
    [
        ("that is zone two, correction, zone one B", "IB"),
        ("in zone three, no, sorry, zone two", "II"),
    ],
)
def test_a_zone_put_right(words: str, zone: str) -> None:
    assert each(f"Right middle finger. The FDP was cut right through, {words}.", "zone") == {"middle FDP": zone}


@pytest.mark.parametrize(
    "words",
    [
        "Ring - FDP right through like the middle, FDS only nicked, about a third of the width.",
        "Ring: FDP through, like the middle, FDS nicked, a third of its width.",
    ],
)
def test_a_finger_likened_to_another(words: str) -> None:
    shown = told("Right hand. Middle - FDP and FDS right through. " + words, "extent", "extent_percent")
    assert shown["ring FDP"] == {"extent": "complete"}
    assert shown["ring FDS"] == {"extent": "partial", "extent_percent": 33}


@pytest.mark.parametrize(
    "words",
    [
        "radial slip unhurt so the nick is of the ulnar slip alone",
        "radial slip whole, so the nick was in the ulnar slip",
    ],
)
def test_a_nick_is_of_the_slip_behind_it(words: str) -> None:
    shown = each(f"Ring finger: FDS only nicked, {words}.", "extent")
    assert shown == {"ring FDS radial": "intact", "ring FDS ulnar": "partial"}


@pytest.mark.parametrize(
    ("words", "finding"),
    [
        ("I did think of taking out A4, and instead vented half of it.", "vented"),
        ("I thought of excising A4 but vented its proximal half instead.", "vented"),
        ("I thought of excising A4 and kept it.", "intact"),
    ],
)
def test_a_pulley_thought_of_and_done_otherwise(words: str, finding: str) -> None:
    assert each(CUT + words, "finding", group="pulleys") == {"index A4": finding}


@pytest.mark.parametrize("words", ["I thought of venting A4.", "Venting of A4 was considered, it was not needed."])
def test_a_pulley_only_thought_of(words: str) -> None:
    assert each(CUT + words, "finding", group="pulleys") == {}


@pytest.mark.parametrize("words", ["A4 was seen to be intact.", "The A4 pulley was found to be whole."])
def test_seen_to_be_whole(words: str) -> None:
    assert each(CUT + words, "finding", group="pulleys") == {"index A4": "intact"}


@pytest.mark.parametrize("words", ["A4 was to be kept whole.", "A4, to be preserved at all costs, went."])
def test_meant_to_be_whole(words: str) -> None:
    assert each(CUT + words, "finding", group="pulleys") == {}


@pytest.mark.parametrize("aside", ["lying under the edge of the wound", "lying deeper"])
def test_where_a_tendon_lies_parts_it_from_nothing(aside: str) -> None:
    note = f"Left wrist, zone V. FCU divided. The profundus to the ring and small fingers, {aside}, were intact."
    assert each(note, "extent") == {"FCU": "complete", "ring FDP": "intact", "small FDP": "intact"}


@pytest.mark.parametrize("words", ["gap at FDP - none seen", "gap in FDP: none"])
def test_a_gap_asked_of_a_tendon(words: str) -> None:
    assert each(f"{CUT}{words}.", "gap") == {"index FDP": "none"}


@pytest.mark.parametrize(
    "words",
    [
        "(a second 4-0 cruciate was considered and not used: bulk)",
        "(a peripheral of 5-0 was thought of and left out: too bulky)",
    ],
)
def test_why_something_was_not_used(words: str) -> None:
    assert each(f"Left index finger. FDP cut through, repaired with 3-0 nylon {words}.", "bulk") == {}


@pytest.mark.parametrize("words", ["I hesitated over sewing tendon after a bite.", "We hesitated to repair the FDS."])
def test_a_surgeon_that_hesitates(words: str) -> None:
    assert each(CUT + words, "glide") == {}


@pytest.mark.parametrize(
    "words", ["made at the first stage, A2 and A4, are both intact", "built at the first stage were intact: A2 and A4"]
)
def test_pulleys_of_the_first_stage_found_today(words: str) -> None:
    note = f"Second stage. Right index: rod exchanged for a graft. Pulleys {words}."
    shown = each(note, "finding", group="pulleys")
    assert set(shown.values()) <= {"intact"}


@pytest.mark.parametrize("written", ["completly", "completley", "compleetly"])
def test_completely_misspelt(written: str) -> None:
    assert each(f"Right ring finger. FDP found cut {written}.", "extent") == {"ring FDP": "complete"}


@pytest.mark.parametrize("between", ["and", "+"])
def test_a_list_that_turns_to_the_next_finger(between: str) -> None:
    title = f"Surgery: FDP repair RF, FDP {between} FDS repair LF (little finger)."
    note = f"{title}\nFindings: FDP of RF cut, FDS of RF intact."
    assert "ring FDS" not in each(note, "treatment")


@pytest.mark.parametrize("words", ["cut clean across in the palm", "divided clean across"])
def test_ends_cut_clean_across(words: str) -> None:
    assert each(f"Right ring finger. FDP {words}, repaired with 3-0 nylon.", "ends") == {"ring FDP": "clean"}


@pytest.mark.parametrize(
    ("words", "extent"), [("section total of the FCR", "complete"), ("the FCR was cut totally", "complete")]
)
def test_translated_words_of_a_cut(words: str, extent: str) -> None:
    assert each(f"Left wrist, zone V: {words}.", "extent") == {"FCR": extent}


@pytest.mark.parametrize(
    "title", ["1st op (9/5/2031): FDP zone II, two-strand Kessler 4-0.", "First op: two-strand Kessler of 4-0."]
)
def test_the_first_operation_is_history(title: str) -> None:
    note = f"30/5/2031 OT note, re-rupture L ring\n{title}\nToday: FDP fully apart. Six-strand Savage, 3-0 Ticron."
    assert told(note, "strands", "size") == {"ring FDP": {"strands": 6, "size": "3-0"}}
    assert each(note, "date", group="operation") == {"": "2031-05-30"}


@pytest.mark.parametrize(
    "words", ["Not divided: a partial cut, two thirds of the width.", "Not divided but partially cut."]
)
def test_denied_and_cut_in_part_behind_a_label(words: str) -> None:
    assert each(f"LITTLE FDP. {words} Core stitch a Tajima, 4-0 Ethibond.", "extent") == {"small FDP": "partial"}


@pytest.mark.parametrize("aside", ["which the resident proposed to open", "which the SHO had wanted to vent"])
def test_what_somebody_proposed_in_an_aside(aside: str) -> None:
    assert each(f"{CUT}A4, {aside}, was kept whole.", "finding", group="pulleys") == {"index A4": "intact"}


def test_an_aside_on_a_hope_hides_no_deed() -> None:
    assert each(f"{CUT}A4, which I had hoped to keep, was vented.", "finding", group="pulleys") == {
        "index A4": "vented"
    }


@pytest.mark.parametrize(
    ("words", "side"),
    [
        ("Indication: a saw kicked back and caught the right hand's palm two hours earlier.", "right"),
        ("Indication: glass, left hand, an hour ago.", "left"),
    ],
)
def test_the_side_of_a_hurt_some_hours_earlier(words: str, side: str) -> None:
    assert each(f"{words}\nFindings: FDS middle cut.", "side", group="operation") == {"": side}


@pytest.mark.parametrize("words", ["Tenodesis by moving the wrist", "Tenodesis with the wrist moved passively"])
def test_tenodesis_by_the_wrist_fixes_nothing(words: str) -> None:
    note = f"Left middle finger. FDP cut, repaired with 4-0 nylon. {words} showed no gap in the middle FDP."
    assert each(note, "treatment") == {"middle FDP": "repaired"}
