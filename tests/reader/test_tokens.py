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
    ],
)
def test_sizes_however_written(written: str, size: str) -> None:
    note = f"{RING}{written} nylon."
    assert told(note, "size") == {"ring FDP": {"size": size}}
    assert quote_of(note, "ring FDP", "size").strip("#") == written.strip("#")


@pytest.mark.parametrize("words", ["3-0 scale", "3/0/2031", "14/0", "1.0 mm", "4/10", "0/10 pain"])
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
