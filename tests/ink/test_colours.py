"""Colours on paper and on screens: what is written in the files, and what other programs see there."""

from __future__ import annotations

import shutil
import subprocess
from dataclasses import replace
from datetime import date
from io import BytesIO
from pathlib import Path

import pikepdf
import pytest
from PIL import Image as Raster
from PIL import ImageCms

from bookmaker.display.colour import Ink, rgb
from bookmaker.display.items import Document, Image, Item, Page, Rect, Stroke, Text
from bookmaker.ink.conditions import CONDITIONS, Condition
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.ink.pictures import HEAVIEST, inks_of, press_picture, screen_picture
from bookmaker.ink.pixels import page_pictures
from bookmaker.ink.profiles import SCREEN, screen_profile
from bookmaker.ink.svg import svg_text
from bookmaker.preflight import inspect

TEAL, CORAL = Ink(0.8, 0.2, 0.4, 0.1), Ink(0, 0.7, 0.6, 0)


def document(*items: Item) -> Document:
    page = Page(100, 100, items or (Rect(10, 10, 80, 80, Stroke(4, CORAL), TEAL),), "1")
    return Document("Colours", "", "", (page,), created=date(2026, 3, 14))


def opened(press: bool, condition: Condition = CONDITIONS["FOGRA39"]) -> pikepdf.Pdf:
    return pikepdf.open(BytesIO(pdf_bytes(document(), press, condition)))


def images_of(pdf: pikepdf.Pdf) -> list[pikepdf.Object]:
    return [*pdf.pages[0].resources.XObject.values()]


def png(colour: tuple[int, int, int]) -> bytes:
    file = BytesIO()
    Raster.new("RGB", (40, 40), colour).save(file, "PNG")
    return file.getvalue()


def test_a_press_gets_the_inks_as_they_were_named() -> None:
    with opened(press=True) as pdf:
        content = pdf.pages[0].Contents.read_bytes()
        (intent,) = pdf.Root.OutputIntents
        assert b"0.8 0.2 0.4 0.1 k" in content and b"0 0.7 0.6 0 K" in content
        assert (intent.S, str(intent.OutputConditionIdentifier)) == ("/GTS_PDFX", "FOGRA39")
        assert str(intent.RegistryName) == "http://www.color.org" and str(intent.Info)
        assert "/DestOutputProfile" not in intent  # ISO 15930-4: not needed for a condition of that registry


def test_a_screen_gets_what_they_look_like() -> None:
    with opened(press=False) as pdf:
        content = pdf.pages[0].Contents.read_bytes()
        (intent,) = pdf.Root.OutputIntents
        assert b" rg" in content and b" RG" in content and b" k" not in content
        profile = ImageCms.ImageCmsProfile(BytesIO(intent.DestOutputProfile.read_bytes())).profile
        assert (intent.DestOutputProfile.N, profile.profile_description) == (3, SCREEN)


def test_a_file_in_greys_names_no_colours() -> None:
    for press in (True, False):
        with pikepdf.open(BytesIO(pdf_bytes(document(Rect(0, 0, 9, 9, fill=0.4)), press))) as pdf:
            assert pdf.Root.OutputIntents[0].DestOutputProfile.N == 1


def test_page_and_picture_show_one_colour() -> None:
    (picture,) = page_pictures(pdf_bytes(document()), 72)
    wanted = tuple(round(255 * value) for value in rgb(TEAL))
    assert picture.getpixel((50, 50)) == pytest.approx(wanted, abs=1)
    assert "#" + "".join(f"{value:02x}" for value in wanted) in svg_text(document().pages[0])


def test_a_page_in_greys_is_a_picture_in_greys() -> None:
    (picture,) = page_pictures(pdf_bytes(document(Rect(0, 0, 50, 50, fill=0.5))), 72)
    assert picture.mode == "L"


@pytest.mark.parametrize(
    "colour", [(0.8, 0.2, 0.2), (0.1, 0.3, 0.5), (0.9, 0.8, 0.2), (0.5, 0.5, 0.5), (0.3, 0.2, 0.15)]
)
def test_inks_for_a_colour_look_like_it(colour: tuple[float, float, float]) -> None:
    assert rgb(inks_of(colour)) == pytest.approx(colour, abs=0.02)


def test_inks_are_never_too_heavy() -> None:
    steps = [at / 4 for at in range(5)]
    assert max(inks_of((r, g, b)).coverage for r in steps for g in steps for b in steps) <= HEAVIEST + 0.001


def test_pictures_keep_their_colour_where_they_may() -> None:
    teal = png((20, 120, 130))
    coloured = Image(0, 0, 8, 8, teal, coloured=True)
    for press, space in ((True, "/DeviceCMYK"), (False, "/DeviceRGB")):
        with pikepdf.open(BytesIO(pdf_bytes(document(coloured), press))) as pdf:
            (image,) = images_of(pdf)
            assert image.ColorSpace == space
        with pikepdf.open(BytesIO(pdf_bytes(document(replace(coloured, coloured=False)), press))) as pdf:
            (image,) = images_of(pdf)
            assert image.ColorSpace == "/DeviceGray"
    shares = Ink(*(value / 255 for value in press_picture(teal).getpixel((20, 20))))
    assert rgb(shares) == pytest.approx((20 / 255, 120 / 255, 130 / 255), abs=0.05)


def test_a_picture_with_a_profile_of_its_own_is_followed() -> None:
    """A picture whose red and blue are the other way round, as its profile says."""
    swapped = screen_profile().replace(b"rXYZ", b"tmpX").replace(b"bXYZ", b"rXYZ").replace(b"tmpX", b"bXYZ")
    file = BytesIO()
    Raster.new("RGB", (4, 4), (200, 10, 10)).save(file, "PNG", icc_profile=swapped)
    assert screen_picture(file.getvalue()).getpixel((1, 1)) == pytest.approx((10, 10, 200), abs=3)


def test_the_screen_s_profile_is_srgb() -> None:
    """Beside the one that LittleCMS makes."""
    ramp = Raster.new("RGB", (16, 1))
    ramp.putdata([(at * 17, 255 - at * 17, (at * 53) % 256) for at in range(16)])
    own, other = ImageCms.ImageCmsProfile(BytesIO(screen_profile())), ImageCms.createProfile("sRGB")
    through = ImageCms.profileToProfile(ramp, own, other)
    assert through is not None
    assert max(abs(a - b) for a, b in zip(through.tobytes(), ramp.tobytes(), strict=True)) <= 1


def test_preflight_takes_colours_for_what_the_file_is_for() -> None:
    for press in (True, False):
        assert inspect(
            pdf_bytes(document(Text(20, 50, "Sound", "serif", 12), Rect(0, 0, 9, 9, fill=TEAL)), press), "c.pdf"
        ).sound
    file = pikepdf.open(BytesIO(pdf_bytes(document(), press=True)))
    file.pages[0].contents_add(b"1 0 0 rg 0 0 5 5 re f 1 1 1 0.9 k 0 0 5 5 re f")
    out = BytesIO()
    file.save(out)
    found = {diagnostic.code: diagnostic.text for diagnostic in inspect(out.getvalue(), "c.pdf").diagnostics}
    assert found["colour"] == "page 1: a colour is set in DeviceRGB"
    assert found["much-ink"] == "page 1: 390 % of ink are laid on each other, more than the 300 % that dry"


@pytest.mark.skipif(shutil.which("gs") is None, reason="ghostscript is not installed")
def test_ghostscript_separates_it_as_meant(tmp_path: Path) -> None:
    """Plates for each ink: what was asked for is on them, and nothing else."""
    (tmp_path / "press.pdf").write_bytes(pdf_bytes(document(), press=True))
    run = ["gs", "-q", "-dBATCH", "-dNOPAUSE", "-sDEVICE=tiffsep", "-r72", f"-sOutputFile={tmp_path}/plate.tif"]
    subprocess.run([*run, f"{tmp_path}/press.pdf"], check=True, capture_output=True)
    for name, share in zip(("Cyan", "Magenta", "Yellow", "Black"), TEAL, strict=True):
        with Raster.open(tmp_path / f"plate({name}).tif") as plate:
            assert 1 - plate.convert("L").getpixel((50, 50)) / 255 == pytest.approx(share, abs=0.02)
