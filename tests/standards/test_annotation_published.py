"""Evidence against the W3C Web Annotation Data Model, Recommendation of 23 February 2017, sections 4.2.4 and 4.2.5.

4.2.5: a TextPositionSelector has exactly one start and one end, whole numbers not below 0; position 0 lies before the
first character; the character at `end` is not part of it; positions count Unicode code points, not code units.
4.2.4: a TextQuoteSelector has exactly one `exact` and at most one `prefix` and `suffix`.
"""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from notereader.reader import read
from notereader.record import Evidence, Record, dump_record, note_hash, source_of

# A zone in mathematical capitals, a face and a flag lie outside the basic plane; the e with a mark beside it is two
# code points.
BEYOND = (
    "OPERATION NOTE \U0001f91a\U0001f3fd\n"
    "Patient \U0001f1e9\U0001f1f0 e\u0301lan. Ring finger, zone II. \U0001d4d7and table.\n"
    "FDP of the ring finger completely divided \U0001f52a and repaired with a four-strand cruciate of "
    "4-0 braided polyester \U0001f9f5 and a running 6-0 polypropylene epitendinous suture.\n"
    "A2 pulley intact \U0001f44d. No gap.\n"
)


def quotes(record: Record) -> list[Evidence]:
    """Return all evidence of a record."""
    found = [e for _, fact in record.walk() for e in [*fact.evidence, *(e for r in fact.rivals for e in r.evidence)]]
    return found + [e for remark in record.remarks for e in remark.evidence]


def test_the_example_of_the_recommendation() -> None:
    # "efg" in the alphabet lies from 4 to 7.
    evidence = Evidence.at("abcdefghijklmnopqrstuvwxyz", 4, 7, "")
    assert evidence.exact == "efg"
    assert evidence.span == (4, 7)


@given(st.text(st.characters(exclude_categories=["Cs"]), max_size=60), st.data())
def test_positions_count_code_points_and_exclude_the_end(text: str, data: st.DataObject) -> None:
    start = data.draw(st.integers(0, len(text)))
    end = data.draw(st.integers(start, len(text)))
    evidence = Evidence.at(text, start, end, source_of(text))
    # UTF-32 has one unit for each code point, so it counts them independently of Python's own strings.
    units = text.encode("utf-32-le")
    assert units[4 * start : 4 * end].decode("utf-32-le") == evidence.exact
    quote = json.loads(evidence.model_dump_json())["selector"][1]
    assert (
        text
        == text[: start - len(quote["prefix"])]
        + quote["prefix"]
        + quote["exact"]
        + quote["suffix"]
        + text[end + len(quote["suffix"]) :]
    )


def test_a_note_with_characters_outside_the_basic_plane() -> None:
    record = read(BEYOND, "beyond.txt")
    facts = {place.field: fact for place, fact in record.walk() if place.group == "repairs" and place.part == "FDP"}
    assert facts["strands"].value == 4
    # The words stand after eight characters that are two units each in UTF-16, and must not have slipped.
    assert facts["strands"].evidence[0].exact.startswith("four-strand")
    assert quotes(record)
    units = BEYOND.encode("utf-32-le")
    for evidence in quotes(record):
        assert evidence.span is not None
        start, end = evidence.span
        assert units[4 * start : 4 * end].decode("utf-32-le") == evidence.exact
        assert start < end <= len(BEYOND)


def test_the_form_of_evidence_in_json() -> None:
    record = json.loads(dump_record(read(BEYOND, "beyond.txt")))
    evidence = record["repairs"][0]["facts"]["strands"]["evidence"][0]
    position, quote = evidence["selector"]
    assert evidence["source"] == f"urn:sha256:{note_hash(BEYOND)}" == f"urn:sha256:{record['note']['sha256']}"
    assert position.keys() == {"type", "start", "end"}
    assert position["type"] == "TextPositionSelector"
    assert quote.keys() == {"type", "exact", "prefix", "suffix"}
    assert quote["type"] == "TextQuoteSelector"
    assert record["note"]["characters"] == len(BEYOND)


@pytest.mark.parametrize(
    ("text", "digest"),
    [
        # FIPS 180-4, worked examples of SHA-256: 'abc' and the empty message.
        ("abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"),
        ("", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"),
    ],
)
def test_the_hash_of_the_note_is_sha_256(text: str, digest: str) -> None:
    assert note_hash(text) == digest
