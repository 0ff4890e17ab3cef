"""The chart of strength range against load ranges over the weeks. Knows no Qt; matplotlib comes with it."""

from dataclasses import dataclass

from matplotlib import rc_context
from matplotlib.axes import Axes
from matplotlib.figure import Figure

from notereader.desktop.charts import DRAWING, Picture, picture_of
from notereader.desktop.meaning_page import TendonLine

_DPI = 96
_ROW = 21
_TOP, _BOTTOM = 58, 60


@dataclass(frozen=True, slots=True)
class ChartInks:
    """Colours of a chart, each as #rrggbb. Shapes and hatching say the same without them."""

    paper: str
    words: str
    faint: str
    strength: str
    load: str


def draw_chart(line: TendonLine, inks: ChartInks, width: int, letters: float, sharpness: float = 1.0) -> Picture:
    """Draw a tendon's ranges as bars over newton: the activities above, the days below, all on one scale.

    `width` is in pixels of the screen's own measure, `letters` the size of its letters in points, `sharpness` how
    many real pixels make one. A range is a bar; a tendon without figures is drawn as unknown, never as zero.
    """
    scale = letters / 9.0
    loads = len(line.shown.loads) if line.shown and line.strength else 0
    days = len(line.shown.table) if line.shown and line.strength else 0
    height = (_TOP + _BOTTOM + _ROW * (loads + days + 1)) * scale
    with DRAWING, rc_context({"font.size": letters, "text.parse_math": False, "hatch.linewidth": 0.6}):
        figure = Figure(figsize=(width / _DPI, height / _DPI), dpi=_DPI * sharpness, facecolor=inks.paper)
        axes = figure.add_axes((0.0, 0.0, 1.0, 1.0))
        # Room for the row names: the longest has about eleven letters.
        left = min(0.5, 78 * scale / width)
        axes.set_position((left, _BOTTOM * scale / height, 0.96 - left, 1 - (_TOP + _BOTTOM) * scale / height))
        _dress(axes, inks)
        if days:
            _bars(axes, line, inks)
        else:
            _unknown(axes, inks)
        axes.set_title(
            line.where, loc="left", color=inks.words, fontweight="bold", pad=20 * scale, x=-left / (0.96 - left)
        )
        return picture_of(figure)


def _dress(axes: Axes, inks: ChartInks) -> None:
    axes.set_facecolor(inks.paper)
    axes.tick_params(colors=inks.words, length=0)
    for side in axes.spines.values():
        side.set_visible(False)
    axes.set_xlabel("newton (N)", color=inks.words)
    axes.grid(axis="x", color=inks.faint, linewidth=0.4, alpha=0.6)
    axes.set_axisbelow(True)


def _bars(axes: Axes, line: TendonLine, inks: ChartInks) -> None:
    assert line.shown is not None and line.strength is not None
    names: list[str] = []
    for load in line.shown.loads:
        axes.barh(
            len(names), load.high - load.low, 0.5, load.low,
            facecolor=inks.paper, edgecolor=inks.load, hatch="////", linewidth=1.0,
        )  # fmt: skip
        names.append(load.short)
    names.append("")
    for row in line.shown.table:
        here = len(names)
        axes.barh(here - 0.2, row.breaking.high - row.breaking.low, 0.34, row.breaking.low, color=inks.strength)
        axes.barh(
            here + 0.2, row.gap.high - row.gap.low, 0.28, row.gap.low,
            facecolor=inks.paper, edgecolor=inks.strength, linewidth=1.2,
        )  # fmt: skip
        names.append(f"▸ day {row.day}" if row.day == line.strength.day else f"day {row.day}")
    axes.set_yticks(range(len(names)), names)
    for label in axes.get_yticklabels():
        label.set_fontweight("bold" if label.get_text().startswith("▸") else "normal")
    axes.set_ylim(len(names) - 0.4, -0.6)
    axes.set_xlim(left=0)
    top = len(line.shown.loads)
    axes.text(0, top + 0.1, "full: breaking, open: 2 mm gap", color=inks.words, va="center")
    axes.text(0, -0.95, "force in the tendon" if top else "no published forces", color=inks.words, va="center")


def _unknown(axes: Axes, inks: ChartInks) -> None:
    axes.barh(0, 1, 0.8, 0, facecolor=inks.paper, edgecolor=inks.faint, hatch="xx", linestyle="--")
    words = axes.text(0.5, 0, "unknown", color=inks.words, ha="center", va="center", fontweight="bold")
    words.set_bbox(dict(facecolor=inks.paper, edgecolor="none", pad=4))
    axes.set_xlim(0, 1)
    axes.set_xticks([])
    axes.set_yticks([])
