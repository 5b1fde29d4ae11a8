"""A puzzle seen from another side: turned or mirrored.

In: a puzzle and where each cell goes. Out: the puzzle as it is seen then, with as many solutions and as hard. Digits
stay as they are; an oval of an arrow is read in the order of its cells, so it says something else unless that stays.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import cache

from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.pointing import WAYS
from bookmaker.symmetry.moves import EIGHT, turned_cells

Move = tuple[int, ...]
"""Where each cell goes."""


@cache
def views(size: int) -> tuple[Move, ...]:
    """The eight ways to see a square grid, as it is first."""
    return tuple(turned_cells(turn, size) for turn in EIGHT.values())


def turned_grid(grid: Grid, move: Move) -> Grid:
    """The grid with its regions moved. Regions keep their order of first cells."""
    regions = tuple(sorted(tuple(sorted(move[cell] for cell in region)) for region in grid.regions))
    upright = move[1] - move[0] in (1, -1)
    box = grid.box if upright or grid.box is None else grid.box[::-1]
    return replace(grid, regions=regions, box=box)


def turned(puzzle: RuledPuzzle, move: Move) -> RuledPuzzle:
    """The puzzle seen so."""
    grid = turned_grid(puzzle.grid, move)
    givens = [0] * len(move)
    for cell, digit in enumerate(puzzle.givens):
        givens[move[cell]] = digit
    rules = []
    for rule in puzzle.rules:
        parts = [
            replace(
                part, cells=tuple(move[cell] for cell in part.cells), name=_turned_way(part.name, puzzle.grid, move)
            )
            for part in rule.parts(puzzle.grid)
        ]
        rules.append(rule.with_parts(parts, grid))
    return Puzzle(grid, tuple(givens), tuple(rules))


def _turned_way(name: str, grid: Grid, move: Move) -> str:
    """Where an arrow that points left, right, up or down points then; any other name as it is."""
    if name not in WAYS:
        return name
    down, across = WAYS[name]
    middle = grid.size // 2
    there, ahead = move[grid.cell(middle, middle)], move[grid.cell(middle + down, middle + across)]
    step = grid.row(ahead) - grid.row(there), grid.column(ahead) - grid.column(there)
    return next(way for way, known in WAYS.items() if known == step)


def is_seen_alike(puzzle: RuledPuzzle, move: Move) -> bool:
    """Do the puzzle's ovals say the same when it is seen so?"""
    ovals = [
        part.cells[: part.value[0]] for rule in puzzle.rules if rule.kind == "arrow" for part in rule.parts(puzzle.grid)
    ]
    return all(list(seen) == sorted(seen) for seen in ([move[cell] for cell in oval] for oval in ovals))


def as_seen(cells: Sequence[int], move: Move) -> tuple[int, ...]:
    """Digits of the cells, seen so."""
    seen = [0] * len(move)
    for cell, digit in enumerate(cells):
        seen[move[cell]] = digit
    return tuple(seen)
