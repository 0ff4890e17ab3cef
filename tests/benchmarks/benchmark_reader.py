"""How long the reader takes and how much memory: printed, never asserted.

Held against the cheapest that spaCy could do on the same text: its bare English tokenizer, and a SpanRuler with every
phrase of the vocabulary. Run: python tests/benchmarks/benchmark_reader.py [rounds, 5 unless told]
"""

import gc
import itertools
import os
import platform
import re
import statistics
import sys
import time
import tracemalloc
from collections.abc import Callable
from pathlib import Path

import psutil
import spacy
from spacy.language import Language

from notereader.reader import read
from notereader.vocabulary.terms import terms

ROOT = Path(__file__).parents[2]
FOLDERS = (*sorted((ROOT / "tests" / "notes").iterdir()), ROOT / "samples")
LENGTHS = (500, 1_000, 2_000, 5_000, 10_000, 20_000, 50_000)
TYPICAL = 600


def notes() -> list[str]:
    """Return the text of every note kept with the project."""
    return [path.read_bytes().decode("utf-8") for folder in FOLDERS for path in sorted(folder.glob("*.txt"))]


def bare_ruler() -> Language:
    """Return a SpanRuler that finds every phrase of the vocabulary, whatever its case, and nothing more."""
    nlp = spacy.blank("en")
    ruler = nlp.add_pipe("span_ruler", config={"phrase_matcher_attr": "LOWER"})
    phrases = {(term.kind, phrase) for term in terms() for phrase in (*term.words, *term.exact)}
    ruler.add_patterns([{"label": kind, "pattern": phrase} for kind, phrase in sorted(phrases)])  # type: ignore[attr-defined]
    print(f"{len(phrases)} phrases of the vocabulary")
    return nlp


def of_length(texts: list[str], words: int) -> list[str]:
    """Return notes that hold so many words together, the last of them cut off."""
    found: list[str] = []
    for text in itertools.cycle(texts):
        here = list(re.finditer(r"\S+", text))
        found.append(text[: here[min(len(here), words) - 1].end()])
        words -= len(here)
        if words <= 0:
            break
    return found


def milliseconds(work: Callable[[str], object], text: str, rounds: int) -> float:
    """Return the median time of one reading of a text: time of one core, so that a busy machine does not blur it."""
    took = []
    for _ in range(rounds):
        begun = time.process_time()
        work(text)
        took.append((time.process_time() - begun) * 1000)
    return statistics.median(took)


def peak(work: Callable[[str], object], text: str) -> float:
    """Return the peak of what Python took while reading a text, in MB; spaCy's own C memory is not in it."""
    gc.collect()
    tracemalloc.start()
    work(text)
    top = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    return top / 1e6


def main(rounds: int) -> None:
    """Print the tables."""
    print(
        f"{platform.python_implementation()} {platform.python_version()}, {platform.machine()}, {os.cpu_count()} cores"
    )
    texts = notes()
    tokenizer, ruler = spacy.blank("en"), bare_ruler()
    begun = time.perf_counter()
    read("x")
    print(f"first reading, with the building of the pipeline: {time.perf_counter() - begun:.2f} s")
    readers: dict[str, Callable[[str], object]] = {
        "whole reading": read,
        "bare tokenizer": tokenizer,
        "bare SpanRuler": ruler,
    }
    for text in texts[:20]:
        for work in readers.values():
            work(text)

    lengths = [len(text.split()) for text in texts]
    print(f"\n{len(texts)} notes of {min(lengths)} to {max(lengths)} words, median {statistics.median(lengths):.0f}")
    print(f"{'':18s}{'ms a note':>12s}{'ms per 600 words':>18s}{'notes a second':>16s}{'times the ruler':>17s}")
    costs = {}
    for name, work in readers.items():
        took = [milliseconds(work, text, rounds) for text in texts]
        costs[name] = statistics.median(t * TYPICAL / n for t, n in zip(took, lengths, strict=True))
        times = costs[name] / costs.get("bare SpanRuler", costs[name])
        print(
            f"{name:18s}{statistics.median(took):12.2f}{costs[name]:18.2f}{1000 * len(took) / sum(took):16.0f}", end=""
        )
        print(f"{times:17.1f}" if name == "bare SpanRuler" else "")
    print(f"whole reading / bare SpanRuler: {costs['whole reading'] / costs['bare SpanRuler']:.1f}")

    print(f"\n{'words':>8s}{'ms':>10s}{'ms per 1000 words':>20s}{'one by one':>12s}{'ruler, ms':>12s}{'peak MB':>10s}")
    growth = {}
    for words in LENGTHS:
        pieces = of_length(texts, words)
        text, runs = "\n\n".join(pieces), 3 if words < 20_000 else 1
        took = milliseconds(read, text, runs)
        # The same notes, each by itself: what else the cost of a word hangs on, such as their tables, is the same.
        apart = sum(milliseconds(read, piece, runs) for piece in pieces)
        growth[words] = took / apart
        beside = milliseconds(ruler, text, 1)
        print(f"{words:8d}{took:10.1f}{1000 * took / words:20.1f}{1000 * apart / words:12.1f}", end="")
        print(f"{beside:12.1f}{peak(read, text):10.1f}")
    print(f"cost of {LENGTHS[-1]} words as one note / as the notes they are: {growth[LENGTHS[-1]]:.2f} (linear: 1.00)")
    print(f"peak memory of the process: {_process_peak():.0f} MB")


def _process_peak() -> float:
    """Return the largest memory the process ever had, in MB, as far as the system tells; else what it has now."""
    info = psutil.Process().memory_info()
    if sys.platform == "win32":
        return float(info.peak_wset) / 1e6
    import resource

    top = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    return max(info.rss, top * (1 if sys.platform == "darwin" else 1024)) / 1e6


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 5)
