"""A finger put right says so: what was told of it under another name carries a reason to look twice."""

from notereader.reader.desk import Desk
from notereader.reader.reasons import Reason


def renamed(desk: Desk) -> None:
    """Give a reason to every finding of a finger or a slip that a correction put in another's place."""
    changed = desk.page.slips_changed
    for finding in desk.findings:
        if changed is not None and finding.entry[2] and finding.order < changed:
            finding.reasons.append(Reason("slip_corrected"))
    if desk.page.renamed is None:
        return
    right, wrong, at = desk.page.renamed
    reason = Reason("finger_corrected", (right, wrong))
    for finding in desk.findings:
        if finding.entry[0] == right and finding.order < at:
            finding.reasons.append(reason)
