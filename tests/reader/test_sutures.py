"""Core and peripheral sutures: sizes, materials, strands, stitches, hold, purchase, locks, knots."""

import pytest
from reader_sentences import fact_of, quote_of, told

CORE = ("strands", "stitch", "size", "material", "looped", "hold", "purchase_mm", "lock_mm", "knot")
PERIPHERAL = ("peripheral", "peripheral_pattern", "peripheral_size", "peripheral_material")
RING = "Right ring finger, zone II. The FDP was completely divided. FDS intact. "
THUMB = "Left thumb. FPL cut through completely in zone I. "


def sutures_of(note: str) -> dict[str, dict[str, object]]:
    return told(note, *CORE, *PERIPHERAL)


@pytest.mark.parametrize(
    ("sentence", "expected"),
    [
        ("Repaired with a 4-0 braided polyester core suture.", {"size": "4-0", "material": "braided polyester"}),
        ("It was repaired with #3-0 undyed Ethibond.", {"size": "3-0", "material": "braided polyester"}),
        ("Core suture 3/0 Prolene.", {"size": "3-0", "material": "polypropylene"}),
        ("Core: Prolene 4/0.", {"size": "4-0", "material": "polypropylene"}),
        ("The core suture was 2.0 FiberWire.", {"size": "2-0", "material": "polyblend"}),
        ("Core repair done with 000 nylon.", {"size": "3-0", "material": "nylon"}),
        ("The tendon was repaired with four-oh nylon.", {"size": "4-0", "material": "nylon"}),
        ("Core suture of 4-O Supramid.", {"size": "4-0", "material": "nylon"}),
        ("Core suture 3-0 PDS.", {"size": "3-0", "material": "polydioxanone"}),
        ("A core suture of 2-0 steel was used.", {"size": "2-0", "material": "steel"}),
        ("The core was 5-0.", {"size": "5-0"}),
        ("Repaired with core sutures of Ethibond.", {"material": "braided polyester"}),
    ],
)
def test_size_and_material_of_the_core(sentence: str, expected: dict[str, object]) -> None:
    assert sutures_of(RING + sentence) == {"ring FDP": expected}


@pytest.mark.parametrize(
    ("sentence", "count"),
    [
        ("Four-strand repair with 4-0 Prolene.", 4),
        ("A 6-strand core repair was done with 3-0 Prolene.", 6),
        ("Repaired with 8 strands of 4-0 Prolene.", 8),
        ("Core suture: 4-0 Prolene, strands: 4.", 4),
        ("Core 3/0 Prolene x 4 strands.", 4),
        ("Two two-strand repairs with 4-0 Prolene were placed in the tendon.", 4),
        ("Six strands of 4-0 Prolene cross the repair.", 6),
        ("A four-stranded repair was made with 3-0 Prolene.", 4),
        ("The core repair, 4-0 Prolene, has 2 strands.", 2),
    ],
)
def test_strand_counts(sentence: str, count: int) -> None:
    assert sutures_of(RING + sentence)["ring FDP"]["strands"] == count
    assert fact_of(RING + sentence, "ring FDP", "strands").basis == "stated"


@pytest.mark.parametrize(
    "sentence",
    [
        "Repaired with double-stranded 4-0 nylon.",
        "Repaired with 4-0 Prolene; strands of scar were cleared from the sheath.",
        "Repaired with 3-0 Prolene. The number of strands was not recorded.",
        "Repaired with 4-0 Prolene. A six-strand repair was considered but not needed.",
        "Repaired with 4-0 Prolene. If it ruptures a four-strand repair will be needed.",
        "Repaired with 3-0 Prolene. Four-strand repairs are our usual practice.",
        "Repaired with 3-0 Prolene. Extensor tendon over the middle phalanx repaired with a four-strand suture.",
        "Repaired with 3-0 Prolene. His previous repair in 2019 on the other hand was six-strand.",
        "Repaired with 3-0 Prolene. Strands: [2 / 4 / 6].",
        "Repaired with 4-0 Prolene. Strands: ___",
        "Repaired with 3-0 Prolene, not a four-strand repair.",
    ],
)
def test_no_strand_count_where_none_is_said_of_this_repair(sentence: str) -> None:
    assert "strands" not in sutures_of(RING + sentence).get("ring FDP", {})


@pytest.mark.parametrize(
    ("words", "stitch", "strands"),
    [
        ("modified Kessler", "modified kessler", 2),
        ("Kessler", "kessler", 2),
        ("Tajima", "tajima", 2),
        ("Tsuge", "tsuge", 2),
        ("cruciate", "cruciate", 4),
        ("Strickland", "strickland", 4),
        ("double modified Kessler", "double modified kessler", 4),
        ("Savage", "savage", 6),
        ("Lim-Tsai", "lim-tsai", 6),
        ("Winters-Gelberman", "winters-gelberman", 8),
    ],
)
def test_strands_implied_by_a_name_are_marked(words: str, stitch: str, strands: int) -> None:
    for sentence in (f"Repaired with a {words} suture of 4-0 nylon.", f"Core: {words}, 3-0 Prolene."):
        note = RING + sentence
        assert sutures_of(note)["ring FDP"]["stitch"] == stitch
        fact = fact_of(note, "ring FDP", "strands")
        assert (fact.value, fact.basis) == (strands, "implied")
        assert fact.look_twice
        assert words.lower() in quote_of(note, "ring FDP", "strands").lower()


@pytest.mark.parametrize(
    ("words", "stitch"),
    [
        ("modified Savage", "modified savage"),
        ("Krackow", "krackow"),
        ("figure-of-eight", "figure-of-eight"),
        ("horizontal mattress", "horizontal mattress"),
        ("Pulvertaft weave", "pulvertaft"),
    ],
)
def test_no_count_follows_from_some_names(words: str, stitch: str) -> None:
    for sentence in (
        f"The FDP was repaired with a {words} of 3-0 Ethibond.",
        f"FDP repaired, {words} core suture, 4-0 nylon.",
    ):
        shown = sutures_of(RING + sentence)["ring FDP"]
        assert shown["stitch"] == stitch
        assert "strands" not in shown


@pytest.mark.parametrize(
    "sentence",
    ["Four-strand modified Kessler with 4-0 nylon.", "Modified Kessler, 4 strands, 3-0 Prolene."],
)
def test_a_stated_count_beats_the_name(sentence: str) -> None:
    fact = fact_of(RING + sentence, "ring FDP", "strands")
    assert (fact.value, fact.basis) == (4, "stated")


@pytest.mark.parametrize(
    "sentence", ["Two-strand Adelaide with 4-0 nylon.", "Winters-Gelberman repair, four-strand, 3-0 nylon."]
)
def test_a_count_against_a_name_that_fixes_it_is_a_reason_to_look_twice(sentence: str) -> None:
    assert fact_of(RING + sentence, "ring FDP", "strands").look_twice


@pytest.mark.parametrize(
    ("body", "low", "high"),
    [
        ("FDP repaired with a four-strand core suture, 4-0 nylon. The six-strand core repair was finished.", 4, 6),
        ("FDP repaired with a six-strand core suture of 3-0 nylon. The 2-strand core was tied.", 2, 6),
    ],
)
def test_of_two_counts_the_lower_is_proposed_and_the_other_kept(body: str, low: int, high: int) -> None:
    fact = fact_of(RING + body, "ring FDP", "strands")
    assert fact.value == low
    assert [rival.value for rival in fact.rivals] == [high]
    assert fact.look_twice


@pytest.mark.parametrize(
    ("sentence", "expected"),
    [
        ("Repaired with looped 4-0 nylon, Tsuge.", True),
        ("Core: 3-0 looped nylon.", True),
        ("Core suture: non-looped 4-0 nylon.", False),
        ("Core: 3-0 nylon, not looped.", False),
    ],
)
def test_looped_sutures(sentence: str, expected: bool) -> None:
    assert sutures_of(RING + sentence)["ring FDP"].get("looped") is expected


@pytest.mark.parametrize(
    ("sentence", "hold"),
    [
        ("Core suture 4-0 nylon, locking.", "locking"),
        ("A locked cruciate of 3-0 Prolene.", "locking"),
        ("A grasping core suture of 4-0 nylon was used.", "grasping"),
        ("Core suture of 3-0 nylon with 2 mm locks.", "locking"),
        ("Repaired with a core suture of 4-0 nylon, grasping rather than locking.", "grasping"),
    ],
)
def test_hold(sentence: str, hold: str) -> None:
    assert sutures_of(RING + sentence)["ring FDP"]["hold"] == hold


@pytest.mark.parametrize(
    "sentence",
    [
        "Core 4-0 nylon. Running locking 6-0 epitendinous suture.",
        "Core 3-0 Prolene. The phalanx was fixed with a locking plate.",
        "Core 4-0 nylon. He had noticed the finger locking for a month.",
        "Core 3-0 nylon, locked: yes / no.",
        "Core 4-0 nylon, no locking loops were used.",
    ],
)
def test_no_hold_of_the_core(sentence: str) -> None:
    assert sutures_of(RING + sentence)["ring FDP"].get("hold") != "locking"


@pytest.mark.parametrize(
    ("sentence", "ends"),
    [
        ("Core 4-0 nylon with 10 mm purchase on each side.", (10, 10)),
        ("Core suture 3-0 nylon, bites 7 to 9 mm from the cut.", (7, 9)),
        ("Core 4-0 nylon, purchase at least 8 mm.", (8, None)),
        ("Core suture 3-0 nylon, purchase 1.2 cm either side.", (12, 12)),
        ("Core 4-0 nylon, purchase 0.7-1 cm.", (7, 10)),
    ],
)
def test_purchase(sentence: str, ends: tuple[float, float | None]) -> None:
    assert sutures_of(RING + sentence)["ring FDP"]["purchase_mm"] == ends


@pytest.mark.parametrize(
    "sentence",
    [
        "Core 4-0 nylon. The proximal stump had retracted 20 mm.",
        "Core 3-0 nylon. The phalanx was plated, good purchase of the 10 mm screws.",
        "Core 4-0 nylon. The wound was extended 15 mm proximally.",
        "Core 3-0 nylon. Purchase: __ mm.",
        "Core 4-0 nylon. Ideally 10 mm of purchase should be taken in such a repair.",
    ],
)
def test_lengths_that_are_no_purchase(sentence: str) -> None:
    assert "purchase_mm" not in sutures_of(RING + sentence)["ring FDP"]


@pytest.mark.parametrize(
    ("sentence", "ends"),
    [("Core suture 4-0 nylon, 2 mm locks.", (2, 2)), ("Core suture of 3-0 nylon with locks of 3 mm.", (3, 3))],
)
def test_size_of_the_locks(sentence: str, ends: tuple[float, float]) -> None:
    shown = sutures_of(RING + sentence)["ring FDP"]
    assert shown["lock_mm"] == ends
    assert "purchase_mm" not in shown


@pytest.mark.parametrize(
    ("sentence", "knot"),
    [
        ("Core 4-0 nylon, knots buried.", "buried"),
        ("Core 3-0 nylon with the knot buried between the ends.", "buried"),
        ("Core 4-0 nylon, knots left outside the repair.", "external"),
        ("Core 3-0 nylon, the knot tied externally.", "external"),
    ],
)
def test_knots(sentence: str, knot: str) -> None:
    assert sutures_of(RING + sentence)["ring FDP"]["knot"] == knot


@pytest.mark.parametrize(
    "sentence",
    ["Core 4-0 nylon. Skin closed with buried knots of 5-0 Monocryl.", "Core 3-0 nylon. Knots: buried / external."],
)
def test_knots_of_others_and_open_choices(sentence: str) -> None:
    assert "knot" not in sutures_of(RING + sentence)["ring FDP"]


@pytest.mark.parametrize(
    ("sentence", "expected"),
    [
        (
            "Running 6-0 Prolene epitendinous suture.",
            {
                "peripheral": "present",
                "peripheral_pattern": "running",
                "peripheral_size": "6-0",
                "peripheral_material": "polypropylene",
            },
        ),
        (
            "Finished with a running locking epitendinous suture of 5-0 nylon.",
            {
                "peripheral": "present",
                "peripheral_pattern": "running locking",
                "peripheral_size": "5-0",
                "peripheral_material": "nylon",
            },
        ),
        (
            "Peripheral cross-stitch with 6/0 Prolene.",
            {
                "peripheral": "present",
                "peripheral_pattern": "cross-stitch",
                "peripheral_size": "6-0",
                "peripheral_material": "polypropylene",
            },
        ),
        (
            "Epitendinous repair with interrupted 5-0 Prolene.",
            {
                "peripheral": "present",
                "peripheral_pattern": "interrupted",
                "peripheral_size": "5-0",
                "peripheral_material": "polypropylene",
            },
        ),
        ("A circumferential suture was added.", {"peripheral": "present"}),
        ("Epitenon sutured.", {"peripheral": "present"}),
        ("No epitendinous suture was placed.", {"peripheral": "absent"}),
        ("An epitendinous suture was omitted.", {"peripheral": "absent"}),
        ("Epitendinous: none.", {"peripheral": "absent"}),
        ("Done without a peripheral suture.", {"peripheral": "absent"}),
        ("Epitendinous suture: [yes / no].", {}),
        ("Epitendinous: ___", {}),
        ("The epitenon was bruised.", {}),
        ("If time allows an epitendinous suture would be added.", {}),
        ("An epitendinous suture was considered.", {}),
        ("A running 6-0 epitendinous suture adds strength in general.", {}),
    ],
)
def test_peripheral_suture(sentence: str, expected: dict[str, object]) -> None:
    for core in ("Core 4-0 nylon, four-strand. ", "FDP repaired with a six-strand 3-0 Ethibond core suture. "):
        note = RING + core + sentence
        assert told(note, *PERIPHERAL) == ({"ring FDP": expected} if expected else {})


@pytest.mark.parametrize("size", ["4-0", "3-0"])
def test_unusual_sizes_are_not_dropped(size: str) -> None:
    note = RING + f"Core 2-0 Ethibond. Running epitendinous suture of {size} Prolene."
    shown = sutures_of(note)["ring FDP"]
    assert (shown["size"], shown["peripheral_size"]) == ("2-0", size)


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index and middle fingers. FDP of both cut completely. The index FDP was repaired with 4-0 "
            "nylon and the middle FDP with 3-0 Prolene.",
            {
                "index FDP": {"size": "4-0", "material": "nylon"},
                "middle FDP": {"size": "3-0", "material": "polypropylene"},
            },
        ),
        (
            "Left ring and small fingers: both FDP divided. Repaired with 3-0 and 4-0 Ethibond respectively.",
            {
                "ring FDP": {"size": "3-0", "material": "braided polyester"},
                "small FDP": {"size": "4-0", "material": "braided polyester"},
            },
        ),
    ],
)
def test_each_tendon_its_own_suture(note: str, expected: dict[str, dict[str, object]]) -> None:
    assert sutures_of(note) == expected


@pytest.mark.parametrize("material", ["Ethibond", "Prolene"])
def test_a_thread_considered_or_replaced_is_no_core(material: str) -> None:
    note = THUMB + f"FPL repaired with a 4-strand core of 3-0 nylon. {material} 2-0 was offered but not opened."
    assert sutures_of(note) == {"thumb FPL": {"strands": 4, "size": "3-0", "material": "nylon"}}


@pytest.mark.parametrize(
    "words", ["3 mm taken off each side.", "2 mm came off either end.", "3 mm cut away on each side."]
)
def test_what_comes_off_is_no_purchase(words: str) -> None:
    note = "Left thumb. FPL cut through and repaired with 3-0 nylon. " + words
    assert told(note, "purchase_mm") == {}


@pytest.mark.parametrize(
    "words", ["FDS RF 4-0 Ticron fig-of-8 x1, no epi", "FDS RF 4-0 Ticron figure-of-eight, without epitendinous"]
)
def test_a_suture_before_no_epitendinous_is_the_core(words: str) -> None:
    facts = told(f"RF: FDS divided.\nRepairs: {words}\n", "size", "peripheral")
    assert facts == {"ring FDS": {"size": "4-0", "peripheral": "absent"}}
