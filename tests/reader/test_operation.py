"""Facts of the operation as a whole: dates, side, anaesthesia, mechanism; every class with at least two wordings.

All examples are invented; the conventions are those of the record's format version 1.
"""

import pytest
from reader_sentences import given_to

from notereader.reader import read
from notereader.record import Fact


def fact(text: str, name: str) -> Fact | None:
    return read(text).operation.get(name)


def value(text: str, name: str) -> object:
    found = fact(text, name)
    return None if found is None else found.value


def quotes(text: str, name: str) -> list[str]:
    found = fact(text, name)
    assert found is not None
    return [e.exact for e in found.evidence]


# --- dates


@pytest.mark.parametrize(
    "text",
    [
        "Date of surgery: 7 June 2033\nFDP repaired.",
        "Transcribed 9 June 2033\nDone 7 June 2033\nFDP repaired.",
        "9 June 2033\n\nDear colleague,\n\nOperation, 7 June 2033: FDP repair.",
        "Operation of 7 June 2033; accident of 6 June 2033",
        "Operation: June 7, 2033\nProcedure: FDP repair",
        "Hillside Hand Clinic, 7 June 2033. FDP repair.",
        "Date of surgery is June 7, 2033. FDP was repaired.",
        "Dictated straight after the case, 7 June 2033. FDP was repaired.",
        "Dictated 7 June 2033, operation the same day.\nFDP was repaired.",
        "9 June 2033\n\nDear Doctor,\n\nI operated on this man under a block on 7 June 2033, two days after a fall.",
        "9 June 2033\n\nDear Therapist,\n\nOn 7 June 2033 I repaired her left FPL, cut in zone II.",
        "Hand clinic, 9 June 2033\n\nDear all,\n\nre: repair of both flexors, left ring finger, 7 June 2033",
        "Thank you for seeing this boy, whom I took to theatre yesterday, 7 June 2033.",
        "07-06-2033 (accident 6 June 2033)\nFDP repaired.",
        "Quick dictation, typed version to follow. June 7, 2033. FDP repair.",
        "Operating date: 7 June 2033\nDiagnosis: FDP cut.",
        "010 DATE       07 Jun 2033, knife to skin 09:15\n020 PROCEDURE  FDP repair",
        "Procedure start: 2033-06-07 13:40\nFDP repaired.",
        "9 June 2033\n\nHello,\n\nI did his left small finger on June 7, 2033, so he is two days out.",
        "this is for the list of the seventh of june twenty thirty three FDP repair",
    ],
)
def test_date_of_operation(text: str) -> None:
    assert value(text, "date") == "2033-06-07"


@pytest.mark.parametrize(
    "text",
    [
        "Dictated 9 June 2033. FDP repair.",
        "FDP repair.\n\nSigned 9 June 2033",
        "History: seen in clinic on 9 June 2033.\nFDP repaired.",
    ],
)
def test_days_of_dictation_signature_and_clinic_are_no_date_of_operation(text: str) -> None:
    assert value(text, "date") is None


@pytest.mark.parametrize(
    "story",
    [
        "Date of injury: 5 June 2033",
        "Injured 5 June 2033: hand through a pane.",
        "History: on 5 June 2033 a chisel slid off the bench.",
        "Background\nSeen in clinic on 6 June 2033. A lamp fell on the hand on 5 June 2033.",
        "Operation of 7 June 2033; accident of 5 June 2033.",
        "Story: repaired at another hospital on 20 May 2033. On 5 June 2033 it gave way.",
        "Left index. Wine bottle, 5 June. Anaesthesia: block.",
        "Re: female, 45. Left thumb, glass door, 5 June 2033.",
        "History: cut it on a tin on the fifth, could not bend it.",
    ],
)
def test_date_of_injury(story: str) -> None:
    assert value(f"Date of operation: 7 June 2033\n{story}\nFDP repaired.", "injury_date") == "2033-06-05"


@pytest.mark.parametrize(
    "story",
    [
        "Seen in clinic on 5 June 2033.",
        "Referred 5 June 2033 by the local hospital.",
        "Came to us on the night of 5 June 2033.",
    ],
)
def test_days_of_visits_are_no_date_of_injury(story: str) -> None:
    assert value(f"Date of operation: 7 June 2033\nHistory: {story}\n", "injury_date") is None


# --- side


@pytest.mark.parametrize(
    "text",
    [
        "Diagnosis: FDP cut, D3 left in zone II.",
        "Diagnosis: lesion of the tendons dig. II and III left by a pane.",
        "Op: FDP repair, L RF",
        "Side: left",
        "Hand: left (dominant)",
        "1. Cons + SpR. GA.\n2. L little. Circular saw.",
        "Laterality   R / L   -> L",
        "07 Jun 33  L hand, RF",
        "8 May 2031. Left hand; pane of glass.",
        "Procedure: FDP repair, small finger, left.",
        "Diagnosis: laceration wrist, volar, LEFT, zone 5",
        "Diagnosis: glass laceration of the palm, deep, left",
    ],
)
def test_side_left(text: str) -> None:
    assert value(text + "\n\nFDP cut through.\n", "side") == "left"


@pytest.mark.parametrize(
    "body",
    [
        "Ulnar digital nerve bruised, in continuity, left.",
        "The slip was cut but thread-like - left.",
        "Washed with 1 L. Closed.",
        "He is left hand dominant.",
        "Background\nOld FPL repair in the left thumb, 2029.",
        "History. Power was half of the left side.",
        "M 40, L hand dom, no allergies.",
        'Addendum\n"Left" in the history should read right.',
    ],
)
def test_left_that_is_no_side(body: str) -> None:
    found = fact(f"Op: FDP repair, right ring finger\n\n{body}\n\nSigned: H. L.\n", "side")
    assert found is not None
    assert found.value == "right"
    assert found.rivals == []


def test_side_is_shown_in_title_and_text() -> None:
    text = "Procedure: FDP repair, left index finger.\n\nThe left index finger was opened. FDP was cut."
    assert quotes(text, "side") == ["left", "left"]


def test_another_side_in_the_text_is_a_rival() -> None:
    found = fact("Procedure: FDP repair, LEFT index finger.\n\nIn the right index finger the FDP was cut.", "side")
    assert found is not None
    assert {found.value, *(r.value for r in found.rivals)} == {"left", "right"}


def test_an_addendum_corrects_the_side() -> None:
    text = "Procedure: FDP repair, right ring finger.\n\nADDENDUM: It was the LEFT ring finger."
    assert value(text, "side") == "left"


# --- anaesthesia


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("GA, block declined.", "general"),
        ("G.A. + block", "general"),
        ("Anesthesia type: [ ] general  [x] regional  [ ] local", "regional"),
        ("Axillary block with light sedation", "regional"),
        ("Anaesthesia: local with adrenaline, wide awake", "wide-awake local"),
        ("Lidocaine with epinephrine, no sedation", "wide-awake local"),
        ("Anesthesia was by the team on call, general.", "general"),
        ("The anaesthetic was a general one.", "general"),
        ("General anaesthesia was offered and declined. Plain lidocaine infiltration.", "local"),
    ],
)
def test_deepest_anaesthesia_given(text: str, kind: str) -> None:
    assert value(f"Surgeon: consultant\n{text}\nFDP repaired.", "anaesthesia") == kind


@pytest.mark.parametrize("text", ["Plain lidocaine was put in at the end for pain relief.", "General surgeon on call."])
def test_no_anaesthesia_told(text: str) -> None:
    assert value(f"FDP was repaired. {text}", "anaesthesia") is None


# --- mechanism


@pytest.mark.parametrize(
    ("story", "kind"),
    [
        ("Indication: cut on the lid of a tin.", "sharp"),
        ("Story: a snow globe burst in her hand.", "sharp"),
        ("Indications: gashed his palm against a rusty thing in the barn.", "sharp"),
        ("History: sliced the finger with something in the sink.", "sharp"),
        ("Diagnosis: chain saw wound of the palm.", "saw"),
        ("Background: hand pinched between two pallets.", "crush"),
        ("Diagnosis: ruptured flexor repair, ring finger.", "rupture"),
        ("Diagnosis: closed rupture of the flexor pollicis longus.", "rupture"),
        ("Reason: grabbed a jersey, the tip dropped.", "avulsion"),
    ],
)
def test_mechanism(story: str, kind: str) -> None:
    assert value(f"Date: 7 June 2033\n{story}\n\nFDP repaired.", "mechanism") == kind


@pytest.mark.parametrize(
    "story",
    [
        "History: told about stiffness and re-rupture; signed.",
        "Indication: a tile setter with a trigger finger.",
        "Indications: works in a glass factory, locking of the finger.",
    ],
)
def test_risks_and_trades_are_no_mechanism(story: str) -> None:
    assert value(f"Date: 7 June 2033\n{story}\n\nA1 released.", "mechanism") is None


def test_mechanism_is_shown_in_story_and_diagnosis() -> None:
    text = "Diagnosis: knife wound of the palm.\nHistory: the kitchen knife slipped.\n\nFDP repaired."
    assert sorted(quotes(text, "mechanism")) == ["kitchen knife", "knife wound"]


def test_an_unknown_thing_that_cut_is_a_reason_to_look_twice() -> None:
    found = fact("History: gashed his palm against a rusty thing in the barn.\n\nFDP repaired.", "mechanism")
    assert found is not None
    assert found.look_twice


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("Date of operation: 7 June 2033\n\nOn 5 June 2033, towards evening.\nFDP repaired.", "injury_date"),
    ],
)
def test_what_is_only_inferred_is_a_reason_to_look_twice(text: str, name: str) -> None:
    found = fact(text, name)
    assert found is not None
    assert found.look_twice


@pytest.mark.parametrize(
    ("text", "kinds"),
    [
        ("History: a pane broke in her right hand.\n\nFDP repaired.", {"in_story_of_injury"}),
        ("Story: cut the right ring finger on a slate.\n\nFDP repaired.", {"in_story_of_injury"}),
        ("Right hand, ring finger. FDP repaired.", set()),
    ],
)
def test_a_side_told_in_the_story_alone_bears_a_reason(text: str, kinds: set[str]) -> None:
    assert given_to(text, "", "side", "operation") == kinds


# --- anaesthesia and mechanism in further turns of phrase


@pytest.mark.parametrize(
    ("text", "depth"),
    [
        ("I operated on this man under general anaesthesia on 7 June 2033.", "general"),
        ("The duty anaesthetist gave a general. FDP repaired.", "general"),
        ("Anaesthesia: G/A by the anaesthetist on call", "general"),
        ("Type: General plus infraclavicular catheter", "general"),
        ("Anaes: infraclav block + propofol TIVA sedation", "regional"),
        ("Anaesthetic: wrist block, light sedation", "regional"),
        ("Ulnar and median nerve blocks at the wrist. FDS cut.", "regional"),
        ("anaes = block by Dr S", "regional"),
        ("I injected 15 ml of 1% lidocaine with 1:100 000 adrenaline. FDP cut.", "wide-awake local"),
        ("Anesthesia is local infiltration with epinephrine, patient awake.", "wide-awake local"),
        ("Meant to be wide awake; the last half was under sedation. FDP cut.", "sedation"),
        ("Anaesthetic type: Local / Regional / General >> Local (digital block)", "local"),
        ("Anesthesia: Brachial plexus block, ultrasound guided", "regional"),
        ("surgeon Dr. S.E.  anesthesiologist Dr. B. (general)", "general"),
        ("Anesthesia Type: MAC with digital block", "regional"),
        ("GA avoided on account of his chest; a supraclavicular block sufficed.", "regional"),
        ("He was keen to avoid a general. Axillary block. FDP cut.", "regional"),
        ("Op: FDP repair\\nGA.\\nFDP cut.\\n\\nAddendum\\nAnaesthetic was an axillary block, not GA.", "regional"),
    ],
)
def test_further_words_of_anaesthesia(text: str, depth: str) -> None:
    assert value(text.replace("\\n", "\n"), "anaesthesia") == depth


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("Left ring finger.\n\nSlate edge 15/10/2032. No grip.\n\nFDP cut. FDP repaired with 3-0 Ethibond.", "sharp"),
        ("Left thumb.\n\nShe had fallen on to a broken bottle.\n\nFPL cut. FPL repaired with 3-0.\nClosed.", "sharp"),
        ("Left thumb.\n\nThe A2 was cut by the original glass and lay open.\nFPL repaired.", "sharp"),
        ("Re: woman of 45, left thumb, glass door.\n\nFPL repaired.", "sharp"),
        ("Diagnosis: rupture of a zone II repair of FDP, left ring", "rupture"),
        ("The tendon had ruptured completely in zone II. Re-repaired.", "rupture"),
        ("I found the profundus completely avulsed from the bone.", "avulsion"),
        ("Dx: crush injury left index. FDP rupture index.", "crush"),
        ("Mechanism: sharp / crush / bite / other -> sharp (scissors)", "sharp"),
        ("History: horse bit the right index. FDP cut.", "bite"),
        ("His hand was caught in the belt of a lathe. FDP cut.", "crush"),
        ("Findings: the previous repair had ruptured. FPL re-repaired.", "rupture"),
        ("Dg  L thumb FPL popped, wringing a mop.", "rupture"),
        ("Cause: [x] sharp [ ] saw [ ] crush\nBite (mm): 8", "sharp"),
        ("Story: oyster knife eight days back, skin shut in A+E.", "sharp"),
        ("History: he trapped his left ring finger in a winder.\n\nFDP cut.", "crush"),
    ],
)
def test_further_words_of_mechanism(text: str, kind: str) -> None:
    assert value(text, "mechanism") == kind


@pytest.mark.parametrize(
    "text",
    [
        "History: I saw him in clinic.\n\nFDP cut.",
        "Op: FDP repair, ring\n\nBoth stumps were crushed. Core 3-0 Ethibond, 1 cm bites.",
        "Op: FPL reattachment, thumb\n\nBone drilled with a drill, the suture passed with a wire.",
        "Op: FDP repair, ring\n\nStumps were cut back by 3 mm each way.",
        "Op: FDP repair, ring. Risks of rupture of the repair explained.\n\nFDP was cut.",
    ],
)
def test_words_that_are_no_mechanism(text: str) -> None:
    assert value(text, "mechanism") is None


@pytest.mark.parametrize(
    "words",
    [
        "The patient is a 52-year-old teacher who cut her left index finger on a shelf.",
        "A 30 year old joiner cut his left index finger.",
    ],
)
def test_an_age_does_not_make_the_injury_an_earlier_one(words: str) -> None:
    note = "Background: " + words + "\n\nFindings: FDP of the index completely divided."
    assert read(note).operation["side"].value == "left"


@pytest.mark.parametrize(
    "words",
    ["Anaesthesia: axillary block. Right hand, index, cut on glass.", "Anaesthetic: general. Right wrist, glass door."],
)
def test_a_side_behind_the_anaesthesia_on_its_line(words: str) -> None:
    assert value(words + "\n\nFDP cut through.\n", "side") == "right"


def test_the_side_of_a_block_is_not_the_operations() -> None:
    assert value("Anaesthesia: right axillary block.\n\nFDP cut through.\n", "side") is None


@pytest.mark.parametrize("story", ["Opened a stiff door and felt it go.", "Pushed at a heavy press and felt a snap."])
def test_what_was_felt_to_give_is_a_rupture(story: str) -> None:
    assert value(f"History: {story} Ring FDP, three weeks after its repair.", "mechanism") == "rupture"


def test_a_snap_at_a_shirt_is_still_an_avulsion() -> None:
    assert value("History: grabbed a shirt at rugby and felt a snap.", "mechanism") == "avulsion"


def test_a_blade_felt_to_go_through_the_finger() -> None:
    assert value("History: reached for a window pane and felt it go through the ring finger.", "mechanism") == "sharp"
