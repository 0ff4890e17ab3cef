"""The drawn digit on screen, the same in words, and both as files."""

from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QImage, QImageWriter, QPainter, QPaintEvent
from PySide6.QtSvg import QSvgGenerator
from PySide6.QtWidgets import (
    QButtonGroup,
    QFileDialog,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from notereader.desktop.files import write_whole
from notereader.desktop.finger import Drawing, digits_to_draw, drawing_of, first_to_draw
from notereader.desktop.finger_painter import WIDTH, draw_picture, height_of
from notereader.desktop.flow_layout import FlowLayout
from notereader.desktop.labels import plain_label
from notereader.desktop.look import Look
from notereader.desktop.themes import LIGHT
from notereader.record import Address, Record

_PNG_SCALE = 3
_LEAST_SCALE = 0.7
# Stands wherever pulleys and sutures are shown; the full cautions are a page of the menu 'Help'.
CAUTION = (
    "A drawing of what the note says, no measure of what the repair holds. The surgeon's orders, local protocols and a "
    "licensed clinician's judgement decide."
)


class PictureView(QWidget):
    """Draws the digit of the fact in hand, or one chosen by the buttons above."""

    failed = Signal(str)

    def __init__(self, look: Look, parent: QWidget | None = None):
        super().__init__(parent)
        self.setAccessibleName("Picture of the finger")
        self._record = Record()
        self._digit: str | None = None
        self._drawn: tuple[str | None, ...] | None = None
        self._canvas = Canvas(look, self)
        self._words = plain_label()
        self._words.setAccessibleName("The picture in words")
        self._words.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByKeyboard | Qt.TextInteractionFlag.TextSelectableByMouse
        )
        self._buttons = FlowLayout()
        self._group = QButtonGroup(self)
        caution = plain_label(CAUTION, "muted")
        save = QPushButton("Save picture …")
        save.setAccessibleName("Save the picture as SVG or PNG")
        save.clicked.connect(self.ask_and_save)
        inner = QWidget()
        column = QVBoxLayout(inner)
        column.setContentsMargins(4, 4, 4, 4)
        column.addWidget(self._canvas)
        column.addWidget(self._words)
        column.addWidget(caution)
        column.addWidget(save, 0, Qt.AlignmentFlag.AlignLeft)
        column.addStretch(1)
        scroll = QScrollArea()
        scroll.setWidgetResizable(True)
        scroll.setWidget(inner)
        scroll.setFrameShape(QScrollArea.Shape.NoFrame)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setAccessibleName("Picture of the finger and the same in words")
        layout = QVBoxLayout(self)
        layout.setContentsMargins(4, 4, 4, 4)
        layout.addLayout(self._buttons)
        layout.addWidget(scroll, 1)
        self.setFocusProxy(scroll)

    @property
    def drawing(self) -> Drawing:
        """What is drawn now."""
        return drawing_of(self._record, self._digit)

    def show_record(self, record: Record) -> None:
        """Draw a record anew; the digit stays while the record still has it."""
        self._record = record
        digits = digits_to_draw(record)
        if self._drawn is None or self._digit not in digits:
            self._digit = first_to_draw(record)
        if tuple(digits) != self._drawn:
            self._drawn = tuple(digits)
            self._offer(digits)
        self._renew(bool(digits))

    def follow(self, address: Address | None) -> None:
        """Draw the digit a fact belongs to."""
        if address is not None and address.group in ("repairs", "pulleys") and address.digit in (self._drawn or ()):
            self._choose(address.digit)

    def ask_and_save(self) -> None:
        """Ask for a file and save the picture there."""
        name = f"{self.drawing.title.lower().replace(' ', '-')}.svg"
        path, _ = QFileDialog.getSaveFileName(self, "Save the picture", name, "SVG (*.svg);;PNG (*.png)")
        if path:
            try:
                save_picture(self.drawing, Path(path))
            except OSError as fault:
                self.failed.emit(f"The picture could not be saved: {fault}")

    def _choose(self, digit: str | None) -> None:
        self._digit = digit
        self._renew(True)

    def _renew(self, anything: bool) -> None:
        drawing = self.drawing
        self._canvas.show_drawing(drawing)
        self._canvas.setVisible(anything)
        self._words.setText(drawing.words() if anything else "No tendon or pulley entered yet, so nothing to draw.")
        self._canvas.setAccessibleDescription(drawing.words())
        for button in self._group.buttons():
            button.setChecked(button.property("digit") == (self._digit or ""))

    def _offer(self, digits: list[str | None]) -> None:
        for button in self._group.buttons():
            self._group.removeButton(button)
        while (item := self._buttons.takeAt(0)) is not None:
            if widget := item.widget():
                widget.deleteLater()
        for digit in digits:
            button = QPushButton((digit or "wrist").capitalize())
            button.setCheckable(True)
            button.setProperty("digit", digit or "")
            button.setAccessibleName(f"Draw the {digit or 'wrist'}")
            button.clicked.connect(lambda _=False, chosen=digit: self._choose(chosen))
            self._group.addButton(button)
            self._buttons.addWidget(button)


class Canvas(QWidget):
    """The picture itself, as wide as its pane up to the size at which its words are as large as those beside it."""

    def __init__(self, look: Look, parent: QWidget | None = None):
        super().__init__(parent)
        self._look = look
        self._drawing: Drawing | None = None
        self.setAccessibleName("Drawn digit")
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        look.changed.connect(self._renew)

    def show_drawing(self, drawing: Drawing) -> None:
        """Draw this from now on."""
        self._drawing = drawing
        self._renew()

    def sizeHint(self) -> QSize:  # noqa: N802
        """Return the size at which the words of the picture are as large as those beside it."""
        width = round(WIDTH * self._look.scale)
        return QSize(width, self.heightForWidth(width))

    def minimumSizeHint(self) -> QSize:  # noqa: N802
        """Return the least size at which it can still be read."""
        return QSize(round(WIDTH * _LEAST_SCALE), 100)

    def hasHeightForWidth(self) -> bool:  # noqa: N802
        """Return that the height follows from the width."""
        return True

    def heightForWidth(self, width: int) -> int:  # noqa: N802
        """Return the height of the picture drawn as wide as this."""
        height = height_of(self._drawing) if self._drawing else 100.0
        return round(min(width, WIDTH * self._look.scale) / WIDTH * height)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802
        """Draw the picture in the colours of the look."""
        if self._drawing is None:
            return
        painter = QPainter(self)
        scale = min(self.width() / WIDTH, self.height() / height_of(self._drawing))
        painter.scale(scale, scale)
        draw_picture(painter, self._drawing, self._look.theme.inks)
        painter.end()

    def _renew(self) -> None:
        self.updateGeometry()
        self.update()


def save_picture(drawing: Drawing, path: Path) -> None:
    """Save a picture as PNG or, for any other name, as SVG, in light colours. Raises OSError where it cannot."""
    content = png_of(drawing) if path.suffix.lower() == ".png" else svg_of(drawing)
    write_whole(path, content)


def svg_of(drawing: Drawing) -> bytes:
    """Return a picture as SVG, its words as its description."""
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    generator = QSvgGenerator()
    generator.setOutputDevice(buffer)
    generator.setTitle(drawing.title)
    generator.setDescription(drawing.words())
    generator.setSize(QSize(round(WIDTH), round(height_of(drawing))))
    generator.setViewBox(QRectF(0, 0, WIDTH, height_of(drawing)))
    painter = QPainter(generator)
    draw_picture(painter, drawing, LIGHT.inks)
    painter.end()
    buffer.close()
    return bytes(data.data())


def png_of(drawing: Drawing) -> bytes:
    """Return a picture as PNG, sharp enough to print."""
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    QImageWriter(buffer, QByteArray(b"png")).write(image_of(drawing, _PNG_SCALE))
    buffer.close()
    return bytes(data.data())


def image_of(drawing: Drawing, scale: float) -> QImage:
    """Return a picture as an image, its words as the image's description."""
    image = QImage(round(WIDTH * scale), round(height_of(drawing) * scale), QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(Qt.GlobalColor.white)
    image.setText("Description", drawing.words())
    painter = QPainter(image)
    painter.scale(scale, scale)
    draw_picture(painter, drawing, LIGHT.inks)
    painter.end()
    return image
