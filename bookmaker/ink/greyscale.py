"""Raster images as ink needs them: grey, and opaque on white paper."""

from __future__ import annotations

from io import BytesIO

from PIL import Image as Raster


def grey_picture(source: bytes) -> Raster.Image:
    """The picture of a PNG or JPEG file in greys, see-through parts on white. Raises OSError if it is neither."""
    picture: Raster.Image = Raster.open(BytesIO(source), formats=("PNG", "JPEG"))
    if picture.mode in ("P", "LA", "RGBA") or "transparency" in picture.info:
        clear = picture.convert("RGBA")
        picture = Raster.alpha_composite(Raster.new("RGBA", clear.size, "white"), clear)
    return picture.convert("L")
