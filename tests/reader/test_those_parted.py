"""'Both transected superficiales were sewn': of those told to be cut through, not of a third that was nicked."""

import pytest
from reader_sentences import each, told

H = (
    "Left hand. The profundi of the index, middle and ring fingers and the superficialis tendons of the index and "
    "middle were transected; the superficialis of the ring was cut by a quarter. "
)


@pytest.mark.parametrize(
    "words",
    [
        "Both transected superficialis tendons were repaired with a Kessler, two strands of 3-0 nylon.",
        "The two severed superficialis tendons were sewn with two strands of 3-0 nylon.",
    ],
)
def test_the_nicked_one_is_not_among_them(words: str) -> None:
    note = H + words + " The ring superficialis was trimmed."
    assert each(note, "strands") == {"index FDS": 2, "middle FDS": 2}
    ring = told(note, "extent", "extent_percent", "treatment")["ring FDS"]
    assert ring == {"extent": "partial", "extent_percent": 25, "treatment": "trimmed"}


@pytest.mark.parametrize("verb", ["transected", "divided"])
def test_the_one_of_another_finger(verb: str) -> None:
    note = (
        f"The index FDS was {verb}; the ring FDS was cut through a third of its width. "
        f"The {verb} FDS was repaired with 4-0 nylon. The ring FDS was trimmed."
    )
    shown = told(note, "extent", "treatment")
    assert shown["ring FDS"] == {"extent": "partial", "treatment": "trimmed"}
    assert shown["index FDS"]["extent"] == "complete"


@pytest.mark.parametrize(
    "words",
    [
        "Only these two profundi were given an epitendinous, 6-0 Prolene, running.",
        "The two profundi got a peripheral suture, 6-0 nylon.",
    ],
)
def test_a_thread_told_behind_a_count(words: str) -> None:
    note = (
        "Right hand: index, middle and small fingers. FDP index and FDP middle divided, four strands of 3-0 Ethibond "
        f"each. {words} FDP small: avulsed, reinserted with a pull-out over a button, 3-0 Prolene."
    )
    assert each(note, "peripheral") == {"index FDP": "present", "middle FDP": "present"}


@pytest.mark.parametrize("of", ["both superficialis tendons", "the superficialis tendons"])
def test_without_any_is_of_its_own_clause(of: str) -> None:
    note = (
        f"{H}All three profundi were repaired with four strands of 3-0 nylon and all three were then finished with a "
        f"running 6-0; {of} of the index and middle were repaired with 3-0 nylon, without any epitendinous suture."
    )
    shown = each(note, "peripheral")
    assert {shown[f"{d} FDP"] for d in ("index", "middle", "ring")} == {"present"}
    assert shown["index FDS"] == "absent"


@pytest.mark.parametrize("words", ["Passive tenodesis at the wrist", "Wrist tenodesis, fingers relaxed"])
def test_tenodesis_as_a_test(words: str) -> None:
    note = f"Left index. FDP divided, repaired with 3-0 nylon. {words}: the index FDP repair did not gap."
    assert told(note, "treatment", "gap") == {"index FDP": {"treatment": "repaired", "gap": "none"}}
