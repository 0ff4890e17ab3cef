"""Sutures taken over from another tendon: tendon by tendon, the thread alone, or from the tendon of the same kind."""

import pytest
from reader_sentences import Shown, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index and ring fingers. FDP and FDS of both completely divided. Index FDP repaired with a "
            "four-strand cruciate of 3-0 Ethibond. Index FDS repaired with a 4-0 Prolene Kessler. The ring "
            "finger tendons were repaired in the same way as those of the index finger.",
            {
                "index FDP": {"strands": 4, "size": "3-0", "material": "braided polyester"},
                "ring FDP": {"strands": 4, "size": "3-0", "material": "braided polyester"},
                "index FDS": {"strands": 2, "size": "4-0", "material": "polypropylene"},
                "ring FDS": {"strands": 2, "size": "4-0", "material": "polypropylene"},
            },
        ),
        (
            "Right index and ring fingers. FDP and FDS of both completely divided. Index FDP repaired with a "
            "four-strand cruciate of 3-0 Ethibond. Index FDS repaired with a 4-0 Prolene Kessler. The "
            "tendons of the ring finger were dealt with like those of the index.",
            {
                "index FDP": {"strands": 4, "size": "3-0", "material": "braided polyester"},
                "ring FDP": {"strands": 4, "size": "3-0", "material": "braided polyester"},
                "index FDS": {"strands": 2, "size": "4-0", "material": "polypropylene"},
                "ring FDS": {"strands": 2, "size": "4-0", "material": "polypropylene"},
            },
        ),
    ],
)
def test_each_tendon_like_its_own(note: str, expected: Shown) -> None:
    assert told(note, "strands", "size", "material") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index and ring fingers. FDP and FDS of both completely divided. Index FDP repaired with a "
            "four-strand cruciate of 3-0 Ethibond. Index FDS repaired with a 4-0 Prolene Kessler. Ring FDP "
            "as index FDP.",
            {
                "index FDP": {"strands": 4, "size": "3-0", "material": "braided polyester"},
                "ring FDP": {"strands": 4, "size": "3-0", "material": "braided polyester"},
                "index FDS": {"strands": 2, "size": "4-0", "material": "polypropylene"},
            },
        ),
        (
            "Right index and ring fingers. FDP and FDS of both completely divided. Index FDP repaired with a "
            "four-strand cruciate of 3-0 Ethibond. Index FDS repaired with a 4-0 Prolene Kessler. RF: FDP ditto.",
            {
                "index FDP": {"strands": 4, "size": "3-0", "material": "braided polyester"},
                "ring FDP": {"strands": 4, "size": "3-0", "material": "braided polyester"},
                "index FDS": {"strands": 2, "size": "4-0", "material": "polypropylene"},
            },
        ),
        (
            "Right index and ring fingers. FDP and FDS of both completely divided. Index FDP repaired with a "
            "four-strand cruciate of 3-0 Ethibond. Index FDS repaired with a 4-0 Prolene Kessler. Ring FDP: "
            "same as index FDP.",
            {
                "index FDP": {"strands": 4, "size": "3-0", "material": "braided polyester"},
                "ring FDP": {"strands": 4, "size": "3-0", "material": "braided polyester"},
                "index FDS": {"strands": 2, "size": "4-0", "material": "polypropylene"},
            },
        ),
    ],
)
def test_a_tendon_like_that_of_another_finger(note: str, expected: Shown) -> None:
    assert told(note, "strands", "size", "material") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index and ring fingers. FDP of both completely divided. Index FDP repaired with a "
            "six-strand Savage of 3-0 Ethibond. Ring FDP: two-strand Kessler, same thread.",
            {
                "index FDP": {"strands": 6, "stitch": "savage", "size": "3-0", "material": "braided polyester"},
                "ring FDP": {"strands": 2, "stitch": "kessler", "size": "3-0", "material": "braided polyester"},
            },
        ),
        (
            "Right index and ring fingers. FDP of both completely divided. Index FDP repaired with a "
            "six-strand Savage of 3-0 Ethibond. The ring FDP got a four-strand cruciate of the same material.",
            {
                "index FDP": {"strands": 6, "stitch": "savage", "size": "3-0", "material": "braided polyester"},
                "ring FDP": {"strands": 4, "stitch": "cruciate", "size": "3-0", "material": "braided polyester"},
            },
        ),
        (
            "Right index and ring fingers. FDP of both completely divided. Index FDP repaired with a "
            "six-strand Savage of 3-0 Ethibond. Ring FDP: a modified Kessler in the same gauge.",
            {
                "index FDP": {"strands": 6, "stitch": "savage", "size": "3-0", "material": "braided polyester"},
                "ring FDP": {
                    "strands": 2,
                    "stitch": "modified kessler",
                    "size": "3-0",
                    "material": "braided polyester",
                },
            },
        ),
    ],
)
def test_the_same_thread_is_not_the_same_stitch(note: str, expected: Shown) -> None:
    assert told(note, "strands", "stitch", "size", "material") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index and ring fingers. FDP of both completely divided. Index FDP repaired with a "
            "six-strand Savage of 3-0 Ethibond. That of the ring finger was sewn in the same way.",
            {"index FDP": 6, "ring FDP": 6},
        ),
        (
            "Right index and ring fingers. FDP of both completely divided. Index FDP repaired with a "
            "six-strand Savage of 3-0 Ethibond. The ring FDP was left, and the skin was closed in the same way.",
            {"index FDP": 6},
        ),
    ],
)
def test_one_finger_only_is_the_same(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["strands"] for entry, facts in told(note, "strands").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right hand. Ring FDP as well as small FDP completely divided.",
            {"ring FDP": "complete", "small FDP": "complete"},
        ),
        (
            "Right hand. Small FDP completely divided, ring FDP too.",
            {"small FDP": "complete", "ring FDP": "complete"},
        ),
        (
            "Right hand. The profundus of the ring finger was completely divided, that of the small finger likewise.",
            {"ring FDP": "complete", "small FDP": "complete"},
        ),
        (
            "Right hand. The ring FDP and that of the little finger were completely divided.",
            {"ring FDP": "complete", "small FDP": "complete"},
        ),
    ],
)
def test_as_well_joins_and_as_compares(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected
