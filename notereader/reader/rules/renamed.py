"""A finger put right says so: what was told of it under another name carries a reason to look twice."""

from notereader.reader.desk import Desk


def renamed(desk: Desk) -> None:
    """Give a reason to every finding of a finger that a correction put in another's place."""
    if desk.page.renamed is None:
        return
    right, wrong, at = desk.page.renamed
    reason = f"a correction says that the {right} finger is meant, not the {wrong}"
    for finding in desk.findings:
        if finding.entry[0] == right and finding.order < at:
            finding.reasons.append(reason)
