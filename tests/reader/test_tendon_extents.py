"""How much of each tendon was cut, in the words of many surgeons; lists share one verb, halves are no whole."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right hand. Ring finger: FDP 60%, FDS intact.",
            {"ring FDP": {"extent": "partial", "extent_percent": 60}, "ring FDS": {"extent": "intact"}},
        ),
        (
            "Right ring finger. FDS: cut, both slips. FDP: cut, 100%.",
            {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "complete"}},
        ),
        (
            "Right ring finger. FDP completely divided, both slips of FDS cut.",
            {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "complete"}},
        ),
        (
            "Right ring finger. FDP divided completely, FDS gone in both slips.",
            {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "complete"}},
        ),
        (
            "Right ring finger. FDP divided completely, both FDS slips partially cut.",
            {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "partial"}},
        ),
        (
            "Right ring finger. FDP divided completely, cut in both slips of the superficialis about 30%.",
            {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "partial", "extent_percent": 30}},
        ),
        (
            "The median nerve was divided. The ulnar nerve was intact and so were the flexor "
            "tendons of the middle, ring and small fingers and the flexor carpi ulnaris.",
            {
                "middle FDP": {"extent": "intact"},
                "middle FDS": {"extent": "intact"},
                "ring FDP": {"extent": "intact"},
                "ring FDS": {"extent": "intact"},
                "small FDP": {"extent": "intact"},
                "small FDS": {"extent": "intact"},
                "FCU": {"extent": "intact"},
            },
        ),
        (
            "FDP of the index divided. The flexor tendons of the ring finger and the FCR were uninjured.",
            {
                "index FDP": {"extent": "complete"},
                "ring FDP": {"extent": "intact"},
                "ring FDS": {"extent": "intact"},
                "FCR": {"extent": "intact"},
            },
        ),
        (
            "Index FDP divided completely. Middle finger skin cut only, tendons seen and not cut.",
            {
                "index FDP": {"extent": "complete"},
                "middle FDP": {"extent": "intact"},
                "middle FDS": {"extent": "intact"},
            },
        ),
        (
            "Index FDP divided completely. In the middle finger both tendons were intact.",
            {
                "index FDP": {"extent": "complete"},
                "middle FDP": {"extent": "intact"},
                "middle FDS": {"extent": "intact"},
            },
        ),
        (
            "Index FDP divided completely, middle finger flexors intact.",
            {
                "index FDP": {"extent": "complete"},
                "middle FDP": {"extent": "intact"},
                "middle FDS": {"extent": "intact"},
            },
        ),
        (
            "Index FDP divided completely. Middle and ring flexors all intact.",
            {
                "index FDP": {"extent": "complete"},
                "middle FDP": {"extent": "intact"},
                "middle FDS": {"extent": "intact"},
                "ring FDP": {"extent": "intact"},
                "ring FDS": {"extent": "intact"},
            },
        ),
        (
            "The flexor carpi radialis, both flexors of the index finger, the superficialis of the"
            " middle finger and the median nerve were intact. Ring FDP divided.",
            {
                "index FDP": {"extent": "intact"},
                "index FDS": {"extent": "intact"},
                "middle FDS": {"extent": "intact"},
                "ring FDP": {"extent": "complete"},
                "FCR": {"extent": "intact"},
            },
        ),
        (
            "Ring FDP transected in zone II. FDS ulnar slip a quarter cut, radial slip ok.",
            {
                "ring FDP": {"extent": "complete", "zone": "II"},
                "ring FDS radial": {"extent": "intact"},
                "ring FDS ulnar": {"extent": "partial", "extent_percent": 25},
            },
        ),
        (
            "The ulnar superficialis slip of the long finger was cut, whereas the radial slip of "
            "the long finger was in continuity, and the ring profundus was completely divided.",
            {"middle FDS radial": {"extent": "intact"}, "ring FDP": {"extent": "complete"}},
        ),
        (
            "Ring finger. FDP - partially cut, around 40% of thickness. FDS normal.",
            {"ring FDP": {"extent": "partial", "extent_percent": 40}, "ring FDS": {"extent": "intact"}},
        ),
        (
            "Ring finger. FDP partial laceration (about 2/3 of its cross-section).",
            {"ring FDP": {"extent": "partial", "extent_percent": 67}},
        ),
        (
            "FCU, ulnar nerve and ulnar artery - intact. FCR - divided.",
            {"FCR": {"extent": "complete"}, "FCU": {"extent": "intact"}},
        ),
        (
            "Ring finger. FDP intact over its whole length. FDS completely divided.",
            {"ring FDP": {"extent": "intact"}, "ring FDS": {"extent": "complete"}},
        ),
        (
            "Index finger. FDP: cut all the way across. FDS: cut about 40 percent, radial side.",
            {"index FDP": {"extent": "complete"}, "index FDS": {"extent": "partial", "extent_percent": 40}},
        ),
        (
            "Ring finger. Both halves of the superficialis were safely attached. FDP completely divided.",
            {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "intact"}},
        ),
        (
            "Ring finger FDP avulsed from the distal phalanx in zone I.",
            {"ring FDP": {"extent": "complete", "zone": "I"}},
        ),
        ("Small finger. FDP torn in a third of its width.", {"small FDP": {"extent": "partial", "extent_percent": 33}}),
        (
            "Small finger. FDP cut 60 %, ulnar part whole; FDS cut 10 %, left, no stitch.",
            {
                "small FDP": {"extent": "partial", "extent_percent": 60},
                "small FDS": {"extent": "partial", "extent_percent": 10, "treatment": "left"},
            },
        ),
        (
            "In the middle finger the profundus and the superficialis, and in the ring finger the "
            "profundus alone, had been completely transected.",
            {
                "middle FDP": {"extent": "complete"},
                "middle FDS": {"extent": "complete"},
                "ring FDP": {"extent": "complete"},
            },
        ),
        (
            "The profundus of the ring finger and of the small finger had both been divided in zone III.",
            {"ring FDP": {"extent": "complete", "zone": "III"}, "small FDP": {"extent": "complete", "zone": "III"}},
        ),
        (
            "Ring: FDP out, FDS out. Small: FDP out, FDS 20%.",
            {
                "ring FDP": {"extent": "complete"},
                "ring FDS": {"extent": "complete"},
                "small FDP": {"extent": "complete"},
                "small FDS": {"extent": "partial", "extent_percent": 20},
            },
        ),
        (
            "FDS and FDP to index both completely severed, middle FDP 80% severed, middle FDS untouched.",
            {
                "index FDP": {"extent": "complete"},
                "index FDS": {"extent": "complete"},
                "middle FDP": {"extent": "partial", "extent_percent": 80},
                "middle FDS": {"extent": "intact"},
            },
        ),
        (
            "Both flexor tendons of the index finger were completely transected at the level of the A3 pulley.",
            {"index FDP": {"extent": "complete"}, "index FDS": {"extent": "complete"}},
        ),
        ("Thumb: FPL found cut clean across under the oblique pulley.", {"thumb FPL": {"extent": "complete"}}),
        ("Thumb: FPL 90% cut, converted to full division.", {"thumb FPL": {"extent": "partial", "extent_percent": 90}}),
        (
            "Little finger. Deep tendon divided. Superficial tendon: one slip nicked, 20 %.",
            {"small FDP": {"extent": "complete"}, "small FDS": {"extent": "partial", "extent_percent": 20}},
        ),
        (
            "Middle finger. FDP cut to three quarters. FDS unscathed.",
            {"middle FDP": {"extent": "partial", "extent_percent": 75}, "middle FDS": {"extent": "intact"}},
        ),
        (
            "Middle finger. FDP had a 70-80% cut. FDS not seen.",
            {"middle FDP": {"extent": "partial", "extent_percent": 80}},
        ),
        ("Middle finger. A 30% nick of the FDP.", {"middle FDP": {"extent": "partial", "extent_percent": 30}}),
        (
            "Middle finger. FDP: 3/4 cut. FDS: no damage.",
            {"middle FDP": {"extent": "partial", "extent_percent": 75}, "middle FDS": {"extent": "intact"}},
        ),
        (
            "Middle finger. FDP severed; of FDS only the radial slip severed, the ulnar slip whole.",
            {
                "middle FDP": {"extent": "complete"},
                "middle FDS radial": {"extent": "complete"},
                "middle FDS ulnar": {"extent": "intact"},
            },
        ),
        (
            "Middle finger. FDP severed; FDS radial slip severed, ulnar slip whole.",
            {
                "middle FDP": {"extent": "complete"},
                "middle FDS radial": {"extent": "complete"},
                "middle FDS ulnar": {"extent": "intact"},
            },
        ),
        (
            "Middle finger. FDP and radial slip of FDS completely divided. Ulnar slip in continuity.",
            {
                "middle FDP": {"extent": "complete"},
                "middle FDS radial": {"extent": "complete"},
                "middle FDS ulnar": {"extent": "intact"},
            },
        ),
        ("Middle finger. FDP and one slip of FDS completely divided.", {"middle FDP": {"extent": "complete"}}),
        (
            "Ring finger: complete zone II laceration of both FDP and FDS.",
            {"ring FDP": {"extent": "complete", "zone": "II"}, "ring FDS": {"extent": "complete", "zone": "II"}},
        ),
        (
            "Ring finger: FDP complete laceration zone IIC, FDS 50% ulnar slip, left alone; radial slip intact.",
            {
                "ring FDP": {"extent": "complete", "zone": "IIC"},
                "ring FDS radial": {"extent": "intact"},
                "ring FDS ulnar": {"extent": "partial", "extent_percent": 50, "treatment": "left"},
            },
        ),
        (
            "Ring finger, zone 2. FDP through. FDS through.",
            {"ring FDP": {"zone": "II", "extent": "complete"}, "ring FDS": {"zone": "II", "extent": "complete"}},
        ),
        (
            "Zone V laceration. FCR, FPL and FDS of index and middle completely divided. All other flexors intact.",
            {
                "thumb FPL": {"zone": "V", "extent": "complete"},
                "index FDS": {"zone": "V", "extent": "complete"},
                "middle FDS": {"zone": "V", "extent": "complete"},
                "FCR": {"zone": "V", "extent": "complete"},
                **{
                    whole: {"extent": "intact"}
                    for whole in ("index FDP", "middle FDP", "ring FDP", "ring FDS", "small FDP", "small FDS")
                },
            },
        ),
        (
            "All four FDS tendons and the FDP of the ring and small were completely severed in zone V.",
            {
                "index FDS": {"extent": "complete", "zone": "V"},
                "middle FDS": {"extent": "complete", "zone": "V"},
                "ring FDP": {"extent": "complete", "zone": "V"},
                "ring FDS": {"extent": "complete", "zone": "V"},
                "small FDP": {"extent": "complete", "zone": "V"},
                "small FDS": {"extent": "complete", "zone": "V"},
            },
        ),
        (
            "FDS 3 and 4 completely divided, FDS 2 half divided, FDS 5 intact. Zone V.",
            {
                "index FDS": {"extent": "partial", "extent_percent": 50, "zone": "V"},
                "middle FDS": {"extent": "complete", "zone": "V"},
                "ring FDS": {"extent": "complete", "zone": "V"},
                "small FDS": {"extent": "intact"},
            },
        ),
        (
            "2nd and 3rd FDP transected, 4th and 5th FDP intact.",
            {
                "index FDP": {"extent": "complete"},
                "middle FDP": {"extent": "complete"},
                "ring FDP": {"extent": "intact"},
                "small FDP": {"extent": "intact"},
            },
        ),
        (
            "Middle finger FDP: no injury seen. Ring finger FDP: completely divided.",
            {"middle FDP": {"extent": "intact"}, "ring FDP": {"extent": "complete"}},
        ),
        (
            "Middle finger FDP was completely divided and not the FDS.",
            {"middle FDP": {"extent": "complete"}, "middle FDS": {"extent": "intact"}},
        ),
        (
            "Ring finger: FDP completely divided but FDS spared.",
            {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "intact"}},
        ),
        (
            "Ring finger: FDP completely divided; the FDS was not.",
            {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "intact"}},
        ),
        (
            "Ring finger: neither FDP nor FDS was cut. Small finger: FDP completely divided.",
            {"ring FDP": {"extent": "intact"}, "ring FDS": {"extent": "intact"}, "small FDP": {"extent": "complete"}},
        ),
        (
            "Ring finger: only the FDS was completely divided. FDP looked at and intact.",
            {"ring FDP": {"extent": "intact"}, "ring FDS": {"extent": "complete"}},
        ),
        (
            "Ring finger: the FDP hung by a few fibres, 95 % cut.",
            {"ring FDP": {"extent": "partial", "extent_percent": 95}},
        ),
        ("Index finger: subtotal division of FDP (90%).", {"index FDP": {"extent": "partial", "extent_percent": 90}}),
        ("Index finger: FDP incompletely divided, 60%.", {"index FDP": {"extent": "partial", "extent_percent": 60}}),
        (
            "Index finger: FDP longitudinal split, no transverse cut. FDS completely divided.",
            {"index FDS": {"extent": "complete"}},
        ),
        ("Index finger FDP divided in its radial half.", {"index FDP": {"extent": "partial", "extent_percent": 50}}),
        (
            "Index finger: FDP tenotomised completely by the blade, FDS half-sectioned.",
            {"index FDP": {"extent": "complete"}, "index FDS": {"extent": "partial", "extent_percent": 50}},
        ),
    ],
)
def test_extents_and_zones(note: str, expected: dict[str, dict[str, object]]) -> None:
    assert told(note, "extent", "extent_percent", "treatment", "zone") == expected


@pytest.mark.parametrize(
    "words",
    ["The FDP was torn nearly through.", "FDP all but divided.", "The FDP was cut through most of its breadth."],
)
def test_nearly_through_is_not_through(words: str) -> None:
    assert told("Left small finger. " + words, "extent") == {"small FDP": {"extent": "partial"}}


@pytest.mark.parametrize(
    "words", ["All flexors of the index and the middle finger, FPL intact.", "Index opened. FPL intact."]
)
def test_a_thumb_flexor_is_the_thumbs(words: str) -> None:
    assert not {entry for entry in told(words, "extent") if "FPL" in entry} - {"thumb FPL"}


@pytest.mark.parametrize(
    "note",
    [
        "Ring finger. FDP divided. FDS radial slip cut, ulnar slip intact.",
        "Ring finger. FDS: radial slip cut; ulnar slip untouched. FDP through.",
    ],
)
def test_a_slip_cut_beside_a_whole_one_is_cut_through(note: str) -> None:
    extents = told(note, "extent")
    assert extents["ring FDS radial"] == {"extent": "complete"}
    assert extents["ring FDS ulnar"] == {"extent": "intact"}


def test_a_slip_cut_in_part_is_not_cut_through() -> None:
    extents = told("Ring finger. FDP divided. FDS radial slip cut 40%, ulnar slip intact.", "extent")
    assert extents["ring FDS radial"] == {"extent": "partial"}


@pytest.mark.parametrize("words", ["through, clean faces", "through as well", "right through"])
def test_dots_may_lead_to_a_bare_through(words: str) -> None:
    assert told(f"FDP MF ............. {words}.\n", "extent") == {"middle FDP": {"extent": "complete"}}


@pytest.mark.parametrize("lead", ["In zone III one sees:", "In zone 3 the following was found:"])
def test_a_zone_that_opens_a_list_is_said_of_all_of_it(lead: str) -> None:
    note = f"{lead} FDP of the ring finger completely divided; FDS of the ring finger completely divided."
    assert told(note, "zone") == {"ring FDP": {"zone": "III"}, "ring FDS": {"zone": "III"}}


@pytest.mark.parametrize("words", ["FDS preserved in full", "FDS preserved in continuity", "FDS preserved"])
def test_a_tendon_preserved_in_full_is_intact(words: str) -> None:
    assert told(f"Ring finger. FDP completely severed; {words}.", "extent")["ring FDS"] == {"extent": "intact"}
