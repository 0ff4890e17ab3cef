"""Notes of a wrist, translated: Latin nerves, both carpal flexors, the carpal canal, lists behind a state."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "words", ["Both wrist flexors intact.", "Not hurt: profundus of 3rd finger, both carpal flexors."]
)
def test_both_wrist_flexors(words: str) -> None:
    extents = each("Wrist. PL cut. " + words, "extent")
    assert (extents["FCR"], extents["FCU"]) == ("intact", "intact")


def test_cut_wrist_flexors_are_not_both_of_them_for_ever() -> None:
    assert each("Wrist. FCR and FCU cut through. Both wrist flexors repaired.", "extent")["FCR"] == "complete"


def test_latin_nerves_and_arteries() -> None:
    words = "Wrist. Nervus medianus cut through. Arteria radialis and nervus ulnaris intact."
    assert each(words, "extent", group="injuries") == {
        "median nerve": "complete",
        "radial artery": "intact",
        "ulnar nerve": "intact",
    }


def test_bundles_of_a_nerve_are_no_neurovascular_bundles() -> None:
    words = "FDP index cut. Median nerve: both ends trimmed to healthy bundles, sutured with 9-0."
    assert not [name for name in told(words, group="injuries") if "digital" in name]


@pytest.mark.parametrize(
    ("words", "state"),
    [("Carpal canal opened.", "released"), ("Carpal tunnel roof opened half way.", "vented")],
)
def test_carpal_canal(words: str, state: str) -> None:
    assert each("Wrist. FCR cut. " + words, "finding", group="pulleys") == {"flexor retinaculum": state}


@pytest.mark.parametrize("label", ["Interrupted are", "Divided were", "Cut through"])
def test_list_behind_what_happened(label: str) -> None:
    words = f"Wrist. {label}: flexor digitorum superficialis of the 3rd and 4th finger, palmaris longus."
    assert each(words, "extent") == dict.fromkeys(("middle FDS", "ring FDS", "PL"), "complete")


def test_an_interrupted_suture_is_no_cut() -> None:
    assert "extent" not in told("FDP of the index repaired. Interrupted epitendinous sutures.").get("index FDP", {})


def test_a_label_before_all_fingers() -> None:
    words = "Wrist. Cut: FDS middle, FDS ring, PL. Intact: FDP all fingers, FCR, FCU."
    whole = {name for name, value in each(words, "extent").items() if value == "intact"}
    assert whole == {"index FDP", "middle FDP", "ring FDP", "small FDP", "FCR", "FCU"}


def test_by_third_is_no_finger() -> None:
    assert "middle FDP" not in told("Profundus of the 2nd finger by third: only a running stitch of 5-0 Prolene.")
