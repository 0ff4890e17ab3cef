"""The checker of resource files: our own files pass, and every kind of fault is named with file, entry and mend."""

import shutil
import tomllib
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

from notereader.commands.resources import resource_faults
from notereader.vocabulary import checking_words, resource_folder
from notereader.vocabulary.checking import KNOWN_FILES, check_resources
from notereader.vocabulary.faults import EntryFault


@pytest.fixture(autouse=True, scope="module")
def _each_file_once() -> Iterator[None]:
    """Parse a text and look at a word once only: all but one file are the same in every test here."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(tomllib, "loads", cache(tomllib.loads))
        patch.setattr(checking_words, "_never_matched", cache(checking_words._never_matched))
        yield


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A copy of the resource files, to be broken."""
    return shutil.copytree(resource_folder(), tmp_path / "resources")


def edit(folder: Path, name: str, old: str, new: str) -> None:
    """Change one place of a file; fails where the place is not there."""
    path = folder / name
    text = path.read_text(encoding="utf-8")
    assert old in text, f"{name} no longer holds {old!r}"
    path.write_text(text.replace(old, new, 1), encoding="utf-8")


def add(folder: Path, name: str, text: str) -> None:
    """Add entries at the end of a file."""
    with (folder / name).open("a", encoding="utf-8") as stream:
        stream.write("\n" + text)


def found(folder: Path) -> list[str]:
    """Return the faults as they are printed."""
    return [str(fault) for fault in check_resources(folder)]


def test_our_own_files_have_no_fault() -> None:
    assert [str(fault) for fault in resource_faults(resource_folder())] == []


def test_every_file_is_looked_at(folder: Path) -> None:
    assert {path.name for path in folder.glob("*.toml")} == set(KNOWN_FILES)


@pytest.mark.parametrize("name", KNOWN_FILES)
def test_a_missing_file(folder: Path, name: str) -> None:
    (folder / name).unlink()
    assert f"{name}: the file: it is missing. To mend it: put it back into {folder}." in found(folder)


@pytest.mark.parametrize("name", KNOWN_FILES)
def test_a_line_that_is_no_toml(folder: Path, name: str) -> None:
    add(folder, name, 'words = ["no end\n')
    faults = [fault for fault in found(folder) if fault.startswith(f"{name}: the file: not valid TOML")]
    assert len(faults) == 1
    assert "line" in faults[0]
    assert "mend that line" in faults[0]


def test_a_file_that_is_not_utf_8(folder: Path) -> None:
    (folder / "cues.toml").write_bytes(b'[cue.negated]\nwords = ["n\xe9ant"]\n')
    assert any("cues.toml: the file: it is not UTF-8 at byte" in fault for fault in found(folder))


def test_a_file_nobody_reads(folder: Path) -> None:
    (folder / "stitch.toml").write_text("")
    assert (
        "stitch.toml: the file: no part of the program reads it. To mend it: move it away or mend its name."
        in found(folder)
    )


# What is added to a file, and what is then said. Each is a slip that somebody who adds to a file may make.
SLIPS = [
    # stitches
    (
        "stitches.toml",
        '[[stitch]]\nname = "windmill"\nsource = "none"\n',
        'stitches.toml: stitch "windmill": it is no value of repairs.stitch.',
    ),
    (
        "stitches.toml",
        '[[stitch]]\nname = "cruciate"\nsource = "none"\n',
        'stitches.toml: stitch "cruciate": it is entered twice. To mend it: put both into one entry.',
    ),
    (
        "stitches.toml",
        '[[stitch]]\nname = "other"\naliases = ["savage"]\nsource = "none"\n',
        'stitches.toml: stitch "savage" and "other": \'savage\' stands under both.',
    ),
    (
        "stitches.toml",
        '[[stitch]]\nname = "other"\nstrnads = 4\nsource = "none"\n',
        "stitches.toml: stitch \"other\": 'strnads' is no key that is known here. To mend it: correct its spelling",
    ),
    ("stitches.toml", '[[stitch]]\nname = "other"\n', "stitches.toml: stitch \"other\": 'source' is missing."),
    (
        "stitches.toml",
        '[[stitch]]\nname = "other"\nstrands = 40\nsource = "none"\n',
        "stitches.toml: stitch \"other\": 'strands': input should be less than or equal to 16 (it is 40)",
    ),
    (
        "stitches.toml",
        '[[stitch]]\nname = "other"\nstrands = 3\nsource = "none"\n',
        'stitches.toml: stitch "other": 3 strands: core strands cross the cut in pairs.',
    ),
    (
        "stitches.toml",
        '[[stitch]]\nname = "other"\nhold = "tight"\nsource = "none"\n',
        "'hold': input should be 'locking' or 'grasping' (it is 'tight')",
    ),
    (
        "stitches.toml",
        '[[stitch]]\nname = "other"\naliases = ["Odd Stitch"]\nsource = "none"\n',
        "'Odd Stitch' has capitals, which count for nothing here.",
    ),
    ("stitches.toml", '[[stich]]\nname = "other"\n', "stitches.toml: [stich]: nothing here is read under this name."),
    ("stitches.toml", '[[stitch]]\nsource = "none"\n', "'name' is missing"),
    # materials
    (
        "materials.toml",
        '[[material]]\nname = "gold"\nwords = ["gold"]\nsource = "none"\n',
        'materials.toml: material "gold": it is no value of repairs.material.',
    ),
    (
        "materials.toml",
        '[[material]]\nname = "gold"\nwords = []\nsource = "none"\n',
        'materials.toml: material "gold": the list of words is empty.',
    ),
    (
        "materials.toml",
        '[[material]]\nname = "gold"\nwords = ["nylon"]\nsource = "none"\n',
        'materials.toml: material "nylon" and "gold": \'nylon\' stands under both.',
    ),
    # sizes
    (
        "sizes.toml",
        '[[size]]\nusp = "3"\nmetric = 6\nlow_mm = 0.55\nhigh_mm = 0.699\n',
        'sizes.toml: sizes "2" and "3": their diameters overlap.',
    ),
    (
        "sizes.toml",
        '[[size]]\nusp = "3-0"\nmetric = 6\nlow_mm = 0.6\nhigh_mm = 0.699\n',
        'sizes.toml: size "3-0": it is entered twice.',
    ),
    (
        "sizes.toml",
        '[[size]]\nusp = "3"\nmetric = 4\nlow_mm = 0.6\nhigh_mm = 0.699\n',
        'sizes.toml: sizes "2" and "3": the metric gauge does not rise.',
    ),
    (
        "sizes.toml",
        '[[size]]\nusp = "four"\nmetric = 6\nlow_mm = 0.6\nhigh_mm = 0.699\n',
        'sizes.toml: size "four": this is no USP size.',
    ),
    (
        "sizes.toml",
        '[[size]]\nusp = "3"\nmetric = 6\nlow_mm = 0.699\nhigh_mm = 0.6\n',
        'sizes.toml: size "3": low_mm is not below high_mm.',
    ),
    # fields
    ("fields.toml", '[repair.zone]\nlabel = "Zone"\nkind = "date"\n', "fields.toml: [repair]: there is no such group"),
    (
        "fields.toml",
        '[repairs.colour]\nlabel = "Colour"\nkind = "choice"\n',
        "[repairs.colour]: a choice needs values.",
    ),
    (
        "fields.toml",
        '[repairs.colour]\nlabel = "Colour"\nkind = "shade"\n',
        "[repairs.colour]: 'kind': input should be",
    ),
    (
        "fields.toml",
        '[repairs.width]\nlabel = "Width"\nkind = "number"\nlow = 9\nhigh = 2\n',
        "[repairs.width]: 'number' needs a low and a higher high.",
    ),
    (
        "fields.toml",
        '[repairs.colour]\nlabel = "Colour"\nkind = "choice"\nvalues = ["red", "red"]\n',
        "[repairs.colour]: a value stands there twice.",
    ),
    ("fields.toml", '[repairs.colour]\nlabel = " "\nkind = "date"\n', "[repairs.colour]: the label is empty."),
    ("fields.toml", '[repairs.colour]\nlabel = "Colour"\nkind = "date"\nlow = 1\n', "'date' takes no limits."),
    (
        "fields.toml",
        '[repairs.colour]\nlabel = "Colour"\nkind = "date"\nvalues = ["red"]\n',
        "'date' takes no list of values.",
    ),
    # terms
    ("anatomy.toml", '[pulley.A9]\nwords = ["a9"]\n', "anatomy.toml: [pulley.A9]: 'A9' is not one of the pulleys."),
    (
        "anatomy.toml",
        '[digit.toe]\nwords = ["toe"]\n',
        "[digit.toe]: 'toe' is not one of the digits. To mend it: use one of",
    ),
    ("anatomy.toml", '[zone.VI]\nwords = ["zone vi"]\n', "[zone.VI]: 'VI' is not one of the zones."),
    ("anatomy.toml", '[structure.skin]\nwords = ["skin"]\n', "[structure.skin]: 'skin' is not one of the structures."),
    ("findings.toml", '[glide.smooth]\nwords = ["smoothly"]\n', "[glide.smooth]: 'smooth' is not one of the glide."),
    (
        "care.toml",
        '[glide.restricted]\nwords = ["free glide"]\n',
        "care.toml: [glide.free] and [glide.restricted]: 'free glide' stands under both, and they exclude each other.",
    ),
    ("care.toml", "[tendon.FCR]\nwords = []\n", "care.toml: [tendon.FCR]: it has no words."),
    ("care.toml", '[tendon.FCR]\nwrods = ["fcr"]\n', "'wrods' is no key that is known here."),
    (
        "care.toml",
        '[tendon.FCR]\nwords = "fcr"\n',
        "[tendon.FCR]: 'words': it should be a list in brackets (it is 'fcr')",
    ),
    ("care.toml", '[tendon.FCR]\nwords = ["Radial Wrist Flexor"]\n', "'Radial Wrist Flexor' has capitals"),
    ("care.toml", '[tendon.FCR]\nexact = ["radial flexor"]\n', "'radial flexor' has no capitals. To mend it: move it"),
    ("care.toml", '[tendon.FCR]\nwords = ["radial  wrist flexor"]\n', "has a space too many."),
    ("care.toml", '[tendon.FCR]\nwords = ["radial\\nflexor"]\n', "holds a line break, a tab or a character"),
    ("care.toml", '[tendon.FCR]\nwords = ["radial\\u200bflexor"]\n', "holds a line break, a tab or a character"),
    ("care.toml", '[tendon.FCR]\nwords = [""]\n', "[tendon.FCR] words: '' is empty. To mend it: take it out."),
    ("care.toml", '[tendon.FCR]\nwords = ["fcr {which}"]\n', "looks like an unfilled place of a template"),
    ("care.toml", '[tendon.FCR]\nwords = ["..."]\n', "holds no letter and no figure."),
    (
        "care.toml",
        '[tendno.FCR]\nwords = ["fcr"]\n',
        "no part of the reader knows the kind 'tendno'. To mend it: write 'tendon'.",
    ),
    ("care.toml", "[tendon]\nFCR = 4\n", "care.toml: tendon: it is no table [kind.value]."),
    # word lists
    ("spelling.toml", "[more]\nwords = []\n", "spelling.toml: [more] words: it holds no words."),
    ("spelling.toml", '[more]\nwords = ["Capital"]\n', "spelling.toml: [more] words: 'Capital' has capitals"),
    # figures and names of the other rooms
    (
        "load.toml",
        '[[activity]]\ntendons = ["EDC"]\nsource = "none"\n',
        "activity number 9, tendons: 'EDC' is not one of the tendons.",
    ),
    ("timeline.toml", "[[window]]\nfrom_day = 4\n", "it holds figures and no source."),
    ("strength.toml", '[[size]]\nusp = ["4/0"]\nsource = "none"\n', "'4/0' is not one of the sizes."),
    ("strength.toml", '[[material]]\nname = ["gold"]\nsource = "none"\n', "'gold' is not one of the materials."),
    ("healing.toml", '[[absorbed]]\nmaterial = "gold"\nsource = "none"\n', "'gold' is not one of the materials."),
    ("needs.toml", '[[need]]\nscope = "any"\nfields = { colour = 3 }\n', "there is no field 'colour'."),
    ("needs.toml", '[[pulleys]]\ndigits = ["toe"]\nweights = { A9 = 1 }\n', "'A9' is not one of the pulleys."),
    (
        "owed.toml",
        '[[standard]]\nitems = [{ label = "x", elements = ["name"] }]\n',
        "'name' is not one of the elements.",
    ),
    ("audit.toml", '[[applies]]\ngroup = "repair"\nfields = ["zone"]\n', "'repair' is not one of the groups."),
]


@pytest.mark.parametrize(("name", "text", "says"), SLIPS, ids=[f"{name} {says[:40]}" for name, _, says in SLIPS])
def test_a_slip_is_named_with_its_mend(folder: Path, name: str, text: str, says: str) -> None:
    before = found(folder)
    add(folder, name, text)
    new = [fault for fault in found(folder) if fault not in before]
    hits = [fault for fault in new if says in fault]
    assert hits, f"expected: {says}\nfound: " + "\n".join(new)
    assert all(fault.startswith(f"{name}: ") and " To mend it: " in fault for fault in hits)


def test_a_value_of_the_record_that_lost_its_entry(folder: Path) -> None:
    edit(folder, "stitches.toml", 'name = "savage"', 'name = "savge"')
    faults = found(folder)
    assert any('stitch "savage": repairs.stitch has this value and no sound entry here' in fault for fault in faults)
    assert any('stitch "savge": it is no value of repairs.stitch' in fault for fault in faults)


def test_sizes_out_of_order(folder: Path) -> None:
    edit(folder, "sizes.toml", 'usp = "4-0"', 'usp = "swap"')
    edit(folder, "sizes.toml", 'usp = "3-0"', 'usp = "4-0"')
    edit(folder, "sizes.toml", 'usp = "swap"', 'usp = "3-0"')
    assert (
        'sizes.toml: sizes "3-0" and "4-0": they are out of order. To mend it: list the sizes finest first.'
        in found(folder)
    )


def test_sizes_whose_diameters_overlap(folder: Path) -> None:
    edit(folder, "sizes.toml", "high_mm = 0.199", "high_mm = 0.2")
    assert any('sizes "4-0" and "3-0": their diameters overlap' in fault for fault in found(folder))


def test_a_missing_group_of_fields(folder: Path) -> None:
    path = folder / "fields.toml"
    path.write_text(path.read_text(encoding="utf-8").replace("[aftercare.", "[elements.aftercare_"), encoding="utf-8")
    assert any("[aftercare]: the group has no fields" in fault for fault in found(folder))


def test_with_broken_fields_the_other_files_are_still_checked(folder: Path) -> None:
    add(folder, "fields.toml", "[broken\n")
    add(folder, "materials.toml", '[[material]]\nname = "nylon"\nwords = []\nsource = "none"\n')
    faults = found(folder)
    assert any(fault.startswith("fields.toml: the file") for fault in faults)
    assert any('material "nylon": it is entered twice' in fault for fault in faults)


@pytest.mark.parametrize(
    ("name", "old", "new", "says"),
    [
        ("checks.toml", "late_days = 42", "late_dyas = 42", "checks.toml: limits: 'late_dyas' is no key"),
        ("checks.toml", "late_days = 42", 'late_days = "long"', "checks.toml: limits: 'late_days': input should be"),
        ("glide.toml", "MCP = 90", "", "glide.toml: fist: 'MCP' is missing"),
        ("cautions.toml", 'about = "general"', 'about = "weather"', "cautions.toml: caution, number 1: 'about'"),
        ("strength.toml", "middle = 30.0", "middle = 300.0", "must rise"),
        ("healing.toml", "high_immobilised = 1.0", "high_immobilised = -1.0", "greater than 0"),
    ],
)
def test_the_shape_of_the_other_rooms_files(folder: Path, name: str, old: str, new: str, says: str) -> None:
    edit(folder, name, old, new)
    assert [fault for fault in map(str, resource_faults(folder)) if says in fault and fault.startswith(name)]


def test_a_word_that_the_reader_splits_in_another_way(folder: Path) -> None:
    # Before an x and a space, 4-0 is no suture size but two figures.
    add(folder, "care.toml", '[tendon.FCR]\nwords = ["fcr 4-0 x"]\n')
    assert [str(fault) for fault in resource_faults(folder)] == [
        "care.toml: [tendon.FCR]: 'fcr 4-0 x' is never found in a sentence. "
        "To mend it: write it as a note would, in plain letters and figures."
    ]


def test_the_order_is_by_file_and_entry(folder: Path) -> None:
    for name in ("sizes.toml", "audit.toml", "cues.toml"):
        (folder / name).unlink()
    faults = check_resources(folder)
    assert faults == sorted(faults)


def test_a_fault_reads_as_a_sentence() -> None:
    fault = EntryFault("sizes.toml", 'size "4-0"', "its gauge is wrong", "correct it")
    assert str(fault) == 'sizes.toml: size "4-0": its gauge is wrong. To mend it: correct it.'
