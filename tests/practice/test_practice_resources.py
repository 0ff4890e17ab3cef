"""resources/practice.toml: complete, in plain words, and refused where it is wrong."""

import re

import pytest
from pydantic import ValidationError

from notereader.practice.words import PracticeTables, kind_of, tables, why
from notereader.vocabulary import field_specs, resource_file, stitches

FIELDS = [f"{group}.{name}" for group, specs in field_specs().items() for name in specs]


def test_every_field_has_a_kind_and_a_reason_with_its_source():
    for field in FIELDS:
        assert kind_of(field)
        assert why(field).source
        sentences = re.split(r"(?<=[.?!]) (?=[A-Z'])", why(field).text)
        assert 1 <= len(sentences) <= 3, field


def test_the_ranks_name_only_values_that_the_field_can_take():
    for field, lean in tables().lean.items():
        group, name = field.split(".")
        values = field_specs()[group][name].values
        ranked = [value for rank in lean.ranks for value in rank]
        assert set(ranked) <= set(values), field
        assert len(ranked) == len(set(ranked)), field
        if lean.ranks:
            assert set(ranked) == set(values), f"{field}: every value needs its rank"


def test_what_promises_strength_leans():
    """The fields that the project calls promises of strength or safety are all ranked."""
    promising = ["strands", "size", "purchase_mm", "lock_mm", "peripheral", "gap", "ends", "hold", "tension", "bulk"]
    promising += ["glide", "treatment", "extent"]
    assert {f"repairs.{name}" for name in promising} <= set(tables().lean)
    assert "pulleys.finding" in tables().lean


def test_no_reason_gives_an_order():
    """They report; words of command belong to the surgeon's orders (common practice, no source)."""
    told = [why(field).text for field in FIELDS] + [*tables().tip.values(), *vars(tables().sentence).values()]
    for text in told:
        assert not re.search(
            r"\b(you should|must not|never move|start (?:early )?motion|we recommend)\b", text, re.I
        ), text


def test_typed_kinds_stand_in_the_vocabulary():
    from notereader.vocabulary import terms

    kinds = {term.kind for term in terms()}
    assert {kind for given in tables().typed.values() for kind in given} <= kinds


@pytest.mark.parametrize(
    ("change", "words"),
    [
        (lambda raw: raw["kind"][1]["fields"].remove("repairs.zone"), "exactly one kind"),
        (lambda raw: raw["kind"][1]["fields"].append("repairs.nothing"), "exactly one kind"),
        (lambda raw: raw["why"].pop("repairs.gap"), "no reason"),
        (lambda raw: raw["lean"].update({"repairs.nothing": {}}), "no such field"),
        (lambda raw: raw["points"].update(overstated=-0.1), "overstated"),
        (lambda raw: raw["sentence"].pop("missed"), "missed"),
        (lambda raw: raw.update(extra=1), "extra"),
        (lambda raw: raw["kind"].pop(0), "kinds are missing"),
    ],
)
def test_a_faulty_table_is_refused_and_named(change, words):
    raw = resource_file("practice.toml")
    change(raw)
    with pytest.raises(ValidationError, match=words):
        PracticeTables.model_validate(raw)


def test_a_stitch_leans_by_its_strands():
    from notereader.practice.promise import leaning

    spec = field_specs()["repairs"]["stitch"]
    assert stitches()["savage"].strands > stitches()["kessler"].strands
    assert leaning(spec, "savage", "kessler") == "over"
    assert leaning(spec, "other", "kessler") == "other"
