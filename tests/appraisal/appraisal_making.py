"""Builds small invented records for the tests of the appraisal."""

from typing import Any

from notereader.record import Address, Evidence, Fact, Interval, Record, Rival, Value


def fact(value: Value | None, **more: Any) -> Fact:
    """Return a confirmed, stated fact unless told otherwise."""
    more.setdefault("status", "confirmed")
    return Fact(value=value, **more)


def proposed(value: Value, **more: Any) -> Fact:
    return Fact(value=value, status="proposed", **more)


def rivals(value: Value, *others: Value) -> Fact:
    return Fact(value=value, status="proposed", rivals=[Rival(value=other) for other in others])


def span(low: float | None, high: float | None = None) -> Interval:
    return Interval(low=low, high=low if high is None else high)


def quoted(text: str, words: str) -> list[Evidence]:
    start = text.index(words)
    return [Evidence.at(text, start, start + len(words), "urn:sha256:test")]


def _fact(value: Any) -> Fact:
    return value if isinstance(value, Fact) else fact(value)


def record_of(entries: dict[str, dict[str, Any]]) -> Record:
    """Return a record from address text -> facts, e.g. {'repairs/ring/FDP/-': {'strands': 4}}."""
    record = Record()
    for place, facts in entries.items():
        address = Address.parse(f"{place}/-")
        for name, value in facts.items():
            record.put(address.field_of(name), _fact(value))
    return record


GOOD_REPAIR: dict[str, Any] = dict(
    zone="II",
    extent="complete",
    treatment="repaired",
    strands=4,
    stitch="adelaide",
    size="3-0",
    material="braided polyester",
    hold="locking",
    purchase_mm=span(10),
    lock_mm=span(2),
    knot="buried",
    peripheral="present",
    peripheral_pattern="running",
    peripheral_size="6-0",
    ends="clean",
    gap="none",
    test="passive",
    glide="free",
    tension="none",
    bulk="none",
)

GOOD_CARE: dict[str, Any] = dict(
    splint="dorsal blocking",
    wrist_flexion_deg=span(20),
    mcp_flexion_deg=span(60),
    ip_flexion_deg=span(0),
    programme="early active",
    start_day=span(4),
    splint_weeks=span(6),
)


def repair_record(**changes: Any) -> Record:
    """Return a record of one well documented ring FDP repair with facts changed; None drops a fact."""
    facts = {name: value for name, value in {**GOOD_REPAIR, **changes}.items() if value is not None}
    return record_of({"repairs/ring/FDP/-": facts, "aftercare/-/-/-": GOOD_CARE})
