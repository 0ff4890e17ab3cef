"""Pictures of pages made ready for recognition: upright, grey, 300 dots per inch. Runs in the parsing process only."""

import base64
import io
import itertools
from collections.abc import Iterator
from contextlib import closing, contextmanager
from typing import TYPE_CHECKING, Any

from notereader.intake.limits import MAX_PICTURE_PIXELS
from notereader.intake.note import IntakeRefused
from notereader.intake.parsed import Page, Parsed
from notereader.intake.pdf_text import open_pdf

if TYPE_CHECKING:
    from PIL.Image import Image

# The resolution Tesseract's own notes on quality ask for at least.
DOTS_PER_INCH = 300
_POINTS_PER_INCH = 72
_FORMATS = ("PNG", "JPEG", "TIFF", "BMP", "GIF", "WEBP")

# Resolutions a scanner or fax states; outside of them the figure is a default of some program.
_STATED_DPI = (90, 1200)
# The short side of a page at 300 dpi is some 2,500 dots; a picture of much less is enlarged to it.
_SHORT_SIDE = 2000
_LONG_SIDE_MOST = 6000

# The tilt is looked for on a small copy, first coarsely, then finely around the best; in degrees.
_TILT_WIDTH = 700
_TILT_MOST = 8.0
_TILT_STEPS = (1.0, 0.25, 0.1)
_TILT_TOO_SMALL = 0.15

# Specks are counted in a square of this half side in the middle of the picture.
_SAMPLE = 500
_SPECK_CONTRAST = 128
_MANY_SPECKS = 0.02


def picture_from_pdf(data: bytes, page: int) -> Parsed:
    """Return the picture of one page of a PDF, counted from 0."""
    with closing(open_pdf(data)) as document:
        return Parsed(picture=_ready(_rendered(document, page)))


def parse_image(data: bytes) -> Parsed:
    """Return a scanned page for each page of an image file; only faxes and scans in TIFF have several."""
    with _opened(data) as picture:
        # The further frames of other kinds are an animation or a thumbnail.
        number = getattr(picture, "n_frames", 1) if picture.format == "TIFF" else 1
        return Parsed([Page("", scanned=True)] * number)


def picture_from_image(data: bytes, page: int) -> Parsed:
    """Return the picture of one page of an image file, counted from 0."""
    from PIL import ImageOps

    with _opened(data) as picture:
        picture.seek(page)
        if picture.width * picture.height > MAX_PICTURE_PIXELS:
            raise _too_large()
        return Parsed(picture=_ready(_resolved(ImageOps.exif_transpose(picture))))


def _rendered(document: Any, number: int) -> "Image":
    page = document[number]
    width, height = page.get_size()
    dots = width * height * (DOTS_PER_INCH / _POINTS_PER_INCH) ** 2
    # A page may claim to be metres wide.
    scale = DOTS_PER_INCH / _POINTS_PER_INCH * min(1.0, (MAX_PICTURE_PIXELS / 2 / max(dots, 1.0)) ** 0.5)
    picture: Image = page.render(scale=scale, grayscale=True).to_pil()
    return picture


def _too_large() -> IntakeRefused:
    return IntakeRefused("The picture is too large.", "Scan the page again at 300 dots per inch.")


@contextmanager
def _opened(data: bytes) -> Iterator["Image"]:
    """Open an image file; what goes wrong in it is said in plain words."""
    from PIL import Image

    try:
        with Image.open(io.BytesIO(data), formats=_FORMATS) as picture:
            yield picture
    except Image.DecompressionBombError:
        raise _too_large() from None
    except (OSError, ValueError, SyntaxError, EOFError):
        raise IntakeRefused("The picture is damaged and cannot be opened.", "Scan the page again.") from None


def _resolved(frame: "Image") -> "Image":
    """Bring a picture to about 300 dots per inch both ways; a fax has half as many lines as dots in a line."""
    across, down = _dots_per_inch(frame)
    width, height = frame.width * DOTS_PER_INCH / across, frame.height * DOTS_PER_INCH / down
    shrink = min(1.0, _LONG_SIDE_MOST / max(width, height))
    size = max(1, round(width * shrink)), max(1, round(height * shrink))
    grey = _despeckled(_grey(frame))
    return grey if size == grey.size else grey.resize(size)


def _despeckled(grey: "Image") -> "Image":
    """Take single dots away where there are many; recognition takes each for a piece of a letter, and minutes."""
    from PIL import ImageChops, ImageFilter

    middle_x, middle_y = grey.width // 2, grey.height // 2
    sample = grey.crop((middle_x - _SAMPLE, middle_y - _SAMPLE, middle_x + _SAMPLE, middle_y + _SAMPLE))
    change = ImageChops.difference(sample, sample.filter(ImageFilter.MedianFilter(3)))
    specks = sum(change.histogram()[_SPECK_CONTRAST:]) / (change.width * change.height)
    return grey.filter(ImageFilter.MedianFilter(3)) if specks > _MANY_SPECKS else grey


def _dots_per_inch(frame: "Image") -> tuple[float, float]:
    stated = frame.info.get("dpi")
    low, high = _STATED_DPI
    if isinstance(stated, tuple) and len(stated) == 2 and all(low <= float(value) <= high for value in stated):
        return float(stated[0]), float(stated[1])
    guessed = DOTS_PER_INCH * min(1.0, min(frame.size) / _SHORT_SIDE)
    return guessed, guessed


def _grey(frame: "Image") -> "Image":
    from PIL import Image

    if frame.mode in ("RGBA", "LA", "PA") or "transparency" in frame.info:
        # What is see-through shows the paper.
        frame = frame.convert("RGBA")
        paper = Image.new("RGBA", frame.size, "white")
        paper.alpha_composite(frame)
        frame = paper
    return frame.convert("L")


def _ready(picture: "Image") -> str:
    """Return a straightened copy as PNG in base64."""
    straight = straightened(picture.convert("L"))
    stream = io.BytesIO()
    straight.save(stream, "PNG", compress_level=1, dpi=(DOTS_PER_INCH, DOTS_PER_INCH))
    return base64.b64encode(stream.getvalue()).decode("ascii")


def straightened(picture: "Image") -> "Image":
    """Return a grey picture turned so that its lines of text lie level."""
    from PIL import Image

    angle = tilt(picture)
    if abs(angle) < _TILT_TOO_SMALL:
        return picture
    return picture.rotate(-angle, Image.Resampling.BICUBIC, expand=True, fillcolor=255)


def tilt(picture: "Image") -> float:
    """Return by how many degrees, counter-clockwise, the lines of a grey picture are turned; within 8 either way.

    The lines lie level where the darkness of neighbouring rows differs most: rows of letters beside empty rows.
    """
    from PIL import ImageOps

    small = ImageOps.invert(picture.resize((_TILT_WIDTH, max(1, picture.height * _TILT_WIDTH // picture.width))))
    best, reach = 0.0, _TILT_MOST
    for step in _TILT_STEPS:
        number = round(reach / step)
        angles = [best + step * turn for turn in range(-number, number + 1)]
        best = max(angles, key=lambda angle: (_contrast_of_rows(small, angle), -abs(angle)))
        reach = step
    return best


def _contrast_of_rows(dark: "Image", angle: float) -> float:
    from PIL import Image

    level = dark.rotate(-angle, Image.Resampling.BILINEAR)
    rows = level.convert("F").resize((1, level.height), Image.Resampling.BOX).tobytes()
    darkness = memoryview(rows).cast("f").tolist()
    return sum((a - b) ** 2 for a, b in itertools.pairwise(darkness))
