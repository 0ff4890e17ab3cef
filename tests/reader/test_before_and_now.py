"""What was done at an earlier operation, told beside what was found at this one."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "pulley",
    [
        "A4, vented at the first operation, was now contracted and I took it out.",
        "A4, opened at the previous operation, was thick and had to be excised.",
    ],
)
def test_an_aside_on_the_first_operation(pulley: str) -> None:
    assert each(f"Index finger. FDP repaired with 3-0 Ethibond. {pulley}", "finding", group="pulleys") == {
        "index A4": "excised"
    }


@pytest.mark.parametrize(
    "old", ["Old vent in A4 scarred, not reopened.", "The previous release of A4 had scarred over."]
)
def test_a_pulley_opened_before_was_not_opened_today(old: str) -> None:
    assert told(f"Ring finger. FDP ruptured, sewn again with 3-0 Ethibond. {old}", group="pulleys") == {}


@pytest.mark.parametrize(
    "whole", ["FDS intact, its old repair left alone.", "FDS whole, its previous repair sound and not touched."]
)
def test_a_tendon_whole_with_its_old_repair(whole: str) -> None:
    note = f"Ring finger. FDP ruptured, sewn again with 3-0 Ethibond. {whole}"
    assert each(note, "extent")["ring FDS"] == "intact"


STORY = (
    "Right hand. Re-rupture of the ring FDP. {head}: both tendons had been sewn elsewhere, three weeks before, with a "
    "two-strand Kessler.\n"
    "Through the old scar. FDP ruptured completely, ends frayed. A2 in one piece.\n"
    "Core: four strands of 3-0 Ethibond.\n"
)


@pytest.mark.parametrize("head", ["History", "Background"])
def test_a_story_within_a_line_ends_with_its_line(head: str) -> None:
    note = STORY.format(head=head)
    assert told(note, "extent", "ends") == {"ring FDP": {"extent": "complete", "ends": "ragged"}}
    assert each(note, "finding", group="pulleys") == {"ring A2": "intact"}


@pytest.mark.parametrize("head", ["History", "Background"])
def test_a_story_on_lines_of_its_own_goes_on(head: str) -> None:
    note = f"{head}: he fell on a bottle.\nThe FDP had been repaired elsewhere with two strands.\n"
    assert told(note, "strands") == {}


DASHES = """Operation - exploration of the ring finger for scar; primary FDP repair little finger
Story - {story}

Little. Profundus cut through. Core - 4 strands, 3-0 Ethibond.
"""


@pytest.mark.parametrize("story", ["glass, yesterday.", "a knife slipped, zone 2."])
def test_headings_with_dashes(story: str) -> None:
    assert each(DASHES.format(story=story), "treatment") == {"small FDP": "repaired"}


@pytest.mark.parametrize("found", ["FDP seen, intact.", "Both tendons of the index intact."])
def test_both_pulleys_of_a_paragraph(found: str) -> None:
    note = f"Left index finger. Sheath opened by the knife between A2 and A4. {found} Both pulleys intact."
    assert each(note, "finding", group="pulleys") == {"index A2": "intact", "index A4": "intact"}


def test_both_pulleys_of_three_named() -> None:
    note = "Left index finger. Sheath opened from A1 to A3, distal to it A4. Zone 2. Both pulleys intact."
    assert told(note, group="pulleys") == {}
