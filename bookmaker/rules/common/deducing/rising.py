"""Cells that hold no less, or more, than others: how high they must be, and whether that can be.

In: steps (lower cell, higher cell, rise), the rise being 1 where digits must differ and 0 where they may be equal.
Out: the cell that would need a digit above the greatest, if there is one; then no grid keeps these steps.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import combinations, pairwise

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.chain import Chain
from bookmaker.rules.common.deducing.candidates import sees

Step = tuple[int, int, int]


def strict_steps(chain: Chain) -> Iterator[Step]:
    """Along a chain every digit is more than the one before."""
    return ((low, high, 1) for low, high in pairwise(chain))


def resting_steps(grid: Grid, chain: Chain) -> Iterator[Step]:
    """Along a chain no digit is less than the one before, and cells that see each other differ."""
    for (i, low), (j, high) in combinations(enumerate(chain), 2):
        if sees(grid, low, high):
            yield low, high, 1
        elif j == i + 1:
            yield low, high, 0


def too_high(steps: Iterable[Step], most: int) -> int | None:
    """A cell that the steps force above `most` when every cell holds at least 1; None if there is none."""
    known: Sequence[Step] = list(steps)
    least = {cell: 1 for low, high, _ in known for cell in (low, high)}
    changed = True
    while changed:
        changed = False
        for low, high, rise in known:
            if least[low] + rise > least[high]:
                least[high] = least[low] + rise
                changed = True
                if least[high] > most:
                    return high
    return None
