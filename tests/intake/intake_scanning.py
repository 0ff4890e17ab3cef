"""Pages printed, scanned and faxed by ourselves, for the tests of recognition."""

import io
import random

from PIL import Image, ImageChops, ImageDraw, ImageFilter, ImageFont

DPI = 300
FAX_DPI = (204, 98)
A4 = (2480, 3508)


def printed(
    text: str, size: int = 46, margin: int = 220, font: ImageFont.FreeTypeFont | ImageFont.ImageFont | None = None
) -> Image.Image:
    """Return an A4 page at 300 dots per inch with these lines in print of 11 points."""
    page = Image.new("L", A4, 255)
    pen = ImageDraw.Draw(page)
    font = font or ImageFont.load_default(size)
    for number, line in enumerate(text.split("\n")):
        pen.text((margin, margin + number * size * 1.4), line, font=font, fill=0)
    return page


def scanned(page: Image.Image, quality: str, seed: int = 1) -> Image.Image:
    """Return a page as a scanner or fax gives it: 'good' office scan, 'fair' copy lying askew, 'poor' fax."""
    if quality == "good":
        return _speckled(page.rotate(0.4, Image.Resampling.BICUBIC, fillcolor=255), 6, seed)
    if quality == "fair":
        small = page.rotate(-2.0, Image.Resampling.BICUBIC, fillcolor=245).resize((1654, 2339))
        return _speckled(small.filter(ImageFilter.GaussianBlur(1.0)), 18, seed)
    # A fax in standard mode: 204 by 98 dots per inch, black or white (ITU-T T.4), here of a worn copy.
    small = page.rotate(3.0, Image.Resampling.BICUBIC, fillcolor=255).filter(ImageFilter.GaussianBlur(1.5))
    grainy = _speckled(small.resize((1686, 1146)), 90, seed)
    return grainy.point([255 * (value > 140) for value in range(256)]).convert("1")


def _speckled(page: Image.Image, strength: int, seed: int) -> Image.Image:
    noise = Image.frombytes("L", page.size, random.Random(seed).randbytes(page.width * page.height))
    return ImageChops.subtract(page, noise.point([value * strength // 255 for value in range(256)]))


def image_bytes(
    picture: Image.Image, kind: str = "PNG", dpi: tuple[int, int] | None = None, **options: object
) -> bytes:
    """Return a picture as the bytes of a file, with its resolution stated where one is given."""
    stream = io.BytesIO()
    picture.save(stream, kind, **({"dpi": dpi} if dpi else {}), **options)
    return stream.getvalue()


def scanned_pdf(*pictures: Image.Image) -> bytes:
    """Return a PDF of A4 pages that are pictures."""
    stream = io.BytesIO()
    first, *others = [picture.convert("L") for picture in pictures]
    first.save(stream, "PDF", resolution=first.width / 8.27, save_all=True, append_images=others)
    return stream.getvalue()
