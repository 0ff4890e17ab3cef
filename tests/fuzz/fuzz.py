"""Fuzzes one target, with hypothesis alone or guided by the coverage that atheris sees. Not part of a run of pytest.

Run:  python tests/fuzz/fuzz.py TARGET NUMBER [--atheris] [--seed N]       targets: see fuzz_targets.TARGETS
A failing case is written to tests/fuzz/finds/TARGET-HASH.json, where test_fuzz_finds.py keeps it as a test.
atheris is not among the needs of the tests: pip install atheris
"""

import argparse
import base64
import faulthandler
import hashlib
import json
import sys
import time
from pathlib import Path
from typing import Any

HERE = Path(__file__).resolve().parent
FINDS = HERE / "finds"
# Cases of hypothesis between two fresh starts: it remembers what it drew.
CHUNK = 5_000
HANG_SECONDS = 60


def main() -> int:
    """Run as the command line says; return 1 where something was found."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("target")
    parser.add_argument("number", type=int)
    parser.add_argument("--atheris", action="store_true")
    parser.add_argument("--seed", type=int, default=1)
    asked = parser.parse_args()
    begun = time.perf_counter()
    work = _with_atheris if asked.atheris else _with_hypothesis
    tried, finds = work(asked.target, asked.number, asked.seed)
    how = "atheris" if asked.atheris else "hypothesis"
    print(f"{asked.target}: {tried} cases by {how} in {time.perf_counter() - begun:.0f} s, {finds} found", flush=True)
    print(f"{sys.modules['fuzz_targets'].STOPPED[0]} documents had to be stopped", flush=True)
    return 1 if finds else 0


class _Watch:
    """Counts the cases of a target and keeps those that fail."""

    def __init__(self, target: str, check: Any) -> None:
        self.target, self._check = target, check
        self.tried = 0
        self.kept: set[str] = set()

    def __call__(self, case: Any) -> None:
        self.tried += 1
        # What never comes back cannot fail: it ends the run and says where it was.
        faulthandler.dump_traceback_later(HANG_SECONDS, exit=True)
        try:
            self._check(case)
        except Exception as fault:
            self._keep(case, fault)
            raise
        finally:
            faulthandler.cancel_dump_traceback_later()

    def _keep(self, case: Any, fault: Exception) -> None:
        place = _place(fault)
        if place in self.kept:
            return
        self.kept.add(place)
        raw = case if isinstance(case, bytes) else case.encode("utf-8", "surrogatepass")
        told = {"target": self.target, "fault": place, "kind": type(case).__name__}
        told["base64"] = base64.b64encode(raw).decode("ascii")
        name = f"{self.target}-{hashlib.sha256(place.encode()).hexdigest()[:10]}.json"
        (FINDS / name).write_text(json.dumps(told, indent=1) + "\n", encoding="utf-8")
        print(f"FOUND {name}: {place}", flush=True)


def _place(fault: Exception) -> str:
    """Return the kind of a fault and its place in the program: one find is kept for each."""
    trace = fault.__traceback__
    place = ""
    while trace is not None:
        path = Path(trace.tb_frame.f_code.co_filename)
        if "notereader" in path.parts or path.name == "fuzz_targets.py":
            place = f"{path.name}:{trace.tb_lineno}"
        trace = trace.tb_next
    return f"{type(fault).__name__} at {place}"


def _with_hypothesis(target: str, number: int, seed: int) -> tuple[int, int]:
    from fuzz_targets import TARGETS
    from hypothesis import HealthCheck, Phase, given, settings
    from hypothesis import seed as seeded

    check, cases = TARGETS[target]
    watch = _Watch(target, check)
    while watch.tried < number:

        @seeded(seed)
        @settings(
            max_examples=min(CHUNK, number - watch.tried),
            deadline=None,
            database=None,
            phases=[Phase.generate],
            suppress_health_check=list(HealthCheck),
        )
        @given(cases)
        def run(case: Any) -> None:
            watch(case)

        try:
            run()
        except Exception as fault:
            print(type(fault).__name__, flush=True)
        seed += 1
    return watch.tried, len(watch.kept)


def _with_atheris(target: str, number: int, seed: int) -> tuple[int, int]:
    import atexit
    import os

    import atheris

    with atheris.instrument_imports(include=["notereader"]):
        from fuzz_targets import TARGETS
    from hypothesis import HealthCheck, given, settings

    check, cases = TARGETS[target]
    watch = _Watch(target, check)

    @settings(deadline=None, database=None, suppress_health_check=list(HealthCheck))
    @given(cases)
    def run(case: Any) -> None:
        # A find is kept and the run goes on: libFuzzer would stop at the first.
        try:
            watch(case)
        except Exception:
            return

    begun = time.perf_counter()
    # libFuzzer leaves without coming back here.
    atexit.register(
        lambda: print(
            f"{target}: {watch.tried} cases by atheris in {time.perf_counter() - begun:.0f} s, {len(watch.kept)} found",
            flush=True,
        )
    )
    options = [f"-atheris_runs={number}", f"-seed={seed}", "-timeout=60", "-max_len=4096", "-rss_limit_mb=4096"]
    # Long inputs from the start: a case needs many bytes of choices.
    options.append("-len_control=0")
    options.append(f"-artifact_prefix={os.environ.get('TMPDIR', '/tmp')}/fuzz-{target}-")
    # atheris counts as a run also what hypothesis cannot make a case of.
    atheris.Setup([sys.argv[0], *options], run.hypothesis.fuzz_one_input)
    atheris.Fuzz()
    return watch.tried, len(watch.kept)


if __name__ == "__main__":
    raise SystemExit(main())
