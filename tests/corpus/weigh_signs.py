"""Prints what the signs of a misreading weigh, for resources/doubts.toml, and how well they tell wrong from right.

Run: python tests/corpus/weigh_signs.py RECORDS COLLECTION...

RECORDS holds a folder for each collection, with the records of its notes (NOTE.json) as they were first read, before
anything was learnt from them: check out the commit before the collection came in and let it read the notes. A sixth of
the collections in turn is left out of the fit and judged by what the others taught, so at least six are needed.
"""

import json
import re
import sys
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path

import numpy as np
from collections_of_notes import notes, places
from scoring import entries, plain
from sklearn.feature_extraction import DictVectorizer
from sklearn.linear_model import LogisticRegression

from notereader.reader.drafting.signs import Signs
from notereader.reader.page import page_of
from notereader.reader.pipeline import language
from notereader.record import Address, Fact, Record, load_record
from notereader.vocabulary.doubts import DoubtTable, doubt_table

_STRENGTH = 0.3  # of the regression's penalty, as scikit-learn counts it
_SHARES = (0.05, 0.10, 0.15, 0.20)  # of right facts that carry a reason
_SEEN = 20  # how often a sign must have been seen to have a weight
_GIVEN = 8  # how often a rule's own reason, which says more
_PARTS = 6  # into which the collections are divided for the test of the weights


@dataclass(frozen=True)
class Example:
    """A proposed fact: what speaks for and against it, and whether the key holds another value or none."""

    collection: str
    signs: dict[str, float]
    wrong: bool
    always: bool  # it carries a reason that is told whatever the sum


def examples(folder: Path, collection: str) -> list[Example]:
    """Return the proposed facts of a collection's first reading; elements of the note are not weighed."""
    found = []
    for note, (text, key) in notes(places()[collection]).items():
        record = load_record((folder / collection / f"{note}.json").read_text(encoding="utf-8"))
        truths = {
            (entry, name): plain(fact["value"]) for entry, facts in entries(key).items() for name, fact in facts.items()
        }
        found += _facts(collection, text, record, truths)
    return found


@cache
def _patterns() -> dict[str, re.Pattern[str]]:
    """Return what the reasons of rules and of signs look like in a record, which keeps their sentences alone."""
    told = {kind: reason.told for kind, reason in doubt_table().reasons.items()}
    told |= {name: sign.reason for name, sign in doubt_table().signs.items() if sign.reason}
    return {name: re.compile(re.escape(said).replace("WORD", ".+?"), re.DOTALL) for name, said in told.items()}


def _given(fact: Fact) -> set[str]:
    """Return the kinds of the reasons that rules gave a fact: of those that fit a sentence, the one that says most."""
    fitting = [[kind for kind, shape in _patterns().items() if shape.fullmatch(told)] for told in fact.look_twice]
    longest = {max(kinds, key=lambda kind: len(_patterns()[kind].pattern)) for kinds in fitting if kinds}
    return longest & doubt_table().reasons.keys()


def _facts(collection: str, text: str, record: Record, truths: dict[tuple, object]) -> list[Example]:
    nlp = language()
    with nlp.memory_zone():
        signs = Signs(page_of(nlp(text)), record)
        told = {place: [name for name, _ in signs.of(place, fact)] for place, fact in record.walk()}
    kinds = {name: key for key, kind in doubt_table().kinds.items() for name in kind.fields}
    facts: list[Example] = []
    for place, fact in record.walk():
        if place.group == "elements" or fact.value is None:
            continue
        name, given = f"{place.group}.{place.field}", _given(fact)
        borne = [f"signs.{sign}" for sign in told[place]] + [f"kinds.{kinds[name]}.{sign}" for sign in told[place]]
        borne += [f"fields.{name}", *[f"reasons.{kind}" for kind in given]]
        borne += [f"parts.{name} {place.part}"] if place.part else []
        if isinstance(fact.value, str):
            borne.append(f"values.{name}={fact.value}")
            borne += [f"parts.{name}={fact.value} {place.part}"] if place.part else []
        said = plain(json.loads(fact.model_dump_json())["value"])
        wrong = said != truths.get((_entry(place), place.field))
        always = any(doubt_table().reasons[kind].always for kind in given)
        facts.append(Example(collection, dict.fromkeys(borne, 1.0), wrong, always))
    return facts


def _entry(place: Address) -> tuple[str | None, ...]:
    parts = {"repairs": 3, "injuries": 3, "pulleys": 2}.get(place.group, 0)
    return (place.group, *(place.digit, place.part, place.side)[:parts])


def fitted(taught: list[Example]) -> tuple[DictVectorizer, LogisticRegression]:
    """Return the weights of the signs, as the regression of the examples gives them."""
    seen = Counter(sign for example in taught for sign in example.signs)
    kept = [
        {s: v for s, v in e.signs.items() if seen[s] >= (_GIVEN if s.startswith("reasons.") else _SEEN)} for e in taught
    ]
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

    given = part("reasons.")
    yield "[reasons]"
    for name, reason in table.reasons.items():
        always = ", always = true" if reason.always else ""
        yield f'{name} = {{ weight = {given.get(name, 0.0)}{always}, told = "{reason.told}" }}'
    common = part("signs.") | dict.fromkeys(_of_kinds(weights) - part("signs.").keys(), 0.0)
    yield from ("", "[signs]")
    for name, weight in sorted(common.items(), key=lambda item: (-item[1], item[0])):
        reason = f', reason = "{table.signs[name].reason}"' if name in table.signs and table.signs[name].reason else ""
        yield f"{_key(name)} = {{ weight = {weight}{reason} }}"
    for name, kind in table.kinds.items():
        yield from ("", f"[kinds.{name}]", f"fields = {json.dumps(kind.fields)}", f"[kinds.{name}.signs]")
        yield from (f"{_key(sign)} = {weight}" for sign, weight in part(f"kinds.{name}.").items())
    for group in ("fields", "parts", "values"):
        yield from ("", f"[{group}]")
        yield from (f'"{name}" = {weight}' for name, weight in part(f"{group}.").items())


def _of_kinds(weights: dict[str, float]) -> set[str]:
    """Return the signs that weigh something for one kind of fact."""
    return {name.split(".", 2)[2] for name, weight in weights.items() if name.startswith("kinds.") and round(weight, 1)}


def _key(name: str) -> str:
    return name if name.isidentifier() else f'"{name}"'


def main(folder: str, *collections: str) -> None:
    """Print the trade-off for notes that the weights have not seen, then the weights of all."""
    every = [example for name in collections for example in examples(Path(folder), name)]
    doubt, wrong = judged(every), np.array([e.wrong for e in every])
    doubt[[e.always for e in every]] = np.inf
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
