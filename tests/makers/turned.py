"""A puzzle seen from another side: turned or mirrored.

In: a puzzle and a way to see its grid. Out: the puzzle as it is seen then, with as many solutions and as hard. Digits
stay as they are; an oval of an arrow is read in the order of its cells, so it says something else unless that stays.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cache

from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.overlapping import LETTERS
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.pointing import WAYS
from bookmaker.symmetry.moves import EIGHT, Turn, turned_cells
from bookmaker.symmetry.turning import turned_grid


@dataclass(frozen=True)
class View:
    """A grid seen by a turn: the grid as it is then, and where each cell goes."""

    turn: Turn
    grid: Grid
    move: tuple[int, ...]

    def way(self, way: str) -> str:
        """Where an arrow points then that points left, right, up or down."""
        down, across = WAYS[way]
        there, ahead = self.turn(1, 1, 3), self.turn(1 + down, 1 + across, 3)
        step = ahead[0] - there[0], ahead[1] - there[1]
        return next(seen for seen, known in WAYS.items() if known == step)

    def square(self, grid: Grid, letter: str) -> str:
        """The letter then of one of several grids that overlap."""
        if not letter:
            return ""
        cells = {self.move[cell] for cell in grid.square(letter).cells}
        return next(seen for seen in LETTERS if {*self.grid.square(seen).cells} == cells)


@cache
def views(grid: Grid) -> tuple[View, ...]:
    """The eight ways to see a grid, as it is first."""
    return tuple(View(turn, *_seen(grid, turn)) for turn in EIGHT.values())


def _seen(grid: Grid, turn: Turn) -> tuple[Grid, tuple[int, ...]]:
    if not grid.plain:
        return turned_grid(grid, turn)
    move = turned_cells(turn, grid.size)
    regions = tuple(sorted(tuple(sorted(move[cell] for cell in region)) for region in grid.regions))
    upright = move[1] - move[0] in (1, -1)
    box = grid.box if upright or grid.box is None else grid.box[::-1]
    return replace(grid, regions=regions, box=box), move


def turned(puzzle: RuledPuzzle, view: View) -> RuledPuzzle:
    """The puzzle seen so."""
    rules = []
    for rule in puzzle.rules:
        there = view.square(puzzle.grid, rule.square)
        parts = [
            replace(
                part,
                cells=tuple(view.move[cell] for cell in part.cells),
                name=view.way(part.name) if part.name in WAYS else part.name,
            )
            for part in rule.parts(rule.laid_on(puzzle.grid))
        ]
        rules.append(replace(rule, square=there).with_parts(parts, view.grid.square(there)))
    return Puzzle(view.grid, as_seen(puzzle.givens, view), tuple(rules))


def is_seen_alike(puzzle: RuledPuzzle, view: View) -> bool:
    """Do the puzzle's ovals say the same when it is seen so?"""
    ovals = [
        part.cells[: part.value[0]]
        for rule in puzzle.rules
        if rule.kind == "arrow"
        for part in rule.parts(rule.laid_on(puzzle.grid))
    ]
    return all(list(seen) == sorted(seen) for seen in ([view.move[cell] for cell in oval] for oval in ovals))


def as_seen(cells: Sequence[int], view: View) -> tuple[int, ...]:
    """Digits of the cells, seen so."""
    seen = [0] * len(view.move)
    for cell, digit in enumerate(cells):
        seen[view.move[cell]] = digit
    return tuple(seen)
