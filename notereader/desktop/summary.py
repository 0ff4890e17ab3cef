"""The printable summary as PDF: the page of the exchange room with the drawn digits in it."""

from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF, QUrl
from PySide6.QtGui import QFont, QPageLayout, QPageSize, QPdfWriter, QTextDocument

from notereader.desktop.files import write_whole
from notereader.desktop.finger import digits_to_draw, drawing_of
from notereader.desktop.finger_painter import WIDTH, height_of
from notereader.desktop.picture_view import CAUTION, image_of
from notereader.record import Record

_PICTURE_WIDTH = 250
_PICTURES_A_ROW = 2
# QTextDocument keeps two centimetres of its own around what it prints.
_MARGIN_MM = 1


def save_summary(record: Record, path: Path) -> None:
    """Save the summary as PDF. Raises OSError where it cannot. Takes a moment: call it in the background."""
    write_whole(path, summary_pdf(record))


def summary_pdf(record: Record) -> bytes:
    """Return the summary as PDF on A4 pages."""
    # Imported where used: the exchange room brings the tables of the appraisal, which the window does not wait for.
    from notereader.exchange import summary_html

    document = QTextDocument()
    document.setDefaultFont(QFont("sans-serif", 9))
    pictures = _add_pictures(document, record)
    document.setHtml(summary_html(record).replace("</body>", f"{pictures}</body>"))
    return _pdf(document, "Summary of an operative note")


def letter_pdf(letter: str) -> bytes:
    """Return a letter of plain text as PDF on A4 pages."""
    document = QTextDocument()
    document.setDefaultFont(QFont("sans-serif", 10))
    document.setPlainText(letter)
    return _pdf(document, "Questions for the surgeon")


def _pdf(document: QTextDocument, title: str) -> bytes:
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setTitle(title)
    writer.setCreator("notereader")
    margins = QMarginsF(_MARGIN_MM, _MARGIN_MM, _MARGIN_MM, _MARGIN_MM)
    page = QPageSize(QPageSize.PageSizeId.A4)
    writer.setPageLayout(QPageLayout(page, QPageLayout.Orientation.Portrait, margins, QPageLayout.Unit.Millimeter))
    document.print_(writer)
    buffer.close()
    return bytes(data.data())


def _add_pictures(document: QTextDocument, record: Record) -> str:
    """Give the document its pictures and return the page that shows them."""
    pictures = []
    for number, digit in enumerate(digits_to_draw(record)):
        drawing = drawing_of(record, digit)
        name = f"picture-{number}"
        document.addResource(QTextDocument.ResourceType.ImageResource, QUrl(name), image_of(drawing, 2))
        height = round(_PICTURE_WIDTH * height_of(drawing) / WIDTH)
        pictures.append(f'<img src="{name}" width="{_PICTURE_WIDTH}" height="{height}">')
    rows = [pictures[start : start + _PICTURES_A_ROW] for start in range(0, len(pictures), _PICTURES_A_ROW)]
    # A line for each row: the cells of a table Qt would tear apart where a page ends.
    lines = "".join(f"<p>{' '.join(row)}</p>" for row in rows)
    return f'<h2 style="page-break-before: always">Drawn</h2><p>{CAUTION}</p>{lines}' if pictures else ""
