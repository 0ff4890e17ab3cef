"""Which cautions go with which facts, wherever facts leave the program."""

from notereader.appraisal.cautions import About, brief_caution, cautions_about
from notereader.record import Address

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
