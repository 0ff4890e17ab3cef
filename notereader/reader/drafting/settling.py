"""The facts of one tendon are made to agree, and what follows from the name of a stitch is added."""

from dataclasses import replace

from notereader.reader.desk import Finding
from notereader.reader.drafting.choosing import UNREPAIRED, choose
from notereader.reader.reasons import Reason
from notereader.record.values import Value
from notereader.vocabulary.sutures import Stitch, stitches

CORE = ("strands", "stitch", "size", "material", "looped", "hold", "purchase_mm", "lock_mm", "knot")
PERIPHERAL_FIELDS = ("peripheral_pattern", "peripheral_size", "peripheral_material")
_BEHAVIOUR = ("gap", "gap_mm", "test", "glide", "tension", "bulk")
_FULLER = {
    "double tsuge": "tsuge",
    "triple tsuge": "tsuge",
    "modified kessler": "kessler",
    "double modified kessler": "modified kessler",
}
_ONE_BREATH = 25  # words
# The rule that takes a tendon for repaired because a core suture of it is told.
BY_SUTURE = "a core suture was placed"
# The rule that takes it for left because it was too short, too thin or the like to be sewn.
TOO_FAR_GONE = "too far gone to be sewn"
# The rule that takes it for repaired because its repair is spoken of.
SPOKEN_OF = "its repair is spoken of"
EXCEPTED = "excepted from those repaired"


def settle_repair(fields: dict[str, list[Finding]]) -> None:
    """Make the facts of one tendon agree: an intact or unrepaired tendon has no core suture."""
    _drop_spoken_of(fields)
    _mended_otherwise(fields)
    _fixed_graft(fields)
    _one_length_once(fields)
    extent = _chosen(fields, "extent")
    _treat_as_told(fields, extent)
    _drop_carried(fields)
    treatment = _chosen(fields, "treatment")
    if extent == "intact" and treatment in _SEWN and any(n in fields for n in ("strands", "stitch", "size")):
        del fields["extent"]  # sewn and intact cannot both be: neither is shown
        extent = None
    if extent == "intact":
        _keep_nothing_else(fields)
        return
    if treatment in UNREPAIRED or treatment is None:
        _drop_suture(fields, treatment)
    if treatment == "reinserted" and "stitch" in fields:
        fixed = [f for f in fields["stitch"] if f.value in _TO_BONE]
        fields["stitch"] = fixed or fields["stitch"]
    _drop_what_is_denied(fields)
    if extent == "complete":
        fields.pop("extent_percent", None)
    _imply(fields)


_SEWN = ("repaired", "reinserted", "grafted")


def _chosen(fields: dict[str, list[Finding]], name: str) -> Value | None:
    """Return the value that is proposed of a field, None where none is told."""
    return choose(name, fields[name])[0].value if name in fields else None


def _treat_as_told(fields: dict[str, list[Finding]], extent: Value | None) -> None:
    """Take from the sutures told of a tendon that is not whole what was done to it."""
    if extent == "complete":
        _trim_no_cut_through(fields)
    if extent != "intact":
        _treat_by_suture(fields)
        if extent == "partial":
            _treat_by_peripheral(fields)
        _trimmed_then_sewn(fields)


def _keep_nothing_else(fields: dict[str, list[Finding]]) -> None:
    """Of an intact tendon nothing is kept but that."""
    for name in [n for n in fields if n != "extent"]:
        del fields[name]


def _drop_suture(fields: dict[str, list[Finding]], treatment: Value | None) -> None:
    """Drop what can only be so of a repaired tendon. A smoothed one may be seen to run, and be sewn around its edge."""
    _drop_said_of_all(fields)
    kept: tuple[str, ...] = ()
    if treatment == "trimmed":
        _ran_once_smoothed(fields)
        kept = ("test", "glide") if "glide" in fields else ()
        if _sewn_around(fields):
            kept = (*kept, "peripheral", *PERIPHERAL_FIELDS)
    for name in (*CORE, "peripheral", *PERIPHERAL_FIELDS, *_BEHAVIOUR):
        if name not in kept:
            fields.pop(name, None)


def _drop_what_is_denied(fields: dict[str, list[Finding]]) -> None:
    """Drop how a peripheral suture was made that there is none of, and how wide a gap that was not seen."""
    if _chosen(fields, "peripheral") == "absent":
        for name in PERIPHERAL_FIELDS:
            fields.pop(name, None)
    if "gap_mm" in fields and _chosen(fields, "gap") != "seen":
        del fields["gap_mm"]


def _ran_once_smoothed(fields: dict[str, list[Finding]]) -> None:
    """'Its flap hooked on A2 each time. I cut the flap away.': how it ran before is no word of how it runs now."""
    trimmed = [f.order for f in fields["treatment"] if f.value == "trimmed" and not f.header]
    since = [f for f in fields.get("glide", []) if not trimmed or f.order > min(trimmed)]
    if since:
        fields["glide"] = since
    else:
        fields.pop("glide", None)


def _drop_spoken_of(fields: dict[str, list[Finding]]) -> None:
    """'The FDP repair ran freely', 'all but the ring were repaired' say less than any other word on what was done."""
    told = fields.get("treatment", [])
    excepted = [f for f in told if f.rule == EXCEPTED]
    surer = [f for f in told if f.rule not in (SPOKEN_OF, EXCEPTED) and not (excepted and f.header)] or excepted
    if surer:
        fields["treatment"] = surer


def _mended_otherwise(fields: dict[str, list[Finding]]) -> None:
    """'The distal stump was too short for suture, so it was put back to bone': what was done instead counts."""
    told = fields.get("treatment", [])
    others = [f for f in told if f.rule != TOO_FAR_GONE]
    instead = any(f.value not in ("repaired", "left") and not f.header for f in others)
    if others and (instead or any(f.value in _TO_BONE for f in fields.get("stitch", []))):
        fields["treatment"] = others
    elif any(f.value in _TO_BONE for f in fields.get("stitch", [])):
        fields.pop("treatment", None)


def _fixed_graft(fields: dict[str, list[Finding]]) -> None:
    """'The graft was tied over a button': how a graft was fixed to the bone; the tendon was grafted all the same."""
    told = fields.get("treatment", [])
    if any(f.value == "grafted" and not f.header for f in told):
        fields["treatment"] = [f for f in told if f.value != "reinserted"]


def words_cut_away(found: list[Finding]) -> set[int]:
    """Return the words that tell how much of a tendon was cut away."""
    return {k for f in found if f.field == "trimmed_mm" for i, j in f.spans for k in range(i, j)}


def _one_length_once(fields: dict[str, list[Finding]]) -> None:
    """'Prior to the core I squared off the stumps, sacrificing 2 mm': a length cut away is no length taken."""
    away = words_cut_away(fields.get("trimmed_mm", []))
    for name in ("purchase_mm", "lock_mm") if away else ():
        kept = [f for f in fields.get(name, []) if not any(i in away for i, _ in f.spans)]
        if kept:
            fields[name] = kept
        else:
            fields.pop(name, None)


def _sewn_around(fields: dict[str, list[Finding]]) -> bool:
    """'Flap trimmed and the edge smoothed with two 6-0 epitendinous stitches': told in one breath, and no core."""
    told = [f.order for f in fields["treatment"] if not (f.header or f.carried)]
    spots = [f.order for f in fields.get("peripheral_size", []) if not f.carried]
    core = any(n in fields for n in ("strands", "stitch", "size"))
    return not core and any(0 <= k - n < _ONE_BREATH for k in spots for n in told)


def _trim_no_cut_through(fields: dict[str, list[Finding]]) -> None:
    """'FPL trimmed 4 mm, then the core': of a tendon cut through the ends were trimmed; that is not what was done."""
    kept = [f for f in fields.get("treatment", []) if f.value != "trimmed"]
    if kept:
        fields["treatment"] = kept
    elif any(n in fields for n in ("stitch", "strands", "size")):
        fields.pop("treatment", None)


def _treat_by_suture(fields: dict[str, list[Finding]]) -> None:
    """Take a tendon for repaired whose core suture is told, where at most the title or 'all repaired' says so."""
    told = fields.get("treatment", [])
    core = next((fields[n][0] for n in ("stitch", "strands", "size", "purchase_mm") if n in fields), None)
    if core is not None and all((f.header or f.carried) and f.value == "repaired" for f in told):
        fixed = choose("stitch", fields["stitch"])[0] if "stitch" in fields else None
        done = "reinserted" if fixed is not None and fixed.value in _TO_BONE else "repaired"
        fields["treatment"] = [*told, replace(core, field="treatment", value=done, rule=BY_SUTURE)]


_TO_BONE = ("pull-out", "anchor")


def _treat_by_peripheral(fields: dict[str, list[Finding]]) -> None:
    """'FDP half cut. Core: none. Epitendinous: 5-0 Prolene': a partial cut that got a peripheral suture alone."""
    told = [f for f in fields.get("peripheral_size", []) if not f.carried]
    if (
        told
        and "peripheral" in fields
        and "treatment" not in fields
        and choose("peripheral", fields["peripheral"])[0].value == "present"
    ):
        fields["treatment"] = [replace(told[0], field="treatment", value="repaired", rule=BY_SUTURE)]


def _trimmed_then_sewn(fields: dict[str, list[Finding]]) -> None:
    """'FDP: rims pared off, cruciate with 3-0, 4 strands': what is trimmed and then sewn in one breath is repaired."""
    told = [f for f in fields.get("treatment", []) if not f.header]
    if not told or any(f.value != "trimmed" for f in told):
        return
    core = {
        name: next((f for f in fields.get(name, []) if 0 < f.order - told[-1].order < _ONE_BREATH), None)
        for name in ("stitch", "strands", "size")
    }
    shown = core["stitch"] or (core["strands"] if core["size"] else None)  # 'tidied, then 4-0 PDS core (2 strand)'
    if shown is not None and (core["strands"] or core["size"]) and not shown.carried:
        fields["treatment"] = [replace(shown, field="treatment", value="repaired", rule=BY_SUTURE)]


def _drop_said_of_all(fields: dict[str, list[Finding]]) -> None:
    """'All ends clean' is not said of a tendon cut in part that was not sewn."""
    for name in ("ends", "trimmed_mm"):
        kept = [f for f in fields.get(name, []) if not f.carried]
        if kept:
            fields[name] = kept
        else:
            fields.pop(name, None)


def _drop_carried(fields: dict[str, list[Finding]]) -> None:
    """'Left it' without a name yields to a core suture told of the same tendon.

    Not so where a correction names it too: 'The FDS was not repaired. Its edge was trimmed.'
    """
    told = [f for n in ("stitch", "strands") for f in fields.get(n, ())]
    if "treatment" not in fields or not told or _only_titled(fields, told):
        return
    undone = [f for f in fields["treatment"] if f.value in UNREPAIRED]
    named = any(f.addendum and not f.carried for f in undone)
    kept = [f for f in fields["treatment"] if f not in undone or not f.carried or (named and f.addendum)]
    first = told[0]
    fields["treatment"] = kept or [replace(first, field="treatment", value="repaired", rule=BY_SUTURE)]


def _only_titled(fields: dict[str, list[Finding]], core: list[Finding]) -> bool:
    """'Four-strand repair FDP. FDP cut in part. It was left alone.': a core that only the title tells."""
    partly = [f.order for f in fields.get("extent", ()) if f.value == "partial"]
    left = [f.order for f in fields["treatment"] if f.value == "left"]
    since = any(0 < n - k < _ONE_BREATH for k in partly for n in left)
    return since and all(f.header or f.order < partly[0] for f in core)


def _keep_fuller_names(fields: dict[str, list[Finding]]) -> None:
    """'a Tsuge, I did two of those, so a double Tsuge, four strands': the fuller name, where the count bears it out."""
    told = {str(f.value) for f in fields["stitch"]}
    counts = {f.value for f in fields.get("strands", [])}
    for fuller, plain in _FULLER.items():
        known = stitches().get(fuller)
        borne_out = known is not None and (plain == "kessler" or known.strands in counts)
        if fuller in told and plain in told and borne_out and not any(f.addendum for f in fields["stitch"]):
            fields["stitch"] = [f for f in fields["stitch"] if f.value != plain]


def _name_as_locked(fields: dict[str, list[Finding]]) -> None:
    """'A cruciate of 3-0 Ticron, locked at each corner': where it is told to lock, it is the locked cruciate."""
    holds = fields.get("hold", [])
    if not holds or choose("hold", holds)[0].value != "locking":
        return
    if all(f.value == "cruciate" for f in fields["stitch"]) and any(
        abs(h.order - f.order) < _ONE_BREATH for h in holds for f in fields["stitch"]
    ):
        fields["stitch"] = [replace(f, value="locked cruciate") for f in fields["stitch"]]


def _imply(fields: dict[str, list[Finding]]) -> None:
    """Add what follows from the name of the stitch: strands and hold, marked as implied."""
    if "stitch" not in fields:
        return
    _keep_fuller_names(fields)
    _name_as_locked(fields)
    named = choose("stitch", fields["stitch"])[0]
    stitch = stitches().get(str(named.value))
    if stitch is None:
        return
    _imply_strands(fields, named, stitch)
    if stitch.hold and "hold" not in fields:
        reason = Reason("hold_of_name", (stitch.name,))
        fields["hold"] = [_implied(named, "hold", stitch.hold, "hold of the named stitch", reason)]


def _imply_strands(fields: dict[str, list[Finding]], named: Finding, stitch: Stitch) -> None:
    """Add the count a stitch usually has, or remark on a told count that is another."""
    if not stitch.strands:
        return
    if "strands" in fields:
        stated = choose("strands", fields["strands"])[0]
        if stated.value != stitch.strands and not stitch.ambiguous:
            stated.reasons.append(Reason("usual_count", (stitch.name, str(stitch.strands))))
        return
    kind = "count_of_vague_name" if stitch.ambiguous else "count_of_name"
    reason = Reason(kind, (stitch.name, str(stitch.strands)))
    fields["strands"] = [_implied(named, "strands", stitch.strands, "count of the named stitch", reason)]


def _implied(named: Finding, field: str, value: Value, rule: str, reason: Reason) -> Finding:
    """Return what follows from the name of a stitch, with the words that name it."""
    return replace(named, field=field, value=value, implied=True, rule=rule, reasons=[reason])
