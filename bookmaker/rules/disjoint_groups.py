"""Disjoint groups: the cells at the same place of each box hold every digit once.

Manifest: `disjoint-groups: yes`. The grid needs rectangular boxes.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import combinations
from typing import Self

from bookmaker.puzzle.grid import Grid, House, HouseRef
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.patterns import Fish
from bookmaker.rules.common.contract import Deduction
from bookmaker.rules.common.wholegrid import WholeGridRule
from bookmaker.solve.problem import Constraint, Different
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node

_PLACES = (
    "first",
    "second",
    "third",
    "fourth",
    "fifth",
    "sixth",
    "seventh",
    "eighth",
    "ninth",
    "tenth",
    "eleventh",
    "twelfth",
    "thirteenth",
    "fourteenth",
    "fifteenth",
    "sixteenth",
)


class DisjointGroups(WholeGridRule):
    """The cells at one place of all boxes are a house."""

    kind = "disjoint-groups"
    title = "Disjoint groups"
    noun = "disjoint group"
    relabels = "any"
    from_zero = True
    lettered = True
    example = "disjoint-groups: yes\n"

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        if grid.box is None:
            text = "disjoint groups need rectangular boxes, all of the same shape"
            collector.error(body.place, "groups-grid", text)
            return None
        return super().read(body, grid, collector)

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        return (Different(house.cells) for house in self.houses(grid))

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        assert grid.box is not None
        height, width = grid.box
        return not any(
            digits[one] == digits[other]
            and grid.row(one) % height == grid.row(other) % height
            and grid.column(one) % width == grid.column(other) % width
            for one, other in combinations(grid.cells, 2)
        )

    def houses(self, grid: Grid) -> tuple[House, ...]:
        return tuple(
            House(
                f"the {_place_name(grid, place)} cells of the boxes",
                tuple(cells),
                HouseRef("disjoint-groups", place + 1, cells[0], "of-nine" if grid.box == (3, 3) else ""),
            )
            for place, cells in enumerate(zip(*grid.regions, strict=True))
        )

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Two groups that share their rows: if a digit's places in both lie in two rows, the others keep out of those.

        The groups whose cells lie in the same rows are as many as these rows. The same with columns.
        """
        grid = position.grid
        assert grid.box is not None
        width = grid.box[1]
        houses = self.houses(grid)
        groups = [house.cells for house in houses]
        sharing_rows = [groups[at : at + width] for at in range(0, len(groups), width)]
        sharing_columns = [groups[at::width] for at in range(width)]
        for families, line_of, across in (
            (sharing_rows, grid.row, grid.rows),
            (sharing_columns, grid.column, grid.columns),
        ):
            for family in families:
                for digit in grid.digits:
                    for pair in combinations(family, 2):
                        places = [cell for group in pair for cell in group if position.may(cell, digit)]
                        lines = sorted({line_of(cell) for cell in places})
                        others = (cell for group in family if group not in pair for cell in group)
                        removed = tuple(
                            (cell, digit) for cell in others if line_of(cell) in lines and position.may(cell, digit)
                        )
                        if len(lines) == 2 and removed:
                            base = tuple(houses[groups.index(group)].ref for group in pair)
                            cover = tuple(across[line].ref for line in lines)
                            claim = Fish(digit, base, cover, tuple(places))
                            mark = MarkRef.whole(self.kind)
                            yield Deduction(Rung.WHOLE, 4, tuple(places), removed, mark, claim)


def _place_name(grid: Grid, place: int) -> str:
    """“top left” in boxes of 3×3, else “second”."""
    if grid.box == (3, 3):
        down, across = ("top", "middle", "bottom")[place // 3], ("left", "centre", "right")[place % 3]
        return "centre" if place == 4 else f"{down} {across}"
    return _PLACES[place]
