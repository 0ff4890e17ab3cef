"""A pulley lost at an earlier operation and put right by the writer: 'had been destroyed ... and I rebuilt it'."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    ("note", "findings"),
    [
        (
            "The A2 pulley of the ring finger had been destroyed by the first surgeon and I rebuilt it with a loop of "
            "superficialis, while A4 was preserved.",
            {"ring A2": "reconstructed", "ring A4": "intact"},
        ),
        (
            "A2 of the middle finger had been divided in the previous surgery, so we reconstructed it.",
            {"middle A2": "reconstructed"},
        ),
        ("The A2 of the index had been lost at the first operation and we rebuilt it.", {"index A2": "reconstructed"}),
        ("The A2 pulley of the ring had been cut at the first operation and I had rebuilt it then.", {}),
        ("At the first operation A2 of the ring had been vented and we repaired it with PDS.", {}),
        ("The A2 pulley of the ring was vented at the first operation and I repaired it.", {}),
    ],
)
def test_what_the_writer_did_to_it_is_of_today(note: str, findings: dict[str, str]) -> None:
    assert each(note, "finding", group="pulleys") == findings
