"""Which digit and tendon is meant."""

import pytest
from reader_sentences import told


def treated(note: str) -> set[str]:
    return {entry for entry, facts in told(note, "treatment").items() if facts["treatment"] == "repaired"}


@pytest.mark.parametrize(
    ("words", "digit"),
    [
        ("long finger", "middle"),
        ("little finger", "small"),
        ("fifth finger", "small"),
        ("5th digit", "small"),
        ("fourth finger", "ring"),
        ("LF", "small"),
        ("MF", "middle"),
        ("RF", "ring"),
        ("IF", "index"),
        ("index finger", "index"),
        ("D3", "middle"),
        ("forefinger", "index"),
        ("ring digit", "ring"),
    ],
)
def test_names_of_the_digits(words: str, digit: str) -> None:
    for note in (
        f"Right {words}. FDP divided and repaired with 4-0 nylon.",
        f"Right hand. The FDP of the {words} was divided and repaired with 3-0 Prolene.",
    ):
        assert treated(note) == {f"{digit} FDP"}


@pytest.mark.parametrize(
    ("words", "tendon"),
    [
        ("flexor digitorum profundus", "FDP"),
        ("profundus", "FDP"),
        ("deep flexor", "FDP"),
        ("flexor digitorum superficialis", "FDS"),
        ("superficialis", "FDS"),
        ("sublimis", "FDS"),
        ("FDS", "FDS"),
        ("F.D.P.", "FDP"),
    ],
)
def test_names_of_the_tendons(words: str, tendon: str) -> None:
    for note in (
        f"Left ring finger. The {words} was divided and repaired with 4-0 nylon.",
        f"Ring finger: {words} cut through, repaired, core 3-0 Prolene.",
    ):
        assert treated(note) == {f"ring {tendon}"}


@pytest.mark.parametrize("words", ["FPL", "flexor pollicis longus", "long flexor of the thumb"])
def test_the_thumbs_flexor(words: str) -> None:
    for note in (
        f"Right thumb. {words} divided and repaired with 3-0 nylon.",
        f"The {words} was cut through; repaired, core 4-0 Prolene.",
    ):
        assert treated(note) == {"thumb FPL"}


@pytest.mark.parametrize(
    "note",
    [
        "Right middle finger. The middle phalanx was fractured. FDP divided and repaired with 4-0 nylon.",
        "Middle finger. A ring block was used. FDP cut and repaired with 3-0 nylon.",
        "Left middle finger, wedding ring removed. FDP divided and repaired with 4-0 nylon.",
        "Middle finger. FDP divided and repaired, 3-0 nylon. A long arm splint was applied.",
        "Right middle finger. FDP divided and repaired with 4-0 nylon, the index procedure having failed.",
        "Right middle finger. The small vessels were cauterised. FDP divided and repaired with 3-0 nylon.",
        "Right middle finger FDP divided, repaired with 4-0 nylon through a ring of scar. A little bleeding.",
    ],
)
def test_words_that_are_no_digits(note: str) -> None:
    assert treated(note) == {"middle FDP"}


@pytest.mark.parametrize(
    ("note", "entries"),
    [
        (
            "Right index and middle fingers. Both FDP divided. Both FDPs were repaired with 4-0 nylon.",
            {"index FDP", "middle FDP"},
        ),
        (
            "Ring and small finger FDP and FDS divided. Each tendon was repaired with 4-0 nylon.",
            {"ring FDP", "ring FDS", "small FDP", "small FDS"},
        ),
        ("Ring finger. FDP and FDS divided. Both tendons were repaired with 3-0 nylon.", {"ring FDP", "ring FDS"}),
        (
            "Index, middle and ring FDP divided. All were repaired with 4-0 nylon.",
            {"index FDP", "middle FDP", "ring FDP"},
        ),
        (
            "Wrist: FDS 2 to 5 divided and repaired with 4-0 nylon.",
            {"index FDS", "middle FDS", "ring FDS", "small FDS"},
        ),
        (
            "Wrist laceration. All four FDS divided and repaired with 3-0 nylon.",
            {"index FDS", "middle FDS", "ring FDS", "small FDS"},
        ),
        ("FDP divided in the index and middle fingers, both repaired with 4-0 nylon.", {"index FDP", "middle FDP"}),
        (
            "RING FINGER: FDP divided and repaired, 4-0 nylon.\nSMALL FINGER: FDS divided and repaired, 4-0 nylon.",
            {"ring FDP", "small FDS"},
        ),
        ("Index FDP and small FDS divided. The FDS was repaired with 4-0 nylon.", {"small FDS"}),
        ("Ring FDP/FDS divided, repaired with 3-0 nylon.", {"ring FDP", "ring FDS"}),
    ],
)
def test_groups(note: str, entries: set[str]) -> None:
    assert treated(note) == entries


@pytest.mark.parametrize(
    ("note", "entries"),
    [
        ("Ring FDP and FDS divided. The FDS was excised. The FDP was repaired with 4-0 nylon.", {"ring FDP"}),
        ("Middle FDP divided and FDS intact. The tendon was repaired with 3-0 nylon.", {"middle FDP"}),
        (
            "Index and ring FDP divided. All repaired with 4-0 nylon except the ring FDP, which was excised.",
            {"index FDP"},
        ),
        ("Small finger. FDP divided. FDS divided. Only the FDP was repaired, with 4-0 nylon.", {"small FDP"}),
    ],
)
def test_named_is_not_repaired(note: str, entries: set[str]) -> None:
    assert treated(note) == entries


@pytest.mark.parametrize(
    ("note", "sizes"),
    [
        (
            "Index, ring and small FDP divided, repaired with 3-0, 4-0 and 5-0 nylon respectively.",
            {"index FDP": "3-0", "ring FDP": "4-0", "small FDP": "5-0"},
        ),
        (
            "Middle FDP and FDS divided. FDP and FDS were repaired with 3-0 and 4-0 Prolene respectively.",
            {"middle FDP": "3-0", "middle FDS": "4-0"},
        ),
        (
            "Ring FDP divided, repaired with 4-0 nylon. Small FDP divided. It was repaired with 5-0 nylon.",
            {"ring FDP": "4-0", "small FDP": "5-0"},
        ),
        (
            "Ring FDP and small FDP divided. The former was repaired with 4-0 nylon, the latter with 3-0 nylon.",
            {"ring FDP": "4-0", "small FDP": "3-0"},
        ),
    ],
)
def test_values_go_to_their_tendon(note: str, sizes: dict[str, str]) -> None:
    assert {entry: facts["size"] for entry, facts in told(note, "size").items()} == sizes


@pytest.mark.parametrize(
    "body",
    [
        "Ring finger tendons looked at and both intact. FDP repaired first with four strands of 3-0 nylon.",
        "In the ring finger FDP and FDS were intact. The FDP was then repaired with a four-strand core of 3-0 nylon.",
        "The ring FDP is whole. The profundus was sewn with four strands of 3-0 nylon.",
    ],
)
def test_a_tendon_without_a_finger_is_the_cut_one_where_that_of_the_finger_just_told_is_intact(body: str) -> None:
    found = told("Left middle finger FDP completely cut. " + body, "extent", "treatment", "strands")
    assert found["middle FDP"] == {"extent": "complete", "treatment": "repaired", "strands": 4}
    assert found["ring FDP"] == {"extent": "intact"}


# --- fingers by rank and by number


@pytest.mark.parametrize(
    ("note", "entries"),
    [
        (
            "Cut in the fourth and fifth ray. The deep flexor of the fourth was repaired with 3-0 nylon. The deep "
            "flexor of the fifth was repaired with 4-0 nylon.",
            {"ring FDP", "small FDP"},
        ),
        (
            "Ring and small finger, D IV and D V, opened. D IV: FDP cut and repaired. D V: FDP cut and repaired.",
            {"ring FDP", "small FDP"},
        ),
        ("L little - FDP avulsed from the bone. FDP repaired to the stump.", {"small FDP"}),
        (
            "MF: FDP cut. RF: FDP cut. LF: FDP cut. The FDPs were repaired with 4-0 nylon.",
            {"middle FDP", "ring FDP", "small FDP"},
        ),
    ],
)
def test_fingers_by_rank_number_and_plural(note: str, entries: set[str]) -> None:
    assert treated(note) == entries


@pytest.mark.parametrize(
    "words",
    [
        "From the ends of the deep flexors 2 to 3 mm is removed.",
        "The second stitch of the FDP pulled out. The fourth throw held.",
        "In the fourth week the splint comes off.",
    ],
)
def test_counts_that_are_no_fingers(words: str) -> None:
    note = "Fifth ray, right. FDP of the fifth cut and repaired. "
    assert set(told(note + words)) == {"small FDP"}


@pytest.mark.parametrize(
    ("note", "entry"),
    [
        ("2. R little. Saw.\n4. FDP 100%.\n5. Tajima, 4 strands.", "small FDP"),
        ("MIDDLE (A.B.)\nFDP cut through, repaired.\nRING (C.D.)\nFDS fine.", "middle FDP"),
        ("ring finger R, FDP revision\n\nRe-sewn: Savage, 6 strand, 4/0 Ethibond.", "ring FDP"),
    ],
)
def test_fingers_of_items_and_headings_and_the_lone_deep_flexor(note: str, entry: str) -> None:
    assert treated(note) == {entry}


def test_the_other_plane_is_no_tendon() -> None:
    note = (
        "Middle FDP cut through. Ring FDP cut through.\nMIDDLE\nFDP: Tajima, and I added a second one in the other "
        "plane, four strands.\nRING\nFDP: Lim-Tsai, six strands."
    )
    counts = {entry: facts["strands"] for entry, facts in told(note, "strands").items()}
    assert counts == {"middle FDP": 4, "ring FDP": 6}


@pytest.mark.parametrize(
    "note",
    [
        "Left ring finger. The deep and superficial flexors of the ring finger were completely divided.",
        "Left ring finger. The superficial as well as the deep flexor were completely severed.",
        "Left ring finger. Deep flexor completely divided; the superficial was completely divided.",
        "Left ring finger. The deep flexor and the superficial one were both completely divided.",
    ],
)
def test_adjectives_share_the_noun_of_a_tendon(note: str) -> None:
    assert told(note, "extent") == {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "complete"}}


@pytest.mark.parametrize(
    "words", ["the superficial layer was divided", "the deep fascia was divided", "the superficial veins were divided"]
)
def test_adjectives_of_other_nouns_name_no_tendon(words: str) -> None:
    note = f"Left ring finger. The deep flexor was repaired with 3-0 Ethibond; {words}."
    assert set(told(note, "extent")) <= {"ring FDP"}


@pytest.mark.parametrize(
    "note",
    [
        "The deep flexor of the ring finger: cruciate, 3-0 Ticron. That of the little finger: Kessler, 4-0 Ticron.",
        "The FDP of the ring finger was repaired, 3-0 Ticron cruciate. That of the small finger: 4-0 Ticron, Kessler.",
    ],
)
def test_that_of_another_finger_is_the_tendon_of_the_sentence_before(note: str) -> None:
    assert told(note, "size") == {"ring FDP": {"size": "3-0"}, "small FDP": {"size": "4-0"}}


@pytest.mark.parametrize("like", ["epi as index", "periphery as in the index"])
def test_a_finger_only_likened_to_is_not_turned_to(like: str) -> None:
    note = (
        "INDEX\nFDP divided. Repair: FDP 3-0 Ticron cruciate, 6-0 Prolene running epi.\nPulleys: A2 vented.\n\n"
        f"MIDDLE\nFDP divided. Repair: FDP 4-0 Ticron Kessler; {like}.\nPulleys: A3 excised.\n"
    )
    assert told(note, "finding", group="pulleys") == {
        "index A2": {"finding": "vented"},
        "middle A3": {"finding": "excised"},
    }


@pytest.mark.parametrize(
    "note",
    [
        "Long and ring fingers, both FDPs divided completely. For the two profundi 4-0 nylon was used, in the long "
        "finger as a triple Tsuge and in the ring finger, which was thinner, as a double Tsuge.",
        "Middle and ring fingers, both FDPs cut through. Both profundi were sewn with 4-0 nylon, in the middle finger "
        "six strands, in the ring finger four strands.",
    ],
)
def test_one_sentence_tells_several_fingers_apart(note: str) -> None:
    assert told(note, "strands") == {"middle FDP": {"strands": 6}, "ring FDP": {"strands": 4}}


@pytest.mark.parametrize("line", ["FDP (6-strand) + FDS repair, R MF", "FDP 6-strand repair, right MF"])
def test_a_side_may_stand_before_the_finger_of_a_title(line: str) -> None:
    note = f"Diagnosis: FDP, Z III, R MF; FDP nick R IF\n\nDone\n{line}\nFDP IF: 15% scratch, not repaired.\n"
    assert set(told(note, "strands")) == {"middle FDP"}


@pytest.mark.parametrize("words", ["Gapping: none seen in long or ring.", "No gap was seen in either long or ring."])
def test_what_is_said_of_two_fingers_is_not_said_of_a_third(words: str) -> None:
    note = (
        "Long FDP divided, repaired, four-strand 3-0 Prolene. Ring FDP divided, repaired, four-strand 3-0 Prolene. "
        f"Little FDP divided, repaired, four-strand 3-0 Prolene. {words}"
    )
    assert set(told(note, "gap")) == {"middle FDP", "ring FDP"}


def test_a_number_hung_on_a_tendon() -> None:
    note = (
        "LINES\n1 FDP-3 zone 3, complete, repaired\n2 FDS-3 zone 3, complete, repaired\n3 FDP-4 partial, not repaired"
    )
    assert treated(note) == {"middle FDP", "middle FDS"}
    assert told("FDP 3-0 nylon, ring finger. FDP cut and repaired.", "size") != {"middle FDP": {"size": "3-0"}}
