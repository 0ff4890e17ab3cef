"""Charts of progress and of the teacher's view, drawn with matplotlib without any window."""

import contextlib
import io
import os
import tempfile
import textwrap
from math import ceil
from pathlib import Path
from typing import TYPE_CHECKING, Any

from notereader.practice.faults import PracticeFault
from notereader.practice.progress import KindProgress, Progress
from notereader.practice.teacher import TeacherView

if TYPE_CHECKING:
    from matplotlib.figure import Figure

FORMATS = ("png", "svg", "pdf")
_COLUMNS = 3
_INK, _BAND, _ALARM = "#1b4965", "#9fc3d6", "#9b2226"


def progress_figure(progress: Progress) -> "Figure":
    """Return one small panel for each kind that was tried: share right by case, estimate with its range.

    A cross marks a case with an over-statement.
    """
    kinds = [kind for kind in progress.kinds if kind.trials]
    rows = max(1, ceil(len(kinds) / _COLUMNS))
    figure = _figure(11.0, 1.4 + 2.0 * rows)
    axes = figure.subplots(rows, _COLUMNS, sharex=True, sharey=True, squeeze=False)
    for place, axis in enumerate(axes.flat):
        if place < len(kinds):
            _panel(axis, kinds[place], max(5, progress.cases))
        else:
            axis.set_visible(False)
    who = f" of {progress.student}" if progress.student else ""
    figure.suptitle(f"Progress{who}: share right, case by case; the weakest kind first", fontsize=13, color=_INK)
    legend = f"dots: one case; line: estimate with its {progress.interval:.0%} range; crosses: something over-stated"
    _footer(figure, f"{legend}. {progress.caution}")
    return figure


def teacher_figure(view: TeacherView) -> "Figure":
    """Return the fields as items: share right with its range, and discrimination where it can be reckoned."""
    lines = view.fields
    figure = _figure(11.0, 2.2 + 0.28 * max(1, len(lines)))
    left, right = figure.subplots(1, 2, sharey=True, width_ratios=[3, 2])
    for place, line in enumerate(lines):
        left.plot([line.low, line.high], [place, place], color=_BAND, linewidth=6, solid_capstyle="butt")
        left.plot(line.difficulty, place, "X" if line.over else "o", color=_ALARM if line.over else _INK, markersize=6)
        if line.discrimination is not None:
            right.barh(place, line.discrimination, color=_INK if line.discrimination >= 0 else _ALARM, height=0.6)
    left.set_yticks(
        range(len(lines)), [f"{line.label} ({_group(line.field)}; {line.trials})" for line in lines], fontsize=8
    )
    left.set_ylim(len(lines) - 0.4, -0.6)
    left.set_xlim(0, 1)
    left.set_xlabel("share right, with its range; a cross: over-stated by someone")
    right.set_xlim(-1, 1)
    right.axvline(0, color=_INK, linewidth=0.8)
    right.set_xlabel(
        "discrimination (correlation with the rest)" if not view.note else "discrimination: too few students"
    )
    for axis in (left, right):
        axis.set_axisbelow(True)
        axis.grid(axis="x", color="#dddddd")
    figure.suptitle(f"Fields as items, {len(view.students)} students, the hardest first", fontsize=13, color=_INK)
    _footer(figure, f"{view.note} {view.caution}".strip())
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


def _panel(axis: Any, kind: KindProgress, cases: int) -> None:
    places = [point.number for point in kind.points]
    low, high = [p.low for p in kind.points], [p.high for p in kind.points]
    axis.fill_between(places, low, high, color=_BAND, alpha=0.45)
    axis.vlines(places, low, high, color=_BAND, linewidth=5)
    axis.plot(places, [p.middle for p in kind.points], "-", color=_INK, linewidth=1.6)
    for point in kind.points:
        share = point.right / point.trials
        axis.plot(point.number, share, "X" if point.over else "o", color=_ALARM if point.over else _INK, markersize=6)
    axis.set_ylim(-0.06, 1.06)
    axis.set_yticks([0, 0.5, 1], ["0", "half", "all"])
    axis.set_xlim(0.5, cases + 0.5)
    axis.set_xticks(range(1, cases + 1, max(1, cases // 8)))
    axis.tick_params(labelbottom=True, labelsize=8)
    axis.grid(color="#dddddd")
    few = "; few trials" if kind.unsure else ""
    axis.set_title("\n".join(textwrap.wrap(f"{kind.label} ({kind.right} of {kind.trials}{few})", 44)), fontsize=9)


def _figure(width: float, height: float) -> "Figure":
    # Imported here: it takes long, and most commands draw nothing. No pyplot: it would keep figures and want a window.
    from matplotlib.figure import Figure

    return Figure(figsize=(width, height), layout="constrained")


def _footer(figure: "Figure", words: str) -> None:
    figure.supxlabel("\n".join(textwrap.wrap(words, 150)), fontsize=7.5, color="#444444")


def _group(field: str) -> str:
    return {"repairs": "tendon", "pulleys": "pulley", "injuries": "other structure"}.get(field.split(".")[0], "note")
