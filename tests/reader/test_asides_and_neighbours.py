"""Fingers and tendons spoken of only beside the one worked on: comparisons, denials, donors, far fingers."""

import pytest
from reader_sentences import told

SMALL = "The FDP of the small finger was divided and repaired with four strands of 4-0.\n"


@pytest.mark.parametrize(
    "remark",
    [
        "She moved it as freely as the ring finger next door. A4 was vented.",
        "The same edging as on the left ring was added, but of 6-0. A4 was vented.",
        "No tendon of the ring or middle finger lay in the wound. A4 was vented.",
        "No structure in the ring finger was cut. A4 was vented.",
    ],
)
def test_a_finger_likened_or_denied_takes_nothing_over(remark: str) -> None:
    assert told(SMALL + remark, group="pulleys") == {"small A4": {"finding": "vented"}}


@pytest.mark.parametrize(
    ("remark", "expected"),
    [
        ("Gap: none in FPL; index FDP 1 mm gap.", {"FPL": "none", "index FDP": "seen"}),
        ("Gap: none in FPL, 1 mm in index FDP.", {"FPL": "none", "index FDP": "seen"}),
    ],
)
def test_none_in_one_is_not_none_in_the_next(remark: str, expected: dict[str, str]) -> None:
    found = told("Thumb FPL and index FDP repaired with four strands.\n" + remark, "gap")
    assert {name.removeprefix("thumb "): facts["gap"] for name, facts in found.items()} == expected


@pytest.mark.parametrize(
    "lines",
    [
        "Peripheral FDP: 7-0 Prolene, running\nPeripheral FDS: none",
        "Peripheral FDP | 7-0 Prolene, running\nPeripheral FDS | none",
        "Epitendinous profundus: 7-0 running\nEpitendinous superficialis: none",
    ],
)
def test_a_label_may_name_its_tendon_last(lines: str) -> None:
    note = f"Small finger FDP and FDS divided.\nCore FDP: 4 strands, 5-0\nCore FDS: 2 strands, 5-0\n{lines}"
    found = told(note, "peripheral")
    assert found == {"small FDP": {"peripheral": "present"}, "small FDS": {"peripheral": "absent"}}


def test_the_two_are_those_the_paragraph_told_of() -> None:
    note = "Index FDP, middle FDP and middle FDS were repaired.\n\nIndex FDP ran freely. Middle FDP caught at A2. "
    found = told(note + "Neither of the two gapped.", "gap")
    assert found == {"index FDP": {"gap": "none"}, "middle FDP": {"gap": "none"}}


@pytest.mark.parametrize(
    "note",
    [
        "I took the palmaris longus and put it in as a graft. It was woven through three times with 4-0.",
        "The palmaris longus was harvested and used as an interposition graft with 4-0 weaves.",
    ],
)
def test_a_donor_put_in_as_a_graft(note: str) -> None:
    found = told("Small FDP divided, its ends would not meet. " + note, "treatment")
    assert found["small FDP"] == {"treatment": "grafted"}


@pytest.mark.parametrize(
    "note",
    [
        "The palmaris longus was looked at as a possible graft and left.",
        "I did not need the palmaris as a graft.",
        "The palmaris was taken as a graft for A2.",
    ],
)
def test_a_donor_only_thought_of(note: str) -> None:
    assert "treatment" not in told("Small FDP divided. " + note).get("small FDP", {})


@pytest.mark.parametrize("note", ["The palmaris has not been touched.", "The palmaris was left untouched for later."])
def test_a_donor_left_for_later_is_no_finding(note: str) -> None:
    assert "PL" not in told("Small FDP ruptured. " + note, "extent")


@pytest.mark.parametrize("label", ["Fixation: suture anchor", "FIXATION   [ ] button  [x] suture anchor   [ ] suture"])
def test_fixation_with_an_anchor(label: str) -> None:
    found = told(f"Index FDP torn off.\n{label}\n", "stitch", "treatment")
    assert found == {"index FDP": {"stitch": "anchor", "treatment": "reinserted"}}


@pytest.mark.parametrize(
    "deed",
    [
        "Its distal stump was sewn side-to-side to the ring FDP (tenodesis).",
        "Its distal stump was sutured side-to-side to the FDP of the ring finger (tenodesis).",
    ],
)
def test_the_tendon_sewn_alongside_is_not_the_one_tenodesed(deed: str) -> None:
    found = told("The FDP of the small finger was ruptured. " + deed, "treatment")
    assert found == {"small FDP": {"treatment": "tenodesed"}}


@pytest.mark.parametrize(
    ("line", "expected"),
    [
        ("What was cut: the FDP, fully; the FDS, both slips fully.", {"ring FDP": "complete", "ring FDS": "complete"}),
        ("Cut: FDP completely, FDS not looked at.", {"ring FDP": "complete"}),
        ("Cut: FDP, FDS.", {}),
        ("Not cut: FDP.", {"ring FDP": "intact"}),
    ],
)
def test_a_list_of_what_was_cut_on_one_line(line: str, expected: dict[str, str]) -> None:
    found = told("Ring finger.\n" + line, "extent")
    assert {name: facts["extent"] for name, facts in found.items()} == expected


@pytest.mark.parametrize(
    ("words", "pattern"), [("continous locking", "running locking"), ("continuous locking", "running locking")]
)
def test_a_slip_in_continuous(words: str, pattern: str) -> None:
    note = f"Ring FDP repaired with four strands of 3-0; epitenon 6-0 prolene {words}."
    assert told(note, "peripheral_pattern") == {"ring FDP": {"peripheral_pattern": pattern}}


@pytest.mark.parametrize(
    "note",
    [
        "Complete division of FDP in the ring and partial (40 %) in the small.",
        "The FDP was completely divided in the ring finger and partially (40 %) in the small finger.",
    ],
)
def test_a_share_in_brackets_is_of_the_finger_behind_them(note: str) -> None:
    found = told("Exploration of the ring and small fingers.\n\n" + note, "extent", "extent_percent")
    assert found["ring FDP"] == {"extent": "complete"}
    assert found["small FDP"] == {"extent": "partial", "extent_percent": 40}
