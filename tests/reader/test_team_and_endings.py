"""Who operated and helped, told in one breath, and the last line that stands for a signature."""

import pytest
from reader_sentences import record_of

_BODY = "\n\nRing finger. FDP was completely divided in zone II and was repaired with 4-0 Prolene."


def elements(note: str) -> set[str]:
    return {place.field for place, _ in record_of(note).walk() if place.group == "elements"}


@pytest.mark.parametrize(
    "line",
    [
        "Surg ST6 plastics + SHO. GA.",
        "The operation was done by myself with the senior house officer.",
        "Cons. hands + ST4. GA.",
        "I operated on her under a block with one of our registrars.",
        "Consultant plus SHO. GA, tourniquet 250.",
    ],
)
def test_a_team_told_in_one_breath(line: str) -> None:
    assert {"surgeon", "assistant"} <= elements(line + _BODY)


@pytest.mark.parametrize(
    "line",
    [
        "GA with the anaesthetic registrar. Right hand.",
        "I discussed the wound with the consultant on the phone.",
        "Right hand. Repair with a two-strand core.",
    ],
)
def test_who_did_not_scrub_is_no_assistant(line: str) -> None:
    assert "assistant" not in elements(line + _BODY)


@pytest.mark.parametrize("last", ["EBL minimal. J.W., ST4", "Splint 6 weeks.\nPlastics registrar, 11 June 2031"])
def test_initials_or_a_grade_end_a_note(last: str) -> None:
    assert "signature" in elements("Repair of FDP" + _BODY + "\n\n" + last)


@pytest.mark.parametrize(
    "last", ["Clinic in 10 days. End of dictation.", "Splint 6 weeks.\nReview by the fellow in two weeks"]
)
def test_the_end_of_a_dictation_is_no_signature(last: str) -> None:
    assert "signature" not in elements("Repair of FDP" + _BODY + "\n\n" + last)


@pytest.mark.parametrize("value", ["[not entered]", "<none chosen>", "[blank]"])
def test_what_nobody_chose_shows_nothing(value: str) -> None:
    assert "implants" not in elements(f"Implants   {value}\nSpecimens   none" + _BODY)


@pytest.mark.parametrize(
    "line",
    [
        "Since the accident the tip has been limp since.",
        "He can't flex the DIP joint.",
        "Nil flexion of the ring finger.",
    ],
)
def test_a_finger_that_does_not_bend_is_the_indication(line: str) -> None:
    assert "indication" in elements(line + _BODY)


@pytest.mark.parametrize(
    "line",
    [
        "P. Hollinbrake, MD   6/9/29 2240",
        "Miss Farrowby",
        "E Delamere-Finch FRACS",
        "Dictated by R. Castlewood, D.O. Job # 00417",
        "/Ekholmsgard, specialist in hand surgery",
    ],
)
def test_a_name_on_the_last_line_signs(line: str) -> None:
    assert "signature" in elements(f"Operation note.{_BODY}\n\n{line}")


def test_a_bare_surname_signs_where_the_head_names_it() -> None:
    assert "signature" in elements(f"Surgeon: Mr Garrowby{_BODY}\n\nGarrowby")


@pytest.mark.parametrize("line", ["Home", "Dr Farrowby to review on Friday", "Jelonet", "Clinic Friday", "Garrowby"])
def test_other_last_lines_do_not_sign(line: str) -> None:
    assert "signature" not in elements(f"Operation note.{_BODY}\n\n{line}")


def test_a_note_cut_off_behind_a_label_is_read() -> None:
    assert "findings" in elements(f"{_BODY}\nSurg")
