"""Sixteen solvers fill in all singles, each with luck of their own: how much looking each placement takes on average.

In: a `State` with openings, and the solution. Out: for each placement until no single is left, the mean effort of the
solvers at that count of empty cells. All solvers end in the same position, whatever their order.

Where several openings can be seen, which one falls to the eye first is chance, weighted by how visible each is. The
chance is drawn once per cell and solver from the cell's label (`labels.py`): the same puzzle always gets the same
effort, turning or relabelling it changes nothing, and one more given leaves the luck of all cells as it was. For
each cell the sixteen draws are spread evenly over the distribution (Latin hypercube sampling: M. McKay, R. Beckman,
W. Conover, Technometrics 21, 1979), so that few solvers do the work of many.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from bookmaker.grade.effort import Weights
from bookmaker.grade.state import State
from bookmaker.puzzle.bits import cells_on

SOLVERS = 16
FINE = 64
"""Steps within each sixteenth of the distribution."""

WAITS = tuple(round(-math.log((i + 0.5) / (SOLVERS * FINE)) * (1 << 20)) << 20 for i in range(SOLVERS * FINE))
"""How long an opening of weight 1 stays unseen: an exponential distribution, from the longest to the shortest."""


def luck(labels: Sequence[int]) -> list[list[int]]:
    """For each solver the wait of each cell."""
    waits: list[list[int]] = [[] for _ in range(SOLVERS)]
    for label in labels:
        drawn = (label * label + label).to_bytes(16, "little")
        ties = label & 0xFFFFF
        order = sorted(range(SOLVERS), key=drawn.__getitem__)
        for rank, solver in enumerate(order):
            waits[solver].append(WAITS[rank * FINE + (label >> solver & FINE - 1)] + ties)
    return waits


def mean_looks(state: State, solution: Sequence[int], waits: Sequence[Sequence[int]], weights: Weights) -> list[float]:
    """The mean effort of each placement from here until no single is left."""
    scene = _Scene(state, solution, weights)
    runs = [scene.run(wait) for wait in waits]
    return [sum(step) / len(runs) for step in zip(*runs, strict=True)]


class _Scene:
    """The openings at the start of a stretch of singles, from which every solver sets out."""

    def __init__(self, state: State, solution: Sequence[int], weights: Weights) -> None:
        ground = state.ground
        self.ground = ground
        self.solution = solution
        self.boards = state.boards
        self.empty = state.empty
        self.formula = weights
        self.weights = tuple(weights.box if area.box else weights.line for area in ground.areas)
        self.left = [mask.bit_count() for mask in state.masks()]
        self.seen: set[int] = set()
        self.open: dict[int, int] = {}
        self.pending: list[list[tuple[int, int, int]]] = [[] for _ in self.boards]
        count = len(ground.areas)
        for index, area in enumerate(ground.areas):
            last = area.board & self.empty
            for digit in ground.grid.digits:
                x = self.boards[digit] & area.board
                if x & (x - 1):
                    self.pending[digit].append((area.board, self.weights[index], digit * count + index))
                elif x:
                    self.seen.add(digit * count + index)
                    cell = x.bit_length() - 1
                    visible = weights.last if x == last else self.weights[index]
                    self.open[cell] = self.open.get(cell, 0) + visible
        for cell in cells_on(self.empty):
            if self.left[cell] == 1:
                self.open[cell] = self.open.get(cell, 0) + weights.naked

    def run(self, wait: Sequence[int]) -> list[float]:
        """One solver's effort for each placement, in the order in which the openings are found."""
        ground, solution, weights = self.ground, self.solution, self.weights
        tests, homes, count = ground.area_boards, ground.areas_of, len(ground.areas)
        peers = ground.peers
        boards, left, seen, opened = self.boards[:], self.left[:], set(self.seen), dict(self.open)
        pending = self.pending[:]
        empty, remaining = self.empty, self.empty.bit_count()
        naked, more_if_last = self.formula.naked, [self.formula.last - weight for weight in weights]
        placing, same_digit = self.formula.placing, self.formula.same_digit
        digits = range(1, len(boards))
        efforts: list[float] = []
        digit = 0
        while opened:
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
            struck = boards[digit] & peers[found] & empty
            board = boards[digit] = boards[digit] & ~peers[found] & ~bit
            unseen = []
            for area in pending[digit]:
                x = board & area[0]
                if x & (x - 1):
                    unseen.append(area)
                elif x and area[2] not in seen:
                    cell = x.bit_length() - 1
                    opened[cell] = opened.get(cell, 0) + area[1]
            pending[digit] = unseen
            for other in digits:
                board = boards[other]
                if board & bit:
                    board = boards[other] = board ^ bit
                    for index in homes[found]:
                        x = board & tests[index]
                        if x and not x & (x - 1) and other * count + index not in seen:
                            seen.add(other * count + index)
                            cell = x.bit_length() - 1
                            opened[cell] = opened.get(cell, 0) + weights[index]
            while struck:
                low = struck & -struck
                cell = low.bit_length() - 1
                left[cell] -= 1
                if left[cell] == 1:
                    opened[cell] = opened.get(cell, 0) + naked
                struck ^= low
            for index in homes[found]:
                x = empty & tests[index]
                if x and not x & (x - 1):
                    opened[x.bit_length() - 1] += more_if_last[index]
        return efforts
