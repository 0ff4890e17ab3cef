"""Nerves, arteries, bones, plates, ligaments and extensor tendons: one class of wording a test."""

import pytest
from reader_sentences import each, quote_of, told

NOTE = "Operation: repair of FDP, right ring finger\n\nFindings\nThe FDP of the ring finger was divided.\n\nDetails\n"
WRIST = "Operation: repair of FCR and FDS, left wrist\n\nDetails\n"
SHORT = {
    "RN": "digital nerve radial",
    "UN": "digital nerve ulnar",
    "RA": "digital artery radial",
    "UA": "digital artery ulnar",
}


def injuries(sentence: str, note: str = NOTE) -> dict[str, str]:
    """Read a sentence and show each structure as one line: 'ring digital nerve radial': 'complete, repaired'."""
    found = told(note + sentence, group="injuries")
    return {
        name: ", ".join(str(facts[f]) for f in ("extent", "treatment") if f in facts) for name, facts in found.items()
    }


def ring(**lines: str) -> dict[str, str]:
    return {f"ring {SHORT[name]}": line for name, line in lines.items()}


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        ("RDN transected.", ring(RN="complete")),
        ("The radial digital nerve was completely divided.", ring(RN="complete")),
        ("UDN and RDN both through.", ring(UN="complete", RN="complete")),
        ("The radial digital nerve was cut through 60 % of its width.", ring(RN="partial")),
        ("UDN one third through.", ring(UN="partial")),
        ("The ulnar digital nerve was bruised.", ring(UN="contused")),
        ("The radial digital nerve was stretched but in continuity.", ring(RN="contused")),
        ("UDN: neurapraxia only.", ring(UN="contused")),
        ("The ulnar digital nerve was found in continuity.", ring(UN="intact")),
        ("RDN ok.", ring(RN="intact")),
        ("The ulnar digital nerve was seen and was whole.", ring(UN="intact")),
    ],
)
def test_extent_of_a_nerve(sentence: str, lines: dict[str, str]) -> None:
    assert injuries(sentence) == lines


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        ("RDN was severed and joined with 9-0 nylon.", ring(RN="complete, repaired")),
        ("RDN: complete, 9-0 x 4", ring(RN="complete, repaired")),
        ("FDP done. Then RDN: 9-0 Ethilon x 3.", ring(RN="repaired")),
        ("Repair of RDN.", ring(RN="repaired")),
        ("The ulnar digital nerve had a gap of 15 mm and was grafted.", ring(UN="complete, grafted")),
        ("A 10 mm gap in the RDN was bridged with an allograft.", ring(RN="complete, grafted")),
        ("The RDN defect was reconstructed with a conduit.", ring(RN="conduit")),
        (
            "The ulnar digital nerve was divided. The gap was bridged with a collagen tube.",
            ring(UN="complete, conduit"),
        ),
        ("The ulnar digital nerve was contused and left alone.", ring(UN="contused, left")),
        ("The ulnar digital nerve was bruised; nothing was done to it.", ring(UN="contused, left")),
        ("RDN bruised, in continuity, left.", ring(RN="contused, left")),
        ("The ulnar digital nerve was divided and was not repaired.", ring(UN="complete, left")),
        ("The radial digital nerve was torn across. It was sewn with 9-0.", ring(RN="complete, repaired")),
    ],
)
def test_what_was_done_to_a_nerve(sentence: str, lines: dict[str, str]) -> None:
    assert injuries(sentence) == lines


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        ("The radial digital artery was divided and tied off.", ring(RA="complete, ligated")),
        ("Radial digital artery lacerated, clipped.", ring(RA="ligated")),
        ("RDA: both ends tied.", ring(RA="ligated")),
        ("The ulnar digital artery was coagulated.", ring(UA="ligated")),
        ("UDA anastomosed with 10-0.", ring(UA="repaired")),
        ("Radial digital artery thrombosed, left.", ring(RA="left")),
    ],
)
def test_what_was_done_to_an_artery(sentence: str, lines: dict[str, str]) -> None:
    assert injuries(sentence) == lines


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        ("Both neurovascular bundles were intact.", ring(RN="intact", RA="intact", UN="intact", UA="intact")),
        ("NVBs intact on both sides", ring(RN="intact", RA="intact", UN="intact", UA="intact")),
        ("The radial bundle was intact.", ring(RN="intact", RA="intact")),
        ("Ulnar vessel-nerve bundle unharmed.", ring(UN="intact", UA="intact")),
        (
            "Radial bundle divided, nerve repaired 9-0, artery ligated.",
            ring(RN="complete, repaired", RA="complete, ligated"),
        ),
        (
            "Ulnar digital nerve and artery divided; the nerve was sutured, the artery tied.",
            ring(UN="complete, repaired", UA="complete, ligated"),
        ),
    ],
)
def test_bundles(sentence: str, lines: dict[str, str]) -> None:
    assert injuries(sentence) == lines


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        (
            "Both digital nerves were divided. The radial was sutured and the ulnar grafted.",
            ring(RN="complete, repaired", UN="complete, grafted"),
        ),
        ("Nerves: radial intact, ulnar divided and repaired.", ring(RN="intact", UN="complete, repaired")),
        ("Nerves - radial: intact; ulnar: bruised", ring(RN="intact", UN="contused")),
        ("The radial digital nerve was severed. The ulnar one was intact.", ring(RN="complete", UN="intact")),
        ("The ulnar digital nerve was severed. The other was unharmed.", ring(UN="complete", RN="intact")),
        (
            "On the radial side nerve and artery were divided, on the ulnar side both were intact.",
            ring(RN="complete", RA="complete", UN="intact", UA="intact"),
        ),
        ("RDN intact, UDN too.", ring(RN="intact", UN="intact")),
        ("RDN intact. UDN likewise.", ring(RN="intact", UN="intact")),
    ],
)
def test_one_side_and_the_other(sentence: str, lines: dict[str, str]) -> None:
    assert injuries(sentence) == lines


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        ("Digital nerves: both intact.", ring(RN="intact", UN="intact")),
        ("The nerves were seen and were whole on each side.", ring(RN="intact", UN="intact")),
        ("The nerve on the ulnar side was transected.", ring(UN="complete")),
        ("The nerve on the thumb side was intact.", ring(RN="intact")),
        ("Digital artery, radial side: ligated.", ring(RA="ligated")),
        ("The ulnar nerve of the finger was intact.", ring(UN="intact")),
        ("The radial finger nerve was severed.", ring(RN="complete")),
        ("Ulnar digital nerve divided, the artery beside it intact.", ring(UN="complete", UA="intact")),
    ],
)
def test_names_and_sides(sentence: str, lines: dict[str, str]) -> None:
    assert injuries(sentence) == lines


@pytest.mark.parametrize(
    "sentence",
    ["Neither digital nerve was injured.", "No injury to the digital nerves.", "The digital nerves were not injured."],
)
def test_injury_denied(sentence: str) -> None:
    assert injuries(sentence) == ring(RN="intact", UN="intact")


@pytest.mark.parametrize(
    "sentence",
    [
        "Nerves and vessels not explored.",
        "Digital nerves not inspected as sensation was normal.",
        "Sensation on the ulnar side was absent before surgery.",
        "Digital nerve block with bupivacaine.",
        "We planned a nerve graft if needed.",
        "The digital nerves were retracted with vessel loops.",
        "A strip of extensor retinaculum was sutured round the phalanx.",
        "The tourniquet was released and both arteries bled.",
        "Skin and nerve were handled gently.",
    ],
)
def test_nothing_told(sentence: str) -> None:
    assert injuries(sentence) == {}


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        ("FDP and the radial digital nerve were divided.", ring(RN="complete")),
        ("Divided: FDP, RDN. Intact: FDS, UDN.", ring(RN="complete", UN="intact")),
        ("Not cut: FDS, ulnar digital nerve.", ring(UN="intact")),
        ("Unharmed are the superficialis and the ulnar digital nerve.", ring(UN="intact")),
    ],
)
def test_in_a_list_with_tendons(sentence: str, lines: dict[str, str]) -> None:
    assert injuries(sentence) == lines


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        ("The volar plate was torn and repaired with 4-0 PDS.", {"ring volar plate": "repaired"}),
        ("Volar plate left alone, undamaged.", {"ring volar plate": "intact"}),
        (
            "The radial collateral ligament was divided and repaired.",
            {"ring collateral ligament radial": "complete, repaired"},
        ),
        ("UCL repaired with an anchor.", {"ring collateral ligament ulnar": "repaired"}),
        ("EDC and EIP were both divided and repaired with 4-0.", {"ring extensor tendon": "complete, repaired"}),
        ("The extensor tendon was cut for 30 %, left unsutured.", {"ring extensor tendon": "partial, left"}),
    ],
)
def test_plates_ligaments_extensors(sentence: str, lines: dict[str, str]) -> None:
    assert injuries(sentence) == lines


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        ("The proximal phalanx was fractured and fixed with two K-wires.", {"ring phalanx": "fixed"}),
        ("P1 fracture plated.", {"ring phalanx": "fixed"}),
        ("P1 was fractured obliquely. It was fixed with two lag screws.", {"ring phalanx": "fixed"}),
        ("The fifth metacarpal was broken and was plated.", {"small metacarpal": "fixed"}),
        ("The second metacarpal fracture was fixed with a plate.", {"index metacarpal": "fixed"}),
        ("Chip fracture of P2, not fixed.", {"ring phalanx": "left"}),
        ("The PIP joint was transfixed with a K-wire.", {}),
    ],
)
def test_bones(sentence: str, lines: dict[str, str]) -> None:
    assert injuries(sentence) == lines


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        (
            "Median nerve intact, ulnar nerve divided and repaired with 8-0.",
            {"median nerve": "intact", "ulnar nerve": "complete, repaired"},
        ),
        (
            "The median nerve was intact, as was the radial artery.",
            {"median nerve": "intact", "radial artery": "intact"},
        ),
        ("Ulnar nerve and artery not injured.", {"ulnar nerve": "intact", "ulnar artery": "intact"}),
        ("Four cables were laid into the median nerve with 9-0.", {"median nerve": "grafted"}),
        (
            "A branch of the superficial radial nerve was cut and repaired.",
            {"radial nerve branch": "complete, repaired"},
        ),
        (
            "The common digital nerve to the third web was transected and coapted.",
            {"common digital nerve": "complete, repaired"},
        ),
    ],
)
def test_wrist_and_palm(sentence: str, lines: dict[str, str]) -> None:
    assert injuries(sentence, WRIST) == lines


@pytest.mark.parametrize(
    ("note", "lines"),
    [
        (
            "Operation: FDP and digital nerve repair, left index finger\n\n"
            "The radial digital nerve was divided. The nerve was joined with 9-0 nylon.",
            {"index digital nerve radial": "complete, repaired"},
        ),
        (
            "Operation: repair of FDP and radial digital nerve, right small finger\n\n"
            "The nerve was joined with three sutures of 9-0 nylon.",
            {"small digital nerve radial": "repaired"},
        ),
    ],
)
def test_the_nerve_of_the_title_is_the_one_of_the_text(note: str, lines: dict[str, str]) -> None:
    assert injuries("", note) == lines


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        (
            "Index: RDN through, 9-0. Ring: UDN ok.",
            {"index digital nerve radial": "complete, repaired", "ring digital nerve ulnar": "intact"},
        ),
        ("The ulnar digital nerve of the index finger was bruised.", {"index digital nerve ulnar": "contused"}),
    ],
)
def test_of_which_finger(sentence: str, lines: dict[str, str]) -> None:
    note = "Operation: flexor repair, left index and ring fingers\n\nFindings\nIndex and ring FDP divided.\n\nDetails\n"
    assert injuries(sentence, note) == lines


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        ("RDN cut, UDN not seen.", ring(RN="complete")),
        ("The ulnar digital artery had been cut and was tied.", ring(UA="complete, ligated")),
        ("RDN cut back to healthy fascicles.", {}),
        ("The radial digital nerve was partly torn.", ring(RN="partial")),
        ("RDN: partially lacerated, sutured 9-0.", ring(RN="partial, repaired")),
        ("The radial digital nerve was gone over 8 mm and was grafted.", ring(RN="complete, grafted")),
        (
            "The ulnar digital nerve had a bruise on it but was in continuity, and I left it alone.",
            ring(UN="contused, left"),
        ),
        ("Radial and ulnar nerve of the finger without injury.", ring(RN="intact", UN="intact")),
    ],
)
def test_cut_torn_lost_bruised(sentence: str, lines: dict[str, str]) -> None:
    assert injuries(sentence) == lines


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        ("Complete severance of the deep flexor in zone 2 and of the ulnar finger nerve.", ring(UN="complete")),
        ("Section of the profundus and of the radial digital artery.", ring(RA="complete")),
        ("I grafted the RDN with a strand of nerve from the forearm, sewn with 9-0 nylon.", ring(RN="grafted")),
        ("RDN severed. It was grafted with a length of nerve from the forearm.", ring(RN="complete, grafted")),
        ("RDN severed. A 2 mm collagen conduit was sewn to the nerve ends with 9-0.", ring(RN="complete, conduit")),
        ("RDN severed. The nerve defect was bridged with a tube.", ring(RN="complete, conduit")),
        ("RDN severed. Nerve? Grafted, two cables.", ring(RN="complete, grafted")),
        ("UDN severed. Its artery was cut as well and I ligated that.", ring(UN="complete", UA="complete, ligated")),
        ("The radial digital artery was ligated; its companion nerve was contused.", ring(RA="ligated", RN="contused")),
        (
            "Nervus digitalis ulnaris completely through, arteria digitalis ulnaris intact.",
            ring(UN="complete", UA="intact"),
        ),
        (
            "Both bundles seen: ulnar artery and both nerves intact, radial artery clipped.",
            ring(UA="intact", RN="intact", UN="intact", RA="ligated"),
        ),
    ],
)
def test_turns_of_phrase(sentence: str, lines: dict[str, str]) -> None:
    assert injuries(sentence) == lines


@pytest.mark.parametrize(
    ("form", "lines"),
    [
        ("17. Nerves     radial digital: partial cut, 40%     ulnar digital: intact", ring(RN="partial", UN="intact")),
        ("18. Arteries   radial digital: ______   ulnar digital: intact", ring(UA="intact")),
        ("RDN ............. intact\nUDN ............. divided", ring(RN="intact", UN="complete")),
    ],
)
def test_forms(form: str, lines: dict[str, str]) -> None:
    assert injuries(form) == lines


@pytest.mark.parametrize(
    ("sentence", "lines"),
    [
        (
            "Both digital nerves of both fingers were intact.",
            {f"{d} digital nerve {s}": "intact" for d in ("index", "ring") for s in ("radial", "ulnar")},
        ),
        (
            "The digital nerves of both fingers were intact except the ulnar of the ring, contused, left.",
            {
                "index digital nerve radial": "intact",
                "index digital nerve ulnar": "intact",
                "ring digital nerve radial": "intact",
                "ring digital nerve ulnar": "contused, left",
            },
        ),
    ],
)
def test_nerves_of_both_fingers(sentence: str, lines: dict[str, str]) -> None:
    note = "Operation: flexor repair, left index and ring fingers\n\nFindings\nIndex and ring FDP divided.\n\nDetails\n"
    assert injuries(sentence, note) == lines


@pytest.mark.parametrize(
    "repair", ["The ulnar digital nerve was then coapted with 9-0.", "UDN: 9-0 nylon, 3 stitches."]
)
def test_repair_goes_to_the_finger_whose_nerve_was_cut(repair: str) -> None:
    note = (
        "Operation: flexor repair, left index and ring fingers\n\nFindings\nThe FDP of the index finger was divided, "
        "its ulnar digital nerve transected. The FDP of the ring finger was divided.\n\nDetails\nRing FDP sewn.\n"
    )
    assert injuries(repair, note) == {"index digital nerve ulnar": "complete, repaired"}


def test_words_that_prove_it() -> None:
    proof = quote_of(NOTE + "The ulnar digital nerve was contused.", "ring digital nerve ulnar", "extent", "injuries")
    assert proof == "ulnar digital nerve was contused"


# --- further turns of phrase

WRIST = "Left wrist, zone V.\n\nFindings: FCU 100% div.\n"
RING = "Op: FDP repair, left ring finger\n\nFDP was cut. "


@pytest.mark.parametrize(
    ("text", "entry", "name", "expected"),
    [
        (WRIST + "Median n. 60 % div. Radial a. intact.", "median nerve", "extent", "partial"),
        (WRIST + "Median nerve 80 percent division, sutured.", "median nerve", "extent", "partial"),
        (WRIST + "Median n. 60 % div. Radial a. intact.", "radial artery", "extent", "intact"),
        (WRIST + "Ulnar a. and n. intact.", "ulnar nerve", "extent", "intact"),
        (WRIST + "Ulnar a. and n. intact.", "ulnar artery", "extent", "intact"),
        (RING + "Ulnar dig art thrombosed -> tied 6/0.", "ring digital artery ulnar", "treatment", "ligated"),
        (
            RING + "The radial digital artery was cut; since the finger was pink I tied it off.",
            "ring digital artery radial",
            "treatment",
            "ligated",
        ),
        (RING + "NVB x2 ok.", "ring digital nerve radial", "extent", "intact"),
        (RING + "The radial digital nerve was normal.", "ring digital nerve radial", "extent", "intact"),
        (RING + "RDN \u00f7, RDA \u00f7, UNVB ok.", "ring digital nerve radial", "extent", "complete"),
        (RING + "NVB x2 ok.", "ring digital nerve ulnar", "extent", "intact"),
        (RING + "Nerve collateral ulnar sectioned.", "ring digital nerve ulnar", "extent", "complete"),
        (RING + "Ulnar collateral nerve divided, 9-0 nylon.", "ring digital nerve ulnar", "treatment", "repaired"),
        (RING + "Skin 5-0.\n\nRadial digital\nnerve: intact. Done.", "ring digital nerve radial", "extent", "intact"),
    ],
)
def test_further_words_of_nerves_and_vessels(text: str, entry: str, name: str, expected: str) -> None:
    assert told(text, name, group="injuries")[entry] == {name: expected}


def test_a_digit_without_the_word_finger() -> None:
    text = (
        "R small + R ring. FDP cut in both fingers.\n\nNerves: small radial digital nerve contused, left. "
        "Vessels all fine on small: both digital arteries intact."
    )
    assert set(told(text, group="injuries")) == {
        "small digital nerve radial",
        "small digital artery radial",
        "small digital artery ulnar",
    }


@pytest.mark.parametrize("text", ["I tied it over the button.", "The Penrose was tied off at the base."])
def test_what_is_tied_is_no_vessel(text: str) -> None:
    assert told(RING + text, "treatment", group="injuries") == {}


ALL_FOUR = [f"ring digital {what} {side}" for what in ("artery", "nerve") for side in ("radial", "ulnar")]


@pytest.mark.parametrize(
    "text",
    [
        "Nerves and vessels both sides in continuity.",
        "Nerves/vessels: all four intact.",
        "Digital nerves and arteries seen on both sides, none cut.",
    ],
)
def test_nerves_and_vessels_named_together(text: str) -> None:
    assert told(RING + text, group="injuries") == {entry: {"extent": "intact"} for entry in ALL_FOUR}


@pytest.mark.parametrize(
    ("text", "entry", "expected"),
    [
        ("Radial nerve and artery good. UDN cut, artery of that side cut also.", "digital artery ulnar", "complete"),
        ("Radial nerve and artery good. UDN cut, artery of that side cut also.", "digital artery radial", "intact"),
        ("Artery of the both sides were normal.", "digital artery ulnar", "intact"),
        ("Nerve injury: [ ] radial [ ] ulnar [x] none", "digital nerve radial", "intact"),
        ("Nerve injury: none", "digital nerve ulnar", "intact"),
        ("UDN bruised, in cont. RDN + both DAs fine.", "digital artery radial", "intact"),
        ("The radial digital artery was tied off; the ulnar one was patent.", "digital artery ulnar", "intact"),
        ("The ulnar digital nerve: divided over roughly 80 per cent.", "digital nerve ulnar", "partial"),
    ],
)
def test_further_states_of_nerves_and_vessels(text: str, entry: str, expected: str) -> None:
    assert told(RING + text, "extent", group="injuries")[f"ring {entry}"] == {"extent": expected}


@pytest.mark.parametrize(
    "text", ["Nerve injury: [x] radial [ ] none", "Risk of nerve injury: explained, none asked for."]
)
def test_answers_that_tell_of_no_whole_nerve(text: str) -> None:
    assert "intact" not in [f.get("extent") for f in told(RING + text, group="injuries").values()]


@pytest.mark.parametrize(
    "note",
    [
        "Both digital nerves of the ring finger were intact bar the radial one.",
        "The digital nerves of the ring finger were all intact except for the radial, which was not explored.",
    ],
)
def test_what_is_excepted_from_the_intact_is_not_intact(note: str) -> None:
    shown = told(f"Ring FDP repaired. {note}", "extent", group="injuries")
    assert shown == {"ring digital nerve ulnar": {"extent": "intact"}}


@pytest.mark.parametrize(
    ("bone", "found"),
    [
        ("Phalanges not hurt.", {"small phalanx": "intact"}),
        ("Small finger proximal phalanx: no fracture.", {"small phalanx": "intact"}),
        ("The middle phalanx was not broken.", {"small phalanx": "intact"}),
        ("Metacarpals not reached by the blade.", {"metacarpal": "intact"}),
        ("Proximal phalanx fractured, two K-wires.", {}),
        ("The phalanx was not explored.", {}),
    ],
)
def test_bones_told_whole(bone: str, found: dict[str, str]) -> None:
    note = f"Left small finger, zone II. FDP cut through. {bone}"
    assert each(note, "extent", group="injuries") == found


@pytest.mark.parametrize("name", ["nervus digitalis {}", "digital nerve {}", "digital nerve ({})"])
def test_a_side_behind_its_nerve(name: str) -> None:
    ulnar, radial = name.format("ulnar"), name.format("radial")
    note = f"Left small finger. FDP cut through. The {ulnar} was divided; the {radial} was intact."
    assert each(note, "extent", group="injuries") == {
        "small digital nerve ulnar": "complete",
        "small digital nerve radial": "intact",
    }


def test_a_side_before_the_next_vessel_stays_with_it() -> None:
    note = "Left small finger. FDP cut through. Ulnar digital nerve, radial digital artery divided."
    assert each(note, "extent", group="injuries") == {
        "small digital nerve ulnar": "complete",
        "small digital artery radial": "complete",
    }
