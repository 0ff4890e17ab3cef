"""Records out to other tools and to paper: JSON, a table of facts with its dictionary, printable summaries."""

from notereader.exchange.files import ExportFault, read_record, write_file, write_record
from notereader.exchange.printing import summary_html, summary_text
from notereader.exchange.summary import Summary, summary_of
from notereader.exchange.table import columns_csv, facts_csv, write_facts

__all__ = [
    "ExportFault",
    "Summary",
    "columns_csv",
    "facts_csv",
    "read_record",
    "summary_html",
    "summary_of",
    "summary_text",
    "write_facts",
    "write_file",
    "write_record",
]
