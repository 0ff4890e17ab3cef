"""How long the command line takes: starting, reading one note cold, many notes, and input that is no note. Printed.

Run: python tests/benchmarks/benchmark_command_line.py [longest text in words, 200000 unless told]
"""

import os
import platform
import resource
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from notereader.vocabulary import samples_folder

SAMPLES = sorted(samples_folder().glob("*.txt"))
# What the design asks at most of any input, in seconds.
LIMIT = 10.0
GIVEN_UP = 120.0


def run(arguments: list[str]) -> tuple[float, int]:
    """Run a command in a process of its own; return the seconds it took and its exit status, -1 where given up."""
    begun = time.perf_counter()
    command_line = [sys.executable, "-m", "notereader", *arguments]
    try:
        done = subprocess.run(command_line, capture_output=True, timeout=GIVEN_UP, check=False)
    except subprocess.TimeoutExpired:
        return time.perf_counter() - begun, -1
    return time.perf_counter() - begun, done.returncode


def started() -> None:
    """Print how long each command takes on its own."""
    sample = str(SAMPLES[0])
    for arguments in (["--version"], ["schema"], ["read", sample], ["explain", sample], ["check-resources"]):
        times = [run(arguments)[0] for _ in range(5)]
        name = " ".join(Path(part).name for part in arguments)
        print(f"{name:<32} {statistics.median(times):6.2f} s  (of 5: {min(times):.2f} to {max(times):.2f})")


def throughput() -> None:
    """Print how long a note takes once the reader is loaded, and the memory at most."""
    from notereader.intake import read_file
    from notereader.reading import read_note

    begun = time.perf_counter()
    read_note(read_file(SAMPLES[0]))
    print(f"{'first note in a process':<32} {time.perf_counter() - begun:6.2f} s")
    times = []
    for _ in range(10):
        for sample in SAMPLES:
            begun = time.perf_counter()
            read_note(read_file(sample))
            times.append(1000 * (time.perf_counter() - begun))
    print(f"{'each further note':<32} {statistics.median(times):6.0f} ms (of {len(times)}: up to {max(times):.0f} ms)")
    print(f"{'memory at most':<32} {resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024:6.0f} MB")


def odd_inputs(longest: int) -> dict[str, bytes]:
    """Return input that is no note, or a monstrous one."""
    words = " ".join(SAMPLES[0].read_text(encoding="utf-8").split()).split()
    note = " ".join((words * (longest // len(words) + 1))[:longest]).encode()[:1_999_000]
    return {
        "empty": b"",
        "binary": bytes((7 * k * k + 13 * k) % 251 for k in range(60_000)),
        "5 MB": b"FDP repaired. " * (5_000_000 // 14),
        "one letter, 1.9 MB": b"a" * 1_900_000,
        "one figure, 200,000 digits": b"1" * 200_000,
        "surrogates": ("\ud83d \udc00 " * 50_000).encode("utf-8", "surrogatepass"),
        "control characters": bytes(range(1, 32)) * 100 + b"FDP repaired " * 20_000,
        "right-to-left marks": "\u202eFDP\u200f repaired\u202c ".encode() * 20_000,
        f"{longest:,} x 'word', one line": b"word " * longest,
        f"{longest:,} words of notes, one line": note,
        f"{longest:,} words of notes, lines": note.replace(b". ", b".\n"),
        f"{longest:,} x '4-0', one line": b"4-0 " * longest,
        f"{longest:,} x 'FDP repaired.'": b"FDP repaired. " * (longest // 2),
    }


def hard_to_read(longest: int) -> None:
    """Print how long each input takes that is no note."""
    with tempfile.TemporaryDirectory() as folder:
        for name, content in odd_inputs(longest).items():
            path = Path(folder) / "note.txt"
            path.write_bytes(content)
            seconds, status = run(["read", str(path)])
            said = {0: "a record", 1: "refused", -1: "GIVEN UP"}.get(status, f"status {status}")
            print(f"{name:<40} {seconds:6.1f} s  {said}{'  OVER THE LIMIT' if seconds > LIMIT else ''}", flush=True)


if __name__ == "__main__":
    print(f"Python {platform.python_version()}, {platform.platform()}, {os.cpu_count()} processors")
    started()
    throughput()
    hard_to_read(int(sys.argv[1]) if len(sys.argv) > 1 else 200_000)
