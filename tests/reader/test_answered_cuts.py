"""A bare 'cut' that answers a tendon's name in a list is a cut through, where the list says 'intact' or how much."""

from notereader.reader import read


def _extents(text: str) -> dict[str, object]:
    return {
        f"{r.digit or ''} {r.tendon}".strip(): r.facts["extent"].value
        for r in read(text).repairs
        if "extent" in r.facts
    }


def test_a_bare_cut_beside_a_share_and_intact_is_complete() -> None:
    told = _extents(
        "Right wrist, zone V.\n\nFCU ........ cut / repaired 3-0 Prolene\nFDS III .... cut, repaired 3-0 Prolene\n"
        "FDS IV ..... intact\nFDP III .... cut 40%\n"
    )
    assert told == {"FCU": "complete", "middle FDS": "complete", "ring FDS": "intact", "middle FDP": "partial"}


def test_colons_lead_as_dots_do() -> None:
    told = _extents(
        "Left forearm, zone V.\n\nFCR: severed\nFPL: severed; repaired\nFDS index: intact\nFDP index: half\n"
    )
    assert (told["FCR"], told["thumb FPL"], told["index FDS"]) == ("complete", "complete", "intact")


def test_a_list_that_never_says_how_far_leaves_it_open() -> None:
    told = _extents("Right wrist, zone V.\n\nFCU ........ cut\nFDS III .... cut\nFDS IV ..... repaired\n")
    assert told == {}


def test_a_cut_with_its_own_share_stays_a_part() -> None:
    told = _extents("Right wrist, zone V.\n\nFCU ........ cut (half)\nFDS III .... cut 30 %\nFDP III .... intact\n")
    assert "complete" not in told.values()


def test_a_bare_cut_right_behind_the_name() -> None:
    told = _extents(
        "Right wrist, zone V.\n\nFound:\n PL cut\n FCR 60% cut, radial side\n FDS II + III cut\n FPL whole\n"
    )
    assert (told["PL"], told["index FDS"], told["middle FDS"]) == ("complete", "complete", "complete")
    assert (told["FCR"], told["thumb FPL"]) == ("partial", "intact")


def test_a_cut_before_another_tendon_of_the_line() -> None:
    told = _extents("Left wrist.\n\nFCU divided\nFDS IV cut, FDS V whole\nFDP IV half cut\n")
    assert (told["ring FDS"], told["small FDS"], told["ring FDP"]) == ("complete", "intact", "partial")


def test_running_text_leaves_open_how_far() -> None:
    told = _extents("Left wrist. PL cut, FCR cut 60%. The FDS of the index was cut. FPL whole.")
    assert "PL" not in told and "index FDS" not in told
