"""Charts of progress and of the teacher's view, drawn with matplotlib without any window."""

import contextlib
import io
import os
import tempfile
import textwrap
from collections.abc import Callable
from dataclasses import dataclass
from functools import wraps
from math import ceil
from pathlib import Path
from typing import TYPE_CHECKING, Any, ParamSpec

from notereader.practice.faults import PracticeFault
from notereader.practice.progress import KindProgress, Progress
from notereader.practice.teacher import TeacherView

if TYPE_CHECKING:
    from matplotlib.figure import Figure

_P = ParamSpec("_P")
FORMATS = ("png", "svg", "pdf")
# Letters in points, width in inches, letters of a line and panels beside one another, as they fit a printed page.
_LETTERS, _WIDTH, _LINE, _COLUMNS = 9.0, 11.0, 150, 3


@dataclass(frozen=True, slots=True)
class Inks:
    """Colours of a chart, each as #rrggbb. Shapes say the same without them."""

    paper: str = "#ffffff"
    words: str = "#1b1b1b"
    faint: str = "#dddddd"
    ink: str = "#1b4965"
    band: str = "#9fc3d6"
    alarm: str = "#9b2226"


PRINTED = Inks()


def _plainly(draw: Callable[_P, "Figure"]) -> Callable[_P, "Figure"]:
    """Let a figure take every name as it is written: matplotlib would read formulas between dollar signs."""

    @wraps(draw)
    def drawn(*args: _P.args, **how: _P.kwargs) -> "Figure":
        from matplotlib import rc_context

        with rc_context({"text.parse_math": False}):
            return draw(*args, **how)

    return drawn


@_plainly
def progress_figure(
    progress: Progress, inks: Inks = PRINTED, width: float = _WIDTH, letters: float = _LETTERS
) -> "Figure":
    """Return one small panel for each kind that was tried: share right by case, estimate with its range.

    A cross marks a case with an over-statement. `width` is in inches, `letters` in points.
    """
    kinds = [kind for kind in progress.kinds if kind.trials]
    scale = letters / _LETTERS
    columns = max(1, round(width / (_WIDTH / _COLUMNS * scale)))
    rows = max(1, ceil(len(kinds) / columns))
    figure = _figure(width, (1.4 + 2.0 * rows) * scale, inks)
    axes = figure.subplots(rows, columns, sharex=True, sharey=True, squeeze=False)
    for place, axis in enumerate(axes.flat):
        if place < len(kinds):
            _panel(axis, kinds[place], max(5, progress.cases), inks, letters)
        else:
            axis.set_visible(False)
    who = f" of {progress.student}" if progress.student else ""
    title = f"Progress{who}: share right, case by case; the weakest kind first"
    figure.suptitle(_wrapped(title, 80, width / scale), fontsize=1.4 * letters, color=inks.words)
    legend = f"dots: one case; line: estimate with its {progress.interval:.0%} range; crosses: something over-stated"
    _footer(figure, f"{legend}. {progress.caution}", inks, width, letters)
    return figure


@_plainly
def teacher_figure(
    view: TeacherView, inks: Inks = PRINTED, width: float = _WIDTH, letters: float = _LETTERS
) -> "Figure":
    """Return the fields as items: share right with its range, and discrimination where it can be reckoned."""
    lines, scale = view.fields, letters / _LETTERS
    figure = _figure(width, (2.2 + 0.28 * max(1, len(lines))) * scale, inks)
    left, right = figure.subplots(1, 2, sharey=True, width_ratios=[3, 2])
    for place, line in enumerate(lines):
        left.plot([line.low, line.high], [place, place], color=inks.band, linewidth=6, solid_capstyle="butt")
        mark, ink = ("X", inks.alarm) if line.over else ("o", inks.ink)
        left.plot(line.difficulty, place, mark, color=ink, markersize=8, markeredgecolor=inks.paper, clip_on=False)
        if line.discrimination is not None:
            right.barh(
                place, line.discrimination, color=inks.ink if line.discrimination >= 0 else inks.alarm, height=0.6
            )
    left.set_yticks(range(len(lines)), [f"{line.label} ({_group(line.field)}; {line.trials})" for line in lines])
    left.set_ylim(len(lines) - 0.4, -0.6)
    left.set_xlim(0, 1)
    share_words = "share right, with its range; a cross: over-stated by someone"
    left.set_xlabel(_wrapped(share_words, 70, width * 0.4 / scale), color=inks.words, fontsize=letters)
    right.set_xlim(-1, 1)
    right.axvline(0, color=inks.words, linewidth=0.8)
    told = "discrimination (correlation with the rest)" if not view.note else "discrimination: too few students"
    right.set_xlabel(_wrapped(told, 70, width * 0.3 / scale), color=inks.words, fontsize=letters)
    for axis in (left, right):
        axis.set_axisbelow(True)
        axis.grid(axis="x", color=inks.faint)
        # What is shown stands above: the chart is as long as there are fields.
        axis.xaxis.tick_top()
        axis.xaxis.set_label_position("top")
        _dress(axis, inks, 0.9 * letters)
    students = "1 student" if len(view.students) == 1 else f"{len(view.students)} students"
    title = f"Fields as items, {students}, the hardest first"
    figure.suptitle(_wrapped(title, 80, width / scale), fontsize=1.4 * letters, color=inks.words)
    _footer(figure, f"{view.note} {view.caution}".strip(), inks, width, letters)
    return figure


def save_figure(figure: "Figure", path: Path) -> None:
    """Write a figure as .png, .svg or .pdf, whole or not at all. Raises PracticeFault."""
    form = path.suffix.lower().lstrip(".")
    if form not in FORMATS:
        raise PracticeFault(f"{path}: a chart is written as {', '.join('.' + f for f in FORMATS)}. Give such a name.")
    stream = io.BytesIO()
    figure.savefig(stream, format=form, dpi=130)
    part = None
    try:
        handle, part = tempfile.mkstemp(dir=path.resolve().parent, prefix=".chart", suffix=".part")
        with os.fdopen(handle, "wb") as target:
            target.write(stream.getvalue())
        os.replace(part, path)
    except OSError as fault:
        if part is not None:
            with contextlib.suppress(OSError):
                os.unlink(part)
        reason = fault.strerror or type(fault).__name__
        raise PracticeFault(f"{path} could not be written: {reason}. Check the folder and try again.") from None


def _panel(axis: Any, kind: KindProgress, cases: int, inks: Inks, letters: float) -> None:
    places = [point.number for point in kind.points]
    low, high = [p.low for p in kind.points], [p.high for p in kind.points]
    axis.fill_between(places, low, high, color=inks.band, alpha=0.45)
    axis.vlines(places, low, high, color=inks.band, linewidth=5)
    axis.plot(places, [p.middle for p in kind.points], "-", color=inks.ink, linewidth=1.6)
    for point in kind.points:
        share = point.right / point.trials
        mark, ink = ("X", inks.alarm) if point.over else ("o", inks.ink)
        axis.plot(point.number, share, mark, color=ink, markersize=8, markeredgecolor=inks.paper)
    axis.set_ylim(-0.06, 1.06)
    axis.set_yticks([0, 0.5, 1], ["0", "half", "all"])
    axis.set_xlim(0.5, cases + 0.5)
    axis.set_xticks(range(1, cases + 1, max(1, cases // 8)))
    axis.tick_params(labelbottom=True)
    axis.grid(color=inks.faint)
    _dress(axis, inks, 0.9 * letters)
    few = "; few trials" if kind.unsure else ""
    title = "\n".join(textwrap.wrap(f"{kind.label} ({kind.right} of {kind.trials}{few})", 44))
    axis.set_title(title, fontsize=letters, color=inks.words)


def _dress(axis: Any, inks: Inks, letters: float) -> None:
    axis.set_facecolor(inks.paper)
    axis.tick_params(colors=inks.words, labelsize=letters)
    for side in axis.spines.values():
        side.set_color(inks.words)


def _wrapped(words: str, letters: int, inches: float) -> str:
    """Break words into lines that hold `letters` letters on the printed page and fewer on less room."""
    return "\n".join(textwrap.wrap(words, max(24, int(letters * inches / _WIDTH))))


def _figure(width: float, height: float, inks: Inks) -> "Figure":
    # Imported here: it takes long, and most commands draw nothing. No pyplot: it would keep figures and want a window.
    from matplotlib.figure import Figure

    return Figure(figsize=(width, height), layout="constrained", facecolor=inks.paper)


def _footer(figure: "Figure", words: str, inks: Inks, width: float, letters: float) -> None:
    lines = _wrapped(words, _LINE, width * _LETTERS / letters)
    figure.supxlabel(lines, fontsize=7.5 * letters / _LETTERS, color=inks.words)


def _group(field: str) -> str:
    return {"repairs": "tendon", "pulleys": "pulley", "injuries": "other structure"}.get(field.split(".")[0], "note")
