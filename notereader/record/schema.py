"""The published JSON Schema (draft 2020-12) of a record."""

from typing import Any

from notereader.record.models import Fact, Record
from notereader.vocabulary.fields import FieldSpec, field_specs
from notereader.vocabulary.sutures import sizes

_ENTRY_MODELS = {"repairs": "Repair", "pulleys": "Pulley", "injuries": "Injury"}


def record_schema() -> dict[str, Any]:
    """Return the schema that every exported record meets, each field with the values it can take."""
    schema = Record.model_json_schema(mode="validation")
    definitions = schema["$defs"]
    definitions.pop("Fact", None)
    for group, specs in field_specs().items():
        facts = {
            "type": "object",
            "properties": {name: _fact(spec) for name, spec in specs.items()},
            "additionalProperties": False,
        }
        holder = definitions[_ENTRY_MODELS[group]] if group in _ENTRY_MODELS else schema
        holder["properties"]["facts" if group in _ENTRY_MODELS else group] = facts
    definitions.update(_fact_definitions())
    schema["$schema"] = "https://json-schema.org/draft/2020-12/schema"
    schema["title"] = "notereader record, format version 1"
    schema["properties"]["format_version"] = {"const": 1}
    schema["required"] = ["format", "format_version", "note", "operation", "repairs", "pulleys", "injuries"]
    schema["required"] += ["aftercare", "elements", "review"]
    return schema


def _fact_definitions() -> dict[str, Any]:
    """What Fact refers to (evidence, rivals), so that each field can hold its own kind of Fact."""
    own = Fact.model_json_schema(mode="validation")["$defs"]
    return {name: entry for name, entry in own.items() if name != "Fact"}


def _fact(spec: FieldSpec) -> dict[str, Any]:
    fact = Fact.model_json_schema(mode="validation")
    value = _value(spec)
    properties = dict(fact["properties"])
    properties["value"] = {"anyOf": [value, {"type": "null"}]}
    properties["rivals"] = {
        "type": "array",
        "items": {
            "type": "object",
            "properties": {"value": value, "evidence": {"type": "array", "items": {"$ref": "#/$defs/Evidence"}}},
            "required": ["value"],
            "additionalProperties": False,
        },
    }
    return {
        "title": spec.label,
        "description": spec.meaning,
        "type": "object",
        "properties": properties,
        "required": ["value", "basis", "status", "evidence"],
        "additionalProperties": False,
    }


def _value(spec: FieldSpec) -> dict[str, Any]:
    limits = {"minimum": spec.low, "maximum": spec.high} if spec.low is not None else {}
    figure: dict[str, Any] = {"type": "number", **limits}
    open_figure = {"anyOf": [figure, {"type": "null"}]}
    forms: dict[str, dict[str, Any]] = {
        "choice": {"enum": list(spec.values)},
        "whole": {"type": "integer", **limits},
        "number": figure,
        "size": {"enum": list(sizes())},
        "interval": {
            "type": "object",
            "properties": {"low": open_figure, "high": open_figure},
            "required": ["low", "high"],
            "additionalProperties": False,
        },
        "date": {"type": "string", "pattern": r"^\d{4}-\d\d-\d\d$"},
        "yes-no": {"type": "boolean"},
        "named": {"const": True},
    }
    return forms[spec.kind]
