"""Charts of an audit as pixels in the colours and letters of the window. Knows no Qt."""

from collections.abc import Iterator

from matplotlib.figure import Figure

from notereader.audit.criteria import NEEDS
from notereader.audit.report.charts import Inks, corrected_chart, group_chart, looks, period_charts, state_chart
from notereader.audit.report.rows import groups_shown
from notereader.audit.results import Results
from notereader.desktop.audit.asking import Drawing
from notereader.desktop.charts import DRAWING, Picture, picture_of

# The size in points in which the report draws its letters, and pixels to an inch on a screen of usual sharpness.
_LETTERS, _INCH = 9.0, 96
# Narrower than this, in inches of the report, a chart has no room beside its labels.
_NARROWEST = 4.0


def drawn(results: Results, what: str, detail: str, how: Drawing) -> list[Picture]:
    """Draw charts, as wide as asked for and as high as they need; none where there is nothing to draw."""
    inks = Inks(how.paper, how.words, how.quiet, how.grid, how.signal, *how.states)
    dots = _INCH * how.letters / _LETTERS
    pictures = []
    with DRAWING, looks(inks):
        for figure in _figures(results, what, detail, inks):
            figure.set_size_inches(max(_NARROWEST, how.width / dots), figure.get_figheight())
            figure.set_dpi(dots * how.sharpness)
            pictures.append(picture_of(figure))
    return pictures


def _figures(results: Results, what: str, detail: str, inks: Inks) -> Iterator[Figure]:
    if what == "states":
        listed = results.heaviest() if detail == NEEDS else results.listed(detail)
        if listed:
            yield state_chart(listed, results.tally.whole, inks)
    elif what == "groups":
        groups = results.tally.by_group[detail]
        for criterion in results.heaviest():
            yield group_chart(criterion, {name: groups[name] for name in groups_shown(results, detail)}, inks)
    elif what == "period":
        criterion = next(c for c in results.listed(NEEDS) if c.key == detail)
        yield period_charts([(criterion, results.charts[detail])], inks, across=1)
    elif held := [c for c in results.heaviest() if results.corrected(c.key)]:
        yield corrected_chart(held, results, inks)
