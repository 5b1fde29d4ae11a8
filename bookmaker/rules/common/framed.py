"""What the nearest cells come to, added or multiplied: the base of the kinds whose clues frame the grid.

In: numbers at the sides of the grid. Out: the rule; a kind says how digits are put together and draws its sign.
"""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass
from typing import ClassVar

from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.rules.common.clue import Clue, Placed, lines_seen
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.deducing.combinations import combination_steps, sets_worth
from bookmaker.rules.common.nearest import NearRule
from bookmaker.rules.common.outside import number_clue
from bookmaker.rules.common.words.wording import number
from bookmaker.solve.problem import Combination, Constraint
from bookmaker.source.diagnostics import Collector, Place


@dataclass(frozen=True)
class FrameRule(NearRule):
    """Each clue's value is what the digits of the nearest cells come to."""

    fewest = 2
    result: ClassVar[str]
    """What is worked out: “sum”."""

    @staticmethod
    @abstractmethod
    def worth(digits: Sequence[int]) -> int:
        """What digits come to together."""

    @classmethod
    def read_clue(cls, text: str, place: Place, grid: Grid, collector: Collector) -> Collection[int]:
        least = cls.worth((grid.worth(1), grid.worth(2)))
        value = number_clue(text, place, f"a frame {cls.result}", collector, least, 999_999)
        return () if value is None else (value,)

    @classmethod
    def values_on(cls, line: Sequence[int], grid: Grid) -> Collection[int]:
        return (cls.worth([*map(grid.worth, line)]),)

    def check(self, placed: Placed, grid: Grid, collector: Collector) -> None:
        """Report what no digits come to, and two ends of a line that ask for one digit twice."""
        ends: dict[str, Clue] = {}
        for clue, place in placed.items():
            count = self.seen(clue)
            if not self._sets(clue, grid):
                digits = f"different digits from {grid.symbols[0]} to {grid.symbols[-1]}"
                said = f"no {number(count)} {digits} have the {self.result}"
                collector.error(place, "value-cannot-be", f"{said} {clue.value}")
                continue
            other = ends.setdefault(clue.house, clue)
            if other is not clue and 2 * count <= grid.size and not self._both(clue, other, grid):
                said = f"{clue.house} can't have the {self.result} {other.value} at one end and {clue.value} at the"
                hint = "all choices of digits have one in common; one of the two is likely a slip"
                collector.error(place, "clues-contradict", f"{said} other", hint, also=(placed[other],))

    def _sets(self, clue: Clue, grid: Grid) -> frozenset[int]:
        """The sets of digits that the cells of a clue can hold, as masks."""
        return sets_worth(grid, self.seen(clue), self.worth, clue.value)

    def _both(self, one: Clue, other: Clue, grid: Grid) -> bool:
        """Have two clues at the ends of a line digits enough between them?"""
        return any(not here & there for here in self._sets(one, grid) for there in self._sets(other, grid))

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        for clue in self.clues:
            yield Combination(self.near(clue, grid), self._sets(clue, grid))

    def arguments(self, words: Catalogue) -> dict[str, Argument]:
        line = lines_seen(self.clues)
        return super().arguments(words) | {
            "line": line if line != "both" or self.in_row == self.in_column else "unlike",
            "number": words.number(self.in_column if line == "column" else self.in_row),
            "other": words.number(self.in_column),
        }

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls((Clue("left", 0, cls.worth((1, 5, 6))),)), CLASSIC, 1, 3)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """The combinations of each clue."""
        grid = position.grid
        for clue in self.clues:
            mark = clue.refer(self.kind, grid)
            yield from combination_steps(position, self.near(clue, grid), self._sets(clue, grid), mark)
