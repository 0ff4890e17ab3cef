import csv
import io
import re
from pathlib import Path

import pytest
from exchange_helpers import (
    A4,
    GAP,
    GLIDE,
    HARMFUL,
    LOOPED,
    PURCHASE,
    SIZE,
    STRANDS,
    WRIST,
    confirmed,
    example,
    poisoned,
)
from hypothesis import given
from hypothesis import strategies as st

from notereader.appraisal.cautions import all_cautions
from notereader.exchange import columns_csv, facts_csv, write_facts
from notereader.exchange.table import COLUMNS, harmless
from notereader.record import Address
from notereader.vocabulary import field_specs

FORMULA = re.compile(r"^[\s\x00-\x1f]*[=+\-@＝＋－＠]")


def rows(text: str) -> list[dict[str, str]]:
    """Read CSV by RFC 4180: commas, CRLF, quoted cells."""
    assert text.startswith("\ufeff")
    return [*csv.DictReader(io.StringIO(text.removeprefix("\ufeff"), newline=""), strict=True)]


def row_of(address: Address) -> dict[str, str]:
    return next(row for row in rows(facts_csv([example()])) if row["address"] == address.text())


def test_one_row_for_each_fact_of_each_record() -> None:
    found = rows(facts_csv([example(), confirmed()]))
    assert len(found) == 2 * len([*example().walk()])
    assert set(found[0]) == set(COLUMNS)
    assert {row["reviewer"] for row in found[11:]} == {"Hand clinic"}
    assert {row["reviewer"] for row in found[:11]} == {""}


@pytest.mark.parametrize(
    ("address", "wanted"),
    [
        (STRANDS, dict(value="6", low="6", high="6", status="confirmed", words="six-strand", rivals="4")),
        (STRANDS, dict(digit="middle", part="FDP", side="", group="repairs", label="Core strands")),
        (SIZE, dict(value="3-0", low="", high="", status="proposed", look_twice="thicker than most")),
        (PURCHASE, dict(value="8 to 10", low="8", high="10", unit="mm", status="corrected")),
        (GLIDE, dict(value="", basis="silent", words="", start="", end="")),
        (GAP, dict(value="none", status="withdrawn")),
        (LOOPED, dict(value="yes", low="", high="")),
        (A4, dict(value="vented", status="added", said_by="the surgeon", said_on="2031-03-20")),
        (WRIST, dict(value="-10", low="-10", high="-10", unit="degrees of flexion")),
    ],
)
def test_a_row_says_what_the_record_says(address: Address, wanted: dict[str, str]) -> None:
    row = row_of(address)
    assert {name: row[name] for name in wanted} == wanted


def test_start_and_end_count_code_points_of_the_note() -> None:
    row = row_of(STRANDS)
    assert example().note.text[int(row["start"]) : int(row["end"])] == row["words"] == "six-strand"


def test_the_words_of_the_note_can_be_left_out() -> None:
    text = facts_csv([example()], words=False)
    for words in ("six-strand", "No gapping", "thicker than most"):
        assert words not in text
    assert rows(text)[1]["value"] == "6"


@given(st.text(), st.sampled_from("=+-@＝＋－＠"), st.sampled_from(["", " ", "\t", "\n", "\0", "a;", "x|", ";\t"]))
def test_no_text_becomes_a_formula(tail: str, sign: str, head: str) -> None:
    cell = harmless(head + sign + tail)
    # A spreadsheet may part cells at other marks than the comma.
    assert not any(FORMULA.match(piece) for piece in re.split(r"[;|\t\r\n]", cell))


@given(st.text().filter(lambda text: not re.search(r"[=+\-@＝＋－＠\s\x0b-\x1f\x85\u2028\u2029]", text)))
def test_a_harmless_text_stays_as_it_is(text: str) -> None:
    assert harmless(text) == text


@pytest.mark.parametrize("harm", [*HARMFUL, "=1+2", '=HYPERLINK("x")', "@SUM(A1)", "-2+3", "\t=1", 'a","=1', "x\r\n=1"])
def test_a_harmful_note_stays_within_its_cells(harm: str) -> None:
    found = rows(facts_csv([poisoned(harm)]))
    assert len(found) == 2
    cells = [cell for row in found for cell in row.values()]
    assert [cell for cell in cells if FORMULA.match(cell)] == []
    assert found[0]["words"].replace("'", "") == " ".join(harm.splitlines())


def test_the_dictionary_names_every_column_every_field_and_the_cautions() -> None:
    found = rows(columns_csv())
    kinds = {kind: [row for row in found if row["kind"] == kind] for kind in ("column", "field", "caution")}
    assert [row["name"] for row in kinds["column"]] == [*COLUMNS]
    assert len(kinds["field"]) == sum(len(specs) for specs in field_specs().values())
    assert [row["meaning"] for row in kinds["caution"]] == all_cautions()
    strands = next(row for row in kinds["field"] if row["name"] == "repairs.strands")
    assert "to" in strands["values"]
    side = next(row for row in kinds["field"] if row["name"] == "operation.side")
    assert side["values"] == "left; right; both"


def test_table_and_dictionary_are_written_side_by_side(tmp_path: Path) -> None:
    dictionary = write_facts([example()], tmp_path / "facts.csv")
    assert dictionary == tmp_path / "facts-columns.csv"
    assert (tmp_path / "facts.csv").read_bytes().decode("utf-8") == facts_csv([example()])
    assert dictionary.read_bytes().decode("utf-8") == columns_csv()
