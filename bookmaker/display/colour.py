"""Colours as presses mix them, and what they look like on a screen.

A colour is a grey, from 0 (black) to 1 (white), or an `Ink`: how much of each of the four process inks is laid down.
What a screen shows is worked out from that once, here, so that page and picture agree. The press itself goes by the
printing condition named in the file, not by these figures.

The model is Neugebauer's, with the areas of Demichel (J. A. C. Yule, Principles of Color Reproduction, 1967) and the
solids of offset on coated paper, paper types 1 and 2 of ISO 12647-2:2004/Amd 1:2007 (from memory): the condition that
FOGRA39 characterises. Printed dots grow by the usual parabola, about as curve A there says (from memory). Black over
other inks darkens them as it darkens paper. All is seen relative to the paper, as on a white page of a screen.
"""

from __future__ import annotations

from functools import lru_cache
from typing import NamedTuple, TypeAlias

Grey: TypeAlias = float


class Ink(NamedTuple):
    """Shares of the four process inks, each from 0 to 1."""

    cyan: float
    magenta: float
    yellow: float
    black: float

    @property
    def coverage(self) -> float:
        """All inks together: 1.0 is one solid ink."""
        return sum(self)


Colour: TypeAlias = Grey | Ink

Rgb: TypeAlias = tuple[float, float, float]
"""Red, green and blue of sRGB (IEC 61966-2-1), from 0 to 1, for a gamma-encoded screen."""

GROWTH = 0.143
"""By how much a tone of one half grows in print, as a share of the area."""

_LAB: dict[tuple[int, int, int], tuple[float, float, float]] = {
    (0, 0, 0): (95, 0, -2),
    (1, 0, 0): (55, -37, -50),
    (0, 1, 0): (48, 74, -3),
    (0, 0, 1): (89, -5, 93),
    (0, 1, 1): (47, 68, 48),
    (1, 0, 1): (50, -65, 27),
    (1, 1, 0): (24, 17, -46),
    (1, 1, 1): (23, 0, 0),
}
"""CIE L*a*b* (D50, 2°) of paper and of the solids of cyan, magenta and yellow, alone and over each other."""

_BLACK = 16
"""Lightness L* of solid black."""

_D50 = (0.9642, 1.0, 0.8249)

_TO_RGB = (
    (3.1338561, -1.6168667, -0.4906146),
    (-0.9787684, 1.9161415, 0.0334540),
    (0.0719453, -0.2289914, 1.4052427),
)
"""From XYZ under D50 to linear sRGB, adapted as Bradford's matrix does (B. Lindbloom's tables)."""


def _xyz(lab: tuple[float, float, float]) -> tuple[float, float, float]:
    """CIE 15: from L*a*b* to X, Y, Z, white at D50."""
    high = (lab[0] + 16) / 116
    parts = (high + lab[1] / 500, high, high - lab[2] / 200)
    x, y, z = (
        white * (part**3 if part > 6 / 29 else 3 * (6 / 29) ** 2 * (part - 4 / 29))
        for white, part in zip(_D50, parts, strict=True)
    )
    return x, y, z


def _on_paper() -> dict[tuple[int, int, int], Rgb]:
    """Each solid as linear sRGB, the paper white."""
    paper = _xyz(_LAB[0, 0, 0])
    found = {}
    for solid, lab in _LAB.items():
        seen = [white * own / bare for white, own, bare in zip(_D50, _xyz(lab), paper, strict=True)]
        red, green, blue = (sum(a * b for a, b in zip(row, seen, strict=True)) for row in _TO_RGB)
        found[solid] = red, green, blue
    return found


SOLIDS = _on_paper()

SOOT = _xyz((_BLACK, 0, 0))[1] / _xyz(_LAB[0, 0, 0])[1]
"""What solid black lets through, as a share of the light."""


def grown(share: float) -> float:
    """The area that a tone covers once it is printed."""
    return share + 4 * GROWTH * share * (1 - share)


def linear(ink: Ink) -> Rgb:
    """Linear sRGB of an ink on paper; a colour that no screen shows has values below 0."""
    areas = [grown(share) for share in ink]
    light = 1 - areas[3] * (1 - SOOT)
    red = green = blue = 0.0
    for solid, (r, g, b) in SOLIDS.items():
        weight = light
        for printed, area in zip(solid, areas, strict=False):
            weight *= area if printed else 1 - area
        red, green, blue = red + weight * r, green + weight * g, blue + weight * b
    return red, green, blue


def encoded(value: float) -> float:
    """IEC 61966-2-1: a linear value as screens take it, cut off where they end."""
    value = min(1.0, max(0.0, value))
    return 12.92 * value if value <= 0.0031308 else 1.055 * value ** (1 / 2.4) - 0.055


@lru_cache(maxsize=1024)
def rgb(colour: Colour) -> Rgb:
    """What a screen shows; greys are shown as they are."""
    if not isinstance(colour, Ink):
        return colour, colour, colour
    red, green, blue = linear(colour)
    return encoded(red), encoded(green), encoded(blue)


@lru_cache(maxsize=1024)
def luminance(colour: Colour) -> float:
    """Relative luminance, from 0 to 1, as WCAG 2.2 measures contrast by."""
    red, green, blue = (
        value / 12.92 if value <= 0.04045 else ((value + 0.055) / 1.055) ** 2.4 for value in rgb(colour)
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: Colour, other: Colour) -> float:
    """The contrast of two colours, from 1 to 21 (WCAG 2.2, relative luminance)."""
    dark, light = sorted((luminance(one), luminance(other)))
    return (light + 0.05) / (dark + 0.05)


def grey_of(colour: Colour) -> Grey:
    """The grey that is as light as a colour."""
    return round(encoded(luminance(colour)), 3) if isinstance(colour, Ink) else colour
