"""Scraps of notes whose wording misleads a hurried reader, with the truth of what each states.

`doubted` holds what was doubted, planned, hoped, heard or denied; `owned` what belongs to something else than the
repair nearest in the text; `changed` what did not stay as it was first told; `mixed`, `later`, `further`, `seventh`
and `eighth` some of each. About a third are honest twins: they look like such a scrap and state the good finding all
the same, so that a reader that falls silent loses too. Each file was written by somebody who had not seen the rules,
and read once before anything was learnt from it. The truth is complete for the fields of FIELDS and the findings of
pulleys.

Run: python tests/scraps/scraps.py [--faults]
"""

import json
import sys
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "corpus"))

from scoring import plain, promises_more

from notereader.reader import read
from notereader.record import Address

FILES = ("doubted", "owned", "changed", "mixed", "later", "further", "seventh", "eighth")
FIELDS = frozenset(
    [
        *("extent", "treatment", "strands", "stitch", "size", "material", "hold", "purchase_mm"),
        *("peripheral", "gap", "glide", "tension", "bulk", "ends"),
    ]
)


@dataclass(frozen=True, slots=True)
class Scrap:
    """A few sentences and what they state, by address."""

    name: str
    kind: str
    text: str
    facts: dict[str, object]


@dataclass(frozen=True, slots=True)
class Fault:
    """A fact that differs from the truth: `truth` None where the scrap is silent, `said` None where the reader is."""

    scrap: Scrap
    place: str
    truth: object
    said: object
    reasoned: bool

    @property
    def overstated(self) -> bool:
        """Tell whether more strength or safety is promised than the truth holds."""
        return self.said is not None and promises_more(self.place.rsplit("/", 1)[1], self.said, self.truth)

    def line(self) -> str:
        """Return the scrap and the address, as the allow-list writes them."""
        return f"{self.scrap.name} {self.place}"


@dataclass(slots=True)
class Tally:
    """What was counted over the scraps of a file."""

    right: int = 0
    faults: list[Fault] = field(default_factory=list)

    @property
    def overstated(self) -> list[Fault]:
        """The faults that promise more than the truth."""
        return [fault for fault in self.faults if fault.overstated]

    @property
    def wrong(self) -> list[Fault]:
        """The proposed facts that are not true."""
        return [fault for fault in self.faults if fault.said is not None]

    def f1(self) -> float:
        """Return the harmonic mean of precision and recall."""
        missed = sum(fault.truth is not None for fault in self.faults)
        return 2 * self.right / max(1, 2 * self.right + len(self.wrong) + missed)


def scraps(name: str) -> Iterator[Scrap]:
    """Yield the scraps of a file."""
    for line in Path(__file__).with_name(f"{name}.jsonl").read_text(encoding="utf-8").splitlines():
        told = json.loads(line)
        yield Scrap(told["id"], told["kind"], told["text"], {k: plain(v) for k, v in told["facts"].items()})


def tally_of(name: str) -> Tally:
    """Read the scraps of a file and hold each against its truth."""
    tally = Tally()
    for scrap in scraps(name):
        said = dict(_said(scrap.text))
        for place in sorted(scrap.facts.keys() | said.keys()):
            truth, (value, reasoned) = scrap.facts.get(place), said.get(place, (None, False))
            if value == truth:
                tally.right += 1
            else:
                tally.faults.append(Fault(scrap, place, truth, value, reasoned))
    return tally


def _said(text: str) -> Iterator[tuple[str, tuple[object, bool]]]:
    for place, fact in read(text).walk():
        if fact.value is not None and _counts(place):
            value = json.loads(fact.model_dump_json())["value"]
            yield place.text(), (plain(value), bool(fact.look_twice))


def _counts(place: Address) -> bool:
    return (place.group == "repairs" and place.field in FIELDS) or (place.group, place.field) == ("pulleys", "finding")


def main(arguments: list[str]) -> None:
    """Print the table of the files, and the faults where asked."""
    for name in FILES:
        tally = tally_of(name)
        reasoned = sum(fault.reasoned for fault in tally.wrong)
        print(
            f"{name:8s} F1 {tally.f1():.4f}  right {tally.right}  wrong {len(tally.wrong)}, with a reason {reasoned}"
            f"  over-stated {len(tally.overstated)} ({len(tally.overstated) / (tally.right + len(tally.wrong)):.2%})"
        )
        for fault in tally.faults if "--faults" in arguments else []:
            mark = "OVER" if fault.overstated else "    "
            print(f"  {mark} {fault.line()}: truth {fault.truth} | read {fault.said} [{fault.scrap.kind}]")


if __name__ == "__main__":
    main(sys.argv[1:])
