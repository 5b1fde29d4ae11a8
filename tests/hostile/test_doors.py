"""A small set of what `tests/benchmarks/fuzz.py` does at length: hostile files at every door."""

from __future__ import annotations

import re
import struct
import zlib
from pathlib import Path

import pytest
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st

from bookmaker.manifest.pictures import MOST_PIXELS, read_picture
from bookmaker.preflight import inspect
from bookmaker.source.diagnostics import Collector, Place
from bookmaker.source.placed import Word
from bookmaker.typeface import Typeface
from tests.hostile import books, commands, doors
from tests.hostile.damage import damaged, swapped
from tests.hostile.slips import wishes

STEADY = settings(
    deadline=None,
    derandomize=True,
    database=None,
    max_examples=25,
    phases=[Phase.generate],
    suppress_health_check=list(HealthCheck),
)


@STEADY
@given(books.sound())
def test_sound_books(tmp_path: Path, text: str) -> None:
    doors.sound_book(tmp_path, text)


@STEADY
@given(books.nearly_sound() | books.HOSTILE)
def test_other_books(tmp_path: Path, text: str) -> None:
    doors.book(tmp_path, text)


@STEADY
@given(books.of_other_shapes())
def test_sound_books_on_other_shapes(tmp_path: Path, text: str) -> None:
    doors.sound_book(tmp_path, text)


@STEADY
@given(books.SLIPPED)
def test_slips_on_other_shapes(tmp_path: Path, text: str) -> None:
    doors.book(tmp_path, text)


@settings(STEADY, max_examples=8)
@given(books.clashing_shapes())
def test_clashes_on_other_shapes(tmp_path: Path, text: str) -> None:
    doors.whole_book(tmp_path, text)


@STEADY
@given(wishes())
def test_wishes_for_other_shapes(tmp_path: Path, text: str) -> None:
    doors.wish(tmp_path, text)


@settings(STEADY, max_examples=4)
@given(books.sound())
def test_printed_books(tmp_path: Path, text: str) -> None:
    doors.printed_book(tmp_path, text)


@settings(STEADY, max_examples=8)
@given(books.sound())
def test_spoken_books(tmp_path: Path, text: str) -> None:
    doors.spoken_book(tmp_path, text)


@settings(STEADY, max_examples=15)
@given(st.sampled_from(sorted(commands.WORDS)).flatmap(commands.typed))
def test_commands(tmp_path: Path, found: commands.Case) -> None:
    commands.command(tmp_path, found)


@STEADY
@given(st.data())
def test_layouts(data: st.DataObject) -> None:
    whole = data.draw(st.sampled_from(doors.layout_texts())).encode()
    doors.layout(data.draw(damaged(whole) | swapped(whole)).decode(errors="replace"))


@STEADY
@given(st.data())
def test_tables(tmp_path: Path, data: st.DataObject) -> None:
    whole = data.draw(st.sampled_from(doors.tables()))
    doors.table(tmp_path, data.draw(damaged(whole) | swapped(whole)))


@STEADY
@given(st.data())
def test_briefs(tmp_path: Path, data: st.DataObject) -> None:
    whole = data.draw(st.sampled_from(doors.briefs()))
    doors.brief(tmp_path, data.draw(damaged(whole) | swapped(whole)).decode(errors="replace"))


@STEADY
@given(st.data())
def test_fonts(tmp_path: Path, data: st.DataObject) -> None:
    doors.font(tmp_path, data.draw(damaged(data.draw(st.sampled_from(doors.fonts())))))


@STEADY
@given(st.data())
def test_pictures(tmp_path: Path, data: st.DataObject) -> None:
    doors.picture(tmp_path, data.draw(damaged(data.draw(st.sampled_from(doors.pictures())))))


@STEADY
@given(st.data())
def test_pdfs(data: st.DataObject) -> None:
    whole = data.draw(st.sampled_from(doors.pdfs()))
    doors.pdf(data.draw(damaged(whole) | swapped(whole)))


@STEADY
@given(st.data())
def test_results(tmp_path: Path, data: st.DataObject) -> None:
    whole = data.draw(st.sampled_from(doors.results()))
    doors.times(tmp_path, data.draw(damaged(whole) | swapped(whole)))


@STEADY
@given(st.data())
def test_calibrations(tmp_path: Path, data: st.DataObject) -> None:
    whole = doors.CALIBRATION.encode()
    doors.calibration(tmp_path, data.draw(damaged(whole) | swapped(whole)))


def test_a_damaged_font_is_named(tmp_path: Path) -> None:
    whole = bytearray(doors.fonts()[0])
    whole[1000] ^= 1
    (tmp_path / "font.ttf").write_bytes(whole)
    with pytest.raises(OSError, match="install bookmaker again") as raised:
        Typeface("hostile", tmp_path / "font.ttf")
    assert raised.value.filename == str(tmp_path / "font.ttf")


def test_a_picture_of_too_many_pixels_is_not_unpacked(tmp_path: Path) -> None:
    """A PNG (W3C Recommendation, second edition) whose header promises more than memory should be given for."""
    side = int(MOST_PIXELS**0.5) + 1
    header = struct.pack(">IIBBBBB", side, side, 8, 0, 0, 0, 0)
    chunks = b"".join(
        struct.pack(">I", len(body)) + kind + body + struct.pack(">I", zlib.crc32(kind + body))
        for kind, body in ((b"IHDR", header), (b"IDAT", zlib.compress(b"")), (b"IEND", b""))
    )
    (tmp_path / "large.png").write_bytes(b"\x89PNG\r\n\x1a\n" + chunks)
    collector = Collector()
    assert read_picture(Word(Place(str(tmp_path / "book.yaml"), 1, 1), "large.png"), collector) is None
    assert [diagnostic.code for diagnostic in collector.found] == ["picture-large"]


def test_a_pdf_that_unpacks_beyond_measure_is_refused() -> None:
    packed = zlib.compress(bytes(100_000_000), 9)
    bomb = (
        b"%PDF-1.4\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n"
        b"2 0 obj<</Type/Pages/Kids[3 0 R]/Count 1>>endobj\n"
        b"3 0 obj<</Type/Page/Parent 2 0 R/MediaBox[0 0 99 99]/Contents 4 0 R>>endobj\n"
        b"4 0 obj<</Length " + str(len(packed)).encode() + b"/Filter/FlateDecode>>stream\n" + packed + b"\n"
        b"endstream endobj\ntrailer<</Root 1 0 R>>\n"
    )
    assert "damaged" in [diagnostic.code for diagnostic in inspect(bomb, "bomb.pdf").diagnostics]


def test_a_pdf_packed_in_an_unknown_way_is_refused() -> None:
    """Found by fuzzing: a letter of a filter was lost. Streams that hold other objects keep theirs."""
    whole = doors.pdfs()[0]
    harmed = re.sub(rb"(?<=<<  /Filter )/FlateDecode", b"/XlateDecode", whole)
    assert harmed != whole
    assert "damaged" in [diagnostic.code for diagnostic in inspect(harmed, "odd.pdf").diagnostics]
