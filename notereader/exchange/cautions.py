"""Which cautions go with which facts, wherever facts leave the program."""

from notereader.appraisal.cautions import About, brief_caution, cautions_about
from notereader.record import Address, Record, Remark

# How the remark begins by which the caution travels in a record's own JSON.
_OPENING = "Caution: "

_ABOUT: dict[str, tuple[About, ...]] = {
    "repairs": ("general", "strength", "glide"),
    "pulleys": ("general", "glide"),
    "aftercare": ("general", "strength", "glide"),
}


def cautions_for(place: Address) -> list[str]:
    """Return the cautions that go with a fact: those of strength and glide with tendons, pulleys and motion."""
    return cautions_about(*_ABOUT.get(place.group, ("general",)))


def brief_caution_for(place: Address) -> str:
    """Return the one line that goes with a fact in a table; nothing where it says nothing of strength or motion."""
    return brief_caution() if place.group in _ABOUT else ""


def with_caution(record: Record) -> Record:
    """Return a copy of a record that carries the one line of caution among its remarks, once."""
    remarks = [*without_caution(record).remarks, Remark(text=_OPENING + brief_caution())]
    return record.model_copy(update={"remarks": remarks}, deep=True)


def without_caution(record: Record) -> Record:
    """Return a record that was exported once without that remark, for the next export adds it again."""
    remarks = [remark for remark in record.remarks if not remark.text.startswith(_OPENING)]
    return record.model_copy(update={"remarks": remarks})
