"""What the command prints."""

from notereader.appraisal.appraise import appraise
from notereader.appraisal.text import appraisal_text
from notereader.record import Record


def printed_appraisal(
    record: Record, day: int | None = None, posture_deg: float = 0.0, *, as_json: bool = False
) -> str:
    """Return the appraisal of a record as readable text or as JSON. Raises ValueError as appraise() does."""
    appraisal = appraise(record, day, posture_deg)
    return appraisal.model_dump_json(indent=1) + "\n" if as_json else appraisal_text(appraisal)
