"""The vocabulary as the program uses it: against the record's format, and its refusals where a file is broken."""

import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from notereader.vocabulary import field_specs, materials, places, resource_file, samples_folder, sizes, stitches, terms
from notereader.vocabulary.places import ResourceFault

sys.path.insert(0, str(Path(__file__).parent.parent / "record"))

from contract_tables import IMPLIED_STRANDS, LOCKING_BY_NAME, MATERIALS, NO_COUNT, STITCHES


@pytest.fixture
def broken(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    """A folder that the program takes for its own resources; what it had loaded is forgotten before and after."""
    loaded = (terms, stitches, materials, sizes, field_specs)
    monkeypatch.setattr(places, "resource_folder", lambda: tmp_path)
    for each in loaded:
        each.cache_clear()
    yield tmp_path
    monkeypatch.undo()
    for each in loaded:
        each.cache_clear()


@pytest.mark.parametrize(
    ("count", "name"), [(count, name) for count, names in IMPLIED_STRANDS.items() for name in names]
)
def test_strands_that_follow_from_a_name(count: int, name: str) -> None:
    assert stitches()[name].strands == count


@pytest.mark.parametrize("name", NO_COUNT)
def test_names_from_which_no_count_follows(name: str) -> None:
    assert name not in stitches() or stitches()[name].strands is None


def test_the_list_of_implied_strands_is_whole() -> None:
    listed = sorted([name for names in IMPLIED_STRANDS.values() for name in names] + NO_COUNT)
    assert listed == sorted(STITCHES)


def test_only_these_names_say_that_the_core_locks() -> None:
    assert sorted(s.name for s in stitches().values() if s.hold == "locking") == sorted(LOCKING_BY_NAME)
    assert not [s.name for s in stitches().values() if s.hold == "grasping"]


def test_every_material_has_words() -> None:
    assert sorted(materials()) == sorted(MATERIALS)
    assert all(material.words for material in materials().values())


@pytest.mark.parametrize(
    ("kind", "value", "word"),
    [
        ("stitch", "strickland", "indiana"),
        ("stitch", "becker", "augmented becker"),
        ("stitch", "becker", "mgh"),
        ("tendon", "FDS", "sublimis"),
        ("zone", "II", "no man's land"),
        ("digit", "middle", "long finger"),
        ("digit", "small", "little finger"),
        ("material", "braided polyester", "polyester"),
        ("pattern", "cross-stitch", "silfverskiold"),
    ],
)
def test_words_the_trade_uses(kind: str, value: str, word: str) -> None:
    # Common practice, no source; the first three are names the format itself gives.
    assert any(word in term.words for term in terms() if (term.kind, term.value) == (kind, value))


def test_capitals_decide_where_small_letters_mean_something_else() -> None:
    index = next(term for term in terms() if (term.kind, term.value) == ("digit", "index") and term.exact)
    assert "IF" in index.exact
    assert not any("if" in term.words for term in terms() if term.kind == "digit")


def test_samples_lie_beside_the_resources() -> None:
    assert list(samples_folder().glob("*.txt"))


@pytest.mark.parametrize(
    ("name", "content", "says"),
    [
        ("stitches.toml", '[[stitch]]\nnmae = "x"\n', "number 1: 'name' is missing"),
        ("stitches.toml", "", r"there is no \[\[stitch\]\] in it"),
        ("stitches.toml", "[stitch\n", "not valid TOML"),
    ],
)
def test_broken_stitches_are_refused_with_the_entry(broken: Path, name: str, content: str, says: str) -> None:
    (broken / name).write_text(content)
    with pytest.raises(ResourceFault, match=says):
        stitches()


def test_broken_fields_are_refused_with_the_entry(broken: Path) -> None:
    (broken / "fields.toml").write_text("[repairs]\nzone = 4\n")
    with pytest.raises(ResourceFault, match=r"fields\.toml: there are no fields"):
        field_specs()


def test_broken_terms_are_refused_with_the_entry(broken: Path) -> None:
    (broken / "anatomy.toml").write_text("[digit.thumb]\nwords = 4\n")
    with pytest.raises(ResourceFault, match=r"anatomy.toml: \[digit.thumb\]: 'words'"):
        terms()


def test_a_missing_file_says_where_it_belongs(broken: Path) -> None:
    with pytest.raises(ResourceFault, match="the file is missing from"):
        resource_file("stitches.toml")


def test_a_file_of_another_encoding(broken: Path) -> None:
    (broken / "cues.toml").write_bytes(b'x = "\xe9"')
    with pytest.raises(ResourceFault, match="not UTF-8"):
        resource_file("cues.toml")


def test_a_file_that_cannot_be_read(broken: Path) -> None:
    (broken / "cues.toml").mkdir()
    with pytest.raises(ResourceFault, match="cannot be read"):
        resource_file("cues.toml")
