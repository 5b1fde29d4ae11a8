"""Themes: the ones that come with bookmaker, and what is said of bad ones."""

from __future__ import annotations

import pytest

from bookmaker.display.colour import Ink, contrast
from bookmaker.layout import load_theme, theme_names
from bookmaker.layout.themefile import HEAVIEST, LEGIBLE, PLAIN, read_theme
from bookmaker.resources import shipped
from bookmaker.source.diagnostics import BookErrors, Place

GOOD = (shipped("layouts") / "themes" / "harbour-night.yaml").read_text(encoding="utf-8")


def test_there_are_at_least_five_and_none_is_like_another() -> None:
    themes = [load_theme(name) for name in theme_names()]
    assert len(themes) >= 5
    assert len({theme.cover for theme in themes}) == len(themes)
    assert {theme.pattern for theme in themes} == {"field", "patchwork", "terraces", "bands", "mosaic"}


@pytest.mark.parametrize("name", theme_names())
def test_every_theme_can_be_read_dried_and_printed_in_black(name: str) -> None:
    theme = load_theme(name)
    for palette in (theme.cover, theme.inside, theme.in_black.inside):
        assert contrast(palette.words, palette.panel) >= LEGIBLE
        colours = (palette.ground, palette.tone, palette.panel, palette.words, *palette.marks)
        assert all(colour.coverage <= HEAVIEST / 100 for colour in colours if isinstance(colour, Ink))
    black = theme.in_black.inside
    assert not any(isinstance(colour, Ink) for colour in (black.ground, black.tone, *black.marks))
    # seen on bare paper, though WCAG 2.2 (1.4.11) asks nothing of what has no meaning
    assert all(contrast(colour, 1.0) >= 1.5 for colour in black.marks)


def test_the_plain_theme_takes_one_ink() -> None:
    cover = load_theme(PLAIN).cover
    assert not any(
        isinstance(colour, Ink) for colour in (cover.ground, cover.tone, cover.panel, cover.words, *cover.marks)
    )


@pytest.mark.parametrize(
    ("old", "new", "code", "said"),
    [
        ("ground: 100 76 30 38", "ground: navy", "not-a-colour", "“ground” can't be “navy”"),
        ("ground: 100 76 30 38", "ground: 100 101 0 0", "out-of-range", "more than 100 percent"),
        ("ground: 100 76 30 38", "ground: 100 90 80 40", "much-ink", "lays 310 percent"),
        ("pattern: terraces", "pattern: spirals", "unknown-word", "“pattern” can't be “spirals”"),
        ("digits: sans-bold", "digits: cursive", "unknown-word", "“digits” can't be “cursive”"),
        ("across: 17", "across: 90", "out-of-range", "“across” should be from 6 to 30"),
        ("words: 0 2 8 0", "words: 90 60 20 30", "faint-words", "have a contrast of 1."),
        ("  tone: 95 66 22 20", "  shade: 95 66 22 20", "unknown-key", "has no “shade”"),
    ],
)
def test_mistakes_are_told_with_their_place(old: str, new: str, code: str, said: str) -> None:
    line = 1 + GOOD[: GOOD.index(old)].count("\n")
    with pytest.raises(BookErrors) as caught:
        read_theme("x", GOOD.replace(old, new, 1), "x.yaml")
    diagnostic = next(found for found in caught.value.diagnostics if found.code == code)
    assert said in diagnostic.text and (diagnostic.place.file, diagnostic.place.line) == ("x.yaml", line)


def test_all_mistakes_are_told_at_once() -> None:
    bad = GOOD.replace("across: 17", "across: many").replace("    - 0 28 88 0", "    - gold")
    with pytest.raises(BookErrors) as caught:
        read_theme("x", bad, "x.yaml")
    assert sorted(found.code for found in caught.value.diagnostics) == ["not-a-colour", "not-a-number"]


def test_an_unknown_theme_is_told_where_it_was_asked_for() -> None:
    with pytest.raises(BookErrors) as caught:
        load_theme("harbor-night", Place("book.yaml", 5, 10))
    (diagnostic,) = caught.value.diagnostics
    assert (diagnostic.code, diagnostic.place.line) == ("unknown-theme", 5)
    assert "harbour-night" in diagnostic.hint
