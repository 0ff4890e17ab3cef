"""Forms that tick level, side, regime and tightness, number the finger beside the side, or leave a tendon n/a."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    ("line", "digit"),
    [
        ("3. SIDE / RAY ............. left / IV", "ring"),
        ("SIDE / RAY: left / IV", "ring"),
        ("Hand, finger: R, 3", "middle"),
        ("Digit ...... 5", "small"),
        ("Ray   II", "index"),
    ],
)
def test_a_number_answers_for_the_finger(line: str, digit: str) -> None:
    assert each(line + "\nTENDON ....... FDP cut through\n", "extent") == {f"{digit} FDP": "complete"}


@pytest.mark.parametrize("line", ["Fingers: 2", "Finger: 4 cm cut", "Digit: 4/5 movement"])
def test_a_count_is_no_finger(line: str) -> None:
    assert each(line + "\nTENDON ....... FDP cut through\n", "extent") == {"FDP": "complete"}


@pytest.mark.parametrize(
    ("line", "side"),
    [("( ) L  (X) R", "right"), ("[ ] left [x] right", "right"), ("(X) L ( ) R", "left"), ("L ( )  R (x)", "right")],
)
def test_the_ticked_side(line: str, side: str) -> None:
    assert told(line + "\nFDP cut through.", group="operation")[""]["side"] == side


def test_left_as_an_option_is_no_side() -> None:
    assert "side" not in told("( ) repaired (x) left ( ) excised\nFDP cut.", group="operation").get("", {})


@pytest.mark.parametrize(
    ("line", "zone"),
    [("Level     ( ) 1  (X) 2  ( ) 3 -> ( ) A  ( ) B  (X) D", "IID"), ("Zone (x) I ( ) II -> (x) A ( ) B", "IA")],
)
def test_a_level_ticked_in_two_steps(line: str, zone: str) -> None:
    assert each(f"Small finger.\n{line}\nFDP cut through.", "zone") == {"small FDP": zone}


def test_the_number_of_a_form_is_no_zone() -> None:
    assert each("Theatre ....... form T2\nRing FDP cut through.", "zone") == {}


@pytest.mark.parametrize(
    ("line", "tension"),
    [
        ("Tight [x] yes [ ] no", "present"),
        ("Tight ( ) yes (X) no", "none"),
        ("Bulky ( ) yes (X) no   Tight (X) yes ( ) no", "present"),
    ],
)
def test_tight_as_a_question(line: str, tension: str) -> None:
    assert each("Ring FDP cut, sewn with 4-0.\n" + line, "tension") == {"ring FDP": tension}


def test_tight_skin_is_no_tension() -> None:
    assert each("Ring FDP cut, sewn with 4-0.\nSkin tight: no", "tension") == {}


@pytest.mark.parametrize(
    ("line", "programme"),
    [
        ("Regime: passive", "early passive"),
        ("Regimen [ ] passive [x] active", "early active"),
        ("Regime ( ) passive ( ) active", None),
    ],
)
def test_the_regime_as_a_question(line: str, programme: str | None) -> None:
    found = told("Ring FDP cut, sewn with 4-0.\n" + line, group="aftercare")
    assert found.get("", {}).get("programme") == programme


@pytest.mark.parametrize("answer", ["n/a", "not applicable"])
def test_a_tendon_without_an_answer_takes_nothing(answer: str) -> None:
    note = f"Ring finger.\nTENDON ... FDP off the bone; FDS {answer}\nThe stump was frayed, and 4 mm had to go."
    assert told(note, "ends", "trimmed_mm") == {"ring FDP": {"ends": "ragged", "trimmed_mm": 4}}


@pytest.mark.parametrize(
    ("line", "zone"),
    [
        ("Zone:    [x] 2  sub: [ ]A [x]B [ ]C [ ]D", "IIB"),
        ("Zone: [ ] 1 [x] 2 [ ] 3   Subzone: [ ] A [ ] B [x] C [ ] D", "IIC"),
        ("Zone: [x] 1 [ ] 2 [ ] 3   Subdivision: [ ] A [x] B [ ] C", "IB"),
        ("Zone: [ ] 1 [x] 2 [ ] 3   Subzone: [ ] A [ ] B [ ] C [ ] D", "II"),
        ("Zone: [ ] 1 [x] 2 [ ] 3   Side: [ ] A [x] B", "II"),
    ],
)
def test_a_letter_ticked_under_a_label_of_its_own(line: str, zone: str) -> None:
    assert each(f"Right middle finger. FDP divided, repaired.\n  {line}", "zone") == {"middle FDP": zone}
