"""Lines broken in mid-sentence where the next word would still have fitted, as on a fax typed again."""

from reader_sentences import told

_HEAD = "Right middle finger. FDP severed. "


def test_running_text() -> None:
    words = (
        "Done - tourniquet 220, 50 min. Long washout, 3 litres. Crushed tendon cut\n"
        "off, 3 mm in total. Evans 4 strand stitch with 4-0 Ethibond, 6-0 nylon\n"
        "running around the outside. Repair a bit bulky. The remnant was opened all along its\n"
        "whole length as it caught there, and after that it ran freely on passive bending.\n"
        "No gap."
    )
    found = told(_HEAD + "\n" + words, "trimmed_mm", "peripheral_pattern", "stitch")["middle FDP"]
    assert found == {"trimmed_mm": 3, "peripheral_pattern": "running", "stitch": "evans"}


def test_tails_led_out_of_the_nail() -> None:
    for verb in ("brought the two tails out through the nail plate", "drew both limbs through the distal phalanx"):
        words = f"FDP avulsed. I ran a 3/0 Prolene up and down the tendon end and {verb} on straight needles as a "
        found = told(
            f"Left ring finger. {words}pull-out suture, tied over a padded button.", "size", "peripheral", "stitch"
        )
        assert found == {"ring FDP": {"size": "3-0", "stitch": "pull-out"}}


def test_lines_of_a_list() -> None:
    words = "FDP cut. FDS intact\nrunning water only\nCore 3-0 Ethibond cruciate"
    assert "peripheral" not in told("Left ring finger.\n" + words)["ring FDP"]
