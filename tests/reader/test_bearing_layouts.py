"""Which tendon a grid, a heading, a list or a turn to another finger speaks of."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "| Finger | Tendon | Zone | Cut | Done |\n|--------|--------|------|-----|------|\n| "
            "Index | FDP | II | 100% | 3-0 Ethibond |\n| Index | FDS | II | 40% | trimmed |\n| "
            "Middle | FDP | III | intact | - |\n",
            {
                "index FDP": {"zone": "II", "extent": "complete", "size": "3-0", "treatment": "repaired"},
                "index FDS": {"zone": "II", "extent": "partial", "extent_percent": 40, "treatment": "trimmed"},
                "middle FDP": {"extent": "intact"},
            },
        ),
        (
            "Finger   Tendon   Zone   Cut      Treated\nindex    FDP      II     complete "
            "repaired\nindex    FDS      II     40%      edge trimmed\nmiddle   FDP      -      "
            "intact   -\n",
            {
                "index FDP": {"zone": "II", "extent": "complete", "treatment": "repaired"},
                "index FDS": {"zone": "II", "extent": "partial", "extent_percent": 40, "treatment": "trimmed"},
                "middle FDP": {"extent": "intact"},
            },
        ),
        (
            "            INDEX           RING\nZone        II              III\nFDP found   cut "
            "through     cut through\nFDP done    repaired        repaired\nFDS found   intact"
            "          cut through\nFDS done    -               excised\n",
            {
                "index FDP": {"zone": "II", "extent": "complete", "treatment": "repaired"},
                "index FDS": {"extent": "intact"},
                "ring FDP": {"zone": "III", "extent": "complete", "treatment": "repaired"},
                "ring FDS": {"zone": "III", "extent": "complete", "treatment": "excised"},
            },
        ),
        (
            "INDEX FINGER\nFDP: complete division, zone II. Repaired with 3-0 Ethibond.\nFDS: "
            "intact.\n\nRING FINGER\nFDP: 30% cut, left.\nFDS: intact.\n",
            {
                "index FDP": {"extent": "complete", "zone": "II", "size": "3-0", "treatment": "repaired"},
                "index FDS": {"extent": "intact"},
                "ring FDP": {"extent": "partial", "extent_percent": 30, "treatment": "left"},
                "ring FDS": {"extent": "intact"},
            },
        ),
        (
            "Index - FDP through in zone II, 4 strand 3-0 Ethibond. FDS fine.\nMiddle - FDP through"
            " in zone III, 4 strand 4-0 Ethibond. FDS fine.",
            {
                "index FDP": {"extent": "complete", "zone": "II", "size": "3-0", "treatment": "repaired"},
                "index FDS": {"extent": "intact"},
                "middle FDP": {"extent": "complete", "zone": "III", "size": "4-0", "treatment": "repaired"},
                "middle FDS": {"extent": "intact"},
            },
        ),
        (
            "Findings: index: FDP 100 %, FDS 100 %; middle: FDP 50 %, FDS nil.\nProcedure: index "
            "FDP 3-0 Ethibond, FDS excised; middle FDP trimmed.",
            {
                "index FDP": {"extent": "complete", "size": "3-0", "treatment": "repaired"},
                "index FDS": {"extent": "complete", "treatment": "excised"},
                "middle FDP": {"extent": "partial", "extent_percent": 50, "treatment": "trimmed"},
                "middle FDS": {"extent": "intact"},
            },
        ),
        (
            "RF > FDP cut through > 4-0 Ethibond core.\nLF > FDP cut through > 3-0 Ethibond core.",
            {
                "ring FDP": {"extent": "complete", "size": "4-0", "treatment": "repaired"},
                "small FDP": {"extent": "complete", "size": "3-0", "treatment": "repaired"},
            },
        ),
        (
            "Attention was turned to the ring finger. The profundus was completely divided. It was"
            " repaired with 4-0 Prolene. Attention was then turned to the small finger, where the "
            "profundus was completely divided and was repaired with 3-0 Prolene.",
            {
                "ring FDP": {"extent": "complete", "size": "4-0", "treatment": "repaired"},
                "small FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
            },
        ),
        (
            "The ring finger: both tendons completely divided. The small finger: profundus only, completely divided.",
            {
                "ring FDP": {"extent": "complete"},
                "ring FDS": {"extent": "complete"},
                "small FDP": {"extent": "complete"},
            },
        ),
        (
            "Ring finger. Superficialis first: completely divided, repaired with 5-0 Prolene. "
            "Profundus next: completely divided, repaired with 3-0 Prolene.",
            {
                "ring FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
                "ring FDS": {"extent": "complete", "treatment": "repaired", "size": "5-0"},
            },
        ),
        (
            "Procedure: repair FDP left ring finger, zone II\nThe tendon was found completely "
            "divided. A four-strand repair with 3-0 Ethibond was done.",
            {"ring FDP": {"treatment": "repaired", "zone": "II", "extent": "complete", "size": "3-0"}},
        ),
        (
            "Correction: the tendon repaired was the FDP of the ring finger, not the middle. FDP "
            "completely divided, 3-0 Ethibond.",
            {"ring FDP": {"extent": "complete", "size": "3-0", "treatment": "repaired"}},
        ),
        (
            "Ring finger FDP and FDS: complete, zone II. FDP: 4-strand 3-0 Ethibond. FDS: 2-strand 4-0 Ethibond.",
            {
                "ring FDP": {"extent": "complete", "zone": "II", "size": "3-0", "treatment": "repaired"},
                "ring FDS": {"extent": "complete", "zone": "II", "size": "4-0", "treatment": "repaired"},
            },
        ),
        (
            "FDP x2 (ring, small) completely divided, both repaired with 4-0 Ethibond.",
            {
                "ring FDP": {"extent": "complete", "size": "4-0", "treatment": "repaired"},
                "small FDP": {"extent": "complete", "size": "4-0", "treatment": "repaired"},
            },
        ),
        (
            "FDP IV and V completely divided and repaired with 3-0 Ethibond.",
            {
                "ring FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
                "small FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
            },
        ),
        (
            "Dig. IV: deep flexor completely divided, sutured with 3-0 Ethibond. Dig. V: deep flexor intact.",
            {
                "ring FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"},
                "small FDP": {"extent": "intact"},
            },
        ),
        (
            "FDP of ring and small, FDS of small: all completely divided.",
            {
                "ring FDP": {"extent": "complete"},
                "small FDP": {"extent": "complete"},
                "small FDS": {"extent": "complete"},
            },
        ),
        (
            "Long finger FDP (zone II) and ring finger FDP (zone III) completely divided.",
            {"middle FDP": {"zone": "II", "extent": "complete"}, "ring FDP": {"extent": "complete", "zone": "III"}},
        ),
    ],
)
def test_layouts(note: str, expected: dict[str, dict[str, object]]) -> None:
    assert told(note, "extent", "extent_percent", "treatment", "zone", "size") == expected
