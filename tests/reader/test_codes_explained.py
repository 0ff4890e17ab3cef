"""'Codes: C cut through, 0 no damage; then / R joined' above 'FCR C/R': codes that a key explains without a sign."""

from reader_sentences import each, quote_of, told

WRIST = """Codes: C cut through, P part cut, 0 no damage, * not explored; then / R joined, N not joined, T tidied

Right wrist, zone V.
FCR    C/R      PL    C/N      FCU   P/T (one fifth)
FDS    i C/R    m C/R    s 0
MN     C/R      UN    0
RA     C/R      UA    0
"""


def test_cells_beside_their_names() -> None:
    assert each(WRIST, "extent") == {
        "FCR": "complete",
        "PL": "complete",
        "FCU": "partial",
        "index FDS": "complete",
        "middle FDS": "complete",
        "small FDS": "intact",
    }
    treated = {"FCR": "repaired", "PL": "left", "FCU": "trimmed", "index FDS": "repaired", "middle FDS": "repaired"}
    assert each(WRIST, "treatment") == treated
    assert "C/R" in quote_of(WRIST, "FCR", "treatment")


def test_nerves_and_arteries() -> None:
    extents = {
        "median nerve": "complete",
        "ulnar nerve": "intact",
        "radial artery": "complete",
        "ulnar artery": "intact",
    }
    assert each(WRIST, "extent", group="injuries") == extents


def test_other_keys() -> None:
    words = (
        "Key: D divided, P partial, W whole; then / S sutured, L left.\nFDP index D/S, FDP middle P/L, FDS index W\n"
    )
    assert each(words, "treatment") == {"index FDP": "repaired", "middle FDP": "left"}
    rows = "Legend - X cut through, O intact, H half cut\nFDP   i X   m O   r H\nFDS   i O   m O   r X\n"
    assert each(rows, "extent")["ring FDP"] == "partial"
    assert each(rows, "extent")["middle FDS"] == "intact"


def test_an_unknown_code_stays_unread() -> None:
    words = "Key: D divided, P partial, W whole\nFDP index: D; FDS index: W; FDP ring: Q\n"
    assert not each(words, "extent")


def test_no_key() -> None:
    words = "Code: trauma call, urgent, second on the list\nFDP ring C\n"
    assert not told(words).get("ring FDP", {}).get("extent")


def test_counts_under_a_label() -> None:
    words = "Wrist. FDS of index and ring and FCR cut and sutured.\nStrands     FDS 4, FCR 6\n"
    assert each(words, "strands") == {"index FDS": 4, "ring FDS": 4, "FCR": 6}
    other = "FDP and FDS of the small finger sutured.\nCore strands: FDP 4, FDS 2\n"
    assert each(other, "strands") == {"small FDP": 4, "small FDS": 2}
    assert each("Cut: FDS 4, FDP 4. FDS 4: four strands.", "strands") == {"ring FDS": 4}


def test_the_last_of_a_list_has_none() -> None:
    words = "FDP of the index, middle and ring repaired.\nEpitendinous 6-0 Prolene, ring not done."
    assert each(words, "peripheral") == {"index FDP": "present", "middle FDP": "present", "ring FDP": "absent"}
    wrist = "FDS of index and ring and FCR cut through and sutured.\nEpitendinous   5-0 Prolene, FCR omitted"
    assert each(wrist, "peripheral").get("FCR") != "present"
    done = "FDP of the index and ring repaired.\nEpitendinous 6-0 Prolene, ring done by the registrar."
    assert "absent" not in each(done, "peripheral").values()
