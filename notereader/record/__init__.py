"""What is known of one note: the models of the record, their addresses, JSON in and out, the published schema."""

from notereader.record.address import Address
from notereader.record.answers import SURGEON, answered, enter_answer
from notereader.record.evidence import Evidence, TextPosition, TextQuote, note_hash, source_of
from notereader.record.loading import RecordRefused, dump_record, load_record, parsed_json
from notereader.record.models import (
    FORMAT,
    FORMAT_VERSION,
    Fact,
    Injury,
    Interval,
    Note,
    Pulley,
    Record,
    Remark,
    Repair,
    Review,
    Rival,
    Value,
)
from notereader.record.schema import record_schema
from notereader.record.values import ValueRefused, check_value, show_value

__all__ = [
    "FORMAT",
    "FORMAT_VERSION",
    "SURGEON",
    "Address",
    "Evidence",
    "Fact",
    "Injury",
    "Interval",
    "Note",
    "Pulley",
    "Record",
    "RecordRefused",
    "Remark",
    "Repair",
    "Review",
    "Rival",
    "TextPosition",
    "TextQuote",
    "Value",
    "ValueRefused",
    "answered",
    "check_value",
    "dump_record",
    "enter_answer",
    "load_record",
    "note_hash",
    "parsed_json",
    "record_schema",
    "show_value",
    "source_of",
]
