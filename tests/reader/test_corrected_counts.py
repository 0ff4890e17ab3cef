"""Strand counts and sizes that a note puts right, and remarks on another patient's."""

import pytest
from reader_sentences import told

SEWN = "Ring finger. FDP completely divided and repaired with a six-strand core of 3-0 nylon.\n\nADDENDUM\n"


@pytest.mark.parametrize(
    "words",
    [
        "Strands should read four and not six.",
        "I wrote six strands; it was four.",
        "Not six strands but four.",
        "For six strands read four.",
        "The core was four strands, not six. The six-strand case was the patient before.",
        "It had four strands. Six strands were put into the previous patient.",
    ],
)
def test_the_count_put_right(words: str) -> None:
    assert told(SEWN + words, "strands") == {"ring FDP": {"strands": 4}}


@pytest.mark.parametrize("words", ["It had six strands in the end.", "Six strands were placed, not seen on the film."])
def test_a_count_repeated(words: str) -> None:
    assert told(SEWN + words, "strands") == {"ring FDP": {"strands": 6}}


@pytest.mark.parametrize(
    "words", ["The core stitch was 3-0 Prolene, not 2-0.", "Correction: the suture was 3-0, not 2-0."]
)
def test_the_size_of_a_pull_out_put_right(words: str) -> None:
    note = (
        "Ring finger. FDP avulsed. A 2-0 Prolene was drawn through the bone as a pull-out over a button.\n\nADDENDUM\n"
    )
    assert told(note + words, "size") == {"ring FDP": {"size": "3-0"}}


@pytest.mark.parametrize(
    "words", ["Reattached to bone with 2-0 Prolene.", "It was reinserted into the bone with 3-0 nylon."]
)
def test_sewn_to_bone_without_a_name(words: str) -> None:
    assert told(f"Ring finger. FDP avulsed. {words}", "treatment") == {"ring FDP": {"treatment": "reinserted"}}


@pytest.mark.parametrize(
    "words",
    ["1. The core is four-strand, not six as typed above. Stitch is an Adelaide.", "Core was 4 strands, not six."],
)
def test_a_correction_without_a_name_goes_to_who_had_the_old_count(words: str) -> None:
    note = (
        "Middle finger. FDP divided. FDS: ulnar slip divided. FDP core repair six-strand with 3-0 nylon. Ulnar slip of "
        f"FDS repaired with a single 5-0 Prolene figure-of-eight.\n\nADDENDUM\n{words}\n"
    )
    found = told(note, "strands")
    assert found["middle FDP"] == {"strands": 4}
    assert "strands" not in found.get("middle FDS ulnar", {})


@pytest.mark.parametrize(
    "words", ["I have not touched the palmaris", "the palmaris was there but I have never used the PL"]
)
def test_a_donor_left_alone_is_not_turned_to(words: str) -> None:
    note = (
        f"Small finger. FDP gone completely, it came together and {words}.\n\nSo repair is a six strand with 4-0 nylon."
    )
    found = told(note, "strands")
    assert found == {"small FDP": {"strands": 6}}


@pytest.mark.parametrize("words", ["Although a six-strand repair is favoured by many here, we were content with less."])
def test_what_many_favour_gives_no_strands(words: str) -> None:
    assert told(f"Ring finger. FDP divided and repaired with 4-0 nylon. {words}", "strands") == {}


@pytest.mark.parametrize("head", ["Prev", "Prev op"])
def test_an_earlier_operation_under_a_short_heading(head: str) -> None:
    note = f"R RF - FDP repair\n\n{head}: R MF FDP 2030, 2-strand, A4 gone.\n\nFDP 100 %. Core = 4 strands, 4-0 nylon."
    found = told(note, "strands")
    assert found == {"ring FDP": {"strands": 4}}
