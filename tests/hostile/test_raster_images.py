"""Pictures as cameras, scanners and drawing programs leave them: turned, deep, in inks, moving, or far too large."""

from __future__ import annotations

from io import BytesIO
from pathlib import Path
from typing import Any

import pytest
from PIL import ExifTags, Image

from bookmaker.ink.pictures import grey_picture
from bookmaker.manifest.pictures import Picture, read_picture
from bookmaker.source.diagnostics import Collector, Place
from bookmaker.source.placed import Word

RAMP = Image.linear_gradient("L").resize((60, 40))
"""Black at the top, white at the bottom."""


def _file(picture: Image.Image, kind: str, **more: Any) -> bytes:
    stream = BytesIO()
    picture.save(stream, kind, **more)
    return stream.getvalue()


def _read(folder: Path, content: bytes) -> tuple[Picture | None, list[str]]:
    (folder / "quay.png").write_bytes(content)
    collector = Collector()
    found = read_picture(Word(Place(str(folder / "book.yaml"), 3, 9), "quay.png"), collector)
    return found, [diagnostic.code for diagnostic in collector.found]


def _grey(picture: Image.Image, at: tuple[int, int]) -> int:
    grey = picture.getpixel(at)
    assert isinstance(grey, int)
    return grey


def _deep(picture: Image.Image) -> Image.Image:
    deep = Image.new("I;16", picture.size)
    for y in range(picture.height):
        for x in range(picture.width):
            deep.putpixel((x, y), _grey(picture, (x, y)) * 257)
    return deep


@pytest.mark.parametrize(
    "content",
    [
        _file(_deep(RAMP), "PNG"),
        _file(RAMP.convert("CMYK"), "JPEG", quality=95),
        _file(RAMP, "PNG", save_all=True, append_images=[RAMP.rotate(180)]),
        _file(RAMP.convert("RGB"), "JPEG", quality=95, progressive=True),
    ],
    ids=["16 bits", "CMYK", "moving", "progressive"],
)
def test_greys_stay_what_they_are(tmp_path: Path, content: bytes) -> None:
    picture, diagnostics = _read(tmp_path, content)
    assert picture is not None and not diagnostics
    printed = grey_picture(content)
    for y in range(40):
        assert abs(_grey(printed, (30, y)) - _grey(RAMP, (30, y))) <= 3


@pytest.mark.parametrize(
    ("orientation", "size", "dark"),
    [(1, (60, 40), (30, 0)), (3, (60, 40), (30, 39)), (6, (40, 60), (39, 30)), (8, (40, 60), (0, 30))],
)
def test_a_picture_taken_with_the_camera_turned_is_upright(
    tmp_path: Path, orientation: int, size: tuple[int, int], dark: tuple[int, int]
) -> None:
    """Exif 2.3, tag 274: 6 says that the first row of the file is the right-hand side of what was seen."""
    exif = Image.Exif()
    exif[ExifTags.Base.Orientation] = orientation
    content = _file(RAMP, "JPEG", exif=exif)
    picture, _ = _read(tmp_path, content)
    assert picture is not None and (picture.width, picture.height) == size
    printed = grey_picture(content)
    assert printed.size == size
    assert _grey(printed, dark) < 16
    assert _grey(printed, (size[0] - 1 - dark[0], size[1] - 1 - dark[1])) > 200


def test_a_hundred_megapixels_are_refused_before_they_are_unpacked(tmp_path: Path) -> None:
    content = _file(Image.new("1", (10_000, 10_000)), "PNG")
    assert len(content) < 100_000
    assert _read(tmp_path, content) == (None, ["picture-large"])


@pytest.mark.parametrize("profile", [b"", b"\0" * 128, b"\xff" * 5_000], ids=["empty", "zeros", "noise"])
@pytest.mark.parametrize("kind", ["PNG", "JPEG"])
def test_a_damaged_colour_profile_changes_nothing(tmp_path: Path, kind: str, profile: bytes) -> None:
    """ICC profiles are not applied: what is printed is grey."""
    content = _file(RAMP, kind, icc_profile=profile)
    picture, _ = _read(tmp_path, content)
    assert picture is not None
    assert grey_picture(content).tobytes() == grey_picture(_file(RAMP, kind)).tobytes()


DAMAGED = b"", b"II*\0\xff\xff\xff\xff", b"MM\0*\0\0\0\x08\xff\xff" + b"\x01\x12" * 40


@pytest.mark.parametrize("exif", DAMAGED)
def test_damaged_exif_data_are_none(tmp_path: Path, exif: bytes) -> None:
    content = _file(RAMP, "JPEG", exif=b"Exif\0\0" + exif)
    picture, diagnostics = _read(tmp_path, content)
    assert (picture is None) == bool(diagnostics)
    if picture is not None:
        assert grey_picture(content).size == (picture.width, picture.height)
