"""Cuts of nerves kept from tendons, lengths that are no treatment, and lengths that were only hurt."""

import pytest
from reader_sentences import each, told

BOTH = "In the index finger both tendons were completely divided, in the middle finger the superficialis was half cut. "
CUT = {"index FDP": "complete", "index FDS": "complete", "middle FDS": "partial"}


@pytest.mark.parametrize(
    "nerves",
    [
        "The ulnar digital nerves of the index, middle and ring fingers were severed.",
        "The radial bundles of the index, middle and ring fingers were divided.",
        "Digital arteries of the index, middle and small fingers: severed.",
    ],
)
def test_the_nerves_of_three_fingers_are_no_tendons(nerves: str) -> None:
    assert each(BOTH + nerves, "extent") == CUT


def test_the_same_tendon_of_the_next_finger_is_still_told() -> None:
    note = "Index finger: FDP completely divided. Middle finger: completely divided."
    assert each(note, "extent") == {"index FDP": "complete", "middle FDP": "complete"}


@pytest.mark.parametrize(
    "trimming",
    ["Four millimetres of FDP trimmed altogether.", "5 mm of the profundus was trimmed in total.", "Trimmed 3 mm."],
)
def test_a_length_trimmed_from_a_tendon_cut_in_part_is_no_treatment(trimming: str) -> None:
    note = f"Index FDP 90% divided with ragged ends. {trimming} M-Tang repair, four oh looped supramid, six strands."
    assert each(note, "treatment") == {"index FDP": "repaired"}
    assert each(note, "strands") == {"index FDP": 6}


def test_a_flap_trimmed_is_a_treatment() -> None:
    note = "Ring FDS 30% cut, a 3 mm flap of it was trimmed."
    assert each(note, "treatment") == {"ring FDS": "trimmed"}


@pytest.mark.parametrize(
    "note",
    [
        "Small finger FDP completely cut, I trimmed back 2 mm on the FDP, the FDS was too thin so I excised it.",
        "Small finger, FDP cut right through and ragged on the FDP, the FDS was in tatters and I excised it.",
    ],
)
def test_behind_a_comma_the_verb_is_of_the_second_tendon(note: str) -> None:
    assert each(note, "treatment") == {"small FDS": "excised"}


@pytest.mark.parametrize("hurt", ["shredded over 3 cm, excised", "frayed over a length of 2 cm and was excised"])
def test_how_far_a_tendon_was_hurt_is_not_what_was_trimmed(hurt: str) -> None:
    facts = told(f"Ring FDS completely cut, {hurt}.", "treatment", "trimmed_mm")
    assert facts == {"ring FDS": {"treatment": "excised"}}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("FDP4 and FDP5 cut through. 4 mm cut back from FDP4 and FDP5.", {"ring FDP": 4, "small FDP": 4}),
        (
            "Ring FDP completely cut. I took 4 mm off the distal one and the superficialis was half cut.",
            {"ring FDP": 4},
        ),
        (
            "Ring FDP completely cut. I took 3 mm from the proximal end and the FDS was half cut.",
            {"ring FDP": 3},
        ),
    ],
)
def test_whose_length_was_cut_back(note: str, expected: dict[str, int]) -> None:
    assert each(note, "trimmed_mm") == expected


@pytest.mark.parametrize("word", ["thurnb", "THURNB"])
def test_m_read_as_rn(word: str) -> None:
    assert each(f"Left {word}. FPL cornpletely divided.", "extent") == {"thumb FPL": "complete"}


def test_a_share_and_the_finger_named_behind_it() -> None:
    note = (
        "In the middle finger the profundus was completely divided and the superficialis was divided to one half of "
        "its width, and in the ring finger the profundus was cut by 30 percent and the superficialis was intact."
    )
    assert each(note, "extent_percent") == {"middle FDS": 50, "ring FDP": 30}
    assert each(note, "extent")["ring FDS"] == "intact"


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Ring. A2 remains untouched, as does the A4.", {"ring A2": "intact", "ring A4": "intact"}),
        (
            "The A2 of the index was left untouched, as were the A4 pulleys of the index and ring fingers.",
            {"index A2": "intact", "index A4": "intact", "ring A4": "intact"},
        ),
        ("Ring finger. The A2 caught the tendon, as did the A4.", {}),
        ("Ring A4 was opened full and A2 opened.", {"ring A4": "released", "ring A2": "vented"}),
    ],
)
def test_as_did_the_next_pulley(note: str, expected: dict[str, str]) -> None:
    assert each(note, "finding", "pulleys") == expected


@pytest.mark.parametrize(
    ("answer", "gap"),
    [("Dehiscence of sutures: none on movement.", "none"), ("Dehiscence of the sutures: 1 mm.", "seen")],
)
def test_a_label_of_dehiscence(answer: str, gap: str) -> None:
    assert each("Middle FDP repaired with 4-0. " + answer, "gap") == {"middle FDP": gap}


@pytest.mark.parametrize(
    ("said", "glide"),
    [
        ("No gap, and none bound on its neighbour.", "free"),
        ("It bound under A2.", "catching"),
        ("It slides heavy on A2.", "restricted"),
        ("It ran hard beneath the A4.", "restricted"),
    ],
)
def test_bound_and_heavy(said: str, glide: str) -> None:
    assert each("Ring FDP repaired with 4-0. " + said, "glide") == {"ring FDP": glide}


@pytest.mark.parametrize("word", ["peritendon 6.0 Prolene run.", "peritendineal suture 6-0 Prolene, running"])
def test_other_names_of_the_outer_suture(word: str) -> None:
    facts = told(f"Ring FDP 4-strand core 4-0 + {word}", "size", "peripheral_size")
    assert facts == {"ring FDP": {"size": "4-0", "peripheral_size": "6-0"}}


@pytest.mark.parametrize(
    "wish",
    [
        "We did wonder about an eight strand repair but went with this.",
        "I'd have liked eight strands.",
        "I had half a mind to put in 8 strands.",
    ],
)
def test_strands_only_thought_of(wish: str) -> None:
    note = f"Index FDP cut through. {wish} Repaired with a four-strand cruciate of 4-0."
    assert each(note, "strands") == {"index FDP": 4}
