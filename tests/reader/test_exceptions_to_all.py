"""What a sentence tells of all repairs is not told of the one that the next sentence names as their exception."""

import pytest
from reader_sentences import each, told

CUT = "FPL, FCR and index FDS divided. "


@pytest.mark.parametrize(
    "sewn",
    [
        "All were repaired with a four-strand Strickland, PDS 3-0. Exception FCR: horizontal mattress, Vicryl 2-0.",
        "Each was sewn with four strands, 3-0 PDS. The exception was the FCR, with a horizontal mattress, 2-0 Vicryl.",
    ],
)
def test_the_exception_has_its_own_core(sewn: str) -> None:
    assert each(CUT + sewn, "strands") == {"thumb FPL": 4, "index FDS": 4}
    assert told(CUT + sewn, "size", "material")["FCR"] == {"size": "2-0", "material": "polyglactin"}


def test_only_the_suture_told_anew_is_taken_back() -> None:
    note = CUT + "Each got a four-strand core of 3-0 PDS and a running 6-0. Exception: FCR, no epitendinous suture."
    assert each(note, "strands")["FCR"] == 4
    assert each(note, "peripheral")["FCR"] == "absent"


def test_what_was_told_of_it_by_name_stays() -> None:
    note = CUT + "The FCR got a two-strand modified Kessler of 3-0 PDS. Exceptions: none."
    assert each(note, "strands") == {"FCR": 2}


@pytest.mark.parametrize(
    "none",
    ["none by the others", "none in the other repairs", "and none around the others", "none was used on the others"],
)
def test_none_for_the_others(none: str) -> None:
    note = (
        CUT + f"All were repaired with 3-0 PDS. Circumferential suture only in the FPL, running, Prolene 5-0; {none}."
    )
    assert each(note, "peripheral") == {"thumb FPL": "present", "FCR": "absent", "index FDS": "absent"}
