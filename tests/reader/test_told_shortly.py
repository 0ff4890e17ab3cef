"""How far a tendon was cut, or that it was whole, told in a word or two behind its name."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Ring FDP total, ends tidy.", {"ring FDP": "complete"}),
        ("Zone V. FCU fully. PL fully.", {"FCU": "complete", "PL": "complete"}),
        ("Index finger, FDP compl. + FDS partial.", {"index FDP": "complete", "index FDS": "partial"}),
    ],
)
def test_in_full_behind_the_name(note: str, expected: dict[str, str]) -> None:
    assert each(note, "extent") == expected


@pytest.mark.parametrize(
    "note", ["Ring FDP total excursion 25 mm.", "Ring FDP fully exposed.", "Ring FDP total active motion."]
)
def test_what_is_in_full_is_something_else(note: str) -> None:
    assert not each(note, "extent")


CUT = "Middle finger. FDP divided. FDS ulnar slip divided. "


@pytest.mark.parametrize(
    "words",
    [
        "It was left as the radial slip held well.",
        "The radial slip has held.",
        "Radial slip good.",
        "Radial slip o.B.",
        "The other slip was sound and I left it.",
    ],
)
def test_a_slip_that_held(words: str) -> None:
    assert each(CUT + words, "extent")["middle FDS radial"] == "intact"


@pytest.mark.parametrize(
    "words", ["The FDS repair held well on traction.", "FDS good bite taken.", "The FDS suture held well."]
)
def test_a_suture_that_held_is_no_whole_tendon(words: str) -> None:
    note = f"Middle finger. FDP divided. FDS divided, sewn with 4-0 Prolene. {words}"
    assert each(note, "extent") == {"middle FDP": "complete", "middle FDS": "complete"}


@pytest.mark.parametrize(
    "words",
    ["The superficialis had lost just the radial slip.", "FDS lost its radial slip to the saw, the ulnar slip whole."],
)
def test_a_slip_that_was_lost(words: str) -> None:
    found = each(f"Middle finger. FDP divided. {words}", "extent")
    assert found["middle FDS radial"] == "complete"
    assert "middle FDS" not in found


@pytest.mark.parametrize("words", ["The FDS had been cut as well.", "FDS cut also, at the chiasm.", "FDS was cut too."])
def test_cut_as_well_as_the_one_before(words: str) -> None:
    assert each(f"Small finger. The FDP was severed. {words}", "extent")["small FDS"] == "complete"


@pytest.mark.parametrize("words", ["The FDP was cut by half.", "The skin was cut."])
def test_cut_as_well_as_no_whole_cut(words: str) -> None:
    assert each(f"Small finger. {words} The FDS had been cut as well.", "extent").get("small FDS") is None


@pytest.mark.parametrize(
    ("words", "fingers"),
    [
        ("Index and small: tendons looked at, all four whole.", ("index", "small")),
        ("Ring: both tendons seen and whole.", ("ring",)),
        ("Ring: FDP and FDS explored through the same wound: both intact.", ("ring",)),
        ("Ring finger. Both tendons inspected through a window and both normal.", ("ring",)),
    ],
)
def test_looked_at_and_whole(words: str, fingers: tuple[str, ...]) -> None:
    expected = {f"{finger} {tendon}": "intact" for finger in fingers for tendon in ("FDP", "FDS")}
    assert each(f"Middle finger: FDP completely divided.\n{words}", "extent") == {"middle FDP": "complete", **expected}


@pytest.mark.parametrize(
    "words", ["Ring: both tendons and A2 looked at, the pulley whole.", "Both tendons seen; nerves whole."]
)
def test_looked_at_and_something_else_whole(words: str) -> None:
    assert each(f"Middle finger: FDP completely divided.\n{words}", "extent") == {"middle FDP": "complete"}


@pytest.mark.parametrize(
    "words", ["Ring: everything fine.", "Ring: both tendons fine.", "Ring finger - both flexors sound."]
)
def test_both_flexors_of_a_finger_in_a_word(words: str) -> None:
    found = each(f"Zone III. Middle FDP completely divided. {words}", "extent")
    assert found == {"middle FDP": "complete", "ring FDP": "intact", "ring FDS": "intact"}


@pytest.mark.parametrize("words", ["Ring: everything cleaned, nerves fine.", "Everything else fine."])
def test_everything_else(words: str) -> None:
    assert each(f"Zone III. Middle FDP completely divided. {words}", "extent") == {"middle FDP": "complete"}


@pytest.mark.parametrize("words", ["cut only through the ulnar slip", "cut on the ulnar slip only"])
def test_cut_only_through_a_slip(words: str) -> None:
    found = each(f"Middle finger. FDP transected. FDS was {words}, and this was left.", "extent")
    assert found == {"middle FDP": "complete", "middle FDS ulnar": "complete"}


def test_a_share_of_the_one_slip_that_was_cut() -> None:
    found = each("Middle finger. FDS was cut only in its radial slip, to about one third.", "extent")
    assert found.get("middle FDS radial") == "partial"


@pytest.mark.parametrize("mark", ["[x] through  [ ] part  [ ] whole", "[ ] whole   [x] through   [ ] part"])
def test_through_ticked(mark: str) -> None:
    assert each(f"Digit: middle\nFDP:  {mark}\n", "extent") == {"middle FDP": "complete"}
