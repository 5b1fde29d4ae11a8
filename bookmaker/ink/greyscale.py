"""Raster images as ink needs them: grey, and opaque on white paper."""

from __future__ import annotations

from io import BytesIO
from warnings import catch_warnings

from PIL import Image as Raster
from PIL import ImageOps


def grey_picture(source: bytes) -> Raster.Image:
    """The picture of a PNG or JPEG file in greys, see-through parts on white, upright as its EXIF data say (Exif 2.3,
    tag 274). Of a moving picture, the first. Raises OSError if it is neither."""
    with catch_warnings(action="ignore"):  # of damaged EXIF data
        picture: Raster.Image = ImageOps.exif_transpose(Raster.open(BytesIO(source), formats=("PNG", "JPEG")))
    if picture.mode.startswith("I"):  # greys of 16 bits, which would be cut off at 255
        picture = picture.convert("I").point(lambda grey: grey * (1 / 257)).convert("L")
    if picture.mode in ("P", "LA", "RGBA") or "transparency" in picture.info:
        clear = picture.convert("RGBA")
        picture = Raster.alpha_composite(Raster.new("RGBA", clear.size, "white"), clear)
    return picture.convert("L")
