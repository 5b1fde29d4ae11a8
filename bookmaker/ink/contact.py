"""A contact sheet: the pages of a finished PDF file, small, side by side as they face each other in the book.

In: the bytes of the file. Out: one picture, in greys if all pages are, and the resolution it should carry.
"""

from __future__ import annotations

from collections.abc import Sequence

from PIL import Image as Raster
from PIL import ImageDraw, ImageFont

from bookmaker.ink.pixels import page_labels, page_pictures, plain
from bookmaker.typeface import font_files

DPI = 150
"""Of the sheet as a whole."""

SCALE = 0.2
"""How small the pages are: one of A4 is 250 pixels wide, and its titles can be read."""

GAP, LABEL = 29, 15
"""White space between pairs of pages, and the size of labels, in pixels."""

COVER = 0.32
"""How small covers are: two of A4 side by side are 1,600 pixels wide."""

FRAME, INK = 128, 76
"""Greys of the pages' frames and of their labels, from 0 (black) to 255."""


def contact_sheet(file: bytes, across: int = 8) -> Raster.Image:
    """The pages, `across` (an even number) in a row, the first on the right-hand side of its pair, their printed labels
    under them.

    Raises ValueError if `across` is odd.
    """
    if across < 2 or across % 2:
        raise ValueError("a contact sheet takes an even number of pages across")
    labels = page_labels(file)
    font = ImageFont.truetype(str(font_files()["sans"]), LABEL)
    pictures = page_pictures(file, DPI * SCALE, trimmed=True)
    sheet: Raster.Image | None = None
    for number, (picture, label) in enumerate(zip(pictures, labels, strict=True), start=1):
        width, height = picture.size
        down = height + GAP + LABEL
        if sheet is None:
            rows = len(labels) // across + 1
            sheet = Raster.new("RGB", (across * width + (across // 2 + 1) * GAP, rows * down + GAP), "white")
            pen = ImageDraw.Draw(sheet)
        row, column = divmod(number, across)
        # the two pages of a pair share a line
        x, y = GAP + column * width + column // 2 * GAP - column % 2, GAP + row * down
        sheet.paste(picture, (x, y))
        pen.rectangle((x, y, x + width - 1, y + height - 1), outline=(FRAME,) * 3)
        pen.text((x + width / 2, y + height + LABEL + 4), label or "–", (INK,) * 3, font, "ms")
    assert sheet is not None
    return plain(sheet)


def cover_sheet(file: bytes, names: Sequence[str]) -> Raster.Image:
    """The pages of a PDF file two in a row, each with its name under it."""
    pictures = [*page_pictures(file, DPI * COVER, trimmed=True)]
    wide, high = (max(sides) for sides in zip(*(picture.size for picture in pictures), strict=True))
    rows = (len(pictures) + 1) // 2
    step = high + GAP + 2 * LABEL
    sheet = Raster.new("RGB", (2 * wide + 3 * GAP, rows * step + GAP), "white")
    pen, font = ImageDraw.Draw(sheet), ImageFont.truetype(str(font_files()["sans"]), 1.4 * LABEL)
    for at, (picture, name) in enumerate(zip(pictures, names, strict=True)):
        x, y = GAP + at % 2 * (wide + GAP), GAP + at // 2 * step
        sheet.paste(picture, (x, y))
        pen.rectangle((x, y, x + picture.width - 1, y + picture.height - 1), outline=(FRAME,) * 3)
        pen.text((x, y + high + 1.6 * LABEL), name, (INK,) * 3, font, "ls")
    return sheet
