"""Records out to other tools and to paper: JSON, a table of facts with its dictionary, FHIR, SQLite, summaries."""

from notereader.exchange.database import CaseOut, write_database
from notereader.exchange.fhir import fhir_json
from notereader.exchange.files import ExportFault, read_record, write_file, write_record
from notereader.exchange.printing import summary_html, summary_text
from notereader.exchange.summary import Summary, summary_of
from notereader.exchange.table import columns_csv, facts_csv, write_facts

__all__ = [
    "CaseOut",
    "ExportFault",
    "Summary",
    "columns_csv",
    "facts_csv",
    "fhir_json",
    "read_record",
    "summary_html",
    "summary_of",
    "summary_text",
    "write_database",
    "write_facts",
    "write_file",
    "write_record",
]
