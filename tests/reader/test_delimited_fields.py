"""'finger;tendon;cut' above '2;FDP;100 %', 'side;R': notes exported as fields with a mark between them."""

from reader_sentences import each, quote_of, told

HEAD = "side;R\ncause;glass\nsurgeon;Wintervale\nabx;cefuroxime\n"
FORM = (
    HEAD
    + """finger;tendon;zone;cut;core strands;suture
2;FDP;II;100 %;4;3-0 Ethilon
2;FDS;II;0;;
4;FDP;II;60 %;6;4-0 Prolene

other;median nerve;2 of 6 fascicle groups;sutured 9-0
stitch;Strickland, all
length held;10 mm
"""
)


def test_a_grid_of_fields() -> None:
    assert each(FORM, "strands") == {"index FDP": 4, "ring FDP": 6}
    assert each(FORM, "size") == {"index FDP": "3-0", "ring FDP": "4-0"}
    assert each(FORM, "extent") == {"index FDP": "complete", "index FDS": "intact", "ring FDP": "partial"}
    assert quote_of(FORM, "ring FDP", "strands") == "6"


def test_labels_and_answers() -> None:
    assert each(FORM, "purchase_mm") == {"index FDP": (10, 10), "ring FDP": (10, 10)}
    nerve = {"extent": "partial", "treatment": "repaired"}
    assert told(FORM, group="injuries")["median nerve"] == nerve


def test_other_marks() -> None:
    words = "digit^tendon^level^cut^strands\n1^FPL^II^complete^4\n5^FDP^II^complete^6\n5^FDS^II^intact^\n"
    assert each(words, "strands") == {"thumb FPL": 4, "small FDP": 6}


def test_commas() -> None:
    words = "finger,tendon,zone,cut,strands\n3,FDP,II,complete,4\n3,FDS,II,intact,\n4,FDP,II,complete,6\n"
    assert each(words, "strands") == {"middle FDP": 4, "ring FDP": 6}


def test_running_text_keeps_its_semicolons() -> None:
    words = "Ring FDP cut; repaired with 4-0 nylon; A2 intact.\nMiddle FDP whole; FDS whole; nothing done."
    assert each(words, "size") == {"ring FDP": "4-0"}


def test_numbers_that_only_count() -> None:
    words = "finger | tendon | cut\n1 | FDP | complete\n2 | FDP | complete\n"
    assert "thumb FDP" not in told(words)


def test_fascicles_counted() -> None:
    assert each("Ulnar nerve: 3 of 8 fascicles cut.", "extent", group="injuries") == {"ulnar nerve": "partial"}
    words = "Median nerve: two out of five fasciculi divided, sutured with 9-0."
    assert each(words, "extent", group="injuries") == {"median nerve": "partial"}
    whole = "Median nerve: all fascicles cut, 4 of 6 fascicle groups could be matched."
    assert each(whole, "extent", group="injuries") == {"median nerve": "complete"}


def test_a_stranger_taken() -> None:
    words = "FDP ring sutured, Kessler.\nTendon taken each side: 9 mm."
    assert each(words, "purchase_mm") == {"ring FDP": (9, 9)}
    assert not each("FDP ring sutured, Kessler.\nTendon lost: 9 mm.", "purchase_mm")
