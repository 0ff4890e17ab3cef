"""What a sentence without a tendon tells, where the superficialis was named last and the deep flexor was sewn."""

import pytest
from reader_sentences import each, told

BOTH = "Ring finger. FDP and FDS completely divided in zone II. "


@pytest.mark.parametrize(
    "text",
    [
        "FDP repaired. FDS slips repaired with 5-0. A four-strand cruciate of 3-0 Ethibond was used.",
        "FDS mattress 4-0. Core of 3-0 Ethibond, four strands.",
    ],
)
def test_a_second_core_is_that_of_the_deep_flexor(text: str) -> None:
    assert each(BOTH + text, "strands") == {"ring FDP": 4}
    assert each(BOTH + text, "size")["ring FDP"] == "3-0"
    followed = each(BOTH + text + " A running 6-0 Prolene was added. No gap.", "peripheral")
    assert followed == {"ring FDP": "present"}


@pytest.mark.parametrize(
    "text",
    [
        "FDP sewn with four strands of 3-0. FDS sewn with 4-0. A running 6-0 Prolene was added.",
        "FDP four strands of 3-0. FDS with one Tsuge. The repair was finished with a running 6-0 Prolene.",
        "The FDS slips were sewn with 4-0. FDP core 4 strands. The FDS lay flat under it. Running 6-0.",
    ],
)
def test_a_running_suture_told_by_itself(text: str) -> None:
    assert each(BOTH + text, "peripheral") == {"ring FDP": "present"}
    assert each(BOTH + text, "peripheral_size") == {"ring FDP": "6-0"}


def test_a_running_suture_on_the_line_of_the_superficialis() -> None:
    text = BOTH + "\nFDP: four strands of 3-0.\nFDS: repaired, both slips. Becker, 3-0. Circumferential 5-0 Prolene."
    assert each(text, "peripheral") == {"ring FDS": "present"}


def test_in_both_means_both_fingers() -> None:
    text = (
        "Index and middle. FDP completely divided in both. FDPs sewn with four strands of 3-0. "
        "Middle FDS mattress 4-0. Running 6-0 in both."
    )
    assert each(text, "peripheral") == {"index FDP": "present", "middle FDP": "present"}


@pytest.mark.parametrize(
    "text",
    [
        "a triple Tsuge of 3-0 Supramid, each with a locking bite, then a running 6-0 Prolene.",
        "six strands of 3-0 Supramid, triple Tsuge, each with a locking loop, and a running 6-0 Prolene.",
    ],
)
def test_each_of_the_stitches_is_not_each_tendon(text: str) -> None:
    text = f"Ring finger. FDP transected, FDS cut on the ulnar slip. I placed {text} The ulnar slip got a 5-0 mattress."
    assert each(text, "peripheral") == {"ring FDP": "present"}
    assert each(text, "hold") == {"ring FDP": "locking"}


@pytest.mark.parametrize(
    "text",
    [
        "Ring profundus completely divided, superficialis not. Repaired it with a two-strand Kessler.",
        "Ring FDP completely divided, not so the FDS. It was repaired with a two-strand Kessler.",
        "Ring FDP cut through completely; the sublimis not. Repaired with a two-strand Kessler.",
    ],
)
def test_the_cut_spared_the_other(text: str) -> None:
    assert each(text, "extent") == {"ring FDP": "complete", "ring FDS": "intact"}
    assert each(text, "treatment") == {"ring FDP": "repaired"}


def test_not_repaired_is_not_whole() -> None:
    assert each("Ring FDP completely divided and repaired, FDS not.", "extent") == {"ring FDP": "complete"}


def test_letters_spoken_one_by_one() -> None:
    text = "Index finger. The F D P was completely divided and the F D S was intact. F D P repaired with four strands."
    assert each(text, "extent") == {"index FDP": "complete", "index FDS": "intact"}
    assert each(text, "strands") == {"index FDP": 4}


@pytest.mark.parametrize(
    "fate",
    [
        "The FDS repair jammed and the FDS was excised.",
        "It was too bulky, so the FDS was cut out.",
        "Amended: strike the FDS repair from the record. FDS was excised.",
    ],
)
def test_the_suture_of_a_superficialis_cut_out_later_is_not_that_of_the_profundus(fate: str) -> None:
    note = "Ring FDP and FDS divided. FDP repaired with 2 strands. FDS repaired with an Adelaide of 4-0 Prolene. "
    facts = told(note + fate, "strands", "stitch", "size", "treatment")
    assert facts["ring FDP"] == {"strands": 2, "treatment": "repaired"}
    assert facts["ring FDS"] == {"treatment": "excised"}


def test_a_superficialis_told_sewn_that_an_addendum_says_was_only_trimmed() -> None:
    note = (
        "Ring FDP divided, FDS divided 60%, radial slip only. FDP repaired with a modified Kessler of 4-0 Prolene. "
        "FDS radial slip repaired with a 5-0 Prolene mattress.\n\nAddendum:\nThe FDS radial slip was not repaired. "
        "It was cut to 60% and the loose edge was trimmed."
    )
    facts = told(note, "stitch", "treatment")
    assert facts["ring FDS radial"] == {"treatment": "trimmed"}
    assert facts["ring FDP"] == {"treatment": "repaired", "stitch": "modified kessler"}
