"""Files that a manifest names for the cover: a picture, and the profile of a press.

In: the node with the file's name. Out: its bytes, and a picture's size in pixels; or a diagnostic. The file lies in the
folder of the file that names it, or further down.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from io import BytesIO
from pathlib import Path, PureWindowsPath
from warnings import catch_warnings

from PIL import ExifTags, Image, ImageCms

from bookmaker.files import ordinary
from bookmaker.source.diagnostics import Collector, Place, quoted
from bookmaker.source.placed import Node, read_text

MOST_BYTES = 40_000_000

MOST_PIXELS = 80_000_000
"""Twice an A4 page at 600 dots an inch."""


@dataclass(frozen=True, slots=True)
class Picture:
    """A PNG or JPEG file: its bytes, its width and height in pixels as it is shown, and where it was named."""

    source: bytes = field(repr=False)
    width: int
    height: int
    place: Place
    name: str


def read_picture(node: Node, collector: Collector) -> Picture | None:
    """The picture, or None after reporting why it can't be had."""
    hint = "name a PNG or JPEG file in the book's folder, such as cover/harbour.png"
    smaller = "save it smaller: 300 dots per inch is enough"
    found = _read(node, "image", "picture", hint, smaller, collector)
    if found is None:
        return None
    name, source = found
    most = f"more than {MOST_PIXELS // 1_000_000} million pixels"
    try:
        with catch_warnings(action="ignore"), Image.open(BytesIO(source), formats=("PNG", "JPEG")) as picture:
            width, height = picture.size
            if width * height > MOST_PIXELS:
                collector.error(node.place, "picture-large", f"{quoted(name)} has {width}×{height}, {most}", smaller)
                return None
            if _is_turned(picture):
                width, height = height, width
            picture.load()
    except Image.DecompressionBombError:  # so many that Pillow does not even open it
        collector.error(node.place, "picture-large", f"{quoted(name)} has {most}", smaller)
        return None
    except (OSError, ValueError, SyntaxError):
        collector.error(node.place, "not-a-picture", f"{quoted(name)} {_what_is_wrong(source)}", hint)
        return None
    return Picture(source, width, height, node.place, name)


def _is_turned(picture: Image.Image) -> bool:
    """Does it lie on its side? A camera says so in the EXIF data (Exif 2.3, tag 274: values from 5 on)."""
    return picture.getexif().get(ExifTags.Base.Orientation, 1) in range(5, 9)


def read_profile(node: Node, collector: Collector) -> bytes:
    """The ICC profile (ICC.1, 7.2) of a press with four inks; b"" after reporting what is wrong with it."""
    hint = "name the profile that the printer gave you, in the book's folder, such as cover/press.icc"
    found = _read(node, "profile", "profile", hint, "it should be a few megabytes at most", collector)
    if found is None:
        return b""
    name, source = found
    if source[36:40] != b"acsp":
        collector.error(
            node.place, "not-a-profile", f"{quoted(name)} is not an ICC profile, whatever its name says", hint
        )
    elif source[12:16] != b"prtr" or source[16:20] != b"CMYK":
        said = f"{quoted(name)} is not the profile of a press that prints in four colours"
        collector.error(node.place, "wrong-profile", said, hint)
    elif source[8] > 2:
        said = f"{quoted(name)} is of version {source[8]} of ICC, and PDF/X-1a takes version 2 only"
        collector.error(node.place, "wrong-profile", said, "ask the printer for one of version 2")
    else:
        try:
            ImageCms.getOpenProfile(BytesIO(source))
        except (ImageCms.PyCMSError, OSError):
            said = f"{quoted(name)} is damaged or incomplete"
            collector.error(node.place, "not-a-profile", said, "save or copy it again")
        else:
            return source
    return b""


def _read(node: Node, field: str, what: str, hint: str, smaller: str, collector: Collector) -> tuple[str, bytes] | None:
    """The name and the bytes of a file in the book's folder, or None after reporting why it can't be had."""
    name = read_text(node, f"“{field}”", collector)
    if not name:
        return None
    parts = PureWindowsPath(name)
    if not name.isprintable() or parts.drive or parts.root or ".." in parts.parts or name.startswith("~"):
        collector.error(node.place, f"{what}-outside", f"{quoted(name)} is not inside the book's folder", hint)
        return None
    folder = Path(node.place.file).parent
    path = folder / name
    try:
        if not path.resolve().is_relative_to(folder.resolve()):
            collector.error(
                node.place, f"{what}-outside", f"{quoted(name)} is a link that leads out of the folder", hint
            )
            return None
        if path.stat().st_size > MOST_BYTES:
            said = f"{quoted(name)} is larger than {MOST_BYTES // 1_000_000} MB"
            collector.error(node.place, f"{what}-large", said, smaller)
            return None
        return name, ordinary(path).read_bytes()
    except (OSError, ValueError, RuntimeError):
        collector.error(node.place, "no-file", f"there is no {what} {quoted(name)}", hint)
        return None


def _what_is_wrong(source: bytes) -> str:
    """What to say of a file that can't be read as a picture, going by how it begins (“magic numbers” of W3C's PNG
    specification and of JPEG, ISO/IEC 10918-1)."""
    if not source:
        return "is empty"
    if source.startswith((b"\x89PNG\r\n\x1a\n", b"\xff\xd8\xff")):
        return "is damaged or incomplete: save or copy it again"
    return "is not a PNG or JPEG file, whatever its name says"
