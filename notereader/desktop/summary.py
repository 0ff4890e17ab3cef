"""The printable summary: values with their words, what is unknown, the picture and the cautions, as PDF through Qt."""

from html import escape
from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF, QUrl
from PySide6.QtGui import QFont, QPageLayout, QPageSize, QPdfWriter, QTextDocument

from notereader.desktop.export import how_settled, open_facts, unknown_of
from notereader.desktop.files import write_whole
from notereader.desktop.finger import digits_to_draw, drawing_of
from notereader.desktop.finger_painter import WIDTH, height_of
from notereader.desktop.picture_view import image_of
from notereader.desktop.rows import Heading, Item, Row, Standing, items_of
from notereader.record import Record

_PICTURE_WIDTH = 250
_PICTURES_A_ROW = 2
# QTextDocument keeps two centimetres of its own around what it prints.
_MARGIN_MM = 1
_NAMED = "elements"
_SAID = frozenset({Standing.CONFIRMED, Standing.CORRECTED, Standing.ADDED})
_STYLE = """
body { color: #111; } h1 { font-size: 15pt; } h2 { font-size: 11.5pt; margin-bottom: 2px; }
td { padding: 2px 8px 2px 0; } .quote { color: #444; } .open { font-weight: bold; }
"""


def save_summary(record: Record, title: str, path: Path) -> None:
    """Save the summary as PDF. Raises OSError where it cannot."""
    write_whole(path, summary_pdf(record, title))


def summary_pdf(record: Record, title: str) -> bytes:
    """Return the summary as PDF on A4 pages."""
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setTitle(title)
    writer.setCreator("notereader")
    writer.setPageLayout(
        QPageLayout(
            QPageSize(QPageSize.PageSizeId.A4),
            QPageLayout.Orientation.Portrait,
            QMarginsF(_MARGIN_MM, _MARGIN_MM, _MARGIN_MM, _MARGIN_MM),
            QPageLayout.Unit.Millimeter,
        )
    )
    document = QTextDocument()
    document.setDefaultFont(QFont("sans-serif", 9))
    document.setDefaultStyleSheet(_STYLE)
    pictures = _add_pictures(document, record)
    document.setHtml(_page(record, title, pictures))
    document.print_(writer)
    buffer.close()
    return bytes(data.data())


def _add_pictures(document: QTextDocument, record: Record) -> str:
    """Give the document its pictures and return the table that shows them."""
    cells = []
    for number, digit in enumerate(digits_to_draw(record)):
        drawing = drawing_of(record, digit)
        name = f"picture-{number}"
        document.addResource(QTextDocument.ResourceType.ImageResource, QUrl(name), image_of(drawing, 2))
        height = round(_PICTURE_WIDTH * height_of(drawing) / WIDTH)
        cells.append(f'<td><img src="{name}" width="{_PICTURE_WIDTH}" height="{height}"></td>')
    rows = [cells[start : start + _PICTURES_A_ROW] for start in range(0, len(cells), _PICTURES_A_ROW)]
    return "<table>" + "".join(f"<tr>{''.join(row)}</tr>" for row in rows) + "</table>" if cells else ""


def _page(record: Record, title: str, pictures: str) -> str:
    unsettled, _ = open_facts(record)
    parts = [
        f"<h1>{escape(title)}</h1>",
        f'<p class="{"open" if unsettled else ""}">{escape(how_settled(record))}</p>',
        f"<p>Note: {escape(record.note.name or 'pasted')}, {record.note.characters} characters, "
        f"SHA-256 {record.note.sha256[:16]}…</p>",
        _list(cautions()),
        pictures,
        _tables(items_of(record)),
        _named(items_of(record)),
        "<h2>Not known from the note</h2>",
        _list(unknown_of(record)) or "<p>Nothing a therapist is asked for is missing.</p>",
    ]
    return "".join(parts)


def cautions() -> list[str]:
    """Return the cautions that go with every record: they stand in resources/cautions.toml."""
    # Imported where used: the tables of the appraisal take time the window needs to appear.
    from notereader.appraisal.cautions import cautions_about

    return cautions_about("general")


def _tables(items: list[Item]) -> str:
    parts = []
    for item in items:
        if isinstance(item, Heading):
            if item.key != _NAMED:
                parts.append(f'</table><h2>{escape(item.title)}</h2><table width="100%">')
        elif item.standing is not Standing.NOT_FOUND and item.address.group != _NAMED:
            parts.append(_line(item))
    return "<table>" + "".join(parts) + "</table>"


def _named(items: list[Item]) -> str:
    """The named parts of the note in one paragraph: each is only there or not."""
    rows = [item for item in items if isinstance(item, Row) and item.address.group == _NAMED]
    words = [row.label if row.standing in _SAID else f"{row.label} ({row.standing})" for row in rows]
    return f"<h2>Named in the note</h2><p>{escape(', '.join(words))}.</p>" if words else ""


def _line(row: Row) -> str:
    open_mark = ' class="open"' if row.unsettled else ""
    doubt = "; ".join([*row.reasons, *(f"the note also says {rival}" for rival in row.rivals)])
    words = f"“{escape(row.quote)}”" if row.quote else ""
    more = f" ({escape(doubt)})" if doubt else ""
    return (
        f'<tr><td width="25%">{escape(row.label)}</td><td width="22%"><b>{escape(row.value)}</b></td>'
        f'<td width="13%"{open_mark}>{row.standing}</td><td width="40%" class="quote">{words}{more}</td></tr>'
    )


def _list(lines: list[str]) -> str:
    return "<ul>" + "".join(f"<li>{escape(line)}</li>" for line in lines) + "</ul>" if lines else ""
