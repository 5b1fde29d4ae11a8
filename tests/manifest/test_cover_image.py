"""Pictures that a manifest names, from the least to the hostile: read, or one message that says what to do."""

from __future__ import annotations

import struct
import zlib
from io import BytesIO
from pathlib import Path

import pytest
from PIL import Image

from bookmaker.manifest.pictures import MOST_BYTES, MOST_PIXELS, Picture, read_picture
from bookmaker.source.diagnostics import Collector, Diagnostic, Place
from bookmaker.source.placed import Word


def _saved(kind: str, size: tuple[int, int] = (40, 30), mode: str = "L") -> bytes:
    stream = BytesIO()
    Image.new(mode, size).save(stream, kind)
    return stream.getvalue()


def _declared(width: int, height: int) -> bytes:
    """A PNG (W3C Recommendation, second edition) that holds nothing of the pixels its header declares."""
    parts = ((b"IHDR", struct.pack(">IIBBBBB", width, height, 8, 0, 0, 0, 0)), (b"IDAT", zlib.compress(b"")))
    chunks = (
        struct.pack(">I", len(body)) + kind + body + struct.pack(">I", zlib.crc32(kind + body))
        for kind, body in (*parts, (b"IEND", b""))
    )
    return b"\x89PNG\r\n\x1a\n" + b"".join(chunks)


def _read(folder: Path, content: bytes) -> tuple[Picture | None, list[Diagnostic]]:
    (folder / "quay.png").write_bytes(content)
    collector = Collector()
    return read_picture(Word(Place(str(folder / "book.yaml"), 3, 9), "quay.png"), collector), collector.found


@pytest.mark.parametrize("mode", ["1", "L", "P", "RGB", "RGBA"])
@pytest.mark.parametrize("size", [(1, 1), (1, 300), (40, 30)])
def test_small_pictures_are_read(tmp_path: Path, mode: str, size: tuple[int, int]) -> None:
    picture, found = _read(tmp_path, _saved("PNG", size, mode))
    assert picture is not None
    assert (picture.width, picture.height) == size
    assert not found


def test_a_jpeg_may_go_by_any_name(tmp_path: Path) -> None:
    picture, found = _read(tmp_path, _saved("JPEG"))
    assert picture is not None and not found


SIDE = int(MOST_PIXELS**0.5) + 1
HUGE = 2**31 - 1
FAULTY = {
    "a little too large": (_declared(SIDE, SIDE), "picture-large", f"has {SIDE}×{SIDE}, more than 80 million pixels"),
    "one line, too long": (_declared(MOST_PIXELS + 1, 1), "picture-large", "more than 80 million pixels"),
    "of unheard-of size": (_declared(60_000, 60_000), "picture-large", "has more than 80 million pixels"),
    "as large as a header can say": (_declared(HUGE, HUGE), "picture-large", "has more than 80 million pixels"),
    "as large as a header can say, one way": (_declared(HUGE, 1), "picture-large", "has more than 80 million pixels"),
    "of no size": (_declared(0, 0), "not-a-picture", "is damaged or incomplete"),
    "without its pixels": (_declared(40, 30), "not-a-picture", "is damaged or incomplete"),
    "PNG cut off": (_saved("PNG", mode="RGB")[:60], "not-a-picture", "is damaged or incomplete"),
    "JPEG cut off": (_saved("JPEG")[:200], "not-a-picture", "is damaged or incomplete"),
    "only its first bytes": (_saved("PNG")[:8], "not-a-picture", "is damaged or incomplete"),
    "empty": (b"", "not-a-picture", "is empty"),
    "words": (b"a picture of the quay", "not-a-picture", "is not a PNG or JPEG file"),
    "another kind": (_saved("GIF"), "not-a-picture", "is not a PNG or JPEG file"),
    "drawn with commands": (
        b"%!PS-Adobe-3.0 EPSF-3.0\n%%BoundingBox: 0 0 9 9\n",
        "not-a-picture",
        "is not a PNG or JPEG",
    ),
    "too heavy": (_saved("PNG") + bytes(MOST_BYTES), "picture-large", "is larger than 40 MB"),
}


@pytest.mark.parametrize("name", FAULTY)
@pytest.mark.filterwarnings("error")
def test_faulty_pictures_are_told_once(tmp_path: Path, name: str) -> None:
    content, code, said = FAULTY[name]
    picture, found = _read(tmp_path, content)
    assert picture is None
    (diagnostic,) = found
    assert (diagnostic.code, diagnostic.place.line, diagnostic.place.column) == (code, 3, 9)
    assert diagnostic.text.startswith("“quay.png” ")
    assert said in diagnostic.text
    assert diagnostic.hint
