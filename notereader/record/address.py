"""The address of an entry or a fact within a record, and how it is said in plain words."""

from dataclasses import dataclass, replace

from notereader.vocabulary.fields import GROUPS, field_specs

# Slash-separated text form: group/digit/part/side/field, with '-' for what does not apply.
_NOTHING = "-"


@dataclass(frozen=True, slots=True)
class Address:
    """Where a fact stands: group, then digit, part (tendon, pulley or structure) and side, then the field.

    Operation, aftercare and elements have no digit, part or side. `side` is the slip of a repair or the side of an
    injury. An address with an empty field means the whole entry.
    """

    group: str
    digit: str | None = None
    part: str | None = None
    side: str | None = None
    field: str = ""

    def entry(self) -> "Address":
        """Return the address of the entry this fact lies in."""
        return self if not self.field else replace(self, field="")

    def field_of(self, name: str) -> "Address":
        """Return the address of one field of this entry."""
        return Address(self.group, self.digit, self.part, self.side, name)

    def text(self) -> str:
        """Return the address as one line, e.g. 'repairs/ring/FDP/-/strands'."""
        return "/".join(part or _NOTHING for part in (self.group, self.digit, self.part, self.side, self.field))

    @classmethod
    def parse(cls, line: str) -> "Address":
        """Read what text() wrote. Raises ValueError where the line is no address."""
        parts = [None if part == _NOTHING else part for part in line.split("/")]
        if len(parts) != 5 or parts[0] not in GROUPS:
            raise ValueError(f"'{line}' is no address of a fact: expected group/digit/part/side/field")
        return cls(parts[0], parts[1], parts[2], parts[3], parts[4] or "")

    def entry_words(self) -> str:
        """Say in trade words which entry this is: 'ring FDP, radial slip', 'middle A2 pulley', 'operation'."""
        if self.part is None:
            return self.group
        words = f"{self.digit} {self.part}" if self.digit else self.part
        if self.group == "repairs" and self.side:
            return f"{words}, {self.side} slip"
        if self.group == "pulleys" and self.part != "flexor retinaculum":
            return f"{words} pulley"
        if self.group == "injuries" and self.side:
            return f"{words}, {self.side} side"
        return words

    def words(self) -> str:
        """Say in trade words which fact this is: 'ring FDP: core strands'."""
        spec = field_specs()[self.group].get(self.field)
        label = small(spec.label) if spec else self.field
        return f"{self.entry_words()}: {label}" if self.field else self.entry_words()


def small(label: str) -> str:
    """Return the name of a field as it stands within a sentence: 'core strands', 'MCP position'."""
    return f"{label[0].lower()}{label[1:]}" if label[1:2].islower() else label
