"""A record as a FHIR R4B Bundle: Procedure, DocumentReference, an Observation for each fact, Provenance.

FHIR is HL7's standard for exchanging health data; release R4B is 4.3.0. The bundle is built and checked with the models
of fhir.resources (extra 'fhir'). Our own JSON stays the master: this is a view of it. Codes are our own, with their
words; LOINC names the kind of document alone, and SNOMED CT is not used, for it needs a licence.
"""

import uuid
from base64 import b64encode
from collections.abc import Iterator
from typing import Any

from notereader.appraisal.cautions import all_cautions
from notereader.exchange.cautions import cautions_for
from notereader.exchange.files import ExportFault
from notereader.exchange.summary import shown
from notereader.record import Address, Evidence, Fact, Interval, Record, show_value
from notereader.vocabulary import FieldSpec, field_specs

# Our own code systems: the fields, and under 'value' the values of each field; both stand in resources/fields.toml.
FIELDS = "urn:notereader:field"
VALUES = "urn:notereader:value"
BASIS, STATUS, EVIDENCE, LOOK_TWICE = (
    f"urn:notereader:{name}" for name in ("basis", "status", "evidence", "look-twice")
)

# 11504-8 'Surgical operation note', as in the value set SurgicalOperationNoteDocumentTypeCode of HL7's C-CDA on FHIR.
_DOCUMENT_TYPE = {"system": "http://loinc.org", "code": "11504-8", "display": "Surgical operation note"}
LOINC_NOTICE = (
    "This material contains content from LOINC (http://loinc.org). LOINC is copyright Regenstrief Institute, Inc. and "
    "the Logical Observation Identifiers Names and Codes (LOINC) Committee and is available at no cost under the "
    "license at http://loinc.org/license. LOINC is a registered United States trademark of Regenstrief Institute, Inc."
)

_TERMS = "http://terminology.hl7.org/CodeSystem"
_UCUM = "http://unitsofmeasure.org"
_UCUM_CODES = {"mm": "mm", "%": "%", "degrees of flexion": "deg", "days after operation": "d", "weeks": "wk"}

# How a fact stands -> FHIR's observation-status. A correction was made before anything was final.
_STATUS = {
    "proposed": "preliminary",
    "confirmed": "final",
    "corrected": "final",
    "added": "final",
    "withdrawn": "entered-in-error",
}
_PATIENT = {"type": "Patient", "display": "the patient of this note, not identified here"}

# Names of resources are made from the note's hash and the address of the fact: the same record gives the same bundle.
_NAMES = uuid.UUID("a6f0b0a4-5d0e-4c39-9a53-2a6b1f1f0c11")


def fhir_json(record: Record, *, text: bool = True) -> str:
    """Return a record as a FHIR R4B Bundle in JSON.

    With text=False neither the note's text nor words quoted from it are in it. Raises ExportFault where the library
    that knows FHIR is not installed.
    """
    try:
        from fhir.resources.R4B.bundle import Bundle
    except ModuleNotFoundError:
        raise ExportFault(
            "FHIR needs the library fhir.resources, which is not installed. Install notereader with its 'fhir' extra."
        ) from None
    return str(Bundle.model_validate(_Maker(record, text).bundle()).model_dump_json(indent=1)) + "\n"


class _Maker:
    """Makes the resources of one record and the references between them."""

    def __init__(self, record: Record, text: bool) -> None:
        self._record = record
        self._text = text
        self._facts = list(record.walk())

    def bundle(self) -> dict[str, Any]:
        resources = {"note": self._document(), "procedure": self._procedure()}
        resources |= {place.text(): self._observation(place, fact) for place, fact in self._facts}
        confirmation = self._confirmation()
        if confirmation is not None:
            resources["confirmation"] = confirmation
        entries = [{"fullUrl": self._name(name), "resource": resource} for name, resource in resources.items()]
        return {"resourceType": "Bundle", "type": "collection", "entry": entries}

    def _name(self, name: str) -> str:
        return uuid.uuid5(_NAMES, f"{self._record.note.sha256}/{name}").urn

    def _reference(self, name: str) -> dict[str, str]:
        return {"reference": self._name(name)}

    def _document(self) -> dict[str, Any]:
        note = self._record.note
        attachment: dict[str, Any] = {"contentType": "text/plain; charset=utf-8", "language": "en"}
        if shown(note.name):
            attachment["title"] = shown(note.name)
        if self._text and note.text:
            attachment["data"] = b64encode(note.text.encode("utf-8", "replace")).decode("ascii")
        document: dict[str, Any] = {
            "resourceType": "DocumentReference",
            "status": "current",
            "type": {"coding": [_DOCUMENT_TYPE], "text": "operative note"},
            "subject": _PATIENT,
            "description": LOINC_NOTICE,
            "content": [{"attachment": attachment}],
        }
        if note.sha256:
            document["identifier"] = [{"system": "urn:ietf:rfc:3986", "value": f"urn:sha256:{note.sha256}"}]
        return document

    def _procedure(self) -> dict[str, Any]:
        parts = [place.entry_words() for place, facts in self._record.entries() if _was_treated(facts)]
        procedure: dict[str, Any] = {
            "resourceType": "Procedure",
            # Whether anything was done is a person's finding, never the program's.
            "status": "completed" if parts else "unknown",
            "code": {"text": "operation as the note describes it"},
            "subject": _PATIENT,
            "report": [self._reference("note")],
            "note": _notes([*all_cautions(), self._standing()]),
        }
        if parts:
            procedure["bodySite"] = [{"text": part} for part in parts]
        day = self._day()
        if day:
            procedure["performedDateTime"] = day
        return procedure

    def _standing(self) -> str:
        left = sum(fact.status == "proposed" for _, fact in self._facts)
        if left:
            return f"{left} of {len(self._facts)} facts were proposed by a program and nobody has confirmed them."
        return "Every fact was decided by a person."

    def _day(self) -> str | None:
        """Return the date of the operation where a person settled it."""
        fact = self._record.operation.get("date")
        return str(fact.value) if fact and fact.live and fact.status != "proposed" else None

    def _observation(self, place: Address, fact: Fact) -> dict[str, Any]:
        spec = field_specs()[place.group][place.field]
        observation: dict[str, Any] = {
            "resourceType": "Observation",
            "extension": list(self._extensions(fact)),
            "status": _STATUS[fact.status],
            "category": [{"coding": [{"system": f"{_TERMS}/observation-category", "code": "procedure"}]}],
            "code": {
                "coding": [{"system": FIELDS, "code": f"{spec.group}.{spec.name}", "display": spec.label}],
                "text": spec.label,
            },
            "subject": _PATIENT,
            "partOf": [self._reference("procedure")],
            "derivedFrom": [self._reference("note")],
            "note": _notes([*self._remarks(fact, spec), *cautions_for(place)]),
            **_value(fact, spec),
        }
        if place.part:
            observation["bodySite"] = {"text": place.entry_words()}
        if self._day():
            observation["effectiveDateTime"] = self._day()
        observation |= self._origin(fact)
        return observation

    def _origin(self, fact: Fact) -> dict[str, Any]:
        """Say who or what read the note: the program proposed it, a person stands for what was settled."""
        review = self._record.review
        version = shown(review.reader_version)
        found: dict[str, Any] = {}
        if fact.status in ("proposed", "confirmed"):
            found["device"] = {"display": f"notereader {version}".strip()}
        if fact.status != "proposed" and shown(review.reviewer or ""):
            found["performer"] = [{"display": shown(review.reviewer or "")}]
        return found

    def _extensions(self, fact: Fact) -> Iterator[dict[str, Any]]:
        yield {"url": BASIS, "valueCode": fact.basis}
        yield {"url": STATUS, "valueCode": fact.status}
        for evidence in fact.evidence:
            place = list(self._place(evidence))
            if place:
                yield {"url": EVIDENCE, "extension": place}
        if self._text:
            yield from ({"url": LOOK_TWICE, "valueString": shown(why)} for why in fact.look_twice if shown(why))

    def _place(self, evidence: Evidence) -> Iterator[dict[str, Any]]:
        """Yield where the words stand, in code points of the note, end exclusive, and the words themselves."""
        if evidence.span is not None:
            yield {"url": "start", "valueInteger": evidence.span[0]}
            yield {"url": "end", "valueInteger": evidence.span[1]}
        if self._text and shown(evidence.exact):
            yield {"url": "exact", "valueString": shown(evidence.exact)}

    def _remarks(self, fact: Fact, spec: FieldSpec) -> Iterator[str]:
        if fact.status == "proposed":
            yield "Proposed by a program; nobody has confirmed it."
        if fact.status == "withdrawn":
            yield f"Withdrawn by a person, and no finding. The program had read: {show_value(fact.value, spec.unit)}."
        if fact.basis == "implied":
            yield "The note does not say it outright: it follows from the words quoted."
        for rival in fact.rivals:
            yield f"The note also says: {show_value(rival.value, spec.unit)}."
        if fact.said_by or fact.said_on:
            said = [f"by {shown(fact.said_by)}" if fact.said_by else "", f"on {fact.said_on}" if fact.said_on else ""]
            yield f"Not from the note: said {' '.join(part for part in said if part)}."

    def _confirmation(self) -> dict[str, Any] | None:
        """Return who confirmed the record as a whole, and when; None where nobody did."""
        review = self._record.review
        if review.confirmed_at is None or not shown(review.reviewer or ""):
            return None
        settled = [place.text() for place, fact in self._facts if fact.status != "proposed"]
        verifier = {"coding": [{"system": f"{_TERMS}/provenance-participant-type", "code": "verifier"}]}
        return {
            "resourceType": "Provenance",
            "target": [self._reference(name) for name in ("procedure", *settled)],
            "recorded": review.confirmed_at.astimezone().isoformat(),
            "activity": {"text": "each fact compared with the words of the note, and the record confirmed as a whole"},
            "agent": [{"type": verifier, "who": {"display": shown(review.reviewer or "")}}],
            "entity": [{"role": "source", "what": self._reference("note")}],
        }


def _was_treated(facts: dict[str, Fact]) -> bool:
    """True where a person settled that something was done to this tendon or other structure."""
    fact = facts.get("treatment")
    return fact is not None and fact.live and fact.status != "proposed" and fact.value != "left"


def _notes(texts: list[str]) -> list[dict[str, str]]:
    return [{"text": shown(text)} for text in texts]


def _value(fact: Fact, spec: FieldSpec) -> dict[str, Any]:
    """Return the value under FHIR's name for its kind, or why there is none.

    What a person withdrew has no value, so that a program that looks at values alone takes it for no finding.
    """
    value = fact.value
    if value is None or fact.status == "withdrawn":
        reason, words = ("error", "withdrawn") if value is not None else ("unknown", "the note is silent")
        code = {"system": f"{_TERMS}/data-absent-reason", "code": reason}
        return {"dataAbsentReason": {"coding": [code], "text": words}}
    if isinstance(value, bool):
        return {"valueBoolean": value}
    if isinstance(value, Interval):
        return _range(value, spec)
    if spec.kind == "whole" and not spec.unit:
        return {"valueInteger": value}
    if isinstance(value, int | float):
        return {"valueQuantity": _quantity(value, spec)}
    if spec.kind == "date":
        return {"valueDateTime": value}
    coding = {"system": f"{VALUES}:{spec.group}.{spec.name}", "code": value}
    return {"valueCodeableConcept": {"coding": [coding], "text": value}}


def _range(value: Interval, spec: FieldSpec) -> dict[str, Any]:
    if value.low is not None and value.low == value.high:
        return {"valueQuantity": _quantity(value.low, spec)}
    ends = {"low": value.low, "high": value.high}
    return {"valueRange": {name: _quantity(end, spec) for name, end in ends.items() if end is not None}}


def _quantity(figure: float, spec: FieldSpec) -> dict[str, Any]:
    whole = int(figure) if float(figure).is_integer() else figure
    unit = {"unit": spec.unit, "system": _UCUM, "code": _UCUM_CODES[spec.unit]} if spec.unit else {}
    return {"value": whole, **unit}
