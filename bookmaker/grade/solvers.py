"""Twenty-eight solvers fill in all singles, each with luck of their own: how much looking a placement takes on average.

In: a `State` with openings, and the solution. Out: for each placement until no single is left, the mean effort of the
solvers at that count of empty cells. All solvers end in the same position, whatever their order.

Where several openings can be seen, which one falls to the eye first is chance, weighted by how visible each is. The
chance is drawn once per cell and solver by the cell's label (`labels.py`): the same puzzle always gets the same
effort, turning or relabelling it changes nothing, and one more given leaves the luck of all cells as it was. For
each cell the draws are spread evenly over the distribution (Latin hypercube sampling: M. McKay, R. Beckman,
W. Conover, Technometrics 21, 1979), so that few solvers do the work of many; the last cells are soon all open, luck
hardly matters there, and fewer still fill them in. What is left of chance is 2.4 % of an effort (standard deviation;
1.5 % with 64 solvers, which take twice the time).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import cache
from hashlib import shake_128
from itertools import zip_longest

from bookmaker.grade.effort import Weights
from bookmaker.grade.state import State
from bookmaker.puzzle.bits import cells_on, digits_in

SOLVERS = 28

WAYS = 1021
"""Ways to spread the draws over the solvers."""

LAST, FEW = 4, 7
"""The last fourth of a grid's cells is filled in by one solver in seven only."""


def luck(labels: Sequence[int]) -> list[tuple[int, ...]]:
    """For each solver the wait of each cell; the label's last bits see to it that no two cells wait equally long."""
    waits = [[wait + (label & 0xFFFFF) for wait in _spread(label % WAYS)] for label in labels]
    return list(zip(*waits, strict=True))


@cache
def _spread(way: int) -> tuple[int, ...]:
    """How long each solver leaves an opening of weight 1 unseen: of an exponential distribution a share for each."""
    drawn = shake_128(way.to_bytes(2, "little")).digest(3 * SOLVERS)
    ranks = sorted(range(SOLVERS), key=lambda solver: drawn[3 * solver : 3 * solver + 2])
    waits = []
    for solver, rank in enumerate(ranks):
        within = (drawn[3 * solver + 2] + 0.5) / 256
        waits.append(round(-math.log((rank + within) / SOLVERS) * (1 << 20)) << 20)
    return tuple(waits)


def mean_looks(state: State, solution: Sequence[int], waits: Sequence[Sequence[int]], weights: Weights) -> list[float]:
    """The mean effort of each placement from here until no single is left."""
    scene = _Scene(state, solution, weights)
    last = len(solution) // LAST
    runs = [scene.run(wait, last if number % FEW else 0) for number, wait in enumerate(waits)]
    steps = [[look for look in looks if look] for looks in zip_longest(*runs)]
    return [sum(looks) / len(looks) for looks in steps]


class _Scene:
    """The openings at the start of a stretch of singles, from which every solver sets out."""

    def __init__(self, state: State, solution: Sequence[int], weights: Weights) -> None:
        ground = state.ground
        self.ground = ground
        self.solution = solution
        self.boards = state.boards
        self.empty = state.empty
        self.formula = weights
        self.masks = state.masks()
        self.count = len(ground.areas)
        self.seen = bytearray(self.count * len(self.boards))
        """For each digit and area whether the digit has been seen to stand alone there."""
        self.open: dict[int, int] = {}
        areas = []
        for index, area in enumerate(ground.areas):
            visible = weights.box if area.box else weights.line
            areas.append((index, area.board, visible, weights.last - visible))
            last = area.board & self.empty
            for digit in ground.grid.digits:
                x = self.boards[digit] & area.board
                if x and not x & (x - 1):
                    self.seen[digit * self.count + index] = True
                    cell = x.bit_length() - 1
                    self.open[cell] = self.open.get(cell, 0) + (weights.last if x == last else visible)
        self.homes = tuple(tuple(areas[index] for index in home) for home in ground.areas_of)
        """For each cell its areas: index, board, how visible a hidden single is, and how much more so a last cell."""
        for cell in cells_on(self.empty):
            if self.masks[cell].bit_count() == 1:
                self.open[cell] = self.open.get(cell, 0) + weights.naked

    def run(self, wait: Sequence[int], last: int) -> list[float]:
        """One solver's effort for each placement in the order in which openings are found, but for the `last` cells."""
        solution, homes, count, peers = self.solution, self.homes, self.count, self.ground.peers
        boards, masks, seen, opened = self.boards[:], self.masks[:], self.seen[:], self.open.copy()
        empty, remaining = self.empty, self.empty.bit_count()
        placing, same_digit, naked = self.formula.placing, self.formula.same_digit, self.formula.naked
        efforts: list[float] = []
        digit = 0
        while opened and remaining > last:
            visible, soonest, found = 0, math.inf, -1
            for cell, weight in opened.items():
                if solution[cell] == digit:
                    weight *= same_digit
                visible += weight
                until = wait[cell] / weight
                if until < soonest:
                    soonest, found = until, cell
            efforts.append(placing(remaining, visible))
            del opened[found]
            remaining -= 1
            digit = solution[found]
            bit = 1 << found
            empty ^= bit
            struck = boards[digit] & peers[found]
            board = boards[digit] = boards[digit] & ~struck & ~bit
            first, stays = digit * count, ~(1 << (digit - 1))
            while struck:
                low = struck & -struck
                struck ^= low
                cell = low.bit_length() - 1
                left = masks[cell] = masks[cell] & stays
                if not left & (left - 1):
                    opened[cell] = opened.get(cell, 0) + naked
                for index, area, weight, _ in homes[cell]:
                    x = board & area
                    if x and not x & (x - 1) and not seen[first + index]:
                        seen[first + index] = True
                        cell = x.bit_length() - 1
                        opened[cell] = opened.get(cell, 0) + weight
            here = homes[found]
            for other in digits_in(masks[found]):
                if other != digit:
                    board = boards[other] = boards[other] ^ bit
                    for index, area, weight, _ in here:
                        x = board & area
                        if x and not x & (x - 1) and not seen[other * count + index]:
                            seen[other * count + index] = True
                            cell = x.bit_length() - 1
                            opened[cell] = opened.get(cell, 0) + weight
            for _, area, _, more_if_last in here:
                x = empty & area
                if x and not x & (x - 1):
                    opened[x.bit_length() - 1] += more_if_last
        return efforts
