"""The state of a cut end told without a word for the end, or of ends named without their tendon."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("FDP of the index severed in zone II, just beyond A2, shredded.", {"index FDP": "ragged"}),
        ("Ring finger: FDP 60% cut on its ulnar side, frayed, zone 2.", {"ring FDP": "ragged"}),
        ("Index FDP 100% + FDS 100%, also ragged.", {"index FDP": "ragged", "index FDS": "ragged"}),
        ("Ring FDP completely divided at the PIP joint. Clean edge.", {"ring FDP": "clean"}),
    ],
)
def test_a_state_alone_behind_the_cut(note: str, expected: dict[str, str]) -> None:
    assert each(note, "ends") == expected


@pytest.mark.parametrize(
    "note",
    [
        "Ring FDP completely divided, ulnar digital nerve cut, ragged.",
        "Ring FDP completely divided. The A2 pulley was torn. It was ragged.",
        "FDP and FDS of the ring completely divided. The wound was opened. They were clean.",
        "Ring FDP completely divided, FDS 100% too, but thread-like.",
    ],
)
def test_a_state_of_something_else(note: str) -> None:
    assert not each(note, "ends")


@pytest.mark.parametrize(
    "note",
    [
        "Ring FDP completely divided. Its proximal stump had slipped back to A1. It was frayed.",
        "Ring FDP completely divided. I found the tendon end at the mouth of the sheath. It was ragged, so 2 mm went.",
        "Ring FDP was off the bone. Its end lay at the A3 pulley, held by a vinculum, shaggy.",
        "Ring FDP completely divided. The stump was cut back by 2 mm, as it was soft and slightly frayed.",
    ],
)
def test_an_end_just_spoken_of(note: str) -> None:
    assert each(note, "ends") == {"ring FDP": "ragged"}


@pytest.mark.parametrize(
    "note",
    [
        "Thumb: FPL torn through over the proximal phalanx, stumps ragged.",
        "Thumb: FPL completely divided at the level of the base of the phalanx, with frayed ends.",
        "Thumb: FPL completely divided. No bony fragment; the ends were frayed.",
    ],
)
def test_a_bone_is_where_the_cut_lay(note: str) -> None:
    assert each(note, "ends") == {"thumb FPL": "ragged"}


@pytest.mark.parametrize("note", ["Digital nerves divided, ends ragged.", "UDN and RDN severed. Nerve ends frayed."])
def test_ends_of_a_nerve_are_none_of_the_tendon(note: str) -> None:
    assert not each(f"Ring FDP completely divided. {note}", "ends")


CUT = "Findings: Index FDP and FDS divided. Ring FDP divided, FDS intact.\n"


@pytest.mark.parametrize("words", ["All cuts were smooth.", "Clean cuts.", "All cuts as straight as a ruler."])
def test_all_the_cuts(words: str) -> None:
    assert each(CUT + words, "ends") == dict.fromkeys(["index FDP", "index FDS", "ring FDP"], "clean")


@pytest.mark.parametrize("words", ["Skin cuts were clean.", "The cuts in the wound edges were clean."])
def test_cuts_of_the_skin(words: str) -> None:
    assert not each(CUT + words, "ends")


@pytest.mark.parametrize("words", ["Ends of both tidy.", "Tendon ends: tidy (both)", "Ends tidy on both tendons."])
def test_ends_of_both_flexors_of_a_finger(words: str) -> None:
    note = f"Ring finger: FDP divided. FDS divided. Sheath opened. Then A4 vented.\n{words}"
    assert each(note, "ends") == {"ring FDP": "clean", "ring FDS": "clean"}


def test_what_was_only_trimmed_has_no_ends_on_a_form() -> None:
    note = (
        "Digit: index\nFDP   [x] complete   [ ] partial   [ ] intact\n"
        "FDS   [ ] complete   [x] partial 25 %   [ ] intact\n"
        "Ends  [x] clean   [ ] ragged   [ ] crushed\nFDS   [ ] repaired   [x] left unsutured   [ ] excised\n"
    )
    assert each(note, "ends") == {"index FDP": "clean"}


@pytest.mark.parametrize("words", ["cut as by a razor", "ends square", "clean cut right through"])
def test_clean_in_other_words(words: str) -> None:
    assert each(f"Ring FDP completely divided, ends {words}.", "ends") == {"ring FDP": "clean"}


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("The tendon ends are clean.", "clean"),
        ("The tendon ends are crisp and fresh.", "clean"),
        ("The tendon ends are ragged.", "ragged"),
        ("The tendon ends are crushed.", "crushed"),
        ("The tendon ends are covered with gauze.", None),
        ("The wound edges are clean.", None),
    ],
)
def test_ends_told_as_they_are(text: str, value: str | None) -> None:
    note = f"Ring FDP completely divided and repaired with a four-strand cruciate. {text}"
    assert each(note, "ends").get("ring FDP") == value
