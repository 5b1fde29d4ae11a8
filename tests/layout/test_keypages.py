"""Keys are found fast: a mark at the outer edge and the numbers at the foot say what a page has."""

from __future__ import annotations

from dataclasses import replace

import pytest

from bookmaker.book.contents import BookPuzzle
from bookmaker.display.items import Page, Rect, Text
from bookmaker.layout import compose, layout_names, load_layout
from bookmaker.layout.pages import keys
from bookmaker.layout.pages.keys import key_rows
from bookmaker.layout.pages.parts import heading
from bookmaker.layout.setting.paging import pages
from bookmaker.layout.spec import LEAST_OUTER, Layout
from bookmaker.puzzle.grid import USUAL_BOXES, boxed_grid
from bookmaker.puzzle.puzzle import Puzzle
from tests.layout.flat import flat
from tests.layout.sample_book import full_book

BOOKS = [name for name in layout_names() if load_layout(name).use == "book" and not load_layout(name).tear_out]


def key_pages(layout: Layout) -> list[tuple[bool, Page, list[int]]]:
    """The pages of keys: is it a right one, the page, the numbers of its keys."""
    numbers = {f"key {puzzle.id}": puzzle.number for puzzle in full_book().puzzles}
    made = tuple(compose(full_book(), layout).pages)
    found = [[numbers[a.name] for a in page.anchors if a.name in numbers] for page in made]
    return [(at % 2 == 0, page, here) for at, (page, here) in enumerate(zip(made, found, strict=True)) if here]


@pytest.mark.parametrize("name", BOOKS)
def test_a_mark_in_the_outer_margin_lies_lower_from_page_to_page(name: str) -> None:
    layout = load_layout(name)
    lowest = 0.0
    for right, page, _ in key_pages(layout):
        (mark,) = (one for one in flat(page) if one.inside("thumb mark"))
        assert isinstance(mark.item, Rect) and mark.item.fill == 0.0
        left, top, far, foot = mark.box
        edge = layout.width - far if right else left
        assert edge > 8 and edge + (far - left) < LEAST_OUTER, "clear of the knife, and of the keys of a thick book"
        assert lowest <= top and layout.margins.top <= top and foot <= layout.height - layout.margins.bottom + 0.01
        lowest = top


@pytest.mark.parametrize("name", BOOKS)
def test_the_foot_names_the_first_and_the_last_key_on_every_page(name: str) -> None:
    for _, page, here in key_pages(load_layout(name)):
        (said,) = (one.item.text for one in flat(page) if isinstance(one.item, Text) and "KEYS" in one.item.text)
        ends = f"{here[0]}–{here[-1]}" if len(here) > 1 else str(here[0])
        assert said == f"SOLUTION KEYS {ends}"


def test_a_layout_may_keep_the_next_key_out_of_sight() -> None:
    layout = load_layout("a5-book")
    apart = replace(layout, keys=replace(layout.keys, apart=True))
    order = [number for _, _, here in key_pages(apart) for number in here]
    count = len(full_book().puzzles)
    assert order == [*range(1, count + 1, 2), *range(2, count + 1, 2)]
    assert [number for _, _, here in key_pages(layout) for number in here] == [*range(1, count + 1)]


def large(size: int, name: str) -> BookPuzzle:
    """A puzzle of which only the key counts, on a large grid."""
    high, wide = USUAL_BOXES[size]
    lines = range(size)
    key = tuple((wide * (row % high) + row // high + column) % size + 1 for row in lines for column in lines)
    puzzle = Puzzle(boxed_grid(size, high, wide), (0,) * size**2)
    return replace(full_book().puzzles[0], id=name, puzzle=puzzle, solution=key)


@pytest.mark.parametrize(("sizes", "usual", "made", "same"), [((25, 25, 12), 3, 2, False), ((25, 12, 12), 2, 2, True)])
def test_keys_of_large_grids_are_a_little_smaller_where_that_spares_a_page(
    sizes: tuple[int, ...], usual: int, made: int, same: bool
) -> None:
    layout = load_layout("a4-book")
    puzzles = [large(size, str(at)) for at, size in enumerate(sizes)]
    rows = [*heading("Keys", layout), *key_rows(puzzles, layout)]
    assert len(pages(rows, layout.depth, layout.line)) == usual
    leaves = keys.key_pages(puzzles, layout, "Keys", "KEYS")
    assert len(leaves) == made
    (_, upper), (_, lower) = leaves[-1].anchors
    row, white, *_ = key_rows(puzzles[1:2], layout)
    assert (lower - upper == pytest.approx(row.height + white.height)) == same
    assert lower - upper > 0.9 * row.height
