"""Swap words of the kept notes for others that mean the same, and print which swaps change what is read.

`python tests/corpus/swapped.py [PART OF A SWAP'S NAME] [--notes N] [--places]`

What is read of a note before the swap is the measure of what is read after it, so that no key is asked for: a swap that
alters facts in several notes is a wording the reader does not know. `--places` prints the words around the first place
in each note that lost most. Some swaps move the columns of a grid; look before believing.
"""

import argparse
import random
import re
from collections.abc import Iterator

from collections_of_notes import notes, places

from notereader.reader import read
from notereader.record import Record

SWAPS: dict[str, tuple[str, str]] = {
    "small finger -> small": (r"\b(?:small|little) finger\b(?!s)", "small"),
    "middle finger -> middle": (r"\b(?:middle|long) finger\b(?!s)", "middle"),
    "ring finger -> fourth finger": (r"\bring finger\b(?!s)", "fourth finger"),
    "FDP -> profundus": (r"\bFDP\b(?!s| tendon)", "profundus"),
    "FDP -> flexor digitorum profundus (FDP)": (r"\bFDP\b(?!s| tendon)", "flexor digitorum profundus (FDP)"),
    "FDS -> superficialis": (r"(?<!\. )\bFDS\b(?!s| tendon| slip)", "superficialis"),
    "FPL -> long thumb flexor": (r"\bFPL\b(?! tendon)", "long thumb flexor"),
    "zone II -> Z2": (r"\b[Zz]one (?:II|2)\b(?![a-d])", "Z2"),
    "4-0 -> 4/0": (r"\b([3456])-0\b", r"\1/0"),
    "four-strand -> 4-str.": (r"\b(?:four|4)[- ]strand\b", "4-str."),
    "repaired -> sewn": (r"\b(was|were) repaired\b", r"\1 sewn"),
    "repaired with -> by means of": (r"\brepaired with\b", "repaired by means of"),
    "divided -> severed": (r"\b(was|were) divided\b", r"\1 severed"),
    "intact -> in continuity": (r"\b(was|were) intact\b", r"\1 in continuity"),
    "A2 pulley -> pulley A2": (r"\b(A[1-5]) pulley\b", r"pulley \1"),
    "no gap -> no gapping": (r"\bno gap\b", "no gapping"),
    "mm -> mm.": (r"(?<=\d) ?mm\b", " mm."),
    "% -> per cent": (r"(?<=\d) ?%", " per cent"),
    "Prolene -> Prolene (polypropylene)": (r"\bProlene\b", "Prolene (polypropylene)"),
    "modified Kessler -> a Kessler, modified": (r"\bmodified Kessler\b", "Kessler, modified"),
    "was -> is": (r"\bwas\b", "is"),
    "were -> are": (r"\bwere\b", "are"),
    "and -> &": (" and ", " & "),
    "and -> +": (" and ", " + "),
    "with -> w/": (" with ", " w/ "),
    "stop -> semicolon": (r"(?<=[a-z])\. (?=[A-Z][a-z])", "; "),
    "semicolon -> stop": (r"(?<=[a-z]); (?=[a-z])", ". "),
    "comma -> nothing": (", ", " "),
    "the -> nothing": (r"\b[Tt]he ", ""),
    "sentences -> lines": (r"(?<=[a-z]{3})\. (?=[A-Z][a-z]+ )", ".\n"),
    "margin": (r"(?m)^", "    "),
    "doubled line ends": (r"\n", "\n\n"),
}
_FIELDS = ("repairs", "pulleys", "injuries", "aftercare", "operation")
_AROUND = 60  # characters


def facts_of(record: Record) -> dict[str, str]:
    """Return the facts of a record by their place, but for those of elements."""
    return {place.text(): repr(fact.value) for place, fact in record.walk() if place.group in _FIELDS}


def changes(pattern: re.Pattern[str], words: str, texts: list[str], most: int) -> Iterator[tuple[int, int, str]]:
    """Yield, for each note that has the words, how many facts it tells, how many change, and where it has them."""
    having = ((text, found) for text in texts if (found := pattern.search(text)))
    for text, found in list(having)[:most]:
        before, after = facts_of(read(text)), facts_of(read(pattern.sub(words, text)))
        changed = sum(before.get(place) != after.get(place) for place in before.keys() | after.keys())
        around = text[max(0, found.start() - _AROUND) : found.end() + _AROUND]
        yield len(before), changed, " ".join(around.split())


def main() -> None:
    """Print a line for each swap: the share of facts that change, and in how many notes."""
    parser = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0])
    parser.add_argument("part", nargs="?", default="")
    parser.add_argument("--notes", type=int, default=100)
    parser.add_argument("--places", action="store_true")
    asked = parser.parse_args()
    texts = [text for place in places().values() for text, _ in notes(place).values()]
    random.Random(1).shuffle(texts)
    for name, (pattern, words) in SWAPS.items():
        if asked.part not in name:
            continue
        found = list(changes(re.compile(pattern), words, texts, asked.notes))
        told, changed = sum(row[0] for row in found), sum(row[1] for row in found)
        print(f"{100 * changed / max(told, 1):6.2f} %  in {sum(row[1] > 0 for row in found)} of {len(found)}  {name}")
        for _, lost, around in sorted(found, reverse=True, key=lambda row: row[1])[: 8 if asked.places else 0]:
            print(f"      {lost:4d}  {around}")


if __name__ == "__main__":
    main()
