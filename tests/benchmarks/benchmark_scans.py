"""What the reader loses on scanned notes: the notes of the tests are printed, spoiled, scanned and read. Printed only.

Run: python tests/benchmarks/benchmark_scans.py [every n-th note of each collection, 3 unless told]

Needs Tesseract. 'fair' and 'poor' pages lie askew (by 2 and 3 degrees), so that straightening is measured with them.
"""

import os
import platform
import re
import statistics
import sys
import textwrap
import time
from pathlib import Path

TESTS = Path(__file__).resolve().parents[1]
sys.path[:0] = [str(TESTS / "intake"), str(TESTS / "corpus")]

import matplotlib  # noqa: E402
from collections_of_notes import notes, places  # noqa: E402
from intake_scanning import FAX_DPI, image_bytes, printed, scanned  # noqa: E402
from PIL import Image, ImageFont  # noqa: E402
from scoring import Tally, score  # noqa: E402

from notereader.intake import IntakeRefused, read_bytes, read_text  # noqa: E402
from notereader.reading import SURE, read_note  # noqa: E402

QUALITIES = ("good", "fair", "poor")
# Typewriter print of 10 points, so that columns stay columns: characters a line, lines a page.
SIZE, WIDTH, LINES = 42, 80, 50
# Comes with the library of charts, so that the measurement is the same everywhere.
_ROW = re.compile(r"\S {3,}\S|\|.*\|")
FONT = Path(matplotlib.get_data_path()) / "fonts" / "ttf" / "DejaVuSansMono.ttf"


def pages_of(text: str) -> list[Image.Image]:
    """Return a note as printed pages; a grid wider than the page is printed smaller, for nobody wraps its rows."""
    given = text.split("\n")
    width = max([WIDTH, *(len(line) for line in given if _ROW.search(line))])
    size, rows = SIZE * WIDTH // width, LINES * width // WIDTH
    lines: list[str] = []
    for line in given:
        lines += textwrap.wrap(line, width, drop_whitespace=False) or [""]
    font = ImageFont.truetype(str(FONT), size)
    return [printed("\n".join(lines[at : at + rows]), size, font=font) for at in range(0, len(lines), rows)]


def scan_of(text: str, quality: str) -> bytes:
    """Return a note as a file of scanned pages: TIFF, for a fax packed as faxes are."""
    first, *others = [scanned(page, quality, seed) for seed, page in enumerate(pages_of(text), 1)]
    packing = {"compression": "group4"} if quality == "poor" else {"compression": "tiff_lzw"}
    dpi = FAX_DPI if quality == "poor" else (300, 300) if quality == "good" else (200, 200)
    return image_bytes(first, "TIFF", dpi, save_all=True, append_images=others, **packing)


class Level:
    """What was counted at one quality."""

    def __init__(self) -> None:
        self.tally = Tally()
        self.refused = 0
        self.unsure: list[float] = []
        self.seconds: list[float] = []

    def read(self, name: str, data: bytes, key: dict) -> None:
        """Read one scan and hold it against its key."""
        begun = time.perf_counter()
        try:
            note = read_bytes(data, "scan.tif")
        except IntakeRefused:
            self.refused += 1
            return
        self.seconds.append(time.perf_counter() - begun)
        self.unsure.append(sum(word.confidence < SURE for word in note.confidences) / len(note.confidences))
        record = read_note(note).model_dump(mode="json")
        self.tally.add(score(name, note.text, key, record))


def row(name: str, tally: Tally, level: Level | None) -> str:
    """Return one line of the table."""
    right, wrong = sum(tally.right.values()), tally.wrong_facts
    cells = [f"{name:8s}", f"{right + sum(tally.missed.values()):6d}", f"{tally.f1():.4f}"]
    cells += [f"{tally.f1('repairs', 'pulleys'):.4f}", f"{len(tally.overstated):5d}"]
    cells += [f"{100 * len(tally.overstated) / max(1, tally.promising):6.2f}"]
    cells += [f"{100 * sum(fault.reasoned for fault in wrong) / max(1, len(wrong)):6.1f}", f"{tally.broken_quotes:5d}"]
    if level:
        cells += [f"{100 * statistics.mean(level.unsure):6.1f}", f"{statistics.median(level.seconds):6.1f}"]
        cells += [f"{level.refused:4d}"]
    return "  ".join(cells)


def main(step: int) -> None:
    """Print the table."""
    print(f"{platform.platform()}, {os.cpu_count()} cores, Python {platform.python_version()}")
    chosen = [
        (f"{name}/{note}", text, key)
        for name, folder in places().items()
        if folder.is_relative_to(TESTS)
        for note, (text, key) in [*notes(folder).items()][::step]
    ]
    print(f"{len(chosen)} notes of tests/notes, {sum(len(pages_of(text)) for _, text, _ in chosen)} pages")
    print("quality   facts  F1      F1 of repairs and pulleys, over-stated, % of promises, wrong with a reason %,")
    print("          quotes not in the text, words below the limit of sureness %, seconds a note, refused")
    clean = Tally()
    for name, text, key in chosen:
        clean.add(score(name, text, key, read_note(read_text(text)).model_dump(mode="json")))
    print(row("text", clean, None), flush=True)
    for quality in QUALITIES:
        level = Level()
        for name, text, key in chosen:
            level.read(name, scan_of(text, quality), key)
        print(row(quality, level.tally, level), flush=True)


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 3)
