"""A long sentence is not cut between 'to lay open' and the pulleys it is said of."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    ("note", "findings"),
    [
        (
            "The A2 pulley of the ring finger was vented from its distal edge over some 40 per cent of its length; in "
            "the small finger it sufficed to lay open C1 and A3, the A2 pulley there being preserved in full.",
            {"ring A2": "vented", "small C1": "vented", "small A3": "vented", "small A2": "intact"},
        ),
        (
            "The A4 pulley of the index finger was left alone over the whole of its length and in the middle finger I "
            "then had to lay open the A3 pulley and the A2 pulley was preserved in full there.",
            {"index A4": "intact", "middle A3": "vented", "middle A2": "intact"},
        ),
        (
            "The A4 pulley of the index finger was laid open over the whole of its length and the A2 pulley of the "
            "middle finger was preserved in full while its A3 was let go in order to see both ends.",
            {"index A4": "released", "middle A2": "intact", "middle A3": "vented"},
        ),
    ],
)
def test_a_deed_is_not_parted_from_its_pulleys(note: str, findings: dict[str, str]) -> None:
    assert each(note, "finding", group="pulleys") == findings
