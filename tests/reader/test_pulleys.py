"""What was found of and done to each pulley: one class of wording a test, each in at least two different wordings."""

import pytest
from reader_sentences import quote_of, told

NOTE = "Operation: repair of FDP, right ring finger\n\nFindings\nThe FDP of the ring finger was divided.\n\nDetails\n"
THUMB = "Operation: repair of FPL, left thumb\n\nFindings\nFPL divided in zone II.\n\nDetails\n"
SHARES = {"%": "extent_percent", "mm": "extent_mm"}


def pulleys(sentence: str, note: str = NOTE) -> dict[str, str]:
    """Read a sentence and show each pulley as one line: 'ring A2': 'vented 5 mm distal'."""
    return {name: _line(facts) for name, facts in told(note + sentence, group="pulleys").items()}


def _line(facts: dict[str, object]) -> str:
    words = [str(facts.get("finding", "nothing"))]
    words += [f"{facts[field]:g} {unit}" for unit, field in SHARES.items() if field in facts]
    return " ".join([*words, *([str(facts["part"])] if "part" in facts else [])])


def ring(**lines: str) -> dict[str, str]:
    return {f"ring {name}": line for name, line in lines.items()}


@pytest.mark.parametrize(
    ("sentence", "pulley"),
    [
        ("A2 was carefully preserved throughout.", "A2"),
        ("Care was taken to preserve A4.", "A4"),
        ("A2 escaped injury.", "A2"),
        ("I was able to keep A2.", "A2"),
        ("A4 was inspected and is sound.", "A4"),
        ("We left A2 untouched.", "A2"),
        ("I kept A2 closed.", "A2"),
        ("With A2 intact the tendon was threaded back.", "A2"),
        ("FDP was found divided under an intact A2.", "A2"),
        ("The A2 pulley remains competent.", "A2"),
        ("A2 snug but intact.", "A2"),
    ],
)
def test_pulley_kept(sentence: str, pulley: str) -> None:
    assert pulleys(sentence) == ring(**{pulley: "intact"})


@pytest.mark.parametrize(
    "sentence",
    [
        "There was no need to open A2.",
        "A2 did not need venting.",
        "Venting of A2 was not necessary.",
        "It was not necessary to vent A2.",
        "The tendon passed without opening A2.",
        "No need to touch A2.",
    ],
)
def test_opening_denied_is_a_pulley_kept(sentence: str) -> None:
    assert pulleys(sentence) == ring(A2="intact")


@pytest.mark.parametrize(
    "sentence",
    [
        "A2 was not intact.",
        "A2 was not preserved.",
        "A4 could not be preserved.",
        "A2 partly preserved.",
        "Half of A2 was preserved.",
        "At least 50 % of A2 was preserved.",
        "Only the proximal third of A2 remains intact.",
        "A2 preserved except for its distal 5 mm.",
        "A2 probably intact.",
        "The integrity of A2 is not certain.",
        "A2 should be kept if at all possible.",
        "A2 intact? No.",
        "A2: intact / vented / excised",
        "A2 ____",
        "A2 was identified.",
        "A2 was not explored.",
        "MRI: A2 intact.",
        "Ultrasound had shown an intact A2.",
        "I told the trainee that A2 and A4 should always be preserved.",
        "Plan: keep A2 intact at the second stage.",
        "A2: FDS intact beneath.",
        "A4 narrow, glide fine.",
        "I did not have to vent A2 any further.",
        "A2 hardly intact, hanging by a thread.",
        "What was left of A2 was kept.",
        "The remnant of A2 was preserved.",
        "A2 intact on one side only.",
        "A2 was 50 % intact.",
        "No intact A2 was found.",
        "A2 must be kept in any later operation.",
        "Goal: A2 and A4 intact.",
        "Next time keep A2 intact!",
        "A2 intact (according to the referring hospital).",
        "A4 was spared, or so I hope.",
        "The A2 is safe in most cases.",
        "With an intact A2 bowstringing is rare.",
        "All pulleys but A4 were intact.",
        "All pulleys except A3 were preserved.",
        "A2 was left as a flap.",
        "A2 left hanging.",
        "The skin over A2 was intact.",
        "Blood supply at A2 intact.",
        "A4 could not be saved and was excised.",
        "Neither A2 nor A4 could be preserved.",
    ],
)
def test_nothing_is_called_intact_without_the_words(sentence: str) -> None:
    assert "intact" not in " ".join(pulleys(sentence).values())


@pytest.mark.parametrize(
    "sentence",
    [
        "The laceration lay 4 mm distal to the A2 pulley.",
        "The tendon was delivered under A2 and repaired.",
        "The repair passed beneath A4 without catching and was left as it was.",
        "FDP cut between A2 and A4.",
        "Through a window in C1 the tendon was retrieved.",
        "The stump lay at A3.",
        "The FDP was released from its adhesions under A2.",
        "It still rubs at the A2 entrance.",
    ],
)
def test_landmark_is_no_finding(sentence: str) -> None:
    assert pulleys(sentence) == {}


@pytest.mark.parametrize(
    ("sentence", "line"),
    [
        ("The stump lay at the level of A3, which had been torn.", "A3 injured"),
        ("FDP was repaired proximal to A4, which is intact.", "A4 intact"),
        ("The end sat in A1, which I then divided.", "A1 released"),
        ("The repair jammed under A4, so I vented it by 4 mm.", "A4 vented 4 mm"),
        ("The tendon caught on A4 until this was vented.", "A4 vented"),
        ("It would not go through A4 until 2 mm of its proximal rim had been snipped off.", "A4 trimmed 2 mm proximal"),
    ],
)
def test_landmark_spoken_of_after_all(sentence: str, line: str) -> None:
    pulley, _, state = line.partition(" ")
    assert pulleys(sentence) == ring(**{pulley: state})


@pytest.mark.parametrize(
    ("sentence", "state"),
    [
        ("We vented the distal third of A2.", "vented 33 % distal"),
        ("The distal half of A2 had to be vented.", "vented 50 % distal"),
        ("A2 opened distally, 6 mm.", "vented 6 mm distal"),
        ("A2 vented 5 mm, distal.", "vented 5 mm distal"),
        ("A2 was incised over half of its length.", "vented 50 %"),
        ("Two thirds of A2, its distal part, were divided.", "vented 67 % distal"),
        ("A2 was vented up to 4 mm.", "vented 4 mm"),
        ("A2 vented 5-6 mm distally.", "vented 6 mm distal"),
        ("prox. 3mm A2 vented", "vented 3 mm proximal"),
        ("A2 was divided in its middle third.", "vented 33 % middle"),
        ("A2 needed a 5 mm vent distally.", "vented 5 mm distal"),
        ("The proximal four millimetres of A2 were subsequently incised.", "vented 4 mm proximal"),
        ("A2 tight => vented 50% (proximal).", "vented 50 % proximal"),
        ("The proximal half of A2 was preserved, the distal half vented.", "vented 50 % distal"),
        ("A2 was intact apart from its distal 3 mm, which I incised.", "vented 3 mm distal"),
        ("The repair caught on the distal edge of A2. I vented A2 there by 5 mm.", "vented 5 mm distal"),
        ("It hung on the distal lip of A2. 4 mm of A2 incised there.", "vented 4 mm distal"),
    ],
)
def test_how_much_was_vented_and_where(sentence: str, state: str) -> None:
    assert pulleys(sentence) == ring(A2=state)


@pytest.mark.parametrize(
    "sentence",
    [
        "The A4 pulley was divided in its entirety to let the bulky repair through.",
        "A4 was laid open from end to end.",
        "A4 completely opened.",
        "A4 was slit over its complete length.",
        "The whole of A4 was incised.",
        "A4 was taken down.",
        "A4 was divided to retrieve the proximal end.",
        "After division of the A4 pulley the tendon was delivered.",
        "A4 release.",
    ],
)
def test_whole_length_is_released(sentence: str) -> None:
    assert pulleys(sentence) == ring(A4="released")


@pytest.mark.parametrize(
    ("sentence", "state"),
    [
        ("A4 trimmed by 2 mm on its proximal side.", "trimmed 2 mm proximal"),
        ("The proximal edge of A4 was pared back 2 mm.", "trimmed 2 mm proximal"),
        ("We excised the torn remnants of A4.", "excised"),
        ("The remains of A4 were removed.", "excised"),
        ("To reach the far end we had to sacrifice A4.", "excised"),
        ("A4 could not be saved and was excised.", "excised"),
        ("A V-Y plasty of A4 was done to make room.", "widened"),
        ("A4 was Z-lengthened.", "widened"),
        ("A4 pulley plasty performed.", "widened"),
        ("A4 was lacerated and was sutured with 5-0 nylon.", "repaired"),
        ("The rent in A4 was closed with 6-0 PDS.", "repaired"),
        ("A4 reattached with a bone anchor.", "repaired"),
        ("A4 opened for exposure and closed at the end.", "repaired"),
        ("A4 rebuilt with a strip of retinaculum, sewn to both rims.", "reconstructed"),
        ("A new A4 was fashioned from a slip of FDS.", "reconstructed"),
        ("A4 was reconstructed after the torn one had been excised.", "reconstructed"),
    ],
)
def test_deed(sentence: str, state: str) -> None:
    assert pulleys(sentence) == ring(A4=state)


@pytest.mark.parametrize(
    "sentence",
    [
        "A3 was destroyed.",
        "The glass had sliced through A3.",
        "A3 split open by the saw, nothing done.",
        "A3 was nicked by the blade.",
        "A3 had already been divided.",
        "A3, FDP and FDS were divided.",
        "A3 gone.",
        "A3 in ribbons, left as it was.",
        "A3 had been lost and was not reconstructed.",
    ],
)
def test_hurt_by_the_accident(sentence: str) -> None:
    assert pulleys(sentence) == ring(A3="injured")


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        ("A1 intact, A2 vented 5 mm, A4 excised.", ring(A1="intact", A2="vented 5 mm", A4="excised")),
        ("Intact: A2, A4. Released: A1, A3.", ring(A1="released", A2="intact", A3="released", A4="intact")),
        ("Preserved were A2 and A4.", ring(A2="intact", A4="intact")),
        ("I released A1 and A2 was preserved.", ring(A1="released", A2="intact")),
        ("A4 was torn but A2 had been spared by the blade.", ring(A2="intact", A4="injured")),
        (
            "A2: intact; A4: vented (proximal half); A3: excised.",
            ring(A2="intact", A3="excised", A4="vented 50 % proximal"),
        ),
        (
            "A1 -> released. A2 -> ok. A4 -> vented prox 3mm.",
            ring(A1="released", A2="intact", A4="vented 3 mm proximal"),
        ),
        ("A2 (intact), A4 (vented, distal 4 mm).", ring(A2="intact", A4="vented 4 mm distal")),
        ("A1: ____ A2: intact. A4: ____", ring(A2="intact")),
        (
            "A1? ____ A2? Kept. A3? Torn. A4? Opened for half its length.",
            ring(A2="intact", A3="injured", A4="vented 50 %"),
        ),
        ("A1 +, A2 intact, A3 released", ring(A2="intact", A3="released")),
        ("A2 [x] intact [ ] vented   A4 [ ] intact [x] vented", ring(A2="intact", A4="vented")),
    ],
)
def test_each_pulley_its_own_word(sentence: str, lines: dict[str, str]) -> None:
    assert pulleys(sentence) == lines


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        ("C2 and A4 opened as one window, 12 mm.", ring(C2="vented 12 mm", A4="vented 12 mm")),
        ("I took down A3 together with C1.", ring(A3="released", C1="released")),
        ("A1 to A4 all preserved.", ring(A1="intact", A2="intact", A3="intact", A4="intact")),
        ("I left A2 through A4 well alone.", ring(A2="intact", A3="intact", A4="intact")),
        ("Annular pulleys 2 and 4 were preserved.", ring(A2="intact", A4="intact")),
        ("The second and fourth annular pulleys were spared.", ring(A2="intact", A4="intact")),
        ("Neither A2 nor A4 was opened.", ring(A2="intact", A4="intact")),
        ("A2/A4 kept", ring(A2="intact", A4="intact")),
    ],
)
def test_several_pulleys_one_word(sentence: str, lines: dict[str, str]) -> None:
    assert pulleys(sentence) == lines


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        ("A2 was vented 4 mm and so was A4.", ring(A2="vented 4 mm", A4="vented 4 mm")),
        ("A2 preserved, as was A4.", ring(A2="intact", A4="intact")),
        ("A2 vented distally 4 mm, A4 likewise.", ring(A2="vented 4 mm distal", A4="vented 4 mm distal")),
        ("A3 was incised over 3 mm and C1 completely.", ring(A3="vented 3 mm", C1="released")),
        ("A2 and A4 were inspected. Both pulleys were preserved.", ring(A2="intact", A4="intact")),
        ("I worked between A2 and A4; both pulleys stayed closed.", ring(A2="intact", A4="intact")),
        ("A2 and A4 were seen; the latter was in shreds and was excised.", ring(A4="excised")),
        ("The A4 pulley was narrow. It was opened by 3 mm.", ring(A4="vented 3 mm")),
        ("The A4 pulley stood in the way. This was divided throughout.", ring(A4="released")),
        ("A2 was tight. The distal 4 mm was incised.", ring(A2="vented 4 mm distal")),
        ("A2 was inspected. It was intact.", ring(A2="intact")),
        ("The A2 pulley was torn. The pulley was repaired with 5-0.", ring(A2="repaired")),
    ],
)
def test_told_without_the_name(sentence: str, lines: dict[str, str]) -> None:
    assert pulleys(sentence) == lines


@pytest.mark.parametrize(
    "sentence",
    [
        "A2 was kept and the tourniquet released.",
        "A2 was preserved, the wound was opened further and closed.",
        "A2 preserved; tendon repaired; skin closed.",
        "A2 not opened. Cuff released.",
    ],
)
def test_words_of_another_subject_are_not_the_pulleys(sentence: str) -> None:
    assert pulleys(sentence) == ring(A2="intact")


@pytest.mark.parametrize(
    "sentence",
    [
        "If it catches we may have to vent A2 later.",
        "In general I vent A2 by up to half its length.",
        "He had A2 vented in 2019 elsewhere.",
        "We would normally have vented A2.",
        "A2 reconstruction was discussed but not done.",
        "Venting of A2 was considered.",
    ],
)
def test_not_done_today(sentence: str) -> None:
    assert pulleys(sentence) == {}


@pytest.mark.parametrize(
    ("sentence", "pulley"),
    [
        ("The ring ligament A2 was spared.", "A2"),
        ("The A4 ring ligament was spared.", "A4"),
        ("The second annular pulley was spared.", "A2"),
        ("The A-4 pulley was spared.", "A4"),
        ("The A two pulley was spared.", "A2"),
        ("The cruciate pulley C2 was spared.", "C2"),
    ],
)
def test_names_of_pulleys(sentence: str, pulley: str) -> None:
    assert pulleys(sentence) == ring(**{pulley: "intact"})


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        ("A1 released, oblique preserved.", {"thumb A1": "released", "thumb oblique": "intact"}),
        (
            "A1 and variable pulleys divided; the oblique was kept.",
            {"thumb A1": "released", "thumb variable": "released", "thumb oblique": "intact"},
        ),
        ("Oblique pulley half torn; mended with 5-0.", {"thumb oblique": "repaired"}),
    ],
)
def test_thumb(sentence: str, lines: dict[str, str]) -> None:
    assert pulleys(sentence, THUMB) == lines


@pytest.mark.parametrize(
    ("sentence", "state"),
    [
        ("The flexor retinaculum was divided from end to end.", "released"),
        ("The carpal tunnel was decompressed.", "released"),
        ("The flexor retinaculum was left untouched.", "intact"),
        ("The transverse carpal ligament was not opened.", "intact"),
    ],
)
def test_wrist(sentence: str, state: str) -> None:
    assert pulleys(sentence, "Operation: repair of FCR and FDS, left wrist\n\nDetails\n") == {
        "flexor retinaculum": state
    }


TWO = "Operation: flexor repair, left index and ring fingers\n\nFindings\nIndex FDP and ring FDP divided.\n\nDetails\n"


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        ("A2 was intact in both fingers.", {"index A2": "intact", "ring A2": "intact"}),
        (
            "A4 was vented in the ring finger (half) and excised in the index.",
            {"ring A4": "vented 50 %", "index A4": "excised"},
        ),
        (
            "The A4 pulley of the ring finger was vented by 3 mm and that of the index finger was left intact.",
            {"ring A4": "vented 3 mm", "index A4": "intact"},
        ),
        ("A4 of the index was excised.", {"index A4": "excised"}),
    ],
)
def test_of_which_finger(sentence: str, lines: dict[str, str]) -> None:
    assert pulleys(sentence, TWO) == lines


@pytest.mark.parametrize(
    "addendum", ["Addendum: A4 was vented by 4 mm.", "ADDENDUM. I left out that A4 had been vented over 4 mm."]
)
def test_addendum_corrects(addendum: str) -> None:
    assert pulleys(f"A2 and A4 were kept intact.\n\n{addendum}") == ring(A2="intact", A4="vented 4 mm")


@pytest.mark.parametrize("title", ["Venting of A4.", "FDP repair and release of half of A4."])
def test_title_that_promises_less_stands(title: str) -> None:
    note = f"Operation: repair of FDP, right ring finger. {title}\n\nDetails\n"
    assert "vented" in pulleys("A4 was preserved.", note)["ring A4"]


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        (
            "A1 of the index was released; in the ring finger half of A2 was vented, and A4 was kept in both digits.",
            {"index A1": "released", "ring A2": "vented 50 %", "index A4": "intact", "ring A4": "intact"},
        ),
        (
            "A2 was spared in both fingers. The ring finger A3 was excised.",
            {"index A2": "intact", "ring A2": "intact", "ring A3": "excised"},
        ),
        ("A2 not touched in either finger.", {"index A2": "intact", "ring A2": "intact"}),
    ],
)
def test_both_fingers_are_those_of_the_pulley_it_is_said_of(sentence: str, lines: dict[str, str]) -> None:
    assert pulleys(sentence, TWO) == lines


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        ("A4 little vented over its full length.", {"small A4": "released"}),
        ("A4 long excised.", {"middle A4": "excised"}),
        ("A2 middle intact.", {"middle A2": "intact"}),
    ],
)
def test_finger_named_by_one_word_behind_the_pulley(sentence: str, lines: dict[str, str]) -> None:
    assert pulleys(sentence, "Operation: flexor repair, left middle and small fingers\n\nDetails\n") == lines


@pytest.mark.parametrize(
    ("sentence", "state"),
    [
        (
            "It caught at the distal edge of A2, and 3 mm of that edge was vented.",
            "vented 3 mm distal",
        ),
        ("FDP lay cut at A2, the distal third of which had been laid open by the knife.", "injured distal"),
        ("A2 shows a healed cut of 5 mm distally; it is preserved.", "intact"),
        ("A2 was in two pieces, so I made a new one.", "reconstructed"),
        ("A2 was half opened, the catching did not wholly disappear.", "vented 50 %"),
        ("A2 was vented, leaving 2 mm of it.", "vented"),
        ("UDA not looked for, A2 opened.", "vented"),
        ("A2 was sound on opening.", "intact"),
        ("A2 had a tooth hole in it and was left as it was.", "injured"),
        ("A2 cut along its whole length to get in.", "released"),
        ("A2 is split over 3 mm from proximal.", "vented 3 mm proximal"),
    ],
)
def test_turns_of_phrase(sentence: str, state: str) -> None:
    assert pulleys(sentence) == ring(A2=state)


@pytest.mark.parametrize(
    "addendum",
    [
        "Addendum\n1. The A4 pulley was not left intact. I vented its proximal 4 mm.",
        "Addendum: the proximal 4 mm of A4 had been vented.",
    ],
)
def test_addendum_takes_intact_back(addendum: str) -> None:
    assert pulleys(f"The A4 pulley was intact.\n\n{addendum}") == ring(A4="vented 4 mm proximal")


def test_words_that_prove_it() -> None:
    assert (
        quote_of(NOTE + "The A4 pulley was vented over 4 mm.", "ring A4", "finding", "pulleys")
        == "A4 pulley was vented"
    )
