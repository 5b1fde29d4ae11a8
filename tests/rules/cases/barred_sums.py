"""Cases for barred sums."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.barred_sums import BarredSums
from tests.rules.grids import Solution
from tests.rules.growing import found, image

SENTENCES = (
    ("barred-sums: 10", "Cells that share a side never add up to 10."),
    ("barred-sums: 5 10", "Cells that share a side never add up to 5 or 10."),
    ("barred-sums: {sums: [5, 7], diagonal: yes}", "Cells that touch, by a side or a corner, never add up to 5 or 7."),
)

MISUSES = (
    ("barred-sums: 2", "out-of-range", "2"),
    ("barred-sums: 5 18", "out-of-range", "18"),
    ("barred-sums: [8, 5, 8]", "sum-twice", "8]"),
    ("barred-sums: five", "not-a-number", "five"),
    ("barred-sums: []", "no-sums", "[]"),
    ("barred-sums: {sums: 10, diagonally: yes}", "unknown-key", "diagonally"),
    ("barred-sums: {diagonal: yes}", "missing-key", "{diagonal"),
)
DEDUCTIONS = (
    ("barred-sums: 5 10", {"r5c5": "4"}, {"r4c5 r6c5 r5c4 r5c6": "16"}),
    # In row 5, 3 stands at r5c4 or r5c6, beside r5c5 both.
    ("barred-sums: 10", {"r5c1-r5c3 r5c5 r5c7-r5c9": "12456789"}, {"r5c5": "7"}),
    ("barred-sums: {sums: 10, diagonal: yes}", {"r5c5": "5"}, {"r4c4 r6c6": "5"}),
)

FROM_ZERO = (
    ("barred-sums: 5 10", {"r5c5": "4"}, {"r4c5 r6c5 r5c4 r5c6": "16"}),
    # In row 5, 0 stands at r5c4 or r5c6, beside r5c5 both.
    ("barred-sums: 1", {"r5c1-r5c3 r5c5 r5c7-r5c9": "12345678"}, {"r5c5": "1"}),
)
CHOICES = ((10,), (5, 10), (3, 17), (7,), (4,))


def grow(grid: Grid, rng: Random) -> Solution | None:
    sums = frozenset(total for total in rng.choice(CHOICES) if total in _sums(grid)) or frozenset({4})
    rule = BarredSums(sums == {4} and grid.size == 9, sums)
    return image(rule if found(rule, grid) else BarredSums(False, frozenset({3})), grid, rng, False)


def lay(grid: Grid, solution: Solution, rng: Random) -> BarredSums | None:
    """Sums that no neighbours make, one or two of them."""
    sums = [total for total in _sums(grid) if BarredSums(False, frozenset({total})).holds(grid, solution)]
    if not sums:
        return None
    chosen = frozenset(rng.sample(sums, rng.randint(1, min(2, len(sums)))))
    return BarredSums(BarredSums(True, chosen).holds(grid, solution), chosen)


def _sums(grid: Grid) -> range:
    """What two different digits can add up to."""
    return range(2 * grid.worth(1) + 1, 2 * grid.worth(grid.size))
