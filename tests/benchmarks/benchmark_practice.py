"""How long practice takes: a step of the student, a marking, the next case, a class: printed, never asserted.

Run: python tests/benchmarks/benchmark_practice.py
"""

import platform
import statistics
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "practice"))

from practice_making import handed_in, perfect

from notereader.desktop.practice.answers import answer_items
from notereader.desktop.practice.marking_lines import lines_of
from notereader.practice import ExerciseBook, mark, next_case, progress_of, ready_set, teacher_view
from notereader.record import Address

STRANDS = Address("repairs", "index", "FDP", None, "strands")


def measured(work: Callable[[], object], times: int) -> str:
    """Return median and slowest of several runs in milliseconds."""
    took = []
    for _ in range(times):
        start = time.perf_counter()
        work()
        took.append((time.perf_counter() - start) * 1000)
    return f"{statistics.median(took):8.1f} ms median, {max(took):8.1f} ms slowest of {times}"


def main() -> None:
    """Print one line for each kind of work."""
    print(f"{platform.platform()}, {platform.processor() or platform.machine()}, Python {platform.python_version()}")
    print("load the ready set       ", measured(ready_set, 5))
    cases = ready_set().cases
    with tempfile.TemporaryDirectory() as folder:
        attempt = ExerciseBook(Path(folder)).start(cases[0])
        print("save one step            ", measured(lambda: attempt.put(STRANDS, 4, [(0, 9)]), 50))
    longest = max(cases, key=lambda case: len(list(case.answers.walk())))
    for name, case in (("mark a plain case", cases[0]), ("mark the longest case", longest)):
        answer = perfect(case)
        mark(case, answer)
        print(f"{name:<25}", measured(lambda case=case, answer=answer: mark(case, answer), 20))
    whole = longest.answers
    print("list the answers         ", measured(lambda: answer_items(whole, lambda _: True, every_field=True), 20))
    marking = mark(longest, perfect(longest))
    print("lines of the marking     ", measured(lambda: lines_of(marking), 20))
    markings = [handed_in(case, perfect(case), day) for day, case in enumerate(cases[:-2])]
    print("choose the next case     ", measured(lambda: next_case(cases, markings), 10))
    many = [m.model_copy(update={"student": f"S{n}"}) for n in range(30) for m in markings]
    print("progress of one student  ", measured(lambda: progress_of(markings), 10))
    print(f"class of 30, {len(many)} markings", measured(lambda: teacher_view(many), 3))


if __name__ == "__main__":
    main()
