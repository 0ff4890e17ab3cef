"""Statements of a dictation that no stop, or only commas, part keep to their own tendon and finger."""

import pytest
from reader_sentences import told

RUNS = [
    (
        "this is a right hand zone two flexor tendon repair starting with the ring finger both the deep flexor and "
        "the FDS were completely divided I repaired the deep flexor with a six strand core of 4-0 Prolene no "
        "epitendinous suture I left the FDS there was no gap it glided freely",
        {
            "ring FDP": {"extent": "complete", "treatment": "repaired", "strands": 6, "peripheral": "absent",
                         "gap": "none", "glide": "free"},
            "ring FDS": {"extent": "complete", "treatment": "left"},
        },
    ),
    (
        "left hand index and ring fingers cut by glass in zone two starting with the index finger complete cut of the "
        "profundus with the superficialis intact four strand repair of the profundus with 3-0 Ethibond good free "
        "glide going on to the ring finger the profundus was completely cut so was the superficialis two strand "
        "repair of the profundus with 3-0 Ethibond I left the superficialis",
        {
            "index FDP": {"extent": "complete", "treatment": "repaired", "strands": 4, "glide": "free"},
            "index FDS": {"extent": "intact"},
            "ring FDP": {"extent": "complete", "treatment": "repaired", "strands": 2},
            "ring FDS": {"extent": "complete", "treatment": "left"},
        },
    ),
    (
        "left hand index and long fingers cut by a saw in zone two, the index finger first, the profundus was "
        "completely cut, so was the superficialis, four strand repair of the profundus with 3-0 Ethibond, the "
        "superficialis was excised, no gap, now the long finger, the profundus was completely cut, the superficialis "
        "was intact, I repaired the profundus with a two strand core of 4-0 Prolene, it glided freely",
        {
            "index FDP": {"extent": "complete", "treatment": "repaired", "strands": 4, "gap": "none"},
            "index FDS": {"extent": "complete", "treatment": "excised"},
            "middle FDP": {"extent": "complete", "treatment": "repaired", "strands": 2, "glide": "free"},
            "middle FDS": {"extent": "intact"},
        },
    ),
]  # fmt: skip


@pytest.mark.parametrize(("words", "facts"), RUNS)
def test_each_statement_is_of_its_own_tendon(words: str, facts: dict[str, dict[str, object]]) -> None:
    fields = ("extent", "treatment", "strands", "peripheral", "gap", "glide")
    found = told(words, *fields)
    assert {place: found.get(place) for place in facts} == facts
    assert set(found) == set(facts)


@pytest.mark.parametrize(
    ("words", "strands"),
    [
        ("The FDP was completely cut and 30 percent of the FDS, four strand repair of the FDP with 4-0 Ethibond.", 4),
        ("FDS 40%, FDP completely cut, two-strand suture of the FDP with 4-0 Prolene.", 2),
    ],
)
def test_a_count_is_of_the_repair_it_names(words: str, strands: int) -> None:
    assert told(f"Left ring finger. {words}", "strands") == {"ring FDP": {"strands": strands}}


@pytest.mark.parametrize(
    ("words", "extent"),
    [
        ("The FDP was completely cut. So was the FDS.", "complete"),
        ("The FDP was completely cut. So too was the superficialis.", "complete"),
        ("The FDP was transected. The FDS likewise.", "complete"),
        ("The FDP was completely cut and was repaired with four strands. So was the FDS.", None),
        ("The FDP was completely cut. It was repaired with four strands. So was the FDS.", None),
    ],
)
def test_so_was_the_next(words: str, extent: str | None) -> None:
    assert told(f"Left ring finger. {words}", "extent").get("ring FDS", {}).get("extent") == extent


@pytest.mark.parametrize(
    ("words", "treatment"),
    [
        ("I left the FDS.", "left"),
        ("We left the superficialis as it was.", "left"),
        ("I left the superficialis alone, A2 was intact.", "left"),
        ("I left the FDS to heal.", "left"),
        ("We left the FDS for a second operation.", None),
    ],
)
def test_a_tendon_that_was_left(words: str, treatment: str | None) -> None:
    head = "Left ring finger. The FDP was completely cut, the FDS half. The FDP was repaired with four strands. "
    assert told(head + words, "treatment").get("ring FDS", {}).get("treatment") == treatment


def test_a_finger_that_names_whose_slip() -> None:
    words = (
        "The index superficialis was reconstituted with a two-strand modified Kessler of 4-0 Ethibond without a "
        "peripheral stitch, while the severed ulnar slip in the middle finger was resected to reduce the volume"
    )
    found = told(f"Index and middle fingers explored. {words} within the sheath.", "strands", "treatment")
    assert found["index FDS"] == {"strands": 2, "treatment": "repaired"}
    assert found["middle FDS ulnar"] == {"treatment": "excised"}


@pytest.mark.parametrize(
    ("words", "middle", "ring"),
    [
        ("middle no gap ring opened up by one millimetre on full extension i left it at that", None, "seen"),
        ("there was no gap in the middle the ring gapped by one millimetre and i left it at that", None, "seen"),
    ],
)
def test_the_result_of_the_next_finger(words: str, middle: str | None, ring: str) -> None:
    head = "middle fdp cut repaired with four strands ring fdp cut repaired the same i moved them through by hand "
    found = told(head + words, "gap")
    assert found["ring FDP"] == {"gap": ring}
    assert found.get("middle FDP", {}).get("gap") in (middle, "none")
