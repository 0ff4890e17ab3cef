"""Which parts of a note are in it at all, and the words that show them; every class with at least two wordings.

All examples are invented; the conventions are those of the record's format version 1.
"""

import pytest

from notereader.reader import read


def shown(text: str, name: str) -> list[str]:
    """Return the words that show an element, or nothing where it is not in the note."""
    found = read(text).elements.get(name)
    return [] if found is None else [e.exact for e in found.evidence]


BODY = "FDP was cut through in zone II and repaired with a four-strand core of 3-0 nylon.\n"


# --- headings


@pytest.mark.parametrize(
    ("line", "name", "words"),
    [
        ("EBL: minimal", "blood_loss", "EBL: minimal"),
        ("Complications ...... none", "complications", "Complications ...... none"),
        ("Surgeon: consultant, hands", "surgeon", "Surgeon: consultant"),
        ("SPECIMENS | none", "specimens", "SPECIMENS | none"),
        ("Second pair of hands: nurse", "assistant", "Second pair of hands: nurse"),
        ("Diagnosis: FDP laceration, ring", "diagnosis", "Diagnosis"),
        ("Problem: cut palm", "diagnosis", "Problem: cut palm"),
        ("Why operate?  The tip does not bend.", "indication", "Why operate"),
        ("Findings and steps\nFDP cut.", "findings", "Findings and steps"),
    ],
)
def test_a_heading_shows_its_element(line: str, name: str, words: str) -> None:
    assert shown(f"{line}\n\n{BODY}", name)[0] == words


@pytest.mark.parametrize("line", ["Assistant: ***", "Assistant:", "Assistant: {select}", "Q Assistant?    A "])
def test_an_empty_form_line_shows_nothing(line: str) -> None:
    assert shown(f"Surgeon: consultant\n{line}\nDate: 3 May 2031\n\n{BODY}", "assistant") == []


@pytest.mark.parametrize(
    ("text", "name", "words"),
    [
        ("Post op\n* splint: wrist 30 ext\n", "instructions", "Post op"),
        ("AFTER\nDBS: wrist straight.\n", "instructions", "AFTER"),
        ("FINDINGS\nFDP: cut through\nFDS: intact\n", "findings", "FINDINGS"),
    ],
)
def test_a_heading_with_labelled_lines_below_it(text: str, name: str, words: str) -> None:
    assert shown(f"{BODY}\n{text}", name)[0] == words


def test_two_labels_with_two_values() -> None:
    people = f"Surgeon / assistant: consultant / house officer\n\n{BODY}"
    assert shown(people, "surgeon") == ["Surgeon / assistant: consultant"]
    assert shown(people, "assistant") == ["house officer"]
    both = f"Abx / Tq       cefuroxime 1.5 g / 250 mmHg\n\n{BODY}"
    assert "cefuroxime" in shown(both, "antibiotics")[0]
    assert shown(both, "tourniquet") == ["250 mmHg"]


@pytest.mark.parametrize("line", ["ANAES   regional: axillary block", "Anaes: GA, mask"])
def test_an_anaesthetic_is_no_anaesthetist(line: str) -> None:
    assert shown(f"SURGEON  consultant\n{line}\n\n{BODY}", "anaesthetist") == []


@pytest.mark.parametrize("line", ["Anaes: consultant", "Anaesthetist   GP colleague"])
def test_an_anaesthetist_is_one(line: str) -> None:
    assert shown(f"Surgeon: consultant\n{line}\n\n{BODY}", "anaesthetist")


def test_a_vague_heading_of_the_closure_is_shown_with_its_words() -> None:
    assert shown(f"{BODY}\nOUT\nCuff down. Skin 5-0 nylon.\n", "closure") == ["OUT", "Skin"]
    assert shown(f"{BODY}\nShut\n4-0 nylon. Jelonet.\n", "closure") == ["Shut", "nylon"]


# --- words


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("Told of the hazards and signed.", "consent"),
        ("Form 1 signed with the house officer.", "consent"),
        ("She understood that it might rupture, and she gave her written consent.", "consent"),
        ("He was informed about all risks and has undersigned.", "consent"),
        ("Loss 20 mls.", "blood_loss"),
        ("Bleeding negligible.", "blood_loss"),
        ("About 10 ml of blood.", "blood_loss"),
        ("Next to no bleeding.", "blood_loss"),
        ("Nothing to pathology.", "specimens"),
        ("Cultures sent.", "specimens"),
        ("Implants none.", "implants"),
        ("Implants nil.", "implants"),
        ("Blood barrier at the upper arm 280 mmHg.", "tourniquet"),
        ("The registrar who operated wrote this.", "surgeon"),
        ("Operating consultant, same as before.", "surgeon"),
        ("Consultant hand surgeon with associate specialist.", "assistant"),
        ("General, by the anesthesia service.", "anaesthetist"),
        ("Block given by anaesthesia PG.", "anaesthetist"),
    ],
)
def test_words_show_an_element(text: str, name: str) -> None:
    assert shown(f"{text} The right ring finger was opened.\n{BODY}Washed out.\n", name)


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("General anesthesia was induced without incident.", "complications"),
        ("The plate with its six screws was taken out.", "implants"),
        ("An anchor was considered but not used, the bone was too thin.", "implants"),
        ("Bleeding points were sealed.", "blood_loss"),
        ("He lost his grip on the ladder.", "blood_loss"),
        ("Anesthesia provider: {select}", "anaesthetist"),
    ],
)
def test_words_that_show_nothing(text: str, name: str) -> None:
    assert shown(f"Date: 3 May 2031\n{text}\n{BODY}", name) == []


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("Risks explained, form signed by her father.", "form signed"),
        ("Risks gone through; consent signed.", "consent signed"),
    ],
)
def test_words_that_name_an_element_go_before_words_that_point_to_it(text: str, words: str) -> None:
    assert words.startswith(shown(f"History: {text}\n\n{BODY}", "consent")[0])


# --- what the text says


@pytest.mark.parametrize(
    "story",
    [
        "The tip of the finger no longer bent.",
        "She could bend neither joint.",
        "DIPJ won't flex.",
        "He has not bent the end joint since.",
        "Unable to make a fist.",
    ],
)
def test_a_lost_movement_is_the_indication(story: str) -> None:
    assert shown(f"Right ring finger, 3 May 2031. {story}\n\n{BODY}", "indication")


@pytest.mark.parametrize("body", ["The tendon could not be pulled through. ", "No flexor tendon was cut in the palm. "])
def test_findings_of_the_operation_are_no_indication(body: str) -> None:
    assert shown(f"Op: FDP repair, ring finger\n\n{body}{BODY}", "indication") == []


@pytest.mark.parametrize(
    ("end", "words"),
    [
        ("P.V.", "P.V."),
        ("K. M., consultant", "K. M., consultant"),
        ("Registrar, hands (initials on paper copy)", "Registrar, hands (initials on paper copy)"),
        ("Plastic surgeon, authorised digitally", "Plastic surgeon, authorised digitally"),
        ("Dictated and signed, staff surgeon", "Dictated and signed, staff surgeon"),
        ("Consultant hand surgeon", "Consultant hand surgeon"),
    ],
)
def test_signature(end: str, words: str) -> None:
    assert shown(f"Consent signed.\n\n{BODY}\n{end}\n", "signature") == [words]


@pytest.mark.parametrize("end", ["Dictated by surgeon. Not proofread.", "Wires out when solid.", "Home today."])
def test_no_signature(end: str) -> None:
    assert shown(f"Consent signed by her mother.\n\n{BODY}\n{end}\n", "signature") == []


@pytest.mark.parametrize(
    "end",
    [
        "Our hand therapists will see her on Friday.",
        "He is to be immobilized for 3 weeks in the cast.",
        "Early active motion on day 4 with the therapist.",
        "Told to keep it dry, stitches out at 12 days.",
    ],
)
def test_orders_without_a_heading(end: str) -> None:
    assert shown(f"Op: FDP repair\n\n{BODY}Skin closed with 5-0 nylon. Jelonet, wool.\n\n{end}\n", "instructions")


@pytest.mark.parametrize(
    "closure",
    [
        "Palm 4-0 nylon, finger 5-0 nylon. Jelonet.",
        "4-0 Ethilon throughout. Mepitel, gauze.",
        "Skin edges brought together.",
    ],
)
def test_closure_told_by_its_thread_or_its_place(closure: str) -> None:
    assert shown(f"Op: FDP repair\n\n{BODY}\n{closure}\n", "closure")


@pytest.mark.parametrize("title", ["FPL REPAIR - LEFT THUMB", "Right ring finger: exploration and FDP repair"])
def test_a_title_line_is_the_procedure(title: str) -> None:
    assert shown(f"{title}\n\n{BODY}", "procedure")


@pytest.mark.parametrize("body", ["Opened and washed. Repair looks slim.", "Looked in. Exploration easy."])
def test_a_remark_in_the_text_is_no_title(body: str) -> None:
    assert shown(f"Log of the day\n{body} {BODY}", "procedure")[0] not in body


def test_findings_are_shown_by_the_first_state_told() -> None:
    text = "Op: FDP repair, ring finger\n\nThe wound was extended. FDP was cut right across. It was sewn.\n"
    assert shown(text, "findings")[0].startswith("FDP was cut")
    other = "Op: trigger release, ring finger\n\nThe A1 pulley was thick and white. FDS and FDP both intact.\n"
    assert "The A1 pulley was thick" in shown(other, "findings")


# --- people in further turns of phrase


@pytest.mark.parametrize(
    ("opening", "words"),
    [
        ("SpR (K.B.), SHO assisting", "SpR"),
        ("Performed on 21 November 2032 by the resident consultant, axillary block", "by the resident"),
        ("op = KJ, ass = RW, anaes = Dr P", "op = KJ"),
        ("Op: W.K. / ass. Y. Local.", "Op: W.K"),
    ],
)
def test_who_operated(opening: str, words: str) -> None:
    assert shown(f"{opening}\n\n{BODY}", "surgeon")[0].startswith(words)


@pytest.mark.parametrize("body", ["I repaired the FDP with four strands. ", "I did it myself under a block. "])
def test_who_writes_in_the_first_person_operated(body: str) -> None:
    assert shown(f"Right ring finger, 3 May 2031.\n\n{body}{BODY}", "surgeon")


@pytest.mark.parametrize(
    "text",
    ["I did it with the PA helping.", "Surgeon G.L., fellow scrubbed.", "ass = RW", "Done together with our fellow."],
)
def test_who_helped(text: str) -> None:
    assert shown(f"Right thumb, 3 May 2031. {text}\n\n{BODY}", "assistant")


@pytest.mark.parametrize(
    "text",
    ["The FDP had retracted to the PIP joint.", "Nobody else was scrubbed.", "Retracted FDP stump found at A3."],
)
def test_nobody_helped(text: str) -> None:
    assert shown(f"Right thumb, 3 May 2031.\n\n{text} {BODY}", "assistant") == []


@pytest.mark.parametrize(
    "text",
    [
        "Anesthesia: general, by Dr. in guard.",
        "Anaesthesia: supraclavicular block, given by Dr. G",
        "Axillary block, Dr. C. present.",
        "Anaesth: Dr Y",
        "Narcosis: Dr. O.",
        "Anesthesia: General endotracheal, by CPT R",
        "anaes = Dr P (GA)",
        "Dr L. giving the anaesthetic.",
    ],
)
def test_who_gave_the_anaesthetic(text: str) -> None:
    assert shown(f"Right thumb, 3 May 2031.\n{text}\n\n{BODY}", "anaesthetist")


@pytest.mark.parametrize(
    "text",
    ["Ring block by the surgeon.", "GA with my colleague Dr S. assisting.", "Anaesthetic doctor:", "WALANT by me."],
)
def test_nobody_gave_the_anaesthetic(text: str) -> None:
    assert shown(f"Right thumb, 3 May 2031.\n{text}\nDate: 3 May 2031\n\n{BODY}", "anaesthetist") == []


@pytest.mark.parametrize(
    "end",
    [
        "HV",
        "TK 11/19/33",
        "RT CT2",
        "--R.V., PGY-2",
        "y.b.",
        "Dr. V.S.",
        "NV/tr",
        "gez. Dr. H. Z.",
        "Dr. M. (JR-2) for Dr. A. P. S.",
        "Recorded by Y. T.",
        "SpR (year 5)",
        "With kind regards,\nConsultant in hand surgery",
        "Dictated by PGY-4, reviewed N.D.",
        "[Dictated, not proofread]",
        "Signed SpR plastics\n\nAddendum, 19 July 2031\nThe gap was 2 mm.",
    ],
)
def test_further_signatures(end: str) -> None:
    assert shown(f"{BODY}Splint for six weeks.\n\n{end}\n", "signature")


@pytest.mark.parametrize(
    "end", ["Typed but not signed", "- OPD 10/7", "EMG 3/12", "Signature: ________", "DBS", "L RF"]
)
def test_further_endings_that_sign_nothing(end: str) -> None:
    assert shown(f"{BODY}Splint for six weeks.\n\n{end}\n", "signature") == []


# --- the rest in further turns of phrase


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("Compl -> 0", "complications"),
        ("Compl \u00d8. EBL \u00d8.", "complications"),
        ("Lost 15 ml      Trouble   nil", "complications"),
        ("After: nothing untoward; nil to lab.", "complications"),
        ("After: nothing untoward; nil to lab.", "specimens"),
        ("No comps. Nil for path.", "specimens"),
        ("I closed with 4-0 nylon.", "closure"),
        ("Wound 4-0 nylon.", "closure"),
        ("Risks incl rupture, stiff IPJ. Signed.", "consent"),
        ("Dx R palm - ski edge.", "diagnosis"),
        ("preop diagnosis laceration left index finger", "diagnosis"),
        ("Weak IP flex, sens N.", "indication"),
        ("numb and no grip.", "indication"),
        ("[Diagnosis] Left thumb: FPL laceration", "diagnosis"),
        ("Cx nil. BL <20.", "complications"),
        ("Cx nil. BL <20.", "blood_loss"),
        ("Skin staples in the forearm.", "closure"),
    ],
)
def test_elements_in_further_words(text: str, name: str) -> None:
    assert shown(f"Right ring finger.\n\n{text}\n\n{BODY}{text}\n", name)


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("The nerve had lost about a centimetre.", "blood_loss"),
        ("Specimen: silicone rod, discarded", "implants"),
        ("The anchor set was opened, not used.", "implants"),
        ("Patient: [redacted]    Location: Day Surgery 2", "indication"),
        ("I saw this lady today at ten days.", "indication"),
        ("Assistant: --Select--", "assistant"),
    ],
)
def test_words_that_show_no_element(text: str, name: str) -> None:
    assert shown(f"{text}\n\n{BODY}", name) == []


@pytest.mark.parametrize(
    ("line", "name"),
    [
        ("implants =", "implants"),
        ("Trouble ............ ", "complications"),
        ("Specimens --", "specimens"),
        ("[BLOOD LOSS -- ]", "blood_loss"),
        ("anaesthetist =", "anaesthetist"),
    ],
)
def test_a_label_left_open_shows_nothing(line: str, name: str) -> None:
    assert shown(f"Surgeon: consultant\n{line}\nwound = clean\n\n{BODY}", name) == []


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("No probs. Loss 30.", "complications"),
        ("No probs. Loss 30.", "blood_loss"),
        ("Bleeding next to nothing. Swab x2 to lab.", "blood_loss"),
        ("Bleeding next to nothing. Swab x2 to lab.", "specimens"),
        ("Form 1. T.Q. 250.", "consent"),
        ("Form 1. T.Q. 250.", "tourniquet"),
        ("Gas doctor ....... consultant", "anaesthetist"),
        ("OPERATOR  Cons. (hand)      WITH  Core trainee", "assistant"),
    ],
)
def test_elements_in_still_further_words(text: str, name: str) -> None:
    assert shown(f"Right ring finger.\n{text}\n\n{BODY}", name)


@pytest.mark.parametrize(
    ("line", "field"),
    [
        ("Swab for bacteriology taken.", "specimens"),
        ("Two swabs for culture.", "specimens"),
        ("Tourniquet 82 min. CEZ 1 g.", "antibiotics"),
        ("No feeling in dig V. Accepts operation.", "consent"),
        ("Options explained, patient agrees with the graft.", "consent"),
        ("Recognition (dg): bite wound of forearm", "diagnosis"),
    ],
)
def test_parts_told_in_translated_words(line: str, field: str) -> None:
    assert shown(f"Index FDP repaired.\n{line}\n", field)


@pytest.mark.parametrize(
    ("line", "field"),
    [("Swab count correct.", "specimens"), ("He accepts a stiff finger.", "consent")],
)
def test_words_that_only_look_like_a_part(line: str, field: str) -> None:
    assert not shown(f"Index FDP repaired.\n{line}\n", field)


@pytest.mark.parametrize(
    ("form", "present", "silent"),
    [
        (
            "Assistant     ______          Anaesthetist    Dr Roe\nBlood loss    ______ ml\n",
            "anaesthetist",
            "assistant",
        ),
        (
            "Assistant     ______          Anaesthetist    Dr Roe\nBlood loss    ______ ml\n",
            "anaesthetist",
            "blood_loss",
        ),
        ("Blood loss: ____ ml\nSpecimens: none\n", "specimens", "blood_loss"),
        ("Assistant ......   Surgeon Mr Poe\n", "surgeon", "assistant"),
    ],
)
def test_a_blank_before_its_unit_or_the_next_label(form: str, present: str, silent: str) -> None:
    """'Blood loss ____ ml': the unit is printed, and nobody filled it in."""
    assert shown(f"Ring FDP repaired.\n{form}", present)
    assert not shown(f"Ring FDP repaired.\n{form}", silent)


@pytest.mark.parametrize(
    ("text", "element"),
    [
        ("EBL 40 / nil comps / nil spec", "specimens"),
        ("A snip was taken for the laboratory.", "specimens"),
        ("Blood loss ....... 20 ml", "blood_loss"),
        ("Consent ............ signed in clinic", "consent"),
        ("Tourniquet ........ Y   250 mmHg", "tourniquet"),
        ("She was cheerful and nothing unplanned happened.", "complications"),
    ],
)
def test_further_words_of_elements(text: str, element: str) -> None:
    assert shown("Ring FDP repaired.\n" + text, element)
