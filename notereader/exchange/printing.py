"""The printable summary of a record as plain text and as HTML."""

import textwrap
from collections.abc import Iterable, Iterator
from html import escape

from notereader.exchange.summary import Row, Section, Summary, summary_of
from notereader.record import Record

WIDTH = 92

_COLUMNS = (("Fact", 22), ("Value", 20), ("Stands as", 23), ("Words in the note", 35))

_NO_FACTS = "Entered, but nothing is recorded of it."

_SILENCE = "What the note does not say is not known to be good."


def summary_text(record: Record) -> str:
    """Return the summary of a record as plain text."""
    summary = summary_of(record)
    lines = [
        summary.title,
        "",
        *(_wrapped(f"!! {summary.warning}") if summary.warning else []),
        *_wrapped(summary.standing),
        *_text_list("CAUTIONS", summary.cautions),
    ]
    for section in summary.sections:
        lines += _text_section(section)
    if summary.unknown:
        lines += ["", "NOT STATED IN THE NOTE", *_wrapped(_SILENCE, "  ")]
    for unknown in summary.unknown:
        lines += _text_list(f"  {unknown.weight}", unknown.lines)
    lines += _text_list("CONTRADICTIONS AND UNUSUAL FINDINGS", summary.contradictions)
    if summary.withdrawn:
        lines += ["", "WITHDRAWN: read by the program, found wrong by a person, and no finding"]
    for section in summary.withdrawn:
        lines += _text_section(section)
    lines += ["", *_wrapped(summary.origin)]
    return "\n".join(lines).rstrip() + "\n"


def summary_html(record: Record) -> str:
    """Return the summary of a record as one HTML page that needs nothing else, made of what Qt's rich text knows.

    Every text of the record is escaped; nothing in it is ever taken for HTML.
    """
    summary = summary_of(record)
    body = [
        f"<h1>{escape(summary.title)}</h1>",
        f'<p class="warning"><b>{escape(summary.warning)}</b></p>' if summary.warning else "",
        f"<p>{escape(summary.standing)}</p>",
        *_html_list("Cautions", summary.cautions),
        *(line for section in summary.sections for line in _html_section(section)),
        *_html_unknown(summary),
        *_html_list("Contradictions and unusual findings", summary.contradictions),
        *_html_withdrawn(summary),
        f'<p class="origin">{escape(summary.origin)}</p>',
    ]
    return _PAGE.format(title=escape(summary.title), body="\n".join(line for line in body if line))


# Only fixed text stands here. The policy forbids scripts and anything from elsewhere even where a browser shows it.
_PAGE = """<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>{title}</title>
<style>
body {{ font-family: sans-serif; font-size: 10pt; color: #000000; background-color: #ffffff; }}
h1 {{ font-size: 16pt; }}
h2 {{ font-size: 12pt; margin-top: 14px; }}
h3 {{ font-size: 10pt; }}
th {{ text-align: left; background-color: #eeeeee; }}
.warning {{ font-size: 12pt; border: 2px solid #000000; padding: 6px; }}
.origin {{ font-size: 8pt; }}
</style>
</head>
<body>
{body}
</body>
</html>
"""


def _wrapped(text: str, indent: str = "", first: str | None = None) -> list[str]:
    return textwrap.wrap(text, WIDTH, initial_indent=indent if first is None else first, subsequent_indent=indent)


def _text_list(title: str, items: Iterable[str]) -> list[str]:
    lines = [line for item in items for line in _wrapped(item, "    ", "  - ")]
    return ["", title, *lines] if lines else []


def _text_section(section: Section) -> list[str]:
    rows = [line for row in section.rows for line in _text_row(row)]
    return ["", section.title.upper(), *(rows or [f"  {_NO_FACTS}"])]


def _text_row(row: Row) -> Iterator[str]:
    mark = "  " if row.confirmed else "? "
    yield from _wrapped(f"{row.label}: {row.value}   [{row.standing}]", "    ", mark)
    for words in row.words:
        yield from _wrapped(f"“{words}”", "        ", "      ")
    for remark in row.remarks:
        yield from _wrapped(remark, "        ", "      * ")


def _html_list(title: str, items: Iterable[str], level: str = "h2") -> list[str]:
    lines = [f"<li>{escape(item)}</li>" for item in items]
    return [f"<{level}>{escape(title)}</{level}>", "<ul>", *lines, "</ul>"] if lines else []


def _html_unknown(summary: Summary) -> list[str]:
    if not summary.unknown:
        return []
    lists = [line for each in summary.unknown for line in _html_list(each.weight, each.lines, "h3")]
    return ["<h2>Not stated in the note</h2>", f"<p>{_SILENCE}</p>", *lists]


def _html_section(section: Section) -> list[str]:
    head = "".join(f'<th width="{width}%">{title}</th>' for title, width in _COLUMNS)
    rows = [_html_row(row) for row in section.rows]
    table = ['<table border="1" cellspacing="0" cellpadding="4" width="100%">', f"<tr>{head}</tr>", *rows, "</table>"]
    return [f"<h2>{escape(section.title)}</h2>", *(table if rows else [f"<p>{_NO_FACTS}</p>"])]


def _html_row(row: Row) -> str:
    value = escape(row.value) if row.confirmed else f"? {escape(row.value)}"
    standing = escape(row.standing) if row.confirmed else f"<b>{escape(row.standing)}</b>"
    words = "<br>".join([f"“{escape(words)}”" for words in row.words] + [f"<i>{escape(r)}</i>" for r in row.remarks])
    return f"<tr><td>{escape(row.label)}</td><td>{value}</td><td>{standing}</td><td>{words}</td></tr>"


def _html_withdrawn(summary: Summary) -> list[str]:
    if not summary.withdrawn:
        return []
    lines = [line for section in summary.withdrawn for line in _html_section(section)]
    return ["<h2>Withdrawn</h2>", "<p>Read by the program, found wrong by a person, and no finding.</p>", *lines]
