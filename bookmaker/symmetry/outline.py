"""The outline of a puzzle: what no move changes and is soon counted.

In: a puzzle. Out: a value that look-alikes share and few others do, so that among many puzzles keys need to be found
out for few.
"""

from __future__ import annotations

from collections import Counter
from typing import TypeAlias

from bookmaker.rules.common.contract import RuledPuzzle

Outline: TypeAlias = tuple[int, tuple[tuple[int, ...], ...]]


def outline_of(puzzle: RuledPuzzle) -> Outline:
    """The size of the grid, and for each given how many there are of its digit, and in the two lines that cross in it:
    lines stay lines in every move, and digits are renamed all together."""
    grid, givens = puzzle.grid, puzzle.givens
    filled = [cell for cell, digit in enumerate(givens) if digit]
    of_digit = Counter(givens)
    in_row, in_column = Counter(map(grid.row, filled)), Counter(map(grid.column, filled))
    seen = (
        (of_digit[givens[cell]], *sorted((in_row[grid.row(cell)], in_column[grid.column(cell)]))) for cell in filled
    )
    return grid.size, tuple(sorted(seen))
