"""Names that one resource file takes from another: digits, tendons, pulleys, zones, stitches, sizes, fields."""

from collections.abc import Iterator
from dataclasses import dataclass
from difflib import get_close_matches
from typing import Any

from notereader.vocabulary.faults import EntryFault
from notereader.vocabulary.fields import GROUPS

DIGITS = frozenset(["thumb", "index", "middle", "ring", "small"])
TENDONS = frozenset(["FDP", "FDS", "FPL", "FCR", "FCU", "PL"])
PULLEYS = frozenset(["A1", "A2", "A3", "A4", "A5", "C1", "C2", "C3", "variable", "oblique", "flexor retinaculum"])
STRUCTURES = frozenset(
    [
        "digital nerve",
        "common digital nerve",
        "digital artery",
        "median nerve",
        "ulnar nerve",
        "radial nerve branch",
        "radial artery",
        "ulnar artery",
        "phalanx",
        "metacarpal",
        "volar plate",
        "collateral ligament",
        "joint",
        "extensor tendon",
    ]
)

# Where names of other files stand: file, path, whose names. `[]` goes into every entry of a list, `{}` into the keys
# of a table.
_REFERENCES = (
    ("audit.toml", "applies[].group", "groups"),
    ("audit.toml", "applies[].where{}", "field names"),
    ("checks.toml", "strand_counts{}", "stitches"),
    ("checks.toml", "limits.core_finest", "sizes"),
    ("checks.toml", "limits.core_thickest", "sizes"),
    ("checks.toml", "limits.peripheral_thickest", "sizes"),
    ("glide.toml", "arms[].digit", "digits"),
    ("glide.toml", "friction_suture[].material", "materials"),
    ("glide.toml", "widths.mm{}", "pulleys"),
    ("healing.toml", "absorbed[].material", "materials"),
    ("healing.toml", "unstated_material.material", "materials"),
    ("load.toml", "activity[].tendons[]", "tendons"),
    ("needs.toml", "nerves.structures[]", "structures"),
    ("needs.toml", "pulley_zones.sheath[]", "zones"),
    ("needs.toml", "pulley_zones.tunnel[]", "zones"),
    ("needs.toml", "pulleys[].digits[]", "digits"),
    ("needs.toml", "pulleys[].weights{}", "pulleys"),
    ("owed.toml", "standard[].items[].elements[]", "elements"),
    ("owed.toml", "standard[].items[].facts[]", "operation"),
    ("strength.toml", "ends[].name", "ends"),
    ("strength.toml", "hold[].name", "hold"),
    ("strength.toml", "material[].hold", "hold"),
    ("strength.toml", "material[].name[]", "materials"),
    ("strength.toml", "no_figure.stitches[]", "stitches"),
    ("strength.toml", "peripheral[].pattern[]", "patterns"),
    ("strength.toml", "size[].usp[]", "sizes"),
)

# Kinds of terms whose values are names of other files.
_NAMED_KINDS = {
    "anaesthesia": "anaesthesia",
    "bulk": "bulk",
    "deed": "deeds",
    "digit": "digits",
    "digit?": "digits",
    "element": "elements",
    "ends": "ends",
    "extent": "extents",
    "gap": "gap",
    "glide": "glide",
    "hold": "hold",
    "knot": "knot",
    "mechanism": "mechanism",
    "opened": "findings of pulleys",
    "pattern": "patterns",
    "programme": "programme",
    "pulley": "pulleys",
    "pulley?": "pulleys",
    "side": "side",
    "splint": "splint",
    "structure": "structures",
    "tendon": "tendons",
    "tension": "tension",
    "test": "test",
    "zone": "zones",
}

# Kinds of the reader's own that look like one of those.
_LIKE_NAMED = frozenset(["bone", "endword", "pulleys", "sided"])


@dataclass(frozen=True)
class Names:
    """Every set of names that another file may use, by what the set is called."""

    sets: dict[str, frozenset[str]]

    @property
    def stitch_values(self) -> frozenset[str]:
        """The values of repairs.stitch."""
        return self.sets["stitches"]

    @property
    def material_values(self) -> frozenset[str]:
        """The values of repairs.material."""
        return self.sets["materials"]

    @classmethod
    def of(cls, files: dict[str, dict[str, Any]]) -> "Names":
        """Gather the names from the parsed files; a set whose file is broken stays empty and is not checked."""
        fields = files.get("fields.toml", {})
        groups = {group: entries for group in GROUPS if isinstance(entries := fields.get(group), dict)}

        def values(group: str, field: str) -> frozenset[str]:
            entry = groups.get(group, {}).get(field, {})
            return frozenset(entry.get("values", ())) if isinstance(entry, dict) else frozenset()

        listed = files.get("sizes.toml", {}).get("size", ())
        sizes = frozenset(entry["usp"] for entry in listed if isinstance(entry, dict) and "usp" in entry)
        repairs = {
            name: values("repairs", name)
            for name in ("ends", "hold", "gap", "glide", "knot", "tension", "bulk", "test")
        }
        operation = {name: values("operation", name) for name in ("anaesthesia", "mechanism", "side")}
        aftercare = {name: values("aftercare", name) for name in ("programme", "splint")}
        return cls(
            {
                **repairs,
                **operation,
                **aftercare,
                "deeds": values("repairs", "treatment") | values("injuries", "treatment"),
                "digits": DIGITS,
                "elements": frozenset(groups.get("elements", ())),
                "extents": values("repairs", "extent") | values("injuries", "extent"),
                "field names": frozenset(name for entries in groups.values() for name in entries),
                "findings of pulleys": values("pulleys", "finding"),
                "groups": frozenset(GROUPS),
                "materials": values("repairs", "material"),
                "operation": frozenset(groups.get("operation", ())),
                "patterns": values("repairs", "peripheral_pattern"),
                "pulleys": PULLEYS,
                "sizes": sizes,
                "stitches": values("repairs", "stitch"),
                "structures": STRUCTURES,
                "tendons": TENDONS,
                "zones": values("repairs", "zone"),
            }
        )

    def known(self, group: str, name: object) -> bool:
        """Tell whether a name belongs to a set; any name does where the set's own file is broken."""
        names = self.sets[group]
        return not names or name in names

    def kind_fault(self, kind: str) -> tuple[str, str] | None:
        """Return what is wrong with a kind of terms that is nearly, and not quite, a known one; else None."""
        if kind in _NAMED_KINDS or kind in _LIKE_NAMED:
            return None
        meant = get_close_matches(kind, _NAMED_KINDS, n=1, cutoff=0.75)
        return (f"no part of the reader knows the kind '{kind}'", f"write '{meant[0]}'") if meant else None

    def value_fault(self, kind: str, value: str) -> tuple[str, str] | None:
        """Return what is wrong with the value of a term and the mend, or None."""
        group = _NAMED_KINDS.get(kind)
        if group is None or self.known(group, value):
            return None
        return f"'{value}' is not one of the {group}", f"use one of {_listed(self.sets[group])}"


def reference_faults(file: str, raw: dict[str, Any], names: Names) -> Iterator[EntryFault]:
    """Yield the names in a file that no other file knows."""
    for wanted, path, group in _REFERENCES:
        if wanted != file:
            continue
        for place, name in _found(raw, path):
            if not names.known(group, name):
                mend = f"use one of {_listed(names.sets[group])}"
                yield EntryFault(file, place, f"'{name}' is not one of the {group}", mend)
    if file in ("audit.toml", "needs.toml"):
        yield from _field_faults(file, raw, names)


def _field_faults(file: str, raw: dict[str, Any], names: Names) -> Iterator[EntryFault]:
    path = "applies[].fields[]" if file == "audit.toml" else "need[].fields{}"
    for place, name in _found(raw, path):
        if not names.known("field names", name):
            yield EntryFault(file, place, f"there is no field '{name}'", "use the name of a field in fields.toml")


def _found(value: Any, path: str, place: str = "") -> Iterator[tuple[str, object]]:
    """Yield (place in words, name) for everything a path of _REFERENCES leads to."""
    head, _, rest = path.partition(".")
    key, listed, keys = head.removesuffix("[]").removesuffix("{}"), head.endswith("[]"), head.endswith("{}")
    if not isinstance(value, dict) or key not in value:
        return
    inner, where = value[key], f"{place}, {key}" if place else key
    if keys:
        yield from ((where, name) for name in inner) if isinstance(inner, dict) else ()
    elif listed and isinstance(inner, list):
        for number, entry in enumerate(inner, 1):
            if rest:
                yield from _found(entry, rest, f"{where} number {number}")
            else:
                yield where, entry
    elif rest:
        yield from _found(inner, rest, where)
    elif not listed:
        yield where, inner


def _listed(names: frozenset[str]) -> str:
    return ", ".join(sorted(names))
