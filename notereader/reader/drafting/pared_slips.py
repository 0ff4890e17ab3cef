"""A slip that was pared once both were sewn: 'Both slips sewn with 4-0. The ulnar one caught and was trimmed back'."""

from dataclasses import replace

from notereader.reader.desk import Finding

_CORE = frozenset(["stitch", "size", "strands"])
_PARED = frozenset(["treatment", "trimmed_mm"])
Tendon = tuple[str | None, str]


def without_pared_slips(findings: list[Finding]) -> list[Finding]:
    """Leave out that a slip was trimmed where its tendon had been sewn before: it is as sewn as the other one.

    How it ran from then on is how the tendon runs.
    """
    pared = {f.entry for f in findings if f.entry[2] and f.field == "treatment" and f.value == "trimmed"}
    if not pared:
        return findings
    sewn = _first_cores(findings)
    otherwise = {f.entry for f in findings if f.field == "treatment" and f.value != "trimmed"}
    since = {
        entry
        for entry in pared - otherwise
        if entry[:2] in sewn
        and all(sewn[entry[:2]] < f.order for f in findings if f.entry == entry and f.field in _PARED)
    }
    kept = [f for f in findings if not (f.entry in since and f.field in _PARED)]
    return [replace(f, entry=(*f.entry[:2], None)) if f.entry in since and f.field == "glide" else f for f in kept]


def _first_cores(findings: list[Finding]) -> dict[Tendon, int]:
    """Return where the core of each whole tendon is first told in the body of the note."""
    found: dict[Tendon, int] = {}
    for f in findings:
        if f.group == "repairs" and f.entry[2] is None and f.field in _CORE and not (f.header or f.carried):
            tendon = f.entry[:2]
            found[tendon] = min(f.order, found.get(tendon, f.order))
    return found
