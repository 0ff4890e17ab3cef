"""What is told and yet no finding: passages taken back, asides in brackets, plans, hopes and other surgeons' habits."""

import pytest
from reader_sentences import Shown, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "The FDP was repaired with a six-strand Savage of 3-0 Ethibond.\n"
            "\n"
            "The template above does not apply here.\n"
            "\n"
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n",
            {"ring FDP": {"strands": 2, "stitch": "kessler", "size": "4-0"}},
        ),
        (
            "Core suture: eight strands of 3-0 Fiberwire, locking.\n"
            "\n"
            "Please disregard the paragraph above.\n"
            "\n"
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n",
            {"ring FDP": {"strands": 2, "stitch": "kessler", "size": "4-0"}},
        ),
        (
            "The profundus was repaired with six strands of 3-0 Ethibond.\n"
            "\n"
            "Ignore the macro text above, it was unedited.\n"
            "\n"
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n",
            {"ring FDP": {"strands": 2, "stitch": "kessler", "size": "4-0"}},
        ),
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "The splint fits well above the wrist.\n",
            {"ring FDP": {"strands": 2, "stitch": "kessler", "size": "4-0"}},
        ),
    ],
)
def test_a_passage_its_writer_takes_back(note: str, expected: Shown) -> None:
    assert told(note, "strands", "stitch", "size") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "Pulleys A2 and A4 of the ring finger were intact.\n"
            "\n"
            "The wording above does not fit this operation.\n"
            "\n"
            "A2 of the ring finger was excised.\n",
            {"ring A2": "excised"},
        ),
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "A2 and A4 of the ring finger were preserved.\n"
            "\n"
            "The above is boilerplate and should be deleted.\n",
            {},
        ),
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "A2 of the ring finger was preserved.\n"
            "\n"
            "The dressing fits well and is kept above the wrist.\n",
            {"ring A2": "intact"},
        ),
    ],
)
def test_a_pulley_of_a_passage_taken_back(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["finding"] for entry, facts in told(note, "finding", group="pulleys").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "(Registrar asks: why not more? Six strands of 3-0 Ethibond in a Savage would be safer.)\n",
            {"ring FDP": {"strands": 2, "stitch": "kessler", "size": "4-0"}},
        ),
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "(Question from the fellow: is this enough? An eight-strand core of 3-0 Fiberwire was shown last "
            "week.)\n",
            {"ring FDP": {"strands": 2, "stitch": "kessler", "size": "4-0"}},
        ),
    ],
)
def test_an_aside_in_brackets_over_several_sentences(note: str, expected: Shown) -> None:
    assert told(note, "strands", "stitch", "size") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Plan A = six-strand Savage of 3-0 Ethibond to FDP.\n"
            "\n"
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n",
            {"ring FDP": {"strands": 2, "stitch": "kessler", "size": "4-0"}},
        ),
        (
            "Plan B: sew the ring FDP with eight strands of 3-0 Fiberwire.\n"
            "\n"
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n",
            {"ring FDP": {"strands": 2, "stitch": "kessler", "size": "4-0"}},
        ),
        (
            "Booking form: FDP repair with four strands of 3-0 Ethibond.\n"
            "\n"
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n",
            {"ring FDP": {"strands": 2, "stitch": "kessler", "size": "4-0"}},
        ),
        (
            "Plan as consented: six-strand core of 3-0 Ethibond.\n"
            "\n"
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n",
            {"ring FDP": {"strands": 2, "stitch": "kessler", "size": "4-0"}},
        ),
    ],
)
def test_a_plan_is_no_operation(note: str, expected: Shown) -> None:
    assert told(note, "strands", "stitch", "size") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "Some surgeons prefer six strands of 3-0 Ethibond.\n",
            {"ring FDP": {"strands": 2, "stitch": "kessler", "size": "4-0"}},
        ),
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "Many would use a four-strand cruciate of 3-0 for the profundus.\n",
            {"ring FDP": {"strands": 2, "stitch": "kessler", "size": "4-0"}},
        ),
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "I would have liked a six-strand core of 3-0 Ethibond.\n",
            {"ring FDP": {"strands": 2, "stitch": "kessler", "size": "4-0"}},
        ),
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "A six-strand Savage is our usual repair.\n",
            {"ring FDP": {"strands": 2, "stitch": "kessler", "size": "4-0"}},
        ),
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "A four-strand cruciate was the intention.\n",
            {"ring FDP": {"strands": 2, "stitch": "kessler", "size": "4-0"}},
        ),
    ],
)
def test_what_others_do_is_no_finding(note: str, expected: Shown) -> None:
    assert told(note, "strands", "stitch", "size") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "We hope that the repair glides freely under A2.\n",
            {},
        ),
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "An active test had been spoken of.\n",
            {},
        ),
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "An active test with the patient awake was spoken of but the block was too deep.\n",
            {},
        ),
    ],
)
def test_a_hope_or_a_talk_is_no_finding(note: str, expected: Shown) -> None:
    assert told(note, "gap", "glide", "test") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "Venting of A2 had been spoken of.\n",
            {},
        ),
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "Excision of A4 was never on the table.\n",
            {},
        ),
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "Venting A2 had been the intention.\n",
            {},
        ),
    ],
)
def test_a_pulley_spoken_of_is_not_opened(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["finding"] for entry, facts in told(note, "finding", group="pulleys").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "A lady I did last month had six strands of 3-0 Ethibond in her FDP.\n",
            {"ring FDP": {"strands": 2, "stitch": "kessler", "size": "4-0"}},
        ),
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "A patient I assisted with in spring had an eight-strand FDP repair of 3-0 Fiberwire.\n",
            {"ring FDP": {"strands": 2, "stitch": "kessler", "size": "4-0"}},
        ),
        (
            "Right ring finger. FDP completely divided, repaired with a two-strand Kessler of 4-0 Prolene.\n"
            "\n"
            "The one I did last year took six strands of 3-0.\n",
            {"ring FDP": {"strands": 2, "stitch": "kessler", "size": "4-0"}},
        ),
    ],
)
def test_another_patient_is_not_this_one(note: str, expected: Shown) -> None:
    assert told(note, "strands", "stitch", "size") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "CLINIC LETTER\n"
            "FDS and FDP of the ring finger thought to be completely divided.\n"
            "\n"
            "FINDINGS\n"
            "Ring FDP 40% cut. FDS intact.\n",
            {"ring FDP": "partial", "ring FDS": "intact"},
        ),
        (
            "REFERRAL LETTER\nSmall FDP intact.\n\nFINDINGS\nSmall FDP completely divided.\n",
            {"small FDP": "complete"},
        ),
        (
            "ED EXTRACT\nIndex FDP intact, FDS cut.\n\nOPERATION\nIndex FDP completely divided, FDS intact.\n",
            {"index FDP": "complete", "index FDS": "intact"},
        ),
    ],
)
def test_an_extract_from_the_clinic_is_no_finding(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. The FDS had been cut out in March. Today the FDP was repaired with 4-0 Prolene.",
            {"ring FDP": {"treatment": "repaired"}},
        ),
        (
            "Left ring finger. The FDS had been repaired in October elsewhere. FDP completely divided, "
            "repaired with 4-0 Prolene.",
            {"ring FDP": {"extent": "complete", "treatment": "repaired"}},
        ),
        (
            "Left ring finger. Small FDP sewn elsewhere. Ring FDP completely divided, repaired with 4-0 Prolene.",
            {"ring FDP": {"extent": "complete", "treatment": "repaired"}},
        ),
        (
            "Left ring finger. Small FDP mended privately two years ago. Ring FDP completely divided, "
            "repaired with 4-0 Prolene.",
            {"ring FDP": {"extent": "complete", "treatment": "repaired"}},
        ),
    ],
)
def test_an_earlier_operation(note: str, expected: Shown) -> None:
    assert told(note, "treatment", "extent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger, left. FDP repaired three weeks ago. On exploration the repair had parted.",
            {"ring FDP": "complete"},
        ),
        (
            "Small finger, right. FDP was sutured last month. Today the old suture line has given way.",
            {"small FDP": "complete"},
        ),
        (
            "Index finger, right. FDP was sewn in May. The old repair had not given way.",
            {},
        ),
        (
            "Index finger, right. FDP was repaired in May. The old repair had ruptured.",
            {"index FDP": "complete"},
        ),
        (
            "Index finger, right. FDP was repaired in May. The previous repair had come apart.",
            {"index FDP": "complete"},
        ),
    ],
)
def test_an_earlier_repair_found_parted(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger, left. Rerupture. The FDS repair was intact. The FDP was repaired with 3-0 Ethibond.",
            {"ring FDP": "repaired"},
        ),
        (
            "Middle finger, left. Superficialis repair holding, profundus repair ruptured and resutured with "
            "3-0 Prolene.",
            {"middle FDP": "repaired"},
        ),
    ],
)
def test_an_earlier_repair_that_holds_is_not_sewn_now(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["treatment"] for entry, facts in told(note, "treatment").items()}
    assert found == expected
