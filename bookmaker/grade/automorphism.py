"""Automorphisms: a turn or reflection of the grid and a relabelling of the digits that map a puzzle to itself.

In: a puzzle and its solution. Out: `Automorphism`s. Where there is one, every deduction has a twin: what holds of a
cell and a digit holds of their images.

Since the solution is the only one, it must map to itself, and so it says which digit becomes which. What remains is to
compare givens and constraints, each brought to a form of its own that does not depend on how it was written.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.verdict import Solution
from bookmaker.symmetry.forms import Form, forms_of
from bookmaker.symmetry.moves import TURNS, turned_onto_itself


@dataclass(frozen=True, slots=True)
class Automorphism:
    """`cells[c]` is the image of cell c, `digits[d]` that of digit d (member 0 is 0)."""

    name: str
    cells: tuple[int, ...]
    digits: tuple[int, ...]

    @property
    def swapped(self) -> tuple[tuple[int, ...], ...]:
        """The cycles of digits that change, each from its smallest digit."""
        cycles, seen = [], set()
        for digit in range(1, len(self.digits)):
            cycle = []
            while digit not in seen:
                seen.add(digit)
                cycle.append(digit)
                digit = self.digits[digit]
            if len(cycle) > 1:
                cycles.append(tuple(cycle))
        return tuple(cycles)


def automorphisms(puzzle: RuledPuzzle, solution: Solution) -> tuple[Automorphism, ...]:
    """All of them, in the order of `TURNS`."""
    grid = puzzle.grid
    found = []
    asked: frozenset[Form] | None = None
    for name, turn in TURNS.items():
        cells = turned_onto_itself(turn, grid)
        if cells is None:
            continue
        digits = _relabelling(grid, solution, cells)
        if digits is None or any(bool(puzzle.givens[cell]) != bool(puzzle.givens[cells[cell]]) for cell in grid.cells):
            continue
        asked = asked or forms_of(puzzle, tuple(grid.cells), tuple(range(grid.size + 1)))
        if forms_of(puzzle, cells, digits) == asked:
            found.append(Automorphism(name, cells, digits))
    return tuple(found)


def _relabelling(grid: Grid, solution: Solution, cells: Sequence[int]) -> tuple[int, ...] | None:
    digits = [0] * (grid.size + 1)
    for cell, image in enumerate(cells):
        digit, became = solution[cell], solution[image]
        if digits[digit] not in (0, became):
            return None
        digits[digit] = became
    return tuple(digits)
