"""Remarks that reach a tendon they are not made of: ends of a nick, gaps of a tenodesis, locks of a plain stitch."""

from reader_sentences import each


def test_ends_are_of_tendons_cut_through() -> None:
    note = (
        "Index FDP completely divided, middle FDP cut by 30 %. The tendon ends were clean in both fingers. "
        "Index FDP repaired with 3-0 Ethibond. The middle FDP was trimmed."
    )
    assert each(note, "ends") == {"index FDP": "clean"}
    note = (
        "FDS IF + MF -> 100%. FDP MF -> 30%. Ends of the 100% tendons clean. "
        "FDS IF + MF -> modified Kessler, 3/0 Ethibond. FDP MF -> trimmed."
    )
    assert each(note, "ends") == {"index FDS": "clean", "middle FDS": "clean"}


def test_edges_are_of_a_tendon_cut_in_part_too() -> None:
    note = "Index FDP completely divided, index FDS cut by 30 %. All edges clean. FDP repaired 3-0. FDS was left."
    assert each(note, "ends") == {"index FDP": "clean", "index FDS": "clean"}


def test_a_tenodesis_is_no_repair_that_gaps() -> None:
    note = (
        "Ring finger. FDP: distal stump tenodesed to the middle phalanx with 3-0 Ethibond. "
        "FDS: repaired with a Becker of 3-0 Prolene. Check: the repair did not gap."
    )
    assert each(note, "gap") == {"ring FDS": "none"}


def test_locks_are_of_the_core_that_locks() -> None:
    note = (
        "Middle finger. FDP repaired with a locked cruciate of 3-0 Ethibond. "
        "FDS repaired with a modified Kessler of 4-0. "
        "The locks of the middle finger repair measured 2 mm."
    )
    assert each(note, "lock_mm") == {"middle FDP": (2, 2)}


def test_a_pulley_told_after_a_finger_only_seen() -> None:
    note = (
        "PROCEDURES: Repair of FDP, small finger.\n\n"
        "FINDINGS: FDP of the small finger was cut through and repaired with 3-0 Ticron. "
        "Flexor tendons of the ring finger lay exposed and whole. The nerve was bruised. It was freed of clot. "
        "No triggering at the A1 pulley, which I did not open."
    )
    assert each(note, "finding", "pulleys") == {"small A1": "intact"}


def test_a_pulley_opened_before_and_not_touched_today() -> None:
    story = "Indication: Primary repair on 2031-12-20 with A4 vented; it ruptured.\n\nProcedure: "
    operation = "Ring finger FDP repaired with 3-0 Ethibond, eight strands. "
    for told in ("A4 was not touched today.", "A4 was left alone this time."):
        assert each(f"{story}{operation}{told}", "finding", "pulleys") == {}
    assert each(f"{operation}A4 was not touched today.", "finding", "pulleys") == {"ring A4": "intact"}
