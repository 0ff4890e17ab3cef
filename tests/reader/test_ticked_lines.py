"""Fields of forms whose options each have a mark, and answers that stand above the next label."""

import pytest
from reader_sentences import told

from notereader.reader.layout.ticked_lines import ticked_lines

FORM = "Ring FDP repaired.\n{lines}\n"


def _line(
    label: str, options: list[str], chosen: str | None, *, marks: tuple[str, str], leading: bool, gap: str
) -> str:
    empty, tick = marks
    told = [(tick if option == chosen else empty, option) for option in options]
    return label + gap.join(f"{mark} {option}" if leading else f"{option} {mark}" for mark, option in told)


MARKS = [
    ("[ ]", "[x]"),
    ("[ ]", "[\u2713]"),
    ("( )", "(x)"),
    ("\u2610", "\u2612"),
    ("\u25a1", "\u2611"),
    ("___", "_X_"),
    ("o", "x"),
    ("-", "X"),
    ("__", "X"),
]


@pytest.mark.parametrize("marks", MARKS, ids=lambda pair: "".join(pair))
@pytest.mark.parametrize("leading", [True, False])
@pytest.mark.parametrize("gap", [" / ", "   ", " | "])
def test_one_of_several_ticked(marks: tuple[str, str], leading: bool, gap: str) -> None:
    fields = [
        ("Gap: ", ["none", "seen"], "seen"),
        ("Glide: ", ["free", "catching", "restricted"], "catching"),
        ("Ends: ", ["clean", "ragged", "crushed"], "ragged"),
        ("Epitendinous: ", ["yes", "no"], "no"),
        ("Tension: ", ["yes", "no"], "yes"),
    ]
    lines = [_line(label, options, chosen, marks=marks, leading=leading, gap=gap) for label, options, chosen in fields]
    found = told(FORM.format(lines="\n".join(lines)), "gap", "glide", "ends", "peripheral", "tension")
    truth = {"gap": "seen", "glide": "catching", "ends": "ragged", "peripheral": "absent", "tension": "present"}
    assert found["ring FDP"].items() <= truth.items()
    assert {"gap", "tension"} <= found["ring FDP"].keys()


@pytest.mark.parametrize("marks", [pair for pair in MARKS if pair[0] not in ("-", "__", "___")], ids="".join)
@pytest.mark.parametrize("leading", [True, False])
def test_none_ticked(marks: tuple[str, str], leading: bool) -> None:
    fields = [("Gap: ", ["none", "seen"]), ("Ends: ", ["clean", "ragged"]), ("Epitendinous: ", ["yes", "no"])]
    lines = [_line(label, options, None, marks=marks, leading=leading, gap="   ") for label, options in fields]
    assert told(FORM.format(lines="\n".join(lines)), "gap", "ends", "peripheral") == {}


@pytest.mark.parametrize(
    "line",
    [
        "FDP - cut - repaired - free",
        "Core: x 2 strands - 3-0 Prolene",
        "Splint: dorsal blocking, wrist ______, MP ______, IP ______",
        "Digital nerves  [x] radial intact   [x] ulnar intact",
        "Nerve  [ ] intact [x] cut      [x] intact [ ] cut",
    ],
)
def test_no_field_of_this_kind(line: str) -> None:
    assert ticked_lines(line, []) == []


def test_a_field_gives_back_its_words() -> None:
    text = "Gap: none [ ]  seen [x]"
    (field,) = ticked_lines(text, [])
    aside = [text[a:b].strip() for a, b in field.set_aside]
    assert [words for words in aside if words] == ["[ ]", "none", "[x]"]


@pytest.mark.parametrize("mark", [": ", "? ", "   ", " - "])
def test_an_answer_above_the_next_label(mark: str) -> None:
    lines = "\n".join(
        f"{label}{mark}{answer}" for label, answer in [("Bulky", "no"), ("Tension", "no"), ("Gap", "yes")]
    )
    found = told(FORM.format(lines=lines), "gap", "tension")
    assert found == {"ring FDP": {"tension": "none", "gap": "seen"}}


@pytest.mark.parametrize("above", ["Complications: no", "Epitendinous: no"])
def test_no_is_of_its_own_line(above: str) -> None:
    assert told(FORM.format(lines=f"{above}\nGap: 1 mm"), "gap", "gap_mm") == {"ring FDP": {"gap": "seen", "gap_mm": 1}}


@pytest.mark.parametrize(
    ("line", "mechanism"),
    [
        ("Mechanism          knife [ ] glass [ ] saw [x] crush [ ] other ____", "saw"),
        ("Mechanism: knife [ ] crush [ ] bite [x] blast [ ] other (____)", "bite"),
        ("Mechanism: [ ] knife [x] crush [ ] saw [ ] other ____", "crush"),
    ],
)
def test_a_line_to_fill_in_behind_the_last_box(line: str, mechanism: str) -> None:
    """'Other ____' has no box of its own, and does not turn the others round."""
    assert told(FORM.format(lines=line), "mechanism", group="operation") == {"": {"mechanism": mechanism}}
