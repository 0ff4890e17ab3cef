"""What a good repair is like is told of every repair and of none of this hand; one that was made is this hand's."""

import pytest
from reader_sentences import told

CUT = "Ring FDP divided, four strands of 4-0 Ticron. "
RESULTS = ("gap", "glide", "bulk")


@pytest.mark.parametrize(
    "remark",
    [
        "A well done repair shows no gap, sits without bulk and slides freely, as the fellow was reminded.",
        "A sound repair has no gap and runs freely under A2; this one I could not test.",
        "Any repair worth the name glides freely and is not bulky.",
        "A tendon that is well sewn glides freely and does not gap.",
    ],
)
def test_what_any_good_repair_shows(remark: str) -> None:
    assert told(CUT + remark, *RESULTS) == {}


@pytest.mark.parametrize(
    ("remark", "found"),
    [
        ("A smooth repair, no gap, slides freely.", {"gap": "none", "glide": "free"}),
        ("A very tidy repair that glides freely.", {"glide": "free"}),
        ("A good repair was achieved, without a gap.", {"gap": "none"}),
        ("A repair with no gap and no bulk was achieved.", {"gap": "none", "bulk": "none"}),
        ("A good repair is bulky; ours has no gap and glides freely.", {"gap": "none", "glide": "free"}),
    ],
)
def test_what_this_repair_shows(remark: str, found: dict[str, str]) -> None:
    assert told(CUT + remark, *RESULTS) == {"ring FDP": found}
