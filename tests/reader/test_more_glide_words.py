"""Plain words for a repair that ran, and for one that rubbed."""

import pytest
from reader_sentences import each

CUT = "Index FDP cut through and sewn with 3-0 Prolene. "


@pytest.mark.parametrize(
    ("words", "glide"),
    [
        ("Full range passively, repair moving freely.", "free"),
        ("FDP runs sweet.", "free"),
        ("Good play of the tendon at passive mobilisation.", "free"),
        ("Slight friction against A4 remains, which is accepted.", "restricted"),
        ("There was some friction under A2.", "restricted"),
        ("Not moving freely under A2.", "restricted"),
        ("At first slight friction, after venting A2 then free.", "free"),
    ],
)
def test_how_it_ran(words: str, glide: str) -> None:
    assert each(CUT + words, "glide") == {"index FDP": glide}


@pytest.mark.parametrize(
    "words", ["She was moving freely around the ward.", "The other fingers were moving freely before the operation."]
)
def test_what_else_moved(words: str) -> None:
    assert each(CUT + words, "glide") == {}


@pytest.mark.parametrize(
    ("words", "glide"),
    [
        ("Flexed and extended passively: glide satisfactory.", "free"),
        ("The passage below A2 is with a slight jump.", "catching"),
    ],
)
def test_how_it_passed(words: str, glide: str) -> None:
    assert each(CUT + words, "glide") == {"index FDP": glide}


@pytest.mark.parametrize("words", ["On moving it the suture does not open.", "The sutures did not open on extension."])
def test_sutures_that_do_not_open(words: str) -> None:
    assert each(CUT + words, "gap") == {"index FDP": "none"}


def test_fingers_free_to_be_moved_in_the_dressing_are_no_test() -> None:
    assert each(CUT + "Dorsal plaster, the fingers free to be moved passively.", "test") == {}


@pytest.mark.parametrize(
    ("words", "test"),
    [
        ("When I bent and straightened the tip everything slid nicely.", "passive"),
        ("Bent and straightened the finger ten times: no hitch.", "passive"),
        ("No gap after ranging by hand.", "passive"),
    ],
)
def test_moved_by_the_surgeons_hand(words: str, test: str) -> None:
    assert each(CUT + words, "test") == {"index FDP": test}


@pytest.mark.parametrize("words", ["The stumps met without force.", "Both ends met without any force."])
def test_ends_that_met_without_force(words: str) -> None:
    assert each(CUT + words, "tension") == {"index FDP": "none"}


@pytest.mark.parametrize("words", ["Smoothed edges with scissors, no core.", "I smoothed the edges, without a suture."])
def test_a_nick_smoothed_without_a_core(words: str) -> None:
    assert each("Thumb. Partial cut FPL, 40 %. " + words, "treatment") == {"thumb FPL": "trimmed"}


@pytest.mark.parametrize(
    ("words", "name", "value"),
    [
        ("It runs through A2 but with noticeable resistance.", "glide", "restricted"),
        ("The patient bent and straightened it: no more clicking.", "glide", "free"),
        ("The patient bent and straightened it: no more clicking.", "test", "active"),
        ("With the finger pushed up and down there was no gap.", "test", "passive"),
        ("A slit of 1 mm opens; one more stitch is placed, at repeat the slit remains closed.", "gap", "none"),
        ("Its ends were torn by the teeth of the saw.", "ends", "ragged"),
        ("Result is slim.", "bulk", "none"),
    ],
)
def test_more_plain_words(words: str, name: str, value: str) -> None:
    assert each(CUT + words, name) == {"index FDP": value}


def test_a_gap_of_a_nerve_that_was_bridged() -> None:
    words = "The nerve on the ulnar side was short. I bridged the gap with a collagen tube."
    assert each(CUT + words, "gap") == {}


@pytest.mark.parametrize(
    ("words", "name", "value"),
    [
        ("Ranged passively no gap at the bone runs well under A4.", "glide", "free"),
        ("Passively no gap at the join slides freely.", "glide", "free"),
        ("No gap, glide not free.", "glide", "restricted"),
        ("The glide was not free.", "glide", "restricted"),
        ("Excursion hardly smooth.", "glide", "restricted"),
        ("The gliding was good.", "glide", "free"),
        ("It caught at A3 until this was vented, then no further obstruction.", "glide", "free"),
        ("It bunched at A2; after venting it there was no further hindrance.", "glide", "free"),
        ("With passive flexion it bunched at the edge of A2.", "glide", "catching"),
        ("Pass. motion: no gap.", "test", "passive"),
        ("Full, smooth on his own active bending.", "test", "active"),
        ("The repair is slightly tight at rest.", "tension", "present"),
        ("The repair was tight because of the shortening.", "tension", "present"),
    ],
)
def test_how_it_lay_and_ran(words: str, name: str, value: str) -> None:
    assert each(CUT + words, name) == {"index FDP": value}


@pytest.mark.parametrize("words", ["tendons looked at and whole", "tendons looked at and intact"])
def test_tendons_looked_at_in_the_other_fingers(words: str) -> None:
    found = each(f"Index: FDP cut through. Ring and little: skin only, {words}.", "extent")
    assert found == {
        "index FDP": "complete",
        **{f"{digit} {tendon}": "intact" for digit in ("ring", "small") for tendon in ("FDP", "FDS")},
    }


@pytest.mark.parametrize("head", ["Nachtrag / addendum 12.10.:", "Nachtrag:", "Addendum 12.10.:"])
def test_an_addendum_in_another_tongue(head: str) -> None:
    note = "Index FDP cut through. Core: 4-strand cruciate, 4-0 Prolene.\n\n"
    note += f"{head} FDP core suture was 3-0 Prolene, not 4-0."
    assert each(note, "size") == {"index FDP": "3-0"}


@pytest.mark.parametrize("words", ["P3 flexes, no gap.", "The distal phalanx bends with it, no gap."])
def test_a_bone_that_a_pull_moves_has_no_gap_of_its_own(words: str) -> None:
    assert each(f"Ring finger. FDP reinserted with anchors. {words}", "gap") == {"ring FDP": "none"}


def test_a_gap_of_a_broken_bone_is_none_of_the_repair() -> None:
    assert each("Ring finger. FDP reinserted with anchors. The phalanx was cracked, no gap.", "gap") == {}


@pytest.mark.parametrize(
    "words", ["The tendon ran a little stiffly through the A2 closure.", "The tendon glides tightly under the A2."]
)
def test_a_run_told_with_how_much(words: str) -> None:
    assert each(f"Left index. FDP cut, sewn with 3-0 Ticron. {words}", "glide") == {"index FDP": "restricted"}
