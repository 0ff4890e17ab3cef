"""Prints what the signs of a misreading weigh, for resources/doubts.toml, and how well they tell wrong from right.

Run: python tests/corpus/weigh_signs.py RECORDS COLLECTION...

RECORDS holds a folder for each collection, with the records of its notes (NOTE.json) as they were first read, before
anything was learnt from them: check out the commit before the collection came in and let it read the notes. A sixth of
the collections in turn is left out of the fit and judged by what the others taught, so at least six are needed.
"""

import json
import sys
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from collections_of_notes import notes, places
from scoring import entries, plain
from sklearn.feature_extraction import DictVectorizer
from sklearn.linear_model import LogisticRegression

from notereader.reader.drafting.signs import Signs
from notereader.reader.page import page_of
from notereader.reader.pipeline import language
from notereader.record import Address, Record, load_record
from notereader.vocabulary.doubts import DoubtTable, doubt_table

_STRENGTH = 0.2  # of the regression's penalty, as scikit-learn counts it
_SHARES = (0.05, 0.10, 0.15, 0.20)  # of right facts that carry a reason
_SEEN = 8  # how often a sign must have been seen to have a weight
_PARTS = 6  # into which the collections are divided for the test of the weights


@dataclass(frozen=True)
class Example:
    """A proposed fact: what speaks for and against it, and whether the key holds another value or none."""

    collection: str
    signs: dict[str, float]
    wrong: bool


def examples(folder: Path, collection: str) -> list[Example]:
    """Return the proposed facts of a collection's first reading; elements of the note are not weighed."""
    found = []
    for note, (text, key) in notes(places()[collection]).items():
        record = load_record((folder / collection / f"{note}.json").read_text(encoding="utf-8"))
        truths = {
            (entry, name): plain(fact["value"]) for entry, facts in entries(key).items() for name, fact in facts.items()
        }
        found += [Example(collection, signs, wrong) for signs, wrong in _facts(text, record, truths)]
    return found


def _facts(text: str, record: Record, truths: dict[tuple, object]) -> list[tuple[dict[str, float], bool]]:
    nlp = language()
    with nlp.memory_zone():
        signs = Signs(page_of(nlp(text)), record)
        told = {place: [name for name, _ in signs.of(place, fact)] for place, fact in record.walk()}
    kinds = {name: key for key, kind in doubt_table().kinds.items() for name in kind.fields}
    facts = []
    for place, fact in record.walk():
        if place.group == "elements" or fact.value is None:
            continue
        name = f"{place.group}.{place.field}"
        borne = [f"signs.{sign}" for sign in told[place]] + [f"kinds.{kinds[name]}.{sign}" for sign in told[place]]
        borne += [f"fields.{name}", *(["rivals"] if fact.rivals else [])]
        if isinstance(fact.value, str):
            borne.append(f"values.{name}={fact.value}")
        said = plain(json.loads(fact.model_dump_json())["value"])
        facts.append((dict.fromkeys(borne, 1.0), said != truths.get((_entry(place), place.field))))
    return facts


def _entry(place: Address) -> tuple[str | None, ...]:
    parts = {"repairs": 3, "injuries": 3, "pulleys": 2}.get(place.group, 0)
    return (place.group, *(place.digit, place.part, place.side)[:parts])


def fitted(taught: list[Example]) -> tuple[DictVectorizer, LogisticRegression]:
    """Return the weights of the signs, as the regression of the examples gives them."""
    seen = Counter(sign for example in taught for sign in example.signs)
    kept = [{s: v for s, v in e.signs.items() if seen[s] >= _SEEN} for e in taught]
    table = DictVectorizer()
    model = LogisticRegression(C=_STRENGTH, max_iter=3000)
    return table, model.fit(table.fit_transform(kept), [e.wrong for e in taught])


def judged(every: list[Example], parts: int = _PARTS) -> np.ndarray:
    """Return the doubt of each example, its collection left out of the fit with every so many others."""
    collections = sorted({e.collection for e in every})
    doubt = np.zeros(len(every))
    for part in range(parts):
        out = {name for n, name in enumerate(collections) if n % parts == part}
        left_out = [n for n, e in enumerate(every) if e.collection in out]
        table, model = fitted([e for e in every if e.collection not in out])
        doubt[left_out] = model.decision_function(table.transform([every[n].signs for n in left_out]))
    return doubt


def lines(weights: dict[str, float], table: DoubtTable) -> Iterator[str]:
    """Yield the weights as the lines of resources/doubts.toml; what weighs less than a twentieth is left out."""

    def part(prefix: str) -> dict[str, float]:
        found = {n.removeprefix(prefix): round(w, 1) for n, w in sorted(weights.items()) if n.startswith(prefix)}
        return {name: weight for name, weight in found.items() if weight}

    common = part("signs.")
    yield "[signs]"
    for name, sign in sorted(table.signs.items(), key=lambda item: -common.get(item[0], 0.0)):
        reason = f', reason = "{sign.reason}"' if sign.reason else ""
        yield f"{name} = {{ weight = {common.get(name, 0.0)}{reason} }}"
    for name, kind in table.kinds.items():
        yield from ("", f"[kinds.{name}]", f"fields = {json.dumps(kind.fields)}", f"[kinds.{name}.signs]")
        yield from (f"{sign} = {weight}" for sign, weight in part(f"kinds.{name}.").items())
    for group in ("fields", "values"):
        yield from ("", f"[{group}]")
        yield from (f'"{name}" = {weight}' for name, weight in part(f"{group}.").items())


def main(folder: str, *collections: str) -> None:
    """Print the trade-off for notes that the weights have not seen, then the weights of all."""
    every = [example for name in collections for example in examples(Path(folder), name)]
    doubt, wrong = judged(every), np.array([e.wrong for e in every])
    print(f"# {len(every)} facts, {wrong.sum()} wrong; each collection judged by others")
    for share in _SHARES:
        enough = np.quantile(doubt[~wrong], 1 - share)
        caught = (doubt[wrong] > enough).mean()
        print(f"# {share:4.0%} of right facts: {caught:.1%} of wrong ones, from {enough:.1f} on")
    table, model = fitted(every)
    weights = dict(zip(table.get_feature_names_out(), model.coef_[0], strict=True))
    print(f"start = {model.intercept_[0]:.1f}", *lines(weights, doubt_table()), sep="\n")


if __name__ == "__main__":
    main(*sys.argv[1:])
