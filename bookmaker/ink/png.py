"""A page as a picture of pixels.

In: a `Page` and a resolution. Out: a grey PNG of the sheet, from the same display items as the PDF, its letters from
the same font outlines.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from functools import lru_cache
from io import BytesIO
from math import floor, hypot
from typing import assert_never

from PIL import Image as Raster
from PIL import ImageChops

from bookmaker.display.items import Grey, Group, Image, Item, Line, Link, Move, Page, Path, Rect, Straight, Stroke, Text
from bookmaker.geometry import Matrix, flattened, letters, moved, outline, placing, within
from bookmaker.ink.greyscale import grey_picture
from bookmaker.ink.raster import Coverage, covered
from bookmaker.ink.stroking import stroked
from bookmaker.typeface import typeface

_TOLERANCE = 0.1
"""How far in pixels a flattened curve may stray."""

_PLACES = 8
"""Letters that stand upright are placed to this part of a pixel, so that their pictures can be used again."""


def png_bytes(page: Page, dpi: float) -> bytes:
    """The page as a PNG file that knows its resolution."""
    file = BytesIO()
    page_picture(page, dpi).save(file, "PNG", dpi=(dpi, dpi))
    return file.getvalue()


def page_picture(page: Page, dpi: float) -> Raster.Image:
    """The page as a picture in greys. Links draw nothing."""
    scale = dpi / 72
    edge = max(page.sheet, page.bleed)
    size = round((page.width + 2 * edge) * scale), round((page.height + 2 * edge) * scale)
    drawing = _Drawing(Raster.new("L", size, 255))
    drawing.draw(page.items, (scale, 0.0, 0.0, scale, edge * scale, edge * scale))
    return drawing.picture


class _Drawing:
    """Draws items on a picture; `clip` is what may be drawn on, None for all."""

    def __init__(self, picture: Raster.Image) -> None:
        self.picture = picture
        self.clip: Coverage | None = None

    def draw(self, items: Iterable[Item], matrix: Matrix) -> None:
        for item in items:
            match item:
                case Line(start, end, stroke):
                    self._shape(Path((Move(start), Straight(end)), stroke), matrix)
                case Rect() | Path():
                    self._shape(item, matrix)
                case Text():
                    self._text(item, matrix)
                case Image():
                    self._image(item, matrix)
                case Group():
                    self._group(item, within(matrix, placing(item)))
                case Link():
                    pass
                case _ as never:
                    assert_never(never)

    def _shape(self, shape: Path | Rect, matrix: Matrix) -> None:
        contours = flattened(outline(shape), matrix, _TOLERANCE)
        if shape.fill is not None:
            self._fill(covered([contour.points for contour in contours], evenodd=True), shape.fill)
        if shape.stroke is not None:
            scale = hypot(matrix[0], matrix[1])
            pen = _scaled(shape.stroke, scale)
            self._fill(covered(stroked(contours, pen, _TOLERANCE)), pen.grey)

    def _text(self, text: Text, matrix: Matrix) -> None:
        a, b, c, d, _, _ = matrix
        size = text.size
        for character, x in letters(text):
            e, f = moved(matrix, (x, text.y))
            if b or c:
                glyph = _glyph(text.font, character, (a * size, b * size, -c * size, -d * size, e, f))
            else:
                left, top = floor(e), floor(f)
                place = (round((e - left) * _PLACES) / _PLACES, round((f - top) * _PLACES) / _PLACES)
                glyph = _upright(text.font, character, a * size, *place)
                glyph = glyph and glyph.at(left, top)
            self._fill(glyph, text.grey)

    def _image(self, image: Image, matrix: Matrix) -> None:
        frame = Rect(image.x, image.y, image.width, image.height)
        area = covered([contour.points for contour in flattened(outline(frame), matrix, _TOLERANCE)])
        if area is None:
            return
        a, b, c, d, e, f = matrix
        scale = hypot(a, b)
        fine = max(1, round(image.width * scale)), max(1, round(image.height * scale))
        picture = grey_picture(image.source).resize(fine, Raster.Resampling.LANCZOS)
        # from a pixel of the page back to one of the picture
        across, down = fine[0] / image.width, fine[1] / image.height
        full = a * d - b * c
        x, y = e - area.x, f - area.y
        back = (
            d / full * across, -c / full * across, ((c * y - d * x) / full - image.x) * across,
            -b / full * down, a / full * down, ((b * x - a * y) / full - image.y) * down,
        )  # fmt: skip
        drawn = picture.transform(area.mask.size, Raster.Transform.AFFINE, back, Raster.Resampling.BICUBIC)
        self._paste(drawn, area)

    def _group(self, group: Group, matrix: Matrix) -> None:
        before = self.clip
        if group.clip is not None:
            contours = flattened(outline(group.clip), matrix, _TOLERANCE)
            area = covered([contour.points for contour in contours], evenodd=True)
            if area is None:
                return
            self.clip = Coverage(area.x, area.y, self._inside(area))
        self.draw(group.items, matrix)
        self.clip = before

    def _fill(self, area: Coverage | None, grey: Grey) -> None:
        if area is not None:
            self._paste(Raster.new("L", area.mask.size, round(grey * 255)), area)

    def _paste(self, colours: Raster.Image, area: Coverage) -> None:
        self.picture.paste(colours, (area.x, area.y), self._inside(area))

    def _inside(self, area: Coverage) -> Raster.Image:
        """How much of an area may be drawn on."""
        if self.clip is None:
            return area.mask
        x, y = area.x - self.clip.x, area.y - self.clip.y
        # what lies beyond the clip's own picture is cropped as 0
        return ImageChops.multiply(area.mask, self.clip.mask.crop((x, y, x + area.mask.width, y + area.mask.height)))


def _scaled(stroke: Stroke, scale: float) -> Stroke:
    return replace(stroke, width=stroke.width * scale, dash=tuple(length * scale for length in stroke.dash))


@lru_cache(maxsize=4096)
def _upright(font: str, character: str, size: float, x: float, y: float) -> Coverage | None:
    return _glyph(font, character, (size, 0.0, 0.0, -size, x, y))


def _glyph(font: str, character: str, matrix: Matrix) -> Coverage | None:
    contours = flattened(typeface(font).outline(character), matrix, _TOLERANCE)
    return covered([contour.points for contour in contours])
