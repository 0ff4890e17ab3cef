"""Telegraphic notes: counts behind a tendon, shares with plus signs, statements parted by semicolons and lines."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "text",
    [
        "Index - FDP cut through; FDP 4 str 4/0 nylon.",
        "Index: FDP cut through. FDP 4 stranded repair with 4-0 nylon.",
        "Index. FDP cut through. FDP 4 core 4-0 nylon.",
    ],
)
def test_a_count_behind_a_tendon_is_no_finger(text: str) -> None:
    assert set(told(text)) == {"index FDP"}
    assert each(text, "size") == {"index FDP": "4-0"}


def test_a_number_behind_a_tendon_is_a_finger() -> None:
    assert each("FDP 4 cut through, repaired with 4-0 nylon.", "size") == {"ring FDP": "4-0"}


@pytest.mark.parametrize("joint", ["+", "&", "and"])
def test_a_share_before_a_whole_tendon(joint: str) -> None:
    assert each(f"Ring: FDP 70% {joint} FDS whole.", "extent") == {"ring FDP": "partial", "ring FDS": "intact"}


SEWN = "Ring: FDP 100% + FDS 100%; FDP 4-strand 3-0 nylon, 6/0 running; FDS left; "


@pytest.mark.parametrize(
    ("text", "field", "value"),
    [
        ("A2 ok; no gap", "gap", "none"),
        ("A2 ok; gap 1 mm", "gap", "seen"),
        ("A2 ok; free run", "glide", "free"),
        ("A2 + A4 kept; catches at A2", "glide", "catching"),
    ],
)
def test_a_statement_of_its_own_is_of_the_deep_flexor(text: str, field: str, value: str) -> None:
    assert each(SEWN + text, field) == {"ring FDP": value}


@pytest.mark.parametrize("text", ["A4 excised, A2 ok; gap 1 mm passive", "A2 ok."])
def test_a_running_suture_is_no_running_tendon(text: str) -> None:
    assert each(SEWN + text, "glide") == {}


def test_the_width_of_a_gap_is_not_that_of_a_vent() -> None:
    assert each(SEWN + "A4 vented 3 mm; gap 1 mm passive", "gap_mm") == {"ring FDP": 1}


@pytest.mark.parametrize("answer", ["no epi", "epi nil"])
def test_no_peripheral_suture_denies_nothing_on_the_next_line(answer: str) -> None:
    note = f"Small finger: FDP cut through\nFDP repair 4-0 nylon 4 strands, {answer}\n"
    assert each(note + "gap 1 mm passive", "gap") == {"small FDP": "seen"}
    assert each(note + "catches at A2", "glide") == {"small FDP": "catching"}


def test_a_line_that_opens_on_a_finger_is_a_new_statement() -> None:
    note = (
        "Index - FDP divided & FDS ok; FDP 4 strands 3-0 nylon; catches at A2\n"
        "small finger - FDP divided & FDS ok; FDP 2 strands 4-0 nylon"
    )
    assert each(note, "strands") == {"index FDP": 4, "small FDP": 2}


def test_a_form_left_blank_repairs_nothing() -> None:
    note = (
        "Carpal tunnel decompression\nTendon injury     site: ____    repair: ____    strands: ____    suture: ____\n"
        "Small finger has an old profundus rupture: left as it is.\n"
    )
    assert each(note, "treatment").get("small FDP") != "repaired"


@pytest.mark.parametrize("choice", ["Y / N", "yes / no"])
def test_a_choice_not_made_answers_nothing(choice: str) -> None:
    note = (
        "FDP           [x] complete   [ ] partial    [ ] intact\n  core        stitch: Tajima    suture: 4/0 Prolene\n"
        f"Pulleys       A2 preserved   A3 cut by the glass, not repaired\n"
        f"FDP gliding   free once A4 vented       Gap  {choice}\n"
    )
    assert "left" not in each(f"Digit: middle\n{note}", "treatment").values()


def test_a_new_statement_ends_a_denial() -> None:
    assert each("Thumb FPL repaired. There was no gap it was a little bulky under the A1 pulley.", "bulk") == {
        "thumb FPL": "present"
    }


def test_a_slip_too_fat_beside_the_other_tendon() -> None:
    text = "Ring finger. FDP completely divided and repaired. FDS ulnar slip too fat under A2 with FDP - excised."
    assert each(text, "treatment") == {"ring FDP": "repaired", "ring FDS ulnar": "excised"}


def test_tight_and_not_catching_is_restricted() -> None:
    text = "Ring FDP repaired. On a passive arc the profundus rode a bit tight under A2, not catching."
    assert each(text, "glide") == {"ring FDP": "restricted"}
