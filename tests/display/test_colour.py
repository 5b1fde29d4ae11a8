"""Colours: what inks look like, beside values from outside and a colour engine that shares nothing with the model."""

from __future__ import annotations

import pytest
from PIL import Image as Raster
from PIL import ImageCms

from bookmaker.display.colour import Ink, contrast, grey_of, grown, luminance, rgb

SOLIDS = {
    # CIE L*a*b* (D50) of offset on coated paper, ISO 12647-2:2004/Amd 1:2007; the paper has 95, 0, -2 (from memory)
    "black": (Ink(0, 0, 0, 1), (16, 0, 0)),
    "magenta and yellow": (Ink(0, 1, 1, 0), (47, 68, 48)),
    "cyan and magenta": (Ink(1, 1, 0, 0), (24, 17, -46)),
    "all three": (Ink(1, 1, 1, 0), (23, 0, 0)),
}


def lab(colour: Ink) -> tuple[float, ...]:
    """L*a*b* of what a screen shows, as LittleCMS sees it."""
    picture = Raster.new("RGB", (1, 1), tuple(round(255 * value) for value in rgb(colour)))
    srgb, other = ImageCms.createProfile("sRGB"), ImageCms.createProfile("LAB")
    light, a, b = ImageCms.applyTransform(picture, ImageCms.buildTransform(srgb, other, "RGB", "LAB")).getpixel((0, 0))
    return light / 2.55, a - 128, b - 128


@pytest.mark.parametrize("name", SOLIDS)
def test_solids_look_as_the_standard_says_relative_to_the_paper(name: str) -> None:
    ink, (light, a, b) = SOLIDS[name]
    found = lab(ink)
    # L* over a white paper instead of one of 95: Y divided by the paper's (CIE 15)
    relative = 116 * (((light + 16) / 116) ** 3 / ((95 + 16) / 116) ** 3) ** (1 / 3) - 16
    assert found[0] == pytest.approx(relative, abs=1.5)
    assert found[1] == pytest.approx(a, abs=5)
    assert found[2] == pytest.approx(b, abs=6)


def test_paper_is_white_and_a_screen_is_never_left() -> None:
    assert rgb(Ink(0, 0, 0, 0)) == pytest.approx((1, 1, 1), abs=0.004)
    steps = (0.0, 0.5, 1.0)
    inks = [Ink(c, m, y, k) for c in steps for m in steps for y in steps for k in steps]
    assert all(0 <= value <= 1 for ink in inks for value in rgb(ink))


def test_more_ink_is_never_lighter() -> None:
    for at in range(4):
        for begin in (Ink(0, 0, 0, 0), Ink(0.3, 0.6, 0.2, 0.1)):
            series = [luminance(Ink(*(step / 10 if i == at else s for i, s in enumerate(begin)))) for step in range(11)]
            assert series == sorted(series, reverse=True)


def test_a_half_tone_covers_what_the_parabola_says() -> None:
    assert (grown(0.0), grown(1.0)) == (0, 1)
    assert grown(0.4) == pytest.approx(0.53, abs=0.01)  # curve A of ISO 12647-2: 13 % at 40 (from memory)


def test_contrast_is_that_of_wcag() -> None:
    """WCAG 2.2: black on white is 21 to 1; #777777 on white is 4.48, the usual example of what just fails."""
    assert contrast(0.0, 1.0) == pytest.approx(21)
    assert contrast(0x77 / 255, 1.0) == pytest.approx(4.48, abs=0.01)


def test_a_colour_and_its_grey_are_as_light() -> None:
    ink = Ink(1, 0.7, 0.2, 0.3)
    assert luminance(grey_of(ink)) == pytest.approx(luminance(ink), abs=0.002)
    assert grey_of(0.4) == 0.4
