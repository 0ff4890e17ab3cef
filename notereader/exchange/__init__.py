"""Records out to other tools and to paper: JSON, a table of facts with its dictionary, FHIR, SQLite, summaries.

Each is loaded when it is first used: most bring the whole appraisal with them, which reading a note does not wait for.
"""

from importlib import import_module
from typing import TYPE_CHECKING, Any

from notereader.exchange.files import ExportFault, read_record, write_file, write_record

if TYPE_CHECKING:
    from notereader.exchange.cautions import with_caution, without_caution
    from notereader.exchange.database import CaseOut, write_database
    from notereader.exchange.fhir import fhir_json
    from notereader.exchange.printing import summary_html, summary_text
    from notereader.exchange.summary import Summary, summary_of
    from notereader.exchange.table import columns_csv, facts_csv, write_facts

_MODULES = {
    "CaseOut": "database",
    "Summary": "summary",
    "columns_csv": "table",
    "facts_csv": "table",
    "fhir_json": "fhir",
    "summary_html": "printing",
    "summary_of": "summary",
    "summary_text": "printing",
    "with_caution": "cautions",
    "without_caution": "cautions",
    "write_database": "database",
    "write_facts": "table",
}

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
    "with_caution",
    "without_caution",
    "write_database",
    "write_facts",
    "write_file",
    "write_record",
]


def __getattr__(name: str) -> Any:
    """Load what is asked for (PEP 562)."""
    if name not in _MODULES:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    return getattr(import_module(f"{__name__}.{_MODULES[name]}"), name)
