"""Tendons told in shares, by slips and in lists: the rest of a hand, both zones, asides, first thoughts."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. FDP completely divided, repaired 3-0 Ethibond. FDS torn in a third of "
            "its width; it was excised completely.",
            {
                "ring FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
                "ring FDS": {"extent": "partial", "extent_percent": 33, "treatment": "excised"},
            },
        ),
        (
            "Ring finger. FDP completely divided. FDS 40% cut, removed completely.",
            {
                "ring FDP": {"extent": "complete"},
                "ring FDS": {"extent": "partial", "extent_percent": 40, "treatment": "excised"},
            },
        ),
        (
            "Wrist, left. Zone five all of this flexor carpi radialis completely divided, palmaris"
            " longus divided, index FDP divided.",
            {
                "index FDP": {"zone": "V", "extent": "complete"},
                "FCR": {"zone": "V", "extent": "complete"},
                "PL": {"zone": "V", "extent": "complete"},
            },
        ),
        (
            "All at zone IV: FPL completely divided, index FDP completely divided.",
            {"thumb FPL": {"zone": "IV", "extent": "complete"}, "index FDP": {"zone": "IV", "extent": "complete"}},
        ),
        (
            "Ring finger. FDS: a third of the ulnar slip cut, radial slip untouched. FDP completely divided.",
            {
                "ring FDP": {"extent": "complete"},
                "ring FDS radial": {"extent": "intact"},
                "ring FDS ulnar": {"extent": "partial", "extent_percent": 33},
            },
        ),
        (
            "Ring finger. FDP completely divided. FDS: partial, 50% of one slip (ulnar), left "
            "alone; radial slip intact.",
            {
                "ring FDP": {"extent": "complete"},
                "ring FDS radial": {"extent": "intact"},
                "ring FDS ulnar": {"extent": "partial", "extent_percent": 50, "treatment": "left"},
            },
        ),
        (
            "Small FDP 60% cut > first thought: just trim. Modified Kessler 4-0 Ticron.",
            {"small FDP": {"extent": "partial", "extent_percent": 60, "size": "4-0", "treatment": "repaired"}},
        ),
        (
            "Small FDP 60% cut. My first idea: leave it. Repaired with a modified Kessler 4-0 Ticron.",
            {"small FDP": {"extent": "partial", "extent_percent": 60, "size": "4-0", "treatment": "repaired"}},
        ),
        (
            "Small finger. The profundus had come apart at the old repair. It was repaired with 3-0 Ethibond.",
            {"small FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"}},
        ),
        (
            "Index FDP and FDS completely divided. FDP repaired 3-0 Ethibond. FDS repaired with "
            "5-0 Prolene, radial slip only.",
            {
                "index FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
                "index FDS radial": {"extent": "complete", "treatment": "repaired", "size": "5-0"},
                "index FDS ulnar": {"extent": "complete"},
            },
        ),
        (
            "index finger FDP half cut, FDS ulnar slip about a quarter cut, radial slip ok ring finger just a skin cut",
            {
                "index FDP": {"extent": "partial", "extent_percent": 50},
                "index FDS radial": {"extent": "intact"},
                "index FDS ulnar": {"extent": "partial", "extent_percent": 25},
            },
        ),
        (
            "Right ring finger. Severed completely are: the FDP, the radial hand flexor (FCR) and the palmaris longus.",
            {"ring FDP": {"extent": "complete"}, "FCR": {"extent": "complete"}, "PL": {"extent": "complete"}},
        ),
        (
            "Not cut: FPL, FCR, FDS of the index. Completely divided: FDP of the index.",
            {
                "thumb FPL": {"extent": "intact"},
                "index FDP": {"extent": "complete"},
                "index FDS": {"extent": "intact"},
                "FCR": {"extent": "intact"},
            },
        ),
        (
            "Zone V. Index FDP has a nick of one quarter, the remaining FDPs not cut. FPL completely divided.",
            {
                "thumb FPL": {"zone": "V", "extent": "complete"},
                "index FDP": {"zone": "V", "extent": "partial", "extent_percent": 25},
                "middle FDP": {"extent": "intact"},
                "ring FDP": {"extent": "intact"},
                "small FDP": {"extent": "intact"},
            },
        ),
        (
            "Wrist. FCR completely divided. FDPs: all 4 intact.",
            {
                "index FDP": {"extent": "intact"},
                "middle FDP": {"extent": "intact"},
                "ring FDP": {"extent": "intact"},
                "small FDP": {"extent": "intact"},
                "FCR": {"extent": "complete"},
            },
        ),
        (
            "Small finger FDP avulsed. 3-0 Prolene, both limbs out through the nail, tied over a button. FDS ok.",
            {
                "small FDP": {"extent": "complete", "size": "3-0", "treatment": "reinserted"},
                "small FDS": {"extent": "intact"},
            },
        ),
        (
            "Index finger. A strip of palmaris longus was woven between the tags of A4 with 5-0 "
            "PDS. FDP completely divided, repaired with 3-0 Ethibond.",
            {"index FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"}},
        ),
        (
            "Middle and ring fingers. The superficialis and the profundus of the middle finger had"
            " been completely transected in zones IIC and IIB respectively.",
            {"middle FDP": {"extent": "complete", "zone": "IIB"}, "middle FDS": {"extent": "complete", "zone": "IIC"}},
        ),
        (
            "Ring finger. FDP 100%. FDS: radial slip 100%, ulnar slip in continuity.",
            {
                "ring FDP": {"extent": "complete"},
                "ring FDS radial": {"extent": "complete"},
                "ring FDS ulnar": {"extent": "intact"},
            },
        ),
        (
            "Index finger. FDP completely divided. Repair, trainee's suggestion: six strands. "
            "Done: four strands, 3-0 Ethibond.",
            {"index FDP": {"extent": "complete", "size": "3-0", "treatment": "repaired"}},
        ),
        (
            "All four superficialis tendons were completely divided, as were the flexor carpi "
            "radialis and the flexor pollicis longus.",
            {
                "thumb FPL": {"extent": "complete"},
                "index FDS": {"extent": "complete"},
                "middle FDS": {"extent": "complete"},
                "ring FDS": {"extent": "complete"},
                "small FDS": {"extent": "complete"},
                "FCR": {"extent": "complete"},
            },
        ),
        (
            "Index finger: both slips of the superficialis were intact, FDP completely divided and"
            " repaired with 3-0 Ethibond. The ulnar slip was then resected to make room.",
            {
                "index FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
                "index FDS radial": {"extent": "intact"},
                "index FDS ulnar": {"treatment": "excised"},
            },
        ),
        ("Ring finger, zone II: the FDP alone was completely cut.", {"ring FDP": {"zone": "II", "extent": "complete"}}),
    ],
)
def test_shares_and_lists(note: str, expected: dict[str, dict[str, object]]) -> None:
    assert told(note, "extent", "extent_percent", "treatment", "zone", "size") == expected


@pytest.mark.parametrize(
    "words",
    [
        "FDS both slips nicked, radial 10%, ulnar 30%.",
        "FDS: both slips partially cut, ulnar 30%, radial 10%.",
        "FDS: RS 10 %, US 30 %.",
    ],
)
def test_sides_and_letters_name_the_slips_of_a_superficialis(words: str) -> None:
    shares = told(f"Left index, zone II. FDP cut through. {words}", "extent_percent")
    assert shares == {"index FDS radial": {"extent_percent": 10}, "index FDS ulnar": {"extent_percent": 30}}


@pytest.mark.parametrize(
    "words",
    ["US: FPL gone, 100 %.", "FDS intact. Nerves: radial 10% cut.", "FDS both slips intact; UDN cut, radial 10%."],
)
def test_letters_and_sides_of_other_things_name_no_slip(words: str) -> None:
    assert not any(name.endswith(("radial", "ulnar")) for name in told(f"Left index. {words}", "extent_percent"))


@pytest.mark.parametrize(
    ("words", "share"),
    [
        ("The radial slip of FDS, of which 60% was in continuity, was smoothed.", None),
        ("FDS radial slip hanging by 1/3 (ie 2/3 gone).", 67),
    ],
)
def test_the_share_that_still_holds_is_not_the_share_cut(words: str, share: int | None) -> None:
    facts = told(f"Left index, zone II. FDP completely divided. {words}", "extent_percent")
    assert facts.get("index FDS radial", {}).get("extent_percent") == share


@pytest.mark.parametrize(
    ("words", "share"),
    [
        ("In the middle finger some 60 percent of the profundus had been severed.", 60),
        ("40% of the FDP was divided.", 40),
    ],
)
def test_a_share_of_a_tendon_severed_is_a_partial_cut(words: str, share: int) -> None:
    facts = told(f"Left middle finger. {words}", "extent", "extent_percent")
    assert facts == {"middle FDP": {"extent": "partial", "extent_percent": share}}


@pytest.mark.parametrize(
    "words",
    [
        "The profundus of this finger was partially divided, 50 per cent of it, on the radial side.",
        "The profundus was partly cut, about 50% of it.",
    ],
)
def test_a_share_of_it(words: str) -> None:
    assert told("Ring finger. " + words, "extent_percent") == {"ring FDP": {"extent_percent": 50}}


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("The FDP was cut in half of its width.", {"extent": "partial", "extent_percent": 50}),
        ("The FDP was cut in half of the substance.", {"extent": "partial", "extent_percent": 50}),
        ("The FDP was cut in half.", {"extent": "complete"}),
    ],
)
def test_in_half_of_its_width_is_not_in_half(words: str, expected: dict[str, object]) -> None:
    assert told("Ring finger. " + words, "extent", "extent_percent") == {"ring FDP": expected}


@pytest.mark.parametrize(
    "words",
    ["Partial cut of the little finger FDP was 50 percent, not 30 percent.", "The little FDP was 50% cut, not 30%."],
)
def test_a_share_that_is_denied(words: str) -> None:
    note = "Small finger. FDP 30 percent cut.\n\nADDENDUM 17 January 2034: " + words
    assert told(note, "extent_percent") == {"small FDP": {"extent_percent": 50}}


@pytest.mark.parametrize(
    "words",
    [
        "The FDS of the ring has a superficial nick of 20 percent that is left.",
        "Ring FDS had a nick of about 20%, which was left alone.",
        "Ring FDS has a partial cut of 20 per cent that was left unsutured.",
    ],
)
def test_a_share_behind_its_cut_that_was_left(words: str) -> None:
    shown = {"ring FDS": {"extent": "partial", "extent_percent": 20, "treatment": "left"}}
    assert told(words, "extent", "extent_percent", "treatment") == shown


def test_a_share_of_which_so_much_was_left() -> None:
    assert each("Ring FDS was cut so that 20 percent was left.", "extent_percent") == {}
    assert each("The knots of the ring FDP were superficial and left.", "treatment") == {}


@pytest.mark.parametrize("words", ["is cut in two thirds", "was divided in two thirds"])
def test_cut_in_two_thirds_is_not_cut_in_two(words: str) -> None:
    assert each(f"Ring finger. The FDP {words}.", "extent") == {"ring FDP": "partial"}
    assert each("Ring finger. The FDP is cut in two.", "extent") == {"ring FDP": "complete"}
    extensor = each(f"Ring finger. The extensor tendon {words}.", "extent", group="injuries")
    assert extensor == {"ring extensor tendon": "partial"}


@pytest.mark.parametrize(
    "text",
    [
        "FPL >90% through, zone II. FPL last fibres cut across, squared off. Core 4 strands.",
        "FPL 90% divided. The remaining fibres were cut across and the ends squared off. Core 4 strands.",
        "FPL 80% divided. FPL residual bridge divided. Core 4 strands.",
    ],
)
def test_the_last_fibres_that_the_surgeon_cut(text: str) -> None:
    assert each(f"Right thumb. {text}", "extent") == {"thumb FPL": "partial"}


@pytest.mark.parametrize("text", ["FPL cut across. The last fibres were divided.", "The FPL fibres were cut across."])
def test_fibres_of_a_tendon_cut_through(text: str) -> None:
    assert each(f"Right thumb. {text}", "extent") == {"thumb FPL": "complete"}
