"""'For the FCR only', 'in each': of the tendons told so far, which one suture or length is of."""

import pytest
from reader_sentences import each, told

WRIST = "Left wrist, zone V. Flexor carpi radialis and flexor carpi ulnaris completely cut. "


@pytest.mark.parametrize(
    "words",
    [
        "Layer three (flexor carpi radialis, flexor carpi ulnaris): a two-strand modified Kessler of 2-0 Ethibond, to "
        "which 5-0 Prolene was added in running fashion for the carpi radialis only.",
        "FCR and FCU were repaired with a modified Kessler of 2-0 Ethibond, and a running 5-0 Prolene was put around "
        "the FCR alone.",
    ],
)
def test_a_thread_for_one_tendon_only(words: str) -> None:
    sewn = told(WRIST + words, "size", "peripheral", "peripheral_size")
    assert sewn["FCR"] == {"size": "2-0", "peripheral": "present", "peripheral_size": "5-0"}
    assert sewn["FCU"] == {"size": "2-0", "peripheral": "absent"}


def test_the_carpi_ulnaris_of_the_other_side_of_the_hand() -> None:
    assert told("The extensor carpi radialis was repaired with 4-0 Ethibond.") == {}


TWO = (
    "Right hand. FDP of the ring and small fingers cut through. Ring FDS cut through. The small FDP was repaired with "
    "a four-strand cruciate of 4-0 Ethibond. The ring FDP was repaired with a four-strand cruciate of 3-0 Ethibond. "
)
THIRD = "The ring superficialis was then approximated with a single 4-0 Ethibond mattress stitch."


@pytest.mark.parametrize("words", ["In each the suture purchase was 9 mm. ", "Both had a purchase of 9 mm. "])
def test_each_is_not_what_is_sewn_further_down(words: str) -> None:
    assert each(TWO + words + THIRD, "purchase_mm") == {"ring FDP": (9, 9), "small FDP": (9, 9)}


def test_what_is_denied_of_any_tendon_holds_of_the_next_too() -> None:
    note = TWO + "No epitendinous suture was placed in any of the tendons. " + THIRD
    assert each(note, "peripheral")["ring FDS"] == "absent"


@pytest.mark.parametrize(
    "words",
    [
        "The thumb FPL was put on a button without any circumferential stitch. ",
        "The thumb FPL was joined with a modified Kessler of 3-0 Ethibond. ",
    ],
)
def test_each_limb_is_of_the_suture_it_stands_beside(words: str) -> None:
    note = (
        "Left thumb and long finger. FPL cut, FDP of the long finger cut. "
        + words
        + "Attention was turned to the long "
        "finger. A six-strand core with 4-0 Fiberloop, each suture limb being locked, was followed by a running 6-0."
    )
    assert each(note, "hold") == {"middle FDP": "locking"}


def test_a_thread_that_is_locked_over_is_not_the_core() -> None:
    note = "FDP of the ring finger: Kirchmayr, 2 strands, 4-0. Over-lock of polypropylene 6-0 round it."
    assert "hold" not in told(note)["ring FDP"]


GRID = "Right hand. Findings: all cut by glass.\n\nFDP LF 100%   clean   3-0 Tycron, 4 strands\n"


@pytest.mark.parametrize(
    "words",
    ["FDS LF    100%   thin as floss    n - left out", "FDS LF was cut right through and was left out, too thin."],
)
def test_a_tendon_left_out_is_left(words: str) -> None:
    assert each(GRID + words, "treatment") == {"small FDP": "repaired", "small FDS": "left"}


def test_a_suture_left_out_is_no_tendon_left() -> None:
    assert each(GRID + "The running suture was left out.", "treatment") == {"small FDP": "repaired"}


LINES = (
    "WHAT WAS DONE\n1) FDP 4, FDP 5: 3/0 Ethibond, 4 strand Adelaide.\n2) FDS 3, 4, 5: 3/0 Ethibond, 2 strand mod "
    "Kessler.\n3) FCU: 2/0 PDS, Krackow each end, six strands.\n"
)


@pytest.mark.parametrize(
    ("words", "tested"),
    [
        ("Pull on each from proximal, 1) and 3) only: no gap.", ["FCU", "ring FDP", "small FDP"]),
        ("Traction on 1) only: no gap.", ["ring FDP", "small FDP"]),
    ],
)
def test_numbers_of_lines_tell_which_were_tested(words: str, tested: list[str]) -> None:
    for field in ("gap", "test"):
        assert sorted(each(LINES + words, field)) == tested


@pytest.mark.parametrize("words", ["FDS same as FDP but single, not double.", "The FDS was done likewise, but single."])
def test_alike_but_single_has_another_stitch(words: str) -> None:
    note = "Index FDP and FDS cut completely. Index FDP: double modified Kessler, 4-0 Ethibond. " + words
    sewn = told(note, "strands", "stitch", "size", "treatment")
    assert sewn["index FDS"] == {"size": "4-0", "treatment": "repaired"}
    assert sewn["index FDP"]["strands"] == 4


@pytest.mark.parametrize("words", ["ditto but no epi, and 2 strand mod Kessler instead", "ditto but a Kessler instead"])
def test_ditto_but_another_stitch_is_of_the_same_thread(words: str) -> None:
    note = f"WHAT WAS DONE\nFDP 4: 3/0 Ethibond, 4 strand Adelaide. Epi 5/0 Prolene running.\nFDS 4: {words}\n"
    sewn = told(note, "size", "material", "strands")["ring FDS"]
    assert sewn == {"size": "3-0", "material": "braided polyester", "strands": 2}
