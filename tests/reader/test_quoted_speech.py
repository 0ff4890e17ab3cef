"""What a patient, a relative or a template is quoted to say is no finding; what stands behind the quotation is."""

import pytest
from reader_sentences import told

CUT = {"ring FDP": {"extent": "complete", "strands": 4, "size": "4-0"}}
BEHIND = "FDP of the ring finger completely divided, repaired with four strands of 4-0 Ethibond."


@pytest.mark.parametrize(
    "quoted",
    [
        'Patient: "they told me that the FDP was only half cut."',
        'Mother: "the tendon was only nicked."',
        'Template text: "A2 and A4 preserved, FDP intact, free glide, no gap."',
        'Template text not deleted: "A2 preserved, free glide, no gap."',
        'He said: "it was six strands of 3-0."',
    ],
)
def test_a_quotation_ends_where_its_mark_closes(quoted: str) -> None:
    assert told(f"{quoted} {BEHIND}", "extent", "strands", "size", "gap", "glide") == CUT
    assert told(f"{quoted} {BEHIND}", "finding", group="pulleys") == {}


def test_a_stop_inside_a_quotation_ends_nothing() -> None:
    text = 'The tray is labelled "Tendon set no. 2" and was complete. ' + BEHIND
    assert told(text, "extent", "strands", "size") == CUT
