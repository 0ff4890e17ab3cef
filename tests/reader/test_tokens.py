"""How a note is split into words: sizes, broken lines, slips of a scanner, page headers, unfilled choices."""

import pytest
from reader_sentences import fact_of, quote_of, told

RING = "Ring finger. FDP completely divided and repaired with a core suture of "


@pytest.mark.parametrize(
    ("written", "size"),
    [
        ("4-0", "4-0"),
        ("#3-0", "3-0"),
        ("4/0", "4-0"),
        ("3.0", "3-0"),
        ("4 - 0", "4-0"),
        ("4-O", "4-0"),
        ("3-o", "3-0"),
        ("4\u20130", "4-0"),
        ("3\u20110", "3-0"),
        ("2\u22120", "2-0"),
        ("\uff14-\uff10", "4-0"),
        ("4'0", "4-0"),
    ],
)
def test_sizes_however_written(written: str, size: str) -> None:
    note = f"{RING}{written} nylon."
    assert told(note, "size") == {"ring FDP": {"size": size}}
    assert quote_of(note, "ring FDP", "size").strip("#") == written.strip("#")


@pytest.mark.parametrize("words", ["3-0 scale", "6'0\" tall", "3/0/2031", "14/0", "1.0 mm", "4/10", "0/10 pain"])
def test_figures_that_are_no_sizes(words: str) -> None:
    assert told(f"Ring finger. FDP completely divided and repaired. It measured {words}.", "size") == {}


@pytest.mark.parametrize(
    ("note", "field", "value"),
    [
        ("Ring finger. FDP com-\npletely divided and repaired with 4-0 nylon.", "extent", "complete"),
        (
            "Ring finger. FDP divided and repaired with a modified Kess-\nler of 4-0 nylon.",
            "stitch",
            "modified kessler",
        ),
        ("Ring finger. FDP divided and repaired with a four-\nstrand core of 4-0 nylon.", "strands", 4),
        ("Ring finger. FDP divided and re-\npaired with 4-0 Pro-\nlene.", "material", "polypropylene"),
        ("Ring finger. FDP divided, repaired with an\nAdelaide\nof 3-0 nylon.", "stitch", "adelaide"),
    ],
)
def test_words_broken_at_a_line_end(note: str, field: str, value: object) -> None:
    assert told(note, field) == {"ring FDP": {field: value}}


@pytest.mark.parametrize(
    ("note", "field", "value"),
    [
        ("Ring finger. FDP c0mpletely divided and repaired with 4-0 nylon.", "extent", "complete"),
        ("Ring finger. FDP divided and repaired with 4-0 Pro1ene.", "material", "polypropylene"),
        ("Ring finger. FDP divided, zone lI, repaired with 4-O nylon.", "zone", "II"),
        ("Ring finger. FDP divided and repaired, purchase lO mm, core 4-0 nylon.", "purchase_mm", (10, 10)),
        ("Ring finger. FDP divided and repaired with 4-0 ny1on.", "material", "nylon"),
    ],
)
def test_slips_of_a_scanner(note: str, field: str, value: object) -> None:
    assert told(note, field) == {"ring FDP": {field: value}}


@pytest.mark.parametrize(
    "header",
    [
        "FAX 12:41 03/09/2031 HAND UNIT",
        "Page 2 of 3",
        "-----------------------",
        "Sheet 1/2",
        "hospital name    page 003/004",
        "=== fax received 09:12 ===",
        "----- TRANSMISSION ----- SHEET 1 / 2 -----",
        "North Quay Hosp.   R hand, index    page two of three - - -",
        "North Quay Hosp.   L WRIST      p 2 of 2",
        "          --- p 1 ends ---",
        "page 1 continued",
    ],
)
def test_a_page_header_in_mid_sentence_is_passed_over(header: str) -> None:
    note = (
        f"Ring finger. The FDP was completely divided and was repaired with a\n{header}\nfour-strand core of 4-0 nylon."
    )
    assert told(note) == {
        "ring FDP": {"extent": "complete", "treatment": "repaired", "strands": 4, "size": "4-0", "material": "nylon"}
    }


@pytest.mark.parametrize(
    "choice",
    [
        "{two / four / six} strand",
        "[2 / 4 / 6] strands",
        "[four-strand/six-strand/eight-strand]",
        "*** strands",
        "____ strands",
        "{4-strand}",
    ],
)
def test_choices_nobody_made(choice: str) -> None:
    note = f"Ring finger. FDP completely divided and repaired with 4-0 nylon. Core: {choice}."
    assert told(note, "strands") == {}


@pytest.mark.parametrize(
    ("choice", "field", "value"),
    [
        ("Core: {STRANDS: 6} strands.", "strands", 6),
        ("Ends {CLEAN/RAGGED/CRUSHED: CLEAN}.", "ends", "clean"),
        ("Core 3-0 {MATERIAL: nylon, braided}.", "material", "nylon"),
        ("Epitendinous {YES/NO: NO}.", "peripheral", "absent"),
        ("Epitendinous: {NONE/RUNNING/CROSS-STITCH: RUNNING} 6-0.", "peripheral_pattern", "running"),
        ("Tested passively, {GAP: none}.", "gap", "none"),
        ("Gap {YES/NO: YES}.", "gap", "seen"),
    ],
)
def test_choices_made_in_braces(choice: str, field: str, value: object) -> None:
    assert told(f"Ring finger. FDP divided and repaired. {choice}", field) == {"ring FDP": {field: value}}


@pytest.mark.parametrize("choice", ["{GAP: none / 1 mm}", "{GAP: }", "{GAP:***}", "{GAP: none or seen}", "{GAP: ___}"])
def test_braces_with_no_answer(choice: str) -> None:
    assert told(f"Ring finger. FDP divided and repaired. {choice}. Closed.", "gap") == {}


@pytest.mark.parametrize(
    ("short", "material"),
    [("4-0 FW", "polyblend"), ("4'0 PP", "polypropylene"), ("4/0 ny", "nylon")],
)
def test_short_names_of_materials_behind_a_size(short: str, material: str) -> None:
    assert told(f"Ring finger. FDP divided and repaired with {short}.", "material") == {
        "ring FDP": {"material": material}
    }


def test_a_short_name_alone_is_no_material() -> None:
    note = "Ring finger. FDP divided at the level of the PP and repaired with 4-0 suture."
    assert told(note, "material") == {}


@pytest.mark.parametrize(
    "before",
    [
        "\U0001d7dc ",
        "\u200b",
        "\ufeff",
        "caf\u00e9 na\u00efve ",
        "\U0001f91a\U0001f3fd ",
        "Stra\u00dfe ",
        "\ufb01nger ",
        "\u202eabc\u202c ",
        "\t\t",
    ],
)
def test_positions_count_code_points(before: str) -> None:
    note = f"{before}Ring finger. FDP divided and repaired with a four-strand core of 4-0 nylon."
    assert quote_of(note, "ring FDP", "strands") == "four-strand"
    start = note.index("four-strand")
    evidence = fact_of(note, "ring FDP", "strands").evidence[0]
    assert evidence.span == (start, start + len("four-strand"))


@pytest.mark.parametrize(
    ("written", "stitch"),
    [
        ("Kesslér", "kessler"),
        ("KESSLER", "kessler"),
        ("kessler", "kessler"),
        ("Lim\u2013Tsai", "lim-tsai"),
        ("Winters\u2011Gelberman", "winters-gelberman"),
    ],
)
def test_letters_of_any_kind(written: str, stitch: str) -> None:
    assert told(f"{RING}3-0 nylon, {written}.", "stitch") == {"ring FDP": {"stitch": stitch}}
