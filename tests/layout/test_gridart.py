"""Grids as drawn: digits in the middle of their cells, weights of lines, keys told from givens."""

from __future__ import annotations

from itertools import product
from typing import Any

import pytest

from bookmaker.book.contents import BookPuzzle
from bookmaker.display.items import Group, Line, Path, Rect, Straight, Text, untagged
from bookmaker.layout.art.gridart import cell_pen, draw_grid, grid_lines, outside, painted, region_pen
from bookmaker.layout.art.swatch import BESIDE, ON, swatch, swatch_size
from bookmaker.layout.setting.text import FONTS
from bookmaker.puzzle.grid import CLASSIC, SYMBOLS, Grid, boxed_grid
from bookmaker.puzzle.position import Position
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from tests.layout.sample_book import sample_book
from tests.rules.stacks import stacked

CELL = 40.0


def texts(group: Group) -> list[Text]:
    return [item for item in untagged(group.items) if isinstance(item, Text)]


@pytest.mark.parametrize("puzzle", sample_book().puzzles, ids=lambda puzzle: puzzle.id)
def test_every_given_stands_in_the_middle_of_its_cell(puzzle: BookPuzzle) -> None:
    bare = Puzzle(puzzle.puzzle.grid, puzzle.puzzle.givens)
    read = {}
    for text in texts(draw_grid(bare, CELL, "grid")):
        middle_y = text.y - FONTS.figure_height(text.font) * text.size / 2
        assert text.anchor == "middle"
        assert (text.x / CELL) % 1 == pytest.approx(0.5)
        assert (middle_y / CELL) % 1 == pytest.approx(0.5)
        read[bare.grid.cell(int(middle_y // CELL), int(text.x // CELL))] = SYMBOLS.index(text.text) + 1
    assert read == {cell: digit for cell, digit in enumerate(bare.givens) if digit}


def test_a_key_holds_the_whole_solution_and_tells_its_givens() -> None:
    kettle = next(puzzle for puzzle in sample_book().puzzles if puzzle.id == "kettle")
    drawn = texts(draw_grid(kettle.puzzle, CELL, "key", kettle.solution))
    assert len(drawn) == 81
    for text in drawn:
        cell = CLASSIC.cell(int(text.y // CELL), int(text.x // CELL))
        assert text.text == str(kettle.solution[cell])
        assert text.font == ("sans-bold" if kettle.puzzle.givens[cell] else "sans")


def test_candidates_and_shaded_cells() -> None:
    only = Puzzle(CLASSIC, (5,) + (0,) * 80)
    boards = [0] * 10
    boards[3] = boards[7] = 1 << 1 | 1 << 80
    drawn = draw_grid(only, CELL, "figure", position=Position(CLASSIC, tuple(boards), placed=1 << 80), shaded=(4,))
    assert [text.text for text in texts(drawn)] == ["5", "3", "7"]
    assert Rect(4 * CELL, 0, CELL, CELL, fill=0.88) in untagged(drawn.items)
    assert all(CELL < text.x < 2 * CELL and 0 < text.y < CELL for text in texts(drawn)[1:])


def walls(grid: Grid) -> Any:
    """The stretches of region borders as unit walls, read off the drawing."""
    thick = [item for item in grid_lines(grid, 1.0) if isinstance(item, Path)][1:]
    found = set()
    for path in thick:
        for start, end in zip(path.segments[::2], path.segments[1::2], strict=True):
            assert isinstance(end, Straight)
            (x0, y0), (x1, y1) = start.to, end.to
            steps = round(max(x1 - x0, y1 - y0))
            for i in range(steps):
                x, y = (x0, y0 + i + 0.5) if x0 == x1 else (x0 + i + 0.5, y0)
                found.add((x, y))
    return found


def test_region_borders_stand_exactly_where_two_regions_meet() -> None:
    quilt = next(puzzle for puzzle in sample_book().puzzles if puzzle.id == "quilt").puzzle.grid
    for grid in (CLASSIC, boxed_grid(6, 2, 3), quilt):
        home = grid.region_of
        wanted: set[tuple[float, float]] = set()
        for cell in grid.cells:
            row, column = grid.row(cell), grid.column(cell)
            if column + 1 < grid.size and home[cell] != home[cell + 1]:
                wanted.add((column + 1, row + 0.5))
            if row + 1 < grid.size and home[cell] != home[cell + grid.size]:
                wanted.add((column + 0.5, row + 1))
        assert walls(grid) == wanted


@pytest.mark.parametrize("millimetres", [3.0, 4.4, 6.5, 9.0, 12.0, 16.0])
def test_lines_are_three_weights_apart_and_no_hairline_is_too_thin(millimetres: float) -> None:
    cell = millimetres * 72 / 25.4
    thin, thick = cell_pen(cell), region_pen(cell)
    assert thin.width >= 0.25  # common practice, no source
    assert thick.width >= 3 * thin.width
    assert thin.colour == thick.colour == 0.0


def test_clues_outside_claim_the_most_that_any_rule_needs() -> None:
    window = next(puzzle for puzzle in sample_book().puzzles if puzzle.id == "window")
    claim = outside(window.puzzle)
    assert claim.left > 0.5 and claim.top > 0.5
    assert claim.right == claim.bottom == 0


@pytest.mark.parametrize(
    "kind", ["sandwich", "skyscraper", "x-sum", "first-seen", "numbered-room", "frame-product", "rising-run"]
)
def test_a_sample_with_a_clue_before_its_row_shows_two_cells_and_that_the_row_goes_on(kind: str) -> None:
    sample = kinds()[kind].sample()
    assert sample is not None
    claim = sample.rule.margins(sample.grid)
    assert swatch_size(sample, 10.0) == (pytest.approx((claim.left + BESIDE + ON) * 10), pytest.approx(10))
    (inner,) = swatch(sample, 10.0).items
    lines = [item for item in inner.items if isinstance(item, Line) and item.stroke == cell_pen(10.0)]
    uprights = [line.start[0] for line in lines if line.start[0] == line.end[0]]
    level = [line.end[0] for line in lines if line.start[1] == line.end[1]]
    assert uprights == [0.0, 10.0, 20.0] and level == [24.0, 24.0]


@pytest.mark.parametrize("kind", kinds())
def test_a_grid_read_back_is_drawn_with_as_many_marks(kind: str) -> None:
    """A file rounds sizes: nothing may hang on the last figures of a cell's, or preflight would miss marks."""
    stacks: list[tuple[Rule, ...]] = [(stacked(kind, twice=True),), (stacked("hinge-line"), stacked(kind))]
    for rules, sixteenths in product(stacks, range(16 * 20, 16 * 60, 23)):
        puzzle: RuledPuzzle = Puzzle(CLASSIC, (0,) * len(CLASSIC.cells), rules)
        cell = sixteenths / 16
        drawn, again = ([*painted(puzzle, size)] for size in (cell, cell * 1.00001))
        assert [owned and owned[1].of for _, owned in drawn] == [owned and owned[1].of for _, owned in again], cell
