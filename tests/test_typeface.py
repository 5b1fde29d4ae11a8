"""The fonts and their measures. HarfBuzz, as Pillow carries it, is the outside judge of kerned lengths."""

from __future__ import annotations

from itertools import pairwise
from pathlib import Path

import pytest
from PIL import ImageFont, features

from bookmaker.display.items import Close, Move
from bookmaker.layout.setting.fonts import FontBook
from bookmaker.typeface import Typeface, by_postscript, font_files, typeface

FONTS = tuple(font_files())
WORDS = ("AVATAR", "Tomorrow,", "“Wyvern.”", "L’été:", "Übergröße", "r.v—Ty", "flüffig", "Żółć")


def test_the_house_fonts_are_there() -> None:
    assert {"sans", "sans-bold", "sans-italic", "sans-narrow", "sans-narrow-bold"} <= set(FONTS)
    assert {"serif", "serif-bold", "serif-italic", "serif-bold-italic"} <= set(FONTS)
    assert FontBook().names == FONTS


@pytest.mark.skipif(not features.check("raqm"), reason="this Pillow has no HarfBuzz")
@pytest.mark.parametrize("font", FONTS)
def test_kerned_lengths_as_harfbuzz_finds_them(font: str) -> None:
    shaper = ImageFont.truetype(str(font_files()[font]), 1000, layout_engine=ImageFont.Layout.RAQM)
    for word in WORDS:
        expected = shaper.getlength(word, features=["-liga", "-clig"])
        assert FontBook().width(word, font, 1000) == pytest.approx(expected, abs=0.01), word


@pytest.mark.parametrize("font", FONTS)
def test_figures_are_lining_and_of_one_width(font: str) -> None:
    face = typeface(font)
    assert len({face.advance(figure) for figure in "0123456789"}) == 1
    assert {face.kern(a, b) for a in "0123456789" for b in "0123456789"} == {0.0}
    assert face.figure_height == pytest.approx(face.cap_height, abs=0.02)
    assert 0 < face.x_height < face.cap_height <= face.ascent
    assert 0 < face.descent < 0.5


def test_kerning_is_taken_from_the_font() -> None:
    assert typeface("sans").kern("T", "o") < -0.02
    assert typeface("sans").kern("n", "n") == 0


def test_a_line_is_as_long_as_its_words_and_spaces() -> None:
    book = FontBook()
    words = ["To", "AVATAR,", "“Wy”"]
    apart = sum(book.width(word, "serif", 11) for word in words) + 2 * book.width(" ", "serif", 11)
    assert book.width(" ".join(words), "serif", 11) == pytest.approx(apart)


def test_letter_and_word_space() -> None:
    book = FontBook()
    plain = book.width("a b\u00a0c", "sans", 10)
    assert book.width("a b\u00a0c", "sans", 10, word_space=2) == pytest.approx(plain + 4)
    assert book.width("a b\u00a0c", "sans", 10, letter_space=2) == pytest.approx(plain + 8)
    assert book.width("", "sans", 10, 2, 2) == 0


def test_missing_characters_are_named_once() -> None:
    assert FontBook().missing("→ 1a → ☃", "sans") == "→☃"
    with pytest.raises(KeyError):
        FontBook().missing("a", "no such font")


def test_outlines_are_closed_and_per_em() -> None:
    segments = typeface("serif-bold").outline("Å")
    assert isinstance(segments[0], Move)
    assert sum(isinstance(segment, Move) for segment in segments) == sum(isinstance(s, Close) for s in segments) >= 3
    assert all(isinstance(b, Move) for a, b in pairwise(segments) if isinstance(a, Close))
    ends = [segment.to for segment in segments if not isinstance(segment, Close)]
    assert max(y for _, y in ends) < 1.2 and min(y for _, y in ends) > -0.1
    assert typeface("sans").outline(" ") == ()


def test_fonts_are_called_in_a_pdf_as_their_files_say() -> None:
    """Pillow reads the family from the same table."""
    assert sorted(by_postscript().values()) == sorted(FONTS)
    for called, name in by_postscript().items():
        family, _ = ImageFont.truetype(str(font_files()[name]), 10).getname()
        assert called == typeface(name).postscript
        assert called.replace("-", "").startswith(str(family).replace(" ", ""))


def test_a_font_without_a_name_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "font.ttf").write_bytes(font_files()["sans"].read_bytes()[:400])
    monkeypatch.setattr("bookmaker.typeface.font_files", lambda: {"cut off": tmp_path / "font.ttf"})
    typeface.cache_clear()
    with pytest.raises(OSError, match="damaged"):
        by_postscript.__wrapped__()


@pytest.mark.parametrize("tag", [b"post", b"cmap", b"glyf"])
def test_words_that_have_changed_places_are_noticed(tmp_path: Path, tag: bytes) -> None:
    """Such damage leaves the sum over the whole font as it was; that of the table differs."""
    whole = font_files()["sans"].read_bytes()
    entry = whole.index(tag)
    table = int.from_bytes(whole[entry + 8 : entry + 12], "big")
    harmed = bytearray(whole)
    harmed[table : table + 4], harmed[entry + 4 : entry + 8] = whole[entry + 4 : entry + 8], whole[table : table + 4]
    (tmp_path / "font.ttf").write_bytes(harmed)
    with pytest.raises(OSError, match="damaged"):
        Typeface("harmed", tmp_path / "font.ttf")
