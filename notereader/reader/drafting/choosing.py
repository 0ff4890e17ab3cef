"""Which of several findings of one field is proposed, and which become its rivals: the weaker of two is proposed."""

from collections.abc import Callable

from notereader.reader.desk import Finding
from notereader.record import Interval
from notereader.vocabulary.sutures import sizes
from notereader.vocabulary.wordlists import word_list

UNREPAIRED = ("trimmed", "excised", "left")
_PULLEY_DEEDS = ("vented", "released", "trimmed", "excised", "widened", "repaired", "reconstructed")

FINE = frozenset(["6-0", "7-0", "8-0", "9-0", "10-0"])

Choice = tuple[Finding, list[Finding]]


def choose(name: str, found: list[Finding]) -> Choice:
    """Return the finding to propose and its rivals."""
    if len(found) == 1:  # as with most fields
        return found[0], []
    corrected = [f for f in found if f.addendum]
    if corrected:
        chosen = _last_corrected(corrected)
        return chosen, _others(chosen, found)
    chooser = _CHOOSERS.get(f"{found[0].group}.{name}") or _CHOOSERS.get(name, _body_first)
    chosen = chooser(found)
    if name == "finding" and not (chosen.header and any(f.value == "intact" for f in found)):
        return chosen, []
    silent = name in _NO_RIVALS or chosen.group in _NO_RIVAL_GROUPS
    return chosen, [] if silent else _others(chosen, found)


def _last_corrected(corrected: list[Finding]) -> Finding:
    """The last one; but of an addendum's 'smoothed off, not sutured' the second half tells only what was not done."""
    deeds = [f for f in corrected if f.value in ("trimmed", "excised")]
    return deeds[-1] if deeds and corrected[-1].value == "left" else corrected[-1]


def _others(chosen: Finding, found: list[Finding]) -> list[Finding]:
    rivals: list[Finding] = []
    for f in found:
        if f.value != chosen.value and all(f.value != r.value for r in rivals):
            rivals.append(f)
    return rivals


def _body(found: list[Finding]) -> list[Finding]:
    return [f for f in found if not f.header] or found


def _body_first(found: list[Finding]) -> Finding:
    return _body(found)[0]


def _body_last(found: list[Finding]) -> Finding:
    return _body(found)[-1]


def _lowest(key: Callable[[Finding], float]) -> Callable[[list[Finding]], Finding]:
    def choose(found: list[Finding]) -> Finding:
        return min(found, key=lambda f: (key(f), f.header))

    return choose


def _size_rank(f: Finding) -> float:
    return list(sizes()).index(str(f.value))


def _core_size(found: list[Finding]) -> Finding:
    """The thinner of two; but a thread of 6-0 or finer beside a thicker one was for the outside, and stays a rival.

    Common practice, no source: cores of grown people are of 2-0 to 5-0.
    """
    thick = [f for f in found if f.value not in FINE]
    return min(thick or found, key=lambda f: (_size_rank(f), f.header))


def _low_end(f: Finding) -> float:
    return f.value.low or 0.0 if isinstance(f.value, Interval) else 0.0


def _weakest(*order: str) -> Callable[[list[Finding]], Finding]:
    """Choose the value that promises least; `order` lists values from weak to strong."""

    def choose(found: list[Finding]) -> Finding:
        return min(found, key=lambda f: (order.index(str(f.value)) if f.value in order else len(order), f.header))

    return choose


def _treatment(found: list[Finding]) -> Finding:
    """The body tells what was done; a reinsertion says more than 'repaired'; a repair not done is the weaker."""
    body = _body(found)
    if any(f.value in ("repaired", "reinserted", "grafted") and not f.carried and not f.header for f in body):
        body = [f for f in body if not (f.carried and f.value in UNREPAIRED)]
    if any(f.value == "excised" for f in body):
        grafts = [f for f in found if f.value == "grafted" and not f.carried]
        body = grafts or body  # what was cut out was replaced
    order = ("excised", "trimmed", "left", "reinserted", "grafted", "tenodesed", "repaired")
    return min(body, key=lambda f: order.index(str(f.value)))


def _extent(found: list[Finding]) -> Finding:
    """Hurt beats intact; the body beats the lists; a figure of a partial cut beats 'complete'."""
    hurt = [f for f in found if f.value != "intact"]
    return _body_last(hurt) if hurt else found[0]


def _other_extent(found: list[Finding]) -> Finding:
    """Of a nerve or a vessel hurt beats intact; the body beats the lists; a part told to be cut beats 'cut'."""
    hurt = [f for f in found if f.value != "intact"]
    return _weakest("partial", "complete", "contused")(_body(hurt)) if hurt else _body_first(found)


def _other_treatment(found: list[Finding]) -> Finding:
    """The last that the body tells; but what a graft or a tube bridged was not only 'repaired'."""
    last = _body_last(found)
    bridged = [f for f in found if f.value in ("grafted", "conduit")]
    return bridged[-1] if bridged and last.value == "repaired" else last


def _pulley(found: list[Finding]) -> Finding:
    """The last thing done wins; what was found of a pulley counts only where nothing was done."""
    body = _body(found)
    deeds = [f for f in body if f.value in _PULLEY_DEEDS]
    if deeds:
        return deeds[-1]
    titled = [f for f in found if f.header and f.value in _PULLEY_DEEDS]
    if titled:
        return titled[-1]
    injured = [f for f in body if f.value == "injured"]
    return injured[-1] if injured else body[-1]


_CHOOSERS: dict[str, Callable[[list[Finding]], Finding]] = {
    "strands": _lowest(lambda f: float(f.value) if isinstance(f.value, int | float) else 0.0),
    "size": _core_size,
    "peripheral_size": _lowest(_size_rank),
    "purchase_mm": _lowest(_low_end),
    "lock_mm": _lowest(_low_end),
    "peripheral": _weakest("absent", "present"),
    "hold": _weakest("grasping", "locking"),
    "ends": _weakest("attenuated", "crushed", "ragged", "clean"),
    "tension": _weakest("present", "none"),
    "bulk": _weakest("present", "none"),
    "gap": _body_last,
    "gap_mm": _lowest(lambda f: -float(f.value) if isinstance(f.value, int | float) else 0.0),
    "glide": _body_last,
    "repairs.treatment": _treatment,
    "repairs.extent": _extent,
    "injuries.treatment": _other_treatment,
    "injuries.extent": _other_extent,
    "finding": _pulley,
    "zone": lambda found: max(_body(found), key=lambda f: len(str(f.value)) if str(f.value)[:-1] in ("I", "II") else 0),
}
_NO_RIVALS = word_list("drafting", "no_rivals")
_NO_RIVAL_GROUPS = frozenset(["injuries", "aftercare", "elements"])
