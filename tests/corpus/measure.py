"""Prints how the reader fares on every collection: accuracy, over-statements, reasons to look twice.

Run: python tests/corpus/measure.py [--faults] [collection ...]
"""

import os
import sys

from collections_of_notes import places, tally_of
from scoring import STRENGTH_GROUPS, Tally, by_field


def row(name: str, tally: Tally) -> str:
    """Return one line of the table."""
    wrong = tally.wrong_facts
    right = sum(tally.right.values())
    reasoned = sum(fault.reasoned for fault in wrong)
    over = len(tally.overstated)
    return (
        f"{name:10s} {right + sum(tally.missed.values()):6d} {tally.f1():7.4f} {tally.f1(*STRENGTH_GROUPS):7.4f}"
        f" {over:4d} {100 * over / max(1, tally.promising):6.2f} {100 * tally.touching / max(1, tally.touchable):7.1f}"
        f" {tally.broken_quotes:6d} {reasoned:4d}/{len(wrong):<4d} {100 * reasoned / max(1, len(wrong)):5.1f}"
        f" {100 * tally.right_reasoned / max(1, right):7.1f}"
    )


def main(arguments: list[str]) -> None:
    """Print the table of the collections named, or of all."""
    os.environ.setdefault("NOTEREADER_STRICT", "1")  # a rule that fails ends the measurement
    named = [a for a in arguments if not a.startswith("--")] or list(places())
    print(
        f"{'':10s} {'facts':>6s} {'F1':>7s} {'repairs':>7s} {'over':>4s} {'over %':>6s} {'touch %':>7s} {'broken':>6s}"
        f" {'wrong with reason':>9s} {'right with, %':>7s}"
    )
    everything = Tally()
    for name in named:
        tally = tally_of(name)
        everything.add(tally)
        print(row(name, tally))
    print(row("all", everything))
    if "--faults" in arguments:
        for fault in everything.faults:
            print(
                "OVER" if fault.overstated else "    ",
                fault.line(),
                f"| key {fault.truth} | read {fault.said}",
                sep="  ",
            )
        for tag, (right, wrong, missed) in by_field(everything).items():
            print(f"{tag:34s} right {right:5d} wrong {wrong:3d} missed {missed:3d}")


if __name__ == "__main__":
    main(sys.argv[1:])
