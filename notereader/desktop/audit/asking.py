"""What the parts of the page ask of the desk and get from it. Knows no Qt."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Literal

if TYPE_CHECKING:
    from notereader.audit.report.rows import Line
    from notereader.desktop.audit.desk import Desk

# A job for the desk, and what is done with its result in the thread of the window.
Ask = Callable[["Callable[[Desk], Any]", Callable[[Any], None]], None]


@dataclass(frozen=True, slots=True)
class Choice:
    """What is to be audited: a folder, a table, the file or URL of a casebook; '' is the person's own casebook.

    The rest says what the columns of a table hold, '' where none does.
    """

    place: str = ""
    sheet: str = ""
    text: str = ""
    file: str = ""
    name: str = ""
    day: str = ""
    day_first: bool | None = None


@dataclass(frozen=True, slots=True)
class Counting:
    """How to read and count. `processes` is how many processes read; `afresh` throws earlier work away."""

    groups: tuple[str, ...] = ()
    period: Literal["month", "quarter", "year"] = "month"
    with_words: bool = False
    processes: int = 1
    afresh: bool = False


@dataclass(frozen=True, slots=True)
class Found:
    """What a source is: in words, its sheets and headings where it is a table, and what to group by.

    `text` is the column that holds the notes as far as can be guessed. `kept` notes were read before; `stale` says that
    this was with other knowledge, so that they have to be read afresh.
    """

    words: str
    is_table: bool
    sheets: tuple[str, ...]
    headings: tuple[str, ...]
    text: str
    groups: tuple[str, ...]
    kept: int = 0
    stale: bool = False


@dataclass(frozen=True, slots=True)
class Overview:
    """What was counted, as far as every part of the page needs it; `standing` says it in a line.

    `lists` and `charted` are (key, words) of the lists of criteria and of the criteria with a chart over time,
    `columns` what notes are grouped by, `strata` what a sample can be drawn from.
    """

    standing: str
    summary: str
    counts: tuple[tuple[str, int], ...]
    cautions: tuple[str, ...]
    lists: tuple[tuple[str, str], ...]
    columns: tuple[str, ...]
    strata: tuple[str, ...]
    charted: tuple[tuple[str, str], ...]
    with_words: bool


@dataclass(frozen=True, slots=True)
class Sheet:
    """A table as it is shown, and a sentence about it."""

    head: tuple[str, ...]
    lines: "tuple[Line, ...]"
    words: str = ""


@dataclass(frozen=True, slots=True)
class Want:
    """Which notes are wanted: those in which a criterion is in a state, of a group, of a period; '' is any.

    `words` says so for people.
    """

    key: str = ""
    letter: str = ""
    column: str = ""
    group: str = ""
    period: str = ""
    words: str = ""


@dataclass(frozen=True, slots=True)
class Opening:
    """A case to open: the file or URL of its casebook, '' for the person's own, its number and its name."""

    place: str
    number: int
    title: str


@dataclass(frozen=True, slots=True)
class Drawing:
    """How a chart is to be drawn: its width in pixels, the size of letters in points, real pixels to one, colours."""

    width: int
    letters: float
    sharpness: float
    paper: str
    words: str
    quiet: str
    grid: str
    signal: str
    states: Sequence[str]
