"""Rising runs: how many digits rise one after the other from that side.

Manifest: by side, a row of clues with dots for none.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef
from bookmaker.rules.common.clue import Clue, Placed
from bookmaker.rules.common.comparison import bounds, trouble_together
from bookmaker.rules.common.contract import Deduction
from bookmaker.rules.common.neighbours import Pair
from bookmaker.rules.common.runs_from_side import RunRule
from bookmaker.source.diagnostics import Collector


class RisingRun(RunRule):
    """Each clue's value is how many digits rise."""

    kind = "rising-run"
    title = "Rising runs"
    noun = "rising run"
    relabels = "none"
    from_zero = True
    example = """\
rising-run:
  left: 3 . . 1 . . 4 . .
  bottom: . 2 . . . 5 . . .
"""
    strokes = (((-0.11, 0.1), (-0.04, 0.1), (-0.04, 0.01), (0.04, 0.01), (0.04, -0.09), (0.11, -0.09)),)

    @staticmethod
    def goes_on(before: int, after: int) -> bool:
        return after > before

    @staticmethod
    def longest(size: int) -> int:
        return size

    @classmethod
    def compare(cls, placed: Placed, grid: Grid, collector: Collector) -> None:
        known: list[Pair] = []
        for clue, place in placed.items():
            known += cls._comparisons(clue, grid)
            trouble = trouble_together(known, grid)
            if trouble:
                text = f"the rising run {clue.value} {clue.where} does not go with those before it"
                collector.error(place, "clues-contradict", text, trouble)
                return

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for clue in self.clues:
            line = [digits[cell] for cell in clue.cells(grid)]
            count = 1
            while count < len(line) and line[count] > line[count - 1]:
                count += 1
            if count != clue.value:
                return False
        return True

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Bounds along the runs, and where they end."""
        grid = position.grid
        owner = {pair: clue for clue in self.clues for pair in self._comparisons(clue, grid)}

        def refer(pairs: Sequence[Pair]) -> MarkRef:
            clues = list(dict.fromkeys(owner[pair] for pair in pairs))
            if len(clues) == 1:
                return clues[0].refer(self.kind, grid)
            return MarkRef.joined(self.kind, dict.fromkeys(cell for pair in pairs for cell in pair))

        yield from bounds(position, tuple(owner), refer)

    @classmethod
    def _comparisons(cls, clue: Clue, grid: Grid) -> list[Pair]:
        """Neighbours along a line, as far as the clue tells, the greater first."""
        steps = list(pairwise(clue.cells(grid)))
        return [(b, a) for a, b in steps[: clue.value - 1]] + steps[clue.value - 1 : clue.value]
