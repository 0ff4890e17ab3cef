"""A finger looked at in passing, a log kept by the clock, and tendons told by others: 'ditto ring', 'same as index'."""

import pytest
from reader_sentences import each

from notereader.reader import read

INDEX = "Right index finger explored. The FDP was cut through in zone II. "


@pytest.mark.parametrize(
    "passing",
    [
        "Both tendons of the neighbouring middle finger were inspected and were intact.",
        "The FDP and FDS of the adjacent middle finger were seen and intact.",
        "The FDS was intact and so was the FDP of the middle finger.",
    ],
)
def test_a_whole_finger_beside_is_not_turned_to(passing: str) -> None:
    text = f"{INDEX}{passing}\n\nThe tendon was sewn with six strands of 4-0 Ethibond. A4 was intact."
    assert each(text, "strands") == {"index FDP": 6}
    assert each(text, "finding", group="pulleys") == {"index A4": "intact"}
    assert each(text, "extent")["middle FDP"] == "intact"


def test_a_finger_beside_that_was_cut_is_turned_to() -> None:
    text = f"{INDEX}In the adjacent middle finger the FDP was cut through.\n\nIt was sewn with four strands of 4-0 PDS."
    assert each(text, "strands") == {"middle FDP": 4}


@pytest.mark.parametrize("stop", ["  ", " - "])
def test_the_next_hour_of_a_log_ends_what_a_heading_began(stop: str) -> None:
    told = (
        "08:10|Surgeon: attending",
        "08:20|Diagnosis: left ring finger, FDP cut. Indication: cannot bend the tip",
        "08:31|Cefazolin given",
        "08:52|FDP divided completely. FDS intact",
        "09:05|A4 vented, 3 mm",
        "09:12|FDP: four strands of 4-0 nylon",
    )
    text = ".\n".join(line.replace("|", stop) for line in told) + ".\n"
    assert each(text, "extent") == {"ring FDP": "complete", "ring FDS": "intact"}
    assert each(text, "finding", group="pulleys") == {"ring A4": "vented"}
    assert each(text, "strands") == {"ring FDP": 4}


def test_one_time_of_day_makes_no_log() -> None:
    text = "Indication: he fell on a glass.\n10:30 hours: the FDP of the ring finger cut through, it is said.\n"
    assert each(text, "extent") == {}


@pytest.mark.parametrize(
    "like", ["FDP ditto ring", "FDP ditto the ring for core", "FDP - as FDP of ring", "FDP: as FDP of the ring finger"]
)
def test_as_the_tendon_of_another_finger(like: str) -> None:
    text = f"FDP of ring and middle cut through.\nRing: FDP 4 strands of 4-0 nylon.\nMiddle: {like}.\n"
    assert each(text, "strands") == {"ring FDP": 4, "middle FDP": 4}
    assert each(text, "size") == {"ring FDP": "4-0", "middle FDP": "4-0"}


def test_the_finger_behind_an_opening_ditto_is_the_one_spoken_of() -> None:
    text = "FDP of ring and small fingers cut through. Ring FDP 4 strands of 4-0. Ditto small FDP."
    assert each(text, "strands") == {"ring FDP": 4, "small FDP": 4}


@pytest.mark.parametrize("like", ["FDP - same as index", "FDP: as in the index", "FDP like the index"])
def test_a_cut_told_by_another_finger(like: str) -> None:
    text = f"INDEX FINGER\n- FDP completely divided\n- FDS intact\nMIDDLE FINGER\n- {like}\n"
    assert each(text, "extent") == {"index FDP": "complete", "index FDS": "intact", "middle FDP": "complete"}


@pytest.mark.parametrize(
    "manner", ["in similar manner", "in a similar manner with the same suture", "by the same method"]
)
def test_what_is_like_the_tendons_before_it_is_named_behind_them(manner: str) -> None:
    text = (
        "FDP and FDS of the index cut through. FDP of the index was repaired with a double modified Kessler of 3-0"
        f" Prolene, then FDS of the index was repaired {manner}."
    )
    assert each(text, "size") == {"index FDP": "3-0", "index FDS": "3-0"}


@pytest.mark.parametrize("aside", ["which I had marked just in case", "that had been prepared just in case"])
def test_just_in_case_puts_no_condition(aside: str) -> None:
    text = (
        f"FPL cut through, and no need to open the wrist, {aside}, both ends ragged, and four strands of 4-0 went in."
    )
    assert each(text, "ends") == {"thumb FPL": "ragged"}
    assert each(text, "strands") == {"thumb FPL": 4}


@pytest.mark.parametrize("gone", ["the first had torn out so we took it out", "it cut through and I took it out"])
def test_a_stitch_taken_out_takes_no_tendon_with_it(gone: str) -> None:
    text = f"FCU cut through. FCU got a modified Kessler and then a cruciate of 2-0, but {gone}."
    assert "excised" not in each(text, "treatment").values()


@pytest.mark.parametrize("broken", ["completely broken", "totally broken"])
def test_a_tendon_broken_is_cut_through(broken: str) -> None:
    assert each(f"In the ring finger the FDP was {broken}, FDS was intact.", "extent") == {
        "ring FDP": "complete",
        "ring FDS": "intact",
    }


@pytest.mark.parametrize(
    "words",
    ["I don't bother with an epitendinous stitch in these, and none was put in.", "No epitendinous stitch was put in."],
)
def test_what_the_surgeon_does_not_bother_with(words: str) -> None:
    assert each(f"{INDEX}It was sewn with four strands. {words}", "peripheral") == {"index FDP": "absent"}


@pytest.mark.parametrize(
    "thought", ["One thought to do an 8-strand suture and one renounced", "I thought to put eight strands in"]
)
def test_what_was_only_thought_of(thought: str) -> None:
    text = f"{INDEX}It was sutured by a double Tsuge with 4-0 nylon. {thought} because of the volume."
    assert each(text, "strands") == {"index FDP": 4}


def test_the_readings_prove_themselves() -> None:
    text = f"{INDEX}The FDP of the adjacent ring finger was intact. Middle FDP cut through, ditto ring."
    assert all(e.span and text[slice(*e.span)] == e.exact for _, f in read(text).walk() for e in f.evidence)


def test_what_is_sewn_like_another_keeps_its_own_cut() -> None:
    text = "Index: FDP cut through.\nRing: FDP 60 % cut.\nIndex FDP: 4 strands of 4-0 nylon.\nRing FDP as index FDP.\n"
    assert each(text, "extent") == {"index FDP": "complete", "ring FDP": "partial"}
    assert each(text, "strands") == {"index FDP": 4, "ring FDP": 4}


@pytest.mark.parametrize(
    "shut", ["A2 was intact and I did not open it", "We did not open A2", "I saw no need to open it"]
)
def test_a_pulley_left_closed_tells_of_no_gap(shut: str) -> None:
    assert each(f"{INDEX}It was sewn with four strands. {shut}.", "gap") == {}


def test_a_join_that_did_not_open_had_no_gap() -> None:
    assert each(f"{INDEX}It was sewn with four strands. The repair did not open.", "gap") == {"index FDP": "none"}


@pytest.mark.parametrize("cut", ["divided 6 mm from its insertion", "cut through, 8 mm from the insertion"])
def test_how_far_off_the_cut_lay_is_no_purchase(cut: str) -> None:
    assert each(f"Index FDP {cut}, the stump too short to hold a stitch. Sewn with four strands.", "purchase_mm") == {}


@pytest.mark.parametrize("pull", ["No pull on the tendon at the wrist was done.", "No pull was tried."])
def test_a_pull_that_was_not_made_is_no_word_of_tension(pull: str) -> None:
    assert each(f"{INDEX}It was sewn with four strands. {pull}", "tension") == {}


@pytest.mark.parametrize("wound", ["Small finger, small wound.", "Little finger, clean wound."])
def test_how_big_a_finger_is(wound: str) -> None:
    text = f"Procedure: repair of FDP, ring finger.\n\nFindings: {wound} FDP completely divided. FDS intact.\n"
    assert each(text, "extent") == {"ring FDP": "complete", "ring FDS": "intact"}


def test_a_finger_that_heads_its_findings() -> None:
    text = "Procedure: repair of FDP, ring finger.\n\nFindings: Small finger: FDP completely divided. FDS intact.\n"
    assert each(text, "extent") == {"small FDP": "complete", "small FDS": "intact"}


TWO = (
    "The FDP and FDS of the ring and middle fingers were completely divided. The FDP of both was repaired with four"
    " strands of 4-0 Prolene. "
)


@pytest.mark.parametrize("pulley", ["A2 did not open widely enough and was vented", "The sheath did not open easily"])
def test_a_pulley_that_did_not_open_is_no_join(pulley: str) -> None:
    assert each(f"{TWO}{pulley}.", "gap") == {}


@pytest.mark.parametrize(
    "told",
    ["No gap in the middle and a small gap of 1 mm in the ring", "In the middle, no gap; in the ring, a gap of 1 mm"],
)
def test_the_denial_of_one_gap_is_not_that_of_the_next(told: str) -> None:
    assert each(f"{TWO}{told}.", "gap") == {"middle FDP": "none", "ring FDP": "seen"}


def test_the_other_of_several_is_not_guessed() -> None:
    assert each(f"{TWO}The other took six strands.", "strands") == {"middle FDP": 4, "ring FDP": 4}


@pytest.mark.parametrize("told", ["The click was gone for a moment and came back", "It does not hang freely"])
def test_what_came_back_did_not_run_freely(told: str) -> None:
    assert "free" not in each(f"{TWO}{told}.", "glide").values()


@pytest.mark.parametrize("part", ["The wrist was not tense", "The forearm wasn't tense"])
def test_a_loose_wrist_is_no_loose_repair(part: str) -> None:
    assert each(f"{TWO}{part}.", "tension") == {}


@pytest.mark.parametrize(
    "told",
    [
        "The 1 mm gap was in the ring finger FDP and not in the middle, where there was none.",
        "The gap was in the ring; in the middle finger there was none.",
    ],
)
def test_no_gap_in_one_finger_closes_none_in_another(told: str) -> None:
    assert each(f"{TWO}{told}", "gap") == {"middle FDP": "none", "ring FDP": "seen"}


def test_a_gap_that_was_closed_is_gone() -> None:
    told = "In the ring a gap of 1 mm opened; after one more throw there was none."
    assert each(f"{TWO}{told}", "gap")["ring FDP"] == "none"


@pytest.mark.parametrize("space", ["   ", "  "])
def test_boxes_behind_pulleys_tick_the_pulley(space: str) -> None:
    text = f"Ring FDP repaired.\nPulleys: A1 [ ]  A2 [x] intact{space} A3 [ ]{space} A4 [x] excised\n"
    assert each(text, "finding", group="pulleys") == {"ring A2": "intact", "ring A4": "excised"}


def test_what_was_not_cut_back_is_not_whole() -> None:
    text = "Ring and small:\nFDS + FDP   compl   z III\nEnds cut back 3 mm both FDPs ( FDS not cut back )\n"
    assert "intact" not in each(text, "extent").values()


def test_a_report_in_questions_and_answers() -> None:
    told = (
        "When and who?\n  8 September 2033; attending.\nWhy operate?\n  He cannot bend the tip.\n"
        "What was found in the ring finger?\n  FDP cut completely, ends ragged. A2 intact.\n"
        "What was done?\n  Repaired: four strands, 3-0 Prolene.\n"
    )
    assert each(told, "extent") == {"ring FDP": "complete"}
    assert each(told, "strands") == {"ring FDP": 4}


def test_labels_in_braces() -> None:
    text = "{tendon_1}: FDS ring complete\n{tendons_intact}: FCR, FDP index\n{zone}: V\n{implants}: none\n"
    assert each(text, "extent") == {"FCR": "intact", "index FDP": "intact", "ring FDS": "complete"}


def test_answers_in_brackets_behind_dots() -> None:
    told = (("FINGER", "MIDDLE"), ("FDP", "complete"), ("FDS", "partial, 50 %"), ("Ends of FDP", "clean"))
    more = (("Core FDP", "cruciate, 4-0 nylon"), ("Purchase", "8 mm"), ("Peripheral", "running, 6-0 nylon"))
    text = "".join(f"{label} ....... [ {answer} ]\n" for label, answer in (*told, *more))
    assert each(text, "extent") == {"middle FDP": "complete", "middle FDS": "partial"}
    assert each(text, "peripheral") == {"middle FDP": "present"}


@pytest.mark.parametrize(
    "done",
    ["I thought about repairing but there was no room so I excised it", "I thought of sewing and then cut it out"],
)
def test_what_stands_before_the_one_who_acts_is_what_is_acted_on(done: str) -> None:
    text = (
        "small finger and ring finger both with profundus cut completely and in the small finger the superficialis"
        " was cut completely too\n\nso I did the ring profundus first with a four strand locked cruciate of 3-0"
        " Ethibond and then the small profundus I did the same as the ring except that I used 4-0 Ethibond and the"
        f" small superficialis {done}"
    )
    assert each(text, "strands") == {"ring FDP": 4, "small FDP": 4}
    assert each(text, "size") == {"ring FDP": "3-0", "small FDP": "4-0"}
