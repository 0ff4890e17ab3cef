"""What was done to a tendon told shortly: 'FDS: nothing', 'slip out', 'came out', 'that slip', 'the cut slip'."""

import pytest
from reader_sentences import each, told

CUT = "Ring finger. FDP cut through, FDS cut through.\nDone:\nFDP: 4 strand cruciate, 3-0 Prolene.\n"


@pytest.mark.parametrize("note", ["FDS: nothing.", "FDS - nothing\n", "FDS: nil\n", "Ring FDS: none\n"])
def test_nothing_done(note: str) -> None:
    assert each(CUT + note, "treatment") == {"ring FDP": "repaired", "ring FDS": "left"}


@pytest.mark.parametrize(
    "note", ["Gap: FDP none.", "FDP: nil gap.", "Epitendinous: FDP none, FDS none.", "FDP: none\n"]
)
def test_nothing_of_something_else(note: str) -> None:
    assert each(CUT + note, "treatment")["ring FDP"] == "repaired"


@pytest.mark.parametrize(
    "note",
    [
        "FDS both slips out.",
        "FDS was beyond use and came out.",
        "FDS: I took the whole thing out.",
        "FDS slips out, no room.",
    ],
)
def test_taken_out(note: str) -> None:
    assert each(CUT + note, "treatment") == {"ring FDP": "repaired", "ring FDS": "excised"}


@pytest.mark.parametrize(
    "note",
    [
        "The FDP came out at the palm.",
        "FDS suture came out.",
        "The A3 came out.",
        "The FDS end was brought out through the chiasm.",
    ],
)
def test_not_taken_out(note: str) -> None:
    assert "excised" not in each(CUT + note, "treatment").values()


@pytest.mark.parametrize(
    "note",
    [
        "The radial slip of the ring FDS was cut through and held no stitch, so we cut that slip out.",
        "Ring finger: radial slip of FDS divided. The cut slip was excised.",
        "Ring finger: radial slip of FDS divided. The ulnar slip was intact. I removed the divided slip.",
    ],
)
def test_the_slip_spoken_of(note: str) -> None:
    assert told(note, "treatment")["ring FDS radial"] == {"treatment": "excised"}


def test_a_slip_cut_out_behind_a_suture_of_the_other() -> None:
    note = "Ring FDS cut through. I mended the radial slip with 4-0 Prolene and excised the ulnar slip as it was thin."
    assert each(note, "treatment") == {"ring FDS radial": "repaired", "ring FDS ulnar": "excised"}


@pytest.mark.parametrize(
    "note",
    [
        "The ulnar slip of the ring FDS was reattached with a mattress suture of 4-0 PDS.",
        "Both slips of the ring FDS were reattached with one figure-of-eight of 4-0 nylon each.",
    ],
)
def test_slips_reattached_with_stitches_are_repaired(note: str) -> None:
    assert set(each(note, "treatment").values()) == {"repaired"}


def test_reattached_to_bone() -> None:
    note = "The ring FDS was reattached to the middle phalanx with a 3-0 pull-out suture."
    assert each(note, "treatment") == {"ring FDS": "reinserted"}


@pytest.mark.parametrize(
    "note",
    [
        "Ring FDP 20% cut: not sutured, the loose fibres cut off.",
        "Ring FDP 15% nick. Not sutured, edge tidied so as not to snag.",
        "Ring FDP: a quarter cut. Edges smoothened, not stitched.",
    ],
)
def test_smoothed_and_not_sewn(note: str) -> None:
    assert each(note, "treatment") == {"ring FDP": "trimmed"}


def test_edges_tidied_and_then_sewn() -> None:
    note = "RING FDP 60% CUT: EDGES TIDIED. MODIFIED KESSLER, TWO STRANDS, 4-0 TICRON."
    assert each(note, "treatment") == {"ring FDP": "repaired"}
    assert "peripheral" not in told(note)["ring FDP"]


def test_the_other_slip_of_a_tendon_cut_through_is_cut_too() -> None:
    note = "Zone II. Ring FDS completely divided, ends ragged. The radial slip was excised."
    assert told(note, "extent", "treatment") == {
        "ring FDS radial": {"extent": "complete", "treatment": "excised"},
        "ring FDS ulnar": {"extent": "complete"},
    }


def test_nothing_of_the_repair_goes_to_a_slip_not_spoken_of() -> None:
    note = "Ring FDS completely divided. FDS repair. The radial slip was repaired with two strands of 4-0 Prolene."
    assert told(note, "treatment", "strands").get("ring FDS ulnar", {}) == {}
