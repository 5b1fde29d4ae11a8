"""Rules for the whole grid that keep certain digits from touching: consecutive ones, doubles, those of a certain sum.

A kind says which two digits may not touch, by what they are worth. They are kept apart where cells share a side and,
with `diagonal: yes`, where they touch at a corner as well.
"""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import ClassVar, Self

from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.bits import mask_of
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import BesideAll
from bookmaker.rules.common.contract import Deduction
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.neighbours import Pair, neighbour_relation, neighbours, partnerless
from bookmaker.rules.common.parts import Written
from bookmaker.rules.common.reading import read_yes
from bookmaker.rules.common.wholegrid import WholeGridRule
from bookmaker.solve.problem import Constraint, Relation, relation
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, Table, read_fields, read_switch

CORNER = "corner"
"""The variety of a reference to two cells that touch at a corner."""


@dataclass(frozen=True)
class BarredRule(WholeGridRule):
    """Digits that may not touch, by sides alone or at corners too."""

    typed: ClassVar[tuple[str, ...]] = ("yes", "diagonal: switch")
    options: ClassVar[tuple[str, ...]] = ("diagonal",)

    diagonal: bool = False

    @abstractmethod
    def barred(self, worth: int) -> Iterable[int]:
        """What may not touch a digit worth so much, whether the grid has such digits or not."""

    @abstractmethod
    def clash(self, one: int, other: int) -> bool:
        """May digits worth so much not touch? For `holds`, in other words than `barred`."""

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        if not isinstance(body, Table):
            return cls() if read_yes(body, cls.kind, collector) else None
        fields = read_fields(body, cls.kind, collector, cls.options, cls.options)
        diagonal = read_switch(fields["diagonal"], "diagonal", collector) if "diagonal" in fields else None
        return None if diagonal is None or len(fields) < len(body.entries) else cls(diagonal=diagonal)

    def written(self, grid: Grid) -> Written:
        return dict(self.said_options()) or "yes"

    @classmethod
    def stands_on(cls, grid: Grid) -> bool:
        return True

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        for asked, _ in self._asked(grid):
            yield asked

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        steps = ((0, 1), (1, 0), (1, 1), (1, -1)) if self.diagonal else ((0, 1), (1, 0))
        for cell in grid.cells:
            for down, across in steps:
                there = grid.row(cell) + down, grid.column(cell) + across
                if not grid.inside(*there):
                    continue
                one, other = grid.worth(digits[cell]), grid.worth(digits[grid.cell(*there)])
                if self.clash(one, other):
                    return False
        return True

    def arguments(self, words: Catalogue) -> dict[str, Argument]:
        return {"touching": "corners" if self.diagonal else "sides"}

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(
            MarkRef.between(self.kind, pair, variety=variety)
            for asked, variety in self._asked(grid)
            for pair in asked.pairs
        )

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Digits without a partner in a neighbour; and a cell that touches every place of a digit in a house."""
        for asked, variety in self._asked(position.grid):
            yield from partnerless(position, asked, self.kind, variety)
        yield from self._beside_every_place(position)

    def _asked(self, grid: Grid) -> Iterator[tuple[Relation, str]]:
        yield neighbour_relation(neighbours(grid), grid, lambda a, b: b not in self.barred(a)), ""
        if self.diagonal:
            digits, worth = grid.digits, grid.worth
            keeps = ((a, b) for a in digits for b in digits if worth(b) not in self.barred(worth(a)))
            yield relation(corners(grid), grid.size, keeps), CORNER

    def _barred_by(self, grid: Grid, digit: int) -> int:
        """The digits that may not touch one, as a mask."""
        barred = frozenset(self.barred(grid.worth(digit)))
        return mask_of(other for other in grid.digits if grid.worth(other) in barred)

    def _beside_every_place(self, position: Position) -> Iterator[Deduction]:
        grid, mark = position.grid, MarkRef.whole(self.kind)
        near = _touching(grid, self.diagonal)
        for digit in grid.digits:
            away = self._barred_by(grid, digit)
            for house in grid.houses if away else ():
                places = tuple(cell for cell in house.cells if position.may(cell, digit))
                if not 2 <= len(places) <= 4:
                    continue
                for cell in sorted(frozenset.intersection(*(near[place] for place in places))):
                    removed = removed_by(position, {cell: ~away})
                    if removed:
                        claim = BesideAll(cell, digit, house.ref, places)
                        yield Deduction(Rung.PAIR, len(places), (cell, *places), removed, mark, claim)


@lru_cache(maxsize=16)
def corners(grid: Grid) -> tuple[Pair, ...]:
    """All pairs of cells that touch at a corner only, each once."""
    steps = ((1, -1), (1, 1))
    return tuple(
        (cell, grid.cell(grid.row(cell) + down, grid.column(cell) + across))
        for cell in grid.cells
        for down, across in steps
        if grid.inside(grid.row(cell) + down, grid.column(cell) + across)
    )


@lru_cache(maxsize=16)
def _touching(grid: Grid, diagonal: bool) -> Mapping[int, frozenset[int]]:
    """For each cell those that it touches."""
    near = {cell: set(grid.orthogonal(cell)) for cell in grid.cells}
    for one, other in corners(grid) if diagonal else ():
        near[one].add(other)
        near[other].add(one)
    return {cell: frozenset(cells) for cell, cells in near.items()}
