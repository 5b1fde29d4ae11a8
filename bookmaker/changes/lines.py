"""Lines of givens that went wrong as a whole: shifted by a cell, exchanged with the next, left out or doubled.

In: a grid of any shape and its givens. Out: the givens as they may have been meant, each with whether that slip is easy
to make. A grid that is no square is typed as it is printed, line by line with its gaps; where several overlap, each may
have been copied by itself.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import lru_cache
from itertools import groupby

from bookmaker.puzzle.grid import Grid

Digits = tuple[int, ...]
Cells = tuple[int, ...]


def shifted_lines(grid: Grid, givens: Digits) -> Iterator[tuple[Digits, bool]]:
    """A row or column moved by one cell; or a stretch of it, from its start or end. Rows are the easier slip."""
    for cells, along in _lines(grid):
        for moved in _shifted([givens[cell] for cell in cells]):
            yield _with(givens, cells, moved), along


def lines_out_of_step(grid: Grid, givens: Digits) -> Iterator[tuple[Digits, bool]]:
    """Two neighbouring rows exchanged; or one left out or doubled, so that all below it stand one too high or low. The
    same with columns. Whole rows are the easier slip."""
    found: dict[Digits, bool] = {}
    for lines, along in _blocks(grid):
        digits = [tuple(givens[cell] for cell in line) for line in lines]
        for moved in _reordered(digits):
            if moved != digits:
                cells = tuple(cell for line in lines for cell in line)
                found.setdefault(_with(givens, cells, [digit for line in moved for digit in line]), along)
    yield from found.items()


def _with(givens: Digits, cells: Cells, digits: Sequence[int]) -> Digits:
    changed = dict(zip(cells, digits, strict=True))
    return tuple(changed.get(cell, digit) for cell, digit in enumerate(givens))


def _printed(grid: Grid) -> tuple[list[tuple[int | None, ...]], list[tuple[int | None, ...]]]:
    """The rows and the columns of all that is printed, None where there is no cell."""
    rows = [grid.across(row) for row in range(grid.height)]
    return rows, list(zip(*rows, strict=True))


@lru_cache(maxsize=16)
def _lines(grid: Grid) -> tuple[tuple[Cells, bool], ...]:
    """Each line of each grid, and each that is printed, whole and by its stretches without a gap; and whether it is a
    row."""
    found = {house.cells: along for houses, along in ((grid.rows, True), (grid.columns, False)) for house in houses}
    for printed, along in zip(_printed(grid), (True, False), strict=True):
        for line in printed:
            found.setdefault(tuple(cell for cell in line if cell is not None), along)
            for is_gap, stretch in groupby(line, lambda cell: cell is None):
                if not is_gap:
                    found.setdefault(tuple(cell for cell in stretch if cell is not None), along)
    return tuple(found.items())


@lru_cache(maxsize=16)
def _blocks(grid: Grid) -> tuple[tuple[list[Cells], bool], ...]:
    """Lines side by side whose cells face each other, so that one can stand for the next: of all that is printed, and
    of each of several grids."""
    found = []
    for printed, along in zip(_printed(grid), (True, False), strict=True):
        for _, lines in groupby(printed, lambda line: [cell is None for cell in line]):
            found.append(([tuple(cell for cell in line if cell is not None) for line in lines], along))
    for square in grid.squares if grid.overlaps else ():
        found.append(([house.cells for house in square.rows], True))
        found.append(([house.cells for house in square.columns], False))
    return tuple(found)


def _shifted(line: Sequence[int]) -> Iterator[list[int]]:
    """A line moved by one cell, where what falls off is empty; and a stretch of it from its start or end."""
    size = len(line)
    found = []
    for start in range(size):
        for end in range(start + 2, size + 1):
            if start and end < size:
                continue
            part = list(line[start:end])
            if not any(part):
                continue
            if part[0] == 0:
                found.append([*line[:start], *part[1:], 0, *line[end:]])
            if part[-1] == 0:
                found.append([*line[:start], 0, *part[:-1], *line[end:]])
    return (list(one) for one in dict.fromkeys(map(tuple, found)) if list(one) != list(line))


def _reordered(lines: list[Digits]) -> Iterator[list[Digits]]:
    size = len(lines)
    empty = (0,) * len(lines[0])
    for at in range(size):
        if at + 1 < size:
            yield [*lines[:at], lines[at + 1], lines[at], *lines[at + 2 :]]
            if lines[at] == lines[at + 1] and lines[at] != empty:
                yield [*lines[:at], *lines[at + 1 :], empty]
        if lines[-1] == empty:
            yield [*lines[:at], empty, *lines[at:-1]]
        if lines[at] == empty:
            yield [*lines[:at], *lines[at + 1 :], empty]
