"""Finished PDF files as pictures of pixels, so that a picture shows what is printed and nothing else.

In: the bytes of a PDF file and a resolution. Out: its pages, and PNG files. PDFium draws them; the same file
gives the same bytes with the same versions of pypdfium2 and pillow.
"""

from __future__ import annotations

from collections.abc import Iterator
from io import BytesIO
from math import ceil

import pypdfium2
from PIL import Image as Raster
from PIL import ImageChops

FINE = 300
"""PDFium makes no line thinner than a pixel: pictures coarser than so many pixels an inch are scaled down from finer
ones, so that thin lines stay as light as they are."""


def page_pictures(file: bytes, dpi: float, trimmed: bool = False) -> Iterator[Raster.Image]:
    """The pages of a PDF file, one at a time, in colours if there are any; `trimmed` leaves what lies beyond the trim
    out."""
    finer = ceil(FINE / dpi)
    scale = finer * dpi / 72
    with pypdfium2.PdfDocument(file) as pdf:
        for page in pdf:
            crop = _beyond_trim(page) if trimmed else (0, 0, 0, 0)
            picture = page.render(scale=scale, crop=crop, draw_annots=False, rev_byteorder=True).to_pil()
            yield plain(picture).reduce(finer)


def plain(picture: Raster.Image) -> Raster.Image:
    """The picture in greys, if that is all it has."""
    red, *others = picture.convert("RGB").split()
    greys = all(ImageChops.difference(red, other).getbbox() is None for other in others)
    return red if greys else picture.convert("RGB")


def page_labels(file: bytes) -> list[str]:
    """The labels of the pages of a PDF file."""
    with pypdfium2.PdfDocument(file) as pdf:
        return [pdf.get_page_label(at) for at in range(len(pdf))]


def _beyond_trim(page: pypdfium2.PdfPage) -> tuple[float, ...]:
    """How far the sheet reaches beyond the trim: left, bottom, right, top; in points to 0.001."""
    left, bottom, right, top = page.get_trimbox()
    width, height = page.get_size()
    return tuple(round(beyond, 3) for beyond in (left, bottom, width - right, height - top))


def png_bytes(picture: Raster.Image, dpi: float) -> bytes:
    """A picture as a PNG file that knows its resolution."""
    file = BytesIO()
    picture.save(file, "PNG", dpi=(dpi, dpi))
    return file.getvalue()
