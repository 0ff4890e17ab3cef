"""FHIR R4B bundles: valid by the library fhir.resources, and by checks of our own after the published specification.

Element names, cardinalities, value sets and invariants are those of HL7 FHIR R4B (4.3.0), from memory except where a
line names another source.
"""

import base64
import hashlib
import json
import re
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from exchange_helpers import A4, GAP, GLIDE, HARMFUL, PURCHASE, SIZE, STRANDS, TEXT, WRIST, confirmed, example, poisoned
from fhir.resources.R4B.bundle import Bundle

from notereader.appraisal import all_cautions
from notereader.exchange import ExportFault, fhir_json
from notereader.exchange.cautions import cautions_for
from notereader.record import Address, Fact, Interval, Note, Record, load_record
from notereader.vocabulary import samples_folder

SETS = {
    ("Observation", "status"): {
        "registered",
        "preliminary",
        "final",
        "amended",
        "corrected",
        "cancelled",
        "entered-in-error",
        "unknown",
    },
    ("Procedure", "status"): {
        "preparation",
        "in-progress",
        "not-done",
        "on-hold",
        "stopped",
        "completed",
        "entered-in-error",
        "unknown",
    },
    ("DocumentReference", "status"): {"current", "superseded", "entered-in-error"},
}
REQUIRED = {
    "Observation": {"status", "code"},
    "Procedure": {"status", "subject"},
    "DocumentReference": {"status", "content"},
    "Provenance": {"target", "recorded", "agent"},
}


def sample_records() -> list[Record]:
    found = []
    for key in sorted(samples_folder().glob("[0-9]*.json")):
        data = json.loads(key.read_text(encoding="utf-8"))
        data.pop("remark", None)
        note = Note.of(key.with_suffix(".txt").read_text(encoding="utf-8"), key.stem).model_dump()
        found.append(load_record({"format": "notereader-record", "format_version": 1, **data, "note": note}))
    return found


RECORDS = [example(), confirmed(), Record(), *sample_records(), *map(poisoned, HARMFUL)]


def resources(record: Record, kind: str = "", **how: bool) -> list[dict[str, Any]]:
    bundle = json.loads(fhir_json(record, **how))
    return [e["resource"] for e in bundle["entry"] if not kind or e["resource"]["resourceType"] == kind]


def observation(record: Record, place: Address) -> dict[str, Any]:
    """Return the observation of a fact, found by the code of its field and its body site."""
    code = f"{place.group}.{place.field}"
    site = place.entry_words() if place.part else None
    found = [o for o in resources(record, "Observation") if o["code"]["coding"][0]["code"] == code]
    return next(o for o in found if o.get("bodySite", {}).get("text") == site)


def parts(value: Any) -> Iterator[Any]:
    yield value
    for inner in value.values() if isinstance(value, dict) else value if isinstance(value, list) else []:
        yield from parts(inner)


@pytest.mark.parametrize("record", RECORDS, ids=range(len(RECORDS)))
@pytest.mark.parametrize("text", [True, False])
def test_the_bundle_is_valid_by_the_library(record: Record, text: bool) -> None:
    again = Bundle.model_validate_json(fhir_json(record, text=text))
    assert len(again.entry) >= 2 + len([*record.walk()])


@pytest.mark.parametrize("record", RECORDS, ids=range(len(RECORDS)))
def test_the_bundle_keeps_to_the_published_structure(record: Record) -> None:
    bundle = json.loads(fhir_json(record))
    assert bundle["type"] == "collection"
    names = [entry["fullUrl"] for entry in bundle["entry"]]
    # bdl-7: a full URL is unique within a bundle. Those of resources without a server are urn:uuid.
    assert len(set(names)) == len(names)
    assert all(re.fullmatch(r"urn:uuid:[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}", name) for name in names)
    for part in parts(bundle):
        # ele-1: every element has a value or children; strings are never empty.
        assert part not in ({}, [], "", None)
        if isinstance(part, dict) and "reference" in part:
            assert part["reference"] in names
    for entry in bundle["entry"]:
        check_resource(entry["resource"])


def check_resource(resource: dict[str, Any]) -> None:
    kind = resource["resourceType"]
    assert REQUIRED[kind] <= set(resource)
    if (kind, "status") in SETS:
        assert resource["status"] in SETS[kind, "status"]
    if kind == "Observation":
        values = [name for name in resource if name.startswith("value")]
        # obs-6: a reason for absence only where there is no value; here always one of the two.
        assert len(values) + ("dataAbsentReason" in resource) == 1
        assert resource.get("dataAbsentReason", {"coding": [{"code": "error"}]})["coding"][0]["code"] in (
            "unknown",
            "error",
        )
    for part in parts(resource):
        if isinstance(part, dict) and "low" in part and "high" in part:
            assert part["low"]["value"] <= part["high"]["value"]  # rng-2
        if isinstance(part, dict) and set(part) & {"code", "system"} == {"code", "system"}:
            assert re.fullmatch(r"\S+( \S+)*", str(part["code"]))
            assert re.match(
                r"(urn:notereader:|http://(loinc\.org|terminology\.hl7\.org/|unitsofmeasure\.org))", part["system"]
            )


def test_each_fact_says_basis_standing_place_and_words() -> None:
    found = observation(confirmed(), STRANDS)
    plain = {e["url"].rpartition(":")[2]: e.get("valueCode") for e in found["extension"]}
    assert (plain["basis"], plain["status"]) == ("stated", "confirmed")
    (place,) = [e["extension"] for e in found["extension"] if e["url"] == "urn:notereader:evidence"]
    start, end, exact = (next(iter(e[k] for k in e if k != "url")) for e in place)
    assert TEXT[start:end] == exact == "six-strand"
    assert found["valueInteger"] == 6
    assert found["bodySite"]["text"] == "middle FDP"
    assert any("also says: 4" in note["text"] for note in found["note"])


@pytest.mark.parametrize(
    ("place", "status", "value"),
    [
        (STRANDS, "final", ("valueInteger", 6)),
        (SIZE, "preliminary", ("valueCodeableConcept", None)),
        (PURCHASE, "final", ("valueRange", {"low": 8, "high": 10})),
        (GAP, "entered-in-error", ("dataAbsentReason", None)),
        (GLIDE, "final", ("dataAbsentReason", None)),
        (A4, "final", ("valueCodeableConcept", None)),
        (WRIST, "final", ("valueQuantity", -10)),
    ],
)
def test_values_and_standing_under_fhirs_names(place: Address, status: str, value: tuple[str, Any]) -> None:
    found = observation(example(), place)
    assert found["status"] == status
    name, figure = value
    assert name in found
    if name == "valueRange":
        assert {end: found[name][end]["value"] for end in found[name]} == figure
        assert {found[name][end]["code"] for end in found[name]} == {"mm"}
    elif name == "valueQuantity":
        assert (found[name]["value"], found[name]["code"]) == (figure, "deg")
    elif figure is not None:
        assert found[name] == figure


def test_a_withdrawn_fact_has_no_value_that_could_be_taken_for_a_finding() -> None:
    """The worst fault is an over-statement: 'no gap' was read, and a person found that the note does not say so."""
    found = observation(example(), GAP)
    assert not [name for name in found if name.startswith("value")]
    assert "no finding" in found["note"][0]["text"]


def test_what_nobody_confirmed_is_preliminary_and_says_so() -> None:
    record = example()
    for place, fact in record.walk():
        if fact.status == "proposed":
            found = observation(record, place)
            assert found["status"] == "preliminary"
            assert "nobody has confirmed" in found["note"][0]["text"]
            assert "performer" not in found


def test_an_open_range_stays_open() -> None:
    record = example()
    record.put(PURCHASE, Fact(value=Interval(low=8, high=None), status="added"))
    assert set(observation(record, PURCHASE)["valueRange"]) == {"low"}


@pytest.mark.parametrize("record", [example(), confirmed()])
def test_the_cautions_travel_with_every_fact_of_strength_motion_and_pulleys(record: Record) -> None:
    (procedure,) = resources(record, "Procedure")
    assert set(all_cautions()) <= {note["text"] for note in procedure["note"]}
    seen = 0
    for place, _ in record.walk():
        notes = {note["text"] for note in observation(record, place)["note"]}
        wanted = cautions_for(place)
        assert set(wanted) <= notes
        seen += place.group in ("repairs", "pulleys", "aftercare") and len(wanted) > 2
    assert seen >= 9


def test_the_note_travels_whole_with_its_hash() -> None:
    (document,) = resources(confirmed(), "DocumentReference")
    attachment = document["content"][0]["attachment"]
    text = base64.b64decode(attachment["data"], validate=True)
    assert text.decode("utf-8") == TEXT
    assert document["identifier"][0]["value"] == f"urn:sha256:{hashlib.sha256(text).hexdigest()}"
    assert attachment["contentType"].startswith("text/plain")


def test_loinc_stands_with_its_notice_and_no_snomed_ct_code_is_used() -> None:
    """11504-8 'Surgical operation note': HL7 C-CDA on FHIR, value set 2.16.840.1.113883.11.20.1.1."""
    (document,) = resources(confirmed(), "DocumentReference")
    assert document["type"]["coding"] == [
        {"system": "http://loinc.org", "code": "11504-8", "display": "Surgical operation note"}
    ]
    assert "Regenstrief" in document["description"]
    assert "snomed" not in fhir_json(confirmed()).lower()


def test_without_text_no_word_of_the_note_leaves() -> None:
    for record in (example(), confirmed()):
        out = fhir_json(record, text=False)
        assert "data" not in resources(record, "DocumentReference", text=False)[0]["content"][0]["attachment"]
        for words in ("six-strand", "No gapping", "10 degrees of extension", "thicker than most"):
            assert words in fhir_json(record) or record is not example()
            assert words not in out


def test_provenance_names_who_confirmed_when_and_what() -> None:
    assert resources(example(), "Provenance") == []
    record = confirmed()
    (found,) = resources(record, "Provenance")
    assert found["agent"][0]["who"]["display"] == "Hand clinic"
    # An instant needs a time zone.
    assert re.fullmatch(r"2031-03-2[01]T\d\d:\d\d:\d\d(\.\d+)?(Z|[+-]\d\d:\d\d)", found["recorded"])
    assert len(found["target"]) == 1 + len([*record.walk()])


def test_nothing_is_called_done_that_no_person_settled() -> None:
    record = example()
    for _, fact in record.walk():
        fact.status = "proposed"
    (procedure,) = resources(record, "Procedure")
    assert procedure["status"] == "unknown"
    assert "bodySite" not in procedure
    assert "performedDateTime" not in procedure
    (settled,) = resources(confirmed(), "Procedure")
    assert settled["status"] == "completed"
    # The A4 pulley was only vented for access: it is no part that was repaired.
    assert [site["text"] for site in settled["bodySite"]] == ["middle FDP"]


def test_the_same_record_gives_the_same_bundle() -> None:
    assert fhir_json(confirmed()) == fhir_json(confirmed())


def test_without_the_library_the_extra_is_named(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "fhir.resources.R4B.bundle", None)
    with pytest.raises(ExportFault, match="'fhir' extra"):
        fhir_json(example())


def test_the_command_writes_what_the_library_reads(tmp_path: Path) -> None:
    from notereader.exchange import write_record

    write_record(confirmed(), tmp_path / "one.json")
    write_record(example(), tmp_path / "two.json")
    call = [
        sys.executable,
        "-m",
        "notereader",
        "export",
        "--fhir",
        "one.json",
        "two.json",
        "--out",
        str(tmp_path / "out"),
    ]
    (tmp_path / "out").mkdir()
    done = subprocess.run(call, cwd=tmp_path, capture_output=True, text=True, timeout=120)
    assert done.returncode == 0, done.stderr
    assert "only proposed" in done.stderr
    for name in ("one.fhir.json", "two.fhir.json"):
        Bundle.model_validate_json((tmp_path / "out" / name).read_text(encoding="utf-8"))
