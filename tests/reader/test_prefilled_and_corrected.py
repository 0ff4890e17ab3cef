"""Forms filled in beforehand and put right in words: 'The finger is the little one, not the middle'."""

from reader_sentences import each, told

FORM = "Digit:   Middle\nZone:    II\nTendon:  FDP\nCore suture:   3-0 Ethibond\n"


def test_the_finger_itself() -> None:
    words = FORM + "The finger is the little one, not the middle, and the level is zone II. FDP was cut through."
    assert set(told(words)) == {"small FDP"}
    other = FORM + "The digit was the ring finger and not the middle: FDP was cut through under A3."
    assert set(told(other)) == {"ring FDP"}


def test_no_correction() -> None:
    words = "Middle FDP divided. Small FDP divided. The finger that caught is the little one, not the middle."
    assert {"middle FDP", "small FDP"} <= set(told(words))


def test_the_choice_behind_an_arrow() -> None:
    words = "Ring FDP repaired.\nRehab: [early active] [early passive] [immobilise] -> early passive chosen, from day 4"
    assert told(words, group="aftercare")[""]["programme"] == "early passive"
    other = "Ring FDP repaired.\nSplint: [volar] [dorsal blocking] => dorsal blocking"
    assert told(other, group="aftercare")[""]["splint"] == "dorsal blocking"


def test_a_box_of_sutures() -> None:
    words = "Ring FDP cut. The suture was 4-0 Ethibond since the box of 3-0 was empty."
    assert each(words, "size") == {"ring FDP": "4-0"}
    assert not each("Ring FDP repaired. The box for gap was empty.", "gap")


def test_half_of_a_cut_end() -> None:
    words = "Ring FDP and FDS cut. FDS removed. Cut surfaces were chewed on the ulnar half and pared by 2 mm."
    assert "ring FDS ulnar" not in told(words)
    assert "ring FDS radial" not in told("Ring FDS cut. The ends were ragged in their radial half.")
    assert each("Ring FDS: ulnar half ragged and excised.", "treatment") == {"ring FDS ulnar": "excised"}


def test_removed_in_whole() -> None:
    assert not each("Ring finger. Superficialis was removed in whole.", "extent")
    assert each("Ring finger. Superficialis was whole.", "extent") == {"ring FDS": "intact"}
    assert not each("Index finger. FDS was taken away in whole.", "extent")


def test_thickness_and_space() -> None:
    assert each("Ring FDP repaired. Afterwards the tendon was no thicker than before.", "bulk") == {"ring FDP": "none"}
    assert each("Ring FDP repaired. It glided and no space showed.", "gap") == {"ring FDP": "none"}
    assert not each("Ring FDP repaired. Nothing thicker than 4-0 was at hand.", "bulk")


def test_zones_in_words() -> None:
    words = "Left ring finger FDP cut. Zone: two. Kessler 4-0."
    assert each(words, "zone") == {"ring FDP": "II"}
