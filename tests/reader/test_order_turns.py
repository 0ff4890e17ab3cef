"""Orders put as a request, behind a label or in a word or two."""

import pytest
from reader_sentences import told

_BODY = "Ring finger. FDP was completely divided in zone II and was repaired with 4-0 Prolene.\n\n"


def orders(note: str) -> dict[str, object]:
    return told(_BODY + note, group="aftercare").get("", {})


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Would you please see him on day 4 and begin early active motion?",
            {"programme": "early active", "start_day": (4, 4)},
        ),
        (
            "Could you kindly start place and hold exercises on day 3?",
            {"programme": "place and hold", "start_day": (3, 3)},
        ),
        ("Should early active motion begin on day 4?", {}),
        ("Would early active motion on day 4 be safe?", {}),
    ],
)
def test_a_request_is_an_order(note: str, expected: dict[str, object]) -> None:
    assert orders(note) == expected


@pytest.mark.parametrize(
    ("note", "weeks"),
    [
        ("Splint: dorsal blocking\nWeeks in splint: 6", (6, 6)),
        ("Splint .... dorsal blocking\nWeeks in splint ....: 5", (5, 5)),
        ("Dorsal blocking slab. She should keep the splint for 6 weeks.", (6, 6)),
    ],
)
def test_weeks_behind_a_label(note: str, weeks: tuple[int, int]) -> None:
    assert orders(note)["splint_weeks"] == weeks


@pytest.mark.parametrize(
    ("note", "programme"),
    [
        ("Postop: physio from POD 5 - passive. Slab 4 weeks.", "early passive"),
        ("Postop: dorsal slab. HT D5, passive only.", "early passive"),
        ("Postop: start HT D3, passive; active D14.", "early passive"),
        ("Postop: plaster for 3 weeks with the fingers at rest.", "immobilisation"),
        ("Postop: stays in plaster 4 weeks, no therapy in it.", "immobilisation"),
    ],
)
def test_a_programme_in_a_word(note: str, programme: str) -> None:
    assert orders(note)["programme"] == programme


def test_no_therapy_needed_is_no_rest() -> None:
    assert "programme" not in orders("Postop: no splint and no therapy are needed.")


@pytest.mark.parametrize("note", ["Slab: dorsal, wrist 30 flexion", "Splint: [x] dorsal   [ ] volar"])
def test_a_slab_told_dorsal_blocks(note: str) -> None:
    assert orders(note)["splint"] == "dorsal blocking"


def test_a_box_left_open_tells_no_kind() -> None:
    assert orders("Splint: [ ] dorsal   [x] volar")["splint"] == "other"


def test_joints_in_lines_of_their_own() -> None:
    note = "Splint     dorsal blocking\nWrist      20 flexion\nMCP        70 flexion\nIP         0"
    assert orders(note)["mcp_flexion_deg"] == (70, 70)


@pytest.mark.parametrize(
    ("note", "day"), [("Postop: HT 48 h, early active.", (2, 2)), ("Postop: hand therapy 3-5 days.", (3, 5))]
)
def test_a_time_behind_the_therapy_is_its_start(note: str, day: tuple[int, int]) -> None:
    assert orders(note)["start_day"] == day


def test_how_often_is_no_start() -> None:
    assert "start_day" not in orders("Postop: HT 3 days a week.")
