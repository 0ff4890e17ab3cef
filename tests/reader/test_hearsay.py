"""What a note only passes on: letters, boards, templates, drafts of others."""

import pytest
from reader_sentences import each, told

RING = "Ring FDP repaired with two strands of 5-0 Prolene."
PLAIN = {"ring FDP": {"treatment": "repaired", "strands": 2, "size": "5-0", "material": "polypropylene"}}


@pytest.mark.parametrize(
    "passed_on",
    [
        "Whiteboard: ring FDP, Adelaide, 3-0, running 6-0. Done: ",
        "Registrar's draft: six strands, no gap. My version: ",
        "The proforma has 'free glide, no gap' pre-printed. ",
        "Macro text: 'tendon repaired with four strands, no gap, free glide.' Actual: ",
        "WHO sheet: FDP ring, Adelaide 3-0. In the event: ",
        "Theatre list: ring FDP Savage 3-0 FiberWire. Performed: ",
        "The SHO's note records a six-strand core with a running epitendinous. ",
        "The letter from the first hospital speaks of a six-strand repair of the ring FDP. ",
        "Referral: ring FDP partly cut. No gap, glides freely. ",
        "According to the referral the ring FDP was intact. ",
    ],
)
def test_what_others_wrote_tells_nothing(passed_on: str) -> None:
    assert told(passed_on + RING) == PLAIN


@pytest.mark.parametrize(
    "passed_on",
    [
        "Referral: 'ring A4 intact'.",
        "The registrar's draft says the ring A4 is intact.",
        'Nursing note: "ring A4 intact".',
        "A&E card: ring A4 intact.",
        "The ED letter gives the ring A4 as intact.",
    ],
)
def test_nor_of_pulleys(passed_on: str) -> None:
    assert told(passed_on, group="pulleys") == {}
    assert each(f"{passed_on} Operation: ring A4 torn.", "finding", group="pulleys") == {"ring A4": "injured"}


@pytest.mark.parametrize(
    "text",
    [
        "The whiteboard had a four-strand cruciate of 3-0, but I repaired the ring FDP with two strands.",
        "GP letter: ring FDP intact, but it was found divided; ring FDP repaired with two strands.",
    ],
)
def test_what_was_done_instead_is_told(text: str) -> None:
    assert each(text, "strands") == {"ring FDP": 2}


@pytest.mark.parametrize(
    "own",
    [
        "Operation note: ",
        "Letter to GP: ",
        "Summary for the therapist: ",
        "List of sutures: ",
        "As the whiteboard says, ",
        "The template has no box for this: ",
        "On checking the theatre sheet: ",
    ],
)
def test_a_note_s_own_words_are_told(own: str) -> None:
    assert each(own + "ring FDP repaired with four strands.", "strands") == {"ring FDP": 4}


@pytest.mark.parametrize(
    ("lines", "expected"),
    [
        ("Peripheral: [default: 6-0 running] -> overwritten: none", {"peripheral": "absent"}),
        ("Peripheral suture (preset: 6-0 running): not done", {"peripheral": "absent"}),
        ("Core (default 4-strand): changed to 2-strand, 4-0 Supramid", {"strands": 2}),
        ("Strands: 4 (default kept)\nPeripheral: 6-0 (default kept)", {"strands": 4, "peripheral": "present"}),
    ],
)
def test_what_a_form_had_filled_in_stands_in_brackets(lines: str, expected: dict[str, object]) -> None:
    assert told("Ring FDP divided, repaired.\n" + lines, "strands", "peripheral")["ring FDP"] == expected
