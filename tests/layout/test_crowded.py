"""Puzzles with many kinds of marks: their key flows around the grid, and every layout has room for seven kinds."""

from __future__ import annotations

import re
from dataclasses import replace
from functools import cache
from random import Random

import pytest

from bookmaker.book.contents import BookPuzzle, Chapter
from bookmaker.book.rulestext import rules_text
from bookmaker.display.items import Text
from bookmaker.language import catalogue
from bookmaker.layout import compose, load_layout
from bookmaker.layout.art.gridart import painted
from bookmaker.layout.lengths import mm
from bookmaker.layout.pages.block import Block
from bookmaker.layout.pages.puzzles import place_puzzles
from bookmaker.layout.spec import Layout
from bookmaker.layout.specfile import layout_names
from bookmaker.manifest.example import example_rule
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds
from bookmaker.source.diagnostics import BookErrors
from tests.layout.flat import Flat, flat
from tests.layout.sample_book import sample_book

KETTLE = next(puzzle for puzzle in sample_book().puzzles if puzzle.id == "kettle")


def with_kinds(words: tuple[str, ...], name: str = "many") -> BookPuzzle:
    """A puzzle with the examples of these kinds, and a note."""
    puzzle = Puzzle(CLASSIC, KETTLE.puzzle.givens, tuple(example_rule(kinds()[word]) for word in words))
    rules = rules_text(catalogue("en"), puzzle)
    return replace(KETTLE, id=name, puzzle=puzzle, rules=rules, note="Look at the long line first.")


@cache
def mixtures(count: int) -> tuple[BookPuzzle, ...]:
    rng = Random(f"crowded {count}")
    return tuple(with_kinds(tuple(rng.sample(list(kinds()), count)), f"mix{at}") for at in range(6))


def placed(puzzle: BookPuzzle, layout: Layout) -> Block:
    ((slot,),) = place_puzzles([puzzle], layout, layout.depth, spread=layout.use == "book")
    return slot.block


@pytest.mark.parametrize("count", [5, 7])
@pytest.mark.parametrize("name", layout_names())
def test_seven_kinds_find_room_in_every_layout(name: str, count: int) -> None:
    """But in large print; there a puzzle with too much to say is told, with a layout that has room."""
    layout = load_layout(name)
    for puzzle in mixtures(count):
        try:
            block = placed(puzzle, layout)
        except BookErrors as errors:
            (told,) = errors.diagnostics
            assert name in LARGE_PRINT and count == 7 and "such as " in told.hint
            continue
        assert block.cell >= layout.puzzles.least - 0.01


@pytest.mark.parametrize("name", layout_names())
def test_the_whole_key_is_printed_and_nothing_lies_on_the_grid(name: str) -> None:
    """Every sentence and every sample is there once, on the page of the grid or the one that faces it."""
    layout = load_layout(name)
    if layout.use != "book":
        pytest.skip("sheets have rules that all puzzles share at their head")
    for puzzle in mixtures(7):
        book = replace(sample_book(), front=(), body=(Chapter(1, "", "", (puzzle,)),))
        try:
            pages = tuple(compose(book, layout).pages)  # drawn here, or what is hidden would be told further on
        except BookErrors as errors:
            assert {one.code for one in errors.diagnostics} == {"mark-hidden"} or name in LARGE_PRINT
            continue
        shown = [one for page in pages for one in flat(page)]
        samples = [one.names[-1] for one in shown if one.names and one.names[-1].startswith("sample ")]
        assert len({*samples}) == len(puzzle.rules.marks)
        words = " ".join(one.item.text for one in shown if hasattr(one.item, "text"))
        words = re.sub(r"(?<=[a-z])[-‐] (?=[a-z])", "", words)  # hyphenated at the end of a line
        for mark in puzzle.rules.marks:
            assert mark.text.split()[-1] in words
        for page in pages:
            _clear_of_the_grid([*flat(page)])


def _clear_of_the_grid(shown: list[Flat]) -> None:
    grid = [one.box for one in shown if one.inside("grid")]
    if not grid:
        return
    left, top = min(box[0] for box in grid), min(box[1] for box in grid)
    right, bottom = max(box[2] for box in grid), max(box[3] for box in grid)
    for one in shown:
        if not one.inside("grid"):
            x0, y0, x1, y1 = one.box
            assert x1 <= left or x0 >= right or y1 <= top + 1 or y0 >= bottom - 1, one


def test_a_key_that_fits_as_usual_is_set_as_usual() -> None:
    layout = load_layout("a4-book")
    block = placed(with_kinds(("thermometer", "dots")), layout)
    assert not block.beside and not block.below and not block.facing


LARGE_PRINT = ("a4-large-print", "letter-large-print")
SEVEN = "thermometer", "dots", "cage", "peaks", "quadruple", "sandwich", "clone"


def test_a_key_that_leaves_too_little_room_goes_around_the_grid() -> None:
    layout = load_layout("a4-book")
    roomy = placed(with_kinds(SEVEN), layout)
    assert roomy.cell >= mm(9) and not roomy.facing
    tight = replace(layout, puzzles=replace(layout.puzzles, least=mm(10)))
    assert placed(with_kinds((*SEVEN, "parity", "x-sum")), tight).cell >= mm(10) - 0.01


def test_in_large_print_the_rules_face_the_grid() -> None:
    """The page with the rules is a left one, so that both are seen at once; what leads to the puzzle leads to it."""
    layout = load_layout("a4-large-print")
    many = with_kinds(SEVEN[:5])
    assert placed(many, layout).facing
    book = replace(sample_book(), front=(), body=(Chapter(1, "", "", (KETTLE, many, replace(many, id="more"))),))
    pages = compose(book, layout).pages
    for name in ("many", "more"):
        (rules,) = (at for at, page in enumerate(pages) if any(a.name == f"puzzle {name}" for a in page.anchors))
        (grid,) = (at for at, page in enumerate(pages) if any(one.inside(f"grid {name}") for one in flat(page)))
        assert rules % 2 == 1, "pages are counted from 0, so odd ones lie on the left"
        assert grid == rules + 1
    assert len(pages) == 5, "no page is lost between the two"
    alone = replace(book, body=(Chapter(1, "", "", (many,)),))
    (before, *_) = compose(alone, layout).pages
    said = [one.item.text for one in flat(before) if hasattr(one.item, "text")]
    assert "The rules of the next puzzle face its grid." in said


def test_how_large_cells_would_be_is_never_rounded_up() -> None:
    """Four hundredths of a millimetre too little."""
    layout = load_layout("a4-handout")
    cell = placed(with_kinds(("dots",)), layout).cell
    asked = replace(layout.puzzles, least=cell + mm(0.04), most=cell + mm(0.04))
    with pytest.raises(BookErrors) as caught:
        place_puzzles([with_kinds(("dots",))], replace(layout, puzzles=asked), layout.depth / 2)
    (diagnostic,) = caught.value.diagnostics
    assert "mm, and the layout needs at least" in diagnostic.text
    got, wanted = diagnostic.text.split(" mm, and the layout needs at least ")
    assert float(got.split()[-1]) < float(wanted.split()[0])


def test_no_room_at_all_is_said_so() -> None:
    layout = load_layout("a4-large-print")
    wordy = replace(with_kinds(SEVEN), note="A long story. " * 400)
    with pytest.raises(BookErrors) as caught:
        place_puzzles([wordy], layout, layout.depth, spread=True)
    (diagnostic,) = caught.value.diagnostics
    assert diagnostic.text.endswith("its rules and note leave no room for its 9×9 grid")


@pytest.mark.parametrize("name", layout_names())
def test_no_figure_of_any_kind_is_too_small_in_any_layout(name: str) -> None:
    """Six points (common practice, no source), in large print fourteen."""
    layout = load_layout(name)
    floor = 14 if "large-print" in name else 6
    for word in kinds():
        block = placed(with_kinds((word,)), layout)
        drawn = [item.size for item, _ in painted(block.puzzle.puzzle, block.cell) if isinstance(item, Text)]
        assert min(drawn) >= floor - 0.01, word


def test_a_puzzle_with_figures_too_small_for_its_share_has_half_a_page() -> None:
    layout = load_layout("a4-book-six")
    assert placed(with_kinds(("dots",)), layout).width < layout.measure / 2
    assert placed(with_kinds(("cage",)), layout).width == layout.measure


def test_where_figures_are_too_small_even_alone_the_layout_that_can_is_named() -> None:
    layout = load_layout("a5-book")
    layout = replace(layout, puzzles=replace(layout.puzzles, figure=12.0))
    with pytest.raises(BookErrors) as caught:
        placed(with_kinds(("cage",)), layout)
    (told,) = caught.value.diagnostics
    assert "figures in its marks would be of" in told.text and "at least 12" in told.text
    assert "such as a5-landscape-book" in told.hint or "such as a5-book" in told.hint


@pytest.mark.parametrize("figures", [3, 4, 5])
def test_numbers_of_many_figures_stay_in_the_column_of_the_contents(figures: int) -> None:
    """In a book of ten thousand the last number reached into what is trimmed."""
    book, more = sample_book(), 10**figures - 1 - len(sample_book().puzzles)
    body = [
        replace(part, puzzles=tuple(replace(puzzle, number=puzzle.number + more) for puzzle in part.puzzles))
        if isinstance(part, Chapter)
        else part
        for part in book.body
    ]
    layout = load_layout("6x9-book")
    pages = compose(replace(book, body=tuple(body)), layout).pages
    (contents,) = (page for page in pages if any(anchor.name == "contents" for anchor in page.anchors))
    listed = [found for found in flat(contents) if isinstance(found.item, Text)]
    left = min(found.box[0] for found in listed if found.item.text == "Contents")
    numbers = [found.box for found in listed if len(found.item.text) == figures and found.item.text.isdecimal()]
    assert len(numbers) == len(book.puzzles)
    assert all(box[0] > left - 0.4 * layout.type.small.size for box in numbers)
