"""Each figure of a splint's angles goes with the direction told beside it, and not with that of the joint before."""

import pytest
from reader_sentences import told

SEWN = "Ring FDP repaired with 3-0 PDS.\n\n"


@pytest.mark.parametrize(
    ("splint", "wrist", "knuckles"),
    [
        ("in 10 degrees of wrist extension, 50 degrees of MP flexion and full IP extension", -10, 50),
        ("with 20 degrees of wrist extension and 70 degrees of flexion of the MP joints", -20, 70),
        ("in 20 degrees of wrist flexion and 60 degrees of MCP flexion", 20, 60),
    ],
)
def test_each_figure_with_its_own_direction(splint: str, wrist: int, knuckles: int) -> None:
    found = told(f"{SEWN}Dorsal blocking splint {splint}.", "wrist_flexion_deg", "mcp_flexion_deg", group="aftercare")
    assert found[""] == {"wrist_flexion_deg": (wrist, wrist), "mcp_flexion_deg": (knuckles, knuckles)}


def test_a_direction_that_knuckles_do_not_have() -> None:
    note = f"{SEWN}Dorsal splint with 30 degrees of wrist flexion and 60 degrees of MCP extension."
    assert told(note, "mcp_flexion_deg", group="aftercare") == {}
