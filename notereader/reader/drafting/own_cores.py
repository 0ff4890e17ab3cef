"""A core that names nobody, and another told of one tendon by its name: the first one is not that tendon's."""

from collections.abc import Iterator
from dataclasses import replace

from notereader.reader.desk import Desk, Finding
from notereader.reader.drafting.settling import CORE, PERIPHERAL_FIELDS
from notereader.reader.groups import Target

Entry = tuple[str | None, str, str | None]
_OF_A_SUTURE = frozenset([*CORE, "peripheral", *PERIPHERAL_FIELDS])
_OF_A_CORE = frozenset(["strands", "stitch", "size"])


def with_own_cores(desk: Desk, findings: list[Finding]) -> list[Finding]:
    """'Core: M-Tang, 4-0. Epi: 6-0. FDS radial slip: modified Kessler, 5-0': the first core is the deep flexor's.

    What a sentence gives to a tendon without naming it is kept from one that is told its own core, by name and with
    another stitch. Where it was given to nobody else, it goes to the deep flexor that has none.
    """
    told: dict[Entry, list[Finding]] = {}
    for f in (f for f in findings if f.group == "repairs" and f.field in _OF_A_SUTURE):
        told.setdefault(f.entry, []).append(f)
    moved: dict[int, Finding | None] = {}
    for entry, own in _named_cores(desk, told):
        unnamed = _before_it(desk, told[entry], own)
        moved.update(dict.fromkeys(map(id, unnamed)))
        deep = (entry[0], "FDP", None)
        if entry[1] == "FDS" and not _has_core(told.get(deep, [])) and desk.may_be_repaired(Target(*deep)):
            moved.update({id(f): replace(f, entry=deep) for f in unnamed})
        elif not all(_told_of_another(told, entry, f) for f in unnamed if f.field in _OF_A_CORE):
            moved = {k: f for k, f in moved.items() if k not in set(map(id, unnamed))}
    return [kept for f in findings if (kept := moved.get(id(f), f)) is not None] if moved else findings


def _named_cores(desk: Desk, told: dict[Entry, list[Finding]]) -> Iterator[tuple[Entry, Finding]]:
    """Yield the stitch of each tendon that a sentence opened by its name tells, with a size or strands."""
    for entry, fields in told.items():
        for f in (f for f in fields if f.field == "stitch" and not f.header):
            scene = desk.scene_at(f.order)
            named = [g for g in scene.setting.groups if g.tendons and not g.reference]
            here = {o.field for o in fields if scene.sentence.i <= o.order < scene.sentence.j}
            opens = len(named) == 1 and named[0].i == scene.sentence.i and named[0].tendons == (entry[1],)
            if opens and len(here & _OF_A_CORE) > 1:
                yield entry, f
                break


def _before_it(desk: Desk, fields: list[Finding], own: Finding) -> list[Finding]:
    """Return what sentences without a name told of a tendon's suture before its own, from another stitch on."""
    before = [f for f in fields if f.order < desk.scene_at(own.order).sentence.i and not _names_some(desk, f)]
    scenes = (desk.scene_at(f.order) for f in before)
    other = next((s for s in scenes if any(m.value != own.value for m in s.of("stitch"))), None)
    return [f for f in before if other is not None and f.order >= other.sentence.i]


def _names_some(desk: Desk, finding: Finding) -> bool:
    """Tell whether a finding stands in a list above the text, or its sentence says whose it is: 'all', 'the FDP'."""
    groups = desk.scene_at(finding.order).setting.groups
    return finding.header or any(g.tendons or g.generic or g.every for g in groups)


def _has_core(fields: list[Finding]) -> bool:
    return any(f.field in _OF_A_CORE and not f.header for f in fields)


def _told_of_another(told: dict[Entry, list[Finding]], entry: Entry, finding: Finding) -> bool:
    """Tell whether the same words were laid down for another tendon as well."""
    others = (f for e, fields in told.items() if e != entry for f in fields)
    return any((f.field, f.order) == (finding.field, finding.order) for f in others)
