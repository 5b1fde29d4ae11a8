"""What is told before printing: margins, page counts, places for puzzles."""

from __future__ import annotations

import pytest

from bookmaker.layout import Layout, layout_names, load_layout
from bookmaker.layout.binding import LEAST_INNER, MOST_BOUND, cramped, forewarned
from bookmaker.layout.specfile import read_layout
from bookmaker.source.diagnostics import Diagnostic, Place

BOOKS = [name for name in layout_names() if load_layout(name).use == "book"]


def own(text: str) -> Layout:
    return read_layout("mine", text, "mine.yaml")


def said(layout: Layout, pages: int, covered: bool = False) -> list[Diagnostic]:
    found = [*forewarned(layout, pages, covered)]
    assert all(diagnostic.warning and diagnostic.hint for diagnostic in found)
    return found


@pytest.mark.parametrize("name", BOOKS)
def test_what_comes_with_bookmaker_binds_up_to_three_hundred_pages(name: str) -> None:
    layout = load_layout(name)
    for pages in (24, 150, 300):
        assert not said(layout, pages)
    assert not [*cramped(layout)]


@pytest.mark.parametrize(("most", "least"), LEAST_INNER)
def test_the_inner_margin_grows_with_the_page_count(most: int, least: float) -> None:
    exact = own(f"based-on: a5-book\nmargins: {{inner: {least} pt, spine: 0 mm}}\n")
    assert not said(exact, most)
    if most < MOST_BOUND:
        (diagnostic,) = said(exact, most + 2)
        assert (diagnostic.code, diagnostic.place) == ("narrow-margin", Place("mine.yaml", 2, 11))
        assert f"{(least + 9) / 72 * 25.4:.3g} mm" in diagnostic.text


def test_the_other_margins_and_where_they_are_told() -> None:
    layout = own("based-on: a5-book\nmargins:\n  outer: 6 mm\n  top: 6 mm\n  bottom: 5 mm\n")
    assert [each.place.line for each in said(layout, 40)] == [3, 4, 5]


def test_clues_in_the_margin_that_come_too_near_to_the_edge() -> None:
    layout = own("based-on: a5-book\npuzzles:\n  clues in margin: 7 mm\n")
    (diagnostic,) = said(layout, 40)
    assert (diagnostic.code, diagnostic.place.line) == ("narrow-margin", 3) and "6 mm" in diagnostic.text
    assert not said(own("based-on: a5-book\npuzzles:\n  clues in margin: 6 mm\n"), 40)


def test_a_booklet_is_not_glued() -> None:
    assert not said(own("based-on: a5-booklet\nmargins: {inner: 8 mm}\n"), 64)
    assert said(own("based-on: a5-book\nmargins: {inner: 8 mm}\n"), 64)


def test_page_counts() -> None:
    layout = load_layout("a4-book")
    assert [each.code for each in said(layout, MOST_BOUND + 1, covered=True)] == ["too-thick", "odd-count"]
    assert not said(layout, 77) and not said(layout, 78, covered=True)


def test_places_too_small_for_a_usual_grid() -> None:
    asked = Place("book.yaml", 3, 11)
    (diagnostic,) = cramped(own("based-on: a5-book\npuzzles: {columns: 2, rows: 2}\n"))
    assert (diagnostic.code, diagnostic.place) == ("cramped", Place("mine.yaml", 2, 1))
    (diagnostic,) = cramped(own("based-on: a4-book\npuzzles: {rows: 2, text: beside}\nmargins: {inner: 75 mm}\n"))
    assert "nine cells need 81 mm" in diagnostic.text
    assert load_layout("a5-book", asked).place == asked
