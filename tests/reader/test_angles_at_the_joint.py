"""Positions told before the joint they are held at: 'seventy at the MPs, straight at the IPs'."""

import pytest
from reader_sentences import record_of

from notereader.record import Interval


def _angles(note: str) -> dict[str, object]:
    found = {path.field: fact.value for path, fact in record_of(note).walk() if path.field in _FIELDS}
    return {name: value.low if isinstance(value, Interval) else value for name, value in found.items()}


_FIELDS = ("wrist_flexion_deg", "mcp_flexion_deg", "ip_flexion_deg")


@pytest.mark.parametrize(
    ("note", "angles"),
    [
        ("Dorsal blocking splint at neutral wrist seventy at the MPs straight at the IPs.", [0, 70, 0]),
        ("Splint: wrist neutral, 60 at the MCP joints, straight at the IP joints.", [0, 60, 0]),
        ("Splint at neutral wrist, fifty at the MCPs and zero at the IPs.", [0, 50, 0]),
    ],
)
def test_an_angle_before_at_the_joint_is_that_joints(note: str, angles: list[float]) -> None:
    assert _angles(note) == dict(zip(_FIELDS, angles, strict=True))


def test_an_angle_behind_the_joint_is_its_own() -> None:
    assert _angles("Dorsal splint, wrist 20 flexed, flexed at the MPs 60, IPs straight.") == dict(
        zip(_FIELDS, [20, 60, 0], strict=True)
    )
