"""A chart of matplotlib as pixels for the window. Knows no Qt."""

import threading
from dataclasses import dataclass

from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.figure import Figure

# Held while a chart is drawn with settings of its own: matplotlib's settings are those of the whole process.
DRAWING = threading.Lock()


@dataclass(frozen=True, slots=True)
class Picture:
    """A drawn chart: its size in pixels and its pixels as RGBA, row by row."""

    width: int
    height: int
    pixels: bytes


def picture_of(figure: Figure) -> Picture:
    """Draw a figure at its own resolution."""
    canvas = FigureCanvasAgg(figure)
    canvas.draw()  # type: ignore[no-untyped-call]
    pixels = canvas.buffer_rgba()  # type: ignore[no-untyped-call]
    return Picture(pixels.shape[1], pixels.shape[0], pixels.tobytes())
