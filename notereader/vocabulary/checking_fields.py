"""Faults of fields.toml: the fields of the record."""

from typing import Any

from notereader.vocabulary.faults import EntryFault, model_faults
from notereader.vocabulary.fields import GROUPS, FieldSpec

_FILE = "fields.toml"
_MEASURED = ("whole", "number", "interval")


def fields_faults(raw: dict[str, Any]) -> list[EntryFault]:
    """Return the faults of the parsed fields.toml."""
    faults = []
    for group in raw.keys() - set(GROUPS):
        known = ", ".join(GROUPS)
        faults.append(EntryFault(_FILE, f"[{group}]", "there is no such group of fields", f"use one of {known}"))
    for group in GROUPS:
        if not isinstance(raw.get(group), dict) or not raw[group]:
            faults.append(
                EntryFault(_FILE, f"[{group}]", "the group has no fields", f"put [{group}.NAME] entries back")
            )
            continue
        for name, entry in raw[group].items():
            faults += _field_faults(group, name, entry)
    return faults


def _field_faults(group: str, name: str, entry: object) -> list[EntryFault]:
    place = f"[{group}.{name}]"
    if not isinstance(entry, dict):
        return [EntryFault(_FILE, place, "this is no entry", f"write {place} on a line of its own and its keys below")]
    refused = model_faults(_FILE, place, FieldSpec, {**entry, "group": group, "name": name})
    return refused or [EntryFault(_FILE, place, wrong, mend) for wrong, mend in _mismatches(entry)]


def _mismatches(entry: dict[str, Any]) -> list[tuple[str, str]]:
    """Return what does not fit the kind of the field: (what is wrong, the mend)."""
    kind, values = entry["kind"], entry.get("values", [])
    low, high = entry.get("low"), entry.get("high")
    found = []
    if kind == "choice" and not values:
        found.append(("a choice needs values", "add: values = [...]"))
    if kind != "choice" and values:
        found.append((f"'{kind}' takes no list of values", 'take "values" out, or make the kind "choice"'))
    if len(set(values)) != len(values):
        found.append(("a value stands there twice", "take one of them out"))
    if kind in _MEASURED and (low is None or high is None or low >= high):
        found.append((f"'{kind}' needs a low and a higher high", "give both limits"))
    if kind not in _MEASURED and (low is not None or high is not None):
        found.append((f"'{kind}' takes no limits", 'take "low" and "high" out'))
    if not str(entry["label"]).strip():
        found.append(("the label is empty", "say in trade words what the field is called"))
    return found
