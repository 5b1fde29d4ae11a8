"""A contest: what each puzzle is worth, and the cells by which a marker checks a sheet at a glance.

In: a book of a few puzzles. Out: the same book, its puzzles with points and check rows.

The cells of a check row are told by where the givens stand and by nothing else: that they are marked tells a solver
nothing of the solution.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bookmaker.book.contents import Book, BookPuzzle, Chapter
from bookmaker.rules.common.contract import RuledPuzzle

CHECKED = 5
"""Cells of a check row; small grids have two fewer than digits."""

STEP = 5
"""Points that follow from the difficulty are multiples of this."""


def enter_contest(book: Book, points: Sequence[int] = ()) -> Book:
    """The book's puzzles as a contest; `points` for each in order, or from the difficulty where none are given."""
    worth = list(points) or [usual_points(puzzle) for puzzle in book.puzzles]
    entered = iter(
        replace(puzzle, points=point, check=check_cells(puzzle.puzzle))
        for puzzle, point in zip(book.puzzles, worth, strict=True)
    )
    body = tuple(
        replace(part, puzzles=tuple(next(entered) for _ in part.puzzles)) if isinstance(part, Chapter) else part
        for part in book.body
    )
    return replace(book, body=body)


def usual_points(puzzle: BookPuzzle) -> int:
    """Ten times the difficulty, to the nearest five, and never nothing: harder puzzles are worth more, but no single
    one decides the contest."""
    difficulty = puzzle.rating.difficulty if puzzle.rating else 0.0
    return max(STEP, round(10 * difficulty / STEP) * STEP)


def check_cells(puzzle: RuledPuzzle) -> tuple[int, ...]:
    """The cells of the check row in reading order: empty ones that see the fewest givens, which tend to be filled late.

    No two of them share a row, column or region; there are fewer where a grid has no room for so many.
    """
    grid, givens = puzzle.grid, puzzle.givens
    homes = {cell: {house for house in grid.houses if cell in house.cells} for cell in grid.cells}
    sees = {
        cell: sum(bool(givens[other]) for other in {at for house in homes[cell] for at in house.cells})
        for cell in grid.cells
    }
    chosen: list[int] = []
    for cell in sorted(grid.cells, key=lambda cell: (sees[cell], cell)):
        if not givens[cell] and all(homes[cell].isdisjoint(homes[other]) for other in chosen):
            chosen.append(cell)
        if len(chosen) == min(CHECKED, grid.size - 2):
            break
    return tuple(sorted(chosen))


def check_digits(puzzle: BookPuzzle) -> tuple[int, ...]:
    """The digits of the check row; none where there is no solution."""
    return tuple(puzzle.solution[cell] for cell in puzzle.check) if puzzle.solution else ()
