"""The charts of the report. They are drawn without a display and come out the same every time."""

import io
import warnings
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from typing import Any

from matplotlib import rc_context, rcdefaults, rcParams
from matplotlib.axes import Axes
from matplotlib.figure import Figure
from matplotlib.patches import Patch

from notereader.audit.criteria import Criterion
from notereader.audit.pcharts import Chart
from notereader.audit.rates import Rate
from notereader.audit.results import Results
from notereader.audit.states import CONTRADICTORY, IMPLIED, SILENT, STATE_WORDS, STATED
from notereader.audit.tally import NoteCounts


@dataclass(frozen=True, slots=True)
class Inks:
    """Colours of the charts, each as #rrggbb. The shades of the states differ in lightness too."""

    paper: str
    words: str
    quiet: str
    grid: str
    signal: str
    stated: str
    implied: str
    contradictory: str
    silent: str

    def shade(self, letter: str) -> str:
        """Return the shade of a state."""
        return {STATED: self.stated, IMPLIED: self.implied, CONTRADICTORY: self.contradictory}.get(letter, self.silent)


PRINT = Inks(
    paper="#ffffff",
    words="#222222",
    quiet="#767676",
    grid="#dddddd",
    signal="#b2182b",
    stated="#1f5f8b",
    implied="#5b93b8",
    contradictory="#c46a00",
    silent="#f0f0f0",
)
# A hatch beside each shade, so that no one needs to tell colours.
_HATCHES = {STATED: "", IMPLIED: "///", CONTRADICTORY: "xxx", SILENT: ""}

# Charts to a row and the most that are drawn; all are in the table of periods.
ACROSS = 2
MOST_CHARTS = 20

_LOOK: dict[Any, Any] = {
    "font.family": "DejaVu Sans",
    "font.size": 9,
    "svg.hashsalt": "notereader",
    "svg.fonttype": "path",
    "hatch.linewidth": 0.4,
    "axes.spines.top": False,
    "axes.spines.right": False,
    "pdf.compression": 6,
    # Names of groups may hold dollar signs; they are no formulas.
    "text.parse_math": False,
}


@contextmanager
def looks(inks: Inks = PRINT) -> Iterator[None]:
    """Draw with the report's own look, whatever the person's settings are. One thread at a time may do so."""
    with rc_context(), warnings.catch_warnings():
        # Names in a script that the font lacks are drawn as boxes; the page beside has them right.
        warnings.filterwarnings("ignore", message="Glyph .* missing from font")
        rcdefaults()
        rcParams.update(_LOOK)
        for name in ("text.color", "axes.labelcolor", "xtick.color", "ytick.color"):
            rcParams[name] = inks.words
        rcParams["axes.edgecolor"] = inks.quiet
        rcParams["axes.facecolor"] = rcParams["figure.facecolor"] = rcParams["savefig.facecolor"] = inks.paper
        yield


def svg(figure: Figure) -> str:
    """Return a chart as SVG to be put into a page."""
    stream = io.StringIO()
    figure.savefig(stream, format="svg", metadata={"Date": None, "Creator": None})
    text = stream.getvalue()
    return text[text.index("<svg") :]


def state_chart(criteria: Sequence[Criterion], counts: NoteCounts, inks: Inks = PRINT) -> Figure:
    """Return bars of notes by state, one for each criterion, with the interval of the stated share."""
    figure, axes = _figure(0.34 * len(criteria) + 1.1)
    for at, criterion in enumerate(criteria):
        left = 0.0
        for letter in _HATCHES:
            share = counts.rate(criterion.key, letter).share or 0.0
            axes.barh(at, share, 0.68, left, **_filled(inks, letter))
            left += share
        _whisker(axes, counts.rate(criterion.key, STATED), at, inks)
    labels = [f"{c.label}  ({counts.of(c.key):,})" for c in criteria]
    _lay_out(axes, labels, inks)
    handles = [Patch(label=STATE_WORDS[letter], **_filled(inks, letter)) for letter in _HATCHES]
    axes.legend(handles=handles, loc="lower center", bbox_to_anchor=(0.4, 1.0), ncols=4, frameon=False)
    return figure


def corrected_chart(criteria: Sequence[Criterion], results: Results, inks: Inks = PRINT) -> Figure:
    """Return the share as read beside the corrected one, each with its interval."""
    held = [(c, found) for c in criteria if (found := results.corrected(c.key)) is not None]
    figure, axes = _figure(0.38 * len(held) + 1.1)
    for at, (criterion, found) in enumerate(held):
        raw = results.tally.as_read.rate(criterion.key, STATED)
        assert raw.share is not None and raw.low is not None and raw.high is not None
        axes.hlines(at - 0.15, raw.low, raw.high, color=inks.quiet, linewidth=1.5)
        axes.plot(raw.share, at - 0.15, "o", color=inks.paper, markeredgecolor=inks.quiet, markersize=6)
        axes.hlines(at + 0.15, found.low, found.high, color=inks.stated, linewidth=2.5)
        axes.plot(found.share, at + 0.15, "D", color=inks.stated, markersize=6)
    _lay_out(axes, [c.label for c, _ in held], inks)
    axes.plot([], [], "o-", color=inks.quiet, markerfacecolor=inks.paper, label="as read")
    axes.plot([], [], "D-", color=inks.stated, label="corrected for reader error")
    axes.legend(loc="lower center", bbox_to_anchor=(0.4, 1.0), ncols=2, frameon=False)
    return figure


def group_chart(criterion: Criterion, groups: dict[str, NoteCounts], inks: Inks = PRINT) -> Figure:
    """Return the stated share of one criterion in every group, with intervals."""
    figure, axes = _figure(0.32 * len(groups) + 0.9)
    for at, counts in enumerate(groups.values()):
        rate = counts.rate(criterion.key, STATED)
        if rate.share is not None and rate.low is not None and rate.high is not None:
            axes.hlines(at, rate.low, rate.high, color=inks.stated, linewidth=2)
            axes.plot(rate.share, at, "o", color=inks.stated, markersize=6)
    _lay_out(axes, [f"{name[:40]}  ({counts.of(criterion.key):,})" for name, counts in groups.items()], inks)
    axes.set_title(criterion.label, loc="left", fontsize=10, fontweight="bold")
    return figure


def period_charts(charts: Sequence[tuple[Criterion, Chart]], inks: Inks = PRINT, across: int = ACROSS) -> Figure:
    """Return p-charts side by side: shares, centre, limits, and signals marked by shape and colour."""
    rows = -(-len(charts) // across)
    figure = Figure(figsize=(8.0, 2.3 * rows + 0.3), layout="constrained")
    grid = figure.subplots(rows, across, squeeze=False, sharey=True)
    for at, axes in enumerate(grid.flat):
        if at < len(charts):
            _p_chart(axes, *charts[at], inks)
        else:
            axes.axis("off")
    return figure


def _p_chart(axes: Axes, criterion: Criterion, chart: Chart, inks: Inks) -> None:
    points = chart.points
    across = list(range(len(points)))
    for limit in ([p.low for p in points], [p.high for p in points]):
        axes.step(across, limit, where="mid", color=inks.quiet, linewidth=0.9, linestyle="--")
    axes.axhline(chart.centre, color=inks.quiet, linewidth=0.9)
    axes.plot(across, [p.share for p in points], "o-", color=inks.stated, linewidth=1.1, markersize=3.5)
    marked = [at for at in across if points[at].signals]
    axes.plot(
        marked, [points[at].share for at in marked], "s", color=inks.signal, markersize=7, fillstyle="none", mew=1.6
    )
    axes.set_title(criterion.label, loc="left", fontsize=9, fontweight="bold")
    axes.set_ylim(-0.04, 1.04)
    axes.yaxis.set_major_formatter(_as_percent)
    step = max(1, -(-len(points) // 6))
    axes.set_xticks(across[::step], [p.period for p in points][::step], fontsize=7.5)


def _figure(height: float) -> tuple[Figure, Axes]:
    figure = Figure(figsize=(8.0, height), layout="constrained")
    return figure, figure.subplots()


def _lay_out(axes: Axes, labels: Sequence[str], inks: Inks) -> None:
    axes.set_yticks(range(len(labels)), labels)
    axes.set_ylim(len(labels) - 0.5, -0.5)
    axes.set_xlim(0, 1)
    axes.xaxis.set_major_formatter(_as_percent)
    axes.tick_params(axis="y", length=0)
    axes.grid(axis="x", color=inks.grid, linewidth=0.6)
    axes.set_axisbelow(True)


def _whisker(axes: Axes, rate: Rate, at: float, inks: Inks) -> None:
    if rate.low is not None and rate.high is not None:
        axes.hlines(at, rate.low, rate.high, color=inks.paper, linewidth=3.2)
        axes.hlines(at, rate.low, rate.high, color=inks.words, linewidth=1.3)


def _filled(inks: Inks, letter: str) -> dict[str, Any]:
    """Return how the area of a state is filled."""
    # Silence is pale: its edge is what is seen of it.
    edge = inks.quiet if letter == SILENT else inks.paper
    return {"facecolor": inks.shade(letter), "hatch": _HATCHES[letter], "edgecolor": edge, "linewidth": 0.6}


def _as_percent(share: float, _position: object = None) -> str:
    return f"{100 * share:.0f} %"
