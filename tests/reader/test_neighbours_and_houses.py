"""Names that are no subject: a neighbour's for a border, another house's for a repair, 'epi' for adrenaline."""

import itertools

import pytest
from reader_sentences import told

_TOLD = "FDP was intact. FDS was divided completely."
_SIDES = (
    "The wound lay on the ring finger side.",
    "1 cm wound over P1, RF side.",
    "The cut ran along the ring finger border.",
    "The wound, on the ring finger aspect, was 1 cm long.",
    "It had come in from the index side.",
    "A cut on the IF edge.",
)


@pytest.mark.parametrize("side", _SIDES)
def test_a_neighbour_names_a_border(side: str) -> None:
    found = told(f"Right middle finger laceration.\n{side} {_TOLD}", "extent")
    assert found == {"middle FDP": {"extent": "intact"}, "middle FDS": {"extent": "complete"}}


@pytest.mark.parametrize(
    ("words", "side"),
    [
        ("The nerve on the ring finger side was divided.", "ulnar"),
        ("The digital nerve on the index side was divided.", "radial"),
        ("The digital nerve on the RF side was divided.", "ulnar"),
    ],
)
def test_the_nerve_on_a_neighbours_side(words: str, side: str) -> None:
    found = told(f"Right middle finger laceration.\n{words} {_TOLD}", group="injuries")
    assert found == {f"middle digital nerve {side}": {"extent": "complete"}}


def test_a_side_of_the_finger_itself() -> None:
    found = told("Right hand. On the ulnar side of the ring finger FDP was divided completely.", "extent")
    assert found == {"ring FDP": {"extent": "complete"}}


@pytest.mark.parametrize("band", ["Ring-band A2", "Ring band A2", "The ring-ligament A2"])
def test_a_ring_band_is_no_finger(band: str) -> None:
    found = told(f"Right small finger. FDP was cut. {band} was split over 5 mm.", group="pulleys")
    assert found == {"small A2": {"finding": "vented", "extent_mm": 5}}


_HOUSES = (
    "at a county hospital",
    "in a hospital abroad",
    "at a clinic near his home",
    "at a walk-in clinic",
    "at an emergency room up north",
    "in his home town",
    "overseas",
    "in the local hospital",
    "by a general surgeon",
)
_SEWN = (
    "Both flexors were sewn the same night {} with a four-strand 4-0 Prolene core and running 6-0.",
    "He cut the finger in October and the profundus was repaired {} with four strands of 4-0 Prolene.",
    "The tendons were stitched {}, by their account with a four-strand 4-0 Prolene core.",
    "He had the FDP repaired {} with a cruciate of 4-0 Prolene.",
)


@pytest.mark.parametrize("head", ["Interval history: ", "History: ", "", "He is a joiner of forty. "])
def test_sewn_in_another_house(head: str) -> None:
    wrong = []
    for house, sewn in itertools.product(_HOUSES, _SEWN):
        note = (
            "Operation: first stage of flexor tendon reconstruction, left small finger.\n\n"
            f"{head}{sewn.format(house)}\n\nProcedure: FDP was found ruptured. It was excised from the palm distally."
        )
        if told(note, "strands", "size", "treatment", "peripheral") != {"small FDP": {"treatment": "excised"}}:
            wrong.append(sewn.format(house))
    assert wrong == []


@pytest.mark.parametrize(
    "words",
    [
        "The FDP was repaired in a clinic room with four strands of 4-0 Prolene.",
        "The FDP was repaired by a senior surgeon with four strands of 4-0 Prolene.",
        "The FDP was repaired with four strands of 4-0 Prolene; stitches out at a clinic near home.",
        "FDP repaired with four strands of 4-0 Prolene, to be seen in a hand clinic in two weeks.",
    ],
)
def test_sewn_here(words: str) -> None:
    found = told(f"Operation: flexor tendon repair, left small finger.\n\n{words}", "strands", "size")
    assert found == {"small FDP": {"strands": 4, "size": "4-0"}}


_DRUGS = ("lido", "1% lido", "lidocaine", "lignocaine", "xylo", "marcaine", "bupi", "ropi", "LA")
_WITH = ("{}+epi", "{} / epi", "{} & epi", "{} and epi", "{} w/ epi", "{} w epi", "{} (epi)", "{} epi 1:100,000")
_PLACES = (
    "Right middle finger. {} 14 cc, palm.\nFDP cut. FDP repaired with 4-0 Prolene.",
    "Anaesthesia: {}, no tourniquet\nRight middle finger. FDP cut. FDP repaired with 4-0 Prolene.",
)


@pytest.mark.parametrize("drug", _DRUGS)
def test_adrenaline_is_no_edge_suture(drug: str) -> None:
    notes = [place.format(way.format(drug)) for way, place in itertools.product(_WITH, _PLACES)]
    assert [n for n in notes if told(n, "peripheral").get("middle FDP", {}).get("peripheral")] == []


@pytest.mark.parametrize("words", ["4-strand core and epi 6-0", "core 4-0, epi 6-0 Prolene", "Core + epi done"])
def test_an_edge_suture_is_no_adrenaline(words: str) -> None:
    found = told(f"Right middle finger. FDP cut. FDP repaired: {words}.", "peripheral")
    assert found == {"middle FDP": {"peripheral": "present"}}


_THREADS = ("packet", "pack", "suture", "needle", "Ticron", "packet of Ethibond")
_FATES = (
    "was opened and thrown out",
    "was thrown away",
    "was opened by mistake and discarded",
    "was binned",
    "fell on the floor",
    "was dropped",
    "was handed back",
    "went into the bin",
)


@pytest.mark.parametrize("fate", _FATES)
def test_threads_thrown_away(fate: str) -> None:
    wrong = []
    for thread in _THREADS:
        start = "Right middle finger. FDP was divided completely."
        body = f"{start} A 3-0 {thread} {fate}. The core was 4-0 PDS, four strands."
        late = f"{start} Core of PDS, four strands.\n\nADDENDUM\nThe core was 4-0 PDS. The 3-0 {thread} {fate}."
        wrong += [
            note
            for note in (body, late)
            if told(note, "size", "material") != {"middle FDP": {"size": "4-0", "material": "polydioxanone"}}
        ]
    assert wrong == []


def test_a_thread_put_in() -> None:
    note = "Right middle finger. FDP was divided. A 3-0 Ticron was put in as a cruciate and the needle discarded."
    assert told(note, "size") == {"middle FDP": {"size": "3-0"}}


@pytest.mark.parametrize(
    "words",
    [
        "A2 and A4 were gone. Each was rebuilt with a strip of retinaculum sewn to itself with 3-0 Ethibond.",
        "Of A2 and A4 nothing was left. Each was reconstructed with fascia passed round and sewn with 3-0 Ethibond.",
        "A2 and A4 had been destroyed. Both were reconstructed with palmaris sutured to itself with 3-0 Ethibond.",
    ],
)
def test_each_pulley_rebuilt(words: str) -> None:
    note = f"Left small finger. FDP was ruptured and was excised. {words}"
    rebuilt = {"finding": "reconstructed"}
    assert told(note, group="pulleys") == {"small A2": rebuilt, "small A4": rebuilt}
    assert told(note, "size", "treatment") == {"small FDP": {"treatment": "excised"}}


@pytest.mark.parametrize(
    "over", ["six strands over the junction", "six strands through the repair", "six strands at the join"]
)
def test_strands_over_the_junction(over: str) -> None:
    note = (
        "Right middle finger, superficialis and profundus divided. The superficialis received a 5-0 Prolene. "
        f"For the profundus a Lim-Tsai core of 4-0 Supramid was laid; this put {over}, held 9 mm of tendon on each "
        "side, and had its knot lying between the ends."
    )
    found = told(note, "purchase_mm", "knot")
    assert set(found) == {"middle FDP"} and found["middle FDP"]["knot"] == "buried"


@pytest.mark.parametrize(
    "words",
    [
        "wrist in 30 degree bending, basic joints in 60 degree bending",
        "wrist at 30 degrees bending and em pees at sixty",
        "wrist bent 30 degrees, em pee joints bent 60",
    ],
)
def test_angles_told_by_bending(words: str) -> None:
    found = told(f"Right ring finger. FDP was repaired.\nPlan: dorsal splint, {words}.", group="aftercare")
    assert found[""]["wrist_flexion_deg"] == (30, 30)
    assert found[""]["mcp_flexion_deg"] == (60, 60)


def test_bending_tested_is_no_angle() -> None:
    found = told(
        "Right ring finger. FDP was repaired. Bending the wrist gave the finger 60 degrees.", group="aftercare"
    )
    assert "wrist_flexion_deg" not in found.get("", {})


@pytest.mark.parametrize(
    ("words", "excised"),
    [
        ("FDP was found ruptured. It was excised from the lumbrical origin distally.", True),
        ("The profundus had ruptured. It was resected, sparing a 1 cm stub.", True),
        ("The FDP end was ragged. It was excised leaving a clean stub.", False),
        ("FDP was divided. A nodule lay on it. It was excised from the palm.", False),
    ],
)
def test_a_tendon_taken_out_whole(words: str, excised: bool) -> None:
    found = told(f"Left small finger. {words}", "treatment")
    assert found == ({"small FDP": {"treatment": "excised"}} if excised else {})
