"""The profiles, read by LittleCMS (through pillow)."""

from __future__ import annotations

from io import BytesIO

import pytest
from PIL import Image as Raster
from PIL import ImageCms

from bookmaker.ink.profiles import CONDITION, GROWTH, SOLID, grey_profile, reflectance


@pytest.fixture(scope="module")
def profile() -> ImageCms.ImageCmsProfile:
    return ImageCms.ImageCmsProfile(BytesIO(grey_profile()))


def test_it_is_a_grey_output_profile(profile: ImageCms.ImageCmsProfile) -> None:
    said = profile.profile
    assert (said.device_class, said.xcolor_space.strip(), said.connection_space.strip()) == ("prtr", "GRAY", "XYZ")
    assert said.version == pytest.approx(2.1)
    assert said.profile_description == CONDITION
    assert said.rendering_intent == 1  # media-relative colorimetric
    assert said.media_white_point[0] == pytest.approx((0.9642, 1.0, 0.8249), abs=1e-4)  # D50, ICC.1:2001-04


def test_its_size_is_the_one_it_names() -> None:
    content = grey_profile()
    assert int.from_bytes(content[:4], "big") == len(content)
    assert len(content) % 4 == 0


def test_tones_come_out_as_they_print(profile: ImageCms.ImageCmsProfile) -> None:
    """Lightness from LittleCMS beside CIE 15: L* = 116·Y^(1/3) − 16, stored as L*·255/100."""
    tones = (0, 32, 64, 128, 192, 255)
    strip = Raster.new("L", (len(tones), 1))
    strip.putdata(tones)
    lab = ImageCms.applyTransform(
        strip, ImageCms.buildTransform(profile, ImageCms.createProfile("LAB"), "L", "LAB", renderingIntent=1)
    )
    for at, tone in enumerate(tones):
        lightness, a, b = lab.getpixel((at, 0))
        wanted = 116 * reflectance(tone / 255) ** (1 / 3) - 16
        assert lightness * 100 / 255 == pytest.approx(wanted, abs=0.4)
        assert (a, b) == pytest.approx((128, 128), abs=1)  # neutral


def test_a_half_tone_grows_by_what_is_said() -> None:
    assert reflectance(1.0) == 1.0 and reflectance(0.0) == pytest.approx(SOLID)
    # Murray and Davies: the share of the area that is covered, from what is reflected
    assert (1 - reflectance(0.5)) / (1 - SOLID) == pytest.approx(0.5 + GROWTH)
