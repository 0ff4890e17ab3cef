"""Headings, sections and sentences: every class of layout shown by at least two differently worded examples.

All examples are invented; what counts as a heading is common practice, no source.
"""

import pytest
from reader_sentences import each, told

from notereader.reader.page import Page, Sentence
from notereader.reader.pipeline import language


def page_of(text: str) -> Page:
    page: Page = language()(text).user_data["page"]
    return page


def sentences_of(text: str) -> list[str]:
    page = page_of(text)
    return [" ".join(page.raw(s.i, s.j).split()) for s in page.sentences]


def section_of(text: str, words: str) -> str:
    """Return the section of the sentence that holds the words."""
    page = page_of(text)
    at = text.index(words)
    found: Sentence = next(s for s in page.sentences if page.starts[s.i] <= at < page.ends[s.j - 1])
    return found.section


# --- headings believed


@pytest.mark.parametrize(
    ("text", "words", "section"),
    [
        ("PLAN: Splint for five weeks.", "Splint", "instructions"),
        ("Post-operative orders. Sling for a day.", "Sling", "instructions"),
        ("Post-operatively: hand therapy on Monday.", "hand therapy", "instructions"),
        ("P0ST-0P. Slab for a month.", "Slab", "instructions"),
        ("Policy: sling and rest.", "sling", "instructions"),
        ("What was there\nFDP cut through.", "FDP cut", "findings"),
        ("At operation: FDP cut through.", "FDP cut", "findings"),
        ("lndication: cannot bend the tip.", "cannot", "indication"),
        ("Why operate?  The tip does not bend.", "does not bend", "indication"),
        ("Background. Fell through a window.", "Fell", "indication"),
        ("Loss: about 20 ml", "about 20", "blood_loss"),
        ("Second pair of hands: nurse", "nurse", "assistant"),
    ],
)
def test_a_heading_heads_what_follows(text: str, words: str, section: str) -> None:
    assert section_of(f"Surgeon: consultant\n\n{text}\n", words) == section


@pytest.mark.parametrize(
    ("text", "words", "section"),
    [
        ("Surgeon   hand fellow      Asst   house officer      EBL   5 ml", "house officer", "assistant"),
        ("Date of op   5 May 2031        Injured   4 May 2031", "4 May", "injury_date"),
        ("| Surgeon | registrar | Assistant | student |", "student", "assistant"),
        ("Tourniquet  250 mmHg     Antibiotic  cefuroxime", "cefuroxime", "antibiotics"),
    ],
)
def test_labels_in_columns_need_no_colon(text: str, words: str, section: str) -> None:
    assert section_of(text + "\nFDP repaired.\n", words) == section


@pytest.mark.parametrize("text", ["ANESTHESIOLOGIST:    Staff\n", "Surgeon     attending\n", "Assistant | fellow\n"])
def test_a_role_behind_a_label_is_its_value(text: str) -> None:
    page = page_of(text)
    assert len(page.headings) == 1


@pytest.mark.parametrize(
    ("text", "words", "section"),
    [
        ("X-ray: anchor inside the bone.", "anchor", "narrative"),
        ("Hand-held retractors: two.", "retractors", "narrative"),
        ("Cons. anaesthetist present.", "present", "narrative"),
        ("Inj. tetanus given.", "tetanus", "narrative"),
        ("Time-out. The tendon was sewn. Skin closed.", "tendon was sewn", "narrative"),
        ("HAND / FLEXOR TENDON SHEET 4", "FLEXOR", "narrative"),
    ],
)
def test_ordinary_words_head_nothing(text: str, words: str, section: str) -> None:
    assert section_of(f"FDP was cut.\n{text}\nIt was repaired.", words) == section


@pytest.mark.parametrize(
    "text",
    [
        "Hilltop Day Surgery\nDate: 3 May 2031\nFDP repaired.",
        "MOORSIDE HOSPITAL, DAY SURGERY\nDATE: 3 May 2031\nFDP repaired.",
    ],
)
def test_a_heading_does_not_span_a_line_end(text: str) -> None:
    assert section_of(text, "3 May") == "date"
    assert sentences_of(text)[0].casefold().endswith("surgery")


@pytest.mark.parametrize(
    "top",
    ["| Digit | Tendon | Zone | Cut | Done |", "finger   tendon   zone   core   done"],
)
def test_the_top_row_of_a_grid_is_no_heading(top: str) -> None:
    page = page_of(f"Surgeon: registrar\n\n{top}\n")
    assert [h.value for h in page.headings] == ["surgeon"]


def test_both_diagnoses_of_a_bare_pair() -> None:
    text = "PREOP: cut left thumb\nPOSTOP: FPL cut, left thumb\nPROC: FPL repair\n"
    assert section_of(text, "cut left") == section_of(text, "FPL cut") == "diagnosis"
    other = "Pre-op: cut index finger.\nPost-op: the same with nerve.\nOp: repair.\n"
    assert section_of(other, "the same") == "diagnosis"


@pytest.mark.parametrize("label", ["Therapy", "Treatment"])
def test_treatment_heads_the_titles_or_the_orders_by_its_place(label: str) -> None:
    before = f"Diagnosis: FDP cut.\n{label}: suture of the tendon.\n\nFindings: FDP cut.\n"
    assert section_of(before, "suture") == "procedure"
    after = f"Diagnosis: FDP cut.\nFindings: FDP cut.\n\n{label}: splint six weeks.\n"
    assert section_of(after, "splint") == "instructions"


def test_spoken_headings_end_with_their_sentence() -> None:
    text = "Seen with the fellow. Diagnosis, FDP laceration. The arm was draped. Complications, none. Dressed."
    assert section_of(text, "FDP laceration") == "diagnosis"
    assert section_of(text, "draped") == "narrative"
    assert section_of(text, "none") == "complications"


def test_a_note_on_one_line_keeps_its_sections() -> None:
    text = "NOTE SURGEON: HAND FELLOW ASSISTANT: NONE DIAGNOSIS: FDP CUT PROCEDURE: FDP REPAIR PLAN: SPLINT"
    kinds = ["surgeon", "assistant", "diagnosis", "procedure", "instructions"]
    assert [h.value for h in page_of(text).headings] == kinds
    small = "note. Surgeon: fellow. Date: 3 May 2031. Op: FDP repair. Findings: FDP cut. Plan: splint."
    kinds = ["surgeon", "date", "procedure", "findings", "instructions"]
    assert [h.value for h in page_of(small).headings] == kinds


# --- where sections end


@pytest.mark.parametrize("heading", ["3  GETTING READY", "HOW WE PREPARED"])
def test_an_unknown_heading_in_capitals_ends_the_story(heading: str) -> None:
    text = f"STORY\nCut on a pane. Consent signed.\n{heading}\nCuff at 250. Cefazolin.\n"
    assert section_of(text, "Cuff") == "narrative"


@pytest.mark.parametrize("start", ["(1) Incision in the palm.", "- Incision in the palm."])
def test_a_one_line_heading_ends_at_the_empty_line_whatever_follows(start: str) -> None:
    assert section_of(f"Antibiotics: none.\n\n{start}\n", "Incision") == "narrative"


@pytest.mark.parametrize("heading", ["For the trainee: more strands hold better.", "TEACHING POINT: gentle hands."])
def test_a_teaching_remark_ends_with_its_paragraph(heading: str) -> None:
    text = f"FDP repaired.\n\n{heading}\n\nEBL nil. Skin nylon.\n"
    assert section_of(text, "Skin nylon") == "narrative"


def test_the_narrative_under_procedure_is_no_list_of_titles() -> None:
    told = (
        "What was done\nA3 was opened. The flap was trimmed smooth with scissors. The nick in the slip was left "
        "alone and the cut edge of the sheath was not sutured again.\n"
    )
    assert section_of(told, "trimmed") == "narrative"
    assert section_of("What was done\n1. Repair of FDP\n2. Repair of the nerve\n", "Repair of FDP") == "procedure"


@pytest.mark.parametrize("heading", ["HISTORY", "Background"])
def test_a_story_may_have_several_paragraphs(heading: str) -> None:
    text = f"{heading}\nA cook cut her palm.\n\nYears ago the ring FDP was cut.\n\nPROCEDURE\nFDP repaired.\n"
    assert section_of(text, "Years ago") == "indication"
    told = f"{heading}\nA cook cut her palm.\n\nUnder tourniquet the FDP was found cut.\n\nPLAN\nSplint.\n"
    assert section_of(told, "Under tourniquet") == "narrative"


@pytest.mark.parametrize("line", ["Other: no driving", "Sutures: out at two weeks"])
def test_lines_of_the_orders_do_not_end_them(line: str) -> None:
    text = f"FDP repaired.\n\nPLAN\nSplint six weeks\n{line}\nTherapy day 3\n"
    assert section_of(text, "Therapy day") == "instructions"


@pytest.mark.parametrize("word", ["ADDENDUM", "Late entry", "Addendum"])
def test_an_addendum_goes_on_to_the_end(word: str) -> None:
    text = f"FDP repaired with six strands.\n\n{word}: read again today.\n\n1. Four strands, not six.\n"
    assert section_of(text, "Four strands") == "addendum"


# --- sentences


@pytest.mark.parametrize(
    ("text", "sentences"),
    [
        ("Zone I. FDS sound.", 2),
        ("The palm was opened in an S. The flap was held.", 2),
        ("Cefazolin 2 g. Tourniquet for an hour.", 2),
        ("Blood loss 5 ml approx. Counts correct.", 2),
        ("Bruner, extended prox and dist. FDP cut.", 2),
        ("Signed by K. L. Surgeon.", 1),
        ("Assoc. Prof. operated.", 1),
        ("Dist. stump short. Prox. end in the palm.", 2),
        ("Procedure: 1. Exploration. 2. Repair of A2.", 2),
        ("Emergency th. 6, evening list", 1),
    ],
)
def test_full_stops_that_end_sentences_and_those_that_do_not(text: str, sentences: int) -> None:
    assert len(sentences_of(text)) == sentences


@pytest.mark.parametrize(
    "text",
    [
        "14. Next        Dorsal splint for five weeks, wrist neutral, MCPs\n                30. Place and hold later.",
        "Post op: splint for six weeks, then it is to come off, sutures out day\n14. Ring if it catches.",
    ],
)
def test_a_figure_that_goes_on_is_no_list_number(text: str) -> None:
    assert "\n".join(sentences_of(text)).count("\n") == 1


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("fdp cut through\nfds cut through\nnerves intact\n", 3),
        ("the tendon was cut. it was sewn with nylon.\nskin closed.", 3),
        ("FDP cut right through\nFDS intact\n", 2),
    ],
)
def test_short_lines_and_small_letters_are_no_running_text(text: str, count: int) -> None:
    assert len(sentences_of(text)) == count


def test_wrapped_lines_go_on() -> None:
    text = (
        "The wound over the middle phalanx was extended in both directions and the\n"
        "profundus was found divided. It had drawn back to the level of the proximal\n"
        "crease and was fetched with a soft tube."
    )
    assert len(sentences_of(text)) == 2


@pytest.mark.parametrize(
    "label",
    ["Gap after repair:", "Nerve:"],
)
def test_a_form_line_left_empty_says_nothing(label: str) -> None:
    text = f"FDP repaired.\n{label}\nGlide: free\n"
    assert section_of(text, label) == "admin"
    assert section_of(f"FDP repaired.\n{label} none\nGlide: free\n", label) != "admin"


@pytest.mark.parametrize(
    "text", ["", "   ", ":", "PLAN:", "| | |", " Surgeon   fellow     Asst   intern", "1. 2. 3.", "Skin?"]
)
def test_scraps_are_read_without_a_fault(text: str) -> None:
    assert sum(s.j - s.i for s in page_of(text).sentences) == len(page_of(text).words)


# --- labels that one sentence answers


@pytest.mark.parametrize(
    ("text", "words", "section"),
    [
        (
            "TECHNIQUE\nTourniquet: 250 mmHg, 77 minutes. Saline. For the FCU a repair with 2-0 Ethibond was chosen, "
            "finished with a running suture of 6-0 Prolene all round.",
            "For the FCU",
            "narrative",
        ),
        (
            "Anaesthesia: axillary block. The wound was opened, the sheath entered, and the profundus of the ring "
            "finger was found cut through and was sewn.",
            "the profundus",
            "narrative",
        ),
        ("Tourniquet: upper arm, 250 mmHg. Off at 60 minutes.", "Off at", "tourniquet"),
        (
            "Consent: written. Stiffness, infection, rupture of the repair and a second operation were spoken of with "
            "the patient and with her husband at length.",
            "rupture",
            "consent",
        ),
    ],
)
def test_what_a_short_label_heads_in_a_long_paragraph(text: str, words: str, section: str) -> None:
    assert section_of(text, words) == section


# --- ordinary words that head nothing


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("The FPL was trimmed by 4 mm, then: core 3-0 PDS, eight strands, ten mm each side.", "core 3-0"),
        (
            "I looked at it while the end joint was passively opened and\nclosed: it ran freely and no gap was seen.",
            "it ran freely",
        ),
        ("The sheath was cleaned and then\nfinished: the join lies under A2 and is smooth all round.", "the join"),
    ],
)
def test_a_word_that_goes_on_with_a_sentence_heads_nothing(text: str, words: str) -> None:
    assert section_of(text, words) == "narrative"


@pytest.mark.parametrize(
    ("text", "section"),
    [
        ("Op: FPL, L thumb\n\nRx:\n- 3-0 Prolene, pull-out, button\n- wound closed", "narrative"),
        ("Findings: FPL off.\n\nRx: button, 3-0 Prolene pull-out through the nail", "narrative"),
        ("Findings: FPL off.\n\nRx: splint six weeks, pull-out button checked at four weeks", "instructions"),
    ],
)
def test_a_treatment_with_sizes_of_sutures_was_done(text: str, section: str) -> None:
    assert section_of(text, "pull-out") == section


@pytest.mark.parametrize(
    ("note", "entry"),
    [
        (
            "Ring FDP cut through, repaired.\ntrouble ............\nremoved ............\nskin ........ 4-0 nylon",
            {"ring FDP": {"extent": "complete", "treatment": "repaired"}},
        ),
        (
            "Ring FDP cut through, repaired.\nother .............. lumbrical half cut, not stitched",
            {"ring FDP": {"extent": "complete", "treatment": "repaired"}},
        ),
    ],
)
def test_dotted_labels_left_empty_and_muscles_say_nothing_of_the_tendon(note: str, entry: dict[str, object]) -> None:
    assert told(note, "extent", "treatment") == entry


def test_steps_of_a_guided_record_head_what_follows() -> None:
    text = "Step 3 of 8  Operation name\nFDP repair, R MF\nStep 4 of 8  Findings\nFDP through"
    assert section_of(text, "FDP repair") == "procedure"
    assert section_of(text, "FDP through") == "findings"


def test_a_dotted_label_with_its_answer_below_ends_the_story() -> None:
    text = (
        "7.  What happened ............. wire cutter, left palm\n"
        "8.  What was wrong ............ \n"
        "    FDP to the small finger 80%. FDS to the small finger 100%. Ring finger tendons both all right.\n"
        "9.  What was done .............\n"
        "    FDP: four-strand cruciate, 3/0 PDS.\n"
    )
    assert section_of(text, "FDP to the small") == "findings"
    assert told(text, "extent", "strands") == {
        "small FDP": {"extent": "partial", "strands": 4},
        "small FDS": {"extent": "complete"},
        "ring FDP": {"extent": "intact"},
        "ring FDS": {"extent": "intact"},
    }


@pytest.mark.parametrize(
    ("text", "words", "section"),
    [
        (
            "Quick story: dog bite to the small finger, washed out, then sent to me. At surgery there were two "
            "tracks and the FDP was torn.",
            "the FDP was torn",
            "narrative",
        ),
        (
            "History: cut by glass at home on Monday. On exploration the profundus of the ring finger was divided.",
            "the profundus",
            "narrative",
        ),
        (
            "History: cut by glass at home. At operation in 2029 elsewhere the profundus of this finger was repaired.",
            "the profundus",
            "indication",
        ),
    ],
)
def test_an_operation_told_within_the_story(text: str, words: str, section: str) -> None:
    assert section_of(text, words) == section


@pytest.mark.parametrize("name", ["M-Tang", "Lim-Tsai"])
def test_the_name_of_a_stitch_is_no_name_of_a_patient(name: str) -> None:
    note = (
        f"Ring finger.\nInjury zone  IIC\nFDP  complete\nCORE SUTURE (FDP)\nName  {name}     Suture  4-0 looped nylon\n"
    )
    assert each(note, "stitch") == {"ring FDP": name.lower()}
    assert each(note, "zone") == {"ring FDP": "IIC"}
    assert each(note, "size") == {"ring FDP": "4-0"}
