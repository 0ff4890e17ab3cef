"""What was done to which tendon: slips apart, the others and the rest, pronouns, lists, anchors at hand, grafts."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. FDP and FDS completely divided. FDP repaired with 3-0 Ethibond. FDS "
            "repaired, ulnar slip only; radial slip cut out.",
            {
                "ring FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
                "ring FDS radial": {"extent": "complete", "treatment": "excised"},
                "ring FDS ulnar": {"extent": "complete", "treatment": "repaired"},
            },
        ),
        (
            "Ring finger. FDP and both FDS slips completely divided. FDP repaired with 4-0 "
            "Ethibond. The radial slip of FDS was repaired with 5-0 Prolene, the ulnar slip "
            "excised.",
            {
                "ring FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0"},
                "ring FDS radial": {"extent": "complete", "treatment": "repaired", "size": "5-0"},
                "ring FDS ulnar": {"extent": "complete", "treatment": "excised"},
            },
        ),
        (
            "Ring finger. FDP and FDS completely divided. FDP repaired with 4-0 Ethibond. FDS: "
            "radial slip only, one figure-of-eight, 5-0 Ethibond. Ulnar slip cut off short.",
            {
                "ring FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0"},
                "ring FDS radial": {"extent": "complete", "size": "5-0", "treatment": "repaired"},
                "ring FDS ulnar": {"extent": "complete", "treatment": "excised"},
            },
        ),
        (
            "Ring finger. FDP divided completely and repaired with 3-0 Ethibond. FDS radial limb "
            "divided: it would have crowded the tunnel, so I resected it back to the A2 entrance.",
            {
                "ring FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
                "ring FDS radial": {"extent": "complete", "treatment": "excised"},
            },
        ),
        (
            "Ring finger. FDP completely divided. FDS: radial slip gone, ulnar slip holding by "
            "half its width. FDP repaired with 3-0 Ethibond. Ulnar slip of FDS left as found. "
            "Stump of the radial slip cut back and discarded.",
            {
                "ring FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
                "ring FDS radial": {"extent": "complete", "treatment": "excised"},
                "ring FDS ulnar": {"extent": "partial", "extent_percent": 50, "treatment": "left"},
            },
        ),
        (
            "Index finger. FDP divided completely, repaired 4-0 Ethibond. FDS ulnar slip 40%, flap"
            " snipped off. Radial slip fine.",
            {
                "index FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0"},
                "index FDS radial": {"extent": "intact"},
                "index FDS ulnar": {"extent": "partial", "extent_percent": 40, "treatment": "trimmed"},
            },
        ),
        (
            "Index finger. FDP divided completely, repaired 4-0 Ethibond. FDS nick: loose flap snipped off, no suture.",
            {
                "index FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0"},
                "index FDS": {"extent": "partial", "treatment": "trimmed"},
            },
        ),
        (
            "Index finger. FDP divided completely, repaired 4-0 Ethibond. FDS 30 percent, both "
            "slips, edges smoothed and not sewn.",
            {
                "index FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0"},
                "index FDS": {"extent": "partial", "extent_percent": 30, "treatment": "trimmed"},
            },
        ),
        (
            "Index finger. FDP divided completely, repaired 4-0 Ethibond. FDS 30 percent, frayed "
            "edge shaved, not sewn.",
            {
                "index FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0"},
                "index FDS": {"extent": "partial", "extent_percent": 30, "treatment": "trimmed"},
            },
        ),
        (
            "Index FDP and FDS: frayed edge of each shaved, not sewn. Both cut 20%.",
            {
                "index FDP": {"treatment": "trimmed", "extent": "partial", "extent_percent": 20},
                "index FDS": {"treatment": "trimmed", "extent": "partial", "extent_percent": 20},
            },
        ),
        (
            "Small finger. FDP 20%, trimmed. FDS untouched.",
            {
                "small FDP": {"extent": "partial", "extent_percent": 20, "treatment": "trimmed"},
                "small FDS": {"extent": "intact"},
            },
        ),
        (
            "Small finger. FDP partially cut, 60%. First thought: just trim. More than half, so "
            "repaired with a modified Kessler 4-0.",
            {"small FDP": {"extent": "partial", "extent_percent": 60, "treatment": "repaired", "size": "4-0"}},
        ),
        (
            "Small finger. FDP completely divided; repaired with 4-0 Prolene. FDS too frayed to "
            "hold a stitch, excised.",
            {
                "small FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0"},
                "small FDS": {"treatment": "excised"},
            },
        ),
        (
            "Small finger. FDP completely divided; repaired with 4-0 Prolene. FDS completely "
            "divided; not repaired to avoid crowding.",
            {
                "small FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0"},
                "small FDS": {"extent": "complete", "treatment": "left"},
            },
        ),
        (
            "Small finger. FDP completely divided; repaired with 4-0 Prolene. The superficialis was sacrificed.",
            {
                "small FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0"},
                "small FDS": {"treatment": "excised"},
            },
        ),
        (
            "Small finger. Both tendons completely divided. Only the profundus was repaired, with 4-0 Prolene.",
            {
                "small FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0"},
                "small FDS": {"extent": "complete"},
            },
        ),
        (
            "Small finger. Both tendons completely divided. Profundus repaired with 4-0 Prolene, "
            "superficialis discarded.",
            {
                "small FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0"},
                "small FDS": {"extent": "complete", "treatment": "excised"},
            },
        ),
        (
            "FDP of the index and middle fingers completely divided, repaired with 3-0 and 4-0 Ethibond respectively.",
            {
                "index FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
                "middle FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0"},
            },
        ),
        (
            "FDP of index, middle and ring completely divided. Each was repaired with 3-0 Ethibond.",
            {
                "index FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
                "middle FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
                "ring FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
            },
        ),
        (
            "FDP of index, middle and ring completely divided. The index was repaired with 4-0 "
            "Ethibond, the others with 3-0.",
            {
                "index FDP": {"extent": "complete", "size": "4-0", "treatment": "repaired"},
                "middle FDP": {"extent": "complete", "size": "3-0", "treatment": "repaired"},
                "ring FDP": {"extent": "complete", "size": "3-0", "treatment": "repaired"},
            },
        ),
        (
            "FDP of index, middle and ring completely divided. The index was repaired with 4-0 "
            "Ethibond. The remaining two were repaired with 3-0 Prolene.",
            {
                "index FDP": {"extent": "complete", "size": "4-0", "treatment": "repaired"},
                "middle FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
                "ring FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
            },
        ),
        (
            "FDP of index, middle and ring completely divided. All three were repaired with 4-0 Ethibond.",
            {
                "index FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0"},
                "middle FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0"},
                "ring FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0"},
            },
        ),
        (
            "Middle finger. FDP and FDS completely divided. Both were repaired with 4-0 Ethibond.",
            {
                "middle FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0"},
                "middle FDS": {"extent": "complete", "treatment": "repaired", "size": "4-0"},
            },
        ),
        (
            "Middle finger. FDP and FDS completely divided. The former was repaired with 3-0 "
            "Ethibond, the latter with 4-0 Ethibond.",
            {
                "middle FDP": {"extent": "complete", "size": "3-0", "treatment": "repaired"},
                "middle FDS": {"extent": "complete", "size": "4-0", "treatment": "repaired"},
            },
        ),
        (
            "Middle finger. FDP and FDS completely divided. The profundus was repaired with 3-0 "
            "Ethibond and the superficialis likewise.",
            {
                "middle FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
                "middle FDS": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
            },
        ),
        (
            "Middle finger. FDP completely divided. It was repaired with 3-0 Ethibond.",
            {"middle FDP": {"extent": "complete", "size": "3-0", "treatment": "repaired"}},
        ),
        (
            "MIDDLE FINGER:\nFDP completely divided.\nRepaired 3-0 Ethibond.\nRING FINGER:\nFDP "
            "completely divided.\nRepaired 4-0 Ethibond.",
            {
                "middle FDP": {"extent": "complete", "size": "3-0", "treatment": "repaired"},
                "ring FDP": {"extent": "complete", "size": "4-0", "treatment": "repaired"},
            },
        ),
        (
            "Middle: FDP cut clean through, 3-0 Ethibond core. Ring: same, 4-0 Ethibond core.",
            {
                "middle FDP": {"extent": "complete", "size": "3-0", "treatment": "repaired"},
                "ring FDP": {"extent": "complete", "size": "4-0", "treatment": "repaired"},
            },
        ),
        (
            "Right ring finger FDP repair. The tendon was completely divided and repaired with a "
            "3-0 Ethibond core suture.",
            {"ring FDP": {"treatment": "repaired", "extent": "complete", "size": "3-0"}},
        ),
        (
            "PROCEDURE: Repair FDP and FDS left small finger.\nNARRATIVE: Both tendons were found "
            "completely divided. The FDS was repaired with 4-0 Prolene, then the FDP with 3-0 "
            "Prolene.",
            {
                "small FDP": {"treatment": "repaired", "extent": "complete", "size": "3-0"},
                "small FDS": {"treatment": "repaired", "extent": "complete", "size": "4-0"},
            },
        ),
        (
            "PROCEDURE: Repair FDP and FDS left small finger.\nNARRATIVE: FDP was completely "
            "divided, repaired with 3-0 Prolene. FDS was completely divided; we excised it.",
            {
                "small FDP": {"treatment": "repaired", "extent": "complete", "size": "3-0"},
                "small FDS": {"treatment": "excised", "extent": "complete"},
            },
        ),
        (
            "Ring FDP avulsed. Reattached to the distal phalanx with a suture anchor.",
            {"ring FDP": {"extent": "complete", "treatment": "reinserted"}},
        ),
        (
            "Ring FDP completely divided with a 5 mm distal stump; advanced and fixed to bone with"
            " a pull-out suture over a button.",
            {"ring FDP": {"extent": "complete", "treatment": "reinserted"}},
        ),
        (
            "Ring FDP completely divided with a distal stump of 12 mm. We had a bone anchor in the"
            " room in case the stump turned out too short. It was repaired end to end with 3-0 "
            "Ethibond.",
            {"ring FDP": {"extent": "complete", "size": "3-0", "treatment": "repaired"}},
        ),
        (
            "Consented for repair / button / nothing. Ring FDP completely divided, direct repair with 3-0 Ethibond.",
            {"ring FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"}},
        ),
        (
            "Thumb. FPL completely ruptured; distal stump tenodesed over the IP joint.",
            {"thumb FPL": {"extent": "complete", "treatment": "tenodesed"}},
        ),
        (
            "FDS 5: too thin for a core and tenodesed to FDS 4. FDS 4 completely divided, repaired 3-0 Ticron.",
            {
                "ring FDS": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
                "small FDS": {"treatment": "tenodesed"},
            },
        ),
        (
            "FDP of the small finger was sutured side to side to the ring FDP.",
            {"small FDP": {"treatment": "tenodesed"}},
        ),
        (
            "Thumb. FPL half cut and left alone.",
            {"thumb FPL": {"extent": "partial", "extent_percent": 50, "treatment": "left"}},
        ),
        (
            "Middle FDP 30% cut; no repair was thought necessary.",
            {"middle FDP": {"extent": "partial", "extent_percent": 30, "treatment": "left"}},
        ),
        (
            "Middle FDP 30% cut, which needed no suture.",
            {"middle FDP": {"extent": "partial", "extent_percent": 30, "treatment": "left"}},
        ),
        (
            "Middle FDP 30% cut, nothing done.",
            {"middle FDP": {"extent": "partial", "extent_percent": 30, "treatment": "left"}},
        ),
        (
            "Middle FDP 40% cut. It was not sutured.",
            {"middle FDP": {"extent": "partial", "extent_percent": 40, "treatment": "left"}},
        ),
        (
            "Middle FDP 40% cut, managed without repair.",
            {"middle FDP": {"extent": "partial", "extent_percent": 40, "treatment": "left"}},
        ),
        (
            "The flexor tendon of the thumb was completely divided and repaired with 3-0 Ethibond.",
            {"thumb FPL": {"extent": "complete", "treatment": "repaired", "size": "3-0"}},
        ),
        (
            "Whereas the index profundus was repaired with 3-0 Ethibond, the two superficialis "
            "tendons of the middle and ring, which are slighter, were each joined by a figure-of-"
            "eight of 4-0 Ethibond.",
            {
                "index FDP": {"treatment": "repaired", "size": "3-0"},
                "middle FDS": {"treatment": "repaired", "size": "4-0"},
                "ring FDS": {"treatment": "repaired", "size": "4-0"},
            },
        ),
        (
            "The middle finger superficialis, which was flat at that level, received two "
            "horizontal mattress sutures of 4-0 Ethibond.",
            {"middle FDS": {"treatment": "repaired", "size": "4-0"}},
        ),
        (
            "All of the FDP tendons were repaired with 3-0 Prolene; index, middle, ring and small "
            "FDP had been completely severed.",
            {
                "index FDP": {"treatment": "repaired", "size": "3-0", "extent": "complete"},
                "middle FDP": {"treatment": "repaired", "size": "3-0", "extent": "complete"},
                "ring FDP": {"treatment": "repaired", "size": "3-0", "extent": "complete"},
                "small FDP": {"treatment": "repaired", "size": "3-0", "extent": "complete"},
            },
        ),
        (
            "FPL, FCR and PL completely divided. FPL and FCR repaired 3-0 Ethibond, PL left.",
            {
                "thumb FPL": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
                "FCR": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
                "PL": {"extent": "complete", "treatment": "left"},
            },
        ),
        (
            "PL taken as graft for the nerve. FCR completely divided and repaired with 2-0 Ethibond.",
            {"FCR": {"extent": "complete", "treatment": "repaired", "size": "2-0"}},
        ),
        (
            "Ring finger. FDP completely divided. If the tendon cannot be repaired it will be "
            "grafted. Repaired with 3-0 Ethibond.",
            {"ring FDP": {"extent": "complete", "size": "3-0", "treatment": "repaired"}},
        ),
        (
            "The patient consented to repair of FDP and FDS of the ring finger. On exploration "
            "ring FDP completely divided, FDS intact. FDP repaired with 3-0 Ethibond.",
            {
                "ring FDP": {"treatment": "repaired", "extent": "complete", "size": "3-0"},
                "ring FDS": {"extent": "intact"},
            },
        ),
        (
            "Ring finger: FDP completely divided (4 strand, 3-0 Ethibond). Small finger: FDP intact.",
            {
                "ring FDP": {"extent": "complete", "size": "3-0", "treatment": "repaired"},
                "small FDP": {"extent": "intact"},
            },
        ),
        (
            "1) Index: FDP 100%, sewn 3-0 Ethibond\n2) Middle: FDP 100%, sewn 4-0 Ethibond\n3) Ring: explored, nil",
            {
                "index FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
                "middle FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0"},
            },
        ),
        (
            "D2: FDP completely divided, 3-0 Ethibond. D3: FDP completely divided, 4-0 Ethibond.",
            {
                "index FDP": {"extent": "complete", "size": "3-0", "treatment": "repaired"},
                "middle FDP": {"extent": "complete", "size": "4-0", "treatment": "repaired"},
            },
        ),
        (
            "FDP III completely divided, repaired 3-0 Ethibond.",
            {"middle FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"}},
        ),
        (
            "Second ray: profundus completely divided, repaired 3-0 Ethibond. Third ray: profundus"
            " completely divided, repaired with 4-0 Ethibond.",
            {
                "index FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
                "middle FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0"},
            },
        ),
        (
            "The little finger's FDP had been completely severed and was joined with 3-0 Ethibond;"
            " that of the ring finger was untouched.",
            {
                "ring FDP": {"extent": "intact"},
                "small FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
            },
        ),
        (
            "The little finger's FDP had been completely severed and was joined with 3-0 Ethibond;"
            " that of the ring finger, also completely severed, with 4-0 Ethibond.",
            {
                "ring FDP": {"extent": "complete", "size": "4-0", "treatment": "repaired"},
                "small FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
            },
        ),
    ],
)
def test_treatments(note: str, expected: dict[str, dict[str, object]]) -> None:
    assert told(note, "extent", "extent_percent", "treatment", "zone", "size") == expected


@pytest.mark.parametrize(
    "body",
    [
        "FPL trimmed 4 mm, core of 3-0 PDS, eight strands.",
        "The ends of the FPL were trimmed by 3 mm. A four-strand core of 3-0 nylon was put in.",
    ],
)
def test_a_tendon_cut_through_is_not_trimmed_where_a_core_holds_it(body: str) -> None:
    assert told("Left thumb. FPL cut through. " + body, "treatment") == {"thumb FPL": {"treatment": "repaired"}}


@pytest.mark.parametrize("title", ["suture of both deep flexors, left", "repair of both FDP, left; nerve suture"])
def test_left_behind_a_title_is_a_side(title: str) -> None:
    note = (
        f"Diagnosis: cut of ring and small finger\nOperation: {title}.\n\nFindings: FDP of ring and small cut through."
    )
    assert "left" not in {facts["treatment"] for facts in told(note, "treatment").values()}


@pytest.mark.parametrize(
    "words", ["Common digital nerve bruised, unbroken. Left.", "The digital artery was in spasm. Left alone."]
)
def test_left_after_another_structure_says_nothing_of_the_tendon(words: str) -> None:
    note = f"Ring finger. FDS divided completely. {words}"
    assert told(note, "treatment") == {}


@pytest.mark.parametrize(
    "words", ["No diastasis of the profundus repair was observed.", "No gap at the FDP repair was observed."]
)
def test_a_gap_not_observed_leaves_no_tendon(words: str) -> None:
    note = f"Ring finger. FDP divided completely and repaired, four-strand 3-0 Prolene. {words}"
    assert told(note, "treatment") == {"ring FDP": {"treatment": "repaired"}}


@pytest.mark.parametrize(
    "note",
    [
        "Signed for: FPL repair +/- graft.\nFPL cut clean through, zone I. FPL to bone.\nMini anchor x1 in P2.",
        "Procedure: FPL repair.\nFPL completely divided, zone I, left thumb. Bone anchor in the phalanx, 3/0 Ethibond.",
        "FPL of the left thumb completely divided, zone I. FPL to bone with a suture anchor, 3/0 Ethibond.",
    ],
)
def test_to_bone_needs_no_verb(note: str) -> None:
    assert told(note, "treatment") == {"thumb FPL": {"treatment": "reinserted"}}


@pytest.mark.parametrize("words", ["FPL to bone distance 5 mm", "An anchor in the cupboard was not needed"])
def test_words_near_bone_that_reinsert_nothing(words: str) -> None:
    note = f"Left thumb. FPL completely divided and repaired, four-strand 3-0 Ethibond. {words}."
    assert told(note, "treatment") == {"thumb FPL": {"treatment": "repaired"}}


@pytest.mark.parametrize(
    ("words", "value"),
    [
        ("20% cut on radial edge, smooth, left alone.", "left"),
        ("30% cut on the ulnar side of it, tidy, not sutured.", "left"),
        ("25% cut on the radial edge, shallow, but frayed, trimmed.", "trimmed"),
    ],
)
def test_a_partial_cut_dealt_with_at_the_end_of_its_line(words: str, value: str) -> None:
    found = told(f"Right index finger. FDP\n- {words}\nFDS\n- intact", "treatment")
    assert found == {"index FDP": {"treatment": value}}
    assert "mechanism" not in told(f"Right index finger. FDP\n- {words}", group="operation").get("", {})


def test_a_nerve_left_alone_at_the_end_of_its_line() -> None:
    words = "FDP 20% cut on radial edge.\nRDN bruised on its radial edge over the phalanx, smooth, left alone."
    assert told(f"Right index finger. {words}", "treatment") == {}
