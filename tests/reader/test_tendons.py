"""How much of each tendon was cut, at which zone, and what was done."""

import pytest
from reader_sentences import quote_of, told

STATE = ("extent", "extent_percent", "treatment")


def state(note: str) -> dict[str, dict[str, object]]:
    return told(note, *STATE)


@pytest.mark.parametrize(
    ("sentence", "words"),
    [
        ("Ring finger: FDP completely divided.", "divided"),
        ("The FDP of the ring finger was transected.", "transected"),
        ("Ring FDP cut clean through.", "through"),
        ("Complete laceration of the ring FDP.", "Complete"),
        ("Ring finger. 100 % laceration of FDP.", "100"),
        ("The profundus of the ring finger had been severed.", "severed"),
        ("Ring finger FDP ruptured.", "ruptured"),
    ],
)
def test_complete_cuts(sentence: str, words: str) -> None:
    note = "Right hand. " + sentence
    assert state(note)["ring FDP"]["extent"] == "complete"
    assert words in quote_of(note, "ring FDP", "extent")


@pytest.mark.parametrize(
    ("sentence", "percent"),
    [
        ("Index FDP 60 % cut.", 60),
        ("A 40% partial laceration of the index FDP.", 40),
        ("The index FDP was cut through two thirds of its width.", 67),
        ("Index finger: FDP half cut.", 50),
        ("Index FDP lacerated, 30 to 35 per cent of its width.", 35),
        ("Index finger FDP partial laceration, seventy percent.", 70),
    ],
)
def test_partial_cuts_with_their_share(sentence: str, percent: float) -> None:
    shown = state("Left hand. " + sentence)["index FDP"]
    assert (shown["extent"], shown["extent_percent"]) == ("partial", percent)


@pytest.mark.parametrize(
    "sentence", ["Index FDP partially cut.", "Partial laceration of the index FDP.", "The index FDP was only nicked."]
)
def test_partial_cuts_without_a_figure(sentence: str) -> None:
    assert state("Left hand. " + sentence) == {"index FDP": {"extent": "partial"}}


@pytest.mark.parametrize(
    "sentence",
    [
        "Middle finger: FDP divided, FDS intact.",
        "The FDS of the middle finger was intact. The FDP was divided.",
        "Middle FDP divided. FDS of the middle finger not injured.",
        "Middle finger FDP divided; FDS unharmed.",
    ],
)
def test_intact_tendons(sentence: str) -> None:
    shown = state("Right hand. " + sentence)
    assert shown["middle FDS"] == {"extent": "intact"}
    assert shown["middle FDP"]["extent"] == "complete"


@pytest.mark.parametrize(
    "sentence",
    [
        "Middle FDP divided. The FDS was not seen.",
        "Middle FDP divided. FDS: [intact / partial / complete].",
        "Middle FDP divided. The skin over the FDS was intact.",
        "Middle FDP divided. It was not clear whether the FDS was intact.",
        "Middle FDP divided. FDS intact?",
        "Middle FDP divided. Preoperatively the FDS was thought to be intact.",
        "Middle FDP divided. FDS not intact.",
        "Middle FDP divided. Had the FDS been intact we would have left it.",
        "Middle FDP divided. [ ] FDS intact",
    ],
)
def test_no_intact_tendon_where_none_was_found(sentence: str) -> None:
    assert state("Right hand. " + sentence).get("middle FDS", {}).get("extent") != "intact"


@pytest.mark.parametrize(
    ("sentence", "zone"),
    [
        ("Ring FDP divided in zone II and repaired with 4-0 nylon.", "II"),
        ("Zone 2 injury. Ring FDP divided and repaired with 3-0 nylon.", "II"),
        ("Ring finger, zone IIB: FDP divided.", "IIB"),
        ("Zone 1c laceration of the ring FDP, complete.", "IC"),
        ("Flexor zone III: ring FDP cut through.", "III"),
        ("Ring FDP divided at the wrist, zone V.", "V"),
        ("Ring FDP divided. Zone: II", "II"),
    ],
)
def test_zones(sentence: str, zone: str) -> None:
    assert told("Right hand. " + sentence, "zone") == {"ring FDP": {"zone": zone}}


@pytest.mark.parametrize(
    "sentence",
    [
        "Ring FDP divided. Extensor tendon cut in zone 3.",
        "Ring FDP divided. Zone: I / II / III / IV / V",
        "Ring FDP divided. Brought to the level 2 trauma centre.",
        "Ring FDP divided. In zone II the outcome is always guarded: so we teach.",
    ],
)
def test_zones_of_others(sentence: str) -> None:
    assert "zone" not in told("Right hand. " + sentence, "zone").get("ring FDP", {})


@pytest.mark.parametrize(
    ("note", "zones"),
    [
        (
            "Right hand. Index FDP divided in zone I and small FDP divided in zone III.",
            {"index FDP": {"zone": "I"}, "small FDP": {"zone": "III"}},
        ),
        (
            "Left hand. Middle finger: FDP divided, zone IIC. Ring finger: FDP divided, zone IIA.",
            {"middle FDP": {"zone": "IIC"}, "ring FDP": {"zone": "IIA"}},
        ),
    ],
)
def test_each_digit_its_zone(note: str, zones: dict[str, dict[str, object]]) -> None:
    assert told(note, "zone") == zones


@pytest.mark.parametrize(
    ("sentence", "treatment"),
    [
        ("The small FDP was divided and repaired with 4-0 nylon.", "repaired"),
        ("Small FDP divided; tenorrhaphy done with a 3-0 core suture.", "repaired"),
        ("Small FDP avulsed and reinserted with a pull-out suture over a button.", "reinserted"),
        ("The small FDP was avulsed; reattached to the distal phalanx with a bone anchor.", "reinserted"),
        ("Small FDP divided, grafted with palmaris longus.", "grafted"),
        ("Small FDP divided; a tendon graft was placed to bridge the small FDP.", "grafted"),
        ("Small FDP divided. The small FDP was tenodesed to the middle phalanx.", "tenodesed"),
        ("Small FDP 30 % cut, edges trimmed, not repaired.", "trimmed"),
        ("Small FDP 25 % partial cut. The flap was trimmed smooth.", "trimmed"),
        ("Small FDP beyond repair and excised.", "excised"),
        ("The small FDP was resected.", "excised"),
        ("Small FDP partially cut, 20 %, and left alone.", "left"),
        ("Small FDP divided. It was not repaired.", "left"),
    ],
)
def test_what_was_done(sentence: str, treatment: str) -> None:
    assert state("Left hand. " + sentence)["small FDP"]["treatment"] == treatment


@pytest.mark.parametrize(
    "sentence",
    [
        "Small FDP divided. Plan: repair of FDP next week.",
        "Small FDP divided. The digital nerve was repaired with 9-0 nylon.",
        "Small FDP divided. The skin was repaired with 5-0 nylon.",
        "Small FDP divided. We could repair the FDP only after a rod.",
        "Small FDP divided. If the infection settles the FDP will be repaired.",
        "Small FDP divided. The FDP was retracted into the palm and retrieved.",
        "Small FDP divided. Repair: [yes / no]",
        "Small FDP divided. Repair of FDP was offered and refused.",
        "Small FDP divided. In 2020 the FDP of the other hand was repaired.",
        "Consent was taken for repair of FDP, with the risk of rupture. Small FDP divided.",
    ],
)
def test_no_repair_where_none_was_done(sentence: str) -> None:
    assert state("Left hand. " + sentence).get("small FDP", {}).get("treatment") != "repaired"


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index finger. FDP and FDS completely divided. FDP repaired with 4-0 nylon. The FDS was excised.",
            {
                "index FDP": {"extent": "complete", "treatment": "repaired"},
                "index FDS": {"extent": "complete", "treatment": "excised"},
            },
        ),
        (
            "Left middle finger. FDP and both slips of FDS cut. FDP repaired with 3-0 nylon. The FDS was not repaired.",
            {
                "middle FDP": {"extent": "complete", "treatment": "repaired"},
                "middle FDS": {"extent": "complete", "treatment": "left"},
            },
        ),
        (
            "Right ring finger. FDP divided, repaired with 4-0 nylon. Radial slip of FDS divided and repaired "
            "with 5-0 Prolene, ulnar slip of FDS intact.",
            {
                "ring FDP": {"extent": "complete", "treatment": "repaired"},
                "ring FDS radial": {"extent": "complete", "treatment": "repaired"},
                "ring FDS ulnar": {"extent": "intact"},
            },
        ),
        (
            "Left index finger. FDP intact. FDS ulnar slip divided and excised, radial slip of FDS left alone "
            "and intact.",
            {
                "index FDP": {"extent": "intact"},
                "index FDS ulnar": {"extent": "complete", "treatment": "excised"},
                "index FDS radial": {"extent": "intact"},
            },
        ),
        (
            "Left small finger. FDP severed and FDS too. Both tendons repaired with 4-0 nylon.",
            {
                "small FDP": {"extent": "complete", "treatment": "repaired"},
                "small FDS": {"extent": "complete", "treatment": "repaired"},
            },
        ),
        (
            "Right thumb. FPL divided and repaired with 3-0 Prolene. Palmaris longus intact.",
            {"thumb FPL": {"extent": "complete", "treatment": "repaired"}, "PL": {"extent": "intact"}},
        ),
        (
            "Wrist laceration. FCR and FCU cut completely; FCR repaired with 3-0 nylon, FCU not repaired.",
            {
                "FCR": {"extent": "complete", "treatment": "repaired"},
                "FCU": {"extent": "complete", "treatment": "left"},
            },
        ),
    ],
)
def test_two_tendons_two_fates(note: str, expected: dict[str, dict[str, object]]) -> None:
    assert state(note) == expected


@pytest.mark.parametrize(
    "note",
    [
        "PROCEDURE: Repair of FDP and FDS, ring finger.\n\nNARRATIVE: The ring FDP was divided and repaired "
        "with 4-0 nylon. The FDS was intact.",
        "PROCEDURE: FDP + FDS repair middle finger.\n\nFINDINGS: Middle FDP cut through, FDS "
        "intact.\n\nNARRATIVE: FDP of the middle finger repaired, 3-0 nylon.",
    ],
)
def test_the_body_is_followed_against_the_list(note: str) -> None:
    shown = state(note)
    digit = "ring" if "ring" in note else "middle"
    assert shown[f"{digit} FDP"]["treatment"] == "repaired"
    assert shown.get(f"{digit} FDS", {}).get("treatment") != "repaired"


@pytest.mark.parametrize(
    "note",
    [
        "Right carpal tunnel release. The flexor tendons were intact. Median nerve decompressed.",
        "Left ring finger trigger release. A1 pulley divided. FDP and FDS intact.",
        "Right thumb, ulnar digital nerve repaired with 9-0 nylon. FPL seen and intact.",
    ],
)
def test_notes_without_a_tendon_repair(note: str) -> None:
    assert not [entry for entry, facts in state(note).items() if "treatment" in facts]


@pytest.mark.parametrize(
    "sentence",
    [
        "Left in place was the middle FDS.",
        "Left middle finger explored; the wound was left open.",
        "The left middle finger was washed out.",
    ],
)
def test_left_as_a_side_or_of_a_wound_is_no_treatment(sentence: str) -> None:
    assert state("Middle FDP divided and repaired with 4-0 nylon. " + sentence).get("middle FDP") == {
        "extent": "complete",
        "treatment": "repaired",
    }
