"""Non-consecutive: cells that share a side never hold consecutive digits, in the whole grid.

Manifest: `non-consecutive: yes`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from bookmaker.puzzle.bits import mask_of
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import BesideAll
from bookmaker.rules.common.contract import Deduction
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.neighbours import neighbour_relation, neighbours, partnerless
from bookmaker.rules.common.wholegrid import WholeGridRule
from bookmaker.solve.problem import Constraint, Relation


class NonConsecutive(WholeGridRule):
    """Neighbours are never consecutive."""

    kind = "non-consecutive"
    title = "Non-consecutive"
    noun = "non-consecutive rule"
    relabels = "reversed"
    example = "non-consecutive: yes\n"

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        yield _asked(grid)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for row in range(grid.size):
            for column in range(grid.size):
                here = digits[grid.cell(row, column)]
                if column + 1 < grid.size and abs(here - digits[grid.cell(row, column + 1)]) == 1:
                    return False
                if row + 1 < grid.size and abs(here - digits[grid.cell(row + 1, column)]) == 1:
                    return False
        return True

    def sentence(self) -> str:
        return "Cells that share a side never hold consecutive digits."

    @classmethod
    def primer(cls) -> str:
        return (
            "No two cells that share a side hold consecutive digits: beside a 5 there is neither a 4 nor a 6. So "
            "every digit you write rules out two digits in each of its neighbours. When a digit has only two places "
            "left in a row, with one cell between them, that cell cannot hold a digit one above or below it."
        )

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Digits without a partner in a neighbour; and a cell that lies beside every place of a digit in a house."""
        yield from partnerless(position, _asked(position.grid), self.kind, "")
        yield from _beside_every_place(position, MarkRef.whole(self.kind))

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(MarkRef.between(self.kind, pair) for pair in neighbours(grid))


def _asked(grid: Grid) -> Relation:
    return neighbour_relation(neighbours(grid), grid, lambda a, b: abs(a - b) > 1)


def _beside_every_place(position: Position, mark: MarkRef) -> Iterator[Deduction]:
    grid = position.grid
    for house in grid.houses:
        for digit in grid.digits:
            places = tuple(cell for cell in house.cells if position.may(cell, digit))
            if not 2 <= len(places) <= 4:
                continue
            for cell in set[int].intersection(*(set(grid.orthogonal(place)) for place in places)):
                near = mask_of(other for other in (digit - 1, digit + 1) if other in grid.digits)
                removed = removed_by(position, {cell: ~near})
                if removed:
                    claim = BesideAll(cell, digit, house.ref, places)
                    yield Deduction(Rung.PAIR, len(places), (cell, *places), removed, mark, claim)
