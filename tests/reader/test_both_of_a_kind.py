"""'The two profundi had a 6-0, the superficialis none. Both repairs ran freely.': of the kind that was told of last."""

import pytest
from reader_sentences import each

HEAD = (
    "In the middle finger FDP and FDS were divided and in the ring finger FDP was divided. Both profundi were repaired "
    "with 4-strand Adelaide 3-0 Ticron, and the superficialis of the middle finger with a mattress suture. "
)


@pytest.mark.parametrize(
    "rim",
    [
        "A running 6-0 Prolene suture completed the two profundus repairs; none was placed on the superficialis. ",
        "Both profundi had a running 6-0 Prolene, but nothing on the superficialis. ",
        "A running 6-0 Prolene was put round both profundi. ",
    ],
)
@pytest.mark.parametrize("field", ["gap", "glide"])
def test_both_repairs_are_the_two_of_the_kind(rim: str, field: str) -> None:
    found = each(HEAD + rim + "On passive flexion both repairs ran without catching and no gap was seen.", field)
    assert sorted(found) == ["middle FDP", "ring FDP"]


def test_both_repairs_of_one_finger() -> None:
    note = "In the middle finger FDP and FDS were divided and repaired with 3-0. Both repairs ran without catching."
    assert sorted(each(note, "glide")) == ["middle FDP", "middle FDS"]
