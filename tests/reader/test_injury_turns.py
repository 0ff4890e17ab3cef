"""Nerves, vessels, bones and joints in the words of many surgeons: sides apart, lists, what is only passed by."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. Both neurovascular bundles were protected.",
            {
                "ring digital artery radial": {"extent": "intact"},
                "ring digital artery ulnar": {"extent": "intact"},
                "ring digital nerve radial": {"extent": "intact"},
                "ring digital nerve ulnar": {"extent": "intact"},
            },
        ),
        (
            "Ring finger. Radial and ulnar digital nerves were protected.",
            {"ring digital nerve radial": {"extent": "intact"}, "ring digital nerve ulnar": {"extent": "intact"}},
        ),
        (
            "Ring finger. UDN ok, RDN ok (seen).",
            {"ring digital nerve radial": {"extent": "intact"}, "ring digital nerve ulnar": {"extent": "intact"}},
        ),
        (
            "Thumb. RDN seen, in cont., UDN seen, in cont.",
            {"thumb digital nerve radial": {"extent": "intact"}, "thumb digital nerve ulnar": {"extent": "intact"}},
        ),
        (
            "Ring finger. Nerves: radial: intact; ulnar: complete, repaired 9-0 nylon.",
            {
                "ring digital nerve radial": {"extent": "intact"},
                "ring digital nerve ulnar": {"extent": "complete", "treatment": "repaired"},
            },
        ),
        (
            "Ring finger. The digital nerves on both sides were intact, the arteries likewise.",
            {
                "ring digital artery radial": {"extent": "intact"},
                "ring digital artery ulnar": {"extent": "intact"},
                "ring digital nerve radial": {"extent": "intact"},
                "ring digital nerve ulnar": {"extent": "intact"},
            },
        ),
        (
            "Ring finger. UDN divided, repaired; UDA divided, tied off. Radial bundle intact.",
            {
                "ring digital artery radial": {"extent": "intact"},
                "ring digital artery ulnar": {"extent": "complete", "treatment": "ligated"},
                "ring digital nerve radial": {"extent": "intact"},
                "ring digital nerve ulnar": {"extent": "complete", "treatment": "repaired"},
            },
        ),
        (
            "Ring finger. The ulnar neurovascular bundle was divided; nerve repaired with 9-0, artery left.",
            {
                "ring digital artery ulnar": {"extent": "complete", "treatment": "left"},
                "ring digital nerve ulnar": {"extent": "complete", "treatment": "repaired"},
            },
        ),
        (
            "Wrist. UA 100%, UN 100%. MN bruised but in continuity.",
            {
                "median nerve": {"extent": "contused"},
                "ulnar artery": {"extent": "complete"},
                "ulnar nerve": {"extent": "complete"},
            },
        ),
        (
            "Wrist. Median nerve completely divided and repaired under the microscope. Ulnar nerve intact.",
            {"median nerve": {"extent": "complete", "treatment": "repaired"}, "ulnar nerve": {"extent": "intact"}},
        ),
        ("Wrist. The ulnar nerve was only inspected and covered with fat.", {}),
        (
            "Wrist. Median nerve bruised but whole, and I did nothing to it.",
            {"median nerve": {"extent": "contused", "treatment": "left"}},
        ),
        (
            "Wrist. Radial artery: side hole, closed with 8-0 Prolene.",
            {"radial artery": {"extent": "partial", "treatment": "repaired"}},
        ),
        (
            "Wrist. Radial artery divided and ligated, ulnar artery pulsatile.",
            {"radial artery": {"extent": "complete", "treatment": "ligated"}, "ulnar artery": {"extent": "intact"}},
        ),
        (
            "Ring finger. The radial digital nerve was half cut through and repaired with three 9-0 sutures.",
            {"ring digital nerve radial": {"extent": "partial", "treatment": "repaired"}},
        ),
        (
            "Ring finger. Radial digital nerve gap 8 mm, bridged with a conduit.",
            {"ring digital nerve radial": {"extent": "complete", "treatment": "conduit"}},
        ),
        (
            "Ring finger. The ulnar digital nerve had a gap of 8 mm and was bridged with a graft from the forearm.",
            {"ring digital nerve ulnar": {"extent": "complete", "treatment": "grafted"}},
        ),
        (
            "Ring finger. Ulnar digital artery, torn across, repaired with 10-0.",
            {"ring digital artery ulnar": {"extent": "complete", "treatment": "repaired"}},
        ),
        (
            "Ring finger. Radial digital nerve was bruised and left.",
            {"ring digital nerve radial": {"extent": "contused", "treatment": "left"}},
        ),
        (
            "Ring finger. Volar plate of the PIP joint had a rent which took two sutures of 4-0 PDS.",
            {"ring volar plate": {"treatment": "repaired"}},
        ),
        ("Ring finger. Volar plate torn, repaired with 3-0 PDS.", {"ring volar plate": {"treatment": "repaired"}}),
        ("Ring finger. Proximal phalanx fracture fixed with two K-wires.", {"ring phalanx": {"treatment": "fixed"}}),
        (
            "Ring finger. Tuft fracture of the distal phalanx needed no fixation.",
            {"ring phalanx": {"treatment": "left"}},
        ),
        (
            "Ring finger. Radial collateral ligament torn and repaired with 2-0 Ethibond.",
            {"ring collateral ligament radial": {"treatment": "repaired"}},
        ),
        (
            "Common digital nerve to the third web divided, repaired 9-0.",
            {"common digital nerve": {"extent": "complete", "treatment": "repaired"}},
        ),
        (
            "Ring finger. Both digital nerves OK? Radial: intact. Ulnar: not seen.",
            {"ring digital nerve radial": {"extent": "intact"}},
        ),
        ("Ring finger. Digital nerves not explored.", {}),
        (
            "Index and middle fingers. Index: RDN cut, 9-0. Middle: both bundles intact.",
            {
                "index digital nerve radial": {"extent": "complete", "treatment": "repaired"},
                "middle digital artery radial": {"extent": "intact"},
                "middle digital artery ulnar": {"extent": "intact"},
                "middle digital nerve radial": {"extent": "intact"},
                "middle digital nerve ulnar": {"extent": "intact"},
            },
        ),
        (
            "Small finger. Nerves: small radial digital nerve contused, left.",
            {"small digital nerve radial": {"extent": "contused", "treatment": "left"}},
        ),
        (
            "Ring finger. If the nerve is divided we will graft. Nerves seen and intact on both sides.",
            {"ring digital nerve radial": {"extent": "intact"}, "ring digital nerve ulnar": {"extent": "intact"}},
        ),
        ("Ring finger. RDN: 9-0 nylon x4 under loupes.", {"ring digital nerve radial": {"treatment": "repaired"}}),
        (
            "Ring finger. NV bundles: radial intact, ulnar nerve divided, ulnar artery divided.",
            {
                "ring digital artery radial": {"extent": "intact"},
                "ring digital artery ulnar": {"extent": "complete"},
                "ring digital nerve radial": {"extent": "intact"},
                "ring digital nerve ulnar": {"extent": "complete"},
            },
        ),
        ("Ring finger. Passed around the phalanx deep to the extensor mechanism and sutured to itself.", {}),
        ("Ring finger. The distal stump was sutured to the volar plate and periosteum.", {}),
        ("Ring finger. Extensor tendon not injured.", {"ring extensor tendon": {"extent": "intact"}}),
    ],
)
def test_other_structures(note: str, expected: dict[str, dict[str, object]]) -> None:
    assert told(note, "extent", "treatment", group="injuries") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("Ulnar digital nerve repair in continuity.", {"extent": "intact"}),
        ("The ulnar digital nerve repair was intact.", {"extent": "intact"}),
        ("The ulnar digital nerve was repaired with 9-0 nylon.", {"treatment": "repaired"}),
    ],
)
def test_an_earlier_nerve_repair_that_held_is_no_deed(words: str, expected: dict[str, object]) -> None:
    note = "Re-exploration of the small finger. FDP repair ruptured. " + words
    assert told(note, group="injuries") == {"small digital nerve ulnar": expected}


@pytest.mark.parametrize("words", ["swept aside and protected", "retracted and protected"])
def test_bundles_held_out_of_the_way(words: str) -> None:
    shown = told(f"Ring finger. Both neurovascular bundles were {words}.", group="injuries")
    assert {facts["extent"] for facts in shown.values()} == {"intact"} and len(shown) == 4


@pytest.mark.parametrize("name", ["pedicle", "vascular pedicle"])
def test_a_pedicle_is_a_bundle(name: str) -> None:
    note = f"Index finger. Radial {name}: nerve sectioned, artery sectioned. Ulnar {name} intact."
    shown = told(note, "extent", group="injuries")
    assert {entry: facts["extent"] for entry, facts in shown.items()} == {
        "index digital artery radial": "complete",
        "index digital artery ulnar": "intact",
        "index digital nerve radial": "complete",
        "index digital nerve ulnar": "intact",
    }
