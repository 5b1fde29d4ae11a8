"""Kinds with a few sorts of mark, each listed under its name: white and black dots, even and odd cells.

A mark stands on one cell or on the border of two. The kind names its sorts with the field that holds the marks of
each, and says which sorts are true on a filled grid.
"""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Iterator, Sequence
from dataclasses import replace
from random import Random
from typing import Any, ClassVar, Self

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.common.neighbours import neighbours
from bookmaker.rules.common.parts import Form, Part, Written, runs


class SortedRule(Rule):
    """A kind whose marks have sorts."""

    sorts: ClassVar[tuple[tuple[str, str], ...]]
    """The names of the sorts in the manifest, each with its field."""

    @abstractmethod
    def true_sorts(self, cells: tuple[int, ...], grid: Grid, digits: Sequence[int]) -> Iterator[str]:
        """The names of the marks that would be true at this place of a filled grid."""

    @property
    def marks_all(self) -> bool:
        return bool(getattr(self, "all_marked", False))

    def parts(self, grid: Grid) -> tuple[Part, ...]:
        alone = self.form is Form.CELL
        return tuple(Part((place,) if alone else place, name) for name, at in self.sorts for place in getattr(self, at))

    def with_parts(self, parts: Sequence[Part], grid: Grid) -> Self:
        alone = self.form is Form.CELL
        fields: dict[str, Any] = {
            at: tuple(part.cells[0] if alone else tuple(sorted(part.cells)) for part in parts if part.name == name)
            for name, at in self.sorts
        }
        return replace(self, **fields)

    def keeps(self, part: Part, grid: Grid, digits: Sequence[int]) -> bool:
        return part.name in self.true_sorts(part.cells, grid, digits)

    def written(self, grid: Grid) -> Written:
        alone = self.form is Form.CELL
        marks = {name: getattr(self, at) for name, at in self.sorts}
        lines: dict[str, Written] = {
            name: runs(grid, places, slanting=False) if alone else " ".join(runs(grid, pair) for pair in places)
            for name, places in marks.items()
            if places
        }
        return lines | self.said_options()

    def places(self, grid: Grid) -> tuple[tuple[int, ...], ...]:
        return tuple((cell,) for cell in grid.cells) if self.form is Form.CELL else neighbours(grid)

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        return (Part(tuple(cells), name) for name in self.true_sorts(tuple(cells), grid, digits))
