"""How much of what identifies somebody is found, and how much of what is found does, kind by kind. Prints a table.

    python tests/benchmarks/benchmark_sharing.py

Recall counts identifiers whose every letter and figure lies in finds, of whatever kind; precision counts finds of which
more than half lies in an identifier. The rules were mended on all of these notes. At first sight, before that:

    'h', rules untried       128 of 166 found (0.77), 147 of 153 finds right (0.96)
    'k', rules mended on 'h'  98 of 118 found (0.83), 110 of 122 finds right (0.90)
    'm', rules mended on 'k'  47 of  52 found (0.90),  55 of  55 finds right
"""

import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "sharing"))

from sharing_notes import MarkedNote, hand_written, made, score, share, total


def show(title: str, notes: list[MarkedNote]) -> None:
    """Print the table of some notes."""
    start = time.perf_counter()
    scores = score(notes)
    seconds = time.perf_counter() - start
    print(f"\n{title}: {len(notes)} notes, {1000 * seconds / len(notes):.0f} ms a note")
    print(f"{'kind':<24}{'planted':>8}{'found':>7}{'recall':>8}{'finds':>7}{'right':>7}{'precision':>11}")
    for kind, row in [*sorted(scores.items()), ("all", total(scores))]:
        recall, precision = share(row.covered, row.planted), share(row.right, row.finds)
        print(f"{kind:<24}{row.planted:>8}{row.covered:>7}{recall:>8.3f}{row.finds:>7}{row.right:>7}{precision:>11.3f}")


if __name__ == "__main__":
    show("Written by hand", [*hand_written("h"), *hand_written("k"), *hand_written("m")])
    show("Made from templates", made())
    show("Made from templates, other names", made(60, seed=2031))
    show("All of the tests", [*hand_written("h"), *hand_written("k"), *hand_written("m"), *made()])
