"""Reasons to look twice that follow from what titles and diagnoses name: no finger at all, or another one."""

from dataclasses import dataclass, field

from notereader.reader.desk import Desk, Finding
from notereader.reader.groups import DIGITS
from notereader.reader.reasons import Reason
from notereader.reader.scene import Scene, group_targets

Named = tuple[str | None, str]  # digit, tendon

_OF_A_FINGER = ("FDP", "FDS")
_ABOUT_TENDONS = ("repairs", "pulleys")
# One look at these tells whether the finger is the right one: the same reason at every fact of it would only tire.
_SAYS_WHAT_WAS_DONE = ("extent", "treatment", "finding")


@dataclass(slots=True)
class Doubts:
    """What the titles of a note name, asked for each finding whether they and its sentence bear it out."""

    desk: Desk
    digits: set[str] = field(init=False)
    tendons: set[Named] = field(init=False)

    def __post_init__(self) -> None:
        """Gather the digits and tendons of the titles and diagnoses."""
        headers = [s for s in self.desk.scenes if s.header]
        self.digits = {d for s in headers for d in _digits(s)}
        groups = [(s, g) for s in headers for g in s.setting.groups if g.tendons and not g.reference]
        self.tendons = {(t.digit, t.tendon) for s, g in groups for t in group_targets(s, g)}

    def of(self, f: Finding) -> list[Reason]:
        """Return the reasons to look twice at a finding about a tendon or a pulley."""
        digit = f.entry[0]
        if digit is None and f.entry[1] in _OF_A_FINGER and f.field in ("extent", "treatment"):
            return [Reason("names_no_finger")]
        if f.group not in _ABOUT_TENDONS or digit not in DIGITS:
            return []
        finger = digit if digit == "thumb" else f"{digit} finger"
        if self.digits and digit not in self.digits and f.field in _SAYS_WHAT_WAS_DONE:
            return [Reason("finger_untitled", (finger,))]
        found = []
        if f.group == "repairs" and f.field == "treatment" and not self._titled(digit, f.entry[1]):
            found.append(Reason("tendon_untitled", (f.entry[1], finger)))
        return found

    def _titled(self, digit: str, tendon: str) -> bool:
        named = self.tendons
        return not named or (digit, tendon) in named or (None, tendon) in named


def _digits(scene: Scene) -> set[str]:
    pairs = {d for g in scene.setting.groups for d, _, _ in g.pairs if d}
    return pairs | {d for g in scene.setting.groups for d in g.digits}
