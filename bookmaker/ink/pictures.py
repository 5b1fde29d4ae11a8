"""Raster images as ink needs them: opaque on white paper, in greys, for a screen or in the four inks of a press.

In: the bytes of a PNG or JPEG file. Out: a picture. All of these raise OSError if the file is neither.

For a press whose profile is at hand, LittleCMS converts colours by it (through pillow). Without one they are converted
by the model of `display.colour`, turned round: black takes the greater part of the neutral grey in a colour.
"""

from __future__ import annotations

from functools import cache
from io import BytesIO
from itertools import product
from warnings import catch_warnings

from PIL import Image as Raster
from PIL import ImageCms, ImageFilter, ImageOps

from bookmaker.display.colour import Ink, Rgb, linear
from bookmaker.ink.profiles import screen_profile

GRID = 13
"""Steps of each of red, green and blue at which inks are worked out; between them they are interpolated."""

BLACK_FROM = 0.25
"""The grey part of a colour from which black takes over from the other three inks."""

HEAVIEST = 3.0
"""All inks together, of which one is 1.0: more does not dry (common practice, no source)."""

ROUNDS = 40


def _opaque(source: bytes) -> Raster.Image:
    """See-through parts on white, upright as its EXIF data say (Exif 2.3, tag 274); of a moving picture the first."""
    with catch_warnings(action="ignore"):  # of damaged EXIF data
        picture: Raster.Image = ImageOps.exif_transpose(Raster.open(BytesIO(source), formats=("PNG", "JPEG")))
    if picture.mode.startswith("I"):  # greys of 16 bits, which would be cut off at 255
        picture = picture.convert("I").point(lambda grey: grey * (1 / 257)).convert("L")
    if picture.mode in ("P", "LA", "RGBA") or "transparency" in picture.info:
        clear = picture.convert("RGBA")
        picture = Raster.alpha_composite(Raster.new("RGBA", clear.size, "white"), clear)
    return picture


def grey_picture(source: bytes) -> Raster.Image:
    """The picture in greys."""
    return _opaque(source).convert("L")


def screen_picture(source: bytes) -> Raster.Image:
    """The picture in sRGB; a profile of its own is followed."""
    picture = _opaque(source)
    own = picture.info.get("icc_profile")
    if own and picture.mode in ("RGB", "CMYK"):
        try:
            made = ImageCms.profileToProfile(picture, BytesIO(own), BytesIO(screen_profile()), outputMode="RGB")
        except ImageCms.PyCMSError:
            made = None
        if made is not None:
            return made
    return picture.convert("RGB")


def press_picture(source: bytes, profile: bytes = b"") -> Raster.Image:
    """The picture in cyan, magenta, yellow and black, by a profile of the press if there is one."""
    picture = screen_picture(source)
    if profile:
        made = ImageCms.profileToProfile(
            picture,
            BytesIO(screen_profile()),
            BytesIO(profile),
            ImageCms.Intent.RELATIVE_COLORIMETRIC,
            "CMYK",
            flags=ImageCms.Flags.BLACKPOINTCOMPENSATION,
        )
        assert made is not None
        return made
    return picture.filter(_separation())


@cache
def _separation() -> ImageFilter.Color3DLUT:
    """Inks for sRGB, on a lattice; blue varies slowest, as pillow wants it."""
    steps = [at / (GRID - 1) for at in range(GRID)]
    table = [share for blue, green, red in product(steps, repeat=3) for share in inks_of((red, green, blue))]
    return ImageFilter.Color3DLUT(GRID, table, channels=4, target_mode="CMYK")


def inks_of(colour: Rgb) -> Ink:
    """The inks that look most like a colour of sRGB.

    Cyan governs red, magenta green and yellow blue, so each is moved by what its own lacks until all are met; a colour
    that inks cannot print ends at the nearest that they can.
    """
    red, green, blue = (value / 12.92 if value <= 0.04045 else ((value + 0.055) / 1.055) ** 2.4 for value in colour)
    neutral = 1 - max(colour)
    black = max(0.0, (neutral - BLACK_FROM) / (1 - BLACK_FROM)) ** 1.2
    step = 0.7 / max(0.08, 1 - black)
    cyan, magenta, yellow = (1 - value - 0.8 * black for value in colour)
    for _ in range(ROUNDS):
        r, g, b = linear(Ink(_share(cyan), _share(magenta), _share(yellow), black))
        cyan = _share(cyan + step * (r - red))
        magenta = _share(magenta + step * (g - green))
        yellow = _share(yellow + step * (b - blue))
    thinner = min(1.0, (HEAVIEST - black) / max(cyan + magenta + yellow, 0.01))
    return Ink(*(round(share, 4) for share in (thinner * cyan, thinner * magenta, thinner * yellow, black)))


def _share(value: float) -> float:
    return min(1.0, max(0.0, value))
