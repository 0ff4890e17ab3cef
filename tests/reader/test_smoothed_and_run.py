"""How a tendon ran that was only smoothed, and a glide told beside a finger, a hand or a gap."""

import pytest
from reader_sentences import each, told

_TWO = "Left index and ring fingers. Index FDP 30 % cut, zone II, its flap trimmed, no suture. "
_SEWN = "Ring FDP 80 % cut, repaired with a four-strand modified Kessler, 3-0 Ticron. "
_HEAD = "Left ring finger, zone II. FDP completely divided, repaired with a four-strand 3-0 Ticron core. "


@pytest.mark.parametrize(
    "words",
    [
        "He bent and straightened the finger himself and there was no click. ",
        "On asking him to make a fist nothing caught. ",
    ],
)
def test_a_smoothed_tendon_ran(words: str) -> None:
    assert told(_TWO + words + _SEWN, "glide", "test") == {"index FDP": {"test": "active", "glide": "free"}}


def test_a_smoothed_tendon_named_by_its_finger() -> None:
    note = (
        _TWO + _SEWN + "Made a fist for us. Index caught at A3, so I opened that, after which no catching. Ring free."
    )
    assert each(note, "glide") == {"index FDP": "free", "ring FDP": "free"}


def test_said_of_all_is_of_the_sewn() -> None:
    note = _TWO + _SEWN + "Both fingers were moved passively and no gap was seen."
    assert each(note, "gap") == {"ring FDP": "none"}


def test_what_it_did_before_it_was_smoothed() -> None:
    note = "Left index finger. FDP 30 % cut, a beak that hooked on A2 each time. The beak was trimmed away, no suture."
    assert each(note, "glide") == {}


@pytest.mark.parametrize(
    "words",
    [
        "When I took the finger through its range by hand it ran freely and did not gap.",
        "I bent the finger for him and the tendon stayed put and moved freely.",
        "The ring finger repair showed no gap and moved freely.",
        "I ranged the finger passively and it slid nice under A2.",
        "On passive motion the FDP passes A4 and A2 easy.",
        "When the tip was straightened everything slid nicely and no gap was seen.",
        "Passive bend: does not snag.",
        "Passive: the FDP is not catching.",
        "Passive range: smooth under A2, no gap.",
        "By traction in the wound the FDP ran freely.",
    ],
)
def test_ran_freely(words: str) -> None:
    assert each(_HEAD + words, "glide") == {"ring FDP": "free"}


@pytest.mark.parametrize(
    "words",
    [
        "The ring finger moved freely.",
        "By hand the finger moved freely.",
        "Everything went smoothly.",
        "The needle ran freely through the core.",
    ],
)
def test_no_word_of_the_tendon(words: str) -> None:
    assert each(_HEAD + words, "glide") == {}


@pytest.mark.parametrize(
    "words",
    [
        "On passive motion it brushed a little on the A2 pulley.",
        "Passive bend: a bit catchy at A2, accepted.",
        "Moved passively, it was noted to hang up slightly at A2.",
    ],
)
def test_brushed(words: str) -> None:
    assert each(_HEAD + words, "glide") == {"ring FDP": "catching"}


def test_a_narrative_under_procedure() -> None:
    note = "Left ring finger. FDP 60 % cut.\n\nPROCEDURE:\nFDP repaired, two-strand 4-0. Passively it ran fine.\n"
    assert each(note, "glide") == {"ring FDP": "free"}


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("Third fist: free, no gap.", "active"),
        ("Fingertip brought down by pulling in the palm. No gap.", "traction"),
        ("Wrist down, wrist up: no gap.", "passive"),
        ("Pulled the wrist back and forward, no gaps seen.", "passive"),
    ],
)
def test_tested_how(words: str, expected: str) -> None:
    assert each(_HEAD + words, "test") == {"ring FDP": expected}


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("Gap on passive stretch [ ] yes [x] no", "none"),
        ("Gap on pull ( ) yes (x) none", "none"),
        ("Gap on passive stretch [x] yes [ ] no", "seen"),
        ("Gap (mm) ............... 0", "none"),
        ("Gap (mm): nil", "none"),
        ("Gap (mm) ............... 2", "seen"),
        ("Gap when the wrist was brought to neutral: none in either repair", "none"),
    ],
)
def test_gap_of_a_form(words: str, expected: str) -> None:
    assert each(_HEAD + "\n\n" + words + "\n", "gap") == {"ring FDP": expected}


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("A 1 mm gap showed on the deep side; after two more bites I could no longer see one.", "none"),
        ("Passively a gap of 1 mm opened. Two more bites; pulled again: shut.", "none"),
        ("Passively a gap of 1 mm was seen and left. The nerve could no longer be seen.", "seen"),
        ("Passively a gap of 1 mm was seen and left. The artery bled again: closed with a clip.", "seen"),
    ],
)
def test_gap_closed_at_the_end(words: str, expected: str) -> None:
    assert each(_HEAD + words, "gap") == {"ring FDP": expected}


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("I would not call the repair bulky.", "none"),
        ("I would not describe it as bulky.", "none"),
        ("The repair ran past A2 without catching and is slim enough.", "none"),
        ("I will not pretend that it is slim.", "present"),
        ("The site was a little plump.", "present"),
        ("No gap, bit fat but passes.", "present"),
    ],
)
def test_bulk_judged(words: str, expected: str) -> None:
    assert each(_HEAD + words, "bulk") == {"ring FDP": expected}


@pytest.mark.parametrize("words", ["I would not use a bulky dressing.", "Six strands would have been rather thick."])
def test_bulk_of_nothing_sewn(words: str) -> None:
    assert each(_HEAD + words, "bulk") == {}


@pytest.mark.parametrize(
    "words",
    [
        "After resection of the flap the tendon is sliding free.",
        "The flap was resected and the tendon glides freely.",
        "After excision of the loose tag the tendon runs free.",
    ],
)
def test_a_flap_taken_off_is_a_tendon_trimmed(words: str) -> None:
    found = told(f"Right middle FDP 40% cut, its flap catches. {words}", "treatment", "glide")
    assert found == {"middle FDP": {"treatment": "trimmed", "glide": "free"}}


def test_a_tendon_taken_out_is_not_trimmed() -> None:
    text = "Right middle FDP sewn, no flap. FDS: both slips cut, excision of the tendon."
    assert told(text, "treatment")["middle FDS"] == {"treatment": "excised"}
